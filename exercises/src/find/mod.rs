//! Finding exercises among many: by words with small spelling mistakes, and by what they are.
//!
//! An [`Index`] is made once from the exercises' texts; [`Index::find`] then answers each letter that is typed. [`Filter`] says
//! which exercises are looked at at all. Nothing is left out that the caller did not ask to leave out.

mod filter;
mod index;
mod letters;
mod near;
mod shelves;

pub use filter::Filter;
pub use index::Index;
pub use letters::words_of;
pub use near::{mistakes_in, within, within_beginning};
pub use shelves::{MOST_USED, Shelf, Shelved, by_region, first};
