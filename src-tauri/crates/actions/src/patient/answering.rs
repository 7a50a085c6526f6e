//! Answers to questions, and "Something is wrong".

use super::plans::{self, append};
use super::today;
use crate::{Answer, House, Moment};
use exercises::log::What;
use exercises::plan::MAX_SCORE;
use exercises::today::Today;
use wire::Failure;
use wire::patient::{Answer as Said, TroubleAsk};

/// Logs the answer to a question.
pub fn answer(house: &mut House, moment: &Moment, said: &Said) -> Answer<Today> {
    let (plan, what) = match *said {
        Said::Pain { plan, complaint, score, after } => (plan, What::Pain { complaint, score: ten(score)?, after }),
        Said::Settled { plan, complaint, settled } => (plan, What::Settled { complaint, settled }),
        Said::Activity { plan, activity, score } => (plan, What::Rated { activity, score: ten(score)? }),
    };
    let one = plans::one(house, Some(plan))?;
    let known = match what {
        What::Pain { complaint, .. } | What::Settled { complaint, .. } => {
            one.plan().prescription.complaints.iter().any(|known| known.id == complaint)
        }
        What::Rated { activity, .. } => one.plan().prescription.activities.iter().any(|known| known.id == activity),
        _ => false,
    };
    if !known {
        return Err(Failure::NoSuchItem);
    }
    append(house, plan, moment.now, &what)?;
    today::page(house, moment)
}

fn ten(score: u8) -> Answer<u8> {
    if score <= MAX_SCORE { Ok(score) } else { Err(Failure::OutOfRange { least: 0, most: MAX_SCORE.into() }) }
}

/// Logs that something is wrong; what it blocks stays blocked until a newer card clears it.
pub fn trouble(house: &mut House, moment: &Moment, ask: &TroubleAsk) -> Answer<Today> {
    let one = plans::one(house, Some(ask.plan))?;
    if let Some(item) = ask.item {
        one.item(item)?;
    }
    append(house, ask.plan, moment.now, &What::Trouble { trouble: ask.trouble, item: ask.item })?;
    today::page(house, moment)
}
