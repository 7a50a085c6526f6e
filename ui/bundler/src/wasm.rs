//! The program: from Rust to wasm, and from there to what a web view loads.

use std::error::Error;
use std::fs;
use std::path::{Path, PathBuf};
use std::process::{Command, Stdio};

use serde_json::Value;
use wasm_bindgen_cli_support::Bindgen;

use crate::dist::{self, Files};

/// For development builds: each component's view has the same type, so the types of views do not nest, and a change of one screen
/// is built in a fraction of the time. It is part of the configuration's list of flags, which cargo joins with those of its other
/// sources; flags in `RUSTFLAGS` stand for all of them.
const ERASED_VIEWS: &str = r#"target.wasm32-unknown-unknown.rustflags=["--cfg","erase_components"]"#;

/// Has cargo build the front end and returns the wasm file that it names.
pub fn build(ui: &Path, profile: &str) -> Result<PathBuf, Box<dyn Error>> {
    let cargo = std::env::var_os("CARGO").unwrap_or_else(|| "cargo".into());
    let erased: &[&str] = if profile == "dev" { &["--config", ERASED_VIEWS] } else { &[] };
    let output = Command::new(cargo)
        .current_dir(ui)
        .args(["build", "-p", "carryover-ui", "--bin", "carryover-ui", "--target", "wasm32-unknown-unknown"])
        .args(["--profile", profile, "--message-format", "json-render-diagnostics"])
        .args(erased)
        .stderr(Stdio::inherit())
        .output()?;
    if !output.status.success() {
        return Err("the front end does not build".into());
    }
    let messages = String::from_utf8(output.stdout)?;
    messages.lines().filter_map(wasm_file).next_back().ok_or_else(|| "cargo named no wasm file".into())
}

/// The wasm file in one of cargo's messages, where it announces one.
fn wasm_file(message: &str) -> Option<PathBuf> {
    let message: Value = serde_json::from_str(message).ok()?;
    if message["target"]["name"] != "carryover-ui" {
        return None;
    }
    let names = message["filenames"].as_array()?;
    names.iter().filter_map(Value::as_str).find(|name| name.ends_with(".wasm")).map(PathBuf::from)
}

/// Runs wasm-bindgen: the script that the page imports, the program that the script loads, and the
/// snippets of script that libraries bring along.
pub fn bind(built: &Path) -> Result<Files, Box<dyn Error>> {
    let folder = built.with_file_name("bound");
    if folder.exists() {
        fs::remove_dir_all(&folder)?;
    }
    Bindgen::new()
        .input_path(built)
        .out_name("ui")
        .web(true)?
        .typescript(false)
        // start.js gives the path; a guess from the script's own address would be one more thing to hold.
        .omit_default_module_path(true)
        .generate(&folder)?;
    Ok(dist::read_below(&folder, &folder)?)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_wasm_file_is_found_in_cargos_message() {
        let message =
            r#"{"reason":"compiler-artifact","target":{"name":"carryover-ui"},"filenames":["/t/a.d","/t/a.wasm"]}"#;
        assert_eq!(wasm_file(message), Some(PathBuf::from("/t/a.wasm")));
    }

    #[test]
    fn other_messages_and_packages_name_none() {
        assert_eq!(wasm_file(r#"{"reason":"build-finished","success":true}"#), None);
        assert_eq!(wasm_file(r#"{"target":{"name":"words"},"filenames":["/t/a.wasm"]}"#), None);
    }
}
