//! A diary that a patient kept on paper, to be entered.

mod diary_page;
mod number_field;
mod typed;

pub use diary_page::Diary;
