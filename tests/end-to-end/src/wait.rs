//! Waiting for something to happen, with a time limit.

use std::thread;
use std::time::{Duration, Instant};

/// Longest time to wait for anything. Much more than needed, so that tests do not fail on a slow machine.
pub const PATIENCE: Duration = Duration::from_secs(60);

const BETWEEN: Duration = Duration::from_millis(50);

/// Repeats `look` until it returns something or the time is over.
pub fn until<T>(mut look: impl FnMut() -> Option<T>) -> Option<T> {
    let end = Instant::now() + PATIENCE;
    loop {
        if let Some(found) = look() {
            return Some(found);
        }
        if Instant::now() > end {
            return None;
        }
        thread::sleep(BETWEEN);
    }
}
