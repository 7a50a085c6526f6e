//! What is written for medical records: validated by programs of others (`tests/records`), and compared with what happened.

mod faults;
mod hand_over;
mod people;
mod visits;
mod written;

use crate::vignettes::person::Records;
use serde_json::Value;
use std::path::Path;
use std::process::Command;

/// What the validators find wrong in these files: a line of validator, file and fault for each.
fn faults(files: &[(String, &str)]) -> Vec<String> {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let check = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../../tests/records/check");
    let mut command = Command::new(check);
    for (name, text) in files {
        let path = dir.path().join(name);
        std::fs::write(&path, text).expect("written");
        command.arg(path);
    }
    let said = command.output().expect("bash is there");
    let told = String::from_utf8(said.stdout).expect("text");
    let fault = String::from_utf8_lossy(&said.stderr).into_owned();
    assert!(matches!(said.status.code(), Some(0 | 1)), "the validators ran: {fault}");
    assert_eq!(said.status.success(), told.is_empty(), "{told}{fault}");
    let folder = format!("{}/", dir.path().display());
    told.lines().map(|line| line.replace(&folder, "")).collect()
}

fn json(text: &str) -> Value {
    serde_json::from_str(text).unwrap_or_else(|fault| panic!("JSON: {fault} in {text}"))
}

/// The resources of one type.
fn of<'a>(bundle: &'a Value, kind: &str) -> Vec<&'a Value> {
    let entries = bundle["entry"].as_array().expect("a list").iter();
    entries.map(|entry| &entry["resource"]).filter(|resource| resource["resourceType"] == kind).collect()
}

/// The observations whose last code, which is our own, is this.
fn measured<'a>(bundle: &'a Value, code: &str) -> Vec<&'a Value> {
    let own = |resource: &&Value| {
        let codes = resource["code"]["coding"].as_array().expect("a list");
        codes.last().is_some_and(|last| last["code"] == code)
    };
    of(bundle, "Observation").into_iter().filter(own).collect()
}

/// The value of a component.
fn part<'a>(observation: &'a Value, code: &str) -> &'a Value {
    let parts = observation["component"].as_array().into_iter().flatten();
    let mut found = parts.filter(|part| part["code"]["coding"][0]["code"] == code);
    found.next().map_or(&Value::Null, |part| &part["valueQuantity"]["value"])
}

/// The lines of a table as lists of cells, without the header. No cell of these tables has a comma in it.
fn lines(records: &Records) -> Vec<Vec<String>> {
    let lines = records.table.split_terminator("\r\n").skip(1);
    lines.map(|line| line.split(',').map(str::to_owned).collect()).collect()
}
