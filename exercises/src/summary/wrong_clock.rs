//! What was recorded while a device's clock was wrong: as the device knows it, and as the clinic can tell when it looks.
//!
//! A device marks what contradicts the order of its entries, its cards and its own clock ([`crate::misdated`]). A clock that is always
//! ahead contradicts none of these: then only the clinic can tell, by its own date. What a summary says of days that have not come yet
//! was recorded by such a clock; its period ends on the day of the look.

use super::{DuringOn, MorningOn, RatedOn, RunOn, Summary};
use crate::misdated::TOLERANCE;
use crate::time::DayNumber;
use std::borrow::Cow;
use std::collections::BTreeSet;

/// What was recorded while a device's clock was wrong. It owes no days and is in no series. The days in it are those that the clock
/// showed; day 0 if it showed an earlier one.
#[derive(Debug, Clone, PartialEq, Default)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct ByWrongClock {
    /// The runs, each as one that counts for no slot.
    pub runs: Vec<RunOn>,
    /// Ratings of the pain in the morning.
    pub mornings: Vec<MorningOn>,
    /// Ratings of the pain while doing an item.
    pub during: Vec<DuringOn>,
    /// Ratings of named activities.
    pub rated: Vec<RatedOn>,
    /// The entries of those alarms of the summary that were raised then. They suspend what they would have at any time.
    pub alarms: BTreeSet<u32>,
    /// Days by which the device's clock was ahead of the clinic's when the summary was made, as the clinic sees it; not part of what is
    /// handed over, and 0 if it was not.
    pub ahead_days: u16,
}

impl ByWrongClock {
    /// Whether nothing was recorded then.
    pub fn is_empty(&self) -> bool {
        let ByWrongClock { runs, mornings, during, rated, alarms, ahead_days: _ } = self;
        runs.is_empty() && mornings.is_empty() && during.is_empty() && rated.is_empty() && alarms.is_empty()
    }
}

/// `summary` as it is to be read on the day `today` of the plan, the day on which the clinic looks: what it says of later days is moved to
/// [`Summary::wrong_clock`], and its period ends today. One day is allowed for, because the patient's place may be ahead.
///
/// If its whole period is yet to come, the period is left empty: it then begins after it ends.
pub fn as_known_on(summary: &Summary, today: DayNumber) -> Cow<'_, Summary> {
    let ahead = summary.until.days_since(today);
    if i64::from(ahead) <= TOLERANCE {
        return Cow::Borrowed(summary);
    }
    let mut known = summary.clone();
    known.until = today;
    known.wrong_clock.ahead_days = ahead;
    known.seen.retain(|day| *day <= today);
    known.days.retain(|row| row.day <= today);
    known.settled.retain(|row| row.day <= today);
    known.delays.retain(|row| row.week <= today.0 / 7);
    known.taken.iter_mut().for_each(|row| row.day = row.day.min(today));
    known.well_again.iter_mut().for_each(|row| row.day = row.day.min(today));
    known.former.iter_mut().for_each(|part| part.until = part.until.min(today));
    let wrong = &mut known.wrong_clock;
    let runs = known.runs.extract_if(.., |run| run.day > today);
    wrong.runs.extend(runs.map(|run| RunOn { slot: None, ..run }));
    wrong.mornings.extend(known.mornings.extract_if(.., |row| row.day > today));
    wrong.during.extend(known.during.extract_if(.., |row| row.day > today));
    wrong.rated.extend(known.rated.extract_if(.., |row| row.day > today));
    wrong.alarms.extend(known.alarms.iter().filter(|alarm| alarm.day > today).map(|alarm| alarm.n));
    Cow::Owned(known)
}
