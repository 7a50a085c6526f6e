//! A patient's case.

mod case_page;
mod close;
mod names;
mod plans;

pub use case_page::Case;
