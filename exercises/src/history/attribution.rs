//! For which slot a run counts (the rule is in [`crate::slots`]).

use super::{History, Mark};
use crate::id::{ItemId, RunId};
use crate::plan::{Item, Plan};
use crate::run::Run;
use crate::slots::{self, Slot, SlotRef, own_date, own_day};
use crate::time::{Offsets, Stamp};

/// Least time between two runs of which the second may count for another part of the day, in milliseconds.
const APART_MS: i64 = 60 * 60_000;

impl History {
    /// The slot for which a run of `item` that starts at `at` counts; `None` for an extra run.
    ///
    /// It is the open slot. If that is done already, it is at set times a slot of the same day that was due and is not done, an hour
    /// or more after the last run; on a day without the item, a missed slot of the days before that it can still be done for
    /// ([`crate::plan::Days::reach`]); by the hour, the slot that opens within ten minutes. Where the patient chooses the days of a week,
    /// [`crate::slots::week`] has the rule.
    pub fn slot_for(&self, plan: &Plan, item: ItemId, at: Stamp, zone: &Offsets, taken: Stamp) -> Option<SlotRef> {
        let item = plan.item(item).filter(|item| item.phase.contains(own_date(at)))?;
        if item.schedule.days.are_chosen() {
            return self.slot_of_week(plan, item, at, zone);
        }
        let near = slots::near(plan, item.id, at, zone, taken);
        let is_done = |slot: &Slot| self.mark(slot, item, at) == Mark::Done;
        let found = match near.iter().find(|slot| slot.open_at(at)) {
            Some(open) if !open.at_set_time || !is_done(open) => Some(open),
            Some(open) if self.last_run_of(open, item).is_some_and(|last| at.utc_ms - last.utc_ms < APART_MS) => None,
            Some(_) => {
                let missed = |slot: &&Slot| {
                    slot.at_set_time
                        && slot.is_on_own_day_of(at)
                        && slot.due.is_some_and(|due| due.utc_ms <= at.utc_ms)
                        && !is_done(slot)
                };
                near.iter().rev().find(missed)
            }
            None => near.iter().find(|slot| slot.soon_at(at)).or_else(|| {
                let late = 1..=item.schedule.days.reach();
                let before = |slot: &Slot| slot.due.is_some_and(|due| late.contains(&(own_day(at) - own_day(due))));
                near.iter().find(|slot| slot.at_set_time && before(slot) && !is_done(slot))
            }),
        };
        found.map(|slot| slot.slot)
    }

    /// The start of the last run that counts for `slot`.
    fn last_run_of(&self, slot: &Slot, item: &Item) -> Option<Stamp> {
        self.filling(slot, item).iter().map(|run| run.started).max_by_key(|started| started.utc_ms)
    }

    /// The runs that count for `slot`: those begun for it; if these did not do it in full, at set times also those that an older
    /// program took for extra ones and those that were done on a day before.
    pub fn filling(&self, slot: &Slot, item: &Item) -> Vec<&Run> {
        if let Some(week) = slot.week {
            return self.filling_of_week(slot, week, item);
        }
        let naming = self.naming.range((slot.slot, RunId(0))..).take_while(|(of, _)| *of == slot.slot);
        let naming = naming.filter_map(|(_, run)| self.runs.get(run)).filter(|run| self.was_done_for(run, slot));
        let mut filling: Vec<&Run> = naming.collect();
        let sides = item.side.in_turn().len() as u32;
        if !filling.iter().any(|run| run.parts(sides).full()) {
            filling.extend(self.extra_in_its_part(slot));
            filling.extend(self.extra_on_a_day_before(slot, item));
        }
        filling
    }

    /// Extra runs of the item that began within the part of the day that `slot` owns.
    fn extra_in_its_part(&self, slot: &Slot) -> impl Iterator<Item = &Run> {
        let (opens, closes) = match (slot.opens, slot.closes) {
            (Some(opens), Some(closes)) if slot.at_set_time => (opens.utc_ms, closes.utc_ms),
            _ => (0, 0),
        };
        self.extra(slot.slot.item, opens, closes)
    }

    /// The extra run of the days before, without the item, on which the slot can be done early ([`crate::plan::Days::reach`]): of several the
    /// one at the slot's place among those of its day.
    fn extra_on_a_day_before(&self, slot: &Slot, item: &Item) -> Option<&Run> {
        let reach = item.schedule.days.reach();
        let due = slot.due.filter(|_| slot.at_set_time && reach > 0)?;
        let early = 1..=reach;
        let free = |run: &&Run| {
            let day = own_date(run.started);
            let before = own_date(due).signed_duration_since(day).num_days();
            early.contains(&before) && item.phase.contains(day) && !item.is_due_on(day, None)
        };
        let from = due.utc_ms - (reach + 2) * 86_400_000;
        self.extra(slot.slot.item, from, due.utc_ms).filter(free).nth(slot.slot.number.into())
    }

    /// Extra runs of `item` that began from `from` until before `until`, in milliseconds since 1970 UTC.
    fn extra(&self, item: ItemId, from: i64, until: i64) -> impl Iterator<Item = &Run> {
        let within = self.extra.range((item, from, RunId(0))..(item, until, RunId(0)));
        within.filter_map(|(_, _, run)| self.runs.get(run))
    }

    /// Whether `run` was done for the slot that it names. If two cards were taken on one day, a reference may mean a different slot
    /// under each of them: a timed run belongs to the card that was in force when it began.
    fn was_done_for(&self, run: &Run, slot: &Slot) -> bool {
        let Some(due) = slot.due else { return true };
        let card = |at: Stamp| self.in_force(at).map(|taken| taken.n);
        !run.live || card(run.started) == card(due) || slot.soon_at(run.started)
    }
}
