//! Geometry of the charts of a review. The window and the printed page only paint it.
//!
//! Lengths are in CSS pixels of an unscaled drawing, measured from its upper left corner, y downward. All charts of one review place
//! the same day at the same x, so that they can be compared. Each kind of mark has its own shape; colour only repeats it.

mod axis;
mod hours;
mod lines;
mod stance;
mod weeks;

pub use axis::{DayAxis, LEFT, NAMES_WIDTH, WeekStart};
pub use hours::{HoursAxis, SessionPlace};
pub use lines::{Lines, Point, lines};
pub use stance::{EndLabel, StanceChart, StanceGroup, StancePoint, Trendline, groups, stance};
pub use weeks::{DayShape, HourLabel, LegendEntry, MarkAt, Shape, Weeks, legend_entries, weeks};
