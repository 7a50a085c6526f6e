//! The demo's scenario, newly made.

use std::path::{Path, PathBuf};
use std::process::Command;

/// The demo's data folders, and the moments that belong to them.
pub struct Demo {
    /// The folder with the data folders.
    pub homes: PathBuf,
    /// The moment of the first visit.
    pub first: String,
    /// The moment of the visit at the end.
    pub at: String,
}

impl Demo {
    /// Makes the demo for a visit on `day` in the folder `homes`, which must not hold one. Everybody lives in `zone`; without it in that of
    /// this computer, as do the windows that are opened without one.
    pub fn make(homes: &Path, day: &str, zone: Option<&str>) -> Demo {
        let _ = std::fs::remove_dir_all(homes);
        let mut simulator = Command::new(crate::beside("simulator"));
        simulator.arg(homes).args(["--until", day]).args(zone.into_iter().flat_map(|zone| ["--zone", zone]));
        let made = simulator.output().expect("the simulator is built");
        assert!(made.status.success(), "{day}: {}", String::from_utf8_lossy(&made.stderr));
        let printed = String::from_utf8(made.stdout).expect("text");
        let (first, at) = printed.trim_end().split_once(' ').expect("two moments");
        Demo { homes: homes.to_owned(), first: first.to_owned(), at: at.to_owned() }
    }
}
