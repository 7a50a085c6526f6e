//! Helpers for several tests: a temporary folder, rows of an invented log, and running this test binary again as another process,
//! also as another user or with a limit on the size of files.
#![allow(dead_code, reason = "each test binary uses its part")]

use std::env;
use std::io::{BufRead, BufReader};
use std::path::{Path, PathBuf};
use std::process::{Child, Command, Output, Stdio};
use store::table::entry::{self, NewEntry};
use store::table::setting;
use store::{Home, StoreError};
use tempfile::TempDir;

pub const PLAN: &[u8] = b"plan-one";

/// An empty temporary folder, and the path of the data folder to be created in it.
pub fn place() -> (TempDir, PathBuf) {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let home = dir.path().join("home");
    (dir, home)
}

pub fn database(home: &Path) -> PathBuf {
    home.join("carryover.db")
}

/// The payload of the entry with this number: long enough that a few hundred entries need many pages.
pub fn payload(n: u32) -> Vec<u8> {
    format!("knot {n} ").repeat(1 + n as usize % 40).into_bytes()
}

/// Appends the next entry of the invented log and, in the same transaction, stores its number as a setting.
pub fn append(home: &mut Home) -> Result<u32, StoreError> {
    home.store_mut().transaction(|tx| {
        let next = entry::count(tx)? + 1;
        setting::put(tx, "last", &next.to_string())?;
        entry::append(
            tx,
            &NewEntry { plan: PLAN, at_ms: i64::from(next) * 60_000, offset_s: 3_600, payload: &payload(next) },
        )
    })
}

/// Asserts that the folder opens and contains a log without gaps whose entries are complete; returns their number.
#[track_caller]
pub fn sound(home: &Path) -> u32 {
    whole(&Home::open(home, false).expect("the folder opens"))
}

/// Asserts that the log has no gaps and its entries are complete; returns their number.
#[track_caller]
pub fn whole(home: &Home) -> u32 {
    let entries = home.store().read(entry::all).expect("the log is read");
    let noted = home.store().read(|view| setting::get(view, "last")).expect("settings are read");
    let last = entries.last().map(|entry| entry.n.to_string());
    assert_eq!(noted, last, "both halves of a transaction are there, or none");
    for (entry, n) in entries.iter().zip(1..) {
        assert_eq!((entry.n, &entry.payload), (n, &payload(n)), "an entry is complete or not there");
    }
    u32::try_from(entries.len()).expect("few entries")
}

/// The environment variable that says what the test binary does when it is run again; see [`act`].
const OPERATION: &str = "STORE_TEST_DEED";
const AT: &str = "STORE_TEST_AT";

/// Must be called by a test named `child` in each binary that uses [`again`]. Does the operation that the parent requested. If it is
/// run by itself, it does a short operation of its own and checks the result.
pub fn act() {
    let Some(operation) = env::var_os(OPERATION) else {
        let (_dir, home) = place();
        write(&home, 5);
        assert_eq!(sound(&home), 5, "what the child process does holds in this one too");
        return;
    };
    let at = PathBuf::from(env::var_os(AT).expect("the parent sets the path"));
    match operation.to_str().expect("a name") {
        "write" => write(&at, u32::MAX),
        "open" => say(&format!("opened {:?}", Home::open(&at, true).map(|_| "well"))),
        "hold" => {
            let _home = Home::open(&at, true).expect("the folder opens");
            say("held");
            // Waits until the parent closes the pipe or kills the process.
            let _ = std::io::stdin().read_line(&mut String::new());
        }
        "restore" => {
            let (_dir, home) = place();
            let restored = Home::restore(&home, &at);
            say(&format!("restored {:?}", restored.map(|home| whole(&home))));
        }
        "erase" => {
            let mut home = Home::open(&at, false).expect("the folder opens");
            say("begins");
            say(&format!("erased {:?}", home.erase(store::WebView::Closed)));
        }
        "save" => say(&format!("saved {:?}", store::files::write(&at, &vec![7; 1_000_000]))),
        other => panic!("no such deed: {other}"),
    }
}

/// Appends up to `most` entries and prints each number once it is committed; prints the reason if it stops early.
fn write(home: &Path, most: u32) {
    let mut home = match Home::open(home, true) {
        Ok(home) => home,
        Err(error) => return say(&format!("stopped {error:?}")),
    };
    for _ in 0..most {
        match append(&mut home) {
            Ok(n) => say(&format!("committed {n}")),
            Err(error) => return say(&format!("stopped {error:?}")),
        }
    }
}

fn say(line: &str) {
    // The test harness has already printed the test's name without a line break.
    println!("\n{line}");
}

/// A command that runs this test binary again to do `operation` at `at`. `before` is the command that starts it, if any.
pub fn again(before: &[&str], binary: &Path, operation: &str, at: &Path) -> Command {
    let mut words = before.iter().map(|word| word.as_ref()).chain([binary.as_os_str()]);
    let mut command = Command::new(words.next().expect("at least the binary"));
    command.args(words).args(["--exact", "child", "--nocapture", "--test-threads=1"]);
    command.env(OPERATION, operation).env(AT, at).stdin(Stdio::piped()).stdout(Stdio::piped()).stderr(Stdio::piped());
    command
}

pub fn own_binary() -> PathBuf {
    env::current_exe().expect("the test binary has a path")
}

/// The rest of the child's first line that begins with `word`.
pub fn first_line(child: &mut Child, word: &str) -> String {
    let out = child.stdout.take().expect("the child's output is piped");
    let mut lines = BufReader::new(out).lines();
    let found = lines.find_map(|line| line.ok()?.strip_prefix(word).map(str::to_owned));
    found.unwrap_or_else(|| panic!("the child says {word:?}"))
}

/// The rests of all lines of a finished child that begin with `word`.
pub fn said(output: &Output, word: &str) -> Vec<String> {
    let out = String::from_utf8_lossy(&output.stdout);
    out.lines().filter_map(|line| line.strip_prefix(word).map(str::to_owned)).collect()
}

/// Runs the binary as a user without privileges and returns its output. Root may write anywhere, so a test of missing permissions
/// needs another user; a user other than root is used as is.
#[cfg(unix)]
pub fn as_unprivileged_user(operation: &str, at: &Path) -> Output {
    use std::os::unix::fs::{MetadataExt, PermissionsExt};
    // The build folder may be closed to other users, so the binary is copied to where they can run it.
    let open = tempfile::tempdir().expect("a temporary folder");
    let reachable = open.path().join("again");
    std::fs::set_permissions(open.path(), PermissionsExt::from_mode(0o755)).expect("the test owns it");
    std::fs::copy(own_binary(), &reachable).expect("the binary is copied");
    let root = std::fs::metadata(open.path()).expect("the test owns it").uid() == 0;
    let nobody = ["setpriv", "--reuid=65534", "--regid=65534", "--clear-groups"];
    let before = if root { &nobody[..] } else { &[] };
    again(before, &reachable, operation, at).output().expect("setpriv (util-linux) starts the binary")
}
