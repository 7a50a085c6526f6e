//! Everything that comes from or goes outside as bytes or text: versions, limits, frozen samples. Holds no key.

pub mod card;
pub mod catalogue;
pub mod entry;
pub mod plan_file;
pub mod runs_file;
pub mod summary;
pub mod motion;
pub mod series;

mod cbor;
mod codes;
mod packed;
mod parts;
mod names;
mod number_csv;
