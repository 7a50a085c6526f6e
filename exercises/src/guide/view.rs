//! What the screen shows of a run, ready to be painted.

use super::course::Guide;
use super::event::Phase;
use super::stage::Stage;
use super::step::{Beat, COUNT_IN_MS, Part, Step, StepKind};
use crate::catalogue::Kind;
use crate::catalogue::kind::PartWork;

/// So long before a hold or a set begins, and after it ends, the figure moves into and out of its position, milliseconds.
const MOVE_MS: u64 = 1_200;

/// What can be pressed now.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct Controls {
    /// Anywhere: it ends the trial, or takes its count-in back.
    pub touch: bool,
    /// "Pause".
    pub pause: bool,
    /// "Go on".
    pub resume: bool,
    /// The next one now.
    pub next: bool,
    /// "More rest".
    pub more_rest: bool,
    /// "That one failed".
    pub failed: bool,
    /// "Stop" and "Something is wrong".
    pub stop: bool,
}

/// What the screen shows of a run.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct GuideView {
    /// How the exercise is timed.
    pub kind: Kind,
    /// What is on.
    pub phase: Phase,
    /// The part: of a rest, a wait or a count-in the one that follows; after the end the last one.
    pub part: Part,
    /// The seconds to show: what is left, or in a trial what has gone by. `None` where no time runs.
    pub seconds: Option<u32>,
    /// How much of the phase is over, 0 to 1.
    pub progress: f64,
    /// Of a hold, a trial or a repetition: whether half of it is over.
    pub half: bool,
    /// How far the body is from its first to its last position, 0 to 1.
    pub pose: f64,
    /// Of repetitions: the one going on (or the last), from 1, and how many a set has.
    pub repetition: Option<(u8, u8)>,
    /// Whether that repetition is marked as failed.
    pub marked: bool,
    /// What can be pressed.
    pub controls: Controls,
}

impl Guide {
    /// What the screen shows, as seen at the last look at the clock.
    pub fn view(&self) -> GuideView {
        let step = self.steps[self.stage.step().unwrap_or(self.steps.len() - 1)];
        let (gone, length) = self.gone(step);
        let phase = self.phase(step);
        let left = length.saturating_sub(gone);
        let progress = if length == 0 { 0.0 } else { (gone as f64 / length as f64).clamp(0.0, 1.0) };
        let seconds = match phase {
            Phase::Waiting | Phase::Ended(_) | Phase::Settling => None,
            Phase::Trial => Some(whole(gone / 1000)),
            _ => Some(whole(left.div_ceil(1000))),
        };
        GuideView {
            kind: self.run().dose.kind(),
            phase,
            part: step.part,
            seconds,
            progress,
            half: progress >= 0.5,
            pose: pose(phase, self.movements().is_some(), gone, left, step.ms),
            repetition: self.repetition(step),
            marked: self.markable().is_some_and(|(part, repetition)| self.record.is_marked(part, repetition)),
            controls: self.controls(phase),
        }
    }

    /// Milliseconds of what is shown that are over, and its whole length.
    fn gone(&self, step: Step) -> (u64, u64) {
        match self.stage {
            Stage::Going { since, extra, .. } => (self.now_ms().saturating_sub(since), step.ms.saturating_add(extra)),
            Stage::LeadIn { until, .. } => {
                let left = until.saturating_sub(self.now_ms()).min(COUNT_IN_MS);
                (COUNT_IN_MS - left, COUNT_IN_MS)
            }
            Stage::Paused { done, extra, .. } => (done, step.ms.saturating_add(extra)),
            Stage::Ended(_) => (step.ms, step.ms),
        }
    }

    fn phase(&self, step: Step) -> Phase {
        match self.stage {
            Stage::Ended(end) => Phase::Ended(end),
            Stage::Paused { slept, .. } => Phase::Paused { slept },
            Stage::LeadIn { .. } => Phase::CountIn,
            Stage::Going { .. } => match step.kind {
                StepKind::Wait => Phase::Waiting,
                StepKind::CountIn => Phase::CountIn,
                StepKind::Hold => Phase::Holding,
                StepKind::Beat(_, beat) => Phase::Beat(beat),
                StepKind::Trial => Phase::Trial,
                StepKind::Settle => Phase::Settling,
                StepKind::Rest => Phase::Resting,
            },
        }
    }

    fn repetition(&self, step: Step) -> Option<(u8, u8)> {
        let of = self.movements()?;
        let number = match (step.kind, self.last_repetition()) {
            (StepKind::Beat(repetition, _), _) | (StepKind::Rest, Some((_, repetition))) => repetition + 1,
            _ => 1,
        };
        Some((number, of))
    }

    /// How many movements a part has, where the work is movements.
    fn movements(&self) -> Option<u8> {
        let run = self.run();
        match run.dose.kind().rules().course(&run.dose).work {
            PartWork::Movements { count, .. } => Some(count),
            PartWork::Hold { .. } | PartWork::Trial { .. } => None,
        }
    }

    fn controls(&self, phase: Phase) -> Controls {
        let flags = self.flags();
        let over = matches!(phase, Phase::Ended(_) | Phase::Settling | Phase::Trial);
        Controls {
            touch: phase == Phase::Trial || flags.whole_screen && phase == Phase::CountIn,
            pause: flags.pausable && !over && !matches!(phase, Phase::Paused { .. } | Phase::Waiting),
            resume: matches!(phase, Phase::Paused { .. }),
            next: matches!(phase, Phase::Waiting | Phase::Resting),
            more_rest: phase == Phase::Resting,
            failed: self.markable().is_some(),
            stop: !(over || flags.whole_screen && phase == Phase::CountIn),
        }
    }
}

/// The body goes into its position just before the work and out of it just after; a repetition is the movement itself.
fn pose(phase: Phase, moves: bool, gone: u64, left: u64, ms: u64) -> f64 {
    let share = |part: u64, of: u64| if of == 0 { 1.0 } else { (part as f64 / of as f64).clamp(0.0, 1.0) };
    match phase {
        Phase::Holding | Phase::Trial | Phase::Beat(Beat::Keep) => 1.0,
        Phase::Beat(Beat::Up) => share(gone, ms),
        Phase::Beat(Beat::Down) => share(left, ms),
        Phase::CountIn | Phase::Resting if moves => 0.0,
        Phase::CountIn => 1.0 - share(left.min(MOVE_MS), MOVE_MS),
        Phase::Resting | Phase::Settling => 1.0 - share(gone.min(MOVE_MS), MOVE_MS),
        Phase::Waiting | Phase::Paused { .. } | Phase::Ended(_) => 0.0,
    }
}

fn whole(seconds: u64) -> u32 {
    u32::try_from(seconds).unwrap_or(u32::MAX)
}
