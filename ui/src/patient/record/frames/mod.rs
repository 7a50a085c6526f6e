//! A sealed summary as codes, for a clinic that photographs them from the screen.

mod frames_page;
mod place;

pub use frames_page::Frames;
