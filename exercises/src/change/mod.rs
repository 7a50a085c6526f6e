//! Is the plan working? Pain, named activities and stance times, each with its own rule for what counts as a change.
//!
//! "No clear change" is a result. "Too few" is not: it means that there are not enough data for the rule. If several series are
//! tested at once, no conclusion is drawn from a single one of them.

mod activity;
mod count;
mod pain;
mod stance;
mod sway;
mod symmetry;

pub use crate::statistics::PainVerdict;
pub use activity::{
    ActivitiesTogether, ActivityChange, ActivityVerdict, MEAN_POINTS, SINGLE_POINTS, activity_change, together,
};
pub use count::{CountDay, count_change};
pub use pain::{
    DuringSeries, FLARE_DAYS, FLARE_POINTS, Flare, LATELY_DAYS, PainChange, PainSeries, UNSETTLED_POINTS, base, flares,
    pain_over_days, unsettled,
};
pub use stance::{Conditions, PRACTICE_DAYS, StanceChange, StanceDay, seconds, stance_change, stance_day};
pub use sway::{SwaySeries, SwaySession, sway_series};
pub use symmetry::{LATEST_DAYS, MIN_DAYS, OneLeg, SideToSide, compare_legs};
