//! The texts of each kind of exercise, in one place: its dose, its parts, its steps.

use crate::review::Sentence;
use crate::{Key, Words};
use exercises::adherence::DoseUnit;
use exercises::catalogue::{Dose, Kind, Quantity};
use exercises::guide::Beat;

/// The texts that a kind has of its own.
struct KindTexts {
    /// What each field of its dose is called beside its number.
    fields: &'static [(Quantity, Key)],
    /// Where a step leads, by what it changes.
    steps: &'static [(Quantity, Sentence)],
    /// Which part of a run is on.
    part: Key,
    /// Which part of a run comes next.
    next_part: Key,
    /// How many parts were done.
    done: Key,
    /// What the ways out, staying and back of a movement are called.
    movement: [Key; 3],
}

const MOVEMENT: [Key; 3] = [Key::BeatUp, Key::BeatKeep, Key::BeatDown];

const fn texts(kind: Kind) -> KindTexts {
    use Quantity::{
        HoldSeconds, Repetitions, RestSeconds, Sets, TargetSeconds, TempoDownSeconds, TempoHoldSeconds, TempoUpSeconds,
        Trials,
    };
    match kind {
        Kind::Hold => KindTexts {
            fields: &[(Repetitions, Key::DoseHolds), (HoldSeconds, Key::DoseHoldSeconds), (RestSeconds, Key::DoseRest)],
            steps: &[(HoldSeconds, Sentence::ToHoldSeconds), (Repetitions, Sentence::ToHolds)],
            part: Key::HoldOf,
            next_part: Key::NextHoldOf,
            done: Key::DoneHolds,
            movement: MOVEMENT,
        },
        Kind::Balance => KindTexts {
            fields: &[(Trials, Key::DoseTrials), (TargetSeconds, Key::DoseTarget), (RestSeconds, Key::DoseRest)],
            steps: &[(TargetSeconds, Sentence::ToTarget), (Trials, Sentence::ToTrials)],
            part: Key::TryOf,
            next_part: Key::TryOf,
            done: Key::DoneTries,
            movement: MOVEMENT,
        },
        Kind::Reps => KindTexts {
            fields: &[
                (Sets, Key::DoseSets),
                (Repetitions, Key::DoseRepetitions),
                (RestSeconds, Key::DoseRest),
                (TempoUpSeconds, Key::DoseTempoUp),
                (TempoHoldSeconds, Key::DoseTempoHold),
                (TempoDownSeconds, Key::DoseTempoDown),
            ],
            steps: &[(Repetitions, Sentence::ToRepetitions)],
            part: Key::SetOf,
            next_part: Key::NextSetOf,
            done: Key::DoneReps,
            movement: MOVEMENT,
        },
    }
}

/// The sentence of how much of a dose was done, by what it is counted in.
pub(crate) const fn dose_kept(unit: DoseUnit) -> Sentence {
    match unit {
        DoseUnit::HoldSeconds => Sentence::DoseSeconds,
        DoseUnit::Repetitions => Sentence::DoseRepetitions,
        DoseUnit::Trials => Sentence::DoseTrials,
    }
}

impl Words {
    /// "3 holds of 10 seconds".
    pub fn dose(self, dose: Dose) -> String {
        match dose {
            Dose::Hold { repetitions, hold_s, .. } => self.fill(Key::DoseHold, &[("n", &repetitions), ("s", &hold_s)]),
            Dose::Balance { trials, target_s, .. } => self.fill(Key::DoseBalance, &[("n", &trials), ("s", &target_s)]),
            Dose::Reps { sets: 1, repetitions, .. } => self.fill(Key::DoseReps, &[("n", &repetitions)]),
            Dose::Reps { sets, repetitions, .. } => self.fill(Key::DoseRepsSets, &[("sets", &sets), ("n", &repetitions)]),
        }
    }

    /// What a quantity of a dose of `kind` is called beside its number.
    pub fn quantity(self, quantity: Quantity, kind: Kind) -> &'static str {
        of(texts(kind).fields, quantity).map_or("", |key| self.text(key))
    }

    /// "to 15 seconds a hold": a step of a dose of `kind` that brings `quantity` to `to`.
    pub fn dose_step(self, kind: Kind, quantity: Quantity, to: i64) -> String {
        of(texts(kind).steps, quantity).map(|say| self.filled(say, &[("n", &to)])).unwrap_or_default()
    }

    /// "Hold 2 of 3", or "Next: hold 2 of 3".
    pub fn part_of(self, kind: Kind, number: u8, of: u8, comes_next: bool) -> String {
        let texts = texts(kind);
        self.fill(if comes_next { texts.next_part } else { texts.part }, &[("n", &number), ("of", &of)])
    }

    /// "Out", "Stay", "Back".
    pub fn beat(self, kind: Kind, beat: Beat) -> &'static str {
        let [up, keep, down] = texts(kind).movement;
        self.text(match beat {
            Beat::Up => up,
            Beat::Keep => keep,
            Beat::Down => down,
        })
    }

    /// "2 of 3 holds held to the end."
    pub(crate) fn parts_done(self, kind: Kind, done: u32, of: u32) -> String {
        self.fill(texts(kind).done, &[("done", &done), ("of", &of)])
    }
}

fn of<T: Copy>(table: &[(Quantity, T)], quantity: Quantity) -> Option<T> {
    table.iter().find(|(other, _)| *other == quantity).map(|(_, text)| *text)
}

#[cfg(test)]
mod tests {
    use super::*;
    use exercises::catalogue::Lang;

    #[test]
    fn every_field_and_every_step_of_every_kind_has_its_text() {
        let words = Words::new(Lang::En);
        for kind in Kind::ALL {
            let rules = kind.rules();
            let labels = rules.fields().iter().map(|field| words.quantity(field.quantity, *kind));
            assert!(labels.clone().all(|label| !label.is_empty()), "{kind:?}: {:?}", labels.collect::<Vec<_>>());
            let changed = rules.forward().iter().map(|step| step.quantity).chain(rules.back().iter().map(|(q, _)| *q));
            for quantity in changed {
                assert!(words.dose_step(*kind, quantity, 7).contains('7'), "{kind:?} {quantity:?}");
            }
        }
    }
}
