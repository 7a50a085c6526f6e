//! Composing a plan: what each click of the clinician changes, and what stands there before any click.
//!
//! A [`Draft`] starts from [`first`] or from [`next`]. Numbers of items, complaints and activities are never given twice in
//! one plan's life, so that a history keeps meaning what it meant. Defaults are a start, not advice: a clinician decides.

mod dose;
mod named;
mod stance;
mod start;
mod step;
mod times;

use crate::catalogue::{Exercise, Kind, Sidedness};
use crate::id::ItemId;
use crate::plan::{Days, Item, MAX_ITEMS, MAX_NOTE, Pattern, Plan, Schedule, Side};

pub use dose::{stepped, with};
pub use named::{UsedNumbers, truncated};
pub use stance::{StanceField, tenths_of};
pub use start::{DEFAULT_DAYS, first, next};
pub use step::{Choices, apply};
pub use times::{minute_of, times_of};

/// Pain that a new item allows, 0 to 10: up to 5 during and after is allowed, if it settles by next morning (Silbernagel
/// 2007, Am J Sports Med 35:897-906, tested in Achilles tendinopathy only; acute, post-operative or nerve pain needs less).
pub const DEFAULT_PAIN_LIMIT: u8 = 5;
/// The longest doing that still fits an hourly rhythm, in seconds (our proposal; no trial gives one).
pub const HOURLY_AT_MOST_S: u32 = 120;

/// A plan on its way to the patient.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Draft {
    /// The plan as it would be issued now.
    pub plan: Plan,
    /// Numbers given so far.
    pub used: UsedNumbers,
    /// So many of the plan's stance times, from the first, are of earlier visits.
    pub earlier: usize,
}

impl Draft {
    /// Adds `exercise` on its easiest rung with its own dose, as the last item; `None` where the plan is full.
    pub fn add(&mut self, exercise: &Exercise) -> Option<ItemId> {
        if self.plan.items.len() >= MAX_ITEMS {
            return None;
        }
        let id = ItemId(self.used.item()?);
        let only = match self.plan.complaints.as_slice() {
            [only] => Some(only.id),
            _ => None,
        };
        self.plan.items.push(Item {
            id,
            exercise: exercise.id.clone(),
            content: exercise.revision,
            rung: exercise.first_rung().map(|rung| rung.id.clone()),
            side: if exercise.side == Sidedness::EachSide { Side::Both } else { Side::Neither },
            dose: exercise.dose,
            schedule: default_schedule(exercise),
            pain_limit: DEFAULT_PAIN_LIMIT,
            may_step: false,
            serves: only,
            note: String::new(),
        });
        Some(id)
    }

    /// Takes an item out.
    pub fn remove(&mut self, id: ItemId) {
        self.plan.items.retain(|item| item.id != id);
    }

    /// Changes places with the item before it, or after it.
    pub fn shift(&mut self, id: ItemId, direction: Direction) {
        let Some(place) = self.plan.items.iter().position(|item| item.id == id) else { return };
        let other = match direction {
            Direction::Earlier => place.checked_sub(1),
            Direction::Later => Some(place + 1),
        };
        if let Some(other) = other.filter(|other| *other < self.plan.items.len()) {
            self.plan.items.swap(place, other);
        }
    }

    /// Changes one item; its note is cut at [`MAX_NOTE`] characters.
    pub fn edit(&mut self, id: ItemId, change: impl FnOnce(&mut Item)) {
        if let Some(item) = self.plan.items.iter_mut().find(|item| item.id == id) {
            change(item);
            item.note = truncated(&item.note, MAX_NOTE);
        }
    }

    /// Whether any item is practised standing on one leg: then the plan asks for more.
    pub fn balances<'a>(&self, exercises: impl IntoIterator<Item = &'a Exercise>) -> bool {
        let balance: Vec<&Exercise> = exercises.into_iter().filter(|exercise| exercise.kind == Kind::Balance).collect();
        self.plan.items.iter().any(|item| balance.iter().any(|exercise| exercise.id == item.exercise))
    }
}

/// Where an item goes.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Direction {
    /// One place nearer to the top.
    Earlier,
    /// One place nearer to the end.
    Later,
}

/// When an exercise is due before a clinician says otherwise: short holds by the hour of a working day, longer ones three
/// times a day, balance and repetitions once in the evening, when the person is at home.
pub fn default_schedule(exercise: &Exercise) -> Schedule {
    match exercise.kind {
        Kind::Hold if exercise.dose.total_s(exercise.side) <= HOURLY_AT_MOST_S => hourly(),
        Kind::Hold => Schedule { days: Days::ALL, pattern: Pattern::At { times: vec![8 * 60, 13 * 60, 18 * 60] } },
        Kind::Balance | Kind::Reps => Schedule { days: Days::ALL, pattern: Pattern::At { times: vec![18 * 60] } },
    }
}

/// By the hour of a working day.
pub fn hourly() -> Schedule {
    Schedule { days: Days::WORKDAYS, pattern: Pattern::Every { minutes: 60, from: 9 * 60, to: 17 * 60 } }
}

#[cfg(test)]
mod samples;
#[cfg(test)]
mod tests;
