//! What the patient's window asks.

pub use crate::markers::patient::*;

use chrono::NaiveDate;
use exercises::alarm::Trouble;
use exercises::catalogue::Exercise;
use exercises::correct::Correctable;
use exercises::id::{ActivityId, ComplaintId, ItemId, PlanId, RunId};
use exercises::log::Correction;
use exercises::log::{Barrier, DayOffReason as Why};
use exercises::plan::{Plan, Schedule};
use exercises::review::Review;
use exercises::run::Run;
use exercises::slots::SlotRef;
use exercises::sway::Sensed;
use exercises::time::Stamp;
use serde::{Deserialize, Serialize};

/// Where a card comes from.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub enum CardSource {
    /// The card's text, as typed or scanned.
    Text(String),
    /// A file's bytes: a picture, a text or a card file; Base64.
    File(String),
}

/// A card as it shows before it is taken.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct CardPreview {
    /// The plan, with the clinic's name.
    pub plan: Plan,
    /// The clinic's fingerprint, to compare with the paper.
    pub fingerprint: String,
    /// Whether this clinic's keys are known from an earlier card.
    pub known_clinic: bool,
    /// The revision that it replaces.
    pub replaces: Option<u16>,
    /// The exercises of its items, the clinic's own among them.
    pub exercises: Vec<Exercise>,
    /// The card itself, as text: what takes it, whatever it was read from.
    pub source: CardSource,
}

/// Take a card.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct TakeCardRequest {
    /// The card, as [`CardPreview::source`] has it.
    pub source: CardSource,
    /// Schedules that the person agreed to, where they differ from the card's.
    pub agreed: Vec<(ItemId, Schedule)>,
}

/// One plan with its exercises.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct PlanPage {
    /// The plan, with the schedules agreed to.
    pub plan: Plan,
    /// The clinic's fingerprint.
    pub fingerprint: String,
    /// The exercises of its items.
    pub exercises: Vec<Exercise>,
    /// Items paused by an alarm.
    pub paused: Vec<(ItemId, Trouble)>,
}

/// Begin a run of an item.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct BeginRequest {
    /// The plan.
    pub plan: PlanId,
    /// Its item.
    pub item: ItemId,
    /// A step further, as it is offered at this moment.
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
    /// Whether it is the first run of this exercise: cautions come first.
    pub first: bool,
    /// For balance: the person's own medians over the last seven days, by place of the phone and leg.
    pub own: Vec<exercises::history::OwnMedian>,
}

/// A run as far as it got.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct RunSnapshot {
    /// The plan.
    pub plan: PlanId,
    /// The run.
    pub run: Run,
}

/// What the sensor said about one trial.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct SensedTrial {
    /// The plan.
    pub plan: PlanId,
    /// The run.
    pub run: RunId,
    /// The trial's place in the run, from 0.
    pub trial: u16,
    /// The brief form.
    pub sensed: Sensed,
    /// Everything about it, as [`exercises::sway::detail`] writes it.
    pub detail: String,
}

/// The answer to a question.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub enum QuestionAnswer {
    /// Pain.
    Pain {
        /// The plan.
        plan: PlanId,
        /// The complaint.
        complaint: ComplaintId,
        /// 0 to 10.
        score: u8,
        /// After this run.
        after: Option<RunId>,
    },
    /// The morning after.
    Settled {
        /// The plan.
        plan: PlanId,
        /// The complaint.
        complaint: ComplaintId,
        /// Whether it had settled.
        settled: bool,
    },
    /// A named activity.
    Activity {
        /// The plan.
        plan: PlanId,
        /// The activity.
        activity: ActivityId,
        /// 0 to 10.
        score: u8,
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

/// Skips a slot.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct SkipRequest {
    /// The plan.
    pub plan: PlanId,
    /// The slot.
    pub slot: SlotRef,
    /// Why.
    pub reason: Barrier,
}

/// Take a stretch of days off.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct DaysOffRequest {
    /// The plan.
    pub plan: PlanId,
    /// First day.
    pub from: NaiveDate,
    /// Last day.
    pub until: NaiveDate,
    /// Why.
    pub why: Why,
}

/// Something is wrong.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct TroubleRequest {
    /// The plan.
    pub plan: PlanId,
    /// What.
    pub trouble: Trouble,
    /// During which item.
    pub item: Option<ItemId>,
}

/// One plan's record, as the person's own device has it.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct RecordPage {
    /// The plan.
    pub plan: Plan,
    /// The exercises of its items.
    pub exercises: Vec<Exercise>,
    /// The record; `None` before anything happened.
    pub review: Option<Review>,
    /// When something was recorded last, where that is on a day after today: the device's clock is behind, or was ahead.
    pub later: Option<Stamp>,
    /// The period offered for the next summary: from the last sealed one (or the start) to today.
    pub offer: (NaiveDate, NaiveDate),
}

/// Seal a summary.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct SealRequest {
    /// The plan.
    pub plan: PlanId,
    /// First day; the plan's start if none.
    pub from: Option<NaiveDate>,
    /// Last day.
    pub until: NaiveDate,
    /// A note, if wanted.
    pub note: Option<String>,
}

/// The last days of one plan.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct CorrectableRequest {
    /// The plan.
    pub plan: PlanId,
    /// So many days, today among them.
    pub days: u16,
}

/// What can be put right, with what its numbers stand for.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct CorrectPage {
    /// The plan.
    pub plan: Plan,
    /// The exercises of its items.
    pub exercises: Vec<Exercise>,
    /// The entries, newest first.
    pub entries: Vec<Correctable>,
}

/// Put one entry right.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct CorrectRequest {
    /// The plan.
    pub plan: PlanId,
    /// The entry's number.
    pub entry: u32,
    /// What it should have been.
    pub to: Correction,
    /// The page that comes back goes so many days back.
    pub days: u16,
}

/// A file that was written.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct Saved {
    /// Where.
    pub path: String,
    /// Bytes.
    pub bytes: u64,
}

impl Saved {
    /// The folder that holds it, as its path says; the window does not know which system wrote that.
    pub fn folder(&self) -> &str {
        self.path.rsplit_once(['/', '\\']).map_or("", |(folder, _)| folder)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_folder_of_what_was_saved_on_any_system() {
        let folder = |path: &str| Saved { path: path.into(), bytes: 1 }.folder().to_owned();
        assert_eq!(folder("/tmp/downloads/plan.json"), "/tmp/downloads");
        assert_eq!(folder(r"C:\Downloads\mine\plan.json"), r"C:\Downloads\mine");
        assert_eq!(folder("plan.json"), "");
    }
}
