//! The power is cut at any moment: what was acknowledged is there, and the rest is whole or not there.

use super::calls::{How, Run};
use super::held::{Held, held, is_of_a_database};
use super::images::{Opened, STATE, hash};
use super::number;
use super::replay::{All, Call, Choice, Disk, Image, calls};
use crate::place::{DONE, ISSUED, Place, TAKEN, VISIT, copy};
use std::collections::{BTreeMap, HashSet};
use std::path::{Path, PathBuf};

/// A side's commands, one after the other, in one place.
struct Story {
    home: &'static str,
    place: Place,
    steps: Vec<Vec<&'static str>>,
}

/// A place with these of the prepared files, and the empty folder `saved`.
fn with_files(names: &[&str]) -> Place {
    let (prepared, place) = (Place::prepared(), Place::empty());
    for folder in ["card", "saved"] {
        std::fs::create_dir(place.path(folder)).expect("a folder");
    }
    names.iter().for_each(|name| place.write(name, prepared.read(name)));
    place
}

/// The patient's side; some commands of it alone, if not `all`.
fn of_patient(all: bool) -> Story {
    let place = with_files(&["card/card.png", "card/card.txt", "runs.jsonl"]);
    let at = |at, rest: &[&'static str]| [&["--home", "patient", "--at", at], rest].concat();
    let done = |rest: &[&'static str]| at(DONE, &[&["patient"], rest].concat());
    let mut steps = vec![
        at(TAKEN, &["patient", "accept", "card/card.png"]),
        done(&["record", "runs.jsonl"]),
        at(DONE, &["backup", "--to", "saved/whole.db"]),
        done(&["correct", "--entry", "2", "--remove"]),
        done(&["summary", "--until", "2026-11-26", "--out", "brought.age"]),
        at(DONE, &["restore", "saved/whole.db"]),
    ];
    if all {
        steps.extend([
            done(&["reminders", "--quiet", "12:00-13:00", "--meeting", "60"]),
            done(&["export", "--out", "exports/mine"]),
            done(&["calendar", "--out", "sessions.ics"]),
            // With the real clock, so that the backup of the day is made.
            vec!["--home", "patient", "patient", "now"],
            done(&["correct", "--entry", "3", "--remove"]),
            at(DONE, &["salvage"]),
            done(&["erase", "--yes"]),
            at(TAKEN, &["patient", "accept", "card/card.txt"]),
        ]);
    }
    Story { home: "patient", place, steps }
}

fn of_clinic() -> Story {
    let place = with_files(&["plan.toml", "pw"]);
    place.write("new-pw", "eight brown wrens in a kettle\n");
    let at =
        |at, rest: &[&'static str]| [&["--home", "clinic", "--at", at, "clinic", "--passphrase-file", "pw"], rest].concat();
    let steps = vec![
        at(ISSUED, &["start", "--name", "Linden Lane Practice"]),
        at(ISSUED, &["add", "K17", "--name", "Wilhelmina Underhill"]),
        at(ISSUED, &["issue", "K17", "plan.toml", "--out", "cards/one"]),
        at(ISSUED, &["card", "K17", "--out", "cards/two"]),
        at(ISSUED, &["keys", "--out", "kept.keys", "--sheet", "kept.html", "--new-passphrase-file", "new-pw"]),
        vec!["--home", "clinic", "--at", VISIT, "backup", "--to", "clinic.db"],
        at(VISIT, &["add", "K18"]),
        at(VISIT, &["remove", "K18", "--yes"]),
        at(VISIT, &["phone", "+43 1 555 0100"]),
        vec!["--home", "clinic", "--at", VISIT, "restore", "clinic.db"],
        at(VISIT, &["passphrase", "--new-passphrase-file", "new-pw"]),
    ];
    Story { home: "clinic", place, steps }
}

/// A patient's database that is damaged, with a log that a killed process left; and a command that mends it.
fn of_damaged(command: &'static [&'static str]) -> Story {
    let place = with_files(&["runs.jsonl"]);
    copy(&Place::prepared().path("patient"), &place.path("patient"));
    place.done(&["--home", "patient", "--at", DONE, "backup", "--to", "saved/whole.db"]);
    let record = ["--home", "patient", "--at", DONE, "patient", "record", "runs.jsonl"];
    let log = tempfile::NamedTempFile::new().expect("a file");
    let whole = with_files(&["runs.jsonl"]);
    copy(&place.path("patient"), &whole.path("patient"));
    let run = Run { arguments: &record, remembers: false, disturbance: None, log: Some(log.path()) };
    run.in_place(&whole);
    let calls = calls(&std::fs::read(log.path()).expect("the log"));
    // The last sync is that of the database, into which the log is written when the program is closed.
    let last = 1 + calls.iter().rposition(|call| matches!(call, Call::Sync { .. })).expect("the log is closed");
    Run { disturbance: Some((last, How::Before)), log: None, ..run }.in_place(&place);
    assert!(place.path("patient/carryover.db-wal").metadata().is_ok_and(|facts| facts.len() > 0), "a log is left");
    let bytes = place.read("patient/carryover.db");
    let damages = |page: &usize| {
        let mut bytes = bytes.clone();
        bytes[page * 4096..(page + 1) * 4096].fill(0xA5);
        place.write("patient/carryover.db", bytes);
        let copied = Place::empty();
        copy(&place.path("patient"), &copied.path("patient"));
        matches!(held(&copied.path("patient")), Ok(Held::Damaged(_)))
    };
    assert!((2..bytes.len() / 4096).any(|page| damages(&page)), "a page that is not in the log");
    Story { home: "patient", place, steps: vec![command.to_vec()] }
}

/// What the commands of a story did.
struct Told {
    home: &'static str,
    begin: Place,
    calls: Vec<Call>,
    /// How many calls there were when each command had ended.
    acknowledged: Vec<usize>,
    /// Whether the command before that is one that puts an earlier state back.
    puts_back: Vec<bool>,
}

impl Story {
    fn told(self) -> (Told, Disk) {
        let disk = Disk::of(&self.place.path(""));
        let log = tempfile::NamedTempFile::new().expect("a file");
        let mut told =
            Told { home: self.home, begin: self.place, calls: Vec::new(), acknowledged: vec![0], puts_back: vec![false] };
        for step in &self.steps {
            let run = Run { arguments: step, remembers: true, disturbance: None, log: Some(log.path()) };
            let said = run.in_place(&told.begin);
            assert_eq!(said.code, Some(0), "{step:?}: {said:?}");
            told.calls = calls(&std::fs::read(log.path()).expect("the log"));
            told.acknowledged.push(told.calls.len());
            told.puts_back.push(step.contains(&"restore"));
        }
        (told, disk)
    }
}

/// A disk after some calls whose every change was done: which state the data folder has, and which files there are.
struct Clean {
    state: Held,
    /// Whether it is taken for an earlier state, which it is while a backup is being restored.
    is_put_back: bool,
    files: BTreeMap<PathBuf, u64>,
}

fn clean(image: &Image, home: &str, opened: &mut Opened, at: usize) -> Clean {
    let (state, is_put_back) = opened.held(image, home).unwrap_or_else(|fault| panic!("ended after call {at}: {fault}"));
    Clean { state, is_put_back, files: finished(image) }
}

/// The files that have their final names, without databases and what is remembered outside the data folder; nor those of a data folder
/// that is being erased, which the next start finishes.
fn finished(image: &Image) -> BTreeMap<PathBuf, u64> {
    let name = |path: &Path| path.file_name().unwrap_or_default().to_string_lossy().into_owned();
    let erased = image.keys().find(|path| name(path).starts_with(".carryover-erasing")).and_then(|mark| mark.parent());
    let counts = |path: &Path| {
        let is_elsewhere = path.starts_with(STATE) || erased.is_some_and(|folder| path.starts_with(folder));
        !is_elsewhere && !is_of_a_database(&name(path)) && !name(path).starts_with(".carryover-")
    };
    let files = image.iter().filter(|(path, node)| node.is_some() && counts(path));
    files.map(|(path, node)| (path.clone(), hash(&Image::from([(PathBuf::new(), node.clone())])))).collect()
}

/// Fails unless the disk holds what `clean`, the states since the last acknowledgement, allow.
fn check(image: &Image, clean: &[Clean], told: &Told, opened: &mut Opened, at: usize) {
    let call = format!("{:?}", told.calls.get(at.wrapping_sub(1)));
    let what = format!("power cut after call {at}, {}", call.chars().take(120).collect::<String>());
    let (state, is_put_back) = opened.held(image, told.home).unwrap_or_else(|fault| panic!("{what}: {fault}"));
    assert!(!is_put_back || clean.iter().any(|clean| clean.is_put_back), "{what}: passes for one that was put back");
    assert!(
        clean.iter().any(|clean| clean.state == state),
        "{what}: what was acknowledged is lost, or half of something is there"
    );
    let files = finished(image);
    let known: HashSet<&PathBuf> = clean.iter().flat_map(|clean| clean.files.keys()).chain(files.keys()).collect();
    for path in known {
        let is = files.get(path);
        let was = clean.iter().any(|clean| clean.files.get(path) == is);
        assert!(was, "{what}: {} is {}", path.display(), if is.is_some() { "not whole" } else { "lost" });
    }
}

/// Chooses at random, always the same for the same seed.
struct Random(u64);

impl Random {
    fn below(&mut self, limit: usize) -> usize {
        self.0 ^= self.0 << 13;
        self.0 ^= self.0 >> 7;
        self.0 ^= self.0 << 17;
        (self.0 >> 11) as usize % limit.max(1)
    }

    fn some(&mut self, changes: usize) -> Vec<bool> {
        match self.below(5) {
            0 => vec![false; changes],
            1 => vec![true; changes],
            2 => {
                let first = self.below(changes + 1);
                (0..changes).map(|at| at < first).collect()
            }
            3 => {
                let without = self.below(changes);
                (0..changes).map(|at| at != without).collect()
            }
            _ => (0..changes).map(|_| self.below(2) == 0).collect(),
        }
    }
}

impl Choice for Random {
    fn data(&mut self, changes: usize) -> Vec<bool> {
        self.some(changes)
    }
    fn names(&mut self, changes: usize) -> Vec<bool> {
        self.some(changes)
    }
    fn sectors(&mut self, sectors: usize) -> Option<Vec<bool>> {
        (self.below(3) == 0).then(|| self.some(sectors))
    }
}

/// Nothing but what was synced.
struct Nothing;

impl Choice for Nothing {
    fn data(&mut self, changes: usize) -> Vec<bool> {
        vec![false; changes]
    }
    fn names(&mut self, changes: usize) -> Vec<bool> {
        vec![false; changes]
    }
    fn sectors(&mut self, _sectors: usize) -> Option<Vec<bool>> {
        None
    }
}

/// Opens at least `wanted` different disks, at moments all over the story; returns how many.
fn cut(story: Story, wanted: usize) -> usize {
    let (told, mut disk) = story.told();
    let mut opened = Opened::default();
    let mut random = Random(0x9E37_79B9_7F4A_7C15);
    let mut different = HashSet::new();
    let each = wanted.div_ceil(told.calls.len());
    let mut cleans = vec![clean(&disk.image(&mut All), told.home, &mut opened, 0)];
    for (at, call) in told.calls.iter().enumerate() {
        disk.apply(call);
        cleans.push(clean(&disk.image(&mut All), told.home, &mut opened, at + 1));
        let step = told.acknowledged.iter().position(|acknowledged| *acknowledged > at).expect("the call of a command");
        assert!(
            told.puts_back[step] || !cleans[at + 1].is_put_back,
            "ended after call {}: passes for one that was put back",
            at + 1
        );
        let since = *told.acknowledged.iter().rfind(|acknowledged| **acknowledged <= at + 1).expect("the beginning");
        let allowed = &cleans[since..];
        // Few changes make few different disks; moments with more make up for these.
        let due = wanted * (at + 1) / told.calls.len();
        let tries = if disk.pending() == 0 { 0 } else { 20 * each };
        let images = std::iter::once(disk.image(&mut Nothing)).chain((0..tries).map(|_| disk.image(&mut random)));
        for image in images {
            if different.insert(hash(&image)) {
                check(&image, allowed, &told, &mut opened, at + 1);
            }
            if different.len() > due {
                break;
            }
        }
    }
    println!("{}: {} calls, {} different disks after a power cut", told.home, told.calls.len(), different.len());
    different.len()
}

#[test]
fn a_power_cut_while_a_damaged_database_is_replaced_leaves_it_or_the_new_one() {
    let commands = [
        &["--home", "patient", "--at", DONE, "restore", "saved/whole.db"][..],
        &["--home", "patient", "--at", DONE, "salvage"],
    ];
    let wanted = number("DISK_IMAGES", 100).min(1000);
    for command in commands.into_iter().take(if wanted > 100 { 2 } else { 1 }) {
        cut(of_damaged(command), wanted);
    }
}

#[test]
fn a_power_cut_costs_nothing_that_was_acknowledged() {
    let wanted = number("DISK_IMAGES", 300);
    let all = wanted > 300;
    // A few more than a half for each side, because the last moments of each may be short of some.
    let each = wanted * 6 / 10;
    let different =
        if all { cut(of_patient(true), each) + cut(of_clinic(), each) } else { cut(of_patient(false), wanted + 50) };
    assert!(different >= wanted, "{different} disks");
}
