//! Rules for the source code.

use house_rules::{Source, packages, root, sources};

/// Native code that people run, without tests, examples and build scripts.
fn native() -> Vec<Source> {
    let mut all = sources("exercises/src", &[".rs"]);
    all.extend(sources("src-tauri", &[".rs"]));
    all.retain(|source| !source.is_test() && source.path != "src-tauri/build.rs");
    all
}

/// Fails for every line of code in `sources` that contains one of `words`, unless its file is one of `except`. Each of those files
/// must contain at least one, so that the list stays short.
#[track_caller]
fn nowhere(sources: &[Source], words: &[&str], except: &[&str]) {
    let found = |source: &&Source| source.code().any(|(_, line)| words.iter().any(|word| line.contains(word)));
    let named: Vec<&str> = sources.iter().filter(found).map(|source| source.path.as_str()).collect();
    for file in except {
        assert!(named.contains(file), "{file} contains none of {words:?} any more: remove it from this list");
    }
    let mut wrong = Vec::new();
    for source in sources.iter().filter(|source| !except.contains(&source.path.as_str())) {
        let lines = source.code().filter(|(_, line)| words.iter().any(|word| line.contains(word)));
        wrong.extend(lines.map(|(at, line)| format!("{}:{at}: {}", source.path, line.trim())));
    }
    assert!(wrong.is_empty(), "not here:\n{}", wrong.join("\n"));
}

#[test]
fn only_one_file_reads_the_clock() {
    let reads = ["SystemTime", "Instant::now", "Utc::now", "Local::now", "std::time::Instant"];
    nowhere(&native(), &reads, &["src-tauri/crates/actions/src/clock.rs"]);
}

#[test]
fn only_one_folder_touches_files() {
    let touches = ["std::fs", "fs::", "File::open", "File::create", "OpenOptions", "tempfile", "NamedTempFile"];
    // The shell creates the folder that it is started with, to identify the running program by the folder's canonical path.
    // The build of `words` reads the texts and writes the code that is compiled.
    let at_build = ["src-tauri/crates/words/build.rs", "src-tauri/crates/words/generator/src/read.rs"];
    let files = ["mod", "lock", "identity", "inside"].map(|name| format!("src-tauri/crates/store/src/files/{name}.rs"));
    let at_run = [files[0].as_str(), &files[1], &files[2], &files[3], "src-tauri/src/home.rs"];
    nowhere(&native(), &touches, &[&at_run[..], &at_build].concat());
}

#[test]
fn the_domain_is_pure() {
    let world = [
        "std::fs",
        "std::io",
        "std::net",
        "std::env",
        "std::process",
        "std::thread",
        // From `std::sync` only `Arc` is allowed, which shares immutable data.
        "Mutex",
        "RwLock",
        "OnceLock",
        "OnceCell",
        "LazyLock",
        "LazyCell",
        "Condvar",
        "Atomic",
        "sync::atomic",
        "mpsc",
        "std::time",
        "Instant",
        "SystemTime",
        "static mut",
        "thread_local",
        "println!",
        "eprintln!",
    ];
    let domain: Vec<Source> = sources("exercises/src", &[".rs"]).into_iter().filter(|source| !source.is_test()).collect();
    nowhere(&domain, &world, &[]);
}

#[test]
fn format_and_words_are_pure_too() {
    for folder in ["format", "vault", "words", "wire", "pictures"] {
        let code = sources(&format!("src-tauri/crates/{folder}/src"), &[".rs"]);
        let code: Vec<Source> = code.into_iter().filter(|source| !source.is_test()).collect();
        nowhere(&code, &["std::fs", "std::net", "std::env", "std::process", "std::thread", "std::time"], &[]);
    }
}

#[test]
fn no_todo_markers_are_left() {
    // Composed here, so that this file does not contain them itself.
    let later = ["todo", "unimplemented", "dbg"].map(|name| format!("{name}!("));
    let ignored = ["#[", "ignore"].concat();
    let notes = ["TO", "DO"].concat();
    let notes = [format!("// {notes}"), format!("//{notes}"), ["FIX", "ME"].concat(), ["XX", "X"].concat()];
    let mut wrong = Vec::new();
    for source in sources("", &[".rs", ".js", ".css", ".toml", ".html"]) {
        for (at, line) in source.text.lines().enumerate() {
            let held = later.iter().chain(&notes).chain([&ignored]).any(|word| line.contains(word.as_str()));
            // The manifest names the lints that forbid two of them.
            if held {
                wrong.push(format!("{}:{}: {}", source.path, at + 1, line.trim()));
            }
        }
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}

#[test]
fn no_file_contains_a_path_of_one_machine() {
    let machines = ["work/main", "work/shared", "work/t/", "root/", "Users/", "home/user"].map(|path| format!("/{path}"));
    let shared = [["design", ".md"].concat(), ["clinical", ".md"].concat(), ["../", "shared/"].concat()];
    let mut wrong = Vec::new();
    for source in
        sources("", &[".rs", ".js", ".css", ".toml", ".html", ".md", ".json", ".py", ".sql", ".jsonl", ".csv", ".txt"])
    {
        for (at, line) in source.text.lines().enumerate() {
            if source.path != "tests/house/tests/code.rs" && machines.iter().chain(&shared).any(|path| line.contains(path)) {
                wrong.push(format!("{}:{}: {}", source.path, at + 1, line.trim()));
            }
        }
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}

#[test]
fn every_package_takes_the_workspace_lints_and_none_allows_unsafe_code() {
    let mut manifests = sources("", &["Cargo.toml"]);
    // Workspaces of their own, since they need code that the workspace forbids: the macro that makes a fuzz target from a function, and
    // the library that stands between a program under test and its files.
    manifests.retain(|manifest| !["tests/disk/Cargo.toml", "tests/fuzz/Cargo.toml"].contains(&manifest.path.as_str()));
    assert_eq!(manifests.len(), packages().len() + 1, "each package's and the workspace's");
    for manifest in manifests {
        let table: toml::Table = manifest.text.parse().expect("TOML");
        let lints =
            |value: &toml::Table| value.get("lints").and_then(|lints| lints.get("workspace")).and_then(toml::Value::as_bool);
        if manifest.path == "Cargo.toml" {
            assert_eq!(table["workspace"]["lints"]["rust"]["unsafe_code"].as_str(), Some("forbid"));
        } else {
            assert_eq!(lints(&table), Some(true), "{}", manifest.path);
        }
    }
    let relaxed = ["allow(unsafe", "allow(clippy::unwrap_used", "allow(dead_code)"];
    nowhere(&native(), &relaxed, &[]);
}

/// The length of a file's code above its tests: from 300 lines on it should be reviewed, 500 are too many.
#[test]
fn no_file_is_longer_than_the_limit() {
    let long: Vec<String> = sources("", &[".rs"])
        .iter()
        .filter(|source| !source.is_test())
        .map(|source| (source.without_tests().count(), &source.path))
        .filter(|(lines, _)| *lines > 500)
        .map(|(lines, path)| format!("{path}: {lines} lines"))
        .collect();
    assert!(long.is_empty(), "{}", long.join("\n"));
}

/// A component that other files use must be alone; the pieces that only it uses may be in the same file.
#[test]
fn one_component_per_file() {
    let mut all = 0;
    for source in sources("ui/src", &[".rs"]) {
        let lines: Vec<&str> = source.code().map(|(_, line)| line.trim()).collect();
        let shown = lines.windows(2).filter(|pair| pair[0] == "#[component]" && pair[1].starts_with("pub")).count();
        assert!(shown <= 1, "{} shows {shown} components", source.path);
        all += shown;
    }
    assert!(all > 0, "no component was found: this rule would look at nothing");
}

/// A command is one call into `actions`: at most ten lines between its braces.
#[test]
fn commands_are_short() {
    let mut commands = 0;
    for source in sources("src-tauri/src", &[".rs"]) {
        let lines: Vec<&str> = source.text.lines().collect();
        for at in (0..lines.len()).filter(|at| lines[*at].trim_start().starts_with("#[tauri::command")) {
            let body = lines[at..].iter().skip_while(|line| !line.trim_end().ends_with('{')).skip(1);
            let length = body.take_while(|line| line.trim_end() != "}").count();
            assert!(length <= 10, "{}:{}: {length} lines", source.path, at + 1);
            commands += 1;
        }
    }
    assert!(commands > 0, "no command was found: this rule would look at nothing");
}

#[test]
fn the_top_level_holds_only_what_was_agreed() {
    let agreed = [
        "Cargo.lock",
        "Cargo.toml",
        "DEVELOPERS.md",
        "LICENSE-APACHE",
        "LICENSE-MIT",
        "README.md",
        "clippy.toml",
        "deny.toml",
        "demo",
        "exercises",
        "rust-toolchain.toml",
        "rustfmt.toml",
        "src-tauri",
        "target",
        "tests",
        "ui",
    ];
    let there = std::fs::read_dir(root()).expect("the root").flatten();
    let names = there.map(|entry| entry.file_name().to_string_lossy().into_owned()).filter(|name| !name.starts_with('.'));
    let other: Vec<String> = names.filter(|name| !agreed.contains(&name.as_str())).collect();
    assert!(other.is_empty(), "{other:?} has no place at the top");
    for name in ["Cargo.lock", "Cargo.toml", "DEVELOPERS.md", "LICENSE-APACHE", "LICENSE-MIT"] {
        assert!(root().join(name).is_file(), "{name} belongs there");
    }
}
