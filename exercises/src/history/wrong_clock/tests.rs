//! A session while the clock is years ahead, and what is left of it once the clock is right: on Now, in reminders, questions, summary and
//! review. Nothing that was said then is lost, and no alarm is weaker for it.

use super::*;
use crate::alarm::Trouble;
use crate::plan::Plan;
use crate::questions::{self, Question};
use crate::remind::{PlanInForce, ReminderContext, Settings};
use crate::review::samples::{BALANCE, HOLD, PHONE, PLAN, catalogue, plan, start};
use crate::review::{Review, WrongClockEntry, build};
use crate::run::{HoldRecord, RunEnd, Work};
use crate::score::Score;
use crate::slots::SlotRef;
use crate::summary::union::{ArrivalEffect, arrival_effect};
use crate::summary::{Period, Sealing, Summary, as_known_on, reduce};
use crate::suspension::Suspends;
use crate::time::{DayNumber, Offsets};
use crate::today::{Followed, Head, composed};
use proptest::prelude::*;
use std::collections::BTreeSet;

/// A day more than three years after the plan began.
const AHEAD: i64 = 1_200;

fn at(day: i64, hour: i64, minute: i64) -> Stamp {
    let midnight = start().and_time(chrono::NaiveTime::MIN).and_utc().timestamp_millis();
    Stamp { utc_ms: midnight + ((day * 24 + hour) * 60 + minute) * 60_000, offset_s: 0 }
}

fn slot(day: i64, number: u8) -> SlotRef {
    SlotRef { day: at(day, 0, 0).date(), item: HOLD, number }
}

fn run(id: u32, started: Stamp, slot: Option<SlotRef>, whole: usize) -> LogEvent {
    let item = plan().prescription.items[0].clone();
    LogEvent::Run(Run {
        id: RunId(id),
        item: HOLD,
        exercise: item.exercise,
        rung: item.rung,
        dose: item.dose,
        slot,
        started,
        live: true,
        end: if whole == 3 { RunEnd::Completed } else { RunEnd::Going },
        paused_ms: 0,
        interruptions: Vec::new(),
        work: Work::Timed(vec![HoldRecord { side: None, held_ms: 10_000 }; whole]),
    })
}

fn trouble(trouble: Trouble, item: Option<ItemId>) -> LogEvent {
    LogEvent::Trouble { trouble, item, id: None, circumstances: BTreeSet::new() }
}

fn during(points: u8) -> LogEvent {
    LogEvent::During { item: HOLD, score: Score::at_most_ten(points) }
}

fn morning(points: u8) -> LogEvent {
    LogEvent::Morning { complaint: plan().prescription.complaints[0].id, score: Score::at_most_ten(points) }
}

fn taken() -> (Stamp, LogEvent) {
    (at(0, 8, 0), LogEvent::Taken { revision: 1, agreed: Vec::new() })
}

fn log(happened: &[(Stamp, LogEvent)]) -> Log {
    let entries = (1..).zip(happened).map(|(n, (at, event))| Entry { n, plan: PLAN, at: *at, event: event.clone() });
    Log { id: PHONE, former: Vec::new(), entries: entries.collect() }
}

fn known(now: Option<Stamp>) -> Known {
    Known { issued: BTreeMap::from([(1, start())]), now }
}

fn history(happened: &[(Stamp, LogEvent)], now: Stamp) -> History {
    History::fold_known(&log(happened), PLAN, known(Some(now)))
}

fn followed(happened: &[(Stamp, LogEvent)], now: Stamp) -> Followed {
    Followed { plan: plan(), taken: at(0, 8, 0), ahead: None, history: history(happened, now) }
}

/// A day as agreed, then a session with everything that can be said in one, by a clock that is years ahead.
fn a_session_ahead() -> Vec<(Stamp, LogEvent)> {
    let done = at(AHEAD, 9, 1);
    vec![
        taken(),
        (at(0, 9, 0), LogEvent::Reminded { slot: slot(0, 0) }),
        (at(0, 9, 1), run(1, at(0, 9, 1), Some(slot(0, 0)), 3)),
        (at(AHEAD, 9, 0), LogEvent::Reminded { slot: slot(AHEAD, 0) }),
        (at(AHEAD, 9, 0), LogEvent::PutOff { slot: slot(1, 0), minutes: 10 }),
        (at(AHEAD, 9, 0), morning(9)),
        (done, run(2, done, Some(slot(AHEAD, 0)), 3)),
        (at(AHEAD, 9, 3), during(4)),
        (at(AHEAD, 9, 4), LogEvent::Skipped { slot: slot(AHEAD, 1), reason: crate::log::Barrier::NoTime }),
    ]
}

#[test]
fn once_the_clock_is_right_now_offers_what_is_due() {
    let now = at(1, 9, 5);
    let today = composed(&[followed(&a_session_ahead(), now)], &catalogue(), now, &Offsets::fixed(0));
    let due = Head::Due { slot: slot(1, 0), due: at(1, 9, 0), closes: at(1, 10, 0), put_off: None };
    assert_eq!(today.head, due, "neither done nor put off until then");
}

#[test]
fn once_the_clock_is_right_reminders_and_questions_come() {
    let now = at(1, 9, 5);
    let followed = followed(&a_session_ahead(), now);
    let (settings, zone, catalogue) = (Settings::default(), Offsets::fixed(0), catalogue());
    let of = vec![PlanInForce { followed: &followed, catalogue: &catalogue }];
    let reminder = ReminderContext::new(of, &settings, &zone).due(now).expect("a reminder");
    assert_eq!(reminder.slot, slot(1, 0));
    let asked = questions::on_opening(&followed.plan, &followed.history, now, &zone, followed.taken);
    assert!(asked.iter().any(|one| matches!(one, Question::Morning { last: None, .. })), "{asked:?}");
    assert_eq!(followed.history.next_run(), RunId(3), "no number is used twice");
}

#[test]
fn a_run_during_which_the_clock_jumped_counts_where_it_began() {
    let begun = at(1, 9, 1);
    let jumped =
        [taken(), (begun, run(1, begun, Some(slot(1, 0)), 1)), (at(AHEAD, 9, 2), run(1, begun, Some(slot(1, 0)), 3))];
    let history = history(&jumped, at(1, 9, 5));
    assert_eq!(history.runs[&RunId(1)].work.count(), 3, "as its last snapshot shows it");
    let ahead = at(AHEAD, 9, 1);
    let back = [taken(), (ahead, run(1, ahead, None, 1)), (at(1, 9, 2), run(1, ahead, None, 3))];
    let history = self::history(&back, at(1, 9, 5));
    assert_eq!((history.runs.len(), history.run(RunId(1)).map(|run| run.work.count())), (0, Some(3)));
}

/// What the alarms of a log suspend at a look on the day `day`.
fn suspended(happened: &[(Stamp, LogEvent)], day: i64) -> Vec<(Trouble, Suspends)> {
    let now = at(day, 12, 0);
    let in_force = history(happened, now).suspended(&plan(), now);
    in_force.iter().map(|one| (one.trouble, one.suspends)).collect()
}

#[test]
fn an_alarm_that_a_wrong_clock_dates_suspends_as_any_other() {
    for day in [AHEAD, -3_000] {
        let all = [
            taken(),
            (at(1, 9, 0), LogEvent::Opened),
            (at(day, 9, 0), trouble(Trouble::Fell, None)),
            (at(2, 8, 0), LogEvent::Opened),
        ];
        assert_eq!(suspended(&all, 2), [(Trouble::Fell, Suspends::Standing)], "{day}");
        let today = composed(&[followed(&all, at(2, 12, 0))], &catalogue(), at(2, 12, 0), &Offsets::fixed(0));
        assert!(today.alarms[0].wrong_clock, "and says so");
        assert_eq!(today.alarms[0].at, at(1, 9, 0), "at its place in the order");
    }
}

#[test]
fn a_second_near_fall_counts_within_the_week_whatever_the_clock_showed() {
    let near = |day| (at(day, 9, 0), trouble(Trouble::NearlyFell, Some(BALANCE)));
    let standing = [(Trouble::NearlyFell, Suspends::Standing)];
    assert_eq!(suspended(&[taken(), near(1), near(AHEAD), (at(3, 9, 0), LogEvent::Opened)], 3), standing);
    assert_eq!(suspended(&[taken(), near(AHEAD), near(2)], 3), standing);
}

#[test]
fn to_be_well_again_ends_only_what_was_said_before_it() {
    let well = |day| (at(day, 9, 0), LogEvent::WellAgain);
    let ill = |day| (at(day, 9, 0), trouble(Trouble::Unwell, None));
    assert_eq!(suspended(&[taken(), well(AHEAD), ill(2)], 3), [(Trouble::Unwell, Suspends::Everything)]);
    assert_eq!(
        suspended(&[taken(), (at(2, 9, 0), LogEvent::WellAgain), ill(AHEAD)], 3),
        [(Trouble::Unwell, Suspends::Everything)]
    );
    assert_eq!(suspended(&[taken(), ill(AHEAD), well(2)], 3), []);
}

#[test]
fn two_ratings_above_the_limit_are_two_in_a_row_whatever_the_clock_showed() {
    let above = |day| [(at(day, 9, 0), during(9)), (at(day, 9, 0), trouble(Trouble::PainAboveLimit, Some(HOLD)))];
    let all = [vec![taken()], above(1).to_vec(), above(AHEAD).to_vec(), vec![(at(2, 9, 0), LogEvent::Opened)]].concat();
    assert_eq!(suspended(&all, 2), [(Trouble::PainAboveLimit, Suspends::Exercise(HOLD))]);
    let between = [vec![taken()], above(1).to_vec(), vec![(at(AHEAD, 9, 0), during(1))], above(2).to_vec()].concat();
    assert_eq!(suspended(&between, 4), [], "one within the limit lies between them");
}

#[test]
fn a_card_that_was_taken_by_a_clock_that_was_ahead_is_followed_from_the_next_entry_on() {
    let all = [(at(AHEAD, 8, 0), taken().1), (at(2, 7, 0), LogEvent::Opened)];
    assert_eq!(history(&all, at(2, 9, 0)).taken[0].at, at(2, 7, 0));
    assert_eq!(history(&all[..1], at(2, 9, 0)).taken[0].at, at(2, 9, 0), "without one from the look on");
}

fn sealed(happened: &[(Stamp, LogEvent)], now: Stamp, counter: u32) -> Summary {
    let revisions: BTreeMap<u16, Plan> = BTreeMap::from([(1, plan())]);
    let period = Period { from: start(), until: now.date() };
    let sealing = Sealing { log: PHONE, period, now, counter, note: None };
    reduce(&history(happened, now), &revisions, &catalogue(), &Offsets::fixed(0), sealing).expect("a period")
}

fn review(summaries: &[Summary], today: i64) -> Review {
    let known: Vec<Summary> =
        summaries.iter().map(|summary| as_known_on(summary, DayNumber(today as u16)).into_owned()).collect();
    build(&BTreeMap::from([(1, plan())]), &catalogue(), &known).expect("a review")
}

fn owed(review: &Review) -> Vec<(ItemId, u32)> {
    review.adherence.iter().map(|item| (item.item, item.slots.owed())).collect()
}

#[test]
fn what_was_recorded_ahead_is_told_and_owes_no_days() {
    let now = at(3, 20, 0);
    let mut all = a_session_ahead();
    all.push((at(AHEAD, 9, 5), trouble(Trouble::Other, Some(BALANCE))));
    let mut without: Vec<(Stamp, LogEvent)> =
        all.iter().filter(|(made, _)| made.day() < at(AHEAD, 0, 0).day()).cloned().collect();
    without.push((at(0, 9, 5), trouble(Trouble::Other, Some(BALANCE))));
    let summary = sealed(&all, now, 1);
    assert_eq!((summary.until, summary.wrong_clock.runs.len(), summary.wrong_clock.mornings.len()), (DayNumber(3), 1, 1));
    let (with, clean) = (review(&[summary], 3), review(&[sealed(&without, now, 1)], 3));
    let score = Score::at_most_ten;
    let complaint = plan().prescription.complaints[0].id;
    assert_eq!(
        with.wrong_clock.entries,
        [
            WrongClockEntry::Run { item: HOLD },
            WrongClockEntry::During { item: HOLD, score: score(4) },
            WrongClockEntry::Morning { complaint, score: score(9) },
        ]
    );
    assert_eq!(owed(&with), owed(&clean));
    assert_eq!((with.until, with.covered), (clean.until, clean.covered));
    assert_eq!((&with.pain, &with.during, &with.balance), (&clean.pain, &clean.during, &clean.balance));
    assert_eq!((with.alarms.len(), with.alarms[0].wrong_clock, with.alarms[0].suspended.len()), (1, true, 1));
}

/// The summary was made while the clock was ahead: only the clinic's own date tells.
#[test]
fn a_summary_that_was_made_ahead_ends_today_and_a_later_one_takes_its_place() {
    let ahead = sealed(&a_session_ahead(), at(AHEAD, 20, 0), 1);
    assert!(ahead.until.0 > 1_000 && ahead.wrong_clock.is_empty(), "on the device nothing contradicted it");
    let told = review(std::slice::from_ref(&ahead), 3);
    assert_eq!((told.covered, told.days.len(), told.wrong_clock.ahead_days), (None, 0, Some(AHEAD as u16 - 3)));
    assert!(owed(&told).iter().all(|(_, owed)| *owed == 0), "its four hundred days are yet to come");
    let mut all = a_session_ahead();
    all.push((at(4, 8, 0), LogEvent::Opened));
    let right = sealed(&all, at(4, 20, 0), 2);
    let both = review(&[ahead, right.clone()], 4);
    assert_eq!((owed(&both), both.until), (owed(&review(&[right], 4)), DayNumber(4)));
    assert_eq!(both.wrong_clock.entries.len(), 3, "once, although both say so");
    assert_eq!(both.wrong_clock.ahead_days, None, "the newest one was made by a clock that is right");
}

#[test]
fn four_hundred_days_ahead_are_not_new() {
    let first = sealed(&[taken()], at(1, 20, 0), 1);
    let ahead = sealed(&a_session_ahead(), at(AHEAD, 20, 0), 2);
    let today = as_known_on(&ahead, DayNumber(1)).into_owned();
    let gain = arrival_effect(std::slice::from_ref(&first), &today);
    assert!(matches!(gain, ArrivalEffect::Filled { days: 0..=2 }), "{gain:?}");
}

/// Ratings of which a later summary says that the clock was wrong are in no series any more.
#[test]
fn what_a_later_summary_marks_is_taken_out_of_an_earlier_one() {
    let ten_ahead = [taken(), (at(12, 9, 0), morning(9)), (at(12, 9, 1), run(1, at(12, 9, 1), None, 3))];
    let first = sealed(&ten_ahead, at(12, 20, 0), 1);
    let corrected = [ten_ahead.to_vec(), vec![(at(3, 9, 0), morning(2)), (at(4, 9, 0), LogEvent::Opened)]].concat();
    let second = sealed(&corrected, at(14, 20, 0), 2);
    assert_eq!(second.wrong_clock.mornings.len(), 1);
    let told = review(&[first, second], 14);
    let points: Vec<_> = told.pain.iter().flat_map(|pain| pain.points.iter().map(|(day, _)| day.0)).collect();
    assert_eq!((points, told.wrong_clock.entries.len()), (vec![3], 2));
}

#[test]
fn a_zone_ahead_is_no_clock_ahead() {
    let summary = sealed(&[taken()], at(4, 20, 0), 1);
    assert_eq!(as_known_on(&summary, DayNumber(3)).into_owned(), summary);
}

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, cases: 64, ..ProptestConfig::default() })]

    /// A device reads its log entry by entry; a program that is started anew reads all of it at once.
    #[test]
    fn a_log_that_grows_is_read_as_one_that_is_read_at_once(
        days in proptest::collection::vec(prop_oneof![0..9_i64, 900..903_i64, -900..-898_i64], 0..14),
    ) {
        let mut happened = vec![taken()];
        happened.extend((0..).zip(days).map(|(n, day)| (at(day, 10, n), morning((n % 10) as u8))));
        let whole = log(&happened);
        let mut grown = History::fold_known(&log(&happened[..1]), PLAN, known(None));
        for (place, entry) in whole.entries.iter().enumerate().skip(1) {
            if !grown.extend(&whole, entry) {
                grown = History::fold_known(&log(&happened[..=place]), PLAN, known(None));
            }
        }
        prop_assert_eq!(grown, History::fold_known(&whole, PLAN, known(None)));
    }
}
