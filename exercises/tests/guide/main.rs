//! Simulated runs, step by step: what is shown, what is logged, what can be pressed.

mod balance;
mod cues;
mod hold;
mod kinds;
mod properties;
mod reps;

use exercises::catalogue::{Dose, ExerciseId, Eyes, Surface, Tempo};
use exercises::guide::{Guide, GuideEvent, Moment, Phase, Press};
use exercises::id::{ItemId, RunId};
use exercises::plan::Side;
use exercises::run::{Run, RunEnd, Work};
use exercises::time::Stamp;

/// An arbitrary time of the wall clock at the beginning.
const WALL_MS: i64 = 1_790_000_000_000;
/// The time of the steady clock at the beginning; not zero, so that code which ignores the origin fails.
const STEADY_MS: u64 = 777_000;

/// The moment `ms` after the beginning, awake all the time.
fn at(ms: u64) -> Moment {
    Moment { steady_ms: STEADY_MS + ms, wall_ms: WALL_MS + ms as i64 }
}

fn run(dose: Dose) -> Run {
    let work = Work::begun(dose.kind(), (Surface::Firm, Eyes::Open));
    Run {
        id: RunId(1),
        item: ItemId(1),
        exercise: ExerciseId::new("an-exercise").expect("kebab-case"),
        rung: None,
        dose,
        slot: None,
        started: Stamp { utc_ms: WALL_MS, offset_s: 3600 },
        live: true,
        end: RunEnd::Going,
        paused_ms: 0,
        interruptions: Vec::new(),
        work,
    }
}

fn guide(dose: Dose, side: Side) -> Guide {
    Guide::new(run(dose), side, at(0)).expect("a dose that fits what is done")
}

/// A guide that looks at the steady clock every 100 ms, as a window does.
struct Watched {
    guide: Guide,
    now: u64,
    /// Every event so far with its time.
    events: Vec<(u64, GuideEvent)>,
}

impl Watched {
    fn new(dose: Dose, side: Side) -> Watched {
        Watched { guide: guide(dose, side), now: 0, events: Vec::new() }
    }

    fn until(&mut self, ms: u64) -> &mut Self {
        while self.now < ms {
            self.now = (self.now + 100).min(ms);
            let events = self.guide.advance(at(self.now));
            self.events.extend(events.into_iter().map(|event| (self.now, event)));
        }
        self
    }

    fn press(&mut self, press: Press) -> &mut Self {
        let events = self.guide.press(press, at(self.now));
        self.events.extend(events.into_iter().map(|event| (self.now, event)));
        self
    }

    fn phase(&self) -> Phase {
        self.guide.view().phase
    }

    /// The time at which each phase was entered.
    fn phases(&self) -> Vec<(u64, Phase)> {
        let entered = |event: &GuideEvent| if let GuideEvent::Entered(phase) = event { Some(*phase) } else { None };
        self.events.iter().filter_map(|(at, event)| Some((*at, entered(event)?))).collect()
    }

    fn checkpoints(&self) -> Vec<u64> {
        self.events.iter().filter(|(_, event)| *event == GuideEvent::Checkpoint).map(|(at, _)| *at).collect()
    }
}

const HOLD: Dose = Dose::Hold { repetitions: 3, hold_s: 10, rest_s: 10 };
const REPS: Dose = Dose::Reps { sets: 2, repetitions: 3, rest_s: 20, tempo: Tempo { up_s: 2, hold_s: 1, down_s: 3 } };
const BALANCE: Dose = Dose::Balance { trials: 3, target_s: 30, rest_s: 30 };

#[test]
fn a_run_whose_work_does_not_fit_its_dose_is_not_guided() {
    let odd = Run { work: Work::Counted(Vec::new()), ..run(HOLD) };
    assert_eq!(Guide::new(odd, Side::Neither, at(0)), None);
    assert_eq!(Guide::new(run(BALANCE), Side::Neither, at(0)), None, "a stance has a leg");
    let nothing = Dose::Hold { repetitions: 0, hold_s: 10, rest_s: 10 };
    assert_eq!(Guide::new(run(nothing), Side::Neither, at(0)), None);
}

#[test]
fn the_run_keeps_its_names_and_its_beginning() {
    let mut watched = Watched::new(HOLD, Side::Neither);
    watched.until(60_000);
    let done = watched.guide.snapshot();
    let begun = run(HOLD);
    assert_eq!((done.id, done.item, done.exercise, done.started), (begun.id, begun.item, begun.exercise, begun.started));
}
