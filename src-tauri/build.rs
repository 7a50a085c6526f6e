//! Declares the program's own commands to Tauri, so that each needs a permission and nothing is allowed by default, and gives
//! the one window the permission for each.

use serde_json::json;
use std::path::{Path, PathBuf};

/// Where `cargo run -p bundler` puts the front end.
const FRONT_END: &str = "../ui/dist";
/// What the window may do besides the program's own commands: listen to the shell's events; nothing of the system.
const OTHER_PERMISSIONS: [&str; 2] = ["core:event:allow-listen", "core:event:allow-unlisten"];

fn main() {
    watch_front_end();
    let manifest = tauri_build::AppManifest::new().commands(wire::COMMANDS);
    let attributes = tauri_build::Attributes::new().app_manifest(manifest).capabilities_path_pattern(write_capability());
    tauri_build::try_build(attributes).expect("tauri.conf.json and icons beside this file are well formed");
}

/// Writes what the window may ask of the shell, and gives the pattern under which Tauri finds it.
fn write_capability() -> &'static str {
    let own = wire::COMMANDS.iter().map(|command| format!("allow-{}", command.replace('_', "-")));
    let permissions: Vec<String> = OTHER_PERMISSIONS.map(str::to_owned).into_iter().chain(own).collect();
    let capability = json!({ "identifier": "window", "local": true, "windows": ["main"], "permissions": permissions });
    let folder = PathBuf::from(std::env::var_os("OUT_DIR").expect("cargo says where to build"));
    // Beside it Tauri writes files of its own, which are no capabilities.
    let folder = folder.join("allowed");
    std::fs::create_dir_all(&folder).expect("the build folder is writable");
    std::fs::write(folder.join("window.json"), capability.to_string()).expect("the build folder is writable");
    // In a pattern a bracket stands for something else.
    let folder = folder.display().to_string().replace('[', "[[]");
    Box::leak(format!("{folder}/*.json").into_boxed_str())
}

/// The front end is embedded at compile time. Watching the folder makes cargo embed again when a
/// file is added or goes, which tracking of the known files alone would not notice.
fn watch_front_end() {
    println!("cargo:rerun-if-changed={FRONT_END}");
    let page = Path::new(FRONT_END).join("index.html");
    if !page.exists() {
        std::fs::create_dir_all(FRONT_END).expect("the checkout is writable");
        println!("cargo:warning=ui/dist is empty, so the window will be blank: run `cargo run -p bundler` first");
    }
}
