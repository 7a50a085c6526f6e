//! The three main pages, and the pages that can cover them.

use exercises::alarm::{Circumstance, Trouble};
use exercises::id::{ItemId, PlanId};
use exercises::questions::Question;
use exercises::score::Score;
use exercises::slots::SlotRef;
use std::collections::BTreeSet;
use wire::patient::RunScript;

use super::given::Given;

use crate::pages::InfoPage;

/// What was raised: an alarm that was recorded or, before there is a plan, only said.
#[derive(Clone, PartialEq)]
pub struct Raised {
    /// The plan; `None` before a card was taken.
    pub plan: Option<PlanId>,
    /// What is wrong.
    pub trouble: Trouble,
    /// The item during which it happened.
    pub item: Option<ItemId>,
    /// What was answered about it.
    pub circumstances: BTreeSet<Circumstance>,
    /// Of a rating above the limit: the rating with its question, and the limit.
    pub above: Option<(Given, Score)>,
}

impl Raised {
    /// Without an item, answers or a rating.
    pub fn new(plan: Option<PlanId>, trouble: Trouble) -> Raised {
        Raised { plan, trouble, item: None, circumstances: BTreeSet::new(), above: None }
    }
}

/// A main page of the patient's side.
#[derive(Clone, Copy, PartialEq, Eq)]
pub enum Place {
    /// What to do now, and what comes next.
    Now,
    /// The plan until the next visit.
    Plan,
    /// What was done, and the summary for the visit.
    Record,
}

/// A page that covers the main page until it is done or closed.
#[derive(Clone, PartialEq)]
pub enum Page {
    /// Skipping a slot.
    SkipSlot(PlanId, SlotRef),
    /// Taking days off.
    DaysOff(PlanId),
    /// Moving the times of an exercise.
    Refit(PlanId, ItemId),
    /// Choosing an exercise outside its slots.
    Choose,
    /// How to do an exercise, in full.
    HowTo(PlanId, ItemId),
    /// What to know before an exercise is done for the first time.
    Cautions(Box<RunScript>),
    /// An exercise in progress.
    Run(Box<RunScript>),
    /// The questions after it, one at a time.
    After(Vec<Question>),
    /// What is wrong.
    Trouble(Option<(PlanId, ItemId)>),
    /// What to do about it.
    Advice(Box<Raised>),
    /// Taking a card.
    Card,
    /// The reminders and their settings.
    Reminders,
    /// The person's own data: exporting and erasing.
    OwnData,
    /// A page that explains the program, opened from the page about the person's own data.
    Info(InfoPage),
    /// The first week beside this week.
    ThenAndNow(PlanId),
    /// The summary for the visit.
    Visit(PlanId),
    /// Correcting mistaken entries.
    Correct(PlanId),
}
