//! Commands of the clinician's window.

pub use crate::clinicians::*;
pub use crate::markers::clinic::*;

use chrono::NaiveDate;
use exercises::catalogue::{Exercise, ExerciseId};
use exercises::closing::CloseReason;
use exercises::draft::{PatientFacts, Unread};
use exercises::id::LogId;
use exercises::plan::check::Problem;
use exercises::plan::{Item, Plan, Prescription};
use exercises::review::{Review, ReviewAlarm};
use exercises::suggest::Suggestion;
use serde::{Deserialize, Serialize};

use crate::Secret;
use crate::saved::SavedFile;

/// Largest length of a patient's code, in characters.
pub const MAX_CODE: usize = 12;

/// A new clinic. The passphrase is never stored.
#[derive(Debug, Clone, Serialize, Deserialize)]
pub struct StartClinicRequest {
    /// The clinic's name, as patients will see it.
    pub name: String,
    /// The clinic's telephone number, which its cards carry; `None` if it gives none.
    pub phone: Option<String>,
    /// The passphrase: a new one, or that of the saved keys.
    pub passphrase: Secret,
    /// Saved keys of this clinic in Base64, from another computer; `None` to create new ones.
    pub saved_keys: Option<Secret>,
}

/// A passphrase.
#[derive(Debug, Clone, Serialize, Deserialize)]
pub struct Passphrase {
    /// Its text.
    pub passphrase: Secret,
}

/// A passphrase that somebody is about to choose.
#[derive(Debug, Clone, Serialize, Deserialize)]
pub struct StrengthRequest {
    /// As far as it was typed.
    pub passphrase: Secret,
    /// The clinic's name before there is a clinic, because a passphrase like it is easy to guess.
    pub clinic: Option<String>,
}

/// How hard a passphrase is to guess, as an estimate.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub enum PassphraseStrength {
    /// Fewer than the least number of characters; refused.
    TooShort,
    /// Long enough, but easy to guess; refused.
    Guessable,
    /// Hard to guess.
    Good,
    /// Very hard to guess.
    Strong,
}

/// Another passphrase.
#[derive(Debug, Clone, Serialize, Deserialize)]
pub struct ChangePassphraseRequest {
    /// The present one.
    pub old: Secret,
    /// The new one.
    pub new: Secret,
}

/// A request to save the clinic's keys.
#[derive(Debug, Clone, Serialize, Deserialize)]
pub struct ExportKeysRequest {
    /// The clinic's passphrase, to confirm the request.
    pub passphrase: Secret,
    /// The passphrase that is to protect the saved keys.
    pub new: Secret,
}

/// After how many idle minutes the store locks.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct IdleRequest {
    /// One of [`IDLE_MINUTES`].
    pub minutes: u8,
}

/// The choices of idle minutes; there is none without a limit.
pub const IDLE_MINUTES: [u8; 4] = [2, 5, 10, 30];

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

/// A patient to be removed for good.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct RemovePatientRequest {
    /// The code.
    pub code: String,
    /// The code once more, as it was typed to confirm.
    pub typed: String,
    /// Whether the automatic backups that hold the patient are removed as well, after a new one was made.
    pub also_backups: bool,
}

/// A device that is to be left out of a patient's review, or taken in again.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct DeviceRequest {
    /// The patient's code.
    pub code: String,
    /// The device's log.
    pub device: LogId,
    /// Whether it is left out from now on.
    pub left_out: bool,
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
    /// The day on which the newest card was issued.
    pub issued: Option<NaiveDate>,
    /// The last day that a received summary covers.
    pub covered_until: Option<NaiveDate>,
    /// Alarms that no card has cleared.
    pub alarms: u16,
    /// The day on which the case was closed, and why; `None` while it is open.
    pub closed: Option<(NaiveDate, CloseReason)>,
    /// Whether the record is damaged, so that only the code is known.
    pub damaged: bool,
}

/// Days without any news after which a patient counts as silent.
pub const SILENT_DAYS: i64 = 14;

impl PatientLine {
    /// Whether the next visit is on `day`.
    pub fn visits_on(&self, day: NaiveDate) -> bool {
        self.plan.is_some_and(|(_, visit)| visit == day)
    }

    /// Whether a received summary tells of days since the newest card was issued.
    pub fn has_new_summary(&self) -> bool {
        self.issued.zip(self.covered_until).is_some_and(|(issued, until)| until >= issued)
    }

    /// Whether nothing is known of the last [`SILENT_DAYS`] before `day`, although the newest card is older than that.
    pub fn is_silent(&self, day: NaiveDate) -> bool {
        let old = |of: NaiveDate| day.signed_duration_since(of).num_days() > SILENT_DAYS;
        self.issued.is_some_and(old) && self.covered_until.is_none_or(old)
    }
}

/// All patients.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct PatientList {
    /// A line for each.
    pub lines: Vec<PatientLine>,
    /// What is wrong with the store.
    pub notices: Vec<StoreNotice>,
}

/// Something that is wrong with the clinic's store as a whole.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub enum StoreNotice {
    /// The records of some patients are damaged so that not even their codes are known.
    DamagedRecords {
        /// Number of patients.
        n: u16,
    },
    /// Rows were changed, exchanged, removed or put back from outside the program.
    ChangedOutside {
        /// The least number of rows.
        rows: u32,
        /// The codes of the patients concerned, as far as they are known.
        codes: Vec<String>,
    },
    /// The list of the rows was removed or changed, so rows may be missing without being noticed.
    ManifestChanged,
    /// The clinic is unlocked with keys that were saved before it renewed its keys.
    KeysOlder {
        /// The day of the renewal.
        renewed: NaiveDate,
    },
}

/// A device that summaries of a patient came from.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct DeviceLine {
    /// Its log.
    pub device: LogId,
    /// The day on which its first summary was received; `None` if that was before devices were noted.
    pub first_seen: Option<NaiveDate>,
    /// The last day that its summaries cover.
    pub until: Option<NaiveDate>,
    /// Number of summaries.
    pub summaries: u16,
    /// Whether the clinic leaves it out of the review.
    pub left_out: bool,
    /// The name of the clinician who entered it last, of a diary on paper, where it is known.
    pub by: Option<String>,
    /// Its place among the patient's devices in the order in which they were first seen, from 1; `None` for a diary on paper.
    pub number: Option<u16>,
    /// The first and the last day on which it was used, as far as its summaries tell; `None` if they tell of none.
    pub used: Option<(NaiveDate, NaiveDate)>,
    /// How many sessions were recorded on it.
    pub sessions: u32,
    /// The number of the device that goes on with its record, if it was moved, copied or put back from a copy.
    pub goes_on_as: Option<u16>,
}

/// What the review says about the store that it is made from.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub enum ReviewNotice {
    /// Rows of this patient were changed from outside the program.
    ChangedOutside,
    /// The patient's device follows a revision that the store does not have.
    StoreBehind {
        /// That revision.
        revision: u16,
        /// The revision that the next card will have.
        next: u16,
    },
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
    /// The revision that it will have.
    pub revision: u16,
    /// The first revision's day of issue: day 0 of the suggestions' day numbers.
    pub start: NaiveDate,
    /// The catalogue.
    pub exercises: Vec<Exercise>,
    /// To how many of the clinic's patients each exercise was ever prescribed; one that never was is not in it.
    pub prescribed: Vec<(ExerciseId, u32)>,
    /// What was ticked for the patient.
    pub facts: PatientFacts,
    /// The rules' proposals for its items.
    pub suggestions: Vec<Suggestion>,
    /// The items of the last plan as [`exercises::draft::next`] carries them over, before anything was edited.
    pub carried: Vec<Item>,
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
    /// What is ticked for the patient. It is kept with the patient, whatever becomes of the draft.
    pub facts: PatientFacts,
}

/// A request to issue a plan to a patient.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct IssueRequest {
    /// The patient's code.
    pub code: String,
    /// The prescription; id, revision, clinic's name and day of issue are set when it is issued.
    pub prescription: Prescription,
}

/// What is to be said about a plan before it is issued.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct PlanCheck {
    /// The problems that prevent it from being issued.
    pub problems: Vec<Problem>,
    /// How its card would be handed over; `None` while there are problems.
    pub handover: Option<Handover>,
}

/// How a card goes from the clinic to the patient, besides its text.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub enum Handover {
    /// As one code.
    Code {
        /// Its QR version.
        version: u8,
    },
    /// As several codes, which are read in any order.
    Codes {
        /// How many.
        n: u8,
    },
    /// As a file: it is too large for codes.
    File,
    /// Not at all: the exercises of the clinic's own on it are too large together.
    TooLarge,
}

/// An issued plan card. `File` is the type of its files: [`SavedFile`] for the window, which gets no paths, and a path elsewhere.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct IssuedCard<File = SavedFile> {
    /// The plan as issued.
    pub plan: Plan,
    /// The code as an SVG drawing; `None` if the card is too large for one code.
    pub svg: Option<String>,
    /// The codes of a card that is too large for one; empty if it is too large for several, and is handed over as a file.
    pub codes: Vec<String>,
    /// The QR version (1 to 40).
    pub version: Option<u8>,
    /// The card's text.
    pub text: String,
    /// The clinic's fingerprint.
    pub fingerprint: String,
    /// The files written: in the window a PNG for each code, or the bytes if there is no code; in the terminal also SVG, text and bytes.
    pub files: Vec<File>,
}

impl<File> IssuedCard<File> {
    /// The same with its files told in another way.
    pub fn with_files<Other>(self, told: impl FnMut(File) -> Other) -> IssuedCard<Other> {
        let IssuedCard { plan, svg, codes, version, text, fingerprint, files } = self;
        IssuedCard { plan, svg, codes, version, text, fingerprint, files: files.into_iter().map(told).collect() }
    }
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
    /// The devices that summaries came from.
    pub devices: Vec<DeviceLine>,
    /// What there is to say about the store itself.
    pub notices: Vec<ReviewNotice>,
}

impl ReviewPage {
    /// The devices if there is something to say about them: more than one, or one that is left out.
    pub fn devices_to_name(&self) -> &[DeviceLine] {
        let special = |device: &DeviceLine| device.left_out || device.device == LogId::PAPER;
        let name = self.devices.len() > 1 || self.devices.iter().any(special);
        if name { &self.devices } else { &[] }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn line(issued: u32, visit: u32, until: Option<u32>) -> PatientLine {
        let day = |n| NaiveDate::from_ymd_opt(2027, 3, n).expect("a date");
        PatientLine {
            code: "K17".into(),
            name: None,
            plan: Some((1, day(visit))),
            issued: Some(day(issued)),
            covered_until: until.map(day),
            alarms: 0,
            closed: None,
            damaged: false,
        }
    }

    #[test]
    fn news_silence_and_the_day_of_a_visit() {
        let today = NaiveDate::from_ymd_opt(2027, 3, 20).expect("a date");
        let seen = |line: PatientLine| (line.visits_on(today), line.has_new_summary(), line.is_silent(today));
        assert_eq!(seen(line(1, 20, Some(19))), (true, true, false));
        assert_eq!(seen(line(1, 29, None)), (false, false, true));
        assert_eq!(seen(line(1, 29, Some(5))), (false, true, true));
        assert_eq!(seen(line(1, 29, Some(6))), (false, true, false), "two weeks ago");
        assert_eq!(seen(line(10, 29, Some(9))), (false, false, false), "the card answers it, and is new");
    }
}
