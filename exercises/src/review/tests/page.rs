//! The answers that the review gives.

use crate::adherence::KofN;
use crate::alarm::{ClearedAlarm, Trouble};
use crate::catalogue::{Eyes, Surface};
use crate::change::ActivityVerdict;
use crate::history::Mark;
use crate::id::{ActivityId, ComplaintId, PlanId};
use crate::log::Barrier;
use crate::plan::{Activity, AgeBand, BodySide, Plan, StanceBaseline};
use crate::review::samples::{
    ANKLE, BACK, BALANCE, DESK, HOLD, PHONE, REPS, alarm, baseline, catalogue, during, item_day, morning, plan, revised,
    revisions, run, stance, start, summary,
};
use crate::review::{Review, StanceSeries, Standing, build, standing};
use crate::run::{SetUp, TrialEnd};
use crate::score::Score;
use crate::score::on_days;
use crate::statistics::{PainVerdict, SymmetryVerdict, Verdict, WhyTooFew};
use crate::summary::{RatedOn, RunOn, StanceOn, Summary, TakenOn};
use crate::time::DayNumber;
use chrono::Duration;

fn page(plans: impl IntoIterator<Item = Plan>, summaries: &[Summary]) -> Review {
    build(&revisions(plans), &catalogue(), summaries).expect("a plan and a summary")
}

fn second() -> Plan {
    revised(2, 14)
}

#[test]
fn without_a_plan_or_a_summary_there_is_no_page() {
    assert_eq!(build(&revisions([]), &catalogue(), &[summary(PHONE, 1, 0, 3)]), None);
    assert_eq!(build(&revisions([plan()]), &catalogue(), &[]), None);
}

#[test]
fn an_empty_period_says_so_and_not_zero_percent() {
    let mut told = summary(PHONE, 1, 0, 3);
    told.seen.clear();
    let review = page([plan()], &[told]);
    assert_eq!((review.covered, review.days.len()), (None, 4));
    assert!(review.adherence.iter().all(|item| item.kept.is_none() && item.dose.is_none() && item.days.kept.is_none()));
    assert!(review.pain.iter().all(|series| series.change.verdict == PainVerdict::TooFewRatings));
}

#[test]
fn alarms_newest_first_and_cleared_by_the_newest_card() {
    let fell = alarm(PHONE, 3, 2, Trouble::Fell, None);
    let mut phone = summary(PHONE, 1, 0, 9);
    phone.alarms = vec![fell.clone(), alarm(PHONE, 8, 7, Trouble::Nerve, None)];
    let mut desk = summary(DESK, 1, 0, 9);
    desk.alarms = vec![alarm(DESK, 5, 4, Trouble::Other, None)];
    let mut newest = second();
    newest.prescription.cleared = vec![ClearedAlarm { id: fell.id, seen: Some((Trouble::Fell, DayNumber(2))) }];
    let review = page([plan(), newest.clone()], &[phone.clone(), desk.clone()]);
    let told: Vec<(u16, bool)> = review.alarms.iter().map(|alarm| (alarm.day.0, alarm.cleared)).collect();
    assert_eq!(told, [(7, false), (4, false), (2, true)]);
    assert_eq!(review.alarms[0].date, start() + Duration::days(7));
    let stands = Standing { until: review.until.date(review.start), open_alarms: 2 };
    assert_eq!(standing(&newest, &[phone.clone(), desk]), Some(stands), "the list says the same");
    let nothing_done = Summary { seen: Default::default(), ..phone.clone() };
    let until = standing(&newest, &[nothing_done]).map(|standing| standing.until);
    assert_eq!(until, Some(start() + Duration::days(9)), "that nothing was recorded is known");
    let other = Summary { plan: PlanId([9; 8]), ..phone };
    assert_eq!(standing(&newest, &[other]), None, "of another plan");
}

#[test]
fn an_alarm_says_what_it_suspends_and_a_rating_above_the_limit_both_numbers() {
    let mut told = summary(PHONE, 1, 0, 9);
    told.alarms = vec![
        alarm(PHONE, 3, 2, Trouble::PainAboveLimit, Some(HOLD)),
        alarm(PHONE, 5, 4, Trouble::PainAboveLimit, Some(HOLD)),
        alarm(PHONE, 7, 6, Trouble::NearlyFell, Some(BALANCE)),
    ];
    told.during = vec![during(2, 2, HOLD, 6), during(4, 4, HOLD, 8)];
    let review = page([plan()], &[told]);
    let said: Vec<_> = review.alarms.iter().map(|alarm| (alarm.day.0, alarm.suspended.clone())).collect();
    assert_eq!(said, [(6, vec![]), (4, vec![HOLD]), (2, vec![])]);
    let above = review.alarms[1].above.map(|(score, limit)| (score.points(), limit.points()));
    assert_eq!((above, review.alarms[1].revision), (Some((8, 5)), Some(1)));
    assert_eq!((review.during[0].above_limit, review.during[0].known), (2, Some(KofN { k: 2, n: 2 })));
}

#[test]
fn a_device_whose_record_ends_earlier_is_named() {
    let review = page([plan()], &[summary(PHONE, 1, 0, 9), summary(DESK, 4, 0, 6)]);
    assert_eq!(
        review.behind.iter().map(|one| (one.log, one.until)).collect::<Vec<_>>(),
        [(DESK, start() + Duration::days(6))]
    );
    assert_eq!(review.logs, 2);
}

#[test]
fn items_are_in_the_plans_order_with_dropped_ones_last() {
    let mut newest = second();
    newest.prescription.items.swap(0, 1);
    newest.prescription.items.retain(|item| item.id != REPS);
    let mut told = summary(PHONE, 1, 0, 3);
    told.days.push(item_day(1, REPS, &[Mark::Done]));
    let review = page([plan(), newest], &[told]);
    let order: Vec<_> = review.adherence.iter().map(|one| (one.item, one.in_force)).collect();
    assert_eq!(order, [(BALANCE, true), (HOLD, true), (REPS, false)]);
    assert_eq!(review.adherence[2].kept, Some(KofN { k: 1, n: 1 }));
    assert_eq!(review.items.iter().map(|one| one.item).collect::<Vec<_>>(), [BALANCE, HOLD]);
}

#[test]
fn of_a_mornings_ratings_the_first_counts_and_of_two_devices_the_higher() {
    let mut told = summary(PHONE, 1, 0, 3);
    told.mornings = vec![morning(2, 0, BACK, 4), morning(3, 0, BACK, 9), morning(5, 1, ANKLE, 9)];
    let mut desk = summary(DESK, 1, 0, 3);
    desk.mornings = vec![morning(1, 0, BACK, 5)];
    let series = page([plan(), second()], &[told, desk]).pain;
    assert_eq!(series[0].points, on_days(&[(0, 5)]));
    assert_eq!(series[0].at_visits, on_days(&[(0, 6), (14, 6)]));
    assert_eq!((series[1].complaint, series[1].points.as_slice()), (ANKLE, on_days(&[(1, 9)]).as_slice()));
}

#[test]
fn a_complaint_that_the_newest_card_dropped_keeps_its_series() {
    let mut newest = second();
    newest.prescription.complaints.retain(|complaint| complaint.id == ANKLE);
    let mut told = summary(PHONE, 1, 0, 3);
    told.mornings = vec![morning(1, 0, BACK, 7)];
    let series = page([plan(), newest], &[told]).pain;
    assert_eq!(series.iter().map(|one| one.complaint).collect::<Vec<ComplaintId>>(), [ANKLE, BACK]);
}

#[test]
fn activities_one_by_one_and_together() {
    let rated = |n, day, activity, score| RatedOn { n, day, activity: ActivityId(activity), score };
    let mut two = plan();
    two.prescription.activities.push(Activity {
        id: ActivityId(2),
        name: "climbing stairs".into(),
        rating: Some(Score::at_most_ten(5)),
    });
    let mut told = summary(PHONE, 1, 0, 14);
    told.rated = vec![
        rated(1, DayNumber(7), 1, Score::at_most_ten(5)),
        rated(2, DayNumber(14), 1, Score::at_most_ten(7)),
        rated(3, DayNumber(14), 2, Score::at_most_ten(3)),
        rated(4, DayNumber(14), 2, Score::at_most_ten(6)),
    ];
    let review = page([two], &[told]);
    assert_eq!(review.activities[0].points, on_days(&[(7, 5), (14, 7)]));
    assert_eq!(review.activities[0].change.verdict, ActivityVerdict::Better, "4 to 7");
    assert_eq!(review.activities[1].points, on_days(&[(14, 6)]), "of one day's ratings the last");
    assert_eq!(review.activities[1].change.verdict, ActivityVerdict::NoClearChange);
    let together = review.activities_together.expect("two were rated again");
    assert_eq!((together.base, together.now, together.verdict), (4.5, 6.5, ActivityVerdict::Better));
}

#[test]
fn reasons_that_need_attention_come_first() {
    let mut told = summary(PHONE, 1, 0, 5);
    let out = |barrier| Mark::Skipped(barrier);
    told.days = vec![
        item_day(0, HOLD, &[out(Barrier::NoTime), out(Barrier::NoTime), out(Barrier::Unwell)]),
        item_day(1, HOLD, &[out(Barrier::NoTime), out(Barrier::Pain), out(Barrier::Pain)]),
        item_day(2, HOLD, &[out(Barrier::Forgot), out(Barrier::Forgot), Mark::Done]),
    ];
    let barriers = page([plan()], &[told]).barriers;
    assert_eq!(barriers, [(Barrier::Pain, 2), (Barrier::Unwell, 1), (Barrier::NoTime, 3), (Barrier::Forgot, 2)]);
}

#[test]
fn notes_appear_once_and_the_covered_days_are_those_with_a_record() {
    let noted = |counter, note: &str| Summary { note: Some(note.into()), ..summary(PHONE, counter, 0, 5) };
    let mut last = noted(3, "knee swollen on Monday");
    last.seen = [1, 4].map(DayNumber).into();
    let review = page([plan()], &[noted(2, "new chair"), last.clone(), Summary { counter: 4, ..last.clone() }]);
    assert_eq!(review.notes, ["new chair", "knee swollen on Monday"]);
    let review = page([plan()], &[last]);
    assert_eq!(review.covered, Some((start() + Duration::days(1), start() + Duration::days(4))));
}

#[test]
fn stance_times_of_all_visits_and_a_carried_one_stays_with_its_visit() {
    let mut newest = second();
    newest.prescription.baselines =
        vec![baseline(BodySide::Left, 220), baseline(BodySide::Left, 260), baseline(BodySide::Right, 180)];
    let told = page([plan(), newest], &[summary(PHONE, 1, 0, 3)]).baselines;
    let short: Vec<(u16, BodySide, u16)> = told.iter().map(|(day, one)| (day.0, one.leg, one.tenths)).collect();
    let (left, right) = (BodySide::Left, BodySide::Right);
    assert_eq!(short, [(0, left, 220), (0, right, 124), (14, left, 260), (14, right, 180)]);
}

#[test]
fn a_stance_time_shows_on_the_day_on_which_it_was_taken() {
    let on = |day, leg, tenths| StanceBaseline { taken: Some(start() + Duration::days(day)), ..baseline(leg, tenths) };
    let (left, right) = (BodySide::Left, BodySide::Right);
    let mut first = plan();
    first.prescription.baselines = vec![on(0, left, 220), on(0, right, 124)];
    let mut corrected = second();
    corrected.header.issued = start();
    corrected.prescription.baselines = vec![on(0, left, 222), on(0, right, 124)];
    let mut third = revised(3, 14);
    third.prescription.baselines = vec![on(0, left, 222), on(0, right, 124), on(14, right, 124)];
    let told = page([first, corrected, third], &[summary(PHONE, 1, 0, 3)]).baselines;
    let short: Vec<(u16, BodySide, u16)> = told.iter().map(|(day, one)| (day.0, one.leg, one.tenths)).collect();
    assert_eq!(short, [(0, left, 222), (0, right, 124), (14, right, 124)]);
}

/// Balance on consecutive days, one for each pair of times (left, right), with three trials on each leg.
fn balance(times_ms: &[(u32, u32)]) -> Summary {
    let mut told = summary(PHONE, 1, 0, times_ms.len() as u16);
    let on = |(n, (left, right)): (u32, &(u32, u32))| RunOn {
        stance: Some(stance(&[left - 1000, *left, left - 2000], &[right - 1000, *right, right - 2000])),
        ..run(n + 1, n as u16, BALANCE, Some(0))
    };
    told.runs = (0..).zip(times_ms).map(on).collect();
    told
}

fn leg(review: &Review, leg: BodySide) -> &StanceSeries {
    review.balance.iter().find(|series| series.leg == Some(leg)).expect("a series of the leg")
}

#[test]
fn a_rise_over_ten_days_is_reported() {
    let times: Vec<(u32, u32)> = (0..10).map(|day| (20_000, 8_000 + day * 1500 + (day % 2) * 400)).collect();
    let review = page([plan()], &[balance(&times)]);
    assert_eq!(review.balance.len(), 2);
    assert_eq!(leg(&review, BodySide::Right).change.verdict, Verdict::Rising);
    assert_eq!(leg(&review, BodySide::Left).change.verdict, Verdict::NoClearChange);
    let first = leg(&review, BodySide::Right).days[0];
    assert_eq!((first.trials, first.best_s, first.median_s, first.capped), (3, 8.0, 7.0, false));
}

#[test]
fn another_surface_eyes_or_set_up_is_another_series_and_another_target_is_not() {
    let mut told = balance(&[(20_000, 10_000); 5]);
    let changes: [fn(&mut StanceOn); 4] = [
        |stance| stance.surface = Surface::Cushion,
        |stance| stance.eyes = Eyes::Closed,
        |stance| stance.set_up = SetUp::InPocket,
        |stance| stance.target_s = 45,
    ];
    for (run, change) in told.runs.iter_mut().zip(changes) {
        run.stance.iter_mut().for_each(change);
    }
    let review = page([plan()], &[told.clone()]);
    assert_eq!(review.balance.len(), 2 * 4, "both legs under four sets of conditions");
    assert!(review.balance.iter().all(|series| series.change.too_few == Some(WhyTooFew::Days)));
    told.runs[4].rung = Some(crate::review::samples::rung("towel"));
    assert_eq!(page([plan()], &[told]).balance.len(), 2 * 5, "another rung is another series");
}

#[test]
fn a_trial_that_was_cut_off_is_no_measurement() {
    let mut told = balance(&[(20_000, 10_000)]);
    for trial in told.runs[0].stance.iter_mut().flat_map(|stance| &mut stance.trials) {
        if trial.leg == Some(BodySide::Left) {
            trial.end = TrialEnd::CutOff;
        }
    }
    let review = page([plan()], &[told]);
    assert_eq!(review.balance.iter().map(|series| series.leg).collect::<Vec<_>>(), [Some(BodySide::Right)]);
}

#[test]
fn a_trial_to_the_target_is_the_cap_and_many_say_at_the_cap() {
    let times: Vec<(u32, u32)> = (0..8).map(|_| (33_000, 10_000)).collect();
    let review = page([plan()], &[balance(&times)]);
    let left = leg(&review, BodySide::Left);
    assert!(left.days.iter().all(|day| day.capped && day.best_s == 30.0 && day.median_s == 30.0));
    assert_eq!(left.change.verdict, Verdict::AtTheCap);
}

#[test]
fn seven_days_have_a_yardstick_only_from_sixty_on() {
    let times: Vec<(u32, u32)> = (0..9).map(|day| (20_000, 6_000 + day * 3000)).collect();
    let of = |age| {
        let mut told = plan();
        told.prescription.age = age;
        let review = page([told], &[balance(&times)]);
        leg(&review, BodySide::Right).change
    };
    assert_eq!(of(Some(AgeBand::From50)).too_few, Some(WhyTooFew::ImportantDifference));
    assert_eq!(of(None).verdict, Verdict::TooFewData);
    assert_eq!(of(Some(AgeBand::From60)).verdict, Verdict::Rising, "18 s against 13.9 s");
}

#[test]
fn the_involved_leg_is_compared_with_the_other() {
    let review = page([plan()], &[balance(&[(20_000, 12_000); 3])]);
    let [only] = review.sides.as_slice() else { panic!("one set of conditions") };
    assert_eq!((only.sides.involved, only.sides.involved_s, only.sides.other_s), (BodySide::Right, 12.0, 20.0));
    assert_eq!(only.sides.symmetry.verdict, SymmetryVerdict::Percent(60.0));
    assert_eq!(only.conditions.leg, Some(BodySide::Right));
    let capped = page([plan()], &[balance(&[(33_000, 12_000); 3])]);
    assert_eq!(capped.sides[0].sides.symmetry.verdict, SymmetryVerdict::AtMost(40.0));
    assert!(page([plan()], &[balance(&[(20_000, 12_000); 2])]).sides.is_empty(), "two days are too few");
    let mut no_side = plan();
    no_side.prescription.items.iter_mut().for_each(|item| item.serves = Some(BACK));
    assert!(page([no_side], &[balance(&[(20_000, 12_000); 3])]).sides.is_empty(), "the complaint has no side");
}

#[test]
fn the_revision_in_force_is_the_highest_that_was_taken() {
    let mut told = summary(PHONE, 1, 0, 15);
    assert_eq!(page([plan(), second()], &[told.clone()]).revision, 1);
    told.taken.push(TakenOn { day: DayNumber(14), revision: 2, agreed: Vec::new() });
    assert_eq!(page([plan(), second()], &[told]).revision, 2);
}
