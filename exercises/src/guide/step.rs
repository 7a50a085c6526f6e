//! The course of a run, computed in advance: every step with its length.

use crate::catalogue::kind::BreathPace;
use crate::catalogue::kind::{Lead, PartCourse, PartWork};
use crate::catalogue::{Dose, Tempo};
use crate::plan::{BodySide, Side};
use crate::run::SetUp;

/// Count-in before the first part, in milliseconds: time to take the position.
pub const FIRST_COUNT_IN_MS: u64 = 5_000;
/// Count-in before every other part, in milliseconds: three, two, one.
pub const COUNT_IN_MS: u64 = 3_000;
/// Count-in before a balance trial, in milliseconds: time to lay the phone down and hold the hand over it.
pub const BALANCE_COUNT_IN_MS: u64 = 5_000;
/// Count-in before a trial with the phone at the breastbone, in milliseconds: time to press, raise the phone and stand.
pub const BREASTBONE_COUNT_IN_MS: u64 = 8_000;
/// Count-in before a trial with the phone in a pocket, in milliseconds: time to put it away and stand.
pub const POCKET_COUNT_IN_MS: u64 = 15_000;
/// Least rest when changing sides, in milliseconds, without the count-in.
pub const CHANGE_SIDES_MS: u64 = 5_000;
/// Time for easing into a stretch, in milliseconds.
pub const EASE_IN_MS: u64 = 5_000;
/// Time after a trial in which presses have no effect, in milliseconds, so that the touch that ends the trial triggers nothing else.
pub const SETTLE_MS: u64 = 1_000;

/// Milliseconds in a minute.
const MINUTE_MS: u64 = 60_000;

/// One part of a run: a hold, a set or a trial.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Part {
    /// Number of the part within its side, from 1.
    pub number: u8,
    /// Number of parts on this side.
    pub of: u8,
    /// The side, if the exercise has sides.
    pub side: Option<BodySide>,
    /// Whether this is the first part of its side and another side came before.
    pub changes_side: bool,
    /// Whether it is the last part of the run.
    pub last: bool,
}

/// The three beats of a repetition.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Beat {
    /// Outward movement.
    Up,
    /// Staying in the position.
    Keep,
    /// Movement back.
    Down,
}

/// The four parts of a breath.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Breathing {
    /// Breathing in.
    In,
    /// Staying after it.
    Full,
    /// Breathing out.
    Out,
    /// Staying after it.
    Empty,
}

/// One step of the course.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) struct Step {
    pub kind: StepKind,
    /// The part that it belongs to. For a count-in, a rest or a wait it is the part that follows.
    pub part: Part,
    /// Length of the step, in milliseconds; 0 for a step that lasts until a press.
    pub ms: u64,
}

#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum StepKind {
    /// Waits until the person continues.
    Wait,
    CountIn,
    Hold,
    /// Easing into a stretch.
    EaseIn,
    Stretch,
    /// Movements at the person's own pace; lasts until all are counted, or the person says that they are done.
    OwnPace,
    /// A fixed time that needs no guidance.
    Timer,
    /// Waits until the person has said how long it was, of which a part was counted without anybody seeing it.
    Confirm,
    /// One part of a breath; breaths are counted from 0.
    Breath(u16, Breathing),
    /// One beat of a repetition; repetitions are counted from 0.
    Beat(u8, Beat),
    Trial,
    /// Movements on a beat, which comes each so many milliseconds.
    OnBeat(u64),
    /// The time of a test in which the person counts movements.
    Tally,
    /// Waits until the person has said how many there were.
    Say,
    /// The moment after a trial, in which presses have no effect.
    Settle,
    Rest,
}

impl StepKind {
    /// Whether the exercise is being done in this step.
    pub fn is_work(self) -> bool {
        match self {
            StepKind::Hold
            | StepKind::Stretch
            | StepKind::OwnPace
            | StepKind::Timer
            | StepKind::Breath(..)
            | StepKind::Beat(..)
            | StepKind::Tally
            | StepKind::OnBeat(_)
            | StepKind::Trial => true,
            StepKind::Wait
            | StepKind::CountIn
            | StepKind::EaseIn
            | StepKind::Confirm
            | StepKind::Say
            | StepKind::Settle
            | StepKind::Rest => false,
        }
    }

    /// Whether it is a part of a breath.
    pub fn is_breath(self) -> bool {
        matches!(self, StepKind::Breath(..))
    }

    /// Whether it lasts until a press.
    pub fn is_open(self) -> bool {
        matches!(self, StepKind::Wait | StepKind::OwnPace | StepKind::Confirm | StepKind::Say)
    }
}

/// All steps of a run with this dose on this side; the exercise's kind defines the steps of one part. There is no rest before the
/// first part nor after the last. `set_up` says where the phone is, for a stance.
pub(super) fn course(dose: Dose, side: Side, set_up: SetUp) -> Vec<Step> {
    let PartCourse { lead, rest_s, work } = dose.kind().rules().course(&dose);
    let mut steps = Vec::new();
    for (index, turns) in turns(parts(dose.parts(), side), side, work).into_iter().enumerate() {
        let Some(part) = turns.first().copied() else { continue };
        let first = index == 0;
        match lead {
            Lead::CountIn => count_in(&mut steps, part, first, rest_s),
            Lead::WhenReady => when_ready(&mut steps, part, first, rest_s, count_in_ms(set_up)),
            Lead::AtOnce => {}
        }
        add_work(&mut steps, work, &turns);
    }
    steps
}

/// Adds the steps of the work itself. `turns` are the parts whose movements take turns; of any other work there is one.
fn add_work(steps: &mut Vec<Step>, work: PartWork, turns: &[Part]) {
    let Some(part) = turns.first().copied() else { return };
    match work {
        PartWork::Hold { s } => steps.push(Step { kind: StepKind::Hold, part, ms: seconds(s) }),
        PartWork::Stretch { s } => {
            steps.push(Step { kind: StepKind::EaseIn, part, ms: EASE_IN_MS });
            steps.push(Step { kind: StepKind::Stretch, part, ms: seconds(s) });
        }
        PartWork::Movements { count, tempo } => beats(steps, turns, count, tempo),
        PartWork::OwnPace { .. } => steps.push(Step { kind: StepKind::OwnPace, part, ms: 0 }),
        PartWork::Timer { s, .. } => {
            steps.push(Step { kind: StepKind::Timer, part, ms: seconds(s) });
            steps.push(Step { kind: StepKind::Confirm, part, ms: 0 });
        }
        PartWork::Breaths { s, pace } => breaths(steps, part, s, pace),
        PartWork::OnBeat { s, per_minute } => {
            let each_ms = MINUTE_MS / u64::from(per_minute.max(1));
            steps.push(Step { kind: StepKind::OnBeat(each_ms), part, ms: seconds(s) });
        }
        PartWork::Tally { s } => {
            steps.push(Step { kind: StepKind::Tally, part, ms: seconds(s) });
            steps.push(Step { kind: StepKind::Say, part, ms: 0 });
        }
        PartWork::Trial { s } => {
            steps.push(Step { kind: StepKind::Trial, part, ms: seconds(s) });
            steps.push(Step { kind: StepKind::Settle, part, ms: SETTLE_MS });
        }
    }
}

/// The parts, those together whose movements take turns.
fn turns(parts: Vec<Part>, side: Side, work: PartWork) -> Vec<Vec<Part>> {
    let movements = matches!(work, PartWork::Movements { .. } | PartWork::OwnPace { .. });
    let together = if side == Side::Alternating && movements { 2 } else { 1 };
    parts.chunks(together).map(<[Part]>::to_vec).collect()
}

fn parts(each: u8, side: Side) -> Vec<Part> {
    let sides = side.in_turn();
    if side == Side::Alternating {
        let turn = |number: u8| {
            sides.iter().enumerate().map(move |(turn, leg)| Part {
                number,
                of: each,
                side: *leg,
                changes_side: number > 1 || turn > 0,
                last: number == each && turn + 1 == sides.len(),
            })
        };
        return (1..=each).flat_map(turn).collect();
    }
    let all = sides.iter().enumerate().flat_map(|(turn, leg)| {
        let last_side = turn + 1 == sides.len();
        (1..=each).map(move |number| Part {
            number,
            of: each,
            side: *leg,
            changes_side: turn > 0 && number == 1,
            last: last_side && number == each,
        })
    });
    all.collect()
}

/// Adds the rest and the count-in before a part. The count-in is the end of the rest; a shorter rest is lengthened to it.
fn count_in(steps: &mut Vec<Step>, part: Part, first: bool, rest_s: u16) {
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

fn beats(steps: &mut Vec<Step>, turns: &[Part], repetitions: u8, tempo: Tempo) {
    for (repetition, part) in (0..repetitions).flat_map(|repetition| turns.iter().map(move |part| (repetition, *part))) {
        let each = [(Beat::Up, tempo.up_s), (Beat::Keep, tempo.hold_s), (Beat::Down, tempo.down_s)];
        // A beat of length 0 is left out, except for the return, which ends the repetition.
        let kept = each.into_iter().filter(|(beat, s)| *s > 0 || *beat == Beat::Down);
        steps.extend(kept.map(|(beat, s)| Step { kind: StepKind::Beat(repetition, beat), part, ms: seconds(s) }));
    }
}

/// Adds whole breaths until the time is over.
fn breaths(steps: &mut Vec<Step>, part: Part, s: u16, pace: BreathPace) {
    let count = s.div_ceil(pace.seconds().max(1));
    for breath in 0..count {
        let each = [
            (Breathing::In, pace.in_s),
            (Breathing::Full, pace.full_s),
            (Breathing::Out, pace.out_s),
            (Breathing::Empty, pace.empty_s),
        ];
        let kept = each.into_iter().filter(|(_, s)| *s > 0);
        steps.extend(kept.map(|(part_of, s)| Step { kind: StepKind::Breath(breath, part_of), part, ms: seconds(s) }));
    }
}

fn count_in_ms(set_up: SetUp) -> u64 {
    match set_up {
        SetUp::OnSupport => BALANCE_COUNT_IN_MS,
        SetUp::AtBreastbone => BREASTBONE_COUNT_IN_MS,
        SetUp::InPocket => POCKET_COUNT_IN_MS,
    }
}

/// Adds the rest, the wait until the person starts, and a count-in that leaves time to put the phone in place.
fn when_ready(steps: &mut Vec<Step>, part: Part, first: bool, rest_s: u16, count_in_ms: u64) {
    if !first && rest_s > 0 {
        steps.push(Step { kind: StepKind::Rest, part, ms: seconds(rest_s) });
    }
    steps.push(Step { kind: StepKind::Wait, part, ms: 0 });
    steps.push(Step { kind: StepKind::CountIn, part, ms: count_in_ms });
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
        let order: Vec<_> = trials.iter().map(|part| (part.side, part.number, part.changes_side, part.last)).collect();
        let expected = [
            (Some(BodySide::Left), 1, false, false),
            (Some(BodySide::Left), 2, false, false),
            (Some(BodySide::Right), 1, true, false),
            (Some(BodySide::Right), 2, false, true),
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
