//! What the web view of the window may do, as its settings say; what of them the build makes is checked beside the commands.

use house_rules::{root, sources};
use serde_json::Value;
use std::collections::BTreeMap;
use std::fs;

fn settings() -> Value {
    let text = fs::read_to_string(root().join("src-tauri/tauri.conf.json")).expect("tauri.conf.json");
    serde_json::from_str(&text).expect("JSON")
}

/// Nothing is loaded but the program's own files, pictures within a style sheet, and the answers of its commands. Compiling wasm is the
/// only way to run what is not a file: neither text as code nor scripts within a page.
#[test]
fn the_pages_policy_allows_the_programs_own_files_alone() {
    let settings = settings();
    let policy = settings["app"]["security"]["csp"].as_object().expect("a policy");
    let policy: BTreeMap<&str, &str> = policy.iter().map(|(of, may)| (of.as_str(), may.as_str().expect("a text"))).collect();
    let expected = [
        ("base-uri", "'none'"),
        ("connect-src", "'self' ipc: http://ipc.localhost"),
        ("default-src", "'none'"),
        ("font-src", "'self'"),
        ("form-action", "'none'"),
        ("frame-ancestors", "'none'"),
        ("img-src", "'self' data:"),
        ("media-src", "'self'"),
        ("script-src", "'self' 'wasm-unsafe-eval'"),
        ("style-src", "'self'"),
    ];
    assert_eq!(policy, BTreeMap::from(expected));
}

/// Whatever would widen it: files of the disk by address, the program's interface for any script, other pages' commands, a server.
#[test]
fn nothing_else_is_opened_for_the_page() {
    let settings = settings();
    let (app, build) = (&settings["app"], &settings["build"]);
    let security = app["security"].as_object().expect("settings");
    let named: Vec<&str> = security.keys().map(String::as_str).collect();
    assert_eq!(named, ["capabilities", "csp", "freezePrototype"]);
    assert_eq!(security["freezePrototype"], true);
    assert_eq!(security["capabilities"], serde_json::json!(["window"]));
    assert!(app.get("withGlobalTauri").is_none() && app["windows"] == serde_json::json!([]), "{app}");
    assert!(build.get("devUrl").is_none(), "{build}");
}

/// A release has no inspector: tauri compiles it into one only with this feature.
#[test]
fn no_package_asks_for_the_inspector() {
    let manifests = sources("", &["Cargo.toml"]);
    assert!(manifests.len() > 10);
    for manifest in manifests {
        let asks = manifest.text.lines().any(|line| !line.trim_start().starts_with('#') && line.contains("devtools"));
        assert!(!asks, "{}", manifest.path);
    }
}
