//! The three places, and what can lie over them.

use exercises::alarm::Trouble;
use exercises::id::{ItemId, PlanId};
use exercises::questions::Question;
use exercises::slots::SlotRef;
use wire::patient::RunScript;

use crate::pages::InfoPage;

/// Where in the window the person is.
#[derive(Clone, Copy, PartialEq, Eq)]
pub enum Place {
    /// What to do now, and next.
    Now,
    /// What was agreed until the next visit.
    Plan,
    /// What was done, and what goes to the visit.
    Record,
}

/// A page that lies over the three places until it is done or closed.
#[derive(Clone, PartialEq)]
pub enum Page {
    /// Why a slot is left out.
    SkipSlot(PlanId, SlotRef),
    /// Whole days on which nothing is asked for.
    DaysOff(PlanId),
    /// Which exercise to do now, besides the slots.
    Choose,
    /// How an exercise is done, in full.
    HowTo(PlanId, ItemId),
    /// What to know before an exercise is done for the first time.
    Cautions(Box<RunScript>),
    /// An exercise as it is done.
    Run(Box<RunScript>),
    /// Questions after it, one at a time.
    After(Vec<Question>),
    /// What is wrong.
    Trouble(Option<(PlanId, ItemId)>),
    /// What to do about it.
    Advice(Trouble),
    /// Taking a card.
    Card,
    /// When reminders come, and when none does.
    Reminders,
    /// What is the person's own: to save, and to erase.
    OwnData,
    /// A page that explains the program, opened from the person's own data.
    Info(InfoPage),
    /// What goes to the visit.
    Visit(PlanId),
    /// Mistaken entries, to be put right.
    Correct(PlanId),
}
