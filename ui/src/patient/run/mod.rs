//! An exercise as it is done.

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
pub mod sounds;
mod status;
mod sway_notes;
mod voice;
pub mod wake;

pub use run_page::Run;
