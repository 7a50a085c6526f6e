//! Watches which sockets a program asks the system for, with all processes that it starts.

use std::collections::BTreeMap;
use std::path::{Path, PathBuf};

use crate::program;

/// The calls of a program that concern sockets, as strace writes them to a file.
#[derive(Clone)]
pub struct Sockets {
    log: PathBuf,
}

impl Sockets {
    /// Those of the programs that are started with it, in this file.
    pub fn in_file(log: &Path) -> Self {
        Self { log: log.to_path_buf() }
    }

    /// What has to be started instead of the program with these arguments.
    pub(crate) fn around(&self, own: &[String]) -> (PathBuf, Vec<String>) {
        let options = ["--follow-forks", "--seccomp-bpf", "-qq", "--signal=none", "--trace=socket,connect,bind,listen"];
        let log =
            ["--output-append-mode", "--output"].map(str::to_owned).into_iter().chain([self.log.display().to_string()]);
        let program = program::path().display().to_string();
        let arguments =
            options.map(str::to_owned).into_iter().chain(log).chain([program]).chain(own.iter().cloned()).collect();
        let strace = Path::new("/usr/bin/strace");
        assert!(strace.exists(), "strace is installed (tests/packages.txt)");
        (strace.to_path_buf(), arguments)
    }

    /// Every call so far that names a family of addresses, by family.
    pub fn by_family(&self) -> BTreeMap<String, Vec<String>> {
        let calls = std::fs::read_to_string(&self.log).expect("strace has written it");
        let mut found: BTreeMap<String, Vec<String>> = BTreeMap::new();
        for call in calls.lines() {
            let families = call.split(|sign: char| !(sign.is_ascii_alphanumeric() || sign == '_'));
            for family in families.filter(|word| word.starts_with("AF_") || word.starts_with("PF_")) {
                found.entry(family.to_owned()).or_default().push(call.to_owned());
            }
        }
        found
    }
}
