//! Published times of single-leg stance, and when they may be compared with a person's own.
//!
//! A comparison needs equal conditions: firm floor, bare feet, arms, eyes, statistic, cap and age must all apply, and the source
//! must state them. There is no percentile and no z-score: times are skewed and end at a cap, so neither follows from a mean and a
//! standard deviation. No norms exist for soft household surfaces: a person's times on one can be compared with that person's
//! earlier times on the same. A stance time is a performance, not a risk: it did not distinguish later fallers (Blodgett 2023, Front
//! Sports Act Living 4:1066913).
//!
//! Every row says whether its figures were seen in the source or only quoted from memory ("recalled"); a recalled row is never
//! shown. A clinic can add its own table.

mod comparison;
mod published;
mod row;
mod table;

pub use comparison::{Caveat, Comparison, Measured, NormComparison, WhyNot, compare_with_norms};
pub use row::{Ages, Cap, Condition, Conditions, Evidence, NormRow, Published, Statistic};
pub use table::{ClinicRow, ClinicTable, Norms, TableFault};
