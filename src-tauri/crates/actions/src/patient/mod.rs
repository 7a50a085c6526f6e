//! What the person doing exercises can do.

pub mod answering;
pub mod calendar;
pub mod correcting;
pub mod deeds;
pub mod glance;
pub mod mine;
pub mod plans;
pub mod recording;
pub mod reminders;
pub mod reminding;
pub mod running;
pub mod sample;
pub mod sealing;
pub mod taking;
pub mod today;
