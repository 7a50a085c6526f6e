//! Pages that both sides and the first start share: what the program is for, help, privacy, version and licences.

mod about;
mod help;
mod links;
mod on_demand;
mod page;
mod privacy;
mod purpose;
mod welcome;

pub use links::PageLinks;
pub use page::{InfoPage, ShowInfoPage};
pub use welcome::Welcome;
