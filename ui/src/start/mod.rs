//! The first start.

mod choose_side;

pub use choose_side::ChooseSide;
