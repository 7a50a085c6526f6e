//! The exercises beside the plan: looked for by words and filters, or looked at as figures.

mod entry;
mod filters;
mod finder;
mod keys;
mod picker;

pub use finder::Finder;
pub use picker::Catalogue;
