//! Runs the program with the library of `tests/disk` between it and its files.

use crate::place::{Place, ProgramOutput};
use std::path::{Path, PathBuf};
use std::process::Command;
use std::sync::LazyLock;

/// How the library ends a process.
pub const ENDED: i32 = 86;

/// What happens at one call.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum How {
    /// It fails with an error of the disk.
    Eio,
    /// It fails because there is no room.
    Enospc,
    /// The process ends before it.
    Before,
    /// The process ends when half of the bytes are written.
    Half,
}

static LIBRARY: LazyLock<PathBuf> = LazyLock::new(|| {
    let source = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../../tests/disk/Cargo.toml");
    let target = Path::new(env!("CARGO_TARGET_TMPDIR")).join("disk-library");
    let mut cargo = Command::new(std::env::var_os("CARGO").unwrap_or_else(|| "cargo".into()));
    cargo.args(["build", "--locked", "--quiet", "--manifest-path"]).arg(&source).arg("--target-dir").arg(&target);
    assert!(cargo.status().expect("cargo starts").success(), "{} is built", source.display());
    target.join("debug/libdisk.so")
});

/// A run of the program in a place, with or without a disturbance.
#[derive(Debug, Clone, Copy)]
pub struct Run<'a> {
    /// Its arguments.
    pub arguments: &'a [&'a str],
    /// Whether it remembers outside the data folder, in the folder `state`, which databases it used.
    pub remembers: bool,
    /// What happens at which call, from 1.
    pub disturbance: Option<(usize, How)>,
    /// The file to which its calls are written.
    pub log: Option<&'a Path>,
}

impl Run<'_> {
    pub fn in_place(self, place: &Place) -> ProgramOutput {
        let mut command = place.command(self.arguments);
        let below = place.path("").canonicalize().expect("a folder");
        command.env("LD_PRELOAD", &*LIBRARY).env("DISK_BELOW", &below);
        if let Some((call, how)) = self.disturbance {
            let how = match how {
                How::Eio => "eio",
                How::Enospc => "enospc",
                How::Before => "before",
                How::Half => "half",
            };
            command.env("DISK_CALL", call.to_string()).env("DISK_HOW", how);
        }
        if let Some(log) = self.log {
            command.env("DISK_LOG", log);
        }
        if self.remembers {
            command.env("XDG_STATE_HOME", below.join("state"));
        }
        ProgramOutput::of(command.output().expect("the binary starts"))
    }
}
