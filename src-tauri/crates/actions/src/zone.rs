//! Converts the tz database's zones to plain offsets for the domain.

use chrono::{DateTime, Offset, TimeZone, Utc};
pub use chrono_tz::Tz;
use exercises::time::Offsets;

/// A time step that never contains two changes of one zone: 12 hours, in seconds. (The closest two in the database are days apart.)
const STEP_S: i64 = 12 * 3600;
/// How far back offsets are given, in seconds: a plan's history.
const BACK_S: i64 = 800 * 86_400;
/// How far ahead offsets are given, in seconds: longer than the longest plan.
const AHEAD_S: i64 = 400 * 86_400;

/// This device's zone: `TZ` if it names one, otherwise the system's, otherwise UTC.
pub fn local() -> Tz {
    let named = std::env::var("TZ").ok().and_then(|name| name.trim_start_matches(':').parse().ok());
    named.or_else(|| iana_time_zone::get_timezone().ok().and_then(|name| name.parse().ok())).unwrap_or(Tz::UTC)
}

/// A zone by its name in the tz database, such as `Europe/Vienna`.
pub fn named(name: &str) -> Option<Tz> {
    name.parse().ok()
}

/// The offsets of `place` from 800 days before `around_s` to 400 days after it (seconds since 1970 UTC).
pub fn offsets(place: Tz, around_s: i64) -> Offsets {
    let (from, until) = (around_s - BACK_S, around_s + AHEAD_S);
    let first_s = offset(place, from);
    let mut changes = Vec::new();
    let (mut at, mut current) = (from, first_s);
    while at < until {
        let next = at + STEP_S;
        let then = offset(place, next);
        if then != current {
            changes.push((change(place, at, next, current), then));
            current = then;
        }
        at = next;
    }
    Offsets { first_s, changes }
}

fn offset(place: Tz, utc_s: i64) -> i32 {
    let instant: DateTime<Utc> = DateTime::from_timestamp(utc_s, 0).unwrap_or_default();
    place.offset_from_utc_datetime(&instant.naive_utc()).fix().local_minus_utc()
}

/// The second at which the offset changes from `before`, between two instants that lie on both sides of the change.
fn change(place: Tz, mut before_s: i64, mut after_s: i64, before: i32) -> i64 {
    while after_s - before_s > 1 {
        let middle = before_s + (after_s - before_s) / 2;
        if offset(place, middle) == before { before_s = middle } else { after_s = middle }
    }
    after_s
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn changes_are_found_to_the_second() {
        let vienna = named("Europe/Vienna").expect("a zone");
        let offsets = offsets(vienna, 1_780_000_000);
        assert!(offsets.changes.contains(&(1_774_746_000, 7200)), "29 March 2026, 01:00 UTC: {offsets:?}");
        assert!(offsets.changes.contains(&(1_792_890_000, 3600)), "25 October 2026, 01:00 UTC: {offsets:?}");
    }

    #[test]
    fn half_hours_and_no_changes() {
        assert_eq!(offsets(named("Asia/Kolkata").expect("a zone"), 1_780_000_000), Offsets::fixed(19_800));
    }
}
