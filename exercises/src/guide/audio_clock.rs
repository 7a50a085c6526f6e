//! What the audio clock says at a moment of the steady clock.
//!
//! A web view renders sound in bursts, so that its audio clock stands still and jumps; asked at any one moment it may be tens of
//! milliseconds behind. Just after a burst it is right. The largest lead over the steady clock that was seen is therefore the best
//! guess; it is let go of slowly, since the two clocks may also run at different speeds.

/// The two clocks may part by so much, in seconds a second: quartz is better than this.
const PARTING: f64 = 2e-4;
/// A sound that was told ahead is told anew where the guess has moved by more than this, in seconds.
const MOVED_S: f64 = 0.002;

/// The lead of the audio clock over the steady one.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct AudioClock {
    seen: Option<Seen>,
}

#[derive(Debug, Clone, Copy, PartialEq)]
struct Seen {
    lead_s: f64,
    steady_s: f64,
}

impl AudioClock {
    /// Looks at both clocks at once: milliseconds of the steady one, seconds of the audio clock.
    pub fn look(&mut self, steady_ms: f64, audio_s: f64) {
        let steady_s = steady_ms / 1000.0;
        let lead_s = audio_s - steady_s;
        let kept = self.seen.map(|seen| seen.lead_s - PARTING * (steady_s - seen.steady_s).max(0.0));
        self.seen = Some(Seen { lead_s: kept.map_or(lead_s, |kept| kept.max(lead_s)), steady_s });
    }

    /// The audio clock's second at a moment of the steady clock; `None` before the first look.
    pub fn at(&self, steady_ms: f64) -> Option<f64> {
        self.seen.map(|seen| steady_ms / 1000.0 + seen.lead_s)
    }

    /// Whether what was to sound at `steady_ms` was told to sound at another moment, `audio_s`.
    pub fn has_moved(&self, steady_ms: f64, audio_s: f64) -> bool {
        self.at(steady_ms).is_some_and(|now| (now - audio_s).abs() > MOVED_S)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// A clock that jumps by 80 ms, looked at every 16 ms, its own speed a little off.
    fn looked_at(seconds: u32, speed: f64) -> AudioClock {
        let mut clock = AudioClock::default();
        for look in 0..seconds * 60 {
            let steady_ms = f64::from(look) * 1000.0 / 60.0;
            let rendered = libm::floor(steady_ms * speed / 80.0) * 0.08;
            clock.look(steady_ms, 7.0 + rendered);
        }
        clock
    }

    #[test]
    fn bursts_do_not_move_it() {
        let clock = looked_at(10, 1.0);
        for ms in (0..10_000).step_by(500) {
            let at = clock.at(f64::from(ms)).expect("it was looked at");
            assert!((at - (7.0 + f64::from(ms) / 1000.0)).abs() < 0.017, "at {ms} ms: {at}");
        }
        let told = clock.at(5000.0).expect("it was looked at");
        assert!(!clock.has_moved(5000.0, told + 0.001) && clock.has_moved(5000.0, told + 0.1));
    }

    #[test]
    fn another_speed_is_followed() {
        let clock = looked_at(600, 0.9999);
        let at = clock.at(600_000.0).expect("it was looked at");
        assert!((at - (7.0 + 600.0 * 0.9999)).abs() < 0.03, "{at}");
    }

    #[test]
    fn nothing_is_known_before_the_first_look() {
        assert_eq!(AudioClock::default().at(0.0), None);
        assert!(!AudioClock::default().has_moved(0.0, 3.0));
    }
}
