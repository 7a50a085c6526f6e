//! Changes a dose, one quantity at a time.

use crate::catalogue::{Dose, Quantity};

/// `dose` with one quantity set to `value`, limited to its range; a quantity that the dose does not have changes nothing.
pub fn with(dose: Dose, quantity: Quantity, value: i64) -> Dose {
    let bound = quantity.bound();
    dose.with(quantity, value.clamp(bound.min, bound.max))
}

/// `dose` with one quantity a step up or down: holds, rests and targets in steps of five seconds from five seconds on, otherwise by
/// one.
pub fn stepped(dose: Dose, quantity: Quantity, up: bool) -> Dose {
    let mut fields = dose.fields().iter().zip(dose.values());
    let Some((field, value)) = fields.find(|(field, _)| field.quantity == quantity) else { return dose };
    let step = match (field.by_fives, up) {
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
    use crate::catalogue::Tempo;

    const HOLD: Dose = Dose::Hold { repetitions: 3, hold_s: 10, rest_s: 7 };

    #[test]
    fn seconds_change_in_steps_of_five_to_multiples_of_five() {
        assert_eq!(stepped(HOLD, Quantity::HoldSeconds, true), with(HOLD, Quantity::HoldSeconds, 15));
        assert_eq!(stepped(HOLD, Quantity::RestSeconds, true), with(HOLD, Quantity::RestSeconds, 10));
        assert_eq!(stepped(HOLD, Quantity::RestSeconds, false), with(HOLD, Quantity::RestSeconds, 5));
    }

    #[test]
    fn short_seconds_and_counts_change_by_one() {
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
