//! What patient and clinician look at together: what was done and what came of it in a few sentences, and the next plan to press.

mod full_day;
mod item;
mod reason;
mod so_far;
mod together_page;

pub use together_page::Together;
