//! The string on the patient's screens: the day with its knots, and the string of a hold, a set or a trial as it goes.
//!
//! Window and paper only paint it. What a mark means is told by its shape; colour only repeats it.

mod day;
mod going;
mod parts;

pub use day::{DayRow, Filled, Strand, Tie, day, filled};
pub use going::{Going, HEIGHT, MIDDLE, WIDTH, hold, reps, stance};
pub use parts::{PartDone, PartRow, parts};
