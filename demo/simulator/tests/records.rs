//! The reviews of the demo's patients as they are written for medical records, through validators of others (`tests/records`).

use actions::clinic::lock;
use actions::clinic::records::{Asked, RecordForm, make};
use actions::{DataFolder, clock};
use std::path::{Path, PathBuf};
use std::process::Command;
use words::{Locale, Words};

const DAY: &str = "2026-11-25";
const CODES: [&str; 7] = ["A11", "B24", "C37", "D42", "E58", "F63", "G71"];

/// Makes the scenario; returns its folder and the moment of the visit, in milliseconds since 1970.
fn scenario() -> (PathBuf, i64) {
    let out = Path::new(env!("CARGO_TARGET_TMPDIR")).join("records");
    let _ = std::fs::remove_dir_all(&out);
    let mut simulator = Command::new(env!("CARGO_BIN_EXE_simulator"));
    let made = simulator.arg(&out).args(["--until", DAY, "--zone", "Europe/Vienna"]).output().expect("it starts");
    assert!(made.status.success(), "{}", String::from_utf8_lossy(&made.stderr));
    let printed = String::from_utf8(made.stdout).expect("text");
    let at = printed.trim_end().split_once(' ').expect("two moments").1;
    (out, chrono::DateTime::parse_from_rfc3339(at).expect("RFC 3339").timestamp_millis())
}

#[test]
fn validators_of_others_find_nothing_wrong_with_any_patient_or_with_all_of_them() {
    let (out, at) = scenario();
    let moment = clock::at(at, chrono_tz::Europe::Vienna);
    let mut folder = DataFolder::open(&out.join("clinic"), false).expect("the clinic's folder");
    let passphrase = std::fs::read_to_string(out.join("passphrase.txt")).expect("text");
    lock::unlock(&mut folder, passphrase.trim_end().into()).expect("its passphrase");
    let mut check = Command::new(Path::new(env!("CARGO_MANIFEST_DIR")).join("../../tests/records/check"));
    for (form, name) in [(RecordForm::Collection, "file"), (RecordForm::Transaction, "server")] {
        for code in CODES.map(Some).into_iter().chain([None]) {
            let asked = Asked { code, form, with_names: true };
            let words = Words::new(if code.is_some() { Locale::En } else { Locale::Es });
            let written = make(&folder, &moment, words, asked).expect("a plan and summaries");
            let path = out.join(format!("{}-{name}.json", code.unwrap_or("all")));
            std::fs::write(&path, written).expect("written");
            check.arg(path);
        }
    }
    let said = check.output().expect("bash is there");
    let found = String::from_utf8_lossy(&said.stdout).into_owned() + &String::from_utf8_lossy(&said.stderr);
    assert!(said.status.success(), "{found}");
}
