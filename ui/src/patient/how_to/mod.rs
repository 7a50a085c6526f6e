//! How to do an exercise.

mod how_to_page;
mod in_full;
mod list;
mod read_aloud;
mod steps;

pub use how_to_page::HowTo;
pub use in_full::InFull;
pub use list::List;
pub use steps::Steps;
