//! The tables for a spreadsheet.

use super::{OwnData, PlanData, clock, moment, seconds};
use crate::names::name;
use crate::spreadsheet::{some, table, text};
use exercises::alarm::ClearedAlarm;
use exercises::catalogue::ExerciseId;
use exercises::history::Mark;
use exercises::id::{ActivityId, ComplaintId, ItemId};
use exercises::plan::BodySide;
use exercises::run::{Run, TrialEnd, Work};
use exercises::summary::ItemDay;
use exercises::time::DayNumber;

pub(super) fn yes(is: bool) -> String {
    if is { "yes" } else { "no" }.to_owned()
}

fn side(leg: Option<BodySide>) -> String {
    some(leg.as_ref().map(name))
}

impl PlanData<'_> {
    fn plan(&self) -> String {
        self.followed.plan.header.id.to_string()
    }

    /// The exercise of an item, from the newest revision that has the item.
    fn exercise(&self, item: ItemId) -> String {
        let mut newest = self.revisions.values().rev().filter_map(|plan| plan.item(item));
        some(newest.next().map(|item| &item.exercise))
    }

    fn complaint(&self, id: ComplaintId) -> String {
        let mut newest = self.revisions.values().rev().flat_map(|plan| &plan.prescription.complaints);
        newest.find(|one| one.id == id).map(|one| text(&one.name)).unwrap_or_default()
    }

    fn activity(&self, id: ActivityId) -> String {
        let mut newest = self.revisions.values().rev().flat_map(|plan| &plan.prescription.activities);
        newest.find(|one| one.id == id).map(|one| text(&one.name)).unwrap_or_default()
    }
}

const RUNS: [&str; 23] = [
    "plan", "run", "item", "exercise", "rung", "day", "slot", "started", "timed", "end", "kind", "part", "side", "held_s",
    "target_s", "done", "failed", "asked", "ended_by", "surface", "eyes", "phone", "clock",
];

pub(super) fn runs(own_data: &OwnData<'_>) -> Vec<u8> {
    let lines = own_data.plans.iter().flat_map(|held| {
        let plan = held.plan();
        let history = &held.followed.history;
        let misdated = history.wrong_clock.runs.values().map(|run| (run, true));
        let all = history.runs.values().map(|run| (run, false)).chain(misdated);
        all.flat_map(move |(run, misdated)| run_lines(&plan, run, misdated))
    });
    table(RUNS, lines)
}

/// The columns from `side` on, for one hold, set or trial.
type Part = [String; 10];

/// "wrong" where the device's clock was wrong.
fn clock_cell(misdated: bool) -> String {
    if misdated { "wrong".to_owned() } else { String::new() }
}

fn run_lines(plan: &str, run: &Run, misdated: bool) -> Vec<[String; 23]> {
    let (kind, parts) = (run.dose.kind().rules().name(), parts(run));
    let day = run.slot.map_or(run.started.date(), |slot| slot.day);
    let line = |number: Option<usize>, part: Part| {
        let [side, held, target, done, failed, asked, ended, surface, eyes, phone] = part;
        [
            plan.to_owned(),
            run.id.0.to_string(),
            run.item.0.to_string(),
            run.exercise.to_string(),
            some(run.rung.as_ref()),
            day.to_string(),
            some(run.slot.map(|slot| u16::from(slot.number) + 1)),
            moment(run.started),
            yes(run.live),
            name(&run.end).to_owned(),
            kind.to_owned(),
            some(number),
            side,
            held,
            target,
            done,
            failed,
            asked,
            ended,
            surface,
            eyes,
            phone,
            clock_cell(misdated),
        ]
    };
    if parts.is_empty() {
        // A run in which nothing was done is listed too.
        return vec![line(None, Part::default())];
    }
    parts.into_iter().enumerate().map(|(at, part)| line(Some(at + 1), part)).collect()
}

/// The parts of a run by the form in which they are kept.
fn parts(run: &Run) -> Vec<Part> {
    let none = String::new;
    let amount = run.dose.part_amount();
    match &run.work {
        Work::Timed(parts) => {
            let target = if run.fits() { seconds(amount).to_string() } else { none() };
            let part = |one: &exercises::run::HoldRecord| {
                let held = seconds(one.held_ms).to_string();
                [side(one.side), held, target.clone(), none(), none(), none(), none(), none(), none(), none()]
            };
            parts.iter().map(part).collect()
        }
        Work::Counted(sets) => {
            let asked = if run.fits() { amount.to_string() } else { none() };
            let part = |one: &exercises::run::SetRecord| {
                let (done, failed) = (one.done.to_string(), one.failed.to_string());
                [side(one.side), none(), none(), done, failed, asked.clone(), none(), none(), none(), none()]
            };
            sets.iter().map(part).collect()
        }
        Work::Balance(balance) => {
            let target = if run.fits() { seconds(run.dose.part_ms()).to_string() } else { none() };
            let on = [name(&balance.surface), name(&balance.eyes), name(&balance.set_up)].map(str::to_owned);
            let part = |one: &exercises::run::Trial| {
                // A trial that was cut off has no time.
                let held = some((one.end != TrialEnd::CutOff).then(|| seconds(one.held_ms)));
                let [surface, eyes, phone] = on.clone();
                let ended = name(&one.end).to_owned();
                [side(one.leg), held, target.clone(), none(), none(), none(), ended, surface, eyes, phone]
            };
            balance.trials.iter().map(part).collect()
        }
        Work::Tally(tally) => {
            let target = if run.fits() { seconds(run.dose.part_ms()).to_string() } else { none() };
            let (held, count) = (seconds(tally.held_ms).to_string(), some(tally.count));
            vec![[none(), held, target, count, none(), none(), none(), none(), none(), none()]]
        }
    }
}

pub(super) fn answers(own_data: &OwnData<'_>) -> Vec<u8> {
    let header = ["plan", "entry", "at", "day", "kind", "about", "name", "answer", "clock"];
    let mut lines: Vec<(u32, [String; 9])> = Vec::new();
    for held in &own_data.plans {
        let history = &held.followed.history;
        let line = |n: u32, at: exercises::time::Stamp, kind: &str, about: u8, name: String, answer: String| {
            let (day, at) = (at.date().to_string(), moment(at));
            let clock = clock_cell(history.wrong_clock.mark(n).is_some());
            (n, [held.plan(), n.to_string(), at, day, kind.to_owned(), about.to_string(), name, answer, clock])
        };
        lines.extend(
            history
                .mornings
                .iter()
                .chain(&history.wrong_clock.mornings)
                .map(|one| line(one.n, one.at, "morning", one.of.0, held.complaint(one.of), one.score.to_string())),
        );
        lines.extend(
            history
                .during
                .iter()
                .chain(&history.wrong_clock.during)
                .map(|one| line(one.n, one.at, "during", one.of.0, held.exercise(one.of), one.score.to_string())),
        );
        lines.extend(
            history
                .settled
                .iter()
                .map(|one| line(one.n, one.at, "settled", one.complaint.0, held.complaint(one.complaint), yes(one.settled))),
        );
        lines.extend(
            history
                .rated
                .iter()
                .chain(&history.wrong_clock.rated)
                .map(|one| line(one.n, one.at, "activity", one.of.0, held.activity(one.of), one.score.to_string())),
        );
    }
    lines.sort_by_key(|(n, _)| *n);
    table(header, lines.into_iter().map(|(_, line)| line))
}

pub(super) fn days(own_data: &OwnData<'_>) -> Vec<u8> {
    let header = [
        "plan",
        "day",
        "item",
        "exercise",
        "revision",
        "slots",
        "done",
        "partly",
        "skipped",
        "day_off",
        "paused",
        "not_done",
        "no_such_hour",
        "each",
    ];
    table(header, own_data.plans.iter().flat_map(|held| held.days.iter().map(|day| day_line(held, day))))
}

fn day_line(held: &PlanData<'_>, day: &ItemDay) -> [String; 14] {
    let date = day.day.date(held.followed.plan.header.start);
    let item = held.revisions.get(&day.revision).and_then(|plan| plan.item(day.item));
    let of_card = || held.followed.history.taken.iter().filter(|taken| taken.revision == day.revision);
    let agreed = of_card().rev().find(|taken| taken.at.date() <= date).or_else(|| of_card().next());
    let agreed = agreed.and_then(|taken| taken.agreed.iter().find(|(id, _)| *id == day.item).map(|(_, schedule)| schedule));
    let minutes = agreed.or(item.map(|item| &item.schedule)).map(|schedule| schedule.pattern.minutes()).unwrap_or_default();
    let each = day.slots.iter().map(|(number, mark)| match minutes.get(usize::from(*number)) {
        Some(minute) => format!("{} {}", clock(*minute), said(*mark)),
        None => said(*mark),
    });
    let count = |is: fn(&Mark) -> bool| day.slots.iter().filter(|(_, mark)| is(mark)).count().to_string();
    let exercise: Option<&ExerciseId> = item.map(|item| &item.exercise);
    [
        held.plan(),
        date.to_string(),
        day.item.0.to_string(),
        some(exercise),
        day.revision.to_string(),
        day.slots.len().to_string(),
        count(|mark| *mark == Mark::Done),
        count(|mark| matches!(mark, Mark::Partly(_))),
        count(|mark| matches!(mark, Mark::Skipped(_))),
        count(|mark| matches!(mark, Mark::DayOff(_))),
        count(|mark| *mark == Mark::Paused),
        count(|mark| *mark == Mark::NotDone),
        count(|mark| *mark == Mark::NoSuchHour),
        each.collect::<Vec<_>>().join("; "),
    ]
}

fn said(mark: Mark) -> String {
    match mark {
        Mark::Done => "done".into(),
        Mark::Partly(share) => format!("partly {} of {}", share.done, share.of),
        Mark::Skipped(reason) => format!("skipped {}", name(&reason)),
        Mark::DayOff(why) => format!("day-off {}", name(&why)),
        Mark::Paused => "paused".into(),
        Mark::NotDone => "not-done".into(),
        Mark::Due => "due".into(),
        Mark::ToCome => "to-come".into(),
        Mark::NoSuchHour => "no-such-hour".into(),
    }
}

pub(super) fn alarms(own_data: &OwnData<'_>) -> Vec<u8> {
    let header = ["plan", "alarm", "entry", "at", "day", "trouble", "item", "exercise", "circumstances", "cleared", "clock"];
    let lines = own_data.plans.iter().flat_map(|held| {
        held.followed.history.alarms.iter().map(move |alarm| {
            let plan = &held.followed.plan;
            let day = DayNumber::nearest(alarm.at.date(), plan.header.start);
            let clears = |one: &ClearedAlarm| one.clears(alarm.id, alarm.trouble, day);
            [
                held.plan(),
                alarm.id.to_string(),
                alarm.entry.n.to_string(),
                moment(alarm.at),
                alarm.at.date().to_string(),
                name(&alarm.trouble).to_owned(),
                some(alarm.item.map(|item| item.0)),
                alarm.item.map(|item| held.exercise(item)).unwrap_or_default(),
                alarm.circumstances.iter().map(name).collect::<Vec<_>>().join("; "),
                yes(plan.prescription.cleared.iter().any(clears)),
                clock_cell(held.followed.history.wrong_clock.mark(alarm.entry.n).is_some()),
            ]
        })
    });
    table(header, lines)
}
