//! On which days an item is due.
//!
//! A rhythm of days and a number for each week are counted from a day that stands in the item, so that a later card which leaves the item
//! as it is does not shift them.

use super::Weekdays;
use chrono::{Datelike, Days as Ahead, NaiveDate, Weekday};
use std::ops::RangeInclusive;

/// Days from one day to the next of a rhythm: every other day, to every fourth week.
pub const EVERY_NTH: RangeInclusive<u8> = 2..=28;
/// Times in a week of which the patient chooses the days. Seven would be every day.
pub const TIMES_A_WEEK: RangeInclusive<u8> = 1..=6;

/// On which days an item is due.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Days {
    /// On these days of every week.
    On(Weekdays),
    /// On a day and every so many days after it.
    EveryNth {
        /// Days from one to the next, [`EVERY_NTH`].
        n: u8,
        /// The first of them.
        from: NaiveDate,
    },
    /// So many times in each week, from Monday to Sunday, on days that the patient chooses. Reminders come on days that are spread
    /// evenly over the week.
    TimesAWeek {
        /// How many times, [`TIMES_A_WEEK`].
        n: u8,
        /// The first day that counts.
        from: NaiveDate,
    },
}

impl Days {
    /// Every day.
    pub const ALL: Days = Days::On(Weekdays::ALL);
    /// Monday to Friday.
    pub const WORKDAYS: Days = Days::On(Weekdays::WORKDAYS);

    /// The day from which they are counted; `None` for fixed days of the week.
    pub fn begin(self) -> Option<NaiveDate> {
        match self {
            Days::On(_) => None,
            Days::EveryNth { from, .. } | Days::TimesAWeek { from, .. } => Some(from),
        }
    }

    /// The same days counted from another one; fixed days of the week are returned unchanged.
    pub fn counted_from(self, from: NaiveDate) -> Days {
        match self {
            Days::On(_) => self,
            Days::EveryNth { n, .. } => Days::EveryNth { n, from },
            Days::TimesAWeek { n, .. } => Days::TimesAWeek { n, from },
        }
    }

    /// Whether the patient chooses the days of each week.
    pub fn are_chosen(self) -> bool {
        matches!(self, Days::TimesAWeek { .. })
    }

    /// How many days before or after one of them a session may be and still counts for it: one, and where they are further apart all days
    /// that are nearer to it than to the one before and the one after. None where it is due on every day, or the patient chooses.
    pub fn reach(self) -> i64 {
        let apart = match self {
            Days::On(Weekdays::ALL) | Days::TimesAWeek { .. } => return 0,
            Days::On(days) if days.iter().count() == 1 => 7,
            Days::On(_) => 2,
            Days::EveryNth { n, .. } => i64::from(n),
        };
        ((apart - 1) / 2).max(1)
    }

    /// Whether `day` is one of them. `until` is the last day on which anything is due; it cuts the last week in which the patient chooses.
    pub fn contain(self, day: NaiveDate, until: Option<NaiveDate>) -> bool {
        let since = |from: NaiveDate| day.signed_duration_since(from).num_days();
        match self {
            Days::On(days) => days.contains(day.weekday()),
            Days::EveryNth { n, from } => since(from) >= 0 && since(from) % i64::from(n.max(1)) == 0,
            Days::TimesAWeek { n, from } => of_week(n, day, from, until).contains(day.weekday()),
        }
    }

    /// Whether a plan may have them.
    pub(super) fn are_valid(self) -> bool {
        match self {
            Days::On(days) => !days.is_empty(),
            Days::EveryNth { n, .. } => EVERY_NTH.contains(&n),
            Days::TimesAWeek { n, .. } => TIMES_A_WEEK.contains(&n),
        }
    }
}

impl From<Weekdays> for Days {
    fn from(days: Weekdays) -> Days {
        Days::On(days)
    }
}

impl FromIterator<Weekday> for Days {
    fn from_iter<T: IntoIterator<Item = Weekday>>(days: T) -> Days {
        Days::On(days.into_iter().collect())
    }
}

/// The Monday of the week of `day`.
pub fn monday(day: NaiveDate) -> NaiveDate {
    day.checked_sub_days(Ahead::new(day.weekday().num_days_from_monday().into())).unwrap_or(day)
}

/// The days on which it is due in the week of `day`: spread evenly, for three times Monday, Wednesday and Friday. Of a week in which
/// only some days count, from `from` until `until`, the number is in proportion and rounded down.
pub fn of_week(n: u8, day: NaiveDate, from: NaiveDate, until: Option<NaiveDate>) -> Weekdays {
    let monday = monday(day);
    let place = |day: NaiveDate| day.signed_duration_since(monday).num_days();
    let (first, last) = (place(from).max(0), until.map_or(6, place).min(6));
    let many = i64::from(n) * (last - first + 1).max(0) / 7;
    let spread = (0..i64::from(n)).map(|turn| turn * 7 / i64::from(n)).filter(|place| (first..=last).contains(place));
    let bits = spread.take(usize::try_from(many).unwrap_or(0)).fold(0_u8, |bits, place| bits | 1 << place);
    Weekdays::from_bits(bits).unwrap_or(Weekdays::NONE)
}

#[cfg(test)]
mod tests {
    use super::*;
    use chrono::Duration;
    use chrono::Weekday::{Fri, Mon, Thu, Tue, Wed};

    /// A Monday.
    fn start() -> NaiveDate {
        NaiveDate::from_ymd_opt(2027, 3, 1).expect("a date")
    }

    fn day(after: i64) -> NaiveDate {
        start() + Duration::days(after)
    }

    #[test]
    fn every_other_day_goes_on_over_weeks_and_months_and_not_before_its_first_day() {
        let days = Days::EveryNth { n: 2, from: day(1) };
        let on: Vec<i64> = (-3..10).filter(|place| days.contain(day(*place), None)).collect();
        assert_eq!(on, [1, 3, 5, 7, 9]);
        assert!(days.contain(day(1001), None) && !days.contain(day(1000), None));
    }

    #[test]
    fn a_week_is_spread_evenly() {
        let of = |n| of_week(n, day(3), day(0), None).iter().collect::<Vec<_>>();
        assert_eq!(of(1), [Mon]);
        assert_eq!(of(2), [Mon, Thu]);
        assert_eq!(of(3), [Mon, Wed, Fri]);
        assert_eq!(of(5), [Mon, Tue, Wed, Fri, chrono::Weekday::Sat]);
        assert!(TIMES_A_WEEK.into_iter().all(|n| of(n).len() == usize::from(n)));
    }

    #[test]
    fn a_week_that_is_cut_owes_its_proportion_rounded_down() {
        for n in TIMES_A_WEEK {
            for first in 0..7_i64 {
                for last in first..7 {
                    let days = of_week(n, day(2), day(first), Some(day(last)));
                    let many = days.iter().count() as i64;
                    assert_eq!(many, i64::from(n) * (last - first + 1) / 7, "{n} a week from {first} to {last}");
                    let within =
                        |weekday: chrono::Weekday| (first..=last).contains(&i64::from(weekday.num_days_from_monday()));
                    assert!(days.iter().all(within));
                }
            }
        }
        assert_eq!(of_week(3, day(9), day(0), Some(day(4))), Weekdays::NONE, "the plan was over before");
        assert_eq!(of_week(3, day(2), day(9), None), Weekdays::NONE, "it has not begun");
    }

    #[test]
    fn the_further_apart_the_further_a_session_may_be_off() {
        let every = |n| Days::EveryNth { n, from: day(0) }.reach();
        assert_eq!([2, 3, 4, 7, 14, 28].map(every), [1, 1, 1, 3, 6, 13]);
        assert_eq!([Days::from_iter([Mon]), Days::from_iter([Mon, Thu]), Days::WORKDAYS].map(Days::reach), [3, 1, 1]);
        assert_eq!([Days::ALL, Days::TimesAWeek { n: 3, from: day(0) }].map(Days::reach), [0, 0]);
    }

    #[test]
    fn a_monday_begins_the_week() {
        for place in 0..7 {
            assert_eq!(monday(day(place)), start());
        }
        assert_eq!(monday(day(7)), day(7));
        assert!(Days::TimesAWeek { n: 3, from: day(0) }.contain(day(7), None));
    }
}
