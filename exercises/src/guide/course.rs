//! The state machine of a run: moves along the course as time passes and as the person presses.

use super::event::{GuideEvent, Phase, Press};
use super::moment::{self, Moment};
use super::record::Record;
use super::stage::Stage;
use super::step::{Part, Step, StepKind, course};
use crate::catalogue::kind::{PartWork, RunFlags, WorkForm};
use crate::plan::{BodySide, Side};
use crate::run::{Run, RunEnd, SetUp, TrialEnd, Work};

/// Longest time between two log entries while an exercise is being done, in milliseconds. Each new phase is logged as well.
pub const CHECKPOINT_MS: u64 = 5_000;
/// Largest number of interruptions that are recorded.
const MAX_INTERRUPTIONS: usize = 100;

/// A run in progress.
#[derive(Debug, Clone, PartialEq)]
pub struct Guide {
    run: Run,
    pub(super) steps: Vec<Step>,
    pub(super) stage: Stage,
    pub(super) record: Record,
    side: Side,
    began: u64,
    pub(super) last: Moment,
    logged: u64,
    pub(super) paused_ms: u64,
    interruptions: Vec<u32>,
    /// By how much this guide's clock is ahead of the steady one, in milliseconds: the time of the wall clock in which the device
    /// slept and the run went on.
    ahead_ms: u64,
    unseen_ms: u64,
    /// How the run ends once the person has said how long it was.
    pub(super) ending: RunEnd,
}

impl Guide {
    /// Starts `run` now, on the item's side. `None` if the work does not fit the dose, if the dose asks for nothing, or if it is a
    /// stance without a leg.
    pub fn new(run: Run, side: Side, now: Moment) -> Option<Guide> {
        let fits =
            run.fits() && (run.dose.kind().is_by_leg() != (side == Side::Neither) || run.work.form() != WorkForm::Trials);
        let steps = course(run.dose, side, set_up(&run));
        if !fits || steps.is_empty() {
            return None;
        }
        Some(Guide {
            record: Record::new(run.work.form()),
            steps,
            stage: Stage::Going { step: 0, since: now.steady_ms, extra: 0 },
            side,
            began: now.steady_ms,
            last: now,
            logged: now.steady_ms,
            paused_ms: 0,
            interruptions: Vec::new(),
            ahead_ms: 0,
            unseen_ms: 0,
            ending: RunEnd::Completed,
            run,
        })
    }

    /// Lets time pass up to `now`. If the clock was set back, no time passes.
    pub fn advance(&mut self, now: Moment) -> Vec<GuideEvent> {
        let mut events = Vec::new();
        let own = |ahead_ms: u64, last: Moment| Moment {
            steady_ms: now.steady_ms.saturating_add(ahead_ms).max(last.steady_ms),
            ..now
        };
        let mut now = own(self.ahead_ms, self.last);
        if moment::slept(self.last, now) {
            if self.goes_on_unseen() {
                self.ahead_ms = self.ahead_ms.saturating_add(moment::lost_ms(self.last, now));
                now = own(self.ahead_ms, self.last);
                self.note_unseen(now, &mut events);
            } else {
                self.interrupt(self.last.steady_ms, now.steady_ms, &mut events);
            }
        }
        self.pass(now.steady_ms, &mut events);
        let long_ago = now.steady_ms.saturating_sub(self.logged) >= CHECKPOINT_MS;
        if self.working() && long_ago && !events.contains(&GuideEvent::Checkpoint) {
            events.push(GuideEvent::Checkpoint);
        }
        if events.contains(&GuideEvent::Checkpoint) {
            self.logged = now.steady_ms;
        }
        self.last = now;
        events
    }

    /// Passes a press at `now` to the run. During a trial, any press ends the trial.
    pub fn press(&mut self, press: Press, now: Moment) -> Vec<GuideEvent> {
        let mut events = self.advance(now);
        let at = self.last.steady_ms;
        match self.step_kind() {
            Some(StepKind::Trial) => self.end_step(at, TrialEnd::Touch, &mut events),
            Some(StepKind::Settle) | None => {}
            Some(kind) => self.handle(press, kind, at, &mut events),
        }
        events
    }

    /// Sets where the phone is during this run's trials. Only possible before the first count-in, because set-ups are never mixed in
    /// one run.
    pub fn choose_set_up(&mut self, chosen: SetUp) {
        if !self.may_choose_set_up() {
            return;
        }
        if let Work::Balance(balance) = &mut self.run.work {
            balance.set_up = chosen;
            self.steps = course(self.run.dose, self.side, chosen);
        }
    }

    /// Where the phone is.
    pub fn set_up(&self) -> SetUp {
        set_up(&self.run)
    }

    /// Whether the set-up can still be chosen.
    pub fn may_choose_set_up(&self) -> bool {
        self.run.dose.kind().is_by_leg()
            && matches!((self.stage, &self.run.work), (Stage::Going { step: 0, .. }, Work::Balance(_)))
    }

    /// When the current trial's start tone sounded, on the steady clock in milliseconds; `None` if no trial is running.
    pub fn trial_began(&self) -> Option<u64> {
        match self.stage {
            Stage::Going { step, since, .. } if self.steps[step].kind == StepKind::Trial => Some(since),
            _ => None,
        }
    }

    /// Ends the current trial because the sensor detected a touch-down. The trial is recorded as cut off: until the person confirms
    /// the touch-down, its time is not a measurement.
    pub fn propose_end(&mut self, now: Moment) -> Vec<GuideEvent> {
        let mut events = self.advance(now);
        if self.step_kind() == Some(StepKind::Trial) {
            self.end_step(self.last.steady_ms, TrialEnd::CutOff, &mut events);
        }
        events
    }

    /// The window was hidden. A step that only a touch could end is broken off, because nobody can touch the screen any more.
    pub fn window_hidden(&mut self, now: Moment) -> Vec<GuideEvent> {
        let mut events = self.advance(now);
        if self.flags().ends_out_of_sight {
            self.break_off(self.last.steady_ms, &mut events);
        }
        events
    }

    /// Milliseconds of the run in which the device slept or the program did not run, and which count by the clock all the same.
    pub fn unseen_ms(&self) -> u64 {
        self.unseen_ms
    }

    /// By how much the times of this guide are ahead of the steady clock, in milliseconds.
    pub(super) fn ahead_ms(&self) -> u64 {
        self.ahead_ms
    }

    /// The parts that the current movements at the person's own pace belong to: two whose sides take turns, or one.
    pub(super) fn own_pace_parts(&self) -> Option<Vec<Part>> {
        let Stage::Going { step, .. } = self.stage else { return None };
        let part = self.steps[step].part;
        let other = |side: Option<BodySide>| Part { side, ..part };
        let turns = self.side == Side::Alternating;
        Some(if turns { self.side.in_turn().iter().map(|side| other(*side)).collect() } else { vec![part] })
    }

    /// Number of movements asked for in one part at the person's own pace.
    pub(super) fn own_pace_count(&self) -> u8 {
        match self.run.dose.kind().rules().course(&self.run.dose).work {
            PartWork::OwnPace { count } => count,
            _ => 0,
        }
    }

    /// The run so far, as of the last look at the clock. A trial in progress is recorded as cut off, in case this snapshot is the
    /// last one.
    pub fn snapshot(&self) -> Run {
        let going = self.going(self.last.steady_ms);
        let pause = match self.stage {
            Stage::Paused { since, .. } => self.last.steady_ms.saturating_sub(since),
            _ => 0,
        };
        Run {
            end: if let Stage::Ended(end) = self.stage { end } else { RunEnd::Going },
            paused_ms: small(self.paused_ms.saturating_add(pause)),
            interruptions: self.interruptions.clone(),
            work: self.record.work(&self.run.work, going),
            ..self.run.clone()
        }
    }

    /// The kind of the current step. A pause and the count-in after it are given as `CountIn`; `None` once the run has ended.
    pub(super) fn step_kind(&self) -> Option<StepKind> {
        match self.stage {
            Stage::Going { step, .. } => Some(self.steps[step].kind),
            Stage::LeadIn { .. } | Stage::Paused { .. } => Some(StepKind::CountIn),
            Stage::Ended(_) => None,
        }
    }

    pub(super) fn now_ms(&self) -> u64 {
        self.last.steady_ms
    }

    pub(super) fn run(&self) -> &Run {
        &self.run
    }

    pub(super) fn flags(&self) -> RunFlags {
        self.run.dose.kind().rules().flags()
    }

    fn working(&self) -> bool {
        matches!(self.stage, Stage::Going { step, .. } if self.steps[step].kind.is_work())
    }

    /// The unfinished step that counts as far as it got, with its milliseconds up to `at`.
    fn going(&self, at: u64) -> Option<(StepKind, Part, u64)> {
        let step = self.steps[self.stage.step()?];
        let done = match self.stage {
            Stage::Going { since, .. } => at.saturating_sub(since).min(step.ms),
            Stage::LeadIn { done, .. } | Stage::Paused { done, .. } => done,
            Stage::Ended(_) => return None,
        };
        self.record.counts_unfinished(step.kind).then_some((step.kind, step.part, done))
    }

    /// Goes through every step that has ended by `at`. Each step begins exactly when the previous one ended.
    fn pass(&mut self, at: u64, events: &mut Vec<GuideEvent>) {
        loop {
            match self.stage {
                Stage::LeadIn { step, until, done } if at >= until => {
                    self.stage = Stage::Going { step, since: until.saturating_sub(done), extra: 0 };
                    self.entered(events);
                }
                Stage::Going { step, since, extra } => {
                    let Step { kind, ms, .. } = self.steps[step];
                    let end = since.saturating_add(ms).saturating_add(extra);
                    if kind.is_open() || at < end {
                        return;
                    }
                    self.end_step(end, TrialEnd::Target, events);
                }
                _ => return,
            }
        }
    }

    /// Ends the current step at `at` and begins the next one.
    pub(super) fn end_step(&mut self, at: u64, trial_end: TrialEnd, events: &mut Vec<GuideEvent>) {
        let Stage::Going { step, since, .. } = self.stage else { return };
        let Step { kind, part, ms } = self.steps[step];
        self.record.finish(kind, part, at.saturating_sub(since).min(ms), trial_end);
        self.go_to(step + 1, at, events);
    }

    pub(super) fn go_to(&mut self, step: usize, at: u64, events: &mut Vec<GuideEvent>) {
        match self.steps.get(step).map(|step| step.kind) {
            None => return self.over(RunEnd::Completed, events),
            Some(StepKind::Confirm) if self.unseen_ms == 0 => return self.go_to(step + 1, at, events),
            Some(_) => {}
        }
        self.stage = Stage::Going { step, since: at, extra: 0 };
        self.entered(events);
    }

    /// Ends the run at the person's wish. A hold in progress counts as far as it got.
    pub(super) fn stop(&mut self, end: RunEnd, at: u64, events: &mut Vec<GuideEvent>) {
        if let Some((kind, part, ms)) = self.going(at) {
            self.record.finish(kind, part, ms, TrialEnd::CutOff);
        }
        if let Stage::Paused { since, .. } = self.stage {
            self.paused_ms = self.paused_ms.saturating_add(at.saturating_sub(since));
        }
        match self.confirmation().filter(|_| end == RunEnd::Stopped) {
            Some(step) => {
                self.ending = end;
                self.go_to(step, at, events);
            }
            None => self.over(end, events),
        }
    }

    /// The step in which the person says how long it was, if a part of the time was not seen.
    fn confirmation(&self) -> Option<usize> {
        let now = self.stage.step()?;
        let next = self.steps.get(now + 1).filter(|next| next.kind == StepKind::Confirm && self.unseen_ms > 0);
        next.map(|_| now + 1)
    }

    pub(super) fn over(&mut self, end: RunEnd, events: &mut Vec<GuideEvent>) {
        self.stage = Stage::Ended(end);
        events.extend([GuideEvent::Checkpoint, GuideEvent::Ended(end)]);
    }

    /// The beats of a repetition and the parts of a breath are too short to log each of them; the checkpoint every five seconds covers them.
    pub(super) fn entered(&self, events: &mut Vec<GuideEvent>) {
        let phase = self.view().phase;
        events.push(GuideEvent::Entered(phase));
        if !matches!(phase, Phase::Beat(_) | Phase::Breathing(_)) {
            events.push(GuideEvent::Checkpoint);
        }
    }

    /// Whether the time goes on by the clock while the device sleeps.
    fn goes_on_unseen(&self) -> bool {
        let timing = matches!(self.stage, Stage::Going { step, .. } if self.steps[step].kind == StepKind::Timer);
        timing && self.flags().goes_on_unseen
    }

    /// Notes that nobody looked at the clock up to `now`, except for what comes after the end of the current step.
    fn note_unseen(&mut self, now: Moment, events: &mut Vec<GuideEvent>) {
        let Stage::Going { step, since, extra } = self.stage else { return };
        let end = since.saturating_add(self.steps[step].ms).saturating_add(extra);
        self.unseen_ms = self.unseen_ms.saturating_add(now.steady_ms.min(end).saturating_sub(self.last.steady_ms));
        if self.interruptions.len() < MAX_INTERRUPTIONS {
            self.interruptions.push(small(self.last.steady_ms.saturating_sub(self.began)));
        }
        events.push(GuideEvent::Interrupted);
    }

    /// Handles the time from `last` on, in which the device slept or the program did not run.
    fn interrupt(&mut self, last: u64, now: u64, events: &mut Vec<GuideEvent>) {
        let (Stage::Going { step, .. } | Stage::LeadIn { step, .. }) = self.stage else { return };
        if self.steps[step].kind.is_open() {
            return;
        }
        if self.interruptions.len() < MAX_INTERRUPTIONS {
            self.interruptions.push(small(last.saturating_sub(self.began)));
        }
        events.push(GuideEvent::Interrupted);
        if self.flags().pausable {
            self.pause(last, now, true, events);
        } else {
            self.break_off(last, events);
        }
    }

    /// Breaks off a trial or its count-in at `at`, and waits for the person again.
    pub(super) fn break_off(&mut self, at: u64, events: &mut Vec<GuideEvent>) {
        let Stage::Going { step, .. } = self.stage else { return };
        match self.steps[step].kind {
            StepKind::Trial => self.end_step(at, TrialEnd::CutOff, events),
            StepKind::CountIn => self.go_to(step.saturating_sub(1), at, events),
            // A test in which nobody looked at the clock is no result.
            StepKind::Tally => self.stop(RunEnd::Stopped, at, events),
            _ => {}
        }
    }
}

/// Where the phone is. Irrelevant for exercises other than a stance.
fn set_up(run: &Run) -> SetUp {
    run.work.balance().map_or(SetUp::OnSupport, |balance| balance.set_up)
}

fn small(ms: u64) -> u32 {
    u32::try_from(ms).unwrap_or(u32::MAX)
}
