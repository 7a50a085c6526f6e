//! `carryover catalogue`.

use crate::Done;
use crate::args::Catalogue;
use crate::out::Out;
use actions::catalogue::Fault;
use serde_json::json;
use std::collections::BTreeSet;
use wire::Failure;

pub fn run(what: &Catalogue, out: &mut Out) -> Done {
    let Catalogue::Check { dir } = what;
    let checked = actions::catalogue::check(dir.as_deref())?;
    for exercise in &checked.exercises {
        let rungs: Vec<&str> =
            exercise.ladders.iter().flat_map(|ladder| &ladder.rungs).map(|rung| rung.id.as_str()).collect();
        // A recalled figure has no source and is not named here.
        let sources: BTreeSet<&str> = exercise.step_rules.iter().filter_map(|rule| rule.basis.source()).collect();
        out.say(
            |words| {
                let name = exercise.text(words.lang()).map_or("", |text| text.name.as_str());
                words.catalogue_line(&exercise.id.to_string(), exercise.revision, name, &words.commas(&rungs))
            },
            || json!({ "exercise": exercise.id, "revision": exercise.revision, "rungs": rungs, "sources": sources }),
        );
    }
    let good = checked.faults.is_empty();
    for Fault { file, fault } in checked.faults {
        out.fault(&Failure::NotUnderstood { file, fault });
    }
    Ok(good)
}
