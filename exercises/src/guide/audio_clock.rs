//! Estimates the time of the audio clock from the time of the steady clock.
//!
//! A web view renders sound in bursts, so its audio clock stops and jumps; read at any one moment it may be tens of milliseconds
//! late. Just after a burst it is right. The best estimate is therefore the largest lead of the audio clock over the steady clock
//! within the last half minute. Older readings are dropped, because the two clocks may run at different speeds, and because the
//! audio clock loses time for good if the sound stutters.

/// Largest drift between the two clocks, in seconds per second. Quartz clocks drift less.
const PARTING: f64 = 2e-4;
/// A sound is rescheduled if the estimate has moved by more than this, in seconds.
const MOVED_S: f64 = 0.002;
/// The best reading within each span of this length is kept, in seconds.
const SPAN_S: f64 = 4.0;
/// Number of spans that are kept.
const SPANS: usize = 8;

/// Estimates the lead of the audio clock over the steady clock.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct AudioClock {
    best: [Option<Seen>; SPANS],
    /// Time of the last reading, in seconds.
    steady_s: f64,
}

#[derive(Debug, Clone, Copy, PartialEq)]
struct Seen {
    lead_s: f64,
    steady_s: f64,
}

impl Seen {
    fn span(steady_s: f64) -> i64 {
        libm::floor(steady_s / SPAN_S) as i64
    }

    /// The lead of this reading, reduced by the largest drift until `steady_s`.
    fn at(self, steady_s: f64) -> f64 {
        self.lead_s - PARTING * (steady_s - self.steady_s).max(0.0)
    }
}

impl AudioClock {
    /// Takes a reading of both clocks at the same moment: the steady clock in milliseconds, the audio clock in seconds.
    pub fn sync(&mut self, steady_ms: f64, audio_s: f64) {
        let steady_s = steady_ms / 1000.0;
        let now = Seen { lead_s: audio_s - steady_s, steady_s };
        let span = Seen::span(steady_s);
        let best = &mut self.best[span.rem_euclid(SPANS as i64) as usize];
        let known = best.filter(|best| Seen::span(best.steady_s) == span && best.at(steady_s) >= now.lead_s);
        *best = Some(known.unwrap_or(now));
        self.steady_s = steady_s;
    }

    /// The best estimate of the lead, in seconds.
    fn lead(&self) -> Option<f64> {
        let first = Seen::span(self.steady_s) - SPANS as i64 + 1;
        let remembered = self.best.iter().flatten().filter(|best| Seen::span(best.steady_s) >= first);
        remembered.map(|best| best.at(self.steady_s)).reduce(f64::max)
    }

    /// The audio clock's time in seconds at a moment of the steady clock; `None` before the first reading.
    pub fn at(&self, steady_ms: f64) -> Option<f64> {
        self.lead().map(|lead_s| steady_ms / 1000.0 + lead_s)
    }

    /// Whether a sound for `steady_ms` that was scheduled at `audio_s` of the audio clock would now be scheduled at another time.
    pub fn has_moved(&self, steady_ms: f64, audio_s: f64) -> bool {
        self.at(steady_ms).is_some_and(|now| (now - audio_s).abs() > MOVED_S)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Readings every 16 ms of an audio clock that jumps by 80 ms and runs at `speed`.
    fn looked_at(seconds: u32, speed: f64) -> AudioClock {
        let mut clock = AudioClock::default();
        for look in 0..seconds * 60 {
            let steady_ms = f64::from(look) * 1000.0 / 60.0;
            let rendered = libm::floor(steady_ms * speed / 80.0) * 0.08;
            clock.sync(steady_ms, 7.0 + rendered);
        }
        clock
    }

    #[test]
    fn bursts_of_audio_time_do_not_move_the_estimate() {
        let clock = looked_at(10, 1.0);
        for ms in (0..10_000).step_by(500) {
            let at = clock.at(f64::from(ms)).expect("it was looked at");
            assert!((at - (7.0 + f64::from(ms) / 1000.0)).abs() < 0.017, "at {ms} ms: {at}");
        }
        let told = clock.at(5000.0).expect("it was looked at");
        assert!(!clock.has_moved(5000.0, told + 0.001) && clock.has_moved(5000.0, told + 0.1));
    }

    #[test]
    fn a_clock_of_another_speed_is_followed() {
        let clock = looked_at(600, 0.9999);
        let at = clock.at(600_000.0).expect("it was looked at");
        assert!((at - (7.0 + 600.0 * 0.9999)).abs() < 0.03, "{at}");
    }

    #[test]
    fn after_a_stutter_the_estimate_recovers_within_half_a_minute() {
        let mut clock = looked_at(20, 1.0);
        for second in 20..53_u32 {
            // A hidden window reads the clock once a second, each time at a different place within the bursts.
            let steady_ms = f64::from(second) * 1007.0;
            clock.sync(steady_ms, 7.0 - 0.06 + libm::floor(steady_ms / 80.0) * 0.08);
        }
        let at = clock.at(53_000.0).expect("it was looked at");
        assert!((at - (7.0 - 0.06 + 53.0)).abs() < 0.017, "{at}");
    }

    #[test]
    fn before_the_first_sync_nothing_is_known() {
        assert_eq!(AudioClock::default().at(0.0), None);
        assert!(!AudioClock::default().has_moved(0.0, 3.0));
    }
}
