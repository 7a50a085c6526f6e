//! The repository as data for the structural tests: manifests as cargo reads them, and the sources as text.
#![forbid(unsafe_code)]

pub mod modules;

use std::collections::BTreeMap;
use std::fs;
use std::path::{Path, PathBuf};
use std::process::Command;

/// The folder of the workspace.
pub fn root() -> PathBuf {
    let here = Path::new(env!("CARGO_MANIFEST_DIR"));
    here.ancestors().nth(2).expect("tests/house is two folders below the top").to_path_buf()
}

/// Runs cargo in the workspace, without network access and without changing the lock file; returns its output.
pub fn cargo(arguments: &[&str]) -> String {
    cargo_online(&[arguments, &["--frozen"]].concat())
}

/// Runs cargo in the workspace; returns its output.
pub fn cargo_online(arguments: &[&str]) -> String {
    let cargo = std::env::var("CARGO").unwrap_or_else(|_| "cargo".into());
    let output = Command::new(cargo).args(arguments).current_dir(root()).output().expect("cargo starts");
    assert!(output.status.success(), "cargo {arguments:?}: {}", String::from_utf8_lossy(&output.stderr));
    String::from_utf8(output.stdout).expect("text")
}

/// A library that a package depends on.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Dependency {
    /// Its name.
    pub name: String,
    /// Whether only tests, examples and benches use it.
    pub for_tests: bool,
    /// Whether it is only used if a feature is enabled.
    pub optional: bool,
}

/// Every package of the workspace with its dependencies.
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
    /// Its path relative to the workspace's folder, with slashes.
    pub path: String,
    /// Its contents.
    pub text: String,
}

impl Source {
    /// Whether the whole file is a test or an example.
    pub fn is_test(&self) -> bool {
        let folders = ["tests/", "/tests/", "/examples/", "/benches/"];
        folders.iter().any(|folder| self.path.starts_with(folder) || self.path.contains(folder))
            || self.path.ends_with("/tests.rs")
    }

    /// The numbered lines of code, without comments and without code that only tests compile.
    pub fn code(&self) -> impl Iterator<Item = (usize, &str)> {
        self.without_tests().filter(|(_, line)| !line.trim_start().starts_with("//"))
    }

    /// The numbered lines without the items under `#[cfg(test)]`; lines after such an item are included.
    pub fn without_tests(&self) -> impl Iterator<Item = (usize, &str)> {
        let mut item: Option<TestItem> = None;
        let lines = self.text.lines().enumerate().map(|(at, line)| (at + 1, line));
        lines.filter(move |(_, line)| {
            let (test, next) = match (item.take(), line.trim().strip_prefix(TEST_ONLY)) {
                (None, None) => (false, None),
                (None, Some(rest)) => (true, TestItem::begun(indent(line), rest)),
                (Some(within), _) => (true, within.after(line)),
            };
            item = next;
            !test
        })
    }
}

const TEST_ONLY: &str = "#[cfg(test)]";

/// The position within an item under `#[cfg(test)]`. The item's end is found by rustfmt's indentation.
struct TestItem {
    /// The indent of its first line.
    indent: usize,
    /// Whether a bracket opened in its first lines is still open.
    open: bool,
}

impl TestItem {
    /// The state after the attribute, where `rest` is the remainder of its line.
    fn begun(indent: usize, rest: &str) -> Option<TestItem> {
        TestItem { indent, open: false }.after_text(indent, rest.trim())
    }

    /// The state after a line; `None` if it was the item's last line.
    fn after(self, line: &str) -> Option<TestItem> {
        let text = line.trim();
        if self.open && (indent(line) > self.indent || !text.starts_with(['}', ')', ']'])) {
            return Some(self);
        }
        let indent = indent(line);
        self.after_text(indent, text)
    }

    fn after_text(self, indent: usize, text: &str) -> Option<TestItem> {
        if text.is_empty() || text.starts_with("//") || text.starts_with("#[") {
            return Some(self);
        }
        let ends = text.ends_with([';', '}']) || indent == self.indent && text.ends_with(',');
        let open = text.ends_with(['{', '(', '[']);
        (!ends).then_some(TestItem { open, ..self })
    }
}

fn indent(line: &str) -> usize {
    line.len() - line.trim_start().len()
}

/// All text files in `folder` (empty for all) whose names end in one of `endings`, sorted by path. Built, downloaded and hidden
/// files are left out.
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

#[cfg(test)]
mod tests {
    use super::*;

    /// The code lines of a text.
    #[track_caller]
    fn check(text: &str, code: &[&str]) {
        let source = Source { path: "src/x.rs".into(), text: text.into() };
        assert_eq!(source.code().map(|(_, line)| line).collect::<Vec<_>>(), code, "{text}");
    }

    #[test]
    fn lines_after_a_test_line_are_code() {
        check("#[cfg(test)]\nmod tests;\nuse a;", &["use a;"]);
        check("#[cfg(test)] mod tests;\nuse a;", &["use a;"]);
        check("#[cfg(test)]\npub(crate) use a::b;\n\nfn c() {}", &["", "fn c() {}"]);
        check("#[cfg(test)]\nuse a::{\n    b,\n};\nuse c;", &["use c;"]);
        check("struct A {\n    #[cfg(test)]\n    b: u8,\n    c: u8,\n}", &["struct A {", "    c: u8,", "}"]);
    }

    #[test]
    fn an_item_for_tests_ends_where_its_brackets_do() {
        check("#[cfg(test)]\nmod tests {\n    fn a() {\n    }\n\n    fn b() {}\n}\nfn c() {}", &["fn c() {}"]);
        check(
            "#[cfg(test)]\n#[allow(x)]\n// why\nfn a(\n    b: u8,\n) -> u8\nwhere\n    u8: C,\n{\n    b\n}\nfn d() {}",
            &["fn d() {}"],
        );
        check("#[cfg(test)]\nconst A: &str =\n    \"a\";\nfn b() {}", &["fn b() {}"]);
        check("    #[cfg(test)]\n    fn a() {\n        b();\n    }\n\n    fn c() {}", &["", "    fn c() {}"]);
    }

    #[test]
    fn comments_are_not_code_and_lines_keep_their_numbers() {
        let source = Source { path: "src/x.rs".into(), text: "// a\n#[cfg(test)]\nmod tests;\nfn b() {}".into() };
        assert_eq!(source.code().collect::<Vec<_>>(), [(4, "fn b() {}")]);
    }
}
