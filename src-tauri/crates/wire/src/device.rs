//! Commands about reminders and the person's own data.

pub use crate::markers::device::*;

use exercises::remind::Span;
use exercises::time::Stamp;
use serde::{Deserialize, Serialize};

use crate::Secret;

/// The state of the reminders.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct Reminders {
    /// The daily quiet times, in order.
    pub quiet: Vec<Span>,
    /// End of the current meeting; `None` if there is none.
    pub meeting_until: Option<Stamp>,
    /// Whether reminders are suppressed at this moment.
    pub silent: bool,
    /// Until when reminders are suppressed; `None` if they are not suppressed now, or if quiet times fill the whole day.
    pub silent_until: Option<Stamp>,
    /// The next reminder if nothing happens, within the next two weeks.
    pub next: Option<Stamp>,
}

/// All quiet times; they replace the previous ones.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct QuietTimesRequest {
    /// At most eight.
    pub quiet: Vec<Span>,
}

/// A time without reminders.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub struct MeetingRequest {
    /// Minutes from now, 1 to 720; `None` ends the meeting.
    pub minutes: Option<u16>,
}

/// A request to erase everything.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub struct EraseRequest {
    /// Whether the person was told what will be erased and agreed.
    pub everything: bool,
}

/// Least length of a code for the screen, in characters.
pub const MIN_SCREEN_CODE: u8 = 4;

/// A code for the screen as it was typed.
#[derive(Debug, Clone, Serialize, Deserialize)]
pub struct ScreenCode {
    /// The code.
    pub code: Secret,
}

/// Another code for the screen.
#[derive(Debug, Clone, Serialize, Deserialize)]
pub struct ScreenCodeRequest {
    /// The present code; `None` if there is none.
    pub old: Option<Secret>,
    /// The new one; `None` for no lock.
    pub new: Option<Secret>,
}

/// Whether the program runs while its window is closed. This is not stored: it is read from the system.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub struct BackgroundState {
    /// Whether it starts when the person logs in; `None` on systems where programs cannot.
    pub at_login: Option<bool>,
    /// Whether it stays in the tray when its window is closed while a plan is followed; `None` on systems where windows are not
    /// closed.
    pub in_tray: Option<bool>,
}

/// What the program does when its window is to be closed.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub enum Leaving {
    /// It stays in the background with its window minimised, and reminders come.
    Background,
    /// It ends: no reminder comes.
    End,
    /// The window stays open.
    GoOn,
}

/// A request to change whether the program starts at login.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub struct AtLoginRequest {
    /// Whether it starts at login.
    pub on: bool,
}
