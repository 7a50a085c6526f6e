//! The amount done of the amount asked for.

use super::*;
use crate::catalogue::Tempo;
use crate::plan::BodySide::{Left, Right};

const HOLD: Dose = Dose::Hold { repetitions: 3, hold_s: 10, rest_s: 10 };
const REPS: Dose = Dose::Reps { sets: 2, repetitions: 8, rest_s: 60, tempo: Tempo { up_s: 2, hold_s: 0, down_s: 2 } };
const BALANCE: Dose = Dose::Balance { trials: 2, target_s: 30, rest_s: 30 };

fn run(dose: Dose, work: Work) -> Run {
    Run {
        id: RunId(1),
        item: ItemId(1),
        exercise: ExerciseId::new("sit-tall").expect("an id"),
        rung: None,
        dose,
        slot: None,
        started: Stamp { utc_ms: 0, offset_s: 0 },
        live: true,
        end: RunEnd::Completed,
        paused_ms: 0,
        interruptions: Vec::new(),
        work,
    }
}

fn holds(of: &[(Option<BodySide>, u32)]) -> Run {
    run(HOLD, Work::Timed(of.iter().map(|(leg, held_ms)| HoldRecord { side: *leg, held_ms: *held_ms }).collect()))
}

fn sets(of: &[(Option<BodySide>, u8, u8)]) -> Run {
    let set = |(leg, done, failed): &(Option<BodySide>, u8, u8)| SetRecord { side: *leg, done: *done, failed: *failed };
    run(REPS, Work::Counted(of.iter().map(set).collect()))
}

fn trials(of: &[(BodySide, TrialEnd)]) -> Run {
    let trial = |(leg, end): &(BodySide, TrialEnd)| Trial { leg: Some(*leg), held_ms: 4000, end: *end };
    let balance = Balance {
        set_up: SetUp::OnSupport,
        surface: Surface::Firm,
        eyes: Eyes::Open,
        trials: of.iter().map(trial).collect(),
    };
    run(BALANCE, Work::Balance(balance))
}

fn share(done: u32, of: u32) -> Share {
    Share { done, of }
}

#[test]
fn holding_longer_does_not_make_up_for_a_short_hold() {
    let uneven = holds(&[(None, 10_000), (None, 25_000), (None, 4_000)]);
    assert_eq!((uneven.share(1), uneven.parts(1)), (share(24_000, 30_000), share(2, 3)));
    assert!(!uneven.parts(1).full());
    let whole = holds(&[(None, 10_000); 3]);
    assert!(whole.parts(1).full() && whole.share(1).full());
}

#[test]
fn one_side_does_not_make_up_for_the_other() {
    let left_only = holds(&[(Some(Left), 10_000); 6]);
    assert_eq!((left_only.share(2), left_only.parts(2)), (share(30_000, 60_000), share(3, 6)));
    let both = holds(&[(Some(Left), 10_000), (Some(Left), 10_000), (Some(Left), 10_000), (Some(Right), 10_000)]);
    assert_eq!(both.parts(2), share(4, 6));
    let sets = sets(&[(Some(Left), 8, 0), (Some(Left), 8, 0), (Some(Left), 8, 0), (Some(Right), 8, 0)]);
    assert_eq!(sets.share(2), share(24, 32));
    let trials = trials(&[(Left, TrialEnd::Touch), (Left, TrialEnd::Touch), (Left, TrialEnd::Touch)]);
    assert_eq!(trials.share(2), share(2, 4));
}

#[test]
fn a_repetition_that_failed_does_not_count() {
    let run = sets(&[(None, 8, 0), (None, 5, 3)]);
    assert_eq!((run.share(1), run.parts(1)), (share(13, 16), share(13, 16)));
    assert_eq!(sets(&[(None, 20, 0)]).share(1), share(8, 16), "one long set is one set");
}

#[test]
fn a_trial_counts_whatever_its_time_but_not_when_cut_off() {
    let run = trials(&[(Left, TrialEnd::Touch), (Left, TrialEnd::Target), (Right, TrialEnd::CutOff)]);
    assert_eq!(run.share(2), share(2, 4));
}

#[test]
fn tried_is_less_than_done_and_more_than_begun() {
    assert!(holds(&[(None, 9_000)]).tried());
    assert_eq!(holds(&[(None, 9_000)]).parts(1), share(0, 3));
    assert!(!holds(&[]).tried() && !holds(&[(None, 0)]).tried());
    assert!(sets(&[(None, 0, 2)]).tried());
    assert!(!sets(&[(None, 0, 0)]).tried());
    assert!(!trials(&[(Left, TrialEnd::CutOff)]).tried());
}

#[test]
fn work_of_another_kind_than_its_dose_counts_as_nothing() {
    let odd = run(BALANCE, Work::Timed(vec![HoldRecord { side: None, held_ms: 10_000 }]));
    assert_eq!(odd.share(1), share(0, 0));
    assert!(!odd.share(1).full(), "zero of zero is not the whole");
}
