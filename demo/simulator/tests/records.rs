//! The reviews of the demo's patients as they are written for medical records, through validators of others (`tests/records`).

mod scenario;

use actions::clinic::records::{Asked, RecordForm, make};
use scenario::{CODES, opened};
use std::path::Path;
use std::process::Command;
use words::{Locale, Words};

#[test]
fn validators_of_others_find_nothing_wrong_with_any_patient_or_with_all_of_them() {
    let (out, folder, moment) = opened("records");
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
