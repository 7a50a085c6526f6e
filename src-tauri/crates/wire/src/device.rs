//! What a person asks about reminders and about their own data.

use exercises::remind::Span;
use exercises::time::Stamp;
use serde::{Deserialize, Serialize};

/// Command: how reminders stand.
pub struct ShowReminders;
/// Command: other quiet times.
pub struct SetReminders;
/// Command: no reminders for a while, or from now on again.
pub struct Meeting;
/// Command: save everything that this copy holds about the person, in plain.
pub struct ExportOwnData;
/// Command: save the slots to come for another calendar.
pub struct ExportCalendar;
/// Command: erase everything, for good.
pub struct EraseEverything;

/// Command: whether the program is there while its window is not.
pub struct ShowBackgroundState;
/// Command: open at login, or no more.
pub struct SetAtLogin;

/// How reminders stand.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct Reminders {
    /// Quiet times of every day, in order.
    pub quiet: Vec<Span>,
    /// Until when the meeting that goes on lasts.
    pub meeting_until: Option<Stamp>,
    /// Whether no reminder comes at this moment.
    pub silent: bool,
    /// Until when none comes; `None` where one may come now, or where quiet times fill the whole day.
    pub silent_until: Option<Stamp>,
    /// The next reminder if nothing happens, within the next two weeks.
    pub next: Option<Stamp>,
}

/// Quiet times, all of them; they replace those before.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct QuietTimesRequest {
    /// Up to eight.
    pub quiet: Vec<Span>,
}

/// No reminders for a while.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub struct MeetingRequest {
    /// For so many minutes from now, 1 to 720; `None` ends it.
    pub minutes: Option<u16>,
}

/// Erase everything.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub struct EraseRequest {
    /// The person was told what goes, and said yes.
    pub everything: bool,
}

/// Whether the program is there while its window is not. Nothing is kept of it: it is as the system says.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub struct BackgroundState {
    /// Whether it opens when the person logs in; `None` where programs do not.
    pub at_login: Option<bool>,
    /// Whether it goes on in the tray when its window is closed while a plan is followed; `None` where windows are not closed.
    pub in_tray: Option<bool>,
}

/// Open at login.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub struct AtLoginRequest {
    /// Whether to.
    pub on: bool,
}
