//! The window itself: that it opens, what it is like before anything was done in it, and what it refuses.

use end_to_end::{Desktop, Window};
use serde_json::json;

fn ground(window: &Window) -> serde_json::Value {
    window.ask("return getComputedStyle(document.documentElement).backgroundColor", &[])
}

#[test]
fn the_window_opens_on_its_first_screen() {
    let desktop = Desktop::new();
    let window = desktop.open("anna").at("2027-03-01T14:02:00+01:00").start();
    window.see("Carryover");
    window.fits();
    assert_eq!(ground(&window), json!("rgb(250, 247, 241)"));
    window.screenshot("first-light");
}

#[test]
fn a_dark_desktop_gets_a_dark_window() {
    let desktop = Desktop::new();
    let window = desktop.open("anna").dark().start();
    window.see("Carryover");
    assert_eq!(ground(&window), json!("rgb(20, 25, 28)"));
    window.screenshot("first-dark");
}

#[test]
fn the_letters_are_the_programs_own() {
    let desktop = Desktop::new();
    let window = desktop.open("anna").start();
    window.see("Carryover");
    window.wait_for("return document.fonts.check('600 28px \"Atkinson Hyperlegible Next\"')");
}

#[test]
fn a_second_start_on_the_same_home_hands_over_and_ends() {
    let desktop = Desktop::new();
    let window = desktop.open("anna").start();
    window.see("Carryover");
    assert!(desktop.start_unattended("anna").ends().success());
    window.see("Carryover");
}

#[test]
fn another_home_opens_beside_it() {
    let desktop = Desktop::new();
    let mine = desktop.open("anna").start();
    let yours = desktop.open("ben").start();
    for window in [&mine, &yours] {
        window.see("Carryover");
    }
    assert_ne!(mine.home(), yours.home());
}

#[test]
fn the_page_reaches_nothing_outside_and_runs_no_text() {
    let desktop = Desktop::new();
    let window = desktop.open("anna").start();
    window.see("Carryover");
    let outside = "return fetch('https://example.org/').then(() => 'reached', () => 'refused')";
    assert_eq!(window.ask(outside, &[]), json!("refused"));
    let run_text = "const script = document.createElement('script'); script.textContent = 'window.ran = true';
        document.head.append(script); return window.ran ?? 'refused'";
    assert_eq!(window.ask(run_text, &[]), json!("refused"));
    // Both were noted, as a mistake of the program's own would be.
    let noted = window.take_faults();
    assert!(noted.contains("connect-src") && noted.contains("script-src"), "{noted}");
}

#[test]
fn reloading_anywhere_finds_the_program_again() {
    let desktop = Desktop::new();
    let window = desktop.open("anna").start();
    window.see("Carryover");
    window.reload();
    window.see("Carryover");
}

#[test]
fn a_press_that_missed_what_moved_meanwhile_is_made_again() {
    let desktop = Desktop::new();
    let window = desktop.open("anna").start();
    window.see("I prescribe exercises");
    // What an answer that comes between measuring and pressing does to a page.
    window.ask(
        "addEventListener('mousedown', () => { document.body.style.paddingTop = '300px'; window.moved = true; }, { once: true })",
        &[],
    );
    window.press("I prescribe exercises");
    window.see("Passphrase");
    assert_eq!(window.ask("return window.moved", &[]), json!(true));
}
