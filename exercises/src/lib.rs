//! The domain of home exercise: pure, without clock, file, database, window or randomness.
//!
//! Time is an argument, and so are a zone's offsets. The results of the crate are typed verdicts and numbers; `words` makes
//! sentences from them. "Not measured" is a value of its own, never a number.
//!
//! Reading order: [`time`] and [`id`], the [`catalogue`], the [`plan`] that a clinician makes from it, the [`slots`] that are due, a
//! [`run`], the [`questions`] after it, the [`log`] of events, its [`history`], what alarms suspend ([`suspension`]), the [`summary`]
//! for the visit, the [`review`] that the clinician reads, what to do next ([`suggest`]), how an exercise is found
//! ([`find`]), and how a clinician writes one ([`authoring`]).
#![forbid(unsafe_code)]

pub mod adherence;
pub mod alarm;
pub mod authoring;
pub mod catalogue;
pub mod change;
pub mod chart;
mod choice;
pub mod closing;
pub mod correct;
pub mod day_string;
pub mod draft;
pub mod figure;
pub mod file_fault;
pub mod find;
pub mod frames;
pub mod guide;
pub mod history;
pub mod id;
pub mod log;
pub mod misdated;
pub mod norms;
pub mod plain_text;
pub mod plan;
pub mod questions;
pub mod remind;
pub mod review;
pub mod run;
mod saturating;
pub mod score;
pub mod slots;
pub mod statistics;
pub mod suggest;
pub mod summary;
pub mod suspension;
pub mod sway;
pub mod time;
pub mod today;
pub mod visit;
