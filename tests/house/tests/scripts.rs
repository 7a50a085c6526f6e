//! Rules for the scripts of the repository, so that the same commit builds the same program everywhere.

use std::fs;

use house_rules::root;

/// The shell scripts, with their text.
fn scripts() -> Vec<(&'static str, String)> {
    let names = [
        ".ci/run",
        "demo/run",
        "tests/bench",
        "tests/fuzz/run",
        "tests/hardened",
        "tests/install",
        "tests/long",
        "tests/mutants",
        "tests/run",
        "tests/sbom",
        "tests/selection",
        "tests/supply-chain",
        "tests/unseen",
        "tests/window",
        "tests/wrong-clocks",
    ];
    names.map(|name| (name, fs::read_to_string(root().join(name)).expect(name))).into()
}

/// The lines that the shell executes, with continued lines joined.
fn commands(script: &str) -> Vec<String> {
    let joined = script.replace("\\\n", " ");
    joined.lines().map(str::trim).filter(|line| !line.starts_with('#')).map(str::to_owned).collect()
}

#[test]
fn cargo_never_changes_a_lock_file() {
    let verbs = ["build", "run", "test", "clippy", "check", "doc", "bench"];
    for (name, script) in scripts() {
        for line in commands(&script) {
            let builds = verbs.iter().any(|verb| line.contains(&format!("cargo {verb}")));
            let locked = line.contains("--locked") || line.contains("\"${native[@]}\"");
            assert!(!builds || locked, "{name}: without --locked: {line}");
        }
    }
}

#[test]
fn tools_are_installed_in_one_version() {
    for (name, script) in scripts() {
        for line in commands(&script).iter().filter(|line| line.contains("cargo install")) {
            assert!(line.contains("--version ") && line.contains("--locked"), "{name}: any version: {line}");
        }
    }
}

#[test]
fn packages_come_through_their_clients_alone() {
    for (name, script) in scripts() {
        for line in commands(&script) {
            let by_hand = ["curl ", "wget "].iter().any(|client| line.contains(client));
            let address = line.replace("https://rustup.rs", "").contains("://");
            assert!(!by_hand && !address, "{name}: downloads by hand: {line}");
        }
    }
}
