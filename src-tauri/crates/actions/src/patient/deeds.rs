//! A history from a file: each line is done as if it were done in the window at its moment.

use super::plans::{self, Carried};
use super::{answering, running, today};
use crate::clock::Moment;
use crate::{Answer, House};
use exercises::id::PlanId;
use exercises::plan::{BodySide, Side};
use exercises::run::{Counted, Doing, Held, Run, RunEnd, Trial};
use exercises::slots;
use exercises::time::Offsets;
use format::runs_file::{Deed, Did, Parts};
use wire::Failure;
use wire::patient::{Answer as Said, BeginAsk, Excusing, LeavingOut, RunSnapshot, SlotAsk, TroubleAsk};

/// Records deeds in the order of their moments. The zone of each is `place`, or its own offset where the place had another.
///
/// # Errors
/// The first line that the plan does not have room for; then nothing of the whole file is recorded.
pub fn record(house: &mut House, plan: Option<PlanId>, place: &Offsets, file: &str, deeds: &[Deed]) -> Answer<usize> {
    let plan = plans::one(house, plan)?.plan().header.id;
    let mut ordered: Vec<&Deed> = deeds.iter().collect();
    ordered.sort_by_key(|deed| deed.at.utc_ms);
    house.all_or_nothing(|house| {
        for deed in &ordered {
            let same = place.at(deed.at.utc_ms.div_euclid(1000)) == deed.at.offset_s;
            let zone = if same { place.clone() } else { Offsets::fixed(deed.at.offset_s) };
            let moment = Moment { now: deed.at, zone };
            one(house, plan, &moment, &deed.what).map_err(|failure| at_line(failure, file, deed.line))?;
        }
        Ok(ordered.len())
    })
}

/// A refusal that a line can cause is told with the line.
fn at_line(failure: Failure, file: &str, line: u32) -> Failure {
    let expected = match failure {
        Failure::NoSuchItem => "the plan has no such item, complaint or activity, or it is done in another way than this",
        Failure::NoSuchSlot => "at that moment no slot of this item is open, or it is done already",
        Failure::HeldBack(_) => "at that moment an alarm holds this item back",
        Failure::EmptyPeriod => "the days must lie between the plan's start and its review, the first before the last",
        other => return other,
    };
    Failure::NotUnderstood { file: file.to_owned(), line, expected: expected.to_owned() }
}

fn one(house: &mut House, plan: PlanId, moment: &Moment, did: &Did) -> Answer<()> {
    match did {
        Did::Opened => today::opened(house, moment),
        Did::Run { item, live: true, parts } => {
            let mut script = running::begin(house, moment, &BeginAsk { plan, item: *item, step: false })?;
            script.run.doing = doing(&script.run, script.item.side, parts)?;
            script.run.end = end(&script.run, script.item.side);
            running::checkpoint(house, moment, &RunSnapshot { plan, run: script.run }).map(drop)
        }
        Did::Run { item, live: false, .. } => {
            let slot = open_slot(&*plans::one(house, Some(plan))?, *item, moment)?;
            today::did_it(house, moment, &SlotAsk { plan, slot }).map(drop)
        }
        Did::LeftOut { item, reason } => {
            let slot = open_slot(&*plans::one(house, Some(plan))?, *item, moment)?;
            today::leave_out(house, moment, &LeavingOut { plan, slot, reason: *reason }).map(drop)
        }
        Did::Excused { from, until, why } => {
            today::excuse(house, moment, &Excusing { plan, from: *from, until: *until, why: *why }).map(drop)
        }
        Did::Pain { complaint, score } => {
            let said = Said::Pain { plan, complaint: *complaint, score: *score, after: None };
            answering::answer(house, moment, &said).map(drop)
        }
        Did::Settled { complaint, settled } => {
            let said = Said::Settled { plan, complaint: *complaint, settled: *settled };
            answering::answer(house, moment, &said).map(drop)
        }
        Did::Rated { activity, score } => {
            let said = Said::Activity { plan, activity: *activity, score: *score };
            answering::answer(house, moment, &said).map(drop)
        }
        Did::Trouble { trouble, item } => {
            answering::trouble(house, moment, &TroubleAsk { plan, trouble: *trouble, item: *item }).map(drop)
        }
    }
}

fn open_slot(one: &Carried, item: exercises::id::ItemId, moment: &Moment) -> Answer<slots::SlotRef> {
    slots::counts_for(one.plan(), item, moment.now, &moment.zone, one.followed.taken).ok_or(Failure::NoSuchSlot)
}

/// What was done, with the sides in turn: the dose of one side, then that of the other.
fn doing(run: &Run, side: Side, parts: &Parts) -> Answer<Doing> {
    let sides = side.in_turn();
    let each = usize::from(run.dose.parts().max(1));
    let side_of = |place: usize| sides.get(place / each).copied().ok_or(Failure::NoSuchItem);
    let most = run.dose.part_ms();
    match (parts, &run.doing) {
        (Parts::Held(held), Doing::Timed(_)) => {
            let parts = held.iter().enumerate();
            let parts = parts.map(|(place, ms)| Ok(Held { side: side_of(place)?, held_ms: (*ms).min(most) }));
            Ok(Doing::Timed(parts.collect::<Answer<_>>()?))
        }
        (Parts::Counted(counted), Doing::Counted(_)) => {
            let sets = counted.iter().enumerate();
            let sets =
                sets.map(|(place, (done, failed))| Ok(Counted { side: side_of(place)?, done: *done, failed: *failed }));
            Ok(Doing::Counted(sets.collect::<Answer<_>>()?))
        }
        (Parts::Trials { phone, each: trials }, Doing::Balance(balance)) => {
            let prescribed = |wanted: &BodySide| sides.contains(&Some(*wanted));
            if !trials.iter().all(|(leg, _, _)| prescribed(leg)) {
                return Err(Failure::NoSuchItem);
            }
            let trial = |(leg, ms, end): &(BodySide, u32, _)| Trial { leg: *leg, held_ms: (*ms).min(most), end: *end };
            let mut balance = balance.clone();
            balance.set_up = phone.unwrap_or(balance.set_up);
            balance.trials = trials.iter().map(trial).collect();
            Ok(Doing::Balance(balance))
        }
        _ => Err(Failure::NoSuchItem),
    }
}

/// A run that went through everything asked for is complete; any other was stopped.
fn end(run: &Run, side: Side) -> RunEnd {
    let asked = side.in_turn().len() * usize::from(run.dose.parts());
    if run.doing.count() >= asked { RunEnd::Completed } else { RunEnd::Stopped }
}
