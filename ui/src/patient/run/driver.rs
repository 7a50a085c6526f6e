//! Drives the guide: lets the window's time pass, carries presses, schedules sounds, has it logged.

use std::collections::VecDeque;

use exercises::ask::Question;
use exercises::guide::{Event, Guide, GuideView, Phase, Press};
use exercises::id::PlanId;
use exercises::run::{Doing, Run, SetUp};
use exercises::sway::{Answer, Asked, Sensed};
use leptos::prelude::*;
use leptos::task::spawn_local;
use wire::patient::{Checkpoint, KeepSensed, RunScript, RunSnapshot, SensedTrial};

use super::motion::Motion;
use super::{sounds, wake};
use crate::invoke;
use crate::patient::desk::Desk;
use crate::shared::clock;

/// The guide is looked at so often while the window is out of sight too, in milliseconds.
const LOOK_MS: u64 = 250;

/// Drives one run. It lives as long as the run's screen.
#[derive(Clone, Copy)]
pub struct Driver {
    desk: Desk,
    plan: PlanId,
    guide: StoredValue<Guide>,
    /// What the screen shows.
    pub view: RwSignal<GuideView>,
    /// What to ask once it is over; `None` until the end is logged.
    pub questions: RwSignal<Option<Vec<Question>>>,
    /// Whether the end could not be logged.
    pub unsaved: RwSignal<bool>,
    log: StoredValue<Log>,
    /// The phone's movement during balance.
    pub motion: Motion,
    /// Where the phone is during balance.
    pub set_up: RwSignal<SetUp>,
    /// What the sensor said, by place of the trial.
    pub sensed: RwSignal<Vec<(u16, Sensed)>>,
}

/// Snapshots go to the shell one after the other; of those that wait, only the newest is worth sending.
#[derive(Default)]
struct Log {
    sending: bool,
    waiting: Option<Run>,
    /// What the sensor said; it goes after the snapshot that holds its trial.
    said: VecDeque<SensedTrial>,
}

impl Driver {
    /// Begins now; `None` if the run cannot be guided.
    pub fn start(desk: Desk, script: &RunScript) -> Option<Driver> {
        let guide = Guide::new(script.run.clone(), script.item.side, clock::now())?;
        let driver = Driver {
            desk,
            plan: script.plan,
            view: RwSignal::new(guide.view()),
            motion: Motion::new(desk.house),
            set_up: RwSignal::new(guide.set_up()),
            sensed: RwSignal::new(Vec::new()),
            guide: StoredValue::new(guide),
            questions: RwSignal::new(None),
            unsaved: RwSignal::new(false),
            log: StoredValue::new(Log::default()),
        };
        driver.let_time_pass();
        Some(driver)
    }

    /// The one of this run.
    pub fn here() -> Driver {
        expect_context()
    }

    /// The person presses something.
    pub fn press(self, press: Press) {
        if press == Press::Touch && self.guide.with_value(|guide| guide.trial_began().is_some()) {
            self.motion.touch();
        }
        let events = self.guide.try_update_value(|guide| guide.press(press, clock::now())).unwrap_or_default();
        // Whatever was told ahead may not come any more.
        sounds::silence();
        self.follow(&events);
    }

    /// Where the phone is from now on; only before the first trial.
    pub fn choose_set_up(self, chosen: SetUp) {
        self.guide.update_value(|guide| guide.choose_set_up(chosen));
        self.set_up.set(self.guide.with_value(Guide::set_up));
    }

    /// Whether the set-up may still be chosen.
    pub fn may_choose_set_up(self) -> bool {
        self.guide.with_value(Guide::may_choose_set_up)
    }

    /// An answer about the last trial.
    pub fn answer(self, asked: Asked, after_s: f64, answer: Answer) {
        if let Some((sensed, detail)) = self.motion.answer(asked, after_s, answer) {
            self.keep(sensed, detail);
        }
    }

    /// The run as far as it got, each trial as the sensor and the answers have it.
    pub fn run(self) -> Run {
        let mut run = self.raw();
        if let Doing::Balance(balance) = &mut run.doing {
            for (place, sensed) in self.sensed.get_untracked() {
                if let Some(trial) = balance.trials.get_mut(usize::from(place)) {
                    *trial = sensed.settle(*trial);
                }
            }
        }
        run
    }

    /// The run as it was touched.
    fn raw(self) -> Run {
        self.guide.with_value(Guide::snapshot)
    }

    /// Tries again to log the end.
    pub fn save_again(self) {
        self.unsaved.set(false);
        self.save();
    }

    fn let_time_pass(self) {
        let tick = move || {
            let events = self.guide.try_update_value(|guide| guide.advance(clock::now())).unwrap_or_default();
            self.follow(&events);
            self.let_movement_pass();
        };
        clock::every(LOOK_MS, tick);
        clock::each_frame(move |_| tick());
        let hidden = window_event_listener_untyped("visibilitychange", move |_| {
            if document().hidden() {
                let events = self.guide.try_update_value(|guide| guide.out_of_sight(clock::now())).unwrap_or_default();
                sounds::silence();
                self.motion.forget();
                self.follow(&events);
            } else if self.guide.with_value(|guide| !guide.cues().is_empty()) {
                wake::keep();
            }
        });
        on_cleanup(move || {
            hidden.remove();
            sounds::silence();
            wake::let_go();
        });
    }

    fn follow(self, events: &[Event]) {
        let Some((view, cues)) = self.guide.try_with_value(|guide| (guide.view(), guide.cues())) else { return };
        sounds::schedule(&cues);
        if events.contains(&Event::Interrupted) {
            self.motion.forget();
            sounds::silence();
        }
        for event in events {
            match event {
                Event::Entered(phase) => self.hear(*phase),
                Event::Ended(end) => self.hear(Phase::Ended(*end)),
                Event::Interrupted | Event::Checkpoint => {}
            }
        }
        if self.view.with_untracked(|old| *old != view) {
            self.view.set(view);
        }
        if events.contains(&Event::Checkpoint) {
            self.save();
        }
        if events.iter().any(|event| matches!(event, Event::Ended(_))) {
            wake::let_go();
        }
    }

    /// Hears the phone's movement from the count-in of a trial to the moment after it.
    fn hear(self, phase: Phase) {
        if self.raw().doing.balance().is_none() {
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

    /// Where nobody can touch, a touch-down that the sensor proposes ends the trial; it is asked about.
    fn let_movement_pass(self) {
        let announced = self.motion.pass();
        if announced && !self.set_up.get_untracked().touch_ends() {
            let events = self.guide.try_update_value(|guide| guide.propose_end(clock::now())).unwrap_or_default();
            sounds::silence();
            self.follow(&events);
        }
    }

    /// The last trial's place and raw time.
    fn last_trial(self) -> Option<(u16, u32)> {
        let Doing::Balance(balance) = self.raw().doing else { return None };
        let last = balance.trials.last()?;
        Some((u16::try_from(balance.trials.len() - 1).ok()?, last.held_ms))
    }

    /// Keeps what the sensor said about the last trial, here and in the log.
    fn keep(self, sensed: Sensed, detail: String) {
        let Some((trial, _)) = self.last_trial() else { return };
        self.sensed.update(|all| {
            all.retain(|(place, _)| *place != trial);
            all.push((trial, sensed.clone()));
        });
        let report = SensedTrial { plan: self.plan, run: self.raw().id, trial, sensed, detail };
        self.log.update_value(|log| log.said.push_back(report));
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

    /// Sends until nothing waits. The screen may have gone meanwhile: then the last snapshot is still sent.
    async fn send(self) {
        while let Some(run) = self.log.try_update_value(|log| log.waiting.take()).flatten() {
            let ended = run.end != exercises::run::RunEnd::Going;
            match invoke::call::<Checkpoint>(&RunSnapshot { plan: self.plan, run }).await {
                Ok(questions) if ended => {
                    self.questions.try_set(Some(questions));
                    self.desk.house.fault.set(None);
                }
                Ok(_) => {}
                Err(failure) => {
                    self.desk.house.fault.set(Some(failure));
                    self.unsaved.try_set(ended);
                }
            }
        }
        while let Some(report) = self.log.try_update_value(|log| log.said.pop_front()).flatten() {
            if let Err(failure) = invoke::call::<KeepSensed>(&report).await {
                self.desk.house.fault.set(Some(failure));
            }
        }
        self.log.try_update_value(|log| log.sending = false);
    }
}
