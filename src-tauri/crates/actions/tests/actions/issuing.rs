//! A card that was issued is a card that is known: its row comes before its files, and the files can be written again.
//!
//! `ACTIONS_KILL_ROUNDS` sets how often the program is killed while it issues cards; the default is twenty.

use crate::people::{PASSPHRASE, at, clinic, example};
use crate::receiving::unlocked;
use actions::DataFolder;
use actions::clinic::{drafting, issuing, lock, reviewing};
use exercises::plan::Prescription;
use std::env;
use std::io::{BufRead, BufReader};
use std::path::Path;
use std::process::{Command, Stdio};
use std::time::Duration;
use wire::Failure;
use wire::clinic::{AskKeep, IssueRequest};

const DIR: &str = "ACTIONS_ISSUE_IN";

/// The example with another note, so that it is another plan.
fn another(n: u32) -> Prescription {
    let mut prescription = example();
    prescription.items[0].note = format!("note {n}");
    prescription
}

fn request(prescription: Prescription) -> IssueRequest {
    IssueRequest { code: "K17".into(), prescription }
}

/// Issues one card after the other, each into its own folder. Run by itself it issues two.
#[test]
fn child() {
    let own = tempfile::tempdir().expect("a temporary folder");
    let asked = env::var_os(DIR);
    let dir = asked.as_ref().map_or(own.path(), Path::new);
    let mut folder = if asked.is_some() { unlocked(dir) } else { clinic(dir) };
    println!("ready");
    for n in 0..if asked.is_some() { u32::MAX } else { 2 } {
        let out = dir.join("cards").join(format!("{}-{n}", std::process::id()));
        std::fs::create_dir_all(dir.join("cards")).expect("a folder");
        issuing::issue(&mut folder, &at("11-25T08:00"), &request(another(n)), Some(&out)).expect("a good plan");
    }
}

/// A different pause in each round, spread over `most`.
fn pause(round: u32, most: Duration) {
    std::thread::sleep(most * (round.wrapping_mul(2_654_435_761) >> 16) / (1 << 16));
}

#[test]
fn every_file_of_a_card_has_a_row_whenever_the_program_is_killed() {
    let rounds: u32 = env::var("ACTIONS_KILL_ROUNDS").map_or(20, |rounds| rounds.parse().expect("a number"));
    let dir = tempfile::tempdir().expect("a temporary folder");
    drop(clinic(dir.path()));
    for round in 0..rounds {
        let mut command = Command::new(env::current_exe().expect("this binary"));
        command.args(["--exact", "issuing::child", "--nocapture"]).env(DIR, dir.path()).stdout(Stdio::piped());
        let mut child = command.spawn().expect("started");
        let mut said = BufReader::new(child.stdout.take().expect("piped")).lines();
        assert!(said.any(|line| line.expect("text").contains("ready")), "round {round}");
        pause(round, Duration::from_millis(150));
        child.kill().expect("a child of the test");
        child.wait().expect("a child of the test");
    }
    let mut folder = unlocked(dir.path());
    let mut cards = 0;
    for card in std::fs::read_dir(dir.path().join("cards")).into_iter().flatten() {
        for file in std::fs::read_dir(card.expect("a folder").path()).expect("a folder") {
            let path = file.expect("a file").path();
            let known = match path.extension().and_then(|ending| ending.to_str()) {
                Some("txt") => format::card::from_text(&std::fs::read_to_string(&path).expect("text")).expect("whole"),
                Some("bin") => std::fs::read(&path).expect("a file"),
                Some("png") => {
                    let text = pictures::qr::read(&std::fs::read(&path).expect("a file")).expect("a code");
                    format::card::from_text(&text).expect("a card")
                }
                _ => continue,
            };
            let on_it = format::card::open(&known).expect("a card").into_card_after_checking_the_signature();
            let revision = on_it.plan.header.revision;
            let again = dir.path().join("again").join(revision.to_string());
            std::fs::create_dir_all(dir.path().join("again")).expect("a folder");
            let saved = issuing::save_again(&mut folder, &at("11-25T09:00"), "K17", Some(revision), Some(&again));
            let text = saved.unwrap_or_else(|failure| panic!("{}: {failure:?}", path.display())).text;
            assert_eq!(text, format::card::to_text(&known), "{}", path.display());
            cards += 1;
        }
    }
    assert!(cards > 0, "some cards were issued at all");
}

#[test]
fn a_card_whose_files_cannot_be_written_is_issued_once_and_saved_again() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let mut folder = clinic(dir.path());
    let draft = drafting::draft(&folder, &at("11-25T08:00"), "K17").expect("an empty one");
    let keep = AskKeep { code: "K17".into(), draft: draft.draft, replaces: None, unread: draft.unread, facts: draft.facts };
    drafting::keep(&mut folder, &at("11-25T08:00"), keep).expect("kept");
    let occupied = dir.path().join("a file");
    std::fs::write(&occupied, "not a folder").expect("written");
    let refused = issuing::issue(&mut folder, &at("11-25T08:00"), &request(example()), Some(&occupied));
    assert_eq!(refused, Err(Failure::FileUnwritable { file: occupied.display().to_string() }), "nothing was issued");
    // One of the four files cannot be written under its name.
    let out = dir.path().join("card");
    std::fs::create_dir_all(out.join("card.txt")).expect("a folder");
    let not_saved = Failure::CardNotSaved { code: "K17".into(), revision: 1, folder: out.display().to_string() };
    let refused = issuing::issue(&mut folder, &at("11-25T08:00"), &request(example()), Some(&out));
    assert_eq!(refused, Err(not_saved), "issued, not saved");
    drop(folder);
    let mut folder = unlocked(dir.path());
    let draft = drafting::draft(&folder, &at("11-25T09:00"), "K17").expect("the issued one carried over");
    assert_eq!((draft.replaces, draft.left_on), (Some(1), None), "the card is known and its draft is gone");
    let again = issuing::issue(&mut folder, &at("11-25T09:00"), &request(example()), Some(&dir.path().join("one")));
    let again = again.expect("elsewhere");
    assert_eq!(again.plan.header.revision, 1, "the same card");
    let saved = issuing::save_again(&mut folder, &at("11-25T09:00"), "k17", None, Some(&dir.path().join("two")))
        .expect("as often as wanted");
    assert_eq!((saved.text, saved.files.len()), (again.text, 4));
    let next = issuing::issue(&mut folder, &at("11-25T10:00"), &request(example()), Some(&dir.path().join("three")));
    assert_eq!(next.expect("once it is saved").plan.header.revision, 2, "the clinician means it");
}

#[test]
fn only_a_card_that_was_issued_is_saved_again() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let mut folder = clinic(dir.path());
    let save = |folder: &mut DataFolder, code: &str, revision| {
        issuing::save_again(folder, &at("11-25T09:00"), code, revision, Some(&dir.path().join("card")))
            .map(|card| card.plan.header.revision)
    };
    assert_eq!(save(&mut folder, "K17", None), Err(Failure::NoCardIssued { code: "K17".into() }));
    for n in 1..=2 {
        issuing::issue(&mut folder, &at("11-25T08:00"), &request(another(n)), Some(&dir.path().join("first")))
            .expect("good");
    }
    assert_eq!(save(&mut folder, "K17", None), Ok(2));
    assert_eq!(save(&mut folder, "K17", Some(1)), Ok(1));
    assert_eq!(save(&mut folder, "K17", Some(3)), Err(Failure::NoSuchRevision { code: "K17".into(), revision: 3 }));
    assert_eq!(save(&mut folder, "K18", None), Err(Failure::NoSuchPatient { code: "K18".into() }));
    assert!(reviewing::page(&folder, &at("11-25T08:00"), "K17").is_ok());
    assert_eq!(lock::unlock(&mut folder, PASSPHRASE.into()), Ok(()));
}
