//! Taking a plan card.

mod camera;
mod form;
mod item;
mod preview;
mod take_a_card;
mod window_of_day;

pub use form::CardForm;
pub use take_a_card::TakeACard;
pub use window_of_day::WindowOfDay;
