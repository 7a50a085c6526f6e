//! Composes the Now page.

use super::progress::count;
use super::{Followed, Head, PauseEnd, Today, TodayAlarm, TodayClinic, TodayItem, TodayKnot, TodayWeek, TryFirst};
use crate::alarm::{Circumstance, Trouble};
use crate::catalogue::Catalogue;
use crate::history::Mark;
use crate::id::{ItemId, PlanId};
use crate::plan::Item;
use crate::questions;
use crate::slots::{Slot, own_date};
use crate::suspension;
use crate::time::{Offsets, Stamp};
use chrono::NaiveDate;

/// Number of days for which the clinician's instructions are shown, including the day of the visit.
const AFTERCARE_DAYS: i64 = 2;
/// How far ahead the next slot is looked for, in days.
const LOOK_AHEAD_DAYS: u64 = 28;

/// The Now page of all plans followed on this device at `now`. Each plan has its own catalogue: two may have the same exercise of a
/// clinic's own in two revisions.
pub fn compose(plans: &[(&Followed, &Catalogue)], now: Stamp, zone: &Offsets) -> Today {
    let followed: Vec<&Followed> = plans.iter().map(|(followed, _)| *followed).collect();
    let followed = followed.as_slice();
    let several = followed.iter().any(|one| one.plan.header.clinic != followed[0].plan.header.clinic);
    let items: Vec<TodayItem> =
        plans.iter().flat_map(|(followed, catalogue)| items_of(followed, catalogue, several, now)).collect();
    let mut string: Vec<(Slot, TodayKnot)> = followed.iter().flat_map(|one| knots(one, &items, now, zone)).collect();
    string.sort_by_key(|(slot, _)| (slot.minute, slot.slot.item));
    let (of, head) = match stopped(followed, &items, now) {
        Some(head) => (None, head),
        None => spoken_of(&string, now)
            .map_or_else(|| (None, quiet(followed, &string, now, zone)), |(of, head)| (Some(of), head)),
    };
    let idle = matches!(head, Head::Next { .. } | Head::DoneForToday { .. } | Head::DayOff { chosen: false, .. });
    let try_first = followed.iter().filter(|_| idle).find_map(|one| try_first(one, &items, now, zone));
    let item = of.and_then(|(plan, id)| items.iter().find(|item| (item.plan, item.item.id) == (plan, id)).cloned());
    // While an alarm pauses everything, no questions are asked.
    let asks = !matches!(head, Head::Stopped(_));
    let in_force = followed.iter().filter(|one| asks && now.date() <= one.plan.prescription.review);
    let due = matches!(head, Head::Due { .. });
    let at_top = of.filter(|_| due);
    let weeks = match head {
        Head::Stopped(_) | Head::NoPlan | Head::Over { .. } => Vec::new(),
        _ => followed.iter().flat_map(|one| weeks_of(one, &items, at_top, now, zone)).collect(),
    };
    Today {
        now,
        head,
        item,
        weeks,
        items,
        string: string.into_iter().map(|(_, knot)| knot).collect(),
        questions: in_force.flat_map(|one| questions::on_opening(&one.plan, &one.history, now, zone, one.taken)).collect(),
        aftercare: each_once(followed.iter().flat_map(|one| aftercare(one, now))),
        alarms: followed.iter().flat_map(|one| alarms(one, now)).collect(),
        clinics: followed.iter().map(|one| clinic(one)).collect(),
        try_first,
    }
}

/// The page of plans with one catalogue.
#[cfg(test)]
pub(crate) fn composed<F: std::borrow::Borrow<Followed>>(
    followed: &[F],
    catalogue: &Catalogue,
    now: Stamp,
    zone: &Offsets,
) -> Today {
    let plans: Vec<_> = followed.iter().map(|one| (one.borrow(), catalogue)).collect();
    compose(&plans, now, zone)
}

fn items_of(one: &Followed, catalogue: &Catalogue, several: bool, now: Stamp) -> Vec<TodayItem> {
    let suspended = one.history.suspended(&one.plan, now);
    let all = one.plan.prescription.items.iter().filter_map(|item| {
        let exercise = catalogue.get(&item.exercise)?.clone();
        let paused = suspension::blocking(&suspended, item, &one.plan, catalogue).map(|alarm| alarm.trouble);
        let hand_on_support = one.hand_on_support(item, &exercise);
        let today = own_date(now);
        let item = item.on(today, one.plan.header.issued).into_owned();
        let takes_s = item.dose.total_s(item.side.sidedness());
        let begins_today = item.phase.first == Some(today) && own_date(one.taken) < today;
        let clinic = several.then(|| one.plan.header.clinic.clone());
        Some(TodayItem {
            plan: one.plan.header.id,
            clinic,
            exercise,
            hand_on_support,
            paused,
            in_phase: item.phase.contains(today),
            is_new: begins_today && one.history.last_run(item.id).is_none(),
            takes_s,
            step: None,
            start: one.plan.header.start,
            item,
        })
    });
    all.collect()
}

/// The first exercise of a plan that is not paused, if nothing was done since its card was taken.
fn try_first(one: &Followed, items: &[TodayItem], now: Stamp, zone: &Offsets) -> Option<TryFirst> {
    let id = one.plan.header.id;
    let untouched = one.history.runs.values().all(|run| run.started.utc_ms < one.taken.utc_ms || !run.tried());
    let in_force = now.date() <= one.plan.prescription.review;
    let first = items.iter().find(|item| item.plan == id && item.can_be_done())?;
    let extra = one.history.slot_for(&one.plan, first.item.id, now, zone, one.taken).is_none();
    (untouched && in_force).then_some(TryFirst { plan: id, item: first.item.id, extra })
}

/// The items of a plan of which the person chooses the days, and that are not paused.
fn weeks_of<'a>(
    one: &'a Followed,
    items: &'a [TodayItem],
    at_top: Option<Of>,
    now: Stamp,
    zone: &'a Offsets,
) -> impl Iterator<Item = TodayWeek> + 'a {
    let plan = one.plan.header.id;
    let own = items.iter().filter(move |item| item.plan == plan && item.can_be_done());
    own.filter_map(move |item| {
        let so_far = one.history.week_so_far(&one.plan, &item.item, now, zone)?;
        let offered = so_far.counts_today && at_top != Some((plan, item.item.id));
        Some(TodayWeek { plan, item: item.item.id, so_far, offered })
    })
}

fn alarms(one: &Followed, now: Stamp) -> Vec<TodayAlarm> {
    let now_in_force = one.history.suspended(&one.plan, now);
    let lasting = one.history.suspends_until_card(&one.plan);
    let all = one.history.uncleared(&one.plan).map(|(place, alarm)| TodayAlarm {
        plan: one.plan.header.id,
        trouble: alarm.trouble,
        item: alarm.item,
        at: one.history.placed(alarm.entry.n, alarm.at),
        wrong_clock: one.history.wrong_clock.mark(alarm.entry.n).is_some(),
        circumstances: alarm.circumstances.clone(),
        suspends: now_in_force.iter().find(|in_force| in_force.place == place).map(|in_force| in_force.suspends),
        ends: match () {
            () if alarm.trouble == Trouble::Unwell && !alarm.circumstances.contains(&Circumstance::SweatsOrWeightLoss) => {
                PauseEnd::WhenWell
            }
            () if lasting.iter().any(|in_force| in_force.place == place) => PauseEnd::Card,
            () => PauseEnd::Today,
        },
    });
    all.collect()
}

fn clinic(one: &Followed) -> TodayClinic {
    let header = &one.plan.header;
    let visit = one.plan.prescription.review;
    TodayClinic { plan: header.id, name: header.clinic.clone(), phone: header.phone.clone(), visit }
}

fn aftercare(one: &Followed, now: Stamp) -> Vec<crate::plan::Aftercare> {
    let since = now.date().signed_duration_since(one.plan.header.issued).num_days();
    if (0..AFTERCARE_DAYS).contains(&since) { one.plan.prescription.aftercare.clone() } else { Vec::new() }
}

/// Two clinics may give the same instruction.
fn each_once(lines: impl Iterator<Item = crate::plan::Aftercare>) -> Vec<crate::plan::Aftercare> {
    lines.fold(Vec::new(), |mut all, line| {
        if !all.contains(&line) {
            all.push(line);
        }
        all
    })
}

/// Today's slots, and yesterday's slots whose windows reach over midnight and are not over yet.
fn knots(one: &Followed, items: &[TodayItem], now: Stamp, zone: &Offsets) -> Vec<(Slot, TodayKnot)> {
    let today = now.date();
    let still_open = |slot: &Slot| slot.closes.is_some_and(|closes| closes.utc_ms > now.utc_ms);
    let yesterday = today.pred_opt().map(|day| one.slots_on(day, zone)).unwrap_or_default();
    let over_midnight = yesterday.into_iter().filter(still_open);
    let all = over_midnight.chain(one.slots_on(today, zone));
    all.filter_map(|slot| {
        let item: &Item = one.plan.item(slot.slot.item)?;
        let paused = items.iter().any(|i| i.plan == one.plan.header.id && i.item.id == item.id && i.paused.is_some());
        let mark = one.history.mark(&slot, item, now);
        let asks = matches!(mark, Mark::Due | Mark::Partly(_)) && slot.open_at(now) || mark == Mark::ToCome;
        let put_off = one.history.put_off.get(&slot.slot).copied().filter(|until| asks && until.utc_ms > now.utc_ms);
        let knot = TodayKnot { plan: one.plan.header.id, slot: slot.slot, minute: slot.minute, mark, paused, put_off };
        Some((slot, knot))
    })
    .collect()
}

/// No plan, everything paused (shown with the gravest complaint), or over.
fn stopped(followed: &[&Followed], items: &[TodayItem], now: Stamp) -> Option<Head> {
    let Some(latest) = followed.iter().map(|one| one.plan.prescription.review).max() else { return Some(Head::NoPlan) };
    let mut open = items.iter().filter(|item| item.in_phase);
    let gravest = open.clone().filter_map(|item| item.paused).min_by_key(|trouble| trouble.rank());
    match gravest.filter(|_| open.all(|item| item.paused.is_some())) {
        Some(trouble) => Some(Head::Stopped(trouble)),
        None => (now.date() > latest).then_some(Head::Over { review: latest }),
    }
}

/// The item that the head is about, by its plan and its number there: two plans may use the same number.
type Of = (PlanId, ItemId);

/// The slot that is due, otherwise the next one of today.
fn spoken_of(string: &[(Slot, TodayKnot)], now: Stamp) -> Option<(Of, Head)> {
    due(string, now).or_else(|| next_today(string))
}

/// Nothing is due, and nothing else comes today.
fn quiet(followed: &[&Followed], string: &[(Slot, TodayKnot)], now: Stamp, zone: &Offsets) -> Head {
    let next = next_day(followed, now, zone);
    let counted: Vec<Mark> = string.iter().map(|(_, knot)| knot.mark).collect();
    let chosen = counted.iter().any(|mark| matches!(mark, Mark::DayOff(_)));
    if counted.iter().all(|mark| matches!(mark, Mark::DayOff(_) | Mark::NoSuchHour)) {
        return Head::DayOff { chosen, next };
    }
    let (done, of) = count(counted.iter().copied());
    Head::DoneForToday { done, of, next }
}

/// The slot to show: the earliest that is open and not yet done, otherwise one that opens within ten minutes. A slot that was put
/// off comes after one that was not.
fn due(string: &[(Slot, TodayKnot)], now: Stamp) -> Option<(Of, Head)> {
    let speaks = |slot: &Slot, knot: &TodayKnot| {
        !knot.paused
            && (knot.mark == Mark::Due
                || matches!(knot.mark, Mark::Partly(_)) && slot.open_at(now)
                || slot.due_soon_at(now) && knot.mark == Mark::ToCome)
    };
    let candidates = string.iter().filter(|(slot, knot)| speaks(slot, knot));
    let (slot, knot) = candidates.min_by_key(|(slot, knot)| {
        (
            matches!(knot.mark, Mark::Partly(_)),
            knot.put_off.is_some(),
            !slot.announced_at(now),
            slot.due.map(|due| due.utc_ms),
        )
    })?;
    let head = Head::Due { slot: slot.slot, due: slot.due?, closes: slot.closes?, put_off: knot.put_off };
    Some(((knot.plan, slot.slot.item), head))
}

fn next_today(string: &[(Slot, TodayKnot)]) -> Option<(Of, Head)> {
    let ahead = string.iter().filter(|(_, knot)| knot.mark == Mark::ToCome && !knot.paused);
    let (slot, knot) = ahead.min_by_key(|(slot, _)| slot.due.map(|due| due.utc_ms))?;
    Some(((knot.plan, slot.slot.item), Head::Next { slot: slot.slot, due: slot.due? }))
}

fn next_day(followed: &[&Followed], now: Stamp, zone: &Offsets) -> Option<Stamp> {
    let days = now.date().iter_days().skip(1).take(LOOK_AHEAD_DAYS as usize);
    days.filter_map(|day| followed.iter().filter_map(|one| first_due(one, day, zone)).min()).next()
}

fn first_due(one: &Followed, day: NaiveDate, zone: &Offsets) -> Option<Stamp> {
    if one.history.day_off(day).is_some() {
        return None;
    }
    // Where the person chooses the days, a slot may have been done before it is due.
    let done = |slot: &Slot| {
        let item = slot.week.and_then(|_| one.plan.item(slot.slot.item));
        item.is_some_and(|item| slot.due.is_some_and(|due| one.history.mark(slot, item, due) == Mark::Done))
    };
    one.slots_on(day, zone).iter().filter(|slot| !done(slot)).filter_map(|slot| slot.due).min()
}
