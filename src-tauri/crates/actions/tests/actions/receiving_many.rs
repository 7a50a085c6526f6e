//! Many files at once: by batches, stopped in between, again, from folders with whatever is in them.

use crate::people::{at, clinic, example, issue};
use crate::receiving::{summary, two_patients, unlocked};
use actions::clinic::receiving::{self, Intake, Listing, MAX_BATCH, MAX_DEPTH, MAX_GATHERED, by_name};
use actions::clinic::{issuing, lock, patients};
use actions::patient::{plans, sealing, taking};
use actions::{ActionResult, DataFolder};
use exercises::id::LogId;
use exercises::summary::Summary;
use std::cell::Cell;
use std::collections::BTreeMap;
use std::fs;
use std::path::Path;
use wire::Failure;
use wire::app::Role;
use wire::clinic::{AddPatientRequest, IssueRequest};
use wire::patient::{CardSource, SealRequest, TakeCardRequest};
use wire::receiving::{Counts, Outcome, Receipt};

type File = (String, ActionResult<Vec<u8>>);

const PATIENTS: usize = 24;

/// What somebody who took the card could hand over on the evening of 25 November.
fn preview(dir: &Path, card: &str) -> Summary {
    let mut folder = DataFolder::open(dir, true).expect("a new folder");
    folder.choose_role(Role::Patient).expect("free to choose");
    let request = TakeCardRequest { source: CardSource::Text(card.into()), agreed: Vec::new() };
    taking::take(&mut folder, &at("11-25T08:40"), &request).expect("a valid card");
    let plan = plans::one(&folder, None).expect("taken").plan().header.id;
    let request = SealRequest { plan, from: None, until: at("11-25T20:00").now.date(), note: None };
    sealing::preview(&folder, &at("11-25T20:00"), &request).expect("a day to hand over")
}

/// A clinic with several patients, and `each` summaries from every one of them, week by week: everybody's first, then everybody's second.
/// Each summary has a note of its own.
fn many(dir: &Path, each: usize) -> (DataFolder, Vec<File>) {
    let mut folder = clinic(dir);
    let first = issue(&mut folder, &at("11-25T08:00"), example(), &dir.join("K17"));
    let base = preview(&dir.join("patient"), &first);
    let mut cards = Vec::new();
    for number in 0..PATIENTS {
        let code = format!("M{number}");
        patients::add(&mut folder, &at("11-25T08:00"), &AddPatientRequest { code: code.clone(), name: None })
            .expect("a new code");
        let request = IssueRequest { code: code.clone(), prescription: example() };
        let card = issuing::issue(&mut folder, &at("11-25T08:00"), &request, Some(&dir.join(&code))).expect("a valid plan");
        cards.push(vault::card::verify(format::card::read(card.text.as_bytes()).expect("a card"), None).expect("signed"));
    }
    let mut files = Vec::new();
    for counter in 1..=each as u32 {
        for (number, card) in cards.iter().enumerate() {
            let (plan, log, note) = (card.plan.header.id, LogId([number as u8 + 1; 8]), Some(format!("Note {counter}")));
            let mine = Summary { plan, log, counter, note, ..base.clone() };
            let sealed = vault::summary::seal(&mine, &card.pairing_secret, &card.recipient).expect("sealed");
            files.push((format!("M{number}-{counter}.age"), Ok(sealed)));
        }
    }
    (folder, files)
}

/// The files mixed with files that are no summaries, enough of them to fill several batches.
fn spread(files: &[File]) -> Vec<File> {
    let junk = |number| (format!("junk-{number}.age"), Ok(b"no summary".to_vec()));
    let all = files.iter().cloned().enumerate();
    all.flat_map(|(place, file)| (0..MAX_BATCH / 8).map(move |number| junk(place * 1000 + number)).chain([file])).collect()
}

fn counts(receipts: &[Receipt]) -> Counts {
    let mut counts = Counts::default();
    receipts.iter().for_each(|receipt| counts.add(&receipt.outcome));
    counts
}

fn received_of(folder: &DataFolder) -> Vec<String> {
    let list = patients::list(folder, &at("11-25T21:00")).expect("unlocked");
    assert_eq!(list.notices, [], "nothing looks changed from outside");
    list.lines.into_iter().filter(|line| line.covered_until.is_some()).map(|line| line.code).collect()
}

#[test]
fn whoever_stops_keeps_what_was_taken_and_goes_on_later() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let (mut folder, files) = many(dir.path(), 1);
    let all = spread(&files);
    let total = all.len();
    let mut told = Vec::new();
    receiving::receive_each(&mut folder, &at("11-25T20:00"), all.clone(), |batch| {
        assert_eq!(batch.len(), MAX_BATCH);
        told.extend(batch);
        false
    })
    .expect("unlocked");
    let new: Vec<String> = told.iter().filter_map(|receipt| receipt.outcome.code()).map(str::to_owned).collect();
    assert!(!new.is_empty() && new.len() < PATIENTS, "it was stopped in between: {new:?}");
    drop(folder);
    let mut folder = unlocked(dir.path());
    let mut kept = received_of(&folder);
    kept.sort();
    let mut expected = new.clone();
    expected.sort();
    assert_eq!(kept, expected, "what was told is kept, and nothing else");

    let again = receiving::receive(&mut folder, &at("11-25T20:05"), all.clone()).expect("unlocked");
    let (known, rest) = (new.len() as u32, (PATIENTS - new.len()) as u32);
    assert_eq!(counts(&again), Counts { new: rest, known, refused: (total - PATIENTS) as u32 });
    assert_eq!(received_of(&folder).len(), PATIENTS);
    let third = receiving::receive(&mut folder, &at("11-25T20:10"), all).expect("unlocked");
    assert_eq!(counts(&third), Counts { new: 0, known: PATIENTS as u32, refused: (total - PATIENTS) as u32 });
}

/// More summaries than one batch holds, with a damaged one and a file that is no summary in the middle. Also returns the number from each
/// patient.
fn week_by_week(dir: &Path) -> (DataFolder, Vec<File>, usize) {
    let each = MAX_BATCH / PATIENTS + 3;
    let (folder, mut files) = many(dir, each);
    let (_, sealed) = files[0].clone();
    let cut = sealed.map(|bytes| bytes[..bytes.len() - 1].to_vec());
    let among = files.len() / 2;
    files.splice(among..among, [("cut.age".to_owned(), cut), ("none.age".to_owned(), Ok(b"no summary".to_vec()))]);
    (folder, files, each)
}

/// The number of receipts of each patient.
fn by_code(receipts: &[Receipt]) -> BTreeMap<&str, usize> {
    let mut numbers = BTreeMap::new();
    receipts.iter().filter_map(|receipt| receipt.outcome.code()).for_each(|code| *numbers.entry(code).or_default() += 1);
    numbers
}

#[test]
fn patients_whose_summaries_are_spread_over_the_files_are_taken_in_whole() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let (mut folder, files, each) = week_by_week(dir.path());
    let mut batches = Vec::new();
    let left = receiving::receive_each(&mut folder, &at("11-25T20:00"), files.clone(), |batch| {
        batches.push(batch);
        true
    });
    assert_eq!((left, batches.len()), (Ok(0), 2));
    for batch in &batches {
        assert!(by_code(batch).values().all(|number| *number == each), "each patient is whole: {:?}", by_code(batch));
        let place = |receipt: &Receipt| files.iter().position(|(file, _)| *file == receipt.file);
        assert!(batch.is_sorted_by_key(place), "in the files' order");
    }
    let all = batches.concat();
    assert_eq!(counts(&all), Counts { new: (PATIENTS * each) as u32, known: 0, refused: 2 });
    let refused: Vec<(&str, &Outcome)> = all
        .iter()
        .filter(|receipt| receipt.outcome.code().is_none())
        .map(|receipt| (&*receipt.file, &receipt.outcome))
        .collect();
    let (damaged, foreign) = (Outcome::Refused(Failure::SummaryDamaged), Outcome::Refused(Failure::SummaryForeign));
    assert_eq!(refused, [("cut.age", &damaged), ("none.age", &foreign)]);
    assert_eq!(received_of(&folder).len(), PATIENTS);
}

#[test]
fn whoever_stops_after_the_first_batch_keeps_the_patients_in_it_and_no_others() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let (mut folder, files, each) = week_by_week(dir.path());
    let mut told = Vec::new();
    let left = receiving::receive_each(&mut folder, &at("11-25T20:00"), files.clone(), |batch| {
        told.extend(batch);
        false
    });
    assert_eq!(left, Ok(files.len() - told.len()));
    let taken = by_code(&told);
    assert_eq!((taken.len(), told.len()), (MAX_BATCH / each, MAX_BATCH / each * each), "as many patients as a batch holds");
    drop(folder);
    let mut folder = unlocked(dir.path());
    let mut kept = received_of(&folder);
    kept.sort();
    assert_eq!(kept, taken.keys().copied().collect::<Vec<_>>(), "what was told is kept, and nothing else");
    let again = receiving::receive(&mut folder, &at("11-25T20:05"), files.clone()).expect("unlocked");
    let known = told.len() as u32;
    assert_eq!(counts(&again), Counts { new: (PATIENTS * each) as u32 - known, known, refused: 2 });
}

#[test]
fn what_was_gathered_is_taken_in_before_it_fills_the_memory() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let mut folder = clinic(dir.path());
    let file = |number: usize| (format!("{number}.age"), Ok(vec![0; MAX_GATHERED / 4]));
    let mut batches = Vec::new();
    let read = Cell::new(0);
    let files = (0..6).map(file).inspect(|_| read.set(read.get() + 1));
    receiving::receive_each(&mut folder, &at("11-25T20:00"), files, |batch| {
        batches.push((batch.len(), read.get()));
        true
    })
    .expect("unlocked");
    assert_eq!(batches, [(4, 4), (2, 6)], "so many were taken in when so many were read");
}

#[test]
fn a_clinic_that_is_locked_between_two_batches_takes_in_no_more() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let (mut folder, files, each) = week_by_week(dir.path());
    let mut intake = Intake::default();
    files.iter().cloned().for_each(|(file, bytes)| _ = intake.add(file, bytes));
    let mut incoming = intake.finish();
    let first = receiving::take_in(&mut folder, &at("11-25T20:00"), &mut incoming).expect("unlocked");
    lock::lock(&mut folder);
    assert_eq!(receiving::take_in(&mut folder, &at("11-25T20:00"), &mut incoming), Err(Failure::ClinicLocked));
    drop(folder);
    let mut folder = unlocked(dir.path());
    assert_eq!(received_of(&folder).len(), MAX_BATCH / each);
    assert_eq!(incoming.len(), files.len() - first.len(), "the others are as they were");
    receiving::take_in(&mut folder, &at("11-25T20:00"), &mut incoming).expect("unlocked");
    assert!(incoming.is_empty());
    assert_eq!(received_of(&folder).len(), PATIENTS);
}

#[test]
fn within_a_batch_a_summary_that_came_twice_counts_once_and_each_knows_those_before_it() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let cards = two_patients(dir.path());
    let mut folder = unlocked(dir.path());
    let sealed = [("a", 0), ("b", 0), ("c", 1)].map(|(name, card)| summary(&dir.path().join(name), &cards[card]));
    let files = [&sealed[0], &sealed[0], &sealed[1], &sealed[2]].map(|sealed| ("s.age".to_owned(), Ok(sealed.clone())));
    let receipts = receiving::receive(&mut folder, &at("11-25T20:00"), files).expect("unlocked");
    let said: Vec<(&Outcome, usize)> = receipts.iter().map(|receipt| (&receipt.outcome, receipt.notices.len())).collect();
    let new = |code: &str| Outcome::New { code: code.into(), days: 1 };
    assert_eq!((said[0], said[1].0), ((&new("K17"), 0), &Outcome::Known { code: "K17".into() }));
    assert!(matches!(said[2], (Outcome::Filled { .. }, 1)), "another device, which is announced: {said:?}");
    assert_eq!(said[3], (&new("K18"), 0));
    drop(folder);
    let folder = unlocked(dir.path());
    assert_eq!(received_of(&folder), ["K17", "K18"]);
}

/// A folder as a clinic may have it, with `good` in it at three places.
#[cfg(unix)]
fn messy(dir: &Path, good: &[u8]) -> u32 {
    use std::os::unix::fs::symlink;
    let deep = (0..=MAX_DEPTH).fold(dir.to_owned(), |path, level| path.join(format!("level-{level}")));
    fs::create_dir_all(&deep).expect("folders");
    for path in [dir.join("a.age"), dir.join("level-0/B.AGE"), deep.join("too-deep.age"), dir.join("other.txt")] {
        fs::write(path, good).expect("written");
    }
    fs::File::create(dir.join("huge.age")).and_then(|file| file.set_len(1 << 40)).expect("a file with a hole");
    symlink(dir.join("level-0"), dir.join("level-0/level-1/again")).expect("a link");
    symlink(dir.join("level-0"), dir.join("folder.age")).expect("a link");
    symlink(dir.join("nowhere"), dir.join("broken.age")).expect("a link");
    symlink(dir.join("a.age"), dir.join("linked.age")).expect("a link");
    drop(std::os::unix::net::UnixListener::bind(dir.join("socket.age")).expect("a socket"));
    let pipe = std::process::Command::new("mkfifo").arg(dir.join("pipe.age")).status().expect("mkfifo is there");
    assert!(pipe.success());
    // The text, the folder below the last level, and the link to a folder.
    3
}

#[cfg(unix)]
#[test]
fn from_a_folder_what_can_be_read_is_received_and_each_other_thing_has_its_sentence() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let cards = two_patients(dir.path());
    let mut folder = unlocked(dir.path());
    let from = dir.path().join("from");
    fs::create_dir(&from).expect("a folder");
    let passed_over = messy(&from, &summary(&dir.path().join("a"), &cards[0]));
    let listing = Listing::of([from.as_path()], by_name).expect("not many");
    assert_eq!((listing.len(), listing.passed_over), (8, passed_over));
    let receipts = receiving::receive(&mut folder, &at("11-25T20:00"), listing.read()).expect("unlocked");
    let mut said: Vec<(&str, &Outcome)> = receipts.iter().map(|receipt| (receipt.file.as_str(), &receipt.outcome)).collect();
    said.sort_by_key(|(file, _)| *file);
    let refused = |failure| Outcome::Refused(failure);
    let unreadable = |file: &str| refused(Failure::FileUnreadable { file: file.into() });
    let known = Outcome::Known { code: "K17".into() };
    let too_big = Failure::FileTooBig { file: "from/huge.age".into(), most: actions::platform::MAX_SUMMARY };
    assert_eq!(
        said,
        [
            ("from/a.age", &Outcome::New { code: "K17".into(), days: 1 }),
            ("from/broken.age", &refused(Failure::FileMissing { file: "from/broken.age".into() })),
            ("from/folder.age", &unreadable("from/folder.age")),
            ("from/huge.age", &refused(too_big)),
            ("from/level-0/B.AGE", &known),
            ("from/linked.age", &known),
            ("from/pipe.age", &unreadable("from/pipe.age")),
            ("from/socket.age", &unreadable("from/socket.age")),
        ]
    );
}

#[test]
fn a_named_file_is_read_whatever_it_is_called_and_an_empty_folder_holds_nothing() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let odd = dir.path().join("no-ending");
    fs::write(&odd, b"no summary").expect("written");
    let empty = dir.path().join("empty");
    fs::create_dir(&empty).expect("a folder");
    let listing = Listing::of([odd.as_path(), empty.as_path(), &dir.path().join("gone.age")], by_name).expect("few");
    let read: Vec<File> = listing.read().collect();
    let gone = Err(Failure::FileMissing { file: "gone.age".into() });
    assert_eq!(read, [("no-ending".to_owned(), Ok(b"no summary".to_vec())), ("gone.age".to_owned(), gone)]);
}
