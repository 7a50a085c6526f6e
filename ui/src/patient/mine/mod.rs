//! What is the person's own: to save, and to erase.

mod erase;
mod mine_page;
mod save;
mod sure;

pub use mine_page::Mine;
