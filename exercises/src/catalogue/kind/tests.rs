//! Tests of what holds for every kind.

use super::*;
use crate::catalogue::{Quantity, Sidedness};
use std::collections::BTreeSet;

const HOLD: Dose = Dose::Hold { repetitions: 3, hold_s: 10, rest_s: 10 };
const BALANCE: Dose = Dose::Balance { trials: 3, target_s: 30, rest_s: 30 };
const REPS: Dose = Dose::Reps { sets: 2, repetitions: 8, rest_s: 60, tempo: Tempo { up_s: 2, hold_s: 1, down_s: 3 } };

/// The smallest dose of a kind.
fn least(kind: Kind) -> Dose {
    let values: Vec<i64> = kind.rules().fields().iter().map(|field| field.quantity.bound().min).collect();
    Dose::from_values(kind, &values).expect("the smallest values fit")
}

#[test]
fn a_usual_dose_passes_and_knows_its_kind() {
    for (dose, kind) in [(HOLD, Kind::Hold), (REPS, Kind::Reps), (BALANCE, Kind::Balance)] {
        assert_eq!(dose.check(), Ok(()));
        assert_eq!(dose.kind(), kind);
    }
}

#[test]
fn the_values_of_a_dose_make_the_dose_of_its_kind_and_of_no_other() {
    for dose in [HOLD, BALANCE, REPS].into_iter().chain(Kind::ALL.iter().map(|kind| least(*kind))) {
        assert_eq!(Dose::from_values(dose.kind(), &dose.values()), Some(dose));
        assert_eq!(dose.values().len(), dose.fields().len(), "{dose:?}");
        let values = dose.values();
        if let Some((_, fewer)) = values.split_first() {
            assert_eq!(Dose::from_values(dose.kind(), fewer), None, "a value too few");
        }
        assert_eq!(Dose::from_values(dose.kind(), &[values.as_slice(), &[1]].concat()), None, "a value too many");
        for other in Kind::ALL.iter().filter(|other| **other != dose.kind()) {
            assert_eq!(other.rules().values(&dose), Vec::<i64>::new(), "{other:?} of {dose:?}");
        }
    }
}

#[test]
fn a_field_has_room_for_its_range_and_for_nothing_beyond_its_room() {
    for kind in Kind::ALL {
        for (place, field) in kind.rules().fields().iter().enumerate() {
            assert!(i64::from(field.room) >= field.quantity.bound().max, "{field:?}");
            let mut values = least(*kind).values();
            values[place] = field.room.into();
            assert!(Dose::from_values(*kind, &values).is_some(), "{field:?}");
            for beyond in [i64::from(field.room) + 1, -1] {
                values[place] = beyond;
                assert_eq!(Dose::from_values(*kind, &values), None, "{field:?} at {beyond}");
            }
        }
    }
}

#[test]
fn codes_and_names_are_given_once() {
    let codes: Vec<u8> = Kind::ALL.iter().map(|kind| kind.rules().code()).collect();
    assert_eq!(codes, (0..codes.len() as u8).collect::<Vec<_>>(), "in order, without a gap");
    assert_eq!(Kind::of_code(codes.len() as u8), None);
    let names: BTreeSet<&str> = Kind::ALL.iter().map(|kind| kind.rules().name()).collect();
    assert_eq!(names.len(), Kind::ALL.len());
    for kind in Kind::ALL {
        assert_eq!(Kind::of_code(kind.rules().code()), Some(*kind));
        let keys: BTreeSet<&str> = kind.rules().fields().iter().map(|field| field.key).collect();
        assert_eq!(keys.len(), kind.rules().fields().len(), "{kind:?} names two fields alike");
    }
}

#[test]
fn steps_change_what_the_dose_has_and_stay_within_its_range() {
    for kind in Kind::ALL {
        let dose = least(*kind);
        for step in kind.rules().forward() {
            let bound = step.quantity.bound();
            assert!(dose.value(step.quantity).is_some() && step.by > 0 && step.most <= bound.max, "{kind:?} {step:?}");
        }
        for (quantity, by) in kind.rules().back() {
            assert!(dose.value(*quantity).is_some() && *by < 0, "{kind:?} {quantity:?}");
        }
    }
}

#[test]
fn a_kind_done_on_one_leg_is_recorded_as_trials() {
    for kind in Kind::ALL.iter().filter(|kind| kind.is_by_leg()) {
        assert!(kind.is_balance() && !kind.rules().sides().contains(&Sidedness::None), "{kind:?}");
        assert_eq!(kind.form(), WorkForm::Trials, "{kind:?}: what is stood on has to be recorded");
    }
}

#[test]
fn a_step_in_percent_adds_at_least_its_amount() {
    let walk = Kind::Go.rules().forward()[0];
    assert_eq!([5, 20, 30, 55].map(|minutes| walk.amount(minutes)), [1, 2, 3, 5], "ten per cent");
    let hold = Kind::Hold.rules().forward()[0];
    assert_eq!([5, 25].map(|seconds| hold.amount(seconds)), [5, 5]);
}

#[test]
fn minutes_and_turns_come_to_their_time() {
    let walk = Dose::Go { minutes: 20, effort: 3 };
    assert_eq!((walk.part_amount(), walk.total_s(Sidedness::None)), (1_200_000, 1200));
    assert_eq!(REPS.total_s(Sidedness::Alternating), 2 * 96 + 60, "one rest between two sets");
    assert_eq!(HOLD.total_s(Sidedness::Alternating), 60 + 5 * 10);
    assert_eq!(Dose::Prompt.part_amount(), 1);
}

#[test]
fn every_quantity_out_of_range_is_named() {
    let dose = Dose::Hold { repetitions: 0, hold_s: 121, rest_s: 301 };
    let named: Vec<_> = dose.check().expect_err("out of range").into_iter().map(|o| o.quantity).collect();
    assert_eq!(named, [Quantity::Repetitions, Quantity::HoldSeconds, Quantity::RestSeconds]);
    let dose = Dose::Balance { trials: 11, target_s: 4, rest_s: 0 };
    assert_eq!(dose.check().expect_err("out of range").len(), 2);
}

#[test]
fn time_is_work_and_the_rests_between() {
    assert_eq!((HOLD.work_s(), HOLD.total_s(Sidedness::None)), (30, 50));
    assert_eq!(HOLD.total_s(Sidedness::EachSide), 60 + 5 * 10);
    assert_eq!((REPS.work_s(), REPS.total_s(Sidedness::None)), (96, 156));
}

#[test]
fn a_part_comes_to_its_seconds_its_repetitions_or_one_trial() {
    assert_eq!([HOLD, REPS, BALANCE].map(|dose| dose.part_amount()), [10_000, 8, 1]);
    assert_eq!(BALANCE.part_ms(), 30_000);
}

#[test]
fn a_position_is_kept_in_holds_stretches_and_trials_and_not_in_what_moves() {
    let stretch = Dose::Stretch { repetitions: 3, stretch_s: 30, rest_s: 10 };
    assert_eq!([HOLD, BALANCE, stretch, Dose::Care { minutes: 10 }].map(|dose| dose.is_kept()), [true; 4]);
    let moves = [REPS, Dose::Move { repetitions: 8 }, Dose::Go { minutes: 20, effort: 3 }, Dose::Count { seconds: 30 }];
    assert_eq!(moves.map(|dose| dose.is_kept()), [false; 4]);
}

#[test]
fn one_quantity_is_changed_and_nothing_that_a_dose_has_no_room_for() {
    assert_eq!(HOLD.with(Quantity::HoldSeconds, 15), Dose::Hold { repetitions: 3, hold_s: 15, rest_s: 10 });
    assert_eq!(HOLD.with(Quantity::Trials, 5), HOLD);
    assert_eq!(HOLD.with(Quantity::Repetitions, 256), HOLD);
    assert_eq!(HOLD.with(Quantity::HoldSeconds, -1), HOLD);
    assert_eq!([HOLD, BALANCE].map(|dose| dose.value(Quantity::TargetSeconds)), [None, Some(30)]);
}
