//! The patient's side of the window.

mod after;
mod asked;
mod bar;
mod card;
mod cautions;
mod closing;
mod day_field;
mod desk;
mod how_to;
mod knot;
mod mine;
mod now;
mod page;
mod patient_window;
mod places;
mod plan;
mod record;
mod reminders;
mod run;
mod sample;
mod score;
mod string;
mod time_field;
mod trouble;

pub use patient_window::Patient;
