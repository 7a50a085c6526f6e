//! Is it working: pain, named activities and stance times, each with its own rule of when a change may be called one.
//!
//! "No clear change" is a finding, "too few" is not: it says that the rule has nothing to go by. Several series tested at
//! once: no claim rests on one of them alone.

mod activity;
mod pain;
mod stance;
mod sway;
mod symmetry;

pub use crate::statistics::{PainChange, PainVerdict};
pub use activity::{
    ActivitiesTogether, ActivityChange, ActivityVerdict, MEAN_POINTS, SINGLE_POINTS, activity_change, together,
};
pub use pain::pain_over_days;
pub use stance::{Conditions, StanceChange, StanceDay, seconds, stance_change, stance_day};
pub use sway::{SwaySeries, SwaySession, sway_series};
pub use symmetry::{LATEST_DAYS, MIN_DAYS, OneLeg, SideToSide, compare_legs};
