//! When a reminder comes, how loud, and which ones would come if nothing happened.
//!
//! Only a slot that is open is announced: once, and once more when it was put off. What falls into a quiet time or a
//! meeting is announced at its end if the slot is still open then. One reminder at a time: while one waits, it stands for
//! whatever else was due when it was shown. Whoever did the last one that was announced is reminded more lightly: what is
//! heeded need not be loud.

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
