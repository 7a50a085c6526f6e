//! What is kept: one SQLite file in one data folder, one file of code a table.
//!
//! Knows no rule about exercises and holds no key. A row is opaque bytes beside the few plain columns by which it is
//! looked up; what the bytes mean is for `format`, and what opens them for `vault`.
//!
//! * [`home::Home`] is the data folder: made, locked against a second copy of the program, its database opened.
//! * [`Store`] is that database: [`Store::transaction`] to write, [`Store::read`] to look.
//! * [`table`] has one file a table: its SQL, its row, its reads (on a [`View`]) and its writes (on a [`Tx`]).
//! * [`files`] is the only place that touches the file system by itself.

mod erasing;
mod error;
pub mod files;
pub mod home;
mod migration;
mod opening;
mod store;
pub mod table;

pub use erasing::{WEB_VIEW, WebView};
pub use error::StoreError;
pub use home::Home;
pub use migration::LATEST;
pub use store::{Store, Tx, View};
