//! An exercise in progress.

mod balance;
mod beat;
mod breath;
mod clock_left;
mod controls;
mod count;
mod dizzier;
mod done;
mod driver;
mod guided;
mod hold;
mod minutes_done;
mod motion;
mod own_pace;
mod parts;
mod reps;
mod results;
mod run_page;
mod run_string;
mod seconds;
mod status;
mod sway_notes;
mod tally;
mod timer;

pub use run_page::Run;
