//! What the person's presses do.

use super::course::Guide;
use super::event::{GuideEvent, Press};
use super::stage::Stage;
use super::step::{COUNT_IN_MS, Part, StepKind};
use crate::catalogue::kind::WorkForm;
use crate::run::RunEnd;

/// Extension of a rest by "more rest", in milliseconds.
pub const MORE_REST_MS: u64 = 30_000;

impl Guide {
    pub(super) fn handle(&mut self, press: Press, kind: StepKind, at: u64, events: &mut Vec<GuideEvent>) {
        match press {
            Press::Stop => self.stop(RunEnd::Stopped, at, events),
            Press::Trouble => self.stop(RunEnd::Trouble, at, events),
            Press::Failed => self.mark_failed(),
            Press::Touch => {
                if kind == StepKind::CountIn && self.flags().whole_screen {
                    self.break_off(at, events);
                }
            }
            Press::Pause => self.pause(at, at, false, events),
            Press::Resume => self.resume(at, events),
            Press::Next => self.next(kind, at, events),
            Press::MoreRest => {
                if let (StepKind::Rest, Stage::Going { extra, .. }) = (kind, &mut self.stage) {
                    *extra = extra.saturating_add(MORE_REST_MS);
                }
            }
        }
    }

    /// Ends a rest or a wait. The count-in comes next.
    fn next(&mut self, kind: StepKind, at: u64, events: &mut Vec<GuideEvent>) {
        let Stage::Going { step, .. } = self.stage else { return };
        if matches!(kind, StepKind::Rest | StepKind::Wait) {
            let count_in = self.steps[step..].iter().position(|step| step.kind == StepKind::CountIn);
            self.go_to(count_in.map_or(step + 1, |ahead| step + ahead), at, events);
        }
    }

    /// Pauses the run. A repetition or a count-in starts over afterwards; a trial cannot be paused.
    pub(super) fn pause(&mut self, from: u64, now: u64, slept: bool, events: &mut Vec<GuideEvent>) {
        let (step, done, extra) = match self.stage {
            Stage::Going { step, since, extra } => (step, from.saturating_sub(since), extra),
            Stage::LeadIn { step, done, .. } => (step, done, 0),
            Stage::Paused { .. } | Stage::Ended(_) => return,
        };
        let first_beat = |step: usize, repetition| {
            let beats = self.steps[..=step].iter().rev();
            step + 1 - beats.take_while(|s| matches!(s.kind, StepKind::Beat(r, _) if r == repetition)).count()
        };
        let (step, done) = match self.steps[step].kind {
            StepKind::Wait | StepKind::Settle | StepKind::Trial => return,
            StepKind::CountIn => (step, 0),
            StepKind::Beat(repetition, _) => (first_beat(step, repetition), 0),
            StepKind::Hold | StepKind::Rest => (step, done.min(self.steps[step].ms.saturating_add(extra))),
        };
        self.stage = Stage::Paused { step, done, extra, since: from.min(now), slept };
        self.entered(events);
    }

    fn resume(&mut self, at: u64, events: &mut Vec<GuideEvent>) {
        let Stage::Paused { step, done, extra, since, .. } = self.stage else { return };
        self.paused_ms = self.paused_ms.saturating_add(at.saturating_sub(since));
        self.stage = if self.steps[step].kind.is_work() {
            Stage::LeadIn { step, until: at.saturating_add(COUNT_IN_MS), done }
        } else {
            Stage::Going { step, since: at.saturating_sub(done), extra }
        };
        self.entered(events);
    }

    fn mark_failed(&mut self) {
        if let Some((part, repetition)) = self.markable() {
            self.record.mark(part, repetition);
        }
    }

    /// The repetition that "that one failed" refers to, if the exercise counts repetitions.
    pub(super) fn markable(&self) -> Option<(Part, u8)> {
        if self.run().work.form() == WorkForm::Counted { self.last_repetition() } else { None }
    }

    /// The current repetition, or the last one of the part that just ended.
    pub(super) fn last_repetition(&self) -> Option<(Part, u8)> {
        let Stage::Going { step, .. } = self.stage else { return None };
        let back = self.steps[..=step].iter().rev();
        back.take(3).find_map(|step| {
            if let StepKind::Beat(repetition, _) = step.kind { Some((step.part, repetition)) } else { None }
        })
    }
}
