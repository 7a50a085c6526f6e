//! Builds the review from the summaries of all the patient's devices.
//!
//! Days after the last day that a summary covers are not counted, because nothing is known about them yet. Days between two
//! summaries, and covered days on which no entry was made, are shown as days without a record.

use super::alarms::{clears, suspensions};
use super::{
    LaggingDevice, Review, ReviewAlarm, StanceSeries, WrongClockEntry, WrongClockNotes, counts, ratings, stance, strings,
    weeks,
};
use crate::adherence::{
    ItemAdherence, SlotOn, broke_off, count, day_counts, done_as_needed, dose_kept, extra, last_done, lately, longest_gap,
    rhythm, stops, unite_delays,
};
use crate::alarm::Trouble;
use crate::catalogue::Catalogue;
use crate::change::{ActivityChange, together};
use crate::id::{AlarmId, ItemId, LogId};
use crate::norms::Norms;
use crate::plan::{Plan, StanceBaseline};
use crate::saturating::at_most;
use crate::statistics::Verdict;
use crate::suggest::{self, PlanFacts};
use crate::summary::union::{United, unite};
use crate::summary::{AlarmOn, Corrections, RunOn, RunTiming, Summary};
use crate::suspension::Suspends;
use crate::time::DayNumber;
use chrono::NaiveDate;
use std::cmp::Reverse;
use std::collections::{BTreeMap, BTreeSet};
use strings::Strings;

/// The review of one plan, compared with the norms built into the program. `revisions` holds all revisions that were issued,
/// by number; `summaries` all summaries received, in any order. `None` if there is no revision, or no summary of that plan.
pub fn build(revisions: &BTreeMap<u16, Plan>, catalogue: &Catalogue, summaries: &[Summary]) -> Option<Review> {
    build_against(revisions, catalogue, summaries, &Norms::built_in())
}

/// Same as [`build`], compared with the given norms.
pub fn build_against(
    revisions: &BTreeMap<u16, Plan>,
    catalogue: &Catalogue,
    summaries: &[Summary],
    norms: &Norms,
) -> Option<Review> {
    let newest = revisions.values().next_back()?;
    let united = unite(summaries.iter().filter(|summary| summary.plan == newest.header.id))?;
    let start = newest.header.start;
    let date = |day: DayNumber| day.date(start);
    let day_of = |plan: &Plan| DayNumber::nearest(plan.header.issued, start);
    let strings = weeks::strings(&united, revisions, start);
    let balance = stance::series(&united, revisions, catalogue, norms);
    let activities = ratings::activities(&united, revisions, day_of);
    let suspended = suspensions(&united, newest);
    let until = united.covered.last().copied().unwrap_or_default();
    let during = ratings::during(&united, revisions);
    let pain = ratings::pain(&united, revisions, &during, until, day_of);
    let changes: Vec<ActivityChange> = activities.iter().map(|series| series.change).collect();
    let falls = |series: &&StanceSeries| series.change.verdict == Verdict::Falling;
    let falling: Vec<_> =
        balance.iter().filter(falls).map(|series| (series.exercise.clone(), series.rung.clone())).collect();
    Some(Review {
        start,
        covered: united.seen.first().zip(united.seen.last()).map(|(first, last)| (date(*first), date(*last))),
        until,
        logs: at_most(united.logs.keys().map(|log| united.device(*log)).collect::<BTreeSet<_>>().len()),
        behind: behind(&united, date),
        renewed: united.renewed.iter().copied().map(date).collect(),
        revision: in_force(&united, revisions).unwrap_or(newest.header.revision),
        alarms: alarms(&united, revisions, newest, catalogue, &suspended),
        adherence: adherence(&united, revisions, newest, &strings, until),
        days: strings::day_strings(&united, &strings.slots, start),
        delays: unite_delays(united.delays.values()),
        sides: stance::sides(&balance, newest),
        baselines: baselines(revisions, start),
        activities_together: together(&changes),
        activities,
        barriers: ratings::barriers(&strings.slots),
        items: suggest::of_plan(&PlanFacts {
            plan: newest,
            revisions,
            catalogue,
            united: &united,
            slots: &strings.slots,
            in_force: &suspended,
            pain: &pain,
            during: &during,
            falling: &falling,
        }),
        balance,
        counts: counts::series(&united, revisions, catalogue),
        pain,
        during,
        notes: united.notes.clone(),
        wrong_clock: wrong_clock(&united),
        corrected: united.corrections.values().map(Corrections::count).fold(0, u32::saturating_add),
    })
}

/// What was recorded while clocks were wrong.
fn wrong_clock(united: &United<'_>) -> WrongClockNotes {
    let of = &united.wrong_clock;
    let runs = of.runs.values().map(|run| WrongClockEntry::Run { item: run.item });
    let during = of.during.values().map(|one| WrongClockEntry::During { item: one.item, score: one.score });
    let mornings = of.mornings.values().map(|one| WrongClockEntry::Morning { complaint: one.complaint, score: one.score });
    let rated = of.rated.values().map(|one| WrongClockEntry::Rated { activity: one.activity, score: one.score });
    WrongClockNotes {
        entries: runs.chain(during).chain(mornings).chain(rated).collect(),
        ahead_days: of.ahead_days.values().copied().max(),
    }
}

fn behind(united: &United<'_>, date: impl Fn(DayNumber) -> NaiveDate) -> Vec<LaggingDevice> {
    let last = united.covered.last();
    let late = united.logs.iter().filter(|(_, of)| !of.goes_on && of.covered.last() < last);
    late.filter_map(|(log, of)| Some(LaggingDevice { log: *log, until: date(*of.covered.last()?) })).collect()
}

/// The highest revision that any device has taken.
fn in_force(united: &United<'_>, revisions: &BTreeMap<u16, Plan>) -> Option<u16> {
    let taken = united.logs.values().flat_map(|of| of.taken.iter().map(|taken| taken.revision));
    taken.filter(|revision| revisions.contains_key(revision)).max()
}

fn alarms(
    united: &United<'_>,
    revisions: &BTreeMap<u16, Plan>,
    newest: &Plan,
    catalogue: &Catalogue,
    in_force: &[(AlarmId, Suspends)],
) -> Vec<ReviewAlarm> {
    let by_alarm: BTreeMap<AlarmId, Suspends> = in_force.iter().copied().collect();
    let one = |(id, (log, alarm)): (&AlarmId, &(LogId, AlarmOn))| {
        let suspends = by_alarm.get(id).copied();
        let suspended = newest
            .prescription
            .items
            .iter()
            .filter(|item| suspends.is_some_and(|suspends| suspends.reaches(item, newest, catalogue)));
        let above = alarm.item.filter(|_| alarm.trouble == Trouble::PainAboveLimit).and_then(|item| {
            let rated = united.during.values().filter(|rating| rating.item == item && rating.day == alarm.day);
            Some((rated.map(|rating| rating.score).max()?, ratings::limit_on(united, revisions, item, alarm.day)?))
        });
        ReviewAlarm {
            id: *id,
            day: united.shown_day(alarm),
            date: united.shown_day(alarm).date(newest.header.start),
            wrong_clock: united.wrong_clock.alarms.contains_key(id),
            trouble: alarm.trouble,
            item: alarm.item,
            circumstances: alarm.circumstances.clone(),
            suspended: suspended.map(|item| item.id).collect(),
            above,
            revision: ratings::revision_on(united, alarm.day),
            cleared: clears(united, newest, alarm),
            said_mistaken: united.corrections.get(log).is_some_and(|said| said.alarms.contains(&alarm.n)),
        }
    };
    let mut all: Vec<((DayNumber, u32), ReviewAlarm)> =
        united.alarms.iter().map(|named| ((named.1.1.day, named.1.1.n), one(named))).collect();
    all.sort_by_key(|(when, alarm)| Reverse((*when, alarm.id)));
    all.into_iter().map(|(_, alarm)| alarm).collect()
}

/// The stance times of all visits with their day numbers. A time that a later card carries over stays with the visit at which
/// it was measured; a later card with a time of the same day replaces the earlier time. Where a card gives no days, a time
/// equal to one on an earlier card is taken as carried over.
fn baselines(revisions: &BTreeMap<u16, Plan>, start: NaiveDate) -> Vec<(DayNumber, StanceBaseline)> {
    let mut all: Vec<(DayNumber, StanceBaseline)> = Vec::new();
    for plan in revisions.values() {
        for (written, dated) in plan.prescription.baselines.iter().zip(plan.dated_baselines()) {
            let same_day = |other: &StanceBaseline| dated.taken.is_some() && other.taken == dated.taken;
            let carried = |other: &StanceBaseline| {
                written.taken.is_none() && (other.tenths, other.capped) == (dated.tenths, dated.capped)
            };
            let mut like = all.iter_mut().map(|(_, other)| other).filter(|other| other.field() == dated.field());
            match like.find(|other| same_day(other) || carried(other)) {
                Some(known) if same_day(known) => *known = dated,
                Some(_) => {}
                None => all.push((DayNumber::nearest(dated.taken.unwrap_or(plan.header.issued), start), dated)),
            }
        }
    }
    all
}

fn adherence(
    united: &United<'_>,
    revisions: &BTreeMap<u16, Plan>,
    newest: &Plan,
    strings: &Strings,
    until: DayNumber,
) -> Vec<ItemAdherence> {
    let in_force = newest.prescription.items.iter().map(|item| item.id);
    let told = strings.slots.iter().map(|slot| slot.item).chain(united.runs.values().map(|run| run.item));
    let items = ratings::unique(in_force.chain(told));
    items.into_iter().map(|item| of_item(united, revisions, newest, strings, until, item)).collect()
}

fn of_item(
    united: &United<'_>,
    revisions: &BTreeMap<u16, Plan>,
    newest: &Plan,
    strings: &Strings,
    until: DayNumber,
    item: ItemId,
) -> ItemAdherence {
    let slots: Vec<SlotOn> = strings.slots.iter().filter(|slot| slot.item == item).copied().collect();
    let runs = || united.runs.iter().filter(|(_, run)| run.item == item);
    let beyond: Vec<&RunOn> =
        runs().filter(|(name, _)| strings.filling.binary_search(name).is_err()).map(|(_, run)| *run).collect();
    // While it is to be done as needed, nothing is beyond what was asked for.
    let wanted_on = |day: DayNumber| {
        let card = ratings::revision_on(united, day).and_then(|revision| revisions.get(&revision)).unwrap_or(newest);
        card.item(item).is_some_and(|item| item.schedule.is_as_needed())
    };
    let (needed, beyond): (Vec<&RunOn>, Vec<&RunOn>) = beyond.into_iter().partition(|run| wanted_on(run.day));
    let as_needed = !needed.is_empty() || newest.item(item).is_some_and(|item| item.schedule.is_as_needed());
    let unit = strings::unit_of(revisions, item);
    let counts = count(&slots);
    ItemAdherence {
        item,
        in_force: newest.item(item).is_some(),
        slots: counts,
        kept: counts.kept(),
        kept_timed: counts.kept_timed(),
        kept_with_days_off: counts.kept_with_days_off(),
        shares: counts.shares(),
        last14: lately(&slots, until),
        late: slots.iter().filter(|slot| slot.timing == RunTiming::Late).count() as u32,
        moved: slots.iter().filter(|slot| slot.timing == RunTiming::Moved).count() as u32,
        dose: dose_kept(&slots, unit),
        days: day_counts(&slots),
        extra: extra(beyond, unit),
        as_needed: as_needed.then(|| done_as_needed(&needed)),
        rhythm: rhythm(&slots),
        longest_gap: longest_gap(&slots),
        broke_off: broke_off(&slots),
        last_done: last_done(&slots),
        stops: stops(runs().map(|(_, run)| *run)),
    }
}
