//! Writes the Fluent files below `locales` as Rust. What a language lacks, or has too much of, ends the build.

use std::path::Path;
use std::process::ExitCode;

/// The language whose files say which texts there are, and of what type their values are.
const FIRST: &str = "en";

fn main() -> ExitCode {
    println!("cargo::rerun-if-changed=locales");
    let Some(out) = std::env::var_os("OUT_DIR") else {
        println!("cargo::error=cargo sets no OUT_DIR");
        return ExitCode::FAILURE;
    };
    let written = text_generator::generate(Path::new("locales"), FIRST)
        .and_then(|rust| std::fs::write(Path::new(&out).join("texts.rs"), rust).map_err(|error| vec![error.to_string()]));
    match written {
        Ok(()) => ExitCode::SUCCESS,
        Err(faults) => {
            faults.iter().for_each(|fault| println!("cargo::error={fault}"));
            ExitCode::FAILURE
        }
    }
}
