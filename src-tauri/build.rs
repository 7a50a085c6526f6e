//! Declares the program's own commands to Tauri, so that each needs a permission and nothing is allowed by default.

use std::path::Path;

/// Where `cargo run -p bundler` puts the front end.
const FRONT_END: &str = "../ui/dist";

fn main() {
    watch_front_end();
    let manifest = tauri_build::AppManifest::new().commands(wire::COMMANDS);
    tauri_build::try_build(tauri_build::Attributes::new().app_manifest(manifest))
        .expect("tauri.conf.json, capabilities and icons beside this file are well formed");
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
