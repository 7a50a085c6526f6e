//! The only file that reads the system clock.
//!
//! Dates are sent and logged as days from 2020 to 2199. If the device's clock shows another year (an empty battery, a clock that was
//! never set), the nearest possible moment is used: the program works, and every date it shows makes clear that the clock is wrong.

use crate::zone;
use chrono::{DateTime, Datelike};
use chrono_tz::Tz;
use exercises::time::{Offsets, Stamp};
use std::sync::LazyLock;
use std::time::{Instant, SystemTime, UNIX_EPOCH};

/// The earliest moment that an action can get: noon of 2020-01-01 UTC, which is in 2020 in every zone. Milliseconds since 1970 UTC.
const FIRST_MS: i64 = 1_577_880_000_000;
/// The latest moment that an action can get: noon of 2198-12-31 UTC. Milliseconds since 1970 UTC.
const LAST_MS: i64 = 7_226_539_200_000;

/// A moment at the person's place. Every action takes one.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Moment {
    /// The moment.
    pub now: Stamp,
    /// The offsets from UTC of the person's zone around this moment.
    pub zone: Offsets,
}

/// The error for a text that is not a valid instant.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct NoInstant;

impl std::fmt::Display for NoInstant {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.write_str("an instant such as 2026-11-25T09:00:00+01:00, between 2020 and 2199")
    }
}

impl std::error::Error for NoInstant {}

/// The source of the time: the system's clock, or one that was set.
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

    /// A clock that shows `instant` (RFC 3339) now and runs from there; the zone is still the system's.
    ///
    /// # Errors
    /// [`NoInstant`] if it is not an instant between 2020 and 2199.
    pub fn set_to(instant: &str) -> Result<Clock, NoInstant> {
        let at = DateTime::parse_from_rfc3339(instant).map_err(|_| NoInstant)?;
        if !(2020..2199).contains(&at.year()) {
            return Err(NoInstant);
        }
        Ok(Clock { place: zone::local(), set: Some((at.timestamp_millis(), Instant::now())) })
    }

    /// Whether the clock was set with `--at`.
    pub fn is_set(&self) -> bool {
        self.set.is_some()
    }

    /// The present moment.
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

/// The system clock's time in milliseconds since 1970 UTC, or the nearest that lies within 2020 to 2199.
fn ms_of(shown: SystemTime) -> i64 {
    let since = shown.duration_since(UNIX_EPOCH).map_or(0, |since| since.as_millis());
    i64::try_from(since).unwrap_or(i64::MAX).clamp(FIRST_MS, LAST_MS)
}

/// Milliseconds since the first call, by a clock that nobody can set. On most systems it stands still while the computer sleeps.
pub fn awake_ms() -> i64 {
    static SINCE: LazyLock<Instant> = LazyLock::new(Instant::now);
    SINCE.elapsed().as_millis() as i64
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

    /// The zones that are farthest behind and ahead of UTC, and UTC itself.
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
