//! What was found at a visit: complaints of the day, the change since the last visit, measures before and after treatment, screening, notes.
//!
//! A patient's findings are a list that is only added to. A mistake is corrected by an entry that replaces another, or takes it back, so that
//! what stood there before stays known. What was measured at a visit is never mixed with what was recorded at home: the conditions differ.

mod check;
mod compare;
mod finding;
mod fold;
mod measure;

pub use check::{MAX_ENTRIES, MAX_LINE, MAX_MOVEMENT, MAX_NOTE, MAX_UNIT, VisitFault};
pub use compare::{Compared, MeasureError, compare};
pub use finding::{Advice, Complained, Finding, OverallChange, Overridden, Screening, VisitEntry};
pub use fold::{Found, TakenBack, Visit, last_screening, measured_before, taken_back, visits};
pub use measure::{MAX_TRIALS, Measure, Measured, Moment, STANCE_CAP_TENTHS};
