//! The house as its files show it: manifests as cargo reads them, sources as they stand.
#![forbid(unsafe_code)]

use std::collections::BTreeMap;
use std::fs;
use std::path::{Path, PathBuf};
use std::process::Command;

/// The folder of the workspace.
pub fn root() -> PathBuf {
    let here = Path::new(env!("CARGO_MANIFEST_DIR"));
    here.ancestors().nth(2).expect("tests/house lies two folders down").to_path_buf()
}

/// Runs cargo in the workspace, without the network and without a change to the lock file; what it prints.
pub fn cargo(arguments: &[&str]) -> String {
    let cargo = std::env::var("CARGO").unwrap_or_else(|_| "cargo".into());
    let output = Command::new(cargo).args(arguments).arg("--frozen").current_dir(root()).output().expect("cargo starts");
    assert!(output.status.success(), "cargo {arguments:?}: {}", String::from_utf8_lossy(&output.stderr));
    String::from_utf8(output.stdout).expect("text")
}

/// A library that a package names.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Dependency {
    /// Its name.
    pub name: String,
    /// Whether only tests, examples and benches see it.
    pub for_tests: bool,
    /// Whether a feature has to switch it on.
    pub optional: bool,
}

/// Every package of the workspace with what it names.
pub fn packages() -> BTreeMap<String, Vec<Dependency>> {
    let metadata = cargo(&["metadata", "--no-deps", "--format-version", "1"]);
    let metadata: serde_json::Value = serde_json::from_str(&metadata).expect("cargo prints JSON");
    let text = |value: &serde_json::Value| value.as_str().map(str::to_owned);
    let list = |value: &serde_json::Value| value.as_array().cloned().expect("a list");
    let dependency = |value: &serde_json::Value| Dependency {
        name: text(&value["name"]).expect("a name"),
        for_tests: value["kind"] == "dev",
        optional: value["optional"] == true,
    };
    let package = |value: &serde_json::Value| {
        (text(&value["name"]).expect("a name"), list(&value["dependencies"]).iter().map(dependency).collect())
    };
    list(&metadata["packages"]).iter().map(package).collect()
}

/// A text file of the workspace.
#[derive(Debug, Clone)]
pub struct Source {
    /// Its path from the workspace's folder, with slashes.
    pub path: String,
    /// What stands in it.
    pub text: String,
}

impl Source {
    /// Whether the whole file is for tests, or shows how to use a crate.
    pub fn is_test(&self) -> bool {
        let folders = ["tests/", "/tests/", "/examples/", "/benches/"];
        folders.iter().any(|folder| self.path.starts_with(folder) || self.path.contains(folder))
            || self.path.ends_with("/tests.rs")
    }

    /// Numbered lines of code: no comments, and not what follows `#[cfg(test)]`.
    pub fn code(&self) -> impl Iterator<Item = (usize, &str)> {
        let lines = self.text.lines().enumerate().map(|(at, line)| (at + 1, line));
        lines.take_while(|(_, line)| line.trim() != "#[cfg(test)]").filter(|(_, line)| !line.trim_start().starts_with("//"))
    }
}

/// All text files below `folder` (empty for all) whose names end in one of `endings`, sorted by path. What is built, fetched or
/// hidden is left out.
pub fn sources(folder: &str, endings: &[&str]) -> Vec<Source> {
    let mut found = Vec::new();
    gather(&root().join(folder), endings, &mut found);
    found.sort_by(|one, other| one.path.cmp(&other.path));
    assert!(!found.is_empty(), "nothing ends in {endings:?} below {folder:?}: this rule would look at nothing");
    found
}

const NOT_OURS: [&str; 5] = ["target", "dist", "out", "gen", "node_modules"];

fn gather(folder: &Path, endings: &[&str], found: &mut Vec<Source>) {
    for entry in fs::read_dir(folder).expect("a folder").flatten() {
        let (path, name) = (entry.path(), entry.file_name().to_string_lossy().into_owned());
        if name.starts_with('.') || NOT_OURS.contains(&name.as_str()) {
            continue;
        }
        if path.is_dir() {
            gather(&path, endings, found);
        } else if endings.iter().any(|ending| name.ends_with(ending)) {
            let short = path.strip_prefix(root()).expect("below the root").to_string_lossy().replace('\\', "/");
            let text = fs::read_to_string(&path).unwrap_or_else(|fault| panic!("{short}: {fault}"));
            found.push(Source { path: short, text });
        }
    }
}
