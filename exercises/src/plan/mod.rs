//! What one patient is to do until the review date.
//!
//! A plan holds items. An item is one exercise on one rung, with a dose, a side, a schedule and limits. A later revision of
//! the same plan replaces it. Items, complaints and activities keep their numbers through all revisions, so that the history
//! can be followed across them.

mod agreed;
pub mod check;
pub mod days;
pub mod differ;
mod full_day;
mod load;
mod phase;
pub mod schedule;
pub mod stance;
mod weekdays;

use crate::alarm::ClearedAlarm;
use crate::catalogue::{Catalogue, Dose, ExerciseId, Eyes, Kind, Quantity, RungId, Sidedness, Surface};
use crate::choice::array;
use crate::id::{ActivityId, ComplaintId, ItemId, PlanId};
use crate::score::Score;
use chrono::NaiveDate;
use std::borrow::Cow;
use std::collections::BTreeSet;
use strum::VariantArray;

pub use days::Days;
pub use full_day::{DueSession, full_day};
pub use load::{Band, Kilograms, Load};
pub use phase::{Phase, PhaseState};
pub use schedule::{Pattern, Schedule};
pub use stance::{StanceBaseline, StanceField};
pub use weekdays::Weekdays;

/// Largest number of items in one plan.
pub const MAX_ITEMS: usize = 12;
/// Largest number of complaints in one plan, and of named activities.
pub const MAX_NAMED: usize = 5;
/// Longest note to an item, in characters.
pub const MAX_NOTE: usize = 40;
/// Longest name of a complaint or an activity, in characters.
pub const MAX_NAME: usize = 60;
/// Largest number of characters in a telephone number.
pub const MAX_PHONE: usize = 30;
/// Least number of digits in a telephone number.
pub const MIN_PHONE_DIGITS: usize = 3;
/// Longest line of aftercare, in characters.
pub const MAX_AFTERCARE: usize = 120;
/// Largest number of lines of aftercare: more would not be read on the day of a visit.
pub const MAX_AFTERCARE_LINES: usize = 8;
/// Largest number of stance times in one plan: three for each leg with eyes open on the firm floor (today's, and those of the
/// days required before harder conditions), and two for another condition. A card has to stay small enough for one QR code.
pub const MAX_BASELINES: usize = 8;
/// Largest number of alarms that one plan clears; each takes room on the card.
pub const MAX_CLEARED: usize = 32;
/// The highest pain that an item allows if the clinician sets nothing else, 0 to 10: up to 5 during and after is allowed, if
/// it settles by next morning (Silbernagel 2007, Am J Sports Med 35:897-906, tested in Achilles tendinopathy only; acute,
/// post-operative or nerve pain needs less).
pub const DEFAULT_PAIN_LIMIT: Score = Score::at_most_ten(5);

/// One issued revision of a plan: what one patient is to do until the review date.
#[derive(Debug, Clone, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Plan {
    /// The part that is filled in when the plan is issued.
    pub header: Header,
    /// What the clinician prescribed.
    pub prescription: Prescription,
}

/// Which plan and revision this is, and when and by which clinic it was issued.
#[derive(Debug, Clone, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Header {
    /// The plan's id, the same for all its revisions.
    pub id: PlanId,
    /// The revision's number, from 1; a higher revision replaces a lower one.
    pub revision: u16,
    /// The clinic's name, as it shows on the patient's screen.
    pub clinic: String,
    /// The clinic's telephone number, which every page shows that says to call the clinic; `None` on cards of version 1.
    pub phone: Option<String>,
    /// The day on which the first revision was issued; day 0 of the plan's day numbers.
    pub start: NaiveDate,
    /// The day on which this revision was issued.
    pub issued: NaiveDate,
}

impl Header {
    /// The header of a plan that is issued for the first time, on `today`, without a telephone number.
    pub fn first(id: PlanId, clinic: &str, today: NaiveDate) -> Header {
        Header { id, revision: 1, clinic: clinic.to_owned(), phone: None, start: today, issued: today }
    }

    /// The header of the revision that follows this one, issued on `today`, without a telephone number.
    pub fn next(&self, clinic: &str, today: NaiveDate) -> Header {
        let revision = self.revision.saturating_add(1);
        Header { revision, clinic: clinic.to_owned(), phone: None, issued: today, ..self.clone() }
    }

    /// This header with the clinic's telephone number.
    pub fn with_phone(self, phone: Option<String>) -> Header {
        Header { phone, ..self }
    }
}

/// Whether `text` can be a telephone number: at least [`MIN_PHONE_DIGITS`] digits and at most [`MAX_PHONE`] characters, with nothing but
/// digits, spaces and the signs that are usual in one.
pub fn is_phone(text: &str) -> bool {
    let digits = text.bytes().filter(u8::is_ascii_digit).count();
    let usual = text.bytes().all(|byte| byte.is_ascii_digit() || b" +-()./".contains(&byte));
    usual && digits >= MIN_PHONE_DIGITS && text.len() <= MAX_PHONE && text.trim() == text
}

/// What the clinician prescribes; the part of a plan that is edited.
#[derive(Debug, Clone, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Prescription {
    /// The day of the next visit. Reminders go on until then.
    pub review: NaiveDate,
    /// The patient's age band; required if balance is prescribed.
    pub age: Option<AgeBand>,
    /// Risks that the clinician considered and ticked as absent; required if balance is prescribed.
    pub absent: BTreeSet<Risk>,
    /// The day on which the clinician last confirmed them; `None` on cards of version 1, where it is the day of issue.
    pub confirmed: Option<NaiveDate>,
    /// The items, in the order in which they are shown.
    pub items: Vec<Item>,
    /// Where it hurts, as recorded at the visit.
    pub complaints: Vec<Complaint>,
    /// Activities that the patient named as hard.
    pub activities: Vec<Activity>,
    /// Stance times taken at this visit and at earlier ones.
    pub baselines: Vec<StanceBaseline>,
    /// Advice for the first two days after the visit.
    pub aftercare: Vec<Aftercare>,
    /// Alarms that this revision clears.
    pub cleared: Vec<ClearedAlarm>,
}

impl Prescription {
    /// The item with that number, if the prescription has it.
    pub fn item(&self, id: ItemId) -> Option<&Item> {
        self.items.iter().find(|item| item.id == id)
    }
}

impl Plan {
    /// The item with that number, if this revision has it.
    pub fn item(&self, id: ItemId) -> Option<&Item> {
        self.prescription.item(id)
    }

    /// The item with that number, with the dose that it asks for on `day`.
    pub fn item_on(&self, id: ItemId, day: NaiveDate) -> Option<Cow<'_, Item>> {
        self.item(id).map(|item| item.on(day, self.header.issued))
    }

    /// The same plan, with the schedules that the patient agreed to in place of the prescribed ones.
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
    /// The item's number, the same through all revisions.
    pub id: ItemId,
    /// The exercise.
    pub exercise: ExerciseId,
    /// The revision of the exercise's content that the clinician taught.
    pub content: u16,
    /// The rung; `None` if the exercise has no ladders.
    pub rung: Option<RungId>,
    /// The side of the body.
    pub side: Side,
    /// How much is done at each time.
    pub dose: Dose,
    /// What it is done against.
    pub load: Option<Load>,
    /// How hard it is to feel, 0 (no effort) to 10 (the most possible); `None` if nothing is aimed at, or if the dose says it.
    pub effort: Option<Score>,
    /// Whether it is done only with somebody beside the patient.
    pub with_helper: bool,
    /// When the item is due.
    pub schedule: Schedule,
    /// From which day to which it is to be done.
    pub phase: Phase,
    /// The highest pain during the exercise that the clinician allows, 0 to 10. Pain above it raises an alarm.
    pub pain_limit: Score,
    /// Whether the patient's copy may offer the next step without a new card.
    pub may_step: bool,
    /// The complaint that the item is meant to help.
    pub serves: Option<ComplaintId>,
    /// The clinician's note, at most [`MAX_NOTE`] characters.
    pub note: String,
}

impl Item {
    /// An item on the first revision of `exercise`, without rung, side, complaint or note, and with the default pain limit.
    /// Callers set whatever differs, so that the default of a new field is given in one place only.
    pub fn new(id: ItemId, exercise: ExerciseId, dose: Dose, schedule: Schedule) -> Item {
        Item {
            id,
            exercise,
            content: 1,
            rung: None,
            side: Side::Neither,
            dose,
            load: None,
            effort: None,
            with_helper: false,
            schedule,
            phase: Phase::WHOLE,
            pain_limit: DEFAULT_PAIN_LIMIT,
            may_step: false,
            serves: None,
            note: String::new(),
        }
    }

    /// Whether a load can be prescribed for a kind of exercise: one that is made harder step by step and is no balance practice.
    pub fn may_have_load(kind: Kind) -> bool {
        kind.rules().is_stepped() && !kind.is_balance()
    }

    /// Whether an effort can be aimed at beside the dose: after it pain is asked about, and the dose says none itself.
    pub fn may_have_effort(dose: Dose) -> bool {
        dose.kind().rules().asks_pain() && dose.value(Quantity::Effort).is_none()
    }

    /// The days on which it is due, counted within its phase.
    pub fn days(&self) -> Days {
        let first = |from: NaiveDate| self.phase.first.map_or(from, |first| first.max(from));
        match self.schedule.days {
            Days::TimesAWeek { n, from } => Days::TimesAWeek { n, from: first(from) },
            days => days,
        }
    }

    /// Whether it is due on `day`, in a plan that ends on `until`.
    pub fn is_due_on(&self, day: NaiveDate, until: Option<NaiveDate>) -> bool {
        self.phase.contains(day) && self.days().contain(day, self.phase.ends(until))
    }

    /// The item with the dose that it asks for on `day`, prescribed on a card of the day `issued`: graded activity grows from then on, or from
    /// the first day of its phase.
    pub fn on(&self, day: NaiveDate, issued: NaiveDate) -> Cow<'_, Item> {
        let from = self.phase.first.map_or(issued, |first| first.max(issued));
        let dose = self.dose.after_days(day.signed_duration_since(from).num_days());
        if dose == self.dose { Cow::Borrowed(self) } else { Cow::Owned(Item { dose, ..self.clone() }) }
    }

    /// Surface and eyes of a balance item: those of its rung, or the firm floor and eyes open if the rung gives none.
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
    /// The left side only.
    Left,
    /// The right side only.
    Right,
    /// First the left, then the right, each with the full dose.
    Both,
    /// The exercise has no sides.
    Neither,
    /// The left and the right in turn, each with the full dose.
    Alternating,
}

impl Side {
    /// The sides in the order in which they are done; a single `None` if there are no sides. Of [`Side::Alternating`] the order in
    /// which each turn goes.
    pub fn in_turn(self) -> &'static [Option<BodySide>] {
        match self {
            Side::Left => &[Some(BodySide::Left)],
            Side::Right => &[Some(BodySide::Right)],
            Side::Both | Side::Alternating => &[Some(BodySide::Left), Some(BodySide::Right)],
            Side::Neither => &[None],
        }
    }

    /// Whether an exercise of this sidedness can be prescribed for it.
    pub fn fits(self, sidedness: Sidedness) -> bool {
        match sidedness {
            Sidedness::None => self == Side::Neither,
            Sidedness::EachSide => matches!(self, Side::Left | Side::Right | Side::Both),
            Sidedness::Alternating => self == Side::Alternating,
        }
    }

    /// How often the dose is done in one run: once, for each side, or in turn.
    pub fn sidedness(self) -> Sidedness {
        match self {
            Side::Left | Side::Right | Side::Neither => Sidedness::None,
            Side::Both => Sidedness::EachSide,
            Side::Alternating => Sidedness::Alternating,
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

/// Age bands in which stance norms are published and on which the rules for balance depend.
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
    /// 65 to 69 years; from here on a soft surface may not be combined with closed eyes.
    From65,
    /// 70 to 79 years.
    From70,
    /// 80 years and more.
    From80,
}

impl AgeBand {
    /// All bands, youngest first.
    pub const ALL: [AgeBand; AgeBand::VARIANTS.len()] = array(AgeBand::VARIANTS);

    /// The youngest and the oldest age in the band, in whole years; `None` if the band has no upper end.
    pub fn ages(self) -> (u8, Option<u8>) {
        let from = [0, 18, 40, 50, 60, 65, 70, 80];
        let place = self as usize;
        (from[place], from.get(place + 1).map(|next| next - 1))
    }
}

/// A reason against balance practice without supervision (a proposal built from published safety lists; the clinician
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
    /// Severe loss of sight; a reason against closed eyes only.
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

/// A place where it hurts, as recorded at the visit.
#[derive(Debug, Clone, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Complaint {
    /// The complaint's number, the same through all revisions.
    pub id: ComplaintId,
    /// Its name in the clinician's words, for example "upper back".
    pub name: String,
    /// The side, if it has one.
    pub side: Side,
    /// Pain at the visit, 0 (none) to 10; `None` if it was not asked.
    pub pain: Option<Score>,
}

/// An activity that the patient named as hard, rated 0 (cannot) to 10 (as before).
#[derive(Debug, Clone, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Activity {
    /// The activity's number, the same through all revisions.
    pub id: ActivityId,
    /// Its name in the patient's words.
    pub name: String,
    /// The rating at the visit; `None` if it was not asked.
    pub rating: Option<Score>,
}

/// A line of advice for the two days after the visit.
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
    /// A line that the clinician wrote, at most [`MAX_AFTERCARE`] characters.
    Own(String),
}
