//! DEVELOPERS.md only mentions things that exist.

use house_rules::{packages, root, sources};
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
