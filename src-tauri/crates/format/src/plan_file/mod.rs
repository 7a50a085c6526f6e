//! A plan written by hand as TOML.
//!
//! [`example`] returns a plan with comments. What a card has in addition (id, revision, clinic, day of issue, the revision of
//! each exercise) is set when the card is issued.

mod days;
mod doses;
mod item;
mod read;
mod write;

pub use read::read;
pub use write::{write, write_set};

/// Size of the largest file that is read, in bytes.
pub const MAX_BYTES: u64 = 256 * 1024;

/// A valid plan with comments, to start from.
pub fn example(review: chrono::NaiveDate) -> String {
    include_str!("example.toml").replace("REVIEW", &review.to_string())
}
