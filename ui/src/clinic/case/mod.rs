//! A patient's case.

mod case_page;
mod close;
mod letter;
mod names;
mod plans;

pub use case_page::Case;
