//! Doses changed one quantity at a time.

use crate::catalogue::{Dose, Quantity, Tempo};

/// `dose` with one quantity at `value`, brought into its range; a quantity that the dose has not changes nothing.
pub fn with(dose: Dose, quantity: Quantity, value: i64) -> Dose {
    let bound = quantity.bound();
    let value = value.clamp(bound.min, bound.max);
    let small = value as u8;
    let seconds = value as u16;
    let mut dose = dose;
    match (&mut dose, quantity) {
        (Dose::Hold { repetitions, .. } | Dose::Reps { repetitions, .. }, Quantity::Repetitions) => *repetitions = small,
        (Dose::Hold { hold_s, .. }, Quantity::HoldSeconds) => *hold_s = seconds,
        (Dose::Hold { rest_s, .. } | Dose::Balance { rest_s, .. } | Dose::Reps { rest_s, .. }, Quantity::RestSeconds) => {
            *rest_s = seconds;
        }
        (Dose::Balance { trials, .. }, Quantity::Trials) => *trials = small,
        (Dose::Balance { target_s, .. }, Quantity::TargetSeconds) => *target_s = seconds,
        (Dose::Reps { sets, .. }, Quantity::Sets) => *sets = small,
        (Dose::Reps { tempo, .. }, quantity) => put_tempo(tempo, quantity, small),
        _ => {}
    }
    dose
}

fn put_tempo(tempo: &mut Tempo, quantity: Quantity, value: u8) {
    match quantity {
        Quantity::TempoUpSeconds => tempo.up_s = value,
        Quantity::TempoHoldSeconds => tempo.hold_s = value,
        Quantity::TempoDownSeconds => tempo.down_s = value,
        _ => {}
    }
}

/// `dose` with one quantity a step up or down: five seconds from five on for holds, rests and targets, else one.
pub fn stepped(dose: Dose, quantity: Quantity, up: bool) -> Dose {
    let Some((_, value)) = dose.quantities().into_iter().find(|(other, _)| *other == quantity) else { return dose };
    let coarse = matches!(quantity, Quantity::HoldSeconds | Quantity::RestSeconds | Quantity::TargetSeconds);
    let step = match (coarse, up) {
        (true, true) if value >= 5 => 5 - value % 5,
        (true, false) if value > 5 => {
            if value % 5 == 0 {
                5
            } else {
                value % 5
            }
        }
        _ => 1,
    };
    with(dose, quantity, if up { value + step } else { value - step })
}

#[cfg(test)]
mod tests {
    use super::*;

    const HOLD: Dose = Dose::Hold { repetitions: 3, hold_s: 10, rest_s: 7 };

    #[test]
    fn seconds_go_by_fives_and_land_on_them() {
        assert_eq!(stepped(HOLD, Quantity::HoldSeconds, true), with(HOLD, Quantity::HoldSeconds, 15));
        assert_eq!(stepped(HOLD, Quantity::RestSeconds, true), with(HOLD, Quantity::RestSeconds, 10));
        assert_eq!(stepped(HOLD, Quantity::RestSeconds, false), with(HOLD, Quantity::RestSeconds, 5));
    }

    #[test]
    fn short_seconds_and_counts_go_by_one() {
        let short = with(HOLD, Quantity::HoldSeconds, 4);
        assert_eq!(stepped(short, Quantity::HoldSeconds, true), with(HOLD, Quantity::HoldSeconds, 5));
        assert_eq!(stepped(HOLD, Quantity::Repetitions, false), with(HOLD, Quantity::Repetitions, 2));
    }

    #[test]
    fn no_step_leaves_the_range() {
        for dose in [
            HOLD,
            Dose::Balance { trials: 3, target_s: 30, rest_s: 30 },
            Dose::Reps { sets: 2, repetitions: 8, rest_s: 60, tempo: Tempo { up_s: 2, hold_s: 1, down_s: 3 } },
        ] {
            for (quantity, _) in dose.quantities() {
                for up in [true, false] {
                    let far = (0..400).fold(dose, |dose, _| stepped(dose, quantity, up));
                    assert_eq!(far.check(), Ok(()), "{quantity:?}");
                    assert_ne!(far, dose, "{quantity:?} can be stepped");
                }
            }
        }
    }

    #[test]
    fn a_quantity_that_the_dose_lacks_changes_nothing() {
        assert_eq!(with(HOLD, Quantity::Trials, 5), HOLD);
        assert_eq!(stepped(HOLD, Quantity::TempoUpSeconds, true), HOLD);
    }
}
