//! Record: what was done, and the summary for the visit.

mod balance;
mod correct;
mod frames;
mod handed_over;
mod one_record;
mod period;
mod record_page;
mod scores;
mod strings;
mod visit;

pub use correct::Correct;
pub use record_page::Record;
pub use visit::Visit;
