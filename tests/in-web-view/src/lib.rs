//! Runs the crate `workloads` in the web view of the program's own window: with the engine and the content policy of the front end.
//!
//! It is built for wasm by cargo and bound by wasm-bindgen as a library, like the front end; WebDriver passes it to the page.

use base64::prelude::{BASE64_STANDARD, Engine};
use end_to_end::{Desktop, Window};
use serde_json::{Value, json};
use std::fs;
use std::path::PathBuf;
use std::process::{Command, Stdio};
use wasm_bindgen_cli_support::Bindgen;

/// Runs as part of a WebDriver script that contains the binding's text, because the page's policy runs no text as code.
const LOAD: &str = r"
    const program = Uint8Array.from(atob(arguments[0]), (letter) => letter.charCodeAt(0));
    wasm_bindgen.initSync({ module: program });
    window.workloads = wasm_bindgen;
    return true;
";

/// Milliseconds of one computation: the median and the best of some rounds. Each round is long enough for a clock with a resolution
/// of milliseconds, and a warm-up before lets the engine compile hot code.
const TIME: &str = r"
    const prepared = window.prepared ??= new workloads.Prepared();
    const spent = (times) => {
        const begin = performance.now();
        prepared[arguments[0]](times);
        return performance.now() - begin;
    };
    const until = performance.now() + 2000;
    let times = 1;
    while (performance.now() < until) {
        if (spent(times) < 300) times *= 2;
    }
    const rounds = Array.from({ length: 9 }, () => spent(times) / times).sort((one, other) => one - other);
    return [rounds[4], rounds[0]];
";

/// A window with the workloads loaded in its page.
pub struct Page {
    window: Window,
    // Declared after the window, so that its folders exist longer than the window.
    _desktop: Desktop,
}

impl Page {
    /// Builds the workloads with one of cargo's profiles, opens a window and loads them.
    pub fn open(profile: &str) -> Page {
        let (binding, program) = bound(profile);
        let desktop = Desktop::new();
        let window = desktop.open("anna").start();
        window.see("Carryover");
        let loaded = window.ask(&format!("{binding}{LOAD}"), &[json!(BASE64_STANDARD.encode(program))]);
        assert_eq!(loaded, json!(true), "the page loads the program");
        Page { window, _desktop: desktop }
    }

    /// The result of [`workloads::texts`] there.
    pub fn texts(&self) -> String {
        match self.window.ask("return workloads.texts()", &[]) {
            Value::String(text) => text,
            other => panic!("texts are text, not {other}"),
        }
    }

    /// Milliseconds that one of the methods of [`workloads::Prepared`] takes there: the median of some rounds, and the best.
    pub fn milliseconds(&self, sum: &str) -> [f64; 2] {
        let took = self.window.ask(TIME, &[json!(sum)]);
        [0, 1].map(|place| took[place].as_f64().expect("a number of milliseconds"))
    }
}

/// The script of the binding, and the program.
fn bound(profile: &str) -> (String, Vec<u8>) {
    let folder = tempfile::tempdir().expect("there is room for temporary files");
    let mut bindgen = Bindgen::new();
    bindgen.input_path(built(profile)).out_name("workloads").typescript(false);
    bindgen
        .no_modules(true)
        .expect("one kind of output is chosen")
        .generate(folder.path())
        .expect("the program can be bound");
    let binding = fs::read_to_string(folder.path().join("workloads.js")).expect("the binding was written");
    (binding, fs::read(folder.path().join("workloads_bg.wasm")).expect("the program was written"))
}

/// Builds the workloads with cargo and returns the path of the wasm file.
fn built(profile: &str) -> PathBuf {
    let output = Command::new(std::env::var_os("CARGO").unwrap_or_else(|| "cargo".into()))
        .current_dir(env!("CARGO_MANIFEST_DIR"))
        .args(["build", "-p", "workloads", "--lib", "--target", "wasm32-unknown-unknown"])
        .args(["--profile", profile, "--message-format", "json-render-diagnostics"])
        .stderr(Stdio::inherit())
        .output()
        .expect("cargo can be run");
    assert!(output.status.success(), "the sums do not build for the web");
    let messages = String::from_utf8(output.stdout).expect("cargo's messages are text");
    messages.lines().filter_map(wasm_file).next_back().expect("cargo names the wasm file")
}

fn wasm_file(message: &str) -> Option<PathBuf> {
    let message: Value = serde_json::from_str(message).ok()?;
    let names = message["filenames"].as_array().filter(|_| message["target"]["name"] == "workloads")?;
    names.iter().filter_map(Value::as_str).find(|name| name.ends_with(".wasm")).map(PathBuf::from)
}
