//! Drives the guide: passes the time and the presses to it, schedules sounds, and has the run logged.

use std::collections::VecDeque;

use exercises::guide::{Guide, GuideEvent, GuideView, Phase, Press};
use exercises::id::PlanId;
use exercises::questions::Question;
use exercises::run::{Run, SetUp, Work};
use exercises::sway::{Sensed, TouchAnswer, TrialQuestion};
use leptos::prelude::*;
use leptos::task::spawn_local;
use wire::patient::{Checkpoint, RunScript, RunSnapshot, SaveSensed, SensedTrial};

use super::motion::Motion;
use crate::invoke;
use crate::patient::context::PatientContext;
use crate::patient::{sounds, wake};
use crate::shared::clock;

/// Time between two calls of the guide, in milliseconds, also while the window is hidden.
const LOOK_MS: u64 = 250;

/// Drives one run. It lives as long as the run's screen.
#[derive(Clone, Copy)]
pub struct Driver {
    context: PatientContext,
    plan: PlanId,
    guide: StoredValue<Guide>,
    /// What the screen shows.
    pub view: RwSignal<GuideView>,
    /// The question at the end, if there is one; the outer `None` until the end is logged.
    pub question: RwSignal<Option<Option<Question>>>,
    /// Whether the end could not be logged.
    pub unsaved: RwSignal<bool>,
    log: StoredValue<Log>,
    /// The phone's movement during balance.
    pub motion: Motion,
    /// Where the phone is during balance trials.
    pub set_up: RwSignal<SetUp>,
    /// The sensor's results, each with the trial's index.
    pub sensed: RwSignal<Vec<(u16, Sensed)>>,
}

/// Snapshots are sent to the shell one after the other; of those that wait, only the newest is sent.
#[derive(Default)]
struct Log {
    sending: bool,
    waiting: Option<Run>,
    /// The sensor's results; each is sent after the snapshot that contains its trial.
    sensed: VecDeque<SensedTrial>,
}

impl Driver {
    /// Starts the run; `None` if it cannot be guided.
    pub fn start(context: PatientContext, script: &RunScript) -> Option<Driver> {
        let guide = Guide::new(script.run.clone(), script.item.side, clock::now())?;
        let driver = Driver {
            context,
            plan: script.plan,
            view: RwSignal::new(guide.view()),
            motion: Motion::new(context.app),
            set_up: RwSignal::new(guide.set_up()),
            sensed: RwSignal::new(Vec::new()),
            guide: StoredValue::new(guide),
            question: RwSignal::new(None),
            unsaved: RwSignal::new(false),
            log: StoredValue::new(Log::default()),
        };
        // The device may sleep while the minutes of a walk pass.
        if driver.goes_on_unseen() {
            wake::let_go();
        }
        driver.start_ticking();
        Some(driver)
    }

    /// The driver of this run.
    pub fn current() -> Driver {
        expect_context()
    }

    /// Passes the person's press to the guide.
    pub fn press(self, press: Press) {
        if press == Press::Touch && self.guide.with_value(|guide| guide.trial_began().is_some()) {
            self.motion.touch();
        }
        let events = self.guide.try_update_value(|guide| guide.press(press, clock::now())).unwrap_or_default();
        // The sounds that were scheduled may no longer be right.
        sounds::silence();
        self.follow(&events);
    }

    /// Minutes of the run in which the device slept and which count by the clock all the same, rounded up.
    pub fn unseen_minutes(self) -> u64 {
        self.guide.with_value(Guide::unseen_ms).div_ceil(60_000)
    }

    fn goes_on_unseen(self) -> bool {
        self.view.with_untracked(|view| view.kind.rules().flags().goes_on_unseen)
    }

    /// Sets where the phone is; only possible before the first trial.
    pub fn choose_set_up(self, chosen: SetUp) {
        self.guide.update_value(|guide| guide.choose_set_up(chosen));
        self.set_up.set(self.guide.with_value(Guide::set_up));
    }

    /// Whether the set-up can still be chosen.
    pub fn may_choose_set_up(self) -> bool {
        self.guide.with_value(Guide::may_choose_set_up)
    }

    /// Passes the answer to a question about the last trial.
    pub fn answer(self, asked: TrialQuestion, after_s: f64, answer: TouchAnswer) {
        if let Some((sensed, detail)) = self.motion.answer(asked, after_s, answer) {
            self.keep(sensed, detail);
        }
    }

    /// The run so far, with the sensor's results and the answers applied to each trial.
    pub fn run(self) -> Run {
        let mut run = self.raw();
        if let Work::Balance(balance) = &mut run.work {
            for (place, sensed) in self.sensed.get_untracked() {
                if let Some(trial) = balance.trials.get_mut(usize::from(place)) {
                    *trial = sensed.settle(*trial);
                }
            }
        }
        run
    }

    /// The run so far as touched, without the sensor's results.
    fn raw(self) -> Run {
        self.guide.with_value(Guide::snapshot)
    }

    /// Tries again to log the end of the run.
    pub fn save_again(self) {
        self.unsaved.set(false);
        self.save();
    }

    fn start_ticking(self) {
        let tick = move || {
            let events = self.guide.try_update_value(|guide| guide.advance(clock::now())).unwrap_or_default();
            self.follow(&events);
            self.advance_motion();
        };
        clock::every(LOOK_MS, tick);
        clock::each_frame(move |_| tick());
        let hidden = window_event_listener_untyped("visibilitychange", move |_| {
            if document().hidden() {
                let events = self.guide.try_update_value(|guide| guide.window_hidden(clock::now())).unwrap_or_default();
                sounds::silence();
                self.motion.forget();
                self.follow(&events);
            } else if !self.goes_on_unseen() && self.guide.with_value(|guide| !guide.cues().is_empty()) {
                wake::keep();
            }
        });
        on_cleanup(move || {
            hidden.remove();
            sounds::silence();
            wake::let_go();
        });
    }

    fn follow(self, events: &[GuideEvent]) {
        let Some((view, cues)) = self.guide.try_with_value(|guide| (guide.view(), guide.cues())) else { return };
        sounds::schedule(&cues);
        if events.contains(&GuideEvent::Interrupted) {
            self.motion.forget();
            sounds::silence();
        }
        for event in events {
            match event {
                GuideEvent::Entered(phase) => self.on_phase(*phase),
                GuideEvent::Ended(end) => self.on_phase(Phase::Ended(*end)),
                GuideEvent::Interrupted | GuideEvent::Checkpoint => {}
            }
        }
        if self.view.with_untracked(|old| *old != view) {
            self.view.set(view);
        }
        if events.contains(&GuideEvent::Checkpoint) {
            self.save();
        }
        if events.iter().any(|event| matches!(event, GuideEvent::Ended(_))) {
            wake::let_go();
        }
    }

    /// Listens to the motion sensor from the count-in of a trial to the moment after it.
    fn on_phase(self, phase: Phase) {
        if self.raw().work.balance().is_none() {
            return;
        }
        match phase {
            Phase::CountIn => self.motion.listen(self.set_up.get_untracked()),
            Phase::Trial => {
                if let Some(began) = self.guide.with_value(Guide::trial_began) {
                    self.motion.begin(began);
                }
            }
            Phase::Settling => {
                if let Some(trial) = self.last_trial() {
                    self.motion.end(trial.1);
                }
            }
            _ => {
                if let Some((sensed, detail)) = self.motion.finish() {
                    self.keep(sensed, detail);
                }
            }
        }
    }

    /// If nobody can touch the screen, a touch-down detected by the sensor ends the trial; the person is asked about it afterwards.
    fn advance_motion(self) {
        let announced = self.motion.advance();
        if announced && !self.set_up.get_untracked().touch_ends() {
            let events = self.guide.try_update_value(|guide| guide.propose_end(clock::now())).unwrap_or_default();
            sounds::silence();
            self.follow(&events);
        }
    }

    /// The last trial's index and its time in milliseconds as touched.
    fn last_trial(self) -> Option<(u16, u32)> {
        let Work::Balance(balance) = self.raw().work else { return None };
        let last = balance.trials.last()?;
        Some((u16::try_from(balance.trials.len() - 1).ok()?, last.held_ms))
    }

    /// Stores the sensor's result for the last trial, here and in the log.
    fn keep(self, sensed: Sensed, detail: String) {
        let Some((trial, _)) = self.last_trial() else { return };
        self.sensed.update(|all| {
            all.retain(|(place, _)| *place != trial);
            all.push((trial, sensed.clone()));
        });
        let report = SensedTrial { plan: self.plan, run: self.raw().id, trial, sensed, detail };
        self.log.update_value(|log| log.sensed.push_back(report));
        self.save();
    }

    fn save(self) {
        let run = self.raw();
        let begin = self.log.try_update_value(|log| {
            log.waiting = Some(run);
            !std::mem::replace(&mut log.sending, true)
        });
        if begin == Some(true) {
            spawn_local(self.send());
        }
    }

    /// Sends until nothing waits. If the screen was left meanwhile, the last snapshot is still sent.
    async fn send(self) {
        while let Some(run) = self.log.try_update_value(|log| log.waiting.take()).flatten() {
            let ended = run.end != exercises::run::RunEnd::Going;
            match invoke::call::<Checkpoint>(&RunSnapshot { plan: self.plan, run }).await {
                Ok(question) if ended => {
                    self.question.try_set(Some(question));
                    self.context.app.fault.set(None);
                }
                Ok(_) => {}
                Err(failure) => {
                    self.context.app.fault.set(Some(failure));
                    self.unsaved.try_set(ended);
                }
            }
        }
        while let Some(report) = self.log.try_update_value(|log| log.sensed.pop_front()).flatten() {
            if let Err(failure) = invoke::call::<SaveSensed>(&report).await {
                self.context.app.fault.set(Some(failure));
            }
        }
        self.log.try_update_value(|log| log.sending = false);
    }
}
