//! Live feedback while a trial runs: a trace to draw, and a touch-down to announce provisionally.
//!
//! Neither is a result: all figures and classes are computed from the whole record after the trial.

mod announce;
mod recording;
mod trace;

pub use announce::{Announcement, provisional_touch_down};
pub use recording::{Recording, TrialQuestion};
pub use trace::{LiveTrace, TracePoint};
