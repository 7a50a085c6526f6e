//! Commands for what a clinic prescribes from: its own exercises, and sets of what it prescribes often.

pub use crate::markers::prescribing::*;

use crate::clinic::PlanDraft;
use exercises::catalogue::{Exercise, ExerciseId, Lang};
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
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct OwnDraft {
    /// Its number.
    pub draft: i64,
    /// As far as it was written; `None` if it cannot be read.
    pub exercise: Option<Exercise>,
}

/// An own exercise of the clinic, by its id or by what its author calls it.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct OwnName {
    /// The id, or what its author calls it.
    pub name: String,
}

/// An own exercise that is being written. A new one has the id [`exercises::authoring::new_id`]; one that is saved again has what its
/// author calls it.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct OwnEdited {
    /// The exercise as far as it was written. Its revision is given when it is saved.
    pub exercise: Exercise,
    /// The unfinished exercise that it comes from, which goes once it is saved.
    pub draft: Option<i64>,
}

/// Files of own exercises to add: all of them or none.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct ImportOwnRequest {
    /// The name and the text of each.
    pub files: Vec<(String, String)>,
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
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct OwnDraftRequest {
    /// Its number; `None` for a new one.
    pub draft: Option<i64>,
    /// As far as it was written.
    pub exercise: Exercise,
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
