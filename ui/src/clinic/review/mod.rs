//! The review: questions and their answers in a fixed order on one page.

mod activities;
mod alarms;
mod asked;
mod balance;
mod barriers;
mod context;
mod counts;
mod devices;
mod done;
mod finding;
mod hand_over;
mod next;
mod next_plan;
mod notes;
mod pain;
mod pain_asked;
mod reason_asked;
mod records;
mod review_page;
mod strip;

pub use pain_asked::PainAsked;
pub use reason_asked::ReasonAsked;
pub use review_page::Review;
