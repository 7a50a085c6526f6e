//! The course of a run, laid out in advance: every step with its length.

use crate::catalogue::{Dose, Tempo};
use crate::plan::{Leg, Side};
use crate::run::SetUp;

/// Before the first part, in milliseconds: time to take the position.
pub const FIRST_COUNT_IN_MS: u64 = 5_000;
/// Before every other part, in milliseconds: three, two, one.
pub const COUNT_IN_MS: u64 = 3_000;
/// Before a balance trial, in milliseconds: time to lay the phone down and the hand over it.
pub const BALANCE_COUNT_IN_MS: u64 = 5_000;
/// Before a trial with the phone at the breastbone, in milliseconds: time to press, raise the phone and stand.
pub const BREASTBONE_COUNT_IN_MS: u64 = 8_000;
/// Before a trial with the phone in a pocket, in milliseconds: time to put it away and stand.
pub const POCKET_COUNT_IN_MS: u64 = 15_000;
/// Least rest where the sides change, in milliseconds, the count-in not included.
pub const CHANGE_SIDES_MS: u64 = 5_000;
/// After a trial nothing can be pressed for so long, in milliseconds, so that the touch that ends it chooses nothing.
pub const SETTLE_MS: u64 = 1_000;

/// Which of the parts of a run: the hold, the set or the trial.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Part {
    /// From 1, within its side.
    pub number: u8,
    /// Parts of this side.
    pub of: u8,
    /// The side, where there are sides.
    pub leg: Option<Leg>,
    /// Whether another side came before and this is its first part.
    pub changes_side: bool,
    /// Whether it is the run's last.
    pub last: bool,
}

/// The three beats of a repetition.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Beat {
    /// Outward.
    Up,
    /// Staying there.
    Keep,
    /// Back.
    Down,
}

/// One step of the course.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) struct Step {
    pub kind: StepKind,
    /// The part that it belongs to; of a count-in, a rest or a wait the one that follows.
    pub part: Part,
    /// Its length; a wait has none.
    pub ms: u64,
}

#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum StepKind {
    /// Nothing goes on until the person says so.
    Wait,
    CountIn,
    Hold,
    /// Repetition from 0.
    Beat(u8, Beat),
    Trial,
    /// The moment after a trial.
    Settle,
    Rest,
}

impl StepKind {
    /// Whether the dose is being done.
    pub fn is_work(self) -> bool {
        matches!(self, StepKind::Hold | StepKind::Beat(..) | StepKind::Trial)
    }
}

/// All steps of a run with this dose on this side. There is no rest before the first part nor after the last.
/// `set_up` says where the phone is, for a stance.
pub(super) fn course(dose: Dose, side: Side, set_up: SetUp) -> Vec<Step> {
    let parts = parts(dose.parts(), side);
    let mut steps = Vec::new();
    for (index, part) in parts.into_iter().enumerate() {
        let first = index == 0;
        match dose {
            Dose::Hold { hold_s, rest_s, .. } => {
                lead(&mut steps, part, first, rest_s);
                steps.push(Step { kind: StepKind::Hold, part, ms: seconds(hold_s) });
            }
            Dose::Reps { repetitions, rest_s, tempo, .. } => {
                lead(&mut steps, part, first, rest_s);
                beats(&mut steps, part, repetitions, tempo);
            }
            Dose::Balance { target_s, rest_s, .. } => {
                trial(&mut steps, part, first, seconds(target_s), rest_s, count_in_ms(set_up));
            }
        }
    }
    steps
}

fn parts(each: u8, side: Side) -> Vec<Part> {
    let sides = side.in_turn();
    let all = sides.iter().enumerate().flat_map(|(turn, leg)| {
        let last_side = turn + 1 == sides.len();
        (1..=each).map(move |number| Part {
            number,
            of: each,
            leg: *leg,
            changes_side: turn > 0 && number == 1,
            last: last_side && number == each,
        })
    });
    all.collect()
}

/// The rest and the count-in before a part. The count-in is the rest's end; where the rest is shorter, it is lengthened.
fn lead(steps: &mut Vec<Step>, part: Part, first: bool, rest_s: u16) {
    if first {
        steps.push(Step { kind: StepKind::CountIn, part, ms: FIRST_COUNT_IN_MS });
        return;
    }
    let least = if part.changes_side { CHANGE_SIDES_MS } else { 0 };
    let rest = seconds(rest_s).saturating_sub(COUNT_IN_MS).max(least);
    if rest > 0 {
        steps.push(Step { kind: StepKind::Rest, part, ms: rest });
    }
    steps.push(Step { kind: StepKind::CountIn, part, ms: COUNT_IN_MS });
}

fn beats(steps: &mut Vec<Step>, part: Part, repetitions: u8, tempo: Tempo) {
    for repetition in 0..repetitions {
        let each = [(Beat::Up, tempo.up_s), (Beat::Keep, tempo.hold_s), (Beat::Down, tempo.down_s)];
        // A beat of no length is left out, but the return always is there: it ends the repetition.
        let kept = each.into_iter().filter(|(beat, s)| *s > 0 || *beat == Beat::Down);
        steps.extend(kept.map(|(beat, s)| Step { kind: StepKind::Beat(repetition, beat), part, ms: seconds(s) }));
    }
}

fn count_in_ms(set_up: SetUp) -> u64 {
    match set_up {
        SetUp::OnSupport => BALANCE_COUNT_IN_MS,
        SetUp::AtBreastbone => BREASTBONE_COUNT_IN_MS,
        SetUp::InPocket => POCKET_COUNT_IN_MS,
    }
}

/// A trial never begins by itself: the person says when.
fn trial(steps: &mut Vec<Step>, part: Part, first: bool, target_ms: u64, rest_s: u16, count_in_ms: u64) {
    if !first && rest_s > 0 {
        steps.push(Step { kind: StepKind::Rest, part, ms: seconds(rest_s) });
    }
    steps.push(Step { kind: StepKind::Wait, part, ms: 0 });
    steps.push(Step { kind: StepKind::CountIn, part, ms: count_in_ms });
    steps.push(Step { kind: StepKind::Trial, part, ms: target_ms });
    steps.push(Step { kind: StepKind::Settle, part, ms: SETTLE_MS });
}

fn seconds(s: impl Into<u64>) -> u64 {
    s.into() * 1000
}

#[cfg(test)]
mod tests {
    use super::*;

    fn lengths(dose: Dose, side: Side) -> Vec<(StepKind, u64)> {
        course(dose, side, SetUp::OnSupport).into_iter().map(|step| (step.kind, step.ms)).collect()
    }

    #[test]
    fn the_last_three_seconds_of_a_rest_are_the_count_in() {
        let dose = Dose::Hold { repetitions: 2, hold_s: 10, rest_s: 10 };
        let expected = [
            (StepKind::CountIn, 5_000),
            (StepKind::Hold, 10_000),
            (StepKind::Rest, 7_000),
            (StepKind::CountIn, 3_000),
            (StepKind::Hold, 10_000),
        ];
        assert_eq!(lengths(dose, Side::Neither), expected);
    }

    #[test]
    fn without_a_rest_there_still_is_a_count_in_and_time_to_change_sides() {
        let dose = Dose::Hold { repetitions: 1, hold_s: 5, rest_s: 0 };
        let expected = [
            (StepKind::CountIn, 5_000),
            (StepKind::Hold, 5_000),
            (StepKind::Rest, CHANGE_SIDES_MS),
            (StepKind::CountIn, 3_000),
            (StepKind::Hold, 5_000),
        ];
        assert_eq!(lengths(dose, Side::Both), expected);
    }

    #[test]
    fn each_side_gets_its_full_dose_one_after_the_other() {
        let dose = Dose::Balance { trials: 2, target_s: 30, rest_s: 30 };
        let trials: Vec<Part> = course(dose, Side::Both, SetUp::OnSupport)
            .iter()
            .filter(|s| s.kind == StepKind::Trial)
            .map(|s| s.part)
            .collect();
        let order: Vec<_> = trials.iter().map(|part| (part.leg, part.number, part.changes_side, part.last)).collect();
        let expected = [
            (Some(Leg::Left), 1, false, false),
            (Some(Leg::Left), 2, false, false),
            (Some(Leg::Right), 1, true, false),
            (Some(Leg::Right), 2, false, true),
        ];
        assert_eq!(order, expected);
    }

    #[test]
    fn every_trial_waits_for_the_person() {
        let dose = Dose::Balance { trials: 3, target_s: 5, rest_s: 0 };
        let steps = course(dose, Side::Left, SetUp::OnSupport);
        assert_eq!(steps.iter().filter(|step| step.kind == StepKind::Wait).count(), 3);
        let before: Vec<StepKind> = steps.windows(2).filter(|w| w[1].kind == StepKind::CountIn).map(|w| w[0].kind).collect();
        assert_eq!(before, [StepKind::Wait; 3]);
    }

    #[test]
    fn a_tempo_without_a_stay_has_two_beats() {
        let tempo = Tempo { up_s: 2, hold_s: 0, down_s: 3 };
        let dose = Dose::Reps { sets: 1, repetitions: 2, rest_s: 0, tempo };
        let expected = [
            (StepKind::CountIn, 5_000),
            (StepKind::Beat(0, Beat::Up), 2_000),
            (StepKind::Beat(0, Beat::Down), 3_000),
            (StepKind::Beat(1, Beat::Up), 2_000),
            (StepKind::Beat(1, Beat::Down), 3_000),
        ];
        assert_eq!(lengths(dose, Side::Neither), expected);
    }
}
