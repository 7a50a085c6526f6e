//! A correction of an earlier entry of the log.

use super::{Barrier, DayOffReason, LogEvent};
use crate::score::Score;
use chrono::NaiveDate;

/// What an earlier entry of the log should have said.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Correction {
    /// The entry is right as it was first made; this takes back an earlier correction of it.
    Stands,
    /// It did not happen, or was not meant. An alarm corrected like this was raised by mistake, but still pauses what it
    /// paused.
    Never,
    /// Another score for pain or for an activity.
    Score(Score),
    /// The other answer to "settled by this morning?".
    Settled(bool),
    /// Another reason for skipping the slot.
    Reason(Barrier),
    /// Other days off, or another reason for them.
    #[cfg_attr(feature = "serde", serde(rename = "Excused"))]
    DaysOff {
        /// First day off.
        from: NaiveDate,
        /// Last day off, included.
        until: NaiveDate,
        /// The reason.
        why: DayOffReason,
    },
}

impl Correction {
    /// Whether this correction can be made to an entry with this `event`.
    pub fn fits(self, event: &LogEvent) -> bool {
        match self {
            Correction::Stands | Correction::Never => matches!(
                event,
                LogEvent::Morning { .. }
                    | LogEvent::During { .. }
                    | LogEvent::Pain { .. }
                    | LogEvent::Settled { .. }
                    | LogEvent::Rated { .. }
                    | LogEvent::Skipped { .. }
                    | LogEvent::DaysOff { .. }
                    | LogEvent::Run(_)
                    | LogEvent::Trouble { .. }
            ),
            Correction::Score(_) => matches!(
                event,
                LogEvent::Morning { .. } | LogEvent::During { .. } | LogEvent::Pain { .. } | LogEvent::Rated { .. }
            ),
            Correction::Settled(_) => matches!(event, LogEvent::Settled { .. }),
            Correction::Reason(_) => matches!(event, LogEvent::Skipped { .. }),
            Correction::DaysOff { from, until, .. } => from <= until && matches!(event, LogEvent::DaysOff { .. }),
        }
    }

    /// The event that the entry should have held; `None` if the entry should not exist. Call it only if the correction
    /// [`fits`](Self::fits). An alarm is returned unchanged, because no correction removes it.
    pub fn of(self, event: &LogEvent) -> Option<LogEvent> {
        Some(match (self, event) {
            (_, LogEvent::Trouble { .. }) => event.clone(),
            (Correction::Never, _) => return None,
            (Correction::Score(score), LogEvent::Morning { complaint, .. }) => {
                LogEvent::Morning { complaint: *complaint, score }
            }
            (Correction::Score(score), LogEvent::During { item, .. }) => LogEvent::During { item: *item, score },
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
