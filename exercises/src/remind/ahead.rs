//! The reminders that would come if nothing happened, for a system that shows them by itself while the program sleeps.

use super::{Lookout, Reminder};
use crate::time::Stamp;

/// Most reminders of one plan ahead. The smallest number that a phone's system keeps waiting for one program is 64 (recalled
/// from Apple's documentation of UNUserNotificationCenter, which drops what goes beyond it).
pub const MAX_AHEAD: usize = 64;

/// A reminder and its moment.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Coming {
    /// When it is shown.
    pub at: Stamp,
    /// What of. Each takes the place of the one before, and goes when its slot closes.
    pub reminder: Reminder,
}

/// The reminders from `now` on for `hours`, if nobody does anything until then: exactly those that [`Lookout::due`] gives to
/// whoever asks it at every moment. At most [`MAX_AHEAD`]; the later ones are left out.
pub fn ahead(mut lookout: Lookout<'_>, now: Stamp, hours: u16) -> Vec<Coming> {
    let until = now.utc_ms + i64::from(hours) * 3_600_000;
    let moments: Vec<i64> = std::iter::once(now.utc_ms).chain(lookout.moments(now.utc_ms, until)).collect();
    let mut coming = Vec::new();
    for at in moments {
        let at = lookout.stamp(at);
        let Some(reminder) = lookout.due(at) else { continue };
        lookout.show(&reminder, at);
        coming.push(Coming { at, reminder });
        if coming.len() == MAX_AHEAD {
            break;
        }
    }
    coming
}
