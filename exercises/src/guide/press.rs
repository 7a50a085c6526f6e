//! What the person's presses do.

use super::course::Guide;
use super::event::{GuideEvent, Press};
use super::stage::Stage;
use super::step::{COUNT_IN_MS, Part, StepKind};
use crate::catalogue::kind::WorkForm;
use crate::run::{RunEnd, TrialEnd};

/// Extension of a rest by "more rest", in milliseconds.
pub const MORE_REST_MS: u64 = 30_000;
/// Milliseconds in a minute.
const MINUTE_MS: u32 = 60_000;

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
            Press::CountOne => self.count_one(kind, at, events),
            Press::AllDone => self.all_done(kind, at, events),
            Press::Number(number) => self.say(kind, number, events),
            Press::Minutes(minutes) => self.confirm(kind, minutes, events),
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

    /// Counts one movement at the person's own pace. The last one ends the part.
    fn count_one(&mut self, kind: StepKind, at: u64, events: &mut Vec<GuideEvent>) {
        if kind == StepKind::Tally {
            self.record.tap();
            events.push(GuideEvent::Checkpoint);
        }
        let Some(parts) = self.own_pace_parts().filter(|_| kind == StepKind::OwnPace) else { return };
        let of = self.own_pace_count();
        // With sides that take turns, the side that has fewer comes next.
        let counted = |part: &Part| self.record.counted(*part);
        let Some(next) = parts.iter().min_by_key(|part| counted(part)).copied() else { return };
        self.record.count(next, of);
        if parts.iter().all(|part| self.record.counted(*part) >= of) {
            self.end_step(at, TrialEnd::Target, events);
        } else {
            events.push(GuideEvent::Checkpoint);
        }
    }

    /// Ends the movements at the person's own pace. Somebody who counted none by pressing did all that were asked for.
    fn all_done(&mut self, kind: StepKind, at: u64, events: &mut Vec<GuideEvent>) {
        let Some(parts) = self.own_pace_parts().filter(|_| kind == StepKind::OwnPace) else { return };
        let of = self.own_pace_count();
        if parts.iter().all(|part| self.record.counted(*part) == 0) {
            for part in &parts {
                (0..of).for_each(|_| self.record.count(*part, of));
            }
        }
        self.end_step(at, TrialEnd::Target, events);
    }

    /// Takes the person's word for the number of movements, and ends the run.
    fn say(&mut self, kind: StepKind, number: u8, events: &mut Vec<GuideEvent>) {
        if kind == StepKind::Say {
            self.record.say(number);
            self.over(RunEnd::Completed, events);
        }
    }

    /// Takes the person's word for how long it was, at most what the clock says, and ends the run.
    fn confirm(&mut self, kind: StepKind, minutes: u8, events: &mut Vec<GuideEvent>) {
        if kind == StepKind::Confirm {
            self.record.shorten(u32::from(minutes) * MINUTE_MS);
            self.over(self.ending, events);
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
            StepKind::Wait
            | StepKind::OwnPace
            | StepKind::Confirm
            | StepKind::Say
            | StepKind::Tally
            | StepKind::Settle
            | StepKind::Trial => return,
            StepKind::CountIn | StepKind::EaseIn => (step, 0),
            StepKind::Beat(repetition, _) => (first_beat(step, repetition), 0),
            StepKind::Breath(breath, _) => (self.first_of_breath(step, breath), 0),
            StepKind::Hold | StepKind::Stretch | StepKind::OnBeat(_) | StepKind::Timer | StepKind::Rest => {
                (step, done.min(self.steps[step].ms.saturating_add(extra)))
            }
        };
        self.stage = Stage::Paused { step, done, extra, since: from.min(now), slept };
        self.entered(events);
    }

    fn resume(&mut self, at: u64, events: &mut Vec<GuideEvent>) {
        let Stage::Paused { step, done, extra, since, .. } = self.stage else { return };
        self.paused_ms = self.paused_ms.saturating_add(at.saturating_sub(since));
        // A timer needs no time to take the position.
        self.stage = if self.steps[step].kind.is_work() && self.steps[step].kind != StepKind::Timer {
            Stage::LeadIn { step, until: at.saturating_add(COUNT_IN_MS), done }
        } else {
            Stage::Going { step, since: at.saturating_sub(done), extra }
        };
        self.entered(events);
    }

    /// The step with which the breath that `step` belongs to began.
    fn first_of_breath(&self, step: usize, breath: u16) -> usize {
        let same = self.steps[..=step].iter().rev();
        step + 1 - same.take_while(|step| matches!(step.kind, StepKind::Breath(other, _) if other == breath)).count()
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
