//! What is the person's own: to save, and to erase.

mod erase;
mod own_data_page;
mod save;
mod sure;

pub use own_data_page::OwnData;
