//! The person's own data: exporting and erasing.

mod erase;
mod own_data_page;
mod save;
mod sure;

pub use own_data_page::OwnData;
