//! Editing a plan: what each press of the clinician changes, and the defaults before any press.
//!
//! A [`Draft`] starts from [`first`] or from [`next`]. Numbers of items, complaints and activities are never reused within one plan,
//! so that a history keeps its meaning. Defaults are a starting point, not advice: the clinician decides.

mod answered;
mod days;
mod dose;
mod facts;
mod named;
mod of_set;
mod options;
mod resume;
mod stance;
mod start;
mod step;
mod times;
mod typed;

use crate::catalogue::kind::UsualTimes;
use crate::catalogue::{Exercise, Kind, Level, RungId, Sidedness};
use crate::id::ItemId;
use crate::plan::{Days, Item, MAX_ITEMS, MAX_NOTE, Pattern, Prescription, Schedule, Side};
use chrono::NaiveDate;

pub use days::{DaysKind, keep_rhythms};
pub use dose::{stepped, with};
pub use facts::{Concern, PatientFacts};
pub use named::{UsedNumbers, truncated};
pub use options::{ItemOption, options};
pub use resume::{Kept, resume};
pub use stance::tenths_of;
pub use start::{DEFAULT_DAYS, first, next};
pub use step::apply;
pub use times::{times_of, times_text};
pub use typed::{MAX_TYPED, TypedField, Unread};

/// Longest duration of an exercise that is done hourly, in seconds (our proposal; no trial gives one).
pub const HOURLY_AT_MOST_S: u32 = 120;

/// A prescription that is being edited.
#[derive(Debug, Clone, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Draft {
    /// The prescription so far.
    pub prescription: Prescription,
    /// The day of the visit, on which it is to be issued.
    pub today: NaiveDate,
    /// Numbers used so far.
    pub used: UsedNumbers,
}

impl Draft {
    /// Adds `exercise` at its easiest level with its own dose, as the last item; `None` if the plan is full. It is for the only
    /// complaint if there is one, unless pain is not asked about after it (breathing, care, prompts) or it is a test.
    pub fn add(&mut self, exercise: &Exercise) -> Option<ItemId> {
        if self.prescription.items.len() >= MAX_ITEMS {
            return None;
        }
        let id = ItemId(self.used.item()?);
        let only = match self.prescription.complaints.as_slice() {
            [only] if exercise.kind.rules().asks_pain() && !exercise.test => Some(only.id),
            _ => None,
        };
        let rung = exercise.first_rung().map(|rung| rung.id.clone());
        let level = exercise.level(rung.as_ref());
        self.prescription.items.push(Item {
            content: exercise.revision,
            side: usual_side(level),
            serves: only,
            rung: rung.clone(),
            ..Item::new(id, exercise.id.clone(), level.dose(), default_schedule(exercise, self.today))
        });
        Some(id)
    }

    /// Removes an item.
    pub fn remove(&mut self, id: ItemId) {
        self.prescription.items.retain(|item| item.id != id);
    }

    /// Swaps an item with the one before or after it.
    pub fn shift(&mut self, id: ItemId, direction: Direction) {
        let Some(place) = self.prescription.items.iter().position(|item| item.id == id) else { return };
        let other = match direction {
            Direction::Earlier => place.checked_sub(1),
            Direction::Later => Some(place + 1),
        };
        if let Some(other) = other.filter(|other| *other < self.prescription.items.len()) {
            self.prescription.items.swap(place, other);
        }
    }

    /// Changes one item; its note is truncated to [`MAX_NOTE`] characters.
    pub fn edit(&mut self, id: ItemId, change: impl FnOnce(&mut Item)) {
        if let Some(item) = self.prescription.items.iter_mut().find(|item| item.id == id) {
            change(item);
            item.note = truncated(&item.note, MAX_NOTE);
        }
    }

    /// Whether any item trains balance; the plan then needs further answers.
    pub fn balances<'a>(&self, exercises: impl IntoIterator<Item = &'a Exercise>) -> bool {
        self.any_of(exercises, Kind::is_balance)
    }

    /// Whether any item needs stance times of each leg.
    pub fn needs_stance_times<'a>(&self, exercises: impl IntoIterator<Item = &'a Exercise>) -> bool {
        self.any_of(exercises, Kind::is_by_leg)
    }

    fn any_of<'a>(&self, exercises: impl IntoIterator<Item = &'a Exercise>, is: impl Fn(Kind) -> bool) -> bool {
        let those: Vec<&Exercise> = exercises.into_iter().filter(|exercise| is(exercise.kind)).collect();
        self.prescription.items.iter().any(|item| those.iter().any(|exercise| exercise.id == item.exercise))
    }
}

/// The direction in which an item moves.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Direction {
    /// One place towards the top.
    Earlier,
    /// One place towards the end.
    Later,
}

/// Puts `item` on another level of its exercise, with the side and the dose that are usual there. A side that fits, and a dose
/// that was changed from what is usual on the level before, stay.
pub fn put_on_level(item: &mut Item, exercise: &Exercise, rung: RungId) {
    let (before, after) = (exercise.level(item.rung.as_ref()), exercise.level(Some(&rung)));
    if item.dose == before.dose() {
        item.dose = after.dose();
    }
    if !item.side.fits(after.side()) {
        item.side = usual_side(after);
    }
    item.rung = Some(rung);
}

fn usual_side(level: Level<'_>) -> Side {
    match level.side() {
        Sidedness::EachSide => Side::Both,
        Sidedness::Alternating => Side::Alternating,
        Sidedness::None => Side::Neither,
    }
}

/// The default schedule of an exercise, as its kind states: spread over the day (hourly on working days if the exercise is short,
/// otherwise three times a day), once in the evening, or every two weeks from `today` on.
pub fn default_schedule(exercise: &Exercise, today: NaiveDate) -> Schedule {
    let first = exercise.level(exercise.first_rung().map(|rung| &rung.id));
    let evening = Pattern::At { times: vec![18 * 60] };
    match exercise.kind.rules().usual_times() {
        UsualTimes::ThroughTheDay if first.dose().total_s(first.side()) <= HOURLY_AT_MOST_S => hourly(),
        UsualTimes::ThroughTheDay => {
            Schedule { days: Days::ALL, pattern: Pattern::At { times: vec![8 * 60, 13 * 60, 18 * 60] } }
        }
        UsualTimes::Evening => Schedule { days: Days::ALL, pattern: evening },
        UsualTimes::EveryTwoWeeks => Schedule { days: Days::EveryNth { n: 14, from: today }, pattern: evening },
    }
}

/// Hourly on working days.
pub fn hourly() -> Schedule {
    Schedule { days: Days::WORKDAYS, pattern: Pattern::Every { minutes: 60, from: 9 * 60, to: 17 * 60 } }
}

#[cfg(test)]
mod samples;
#[cfg(test)]
mod tests;
