//! When each question is asked, on the sample plan: a hold at nine, ten and eleven, balance and repetitions at six in the evening.

use super::*;
use crate::history::History;
use crate::id::RunId;
use crate::log::{Entry, Log, LogEvent};
use crate::plan::Pattern;
use crate::review::samples::{ANKLE, BACK, HOLD, PHONE, PLAN, REPS, plan, start};
use crate::run::{HoldRecord, RunEnd, SetRecord, Work};
use crate::slots::SlotRef;

fn zone() -> Offsets {
    Offsets::fixed(0)
}

fn at(day: i64, hour: i64, minute: i64) -> Stamp {
    let midnight = start().and_time(chrono::NaiveTime::MIN).and_utc().timestamp_millis();
    Stamp { utc_ms: midnight + ((day * 24 + hour) * 60 + minute) * 60_000, offset_s: 0 }
}

fn history(happened: &[(Stamp, LogEvent)]) -> History {
    let entries = (1..).zip(happened).map(|(n, (at, event))| Entry { n, plan: PLAN, at: *at, event: event.clone() });
    History::fold(&Log { id: PHONE, former: Vec::new(), entries: entries.collect() }, PLAN)
}

/// A run in full of an item of the sample plan, for this slot of its day.
fn run(item: ItemId, started: Stamp, number: Option<u8>) -> Run {
    let planned = plan().item(item).expect("an item of the plan").clone();
    let work = match item {
        HOLD => Work::Timed(vec![HoldRecord { side: None, held_ms: 10_000 }; 3]),
        _ => Work::Counted(vec![SetRecord { side: None, done: 8, failed: 0 }; 2]),
    };
    Run {
        id: RunId(1),
        item,
        exercise: planned.exercise,
        rung: planned.rung,
        dose: planned.dose,
        slot: number.map(|number| SlotRef { day: started.date(), item, number }),
        started,
        live: true,
        end: RunEnd::Completed,
        paused_ms: 0,
        interruptions: Vec::new(),
        work,
    }
}

fn hold(day: i64, number: u8) -> (Stamp, LogEvent) {
    let started = at(day, 9 + i64::from(number), 5);
    (started, LogEvent::Run(run(HOLD, started, Some(number))))
}

fn rating(at: Stamp, item: ItemId, score: u8) -> (Stamp, LogEvent) {
    (at, LogEvent::During { item, score: Score::at_most_ten(score) })
}

/// The question after `run`, with what happened before.
fn after(run: &Run, happened: &[(Stamp, LogEvent)]) -> Option<Question> {
    let slots = slots::of_day(&plan(), run.started.date(), &zone(), at(0, 8, 0));
    after_run(&plan(), &history(happened), run, &slots)
}

fn opening_of(plan: &Plan, happened: &[(Stamp, LogEvent)], now: Stamp, taken: Stamp) -> Vec<Question> {
    on_opening(plan, &history(happened), now, &zone(), taken)
}

/// The questions about the pain while doing an item at an opening.
fn during_at(happened: &[(Stamp, LogEvent)], now: Stamp) -> Vec<Question> {
    let mut all = opening_of(&plan(), happened, now, at(0, 8, 0));
    all.retain(|question| matches!(question, Question::During { .. }));
    all
}

fn asked(item: ItemId, last: Option<u8>) -> Question {
    Question::During { plan: PLAN, item, last: last.and_then(Score::new) }
}

#[test]
fn by_the_hour_it_is_asked_after_a_session_in_the_last_third_of_the_window() {
    let of_slot = |number| after(&run(HOLD, at(1, 9 + i64::from(number), 5), Some(number)), &[]);
    assert_eq!([of_slot(0), of_slot(1), of_slot(2)], [None, None, Some(asked(HOLD, None))]);
}

#[test]
fn by_the_hour_without_a_session_in_the_last_third_it_is_asked_when_the_window_ends() {
    let done = [hold(1, 0)];
    assert_eq!(during_at(&done, at(1, 11, 59)), []);
    assert_eq!(during_at(&done, at(1, 12, 0)), [asked(HOLD, None)]);
    assert_eq!(during_at(&done, at(2, 2, 59)), [asked(HOLD, None)], "until the person's day ends");
    assert_eq!(during_at(&done, at(2, 3, 0)), [], "never about the day before");
    assert_eq!(during_at(&[], at(1, 12, 0)), [], "nothing was done");
    assert_eq!(during_at(&[hold(0, 0)], at(1, 12, 0)), [], "it was done on another day");
}

#[test]
fn by_the_hour_a_window_before_the_card_or_after_the_visit_asks_nothing() {
    let during = |question: &Question| matches!(question, Question::During { .. });
    let asks = |plan: &Plan, taken| opening_of(plan, &[hold(1, 0)], at(1, 12, 0), taken).iter().any(during);
    assert!(asks(&plan(), at(1, 9, 0)));
    assert!(!asks(&plan(), at(1, 9, 1)), "the session's time was before the card was taken");
    let mut over = plan();
    over.prescription.review = at(0, 0, 0).date();
    assert!(!asks(&over, at(0, 8, 0)));
}

#[test]
fn at_set_times_it_is_asked_after_the_session_and_not_at_an_opening() {
    let session = run(REPS, at(1, 18, 5), Some(0));
    assert_eq!(after(&session, &[]), Some(asked(REPS, None)));
    assert_eq!(during_at(&[(session.started, LogEvent::Run(session.clone()))], at(2, 2, 0)), []);
    let extra = run(REPS, at(1, 7, 0), None);
    assert_eq!(after(&extra, &[]), Some(asked(REPS, None)), "also after one that nobody asked for");
}

#[test]
fn of_several_set_times_each_can_ask() {
    let mut twice = plan();
    let reps = twice.prescription.items.iter_mut().find(|item| item.id == REPS).expect("an item of the plan");
    reps.schedule.pattern = Pattern::At { times: vec![8 * 60, 12 * 60, 18 * 60] };
    let slots = slots::of_day(&twice, at(1, 0, 0).date(), &zone(), at(0, 8, 0));
    let first = run(REPS, at(1, 8, 5), Some(0));
    assert_eq!(after_run(&twice, &history(&[]), &first, &slots), Some(asked(REPS, None)));
}

#[test]
fn the_pain_while_doing_it_is_asked_once_a_day_and_for_each_item() {
    let morning = [rating(at(1, 8, 0), REPS, 4)];
    let evening = run(REPS, at(1, 18, 5), Some(0));
    assert_eq!(after(&evening, &morning), None);
    assert_eq!(after(&evening, &[rating(at(0, 18, 30), REPS, 4)]), Some(asked(REPS, Some(4))), "with the last answer");
    assert_eq!(after(&evening, &[rating(at(1, 2, 59), REPS, 4)]), Some(asked(REPS, Some(4))), "still the day before");
    assert_eq!(after(&evening, &[rating(at(1, 3, 0), REPS, 4)]), None);
    assert_eq!(after(&evening, &[rating(at(1, 8, 0), HOLD, 4)]), Some(asked(REPS, None)), "another item's is not borrowed");
    let rated = [hold(1, 0), rating(at(1, 12, 1), HOLD, 2)];
    assert_eq!(during_at(&rated, at(1, 12, 30)), []);
}

#[test]
fn a_run_of_which_nothing_was_tried_or_that_the_plan_does_not_have_asks_nothing() {
    let evening = run(REPS, at(1, 18, 5), Some(0));
    let given_up = Run { work: Work::Counted(Vec::new()), end: RunEnd::Stopped, ..evening.clone() };
    assert_eq!(after(&given_up, &[]), None);
    let begun = Run { work: Work::Counted(vec![SetRecord { side: None, done: 0, failed: 1 }]), ..given_up };
    assert_eq!(after(&begun, &[]), Some(asked(REPS, None)), "one that failed was tried");
    assert_eq!(after(&Run { item: ItemId(77), ..evening }, &[]), None);
}

#[test]
fn each_complaint_is_asked_about_once_in_the_morning() {
    let complaints = |happened: &[(Stamp, LogEvent)], now| -> Vec<(ComplaintId, Option<Score>)> {
        let all = opening_of(&plan(), happened, now, at(0, 8, 0)).into_iter();
        all.filter_map(|one| match one {
            Question::Morning { complaint, last, .. } => Some((complaint, last)),
            _ => None,
        })
        .collect()
    };
    let said = |at, score| (at, LogEvent::Morning { complaint: BACK, score: Score::at_most_ten(score) });
    assert_eq!(complaints(&[], at(1, 7, 0)), [(BACK, None), (ANKLE, None)]);
    assert_eq!(complaints(&[said(at(1, 7, 0), 3)], at(1, 21, 0)), [(ANKLE, None)]);
    assert_eq!(complaints(&[said(at(1, 7, 0), 3)], at(2, 2, 59)), [(ANKLE, None)], "still the same day");
    assert_eq!(complaints(&[said(at(1, 7, 0), 3)], at(2, 3, 0)), [(BACK, Score::new(3)), (ANKLE, None)]);
    assert_eq!(complaints(&[rating(at(1, 7, 0), HOLD, 3)], at(1, 8, 0)).len(), 2, "a rating while doing it is no morning's");
}

#[test]
fn an_activity_is_asked_about_after_a_week_and_before_the_visit() {
    let activity = plan().prescription.activities[0].id;
    let asks = |happened: &[(Stamp, LogEvent)], day| {
        let of_activity = |one: &Question| matches!(one, Question::Activity { activity: of, .. } if *of == activity);
        opening_of(&plan(), happened, at(day, 9, 0), at(0, 8, 0)).iter().any(of_activity)
    };
    let rated = |day| [(at(day, 9, 0), LogEvent::Rated { activity, score: Score::at_most_ten(5) })];
    assert_eq!([6, 7].map(|day| asks(&[], day)), [false, true], "the visit's own rating counts");
    assert_eq!([16, 17].map(|day| asks(&rated(10), day)), [false, true]);
    assert_eq!([26, 27, 28].map(|day| asks(&rated(24), day)), [false, true, true], "the visit is on day 28");
    assert!(!asks(&rated(26), 27), "rated the day before");
}
