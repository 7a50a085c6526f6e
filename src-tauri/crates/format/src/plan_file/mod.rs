//! A plan as a clinician writes it by hand: TOML.
//!
//! [`example`] prints one with comments; what a card carries beyond it (id, revision, clinic, day of issue, the edition of
//! each exercise) is set when it is issued.

mod doses;
mod item;
mod read;

pub use read::read;

/// Longest file that is read, in bytes.
pub const MAX_BYTES: u64 = 256 * 1024;

/// A valid plan with comments, to start from.
pub fn example(review: chrono::NaiveDate) -> String {
    include_str!("example.toml").replace("REVIEW", &review.to_string())
}
