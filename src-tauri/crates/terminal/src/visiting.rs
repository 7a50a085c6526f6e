//! `carryover clinic visit`.

use crate::Done;
use crate::args::{VisitCommand, Whose};
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
pub fn run(folder: &mut DataFolder, moment: &Moment, what: &VisitCommand, out: &mut Out) -> Done {
    let page = match what {
        VisitCommand::Show { code } => visiting::page(folder, moment, code)?,
        VisitCommand::TakeBack { code, n } => {
            visiting::note(folder, moment, &NoteRequest { code: code.clone(), replaces: Some(*n), finding: None })?
        }
        VisitCommand::Complaint { whose, .. }
        | VisitCommand::Change { whose, .. }
        | VisitCommand::Measure { whose, .. }
        | VisitCommand::Screening { whose, .. }
        | VisitCommand::Note { whose, .. }
        | VisitCommand::Override { whose, .. } => {
            let Whose { code, correct } = whose;
            let finding = Some(finding(&visiting::page(folder, moment, code)?, what)?);
            visiting::note(folder, moment, &NoteRequest { code: code.clone(), replaces: *correct, finding })?
        }
    };
    out.say(|words| words.visits_text(&page), || json!(page));
    Ok(true)
}

fn finding(page: &VisitPage, what: &VisitCommand) -> ActionResult<Finding> {
    Ok(match what {
        VisitCommand::Complaint { region, score, side, line, .. } => {
            let score = Score::new(*score).ok_or(Failure::VisitUnfit(VisitFault::Value { least: 0, most: 10 }))?;
            Finding::Complaint(Complained { region: *region, side: *side, line: line.clone(), score })
        }
        VisitCommand::Change { score, words, .. } => Finding::Change(OverallChange { score: *score, words: words.clone() }),
        VisitCommand::Measure { what, values, movement, unit, side, moment, surface, eyes, .. } => {
            let what = match what.as_str() {
                "pain" => Measured::Pain { movement: movement.clone() },
                "motion" => Measured::Motion { movement: movement.clone() },
                "grip" => Measured::Grip,
                "chair-rise" => Measured::ChairRise,
                "stance" => Measured::Stance { surface: *surface, eyes: *eyes },
                _ => Measured::Other { name: movement.clone(), unit: unit.clone() },
            };
            // What is no number becomes one that no range has.
            let tenths =
                |value: &f64| if value.is_finite() { (value * 10.0).round().clamp(-1e9, 1e9) as i32 } else { i32::MAX };
            let tenths = values.iter().map(tenths).collect();
            Finding::Measure(Measure { what, moment: *moment, side: *side, tenths })
        }
        VisitCommand::Screening { same: true, .. } => {
            let last = last_screening(&page.visits).ok_or(Failure::VisitNotScreened)?;
            Finding::Screening(last.1.clone())
        }
        VisitCommand::Screening { flags, fell, .. } => {
            Finding::Screening(Screening { flags: flags.clone().unwrap_or_default(), fell: *fell })
        }
        VisitCommand::Note { text, .. } => Finding::Note(text.clone()),
        VisitCommand::Override { item, proposed, reason, .. } => {
            Finding::Overridden(Overridden { item: ItemId(*item), proposed: *proposed, reason: reason.clone() })
        }
        VisitCommand::Show { .. } | VisitCommand::TakeBack { .. } => return Err(Failure::VisitChanged),
    })
}
