//! The position of a run on its course.

use crate::run::RunEnd;

/// The position of a run on its course. Times are on the steady clock, in milliseconds.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Stage {
    /// This step is in progress.
    Going {
        step: usize,
        since: u64,
        /// Time that the person added to the step.
        extra: u64,
    },
    /// Counting in again after a pause. The step continues at `until`, with `done` of it already over.
    LeadIn { step: usize, until: u64, done: u64 },
    /// Paused, with `done` of the step already over.
    Paused {
        step: usize,
        done: u64,
        extra: u64,
        since: u64,
        /// Whether the pause is due to the device's sleep and not to a press.
        slept: bool,
    },
    /// The run has ended.
    Ended(RunEnd),
}

impl Stage {
    /// The step, unless the run has ended.
    pub fn step(self) -> Option<usize> {
        match self {
            Stage::Going { step, .. } | Stage::LeadIn { step, .. } | Stage::Paused { step, .. } => Some(step),
            Stage::Ended(_) => None,
        }
    }
}
