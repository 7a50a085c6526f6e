//! Stance times measured at visits, each with its day.
//!
//! Cards and plan files of older versions of this program give no days. Their times are read as those versions read them: for
//! each condition, the last one in the list was measured on the day of issue, and each one before it on an earlier day of its
//! own, which is not known.

use super::{BodySide, Plan};
use crate::catalogue::{Eyes, Surface};
use chrono::NaiveDate;
use std::cmp::Reverse;
use std::collections::BTreeSet;

/// The longest stance time that can be entered, in tenths of a second: ten minutes, far beyond any published time.
pub const MAX_STANCE_TENTHS: u16 = 6000;

/// A single-leg stance time measured at a visit.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct StanceBaseline {
    /// The day of the visit; `None` if an older card or plan file does not give it.
    pub taken: Option<NaiveDate>,
    /// The leg that the patient stood on.
    pub leg: BodySide,
    /// The surface under the foot.
    pub surface: Surface,
    /// Whether the eyes were open or closed.
    pub eyes: Eyes,
    /// The time in tenths of a second.
    pub tenths: u16,
    /// Whether the time was ended by a limit and not by the foot coming down; the real time is then at least this long.
    pub capped: bool,
}

/// The condition under which a stance time is measured.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct StanceField {
    /// The leg that the patient stands on.
    pub leg: BodySide,
    /// The surface under the foot.
    pub surface: Surface,
    /// Whether the eyes are open or closed.
    pub eyes: Eyes,
}

impl StanceField {
    /// The two conditions required for every balance item: each leg with eyes open on the firm floor.
    pub const FIRM_OPEN: [StanceField; 2] =
        [StanceField::firm_open(BodySide::Left), StanceField::firm_open(BodySide::Right)];

    /// One leg with eyes open on the firm floor.
    pub const fn firm_open(leg: BodySide) -> StanceField {
        StanceField { leg, surface: Surface::Firm, eyes: Eyes::Open }
    }

    /// Whether `baseline` was measured under this condition.
    pub fn is_of(&self, baseline: &StanceBaseline) -> bool {
        *self == baseline.field()
    }
}

impl StanceBaseline {
    /// The condition under which it was measured.
    pub fn field(&self) -> StanceField {
        StanceField { leg: self.leg, surface: self.surface, eyes: self.eyes }
    }
}

impl Plan {
    /// The stance times with their days. Where no day is given, the last time of each condition gets the day of issue. Those
    /// before it keep `None`; each of them counts as a different earlier day.
    pub fn dated_baselines(&self) -> Vec<StanceBaseline> {
        let all = &self.prescription.baselines;
        let last = |at: usize| !all[at + 1..].iter().any(|later| later.field() == all[at].field());
        let dated = |(at, baseline): (usize, &StanceBaseline)| StanceBaseline {
            taken: baseline.taken.or(last(at).then_some(self.header.issued)),
            ..*baseline
        };
        all.iter().enumerate().map(dated).collect()
    }
}

/// The newest of the `dated` times under a condition. If there are several of one day, the last in the list, because it is
/// the correction.
pub fn newest(dated: &[StanceBaseline], field: StanceField) -> Option<&StanceBaseline> {
    dated.iter().filter(|baseline| field.is_of(baseline)).max_by_key(|baseline| baseline.taken)
}

/// The number of days on which a leg stood for `tenths` of a second or longer with eyes open on the firm floor: the days of
/// `dated` times, and `other` days on which it is known from elsewhere.
pub fn days_reached(
    dated: &[StanceBaseline],
    leg: BodySide,
    tenths: u16,
    other: impl IntoIterator<Item = NaiveDate>,
) -> usize {
    let long = || dated.iter().filter(|one| StanceField::firm_open(leg).is_of(one) && one.tenths >= tenths);
    let days: BTreeSet<NaiveDate> = long().filter_map(|baseline| baseline.taken).chain(other).collect();
    days.len() + long().filter(|baseline| baseline.taken.is_none()).count()
}

/// For each condition the longest times of up to `days` different days, longest first; only the longest time of each day.
pub(crate) fn longest(dated: &[StanceBaseline], days: usize) -> Vec<StanceBaseline> {
    let mut sorted = dated.to_vec();
    sorted.sort_by_key(|baseline| Reverse(baseline.tenths));
    let mut kept: Vec<StanceBaseline> = Vec::new();
    for baseline in sorted {
        let like = || kept.iter().filter(|other| other.field() == baseline.field());
        let known_day = baseline.taken.is_some() && like().any(|other| other.taken == baseline.taken);
        if !known_day && like().count() < days {
            kept.push(baseline);
        }
    }
    kept
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::review::samples::{baseline, plan, start};
    use chrono::Duration;

    fn on(day: i64, leg: BodySide, tenths: u16) -> StanceBaseline {
        StanceBaseline { taken: Some(start() + Duration::days(day)), ..baseline(leg, tenths) }
    }

    #[test]
    fn without_days_the_last_is_of_the_day_of_issue_and_those_before_are_earlier_days() {
        let mut old = plan();
        old.header.issued = start() + Duration::days(14);
        old.prescription.baselines =
            vec![baseline(BodySide::Left, 310), baseline(BodySide::Left, 320), baseline(BodySide::Right, 90)];
        let taken: Vec<_> = old.dated_baselines().iter().map(|one| one.taken).collect();
        assert_eq!(taken, [None, Some(old.header.issued), Some(old.header.issued)]);
        assert_eq!(days_reached(&old.dated_baselines(), BodySide::Left, 300, []), 2, "as the program that wrote it counted");
    }

    #[test]
    fn a_day_that_is_known_stays() {
        let mut told = plan();
        told.header.issued = start() + Duration::days(14);
        told.prescription.baselines = vec![on(0, BodySide::Left, 310), on(0, BodySide::Right, 310)];
        assert_eq!(told.dated_baselines(), told.prescription.baselines);
    }

    #[test]
    fn two_times_of_one_day_are_one_day() {
        let told = [on(0, BodySide::Left, 310), on(0, BodySide::Left, 320), on(7, BodySide::Right, 450)];
        assert_eq!(days_reached(&told, BodySide::Left, 300, []), 1);
        assert_eq!(days_reached(&told, BodySide::Left, 300, [start()]), 1, "at home on the day of the visit");
        assert_eq!(days_reached(&told, BodySide::Left, 300, [start() + Duration::days(1)]), 2);
        assert_eq!(days_reached(&told, BodySide::Left, 311, [start() + Duration::days(1)]), 2);
        assert_eq!(days_reached(&told, BodySide::Left, 321, []), 0);
    }

    #[test]
    fn the_newest_is_the_one_of_the_last_day_wherever_it_is_in_the_list() {
        let told = [on(7, BodySide::Left, 40), on(0, BodySide::Left, 310), on(7, BodySide::Left, 60)];
        assert_eq!(newest(&told, StanceField::firm_open(BodySide::Left)).map(|one| one.tenths), Some(60));
        assert_eq!(newest(&told, StanceField::firm_open(BodySide::Right)), None);
    }

    #[test]
    fn the_longest_times_are_of_different_days() {
        let told =
            [on(0, BodySide::Left, 310), on(7, BodySide::Left, 330), on(7, BodySide::Left, 340), on(9, BodySide::Left, 50)];
        assert_eq!(longest(&told, 2), [on(7, BodySide::Left, 340), on(0, BodySide::Left, 310)]);
        let unknown = [baseline(BodySide::Left, 310), baseline(BodySide::Left, 320), on(9, BodySide::Left, 50)];
        assert_eq!(longest(&unknown, 2), [unknown[1], unknown[0]], "each on a day of its own");
    }
}
