//! An exercise in progress.

mod balance;
mod controls;
mod done;
mod driver;
mod guided;
mod hold;
mod motion;
mod parts;
mod reps;
mod results;
mod run_page;
mod run_string;
mod seconds;
mod status;
mod sway_notes;

pub use run_page::Run;
