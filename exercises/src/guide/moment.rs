//! A moment on two clocks: the steady clock, which only goes forward, and the wall clock.
//!
//! On most platforms a sleeping device stops the steady clock but never the wall clock, so a sleep shows as a difference. Where the
//! steady clock continues during sleep, it shows as a long time between two looks at the clock.

/// A moment on both clocks of one device, in milliseconds.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Moment {
    /// Time of the monotonic clock, from an arbitrary origin.
    pub steady_ms: u64,
    /// Time of the wall clock since 1970-01-01T00:00:00Z.
    pub wall_ms: i64,
}

/// Largest lead that the wall clock may gain over the steady one between two looks, in milliseconds. Synchronising a clock by the
/// network moves it by less.
pub const SLEPT_MS: i64 = 2_000;
/// Longest time between two looks at the clock, in milliseconds. A hidden window still looks every two seconds.
pub const STALLED_MS: u64 = 10_000;

/// Whether the device slept or the program did not run between two looks at the clock.
pub(super) fn slept(before: Moment, now: Moment) -> bool {
    let steady = now.steady_ms.saturating_sub(before.steady_ms);
    let wall = now.wall_ms.saturating_sub(before.wall_ms);
    let ahead = wall.saturating_sub(i64::try_from(steady).unwrap_or(i64::MAX));
    ahead > SLEPT_MS || steady > STALLED_MS
}

/// Milliseconds that passed on the wall clock between two looks, but not on the steady clock.
pub(super) fn lost_ms(before: Moment, now: Moment) -> u64 {
    let wall = u64::try_from(now.wall_ms.saturating_sub(before.wall_ms)).unwrap_or(0);
    wall.saturating_sub(now.steady_ms.saturating_sub(before.steady_ms))
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
