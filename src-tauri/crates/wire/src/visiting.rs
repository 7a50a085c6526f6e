//! Commands for what is found at a visit.

pub use crate::markers::visiting::*;

use chrono::NaiveDate;
use exercises::catalogue::{Exercise, PrescriberFlag};
use exercises::id::ItemId;
use exercises::plan::Plan;
use exercises::summary::PaperDay;
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

/// Some days of a diary that a patient keeps on paper.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct DiaryPage {
    /// The patient's code.
    pub code: String,
    /// The patient's name, if the clinic has it.
    pub name: Option<String>,
    /// The newest plan.
    pub plan: Plan,
    /// The exercises that it may name.
    pub exercises: Vec<Exercise>,
    /// The days that can be entered, oldest first: from the plan's first day to today.
    pub days: Vec<DiaryLine>,
}

/// A day of a diary on paper.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct DiaryLine {
    /// The day.
    pub day: NaiveDate,
    /// How many sessions of each exercise were due at set times.
    pub due: Vec<(ItemId, u8)>,
    /// What was entered; `None` if nothing was.
    pub entered: Option<PaperDay>,
}

/// Days of a diary on paper, to be entered in place of what was entered for them.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct DiaryRequest {
    /// The patient's code.
    pub code: String,
    /// The days.
    pub days: Vec<PaperDay>,
}

/// What is printed for a patient, or about one.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub enum Printed {
    /// The plan, with figures, steps and the card's codes.
    HandOut,
    /// Four weeks from today on to tick, for whoever has no device.
    Diary,
    /// One or two pages for whoever treats the patient too: the plan, what was done, what was found, what is proposed.
    Report,
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
