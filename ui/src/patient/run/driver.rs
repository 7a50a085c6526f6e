//! Drives the guide: lets the window's time pass, carries presses, schedules sounds, has it logged.

use exercises::ask::Question;
use exercises::guide::{Event, Guide, GuideView, Press};
use exercises::id::PlanId;
use exercises::run::Run;
use leptos::prelude::*;
use leptos::task::spawn_local;
use wire::patient::{Checkpoint, RunScript, RunSnapshot};

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
}

/// Snapshots go to the shell one after the other; of those that wait, only the newest is worth sending.
#[derive(Default)]
struct Log {
    sending: bool,
    waiting: Option<Run>,
}

impl Driver {
    /// Begins now; `None` if the run cannot be guided.
    pub fn start(desk: Desk, script: &RunScript) -> Option<Driver> {
        let guide = Guide::new(script.run.clone(), script.item.side, clock::now())?;
        let driver = Driver {
            desk,
            plan: script.plan,
            view: RwSignal::new(guide.view()),
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
        let events = self.guide.try_update_value(|guide| guide.press(press, clock::now())).unwrap_or_default();
        // Whatever was told ahead may not come any more.
        sounds::silence();
        self.follow(&events);
    }

    /// The run as far as it got.
    pub fn run(self) -> Run {
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
        };
        clock::every(LOOK_MS, tick);
        clock::each_frame(move |_| tick());
        let hidden = window_event_listener_untyped("visibilitychange", move |_| {
            if document().hidden() {
                let events = self.guide.try_update_value(|guide| guide.out_of_sight(clock::now())).unwrap_or_default();
                sounds::silence();
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
            sounds::silence();
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

    fn save(self) {
        let run = self.run();
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
        self.log.try_update_value(|log| log.sending = false);
    }
}
