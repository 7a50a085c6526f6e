//! Every screen, light and dark, is accessible as far as a machine can check, and nothing on it is cut off or too small to be
//! pressed: on a phone, on a page 320 pixels wide (WCAG 2.2, 1.4.10), and with text twice as large (1.4.4).

use end_to_end::{Tour, Window};
use std::cell::RefCell;
use std::path::PathBuf;
use std::process::Command;
use std::sync::LazyLock;

const UNTIL: &str = "2027-03-01";
const AT: &str = "2027-03-01T14:02:00+01:00";
const PHONE: (u32, u32) = (390, 844);

/// The demo's data folders, created once.
static HOMES: LazyLock<PathBuf> = LazyLock::new(|| {
    let homes = PathBuf::from(env!("CARGO_TARGET_TMPDIR")).join("tour");
    let _ = std::fs::remove_dir_all(&homes);
    let simulator = end_to_end::beside("simulator");
    let made = Command::new(&simulator).arg(&homes).args(["--until", UNTIL]).status().expect("the simulator is built");
    assert!(made.success(), "the demo's scenario is made");
    homes
});

/// Makes the tour on its own copy of the homes, because two windows cannot share one; returns every finding with its screen.
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

/// Each screen is checked in two ways during one tour, because getting there takes longer than the check.
#[test]
fn in_light_every_screen_is_accessible_and_nothing_is_cut_off_with_text_twice_as_large() {
    let look = |window: &Window| {
        let mut found = window.inaccessible();
        window.enlarge_text(true);
        found.extend(window.misfits().into_iter().map(|line| format!("text twice as large: {line}")));
        window.enlarge_text(false);
        found
    };
    none(findings("light", PHONE, false, &look));
}

#[test]
fn in_dark_every_screen_is_accessible_and_nothing_is_cut_off_or_too_small_on_a_narrow_page() {
    let look = |window: &Window| {
        let mut found = window.inaccessible();
        window.resize(320, 640);
        found.extend(window.misfits().into_iter().map(|line| format!("narrow: {line}")));
        window.resize(PHONE.0, PHONE.1);
        found
    };
    none(findings("dark", PHONE, true, &look));
}
