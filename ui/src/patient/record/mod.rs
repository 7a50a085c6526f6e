//! Record: what was done, and the summary for the visit.

mod balance;
mod correct;
mod counts;
mod frames;
mod handed_over;
mod one_record;
mod period;
mod record_page;
mod scores;
mod strings;
mod then_and_now;
mod visit;

pub use correct::Correct;
pub use record_page::Record;
pub use then_and_now::ThenAndNow;
pub use visit::Visit;
