//! What the screen shows of a run, ready to be drawn.

use super::course::Guide;
use super::event::Phase;
use super::stage::Stage;
use super::step::{Beat, COUNT_IN_MS, Part, Step, StepKind};
use crate::catalogue::Kind;
use crate::catalogue::kind::PartWork;

/// Duration of the figure's movement into its position before a hold or a set, and out of it afterwards, in milliseconds.
const MOVE_MS: u64 = 1_200;

/// What can be pressed at the moment.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct Controls {
    /// A touch anywhere: it ends the trial, or cancels its count-in.
    pub touch: bool,
    /// "Pause".
    pub pause: bool,
    /// "Continue".
    pub resume: bool,
    /// Starts the next part now.
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
    /// What is going on at the moment.
    pub phase: Phase,
    /// The current part. For a rest, a wait or a count-in it is the part that follows; after the end, the last part.
    pub part: Part,
    /// The seconds to show: the time left, or in a trial the time passed. `None` if no time is running.
    pub seconds: Option<u32>,
    /// Share of the phase that is over, 0 to 1.
    pub progress: f64,
    /// For a hold, a trial or a repetition: whether half of it is over.
    pub half: bool,
    /// Position of the body between its first (0) and last (1) pose.
    pub pose: f64,
    /// For repetitions: the current or last one, from 1, and the number of repetitions in a set.
    pub repetition: Option<(u8, u8)>,
    /// Whether that repetition is marked as failed.
    pub marked: bool,
    /// What can be pressed.
    pub controls: Controls,
}

impl Guide {
    /// What the screen shows, as of the last look at the clock.
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

    /// Milliseconds of the shown time that are over, and its whole length in milliseconds.
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

    /// Number of movements in a part, if the exercise consists of movements.
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

/// The body moves into its position just before the work and out of it just after; during a repetition it follows the movement.
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
