//! Generates Rust code from the Fluent files in `locales`. A text that a language lacks or has in excess ends the build.

use std::path::Path;
use std::process::ExitCode;

/// The language whose files define which texts exist, and the types of their values.
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
