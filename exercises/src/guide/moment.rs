//! Two clocks side by side: one that only ever goes forward, and the one on the wall.
//!
//! A device that sleeps stops the first on most platforms and never the second, so a sleep shows in their difference. Where
//! the first goes on during sleep, it shows as a stretch in which nobody asked the time.

/// A moment on both clocks of one device, in milliseconds.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Moment {
    /// The monotonic clock, from an origin of its own.
    pub steady_ms: u64,
    /// The wall clock, since 1970-01-01T00:00:00Z.
    pub wall_ms: i64,
}

/// The wall clock may run ahead of the steady one by so much between two looks, in milliseconds: setting a clock by the
/// network moves it by less.
pub const SLEPT_MS: i64 = 2_000;
/// Longest stretch between two looks at the clock, in milliseconds. A window out of sight still looks every two seconds.
pub const STALLED_MS: u64 = 10_000;

/// Whether the device slept, or the program stood still, between two looks.
pub(super) fn slept(before: Moment, now: Moment) -> bool {
    let steady = now.steady_ms.saturating_sub(before.steady_ms);
    let wall = now.wall_ms.saturating_sub(before.wall_ms);
    let ahead = wall.saturating_sub(i64::try_from(steady).unwrap_or(i64::MAX));
    ahead > SLEPT_MS || steady > STALLED_MS
}

#[cfg(test)]
mod tests {
    use super::*;

    fn at(steady_ms: u64, wall_ms: i64) -> Moment {
        Moment { steady_ms, wall_ms }
    }

    #[test]
    fn clocks_that_advance_together_mean_awake() {
        assert!(!slept(at(0, 0), at(100, 100)));
        assert!(!slept(at(0, 0), at(2_000, 2_050)), "a window out of sight looks every two seconds");
    }

    #[test]
    fn a_wall_clock_that_ran_ahead_means_sleep() {
        assert!(slept(at(0, 0), at(100, 60_000)));
    }

    #[test]
    fn a_wall_clock_set_back_or_a_little_forward_means_awake() {
        assert!(!slept(at(0, 0), at(100, -3_600_000)));
        assert!(!slept(at(0, 0), at(100, 1_900)));
    }

    #[test]
    fn a_long_time_without_a_tick_means_a_stall() {
        assert!(slept(at(0, 0), at(10_001, 10_001)));
    }

    #[test]
    fn extreme_clock_values_do_not_panic() {
        assert!(slept(at(0, i64::MIN), at(u64::MAX, i64::MAX)));
        assert!(!slept(at(u64::MAX, i64::MAX), at(0, i64::MIN)), "clocks that went back");
    }
}
