//! What is known about one item, in the days that are looked at.

use super::changed::last_change;
use super::gate::gate_open;
use super::in_use::{in_use, same};
use super::sessions::{Session, sessions};
use crate::adherence::{LATELY_DAYS, SlotOn};
use crate::alarm::Trouble;
use crate::catalogue::{Catalogue, Exercise, ExerciseId, Eyes, RungId, Surface};
use crate::change::{DuringSeries, Flare, PainSeries, flares, seconds};
use crate::id::{AlarmId, ItemId};
use crate::plan::{AgeBand, BodySide, Item, PhaseState, Plan};
use crate::score::Score;
use crate::statistics::PainVerdict;
use crate::summary::RunOn;
use crate::summary::union::United;
use crate::suspension::{self, NEAR_FALLS_DAYS, Suspends};
use crate::time::DayNumber;
use chrono::NaiveDate;
use std::collections::BTreeMap;

/// What the review knows of a whole plan.
#[derive(Debug, Clone, Copy)]
pub struct PlanFacts<'a> {
    /// The newest revision.
    pub plan: &'a Plan,
    /// All revisions, by number.
    pub revisions: &'a BTreeMap<u16, Plan>,
    /// The exercises.
    pub catalogue: &'a Catalogue,
    /// What all devices recorded.
    pub united: &'a United<'a>,
    /// The slots of all devices combined.
    pub slots: &'a [SlotOn],
    /// What alarms suspend that no card has cleared.
    pub in_force: &'a [(AlarmId, Suspends)],
    /// The pain of each complaint.
    pub pain: &'a [PainSeries],
    /// The pain while doing each item.
    pub during: &'a [DuringSeries],
    /// The exercises and levels of which a series of stance times falls.
    pub falling: &'a [(ExerciseId, Option<RungId>)],
}

/// What the rules look at. "Lately" are the last fourteen days, but nothing before the item, its level or its dose last changed.
#[derive(Debug, Clone)]
pub struct ItemFacts<'a> {
    /// The item as the card has it.
    pub planned: &'a Item,
    /// The item with the level and dose in use.
    pub item: Item,
    /// Its exercise; `None` if the catalogue does not have it.
    pub exercise: Option<&'a Exercise>,
    /// The patient's age band.
    pub age: Option<AgeBand>,
    /// Whether the stance times needed for softer surfaces have been reached.
    pub gate_open: bool,
    /// The last day that summaries cover.
    pub until: DayNumber,
    /// Whether its phase has begun or is over on that day.
    pub phase: PhaseState,
    /// The day since which it is done as it is now.
    pub changed: DayNumber,
    /// The alarm that suspends it.
    pub alarm: Option<(AlarmId, Trouble)>,
    /// The last near fall in it, or alarm that suspended it as it was raised, cleared or not, with its day.
    pub last_alarm: Option<(Trouble, DayNumber)>,
    /// The day of the last near fall in it, in the last fourteen days, that no card has cleared.
    pub near_fall: Option<DayNumber>,
    /// The owed slots lately.
    pub slots: Vec<SlotOn>,
    /// The sessions lately, oldest first.
    pub sessions: Vec<Session>,
    /// Ratings while doing it lately, one a day, oldest first.
    pub during: Vec<(DayNumber, Score)>,
    /// Lately unsettled mornings that are counted against it.
    pub unsettled: Vec<DayNumber>,
    /// Lately unsettled mornings of which it is not known what they are to be counted against.
    pub unsettled_unknown: Vec<DayNumber>,
    /// Whether the pain of its complaint has become worse.
    pub pain_worse: bool,
    /// Flares of its complaint's mornings and of the ratings while doing it.
    pub flares: Vec<Flare>,
    /// Whether a series of its stance times falls.
    pub falling: bool,
    /// Whether pain is asked about after it.
    pub asks_pain: bool,
}

pub(super) fn gather<'a>(known: &PlanFacts<'a>, planned: &'a Item) -> ItemFacts<'a> {
    let runs = in_order(known.united.runs.values().copied().filter(|run| run.item == planned.id));
    // After a near fall the device has eased the item, whether or not the person may step.
    let near_fall = near_fall(known, planned.id);
    let until = known.united.covered.last().copied().unwrap_or_default();
    let start = known.plan.header.start;
    let asked = planned.on(until.date(start), known.plan.header.issued);
    let stepping = Item { may_step: planned.may_step || near_fall.is_some(), ..asked.into_owned() };
    let used = in_use(&stepping, known.catalogue.get(&planned.exercise), runs.last().copied());
    let item = Item { may_step: planned.may_step, ..used };
    let begins = planned.phase.first.map_or(DayNumber::default(), |first| DayNumber::nearest(first, start));
    let changed = last_change(known.united, known.revisions, planned, &item).max(begins);
    let since = until.minus(LATELY_DAYS - 1).unwrap_or_default().max(changed);
    let lately = |day: &DayNumber| (since..=until).contains(day);
    let pain = known.pain.iter().find(|series| Some(series.complaint) == planned.serves);
    let during = known.during.iter().find(|series| series.item == planned.id);
    let rated: Vec<(DayNumber, Score)> = during.map(|series| series.points.clone()).unwrap_or_default();
    let (unsettled, unsettled_unknown) = against(known, planned, pain, &lately);
    ItemFacts {
        planned,
        exercise: known.catalogue.get(&item.exercise),
        age: known.plan.prescription.age,
        gate_open: gate_open(item.side, &firm_open(known, &item), &known.plan.dated_baselines()),
        until,
        phase: planned.phase.on(until.date(start)),
        changed,
        alarm: suspending(known, planned),
        last_alarm: last_alarm(known, planned),
        // Also from before the last change: with the near fall the device itself has made it easier.
        near_fall: near_fall.filter(|day| until.days_since(*day) < LATELY_DAYS),
        slots: known
            .slots
            .iter()
            .filter(|slot| slot.item == planned.id && slot.is_owed() && lately(&slot.day))
            .copied()
            .collect(),
        sessions: sessions(runs.iter().copied().filter(|run| same(&item, run) && lately(&run.day))),
        flares: flares(&[pain.map(|series| series.points.as_slice()).unwrap_or_default(), &rated]),
        during: rated.into_iter().filter(|(day, _)| lately(day)).collect(),
        unsettled,
        unsettled_unknown,
        pain_worse: pain.is_some_and(|series| series.change.verdict == PainVerdict::Worse),
        falling: known.falling.iter().any(|(exercise, rung)| (exercise, rung) == (&item.exercise, &item.rung)),
        asks_pain: item.dose.kind().rules().asks_pain(),
        item,
    }
}

fn in_order<'a>(runs: impl Iterator<Item = &'a RunOn>) -> Vec<&'a RunOn> {
    let mut runs: Vec<&RunOn> = runs.collect();
    // Runs of two devices on one day are in the order of their hours.
    runs.sort_by_key(|run| (run.day, run.hour, run.run));
    runs
}

/// The gravest alarm that suspends the item.
fn suspending(known: &PlanFacts<'_>, planned: &Item) -> Option<(AlarmId, Trouble)> {
    let reaching = known.in_force.iter().filter(|(_, suspends)| suspends.reaches(planned, known.plan, known.catalogue));
    let named = reaching.filter_map(|(id, _)| Some((*id, known.united.alarms.get(id)?.1.trouble)));
    named.min_by_key(|(_, trouble)| trouble.rank())
}

/// The last near fall in the item, or alarm that suspended it as it was raised, whether or not a card has cleared it.
fn last_alarm(known: &PlanFacts<'_>, planned: &Item) -> Option<(Trouble, DayNumber)> {
    let all = || known.united.alarms.iter().map(|(id, (_, alarm))| (id, alarm));
    let mut near_falls: BTreeMap<DayNumber, usize> = BTreeMap::new();
    for (_, alarm) in all().filter(|(_, alarm)| alarm.trouble == Trouble::NearlyFell) {
        *near_falls.entry(alarm.day).or_default() += 1;
    }
    // Of the near falls until that day, one is the alarm itself.
    let again = |day: DayNumber| {
        let lately = near_falls.range(..=day).rev();
        lately
            .take_while(|(other, _)| i64::from(day.days_since(**other)) < NEAR_FALLS_DAYS)
            .map(|(_, falls)| falls)
            .sum::<usize>()
            > 1
    };
    let reaching = all().filter(|(_, alarm)| {
        let again = alarm.trouble == Trouble::NearlyFell && again(alarm.day);
        let suspends = suspension::when_raised(alarm.trouble, alarm.item, again);
        // A first near fall suspends nothing, and is no reason for more either. A rating above the limit speaks for itself.
        (alarm.trouble, alarm.item) == (Trouble::NearlyFell, Some(planned.id))
            || suspends.is_some_and(|suspends| suspends.reaches(planned, known.plan, known.catalogue))
    });
    reaching.map(|(_, alarm)| (alarm.trouble, alarm.day)).max_by_key(|(_, day)| *day)
}

/// The day of the last near fall in the item that the newest card does not clear.
fn near_fall(known: &PlanFacts<'_>, item: ItemId) -> Option<DayNumber> {
    let cleared = |id: &AlarmId, day: DayNumber| {
        known.plan.prescription.cleared.iter().any(|cleared| cleared.clears(*id, Trouble::NearlyFell, day))
    };
    let all = known.united.alarms.iter().map(|(id, (_, alarm))| (id, alarm));
    let open = all
        .filter(|(id, alarm)| alarm.trouble == Trouble::NearlyFell && alarm.item == Some(item) && !cleared(id, alarm.day));
    open.map(|(_, alarm)| alarm.day).max()
}

/// The unsettled mornings counted against the item, and those of which no rating says what they are to be counted against. Each is
/// counted against the item of the complaint with the highest rating while doing it on the day before.
fn against(
    known: &PlanFacts<'_>,
    planned: &Item,
    pain: Option<&PainSeries>,
    lately: &impl Fn(&DayNumber) -> bool,
) -> (Vec<DayNumber>, Vec<DayNumber>) {
    let Some(pain) = pain else { return (Vec::new(), Vec::new()) };
    let serves = |series: &&DuringSeries| known.plan.item(series.item).is_some_and(|item| item.serves == planned.serves);
    let alone = known.plan.prescription.items.iter().filter(|item| item.serves == planned.serves).count() == 1;
    let rated = |series: &DuringSeries, day: DayNumber| {
        series.points.iter().find(|(other, _)| *other == day).map(|(_, score)| *score)
    };
    let (mut own, mut unknown) = (Vec::new(), Vec::new());
    for morning in pain.unsettled.iter().filter(|day| lately(day)) {
        let Some(day_before) = morning.minus(1) else { continue };
        let of_day = known.during.iter().filter(serves).filter_map(|series| Some((rated(series, day_before)?, series.item)));
        let of_day: Vec<(Score, ItemId)> = of_day.collect();
        match of_day.iter().map(|(score, _)| *score).max() {
            Some(most) if of_day.contains(&(most, planned.id)) => own.push(*morning),
            Some(_) => {}
            None if alone => own.push(*morning),
            None => unknown.push(*morning),
        }
    }
    (own, unknown)
}

/// Trials with eyes open on the firm floor, of the same exercise: day, leg, tenths of a second.
fn firm_open(known: &PlanFacts<'_>, item: &Item) -> Vec<(NaiveDate, BodySide, u32)> {
    let date = |day: DayNumber| day.date(known.plan.header.start);
    let same_exercise = |id: ItemId| known.plan.item(id).is_some_and(|other| other.exercise == item.exercise);
    let runs = known.united.runs.values().filter(|run| same_exercise(run.item));
    let found = runs.filter_map(|run| Some((run.day, run.stance.as_ref()?))).flat_map(|(day, stance)| {
        let counts = stance.surface == Surface::Firm && stance.eyes == Eyes::Open;
        let real = stance.trials.iter().filter(move |_| counts);
        real.filter_map(move |trial| Some((date(day), trial.leg?, (seconds(trial, stance.target_s)? * 10.0) as u32)))
    });
    found.collect()
}
