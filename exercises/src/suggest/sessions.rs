//! What an item's sessions say about the target. Each run is a session.

use crate::run::{RunEnd, TrialEnd};
use crate::summary::{RunOn, StanceOn};
use crate::time::DayNumber;

/// One session of an item.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Session {
    /// The day.
    pub day: DayNumber,
    /// Whether it was carried to its end. One that was stopped or cut off for another reason says nothing about the target.
    pub finished: bool,
    /// Whether it met the target in full: every repetition or trial.
    pub met: bool,
}

/// The sessions of these runs, in their order. What was written in afterwards does not say how it went.
pub(super) fn sessions<'a>(runs: impl IntoIterator<Item = &'a RunOn>) -> Vec<Session> {
    let timed = runs.into_iter().filter(|run| run.live);
    timed.map(|run| Session { day: run.day, finished: run.end == RunEnd::Completed, met: met_target(run) }).collect()
}

fn met_target(run: &RunOn) -> bool {
    let to_the_target = |stance: &StanceOn| {
        let mut real = stance.trials.iter().filter(|trial| trial.end != TrialEnd::CutOff);
        real.all(|trial| trial.end == TrialEnd::Target)
    };
    run.end == RunEnd::Completed && run.parts.full() && run.stance.as_ref().is_none_or(to_the_target)
}
