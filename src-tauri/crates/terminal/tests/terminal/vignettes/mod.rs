//! Invented people, from what they did to what the review says about it.

mod alarms;
mod bad_input;
mod doing;
mod keys;
mod kinds;
mod pain;
mod periods;
pub mod person;
mod phases;
pub mod prescribed;
mod review;
mod rhythms;
mod twenty_two;
