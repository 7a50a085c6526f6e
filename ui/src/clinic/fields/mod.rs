//! Fields that several pages share.

mod area;
mod choice;
mod fold;
mod passphrase;
mod press_number;
mod slide;
mod strength;
mod text;
mod typed;

pub use crate::shared::tick::Tick;
pub use area::Area;
pub use choice::Choice;
pub use fold::Fold;
pub use passphrase::Passphrase;
pub use press_number::PressNumber;
pub use slide::Slide;
pub use strength::Strength;
pub use text::Text;
pub use typed::Typed;
