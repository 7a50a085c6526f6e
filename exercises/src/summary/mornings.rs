//! Ratings of the pain in the morning, one for each day.

use super::MorningOn;
use crate::id::{EntryRef, LogId};
use crate::score::Score;
use crate::time::DayNumber;
use std::collections::BTreeMap;

/// One rating for each day, oldest first: on one device the day's first answer counts, of two devices the higher.
pub(crate) fn morning_points<'a>(
    ratings: impl IntoIterator<Item = (&'a EntryRef, &'a MorningOn)>,
) -> Vec<(DayNumber, Score)> {
    let mut first: BTreeMap<(DayNumber, LogId), (u32, Score)> = BTreeMap::new();
    for (entry, rating) in ratings {
        let known = first.entry((rating.day, entry.log)).or_insert((entry.n, rating.score));
        *known = (*known).min((entry.n, rating.score));
    }
    let mut days: BTreeMap<DayNumber, Score> = BTreeMap::new();
    for ((day, _), (_, score)) in first {
        let highest = days.entry(day).or_insert(score);
        *highest = (*highest).max(score);
    }
    days.into_iter().collect()
}
