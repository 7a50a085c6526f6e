//! Commands for a patient's case: closing it, opening it again, another code or name, and the plans that were issued.

pub use crate::markers::cases::*;

use chrono::NaiveDate;
use exercises::catalogue::Exercise;
use exercises::closing::{CloseReason, Closing};
use exercises::plan::Plan;
use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;

/// A patient's case.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct CasePage {
    /// The code.
    pub code: String,
    /// The name, if one was given.
    pub name: Option<String>,
    /// The clinic's date.
    pub today: NaiveDate,
    /// When it was closed, the first time first.
    pub closings: Vec<Closing>,
    /// The plans as they were issued, the newest one first.
    pub plans: Vec<Plan>,
    /// The names of the clinicians who issued them, by the plan's revision, where they are known.
    pub issued_by: BTreeMap<u16, String>,
    /// The exercises of all of them.
    pub exercises: Vec<Exercise>,
    /// How much there is of the patient, which removing erases.
    pub held: Held,
}

/// How much a clinic has of a patient.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub struct Held {
    /// Number of plans that were issued.
    pub plans: u32,
    /// Number of summaries that were received.
    pub summaries: u32,
    /// Number of entries of visits.
    pub findings: u32,
    /// Whether a plan is being written.
    pub draft: bool,
}

/// A case to be closed.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct CloseRequest {
    /// The patient's code.
    pub code: String,
    /// Why.
    pub reason: CloseReason,
    /// More about it; required for [`CloseReason::Other`].
    pub words: String,
}

/// Another code or name for a patient.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct RenameRequest {
    /// The present code.
    pub code: String,
    /// The code from now on; it may be the present one.
    pub new_code: String,
    /// The name from now on; `None` for none.
    pub name: Option<String>,
}

/// The most that a clinician adds to a letter, in characters of all lines together.
pub const MAX_OWN_TEXT: usize = 2_000;

/// A letter at the end of a treatment.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct LetterRequest {
    /// The patient's code.
    pub code: String,
    /// What the clinician adds, a paragraph each; at most [`MAX_OWN_TEXT`] characters.
    pub lines: Vec<String>,
    /// On US Letter, not on A4.
    pub letter: bool,
}

/// A plan that was issued.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct IssuedRevision {
    /// The patient's code.
    pub code: String,
    /// The plan's revision.
    pub revision: u16,
}
