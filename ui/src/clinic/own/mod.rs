//! The clinic's own exercises and its sets: listed, written, handed on.

mod copies;
mod exercises;
mod import;
mod own_page;
mod set_list;
mod write;

pub use own_page::Own;
pub use write::Write;
