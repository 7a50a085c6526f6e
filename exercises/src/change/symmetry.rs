//! Side-to-side comparison of the involved leg with the other, under the same conditions.
//!
//! Rule: the same statistic on both sides, the median of the daily bests over each leg's last [`LATEST_DAYS`] days with trials; with
//! fewer than [`MIN_DAYS`] days on a side there is no comparison. The share and its exceptions are those of
//! [`crate::statistics::side_to_side`]; the detectable change is the larger of the two series' important differences, if they have
//! one.

use super::StanceDay;
use crate::plan::BodySide;
use crate::statistics::{Symmetry, SymmetryInput, Trend, median, side_to_side};

/// Number of the latest days of each leg that are used.
pub const LATEST_DAYS: usize = 7;
/// Least number of days for each leg.
pub const MIN_DAYS: usize = 3;

/// The part of one leg's series that the comparison needs.
#[derive(Debug, Clone, Copy)]
pub struct OneLeg<'a> {
    /// Its days, oldest first.
    pub days: &'a [StanceDay],
    /// Its change.
    pub change: &'a Trend,
}

/// The comparison of the involved leg with the other.
#[derive(Debug, Clone, Copy, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct SideToSide {
    /// The leg on the complaint's side.
    pub involved: BodySide,
    /// Its median of daily bests, in seconds.
    pub involved_s: f64,
    /// The other leg's median of daily bests, in seconds.
    pub other_s: f64,
    /// The share, or why there is none.
    pub symmetry: Symmetry,
}

/// Compares two legs under the same conditions; `None` if a leg has too few days.
pub fn compare_legs(involved: BodySide, leg: OneLeg<'_>, other: OneLeg<'_>, target_s: u16) -> Option<SideToSide> {
    let involved_s = median_of_bests(leg.days)?;
    let other_s = median_of_bests(other.days)?;
    let difference = |change: &Trend| change.figures.map(|figures| figures.important.difference);
    let detectable_s = match (difference(leg.change), difference(other.change)) {
        (Some(one), Some(two)) => Some(one.max(two)),
        _ => None,
    };
    let input = SymmetryInput { involved_s, uninvolved_s: other_s, cap_s: Some(f64::from(target_s)), detectable_s };
    Some(SideToSide { involved, involved_s, other_s, symmetry: side_to_side(&input) })
}

fn median_of_bests(days: &[StanceDay]) -> Option<f64> {
    if days.len() < MIN_DAYS {
        return None;
    }
    let latest = &days[days.len().saturating_sub(LATEST_DAYS)..];
    median(&latest.iter().map(|day| day.best_s).collect::<Vec<_>>())
}
