//! What one patient is to do until the review date.
//!
//! A plan holds items; an item ties an exercise on a rung to a dose, a side, a schedule and limits. A later revision of the
//! same plan replaces it; item, complaint and activity numbers keep their meaning through revisions, so that the history
//! goes on.

mod agreed;
pub mod check;
pub mod schedule;
pub mod stance;
mod weekdays;

use crate::catalogue::{Catalogue, Dose, ExerciseId, Eyes, RungId, Surface};
use crate::choice::array;
use crate::id::{ActivityId, ComplaintId, EntryRef, ItemId, PlanId};
use chrono::NaiveDate;
use std::collections::BTreeSet;
use strum::VariantArray;

pub use schedule::{Pattern, Schedule};
pub use stance::{StanceBaseline, StanceField};
pub use weekdays::Weekdays;

/// Most items that one plan holds.
pub const MAX_ITEMS: usize = 12;
/// Most complaints, and most named activities.
pub const MAX_NAMED: usize = 5;
/// Longest note to an item, in characters.
pub const MAX_NOTE: usize = 40;
/// Longest name of a complaint or an activity, in characters.
pub const MAX_NAME: usize = 60;
/// Longest line of aftercare, in characters.
pub const MAX_AFTERCARE: usize = 120;
/// Most lines of aftercare: more than a patient would read on the day of a visit.
pub const MAX_AFTERCARE_LINES: usize = 8;
/// Most stance times: three of each leg with eyes open on the firm floor (today's and those of the days that a gate asks for), and
/// two of another condition. A card has to stay small enough for one code.
pub const MAX_BASELINES: usize = 8;
/// Most alarms that one plan clears; each takes room on the card.
pub const MAX_CLEARED: usize = 32;
/// The highest pain, and the highest rating of an activity: both are asked for on the usual scale of 0 to 10.
pub const MAX_SCORE: u8 = 10;
/// Pain that an item allows unless the clinician says otherwise, 0 to 10: up to 5 during and after is allowed, if it settles by
/// next morning (Silbernagel 2007, Am J Sports Med 35:897-906, tested in Achilles tendinopathy only; acute, post-operative or
/// nerve pain needs less).
pub const DEFAULT_PAIN_LIMIT: u8 = 5;

/// What one patient is to do until the review date, as it was issued.
#[derive(Debug, Clone, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Plan {
    /// Which plan it is, of whom and since when: what issuing gives it.
    pub header: Header,
    /// What the clinician prescribed.
    pub prescription: Prescription,
}

/// What issuing gives a plan.
#[derive(Debug, Clone, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Header {
    /// The plan, through all its revisions.
    pub id: PlanId,
    /// Counted from 1; a higher revision replaces a lower one.
    pub revision: u16,
    /// The clinic's name, as it shows on the patient's screen.
    pub clinic: String,
    /// The first revision's day of issue: day 0 of the summary's day numbers.
    pub start: NaiveDate,
    /// This revision's day of issue.
    pub issued: NaiveDate,
}

impl Header {
    /// Of a plan that is issued for the first time.
    pub fn first(id: PlanId, clinic: &str, today: NaiveDate) -> Header {
        Header { id, revision: 1, clinic: clinic.to_owned(), start: today, issued: today }
    }

    /// Of the revision that follows this one.
    pub fn next(&self, clinic: &str, today: NaiveDate) -> Header {
        let revision = self.revision.saturating_add(1);
        Header { id: self.id, revision, clinic: clinic.to_owned(), start: self.start, issued: today }
    }
}

/// What a clinician prescribes and edits.
#[derive(Debug, Clone, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Prescription {
    /// The day of the next visit. Reminders go on until then.
    pub review: NaiveDate,
    /// The patient's age band; needed where balance is prescribed.
    pub age: Option<AgeBand>,
    /// What the clinician ticked as considered and absent; needed where balance is prescribed.
    pub absent: BTreeSet<Risk>,
    /// The items, in the order in which they are shown.
    pub items: Vec<Item>,
    /// What the patient came with.
    pub complaints: Vec<Complaint>,
    /// Activities that the patient named as hard.
    pub activities: Vec<Activity>,
    /// Stance times taken at this visit and at earlier ones.
    pub baselines: Vec<StanceBaseline>,
    /// What the clinician says about the first two days after the visit.
    pub aftercare: Vec<Aftercare>,
    /// Alarms that this revision clears.
    pub cleared: Vec<EntryRef>,
}

impl Prescription {
    /// The item of that number, if there is one.
    pub fn item(&self, id: ItemId) -> Option<&Item> {
        self.items.iter().find(|item| item.id == id)
    }
}

impl Plan {
    /// The item of that number, if this revision has it.
    pub fn item(&self, id: ItemId) -> Option<&Item> {
        self.prescription.item(id)
    }

    /// The same plan with the schedules that the person agreed to.
    pub fn with_schedules(&self, agreed: &[(ItemId, Schedule)]) -> Plan {
        let mut plan = self.clone();
        for item in &mut plan.prescription.items {
            if let Some((_, schedule)) = agreed.iter().find(|(id, _)| *id == item.id) {
                item.schedule = schedule.clone();
            }
        }
        plan
    }
}

/// One exercise of a plan.
#[derive(Debug, Clone, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Item {
    /// Keeps its number through revisions.
    pub id: ItemId,
    /// The exercise.
    pub exercise: ExerciseId,
    /// The revision of the exercise's content that the clinician taught from.
    pub content: u16,
    /// The rung, where the exercise has ladders.
    pub rung: Option<RungId>,
    /// The side.
    pub side: Side,
    /// How much at a time.
    pub dose: Dose,
    /// When.
    pub schedule: Schedule,
    /// The highest pain during the exercise that the clinician allows, 0 to 10. Above it is an alarm.
    pub pain_limit: u8,
    /// Whether the patient's copy may offer the next step by itself.
    pub may_step: bool,
    /// The complaint that it serves.
    pub serves: Option<ComplaintId>,
    /// A note of the clinician, at most [`MAX_NOTE`] characters.
    pub note: String,
}

impl Item {
    /// An item of the first edition of `exercise`, without rung, side, complaint or note, and with the usual limits. What it has
    /// beyond that is said where it is made, so that a new field has its usual value in one place.
    pub fn new(id: ItemId, exercise: ExerciseId, dose: Dose, schedule: Schedule) -> Item {
        Item {
            id,
            exercise,
            content: 1,
            rung: None,
            side: Side::Neither,
            dose,
            schedule,
            pain_limit: DEFAULT_PAIN_LIMIT,
            may_step: false,
            serves: None,
            note: String::new(),
        }
    }

    /// What a balance item is stood on, and with which eyes: those of its rung, else the firm floor with eyes open.
    pub fn conditions(&self, catalogue: &Catalogue) -> (Surface, Eyes) {
        let exercise = catalogue.get(&self.exercise);
        let rung = exercise.zip(self.rung.as_ref()).and_then(|(exercise, rung)| exercise.rung(rung));
        let surface = rung.and_then(|rung| rung.surface).unwrap_or(Surface::Firm);
        (surface, rung.and_then(|rung| rung.eyes).unwrap_or(Eyes::Open))
    }
}

/// Which side an item is done on.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, VariantArray)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Side {
    /// The left.
    Left,
    /// The right.
    Right,
    /// One after the other, each with the full dose.
    Both,
    /// The exercise has no sides.
    Neither,
}

impl Side {
    /// The sides in the order in which they are done; one `None` where there are no sides.
    pub fn in_turn(self) -> &'static [Option<BodySide>] {
        match self {
            Side::Left => &[Some(BodySide::Left)],
            Side::Right => &[Some(BodySide::Right)],
            Side::Both => &[Some(BodySide::Left), Some(BodySide::Right)],
            Side::Neither => &[None],
        }
    }
}

/// One side of the body: the leg, arm or wrist with which one hold, set or trial is done.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, VariantArray)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum BodySide {
    /// The left.
    Left,
    /// The right.
    Right,
}

/// Bands in which stance norms are published and gates are stated.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, VariantArray)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum AgeBand {
    /// Under 18 years.
    Under18,
    /// 18 to 39 years.
    From18,
    /// 40 to 49 years.
    From40,
    /// 50 to 59 years.
    From50,
    /// 60 to 64 years.
    From60,
    /// 65 to 69 years; the gate for soft surfaces with eyes closed begins here.
    From65,
    /// 70 to 79 years.
    From70,
    /// 80 years and more.
    From80,
}

impl AgeBand {
    /// All bands, youngest first.
    pub const ALL: [AgeBand; AgeBand::VARIANTS.len()] = array(AgeBand::VARIANTS);

    /// The youngest and the oldest age in it, whole years; `None` where it has no end.
    pub fn ages(self) -> (u8, Option<u8>) {
        let from = [0, 18, 40, 50, 60, 65, 70, 80];
        let place = self as usize;
        (from[place], from.get(place + 1).map(|next| next - 1))
    }
}

/// What speaks against balance practice without supervision (a proposal built from published safety lists; the clinician
/// and local rules decide).
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, VariantArray)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Risk {
    /// A fall with injury, two falls or more in a year, frailty, an hour on the floor, or loss of consciousness
    /// (high-risk criteria of Montero-Odasso 2022, Age Ageing 51:afac205; list recalled).
    HighFallRisk,
    /// Vertigo, a vestibular attack or fainting under study.
    VertigoOrFainting,
    /// Neuropathy or numb feet.
    NumbFeet,
    /// Parkinson's disease or stroke with unsteadiness.
    NeurologicalUnsteadiness,
    /// An orthosis or partial weight-bearing.
    PartialWeightBearing,
    /// A fresh fracture, operation or ligament tear.
    FreshInjury,
    /// Severe osteoporosis.
    SevereOsteoporosis,
    /// Sedatives or alcohol.
    SedativesOrAlcohol,
    /// Severe loss of sight; speaks against eyes closed.
    SevereVisualLoss,
    /// Cognitive impairment.
    CognitiveImpairment,
    /// Late pregnancy.
    LatePregnancy,
}

impl Risk {
    /// All of them, in the order of the ticked list. The place in this list is the bit on the card: append only.
    pub const ALL: [Risk; Risk::VARIANTS.len()] = array(Risk::VARIANTS);
}

/// What the patient came with.
#[derive(Debug, Clone, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Complaint {
    /// Keeps its number through revisions.
    pub id: ComplaintId,
    /// In the clinician's words: "upper back".
    pub name: String,
    /// The side, if it has one.
    pub side: Side,
    /// Pain at the visit, 0 (none) to 10.
    pub pain: Option<u8>,
}

/// An activity that the patient named as hard, rated 0 (cannot) to 10 (as before).
#[derive(Debug, Clone, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Activity {
    /// Keeps its number through revisions.
    pub id: ActivityId,
    /// In the patient's words.
    pub name: String,
    /// Rating at the visit.
    pub rating: Option<u8>,
}

/// A line for the two days after the visit.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Aftercare {
    /// Mild soreness for a day or two is usual; start the exercises gently.
    SorenessIsUsual,
    /// Keep moving as usual within comfort.
    KeepMoving,
    /// No heavy lifting or sport until the day after tomorrow.
    GoEasy,
    /// Warmth may be used if it feels good.
    WarmthIfPleasant,
    /// Pain that grows, or numbness or weakness that is new: contact the clinic, or your local emergency number if urgent.
    ContactIfWorse,
    /// The clinician's own line, at most [`MAX_AFTERCARE`] characters.
    Own(String),
}
