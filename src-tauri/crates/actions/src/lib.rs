//! The actions of a person, as plain functions over the other crates.
//!
//! A function takes the open [`DataFolder`], the [`Moment`] at which it happens, and the person's input. It returns what the window
//! or the terminal shows, or a [`wire::Failure`], after which nothing has changed. Only [`clock`] reads the time.
#![forbid(unsafe_code)]

pub mod analysis;
pub mod backup;
mod card_catalogue;
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
pub use platform::Saved;

/// The result of an action.
pub type ActionResult<T> = Result<T, wire::Failure>;
