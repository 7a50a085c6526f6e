//! Every screen, light and dark, is accessible as far as a machine can tell, and nothing on it is cut off or too small to be
//! pressed: on a phone, on a page 320 pixels wide (WCAG 2.2, 1.4.10), and with text twice as large (1.4.4).

use end_to_end::{Tour, Window};
use std::cell::RefCell;
use std::path::PathBuf;
use std::process::Command;
use std::sync::LazyLock;

const UNTIL: &str = "2027-03-01";
const AT: &str = "2027-03-01T14:02:00+01:00";

/// The demo's data folders, made once.
static HOMES: LazyLock<PathBuf> = LazyLock::new(|| {
    let homes = PathBuf::from(env!("CARGO_TARGET_TMPDIR")).join("tour");
    let _ = std::fs::remove_dir_all(&homes);
    let simulator = end_to_end::beside("simulator");
    let made = Command::new(&simulator).arg(&homes).args(["--until", UNTIL]).status().expect("the simulator is built");
    assert!(made.success(), "the demo's scenario is made");
    homes
});

/// Goes on a copy of the homes of its own, since two windows cannot share one; gives every finding with its screen.
fn findings(name: &str, size: (u32, u32), dark: bool, look: &dyn Fn(&Window) -> Vec<String>) -> Vec<String> {
    let homes = HOMES.with_file_name(name);
    let _ = std::fs::remove_dir_all(&homes);
    let copied = Command::new("cp").arg("-r").arg(&*HOMES).arg(&homes).status().expect("cp");
    assert!(copied.success());
    let found = RefCell::new(Vec::new());
    let at_screen = |window: &Window, screen: &str| {
        found.borrow_mut().extend(look(window).into_iter().map(|line| format!("{screen}: {line}")));
    };
    let tour = Tour { homes, at: AT.into(), size, dark, pseudo: false, at_screen: &at_screen };
    tour.patients_side();
    tour.clinics_side();
    found.into_inner()
}

#[track_caller]
fn none(found: Vec<String>) {
    assert!(found.is_empty(), "{} findings:\n{}", found.len(), found.join("\n"));
}

#[test]
fn every_screen_in_light_is_accessible() {
    none(findings("light", (390, 844), false, &Window::inaccessible));
}

#[test]
fn every_screen_in_dark_is_accessible() {
    none(findings("dark", (390, 844), true, &Window::inaccessible));
}

#[test]
fn nothing_is_cut_off_or_too_small_on_a_narrow_page() {
    none(findings("narrow", (320, 640), false, &Window::misfits));
}

#[test]
fn nothing_is_cut_off_with_text_twice_as_large() {
    let larger = |window: &Window| {
        window.ask("document.documentElement.style.fontSize = '200%'; return true", &[]);
        let found = window.misfits();
        window.ask("document.documentElement.style.fontSize = ''; return true", &[]);
        found
    };
    none(findings("large", (390, 844), false, &larger));
}
