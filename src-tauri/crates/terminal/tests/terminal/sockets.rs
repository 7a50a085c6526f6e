//! No command opens a socket of any kind: the system call is watched, whatever library might do it.

use crate::place::{BINARY, DONE, Place, VISIT, clinic, copy, patient, surroundings};
use std::ffi::OsStr;
use std::process::Command;

/// Runs a command under strace, which must succeed; returns the calls that concern sockets, a line each.
#[track_caller]
fn watched(place: &Place, arguments: &[&str]) -> String {
    let log = place.path("calls");
    let mut strace = Command::new("strace");
    strace.args(["--follow-forks", "--seccomp-bpf", "-qq", "--signal=none", "--trace=%network", "--output"]).arg(&log);
    strace.arg(BINARY).args(arguments).current_dir(place.path(""));
    surroundings(&mut strace, &place.path(""));
    let output = strace.output().expect("strace is installed (tests/packages.txt)");
    assert!(output.status.success(), "{arguments:?}: {}", String::from_utf8_lossy(&output.stderr));
    place.text("calls")
}

/// Everything that reads, writes, seals, opens, analyses or erases, on both sides.
#[test]
fn no_command_opens_a_socket() {
    let place = Place::prepared();
    place.write("fall.jsonl", r#"{"do":"trouble","at":"2026-11-26T19:50:00+01:00","what":"fell"}"#);
    copy(&place.path("patient"), &place.path("other"));
    let done = |arguments: &[&'static str]| [&["--home", "done", "--at", DONE][..], arguments].concat();
    let commands = [
        vec!["example", "plan"],
        vec!["catalogue", "check", concat!(env!("CARGO_MANIFEST_DIR"), "/../../../exercises/catalogue")],
        vec!["--home", "new", "--at", VISIT, "clinic", "--passphrase-file", "pw", "start", "--name", "Ropewalk Practice"],
        clinic(&["add", "K18"]),
        clinic(&["issue", "K18", "plan.toml", "--out", "second"]),
        clinic(&["receive", "summary.age"]),
        clinic(&["review", "K17"]),
        clinic(&["identity"]),
        vec!["--home", "third", "--at", DONE, "patient", "accept", "card/card.png"],
        patient(&["now"]),
        done(&["patient", "record", "fall.jsonl"]),
        done(&["patient", "summary", "--until", "2026-11-26", "--out", "second.age"]),
        done(&["patient", "summary", "--until", "2026-11-26", "--frames", "frames"]),
        patient(&["calendar", "--out", "times.ics"]),
        done(&["patient", "export", "--out", "own"]),
        vec!["--home", "other", "patient", "erase", "--yes"],
    ];
    for arguments in commands {
        assert_eq!(watched(&place, &arguments), "", "{arguments:?}");
    }
}

/// What is watched would be seen: a program that asks for a socket, in a process that it starts.
#[test]
fn a_socket_would_be_seen() {
    let log = tempfile::NamedTempFile::new().expect("a temporary file");
    let asks = ["-c", "python3 -c 'import socket; socket.socket().close()'"];
    let arguments = ["--follow-forks", "--seccomp-bpf", "-qq", "--trace=%network", "--output"].map(OsStr::new);
    let output = Command::new("strace").args(arguments).arg(log.path()).arg("sh").args(asks).output();
    assert!(output.expect("strace is installed (tests/packages.txt)").status.success());
    let seen = std::fs::read_to_string(log.path()).expect("readable");
    assert!(seen.contains("socket(AF_INET"), "{seen}");
}
