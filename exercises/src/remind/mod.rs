//! When a reminder comes, how loud, and which ones would come if nothing happened.
//!
//! Only a slot that is open is announced: once, and once more when it was put off. What falls into a quiet time or a
//! meeting is announced at its end if the slot is still open then. One reminder at a time: while one waits, it stands for
//! whatever else was due when it was shown. Whoever did the last one that was announced is reminded more lightly: what is
//! heeded need not be loud.

mod ahead;
mod draft;
mod lookout;
mod quiet;
mod weekly;

pub use ahead::{Coming, MAX_AHEAD, ahead};
pub use draft::Draft;
pub use lookout::{Lookout, Of, Reminder};
pub use quiet::{MAX_MEETING, MAX_QUIET, MEETINGS, Meeting, Settings, Span};
pub use weekly::{Weekly, weekly};

#[cfg(test)]
mod tests;
