//! Reminders: when the next one comes, and when none does.

mod background;
mod calendar;
mod meeting;
mod quiet;
mod reminders_page;
mod spans;

pub use reminders_page::Reminders;
