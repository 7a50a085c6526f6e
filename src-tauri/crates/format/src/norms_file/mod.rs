//! A clinic's own table of norms, written by hand as TOML.
//!
//! [`EXAMPLE`] is a table with comments and invented figures.

mod read;

pub use read::read;

/// Size of the largest file that is read, in bytes.
pub const MAX_BYTES: u64 = 64 * 1024;
/// Largest number of rows in a table.
pub const MAX_ROWS: usize = 500;
/// Length of the longest source, in characters.
pub const MAX_SOURCE: usize = 200;

/// A valid table with comments, to start from.
pub const EXAMPLE: &str = include_str!("example.toml");
