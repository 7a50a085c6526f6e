//! Where a run stands on its course.

use crate::run::RunEnd;

/// Where a run stands. Times are on the steady clock, in milliseconds.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Stage {
    /// This step goes on.
    Going {
        step: usize,
        since: u64,
        /// By so much it is longer than planned.
        extra: u64,
    },
    /// Counting in again after a pause; the step goes on at `until`, with `done` of it behind.
    LeadIn { step: usize, until: u64, done: u64 },
    /// On pause, with `done` of the step behind.
    Paused {
        step: usize,
        done: u64,
        extra: u64,
        since: u64,
        /// The device slept; the person did not ask for it.
        slept: bool,
    },
    /// Over.
    Ended(RunEnd),
}

impl Stage {
    /// The step, unless all is over.
    pub fn step(self) -> Option<usize> {
        match self {
            Stage::Going { step, .. } | Stage::LeadIn { step, .. } | Stage::Paused { step, .. } => Some(step),
            Stage::Ended(_) => None,
        }
    }
}
