//! What the screen shows of a run, ready to be drawn.

use super::course::Guide;
use super::event::Phase;
use super::stage::Stage;
use super::step::{Beat, Breathing, COUNT_IN_MS, EASE_IN_MS, Part, Step, StepKind};
use crate::catalogue::Kind;
use crate::catalogue::kind::PartWork;

/// Duration of the figure's movement into its position before a hold or a set, and out of it afterwards, in milliseconds.
const MOVE_MS: u64 = 1_200;
/// Duration of one movement that the figure shows for somebody who moves at their own pace, in milliseconds.
const SHOWN_MOVEMENT_MS: u64 = 4_000;
/// Duration of one movement there and back during an activity such as walking, in milliseconds.
const SHOWN_STEP_MS: u64 = 1_600;

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
    /// Counts one movement, or says that all are done.
    pub count: bool,
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
    /// For repetitions: the current or last one, from 1, and the number of repetitions in a set. For movements at one's own pace: how
    /// many were counted on all sides, and how many there are.
    pub repetition: Option<(u8, u8)>,
    /// During movements on a beat: the beats since they began.
    pub beats: Option<f64>,
    /// In a test: the number of movements that were counted; `None` if none was.
    pub tally: Option<u8>,
    /// Whether that repetition is marked as failed.
    pub marked: bool,
    /// What can be pressed.
    pub controls: Controls,
}

impl GuideView {
    /// Whether it is something that is done at once, and said to be done with one press.
    pub fn is_prompt(&self) -> bool {
        self.kind.rules().is_one_press()
    }
}

impl Guide {
    /// What the screen shows, as of the last look at the clock.
    pub fn view(&self) -> GuideView {
        let step = self.steps[self.stage.step().unwrap_or(self.steps.len() - 1)];
        let phase = self.phase(step);
        let (gone, length) = if step.kind.is_breath() { self.gone_of_breathing(step) } else { self.gone(step) };
        let left = length.saturating_sub(gone);
        let progress = if length == 0 { 0.0 } else { (gone as f64 / length as f64).clamp(0.0, 1.0) };
        let seconds = match phase {
            Phase::Waiting | Phase::OwnPace | Phase::Confirming | Phase::Saying | Phase::Ended(_) | Phase::Settling => None,
            Phase::Trial => Some(whole(gone / 1000)),
            _ => Some(whole(left.div_ceil(1000))),
        };
        let (in_step, of_step) = self.gone(step);
        GuideView {
            kind: self.run().dose.kind(),
            phase,
            part: self.shown_part(step, in_step),
            seconds,
            progress,
            half: progress >= 0.5,
            pose: match step.kind {
                // The body is in its last position on one beat, and in its first on the next.
                StepKind::OnBeat(each_ms) if phase == Phase::OnBeat => there_and_back(in_step, 2 * each_ms),
                _ => self.pose(phase, in_step, of_step.saturating_sub(in_step), step.ms),
            },
            beats: match step.kind {
                StepKind::OnBeat(each_ms) if phase == Phase::OnBeat => Some(in_step as f64 / each_ms as f64),
                _ => None,
            },
            repetition: self.repetition(step),
            tally: self.record.tally(),
            marked: self.markable().is_some_and(|(part, repetition)| self.record.is_marked(part, repetition)),
            controls: self.controls(phase),
        }
    }

    /// The step's part. While the sides take turns at the person's own pace, its side is the one that the figure shows.
    fn shown_part(&self, step: Step, gone: u64) -> Part {
        let turns = self.own_pace_parts().filter(|turns| step.kind == StepKind::OwnPace && turns.len() > 1);
        let turn = usize::try_from(gone / SHOWN_MOVEMENT_MS).unwrap_or_default();
        turns.map_or(step.part, |turns| turns[turn % turns.len()])
    }

    /// The same as [`Guide::gone`] for all breaths together.
    fn gone_of_breathing(&self, step: Step) -> (u64, u64) {
        let now = self.stage.step().unwrap_or(self.steps.len());
        let breaths = |steps: &[Step]| steps.iter().filter(|step| step.kind.is_breath()).map(|step| step.ms).sum::<u64>();
        let before = breaths(&self.steps[..now]);
        let in_step = if let Stage::Going { .. } = self.stage { self.gone(step).0 } else { 0 };
        (before.saturating_add(in_step), breaths(&self.steps))
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
                StepKind::EaseIn => Phase::EasingIn,
                StepKind::Stretch => Phase::Stretching,
                StepKind::OwnPace => Phase::OwnPace,
                StepKind::Timer => Phase::Timing,
                StepKind::Confirm => Phase::Confirming,
                StepKind::Breath(_, part) => Phase::Breathing(part),
                StepKind::Beat(_, beat) => Phase::Beat(beat),
                StepKind::Trial => Phase::Trial,
                StepKind::OnBeat(_) => Phase::OnBeat,
                StepKind::Tally => Phase::Tallying,
                StepKind::Say => Phase::Saying,
                StepKind::Settle => Phase::Settling,
                StepKind::Rest => Phase::Resting,
            },
        }
    }

    fn repetition(&self, step: Step) -> Option<(u8, u8)> {
        let of = self.movements()?;
        if step.kind == StepKind::OwnPace {
            let parts = self.own_pace_parts()?;
            let counted = parts.iter().map(|part| self.record.counted(*part)).fold(0, u8::saturating_add);
            return Some((counted, of.saturating_mul(u8::try_from(parts.len()).unwrap_or(1))));
        }
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
            PartWork::Movements { count, .. } | PartWork::OwnPace { count } => Some(count),
            PartWork::Hold { .. }
            | PartWork::Stretch { .. }
            | PartWork::Trial { .. }
            | PartWork::Tally { .. }
            | PartWork::OnBeat { .. }
            | PartWork::Timer { .. }
            | PartWork::Breaths { .. } => None,
        }
    }

    /// Whether the body is in its first position before the work begins, because the work moves it.
    fn starts_at_first_pose(&self) -> bool {
        let run = self.run();
        let work = run.dose.kind().rules().course(&run.dose).work;
        !matches!(work, PartWork::Hold { .. } | PartWork::Trial { .. })
    }

    /// Whether the figure moves while the time of the work passes without guidance.
    fn moves_by_itself(&self) -> bool {
        let run = self.run();
        matches!(run.dose.kind().rules().course(&run.dose).work, PartWork::Timer { moves: true, .. })
    }

    /// The body moves into its position just before the work and out of it just after; during a repetition it follows the movement.
    fn pose(&self, phase: Phase, gone: u64, left: u64, ms: u64) -> f64 {
        match phase {
            Phase::Holding | Phase::Stretching | Phase::Trial | Phase::Beat(Beat::Keep) => 1.0,
            Phase::Breathing(Breathing::Full) => 1.0,
            Phase::Beat(Beat::Up) | Phase::Breathing(Breathing::In) => share(gone, ms),
            Phase::Beat(Beat::Down) | Phase::Breathing(Breathing::Out) => share(left, ms),
            Phase::EasingIn => share(gone, EASE_IN_MS),
            Phase::OwnPace => there_and_back(gone, SHOWN_MOVEMENT_MS),
            Phase::Timing if self.moves_by_itself() => there_and_back(gone, SHOWN_STEP_MS),
            Phase::Timing => 1.0,
            Phase::CountIn if self.starts_at_first_pose() => 0.0,
            Phase::CountIn => 1.0 - share(left.min(MOVE_MS), MOVE_MS),
            Phase::Resting if self.movements().is_some() => 0.0,
            Phase::Resting | Phase::Settling => 1.0 - share(gone.min(MOVE_MS), MOVE_MS),
            // A moving figure would set a pace.
            Phase::Tallying
            | Phase::OnBeat
            | Phase::Saying
            | Phase::Breathing(Breathing::Empty)
            | Phase::Confirming
            | Phase::Waiting
            | Phase::Paused { .. }
            | Phase::Ended(_) => 0.0,
        }
    }

    fn controls(&self, phase: Phase) -> Controls {
        let flags = self.flags();
        let over = matches!(phase, Phase::Ended(_) | Phase::Settling | Phase::Confirming | Phase::Saying | Phase::Trial);
        Controls {
            touch: phase == Phase::Trial || flags.whole_screen && phase == Phase::CountIn,
            pause: flags.pausable && !over && !matches!(phase, Phase::Paused { .. } | Phase::Waiting),
            count: matches!(phase, Phase::OwnPace | Phase::Tallying),
            resume: matches!(phase, Phase::Paused { .. }),
            next: matches!(phase, Phase::Waiting | Phase::Resting),
            more_rest: phase == Phase::Resting,
            failed: self.markable().is_some(),
            stop: !(over || flags.whole_screen && phase == Phase::CountIn),
        }
    }
}

/// The share of `of` that `part` is, 0 to 1.
fn share(part: u64, of: u64) -> f64 {
    if of == 0 { 1.0 } else { (part as f64 / of as f64).clamp(0.0, 1.0) }
}

/// A movement from the first position to the last and back, over and over; `each` is its duration in milliseconds.
fn there_and_back(gone: u64, each: u64) -> f64 {
    let half = (each / 2).max(1);
    let part = gone % (2 * half);
    if part < half { share(part, half) } else { share(2 * half - part, half) }
}

fn whole(seconds: u64) -> u32 {
    u32::try_from(seconds).unwrap_or(u32::MAX)
}
