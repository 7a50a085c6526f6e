//! Commands of the clinician's window.

pub use crate::markers::clinic::*;

use chrono::NaiveDate;
use exercises::catalogue::Exercise;
use exercises::draft::Unread;
use exercises::plan::{Plan, Prescription};
use exercises::review::{Review, ReviewAlarm};
use exercises::suggest::Suggestion;
use serde::{Deserialize, Serialize};

use crate::Failure;

/// Largest length of a patient's code, in characters.
pub const MAX_CODE: usize = 12;

/// A new clinic. The passphrase is never stored.
#[derive(Clone, Serialize, Deserialize)]
pub struct StartClinicRequest {
    /// The clinic's name, as patients will see it.
    pub name: String,
    /// The clinic's telephone number, which its cards carry; `None` if it gives none.
    pub phone: Option<String>,
    /// The passphrase.
    pub passphrase: String,
}

/// A passphrase.
#[derive(Clone, Serialize, Deserialize)]
pub struct Passphrase {
    /// Its text.
    pub passphrase: String,
}

impl std::fmt::Debug for StartClinicRequest {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.debug_struct("ClinicName").field("name", &self.name).finish_non_exhaustive()
    }
}

impl std::fmt::Debug for Passphrase {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.write_str("Passphrase(..)")
    }
}

/// The clinic's telephone number, which its next cards carry.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct PhoneRequest {
    /// The number; empty for none.
    pub phone: String,
}

/// A patient's code.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct PatientCode {
    /// 1 to 12 letters, digits and hyphens; chosen by the clinic.
    pub code: String,
}

/// A new patient.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct AddPatientRequest {
    /// The code.
    pub code: String,
    /// A name, stored only here; never on a card or in a summary.
    pub name: Option<String>,
}

/// A patient in the list.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct PatientLine {
    /// The code.
    pub code: String,
    /// The name, if one was given.
    pub name: Option<String>,
    /// Revision and review date of the newest card.
    pub plan: Option<(u16, NaiveDate)>,
    /// The last day that a received summary covers.
    pub covered_until: Option<NaiveDate>,
    /// Alarms that no card has cleared.
    pub alarms: u16,
}

/// What the next plan starts from.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct PlanDraft {
    /// The last prescription carried over by [`exercises::draft::next`], or [`exercises::draft::first`] for a new patient. If
    /// somebody was already editing the plan, the draft as it was left ([`exercises::draft::resume`]).
    pub draft: exercises::draft::Draft,
    /// Input that could not be read when the draft was left.
    pub unread: Unread,
    /// The day on which the draft was left; `None` if nobody was editing the plan.
    pub left_on: Option<NaiveDate>,
    /// The revision that it will replace; `None` for a first plan.
    pub replaces: Option<u16>,
    /// The first revision's day of issue: day 0 of the suggestions' day numbers.
    pub start: NaiveDate,
    /// The catalogue.
    pub exercises: Vec<Exercise>,
    /// The rules' proposals for its items.
    pub suggestions: Vec<Suggestion>,
    /// Alarms that no card has cleared.
    pub alarms: Vec<ReviewAlarm>,
}

/// A plan that is being edited.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct AskKeep {
    /// The patient's code.
    pub code: String,
    /// The prescription so far.
    pub draft: exercises::draft::Draft,
    /// The revision that it will replace; `None` for a first plan.
    pub replaces: Option<u16>,
    /// Input that cannot be read.
    pub unread: Unread,
}

/// A request to issue a plan to a patient.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct IssueRequest {
    /// The patient's code.
    pub code: String,
    /// The prescription; id, revision, clinic's name and day of issue are set when it is issued.
    pub prescription: Prescription,
}

/// An issued plan card.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct IssuedCard {
    /// The plan as issued.
    pub plan: Plan,
    /// The code as an SVG drawing; `None` if the card is too large for one code and is handed over as a file.
    pub svg: Option<String>,
    /// The QR version (1 to 40).
    pub version: Option<u8>,
    /// The card's text.
    pub text: String,
    /// The clinic's fingerprint.
    pub fingerprint: String,
    /// The files written: PNG, SVG, text, bytes.
    pub files: Vec<String>,
}

/// Summaries to receive.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct ReceiveRequest {
    /// File names with their bytes in Base64.
    pub files: Vec<(String, String)>,
}

/// The result for one file.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Receipt {
    /// The file's name.
    pub file: String,
    /// The outcome.
    pub outcome: Outcome,
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

/// One patient's review.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct ReviewPage {
    /// The code.
    pub code: String,
    /// The name, if one was given.
    pub name: Option<String>,
    /// Today's date at the clinic.
    pub today: NaiveDate,
    /// The plan in force, if one was issued.
    pub plan: Option<Plan>,
    /// Its earlier revisions, newest first: they have the names of what the plan in force no longer has.
    pub earlier: Vec<Plan>,
    /// The exercises of all their items.
    pub exercises: Vec<Exercise>,
    /// The review; `None` before any summary was received.
    pub review: Option<Review>,
}
