//! What a person can do, as plain functions over the other crates.
//!
//! A function takes the open [`House`], the [`Moment`] at which it happens, and what the person said; it answers with what
//! the window or the terminal shows, or with a [`wire::Failure`], after which nothing has changed. Only [`clock`] reads the
//! time.
#![forbid(unsafe_code)]

pub mod clinic;
pub mod clock;
pub mod house;
pub mod outside;
pub mod patient;
mod refuse;
pub mod sums;
pub mod window_place;
pub mod zone;

pub use clock::{Clock, Moment};
pub use house::House;

/// What an action answers.
pub type Answer<T> = Result<T, wire::Failure>;
