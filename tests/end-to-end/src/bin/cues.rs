//! Measures from outside when the sounds of ten guided holds come: with the window visible, hidden, and with every processor busy;
//! `cues "in sight"` measures one of the three. The sound card that records them counts samples by the monotonic clock; the guide
//! says when each sound should come.

use end_to_end::{Desktop, SoundCard, Window};
use exercises::catalogue::{Dose, ExerciseId};
use exercises::guide::{Cue, Guide, Moment, Phase, Sound};
use exercises::id::{ItemId, RunId};
use exercises::plan::Side;
use exercises::run::{Run, RunEnd, Work};
use exercises::time::Stamp;
use std::collections::BTreeSet;
use std::process::Command;
use std::sync::Arc;
use std::sync::atomic::{AtomicBool, Ordering};
use std::time::{Duration, Instant};

const AT: &str = "2027-03-01T09:02:00Z";
const PLAN: &str = r#"
review = 2027-04-05

[[item]]
number = 1
exercise = "sit-tall-chin-back"
rung = "chair"
hold = { repetitions = 10, seconds = 6, rest = 5 }
every = { minutes = 60, from = "09:00", to = "17:00" }
days = "every-day"
"#;
const DOSE: Dose = Dose::Hold { repetitions: 10, hold_s: 6, rest_s: 5 };

fn main() {
    println!("{:<16} {:>10} {:>8} {:>8} {:>8} {:>8} {:>8}", "window", "heard", "median", "p90", "worst", "ends", "drift");
    let chosen = std::env::args().nth(1);
    let wanted = |name: &str| chosen.as_deref().is_none_or(|chosen| chosen == name);
    for (name, prepare, busy) in
        [("in sight", stay as fn(&Window), false), ("out of sight", hide, false), ("all busy", stay, true)]
    {
        if wanted(name) {
            measure(name, prepare, busy);
        }
    }
    println!(
        "milliseconds from the time that the first sound sets; ends: worst of the ten ends; drift: last end less first"
    );
}

fn measure(name: &str, prepare: fn(&Window), busy: bool) {
    let desktop = Desktop::new();
    desktop.prescribe(PLAN, "2027-03-01T08:00:00Z");
    let card = SoundCard::new(&desktop.path("run"));
    let window = desktop.open("patient").at(AT).zone("UTC").with("PULSE_SERVER", card.address()).start();
    window.press("Start");
    window.press("I have read this. Start");
    window.see("Get ready");
    prepare(&window);
    let over = Arc::new(AtomicBool::new(false));
    let load: Vec<_> = (0..if busy { 2 * processors() } else { 0 }).map(|_| spin(Arc::clone(&over))).collect();
    let expected = expected();
    let lasts = Duration::from_millis(expected.last().map_or(0, |cue| cue.at_ms) + 4000);
    let begun = Instant::now();
    while begun.elapsed() < lasts && card.onsets_ms().len() < expected.len() {
        std::thread::sleep(Duration::from_millis(200));
    }
    over.store(true, Ordering::Relaxed);
    load.into_iter().for_each(|thread| drop(thread.join()));
    report(name, &expected, &card.onsets_ms());
}

/// Every sound of the run and when it should come, according to the guide.
fn expected() -> Vec<Cue> {
    let run = Run {
        id: RunId(1),
        item: ItemId(1),
        exercise: ExerciseId::new("sit-tall-chin-back").expect("an id"),
        rung: None,
        dose: DOSE,
        slot: None,
        started: Stamp { utc_ms: 0, offset_s: 0 },
        live: true,
        end: RunEnd::Going,
        paused_ms: 0,
        interruptions: Vec::new(),
        work: Work::Timed(Vec::new()),
    };
    let at = |ms: u64| Moment { steady_ms: ms, wall_ms: ms as i64 };
    let mut guide = Guide::new(run, Side::Neither, at(0)).expect("the dose can be guided");
    let mut cues = BTreeSet::new();
    for ms in (0..).step_by(100) {
        guide.advance(at(ms));
        if matches!(guide.view().phase, Phase::Ended(_)) {
            break;
        }
        cues.extend(guide.cues());
    }
    cues.into_iter().collect()
}

/// Largest distance from its expected time at which a sound is looked for, in milliseconds.
const NEAR_MS: f64 = 450.0;

fn report(name: &str, expected: &[Cue], heard: &[f64]) {
    let Some((first, begin)) = expected.first().zip(heard.first()) else {
        println!("{name:<16} nothing was heard");
        return;
    };
    let late = |cue: &Cue| -> Option<f64> {
        let due = begin + (cue.at_ms - first.at_ms) as f64;
        heard
            .iter()
            .map(|at| at - due)
            .min_by(|one, other| one.abs().total_cmp(&other.abs()))
            .filter(|late| late.abs() < NEAR_MS)
    };
    let all: Vec<(Sound, f64)> = expected.iter().filter_map(|cue| Some((cue.sound, late(cue)?))).collect();
    // An offset that all sounds share does not matter: the median is taken as zero.
    let mut order: Vec<f64> = all.iter().map(|(_, late)| *late).collect();
    order.sort_by(f64::total_cmp);
    let middle = order[order.len() / 2];
    let mut size: Vec<f64> = order.iter().map(|late| (late - middle).abs()).collect();
    size.sort_by(f64::total_cmp);
    let is_end = |sound: &Sound| matches!(sound, Sound::Rest | Sound::End);
    let ends: Vec<f64> = all.iter().filter(|(sound, _)| is_end(sound)).map(|(_, late)| late - middle).collect();
    let place = |share: f64| size[((size.len() - 1) as f64 * share) as usize];
    let worst_end = ends.iter().map(|late| late.abs()).fold(0.0, f64::max);
    let drift = ends.last().zip(ends.first()).map_or(0.0, |(last, first)| last - first);
    println!(
        "{name:<16} {:>3} of {:>3} {:>8.1} {:>8.1} {:>8.1} {worst_end:>8.1} {drift:>8.1}",
        all.len(),
        expected.len(),
        place(0.5),
        place(0.9),
        place(1.0)
    );
    let off = all.iter().enumerate().max_by(|(_, one), (_, other)| {
        let size = |late: f64| (late - middle).abs();
        size(one.1).total_cmp(&size(other.1))
    });
    if let Some((place, (sound, late))) = off {
        println!("{:<16} the worst is sound {} ({sound:?}), {:+.1}", "", place + 1, late - middle);
    }
}

fn stay(_: &Window) {}

/// Hides the window as if another desktop were shown.
fn hide(window: &Window) {
    let found = Command::new("xdotool").args(["search", "--onlyvisible", "--name", "Carryover"]).output();
    let found = found.expect("xdotool is installed (tests/packages-long.txt)");
    for id in String::from_utf8_lossy(&found.stdout).lines() {
        let gone = Command::new("xdotool").args(["windowunmap", id]).status();
        assert!(gone.is_ok_and(|status| status.success()), "the window can be taken out of sight");
    }
    window.wait_for("return document.hidden");
}

fn spin(over: Arc<AtomicBool>) -> std::thread::JoinHandle<()> {
    std::thread::spawn(move || {
        while !over.load(Ordering::Relaxed) {
            std::hint::spin_loop();
        }
    })
}

fn processors() -> usize {
    std::thread::available_parallelism().map_or(1, usize::from)
}
