//! Geometry of the charts of a review: window and paper only paint it.
//!
//! Lengths are in CSS pixels of a drawing that is not scaled, from its upper left corner, y downward. Every chart of one
//! review lays the same days out at the same x, so that the eye goes from one to the next. What a mark means is told by its
//! shape; colour only repeats it.

mod axis;
mod lines;
mod stance;
mod weeks;

pub use axis::{DayAxis, LEFT, NAMES_WIDTH, WeekStart};
pub use lines::{Lines, Point, lines};
pub use stance::{EndLabel, StanceChart, StanceGroup, StancePoint, Trendline, groups, stance};
pub use weeks::{DayShape, HourLabel, LegendEntry, MarkAt, Shape, Weeks, legend_entries, weeks};
