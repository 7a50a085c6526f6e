//! Licences: the program's own, the notices of medical codes, and a list of all libraries in it, as files that the window shows on request.

use std::collections::{BTreeMap, BTreeSet};
use std::error::Error;
use std::fs;
use std::path::Path;
use std::process::Command;

use serde_json::Value;

use crate::dist::Files;

/// The program's own licences, at the top of the repository.
const OWN: [&str; 2] = ["LICENSE-MIT", "LICENSE-APACHE"];

/// What their owners want said of the medical codes that the program writes; what writes them has the same file.
const CODES: &str = "src-tauri/crates/format/src/fhir/notices.txt";

/// The two root packages of the program.
const ROOTS: [&str; 2] = ["carryover-shell", "carryover-ui"];
/// The target of the front end.
const WEB: &str = "wasm32-unknown-unknown";

/// All licence files, in the folder `licences`.
pub fn files(ui: &Path) -> Result<Files, Box<dyn Error>> {
    let top = ui.join("..");
    let mut files = Files::new();
    for name in OWN {
        files.insert(format!("licences/{name}.txt").into(), fs::read(top.join(name))?);
    }
    files.insert("licences/codes.txt".into(), fs::read(top.join(CODES))?);
    files.insert("licences/libraries.txt".into(), libraries(&metadata(&top)?)?.into_bytes());
    Ok(files)
}

/// Cargo's metadata of the packages that are built for this machine or the web view.
fn metadata(top: &Path) -> Result<Value, Box<dyn Error>> {
    let cargo = std::env::var_os("CARGO").unwrap_or_else(|| "cargo".into());
    let output = Command::new(cargo)
        .current_dir(top)
        .args([
            "metadata",
            "--format-version",
            "1",
            "--locked",
            "--filter-platform",
            &this_machine()?,
            "--filter-platform",
            WEB,
        ])
        .output()?;
    if !output.status.success() {
        return Err(String::from_utf8_lossy(&output.stderr).into_owned().into());
    }
    Ok(serde_json::from_slice(&output.stdout)?)
}

fn this_machine() -> Result<String, Box<dyn Error>> {
    let rustc = std::env::var_os("RUSTC").unwrap_or_else(|| "rustc".into());
    let said = String::from_utf8(Command::new(rustc).arg("-vV").output()?.stdout)?;
    let host = said.lines().find_map(|line| line.strip_prefix("host: "));
    Ok(host.ok_or("rustc does not say for which machine it builds")?.to_owned())
}

/// One line "name version licence" for every third-party package that the program needs when it runs, or that generated a part of
/// it.
fn libraries(metadata: &Value) -> Result<String, Box<dyn Error>> {
    let all = |value: &Value| value.as_array().cloned().unwrap_or_default();
    let packages: BTreeMap<String, Value> =
        all(&metadata["packages"]).into_iter().map(|package| (text(&package["id"]), package)).collect();
    let nodes: BTreeMap<String, Value> =
        all(&metadata["resolve"]["nodes"]).into_iter().map(|node| (text(&node["id"]), node)).collect();
    let is_root = |package: &Value| ROOTS.contains(&text(&package["name"]).as_str()) && package["source"].is_null();
    let mut open: Vec<String> = packages.iter().filter(|(_, package)| is_root(package)).map(|(id, _)| id.clone()).collect();
    let mut seen = BTreeSet::new();
    while let Some(id) = open.pop() {
        let needs = nodes.get(&id).map(|node| all(&node["deps"])).unwrap_or_default();
        if seen.insert(id) {
            // Leaves out what only tests or builds need.
            let runs = |needed: &Value| all(&needed["dep_kinds"]).iter().any(|kind| kind["kind"].is_null());
            open.extend(needs.iter().filter(|needed| runs(needed)).map(|needed| text(&needed["pkg"])));
        }
    }
    let others = seen.iter().filter_map(|id| packages.get(id)).filter(|package| !package["source"].is_null());
    let lines: BTreeSet<String> = others.map(line).collect();
    if lines.is_empty() {
        return Err("cargo names no library".into());
    }
    Ok(lines.into_iter().collect())
}

fn line(package: &Value) -> String {
    let licence = match package["license"].as_str() {
        Some(licence) => licence.to_owned(),
        None => text(&package["license_file"]),
    };
    format!("{} {} {licence}\n", text(&package["name"]), text(&package["version"]))
}

fn text(value: &Value) -> String {
    value.as_str().unwrap_or_default().to_owned()
}

#[cfg(test)]
mod tests {
    use super::*;
    use serde_json::json;

    fn package(name: &str, is_own: bool) -> Value {
        let source = if is_own { Value::Null } else { json!("registry") };
        json!({ "id": name, "name": name, "version": "1.2.0", "license": "MIT", "source": source })
    }

    fn needs(name: &str, kind: Value) -> Value {
        json!({ "pkg": name, "dep_kinds": [{ "kind": kind }] })
    }

    #[test]
    fn runtime_libraries_are_listed_without_our_own_test_and_build_packages() {
        let names = [
            ("carryover-shell", true),
            ("ours", true),
            ("far", false),
            ("tested", false),
            ("built", false),
            ("alone", false),
        ];
        let shell = [needs("ours", Value::Null), needs("tested", json!("dev")), needs("built", json!("build"))];
        let metadata = json!({
            "packages": names.map(|(name, is_own)| package(name, is_own)),
            "resolve": { "nodes": [
                { "id": "carryover-shell", "deps": shell },
                { "id": "ours", "deps": [needs("far", Value::Null)] },
            ] },
        });
        assert_eq!(libraries(&metadata).unwrap(), "far 1.2.0 MIT\n");
    }

    #[test]
    fn every_library_of_the_program_is_listed_with_a_licence() {
        let ui = Path::new(env!("CARGO_MANIFEST_DIR")).parent().unwrap();
        let files = files(ui).unwrap();
        let list = String::from_utf8(files[Path::new("licences/libraries.txt")].clone()).unwrap();
        for name in ["tauri ", "leptos ", "rusqlite ", "age "] {
            assert!(list.lines().any(|line| line.starts_with(name)), "{name}in {list}");
        }
        assert!(!list.lines().any(|line| line.starts_with("proptest ") || line.starts_with("exercises ")), "{list}");
        assert!(list.lines().all(|line| line.split(' ').nth(2).is_some_and(|licence| !licence.is_empty())), "{list}");
        assert!(files.contains_key(Path::new("licences/LICENSE-MIT.txt")));
        let codes = String::from_utf8(files[Path::new("licences/codes.txt")].clone()).unwrap();
        assert!(["LOINC", "SNOMED CT"].iter().all(|owner| codes.contains(owner)), "{codes}");
    }
}
