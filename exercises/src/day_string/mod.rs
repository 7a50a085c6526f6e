//! The string on the patient's screens: the day with its knots, and the string of a hold, a set or a trial in progress.
//!
//! The window and the printed page only draw it. Each kind of mark has its own shape; colour only repeats it.

mod day;
mod parts;
mod run_string;

pub use day::{DayRow, HalfTied, KnotShape, Segment, day, half_tied};
pub use parts::{PartDone, PartRow, parts};
pub use run_string::{HEIGHT, MIDDLE, RunString, WIDTH, beat, easing_in, hold, reps, stance, stretch};
