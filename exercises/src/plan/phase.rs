//! The days within a plan on which an item is to be done.

use chrono::{Duration, NaiveDate};

/// The part of a plan in which an item is to be done: from the first day to the last one, both included.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Phase {
    /// The first day; `None` if it begins with the plan.
    pub first: Option<NaiveDate>,
    /// The last day; `None` if it ends with the plan.
    pub last: Option<NaiveDate>,
}

/// Where a day lies, seen from a phase.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum PhaseState {
    /// The phase begins later, on this day.
    ToCome(NaiveDate),
    /// The day is in it.
    Now,
    /// The phase has ended, on this day.
    Over(NaiveDate),
}

impl Phase {
    /// The whole plan.
    pub const WHOLE: Phase = Phase { first: None, last: None };

    /// Whether it is the whole plan.
    pub fn is_whole(self) -> bool {
        self == Phase::WHOLE
    }

    /// Whether `day` is in it.
    pub fn contains(self, day: NaiveDate) -> bool {
        self.on(day) == PhaseState::Now
    }

    /// Whether it has begun or is over on `day`.
    pub fn on(self, day: NaiveDate) -> PhaseState {
        match self {
            Phase { first: Some(first), .. } if day < first => PhaseState::ToCome(first),
            Phase { last: Some(last), .. } if last < day => PhaseState::Over(last),
            _ => PhaseState::Now,
        }
    }

    /// Whether the two have a day in common.
    pub fn overlaps(self, other: Phase) -> bool {
        let ends_before = |one: Phase, other: Phase| one.last.zip(other.first).is_some_and(|(last, first)| last < first);
        !ends_before(self, other) && !ends_before(other, self)
    }

    /// The last day of it in a plan that ends on `until`.
    pub fn ends(self, until: Option<NaiveDate>) -> Option<NaiveDate> {
        [self.last, until].into_iter().flatten().min()
    }

    /// The same phase so many days later.
    pub fn later(self, days: i64) -> Phase {
        let later = |day: NaiveDate| day.checked_add_signed(Duration::days(days)).unwrap_or(day);
        Phase { first: self.first.map(later), last: self.last.map(later) }
    }

    /// What is left of it from `day` on; `None` if it is over.
    pub fn left_on(self, day: NaiveDate) -> Option<Phase> {
        let first = self.first.filter(|first| *first > day);
        self.last.is_none_or(|last| day <= last).then_some(Phase { first, last: self.last })
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn day(place: i64) -> NaiveDate {
        NaiveDate::from_ymd_opt(2027, 3, 1).expect("a date") + Duration::days(place)
    }

    fn phase(first: Option<i64>, last: Option<i64>) -> Phase {
        Phase { first: first.map(day), last: last.map(day) }
    }

    #[test]
    fn both_its_days_are_in_it() {
        let phase = phase(Some(3), Some(5));
        let on = [2, 3, 5, 6].map(|place| phase.on(day(place)));
        assert_eq!(on, [PhaseState::ToCome(day(3)), PhaseState::Now, PhaseState::Now, PhaseState::Over(day(5))]);
        assert!([-100, 0, 100].into_iter().all(|place| Phase::WHOLE.contains(day(place))));
        assert_eq!(
            (phase.ends(Some(day(4))), phase.ends(Some(day(9))), Phase::WHOLE.ends(None)),
            (Some(day(4)), Some(day(5)), None)
        );
    }

    #[test]
    fn phases_that_follow_each_other_have_no_day_in_common() {
        assert!(!phase(None, Some(6)).overlaps(phase(Some(7), None)));
        assert!(!phase(Some(7), None).overlaps(phase(None, Some(6))));
        assert!(phase(None, Some(7)).overlaps(phase(Some(7), None)));
        assert!(phase(Some(2), Some(4)).overlaps(phase(Some(1), Some(9))));
        assert!(Phase::WHOLE.overlaps(phase(Some(7), Some(7))) && Phase::WHOLE.overlaps(Phase::WHOLE));
    }

    #[test]
    fn what_is_left_of_it_has_no_first_day_in_the_past() {
        assert_eq!(phase(Some(3), Some(5)).left_on(day(4)), Some(phase(None, Some(5))));
        assert_eq!(phase(Some(3), Some(5)).left_on(day(3)), Some(phase(None, Some(5))));
        assert_eq!(phase(Some(3), None).left_on(day(2)), Some(phase(Some(3), None)));
        assert_eq!(phase(Some(3), Some(5)).left_on(day(6)), None);
        assert_eq!(phase(Some(3), None).later(-2), phase(Some(1), None));
    }
}
