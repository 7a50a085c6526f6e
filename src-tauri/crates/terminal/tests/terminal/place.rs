//! A folder for each test with a clinic, a patient and their files, and functions that run the binary in it.

use std::collections::BTreeMap;
use std::ffi::OsStr;
use std::fs;
use std::path::{Path, PathBuf};
use std::process::{Command, Output};
use std::sync::LazyLock;
use tempfile::TempDir;

pub const PASSPHRASE: &str = "correct horse battery staple";
/// The moments at which things happen in the prepared folder.
pub const ISSUED: &str = "2026-11-25T08:30:00+01:00";
pub const TAKEN: &str = "2026-11-25T08:40:00+01:00";
pub const DONE: &str = "2026-11-26T20:00:00+01:00";
pub const VISIT: &str = "2026-11-27T09:00:00+01:00";

/// The output of a command and how it ended.
#[derive(Debug)]
pub struct ProgramOutput {
    pub code: Option<i32>,
    pub out: String,
    pub err: String,
}

impl ProgramOutput {
    pub fn of(output: Output) -> ProgramOutput {
        let text = |bytes: Vec<u8>| String::from_utf8(bytes).expect("text in UTF-8");
        ProgramOutput { code: output.status.code(), out: text(output.stdout), err: text(output.stderr) }
    }
}

/// A test's own folder.
pub struct Place {
    dir: TempDir,
}

/// Contains `clinic` with patient K17 and her card in `card`; `patient`, which has taken that card; `plan.toml`, `runs.jsonl`; `pw`;
/// and `summary.age`, which another copy of `patient` made after those runs, and which `clinic` has not received.
static PREPARED: LazyLock<PathBuf> = LazyLock::new(|| {
    let dir = Path::new(env!("CARGO_TARGET_TMPDIR")).join("prepared");
    let _ = fs::remove_dir_all(&dir);
    fs::create_dir_all(&dir).expect("a folder");
    write_secret(&dir.join("pw"), format!("{PASSPHRASE}\n"));
    let run = |arguments: &[&str]| {
        let said = ProgramOutput::of(command(&dir, arguments).output().expect("the binary starts"));
        assert_eq!((said.code, said.err.as_str()), (Some(0), ""), "{arguments:?}");
        said.out
    };
    run(&["--home", "clinic", "clinic", "--passphrase-file", "pw", "start", "--name", "Linden Lane Practice"]);
    run(&["--home", "clinic", "clinic", "--passphrase-file", "pw", "add", "K17"]);
    fs::write(dir.join("plan.toml"), run(&["--at", ISSUED, "example", "plan"])).expect("written");
    let issue = ["clinic", "--passphrase-file", "pw", "issue", "K17", "plan.toml", "--out", "card"];
    run(&[&["--home", "clinic", "--at", ISSUED][..], &issue].concat());
    run(&["--home", "patient", "--at", TAKEN, "patient", "accept", "card/card.png"]);
    fs::write(dir.join("runs.jsonl"), run(&["example", "runs", "--start", "2026-11-25"])).expect("written");
    copy(&dir.join("patient"), &dir.join("done"));
    run(&["--home", "done", "--at", DONE, "patient", "record", "runs.jsonl"]);
    run(&["--home", "done", "--at", DONE, "patient", "summary", "--until", "2026-11-26", "--out", "summary.age"]);
    dir
});

impl Place {
    /// A folder with all prepared files.
    pub fn prepared() -> Place {
        let place = Place::empty();
        copy(&PREPARED, place.dir.path());
        place
    }

    pub fn empty() -> Place {
        Place { dir: tempfile::tempdir().expect("a temporary folder") }
    }

    pub fn path(&self, name: &str) -> PathBuf {
        self.dir.path().join(name)
    }

    /// A file that only its owner can read.
    pub fn write(&self, name: &str, bytes: impl AsRef<[u8]>) {
        write_secret(&self.path(name), bytes);
    }

    pub fn read(&self, name: &str) -> Vec<u8> {
        fs::read(self.path(name)).unwrap_or_else(|fault| panic!("{name}: {fault}"))
    }

    pub fn text(&self, name: &str) -> String {
        String::from_utf8(self.read(name)).expect("text")
    }

    pub fn command(&self, arguments: &[&str]) -> Command {
        command(self.dir.path(), arguments)
    }

    pub fn run(&self, arguments: &[&str]) -> ProgramOutput {
        ProgramOutput::of(self.command(arguments).output().expect("the binary starts"))
    }

    /// Runs a command that must succeed without output on stderr; returns what it printed.
    #[track_caller]
    pub fn done(&self, arguments: &[&str]) -> String {
        let said = self.run(arguments);
        assert_eq!((said.code, said.err.as_str()), (Some(0), ""), "{arguments:?}");
        said.out
    }

    /// The same for the clinic at the visit.
    #[track_caller]
    pub fn clinic(&self, arguments: &[&str]) -> String {
        self.done(&clinic(arguments))
    }

    /// Runs a command that must be refused: exit code 1, nothing on stdout, one line on stderr that contains all of `says`, and no
    /// byte of the whole folder changed.
    #[track_caller]
    pub fn refused(&self, arguments: &[&str], says: &[&str]) {
        let before = self.all();
        let said = self.run(arguments);
        refusal(&said, says);
        let after = self.all();
        assert_eq!(names(&before), names(&after), "{arguments:?}: files were added or removed");
        assert!(before == after, "{arguments:?}: {:?} changed", changed(&before, &after));
    }

    /// Every file with its bytes and every folder without; of huge files only the size.
    pub fn all(&self) -> BTreeMap<PathBuf, Vec<u8>> {
        let mut found = BTreeMap::new();
        gather(self.dir.path(), &mut found);
        found
    }
}

/// Checks a refusal: exit code 1, nothing on stdout, and on stderr one line of two sentences, fault and advice, that contains all of
/// `says`.
#[track_caller]
pub fn refusal(said: &ProgramOutput, says: &[&str]) {
    assert_eq!((said.code, said.out.as_str()), (Some(1), ""), "{said:?}");
    assert_eq!(said.err.lines().count(), 1, "one line: {said:?}");
    for part in says {
        assert!(said.err.contains(part), "{part:?} is missing in {:?}", said.err);
    }
    let (fault, advice) = match serde_json::from_str::<serde_json::Value>(&said.err) {
        Ok(object) => (object["fault"].to_string(), object["advice"].to_string()),
        Err(_) => said
            .err
            .trim_end()
            .rsplit_once(". ")
            .map(|(fault, advice)| (format!("{fault}."), advice.to_owned()))
            .expect("both"),
    };
    for sentence in [fault, advice] {
        let sentence = sentence.trim_matches('"');
        assert!(sentence.len() > 12 && sentence.ends_with('.'), "a sentence: {sentence:?}");
    }
}

fn write_secret(path: &Path, bytes: impl AsRef<[u8]>) {
    fs::write(path, bytes).expect("written");
    #[cfg(unix)]
    fs::set_permissions(path, std::os::unix::fs::PermissionsExt::from_mode(0o600)).expect("the test owns it");
}

/// A command of the clinic at the visit.
pub fn clinic<'a>(arguments: &[&'a str]) -> Vec<&'a str> {
    [&["--home", "clinic", "--at", VISIT, "clinic", "--passphrase-file", "pw"][..], arguments].concat()
}

/// A command of the patient on the evening of the second day.
pub fn patient<'a>(arguments: &[&'a str]) -> Vec<&'a str> {
    [&["--home", "patient", "--at", DONE, "patient"][..], arguments].concat()
}

pub const BINARY: &str = env!("CARGO_BIN_EXE_carryover");

fn command(dir: &Path, arguments: &[&str]) -> Command {
    let mut command = Command::new(BINARY);
    command.args(arguments).current_dir(dir);
    surroundings(&mut command, dir);
    command
}

/// Sets zone, language and home for the test, independently of who runs it.
pub fn surroundings(command: &mut Command, dir: &Path) {
    command.env("TZ", "Europe/Vienna").env("LC_ALL", "C").env_remove("LANGUAGE").env("HOME", dir);
    for folder in ["XDG_DATA_HOME", "XDG_CONFIG_HOME", "XDG_DOWNLOAD_DIR"] {
        command.env_remove(folder);
    }
    // Prepared places are copied from one another, and their folders are not to be taken for copies. See `put_back` for those that are.
    command.env("XDG_STATE_HOME", "/dev/null");
    command.stdin(std::process::Stdio::null());
}

/// Runs another program that the tests need with this input.
#[track_caller]
pub fn program(name: &str, arguments: &[&OsStr]) -> Vec<u8> {
    let output = Command::new(name).args(arguments).output();
    let output = output.unwrap_or_else(|fault| panic!("these tests need {name}, see tests/packages.txt: {fault}"));
    assert!(output.status.success(), "{name} {arguments:?}: {}", String::from_utf8_lossy(&output.stderr));
    output.stdout
}

pub fn copy(from: &Path, to: &Path) {
    fs::create_dir_all(to).expect("a folder");
    fs::set_permissions(to, fs::metadata(from).expect("a folder").permissions()).expect("the test owns it");
    for entry in fs::read_dir(from).expect("a folder") {
        let from = entry.expect("an entry").path();
        let to = to.join(from.file_name().expect("a name"));
        if from.is_dir() {
            copy(&from, &to);
        } else {
            fs::copy(&from, &to).expect("copied");
        }
    }
}

fn gather(dir: &Path, found: &mut BTreeMap<PathBuf, Vec<u8>>) {
    for entry in fs::read_dir(dir).expect("a folder") {
        let path = entry.expect("an entry").path();
        if path.is_dir() {
            found.insert(path.clone(), Vec::new());
            gather(&path, found);
            continue;
        }
        let size = fs::metadata(&path).expect("there").len();
        let name = path.to_string_lossy();
        // Files that SQLite creates next to a database when it is read; an empty one carries no information.
        if name.ends_with(".db-shm") || (name.ends_with(".db-wal") && size == 0) {
            continue;
        }
        let huge = size > 50_000_000;
        let bytes = if huge { size.to_be_bytes().to_vec() } else { fs::read(&path).expect("readable") };
        found.insert(path, bytes);
    }
}

fn names(all: &BTreeMap<PathBuf, Vec<u8>>) -> Vec<&PathBuf> {
    all.keys().collect()
}

fn changed<'a>(before: &'a BTreeMap<PathBuf, Vec<u8>>, after: &BTreeMap<PathBuf, Vec<u8>>) -> Vec<&'a PathBuf> {
    before.iter().filter(|(path, bytes)| after.get(*path) != Some(bytes)).map(|(path, _)| path).collect()
}
