//! Builds the window's front end into `ui/dist`, which the shell embeds:
//! `cargo run -p bundler [-- --profile web]`.
//!
//! wasm-bindgen runs as a library of the same lock file as the front end, so their versions agree
//! and nothing needs to be installed or downloaded.

mod crash_page;
mod dist;
mod licences;
mod wasm;

use std::error::Error;
use std::path::Path;
use std::process::ExitCode;

fn main() -> ExitCode {
    let arguments: Vec<String> = std::env::args().skip(1).collect();
    let profile = match arguments.as_slice() {
        [] => "dev",
        [flag, profile] if flag == "--profile" => profile,
        _ => {
            eprintln!("usage: bundler [--profile dev|web]");
            return ExitCode::from(2);
        }
    };
    match bundle(profile) {
        Ok(size) => {
            println!("ui/dist: {} kB of program, profile {profile}", size / 1000);
            ExitCode::SUCCESS
        }
        Err(error) => {
            eprintln!("bundler: {error}");
            ExitCode::FAILURE
        }
    }
}

/// Builds and writes everything; returns the program's size in bytes.
fn bundle(profile: &str) -> Result<usize, Box<dyn Error>> {
    let ui = Path::new(env!("CARGO_MANIFEST_DIR")).parent().expect("the bundler is in ui/bundler");
    let mut files = wasm::bind(&wasm::build(ui, profile)?)?;
    let size = files.get(Path::new("ui_bg.wasm")).map_or(0, Vec::len);
    files.append(&mut dist::still_files(ui)?);
    crash_page::fill_in(&mut files, ui)?;
    files.append(&mut licences::files(ui)?);
    dist::put(&ui.join("dist"), &files)?;
    Ok(size)
}
