//! While a trial runs: a trace to draw, and a touch-down to announce provisionally.
//!
//! Both are for the eye and the ear. All figures and classes come from the whole record after the end.

mod announce;
mod recording;
mod trace;

pub use announce::{Announcement, provisional_touch_down};
pub use recording::{Recording, TrialQuestion};
pub use trace::{LiveTrace, TracePoint};
