//! The day at a glance, for the tray's menu.

use super::{reminders, today};
use crate::{ActionResult, DataFolder, Moment, platform};
use wire::app::Role;
use words::{Locale, Words};

/// The day at a glance.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct TraySummary {
    /// The texts of the menu.
    pub words: Words,
    /// What it says of the day; nothing on the clinic's side, or before a side was chosen.
    pub lines: Vec<String>,
    /// Whether a meeting goes on; `None` where there are no reminders to silence.
    pub meeting: Option<bool>,
    /// Whether a plan is followed, so that reminders may come.
    pub followed: bool,
}

impl TraySummary {
    /// Where there is no day to speak of.
    pub fn nothing(locale: Locale) -> TraySummary {
        TraySummary { words: platform::words(locale), lines: Vec::new(), meeting: None, followed: false }
    }
}

/// How the day stands.
pub fn show(folder: &DataFolder, moment: &Moment) -> ActionResult<TraySummary> {
    let locale = folder.locale();
    if folder.role() != Some(Role::Patient) {
        return Ok(TraySummary::nothing(locale));
    }
    let today = today::page(folder, moment)?;
    let meeting = reminders::meeting_until(&reminders::settings(folder)?, moment);
    let followed = today.is_followed();
    let words = platform::words(locale);
    Ok(TraySummary { words, lines: words.tray(&today, meeting), meeting: followed.then_some(meeting.is_some()), followed })
}
