//! Commands with which the clinic receives summaries, and what they answer.

pub use crate::markers::receiving::*;

use crate::Failure;
use chrono::NaiveDate;
use exercises::id::LogId;
use serde::{Deserialize, Serialize};

/// The most files that the window sends at once, because it has all of them in memory at once. More are sent one part after the other.
pub const MAX_FILES: usize = 32;

/// The endings of files that are received from a folder, in small letters: sealed files, and pictures of codes. What a file really is
/// depends on its contents.
pub const ENDINGS: [&str; 4] = [".age", ".png", ".jpg", ".jpeg"];

/// Whether a file of this name in a folder is received.
pub fn is_received(name: &str) -> bool {
    let name = name.to_lowercase();
    ENDINGS.iter().any(|ending| name.ends_with(ending))
}

/// The event that tells the window of files that are dragged over it or dropped on it.
pub const FILES: &str = "files";

/// What a person does with files over the window.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub enum FilesEvent {
    /// They are dragged over it.
    Over,
    /// They are dragged away again.
    Away,
    /// They are dropped on it, and can be received.
    Dropped {
        /// The number of the drop, by which the page asks for it.
        number: u32,
    },
}

/// A part of the files that were chosen in the window.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct ReceiveRequest {
    /// File names with their bytes in Base64, at most [`MAX_FILES`].
    pub files: Vec<(String, String)>,
    /// Whether it is the first part. Codes in pictures are joined over all parts from the first to the last.
    pub first: bool,
    /// Whether it is the last part.
    pub last: bool,
}

/// Which part of the files that were dropped, of a chosen folder, or of the files that the page has sent is to be received.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub struct NamedRequest {
    /// The number of the drop or of the chosen folder to begin with; without one, the next part of what is being received.
    pub begin: Option<u32>,
}

/// What was done with a part of the files: some were read, or some that were read were taken in.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Received {
    /// A receipt for each summary that was taken in.
    pub receipts: Vec<Receipt>,
    /// The number of files that were read by now.
    pub read: u32,
    /// The number of files among them that do not wait for being taken in.
    pub done: u32,
    /// The number of files.
    pub of: u32,
    /// The number of other files in the folders, which are not received.
    pub passed_over: u32,
    /// Whether it was the last part.
    pub last: bool,
}

/// The result for one summary, or for a file without one.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Receipt {
    /// The file's name; of a summary in several pictures, all their names.
    pub file: String,
    /// The outcome.
    pub outcome: Outcome,
    /// What else there is to say about it.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub notices: Vec<ReceiptNotice>,
}

/// What a summary shows besides its contents.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub enum ReceiptNotice {
    /// It comes from a device of which nothing was received before, while others of the patient are known.
    NewDevice {
        /// The device's log.
        device: LogId,
    },
    /// The device follows a revision that the store does not have.
    StoreBehind {
        /// That revision.
        revision: u16,
        /// The revision that the next card will have.
        next: u16,
    },
    /// The patient's case is closed.
    CaseClosed {
        /// Since when.
        on: NaiveDate,
    },
    /// The device's clock was ahead of the clinic's when it made the summary.
    ClockAhead {
        /// By how many days.
        days: u16,
    },
}

/// The result for one summary.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub enum Outcome {
    /// It covers days that no summary covered before.
    New {
        /// The patient's code.
        code: String,
        /// Number of these days.
        days: u16,
    },
    /// It completes days that were covered but not fully known.
    Filled {
        /// The patient's code.
        code: String,
        /// Number of these days.
        days: u16,
    },
    /// Everything was known already; nothing changed.
    Known {
        /// The patient's code.
        code: String,
    },
    /// Refused; nothing changed.
    Refused(Failure),
}

impl Receipt {
    /// Whether the clinic's own data could not be written, so that going on with more files is of no use.
    pub fn ends_receiving(&self) -> bool {
        matches!(
            self.outcome,
            Outcome::Refused(
                Failure::HomeFull { .. }
                    | Failure::HomeDisk { .. }
                    | Failure::HomeReadOnly { .. }
                    | Failure::HomeInUse { .. }
                    | Failure::ClinicLocked
            )
        )
    }
}

impl Outcome {
    /// The code of the patient whom the summary is of, unless it was refused.
    pub fn code(&self) -> Option<&str> {
        match self {
            Outcome::New { code, .. } | Outcome::Filled { code, .. } | Outcome::Known { code } => Some(code),
            Outcome::Refused(_) => None,
        }
    }
}

/// How many summaries were received, and how many files not.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize)]
pub struct Counts {
    /// Those that told something new.
    pub new: u32,
    /// Those that were known already.
    pub known: u32,
    /// What was refused.
    pub refused: u32,
}

impl Counts {
    /// How many there are together.
    pub fn all(&self) -> u32 {
        self.new + self.known + self.refused
    }

    /// Counts one more.
    pub fn add(&mut self, outcome: &Outcome) {
        let count = match outcome {
            Outcome::New { .. } | Outcome::Filled { .. } => &mut self.new,
            Outcome::Known { .. } => &mut self.known,
            Outcome::Refused(_) => &mut self.refused,
        };
        *count = count.saturating_add(1);
    }
}
