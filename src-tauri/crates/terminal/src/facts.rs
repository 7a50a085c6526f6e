//! `carryover clinic facts`, and what is named when a card is issued.

use crate::Done;
use crate::out::Out;
use actions::clinic::drafting;
use actions::{ActionResult, DataFolder};
use exercises::catalogue::{Equipment, PrescriberFlag};
use exercises::plan::Prescription;
use format::names::{self, Named};
use serde_json::json;
use std::collections::BTreeSet;
use words::Key;

/// Replaces what is given, and shows what holds then.
pub fn run(
    folder: &mut DataFolder,
    code: &str,
    flags: Option<&BTreeSet<PrescriberFlag>>,
    lacks: Option<&BTreeSet<Equipment>>,
    out: &mut Out,
) -> Done {
    let mut facts = drafting::facts(folder, code)?;
    flags.into_iter().for_each(|flags| facts.flags.clone_from(flags));
    lacks.into_iter().for_each(|lacks| facts.lacks.clone_from(lacks));
    drafting::put_facts(folder, code, &facts)?;
    out.say(
        |words| words.facts_in_short(&facts).unwrap_or_else(|| words.text(Key::FoldNone).to_owned()),
        || json!({ "code": code, "flags": named(&facts.flags), "lacks": named(&facts.lacks) }),
    );
    Ok(true)
}

fn named<T: Named + PartialEq>(all: &BTreeSet<T>) -> Vec<&'static str> {
    all.iter().map(names::name).collect()
}

/// Prints, for each item that touches one of the patient's facts, which: on stderr, because it prevents nothing.
pub fn name_concerns(folder: &DataFolder, code: &str, prescription: &Prescription, out: &mut Out) -> ActionResult<()> {
    let words = out.words;
    for (exercise, concern) in drafting::concerns(folder, code, prescription)? {
        out.note(&words.named_text(words.exercise_name(&exercise), &words.concern(concern)));
    }
    Ok(())
}
