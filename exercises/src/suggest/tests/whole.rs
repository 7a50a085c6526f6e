//! Suggestions made from whole summaries.

use crate::alarm::Trouble;
use crate::catalogue::{Dose, Quantity};
use crate::history::Mark;
use crate::id::EntryRef;
use crate::plan::{BodySide, Item, Plan};
use crate::review::samples::{
    ANKLE, BACK, BALANCE, BALANCE_DOSE, DESK, HOLD, PHONE, REPS, baseline, catalogue, item_day, pain, plan, revised,
    revisions, run, rung, settled, stance, summary,
};
use crate::review::{self, Review};
use crate::run::{RunEnd, Share};
use crate::score::Score;
use crate::suggest::{Advice, Hindrance, Reason, Step, Suggestion};
use crate::summary::{AlarmOn, RunOn, Summary, TakenOn};
use crate::time::DayNumber;

#[track_caller]
fn build(plans: impl IntoIterator<Item = Plan>, summaries: &[Summary]) -> Review {
    review::build(&revisions(plans), &catalogue(), summaries).expect("a plan and a summary")
}

#[track_caller]
fn of(review: &Review, item: crate::id::ItemId) -> Suggestion {
    review.items.iter().find(|suggestion| suggestion.item == item).cloned().expect("an item of the plan")
}

/// The counted movement on these days, complete and without pain.
fn reps_on(days: &[u16]) -> Summary {
    let last = days.last().copied().unwrap_or(0);
    let mut told = summary(PHONE, 1, 0, last + 1);
    for (n, day) in (1..).zip(days) {
        told.days.push(item_day(*day, REPS, &[Mark::Done]));
        told.runs.push(run(n, *day, REPS, Some(0)));
        told.pain.push(pain(100 + n, *day, BACK, 0, Some(REPS)));
    }
    told
}

#[test]
fn two_good_evenings_advance() {
    let got = of(&build([plan()], &[reps_on(&[3, 5])]), REPS);
    assert_eq!(
        (got.advice, got.reason),
        (Advice::Advance(Step::Change { quantity: Quantity::Repetitions, by: 1 }), Reason::MetTwice)
    );
    assert_eq!(got.based_on, [3, 5].map(DayNumber));
}

#[test]
fn a_day_is_judged_by_its_own_slots() {
    let mut told = summary(PHONE, 1, 0, 6);
    for (day, mark) in [(3, Mark::Done), (4, Mark::NotDone), (5, Mark::Done)] {
        told.days.push(item_day(day, HOLD, &[mark; 3]));
    }
    for (n, (day, slot)) in (1..).zip([3, 5].iter().flat_map(|day| (0..3).map(move |slot| (*day, slot)))) {
        told.runs.push(run(n, day, HOLD, Some(slot)));
        told.pain.push(pain(100 + n, day, BACK, 0, Some(HOLD)));
    }
    let got = of(&build([plan()], &[told.clone()]), HOLD);
    assert_eq!((got.reason, got.based_on), (Reason::MetTwice, [3, 5].map(DayNumber).to_vec()));
    told.days[2] = item_day(5, HOLD, &[Mark::Done, Mark::NotDone, Mark::NotDone]);
    assert_eq!(of(&build([plan()], &[told]), HOLD).reason, Reason::NotMet, "one slot of three is not the day");
}

#[test]
fn an_entry_written_in_afterwards_does_not_advance() {
    let mut told = reps_on(&[3, 5]);
    told.runs[1].live = false;
    let got = of(&build([plan()], &[told]), REPS);
    assert_eq!((got.advice, got.reason), (Advice::Keep, Reason::NotMet));
}

#[test]
fn a_stopped_run_says_nothing_about_the_target() {
    let mut told = reps_on(&[3, 5]);
    for run in &mut told.runs {
        run.end = RunEnd::Stopped;
        run.parts = Share { done: 2, of: 16 };
        run.dose = Share { done: 2, of: 16 };
    }
    assert_eq!(of(&build([plan()], &[told.clone()]), REPS).reason, Reason::NotMet);
    for run in &mut told.runs {
        run.end = RunEnd::Completed;
    }
    assert_eq!(of(&build([plan()], &[told]), REPS).reason, Reason::MissedTwice);
}

#[test]
fn an_hourly_item_is_met_with_four_fifths_of_the_days_slots() {
    let day = |n: u32, day: u16, marks: &[Mark]| {
        let runs: Vec<RunOn> = (0u32..)
            .zip(marks)
            .filter(|(_, mark)| **mark == Mark::Done)
            .map(|(slot, _)| run(n + slot, day, HOLD, Some(slot as u8)))
            .collect();
        (item_day(day, HOLD, marks), runs)
    };
    let with = |marks: &[Mark]| {
        let mut told = summary(PHONE, 1, 0, 6);
        for (n, on) in [(1, 4), (11, 5)] {
            let (slots, runs) = day(n, on, marks);
            told.days.push(slots);
            told.runs.extend(runs);
            told.pain.push(pain(100 + n, on, BACK, 0, Some(HOLD)));
        }
        of(&build([plan()], &[told]), HOLD)
    };
    assert_eq!(with(&[Mark::Done; 3]).advice, Advice::Advance(Step::Change { quantity: Quantity::HoldSeconds, by: 5 }));
    let got = with(&[Mark::Done, Mark::NotDone, Mark::Done]);
    assert_eq!((got.advice, got.reason), (Advice::Keep, Reason::NotMet));
}

/// Balance on two days, with these times of the right leg in milliseconds.
fn balance(right_ms: &[u32]) -> Summary {
    let mut told = summary(PHONE, 1, 0, 6);
    for (n, day) in [(1, 4), (2, 5)] {
        told.days.push(item_day(day, BALANCE, &[Mark::Done]));
        told.runs.push(RunOn { stance: Some(stance(&[30_000; 3], right_ms)), ..run(n, day, BALANCE, Some(0)) });
        told.pain.push(pain(100 + n, day, ANKLE, 0, Some(BALANCE)));
    }
    told
}

#[test]
fn balance_is_met_when_every_trial_reaches_the_target() {
    let got = of(&build([plan()], &[balance(&[30_000; 3])]), BALANCE);
    assert_eq!(got.advice, Advice::Advance(Step::Change { quantity: Quantity::TargetSeconds, by: 5 }));
    let got = of(&build([plan()], &[balance(&[30_000, 29_900, 30_000])]), BALANCE);
    assert_eq!((got.advice, got.reason), (Advice::Keep, Reason::NotMet));
}

#[test]
fn a_touch_down_is_practice_and_under_five_seconds_is_too_hard() {
    let got = of(&build([plan()], &[balance(&[4_000, 5_000, 3_000])]), BALANCE);
    assert_eq!((got.advice, got.reason), (Advice::Keep, Reason::NotMet));
    let got = of(&build([plan()], &[balance(&[4_000, 4_999, 3_000])]), BALANCE);
    assert_eq!(
        (got.advice, got.reason),
        (Advice::StepBack(Step::Change { quantity: Quantity::TargetSeconds, by: -5 }), Reason::MissedTwice)
    );
}

#[test]
fn the_gate_opens_with_what_was_shown_at_home_and_at_visits() {
    let longest = |baselines| {
        let mut told = plan();
        told.prescription.items[1].dose = Dose::Balance { trials: 3, target_s: 60, rest_s: 30 };
        told.prescription.baselines = baselines;
        told
    };
    let minute = |days: &[u16]| {
        let mut told = balance(&[60_000; 3]);
        for run in &mut told.runs {
            let mut trials = stance(&[60_000; 3], &[60_000; 3]);
            trials.target_s = 60;
            run.stance = Some(trials);
        }
        told.runs.retain(|run| days.contains(&run.day.0));
        told
    };
    let got = of(&build([longest(Vec::new())], &[minute(&[4, 5])]), BALANCE);
    assert_eq!(got.advice, Advice::Advance(Step::Rung { to: rung("towel"), dose: BALANCE_DOSE }), "two days at home");
    let mut soft = longest(Vec::new());
    soft.prescription.items[1].rung = Some(rung("towel"));
    let mut on_the_towel = minute(&[4, 5]);
    for run in &mut on_the_towel.runs {
        run.rung = Some(rung("towel"));
        if let Some(stance) = &mut run.stance {
            stance.surface = crate::catalogue::Surface::FoldedTowel;
        }
    }
    let got = of(&build([soft.clone()], &[on_the_towel.clone()]), BALANCE);
    assert_eq!(got.reason, Reason::Hindered(Hindrance::GateClosed), "what is shown on a towel is no firm floor");
    soft.prescription.baselines =
        [BodySide::Left, BodySide::Right].into_iter().flat_map(|leg| [baseline(leg, 300), baseline(leg, 310)]).collect();
    let got = of(&build([soft], &[on_the_towel]), BALANCE);
    assert_eq!(got.advice, Advice::Advance(Step::Rung { to: rung("foam"), dose: BALANCE_DOSE }));
}

#[test]
fn the_morning_after_is_found_up_to_the_next_session() {
    let with = |answers: &[(u16, bool)]| {
        let mut told = reps_on(&[3, 5]);
        told.pain.iter_mut().for_each(|rating| rating.score = Score::at_most_ten(2));
        told.settled = (200..).zip(answers).map(|(n, (day, yes))| settled(n, *day, BACK, *yes)).collect();
        of(&build([plan()], &[told]), REPS)
    };
    assert_eq!(
        with(&[(4, true), (6, true)]).advice,
        Advice::Advance(Step::Change { quantity: Quantity::Repetitions, by: 1 })
    );
    assert_eq!(with(&[(4, true)]).reason, Reason::MorningUnanswered);
    assert_eq!(with(&[(3, true), (6, true)]).reason, Reason::MorningUnanswered, "the same day is no next morning");
    assert_eq!(with(&[(4, false), (6, true)]).reason, Reason::NotSettled);
    assert_eq!(with(&[(4, true), (6, true), (6, false)]).reason, Reason::NotSettled, "two devices, one no");
}

#[test]
fn a_rating_after_another_item_of_the_complaint_counts_if_there_is_no_other() {
    let mut told = reps_on(&[3, 5]);
    told.pain.iter_mut().for_each(|rating| rating.after = Some(HOLD));
    told.pain[1].score = Score::at_most_ten(4);
    let got = of(&build([plan()], &[told.clone()]), REPS);
    assert_eq!(got.reason, Reason::PainBetween { score: Score::at_most_ten(4) });
    let mut other = told.clone();
    other.pain[1].complaint = ANKLE;
    let got = of(&build([plan()], &[other]), REPS);
    assert_eq!(got.reason, Reason::PainUnanswered, "another complaint says nothing");
    told.pain[1] = pain(102, 5, BACK, 0, None);
    let got = of(&build([plan()], &[told]), REPS);
    assert_eq!(got.reason, Reason::PainUnanswered, "a rating without a run says nothing about pain during");
}

#[test]
fn an_alarm_blocks_until_a_card_clears_it() {
    let mut told = reps_on(&[3, 5]);
    told.alarms.push(AlarmOn { n: 40, day: DayNumber(4), trouble: Trouble::Other, item: Some(REPS) });
    let entry = EntryRef { log: PHONE, n: 40 };
    let got = of(&build([plan()], &[told.clone()]), REPS);
    assert_eq!((got.advice, got.reason), (Advice::StopAndTalk, Reason::Alarm { entry, trouble: Trouble::Other }));
    let mut cleared = plan();
    cleared.prescription.cleared = vec![entry];
    let got = of(&build([cleared], &[told]), REPS);
    assert_eq!(got.advice, Advice::Advance(Step::Change { quantity: Quantity::Repetitions, by: 1 }));
}

#[test]
fn only_what_came_after_the_card_in_force_counts() {
    let second = revised(2, 4);
    let mut told = reps_on(&[3, 4, 5]);
    told.taken.push(TakenOn { day: DayNumber(4), revision: 2, agreed: Vec::new() });
    let got = of(&build([plan(), second.clone()], &[told]), REPS);
    assert_eq!((got.reason, got.based_on), (Reason::MetOnce, vec![DayNumber(5)]), "the day of taking is left out");
    let not_taken = of(&build([plan(), second], &[reps_on(&[3, 4, 5])]), REPS);
    assert_eq!(not_taken.reason, Reason::TooFewSessions { sessions: 0 });
}

#[test]
fn a_step_that_the_patient_took_is_the_dose_in_use() {
    let mut told = reps_on(&[1, 2, 9, 11]);
    for run in &mut told.runs[2..] {
        run.dose = Share { done: 18, of: 18 };
        run.parts = run.dose;
    }
    let got = of(&build([plan()], &[told.clone()]), REPS);
    let Dose::Reps { repetitions, .. } = got.dose else { panic!("repetitions") };
    assert_eq!((repetitions, got.reason), (9, Reason::StepThisWeek { stepped: DayNumber(9) }));
    told.until = DayNumber(16);
    assert_eq!(
        of(&build([plan()], &[told.clone()]), REPS).advice,
        Advice::Advance(Step::Change { quantity: Quantity::Repetitions, by: 1 })
    );
    let fixed = |mut plan: Plan| {
        plan.prescription.items.iter_mut().for_each(|item: &mut Item| item.may_step = false);
        plan
    };
    let got = of(&build([fixed(plan())], &[told]), REPS);
    let Dose::Reps { repetitions, .. } = got.dose else { panic!("repetitions") };
    assert_eq!(repetitions, 8, "without permission the card's dose holds");
}

#[test]
fn sessions_of_two_devices_are_combined() {
    let phone = reps_on(&[3]);
    let mut desk = reps_on(&[5]);
    desk.log = DESK;
    let got = of(&build([plan()], &[phone, desk]), REPS);
    assert_eq!(
        (got.advice, got.based_on),
        (Advice::Advance(Step::Change { quantity: Quantity::Repetitions, by: 1 }), [3, 5].map(DayNumber).to_vec())
    );
}

#[test]
fn pain_that_rose_over_two_weeks_steps_back() {
    let with = |late: u8| {
        let mut told = reps_on(&[1, 2]);
        told.until = DayNumber(21);
        told.pain =
            (0u32..).zip(0..=21u16).map(|(n, day)| pain(n, day, BACK, if day <= 7 { 2 } else { late }, None)).collect();
        of(&build([plan()], &[told]), REPS)
    };
    assert!(matches!(with(4).reason, Reason::PainRising(_)));
    assert!(!matches!(with(3).reason, Reason::PainRising(_)));
}
