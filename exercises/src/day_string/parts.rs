//! A run as a string: a knot for each of its parts.

use super::day::{KnotShape, Segment};
use crate::catalogue::Dose;
use crate::plan::{Leg, Side};
use crate::run::{Run, TrialEnd, Work};

/// One part of a run: a hold, a set or a trial.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct PartRow {
    /// From 1, within its side.
    pub number: u8,
    /// The side, where there are sides.
    pub leg: Option<Leg>,
    /// The string above its knot.
    pub above: Segment,
    /// What is tied into it.
    pub shape: KnotShape,
    /// The string below.
    pub below: Segment,
    /// What was done.
    pub done: PartDone,
}

/// What was done of a part.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum PartDone {
    /// Held for so many milliseconds of so many.
    Held(u32, u32),
    /// So many repetitions of so many.
    Counted(u8, u8),
    /// Stood for so many milliseconds; whether the target ended it.
    Stood(u32, bool),
    /// A trial that was no measurement.
    CutOff,
    /// Not come to.
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
            PartRow { number: place + 1, leg: *leg, above: side, shape: shape(done), below: side, done }
        })
    });
    let mut rows: Vec<PartRow> = all.collect();
    if let Some(first) = rows.first_mut() {
        first.above = Segment::End;
    }
    if let Some(last) = rows.last_mut() {
        last.below = Segment::End;
    }
    rows
}

/// What was done on one side, in order.
fn done(run: &Run, leg: Option<Leg>) -> Vec<PartDone> {
    match (&run.work, run.dose) {
        (Work::Hold(holds), Dose::Hold { hold_s, .. }) => {
            let own = holds.iter().filter(|held| held.leg == leg);
            own.map(|held| PartDone::Held(held.held_ms, u32::from(hold_s) * 1000)).collect()
        }
        (Work::Reps(sets), Dose::Reps { repetitions, .. }) => {
            let own = sets.iter().filter(|set| set.leg == leg);
            own.map(|set| PartDone::Counted(set.done, repetitions)).collect()
        }
        (Work::Balance(balance), _) => {
            let own = balance.trials.iter().filter(|trial| Some(trial.leg) == leg);
            let done = |trial: &crate::run::Trial| match trial.end {
                TrialEnd::CutOff => PartDone::CutOff,
                end => PartDone::Stood(trial.held_ms, end == TrialEnd::Target),
            };
            own.map(done).collect()
        }
        _ => Vec::new(),
    }
}

fn shape(done: PartDone) -> KnotShape {
    let part = |done: u32, of: u32| {
        if done >= of { KnotShape::Knot } else { KnotShape::Half(f64::from(done) / f64::from(of.max(1))) }
    };
    match done {
        PartDone::Held(ms, of) => part(ms, of),
        PartDone::Counted(n, of) => part(n.into(), of.into()),
        // A trial's time is a result and not a dose: each that was measured is a knot.
        PartDone::Stood(..) => KnotShape::Knot,
        PartDone::CutOff => KnotShape::Loop,
        PartDone::Not => KnotShape::Peg,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::catalogue::{ExerciseId, Eyes, Surface};
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
        let held = |held_ms| HoldRecord { leg: None, held_ms };
        let rows = parts(&run(dose, Work::Hold(vec![held(10_000), held(4_000)])), Side::Neither);
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
        let trial = |leg, held_ms, end| Trial { leg, held_ms, end };
        let trials = vec![
            trial(Leg::Left, 12_000, TrialEnd::Touch),
            trial(Leg::Left, 3_000, TrialEnd::CutOff),
            trial(Leg::Right, 30_000, TrialEnd::Target),
        ];
        let balance = Balance { set_up: SetUp::OnSupport, surface: Surface::Firm, eyes: Eyes::Open, trials };
        let rows = parts(&run(dose, Work::Balance(balance)), Side::Both);
        let done: Vec<_> = rows.iter().map(|row| (row.leg, row.number, row.done)).collect();
        let expected = [
            (Some(Leg::Left), 1, PartDone::Stood(12_000, false)),
            (Some(Leg::Left), 2, PartDone::CutOff),
            (Some(Leg::Right), 1, PartDone::Stood(30_000, true)),
            (Some(Leg::Right), 2, PartDone::Not),
        ];
        assert_eq!(done, expected);
    }
}
