//! Declares the program's own commands to Tauri, so that each needs a permission and nothing is allowed by default, and gives the
//! only window the permission for each of them.

use serde_json::json;
use std::path::{Path, PathBuf};

/// Where `cargo run -p bundler` puts the front end.
const FRONT_END: &str = "../ui/dist";
/// What the window may do besides the program's own commands: listen to the shell's events, and nothing of the system.
const OTHER_PERMISSIONS: [&str; 2] = ["core:event:allow-listen", "core:event:allow-unlisten"];

fn main() {
    watch_front_end();
    let manifest = tauri_build::AppManifest::new().commands(wire::COMMANDS);
    let attributes = tauri_build::Attributes::new().app_manifest(manifest).capabilities_path_pattern(write_capability());
    tauri_build::try_build(attributes).expect("tauri.conf.json and icons beside this file are well formed");
}

/// Writes the list of commands that the window may call, and returns the file pattern under which Tauri finds it.
fn write_capability() -> &'static str {
    let own = wire::COMMANDS.iter().map(|command| format!("allow-{}", command.replace('_', "-")));
    let permissions: Vec<String> = OTHER_PERMISSIONS.map(str::to_owned).into_iter().chain(own).collect();
    let capability = json!({ "identifier": "window", "local": true, "windows": ["main"], "permissions": permissions });
    let folder = PathBuf::from(std::env::var_os("OUT_DIR").expect("cargo sets the build folder"));
    // In a folder of its own, because Tauri writes other files next to it that are not capabilities.
    let folder = folder.join("allowed");
    std::fs::create_dir_all(&folder).expect("the build folder is writable");
    std::fs::write(folder.join("window.json"), capability.to_string()).expect("the build folder is writable");
    // In a file pattern a bracket has a special meaning.
    let folder = folder.display().to_string().replace('[', "[[]");
    Box::leak(format!("{folder}/*.json").into_boxed_str())
}

/// The front end is embedded at compile time. Watching the folder makes cargo embed it again when a file is added or removed, which
/// tracking of the known files alone would miss.
fn watch_front_end() {
    println!("cargo:rerun-if-changed={FRONT_END}");
    let page = Path::new(FRONT_END).join("index.html");
    if !page.exists() {
        std::fs::create_dir_all(FRONT_END).expect("the checkout is writable");
        println!("cargo:warning=ui/dist is empty, so the window will be blank: run `cargo run -p bundler` first");
    }
}
