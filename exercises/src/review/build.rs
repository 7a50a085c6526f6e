//! Builds the review from the summaries of all the patient's devices.
//!
//! Days after the last day that a summary covers are not counted, because nothing is known about them yet. Days between two
//! summaries, and covered days on which no entry was made, are shown as days without a record.

use super::{LaggingDevice, Review, ReviewAlarm, ratings, stance, strings};
use crate::adherence::{
    ItemAdherence, SlotOn, broke_off, count, day_counts, dose_kept, extra, last_done, longest_gap, rhythm, stops,
    unite_delays,
};
use crate::catalogue::Catalogue;
use crate::change::{ActivityChange, together};
use crate::id::ItemId;
use crate::norms::Norms;
use crate::plan::{Plan, StanceBaseline};
use crate::suggest;
use crate::summary::union::{United, unite};
use crate::summary::{Corrections, RunOn, Summary};
use crate::time::DayNumber;
use chrono::NaiveDate;
use std::cmp::Reverse;
use std::collections::BTreeMap;
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
    let strings = strings::strings(&united, revisions, start);
    let balance = stance::series(&united, revisions, catalogue, norms);
    let activities = ratings::activities(&united, revisions, day_of);
    let changes: Vec<ActivityChange> = activities.iter().map(|series| series.change).collect();
    Some(Review {
        start,
        covered: united.seen.first().zip(united.seen.last()).map(|(first, last)| (date(*first), date(*last))),
        logs: united.logs.len() as u16,
        behind: behind(&united, date),
        revision: in_force(&united, revisions).unwrap_or(newest.header.revision),
        alarms: alarms(&united, newest, date),
        adherence: adherence(&united, revisions, newest, &strings),
        days: strings::day_strings(&united, &strings.slots, start),
        delays: unite_delays(united.delays.values()),
        pain: ratings::pain(&united, revisions, day_of),
        sides: stance::sides(&balance, newest),
        balance,
        baselines: baselines(revisions, start),
        activities_together: together(&changes),
        activities,
        barriers: ratings::barriers(&strings.slots),
        items: suggest::of_plan(newest, catalogue, &united, &strings.slots),
        notes: united.notes.clone(),
        corrected: united.corrections.values().map(Corrections::count).sum(),
    })
}

fn behind(united: &United<'_>, date: impl Fn(DayNumber) -> NaiveDate) -> Vec<LaggingDevice> {
    let last = united.covered.last();
    let late = united.logs.iter().filter(|(_, of)| of.covered.last() < last);
    late.filter_map(|(log, of)| Some(LaggingDevice { log: *log, until: date(*of.covered.last()?) })).collect()
}

/// The highest revision that any device has taken.
fn in_force(united: &United<'_>, revisions: &BTreeMap<u16, Plan>) -> Option<u16> {
    let taken = united.logs.values().flat_map(|of| of.taken.iter().map(|taken| taken.revision));
    taken.filter(|revision| revisions.contains_key(revision)).max()
}

fn alarms(united: &United<'_>, newest: &Plan, date: impl Fn(DayNumber) -> NaiveDate) -> Vec<ReviewAlarm> {
    let one = |(entry, alarm): (&crate::id::EntryRef, &crate::summary::AlarmOn)| ReviewAlarm {
        entry: *entry,
        day: alarm.day,
        date: date(alarm.day),
        trouble: alarm.trouble,
        item: alarm.item,
        cleared: newest.prescription.cleared.contains(entry),
        said_mistaken: united.corrections.get(&entry.log).is_some_and(|said| said.alarms.contains(&entry.n)),
    };
    let mut all: Vec<ReviewAlarm> = united.alarms.iter().map(one).collect();
    all.sort_by_key(|alarm| Reverse((alarm.day, alarm.entry.n, alarm.entry.log)));
    all
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

fn adherence(united: &United<'_>, revisions: &BTreeMap<u16, Plan>, newest: &Plan, strings: &Strings) -> Vec<ItemAdherence> {
    let in_force = newest.prescription.items.iter().map(|item| item.id);
    let told = strings.slots.iter().map(|slot| slot.item).chain(united.runs.values().map(|run| run.item));
    let items = ratings::unique(in_force.chain(told));
    items.into_iter().map(|item| of_item(united, revisions, newest, strings, item)).collect()
}

fn of_item(
    united: &United<'_>,
    revisions: &BTreeMap<u16, Plan>,
    newest: &Plan,
    strings: &Strings,
    item: ItemId,
) -> ItemAdherence {
    let slots: Vec<SlotOn> = strings.slots.iter().filter(|slot| slot.item == item).copied().collect();
    let runs = || united.runs.iter().filter(|(_, run)| run.item == item);
    let beyond: Vec<&RunOn> =
        runs().filter(|(name, _)| strings.filling.binary_search(name).is_err()).map(|(_, run)| *run).collect();
    let unit = strings::unit_of(revisions, item);
    let counts = count(&slots);
    ItemAdherence {
        item,
        in_force: newest.item(item).is_some(),
        slots: counts,
        kept: counts.kept(),
        kept_timed: counts.kept_timed(),
        kept_with_days_off: counts.kept_with_days_off(),
        kept_with_unrecorded: counts.kept_with_unrecorded(),
        dose: dose_kept(&slots, unit),
        days: day_counts(&slots),
        extra: extra(beyond, unit),
        rhythm: rhythm(&slots),
        longest_gap: longest_gap(&slots),
        broke_off: broke_off(&slots),
        last_done: last_done(&slots),
        stops: stops(runs().map(|(_, run)| *run)),
    }
}
