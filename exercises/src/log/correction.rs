//! What an earlier entry should have been.

use super::{Barrier, DayOffReason, LogEvent};
use crate::score::Score;
use chrono::NaiveDate;

/// What an earlier entry should have been.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Correction {
    /// As it was first said: an earlier correction is taken back.
    Stands,
    /// It did not happen, or was not meant. Of an alarm: it was raised by mistake, which does not lift it.
    Never,
    /// Another score of pain or of an activity.
    Score(Score),
    /// The other answer about the morning after.
    Settled(bool),
    /// Another reason for leaving the slot out.
    Reason(Barrier),
    /// Other days, or another reason for them.
    #[cfg_attr(feature = "serde", serde(rename = "Excused"))]
    DaysOff {
        /// First day.
        from: NaiveDate,
        /// Last day.
        until: NaiveDate,
        /// Why.
        why: DayOffReason,
    },
}

impl Correction {
    /// Whether this correction can be made to an entry that says `event`.
    pub fn fits(self, event: &LogEvent) -> bool {
        match self {
            Correction::Stands | Correction::Never => matches!(
                event,
                LogEvent::Pain { .. }
                    | LogEvent::Settled { .. }
                    | LogEvent::Rated { .. }
                    | LogEvent::Skipped { .. }
                    | LogEvent::DaysOff { .. }
                    | LogEvent::Run(_)
                    | LogEvent::Trouble { .. }
            ),
            Correction::Score(_) => {
                matches!(event, LogEvent::Pain { .. } | LogEvent::Rated { .. })
            }
            Correction::Settled(_) => matches!(event, LogEvent::Settled { .. }),
            Correction::Reason(_) => matches!(event, LogEvent::Skipped { .. }),
            Correction::DaysOff { from, until, .. } => from <= until && matches!(event, LogEvent::DaysOff { .. }),
        }
    }

    /// What the entry should have said; `None` where it should not be there. Call it only where it [`fits`](Self::fits).
    pub fn of(self, event: &LogEvent) -> Option<LogEvent> {
        Some(match (self, event) {
            (_, LogEvent::Trouble { .. }) => event.clone(),
            (Correction::Never, _) => return None,
            (Correction::Score(score), LogEvent::Pain { complaint, after, .. }) => {
                LogEvent::Pain { complaint: *complaint, score, after: *after }
            }
            (Correction::Score(score), LogEvent::Rated { activity, .. }) => LogEvent::Rated { activity: *activity, score },
            (Correction::Settled(settled), LogEvent::Settled { complaint, .. }) => {
                LogEvent::Settled { complaint: *complaint, settled }
            }
            (Correction::Reason(reason), LogEvent::Skipped { slot, .. }) => LogEvent::Skipped { slot: *slot, reason },
            (Correction::DaysOff { from, until, why }, LogEvent::DaysOff { .. }) => LogEvent::DaysOff { from, until, why },
            _ => event.clone(),
        })
    }
}
