//! The review: questions and their answers in a fixed order on one page.

mod activities;
mod alarms;
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
mod records;
mod review_page;
mod strip;

pub use review_page::Review;
