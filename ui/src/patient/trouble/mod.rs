//! "Something is wrong": what, and what to do.

mod advice;
mod ask_trouble;
mod during;
mod list;
mod which;

pub use advice::Advice;
pub use ask_trouble::AskTrouble;
pub use during::During;
