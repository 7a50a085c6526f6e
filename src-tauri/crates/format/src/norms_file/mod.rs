//! A clinic's own table of norms as somebody writes it by hand: TOML.
//!
//! [`EXAMPLE`] is one with comments, its figures invented.

mod read;

pub use read::read;

/// Longest file that is read, in bytes.
pub const MAX_BYTES: u64 = 64 * 1024;
/// Most rows of a table.
pub const MAX_ROWS: usize = 500;
/// Longest source, in characters.
pub const MAX_SOURCE: usize = 200;

/// A valid table with comments, to start from.
pub const EXAMPLE: &str = include_str!("example.toml");
