//! Everything outside the data folder: files that a person names, the system's folders, its language.

mod bytes;
mod files;
mod folders;
mod language;
mod memory;
mod passphrase_cost;

pub(crate) use bytes::is_picture;
pub use bytes::{from_base64, to_base64};
pub use files::{MAX_PICTURE, MAX_SUMMARY, Saved, folder, not_understood, read, read_received, read_secret, write};
pub(crate) use files::{could_write, remove, remove_empty_folder, write_all, write_folder};
pub(crate) use folders::free_name;
pub use folders::{default_home, place_of, remembered};
pub use language::{is_pseudo, locale, words};
pub use memory::keep_out_of_core_dumps;
pub(crate) use passphrase_cost::passphrase_cost;
pub use store::WEB_VIEW;
