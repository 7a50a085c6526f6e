//! Everything outside the data folder: files that a person names, the system's folders, its language.

mod bytes;
mod files;
mod folders;
mod language;

pub(crate) use bytes::is_picture;
pub use bytes::{from_base64, to_base64};
pub use files::{MAX_PICTURE, MAX_SUMMARY, folder, not_understood, read, read_received, write};
pub(crate) use files::{could_write, remove, write_all, write_folder};
pub use folders::default_home;
pub(crate) use folders::{free_name, saves};
pub use language::{is_pseudo, locale, words};
pub use store::WEB_VIEW;
