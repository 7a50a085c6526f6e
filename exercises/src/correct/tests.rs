//! A corrected log is read as if the mistakes had never been made.

use super::*;
use crate::alarm::Trouble;
use crate::history::{History, Mark};
use crate::id::{ActivityId, ComplaintId};
use crate::log::{Barrier, DayOffReason};
use crate::plan::BodySide;
use crate::review::samples::{BACK, HOLD, PHONE, PLAN, plan, start};
use crate::run::{HoldRecord, Run, RunEnd, Work};
use crate::score::Score;
use crate::slots::{self, Slot, SlotRef};
use crate::sway::{Sensed, SourceKind};
use crate::time::{Offsets, Stamp};
use proptest::prelude::*;

fn zone() -> Offsets {
    Offsets::fixed(3600)
}

fn at(day: i64, minute: i64) -> Stamp {
    let midnight = (start() + chrono::Duration::days(day)).and_time(chrono::NaiveTime::MIN).and_utc();
    zone().stamp(midnight.timestamp_millis() + (minute * 60 - 3600) * 1000)
}

fn slot(day: i64, number: u8) -> Slot {
    slots::of_item(&plan().prescription.items[0], start() + chrono::Duration::days(day), &zone())[usize::from(number)]
}

fn run(n: u32, begun: Stamp, slot: Option<SlotRef>, holds: usize) -> LogEvent {
    let item = plan().prescription.items[0].clone();
    LogEvent::Run(Run {
        id: RunId(n),
        item: HOLD,
        exercise: item.exercise,
        rung: item.rung,
        dose: item.dose,
        slot,
        started: begun,
        live: true,
        end: RunEnd::Completed,
        paused_ms: 0,
        interruptions: Vec::new(),
        work: Work::Timed(vec![HoldRecord { side: Some(BodySide::Left), held_ms: 10_000 }; holds]),
    })
}

fn log(events: Vec<LogEvent>) -> Log {
    let entry = |(n, event): (u32, LogEvent)| Entry { n, plan: PLAN, at: at(1, 600 + i64::from(n)), event };
    Log { id: PHONE, former: Vec::new(), entries: (1..).zip(events).map(entry).collect() }
}

fn fold(events: Vec<LogEvent>) -> History {
    History::fold(&log(events), PLAN)
}

fn pain(score: u8) -> LogEvent {
    LogEvent::Pain { complaint: BACK, score: Score::at_most_ten(score), after: None }
}

fn to(entry: u32, to: Correction) -> LogEvent {
    LogEvent::Corrected { entry, to }
}

fn scores(history: &History) -> Vec<(u32, u8)> {
    history.mornings.iter().map(|rating| (rating.n, rating.score.points())).collect()
}

#[test]
fn the_last_correction_wins_and_may_take_the_others_back() {
    let mut events = vec![pain(8)];
    for (correction, expected) in [
        (Correction::Score(Score::at_most_ten(3)), vec![(1, 3)]),
        (Correction::Never, vec![]),
        (Correction::Score(Score::at_most_ten(2)), vec![(1, 2)]),
        (Correction::Stands, vec![(1, 8)]),
    ] {
        events.push(to(1, correction));
        assert_eq!(scores(&fold(events.clone())), expected, "{correction:?}");
    }
}

#[test]
fn a_correction_that_does_not_fit_is_ignored() {
    let first = vec![pain(8), LogEvent::Opened, run(1, at(1, 600), None, 3), LogEvent::Sealed { counter: 4 }];
    let untouched = fold(first.clone());
    for (n, correction, why) in [
        (1, Correction::Settled(true), "no answer about a morning"),
        (1, Correction::Reason(Barrier::Pain), "no slot left out"),
        (2, Correction::Never, "an opening is no mistake"),
        (3, Correction::Score(Score::at_most_ten(1)), "a run has no score"),
        (4, Correction::Never, "a number once used stays used"),
        (5, Correction::Never, "itself"),
        (6, Correction::Never, "something to come"),
        (0, Correction::Never, "nothing"),
    ] {
        let history = fold([first.clone(), vec![to(n, correction), pain(1)]].concat());
        assert_eq!(history.corrected, Corrected::default(), "{why}");
        let with = fold([first.clone(), vec![LogEvent::Opened, pain(1)]].concat());
        assert_eq!(history, with, "{why}");
        assert_eq!(history.mornings[0], untouched.mornings[0], "{why}");
    }
    let mut other = log([first, vec![to(1, Correction::Never)]].concat());
    other.entries[4].plan = PlanId([9; 8]);
    assert_eq!(scores(&History::fold(&other, PLAN)), [(1, 8)], "a correction of another plan's log");
}

#[test]
fn a_run_that_did_not_happen_leaves_its_slot_and_its_number() {
    let named = slot(1, 0);
    let begun = at(1, 9 * 60 + 5);
    let item = plan().prescription.items[0].clone();
    let done = vec![run(1, begun, Some(named.slot), 1), run(1, begun, Some(named.slot), 3)];
    assert_eq!(fold(done.clone()).mark(&named, &item, at(2, 0)), Mark::Done);
    for snapshot in [1, 2] {
        let history = fold([done.clone(), vec![to(snapshot, Correction::Never)]].concat());
        assert_eq!(history.mark(&named, &item, at(2, 0)), Mark::NotDone, "whichever snapshot is named");
        assert_eq!(history.next_run(), RunId(2), "its number is not given again");
    }
    let back = [done, vec![to(1, Correction::Never), to(2, Correction::Stands)]].concat();
    assert_eq!(fold(back).mark(&named, &item, at(2, 0)), Mark::Done, "of one run the last correction counts");
}

#[test]
fn an_alarm_stays_and_its_mistake_is_noted() {
    let trouble = LogEvent::Trouble { trouble: Trouble::Nerve, item: None, id: None, circumstances: Default::default() };
    let history = fold(vec![trouble.clone(), to(1, Correction::Never)]);
    assert_eq!(history.alarms, fold(vec![trouble.clone()]).alarms);
    assert_eq!(history.corrected.alarms, [1].into());
    let (plan, catalogue) = (plan(), crate::review::samples::catalogue());
    assert!(history.was_paused(&slot(1, 2), &plan.prescription.items[0], &plan, &catalogue), "only a card lifts it");
    let taken_back = fold(vec![trouble, to(1, Correction::Never), to(1, Correction::Stands)]);
    assert!(taken_back.corrected.alarms.is_empty());
}

#[test]
fn the_list_shows_what_was_said_and_what_counts() {
    let named = slot(1, 0).slot;
    let events = vec![
        LogEvent::Opened,
        run(1, at(1, 545), Some(named), 1),
        run(1, at(1, 545), Some(named), 3),
        LogEvent::Pain { complaint: BACK, score: Score::at_most_ten(8), after: Some(RunId(1)) },
        LogEvent::Skipped { slot: named, reason: Barrier::NoTime },
        LogEvent::Trouble { trouble: Trouble::Other, item: Some(HOLD), id: None, circumstances: Default::default() },
        to(4, Correction::Score(Score::at_most_ten(2))),
        to(5, Correction::Never),
        to(6, Correction::Never),
    ];
    let listed = list(&log(events), &plan(), start(), |entry| (None, entry.at));
    assert_eq!(listed.iter().map(|line| line.n).collect::<Vec<_>>(), [6, 5, 4, 3], "newest first, the run once");
    let trouble = EntryContent::Trouble { trouble: Trouble::Other, item: Some(HOLD) };
    assert_eq!((listed[0].said, listed[0].correction, listed[0].now), (trouble, Some(Correction::Never), Some(trouble)));
    assert_eq!((listed[1].said, listed[1].now), (EntryContent::Skipped { slot: named, reason: Barrier::NoTime }, None));
    let rated = |score| EntryContent::Pain { complaint: BACK, score, after: Some(HOLD) };
    assert_eq!((listed[2].said, listed[2].now), (rated(Score::at_most_ten(8)), Some(rated(Score::at_most_ten(2)))));
    let EntryContent::Run { parts, .. } = listed[3].said else { panic!("a run: {:?}", listed[3]) };
    assert_eq!((parts.done, listed[3].correction), (3, None), "its last snapshot");
    let later = list(&log(vec![pain(1)]), &plan(), start() + chrono::Duration::days(2), |entry| (None, entry.at));
    assert!(later.is_empty(), "only from that day on");
}

/// A mistaken answer, and the corrections made to it, each with the number of steps that pass before it.
#[derive(Debug, Clone)]
struct Mistake {
    said: u8,
    value: u8,
    fixes: Vec<(usize, u8, u8)>,
}

fn mistakes() -> impl Strategy<Value = Vec<Mistake>> {
    let fixes = prop::collection::vec((0..6_usize, 0..3_u8, 0..=10_u8), 0..4);
    let one = (0..8_u8, 0..=10_u8, fixes).prop_map(|(said, value, fixes)| Mistake { said, value, fixes });
    prop::collection::vec(one, 1..30)
}

/// The entry made at a step, of one of the kinds that can be mistaken, with a value of its own.
fn says(kind: u8, value: u8, step: usize) -> LogEvent {
    let day = start() + chrono::Duration::days(i64::from(value % 4));
    let n = step as u32 + 1;
    match kind {
        0 => LogEvent::Pain {
            complaint: ComplaintId(value % 2),
            score: Score::at_most_ten(value),
            after: (value > 5).then_some(RunId(n)),
        },
        1 => LogEvent::Settled { complaint: BACK, settled: value > 5 },
        2 => LogEvent::Rated { activity: ActivityId(1), score: Score::at_most_ten(value) },
        3 => LogEvent::Skipped { slot: slot(1, step as u8 % 3).slot, reason: Barrier::ALL[usize::from(value)] },
        4 => LogEvent::DaysOff { from: day, until: day, why: DayOffReason::ALL[usize::from(value % 4)] },
        5 => run(n, at(1, 545), Some(slot(1, value % 3).slot), usize::from(value % 4)),
        6 => {
            LogEvent::Trouble { trouble: Trouble::NearlyFell, item: Some(HOLD), id: None, circumstances: Default::default() }
        }
        _ => LogEvent::Opened,
    }
}

/// The correction, chosen by a fix, of the entry made at `step`.
fn fix(kind: u8, (how, value): (u8, u8), step: usize) -> Correction {
    match (how, says(kind, value, step)) {
        (0, _) => Correction::Never,
        (1, _) => Correction::Stands,
        (_, LogEvent::Pain { score, .. } | LogEvent::Rated { score, .. }) => Correction::Score(score),
        (_, LogEvent::Settled { settled, .. }) => Correction::Settled(settled),
        (_, LogEvent::Skipped { reason, .. }) => Correction::Reason(reason),
        (_, LogEvent::DaysOff { from, until, why }) => Correction::DaysOff { from, until, why },
        _ => Correction::Never,
    }
}

/// The entry that should have been made, worked out without the code under test.
fn truth(mistake: &Mistake, step: usize) -> LogEvent {
    let said = says(mistake.said, mistake.value, step);
    let Some(&(_, how, value)) = mistake.fixes.last() else { return said };
    match (fix(mistake.said, (how, value), step), said) {
        (_, said @ (LogEvent::Trouble { .. } | LogEvent::Opened)) => said,
        (Correction::Stands, said) => said,
        (Correction::Never, _) => LogEvent::Opened,
        (Correction::Score(score), LogEvent::Pain { complaint, after, .. }) => LogEvent::Pain { complaint, score, after },
        (_, LogEvent::Skipped { slot, .. }) => LogEvent::Skipped { slot, reason: Barrier::ALL[usize::from(value)] },
        _ => says(mistake.said, value, step),
    }
}

/// What the motion sensor measured in a run, recorded after it.
fn sensed(step: usize) -> LogEvent {
    let sensed = Sensed {
        kind: SourceKind::Web,
        held_ms: 9000,
        censored: false,
        gap: false,
        otherwise: None,
        touch_downs: 1,
        figures: None,
        reasons: Vec::new(),
        flags: Vec::new(),
    };
    LogEvent::Sensed { run: RunId(step as u32 + 1), trial: 0, sensed, detail: String::new() }
}

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn a_corrected_log_equals_the_log_as_it_should_have_been(mistakes in mistakes()) {
        let (mut said, mut meant) = (Vec::new(), Vec::new());
        let mut pending: Vec<(usize, u32, Correction)> = Vec::new();
        for step in 0..mistakes.len() + 20 {
            if let Some(mistake) = mistakes.get(step) {
                said.push(says(mistake.said, mistake.value, step));
                meant.push(truth(mistake, step));
                let n = said.len() as u32;
                if mistake.said == 5 {
                    said.push(sensed(step));
                    meant.push(if meant.last() == Some(&LogEvent::Opened) { LogEvent::Opened } else { sensed(step) });
                }
                let mut when = step;
                for (delay, how, value) in &mistake.fixes {
                    when += delay;
                    pending.push((when, n, fix(mistake.said, (*how, *value), step)));
                }
            }
            let (now, later) = pending.into_iter().partition::<Vec<_>, _>(|(when, ..)| *when <= step);
            pending = later;
            for (_, n, correction) in now {
                said.push(to(n, correction));
                meant.push(LogEvent::Opened);
            }
        }
        prop_assert!(pending.is_empty(), "all corrections were made");
        let mut corrected = fold(said);
        corrected.corrected = Corrected::default();
        prop_assert_eq!(corrected, fold(meant));
    }
}

/// A summary of the first two days, made at the end of the second.
fn sealed(events: &[LogEvent], counter: u32) -> crate::summary::Summary {
    use crate::summary::{Period, Sealing, reduce};
    let period = Period { from: start(), until: start() + chrono::Duration::days(1) };
    let sealing = Sealing { log: PHONE, period, now: at(1, 1400), counter, note: None };
    let revisions = crate::review::samples::revisions([plan()]);
    let history = fold(events.to_vec());
    reduce(&history, &revisions, &crate::review::samples::catalogue(), &zone(), sealing).expect("days of the plan")
}

#[test]
fn a_correction_reaches_what_was_handed_over_before() {
    use crate::summary::union::{ArrivalEffect, arrival_effect, unite};
    let named = slot(1, 0).slot;
    let mut events = vec![
        LogEvent::Taken { revision: 1, agreed: Vec::new() },
        run(1, at(1, 545), Some(named), 3),
        pain(8),
        pain(3),
        LogEvent::Rated { activity: ActivityId(1), score: Score::at_most_ten(9) },
        LogEvent::Trouble { trouble: Trouble::Nerve, item: None, id: None, circumstances: Default::default() },
    ];
    let before = sealed(&events, 1);
    assert_eq!((before.runs.len(), before.mornings.len(), before.corrections.count()), (1, 2, 0));
    events.extend([
        to(2, Correction::Never),
        to(3, Correction::Never),
        to(4, Correction::Score(Score::at_most_ten(1))),
        to(5, Correction::Never),
        to(6, Correction::Never),
    ]);
    let after = sealed(&events, 2);
    assert_eq!((after.runs.len(), after.rated.len(), after.corrections.count()), (0, 0, 5));
    assert_eq!((after.mornings[0].n, after.mornings[0].score.points(), after.mornings.len()), (4, 1, 1));
    assert_eq!(after.alarms, before.alarms, "an alarm goes on");
    let alone = unite([&after]);
    for both in [[&before, &after], [&after, &before]] {
        assert_eq!(unite(both), alone, "whichever comes first");
    }
    assert!(matches!(arrival_effect(std::slice::from_ref(&before), &after), ArrivalEffect::Filled { days: 1 }));
    assert_eq!(
        arrival_effect(std::slice::from_ref(&after), &before),
        ArrivalEffect::Known,
        "the mistake is known to be one"
    );
    let review = crate::review::build(
        &crate::review::samples::revisions([plan()]),
        &crate::review::samples::catalogue(),
        &[before, after],
    );
    let review = review.expect("a review");
    assert_eq!(review.corrected, 5);
    assert!(review.alarms[0].said_mistaken && !review.alarms[0].cleared);
}
