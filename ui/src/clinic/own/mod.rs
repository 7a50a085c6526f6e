//! The clinic's own exercises and its sets: listed, written, handed on.

mod copies;
mod finished;
mod import;
mod own_page;
mod set_list;
mod state;
mod unfinished;
mod write;

pub use own_page::Own;
pub use write::Write;
