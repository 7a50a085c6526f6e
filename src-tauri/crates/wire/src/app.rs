//! Commands for both sides of the program: which side it is on, and the contents of the catalogue.

pub use crate::markers::app::*;

use chrono::NaiveDate;
use exercises::slots::SlotRef;
use exercises::time::Stamp;
use serde::{Deserialize, Serialize};

use crate::Failure;
use crate::saved::SavedFile;

/// Which side a data folder is on. It never changes.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub enum Role {
    /// Doing exercises.
    Patient,
    /// Prescribing them.
    Clinic,
}

/// The side chosen at first start.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct RoleRequest {
    /// The side.
    pub role: Role,
}

/// Whether to look around in a sample plan.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct SampleRequest {
    /// `false` leaves it.
    pub begin: bool,
}

/// The chosen language.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct LocaleRequest {
    /// Its tag; `None` to use the system's language.
    pub tag: Option<String>,
}

/// The state of the program.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct AppState {
    /// The side; `None` before the first start is done.
    pub role: Option<Role>,
    /// The present moment, according to this run's clock.
    pub now: Stamp,
    /// Whether the time was set with `--at`: the window then shows a note.
    pub at_is_set: bool,
    /// The language of all text, by its tag, such as "es-MX".
    pub locale: String,
    /// The chosen language; `None` if the system's is used.
    pub chosen_locale: Option<String>,
    /// Whether texts are in the made-up language, which only tests use.
    pub pseudo: bool,
    /// On the patient's side: whether any card has been taken.
    pub has_plan: bool,
    /// Whether this is a sample plan for looking around, of which nothing is kept.
    pub sample: bool,
    /// On the clinic's side: whether its store is unlocked.
    pub lock: LockState,
    /// On the patient's side: whether the window asks for a code.
    pub screen: ScreenLock,
    /// Whether the data folder was a copy when it was opened.
    pub copied: Option<Copied>,
    /// The slot whose page a notification asked to open; given only once.
    pub open_slot: Option<SlotRef>,
}

/// Whether the patient's window asks for a code.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub enum ScreenLock {
    /// There is no code.
    Off,
    /// There is a code, and the window is open.
    Open,
    /// The window shows nothing until the code is typed.
    Locked,
}

/// How a data folder came to be another one than was used on this machine last.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub enum Copied {
    /// It was moved or copied here.
    Moved,
    /// A copy of an earlier state was put in its place.
    PutBack,
}

/// The backups of a data folder. `File` is the type of its files: [`SavedFile`] for the window, which gets no paths, and a path elsewhere.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Backups<File = SavedFile> {
    /// The last automatic backup: its day, and the file.
    pub last: Option<(NaiveDate, File)>,
    /// Why today's automatic backup could not be written; `None` if it was, or none is made today.
    pub fault: Option<Failure>,
    /// Whether anyone who has a backup can read it.
    pub readable: bool,
}

/// A backup to be restored.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub enum BackupSource {
    /// The automatic backup of this day.
    Day(NaiveDate),
    /// A file that the person chose.
    File {
        /// Its name.
        name: String,
        /// Its bytes in Base64.
        bytes: String,
    },
}

/// A backup was restored. `File` is the type of the file, as in [`Backups`].
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct Restored<File = SavedFile> {
    /// The file with the data that were there before, if there were any.
    pub before: Option<File>,
}

/// What was saved of a damaged database. `File` is the type of the file, as in [`Backups`].
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct SalvageReport<File = SavedFile> {
    /// The damaged file, which is kept.
    pub kept: File,
    /// Each kind of data of which there is or may be some.
    pub tables: Vec<SalvagedTable>,
}

/// What was saved of one table of the database.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct SalvagedTable {
    /// Its name in the database.
    pub name: String,
    /// Number of rows that were saved.
    pub saved: u64,
    /// Number of rows that are known to be lost. More may be, if `is_whole` is false.
    pub lost: u64,
    /// Whether the whole table could be read.
    pub is_whole: bool,
}

/// Whether the clinic's store is set up and unlocked.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub enum LockState {
    /// There are no keys yet.
    NotStarted,
    /// There are keys; the passphrase is needed.
    Locked {
        /// Whether there are several clinicians, so that a name is needed too.
        several: bool,
    },
    /// Unlocked, for the clinic with this name and fingerprint.
    Open {
        /// The clinic's name.
        clinic: String,
        /// Its telephone number, if one was entered.
        phone: Option<String>,
        /// The fingerprint of its keys, as shown on the patient's screen.
        fingerprint: String,
        /// After how many idle minutes it locks.
        idle_minutes: u8,
    },
}
