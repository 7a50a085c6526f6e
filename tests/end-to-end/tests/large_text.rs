//! Text twice as large (WCAG 2.2, 1.4.4) where it matters most: the exercise that is due and "Start" are on the first screen, and
//! during an exercise the seconds and all buttons stay visible. No word is broken in the middle.

use end_to_end::scenes::Doses;
use end_to_end::{Desktop, Window};
use serde_json::json;

/// A phone's size, and the size in which the window opens on a desktop.
const SIZES: [(u32, u32); 2] = [(390, 844), (460, 844)];

/// Long enough to look at each screen.
const DOSES: Doses = Doses {
    hold: "{ repetitions = 2, seconds = 30, rest = 60 }",
    reps: "{ sets = 2, repetitions = 10, rest = 60, tempo = [2, 1, 2] }",
    balance: "{ trials = 3, target = 60, rest = 0 }",
};

/// Checks the screen in each size.
#[track_caller]
fn look(window: &Window, screen: &str) {
    let mut found = Vec::new();
    window.enlarge_text(true);
    for (width, height) in SIZES {
        window.resize(width, height);
        window.screenshot(&format!("large-{screen}-{width}x{height}"));
        let lines = [window.cramped(), window.misfits()].concat();
        found.extend(lines.into_iter().map(|line| format!("{width}x{height}: {line}")));
    }
    window.enlarge_text(false);
    assert!(found.is_empty(), "{screen}:\n{}", found.join("\n"));
}

fn open(desktop: &Desktop, time: &str) -> Window {
    let window = desktop.with_one_of_each_kind(&DOSES, time).start();
    window.see("Start");
    window
}

#[test]
fn the_exercise_that_is_due_is_on_the_first_screen() {
    let desktop = Desktop::new();
    let window = open(&desktop, "09:00");
    look(&window, "now");
    window.enlarge_text(true);
    for (width, height) in SIZES {
        window.resize(width, height);
        let shown = "const begin = [...document.querySelectorAll('button')].find((it) => it.textContent === 'Start');
            document.querySelector('main').scrollTo(0, 0); return begin.getBoundingClientRect().top < innerHeight - 80;";
        assert_eq!(window.ask(shown, &[]), json!(true), "Begin can be seen at {width}x{height}");
    }
}

#[test]
fn a_hold_and_its_rest() {
    let desktop = Desktop::new();
    let window = open(&desktop, "09:00");
    window.start_what_is_due();
    window.see("Get ready");
    look(&window, "ready");
    window.see("Hold 1 of 2");
    look(&window, "hold");
    window.see("Next: hold 2 of 2");
    look(&window, "rest");
    window.press("Something is wrong");
    look(&window, "wrong");
}

#[test]
fn repetitions() {
    let desktop = Desktop::new();
    let window = open(&desktop, "10:00");
    window.start_what_is_due();
    window.see("Set 1 of 2");
    look(&window, "set");
    window.press("Stop");
    window.see("Stopped here");
    look(&window, "set-end");
}

#[test]
fn a_trial_and_the_moment_after_its_end() {
    let desktop = Desktop::new();
    let window = open(&desktop, "11:00");
    window.start_what_is_due();
    look(&window, "set-up");
    window.press("Start countdown");
    window.see("Press any key or touch the screen when your foot comes down");
    look(&window, "trial");
    // Records every heading from now on, because the moment after a trial is too short to be looked for.
    window.ask(
        "window.headings = []; const note = () => headings.push(document.querySelector('main h1')?.textContent);
            new MutationObserver(note).observe(document.body, { subtree: true, childList: true, characterData: true }); return true",
        &[],
    );
    window.touch_anywhere();
    window.see("Last attempt");
    assert_eq!(window.ask("return headings.includes('Attempt over')", &[]), json!(true));
    look(&window, "between");
}
