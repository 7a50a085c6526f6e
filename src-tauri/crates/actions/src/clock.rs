//! The only file that reads the clock.

use crate::zone;
use chrono::{DateTime, Datelike};
use chrono_tz::Tz;
use exercises::time::{Offsets, Stamp};
use std::time::{Instant, SystemTime, UNIX_EPOCH};

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

    /// Milliseconds since 1970 UTC.
    pub fn now_ms(&self) -> i64 {
        match self.set {
            Some((start, since)) => start + since.elapsed().as_millis() as i64,
            None => SystemTime::now().duration_since(UNIX_EPOCH).map_or(0, |since| since.as_millis() as i64),
        }
    }
}

/// The moment `utc_ms` in `place`.
pub fn at(utc_ms: i64, place: Tz) -> Moment {
    let zone = zone::offsets(place, utc_ms.div_euclid(1000));
    Moment { now: zone.stamp(utc_ms), zone }
}
