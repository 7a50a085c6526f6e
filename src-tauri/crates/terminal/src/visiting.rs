//! `carryover clinic visit`.

use crate::Done;
use crate::args::VisitNote;
use crate::out::Out;
use actions::clinic::visiting;
use actions::{ActionResult, DataFolder, Moment};
use exercises::id::ItemId;
use exercises::score::Score;
use exercises::visit::{
    Complained, Finding, Measure, Measured, OverallChange, Overridden, Screening, VisitFault, last_screening,
};
use serde_json::json;
use wire::Failure;
use wire::visiting::{NoteRequest, VisitPage};

/// Notes a finding, if there is one, and shows the patient's visits.
pub fn run(
    folder: &mut DataFolder,
    moment: &Moment,
    code: &str,
    (correct, what): (Option<u32>, Option<&VisitNote>),
    out: &mut Out,
) -> Done {
    let page = match what {
        None => visiting::page(folder, moment, code)?,
        Some(VisitNote::TakeBack { n }) => {
            let request = NoteRequest { code: code.to_owned(), replaces: Some(*n), finding: None };
            visiting::note(folder, moment, &request)?
        }
        Some(what) => {
            let finding = Some(finding(&visiting::page(folder, moment, code)?, what)?);
            visiting::note(folder, moment, &NoteRequest { code: code.to_owned(), replaces: correct, finding })?
        }
    };
    out.say(|words| words.visits_text(&page), || json!(page));
    Ok(true)
}

fn finding(page: &VisitPage, what: &VisitNote) -> ActionResult<Finding> {
    Ok(match what {
        VisitNote::Complaint { region, score, side, line } => {
            let score = Score::new(*score).ok_or(Failure::VisitUnfit(VisitFault::Value { least: 0, most: 10 }))?;
            Finding::Complaint(Complained { region: *region, side: *side, line: line.clone(), score })
        }
        VisitNote::Change { score, words } => Finding::Change(OverallChange { score: *score, words: words.clone() }),
        VisitNote::Measure { what, values, movement, unit, side, moment, surface, eyes } => {
            let what = match what.as_str() {
                "pain" => Measured::Pain { movement: movement.clone() },
                "motion" => Measured::Motion { movement: movement.clone() },
                "grip" => Measured::Grip,
                "chair-rise" => Measured::ChairRise,
                "stance" => Measured::Stance { surface: *surface, eyes: *eyes },
                _ => Measured::Other { name: movement.clone(), unit: unit.clone() },
            };
            // A number that is none, or beyond what a measure can hold, becomes one that no range has.
            let tenths = values.iter().map(|value| (value * 10.0).round().clamp(-1e9, 1e9) as i32).collect();
            Finding::Measure(Measure { what, moment: *moment, side: *side, tenths })
        }
        VisitNote::Screening { same: true, .. } => {
            let last = last_screening(&page.visits).ok_or(Failure::VisitNotScreened)?;
            Finding::Screening(last.1.clone())
        }
        VisitNote::Screening { flags, fell, .. } => {
            Finding::Screening(Screening { flags: flags.clone().unwrap_or_default(), fell: *fell })
        }
        VisitNote::Note { text } => Finding::Note(text.clone()),
        VisitNote::Override { item, proposed, reason } => {
            Finding::Overridden(Overridden { item: ItemId(*item), proposed: *proposed, reason: reason.clone() })
        }
        VisitNote::TakeBack { .. } => return Err(Failure::VisitChanged),
    })
}
