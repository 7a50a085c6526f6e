//! Runs of items of which the patient chooses the days: for which slot of the week each counts (the rule is in [`crate::slots::week`]).

use super::History;
use crate::id::{ItemId, RunId};
use crate::plan::{Item, Plan};
use crate::run::Run;
use crate::slots::week::{SessionDay, Week, WeekSlot, assign};
use crate::slots::{self, Slot, SlotRef, own_date};
use crate::time::{Offsets, Stamp, days_since_1970};
use chrono::{Days, NaiveDate};
use std::collections::BTreeMap;

/// How far an item has come in a week.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct WeekSoFar {
    /// Slots of the week that were done in full.
    pub done: u8,
    /// Slots of the week, without excused ones.
    pub of: u8,
    /// Whether another session today would count.
    pub counts_today: bool,
}

/// The runs of an item on one day.
type OnDay<'a> = BTreeMap<NaiveDate, Vec<&'a Run>>;

impl History {
    /// Notes when the card was taken that brought each item of which the patient chooses the days: a session counts for no slot that was
    /// due before. Without it all slots of the week count.
    pub fn note_beginnings(&mut self, revisions: &BTreeMap<u16, Plan>) {
        for taken in &self.taken {
            let items = revisions.get(&taken.revision).map(|plan| plan.prescription.items.as_slice()).unwrap_or_default();
            for (item, from) in items.iter().filter_map(|item| Some((item.id, item.schedule.days.begin()?))) {
                let known = self.begun.entry((item, from)).or_insert(taken.at);
                *known = (*known).min(taken.at);
            }
        }
    }

    /// The runs that count for a slot of `week`.
    pub(super) fn filling_of_week(&self, slot: &Slot, week: Week, item: &Item) -> Vec<&Run> {
        let mut runs = self.runs_of_week(item.id, week.monday);
        let slots = self.week_slots(item, week.days());
        let Some(place) = slots.iter().position(|of| of.day == slot.slot.day) else { return Vec::new() };
        let days: Vec<SessionDay> = session_days(&runs, item);
        let day = assign(&slots, &days)[place].map(|session| days[session].day);
        day.and_then(|day| runs.remove(&day)).unwrap_or_default()
    }

    /// The slot for which a run that starts at `at` counts; `None` if enough was done in the week, or on this day.
    pub(super) fn slot_of_week(&self, plan: &Plan, item: &Item, at: Stamp, zone: &Offsets) -> Option<SlotRef> {
        let today = own_date(at);
        let of_week = slots::of_week(plan, item, today, zone);
        let slots = self.week_slots(item, of_week.iter().map(|slot| slot.slot.day));
        let mut days = session_days(&self.runs_of_week(item.id, crate::plan::days::monday(today)), item);
        match days.iter_mut().find(|session| session.day == today) {
            Some(session) if session.full => return None,
            Some(session) => session.full = true,
            None => days.push(SessionDay { day: today, full: true }),
        }
        days.sort_by_key(|session| session.day);
        let place = assign(&slots, &days).iter().position(|of| of.is_some_and(|of| days[of].day == today))?;
        // Before the first day and after the last one nothing counts.
        let last = of_week.first()?.week?.ends;
        let first = item.days().begin()?;
        (first <= today && at.utc_ms < last.utc_ms).then_some(SlotRef { day: slots[place].day, item: item.id, number: 0 })
    }

    /// How far `item` has come in the week of `at`; `None` if the patient does not choose its days, or nothing is due in this week.
    pub fn week_so_far(&self, plan: &Plan, item: &Item, at: Stamp, zone: &Offsets) -> Option<WeekSoFar> {
        let of_week = slots::of_week(plan, item, own_date(at), zone);
        let slots = self.week_slots(item, of_week.iter().map(|slot| slot.slot.day));
        let days = session_days(&self.runs_of_week(item.id, of_week.first()?.week?.monday), item);
        let assigned = assign(&slots, &days);
        let is_done = |place: &usize| assigned[*place].is_some_and(|session| days[session].full);
        let asked = |place: &usize| is_done(place) || self.day_off(slots[*place].day).is_none();
        let done = (0..slots.len()).filter(is_done).count();
        let of = (0..slots.len()).filter(asked).count();
        let counts_today = done < of && self.slot_of_week(plan, item, at, zone).is_some();
        (of > 0).then_some(WeekSoFar { done: done as u8, of: of as u8, counts_today })
    }

    /// The slots of a week that are due on `days`, without those from before the item's card was taken.
    fn week_slots(&self, item: &Item, days: impl Iterator<Item = NaiveDate>) -> Vec<WeekSlot> {
        let begun = item.schedule.days.begin().and_then(|from| self.begun.get(&(item.id, from)));
        let minute = item.schedule.pattern.minutes().first().copied().unwrap_or_default();
        let due_ms = |day: NaiveDate| (days_since_1970(day) * 24 * 60 + i64::from(minute)) * 60_000;
        let since = |day: &NaiveDate| begun.is_none_or(|at| due_ms(*day) >= at.utc_ms + i64::from(at.offset_s) * 1000);
        let skipped = |day: NaiveDate| self.skipped.contains_key(&SlotRef { day, item: item.id, number: 0 });
        let wanted = |day: NaiveDate| !skipped(day) && self.day_off(day).is_none();
        days.filter(since).map(|day| WeekSlot { day, wanted: wanted(day) }).collect()
    }

    /// The runs of an item in the week that begins on `monday`, whichever slot they name.
    fn runs_of_week(&self, item: ItemId, monday: NaiveDate) -> OnDay<'_> {
        let around = |days: i64| (days_since_1970(monday) + days) * 86_400_000;
        let extra = self.extra.range((item, around(-1), RunId(0))..(item, around(9), RunId(0))).map(|(_, _, run)| run);
        let first = SlotRef { day: monday.checked_sub_days(Days::new(2)).unwrap_or(monday), item: ItemId(0), number: 0 };
        let last = monday.checked_add_days(Days::new(9)).unwrap_or(monday);
        let naming = self.naming.range((first, RunId(0))..).take_while(|(slot, _)| slot.day <= last);
        let naming = naming.filter(|(slot, _)| slot.item == item).map(|(_, run)| run);
        let mut found = OnDay::new();
        for run in extra.chain(naming).filter_map(|run| self.runs.get(run)) {
            let day = own_date(run.started);
            if crate::plan::days::monday(day) == monday {
                found.entry(day).or_default().push(run);
            }
        }
        found
    }
}

fn session_days(runs: &OnDay<'_>, item: &Item) -> Vec<SessionDay> {
    let sides = item.side.in_turn().len() as u32;
    let full = |runs: &[&Run]| runs.iter().any(|run| run.parts(sides).full());
    runs.iter().map(|(day, runs)| SessionDay { day: *day, full: full(runs) }).collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::history::Mark;
    use crate::log::{Barrier, DayOffReason, Entry, Log, LogEvent};
    use crate::plan::{Days, Pattern, Plan, Schedule};
    use crate::review::samples::{HOLD, PHONE, plan, start};
    use crate::run::{HoldRecord, Run, RunEnd, Work};
    use crate::time::days_since_1970;
    use chrono::Duration;

    /// The Monday of the week of day `week * 7`; the sample plan begins on a Wednesday.
    fn date(place: i64) -> NaiveDate {
        crate::plan::days::monday(start()) + Duration::days(place)
    }

    fn utc() -> Offsets {
        Offsets::fixed(0)
    }

    /// The sample plan with its hold three times a week at 18:00, from this day of the first week on.
    fn three_a_week(from: i64) -> Plan {
        let mut plan = plan();
        plan.prescription.items.retain(|item| item.id == HOLD);
        plan.prescription.review = date(27);
        plan.prescription.items[0].schedule =
            Schedule { days: Days::TimesAWeek { n: 3, from: date(from) }, pattern: Pattern::At { times: vec![18 * 60] } };
        plan
    }

    fn at(place: i64, hour: i64) -> Stamp {
        utc().stamp((days_since_1970(date(place)) * 24 + hour) * 3_600_000)
    }

    /// A session on this day of the week at noon: in full, or one hold of three.
    type Session = (i64, bool);

    fn history(plan: &Plan, taken: Stamp, sessions: &[Session], more: &[(Stamp, LogEvent)]) -> History {
        let item = &plan.prescription.items[0];
        let run = |(id, (place, full)): (u32, &Session)| {
            let held = HoldRecord { side: None, held_ms: 10_000 };
            let run = Run {
                id: RunId(id),
                item: item.id,
                exercise: item.exercise.clone(),
                rung: item.rung.clone(),
                dose: item.dose,
                slot: None,
                started: at(*place, 12),
                live: true,
                end: if *full { RunEnd::Completed } else { RunEnd::Stopped },
                paused_ms: 0,
                interruptions: Vec::new(),
                work: Work::Timed(vec![held; if *full { 3 } else { 1 }]),
            };
            (at(*place, 12), LogEvent::Run(run))
        };
        let mut events = vec![(taken, LogEvent::Taken { revision: 1, agreed: Vec::new() })];
        events.extend((1..).zip(sessions).map(run));
        events.extend(more.iter().cloned());
        events.sort_by_key(|(at, _)| at.utc_ms);
        let entries = (1..).zip(events).map(|(n, (at, event))| Entry { n, plan: plan.header.id, at, event });
        let log = Log { id: PHONE, former: Vec::new(), entries: entries.collect() };
        let mut history = History::fold(&log, plan.header.id);
        history.note_beginnings(&BTreeMap::from([(1, plan.clone())]));
        history
    }

    /// How the slots of four weeks went, by the place of their days, as seen at `now`.
    fn marks(plan: &Plan, history: &History, taken: Stamp, now: Stamp) -> Vec<(i64, Mark)> {
        let item = &plan.prescription.items[0];
        let of_day = |place| slots::of_day(plan, date(place), &utc(), taken).into_iter().map(move |slot| (place, slot));
        let all = (0..28).flat_map(of_day);
        all.map(|(place, slot)| (place, history.mark(&slot, item, now))).collect()
    }

    fn of_first_week(sessions: &[Session], more: &[(Stamp, LogEvent)], now: Stamp) -> Vec<(i64, Mark)> {
        let (plan, taken) = (three_a_week(0), at(0, 8));
        let mut marks = marks(&plan, &history(&plan, taken, sessions, more), taken, now);
        marks.retain(|(place, _)| *place < 7);
        marks
    }

    #[test]
    fn nothing_is_missed_before_the_week_is_over() {
        let monday = at(7, 2);
        assert_eq!(of_first_week(&[], &[], monday), [(0, Mark::Due), (2, Mark::Due), (4, Mark::Due)]);
        assert_eq!(of_first_week(&[], &[], at(1, 12)), [(0, Mark::Due), (2, Mark::ToCome), (4, Mark::ToCome)]);
        let over = at(7, 3);
        assert_eq!(of_first_week(&[], &[], over), [(0, Mark::NotDone), (2, Mark::NotDone), (4, Mark::NotDone)]);
    }

    #[test]
    fn three_sessions_on_any_days_are_the_week() {
        for days in [[0, 2, 4], [1, 3, 5], [4, 5, 6], [0, 1, 2]] {
            let done = of_first_week(&days.map(|day| (day, true)), &[], at(7, 3));
            assert_eq!(done, [(0, Mark::Done), (2, Mark::Done), (4, Mark::Done)], "{days:?}");
        }
        let twice_a_day = of_first_week(&[(1, true), (1, true), (3, true)], &[], at(7, 3));
        assert_eq!(twice_a_day, [(0, Mark::Done), (2, Mark::Done), (4, Mark::NotDone)], "a day counts once");
    }

    #[test]
    fn a_part_counts_for_a_part_and_a_day_off_is_not_owed() {
        let part = |done| Mark::Partly(crate::run::Share { done, of: 3 });
        assert_eq!(of_first_week(&[(1, false)], &[], at(1, 13))[0], (0, part(1)));
        let ill = LogEvent::DaysOff { from: date(2), until: date(3), why: DayOffReason::Ill };
        let marks = of_first_week(&[(1, true), (5, true)], &[(at(1, 20), ill.clone())], at(7, 3));
        assert_eq!(marks, [(0, Mark::Done), (2, Mark::DayOff(DayOffReason::Ill)), (4, Mark::Done)]);
        let all = of_first_week(&[(0, true), (5, true), (6, true)], &[(at(1, 20), ill)], at(7, 3));
        assert_eq!(all, [(0, Mark::Done), (2, Mark::Done), (4, Mark::Done)], "what was done counts all the same");
        let skip = SlotRef { day: date(2), item: HOLD, number: 0 };
        let skipped = (at(2, 19), LogEvent::Skipped { slot: skip, reason: Barrier::NoTime });
        let marks = of_first_week(&[(3, true), (5, true)], &[skipped], at(7, 3));
        assert_eq!(marks, [(0, Mark::Done), (2, Mark::Skipped(Barrier::NoTime)), (4, Mark::Done)]);
    }

    #[test]
    fn a_card_taken_late_in_the_week_owes_what_is_left_of_it() {
        let (plan, taken) = (three_a_week(0), at(3, 8));
        let history = history(&plan, taken, &[(3, true), (8, true)], &[]);
        let first: Vec<_> = marks(&plan, &history, taken, at(28, 3)).into_iter().take(3).collect();
        assert_eq!(first, [(4, Mark::Done), (7, Mark::Done), (9, Mark::NotDone)], "Thursday's session is Friday's");
    }

    #[test]
    fn a_plan_that_begins_or_ends_in_the_week_owes_its_proportion() {
        let mut plan = three_a_week(2);
        plan.prescription.review = date(15);
        let taken = at(2, 8);
        let none = history(&plan, taken, &[], &[]);
        let days: Vec<i64> = marks(&plan, &none, taken, at(28, 3)).into_iter().map(|(place, _)| place).collect();
        assert_eq!(days, [2, 4, 7, 9, 11], "of two days nothing is left in the last week");
    }

    #[test]
    fn now_counts_the_week_and_offers_it_until_it_is_done() {
        let (plan, taken) = (three_a_week(0), at(0, 8));
        let item = &plan.prescription.items[0];
        let so_far = |sessions: &[Session], place| {
            let found = history(&plan, taken, sessions, &[]).week_so_far(&plan, item, at(place, 13), &utc());
            found.map(|week| (week.done, week.of, week.counts_today))
        };
        assert_eq!(so_far(&[], 0), Some((0, 3, true)));
        assert_eq!(so_far(&[(0, true), (1, true)], 1), Some((2, 3, false)), "today is done");
        assert_eq!(so_far(&[(0, true), (1, true)], 3), Some((2, 3, true)));
        assert_eq!(so_far(&[(0, true), (1, true), (3, true)], 5), Some((3, 3, false)));
        assert_eq!(so_far(&[(0, true), (1, true), (3, true)], 7), Some((0, 3, true)), "a new week");
        assert_eq!(so_far(&[(0, false)], 0), Some((0, 3, true)), "the rest of it");
    }

    #[test]
    fn a_session_counts_by_the_wall_clock_of_its_place() {
        let (plan, taken) = (three_a_week(0), at(0, 8));
        // Sunday, 23:00 in a place eleven hours behind: there it is still this week.
        let behind = Offsets::fixed(-11 * 3600);
        let sunday = behind.stamp(at(6, 23).utc_ms + 11 * 3_600_000);
        let of = |at: Stamp, zone: &Offsets| {
            history(&plan, taken, &[], &[]).slot_for(&plan, HOLD, at, zone, taken).map(|slot| slot.day)
        };
        assert_eq!(of(sunday, &behind), Some(date(0)));
        assert_eq!(of(utc().stamp(sunday.utc_ms), &utc()), Some(date(7)), "where it is Monday, the next week has begun");
        assert_eq!(of(at(1, 2), &utc()), Some(date(0)), "before three o'clock it is the day before");
        assert_eq!(of(at(28, 12), &utc()), None, "after the plan's last day");
    }

    #[test]
    fn the_days_stay_where_they_are_when_the_clocks_change() {
        // The clocks go forward in the night to the Sunday: 02:00 to 03:00.
        let change = days_since_1970(date(6)) * 86_400 + 3600;
        let zone = Offsets { first_s: 3600, changes: vec![(change, 7200)] };
        let plan = three_a_week(0);
        let item = &plan.prescription.items[0];
        let slots = slots::of_week(&plan, item, date(6), &zone);
        let week = slots[0].week.expect("a week");
        assert_eq!(week.ends.local(), date(7).and_hms_opt(3, 0, 0).expect("a time"));
        assert_eq!(slots.iter().map(|slot| slot.slot.day).collect::<Vec<_>>(), [date(0), date(2), date(4)]);
        assert!(slots.iter().all(|slot| slot.due.is_some_and(|due| due.minute() == 18 * 60)));
    }
}
