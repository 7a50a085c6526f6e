//! Commands for what a clinic prescribes from: its own exercises, and sets of what it prescribes often.

pub use crate::markers::prescribing::*;

use crate::clinic::PlanDraft;
use exercises::catalogue::{Exercise, ExerciseId, Lang};
use exercises::file_fault::FileFault;
use exercises::plan::Prescription;
use serde::{Deserialize, Serialize};

/// The most own exercises that a clinic can have; each may be there in several revisions.
pub const MAX_OWN: usize = 200;
/// The most unfinished exercises that a clinic can have.
pub const MAX_DRAFTS: usize = 50;
/// The most sets that a clinic can have.
pub const MAX_SETS: usize = 100;

/// A clinic's own exercises.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct OwnExercises {
    /// The finished ones, by what they are called.
    pub lines: Vec<OwnLine>,
    /// The unfinished ones, in the order in which they were begun.
    pub drafts: Vec<OwnDraft>,
}

/// An own exercise.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct OwnLine {
    /// What its author calls it.
    pub name: String,
    /// Its newest revision, with its id.
    pub exercise: Exercise,
    /// The languages that its texts are in.
    pub langs: Vec<Lang>,
    /// All revisions that are kept, ascending.
    pub revisions: Vec<u16>,
    /// Whether it can be prescribed; otherwise it was removed, and is kept because a card has it.
    pub offered: bool,
    /// The codes of the patients whose newest card has it.
    pub patients: Vec<String>,
}

/// An unfinished exercise.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct OwnDraft {
    /// Its number.
    pub draft: i64,
    /// As far as it was written.
    pub text: String,
}

/// An own exercise of the clinic, by its id or by what its author calls it.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct OwnName {
    /// The id, or what its author calls it.
    pub name: String,
}

/// The file of an own exercise.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct OwnText {
    /// Its text.
    pub text: String,
    /// The unfinished exercise that it comes from, which goes once it is saved.
    pub draft: Option<i64>,
}

/// What is to be said about the file of an own exercise.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct OwnChecked {
    /// The exercise, if it can be saved.
    pub exercise: Option<Exercise>,
    /// The only language that its texts are in.
    pub only: Option<Lang>,
    /// The least revision that the file may have; `None` for an exercise that is new.
    pub least_revision: Option<u16>,
    /// What is wrong in it otherwise.
    pub faults: Vec<FileFault>,
}

/// What became of an own exercise that was removed.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct OwnRemoved {
    /// What its author calls it.
    pub name: String,
    /// Whether it is kept for reviews, because a card has it.
    pub kept: bool,
}

/// An unfinished exercise to keep.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct OwnDraftRequest {
    /// Its number; `None` for a new one.
    pub draft: Option<i64>,
    /// As far as it was written.
    pub text: String,
}

/// The number of an unfinished exercise.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct DraftNumber {
    /// The number.
    pub draft: i64,
}

/// A set.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct SetLine {
    /// What the clinic calls it.
    pub name: String,
    /// Its items.
    pub prescription: Prescription,
}

/// A set by its name.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct SetName {
    /// What the clinic calls it.
    pub name: String,
}

/// A set to save; one of the same name is replaced.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct SaveSetRequest {
    /// What the clinic calls it.
    pub name: String,
    /// A prescription, whose items it gets.
    pub prescription: Prescription,
}

/// A set to save from a plan file.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct ImportSetRequest {
    /// What the clinic calls it.
    pub name: String,
    /// The name of the file, for what is wrong in it.
    pub file: String,
    /// Its text.
    pub text: String,
}

/// A set that is to be put into a patient's plan.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct UseSetRequest {
    /// The patient's code.
    pub code: String,
    /// What the clinic calls the set.
    pub set: String,
}

/// The draft of a patient's next plan, with the items of a set.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct SetUsed {
    /// The draft. It is stored.
    pub draft: PlanDraft,
    /// The exercises of items for which there was no room, or which are no longer there.
    pub left_out: Vec<ExerciseId>,
}
