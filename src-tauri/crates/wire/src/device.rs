//! What a person asks about reminders and about their own data.

pub use crate::markers::device::*;

use exercises::remind::Span;
use exercises::time::Stamp;
use serde::{Deserialize, Serialize};

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

/// What becomes of the program.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub enum Leaving {
    /// It goes on in the background, its window minimised: reminders come.
    Background,
    /// It ends: no reminder comes.
    End,
    /// The window stays as it is.
    GoOn,
}

/// Open at login.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub struct AtLoginRequest {
    /// Whether to.
    pub on: bool,
}
