//! What the alarms of one log suspend.

use super::History;
use crate::alarm::Alarm;
use crate::catalogue::Catalogue;
use crate::id::ItemId;
use crate::plan::{Item, Plan};
use crate::slots::{Slot, own_day};
use crate::suspension::{self, InForce, Sign, SignKind};
use crate::time::{DayNumber, Stamp};
use chrono::NaiveDate;
use std::collections::BTreeMap;

impl History {
    /// What this log's alarms suspend at `now`, unless `plan` clears them; the places are those in [`History::alarms`].
    pub fn suspended(&self, plan: &Plan, now: Stamp) -> Vec<InForce> {
        let known = || suspension::in_force(&self.signs(plan, None), Some(own_day(now)));
        if self.alarms.is_empty() { Vec::new() } else { known() }
    }

    /// Those of them that only a card ends, or the person who says to be well again; the others end with the day.
    pub fn suspends_until_card(&self, plan: &Plan) -> Vec<InForce> {
        if self.alarms.is_empty() { Vec::new() } else { suspension::in_force(&self.signs(plan, None), None) }
    }

    /// By how many levels `item` is eased after near falls in it: those that `plan` does not clear, and of no day before a card was
    /// issued that gave it another level than the card before. Whoever issued that card had decided on the level.
    pub fn eased(&self, plan: &Plan, item: ItemId) -> usize {
        if self.alarms.is_empty() {
            return 0;
        }
        let mut signs = self.signs(plan, None);
        let decided = self.levels_decided.get(&item);
        let decided = decided.map(|issued| issued.signed_duration_since(NaiveDate::default()).num_days());
        signs.retain(|sign| decided.is_none_or(|decided| sign.day >= decided));
        suspension::eased(&signs, item)
    }

    /// Notes when the last card was issued that gave an item another level than the card before: see [`History::eased`].
    pub fn note_levels(&mut self, revisions: &BTreeMap<u16, Plan>) {
        for (before, plan) in revisions.values().zip(revisions.values().skip(1)) {
            for item in &plan.prescription.items {
                if before.item(item.id).is_some_and(|before| before.rung != item.rung) {
                    self.levels_decided.insert(item.id, plan.header.issued);
                }
            }
        }
    }

    /// The alarms that `plan` does not clear, with their places in [`History::alarms`].
    pub fn uncleared<'a>(&'a self, plan: &'a Plan) -> impl Iterator<Item = (usize, &'a Alarm)> {
        self.alarms.iter().enumerate().filter(|(_, alarm)| !is_cleared(alarm, plan))
    }

    /// Whether `slot`, looked at after it has closed, was suspended when it was due.
    pub fn was_paused(&self, slot: &Slot, item: &Item, plan: &Plan, catalogue: &Catalogue) -> bool {
        let Some(due) = slot.due.filter(|_| !self.alarms.is_empty()) else { return false };
        let then = suspension::in_force(&self.signs(plan, Some(due)), Some(own_day(due)));
        suspension::blocking(&then, item, plan, catalogue).is_some()
    }

    /// What was said until `until` that decides what is suspended, in its order. What was said while the clock was wrong counts at its
    /// place in the order of the entries.
    fn signs(&self, plan: &Plan, until: Option<Stamp>) -> Vec<Sign> {
        let alarms = self.alarms.iter().enumerate().filter(|(_, alarm)| !is_cleared(alarm, plan)).map(|(place, alarm)| {
            let kind = SignKind::Alarm { place, trouble: alarm.trouble, circumstances: alarm.circumstances.clone() };
            (alarm.entry.n, alarm.at, alarm.item, kind)
        });
        let within = self.during.iter().chain(&self.wrong_clock.during);
        let within = within.filter(|rating| plan.item(rating.of).is_none_or(|item| rating.score <= item.pain_limit));
        let within = within.map(|rating| (rating.n, rating.at, Some(rating.of), SignKind::WithinLimit));
        let well = self.well_again.iter().map(|(n, at)| (*n, *at, None, SignKind::WellAgain));
        let placed = |(n, at, item, kind)| {
            let at = self.placed(n, at);
            ((at.utc_ms, n), Sign { day: own_day(at), item, kind })
        };
        let mut all: Vec<((i64, u32), Sign)> = alarms.chain(within).chain(well).map(placed).collect();
        all.retain(|((at, _), _)| until.is_none_or(|until| *at <= until.utc_ms));
        all.sort_by_key(|(when, _)| *when);
        all.into_iter().map(|(_, sign)| sign).collect()
    }
}

fn is_cleared(alarm: &Alarm, plan: &Plan) -> bool {
    let day = DayNumber::nearest(alarm.at.date(), plan.header.start);
    plan.prescription.cleared.iter().any(|cleared| cleared.clears(alarm.id, alarm.trouble, day))
}
