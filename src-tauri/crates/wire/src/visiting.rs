//! Commands for what is found at a visit.

pub use crate::markers::visiting::*;

use chrono::NaiveDate;
use exercises::catalogue::PrescriberFlag;
use exercises::visit::{Finding, Visit};
use serde::{Deserialize, Serialize};
use std::collections::BTreeSet;

/// A patient's visits.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct VisitPage {
    /// The patient's code.
    pub code: String,
    /// The patient's name, if the clinic has it.
    pub name: Option<String>,
    /// The day of today's visit.
    pub today: NaiveDate,
    /// The visits, the newest first. Today's is among them once something was noted.
    pub visits: Vec<Visit>,
    /// The conditions that hold now.
    pub flags: BTreeSet<PrescriberFlag>,
    /// Entries that cannot be read.
    pub unreadable: u16,
}

/// A finding to note.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct NoteRequest {
    /// The patient's code.
    pub code: String,
    /// The number of the finding that it corrects.
    pub replaces: Option<u32>,
    /// What was found; `None` takes back what it replaces.
    pub finding: Option<Finding>,
}

/// What is printed for a patient.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub enum Printed {
    /// The plan, with figures, steps and the card's codes.
    HandOut,
    /// Four weeks from today on to tick, for whoever has no device.
    Diary,
}

/// Something to be printed.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct PrintRequest {
    /// The patient's code.
    pub code: String,
    /// What.
    pub what: Printed,
    /// Of which revision of the plan; `None` for the newest.
    pub revision: Option<u16>,
    /// On US Letter, not on A4.
    pub letter: bool,
}

/// A review to be saved for the medical record.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct RecordRequest {
    /// The patient's code.
    pub code: String,
    /// As what.
    pub form: RecordForm,
}

/// What a review is written as.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub enum RecordForm {
    /// A table for a spreadsheet, without the patient's name.
    Csv,
    /// An HL7 FHIR R4 file to hand over.
    Collection,
    /// What an HL7 FHIR R4 server is asked to take in.
    Transaction,
}
