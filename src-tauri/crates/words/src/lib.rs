//! All visible text, from the Fluent files in `locales`: for window, notifications, printed page and terminal.
//!
//! A [`Key`] names a text without values; a text with values is a function of [`Words`] with typed arguments. Both are generated at
//! build time, and a text that is missing in a language does not compile. Longer sentences made from domain values are in [`phrase`]
//! and its neighbours; failures, each with fault and advice, are in [`failure`].
#![forbid(unsafe_code)]

pub mod authoring;
mod cases;
pub mod clinic;
mod copied;
mod date;
mod diary;
pub mod failure;
pub mod finding;
pub mod kind;
mod locale;
mod number;
mod paper;
pub mod patient;
pub mod phrase;
mod plural;
mod pseudo;
mod receipt;
mod records;
pub mod review;
mod salvage;
mod saved;
mod texts;
mod visiting;

pub use date::upper;
pub use exercises::catalogue::Lang;
pub use number::Number;
pub use texts::{Key, Locale, Words};
