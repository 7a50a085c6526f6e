//! Answers to questions, and "Something is wrong".

use super::plans::{self, append};
use super::today;
use crate::{ActionResult, DataFolder, Moment};
use exercises::log::LogEvent;
use exercises::plan::MAX_SCORE;
use exercises::today::Today;
use wire::Failure;
use wire::patient::{QuestionAnswer, TroubleRequest};

/// Logs the answer to a question.
pub fn answer(folder: &mut DataFolder, moment: &Moment, said: &QuestionAnswer) -> ActionResult<Today> {
    let (plan, event) = match *said {
        QuestionAnswer::Pain { plan, complaint, score, after } => {
            (plan, LogEvent::Pain { complaint, score: ten(score)?, after })
        }
        QuestionAnswer::Settled { plan, complaint, settled } => (plan, LogEvent::Settled { complaint, settled }),
        QuestionAnswer::Activity { plan, activity, score } => (plan, LogEvent::Rated { activity, score: ten(score)? }),
    };
    let one = plans::one(folder, Some(plan))?;
    let known = match event {
        LogEvent::Pain { complaint, .. } | LogEvent::Settled { complaint, .. } => {
            one.plan().prescription.complaints.iter().any(|known| known.id == complaint)
        }
        LogEvent::Rated { activity, .. } => one.plan().prescription.activities.iter().any(|known| known.id == activity),
        _ => false,
    };
    if !known {
        return Err(Failure::NoSuchItem);
    }
    append(folder, plan, moment.now, &event)?;
    today::page(folder, moment)
}

fn ten(score: u8) -> ActionResult<u8> {
    if score <= MAX_SCORE { Ok(score) } else { Err(Failure::OutOfRange { least: 0, most: MAX_SCORE.into() }) }
}

/// Logs a complaint ("Something is wrong"). What it pauses stays paused until a newer card clears it.
pub fn trouble(folder: &mut DataFolder, moment: &Moment, request: &TroubleRequest) -> ActionResult<Today> {
    let one = plans::one(folder, Some(request.plan))?;
    if let Some(item) = request.item {
        one.item(item)?;
    }
    append(folder, request.plan, moment.now, &LogEvent::Trouble { trouble: request.trouble, item: request.item })?;
    today::page(folder, moment)
}
