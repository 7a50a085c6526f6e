//! One person's day as entries of a runs file.

use crate::people::Person;
use chrono::NaiveDate;
use exercises::catalogue::kind::WorkForm;
use exercises::id::ItemId;
use exercises::log::LogEvent;
use exercises::plan::{BodySide, Item, Plan};
use exercises::run::TrialEnd;
use exercises::score::Score;
use exercises::slots::{self, Slot};
use exercises::time::{Offsets, Stamp};
use format::runs_file::{Parts, RunsFileEntry, RunsFileEvent};
use rand::Rng;
use rand::rngs::StdRng;
use rand::seq::SliceRandom;
use std::collections::BTreeSet;

/// What is known about a person on one day.
pub struct Day<'a> {
    /// The person.
    pub person: &'a Person,
    /// The plan in force.
    pub plan: &'a Plan,
    /// The date.
    pub date: NaiveDate,
    /// Days since the plan's start.
    pub number: u16,
    /// The offsets of the zone in which the person lives.
    pub zone: &'a Offsets,
    /// When the card in force was taken.
    pub taken: Stamp,
    /// The device that the person uses at a given hour (an index below `devices`).
    pub device: fn(devices: usize, hour: u16) -> usize,
}

impl Day<'_> {
    /// The day's entries, each with the index of the device that logs it.
    pub fn entries(&self, chance: &mut StdRng) -> Vec<(usize, RunsFileEntry)> {
        let mut entries = Vec::new();
        for slot in slots::of_day(self.plan, self.date, self.zone, self.taken) {
            entries.extend(self.at_slot(&slot, chance));
        }
        if !entries.is_empty() || chance.gen_bool(0.7) {
            let done: BTreeSet<ItemId> = entries.iter().filter_map(|(_, entry)| item_done(entry)).collect();
            entries.extend(self.morning(chance));
            entries.extend(self.evening(&done, chance));
        }
        entries.sort_by_key(|(_, entry)| entry.at);
        entries
    }

    fn at_slot(&self, slot: &Slot, chance: &mut StdRng) -> Option<(usize, RunsFileEntry)> {
        let (due, item) = (slot.due?, &*self.plan.item_on(slot.slot.item, slot.slot.day)?);
        let hour = slot.minute / 60;
        let trouble = self.person.trouble.filter(|(day, _, during)| *day == self.number && *during == item.id.0);
        let at = due.plus_ms(chance.gen_range(20_000..1_500_000));
        let device = (self.device)(self.person.devices.len(), hour);
        if let (Some((_, trouble, _)), true) = (trouble, hour >= 12) {
            let circumstances = BTreeSet::new();
            let event = LogEvent::Trouble { trouble, item: Some(item.id), id: None, circumstances };
            return Some((device, entry(at, RunsFileEvent::Entry(event))));
        }
        if chance.gen_bool((self.person.keeps)(self.number, hour).clamp(0.0, 1.0)) {
            let live = chance.gen_bool(0.97) || item.dose.kind().is_balance();
            return Some((device, entry(at, RunsFileEvent::Run { item: item.id, live, parts: self.parts(item, chance) })));
        }
        let reason = *self.person.reasons.choose(chance)?;
        chance.gen_bool(0.25).then(|| (device, entry(at, RunsFileEvent::Skipped { item: item.id, reason })))
    }

    fn parts(&self, item: &Item, chance: &mut StdRng) -> Parts {
        let legs = item.side.in_turn();
        let dose = item.dose;
        let asked = usize::from(dose.parts()) * legs.len();
        match dose.kind().form() {
            WorkForm::Timed => {
                let done = if chance.gen_bool(0.9) { asked } else { asked - 1 };
                let whole = dose.part_ms();
                let held = |_| if chance.gen_bool(0.99) { whole } else { chance.gen_range(whole / 3..whole) };
                Parts::Held((0..done).map(held).collect())
            }
            WorkForm::Counted => {
                let set = |_| {
                    let failed = u8::from(chance.gen_bool(0.03));
                    (dose.part_amount() as u8 - failed, failed)
                };
                Parts::Counted((0..asked).map(set).collect())
            }
            // Twelve risings from a chair in half a minute are usual.
            WorkForm::Tallied => Parts::Number(chance.gen_range(10..15)),
            WorkForm::Trials => {
                let legs = legs.iter().flat_map(|leg| std::iter::repeat_n(*leg, dose.parts().into()));
                Parts::Trials { phone: None, each: legs.map(|leg| self.trial(leg, dose.part_ms(), chance)).collect() }
            }
        }
    }

    /// The right leg is the steadier one in this scenario. Times vary widely from trial to trial, as in real life.
    fn trial(&self, leg: Option<BodySide>, target_ms: u32, chance: &mut StdRng) -> (Option<BodySide>, u32, TrialEnd) {
        let able = (self.person.stance)(self.number) * if leg == Some(BodySide::Left) { 1.0 } else { 1.9 };
        let seconds = able * chance.gen_range(0.75..1.25);
        let ms = (seconds * 1000.0) as u32;
        if ms >= target_ms { (leg, target_ms, TrialEnd::Target) } else { (leg, ms, TrialEnd::Touch) }
    }

    /// The pain of each complaint in the morning, on most days.
    fn morning(&self, chance: &mut StdRng) -> Vec<(usize, RunsFileEntry)> {
        let home = self.person.devices.len() - 1;
        let Some(at) = self.clock(7, chance.gen_range(5..25)) else { return Vec::new() };
        if self.number == 0 || at.utc_ms < self.taken.utc_ms || !chance.gen_bool(0.85) {
            return Vec::new();
        }
        let pain = score((self.person.pain)(self.number) + chance.gen_range(-0.9..0.9));
        let complaints = self.plan.prescription.complaints.iter();
        let rated = complaints.map(|c| LogEvent::Morning { complaint: c.id, score: pain });
        rated.map(|event| (home, entry(at, RunsFileEvent::Entry(event)))).collect()
    }

    /// The pain while doing each item, on most days on which it was done, and on Sundays the named activities.
    fn evening(&self, done: &BTreeSet<ItemId>, chance: &mut StdRng) -> Vec<(usize, RunsFileEntry)> {
        let home = self.person.devices.len() - 1;
        let Some(at) = self.clock(21, chance.gen_range(0..40)) else { return Vec::new() };
        let mut entries = Vec::new();
        for item in done.iter().filter_map(|item| self.plan.item(*item)) {
            if item.dose.kind().rules().asks_pain() && chance.gen_bool(0.7) {
                let pain = score((self.person.during)(self.number, item.id.0) + chance.gen_range(-0.6..0.6));
                let event = LogEvent::During { item: item.id, score: pain };
                entries.push((home, entry(at, RunsFileEvent::Entry(event))));
            }
        }
        if chrono::Datelike::weekday(&self.date) == chrono::Weekday::Sun {
            let able = |chance: &mut StdRng| score((self.person.ability)(self.number) + chance.gen_range(-0.6..0.6));
            let activities = self.plan.prescription.activities.iter();
            let rated: Vec<_> =
                activities.map(|a| RunsFileEvent::Entry(LogEvent::Rated { activity: a.id, score: able(chance) })).collect();
            entries.extend(rated.into_iter().map(|event| (home, entry(at, event))));
        }
        entries
    }

    fn clock(&self, hour: u32, minute: u32) -> Option<Stamp> {
        use exercises::time::ResolvedTime;
        match self.zone.resolve(self.date.and_hms_opt(hour, minute, 0)?) {
            ResolvedTime::Once(at) | ResolvedTime::Twice(at) => Some(at),
            ResolvedTime::Never => None,
        }
    }
}

/// The item that was done.
fn item_done(entry: &RunsFileEntry) -> Option<ItemId> {
    match &entry.event {
        RunsFileEvent::Run { item, .. } => Some(*item),
        _ => None,
    }
}

fn entry(at: Stamp, event: RunsFileEvent) -> RunsFileEntry {
    RunsFileEntry { line: 0, at, event }
}

/// The rating nearest to `value`.
fn score(value: f64) -> Score {
    Score::at_most_ten(value.round().max(0.0) as u8)
}
