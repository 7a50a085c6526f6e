//! A patient's whole day with the keyboard alone. At every stop the focus is visible, no page loses it (WCAG 2.2, 2.4.3, 2.4.7,
//! 2.4.11), and none traps it (2.1.2).

use end_to_end::scenes::{BALANCE, FOUR_WEEKS_ON, TAKEN, ZONE};
use end_to_end::{Desktop, Window};
use std::sync::{Mutex, MutexGuard, PoisonError};

/// A screen has one keyboard, so the tests of this file take turns.
static KEYBOARD: Mutex<()> = Mutex::new(());

/// The window of this home at this moment, brought to the front, so that it has the keyboard.
#[track_caller]
fn open(desktop: &Desktop, home: &str, at: &str) -> (Window, MutexGuard<'static, ()>) {
    let turn = KEYBOARD.lock().unwrap_or_else(PoisonError::into_inner);
    let window = desktop.open(home).at(at).zone(ZONE).start();
    // A second start brings the window of the first one to the front.
    assert!(desktop.start_unattended(home).ends().success());
    window.wait_for("return document.hasFocus()");
    (window, turn)
}

/// A plan with one short hold a day, for a complaint.
const PLAN: &str = r#"
review = 2027-04-12
age = "18-39"

[[complaint]]
number = 1
name = "upper back"
pain = 4

[[item]]
number = 1
exercise = "sit-tall-chin-back"
hold = { repetitions = 1, seconds = 10, rest = 0 }
at = ["09:00"]
days = "every-day"
serves = 1
"#;

/// The entry of the answer after the hold.
const SAID: &str = "Pain while doing Sit tall, chin back: 4 of 10";

/// Presses the element with these words with the key, and waits for what follows; the focus must not be lost on the way.
#[track_caller]
fn press(window: &Window, words: &str, key: &str, then: &str) {
    window.press_by_key(words, key);
    window.see(then);
    window.focus_is_kept();
}

#[test]
fn choosing_the_clinic_by_mistake_can_be_undone_without_a_trace() {
    let desktop = Desktop::new();
    let at = "2027-03-01T08:55:00+01:00";
    let (window, turn) = open(&desktop, "new", at);
    press(&window, "I understand. Continue", "Enter", "How will you use Carryover?");
    press(&window, "I prescribe exercises", "Enter", "Set up your clinic");
    window.no_trap();
    window.screenshot("set-up-with-a-way-back");
    press(&window, "Back", "Enter", "How will you use Carryover?");
    press(&window, "I prescribe exercises", "Enter", "Set up your clinic");
    window.close();
    drop(turn);
    let (window, _turn) = open(&desktop, "new", at);
    press(&window, "I understand. Continue", "Space", "How will you use Carryover?");
    press(&window, "I do exercises", "Enter", "Add your plan card");
    window.close();
    let window = desktop.open("new").at(at).zone(ZONE).start();
    window.see("Add your plan card");
}

#[test]
fn from_the_first_start_to_the_visit() {
    let desktop = Desktop::new();
    desktop.prescribe(PLAN, TAKEN);
    let card = std::fs::read_to_string(desktop.path("card/card.txt")).expect("the card's text");
    let (window, _turn) = open(&desktop, "new", "2027-03-01T08:55:00+01:00");
    window.see("What Carryover is for");
    window.no_trap();
    press(&window, "I understand. Continue", "Enter", "How will you use Carryover?");
    window.no_trap();
    press(&window, "Back", "Enter", "What Carryover is for");
    press(&window, "I understand. Continue", "Enter", "How will you use Carryover?");
    press(&window, "I do exercises", "Enter", "Add your plan card");
    take(&window, card.trim());
    hold(&window);
    visit(&window);
    correct(&window);
    pages(&window);
}

fn take(window: &Window, card: &str) {
    window.no_trap();
    window.tab_to("Card text");
    window.type_here(card);
    press(window, "Open card", "Space", "Start this plan");
    window.no_trap();
    press(window, "Start this plan", "Enter", "Remind me in 10 minutes");
}

fn hold(window: &Window) {
    window.no_trap();
    press(window, "Start", "Enter", "Before you start");
    window.tab_to("I have read this. Start");
    window.tab_back_to("Not now");
    window.tab_to("I have read this. Start");
    window.key("Space");
    window.see("Hold 1 of 1");
    window.focus_is_kept();
    press(window, "Pause", "Enter", "Paused");
    window.no_trap();
    press(window, "Something is wrong", "Enter", "What is wrong?");
    window.no_trap();
    press(window, "Nothing is wrong, go back", "Enter", "Paused");
    press(window, "Resume", "Space", "Hold 1 of 1");
    window.see("1 of 1 hold completed.");
    window.focus_is_kept();
    press(window, "Continue", "Enter", "Pain while doing it: Sit tall, chin back");
    window.no_trap();
    press(window, "4", "Enter", "done");
}

fn visit(window: &Window) {
    press(window, "Record", "Enter", "For the visit");
    window.no_trap();
    press(window, "For the visit", "Enter", "What you share");
    window.no_trap();
    press(window, "Show it as codes", "Space", "The summary as a code");
    press(window, "Back", "Enter", "What you share");
    press(window, "Back", "Enter", "Was something entered by mistake?");
}

/// Opens each page that explains the program from the page of the person's own data, and returns there.
fn pages(window: &Window) {
    press(window, "Your data", "Enter", "Erase everything");
    for (page, says) in
        [("Help", "What if I missed a session?"), ("Privacy", "There is no account"), ("About Carryover", "Data folder: ")]
    {
        press(window, page, "Enter", says);
        window.no_trap();
        press(window, "Back", "Enter", "Erase everything");
    }
    press(window, "Back", "Enter", "For the visit");
}

fn correct(window: &Window) {
    press(window, "Was something entered by mistake?", "Enter", SAID);
    window.no_trap();
    window.tab_back_to(&entry(window, SAID));
    window.key("Enter");
    window.see("Delete: it was a mistake");
    press(window, "2", "Space", "Now: 2 of 10.");
    assert!(window.focus().words.contains("Now: 2 of 10."), "the entry has the focus again: {:?}", window.focus());
    press(window, "Back", "Enter", "For the visit");
}

/// All words of the entry that contains these.
fn entry(window: &Window, words: &str) -> String {
    let script =
        "return [...document.querySelectorAll('.told button')].find((it) => it.innerText.includes(arguments[0])).innerText";
    let said = window.ask(script, &[words.into()]);
    said.as_str().expect("the entry is there").split_whitespace().collect::<Vec<_>>().join(" ")
}

#[test]
fn codes_are_turned_with_the_arrows() {
    let desktop = Desktop::new();
    desktop.with_four_weeks();
    let (window, _turn) = open(&desktop, "patient", FOUR_WEEKS_ON);
    press(&window, "Record", "Enter", "For the visit");
    press(&window, "For the visit", "Enter", "What you share");
    press(&window, "Show it as codes", "Enter", "Code 1 of");
    press(&window, "Stay on this code", "Space", "Show them in turn");
    let at = |number: u32| window.see(&format!("Code {number} of"));
    at(1);
    window.key("ArrowRight");
    at(2);
    window.key("ArrowRight");
    at(3);
    window.key("ArrowLeft");
    at(2);
    window.focus_is_kept();
    window.no_trap();
    press(&window, "Back", "Space", "What you share");
}

#[test]
fn a_balance_trial_is_begun_and_ended_with_a_key() {
    let desktop = Desktop::new();
    desktop.prescribe(BALANCE, TAKEN);
    let (window, _turn) = open(&desktop, "patient", "2027-03-01T09:00:30+01:00");
    press(&window, "Start", "Enter", "Before you start");
    press(&window, "I have read this. Start", "Enter", "Start countdown");
    window.no_trap();
    press(&window, "Start countdown", "Enter", "Press any key or touch the screen when your foot comes down");
    window.wait_for("return [...document.querySelectorAll('[role=timer]')].some((timer) => Number(timer.textContent.match(/\\d+/)) >= 2)");
    window.key("Space");
    window.see("Last attempt");
    window.focus_is_kept();
    press(&window, "Start countdown", "Space", "Press any key or touch the screen when your foot comes down");
    window.wait_for("return [...document.querySelectorAll('[role=timer]')].some((timer) => Number(timer.textContent.match(/\\d+/)) >= 2)");
    window.key("Enter");
    window.see("2 of 2 attempts done.");
    window.focus_is_kept();
    press(&window, "Continue", "Enter", "Pain while doing it: Stand on one leg");
    press(&window, "1", "Enter", "Do one now");
}

#[test]
fn the_focus_stays_while_the_page_changes_with_time() {
    let desktop = Desktop::new();
    desktop.prescribe(PLAN, TAKEN);
    let (window, _turn) = open(&desktop, "patient", "2027-03-01T08:55:40+01:00");
    window.see("Start");
    window.tab_to("How to do it");
    window.see("Monday, 08:56");
    window.focus_is_kept();
    assert_eq!(window.focus().words, "How to do it");
}

#[test]
fn an_element_that_cannot_have_the_focus_any_longer_hands_it_on() {
    let desktop = Desktop::new();
    desktop.prescribe(PLAN, TAKEN);
    let (window, _turn) = open(&desktop, "patient", "2027-03-01T08:55:00+01:00");
    window.see("Start");
    // The whole page took it, and takes it no more.
    window.ask(
        "const main = document.querySelector('main'); main.tabIndex = -1; main.focus(); main.removeAttribute('tabindex')",
        &[],
    );
    window.wait_for("return document.activeElement.localName === 'h1'");
    // A control is kept, and hidden.
    window.ask("const button = document.querySelector('main .offer button'); button.focus(); button.hidden = true", &[]);
    window.wait_for("return document.activeElement.className === 'offer'");
}

#[test]
fn a_press_with_a_finger_shows_no_outline() {
    let desktop = Desktop::new();
    desktop.prescribe(PLAN, TAKEN);
    let (window, _turn) = open(&desktop, "patient", "2027-03-01T08:55:00+01:00");
    window.press("How to do it");
    window.wait_for("return document.activeElement.localName === 'h1'");
    assert_eq!(window.ask("return document.activeElement.matches(':focus-visible')", &[]), false);
}

#[test]
fn the_numbers_of_a_dose_are_changed_with_keys() {
    let desktop = Desktop::new();
    let passphrase = desktop.with_a_clinic();
    let (window, _turn) = open(&desktop, "clinic", "2027-03-01T08:30:00+01:00");
    window.type_into("Passphrase", passphrase);
    window.press("Unlock");
    window.press("First plan: K17");
    window.press("Add Heel raise");
    window.see("Ready to issue.");
    let has_focus = |name: &str, expanded: bool| {
        window.wait_for(&format!(
            "const it = document.activeElement; return it.ariaLabel === '{name}' && it.ariaExpanded === '{expanded}'"
        ));
    };
    window.tab_to("Sets: 2");
    window.key("Enter");
    has_focus("Sets: 2", true);
    window.key("ArrowUp");
    has_focus("Sets: 3", true);
    window.tab_to("Sets: more");
    window.key("Space");
    window.key("Escape");
    has_focus("Sets: 4", false);
    assert!(!window.can_press("Sets: more"), "its steps are gone");
    window.key("ArrowDown");
    has_focus("Sets: 3", false);
    window.see("3 sets of");
    window.no_trap();
}

/// Types a word into the field that has the focus, and adds what stands first with Enter. Returns how many keys that took.
#[track_caller]
fn prescribe(window: &Window, word: &str, exercise: &str) -> usize {
    window.type_here(word);
    window.wait_for(&format!("return document.querySelector('.catalogue .entry b')?.textContent === '{exercise}'"));
    window.key("Enter");
    window.wait_for(&format!(
        "return [...document.querySelectorAll('.items h2')].some((it) => it.textContent === '{exercise}')"
    ));
    word.chars().count() + 1
}

#[test]
fn a_plan_of_three_known_exercises_takes_few_keys() {
    let desktop = Desktop::new();
    let passphrase = desktop.with_a_clinic();
    let (window, _turn) = open(&desktop, "clinic", TAKEN);
    window.resize(1280, 800);
    window.type_into("Passphrase", passphrase);
    window.key("Enter");
    window.press_by_key("First plan: K17", "Enter");
    window.wait_for("return document.activeElement.ariaLabel === 'Find an exercise'");
    let all = [("sit tall", "Sit tall, chin back"), ("heel ra", "Heel raise"), ("bridge", "Bridge")];
    let typed: usize = all.iter().map(|(word, exercise)| prescribe(&window, word, exercise)).sum();
    window.see("Ready to issue.");
    window.key("Control+Enter");
    window.see("Plan card for");
    let keys = typed + 2;
    assert!(keys <= 40, "{keys} keys");
}
