//! Everything that comes from or goes outside as bytes or text: versions, limits, frozen samples. Holds no key.

pub mod calendar;
pub mod card;
pub mod catalogue;
pub mod draft;
pub mod entry;
pub mod frames;
pub mod motion;
pub mod norms_file;
pub mod own_data;
pub mod plan_file;
pub mod reminders;
pub mod runs_file;
pub mod series;
pub mod summary;

mod cbor;
mod choices;
mod codes;
mod names;
mod number_csv;
mod packed;
mod parts;
