//! A run, as written in a log entry.

use super::SlotOut;
use crate::cbor::AtMost;
use crate::codes::Code;
use crate::parts::DoseOut;
use exercises::catalogue::{ExerciseId, Eyes, RungId, Surface};
use exercises::id::{ItemId, RunId};
use exercises::plan::BodySide;
use exercises::run::{Balance, HoldRecord, Run, RunEnd, SetRecord, SetUp, Tally, Trial, TrialEnd, Work};
use exercises::time::Stamp;
use minicbor::{Decode, Encode};

/// Largest number of holds, sets or trials in one run, more than a dose can prescribe. Any beyond it are not written, because
/// an entry that cannot be read back would make the whole log unreadable.
const MAX_PARTS: usize = 256;

#[derive(Encode, Decode)]
pub(super) struct RunOut {
    #[n(0)]
    id: u32,
    #[n(1)]
    item: u8,
    #[n(2)]
    exercise: String,
    #[n(3)]
    rung: Option<String>,
    #[n(4)]
    dose: DoseOut,
    #[n(5)]
    slot: Option<SlotOut>,
    #[n(6)]
    started_ms: i64,
    #[n(7)]
    offset_s: i32,
    #[n(8)]
    live: bool,
    #[n(9)]
    end: Code<RunEnd>,
    #[n(10)]
    paused_ms: u32,
    #[n(11)]
    interruptions: AtMost<u32, MAX_PARTS>,
    #[n(12)]
    work: WorkOut,
}

#[derive(Encode, Decode)]
#[cbor(flat)]
enum WorkOut {
    #[n(0)]
    Timed(#[n(0)] AtMost<HeldOut, MAX_PARTS>),
    #[n(1)]
    Counted(#[n(0)] AtMost<CountedOut, MAX_PARTS>),
    #[n(2)]
    Balance(#[n(0)] Code<SetUp>, #[n(1)] Code<Surface>, #[n(2)] Code<Eyes>, #[n(3)] AtMost<TrialOut, MAX_PARTS>),
    #[n(3)]
    Tally(#[n(0)] u32, #[n(1)] Option<u8>),
}

#[derive(Encode, Decode)]
struct HeldOut(#[n(0)] Option<Code<BodySide>>, #[n(1)] u32);

#[derive(Encode, Decode)]
struct CountedOut(#[n(0)] Option<Code<BodySide>>, #[n(1)] u8, #[n(2)] u8);

#[derive(Encode, Decode)]
struct TrialOut(#[n(0)] Option<Code<BodySide>>, #[n(1)] u32, #[n(2)] Code<TrialEnd>);

impl From<&Run> for RunOut {
    fn from(run: &Run) -> RunOut {
        let Run { id, item, exercise, rung, dose, slot, started, live, end, paused_ms, interruptions, work } = run;
        let kept = interruptions.iter().copied().take(MAX_PARTS).collect();
        RunOut {
            id: id.0,
            item: item.0,
            exercise: exercise.to_string(),
            rung: rung.as_ref().map(RungId::to_string),
            dose: DoseOut(*dose),
            slot: slot.map(SlotOut::from),
            started_ms: started.utc_ms,
            offset_s: started.offset_s,
            live: *live,
            end: Code(*end),
            paused_ms: *paused_ms,
            interruptions: AtMost(kept),
            work: work.into(),
        }
    }
}

impl From<&Work> for WorkOut {
    fn from(work: &Work) -> WorkOut {
        match work {
            Work::Timed(holds) => {
                let held = |HoldRecord { side: leg, held_ms }: &HoldRecord| HeldOut(leg.map(Code), *held_ms);
                WorkOut::Timed(AtMost(holds.iter().take(MAX_PARTS).map(held).collect()))
            }
            Work::Counted(sets) => {
                let sets = sets
                    .iter()
                    .take(MAX_PARTS)
                    .map(|SetRecord { side: leg, done, failed }| CountedOut(leg.map(Code), *done, *failed));
                WorkOut::Counted(AtMost(sets.collect()))
            }
            Work::Balance(Balance { set_up, surface, eyes, trials }) => {
                let trial = |Trial { leg, held_ms, end }: &Trial| TrialOut(leg.map(Code), *held_ms, Code(*end));
                let trials = trials.iter().take(MAX_PARTS).map(trial).collect();
                WorkOut::Balance(Code(*set_up), Code(*surface), Code(*eyes), AtMost(trials))
            }
            Work::Tally(Tally { held_ms, count }) => WorkOut::Tally(*held_ms, *count),
        }
    }
}

impl RunOut {
    /// The run; `None` if an id is not valid.
    pub(super) fn run(self) -> Option<Run> {
        Some(Run {
            id: RunId(self.id),
            item: ItemId(self.item),
            exercise: ExerciseId::new(self.exercise).ok()?,
            rung: self.rung.map(RungId::new).transpose().ok()?,
            dose: self.dose.0,
            slot: self.slot.map(Into::into),
            started: Stamp { utc_ms: self.started_ms, offset_s: self.offset_s },
            live: self.live,
            end: self.end.0,
            paused_ms: self.paused_ms,
            interruptions: self.interruptions.0,
            work: self.work.into(),
        })
    }
}

impl From<WorkOut> for Work {
    fn from(out: WorkOut) -> Work {
        match out {
            WorkOut::Timed(AtMost(holds)) => {
                let holds =
                    holds.into_iter().map(|HeldOut(leg, held_ms)| HoldRecord { side: leg.map(|leg| leg.0), held_ms });
                Work::Timed(holds.collect())
            }
            WorkOut::Counted(AtMost(sets)) => {
                let set =
                    |CountedOut(leg, done, failed)| SetRecord { side: leg.map(|leg: Code<BodySide>| leg.0), done, failed };
                Work::Counted(sets.into_iter().map(set).collect())
            }
            WorkOut::Tally(held_ms, count) => Work::Tally(Tally { held_ms, count }),
            WorkOut::Balance(Code(set_up), Code(surface), Code(eyes), AtMost(trials)) => {
                let trial =
                    |TrialOut(leg, held_ms, end)| Trial { leg: leg.map(|leg: Code<BodySide>| leg.0), held_ms, end: end.0 };
                Work::Balance(Balance { set_up, surface, eyes, trials: trials.into_iter().map(trial).collect() })
            }
        }
    }
}
