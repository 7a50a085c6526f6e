//! The interface through which the other code learns about a kind of exercise.

use super::{BreathPace, Dose, Tempo};
use crate::catalogue::bounds::Quantity;
use crate::catalogue::sidedness::Sidedness;

/// Everything that depends on the kind of an exercise.
pub trait KindRules: Sync {
    /// The kind's number in cards and logs. It never changes and is never given to another kind.
    fn code(&self) -> u8;

    /// The kind's name in catalogue files, plan files and exports of a person's own data. It never changes.
    fn name(&self) -> &'static str;

    /// The name of the parts of its runs in exports of a person's own data. It never changes.
    fn parts_name(&self) -> &'static str;

    /// The fields of its dose, in the order in which cards and logs hold them. The order never changes; new fields are added
    /// at the end.
    fn fields(&self) -> &'static [DoseField];

    /// The values of the fields; empty for a dose of another kind.
    fn values(&self, dose: &Dose) -> Vec<i64>;

    /// The dose with these values; `None` if there are too few or too many values, or one does not fit its field.
    fn dose(&self, values: &[i64]) -> Option<Dose>;

    /// Number of parts in one run on one side.
    fn parts(&self, dose: &Dose) -> u8;

    /// The course of one part of a run.
    fn course(&self, dose: &Dose) -> PartCourse;

    /// How a run of this kind can be paused and ended.
    fn flags(&self) -> RunFlags {
        RunFlags::USUAL
    }

    /// The form in which the work done is recorded.
    fn form(&self) -> WorkForm;

    /// The unit in which its dose is counted.
    fn unit(&self) -> DoseUnit;

    /// Whether it trains balance, so that a fall is possible. A plan then requires a screening, and a reported fall pauses all
    /// such exercises.
    fn is_balance(&self) -> bool {
        false
    }

    /// The sides on which an exercise of this kind can be done.
    fn sides(&self) -> &'static [Sidedness] {
        &[Sidedness::None, Sidedness::EachSide, Sidedness::Alternating]
    }

    /// Whether each trial belongs to one leg. A plan then also requires a stance time of each leg, and the phone may measure
    /// the sway.
    fn is_by_leg(&self) -> bool {
        false
    }

    /// Whether the pain while doing it is asked about.
    fn asks_pain(&self) -> bool {
        true
    }

    /// Whether the run asks at its end for dizziness.
    fn asks_dizziness(&self) -> bool {
        false
    }

    /// Whether the review may propose to make it harder, or easier for pain or a missed target. Otherwise it proposes only to
    /// keep it, to ask less, or to talk.
    fn is_stepped(&self) -> bool {
        true
    }

    /// Whether it is exercise. Warmth, cold and rest are not, and the review counts them separately.
    fn is_exercise(&self) -> bool {
        true
    }

    /// Whether it is always a test, which no step changes, and of which no less is asked.
    fn is_test(&self) -> bool {
        false
    }

    /// Whether it is done at once, so that one press says that it was done.
    fn is_one_press(&self) -> bool {
        false
    }

    /// The most seconds of work that a plan may ask for in one run on one side; `None` if the ranges of the quantities are
    /// limit enough.
    fn most_work_s(&self) -> Option<u32> {
        None
    }

    /// When an exercise of this kind is due, before the clinician chooses times.
    fn usual_times(&self) -> UsualTimes;

    /// How steps forward change the dose of an exercise that states no rules of its own, in order; then comes the next rung.
    fn forward(&self) -> &'static [StepForward];

    /// How steps back change the dose once the easiest rung is reached, in order: the quantity, and the amount added to it.
    fn back(&self) -> &'static [(Quantity, i16)];

    /// The dose that is asked for `days` days after it was prescribed; only graded activity grows by the calendar.
    fn after_days(&self, dose: &Dose, _days: i64) -> Dose {
        *dose
    }

    /// The dose of a run for which a summary gives only totals. What the totals do not say is taken from `planned`. `None` if
    /// the totals fit no dose.
    fn dose_of_totals(&self, planned: &Dose, totals: Totals) -> Option<Dose>;
}

/// One field of a dose.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct DoseField {
    /// The quantity that the field holds, which also has its range.
    pub quantity: Quantity,
    /// The field's name in catalogue files and in exports of a person's own data.
    pub key: &'static str,
    /// The field's name in plan files; empty for a field of a group.
    pub plan_key: &'static str,
    /// The group that the field belongs to: in a catalogue file a table within the dose, in a plan file a list of the group's
    /// values. Groups are seldom changed, so the window shows them folded.
    pub group: Option<&'static str>,
    /// The largest number that a file can hold in this field; the quantity's range is within it.
    pub room: u16,
    /// Whether the page on which a plan is written changes the value by fives from 5 on.
    pub by_fives: bool,
}

impl DoseField {
    /// A field that holds a count.
    pub(super) const fn count(quantity: Quantity, key: &'static str, plan_key: &'static str) -> DoseField {
        DoseField { quantity, key, plan_key, group: None, room: u8::MAX as u16, by_fives: false }
    }

    /// A field that holds the seconds of a hold, a trial or a rest.
    pub(super) const fn seconds(quantity: Quantity, key: &'static str, plan_key: &'static str) -> DoseField {
        DoseField { quantity, key, plan_key, group: None, room: u16::MAX, by_fives: true }
    }

    /// A field that holds minutes.
    pub(super) const fn minutes(quantity: Quantity, key: &'static str, plan_key: &'static str) -> DoseField {
        DoseField { by_fives: true, ..DoseField::count(quantity, key, plan_key) }
    }

    /// A field of a group that holds the seconds of one part of a movement or a breath.
    pub(super) const fn within(group: &'static str, quantity: Quantity, key: &'static str) -> DoseField {
        DoseField { quantity, key, plan_key: "", group: Some(group), room: u8::MAX as u16, by_fives: false }
    }
}

/// The course of one part of a run: what comes before it, and the work.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct PartCourse {
    /// What comes before the part.
    pub lead: Lead,
    /// Seconds of rest between the part before and this one.
    pub rest_s: u16,
    /// The work itself.
    pub work: PartWork,
}

/// What comes before a part.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Lead {
    /// The rest ends with a count-in, after which the part begins by itself.
    CountIn,
    /// Nothing: it begins as soon as the person has started the run.
    AtOnce,
    /// After the rest the person says when they are ready; then a count-in gives time to put the phone in its place.
    WhenReady,
}

/// The work of one part.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum PartWork {
    /// A position is held for a fixed time; a touch of the screen does not end it.
    Hold {
        /// Length of the hold in seconds.
        s: u16,
    },
    /// A position is eased into for [`crate::guide::EASE_IN_MS`] and then kept without effort for a fixed time.
    Stretch {
        /// Length of the stretch in seconds, without the easing in.
        s: u16,
    },
    /// Movements at a tempo that the figure shows.
    Movements {
        /// Number of movements.
        count: u8,
        /// Seconds of each part of a movement.
        tempo: Tempo,
    },
    /// Movements at the person's own pace, who counts them or says when all are done.
    OwnPace {
        /// Number of movements.
        count: u8,
    },
    /// A position is held until the screen is touched.
    Trial {
        /// The longest that the trial lasts, in seconds.
        s: u16,
    },
    /// Movements as many as possible in a fixed time; the person counts them and says how many there were.
    Tally {
        /// The time in seconds.
        s: u16,
    },
    /// Movements on a beat for a fixed time.
    OnBeat {
        /// The time in seconds.
        s: u16,
        /// Beats a minute.
        per_minute: u8,
    },
    /// Something goes on for a fixed time, which needs no guidance.
    Timer {
        /// Its length in seconds.
        s: u16,
        /// Whether the body moves meanwhile.
        moves: bool,
    },
    /// Breaths at a pace, until the time is over and the last one is complete.
    Breaths {
        /// The time in seconds.
        s: u16,
        /// Seconds of each part of a breath.
        pace: BreathPace,
    },
}

/// How a run of a kind can be paused and ended.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct RunFlags {
    /// Whether the person can pause the run; it then also pauses when the device sleeps. A run that cannot be paused is
    /// broken off when the device sleeps.
    pub pausable: bool,
    /// Whether the run is broken off when the window goes out of sight, because the person could then not touch it.
    pub ends_out_of_sight: bool,
    /// Whether a touch anywhere on the screen ends the work, or cancels its count-in.
    pub whole_screen: bool,
    /// Whether the time goes on by the clock while the device sleeps or the window is out of sight.
    pub goes_on_unseen: bool,
}

impl RunFlags {
    /// Can be paused, pauses when the device sleeps, and goes on when the window is out of sight.
    pub(super) const USUAL: RunFlags =
        RunFlags { pausable: true, ends_out_of_sight: false, whole_screen: false, goes_on_unseen: false };
}

/// The form in which the work done is recorded; several kinds may share one.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum WorkForm {
    /// Milliseconds of each part, by side.
    Timed,
    /// Repetitions of each part that were done and that failed, by side.
    Counted,
    /// Balance trials by leg, with the surface, the eyes and where the phone was.
    Trials,
    /// The number of movements in a set time, and how much of the time was done.
    Tallied,
}

/// The unit in which a dose is counted.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum DoseUnit {
    /// Seconds of holding.
    HoldSeconds,
    /// Seconds of stretching.
    StretchSeconds,
    /// Seconds of movements on a beat.
    BeatSeconds,
    /// Minutes.
    Minutes,
    /// Repetitions that went well.
    Repetitions,
    /// Balance trials attempted.
    Trials,
    /// Times that it was done.
    Times,
}

impl DoseUnit {
    /// Number of units of a [`crate::run::Share`] in one of these units; a share counts time in milliseconds.
    pub(crate) fn divisor(self) -> u64 {
        match self {
            DoseUnit::HoldSeconds | DoseUnit::StretchSeconds | DoseUnit::BeatSeconds => 1000,
            DoseUnit::Minutes => 60_000,
            DoseUnit::Repetitions | DoseUnit::Trials | DoseUnit::Times => 1,
        }
    }
}

/// When an exercise is due, before the clinician chooses times.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum UsualTimes {
    /// Every hour of a working day if the exercise is short enough, otherwise three times a day.
    ThroughTheDay,
    /// Once in the evening, when the person is at home.
    Evening,
    /// Once in two weeks, in the evening.
    EveryTwoWeeks,
}

/// One way in which steps forward make the dose larger.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct StepForward {
    /// The quantity that grows.
    pub quantity: Quantity,
    /// The amount added by one step, at least.
    pub by: i16,
    /// The share of the value that one step adds if that is more than `by`, in percent, rounded down.
    pub percent: u8,
    /// The largest value that steps lead to.
    pub most: i64,
    /// Whether this step is not allowed if it would make an exercise that is due often too long.
    pub short_if_often: bool,
}

impl StepForward {
    /// Steps that add `by` up to `most`, as long as an exercise that is due often stays short.
    pub const fn by(quantity: Quantity, by: i16, most: i64) -> StepForward {
        StepForward { quantity, by, percent: 0, most, short_if_often: true }
    }

    /// The amount that one step adds to `value`.
    pub fn amount(&self, value: i64) -> i16 {
        let share = value.saturating_mul(self.percent.into()) / 100;
        self.by.max(i16::try_from(share).unwrap_or(i16::MAX))
    }
}

/// What a summary says about the dose of a run, for one side. A value is `None` if it cannot be divided evenly between the sides.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Totals {
    /// Number of parts prescribed: holds, repetitions or trials.
    pub parts: Option<u32>,
    /// The amount prescribed, in the units of [`crate::run::Share`].
    pub amount: Option<u32>,
    /// The target of a trial in seconds.
    pub target_s: Option<u16>,
}

/// `of` divided by `by`; `None` if it does not divide evenly.
pub(super) fn even(of: Option<u32>, by: u32) -> Option<u32> {
    of.filter(|of| by > 0 && of.is_multiple_of(by)).map(|of| of / by)
}

/// A whole number as the field of a dose; `None` if it does not fit.
pub(super) fn fit<T: TryFrom<i64>>(value: impl Into<i64>) -> Option<T> {
    T::try_from(value.into()).ok()
}
