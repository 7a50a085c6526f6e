//! A run as a string with a knot for each of its parts.

use super::day::{KnotShape, Segment};
use crate::catalogue::kind::DoseUnit;
use crate::plan::{BodySide, Side};
use crate::run::{Run, TrialEnd, Work};

/// One part of a run: a hold, a set or a trial.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct PartRow {
    /// Number of the part within its side, from 1.
    pub number: u8,
    /// The side, if the exercise has sides.
    pub side: Option<BodySide>,
    /// The string above its knot.
    pub above: Segment,
    /// The knot or other sign in the string.
    pub shape: KnotShape,
    /// The string below its knot.
    pub below: Segment,
    /// What was done of it.
    pub done: PartDone,
}

/// What was done of a part.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum PartDone {
    /// Milliseconds held, and milliseconds asked for.
    Held(u32, u32),
    /// The same for something that is counted in minutes.
    Lasted(u32, u32),
    /// Repetitions done, and repetitions asked for.
    Counted(u8, u8),
    /// Milliseconds of a balance trial, and whether it lasted until the target.
    Stood(u32, bool),
    /// A balance trial that was cut off and is not a measurement.
    CutOff,
    /// A test by repetitions: their number if it is known, milliseconds done, and milliseconds asked for.
    Tallied(Option<u8>, u32, u32),
    /// Not started.
    Not,
}

/// The parts of `run`, in the order in which they are done.
pub fn parts(run: &Run, side: Side) -> Vec<PartRow> {
    let each = run.dose.parts();
    let legs = side.in_turn().iter();
    let all = legs.flat_map(|leg| {
        let done = done(run, *leg);
        (0..each).map(move |place| {
            let done = done.get(usize::from(place)).copied().unwrap_or(PartDone::Not);
            let side = if done == PartDone::Not { Segment::ToCome } else { Segment::Past };
            PartRow { number: place + 1, side: *leg, above: side, shape: shape(done), below: side, done }
        })
    });
    let mut rows: Vec<PartRow> = all.collect();
    if side == Side::Alternating {
        rows.sort_by_key(|row| row.number);
    }
    if let Some(first) = rows.first_mut() {
        first.above = Segment::End;
    }
    if let Some(last) = rows.last_mut() {
        last.below = Segment::End;
    }
    rows
}

/// What was done on one side, in order.
fn done(run: &Run, leg: Option<BodySide>) -> Vec<PartDone> {
    let amount = run.dose.part_amount();
    match &run.work {
        _ if !run.fits() => Vec::new(),
        Work::Timed(parts) => {
            let own = parts.iter().filter(|held| held.side == leg);
            let minutes = run.dose.kind().rules().unit() == DoseUnit::Minutes;
            let done = if minutes { PartDone::Lasted } else { PartDone::Held };
            own.map(|held| done(held.held_ms.min(amount), amount)).collect()
        }
        Work::Counted(sets) => {
            let own = sets.iter().filter(|set| set.side == leg);
            own.map(|set| PartDone::Counted(set.done, u8::try_from(amount).unwrap_or(u8::MAX))).collect()
        }
        Work::Balance(balance) => {
            let own = balance.trials.iter().filter(|trial| trial.leg == leg);
            let done = |trial: &crate::run::Trial| match trial.end {
                TrialEnd::CutOff => PartDone::CutOff,
                end => PartDone::Stood(trial.held_ms, end == TrialEnd::Target),
            };
            own.map(done).collect()
        }
        Work::Tally(tally) if tally.held_ms > 0 => vec![PartDone::Tallied(tally.count, tally.held_ms, run.dose.part_ms())],
        Work::Tally(_) => Vec::new(),
    }
}

fn shape(done: PartDone) -> KnotShape {
    let part = |done: u32, of: u32| {
        if done >= of { KnotShape::Knot } else { KnotShape::Half(f64::from(done) / f64::from(of.max(1))) }
    };
    match done {
        PartDone::Held(ms, of) | PartDone::Lasted(ms, of) => part(ms, of),
        PartDone::Counted(n, of) => part(n.into(), of.into()),
        // A trial's time is a result and not a dose, so each trial that was measured is a full knot.
        PartDone::Stood(..) => KnotShape::Knot,
        PartDone::Tallied(count, ms, of) if ms >= of && count.is_none() => KnotShape::Loop,
        PartDone::Tallied(_, ms, of) => part(ms, of),
        PartDone::CutOff => KnotShape::Loop,
        PartDone::Not => KnotShape::Peg,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::catalogue::{Dose, ExerciseId, Eyes, Surface};
    use crate::id::{ItemId, RunId};
    use crate::run::{Balance, HoldRecord, RunEnd, SetUp, Trial};
    use crate::time::Stamp;

    fn run(dose: Dose, work: Work) -> Run {
        Run {
            id: RunId(1),
            item: ItemId(1),
            exercise: ExerciseId::new("an-exercise").expect("kebab-case"),
            rung: None,
            dose,
            slot: None,
            started: Stamp { utc_ms: 0, offset_s: 0 },
            live: true,
            end: RunEnd::Stopped,
            paused_ms: 0,
            interruptions: Vec::new(),
            work,
        }
    }

    #[test]
    fn a_run_that_was_stopped_has_its_knots_so_far() {
        let dose = Dose::Hold { repetitions: 3, hold_s: 10, rest_s: 0 };
        let held = |held_ms| HoldRecord { side: None, held_ms };
        let rows = parts(&run(dose, Work::Timed(vec![held(10_000), held(4_000)])), Side::Neither);
        assert_eq!(
            rows.iter().map(|row| row.shape).collect::<Vec<_>>(),
            [KnotShape::Knot, KnotShape::Half(0.4), KnotShape::Peg]
        );
        let strands: Vec<_> = rows.iter().map(|row| (row.above, row.below)).collect();
        let expected = [(Segment::End, Segment::Past), (Segment::Past, Segment::Past), (Segment::ToCome, Segment::End)];
        assert_eq!(strands, expected);
    }

    #[test]
    fn each_side_has_its_own_parts() {
        let dose = Dose::Balance { trials: 2, target_s: 30, rest_s: 0 };
        let trial = |leg, held_ms, end| Trial { leg: Some(leg), held_ms, end };
        let trials = vec![
            trial(BodySide::Left, 12_000, TrialEnd::Touch),
            trial(BodySide::Left, 3_000, TrialEnd::CutOff),
            trial(BodySide::Right, 30_000, TrialEnd::Target),
        ];
        let balance = Balance { set_up: SetUp::OnSupport, surface: Surface::Firm, eyes: Eyes::Open, trials };
        let rows = parts(&run(dose, Work::Balance(balance)), Side::Both);
        let done: Vec<_> = rows.iter().map(|row| (row.side, row.number, row.done)).collect();
        let expected = [
            (Some(BodySide::Left), 1, PartDone::Stood(12_000, false)),
            (Some(BodySide::Left), 2, PartDone::CutOff),
            (Some(BodySide::Right), 1, PartDone::Stood(30_000, true)),
            (Some(BodySide::Right), 2, PartDone::Not),
        ];
        assert_eq!(done, expected);
    }
}
