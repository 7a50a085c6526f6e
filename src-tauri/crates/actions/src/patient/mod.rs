//! What the person doing exercises can do.

pub mod answering;
pub mod calendar;
mod card_parts;
pub mod correcting;
pub mod due_reminder;
pub mod import_runs;
pub mod own_data;
pub mod plans;
pub mod record;
pub mod refitting;
pub mod reminders;
pub mod running;
pub mod sample;
pub mod screen_lock;
pub mod sealing;
pub mod taking;
mod times_ahead;
pub mod today;
pub mod tray_summary;
