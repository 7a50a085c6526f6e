//! The day of the demo, and the moment at which its windows are opened.

use crate::scenario::moment;
use chrono::{DateTime, Datelike, Duration, FixedOffset, NaiveDate, SecondsFormat, Weekday};
use chrono_tz::Tz;

/// Time at which the first visit's card is issued: hour and minute.
pub const FIRST_VISIT: (u32, u32) = (8, 30);
/// Time at which the windows are opened: an hourly slot has just begun.
const OPENED: (u32, u32) = (14, 2);

/// The last working day, Monday to Friday, up to `today`: the patients' hourly holds are only due on working days.
pub fn last_working_day(today: NaiveDate) -> NaiveDate {
    let weekend = match today.weekday() {
        Weekday::Sat => 1,
        Weekday::Sun => 2,
        _ => 0,
    };
    today - Duration::days(weekend)
}

/// The moment of the first visit and the moment for the windows, as RFC 3339 with the offset of `place`.
pub fn moments(first: NaiveDate, until: NaiveDate, place: Tz) -> [String; 2] {
    [(first, FIRST_VISIT), (until, OPENED)].map(|(day, (hour, minute))| {
        let now = moment(day, hour, minute, place).now;
        let utc = DateTime::from_timestamp_millis(now.utc_ms).unwrap_or_default();
        let local = FixedOffset::east_opt(now.offset_s).map(|offset| utc.with_timezone(&offset));
        local.unwrap_or_else(|| utc.fixed_offset()).to_rfc3339_opts(SecondsFormat::Secs, false)
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    fn day(text: &str) -> NaiveDate {
        text.parse().expect("a date")
    }

    #[test]
    fn a_weekend_becomes_its_friday_and_a_working_day_stays() {
        let week = ["2026-11-23", "2026-11-24", "2026-11-25", "2026-11-26", "2026-11-27", "2026-11-28", "2026-11-29"];
        let set = week.map(|today| last_working_day(day(today)));
        assert_eq!(set[..5], week.map(day)[..5]);
        assert_eq!(set[5..], [day("2026-11-27"); 2]);
        // Across the end of a month, of February in a leap year, and of a year.
        assert_eq!(last_working_day(day("2026-08-01")), day("2026-07-31"));
        assert_eq!(last_working_day(day("2020-03-01")), day("2020-02-28"));
        assert_eq!(last_working_day(day("2028-01-02")), day("2027-12-31"));
    }

    #[test]
    fn the_moments_have_the_offset_of_their_own_day() {
        let vienna = moments(day("2026-10-16"), day("2026-11-27"), Tz::Europe__Vienna);
        assert_eq!(vienna, ["2026-10-16T08:30:00+02:00", "2026-11-27T14:02:00+01:00"]);
        let nepal = moments(day("2028-01-18"), day("2028-02-29"), Tz::Asia__Kathmandu);
        assert_eq!(nepal, ["2028-01-18T08:30:00+05:45", "2028-02-29T14:02:00+05:45"]);
    }
}
