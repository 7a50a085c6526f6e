//! Correcting mistaken entries. Nothing is deleted from the log: the original stays beside what counts now.

mod choices;
mod context;
mod correct_page;
mod days;
mod line;

pub use correct_page::Correct;
