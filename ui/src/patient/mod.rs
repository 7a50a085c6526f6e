//! The patient's side of the window.

mod after;
mod answered;
mod bar;
mod card;
mod cautions;
mod closing;
mod context;
mod day_field;
mod day_line;
mod given;
mod how_to;
mod now;
mod own_data;
mod page;
mod patient_window;
mod places;
mod plan;
mod question;
mod record;
mod reminders;
mod run;
mod sample;
mod score_buttons;
mod screen_lock;
mod sounds;
mod string;
mod string_piece;
mod time_field;
mod trouble;
mod voice;
mod wake;

pub use how_to::InFull;
pub use patient_window::Patient;
