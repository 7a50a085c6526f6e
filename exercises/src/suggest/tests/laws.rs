//! Properties of the rules that hold for any facts.

use super::{facts, item};
use crate::alarm::Trouble;
use crate::catalogue::{Dose, Quantity};
use crate::id::EntryRef;
use crate::plan::{AgeBand, Item};
use crate::review::samples::{BALANCE_DOSE, HOLD_DOSE, PHONE, REPS_DOSE, catalogue, rung};
use crate::score::Score;
use crate::suggest::{Advice, Facts, Reached, Rise, STEP_DAYS, Session, Step, advise};
use crate::time::DayNumber;
use proptest::prelude::*;

fn any_session() -> impl Strategy<Value = Session> {
    let reached = prop_oneof![6 => Just(Reached::Met), 1 => Just(Reached::Short), 2 => Just(Reached::Missed)];
    let morning = prop_oneof![8 => Just(Some(true)), 1 => Just(Some(false)), 1 => Just(None)];
    let pain = prop_oneof![6 => 0u8..=3, 1 => 4u8..=6];
    (reached, prop::option::weighted(0.9, pain), morning).prop_map(|(reached, pain, morning)| Session {
        day: DayNumber(0),
        reached,
        pain: pain.map(Score::at_most_ten),
        morning,
    })
}

fn any_sessions() -> impl Strategy<Value = Vec<Session>> {
    let gaps = prop::collection::vec((1u16..3, any_session()), 0..8);
    gaps.prop_map(|sessions| {
        let mut day = 0;
        let dated = sessions.into_iter().map(|(gap, session)| {
            day += gap;
            Session { day: DayNumber(day), ..session }
        });
        dated.collect()
    })
}

fn any_item() -> impl Strategy<Value = Item> {
    let doses = prop_oneof![
        (1u8..=12, 1u16..=40).prop_map(|(repetitions, hold_s)| Dose::Hold { repetitions, hold_s, rest_s: 10 }),
        Just(HOLD_DOSE),
        Just(REPS_DOSE),
        Just(BALANCE_DOSE),
        (1u8..=4, 5u16..=60).prop_map(|(trials, target_s)| Dose::Balance { trials, target_s, rest_s: 30 }),
    ];
    let rungs = prop::sample::select(vec!["wall", "chair", "firm", "towel", "foam", "firm-closed", "towel-closed"]);
    let limits = prop_oneof![3 => Just(5u8), 1 => 0u8..=10];
    (doses, rungs, limits, any::<bool>()).prop_map(|(dose, on, pain_limit, may_step)| {
        let plain = item(dose);
        let known = catalogue().get(&plain.exercise).is_some_and(|exercise| exercise.rung(&rung(on)).is_some());
        let rung = if known { Some(rung(on)) } else { plain.rung.clone() };
        Item { rung, pain_limit: Score::at_most_ten(pain_limit), may_step, ..plain }
    })
}

#[derive(Debug, Clone)]
struct Case {
    item: Item,
    sessions: Vec<Session>,
    alarm: Option<bool>,
    last_step: Option<u16>,
    rise: bool,
    gate_open: bool,
    age: AgeBand,
}

fn any_case() -> impl Strategy<Value = Case> {
    let marks = (
        prop::option::weighted(0.2, any::<bool>()),
        prop::option::weighted(0.3, 0u16..20),
        (prop::bool::weighted(0.1), any::<bool>()),
    );
    (any_item(), any_sessions(), marks, prop::sample::select(AgeBand::ALL.to_vec())).prop_map(
        |(item, sessions, (alarm, last_step, (rise, gate_open)), age)| Case {
            item,
            sessions,
            alarm,
            last_step,
            rise,
            gate_open,
            age,
        },
    )
}

fn with<T>(case: &Case, then: impl FnOnce(&Facts<'_>) -> T) -> T {
    let catalogue = catalogue();
    let alarm = (EntryRef { log: PHONE, n: 1 }, Trouble::Fell);
    let plain = facts(&catalogue, &case.item, &case.sessions);
    then(&Facts {
        alarm: (case.alarm == Some(true)).then_some(alarm),
        any_alarm: case.alarm.map(|_| alarm),
        last_step: case.last_step.map(DayNumber),
        rise: case.rise.then_some(Rise { base: 0.0, week_before: 2.0, last_week: 2.0 }),
        gate_open: case.gate_open,
        age: Some(case.age),
        today: case.sessions.last().map_or(DayNumber(0), |session| session.day.plus(1)),
        ..plain
    })
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 2000, failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn an_uncleared_alarm_never_leads_to_a_step_forward(case in any_case(), reaches in any::<bool>()) {
        let alarmed = Case { alarm: Some(reaches), ..case };
        let got = with(&alarmed, advise);
        prop_assert!(!matches!(got.advice, Advice::Advance(_)), "{got:?}");
        if reaches {
            prop_assert_eq!(got.advice, Advice::StopAndTalk);
        }
    }

    #[test]
    fn a_step_forward_rests_on_two_good_sessions(case in any_case()) {
        let got = with(&case, advise);
        if let Advice::Advance(step) = &got.advice {
            let limit = case.item.pain_limit.min(Score::at_most_ten(3));
            prop_assert_eq!(got.based_on.len(), 2);
            for session in case.sessions.iter().filter(|session| got.based_on.contains(&session.day)) {
                prop_assert_eq!(session.reached, Reached::Met);
                prop_assert!(session.pain.is_some_and(|pain| pain <= limit), "unanswered means not advanced");
                prop_assert!(session.morning != Some(false));
                prop_assert!(session.pain == Some(Score::at_most_ten(0)) || session.morning == Some(true));
            }
            let today = case.sessions.last().map_or(DayNumber(0), |session| session.day.plus(1));
            prop_assert!(case.last_step.is_none_or(|stepped| today >= DayNumber(stepped + STEP_DAYS)));
            if let Step::Rung { to, .. } = step {
                let soft = ["towel", "foam", "towel-closed"].contains(&to.as_str());
                prop_assert!(!soft || case.gate_open);
                prop_assert!(to.as_str() != "towel-closed" || case.age < AgeBand::From65);
                prop_assert!(to.as_str() != "firm-closed", "a step never closes the eyes");
            }
        }
    }

    #[test]
    fn a_step_makes_one_factor_harder_and_stays_in_range(case in any_case()) {
        let got = with(&case, advise);
        if let Some(step) = got.step() {
            let after = step.apply(&case.item);
            prop_assert!(after.dose.check().is_ok(), "{:?}", after.dose);
            let before = case.item.dose.quantities();
            let changed = after.dose.quantities().into_iter().zip(before).filter(|(one, other)| one != other).count();
            match step {
                Step::Change { .. } => prop_assert_eq!((changed, &after.rung), (1, &case.item.rung)),
                Step::Rung { .. } => {
                    prop_assert_ne!(&after.rung, &case.item.rung);
                    let work = |(quantity, _): &(Quantity, i64)| *quantity != Quantity::RestSeconds;
                    let pairs = after.dose.quantities().into_iter().zip(case.item.dose.quantities());
                    prop_assert!(pairs.filter(|(one, _)| work(one)).all(|(one, other)| one.1 <= other.1), "{:?}", step);
                }
            }
        }
    }

    #[test]
    fn pain_over_the_limit_never_leads_forward_nor_stays(case in any_case(), over in 1u8..=5, first in any::<bool>()) {
        let mut case = case;
        let limit = case.item.pain_limit.min(Score::at_most_ten(5));
        let hurt = Session { day: DayNumber(30), reached: Reached::Met, pain: Some(Score::at_most_ten(limit.points() + over)), morning: Some(true) };
        case.sessions.push(hurt);
        if first {
            case.sessions.push(super::met(31, 0));
        }
        let got = with(&case, advise);
        prop_assert!(matches!(got.advice, Advice::StepBack(_) | Advice::StopAndTalk), "{got:?}");
    }
}

/// The properties would be trivial if the generated cases never led to a step. The test runner is deterministic, so this test
/// always sees the same cases.
#[test]
fn the_cases_lead_everywhere() {
    use proptest::strategy::ValueTree;
    let mut runner = proptest::test_runner::TestRunner::deterministic();
    let mut seen = [0usize; 4];
    for _ in 0..1000 {
        let case = any_case().new_tree(&mut runner).expect("a case").current();
        let place = match with(&case, advise).advice {
            Advice::Advance(_) => 0,
            Advice::Keep => 1,
            Advice::StepBack(_) => 2,
            Advice::StopAndTalk => 3,
        };
        seen[place] += 1;
    }
    assert!(seen.iter().all(|times| *times >= 50), "{seen:?}");
}
