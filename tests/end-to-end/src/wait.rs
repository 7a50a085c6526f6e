//! Waiting: what a person does before saying that something did not happen.

use std::thread;
use std::time::{Duration, Instant};

/// How long anything may take. Far more than it needs, so that a slow machine fails nothing.
pub const PATIENCE: Duration = Duration::from_secs(60);

const BETWEEN: Duration = Duration::from_millis(50);

/// Looks again and again until there is something, or patience ends.
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
