//! The day at a glance, for the tray's menu.

use super::{reminders, today};
use crate::{Answer, House, Moment, outside};
use exercises::catalogue::Lang;
use wire::house::Role;
use words::Words;

/// The day at a glance.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Glance {
    /// The texts of the menu.
    pub words: Words,
    /// What it says of the day; nothing on the clinic's side, or before a side was chosen.
    pub lines: Vec<String>,
    /// Whether a meeting goes on; `None` where there are no reminders to silence.
    pub meeting: Option<bool>,
    /// Whether a plan is followed, so that reminders may come.
    pub followed: bool,
}

impl Glance {
    /// Where there is no day to speak of.
    pub fn nothing(lang: Lang) -> Glance {
        Glance { words: outside::words(lang), lines: Vec::new(), meeting: None, followed: false }
    }
}

/// How the day stands.
pub fn show(house: &House, moment: &Moment) -> Answer<Glance> {
    let lang = house.lang();
    if house.role() != Some(Role::Patient) {
        return Ok(Glance::nothing(lang));
    }
    let today = today::page(house, moment)?;
    let meeting = reminders::meeting_until(&reminders::settings(house)?, moment);
    let followed = today.is_followed();
    let words = outside::words(lang);
    Ok(Glance { words, lines: words.tray(&today, meeting), meeting: followed.then_some(meeting.is_some()), followed })
}
