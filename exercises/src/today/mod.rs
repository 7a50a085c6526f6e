//! The Now page as plain data: one thing to do, when the next session is due, and the day's string.

mod boundary;
mod compose;
mod progress;

use crate::alarm::{Circumstance, Trouble};
use crate::catalogue::Exercise;
use crate::history::{History, Mark, WeekSoFar};
use crate::id::{ItemId, PlanId};
use crate::plan::{Aftercare, Item, Plan};
use crate::questions::Question;
use crate::slots::{self, Slot, SlotRef, own_day};
use crate::suggest::Suggestion;
use crate::suspension::{self, NEAR_FALLS_DAYS, Suspends};
use crate::time::{Offsets, Stamp};
use chrono::NaiveDate;
use std::collections::BTreeSet;

pub use compose::compose;
#[cfg(test)]
pub(crate) use compose::composed;

/// A plan that is followed on this device, with the agreed schedules, when it was taken, and its history.
#[derive(Debug, Clone, PartialEq)]
pub struct Followed {
    /// The newest revision, with the agreed schedules.
    pub plan: Plan,
    /// When that revision was taken.
    pub taken: Stamp,
    /// The plan with the schedules that the person agreed to for a later day, and the first day on which they apply.
    pub ahead: Option<(NaiveDate, Plan)>,
    /// The history from this device's log.
    pub history: History,
}

impl Followed {
    /// Whether a near fall at the easiest level asks for a hand on the support until the next card.
    pub fn hand_on_support(&self, item: &Item, exercise: &Exercise) -> bool {
        let easiest = item.rung.as_ref().is_none_or(|rung| exercise.easier(rung).is_none());
        easiest && self.history.eased(&self.plan, item.id) > 0
    }

    /// All slots whose windows open on `day`, by due time, as [`slots::of_day`] has them: with the schedules that apply on that day.
    pub fn slots_on(&self, day: NaiveDate, zone: &Offsets) -> Vec<Slot> {
        let later = self.ahead.as_ref().filter(|(from, _)| day >= *from).map(|(_, plan)| plan);
        slots::of_day(later.unwrap_or(&self.plan), day, zone, self.taken)
    }
}

/// The Now page.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Today {
    /// The moment that it shows.
    pub now: Stamp,
    /// The top of the page.
    pub head: Head,
    /// The item that the head is about, with its exercise.
    pub item: Option<TodayItem>,
    /// The day's slots of all plans, by due time.
    pub string: Vec<TodayKnot>,
    /// Every item, for an extra run or to see why it is paused.
    pub items: Vec<TodayItem>,
    /// The open questions; a window shows one at a time.
    pub questions: Vec<Question>,
    /// The clinician's instructions, within two days after the visit.
    pub aftercare: Vec<Aftercare>,
    /// The alarms that no card has cleared, oldest first.
    pub alarms: Vec<TodayAlarm>,
    /// The clinics, by plan.
    pub clinics: Vec<TodayClinic>,
    /// While nothing was done since a card was taken, and nothing is due: the item to try.
    pub try_first: Option<TryFirst>,
    /// The items of which the person chooses the days, with what was done this week; without those that an alarm pauses.
    pub weeks: Vec<TodayWeek>,
}

impl Today {
    /// What an alarm would suspend if it was raised now, so that a page can say so before.
    pub fn would_suspend(&self, plan: PlanId, trouble: Trouble, item: Option<ItemId>) -> Option<Suspends> {
        let again = self.alarms.iter().any(|alarm| {
            (alarm.plan, alarm.trouble) == (plan, Trouble::NearlyFell)
                && own_day(self.now) - own_day(alarm.at) < NEAR_FALLS_DAYS
        });
        suspension::when_raised(trouble, item, again)
    }

    /// The plans that a passing illness suspends until the person is well again.
    pub fn ill(&self) -> Vec<PlanId> {
        let mut plans: Vec<PlanId> =
            self.alarms.iter().filter(|alarm| alarm.ends == PauseEnd::WhenWell).map(|alarm| alarm.plan).collect();
        plans.dedup();
        plans
    }
}

/// An item of which the person chooses the days.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct TodayWeek {
    /// The plan.
    pub plan: PlanId,
    /// The item.
    pub item: ItemId,
    /// What was done of it this week.
    pub so_far: WeekSoFar,
    /// Whether it is offered here: a session today would count, and the top of the page is not about it already.
    pub offered: bool,
}

/// The first exercise of a new card, to try it.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct TryFirst {
    /// The plan.
    pub plan: PlanId,
    /// The item.
    pub item: ItemId,
    /// Whether it would be an extra run; otherwise it counts for the slot that comes next.
    pub extra: bool,
}

/// An alarm that no card has cleared.
#[derive(Debug, Clone, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct TodayAlarm {
    /// The plan.
    pub plan: PlanId,
    /// What was wrong.
    pub trouble: Trouble,
    /// The item during which it happened, or that is meant.
    pub item: Option<ItemId>,
    /// When it was raised; while the device's clock was wrong, when that may have been.
    pub at: Stamp,
    /// Whether the device's clock was wrong then.
    pub wrong_clock: bool,
    /// What was answered about it.
    pub circumstances: BTreeSet<Circumstance>,
    /// What it suspends now; `None` if nothing.
    pub suspends: Option<Suspends>,
    /// What ends that.
    pub ends: PauseEnd,
}

/// What ends what an alarm suspends.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum PauseEnd {
    /// A card that clears the alarm.
    Card,
    /// The end of the person's day.
    Today,
    /// The person, who says to be well again.
    WhenWell,
}

/// The clinic that issued a plan.
#[derive(Debug, Clone, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct TodayClinic {
    /// The plan.
    pub plan: PlanId,
    /// Its name.
    pub name: String,
    /// Its telephone number, if the card has one.
    pub phone: Option<String>,
    /// The day of the next visit.
    pub visit: NaiveDate,
}

/// The top of the Now page.
#[derive(Debug, Clone, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Head {
    /// No card was taken yet.
    NoPlan,
    /// This slot is open, or opens within ten minutes.
    Due {
        /// The slot.
        slot: SlotRef,
        /// When it is due.
        due: Stamp,
        /// When it closes.
        closes: Stamp,
        /// Until when its reminder was put off, if it was.
        put_off: Option<Stamp>,
    },
    /// Nothing is open; this comes next today.
    Next {
        /// The slot.
        slot: SlotRef,
        /// When it is due.
        due: Stamp,
    },
    /// Nothing more to do today.
    DoneForToday {
        /// Slots of today with anything done.
        done: u16,
        /// Slots of today.
        of: u16,
        /// When the next one is due on another day.
        next: Option<Stamp>,
    },
    /// There are no slots today.
    DayOff {
        /// Whether the person took the day off.
        chosen: bool,
        /// When the next one is due.
        next: Option<Stamp>,
    },
    /// The review date has passed.
    Over {
        /// The review date.
        review: NaiveDate,
    },
    /// An alarm pauses everything.
    Stopped(Trouble),
}

/// An item with its exercise.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct TodayItem {
    /// The plan.
    pub plan: PlanId,
    /// The clinic that issued it; `None` if all plans are from one clinic.
    pub clinic: Option<String>,
    /// The item, with the agreed schedule.
    pub item: Item,
    /// The exercise.
    pub exercise: Exercise,
    /// Whether a near fall at the easiest level asks for a hand on the support until the next card.
    pub hand_on_support: bool,
    /// The complaint that pauses it, if any.
    pub paused: Option<Trouble>,
    /// Whether today is a day of its phase.
    pub in_phase: bool,
    /// Whether its phase begins today, and nothing was done of it yet.
    pub is_new: bool,
    /// Approximate duration of a run, in seconds.
    pub takes_s: u32,
    /// A change that the clinician allowed the person to make, if the rules propose one. Its days count from `start`.
    pub step: Option<Suggestion>,
    /// The first day of the plan.
    pub start: NaiveDate,
}

impl TodayItem {
    /// Whether it can be begun now.
    pub fn can_be_done(&self) -> bool {
        self.in_phase && self.paused.is_none()
    }
}

/// One slot of the day's string.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct TodayKnot {
    /// The plan.
    pub plan: PlanId,
    /// The slot.
    pub slot: SlotRef,
    /// Minute of the wall clock, counted from midnight of its day.
    pub minute: u16,
    /// What happened to it, or its present state.
    pub mark: Mark,
    /// Whether an alarm pauses it.
    pub paused: bool,
    /// When its reminder comes again, if it was put off and the slot is still to be done.
    pub put_off: Option<Stamp>,
}

impl Today {
    /// Adds the changes that may be offered. A paused item gets none.
    pub fn with_steps(mut self, plan: PlanId, offered: &[Suggestion]) -> Today {
        for item in self.items.iter_mut().chain(&mut self.item) {
            let own = item.plan == plan && item.paused.is_none();
            let of_it = offered.iter().find(|one| one.offered(&item.item).is_some());
            item.step = of_it.filter(|_| own).cloned().or(item.step.take());
        }
        self
    }
}

#[cfg(test)]
mod tests;
