//! Every screen, light and dark, is accessible as far as a machine can check, and nothing on it is cut off or too small to be
//! pressed: on a phone, on a page 320 pixels wide (WCAG 2.2, 1.4.10), and with text twice as large (1.4.4).

use end_to_end::{Demo, Desktop, Tour, Window};
use std::cell::RefCell;
use std::path::Path;
use std::process::Command;
use std::sync::LazyLock;

const AT: &str = "2027-03-01T14:02:00+01:00";
const PHONE: (u32, u32) = (390, 844);

/// The demo, made once.
static DEMO: LazyLock<Demo> =
    LazyLock::new(|| Demo::make(&Path::new(env!("CARGO_TARGET_TMPDIR")).join("tour"), "2027-03-01", None));

/// What is found on one side of the program, each with its screen. The tour is made on its own copy of the homes, because two windows
/// cannot share one.
fn findings(name: &str, go: fn(&Tour<'_>)) -> Vec<String> {
    let homes = DEMO.homes.with_file_name(name);
    let _ = std::fs::remove_dir_all(&homes);
    let copied = Command::new("cp").arg("-r").arg(&DEMO.homes).arg(&homes).status().expect("cp");
    assert!(copied.success());
    let found = RefCell::new(Vec::new());
    let at_screen = |window: &Window, screen: &str| {
        found.borrow_mut().extend(look(window).into_iter().map(|line| format!("{screen}: {line}")));
    };
    go(&Tour { homes, at: DEMO.at.clone(), size: PHONE, dark: false, pseudo: false, at_screen: &at_screen });
    found.into_inner()
}

/// Looks at a screen in every way, because getting there takes longer: as it is, with text twice as large, on a narrow page, and dark. The
/// dark colours change nothing but colours.
fn look(window: &Window) -> Vec<String> {
    let named = |what: &'static str, found: Vec<String>| found.into_iter().map(move |line| format!("{what}: {line}"));
    let mut found = window.inaccessible();
    window.enlarge_text(true);
    found.extend(named("text twice as large", window.misfits()));
    window.enlarge_text(false);
    window.resize(320, 640);
    found.extend(named("narrow", window.misfits()));
    window.resize(PHONE.0, PHONE.1);
    window.darken(true);
    found.extend(named("dark", window.unreadable()));
    window.darken(false);
    found
}

#[track_caller]
fn none(found: Vec<String>) {
    assert!(found.is_empty(), "{} findings:\n{}", found.len(), found.join("\n"));
}

#[test]
fn every_screen_of_the_patients_side_is_accessible_and_nothing_is_cut_off_or_too_small() {
    none(findings("patients", |tour| tour.patients_side()));
}

#[test]
fn every_screen_of_the_clinics_side_is_accessible_and_nothing_is_cut_off_or_too_small() {
    none(findings("clinics", |tour| tour.clinics_side()));
}

/// The colours in which screens are looked at above are those of a dark desktop.
#[test]
fn a_page_that_is_darkened_has_the_colours_of_a_dark_desktop() {
    const COLOURS: &str = "return [...document.querySelectorAll('*')].map((element) => {
        const style = getComputedStyle(element);
        return [element.localName, style.color, style.backgroundColor, style.borderColor, style.fill, style.stroke].join(' ');
    })";
    let desktop = Desktop::new();
    let dark = desktop.open("dark").at(AT).dark().start();
    dark.see("What Carryover is for");
    let colours = dark.ask(COLOURS, &[]);
    assert_eq!(dark.unreadable(), Vec::<String>::new());
    dark.close();
    let light = desktop.open("light").at(AT).start();
    light.see("What Carryover is for");
    let before = light.ask(COLOURS, &[]);
    light.darken(true);
    assert_eq!(light.ask(COLOURS, &[]), colours);
    light.darken(false);
    assert_eq!(light.ask(COLOURS, &[]), before);
    assert_ne!(before, colours);
    light.close();
}
