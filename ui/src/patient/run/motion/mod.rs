//! The phone's movement during balance: read from the sensor or replayed from a file, recorded for each trial, with questions about
//! it.

mod device;

use std::cell::RefCell;
use std::rc::Rc;

use exercises::run::SetUp;
use exercises::sway::{Os, Recording, Sample, Screen, Sensed, Source, SourceFault, SourceKind, TouchAnswer, TrialQuestion};
use leptos::prelude::*;
use leptos::task::spawn_local;
use wire::patient::Replay;

use crate::shared::{AppContext, clock};

/// Whether the phone's movement can be measured.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Sensor {
    /// There is no sensor.
    Missing,
    /// The sensor can be used.
    Ready,
    /// The person or the system did not allow it.
    Denied,
    /// The sensor gave no readings in the last trial.
    Silent,
}

/// The sway that is drawn: acceleration towards the person's left and front, m/s2.
pub type Sway = Option<(f64, f64)>;

/// The movement of one run's trials. It lives as long as the run's screen.
#[derive(Clone, Copy)]
pub struct Motion {
    /// Whether the movement can be measured.
    pub sensor: RwSignal<Sensor>,
    /// The newest point to draw.
    pub sway: RwSignal<Sway>,
    /// Whether a touch-down was announced in the current trial.
    pub announced: RwSignal<bool>,
    /// The question about the last trial.
    pub asked: RwSignal<Option<TrialQuestion>>,
    now: StoredValue<Now, LocalStorage>,
    replays: RwSignal<Vec<Vec<Sample>>>,
}

#[derive(Default)]
struct Now {
    recording: Option<Rc<RefCell<Recording>>>,
    listener: Option<device::MotionListener>,
    replay: Option<Replaying>,
    /// Number of trials that were begun, which decides which recording is replayed.
    begun: usize,
    /// The steady clock's time of second 0 of the samples' clock, in milliseconds. In a file, second 0 is the start tone.
    origin_ms: f64,
}

/// A recorded trial that is being replayed.
struct Replaying {
    samples: Vec<Sample>,
    heard: usize,
}

impl Motion {
    /// Finds out what can be measured here.
    pub fn new(app: AppContext) -> Motion {
        let ready = device::is_there();
        let motion = Motion {
            sensor: RwSignal::new(if ready { Sensor::Ready } else { Sensor::Missing }),
            sway: RwSignal::new(None),
            announced: RwSignal::new(false),
            asked: RwSignal::new(None),
            now: StoredValue::new_local(Now::default()),
            replays: RwSignal::new(Vec::new()),
        };
        app.query::<Replay>((), move |replays| {
            if !replays.is_empty() {
                motion.sensor.try_set(Sensor::Ready);
                motion.replays.try_set(replays);
            }
        });
        motion
    }

    /// Whether this device has a motion sensor, whatever it measured.
    pub fn has_sensor(self) -> bool {
        self.sensor.get() != Sensor::Missing
    }

    /// Asks for permission to use the sensor, then calls `then`; must be called by a press.
    pub fn ask_leave(self, then: impl FnOnce() + 'static) {
        if self.replayed() {
            then();
            return;
        }
        let leave = device::ask_leave();
        spawn_local(async move {
            if leave.await {
                then();
            } else {
                self.sensor.try_set(Sensor::Denied);
            }
        });
    }

    /// Begins to measure, at the count-in of a trial.
    pub fn listen(self, set_up: SetUp) {
        self.forget();
        if set_up.placement().is_none() {
            return;
        }
        let source = self.source(set_up);
        let recording = Rc::new(RefCell::new(Recording::new(source)));
        let heard = Rc::clone(&recording);
        let replayed = self.replayed();
        self.now.try_update_value(|now| {
            now.recording = Some(recording);
            now.listener = (!replayed).then(|| device::MotionListener::open(move |sample| self.on_sample(&heard, sample)));
        });
    }

    /// Records that the start tone sounded at `began_ms` on the steady clock.
    pub fn begin(self, began_ms: u64) {
        let replays = self.replays.get_untracked();
        self.now.try_update_value(|now| {
            let Some(recording) = &now.recording else { return };
            if replays.is_empty() {
                now.origin_ms = 0.0;
                recording.borrow_mut().begin(began_ms as f64 / 1000.0);
            } else {
                now.origin_ms = began_ms as f64;
                now.replay = Some(Replaying { samples: replays[now.begun % replays.len()].clone(), heard: 0 });
                recording.borrow_mut().begin(0.0);
            }
            now.begun += 1;
        });
    }

    /// Lets time pass: takes the due samples of a file, and looks for a touch-down. Returns whether one was just announced.
    pub fn advance(self) -> bool {
        let Some(recording) = self.recording() else { return false };
        for sample in self.now.try_update_value(Now::due).unwrap_or_default() {
            self.on_sample(&recording, sample);
        }
        let announced = recording.borrow_mut().detect_touch_down().is_some();
        if announced {
            self.announced.set(true);
        }
        announced
    }

    /// Records a touch or a key during a trial.
    pub fn touch(self) {
        let at = self.now.try_with_value(Now::clock_s).unwrap_or_default();
        if let Some(recording) = self.recording() {
            recording.borrow_mut().touch(at);
        }
    }

    /// Records that the trial has ended after this many milliseconds.
    pub fn end(self, held_ms: u32) {
        if let Some(recording) = self.recording() {
            let began = recording.borrow().began_s();
            recording.borrow_mut().end(began + f64::from(held_ms) / 1000.0);
        }
    }

    /// The trial's result, once the moment after it is over; measuring stops here.
    pub fn finish(self) -> Option<(Sensed, String)> {
        self.sway.set(None);
        self.announced.set(false);
        self.now.try_update_value(|now| {
            now.listener = None;
            now.replay = None;
        });
        let recording = self.recording()?;
        if !recording.borrow().is_over() {
            return None;
        }
        if !recording.borrow().has_samples() {
            self.sensor.set(Sensor::Silent);
            recording.borrow_mut().failed(SourceFault::NoSensor);
        }
        self.result(&recording)
    }

    /// Stores the answer to a question about the last trial, and returns the trial's new result.
    pub fn answer(self, asked: TrialQuestion, after_s: f64, answer: TouchAnswer) -> Option<(Sensed, String)> {
        let recording = self.recording()?;
        recording.borrow_mut().answer(asked, after_s, answer);
        self.result(&recording)
    }

    /// Shows the next question of a recording, and returns its result.
    fn result(self, recording: &RefCell<Recording>) -> Option<(Sensed, String)> {
        let recording = recording.borrow();
        self.asked.set(recording.next_question());
        recording.result()
    }

    /// Discards the current trial.
    pub fn forget(self) {
        self.sway.try_set(None);
        self.announced.try_set(false);
        self.asked.try_set(None);
        self.now.try_update_value(|now| *now = Now { begun: now.begun, ..Now::default() });
    }

    fn on_sample(self, recording: &Rc<RefCell<Recording>>, sample: Sample) {
        if let Some(point) = recording.borrow_mut().on_sample(sample) {
            self.sway.try_set(Some((point.left, point.front)));
        }
    }

    fn recording(self) -> Option<Rc<RefCell<Recording>>> {
        self.now.try_with_value(|now| now.recording.clone()).flatten()
    }

    fn replayed(self) -> bool {
        self.replays.with_untracked(|replays| !replays.is_empty())
    }

    fn source(self, set_up: SetUp) -> Source {
        let (kind, os) = if self.replayed() { (SourceKind::File, Os::Other) } else { (SourceKind::Web, device::os()) };
        Source { kind, os, sign_flipped: os.opposite_sign(), set_up, screen: Screen::Away, range_ms2: None, fault: None }
    }
}

impl Now {
    /// The present moment on the samples' clock, in seconds.
    fn clock_s(&self) -> f64 {
        (clock::steady_ms() - self.origin_ms) / 1000.0
    }

    /// The samples of a file that are due.
    fn due(&mut self) -> Vec<Sample> {
        let now_s = self.clock_s();
        let Some(replay) = &mut self.replay else { return Vec::new() };
        let rest = &replay.samples[replay.heard..];
        // A sample whose time is NaN is taken together with the one before it, as a sensor would deliver it.
        let due = rest.iter().position(|sample| sample.t_s > now_s).unwrap_or(rest.len());
        replay.heard += due;
        rest[..due].to_vec()
    }
}
