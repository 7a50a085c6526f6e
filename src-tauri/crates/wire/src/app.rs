//! What both sides of the program ask: which side it is on, and what the catalogue holds.

use exercises::slots::SlotRef;
use exercises::time::Stamp;
use serde::{Deserialize, Serialize};

/// Command: how things stand.
pub struct ShowAppState;
/// Command: choose the side at first start.
pub struct ChooseRole;
/// Command: look around in a sample plan, or leave it.
pub struct ShowSample;
/// Command: choose the language of all text.
pub struct ChooseLocale;
/// Command: where the data folder is.
pub struct ShowDataFolder;
/// Command: all exercises.
pub struct ShowCatalogue;

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

/// The language chosen.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct LocaleRequest {
    /// Its tag; `None` follows the system's language.
    pub tag: Option<String>,
}

/// How things stand.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct AppState {
    /// The side; `None` before the first start is done.
    pub role: Option<Role>,
    /// The present moment, as this run of the program takes it.
    pub now: Stamp,
    /// Whether `--at` set it: the window then says so.
    pub at_is_set: bool,
    /// The language of all text, by its tag, such as "es-MX".
    pub locale: String,
    /// The one chosen; `None` where the system's is followed.
    pub chosen_locale: Option<String>,
    /// Whether texts are in the made-up language that only tests see.
    pub pseudo: bool,
    /// On the patient's side: whether any card has been taken.
    pub has_plan: bool,
    /// Whether all this is a sample plan to look around in: nothing of it is kept.
    pub sample: bool,
    /// On the clinic's side: whether its store is unlocked.
    pub lock: LockState,
    /// A notification's action that asks for this slot's page, once.
    pub open_slot: Option<SlotRef>,
}

/// How far the clinic's store is open.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub enum LockState {
    /// There are no keys yet.
    NotStarted,
    /// Keys are there; the passphrase is needed.
    Locked,
    /// Open, for the clinic of that name and fingerprint.
    Open {
        /// The clinic's name.
        clinic: String,
        /// The fingerprint of its keys, as it shows on the patient's screen.
        fingerprint: String,
    },
}
