//! Every command that opens a data folder, with files on which it succeeds.

use crate::place::{DONE, PASSPHRASE, Place, TAKEN, VISIT, copy};
use crate::put_back::rating;
use std::collections::BTreeSet;
use std::fs;
use std::path::PathBuf;
use std::sync::LazyLock;

const NEW_PASSPHRASE: &str = "eight brown wrens in a kettle";

/// A command line that succeeds in [`fresh`].
#[derive(Debug, Clone)]
pub struct Case {
    /// Its name: area and command.
    pub command: &'static str,
    /// What it is about, if the command is there more than once.
    pub what: &'static str,
    /// The data folder that it works on.
    pub home: &'static str,
    pub arguments: Vec<&'static str>,
    /// Whether it remembers outside the data folder which databases it used.
    pub remembers: bool,
    /// What a command that is several transactions leaves between them: one line for each state.
    pub between: &'static [&'static str],
    /// The number of the first state in which it says that it is done, if it does without the rest.
    pub done_from: Option<usize>,
}

fn case(command: &'static str, home: &'static str, arguments: &[&'static str]) -> Case {
    Case { command, what: "", home, arguments: arguments.to_vec(), remembers: false, between: &[], done_from: None }
}

impl Case {
    fn between(self, between: &'static [&'static str]) -> Case {
        Case { between, ..self }
    }

    fn done_from(self, state: usize) -> Case {
        Case { done_from: Some(state), ..self }
    }

    fn of(self, what: &'static str) -> Case {
        Case { what, ..self }
    }

    fn remembering(self) -> Case {
        Case { remembers: true, ..self }
    }

    /// Whether the clinic's passphrase has to be typed for it.
    pub fn is_of_clinic(&self) -> bool {
        self.command.starts_with("clinic ")
    }
}

/// A command of the patient whose folder is `home`.
fn patient(command: &'static str, home: &'static str, rest: &[&'static str]) -> Case {
    let (area, name) = command.split_once(' ').expect("two words");
    case(command, home, &[&["--home", home, "--at", DONE, area, name][..], rest].concat())
}

fn clinic(command: &'static str, home: &'static str, rest: &[&'static str]) -> Case {
    let mut words = command.split(' ');
    let (area, name) = words.next().zip(words.next()).expect("two words");
    case(command, home, &[&["--home", home, "--at", VISIT, area, "--passphrase-file", "pw", name][..], rest].concat())
}

/// Those that matter most, which need no files but those of [`Place::prepared`].
pub fn foremost() -> Vec<Case> {
    vec![
        patient("patient record", "patient", &["runs.jsonl"]),
        patient("patient summary", "done", &["--until", "2026-11-26", "--out", "brought.age"]),
        clinic("clinic issue", "clinic", &["K17", "plan.toml", "--out", "next/card"])
            .between(&["the card is kept, and that its files are not saved yet"]),
        case("backup", "done", &["--home", "done", "--at", DONE, "backup", "--to", "saved.db"]).of("a patient's"),
    ]
}

/// All of them.
pub fn all() -> Vec<Case> {
    let mut all = foremost();
    all.extend(of_patient());
    all.extend(of_either());
    all.extend(of_clinic());
    all
}

fn of_patient() -> Vec<Case> {
    vec![
        case("patient accept", "new", &["--home", "new", "--at", TAKEN, "patient", "accept", "card/card.png"])
            .of("the first card")
            .between(&[EMPTY, "a patient's, with a log"]),
        patient("patient accept", "patient", &["card2/card.txt"]).of("the next card"),
        patient("patient slots", "patient", &["--from", "2026-11-26", "--days", "2", "--zone", "Europe/Vienna"]),
        patient("patient now", "patient", &[]),
        case("patient now", "patient", &["--home", "patient", "patient", "now"]).of("with the backup of the day"),
        patient("patient now", "done", &[])
            .of("in a folder that was copied")
            .remembering()
            // If nothing can be remembered, a copy cannot be told from the original.
            .done_from(0),
        patient("patient summary", "done", &["--until", "2026-11-26", "--frames", "frames"]).of("as pictures"),
        patient("patient correct", "done", &["--entry", "2", "--remove"]),
        patient("patient export", "done", &["--out", "exports/mine"]),
        patient("patient calendar", "patient", &["--out", "sessions.ics"]),
        patient("patient reminders", "patient", &["--quiet", "12:00-13:00", "--meeting", "60"]),
        patient("patient ahead", "patient", &["--hours", "24"]),
        patient("patient screen-lock", "patient", &["--remove"]),
        patient("patient erase", "erasable", &["--yes"])
            .between(&["nothing: the new database comes last, or at the next start"])
            .done_from(1),
    ]
}

const EMPTY: &str = "an empty database, of neither side yet";
const RESTORED: &str = "the backup, whose log has no id of its own yet; the next start gives it one";

fn of_either() -> Vec<Case> {
    vec![
        case("backup", "clinic", &["--home", "clinic", "--at", VISIT, "backup", "--to", "saved.db"]).of("a clinic's"),
        case("restore", "patient", &["--home", "patient", "--at", DONE, "restore", "whole.db"])
            .of("over another")
            .between(&[RESTORED])
            // Nothing can be written before the next start.
            .done_from(1),
        case("restore", "new", &["--home", "new", "--at", DONE, "restore", "whole.db"])
            .of("on a new device")
            .between(&[RESTORED])
            // Nothing can be written before the next start.
            .done_from(1),
        case("salvage", "damaged", &["--home", "damaged", "--at", DONE, "salvage"]),
    ]
}

fn of_clinic() -> Vec<Case> {
    let start = ["start", "--name", "Linden Lane Practice"];
    let new = ["--home", "new", "--at", VISIT, "clinic", "--passphrase-file"];
    vec![
        case("clinic start", "new", &[&new[..], &["pw"], &start].concat()).between(&[EMPTY]),
        case("clinic start", "new", &[&new[..], &["new-pw"], &start, &["--from-keys", "kept.keys"]].concat())
            .of("with saved keys")
            .between(&[EMPTY]),
        clinic("clinic passphrase", "clinic", &["--new-passphrase-file", "new-pw"]),
        case(
            "clinic passphrase",
            "clinic",
            &[
                "--home",
                "clinic",
                "--at",
                VISIT,
                "clinic",
                "--passphrase-file",
                "new-pw",
                "passphrase",
                "--from-keys",
                "kept.keys",
            ],
        )
        .of("with saved keys"),
        clinic("clinic keys", "clinic", &["--out", "more.keys", "--sheet", "more.html", "--new-passphrase-file", "new-pw"]),
        clinic(
            "clinic clinicians",
            "clinic",
            &["--add", "Ash Lindqvist", "--own-name", "Rowan Hale", "--new-passphrase-file", "new-pw"],
        ),
        clinic("clinic phone", "clinic", &["+43 1 555 0100"]),
        clinic("clinic add", "clinic", &["K18", "--name", "Wilhelmina Underhill"]),
        clinic("clinic card", "clinic", &["K17", "--out", "again"]),
        clinic("clinic receive", "clinic", &["summary.age"]),
        clinic("clinic review", "received", &["K17"]),
        clinic("clinic review", "received", &["K17", "--as", "fhir", "--out", "review.json"])
            .of("for a record, into a file"),
        // What the list stores for the next time is made again from the other rows.
        clinic("clinic patients", "received", &[]).done_from(0),
        clinic("clinic close", "received", &["K17", "--reason", "finished"]),
        clinic("clinic reopen", "closed", &["K17"]),
        clinic("clinic rename", "received", &["K17", "--to", "K19", "--name", "Ottoline Marsh"]),
        clinic("clinic plans", "received", &["K17"]),
        clinic("clinic print", "clinic", &["K17", "--out", "hand-out.pdf"]),
        clinic("clinic diary", "clinic", &["K17", "diary.toml"]),
        clinic("clinic review", "received", &["K17", "--as", "pdf", "--out", "report.pdf"]).of("on paper"),
        clinic("clinic server", "clinic", &["http://127.0.0.1:8080/fhir", "--token-file", "pw"]),
        clinic("clinic closing-letter", "received", &["K17", "--text", "Thank you.", "--out", "letter.pdf"]),
        clinic("clinic visit show", "clinic", &["show", "K17"]),
        clinic("clinic visit complaint", "clinic", &["complaint", "K17", "hip", "4"]),
        clinic("clinic visit change", "clinic", &["change", "K17", "2"]),
        clinic("clinic visit measure", "clinic", &["measure", "K17", "grip", "31.5", "--side", "left"]),
        clinic("clinic visit screening", "clinic", &["screening", "K17", "--flags", "osteoporosis"]),
        clinic("clinic visit note", "clinic", &["note", "K17", "slept well"]),
        clinic("clinic visit override", "clinic", &["override", "K17", "1", "progress", "he wants to wait"]),
        clinic("clinic visit take-back", "received", &["take-back", "K17", "1"]),
        clinic("clinic facts", "clinic", &["K17", "--flags", "osteoporosis", "--lacks", "mat"]),
        clinic("clinic devices", "received", &["K17"]),
        clinic("clinic renew-keys", "clinic", &["--yes"]),
        clinic("clinic remove", "received", &["K17", "--yes", "--keep-backups"]),
        clinic("clinic norms", "clinic", &["norms.toml"]),
        clinic("clinic norms", "received", &["--remove"]).of("removed"),
        clinic("clinic exercise add", "clinic", &["add", "mine.toml"]),
        clinic("clinic exercise list", "received", &["list"]),
        clinic("clinic exercise show", "received", &["show", "my-doorway-lean"]),
        clinic("clinic exercise export", "received", &["export", "my-doorway-lean", "--out", "out.toml"]),
        clinic("clinic exercise check", "clinic", &["check", "mine.toml"]),
        clinic("clinic exercise remove", "received", &["remove", "my-doorway-lean"]),
        clinic("clinic set save", "clinic", &["save", "desk", "--from", "plan.toml"]),
        clinic("clinic set list", "received", &["list"]),
        clinic("clinic set export", "received", &["export", "desk", "--out", "desk.toml"]),
        clinic("clinic set remove", "received", &["remove", "desk"]),
        clinic("clinic identity", "clinic", &["--sheet", "secret.html"]),
    ]
}

/// The areas and commands that open no data folder.
const WITHOUT_FOLDER: [&str; 10] = [
    "example plan",
    "example runs",
    "example norms",
    "example exercise",
    "example diary",
    "catalogue check",
    "catalogue find",
    "sway",
    "trend",
    "proportion",
];

/// It writes nothing, and succeeds only with a server that answers: `records/hand_over.rs`.
const WITH_A_SERVER: &str = "clinic hand-over";

#[test]
fn no_command_is_missing_here() {
    let place = Place::empty();
    let mut listed = BTreeSet::new();
    for area in names(&place.done(&["--help"])) {
        let commands = names(&place.done(&[&area, "--help"]));
        if commands.is_empty() {
            listed.insert(area);
            continue;
        }
        for command in commands {
            let within = names(&place.done(&[&area, &command, "--help"]));
            match within.is_empty() {
                true => drop(listed.insert(format!("{area} {command}"))),
                false => listed.extend(within.iter().map(|one| format!("{area} {command} {one}"))),
            }
        }
    }
    let here = all().into_iter().map(|case| case.command).chain(WITHOUT_FOLDER).chain([WITH_A_SERVER]).map(str::to_owned);
    assert_eq!(listed, here.collect(), "a new command needs a case here, or a reason why it opens no data folder");
}

/// The commands that a help text lists.
fn names(help: &str) -> Vec<String> {
    let commands = help.split_once("Commands:\n").map_or("", |(_, rest)| rest.split("\n\n").next().unwrap_or_default());
    let names = commands.lines().filter(|line| line.starts_with("  ") && !line.starts_with("   "));
    names.filter_map(|line| line.split_whitespace().next()).filter(|name| *name != "help").map(str::to_owned).collect()
}

/// What [`Place::prepared`] has, and what the other cases need.
static EXTENDED: LazyLock<PathBuf> = LazyLock::new(|| {
    let place = Place::prepared();
    for (from, to) in [("done", "erasable"), ("done", "damaged"), ("clinic", "received")] {
        copy(&place.path(from), &place.path(to));
    }
    place.write("new-pw", format!("{NEW_PASSPHRASE}\n"));
    place.write("norms.toml", place.done(&["example", "norms"]));
    place.write("mine.toml", place.done(&["example", "exercise"]));
    place.write("diary.toml", place.done(&["example", "diary", "--start", "2026-11-25"]));
    let visit = |home, rest: &[&str]| {
        let said = place.run(&[&["--home", home, "--at", VISIT, "clinic", "--passphrase-file", "pw"][..], rest].concat());
        assert_eq!(said.code, Some(0), "{rest:?}: {said:?}");
    };
    visit("clinic", &["keys", "--out", "kept.keys", "--new-passphrase-file", "new-pw"]);
    visit("received", &["receive", "summary.age"]);
    visit("received", &["norms", "norms.toml"]);
    visit("received", &["exercise", "add", "mine.toml"]);
    visit("received", &["set", "save", "desk", "--from", "plan.toml"]);
    visit("received", &["visit", "note", "K17", "as said"]);
    visit("received", &["issue", "K17", "plan.toml", "--out", "card2"]);
    copy(&place.path("received"), &place.path("closed"));
    visit("closed", &["close", "K17", "--reason", "sent-on"]);
    place.done(&["--home", "done", "--at", DONE, "backup", "--to", "whole.db"]);
    place.done(&["--home", "erasable", "patient", "now"]);
    fs::create_dir_all(place.path("erasable/web-view/storage")).expect("a folder");
    place.write("erasable/web-view/storage/page", "what a page keeps");
    damage(&place, "damaged");
    let dir = std::path::Path::new(env!("CARGO_TARGET_TMPDIR")).join("disk");
    let _ = fs::remove_dir_all(&dir);
    copy(&place.path(""), &dir);
    assert_eq!(fs::read(dir.join("pw")).expect("copied"), format!("{PASSPHRASE}\n").into_bytes());
    dir
});

/// Fills the database with entries, and loses a page of them.
fn damage(place: &Place, home: &str) {
    let lines: Vec<String> = (0..400).map(|n| rating(&format!("26T{:02}:{:02}", 8 + n / 60, n % 60), 3)).collect();
    place.write("many.jsonl", lines.join("\n"));
    place.done(&["--home", home, "--at", DONE, "patient", "record", "many.jsonl"]);
    let database = format!("{home}/carryover.db");
    let mut bytes = place.read(&database);
    let leaf = (1..bytes.len() / 4096).rev().map(|page| page * 4096).find(|page| bytes[*page] == 0x0D).expect("many pages");
    bytes[leaf..leaf + 4096].fill(0);
    place.write(&database, bytes);
}

/// A place in which every case succeeds; only the foremost do if that is all that is wanted.
pub fn fresh(foremost: bool) -> Place {
    if foremost {
        return Place::prepared();
    }
    let place = Place::empty();
    copy(&EXTENDED, &place.path(""));
    place
}
