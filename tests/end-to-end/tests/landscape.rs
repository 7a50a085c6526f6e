//! A phone turned sideways during an exercise: nothing is cut off or overlaps, and the seconds and all buttons are on the screen
//! without scrolling.

use end_to_end::scenes::{Doses, recorded_trial};
use end_to_end::{Desktop, Window};
use serde_json::Value;

const SIZES: [(u32, u32); 2] = [(844, 390), (640, 360)];

/// Of each more than one, so that there is a rest, and short, so that it comes soon.
const DOSES: Doses = Doses {
    hold: "{ repetitions = 2, seconds = 5, rest = 20 }",
    reps: "{ sets = 2, repetitions = 1, rest = 20, tempo = [2, 1, 2] }",
    balance: "{ trials = 3, target = 30, rest = 0 }",
};

/// Finds elements that are not on the screen, too small for a thumb, longer than their place, or on top of others.
const CRAMPED: &str = r"
    const seen = (element) => element.checkVisibility({ visibilityProperty: true }) && element.getClientRects().length > 0;
    const all = (kinds) => [...document.querySelectorAll(kinds)].filter(seen);
    const name = (element) => `${element.localName}.${element.className} '${(element.innerText ?? '').slice(0, 30)}'`;
    const box = (element) => element.getBoundingClientRect();
    const out = all('main button, main label, main h1, main p, main li, .seconds').filter((element) => {
        const { left, top, right, bottom } = box(element);
        return left < -1 || top < -1 || right > innerWidth + 1 || bottom > innerHeight + 1;
    });
    const small = all('main button, .place').filter((element) => box(element).height < 48 || box(element).width < 48);
    const scrolls = all('main').filter((element) => element.scrollHeight > element.clientHeight + 1);
    const long = all('.run-head, .run-middle, .between-words, .between-side, .controls').filter((element) =>
        [...element.children].filter((child) => seen(child) && (child.innerText ?? ' ') !== '').some((child) => box(child).top < box(element).top - 1 || box(child).bottom > box(element).bottom + 1));
    const parts = all('.run-head, .run-figure, .going, .seconds, .count, .foot, .between-words, .between-side, .failed, .choices, .controls, .run > .alarm');
    const meet = (a, b) => Math.min(a.right, b.right) - Math.max(a.left, b.left) > 1 && Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top) > 1;
    const pairs = parts.flatMap((a, at) => parts.slice(at + 1).filter((b) => !a.contains(b) && !b.contains(a) && meet(box(a), box(b))).map((b) => `${name(a)} on ${name(b)}`));
    return [...out.map((it) => 'not on the screen: ' + name(it)), ...small.map((it) => 'small: ' + name(it)),
        ...[...scrolls, ...long].map((it) => 'longer than its place: ' + name(it)), ...pairs];
";

/// Checks the screen in both sizes: everything is visible, including these words to press.
#[track_caller]
fn look(window: &Window, screen: &str, press: &[&str]) {
    let mut found = Vec::new();
    for (width, height) in SIZES {
        window.resize(width, height);
        window.screenshot(&format!("landscape-{screen}-{width}x{height}"));
        let lines = window.ask(CRAMPED, &[]);
        let lines = lines.as_array().into_iter().flatten().filter_map(Value::as_str).map(str::to_owned);
        found.extend(lines.chain(window.misfits()).map(|line| format!("{width}x{height}: {line}")));
        for words in press {
            // What was done may still be on its way to the shell, and a button waits for that.
            let there = end_to_end::until(|| window.can_press(words).then_some(()));
            assert!(there.is_some(), "{words:?} is there at {width}x{height}: {}", window.text());
        }
    }
    assert!(found.is_empty(), "{screen}:\n{}", found.join("\n"));
}

fn open(desktop: &Desktop, time: &str) -> Window {
    let trials = ["b_touchdowns_web60", "c_coarse_gap_landscape", "a_stable_native100"].map(recorded_trial);
    let (width, height) = SIZES[0];
    let window = desktop.with_one_of_each_kind(&DOSES, time).motion(&trials).size(width, height).start();
    window.start_what_is_due();
    window
}

const USUAL: [&str; 3] = ["Pause", "Stop", "Something is wrong"];

#[test]
fn a_hold_on_its_side() {
    let desktop = Desktop::new();
    let window = open(&desktop, "09:00");
    window.see("Hold 1 of 2");
    look(&window, "hold", &USUAL);
    window.see("Next: hold 2 of 2");
    look(&window, "hold-rest", &["30 more seconds", "Continue now", "Something is wrong"]);
    window.press("Pause");
    window.see("Paused");
    look(&window, "hold-paused", &["Resume", "Stop", "Something is wrong"]);
    window.press("Stop");
    window.see("Stopped here");
    look(&window, "hold-end", &["Continue"]);
}

#[test]
fn repetitions_on_their_side() {
    let desktop = Desktop::new();
    let window = open(&desktop, "10:00");
    window.see("Set 1 of 2");
    look(&window, "reps", &USUAL);
    window.see("Next: set 2 of 2");
    look(&window, "reps-rest", &["30 more seconds", "Continue now", "Something is wrong"]);
    window.press("Stop");
    window.see("Stopped here");
    look(&window, "reps-end", &["Continue"]);
}

#[test]
fn balance_on_its_side_wherever_the_phone_is() {
    for (place, name, said) in [
        ("On the support", "support", "Touch anywhere when your foot comes down"),
        ("At the breastbone", "breastbone", "Touch anywhere when your foot comes down"),
        ("In a pocket at the waist", "pocket", "Stand until the sound"),
    ] {
        let desktop = Desktop::new();
        let window = open(&desktop, "11:00");
        window.press(place);
        look(&window, &format!("balance-{name}"), &["Start countdown", "Stop", "Something is wrong"]);
        window.press("Start countdown");
        look(&window, &format!("balance-{name}-count"), &[]);
        window.see(said);
        look(&window, &format!("balance-{name}-trial"), &[]);
        if name == "support" {
            window.touch_anywhere();
            window.see("Last attempt");
            look(&window, "balance-between", &["Start countdown", "Stop", "Something is wrong"]);
        } else if name == "breastbone" {
            // A key ends it like a touch; whether a question follows depends on what the sensor found.
            window.key("Space");
            window.see_no_more(said);
            window.see("Something is wrong");
            continue;
        } else {
            // The sensor ends it.
            window.see("Did your foot");
            look(&window, &format!("balance-{name}-asked"), &["Yes", "No", "Not sure", "Something is wrong"]);
            window.press("No");
            window.see("Did it touch at another moment, or did you hold on?");
            look(&window, &format!("balance-{name}-asked-again"), &["Yes", "No", "Not sure", "Something is wrong"]);
            window.press("Yes");
            window.see("After about how many seconds?");
            window.set("After about how many seconds?", "5");
            look(&window, &format!("balance-{name}-asked-when"), &["Continue", "Back", "Something is wrong"]);
            window.press("Back");
            window.press("No");
            window.see("Start countdown");
        }
        window.press("Stop");
        window.see("Stopped here");
        // The results may need more than one screen; the button to continue must not.
        window.resize(640, 360);
        window.screenshot(&format!("landscape-balance-{name}-end-640x360"));
        window.fits();
        window.wait_for("const it = document.querySelector('main button.main').getBoundingClientRect(); return it.top >= 0 && it.bottom <= innerHeight");
    }
}
