//! When the clinic's store, or a patient's window, locks by itself: after a time in which nobody used the window, and after the computer has slept.

use super::lock;
use crate::patient::screen_lock;
use crate::{ActionResult, DataFolder, refuse};
use store::table::setting;
use wire::Failure;
use wire::app::ScreenLock;
use wire::clinic::IDLE_MINUTES;

const MINUTES: &str = "idle-minutes";
/// Idle minutes unless somebody chose others.
pub const USUAL_MINUTES: u8 = 10;
/// The clocks may drift apart by this much, in milliseconds, before it counts as sleep.
const SLEPT_MS: i64 = 30_000;
const MINUTE_MS: i64 = 60_000;
/// After how many idle minutes a patient's window that has a code locks.
const SCREEN_MINUTES: u8 = 5;

/// What two clocks show at one moment, in milliseconds.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Clocks {
    /// The time of day, which somebody can set, and which goes on while the computer sleeps.
    pub wall_ms: i64,
    /// The time since the program's start, which nobody can set, and which on most systems stands still while the computer sleeps.
    pub awake_ms: i64,
}

/// Remembers when the window was last used.
#[derive(Debug, Clone, Copy)]
pub struct IdleWatch {
    used: Clocks,
    checked: Clocks,
}

impl IdleWatch {
    /// A window that is used at this moment.
    pub fn new(now: Clocks) -> IdleWatch {
        IdleWatch { used: now, checked: now }
    }

    /// Somebody uses the window.
    pub fn used(&mut self, now: Clocks) {
        self.used = now;
    }

    /// Whether the store has to lock: nobody used the window for `limit_ms` by either clock, so setting the time back does not help;
    /// or the computer has slept since the last call.
    pub fn is_over(&mut self, now: Clocks, limit_ms: i64) -> bool {
        let before = std::mem::replace(&mut self.checked, now);
        let slept = (now.wall_ms - before.wall_ms) - (now.awake_ms - before.awake_ms) > SLEPT_MS;
        let idle_ms = (now.wall_ms - self.used.wall_ms).max(now.awake_ms - self.used.awake_ms);
        slept || idle_ms >= limit_ms
    }
}

/// After how many idle minutes the store locks.
pub(super) fn minutes(folder: &DataFolder) -> ActionResult<u8> {
    let chosen = folder.setting(MINUTES)?.and_then(|minutes| minutes.parse().ok());
    Ok(chosen.filter(|minutes| IDLE_MINUTES.contains(minutes)).unwrap_or(USUAL_MINUTES))
}

/// Chooses after how many idle minutes the store locks.
///
/// # Errors
/// [`Failure::OutOfRange`] for a number that is not one of [`IDLE_MINUTES`]; [`Failure::ClinicLocked`].
pub fn choose(folder: &mut DataFolder, minutes: u8) -> ActionResult<()> {
    lock::unlocked_keys(folder)?;
    if !IDLE_MINUTES.contains(&minutes) {
        let [least, .., most] = IDLE_MINUTES.map(i64::from);
        return Err(Failure::OutOfRange { least, most });
    }
    let dir = folder.dir();
    let kept = folder.home.store_mut().transaction(|tx| setting::put(tx, MINUTES, &minutes.to_string()));
    kept.map_err(refuse::store(&dir))
}

/// Locks the store if it is unlocked and its time is over; returns whether it did.
///
/// # Errors
/// Any failure to read the setting.
pub fn lock_if_over(folder: &mut DataFolder, watch: &mut IdleWatch, now: Clocks) -> ActionResult<bool> {
    if folder.keys.is_none() {
        // What happens while it is locked does not count against the next person.
        *watch = IdleWatch::new(now);
        return Ok(false);
    }
    let over = watch.is_over(now, limit_ms(minutes(folder)?));
    if over {
        lock::lock(folder);
    }
    Ok(over)
}

/// Whether nobody used the patient's window for some minutes, or the computer has slept, while the window has a code and is open. The window
/// then locks, unless an exercise is in progress.
///
/// # Errors
/// Any failure to read whether there is a code.
pub fn is_screen_idle(folder: &DataFolder, watch: &mut IdleWatch, now: Clocks) -> ActionResult<bool> {
    if screen_lock::state(folder)? != ScreenLock::Open {
        *watch = IdleWatch::new(now);
        return Ok(false);
    }
    Ok(watch.is_over(now, limit_ms(SCREEN_MINUTES)))
}

/// A debug build takes a shorter limit for tests from `CARRYOVER_IDLE_MS`.
fn limit_ms(minutes: u8) -> i64 {
    let shorter = std::env::var("CARRYOVER_IDLE_MS").ok().filter(|_| cfg!(debug_assertions));
    shorter.and_then(|ms| ms.parse().ok()).unwrap_or(i64::from(minutes) * MINUTE_MS)
}

#[cfg(test)]
mod tests {
    use super::*;

    const LIMIT: i64 = 10 * MINUTE_MS;

    fn at(ms: i64) -> Clocks {
        Clocks { wall_ms: 1_795_600_000_000 + ms, awake_ms: ms }
    }

    #[test]
    fn it_is_over_when_nobody_used_the_window_for_the_limit() {
        let mut watch = IdleWatch::new(at(0));
        assert!(!watch.is_over(at(LIMIT - 1), LIMIT));
        watch.used(at(LIMIT - 1));
        assert!(!watch.is_over(at(2 * LIMIT - 2), LIMIT));
        assert!(watch.is_over(at(2 * LIMIT - 1), LIMIT));
    }

    #[test]
    fn setting_the_time_back_does_not_put_it_off() {
        let mut watch = IdleWatch::new(at(0));
        let back = |ms: i64| Clocks { wall_ms: at(ms).wall_ms - 3_600_000, awake_ms: ms };
        assert!(!watch.is_over(back(LIMIT - 1), LIMIT));
        assert!(watch.is_over(back(LIMIT), LIMIT));
    }

    #[test]
    fn sleep_ends_it_at_once() {
        let mut watch = IdleWatch::new(at(0));
        assert!(!watch.is_over(at(5_000), LIMIT));
        let woken = Clocks { wall_ms: at(5_000).wall_ms + 2 * MINUTE_MS, awake_ms: 6_000 };
        assert!(watch.is_over(woken, LIMIT));
        assert!(!watch.is_over(Clocks { wall_ms: woken.wall_ms + 1, awake_ms: 6_001 }, LIMIT), "once");
    }
}
