//! Record: what was done, and what goes to the visit.

mod balance;
mod handed_over;
mod one_record;
mod period;
mod record_page;
mod scores;
mod strings;
mod visit;

pub use record_page::Record;
pub use visit::Visit;
