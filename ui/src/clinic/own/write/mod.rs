//! An exercise while it is written: its fields at the left, what the patient sees at the right, what it lacks below.

mod about;
mod arrow;
mod board;
mod dose;
mod figure;
mod joints;
mod levels;
mod page;
mod prescribers;
mod preview;
mod save;
mod scene;
mod texts;
mod ties;
mod writer;

pub use page::Write;
