//! `carryover catalogue`.

use crate::Done;
use crate::args::{Catalogue, Find};
use crate::out::Out;
use actions::catalogue::Fault;
use exercises::catalogue::Exercise;
use exercises::find::{Filter, Index};
use format::names::name;
use serde_json::json;
use std::collections::BTreeSet;
use std::path::Path;
use wire::Failure;

pub fn run(what: &Catalogue, out: &mut Out) -> Done {
    match what {
        Catalogue::Check { dir } => check(dir.as_deref(), out),
        Catalogue::Find(asked) => find(asked, out),
    }
}

fn check(dir: Option<&Path>, out: &mut Out) -> Done {
    let checked = actions::catalogue::check(dir)?;
    checked.exercises.iter().for_each(|exercise| show(exercise, out));
    let good = checked.faults.is_empty();
    for Fault { file, fault } in checked.faults {
        out.fault(&Failure::NotUnderstood { file, fault });
    }
    Ok(good)
}

/// Prints the exercises that are found, in the order of the window where nothing was prescribed yet. None is no failure.
fn find(asked: &Find, out: &mut Out) -> Done {
    let exercises = actions::catalogue::check(None)?.exercises;
    let words = out.words;
    let index = Index::new(&exercises, words.lang(), |exercise| words.finding_labels(exercise), &[]);
    let filter = Filter {
        region: asked.region,
        purpose: asked.purpose,
        kind: asked.kind,
        posture: asked.posture,
        at_most: asked.at_hand.clone(),
        unflagged: asked.unflagged.clone().unwrap_or_default(),
        ..Filter::default()
    };
    for place in index.find(&asked.words.join(" "), |place| filter.fits(&exercises[place])) {
        show(&exercises[place], out);
    }
    Ok(true)
}

fn show(exercise: &Exercise, out: &mut Out) {
    let rungs: Vec<&str> = exercise.ladders.iter().flat_map(|ladder| &ladder.rungs).map(|rung| rung.id.as_str()).collect();
    // A recalled figure has no source and is not named here.
    let sources: BTreeSet<&str> = exercise.step_rules.iter().filter_map(|rule| rule.basis.source()).collect();
    out.say(
        |words| {
            let (id, name) = (exercise.id.to_string(), words.exercise_name(exercise));
            words.catalogue_line(&id, exercise.revision, name, &words.commas(&rungs))
        },
        || {
            json!({
                "exercise": exercise.id,
                "revision": exercise.revision,
                "region": name(&exercise.region),
                "purpose": exercise.purposes.iter().map(name).collect::<Vec<_>>(),
                "flags": exercise.flags.iter().map(name).collect::<Vec<_>>(),
                "kind": exercise.kind.rules().name(),
                "dose_basis": exercise.dose_basis.as_ref().map(name),
                "rungs": rungs,
                "sources": sources,
            })
        },
    );
}
