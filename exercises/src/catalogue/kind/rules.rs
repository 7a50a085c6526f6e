//! What a kind of exercise states about itself.

use super::{Dose, Tempo};
use crate::catalogue::bounds::Quantity;

/// Everything that depends on the kind of an exercise.
pub trait KindRules: Sync {
    /// Its number in cards and logs. Frozen: a number is never given to another kind.
    fn code(&self) -> u8;

    /// Its name in catalogue and plan files and in a person's own data. Frozen.
    fn name(&self) -> &'static str;

    /// What the parts of its runs are called in a person's own data. Frozen.
    fn parts_name(&self) -> &'static str;

    /// The fields of its dose, in the order in which cards and logs hold them. Frozen: a field is added at the end.
    fn fields(&self) -> &'static [DoseField];

    /// The values of the fields; empty for a dose of another kind.
    fn values(&self, dose: &Dose) -> Vec<i64>;

    /// The dose with these values; `None` where their count is another or one is too large for its field.
    fn dose(&self, values: &[i64]) -> Option<Dose>;

    /// How many parts one doing has on one side.
    fn parts(&self, dose: &Dose) -> u8;

    /// How one part of a run goes.
    fn course(&self, dose: &Dose) -> PartCourse;

    /// How a run of this kind is kept.
    fn flags(&self) -> RunFlags {
        RunFlags { pausable: true, ends_out_of_sight: false, whole_screen: false }
    }

    /// The form in which it is recorded what was done.
    fn form(&self) -> WorkForm;

    /// What its dose is counted in.
    fn unit(&self) -> DoseUnit;

    /// Whether it is practised standing on one leg, so that a fall is possible: a plan then asks for a screening and stance
    /// times, and a fall holds all of it back.
    fn is_balance(&self) -> bool {
        false
    }

    /// When pain is asked about.
    fn asks_pain(&self) -> AskPain;

    /// When it is due before a clinician says otherwise.
    fn usual_times(&self) -> UsualTimes;

    /// What steps forward change before the rung does, in order. A step back that takes back what the patient added goes
    /// through them in the opposite order.
    fn forward(&self) -> &'static [StepForward];

    /// What steps back from the easiest rung change, in order: the quantity, and by how much.
    fn back(&self) -> &'static [(Quantity, i16)];

    /// The dose of which a summary tells only totals; what they do not say is as in `planned`. `None` where they fit no dose.
    fn dose_of_totals(&self, planned: &Dose, totals: Totals) -> Option<Dose>;
}

/// One field of a dose.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct DoseField {
    /// What it holds, with its range.
    pub quantity: Quantity,
    /// Its name in a catalogue file and in a person's own data.
    pub key: &'static str,
    /// Its name in a plan file; of a field of a group empty.
    pub plan_key: &'static str,
    /// The group that it belongs to: a table of the catalogue file's dose, in a plan file a list of its fields' values. A
    /// group is changed seldom, so the window folds it away.
    pub group: Option<&'static str>,
    /// The largest number that files have room for; the range of the quantity lies within.
    pub room: u16,
    /// Whether the composing page goes by fives from five on.
    pub by_fives: bool,
}

impl DoseField {
    /// A count.
    pub(super) const fn count(quantity: Quantity, key: &'static str, plan_key: &'static str) -> DoseField {
        DoseField { quantity, key, plan_key, group: None, room: u8::MAX as u16, by_fives: false }
    }

    /// Seconds of a hold, a trial or a rest.
    pub(super) const fn seconds(quantity: Quantity, key: &'static str, plan_key: &'static str) -> DoseField {
        DoseField { quantity, key, plan_key, group: None, room: u16::MAX, by_fives: true }
    }

    /// A few seconds within a movement, which belong to a group.
    pub(super) const fn within(group: &'static str, quantity: Quantity, key: &'static str) -> DoseField {
        DoseField { quantity, key, plan_key: "", group: Some(group), room: u8::MAX as u16, by_fives: false }
    }
}

/// How one part of a run goes: what leads to it, and the work.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct PartCourse {
    /// What comes before it.
    pub lead: Lead,
    /// Seconds of rest between it and the part before.
    pub rest_s: u16,
    /// The work itself.
    pub work: PartWork,
}

/// What comes before a part.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Lead {
    /// The end of the rest is a count-in, and the part begins by itself.
    CountIn,
    /// After the rest the person says when; then a count-in that leaves time to put the phone where it belongs.
    WhenReady,
}

/// The work of one part.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum PartWork {
    /// A position is held; a touch does not end it.
    Hold {
        /// Its length in seconds.
        s: u16,
    },
    /// Movements with a tempo, which the figure follows.
    Movements {
        /// How many.
        count: u8,
        /// Seconds of each part of a movement.
        tempo: Tempo,
    },
    /// A position is held until a touch ends it.
    Trial {
        /// The most that it lasts, in seconds.
        s: u16,
    },
}

/// How a run of a kind is kept.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct RunFlags {
    /// The person can pause it, and it pauses when the device sleeps. What cannot be paused is broken off then.
    pub pausable: bool,
    /// It is broken off when the window goes out of sight, for nobody could touch it.
    pub ends_out_of_sight: bool,
    /// All of the screen takes the touch, which ends the work or takes its count-in back.
    pub whole_screen: bool,
}

/// The form in which it is recorded what was done; several kinds share one.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum WorkForm {
    /// Milliseconds of each part, by side.
    Timed,
    /// Repetitions of each part, done and failed, by side.
    Counted,
    /// Balance trials by leg, with what was stood on and where the phone was.
    Trials,
}

/// What a dose is counted in.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum DoseUnit {
    /// Seconds of holding.
    HoldSeconds,
    /// Repetitions that went well.
    Repetitions,
    /// Balance trials attempted.
    Trials,
}

impl DoseUnit {
    /// How many of a [`crate::run::Share`]'s units make one of this unit: a share counts time in milliseconds.
    pub(crate) fn divisor(self) -> u64 {
        match self {
            DoseUnit::HoldSeconds => 1000,
            DoseUnit::Repetitions | DoseUnit::Trials => 1,
        }
    }
}

/// After which runs pain is asked about, once a day for each complaint.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum AskPain {
    /// After each.
    EveryRun,
    /// After the day's last.
    LastOfTheDay,
}

/// When an exercise is due before a clinician says otherwise.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum UsualTimes {
    /// By the hour of a working day where it is short enough, else three times a day.
    ThroughTheDay,
    /// Once in the evening, when the person is at home.
    Evening,
}

/// One way forward.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct StepForward {
    /// What grows.
    pub quantity: Quantity,
    /// By how much.
    pub by: i16,
    /// The most that steps lead to.
    pub most: i64,
    /// Whether an exercise that is due often has to stay short, so that the step is not had where it would become too long.
    pub short_if_often: bool,
}

/// What a summary tells of the dose of a run, for one side; `None` where the sides do not come out even.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Totals {
    /// Whole parts asked for: holds, repetitions or trials.
    pub parts: Option<u32>,
    /// The amount asked for, in the units of [`crate::run::Share`].
    pub amount: Option<u32>,
    /// The target of a trial in seconds.
    pub target_s: Option<u16>,
}

/// `of` divided by `by`, where that comes out even.
pub(super) fn even(of: Option<u32>, by: u32) -> Option<u32> {
    of.filter(|of| by > 0 && of.is_multiple_of(by)).map(|of| of / by)
}

/// A whole number as the field of a dose; `None` where it does not fit.
pub(super) fn fit<T: TryFrom<i64>>(value: impl Into<i64>) -> Option<T> {
    T::try_from(value.into()).ok()
}
