//! Commands of the patient's window.

pub use crate::markers::patient::*;
use exercises::score::Score;

use chrono::NaiveDate;
use exercises::alarm::{Circumstance, Trouble};
use exercises::catalogue::{Exercise, ExerciseId};
use exercises::correct::Correctable;
use exercises::id::{ActivityId, ComplaintId, ItemId, PlanId, RunId};
use exercises::log::Correction;
use exercises::log::{Barrier, DayOffReason as Why};
use exercises::plan::{Plan, Schedule};
use exercises::review::Review;
use exercises::run::Run;
use exercises::slots::SlotRef;
use exercises::summary::SummaryPart;
use exercises::sway::Sensed;
use exercises::time::Stamp;
use serde::{Deserialize, Serialize};
use std::collections::BTreeSet;

/// Where a card comes from.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub enum CardSource {
    /// The card's text, as typed or scanned.
    Text(String),
    /// A file's bytes in Base64: a picture, a text or a card file.
    File(String),
}

/// The preview of a card before it is taken.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct CardPreview {
    /// The plan, with the clinic's name.
    pub plan: Plan,
    /// The clinic's fingerprint, to be compared with the paper.
    pub fingerprint: String,
    /// Whether this clinic's keys are known from an earlier card.
    pub known_clinic: bool,
    /// Whether the clinic has renewed its keys since the last card of this plan; the former key has signed the new ones.
    pub renewed: bool,
    /// Whether an earlier card names a clinic of this name but was signed with other keys.
    pub other_keys: bool,
    /// The revision that it replaces; `None` for a first card.
    pub replaces: Option<u16>,
    /// The exercises of its items, including the clinic's own.
    pub exercises: Vec<Exercise>,
    /// Those of the clinic's own of which the plan in force has a later revision. The card's is followed all the same.
    pub older: Vec<ExerciseId>,
    /// The card itself, as text: what takes it, whatever it was read from.
    pub source: CardSource,
}

/// A request to take a card.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct TakeCardRequest {
    /// The card, as [`CardPreview::source`] has it.
    pub source: CardSource,
    /// The schedules that the person agreed to and that differ from the card's.
    pub agreed: Vec<(ItemId, Schedule)>,
}

/// One plan with its exercises.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct PlanPage {
    /// The plan, with the agreed schedules.
    pub plan: Plan,
    /// The clinic's fingerprint.
    pub fingerprint: String,
    /// The exercises of its items.
    pub exercises: Vec<Exercise>,
    /// Items that are paused by an alarm.
    pub paused: Vec<(ItemId, Trouble)>,
    /// The plan with the schedules agreed to for a later day, and the first day on which they apply.
    pub ahead: Option<(NaiveDate, Plan)>,
}

/// A request to move the times of one item.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct RefitRequest {
    /// The plan.
    pub plan: PlanId,
    /// Its item.
    pub item: ItemId,
    /// The new schedule: on the same days and as often as on the card.
    pub schedule: Schedule,
}

/// A request to begin a run of an item.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct BeginRequest {
    /// The plan.
    pub plan: PlanId,
    /// Its item.
    pub item: ItemId,
    /// Whether to use the change that is offered at this moment.
    pub step: bool,
}

/// What the window needs to guide a run.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct RunScript {
    /// The plan.
    pub plan: PlanId,
    /// The run as logged at its beginning.
    pub run: Run,
    /// The exercise.
    pub exercise: Exercise,
    /// The item's side, limits and note.
    pub item: exercises::plan::Item,
    /// Whether a near fall at the easiest level asks for a hand on the support until the next card.
    pub hand_on_support: bool,
    /// Whether the precautions come first: they were not read yet, or were read for another level.
    pub cautions_first: bool,
    /// For balance: the person's own medians over the last seven days, by place of the phone and leg.
    pub own: Vec<exercises::history::OwnMedian>,
}

/// The progress of a run.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct RunSnapshot {
    /// The plan.
    pub plan: PlanId,
    /// The run.
    pub run: Run,
}

/// The sensor's result for one trial.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct SensedTrial {
    /// The plan.
    pub plan: PlanId,
    /// The run.
    pub run: RunId,
    /// The trial's index in the run, from 0.
    pub trial: u16,
    /// The short form.
    pub sensed: Sensed,
    /// All details, as written by [`exercises::sway::detail`].
    pub detail: String,
}

/// The answer to a question.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub enum QuestionAnswer {
    /// The pain of a complaint this morning.
    Morning {
        /// The plan.
        plan: PlanId,
        /// The complaint.
        complaint: ComplaintId,
        /// 0 to 10.
        score: Score,
    },
    /// The pain while doing an item.
    During {
        /// The plan.
        plan: PlanId,
        /// The item.
        item: ItemId,
        /// 0 to 10.
        score: Score,
    },
    /// A named activity.
    Activity {
        /// The plan.
        plan: PlanId,
        /// The activity.
        activity: ActivityId,
        /// 0 to 10.
        score: Score,
    },
}

/// One slot of one plan.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct SlotRequest {
    /// The plan.
    pub plan: PlanId,
    /// The slot.
    pub slot: SlotRef,
}

/// A request to skip a slot.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct SkipRequest {
    /// The plan.
    pub plan: PlanId,
    /// The slot.
    pub slot: SlotRef,
    /// The reason.
    pub reason: Barrier,
}

/// A request for days off.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct DaysOffRequest {
    /// The plan.
    pub plan: PlanId,
    /// First day.
    pub from: NaiveDate,
    /// Last day.
    pub until: NaiveDate,
    /// The reason.
    pub why: Why,
}

/// A complaint ("Something is wrong").
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct TroubleRequest {
    /// The plan.
    pub plan: PlanId,
    /// What is wrong.
    pub trouble: Trouble,
    /// The item during which it happened, if any.
    pub item: Option<ItemId>,
    /// What was answered about it.
    pub circumstances: BTreeSet<Circumstance>,
}

/// "I am well again."
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct WellAgainRequest {
    /// The plan.
    pub plan: PlanId,
}

/// One plan's record, from the person's own device.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct RecordPage {
    /// The plan.
    pub plan: Plan,
    /// The exercises of its items.
    pub exercises: Vec<Exercise>,
    /// The record; `None` before anything happened.
    pub review: Option<Review>,
    /// Time of the last entry, if it is on a day after today: the device's clock is behind, or was ahead.
    pub later: Option<Stamp>,
    /// The period offered for the next summary: from the last sealed one (or the start) to today.
    pub offer: (NaiveDate, NaiveDate),
}

/// A request for an encrypted summary.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct SealRequest {
    /// The plan.
    pub plan: PlanId,
    /// First day; `None` for the plan's start.
    pub from: Option<NaiveDate>,
    /// Last day.
    pub until: NaiveDate,
    /// A note, if the person wrote one.
    pub note: Option<String>,
}

/// The bytes of a summary.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct SummaryBytes {
    /// Each part with its bytes in hexadecimal, before they are compressed and encrypted.
    pub parts: Vec<(SummaryPart, String)>,
    /// Number of bytes of all parts.
    pub plain: u32,
    /// Number of bytes once they are compressed.
    pub packed: u32,
}

/// A request for the entries of the last days that can be corrected.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct CorrectableRequest {
    /// The plan.
    pub plan: PlanId,
    /// Number of days, including today.
    pub days: u16,
}

/// Entries that can be corrected, with the names that belong to their numbers.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct CorrectPage {
    /// The plan.
    pub plan: Plan,
    /// The exercises of its items.
    pub exercises: Vec<Exercise>,
    /// The entries, newest first.
    pub entries: Vec<Correctable>,
}

/// A request to correct one entry.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct CorrectRequest {
    /// The plan.
    pub plan: PlanId,
    /// The entry's number.
    pub entry: u32,
    /// What it should have been.
    pub to: Correction,
    /// Number of days for which the returned page lists entries.
    pub days: u16,
}
