//! Reminders: when the next one comes, and when none does.

mod calendar;
mod meeting;
mod quiet;
mod reminders_page;
mod spans;
mod stay;

pub use reminders_page::Reminders;
