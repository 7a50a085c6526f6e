//! The reminders to come if nothing happens, for a system that shows them by itself while the program is not running.

use super::{Reminder, ReminderContext};
use crate::time::Stamp;

/// Largest number of reminders given ahead for one plan. The smallest number of pending notifications that a phone's system keeps
/// for one program is 64 (quoted from memory from Apple's documentation of UNUserNotificationCenter, which drops any beyond it).
pub const MAX_AHEAD: usize = 64;

/// A reminder and when it is shown.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct UpcomingReminder {
    /// When it is shown.
    pub at: Stamp,
    /// The reminder. It replaces the previous one, and is removed when its slot closes.
    pub reminder: Reminder,
}

/// The reminders from `now` on for `hours`, if nobody does anything until then: exactly those that [`ReminderContext::due`] would
/// give if it were asked at every moment. At most [`MAX_AHEAD`]; later ones are left out.
pub fn upcoming(mut context: ReminderContext<'_>, now: Stamp, hours: u16) -> Vec<UpcomingReminder> {
    let until = now.utc_ms + i64::from(hours) * 3_600_000;
    let moments: Vec<i64> = std::iter::once(now.utc_ms).chain(context.moments(now.utc_ms, until)).collect();
    let mut found = Vec::new();
    for at in moments {
        let at = context.stamp(at);
        let Some(reminder) = context.due(at) else { continue };
        context.show(&reminder, at);
        found.push(UpcomingReminder { at, reminder });
        if found.len() == MAX_AHEAD {
            break;
        }
    }
    found
}
