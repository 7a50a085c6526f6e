//! The scenario with its clinic unlocked, at the moment of the visit.

use actions::clinic::lock;
use actions::{DataFolder, Moment, clock};
use std::path::{Path, PathBuf};
use std::process::Command;

const DAY: &str = "2026-11-25";
pub const CODES: [&str; 7] = ["A11", "B24", "C37", "D42", "E58", "F63", "G71"];

/// Makes the scenario in a folder of this name.
pub fn opened(name: &str) -> (PathBuf, DataFolder, Moment) {
    let out = Path::new(env!("CARGO_TARGET_TMPDIR")).join(name);
    let _ = std::fs::remove_dir_all(&out);
    let mut simulator = Command::new(env!("CARGO_BIN_EXE_simulator"));
    let made = simulator.arg(&out).args(["--until", DAY, "--zone", "Europe/Vienna"]).output().expect("it starts");
    assert!(made.status.success(), "{}", String::from_utf8_lossy(&made.stderr));
    let printed = String::from_utf8(made.stdout).expect("text");
    let at = printed.trim_end().split_once(' ').expect("two moments").1;
    let at = chrono::DateTime::parse_from_rfc3339(at).expect("RFC 3339").timestamp_millis();
    let moment = clock::at(at, chrono_tz::Europe::Vienna);
    let mut folder = DataFolder::open(&out.join("clinic"), false).expect("the clinic's folder");
    let passphrase = std::fs::read_to_string(out.join("passphrase.txt")).expect("text");
    lock::unlock(&mut folder, passphrase.trim_end().into()).expect("its passphrase");
    (out, folder, moment)
}
