//! "Something is wrong": what, and what to do.

mod advice;
mod ask_trouble;
mod confirm;
mod list;
mod well_again;
mod which;

pub use advice::Advice;
pub use ask_trouble::AskTrouble;
pub use well_again::WellAgain;
