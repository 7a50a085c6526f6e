//! Ratings of pain, one value a day.

use super::PainOn;
use crate::score::Score;
use crate::time::DayNumber;
use std::collections::BTreeMap;

/// One value a day: the day's own rating where given, else the highest of those after runs. Of several own ratings, or from
/// several devices, the highest.
pub(crate) fn pain_points<'a>(ratings: impl IntoIterator<Item = &'a PainOn>) -> Vec<(DayNumber, Score)> {
    let mut days: BTreeMap<DayNumber, (Option<Score>, Option<Score>)> = BTreeMap::new();
    for rating in ratings {
        let (own, after) = days.entry(rating.day).or_default();
        let known = if rating.after.is_none() { own } else { after };
        *known = (*known).max(Some(rating.score));
    }
    days.into_iter().filter_map(|(day, (own, after))| Some((day, own.or(after)?))).collect()
}
