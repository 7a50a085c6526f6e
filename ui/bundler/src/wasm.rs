//! The program: compiled from Rust to wasm, and converted to what a web view loads.

use std::error::Error;
use std::fs;
use std::path::{Path, PathBuf};
use std::process::{Command, Stdio};

use serde_json::Value;
use wasm_bindgen_cli_support::Bindgen;

use crate::dist::{self, Files};

/// The flag under which the view of each component has the same type, for development builds: the types of views do not nest then.
/// A change of one screen is built in a fraction of the time, and without optimisation no view overflows the web view's stack.
const ERASED_VIEWS: &str = "--cfg=erase_components";

/// Builds the front end with cargo and returns the path of the wasm file.
pub fn build(ui: &Path, profile: &str) -> Result<PathBuf, Box<dyn Error>> {
    let cargo = std::env::var_os("CARGO").unwrap_or_else(|| "cargo".into());
    let mut command = Command::new(cargo);
    if profile == "dev" {
        erase_views(&mut command, |name| std::env::var(name).ok());
    }
    let output = command
        .current_dir(ui)
        .args(["build", "-p", "carryover-ui", "--bin", "carryover-ui", "--target", "wasm32-unknown-unknown"])
        .args(["--profile", profile, "--message-format", "json-render-diagnostics"])
        .stderr(Stdio::inherit())
        .output()?;
    if !output.status.success() {
        return Err("the front end does not build".into());
    }
    let messages = String::from_utf8(output.stdout)?;
    messages.lines().filter_map(wasm_file).next_back().ok_or_else(|| "cargo named no wasm file".into())
}

/// Adds the flag to those that `variable` says the caller set. Cargo takes the flags of the first of these variables that there is,
/// and only without either those of its configuration, which it joins.
fn erase_views(command: &mut Command, variable: impl Fn(&str) -> Option<String>) {
    for (name, between) in [("CARGO_ENCODED_RUSTFLAGS", '\x1f'), ("RUSTFLAGS", ' ')] {
        if let Some(flags) = variable(name) {
            // Set and empty, it still stands for the configuration.
            let flags = if flags.is_empty() { ERASED_VIEWS.to_owned() } else { format!("{flags}{between}{ERASED_VIEWS}") };
            command.env(name, flags);
            return;
        }
    }
    command.args(["--config", &format!("target.wasm32-unknown-unknown.rustflags=['{ERASED_VIEWS}']")]);
}
/// The wasm file's path, if this message of cargo announces one.
fn wasm_file(message: &str) -> Option<PathBuf> {
    let message: Value = serde_json::from_str(message).ok()?;
    if message["target"]["name"] != "carryover-ui" {
        return None;
    }
    let names = message["filenames"].as_array()?;
    names.iter().filter_map(Value::as_str).find(|name| name.ends_with(".wasm")).map(PathBuf::from)
}

/// Runs wasm-bindgen. The result is the script that the page imports, the program that the script loads, and the script snippets of
/// libraries.
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
        // start.js passes the path, so the script need not guess it from its own address.
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
    fn the_flag_joins_those_that_the_caller_set() {
        let added = |set: &'static str, to: &'static str| {
            let mut command = Command::new("cargo");
            erase_views(&mut command, |name| (name == set).then(|| to.to_owned()));
            let said = |text: &std::ffi::OsStr| text.to_string_lossy().into_owned();
            let variables: Vec<_> = command.get_envs().map(|(name, value)| (said(name), value.map(said))).collect();
            (variables, command.get_args().map(said).collect::<Vec<_>>())
        };
        let variable = |name: &str, value: &str| vec![(name.to_owned(), Some(value.to_owned()))];
        let plain = variable("RUSTFLAGS", "-D warnings --cfg=erase_components");
        assert_eq!(added("RUSTFLAGS", "-D warnings"), (plain, vec![]));
        let encoded = variable("CARGO_ENCODED_RUSTFLAGS", "-D\x1fwarnings\x1f--cfg=erase_components");
        assert_eq!(added("CARGO_ENCODED_RUSTFLAGS", "-D\x1fwarnings"), (encoded, vec![]));
        assert_eq!(added("RUSTFLAGS", ""), (variable("RUSTFLAGS", "--cfg=erase_components"), vec![]));
        let (variables, arguments) = added("", "");
        assert!(variables.is_empty());
        assert_eq!(arguments, ["--config", "target.wasm32-unknown-unknown.rustflags=['--cfg=erase_components']"]);
    }

    #[test]
    fn other_messages_and_packages_give_no_wasm_file() {
        assert_eq!(wasm_file(r#"{"reason":"build-finished","success":true}"#), None);
        assert_eq!(wasm_file(r#"{"target":{"name":"words"},"filenames":["/t/a.wasm"]}"#), None);
    }
}
