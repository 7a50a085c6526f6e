//! The facts on which a suggestion is based, gathered from the summaries of all devices.
//!
//! Only what was done and answered since the card in force was taken counts. The day on which a later card was taken is left
//! out, because a summary does not say what happened before the card was taken and what after. Alarms count whenever they
//! were raised, until a card clears them.

use super::gate_open;
use super::in_use::{in_use, same};
use super::rising::{Rise, rise};
use super::sessions::{Session, SessionAnswers, sessions};
use crate::adherence::SlotOn;
use crate::alarm::{self, Trouble};
use crate::catalogue::{Catalogue, Exercise, Eyes, Surface};
use crate::change::seconds;
use crate::id::{EntryRef, ItemId, LogId};
use crate::plan::{AgeBand, BodySide, Item, Plan};
use crate::summary::union::United;
use crate::summary::{PainOn, RunOn, SettledOn};
use crate::time::DayNumber;
use chrono::NaiveDate;
use std::collections::BTreeMap;

/// Everything that the rules look at for one item.
#[derive(Debug, Clone, PartialEq)]
pub struct Facts<'a> {
    /// The item as the card prescribes it.
    pub planned: &'a Item,
    /// The item with the rung and dose in use.
    pub item: Item,
    /// The item's exercise; `None` if the catalogue does not have it.
    pub exercise: Option<&'a Exercise>,
    /// The patient's age band.
    pub age: Option<AgeBand>,
    /// The last day that a summary covers.
    pub today: DayNumber,
    /// An uncleared alarm that pauses the item.
    pub alarm: Option<(EntryRef, Trouble)>,
    /// Any uncleared alarm, whatever it pauses.
    pub any_alarm: Option<(EntryRef, Trouble)>,
    /// Whether the plan has a complaint. Only then is pain asked about.
    pub asks_pain: bool,
    /// The sessions at the rung and dose in use, oldest first, at most one for each day.
    pub sessions: Vec<Session>,
    /// The first day at the rung and dose in use; `None` if there was no other before.
    pub last_step: Option<DayNumber>,
    /// The rise of pain, if pain of the complaint that the item is for rose for two weeks.
    pub rise: Option<Rise>,
    /// Whether the stance times needed for softer surfaces and closed eyes have been reached.
    pub gate_open: bool,
}

/// What each device recorded since it took the card in force.
pub(super) struct Since<'a> {
    united: &'a United<'a>,
    /// The first day that counts, for each device that took the card.
    first: BTreeMap<LogId, DayNumber>,
}

impl<'a> Since<'a> {
    pub(super) fn taking(plan: &Plan, united: &'a United<'a>) -> Since<'a> {
        let first = united.logs.iter().filter_map(|(log, of_log)| {
            let place = of_log.taken.iter().position(|taken| taken.revision == plan.header.revision)?;
            Some((*log, of_log.taken[place].day.plus(u16::from(place > 0))))
        });
        Since { united, first: first.collect() }
    }

    fn counts(&self, log: LogId, day: DayNumber) -> bool {
        self.first.get(&log).is_some_and(|first| day >= *first)
    }

    fn pain(&self) -> Vec<PainOn> {
        let since = self.united.pain.iter().filter(|(entry, rating)| self.counts(entry.log, rating.day));
        since.map(|(_, rating)| *rating).collect()
    }

    fn settled(&self) -> Vec<SettledOn> {
        let since = self.united.settled.iter().filter(|(entry, answer)| self.counts(entry.log, answer.day));
        since.map(|(_, answer)| *answer).collect()
    }

    /// The item's runs on all devices by day; those of one day in the order of each log.
    fn runs(&self, item: ItemId) -> Vec<&'a RunOn> {
        let of_item = self.united.runs.iter().filter(|((log, _), run)| run.item == item && self.counts(*log, run.day));
        in_order(of_item.map(|(_, run)| *run))
    }
}

fn in_order<'a>(runs: impl Iterator<Item = &'a RunOn>) -> Vec<&'a RunOn> {
    let mut runs: Vec<&RunOn> = runs.collect();
    runs.sort_by_key(|run| run.day);
    runs
}

pub(super) fn gather<'a>(
    plan: &Plan,
    catalogue: &'a Catalogue,
    since: &Since<'_>,
    slots: &[SlotOn],
    planned: &'a Item,
) -> Facts<'a> {
    let runs = since.runs(planned.id);
    let item = in_use(planned, catalogue.get(&planned.exercise), runs.last().copied());
    let at_it: Vec<&RunOn> = runs.iter().copied().filter(|run| same(&item, run)).collect();
    let of_item = slots.iter().filter(|slot| slot.item == planned.id);
    let (pain, settled) = (since.pain(), since.settled());
    let today = since.united.covered.last().copied().unwrap_or_default();
    let uncleared = || since.united.alarms.iter().filter(|(entry, _)| !plan.prescription.cleared.contains(entry));
    let reaches = |trouble, during| alarm::reaches(trouble, during, planned, plan, catalogue);
    let last_step = last_step(since.united, &item);
    Facts {
        planned,
        exercise: catalogue.get(&item.exercise),
        age: plan.prescription.age,
        today,
        alarm: uncleared().find(|(_, alarm)| reaches(alarm.trouble, alarm.item)).map(|(entry, a)| (*entry, a.trouble)),
        any_alarm: uncleared().map(|(entry, alarm)| (*entry, alarm.trouble)).next(),
        asks_pain: !plan.prescription.complaints.is_empty(),
        sessions: sessions(&item, &at_it, of_item, SessionAnswers { pain: &pain, settled: &settled }),
        last_step,
        rise: item.serves.and_then(|served| {
            let from = last_step.unwrap_or_default();
            let of_it = pain.iter().filter(|rating| rating.complaint == served && rating.day >= from);
            rise(&crate::summary::pain_points(of_it), today)
        }),
        gate_open: gate_open(item.side, &firm_open(since.united, plan, &item), &plan.dated_baselines()),
        item,
    }
}

/// The first day of the latest unbroken series of runs at the item's rung and dose; `None` if no other run came before it.
fn last_step(united: &United<'_>, item: &Item) -> Option<DayNumber> {
    let runs = in_order(united.runs.values().copied().filter(|run| run.item == item.id));
    let other = runs.iter().rposition(|run| !same(item, run))?;
    runs.get(other + 1).map(|run| run.day)
}

/// Trials of the same exercise with eyes open on the firm floor: day, leg, tenths of a second.
fn firm_open(united: &United<'_>, plan: &Plan, item: &Item) -> Vec<(NaiveDate, BodySide, u32)> {
    let date = |day: DayNumber| day.date(plan.header.start);
    let same_exercise = |id: ItemId| plan.item(id).is_some_and(|other| other.exercise == item.exercise);
    let runs = united.runs.values().filter(|run| same_exercise(run.item));
    let found = runs.filter_map(|run| Some((run.day, run.stance.as_ref()?))).flat_map(|(day, stance)| {
        let counts = stance.surface == Surface::Firm && stance.eyes == Eyes::Open;
        let real = stance.trials.iter().filter(move |_| counts);
        real.filter_map(move |trial| Some((date(day), trial.leg, (seconds(trial, stance.target_s)? * 10.0) as u32)))
    });
    found.collect()
}
