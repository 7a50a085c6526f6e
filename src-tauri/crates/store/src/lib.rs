//! Storage: one SQLite file in one data folder, with one source file for each table.
//!
//! Knows no rules about exercises and has no keys. A row consists of opaque bytes and the few plain columns by which it is looked
//! up; `format` knows what the bytes mean, and `vault` decrypts them.
//!
//! * [`home::Home`] is the data folder: created, locked against a second copy of the program, its database opened.
//! * [`Store`] is that database: [`Store::transaction`] to write, [`Store::read`] to read.
//! * [`table`] has one file per table: its SQL, its row, its reads (on a [`View`]) and its writes (on a [`Tx`]).
//! * [`Provenance`] is what can be said of where a database comes from: a copy never passes for the original.
//! * [`files`] is the only place that touches the file system by itself.

mod backups;
mod erasing;
mod error;
pub mod files;
pub mod home;
mod migration;
mod opening;
mod salvage;
mod store;
pub mod table;
mod witness;

pub use erasing::{WEB_VIEW, WebView};
pub use error::StoreError;
pub use home::Home;
pub use migration::LATEST;
pub use salvage::{Salvaged, SalvagedTable};
pub use store::{Store, Tx, View};
pub use witness::Provenance;
