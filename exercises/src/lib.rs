//! The domain of home exercise: pure, without clock, file, database, window or randomness.
//!
//! Time is an argument, and so are a zone's offsets. What the crate answers are typed verdicts and numbers; `words` makes
//! sentences of them. "Not measured" is a value of its own, never a number.
//!
//! Reading order: [`time`] and [`id`], the [`catalogue`], the [`plan`] that a clinician makes of it, the [`slots`] that fall
//! due, a [`run`], the [`log`] of what happened, its [`history`] folded together, the [`summary`] that goes to the visit and
//! the [`review`] that the clinician reads.
#![forbid(unsafe_code)]

pub mod time;
pub mod id;
pub mod catalogue;
pub mod figure;
pub mod plan;
pub mod slots;
pub mod run;
pub mod guide;
pub mod alarm;
pub mod log;
pub mod history;
pub mod summary;
pub mod adherence;
pub mod change;
pub mod suggest;
pub mod review;
pub mod draft;
pub mod chart;
pub mod ask;
pub mod today;
pub mod thread;
pub mod statistics;
pub mod norms;
pub mod sway;
