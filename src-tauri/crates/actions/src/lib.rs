//! What a person can do, as plain functions over the other crates.
//!
//! A function takes the open [`DataFolder`], the [`Moment`] at which it happens, and what the person said; it answers with what
//! the window or the terminal shows, or with a [`wire::Failure`], after which nothing has changed. Only [`clock`] reads the
//! time.
#![forbid(unsafe_code)]

pub mod analysis;
pub mod catalogue;
pub mod clinic;
pub mod clock;
pub mod data_folder;
pub mod patient;
pub mod platform;
mod refuse;
pub mod window_place;
pub mod zone;

pub use clock::{Clock, Moment};
pub use data_folder::DataFolder;

/// What an action answers.
pub type ActionResult<T> = Result<T, wire::Failure>;
