//! A summary of the day for the tray's menu.

use super::{reminders, today};
use crate::{ActionResult, DataFolder, Moment, platform};
use wire::app::Role;
use words::{Locale, Words};

/// The summary of the day.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct TraySummary {
    /// The texts of the menu.
    pub words: Words,
    /// The lines about the day; empty on the clinic's side, or before a side was chosen.
    pub lines: Vec<String>,
    /// Whether there is a meeting at the moment; `None` if there are no reminders that it would suppress.
    pub meeting: Option<bool>,
    /// Whether a plan is followed, so that reminders may come.
    pub followed: bool,
}

impl TraySummary {
    /// The summary if there is no day to describe.
    pub fn nothing(locale: Locale) -> TraySummary {
        TraySummary { words: platform::words(locale), lines: Vec::new(), meeting: None, followed: false }
    }
}

/// The summary of the present day.
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
