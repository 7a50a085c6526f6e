//! Mistaken entries put right. Nothing is erased: what was said first stays beside what counts now.

mod choices;
mod context;
mod correct_page;
mod days;
mod line;

pub use correct_page::Correct;
