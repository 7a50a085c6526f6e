//! Reduces a log to a summary.

mod wrong_clock;

use super::{
    AlarmOn, Corrections, DuringOn, FormerPart, ItemDay, MAX_DAYS, MorningOn, RatedOn, RunOn, RunTiming, SettledOn,
    StanceOn, Summary, SwayOn, TakenOn, TallyOn, WeekDelay, WellAgainOn,
};
use crate::catalogue::{Catalogue, Quantity};
use crate::correct::Corrected;
use crate::history::{History, Mark};
use crate::id::{AlarmId, ItemId, LogId, RunId};
use crate::log::Correction;
use crate::plan::{Item, Plan};
use crate::run::Run;
use crate::slots::{self, Slot, SlotRef};
use crate::sway::Sensed;
use crate::time::DayNumber;
use crate::time::{Offsets, Stamp, days_since_1970};
use chrono::NaiveDate;
use std::collections::{BTreeMap, BTreeSet};

/// The days that a summary covers.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Period {
    /// First day, included; days before the plan's start are left out.
    pub from: NaiveDate,
    /// Last day, included.
    pub until: NaiveDate,
}

/// What a summary is made of, apart from the log itself.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Sealing {
    /// The installation that the log belongs to.
    pub log: LogId,
    /// The days to cover.
    pub period: Period,
    /// The time at which the summary is made. Slots that are still open or to come are left out.
    pub now: Stamp,
    /// The summary's number within the log, from 1.
    pub counter: u32,
    /// A note that the person chose to add.
    pub note: Option<String>,
}

/// Reduces `history` to what the clinician needs; `None` if the period contains no day of the plan, or if there is no
/// revision.
///
/// `revisions` holds all revisions of the plan that were taken, by number. Of a period longer than [`MAX_DAYS`] days the last
/// days are kept.
pub fn reduce(
    history: &History,
    revisions: &BTreeMap<u16, Plan>,
    catalogue: &Catalogue,
    zone: &Offsets,
    sealing: Sealing,
) -> Option<Summary> {
    let Sealing { log, period, now, counter, note } = sealing;
    let plan = revisions.values().next_back()?;
    let days = Days::from(plan.header.start);
    let until = days.number(period.until.min(now.date()))?;
    let from = days.number(period.from.max(plan.header.start))?.max(until.minus(MAX_DAYS - 1).unwrap_or_default());
    if from > until {
        return None;
    }
    let covers = |at: Stamp| days.of(at).filter(|day| (from..=until).contains(day));
    // What is said before three o'clock belongs to the day before, as the sessions do.
    let own_day = |at: Stamp| days.own(at).filter(|day| (from..=until).contains(day));
    let (item_days, counted) = item_days(history, revisions, catalogue, (from, until), &days, now, zone);
    Some(Summary {
        plan: plan.header.id,
        log,
        former: (history.former.iter())
            .map(|part| FormerPart {
                log: part.log,
                entries: part.entries,
                runs: part.runs,
                until: days.nearest(part.since.unwrap_or(now)),
            })
            .collect(),
        counter,
        from,
        until,
        taken: taken(history, &days, until),
        seen: history.seen.range(days.date(from)..=days.date(until)).filter_map(|day| days.number(*day)).collect(),
        days: item_days,
        runs: runs(history, revisions, &counted, (from, until), &days),
        mornings: (history.mornings.iter())
            .filter_map(|rating| {
                Some(MorningOn { n: rating.n, day: own_day(rating.at)?, complaint: rating.of, score: rating.score })
            })
            .collect(),
        during: (history.during.iter())
            .filter_map(|rating| {
                Some(DuringOn { n: rating.n, day: own_day(rating.at)?, item: rating.of, score: rating.score })
            })
            .collect(),
        settled: (history.settled.iter())
            .filter_map(|answer| {
                let day = covers(answer.at)?;
                Some(SettledOn { n: answer.n, day, complaint: answer.complaint, settled: answer.settled })
            })
            .collect(),
        well_again: (history.well_again.iter())
            .map(|(n, at)| WellAgainOn { n: *n, day: days.nearest(history.placed(*n, *at)) })
            .collect(),
        rated: (history.rated.iter())
            .filter_map(|rating| {
                Some(RatedOn { n: rating.n, day: covers(rating.at)?, activity: rating.of, score: rating.score })
            })
            .collect(),
        wrong_clock: wrong_clock::recorded(history, revisions, &days),
        alarms: alarms(history, plan, (from, until), &days),
        delays: delays(history, (from, until), &days),
        note,
        corrections: corrections(&history.corrected),
    })
}

/// All corrections of the log, not only those within the period, because summaries sent earlier may contain the mistakes.
fn corrections(corrected: &Corrected) -> Corrections {
    let answers = |never: bool| {
        let all = corrected.answers.iter().filter(move |(_, to)| (**to == Correction::Never) == never);
        all.map(|(n, _)| *n).collect()
    };
    Corrections {
        runs: corrected.runs.clone(),
        gone: answers(true),
        changed: answers(false),
        days: u16::try_from(corrected.days.len()).unwrap_or(u16::MAX),
        alarms: corrected.alarms.clone(),
    }
}

/// Counts days from the plan's start.
struct Days {
    start: NaiveDate,
    first: i64,
}

impl Days {
    fn from(start: NaiveDate) -> Days {
        Days { start, first: days_since_1970(start) }
    }

    fn number(&self, day: NaiveDate) -> Option<DayNumber> {
        DayNumber::of(day, self.start)
    }

    fn of(&self, at: Stamp) -> Option<DayNumber> {
        u16::try_from(at.day() - self.first).ok().map(DayNumber)
    }

    /// Same as [`Days::of`], but limited to the numbers that exist: day 0 for moments before the plan, and the last number
    /// for moments recorded by a clock that was centuries ahead.
    fn nearest(&self, at: Stamp) -> DayNumber {
        DayNumber((at.day() - self.first).clamp(0, u16::MAX.into()) as u16)
    }

    /// The person's day, which runs from 03:00 to 03:00.
    fn own(&self, at: Stamp) -> Option<DayNumber> {
        u16::try_from(slots::own_day(at) - self.first).ok().map(DayNumber)
    }

    fn date(&self, number: DayNumber) -> NaiveDate {
        number.date(self.start)
    }
}

fn taken(history: &History, days: &Days, until: DayNumber) -> Vec<TakenOn> {
    let all = history.taken.iter();
    let on =
        all.map(|taken| TakenOn { day: days.nearest(taken.at), revision: taken.revision, agreed: taken.agreed.clone() });
    on.filter(|taken| taken.day <= until).collect()
}

/// The alarms of the period, and all others that the newest card does not clear. An alarm that pauses the patient's exercises
/// must reach the clinician, because otherwise no card could clear it.
fn alarms(history: &History, plan: &Plan, (from, until): (DayNumber, DayNumber), days: &Days) -> Vec<AlarmOn> {
    let uncleared: BTreeSet<AlarmId> = history.uncleared(plan).map(|(_, alarm)| alarm.id).collect();
    let all = history.alarms.iter().filter_map(|alarm| {
        let day = days.nearest(alarm.at);
        let goes = (from..=until).contains(&day) || uncleared.contains(&alarm.id);
        goes.then(|| AlarmOn {
            n: alarm.entry.n,
            id: alarm.id,
            day,
            trouble: alarm.trouble,
            item: alarm.item,
            circumstances: alarm.circumstances.clone(),
        })
    });
    all.collect()
}

/// A stretch of time during which one card was in force.
struct Stretch {
    plan: Plan,
    taken: Stamp,
    /// When the next card was taken; `None` for the last card.
    ends: Option<Stamp>,
}

impl Stretch {
    /// The days between `from` and `until` that may have slots within the stretch. Days are added at both ends, because a
    /// window can go on into the next day, and the wall clocks of two places differ by up to 26 hours.
    fn may_hold(&self, (from, until): (DayNumber, DayNumber), days: &Days) -> impl Iterator<Item = DayNumber> {
        let first = days.nearest(self.taken.plus_ms(-3 * 86_400_000));
        let last = self.ends.map_or(until, |ends| days.nearest(ends.plus_ms(2 * 86_400_000)));
        from.max(first).through(until.min(last))
    }
}

fn stretches(history: &History, revisions: &BTreeMap<u16, Plan>) -> Vec<Stretch> {
    let mut all: Vec<Stretch> = Vec::new();
    for taken in &history.taken {
        let Some(plan) = revisions.get(&taken.revision) else { continue };
        if let Some(last) = all.last_mut() {
            last.ends = Some(taken.at);
        }
        all.push(Stretch { plan: plan.with_schedules(&taken.agreed), taken: taken.at, ends: None });
    }
    all
}

/// A slot that is over: its day, item and revision, then its number and how it went.
type Closed = ((DayNumber, ItemId, u16), (u8, Mark));

/// The slot that each run counts for, and when it was done compared with it.
type CountedRuns = BTreeMap<RunId, (SlotRef, RunTiming)>;

fn item_days(
    history: &History,
    revisions: &BTreeMap<u16, Plan>,
    catalogue: &Catalogue,
    period: (DayNumber, DayNumber),
    days: &Days,
    now: Stamp,
    zone: &Offsets,
) -> (Vec<ItemDay>, CountedRuns) {
    let mut found: Vec<Closed> = Vec::new();
    let mut counted = CountedRuns::new();
    for stretch in stretches(history, revisions) {
        for day in stretch.may_hold(period, days) {
            let date = days.date(day);
            for slot in slots::of_day(&stretch.plan, date, zone, stretch.taken) {
                let Some(item) = stretch.plan.item(slot.slot.item) else { continue };
                counted.extend(history.filling(&slot, item).iter().map(|run| (run.id, (slot.slot, timing(run, &slot)))));
                if let Some(mark) = closed_mark(history, &slot, item, &stretch, catalogue, now) {
                    found.push(((day, item.id, stretch.plan.header.revision), (slot.slot.number, mark)));
                }
            }
        }
    }
    found.sort_by_key(|(item_day, _)| *item_day);
    let item_day = |slots: &[Closed]| {
        let (day, item, revision) = slots[0].0;
        ItemDay { day, item, revision, slots: slots.iter().map(|(_, slot)| *slot).collect() }
    };
    (found.chunk_by(|one, other| one.0 == other.0).map(item_day).collect(), counted)
}

/// When `run` was done, compared with the slot that it counts for. One that was written in afterwards has the slot's own time.
fn timing(run: &Run, slot: &Slot) -> RunTiming {
    if !slot.is_on_own_day_of(run.started) && slot.at_set_time {
        RunTiming::Moved
    } else if slot.late_at(run.started) {
        RunTiming::Late
    } else {
        RunTiming::InTime
    }
}

/// How a slot went, if it belongs to the stretch and is over: it has closed, or was done or skipped before it closed.
fn closed_mark(
    history: &History,
    slot: &Slot,
    item: &Item,
    stretch: &Stretch,
    catalogue: &Catalogue,
    now: Stamp,
) -> Option<Mark> {
    // A time that the clocks skip has no instant. On the day of a new card it is counted for neither card.
    let after = |ends: Stamp| slot.due.map_or(slot.slot.day >= ends.date(), |due| due.utc_ms >= ends.utc_ms);
    if stretch.ends.is_some_and(after) {
        return None;
    }
    match history.mark(slot, item, now) {
        Mark::ToCome | Mark::Due => None,
        Mark::NotDone if history.was_paused(slot, item, &stretch.plan, catalogue) => Some(Mark::Paused),
        mark => Some(mark),
    }
}

fn runs(
    history: &History,
    revisions: &BTreeMap<u16, Plan>,
    counted: &CountedRuns,
    (from, until): (DayNumber, DayNumber),
    days: &Days,
) -> Vec<RunOn> {
    let within = history.runs.values().filter_map(|run| {
        let counts_for = counted.get(&run.id).copied();
        let (slot, timing) = counts_for.map_or((run.slot, RunTiming::InTime), |(slot, timing)| (Some(slot), timing));
        // Where the patient chooses the days, the clinic counts the sessions of all devices by the days on which they were done.
        let slot = slot.filter(|_| counts_for.is_some() || !chose_day(history, revisions, run));
        let own = slot.filter(|_| !chose_day(history, revisions, run));
        let day = own.map_or_else(|| days.own(run.started), |slot| days.number(slot.day));
        let day = day.filter(|day| (from..=until).contains(day))?;
        Some(RunOn { slot: slot.map(|slot| slot.number), timing, ..extra(history, revisions, run, day) })
    });
    within.collect()
}

/// The item of a run, by the card in force when it began.
fn item_of<'a>(history: &History, revisions: &'a BTreeMap<u16, Plan>, run: &Run) -> Option<&'a Item> {
    let in_force = history.in_force(run.started).and_then(|taken| revisions.get(&taken.revision));
    in_force.or_else(|| revisions.values().next_back()).and_then(|plan| plan.item(run.item))
}

/// Whether the patient chose the day of a run.
fn chose_day(history: &History, revisions: &BTreeMap<u16, Plan>, run: &Run) -> bool {
    item_of(history, revisions, run).is_some_and(|item| item.schedule.days.are_chosen())
}

/// A run on `day`, as one that counts for no slot.
fn extra(history: &History, revisions: &BTreeMap<u16, Plan>, run: &Run, day: DayNumber) -> RunOn {
    let item = item_of(history, revisions, run);
    let sides = item.map_or(1, |item| item.side.in_turn().len() as u32);
    RunOn {
        run: run.id,
        day,
        item: run.item,
        rung: run.rung.clone(),
        slot: None,
        hour: (run.started.minute() / 60) as u8,
        live: run.live,
        timing: RunTiming::InTime,
        end: run.end,
        dose: run.share(sides),
        parts: run.parts(sides),
        stance: stance(history, run),
        tally: tally(run),
    }
}

fn tally(run: &Run) -> Option<TallyOn> {
    let seconds = u16::try_from(run.dose.value(Quantity::CountSeconds)?).ok()?;
    let (count, whole) = run.result()?;
    Some(TallyOn { seconds, count, whole })
}

fn stance(history: &History, run: &Run) -> Option<StanceOn> {
    let balance = run.work.balance()?;
    let target_s = u16::try_from(run.dose.value(Quantity::TargetSeconds)?).ok()?;
    Some(StanceOn {
        set_up: balance.set_up,
        surface: balance.surface,
        eyes: balance.eyes,
        target_s,
        trials: balance.trials.clone(),
        sway: history.sensed.range((run.id, 0)..=(run.id, u16::MAX)).filter_map(sway).collect(),
    })
}

fn sway(((_, place), sensed): (&(RunId, u16), &Sensed)) -> Option<SwayOn> {
    Some(SwayOn {
        trial: u8::try_from(*place).ok()?,
        kind: sensed.kind,
        touch_downs: sensed.touch_downs,
        figures: sensed.figures,
        gap: sensed.gap,
        to_confirm: sensed.to_be_confirmed(),
    })
}

/// Quartiles (nearest rank) of the seconds from a slot's first reminder to the run done for it, by week.
fn delays(history: &History, (from, until): (DayNumber, DayNumber), days: &Days) -> Vec<WeekDelay> {
    let mut weeks: BTreeMap<u16, Vec<u16>> = BTreeMap::new();
    for run in history.runs.values().filter(|run| run.live) {
        let Some(slot) = run.slot else { continue };
        let Some(day) = days.number(slot.day).filter(|day| (from..=until).contains(day)) else { continue };
        let Some(reminded) = history.reminded.get(&slot) else { continue };
        if let Ok(delay) = u16::try_from(run.started.seconds_since(*reminded)) {
            weeks.entry(day.0 / 7).or_default().push(delay);
        }
    }
    let rank = |sorted: &[u16], quarter: usize| sorted[(sorted.len() * quarter).div_ceil(4).max(1) - 1];
    let all = weeks.into_iter().map(|(week, mut delays)| {
        delays.sort_unstable();
        let (lower_s, median_s, upper_s) = (rank(&delays, 1), rank(&delays, 2), rank(&delays, 3));
        WeekDelay { week, runs: delays.len() as u16, lower_s, median_s, upper_s }
    });
    all.collect()
}

#[cfg(test)]
mod tests;
