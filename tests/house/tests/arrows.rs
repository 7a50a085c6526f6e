//! Which package may depend on which.

use house_rules::modules::circles;
use house_rules::{cargo, packages};
use std::collections::BTreeSet;

/// Each package and the packages of the workspace that it may depend on. A new package has to be added here.
const ARROWS: [(&str, &[&str]); 19] = [
    ("exercises", &[]),
    ("wire", &["exercises"]),
    ("words", &["exercises", "wire", "text-generator"]),
    ("text-generator", &[]),
    ("format", &["exercises"]),
    ("vault", &["exercises", "format"]),
    ("store", &[]),
    ("pictures", &[]),
    ("paper", &["exercises", "wire", "words", "pictures"]),
    ("actions", &["exercises", "wire", "words", "format", "vault", "store", "pictures", "paper"]),
    ("terminal", &["actions", "exercises", "wire", "words", "format"]),
    ("carryover-shell", &["actions", "exercises", "wire", "words"]),
    ("carryover-ui", &["exercises", "wire", "words"]),
    ("bundler", &["text-generator"]),
    ("simulator", &["actions", "exercises", "wire", "words", "format"]),
    ("end-to-end", &["exercises", "wire", "words"]),
    ("house-rules", &[]),
    ("workloads", &["exercises", "format", "wire"]),
    ("in-web-view", &["end-to-end", "workloads"]),
];

/// Libraries that only these packages use outside their tests.
const KEPT_TO: [(&str, &[&str]); 30] = [
    ("ed25519-dalek", &["vault"]),
    ("x25519-dalek", &["vault"]),
    ("chacha20poly1305", &["vault"]),
    ("hkdf", &["vault"]),
    ("hmac", &["vault"]),
    ("bech32", &["vault"]),
    ("rusqlite", &["store"]),
    ("tempfile", &["store", "end-to-end", "in-web-view"]),
    ("image", &["pictures", "end-to-end"]),
    ("qrcode", &["pictures"]),
    ("rxing", &["pictures"]),
    ("krilla", &["paper"]),
    ("skrifa", &["paper"]),
    ("minicbor", &["format"]),
    ("base45", &["format"]),
    ("csv", &["format"]),
    ("chrono-tz", &["actions", "simulator"]),
    ("iana-time-zone", &["actions"]),
    ("dirs", &["actions"]),
    ("sys-locale", &["actions"]),
    ("ureq", &["actions"]),
    ("rand", &["vault", "simulator"]),
    ("tauri", &["carryover-shell"]),
    ("notify-rust", &["carryover-shell"]),
    ("leptos", &["carryover-ui"]),
    ("web-sys", &["carryover-ui"]),
    ("wasm-bindgen", &["carryover-ui", "workloads"]),
    ("rpassword", &["terminal"]),
    ("tokio", &["end-to-end"]),
    ("fluent-syntax", &["text-generator", "format"]),
];

#[test]
fn arrows_run_one_way() {
    let packages = packages();
    let known: BTreeSet<&str> = ARROWS.iter().map(|(name, _)| *name).collect();
    let there: BTreeSet<&str> = packages.keys().map(String::as_str).collect();
    assert_eq!(there, known, "every package is in the list of arrows");
    for (name, allowed) in ARROWS {
        let named =
            packages[name].iter().filter(|dependency| !dependency.for_tests && known.contains(dependency.name.as_str()));
        let wrong: Vec<&str> =
            named.map(|dependency| dependency.name.as_str()).filter(|other| !allowed.contains(other)).collect();
        assert!(wrong.is_empty(), "{name} must not know {wrong:?}");
    }
}

/// What tests use may be any package below, never one above.
#[test]
fn tests_of_a_package_use_nothing_above_it() {
    let packages = packages();
    let above = ["actions", "terminal", "carryover-shell", "carryover-ui", "simulator", "end-to-end"];
    for low in ["exercises", "wire", "words", "format", "vault", "store", "pictures", "paper"] {
        let wrong: Vec<_> = packages[low].iter().filter(|dependency| above.contains(&dependency.name.as_str())).collect();
        assert!(wrong.is_empty(), "{low}: {wrong:?}");
    }
}

#[test]
fn only_the_vault_names_age() {
    let naming: Vec<String> = packages()
        .into_iter()
        .filter(|(_, dependencies)| dependencies.iter().any(|dependency| dependency.name == "age"))
        .map(|(name, _)| name)
        .collect();
    assert_eq!(naming, ["vault", "workloads"], "tests included; the workloads compare receiving with age alone");
}

#[test]
fn each_library_stays_where_it_belongs() {
    let packages = packages();
    for (library, allowed) in KEPT_TO {
        let names = |dependencies: &[house_rules::Dependency]| {
            dependencies.iter().any(|dependency| dependency.name == library && !dependency.for_tests)
        };
        let naming: Vec<&str> = packages.iter().filter(|(_, all)| names(all)).map(|(name, _)| name.as_str()).collect();
        assert!(!naming.is_empty(), "nobody names {library} any more: take it off this list");
        let wrong: Vec<&&str> = naming.iter().filter(|name| !allowed.contains(name)).collect();
        assert!(wrong.is_empty(), "{library} belongs to {allowed:?}, but {wrong:?} names it");
    }
}

#[test]
fn the_domain_names_four_libraries_and_one_of_them_only_if_asked() {
    let packages = packages();
    let named = packages["exercises"].iter().filter(|dependency| !dependency.for_tests);
    let named: Vec<(&str, bool)> = named.map(|dependency| (dependency.name.as_str(), dependency.optional)).collect();
    assert_eq!(named, [("chrono", false), ("libm", false), ("serde", true), ("strum", false)]);
}

/// Rows and bytes have their own types: a domain type that could be serialized directly would sooner or later be.
#[test]
fn built_alone_nobody_but_the_wire_turns_on_the_domains_serde() {
    let features = |package: &str| cargo(&["tree", "-p", package, "-e", "normal,features", "--prefix", "none"]);
    let serde = "exercises feature \"serde\"";
    assert!(features("wire").contains(serde), "this is how it would show");
    for package in ["exercises", "format", "vault", "store", "pictures"] {
        let tree = features(package);
        assert!(tree.contains(&format!("{package} v")), "{package} is shown");
        assert!(!tree.contains(serde), "{package} turns it on:\n{tree}");
    }
}

/// Modules in a cycle can only be understood and changed together.
#[test]
fn no_cycle_among_the_modules_of_the_domain_and_the_window() {
    for folder in ["exercises/src", "ui/src"] {
        let circles = circles(folder);
        assert!(circles.is_empty(), "{folder}:\n{}", circles.join("\n\n"));
    }
}
