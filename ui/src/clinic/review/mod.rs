//! The review: six questions, answered in their order on one page.

mod activities;
mod alarms;
mod balance;
mod barriers;
mod desk;
mod done;
mod finding;
mod legend;
mod lines;
mod next;
mod notes;
mod pain;
mod review_page;
mod stance;
mod weeks;

pub use review_page::Review;
