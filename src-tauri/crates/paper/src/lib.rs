//! What a clinic prints, as PDF: for a patient the hand-out of a plan, and a diary for whoever has no device; about a patient a report, and a
//! letter at the end. Pure: values in, bytes out; the same values give the same bytes.
//!
//! The files are tagged as PDF/UA-1 (ISO 14289-1) asks: headings, lists, tables and figures with a text in their place, so that a screen
//! reader says what the eye sees. All text comes from `words`, the catalogue, or what somebody wrote.
//!
//! Reading order: a `style` and a `font` make `block`s of text, which a `flow` places on a `sheet`; `write` makes a PDF of the sheet.
#![forbid(unsafe_code)]

mod block;
mod code;
mod diary;
mod error;
mod figure;
mod flow;
mod font;
mod foot;
mod hand_out;
mod kern;
mod mark;
mod motif;
mod report;
mod sheet;
mod style;
mod text;
mod write;

pub use diary::{DIARY_DAYS, Diary, diary};
pub use error::PaperError;
pub use foot::Sender;
pub use hand_out::{HandOut, hand_out};
pub use report::{Letter, Report, letter, report};
pub use sheet::Paper;
