//! A choice among the patients of the list.

use chrono::NaiveDate;
use wire::clinic::PatientLine;
use words::Key;

/// A choice among the patients.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Filter {
    /// Everybody whose case is open.
    All,
    /// Whoever has an alarm that no card has cleared.
    Alarm,
    /// Whose visit is today.
    VisitToday,
    /// Whose summary tells of days since the last card.
    NewSummary,
    /// Of whom nothing was received for two weeks.
    Silent,
    /// Whose case is closed.
    Closed,
}

impl Filter {
    /// All choices, in the order in which they are offered.
    pub const ALL: [Filter; 6] =
        [Filter::All, Filter::Alarm, Filter::VisitToday, Filter::NewSummary, Filter::Silent, Filter::Closed];

    /// Whether the patient is shown. Whose case is closed is shown among the closed ones alone.
    pub fn has(self, line: &PatientLine, today: NaiveDate) -> bool {
        if line.closed.is_some() != (self == Filter::Closed) {
            return false;
        }
        match self {
            Filter::All | Filter::Closed => true,
            Filter::Alarm => line.alarms > 0,
            Filter::VisitToday => line.visits_on(today),
            Filter::NewSummary => line.has_new_summary(),
            Filter::Silent => line.is_silent(today),
        }
    }

    /// Its name.
    pub fn text(self) -> Key {
        match self {
            Filter::All => Key::FilterAll,
            Filter::Alarm => Key::FilterAlarm,
            Filter::VisitToday => Key::FilterVisitToday,
            Filter::NewSummary => Key::FilterNewSummary,
            Filter::Silent => Key::FilterSilent,
            Filter::Closed => Key::FilterClosed,
        }
    }
}
