//! DEVELOPERS.md only mentions things that exist.

use house_rules::{packages, root, sources};
use std::collections::BTreeSet;
use std::fs;

fn page() -> String {
    fs::read_to_string(root().join("DEVELOPERS.md")).expect("DEVELOPERS.md")
}

/// The rows of the table under a heading, as cells, without the two rows of its head.
fn table(heading: &str) -> Vec<Vec<String>> {
    let page = page();
    let (_, rest) = page.split_once(&format!("## {heading}\n")).unwrap_or_else(|| panic!("a chapter {heading:?}"));
    let chapter = rest.split("\n## ").next().expect("at least the heading");
    let rows = chapter.lines().filter(|line| line.starts_with('|')).skip(2);
    let rows: Vec<Vec<String>> =
        rows.map(|row| row.trim_matches('|').split('|').map(|cell| cell.trim().to_owned()).collect()).collect();
    assert!(rows.len() > 5, "{heading} has a table");
    rows
}

/// The texts between backticks.
fn quoted(text: &str) -> Vec<String> {
    text.split('`').skip(1).step_by(2).map(str::to_owned).collect()
}

#[test]
fn every_folder_and_crate_of_the_map_is_there() {
    let packages = packages();
    for row in table("Map") {
        let folder = quoted(&row[0]).concat();
        assert!(root().join(&folder).is_dir(), "{folder} is on the map only");
        for name in quoted(&row[1]) {
            assert!(packages.contains_key(&name), "the crate {name} is on the map only");
        }
    }
    let map: String = table("Map").concat().concat();
    for name in packages.keys().filter(|name| *name != "house-rules") {
        assert!(map.contains(&format!("`{name}`")), "{name} is missing on the map");
    }
}

/// Each invariant names a file or folder that enforces it, relative to the top of the workspace or to `src-tauri/crates`.
#[test]
fn what_enforces_each_invariant_exists() {
    for row in table("Invariants") {
        let named = quoted(&row[1]);
        assert!(!named.is_empty(), "nothing enforces {:?}", row[0]);
        for path in named {
            let places = ["", "src-tauri/crates"].map(|folder| root().join(folder).join(&path));
            assert!(places.iter().any(|place| place.exists()), "{path} is to hold {:?}, but is not there", row[0]);
        }
    }
}

/// Paths in the text exist, wherever they begin.
#[test]
fn files_named_in_the_text_are_there() {
    let mut looked_at = 0;
    for path in quoted(&page()).iter().filter(|name| name.contains('/') && !name.contains([' ', '*', '<', ':'])) {
        let places = ["", "src-tauri/crates", "src-tauri", "demo"].map(|folder| root().join(folder).join(path));
        assert!(places.iter().any(|place| place.exists()), "{path} is not there");
        looked_at += 1;
    }
    assert!(looked_at > 10, "{looked_at}");
}

fn libraries() -> Vec<String> {
    let manifest = fs::read_to_string(root().join("Cargo.toml")).expect("the manifest");
    let manifest: toml::Table = manifest.parse().expect("TOML");
    let all = manifest["workspace"]["dependencies"].as_table().expect("a table");
    let ours = packages();
    all.keys().filter(|name| !ours.contains_key(*name)).cloned().collect()
}

#[test]
fn every_library_is_used_and_explained() {
    let manifests = sources("", &["Cargo.toml"]);
    let explained: Vec<String> = table("Libraries, and why")
        .iter()
        .flat_map(|row| row[0].replace([',', '(', ')'], " ").split_whitespace().map(str::to_owned).collect::<Vec<_>>())
        .collect();
    let reasons = table("Libraries, and why").concat().concat();
    let (mut unused, mut unexplained) = (Vec::new(), Vec::new());
    for library in libraries() {
        let starts = [format!("{library}."), format!("{library} ="), format!("[dependencies.{library}]")];
        let named = |text: &str| text.lines().any(|line| starts.iter().any(|start| line.starts_with(start)));
        if !manifests.iter().any(|manifest| manifest.path != "Cargo.toml" && named(&manifest.text)) {
            unused.push(library);
        } else if !explained.contains(&library) && !reasons.contains(&library) {
            unexplained.push(library);
        }
    }
    assert!(unused.is_empty(), "in the workspace's list but unused: {unused:?}");
    assert!(unexplained.is_empty(), "without a reason in DEVELOPERS.md: {unexplained:?}");
}

/// Also those that one package alone names, for one platform, for tests or for its build. The first column says them by their exact names.
#[test]
fn every_direct_dependency_has_a_line_with_its_reason() {
    let rows = table("Libraries, and why");
    let explained: Vec<&str> = rows
        .iter()
        .filter(|row| row[1].len() > 10)
        .flat_map(|row| row[0].split(|sign: char| !(sign.is_alphanumeric() || sign == '-' || sign == '_')))
        .collect();
    let packages = packages();
    let named: BTreeSet<&str> = packages.values().flatten().map(|dependency| dependency.name.as_str()).collect();
    let others: Vec<&&str> = named.iter().filter(|name| !packages.contains_key(**name)).collect();
    assert!(others.len() > 50, "{}", others.len());
    let without: Vec<_> = others.into_iter().filter(|name| !explained.contains(*name)).collect();
    assert!(without.is_empty(), "no reason in DEVELOPERS.md: {without:?}");
}

/// Exceptions from what is checked of the libraries are few, and each says why.
#[test]
fn every_exception_of_the_supply_chain_has_a_reason() {
    let text = fs::read_to_string(root().join("deny.toml")).expect("deny.toml");
    let settings: toml::Table = text.parse().expect("TOML");
    let ignored = settings["advisories"]["ignore"].as_array().expect("a list");
    for one in ignored.iter().chain(settings["bans"]["deny"].as_array().expect("a list")) {
        let reason = one.get("reason").and_then(toml::Value::as_str).unwrap_or_default();
        assert!(reason.len() > 10, "without a reason: {one}");
    }
    for line in text.lines().filter(|line| line.contains("{ crate") && line.contains("allow =")) {
        assert!(line.split_once("# ").is_some_and(|(_, reason)| reason.len() > 10), "without a reason: {line}");
    }
}

/// A limit's number as its constant has it: a product of whole numbers.
fn value_of(source: &str, name: &str) -> Option<u64> {
    let declared = source.lines().find_map(|line| line.split_once(&format!("const {name}: ")))?.1;
    let (_, value) = declared.split_once("= ")?;
    value.trim_end_matches(';').split(" * ").map(|factor| factor.replace('_', "").parse::<u64>().ok()).product()
}

/// The table of limits says what the code does, and who holds it.
#[test]
fn every_limit_is_that_of_the_code_and_has_a_test() {
    let mut compared = 0;
    for row in table("Limits") {
        let [reader, place, limits, _, tests] = &row[..] else { panic!("five cells: {row:?}") };
        let find = |path: &String| {
            ["", "src-tauri/crates"].map(|folder| root().join(folder).join(path)).into_iter().find(|path| path.exists())
        };
        let source = quoted(place).first().and_then(find).unwrap_or_else(|| panic!("{place} is not there"));
        let source = fs::read_to_string(source).expect("readable");
        for name in quoted(limits) {
            let value = value_of(&source, &name).unwrap_or_else(|| panic!("{reader}: no number {name} in {place}"));
            assert!(limits.contains(&format!("`{name}` {value}")), "{reader}: {name} is {value}, not what the table says");
            compared += 1;
        }
        let tests = quoted(tests);
        assert!(!tests.is_empty() && tests.iter().all(|path| find(path).is_some()), "{reader}: {tests:?} are not all there");
    }
    assert!(compared > 25, "{compared}");
}
