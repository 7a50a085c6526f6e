//! Pain ratings reduced to one value for each day.

use super::PainOn;
use crate::score::Score;
use crate::time::DayNumber;
use std::collections::BTreeMap;

/// One value for each day that has ratings. If the person rated the day itself, the highest such rating counts; otherwise the
/// highest of those given after runs. Ratings from several devices are treated alike.
pub(crate) fn pain_points<'a>(ratings: impl IntoIterator<Item = &'a PainOn>) -> Vec<(DayNumber, Score)> {
    let mut days: BTreeMap<DayNumber, (Option<Score>, Option<Score>)> = BTreeMap::new();
    for rating in ratings {
        let (own, after) = days.entry(rating.day).or_default();
        let known = if rating.after.is_none() { own } else { after };
        *known = (*known).max(Some(rating.score));
    }
    days.into_iter().filter_map(|(day, (own, after))| Some((day, own.or(after)?))).collect()
}
