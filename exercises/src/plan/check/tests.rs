//! Each problem is provoked by one change to a plan that has none.

use super::*;
use crate::alarm::ClearedAlarm;
use crate::catalogue::{Dose, ExerciseId, RungId, Sidedness};
use crate::id::{ActivityId, ComplaintId, EntryRef};
use crate::plan::{Activity, BodySide, Complaint, Days, Side, StanceBaseline, Weekdays};
use crate::review::samples::{BALANCE, HOLD, PHONE, REPS, baseline, catalogue, plan, rung};
use crate::score::Score;
use chrono::Duration;

#[track_caller]
fn check(change: impl FnOnce(&mut Plan), expected: &[Problem]) {
    let mut plan = plan();
    change(&mut plan);
    assert_eq!(problems(&plan, &catalogue()), expected);
}

fn balance(plan: &mut Plan) -> &mut Item {
    plan.prescription.items.iter_mut().find(|item| item.id == BALANCE).expect("there")
}

#[test]
fn the_sample_has_no_problem() {
    check(|_| {}, &[]);
}

#[test]
fn a_plan_as_a_whole() {
    check(|plan| plan.prescription.items.clear(), &[Problem::NoItem]);
    check(|plan| plan.prescription.items[2].id = HOLD, &[Problem::SameNumber]);
    check(
        |plan| plan.prescription.complaints[1].id = plan.prescription.complaints[0].id,
        &[Problem::SameNumber, Problem::Serves(BALANCE)],
    );
    check(|plan| plan.prescription.review = plan.header.issued, &[Problem::ReviewDate]);
    check(|plan| plan.prescription.review = plan.header.issued + Duration::days(1), &[]);
    check(|plan| plan.prescription.review = plan.header.issued + Duration::days(366), &[]);
    check(|plan| plan.prescription.review = plan.header.issued + Duration::days(367), &[Problem::ReviewDate]);
    check(|plan| plan.header.start = plan.header.issued + Duration::days(1), &[Problem::ReviewDate]);
    check(|plan| plan.prescription.complaints[0].pain = Some(Score::at_most_ten(10)), &[]);
}

#[test]
fn no_more_than_a_card_can_carry() {
    let complaint = |n| Complaint { id: ComplaintId(n), name: "knee".into(), side: Side::Left, pain: None };
    let activity = |n| Activity { id: ActivityId(n), name: "stairs".into(), rating: None };
    check(|plan| plan.prescription.complaints.extend((3..=5).map(complaint)), &[]);
    check(|plan| plan.prescription.complaints.extend((3..=6).map(complaint)), &[Problem::TooMany]);
    check(|plan| plan.prescription.activities.extend((2..=6).map(activity)), &[Problem::TooMany]);
    check(
        |plan| plan.prescription.cleared = (0..33).map(|n| ClearedAlarm::of_entry(EntryRef { log: PHONE, n })).collect(),
        &[Problem::TooMany],
    );
    let more = |plan: &mut Plan, until: u8| {
        let hold = plan.prescription.items[0].clone();
        plan.prescription.items.extend((4..=until).map(|n| Item { id: ItemId(n), ..hold.clone() }));
    };
    check(|plan| more(plan, 12), &[]);
    check(|plan| more(plan, 13), &[Problem::TooMany]);
}

#[test]
fn texts_have_a_length_and_no_control_characters() {
    let text = |what, most| Problem::Text { what, most };
    check(|plan| plan.header.clinic.clear(), &[text(TextPlace::Clinic, MAX_NAME)]);
    check(|plan| plan.header.clinic = "é".repeat(MAX_NAME), &[]);
    check(|plan| plan.header.clinic = "é".repeat(MAX_NAME + 1), &[text(TextPlace::Clinic, MAX_NAME)]);
    for phone in ["", "12", "call us", "+00 555 0100\n", " 555 0100", &"5".repeat(MAX_PHONE + 1)] {
        check(|plan| plan.header.phone = Some(phone.into()), &[text(TextPlace::Phone, MAX_PHONE)]);
    }
    check(|plan| plan.header.phone = Some("+00 (555) 01-00/2".into()), &[]);
    check(|plan| plan.prescription.complaints[0].name = "up\nper".into(), &[text(TextPlace::Complaint, MAX_NAME)]);
    check(|plan| plan.prescription.activities[0].name.clear(), &[text(TextPlace::Activity, MAX_NAME)]);
    check(|plan| plan.prescription.items[0].note = "x".repeat(MAX_NOTE), &[]);
    check(|plan| plan.prescription.items[0].note = "x".repeat(MAX_NOTE + 1), &[text(TextPlace::Note, MAX_NOTE)]);
    check(
        |plan| plan.prescription.aftercare = vec![Aftercare::Own(String::new())],
        &[text(TextPlace::Aftercare, MAX_AFTERCARE)],
    );
}

#[test]
fn an_item_must_fit_its_exercise() {
    let id = |text: &str| ExerciseId::new(text).expect("an id");
    let unknown = Problem::UnknownExercise(HOLD, "unheard-of".into());
    check(|plan| plan.prescription.items[0].exercise = id("unheard-of"), &[unknown]);
    check(|plan| plan.prescription.items[0].content = 2, &[Problem::OtherContent(HOLD, "sit-tall".into())]);
    check(
        |plan| plan.prescription.items[0].rung = Some(RungId::new("firm").expect("an id")),
        &[Problem::UnknownRung(HOLD, "firm".into())],
    );
    check(|plan| plan.prescription.items[0].rung = None, &[Problem::UnknownRung(HOLD, String::new())]);
    check(|plan| plan.prescription.items[0].side = Side::Left, &[Problem::Side(HOLD)]);
    check(|plan| balance(plan).side = Side::Neither, &[Problem::Side(BALANCE)]);
    check(|plan| plan.prescription.items[0].serves = Some(ComplaintId(9)), &[Problem::Serves(HOLD)]);
    let too_long = Dose::Hold { repetitions: 3, hold_s: 121, rest_s: 0 };
    check(|plan| plan.prescription.items[0].dose = too_long, &[Problem::Dose(HOLD)]);
    check(|plan| plan.prescription.items[0].dose = balance(plan).dose, &[Problem::Dose(HOLD)]);
}

#[test]
fn the_side_must_fit_the_level() {
    let mut catalogue = catalogue();
    let rungs = &mut catalogue.exercises[0].ladders[0].rungs;
    rungs[1].side = Some(Sidedness::EachSide);
    let (wall, chair) = (rungs[0].id.clone(), rungs[1].id.clone());
    let found = |rung, side| {
        let mut plan = plan();
        (plan.prescription.items[0].rung, plan.prescription.items[0].side) = (Some(rung), side);
        problems(&plan, &catalogue)
    };
    assert_eq!(found(wall.clone(), Side::Neither), []);
    assert_eq!(found(wall, Side::Both), [Problem::Side(HOLD)]);
    assert_eq!(found(chair.clone(), Side::Both), []);
    assert_eq!(found(chair, Side::Neither), [Problem::Side(HOLD)]);
}

#[test]
fn a_load_and_an_effort_are_for_what_is_trained_with_them() {
    use crate::plan::{Band, Load};
    let (load, effort) = (Some(Load::Band(Band::Light)), Some(crate::score::Score::at_most_ten(4)));
    check(|plan| (plan.prescription.items[0].load, plan.prescription.items[0].effort) = (load, effort), &[]);
    check(|plan| plan.prescription.items[0].with_helper = true, &[]);
    let balance = plan().prescription.items[1].id;
    check(|plan| plan.prescription.items[1].load = load, &[Problem::Load(balance)]);
    check(|plan| plan.prescription.items[1].effort = effort, &[]);
    let go = crate::catalogue::Dose::Go { minutes: 20, effort: 3 };
    assert!(Item::may_have_load(go.kind()) && !Item::may_have_effort(go));
}

#[test]
fn a_phase_lies_within_the_plan_and_the_same_exercise_is_done_once_a_day() {
    let (start, review) = (plan().header.start, plan().prescription.review);
    let phase = |first, last| move |plan: &mut Plan| plan.prescription.items[0].phase = crate::plan::Phase { first, last };
    let outside = [Problem::Phase(HOLD)];
    check(phase(Some(start), Some(review)), &[]);
    check(phase(Some(review), Some(review)), &[]);
    check(phase(start.pred_opt(), None), &outside);
    check(phase(None, review.succ_opt()), &outside);
    check(phase(Some(review), Some(start)), &outside);
    let twice = |last: u64, first: u64| {
        move |plan: &mut Plan| {
            let day = |days| start.checked_add_days(chrono::Days::new(days));
            let mut other = plan.prescription.items[0].clone();
            other.id = ItemId(9);
            plan.prescription.items[0].phase.last = day(last);
            other.phase.first = day(first);
            plan.prescription.items.push(other);
        }
    };
    check(twice(6, 7), &[]);
    check(twice(7, 7), &[Problem::Overlap(ItemId(9), HOLD)]);
    check(
        |plan| {
            twice(7, 7)(plan);
            plan.prescription.items.iter_mut().for_each(|item| item.phase = crate::plan::Phase::WHOLE);
        },
        &[],
    );
}

#[test]
fn a_schedule_must_have_a_day_and_a_minute() {
    let every = |minutes, from, to| Pattern::Every { minutes, from, to };
    let at = |times: &[u16]| Pattern::At { times: times.to_vec() };
    let bad = [Problem::Schedule(HOLD)];
    for (pattern, expected) in [
        (every(15, 0, 1439), [].as_slice()),
        (every(14, 0, 1439), &bad),
        (every(720, 0, 1439), &[]),
        (every(721, 0, 1439), &bad),
        (every(60, 1440, 0), &bad),
        (every(60, 22 * 60, 6 * 60), &[]),
        (at(&[0, 1439]), &[]),
        (at(&[]), &bad),
        (at(&[600, 600]), &bad),
        (at(&[700, 600]), &bad),
        (at(&[1440]), &bad),
        (at(&(0..13).collect::<Vec<u16>>()), &bad),
    ] {
        check(|plan| plan.prescription.items[0].schedule.pattern = pattern.clone(), expected);
    }
    check(|plan| plan.prescription.items[0].schedule.days = Days::On(Weekdays::NONE), &bad);
    check(|plan| plan.prescription.items[0].schedule = crate::plan::Schedule::AS_NEEDED, &[]);
    let unsure = |plan: &mut Plan| plan.prescription.items[0].schedule.pattern = Pattern::AsNeeded;
    check(
        |plan| {
            unsure(plan);
            plan.prescription.items[0].schedule.days = Days::WORKDAYS
        },
        &bad,
    );
    let from = plan().header.start;
    let every = |n| move |plan: &mut Plan| plan.prescription.items[0].schedule.days = Days::EveryNth { n, from };
    check(every(1), &bad);
    check(every(29), &bad);
    check(every(2), &[]);
    check(every(28), &[]);
    let chosen = |n, times: &'static [u16]| {
        move |plan: &mut Plan| {
            let pattern = Pattern::At { times: times.to_vec() };
            plan.prescription.items[0].schedule = crate::plan::Schedule { days: Days::TimesAWeek { n, from }, pattern };
        }
    };
    let once = [Problem::OnceADay(plan().prescription.items[0].id)];
    check(chosen(0, &[1080]), &bad);
    check(chosen(7, &[1080]), &bad);
    check(chosen(1, &[1080]), &[]);
    check(chosen(6, &[180]), &[]);
    check(chosen(3, &[480, 1080]), &once);
    check(chosen(3, &[179]), &once);
    check(|plan| plan.prescription.items[0].schedule.days = Days::TimesAWeek { n: 3, from }, &once);
}

#[test]
fn balance_needs_the_age_and_the_ticked_list() {
    check(|plan| plan.prescription.age = None, &[Problem::AgeMissing]);
    for risk in Risk::ALL {
        let expected = vec![Problem::NotTicked(vec![risk])];
        let needed = risk != Risk::SevereVisualLoss;
        let without = |plan: &mut Plan| plan.prescription.absent.retain(|other| *other != risk);
        check(without, if needed { &expected } else { &[] });
    }
    let without = |plan: &mut Plan| {
        plan.prescription.age = None;
        plan.prescription.absent.clear();
        plan.prescription.items.retain(|item| item.id != BALANCE);
    };
    check(without, &[]);
}

#[test]
fn severe_loss_of_sight_speaks_against_closed_eyes() {
    let closed = |plan: &mut Plan| {
        balance(plan).rung = Some(rung("firm-closed"));
        plan.prescription.baselines = both(&[300, 300]);
        plan.prescription.absent.remove(&Risk::SevereVisualLoss);
    };
    check(closed, &[Problem::NotTicked(vec![Risk::SevereVisualLoss])]);
}

fn both(tenths: &[u16]) -> Vec<StanceBaseline> {
    tenths.iter().flat_map(|tenths| [baseline(BodySide::Left, *tenths), baseline(BodySide::Right, *tenths)]).collect()
}

#[test]
fn a_stance_time_of_five_seconds_for_each_prescribed_leg() {
    let none = [Problem::NoStanceBaseline(BALANCE)];
    let short = [Problem::StanceTooShort(BALANCE)];
    check(|plan| plan.prescription.baselines.clear(), &none);
    check(|plan| plan.prescription.baselines.truncate(1), &none);
    let left_alone = |plan: &mut Plan| {
        balance(plan).side = Side::Left;
        plan.prescription.baselines.truncate(1);
    };
    check(left_alone, &[]);
    check(|plan| plan.prescription.baselines = both(&[50]), &[]);
    check(|plan| plan.prescription.baselines = both(&[49]), &short);
    check(|plan| plan.prescription.baselines[1].tenths = 49, &short);
    check(|plan| plan.prescription.baselines = both(&[200, 49]), &short);
    check(|plan| plan.prescription.baselines = both(&[49, 200]), &[]);
    let closed = |plan: &mut Plan| plan.prescription.baselines.iter_mut().for_each(|baseline| baseline.eyes = Eyes::Closed);
    check(closed, &none);
}

#[test]
fn softer_or_closed_requires_thirty_seconds_on_two_days() {
    let shut = [Problem::GateClosed(BALANCE)];
    for on in ["towel", "foam", "firm-closed", "towel-closed"] {
        let with = |tenths: &[u16]| {
            let baselines = both(tenths);
            move |plan: &mut Plan| {
                balance(plan).rung = Some(rung(on));
                plan.prescription.baselines = baselines;
            }
        };
        check(with(&[300, 300]), &[]);
        check(with(&[300, 299]), &shut);
        check(with(&[450]), &shut);
    }
    check(|plan| plan.prescription.baselines = both(&[60]), &[]);
}

#[test]
fn thirty_seconds_twice_on_one_day_are_one_day() {
    let dated = |days: [i64; 2]| {
        move |plan: &mut Plan| {
            balance(plan).rung = Some(rung("towel"));
            plan.prescription.baselines = both(&[300, 310]);
            for (place, baseline) in plan.prescription.baselines.iter_mut().enumerate() {
                baseline.taken = Some(plan.header.issued - chrono::Duration::days(days[place / 2]));
            }
        }
    };
    check(dated([0, 0]), &[Problem::GateClosed(BALANCE)]);
    check(dated([7, 0]), &[]);
    check(dated([0, 7]), &[]);
}

#[test]
fn soft_and_closed_together_only_under_sixty_five() {
    for age in AgeBand::ALL {
        let with = |on: &'static str| {
            move |plan: &mut Plan| {
                plan.prescription.age = Some(age);
                balance(plan).rung = Some(rung(on));
                plan.prescription.baselines = both(&[300, 300]);
            }
        };
        let refused = [Problem::SoftAndClosed(BALANCE)];
        check(with("towel-closed"), if age >= AgeBand::From65 { &refused } else { &[] });
        check(with("firm-closed"), &[]);
        check(with("towel"), &[]);
    }
}

#[test]
fn several_problems_are_all_named() {
    let spoil = |plan: &mut Plan| {
        plan.prescription.review = plan.header.issued;
        plan.prescription.items[0].content = 4;
        plan.prescription.items[2].side = Side::Right;
        plan.prescription.age = None;
    };
    let expected =
        [Problem::ReviewDate, Problem::OtherContent(HOLD, "sit-tall".into()), Problem::Side(REPS), Problem::AgeMissing];
    check(spoil, &expected);
}

#[test]
fn a_timed_stand_on_both_feet_needs_the_screening_but_no_stance_time() {
    let mut catalogue = catalogue();
    let exercise =
        catalogue.exercises.iter_mut().find(|exercise| exercise.id == balance(&mut plan()).exercise).expect("there");
    (exercise.kind, exercise.side) = (crate::catalogue::Kind::Limit, Sidedness::None);
    let with = |change: &dyn Fn(&mut Plan)| {
        let mut plan = plan();
        (balance(&mut plan).dose, balance(&mut plan).side) =
            (Dose::Limit { trials: 3, cap_s: 20, rest_s: 20 }, Side::Neither);
        plan.prescription.baselines.clear();
        change(&mut plan);
        problems(&plan, &catalogue)
    };
    assert_eq!(with(&|_| {}), []);
    assert_eq!(with(&|plan| plan.prescription.age = None), [Problem::AgeMissing]);
    let risks = |plan: &mut Plan| plan.prescription.absent.clear();
    assert!(matches!(&with(&risks)[..], [Problem::NotTicked(_)]));
    assert_eq!(with(&|plan| balance(plan).side = Side::Both), [Problem::Side(BALANCE)]);
}
