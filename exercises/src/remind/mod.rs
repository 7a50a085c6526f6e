//! Decides when a reminder comes, whether it has a sound, and which reminders are to come if nothing happens.
//!
//! Only an open slot is reminded of: once, and once more after it was put off. A reminder that falls into a quiet time or a meeting
//! comes at its end if the slot is still open. There is one reminder at a time: as long as one is shown, it also covers other slots
//! that became due by the time it was shown. A reminder is silent if the last one was acted on.

mod context;
mod quiet;
mod quiet_draft;
mod upcoming;
mod weekly;

pub use context::{PlanInForce, Reminder, ReminderContext};
pub use quiet::{MAX_MEETING, MAX_QUIET, MEETINGS, Meeting, Settings, Span};
pub use quiet_draft::QuietTimesDraft;
pub use upcoming::{MAX_AHEAD, UpcomingReminder, upcoming};
pub use weekly::{Weekly, weekly};

#[cfg(test)]
mod tests;
