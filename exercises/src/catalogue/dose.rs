//! How much of an exercise: what is timed, how often, with how much rest.

use super::bounds::{OutOfRange, Quantity};
use super::exercise::Sidedness;

/// How an exercise is timed.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Kind {
    /// Isometric: a position is held for seconds, several times.
    Hold,
    /// Timed trials until a touch-down or the target.
    Balance,
    /// Movements counted, with a tempo.
    Reps,
}

/// The tempo of one counted movement, in whole seconds.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Tempo {
    /// Seconds of the outward part (rising, bending, opening). 1 to 20.
    pub up_s: u8,
    /// Seconds at the end position. 0 to 20.
    pub hold_s: u8,
    /// Seconds of the return. 1 to 20.
    pub down_s: u8,
}

/// The dose of one doing, for one side where the exercise has sides.
///
/// Construct it freely and call [`Dose::check`] where it comes from outside.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Dose {
    /// For [`Kind::Hold`].
    Hold {
        /// How many holds. 1 to 50.
        repetitions: u8,
        /// Seconds of each hold. 1 to 120.
        hold_s: u16,
        /// Seconds between two holds. 0 to 300.
        rest_s: u16,
    },
    /// For [`Kind::Balance`].
    Balance {
        /// How many trials. 1 to 10.
        trials: u8,
        /// Seconds at which a trial is full and ends. 5 to 60.
        target_s: u16,
        /// Seconds between two trials. 0 to 300.
        rest_s: u16,
    },
    /// For [`Kind::Reps`].
    Reps {
        /// How many sets. 1 to 10.
        sets: u8,
        /// Movements in a set. 1 to 50.
        repetitions: u8,
        /// Seconds between two sets. 0 to 300.
        rest_s: u16,
        /// Seconds of each part of a movement.
        tempo: Tempo,
    },
}

impl Dose {
    /// The kind of exercise that this dose is for.
    pub fn kind(&self) -> Kind {
        match self {
            Dose::Hold { .. } => Kind::Hold,
            Dose::Balance { .. } => Kind::Balance,
            Dose::Reps { .. } => Kind::Reps,
        }
    }

    /// Every quantity of this dose with its value, in reading order.
    pub fn quantities(&self) -> Vec<(Quantity, i64)> {
        use Quantity::*;
        match *self {
            Dose::Hold { repetitions, hold_s, rest_s } => {
                vec![(Repetitions, repetitions.into()), (HoldSeconds, hold_s.into()), (RestSeconds, rest_s.into())]
            }
            Dose::Balance { trials, target_s, rest_s } => {
                vec![(Trials, trials.into()), (TargetSeconds, target_s.into()), (RestSeconds, rest_s.into())]
            }
            Dose::Reps { sets, repetitions, rest_s, tempo: Tempo { up_s, hold_s, down_s } } => vec![
                (Sets, sets.into()),
                (Repetitions, repetitions.into()),
                (RestSeconds, rest_s.into()),
                (TempoUpSeconds, up_s.into()),
                (TempoHoldSeconds, hold_s.into()),
                (TempoDownSeconds, down_s.into()),
            ],
        }
    }

    /// Checks every quantity against [`super::bounds::BOUNDS`].
    ///
    /// # Errors
    /// All that are out of range, in reading order; never an empty list.
    pub fn check(&self) -> Result<(), Vec<OutOfRange>> {
        let out: Vec<_> = self.quantities().into_iter().filter_map(|(q, v)| q.check(v).err()).collect();
        if out.is_empty() { Ok(()) } else { Err(out) }
    }

    /// How many timed parts one doing has on one side: holds, trials or sets.
    pub fn parts(&self) -> u8 {
        match *self {
            Dose::Hold { repetitions, .. } => repetitions,
            Dose::Balance { trials, .. } => trials,
            Dose::Reps { sets, .. } => sets,
        }
    }

    /// Seconds of work on one side, without rests: of a balance exercise the most that it can be.
    pub fn work_s(&self) -> u32 {
        match *self {
            Dose::Hold { repetitions, hold_s, .. } => u32::from(repetitions) * u32::from(hold_s),
            Dose::Balance { trials, target_s, .. } => u32::from(trials) * u32::from(target_s),
            Dose::Reps { sets, repetitions, tempo, .. } => {
                u32::from(sets) * u32::from(repetitions) * u32::from(tempo.seconds())
            }
        }
    }

    /// Seconds of one whole doing with its rests, both sides where there are sides.
    /// There is no rest after the last part; changing sides counts as one rest.
    pub fn total_s(&self, side: Sidedness) -> u32 {
        let rest_s = u32::from(match *self {
            Dose::Hold { rest_s, .. } | Dose::Balance { rest_s, .. } | Dose::Reps { rest_s, .. } => rest_s,
        });
        let sides: u32 = if side == Sidedness::EachSide { 2 } else { 1 };
        let rests = (u32::from(self.parts()) * sides).saturating_sub(1);
        self.work_s() * sides + rests * rest_s
    }
}

impl Tempo {
    /// Seconds of one whole movement.
    pub fn seconds(&self) -> u16 {
        u16::from(self.up_s) + u16::from(self.hold_s) + u16::from(self.down_s)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    const HOLD: Dose = Dose::Hold { repetitions: 3, hold_s: 10, rest_s: 10 };
    const REPS: Dose = Dose::Reps { sets: 2, repetitions: 8, rest_s: 60, tempo: Tempo { up_s: 2, hold_s: 1, down_s: 3 } };

    #[test]
    fn a_usual_dose_passes_and_knows_its_kind() {
        let balance = Dose::Balance { trials: 3, target_s: 30, rest_s: 30 };
        for (dose, kind) in [(HOLD, Kind::Hold), (REPS, Kind::Reps), (balance, Kind::Balance)] {
            assert_eq!(dose.check(), Ok(()));
            assert_eq!(dose.kind(), kind);
        }
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
}
