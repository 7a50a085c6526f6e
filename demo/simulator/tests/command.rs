//! How `demo/run` refuses invalid arguments: with one sentence, before anything is installed, built or removed.

use std::path::Path;
use std::process::{Command, Output};

fn run(arguments: &[&str]) -> Output {
    let script = Path::new(env!("CARGO_MANIFEST_DIR")).join("../run");
    Command::new(script).args(arguments).env("LC_ALL", "C.UTF-8").output().expect("bash is there")
}

#[track_caller]
fn refused(arguments: &[&str], says: &str) {
    let done = run(arguments);
    let said = String::from_utf8_lossy(&done.stderr).into_owned();
    assert_eq!(done.status.code(), Some(2), "{arguments:?}: {said}");
    assert!(said.contains(says), "{arguments:?}: {said:?}");
    assert_eq!((said.lines().count(), said.ends_with(".\n")), (1, true), "{arguments:?}: one sentence, not {said:?}");
    assert!(done.stdout.is_empty(), "{arguments:?}: {}", String::from_utf8_lossy(&done.stdout));
}

#[test]
fn an_invalid_day_is_refused() {
    let says = "--day takes a date from 2021-01-01 to 2198-12-31, such as 2027-03-01";
    for day in [
        "2027-02-29",
        "2027-13-01",
        "2027-1-5",
        "20270301",
        "01.03.2027",
        "tomorrow",
        "",
        "2020-12-31",
        "2199-01-01",
        "2027-03-01 ",
    ] {
        refused(&["--day", day], says);
    }
    refused(&["--day"], says);
    refused(&["--day", "--all"], says);
}

#[test]
fn an_unknown_argument_is_named() {
    refused(&["doctor"], "\"doctor\" is not understood");
    refused(&["--everything"], "\"--everything\" is not understood");
    refused(&["patient", "clinic"], "\"clinic\" is one side too many");
    refused(&["--picture", "--all"], "--picture goes alone");
    refused(&["--picture", "patient"], "--picture goes alone");
}

#[test]
fn it_says_how_it_is_used() {
    let done = run(&["--help"]);
    let said = String::from_utf8_lossy(&done.stdout).into_owned();
    assert!(done.status.success(), "{said}");
    for part in ["demo/run [patient|clinic] [--day YYYY-MM-DD] [--all]", "demo/run --picture"] {
        assert!(said.contains(part), "{said}");
    }
}
