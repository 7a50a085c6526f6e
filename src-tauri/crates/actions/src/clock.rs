//! The only file that reads the clock.
//!
//! Dates travel and are logged as days from 2020 to 2199. A device whose clock shows another year (an empty battery, a clock that
//! was never set) gets the nearest moment within: it goes on, and every date that it shows says that its clock is wrong.

use crate::zone;
use chrono::{DateTime, Datelike};
use chrono_tz::Tz;
use exercises::time::{Offsets, Stamp};
use std::time::{Instant, SystemTime, UNIX_EPOCH};

/// The first moment that any action gets: noon of 2020-01-01 UTC, which lies in 2020 in every zone.
const FIRST_MS: i64 = 1_577_880_000_000;
/// The last one: noon of 2198-12-31 UTC.
const LAST_MS: i64 = 7_226_539_200_000;

/// A moment in the place where the person is: what every action gets passed.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Moment {
    /// The moment.
    pub now: Stamp,
    /// The offsets of the place around it.
    pub zone: Offsets,
}

/// A text that names no instant.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct NoInstant;

impl std::fmt::Display for NoInstant {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.write_str("an instant such as 2026-11-25T09:00:00+01:00, between 2020 and 2199")
    }
}

impl std::error::Error for NoInstant {}

/// Where the time comes from.
#[derive(Debug, Clone)]
pub struct Clock {
    place: Tz,
    set: Option<(i64, Instant)>,
}

impl Clock {
    /// The system's time and zone.
    pub fn system() -> Clock {
        Clock { place: zone::local(), set: None }
    }

    /// A clock that shows `instant` (RFC 3339) now and goes on from there; the zone stays the system's.
    ///
    /// # Errors
    /// [`NoInstant`], if it is no instant between 2020 and 2199.
    pub fn set_to(instant: &str) -> Result<Clock, NoInstant> {
        let at = DateTime::parse_from_rfc3339(instant).map_err(|_| NoInstant)?;
        if !(2020..2199).contains(&at.year()) {
            return Err(NoInstant);
        }
        Ok(Clock { place: zone::local(), set: Some((at.timestamp_millis(), Instant::now())) })
    }

    /// Whether `--at` set it.
    pub fn is_set(&self) -> bool {
        self.set.is_some()
    }

    /// Now.
    pub fn moment(&self) -> Moment {
        at(self.now_ms(), self.place)
    }

    /// Milliseconds since 1970 UTC, within 2020 to 2199 in every zone.
    pub fn now_ms(&self) -> i64 {
        match self.set {
            Some((start, since)) => start.saturating_add(since.elapsed().as_millis() as i64).clamp(FIRST_MS, LAST_MS),
            None => ms_of(SystemTime::now()),
        }
    }
}

/// Milliseconds since 1970 UTC of what the system's clock shows, or the nearest that lie within 2020 to 2199.
fn ms_of(shown: SystemTime) -> i64 {
    let since = shown.duration_since(UNIX_EPOCH).map_or(0, |since| since.as_millis());
    i64::try_from(since).unwrap_or(i64::MAX).clamp(FIRST_MS, LAST_MS)
}

/// The moment `utc_ms` in `place`.
pub fn at(utc_ms: i64, place: Tz) -> Moment {
    let zone = zone::offsets(place, utc_ms.div_euclid(1000));
    Moment { now: zone.stamp(utc_ms), zone }
}

#[cfg(test)]
mod tests {
    use super::*;
    use exercises::id::ItemId;
    use exercises::log::LogEvent;
    use exercises::slots::SlotRef;
    use std::time::Duration;

    /// The zones that are farthest behind UTC and farthest ahead of it.
    const EDGES: [&str; 3] = ["Etc/GMT+12", "UTC", "Pacific/Kiritimati"];

    #[track_caller]
    fn a_reminder_is_logged_at(utc_ms: i64) {
        for place in EDGES {
            let day = at(utc_ms, zone::named(place).expect("a zone")).now.date();
            let bytes = format::entry::write(&LogEvent::Reminded { slot: SlotRef { day, item: ItemId(1), number: 0 } });
            assert!(format::entry::read(&bytes).is_ok(), "{place}");
        }
    }

    #[test]
    fn a_system_clock_of_another_century_gives_a_moment_that_can_be_logged() {
        let day = Duration::from_secs(86_400);
        let never_set = [UNIX_EPOCH - day, UNIX_EPOCH, UNIX_EPOCH + 18_261 * day, UNIX_EPOCH + 120_000 * day];
        for shown in never_set {
            a_reminder_is_logged_at(ms_of(shown));
        }
    }

    #[test]
    fn a_clock_set_to_the_first_or_the_last_day_gives_a_moment_that_can_be_logged() {
        for instant in ["2020-01-01T00:00:00+14:00", "2198-12-31T23:59:59-12:00"] {
            a_reminder_is_logged_at(Clock::set_to(instant).expect("an instant").now_ms());
        }
    }

    #[test]
    fn a_clock_that_is_right_is_read_as_it_is() {
        let shown = UNIX_EPOCH + Duration::from_millis(1_795_600_000_123);
        assert_eq!(ms_of(shown), 1_795_600_000_123);
    }
}
