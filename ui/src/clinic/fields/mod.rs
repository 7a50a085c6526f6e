//! Fields that several pages share.

mod choice;
mod fold;
mod passphrase;
mod stepper;
mod text;
mod typed;

pub use crate::shared::tick::Tick;
pub use choice::Choice;
pub use fold::Fold;
pub use passphrase::Passphrase;
pub use stepper::Stepper;
pub use text::Text;
pub use typed::Typed;
