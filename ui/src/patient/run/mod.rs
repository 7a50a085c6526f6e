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
mod said;
mod seconds;
pub mod sounds;
mod sway_said;
mod thread;
mod voice;
pub mod wake;

pub use run_page::Run;
