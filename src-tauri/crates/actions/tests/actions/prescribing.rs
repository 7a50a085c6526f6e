//! The clinic's own exercises and sets: revisions, drafts, removal, and what patients' devices make of them.

use crate::people::{PASSPHRASE, Patient, at, card, clinic, example, issue};
use actions::clinic::{drafting, issuing, lock, own_drafts, own_exercises, patients, reviewing};
use actions::patient::{plans, taking, today};
use actions::{DataFolder, Moment};
use base64::Engine;
use exercises::authoring::{self, TextPart};
use exercises::catalogue::{Exercise, ExerciseId, Lang};
use exercises::file_fault::{ExerciseFault, FaultKind};
use exercises::id::ItemId;
use exercises::plan::check::Problem;
use exercises::plan::{Days, Item, Pattern, Prescription, Schedule};
use format::catalogue::{OWN_EXAMPLE, read_own};
use std::collections::BTreeMap;
use std::path::Path;
use wire::Failure;
use wire::clinic::{AddPatientRequest, Handover, IssueRequest};
use wire::patient::{CardSource, TakeCardRequest};
use wire::prescribing::{DraftNumber, ImportOwnRequest, OwnDraftRequest, OwnEdited};

const NAME: &str = "my-doorway-lean";

/// The example exercise in a revision, with what makes it differ from the others.
fn file(revision: u16) -> (String, Vec<u8>) {
    let text = OWN_EXAMPLE.replace("revision = 1", &format!("revision = {revision}"));
    ("mine.toml".into(), text.replace("Lean through a doorway", &format!("Doorway {revision}")).into_bytes())
}

fn add(folder: &mut DataFolder, revision: u16) -> ExerciseId {
    let added =
        own_exercises::add(folder, &[file(revision)]).expect("the store is open").unwrap_or_else(|f| panic!("{f:?}"));
    added[0].exercise.id.clone()
}

/// The faults of adding a revision.
fn refused(folder: &mut DataFolder, files: &[(String, Vec<u8>)]) -> Vec<FaultKind> {
    let faults = own_exercises::add(folder, files).expect("the store is open").err().expect("this must be refused");
    faults.into_iter().map(|fault| fault.fault.kind).collect()
}

/// The example's items and one of the own exercise, which a plan file names as its author does.
fn with_own() -> Prescription {
    with(NAME)
}

/// The example's items and one of the own exercise of this name.
fn with(name: &str) -> Prescription {
    let own = ExerciseId::new(name).expect("an id");
    let schedule = Schedule { days: Days::ALL, pattern: Pattern::At { times: vec![720] } };
    let dose = exercises::catalogue::Dose::Hold { repetitions: 3, hold_s: 20, rest_s: 20 };
    let mut prescription = example();
    prescription.items.push(Item::new(ItemId(4), own, dose, schedule));
    prescription
}

fn confirmed(prescription: Prescription, moment: &Moment) -> Prescription {
    Prescription { confirmed: Some(moment.now.date()), ..prescription }
}

fn card_of(folder: &mut DataFolder, moment: &Moment, dir: &Path, name: &str) -> CardSource {
    CardSource::Text(issue(folder, moment, confirmed(with_own(), moment), &dir.join(name)))
}

fn take(folder: &mut DataFolder, moment: &Moment, source: CardSource) -> Result<(), Failure> {
    taking::take(folder, moment, &TakeCardRequest { source, agreed: Vec::new() }).map(drop)
}

/// The names that the Now page shows for the own exercise.
fn shown(folder: &DataFolder, moment: &Moment) -> Vec<String> {
    let items = today::page(folder, moment).expect("followed").items;
    let own = items.into_iter().filter(|item| item.item.exercise.is_own());
    own.map(|item| item.exercise.text(Lang::En).expect("texts").name.clone()).collect()
}

fn revisions(folder: &DataFolder) -> Vec<u16> {
    own_exercises::list(folder).expect("open").lines.first().map(|line| line.revisions.clone()).unwrap_or_default()
}

#[test]
fn an_edit_is_a_new_revision_and_the_old_one_stays_while_a_card_has_it() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let mut folder = clinic(dir.path());
    add(&mut folder, 1);
    add(&mut folder, 2);
    assert_eq!(revisions(&folder), [2], "no card has the first");
    card_of(&mut folder, &at("11-25T08:00"), dir.path(), "one");
    add(&mut folder, 3);
    assert_eq!(revisions(&folder), [2, 3]);
    let line = own_exercises::find(&folder, NAME).expect("there");
    assert_eq!((line.exercise.revision, line.offered, line.patients.as_slice()), (3, true, &["K17".to_owned()][..]));
    patients::remove(&mut folder, "K17", "K17").expect("removed");
    assert_eq!(revisions(&folder), [3], "nor has any card the second any more");
}

#[test]
fn another_content_needs_a_higher_revision_than_any_that_the_clinic_or_a_card_has() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let mut folder = clinic(dir.path());
    add(&mut folder, 4);
    let other = |revision: u16| {
        let (name, bytes) = file(revision);
        (name, String::from_utf8(bytes).expect("text").replace("hold_s = 20", "hold_s = 25").into_bytes())
    };
    let old = |found, have| vec![FaultKind::Exercise(ExerciseFault::OldRevision { found, have })];
    assert_eq!(refused(&mut folder, &[other(4)]), old(4, 4));
    assert_eq!(refused(&mut folder, &[other(3)]), old(3, 4));
    card_of(&mut folder, &at("11-25T08:00"), dir.path(), "one");
    assert!(own_exercises::remove(&mut folder, NAME).expect("there").kept);
    assert_eq!(refused(&mut folder, &[other(4)]), old(4, 4), "a card has it");
    assert_eq!(refused(&mut folder, &[other(5), other(6)]).len(), 1, "two files with one id");
    assert!(own_exercises::add(&mut folder, &[other(5)]).expect("open").is_ok());
    assert_eq!(own_exercises::find(&folder, NAME).expect("there").revisions, [4, 5]);
}

#[test]
fn one_file_with_a_fault_keeps_all_of_them_out() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let mut folder = clinic(dir.path());
    let shipped = String::from_utf8(file(1).1).expect("text").replace(NAME, "wall-sit").into_bytes();
    let found = refused(&mut folder, &[file(1), ("other.toml".into(), shipped), ("cut.toml".into(), b"id = ".to_vec())]);
    assert_eq!(found[0], FaultKind::Exercise(ExerciseFault::ShippedId { id: "wall-sit".into() }));
    assert!(matches!(found[1], FaultKind::NotToml { .. }) && found.len() == 2, "{found:?}");
    assert!(own_exercises::list(&folder).expect("open").lines.is_empty());
}

#[test]
fn a_removed_exercise_is_offered_to_nobody_else_and_goes_with_the_last_card() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let mut folder = clinic(dir.path());
    let id = add(&mut folder, 1);
    assert!(!own_exercises::remove(&mut folder, id.as_str()).expect("there").kept, "no card has it");
    assert_eq!(own_exercises::remove(&mut folder, NAME), Err(Failure::NoSuchOwn { name: NAME.into() }));
    add(&mut folder, 1);
    card_of(&mut folder, &at("11-25T08:00"), dir.path(), "one");
    assert!(own_exercises::remove(&mut folder, NAME).expect("there").kept);
    patients::add(&mut folder, &at("11-25T08:00"), &AddPatientRequest { code: "K18".into(), name: None }).expect("new");
    let offered = |folder: &DataFolder, code: &str| {
        let draft = drafting::draft(folder, &at("12-02T08:00"), code).expect("a draft");
        draft.exercises.iter().any(|exercise| exercise.id == id)
    };
    assert!(!offered(&folder, "K18"));
    assert!(offered(&folder, "K17"), "whose plan has it goes on with it");
    let unknown = drafting::check(&folder, &at("11-25T08:00"), "K18", &with_own()).expect("checked").problems;
    assert_eq!(unknown, [Problem::UnknownExercise(ItemId(4), NAME.into())]);
    let page = reviewing::page(&folder, &at("12-02T08:00"), "K17").expect("a review");
    assert!(page.exercises.iter().any(|exercise| exercise.id == id), "reviews name it");
    add(&mut folder, 1);
    assert!(offered(&folder, "K18"), "added again, it is offered again");
    own_exercises::remove(&mut folder, NAME).expect("there");
    patients::remove(&mut folder, "K17", "K17").expect("removed");
    assert!(own_exercises::list(&folder).expect("open").lines.is_empty());
}

/// The example exercise, as somebody writes it anew.
fn written() -> Exercise {
    authoring::copy_of(&read_own("example.toml", OWN_EXAMPLE).expect("the example is good"))
}

#[test]
fn drafts_are_kept_as_they_are_until_they_are_saved_or_discarded() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let mut folder = clinic(dir.path());
    let keep = |folder: &mut DataFolder, draft, exercise: &Exercise| {
        own_drafts::keep(folder, OwnDraftRequest { draft, exercise: exercise.clone() }).expect("room").draft
    };
    let mut half = written();
    TextPart::Purpose.put(&mut half, Lang::En, "");
    TextPart::Name.put(&mut half, Lang::En, &"long ".repeat(20));
    TextPart::Steps.put(&mut half, Lang::Es, "Uno.\n\nDos.");
    let first = keep(&mut folder, None, &authoring::blank(Lang::Es));
    let second = keep(&mut folder, None, &authoring::blank(Lang::Es));
    assert_eq!(keep(&mut folder, Some(first), &half), first);
    lock::lock(&mut folder);
    lock::unlock(&mut folder, PASSPHRASE.into()).expect("the passphrase");
    assert!(patients::notices(&folder).expect("open").is_empty(), "nothing was changed from outside");
    let drafts = own_exercises::list(&folder).expect("open").drafts;
    assert_eq!(drafts.iter().map(|one| one.draft).collect::<Vec<_>>(), [first, second]);
    assert_eq!(
        drafts[0].exercise,
        Some(half.clone()),
        "with an empty text, one that is too long, and lists of different lengths"
    );
    assert_eq!(drafts[1].exercise, Some(authoring::blank(Lang::Es)));
    let wrong = OwnEdited { exercise: half, draft: Some(first) };
    assert!(matches!(own_exercises::save_edited(&mut folder, &wrong), Err(Failure::NotUnderstood { .. })));
    let saved = own_exercises::save_edited(&mut folder, &OwnEdited { exercise: written(), draft: Some(first) });
    let saved = saved.expect("a good one");
    assert_eq!((saved.lines.len(), saved.drafts.iter().map(|one| one.draft).collect::<Vec<_>>()), (1, vec![second]));
    let left = own_drafts::discard(&mut folder, &DraftNumber { draft: second }).expect("open");
    assert!(left.drafts.is_empty() && left.lines.len() == 1);
    let mut huge = written();
    TextPart::Steps.put(&mut huge, Lang::En, &"x".repeat(70_000));
    let huge = OwnDraftRequest { draft: None, exercise: huge };
    assert!(matches!(own_drafts::keep(&mut folder, huge), Err(Failure::NotUnderstood { .. })));
}

#[test]
fn what_is_written_gets_its_id_from_its_name_and_each_change_a_new_revision() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let mut folder = clinic(dir.path());
    let save = |folder: &mut DataFolder, exercise: &Exercise| {
        let edited = OwnEdited { exercise: exercise.clone(), draft: None };
        let lines = own_exercises::save_edited(folder, &edited).expect("a good one").lines;
        lines.into_iter().map(|line| (line.name, line.revisions)).collect::<BTreeMap<_, _>>()
    };
    let first = "lean-through-a-doorwa".to_owned();
    assert_eq!(save(&mut folder, &written()), BTreeMap::from([(first.clone(), vec![1])]));
    assert_eq!(save(&mut folder, &written()).len(), 2, "another one of the same name has another id");
    let edited = own_exercises::edit(&folder, &first).expect("there").exercise;
    assert_eq!(save(&mut folder, &edited)[&first], [1], "nothing was changed");
    let now = at("11-25T08:00");
    issue(&mut folder, &now, confirmed(with(&first), &now), &dir.path().join("one"));
    let mut changed = edited.clone();
    TextPart::Steps.put(&mut changed, Lang::En, " Lean. \n\nStay.\nStep back.\n");
    assert_eq!(save(&mut folder, &changed)[&first], [1, 2], "the card has the first");
    own_exercises::remove(&mut folder, &first).expect("there");
    let again = save(&mut folder, &written());
    assert_eq!(again.len(), 3, "what is on a card keeps its id: {again:?}");
}

#[test]
fn files_are_imported_all_of_them_or_none() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let mut folder = clinic(dir.path());
    let other = OWN_EXAMPLE.replacen("my-doorway-lean", "another-lean", 1);
    let file = |name: &str, text: &str| (name.to_owned(), text.to_owned());
    let bad = ImportOwnRequest { files: vec![file("a.toml", OWN_EXAMPLE), file("b.toml", "id = ")] };
    let refused = own_exercises::import(&mut folder, &bad);
    assert!(matches!(&refused, Err(Failure::NotUnderstood { file, .. }) if file == "b.toml"), "{refused:?}");
    assert!(own_exercises::list(&folder).expect("open").lines.is_empty());
    let good = ImportOwnRequest { files: vec![file("a.toml", OWN_EXAMPLE), file("b.toml", &other)] };
    assert_eq!(own_exercises::import(&mut folder, &good).expect("both").lines.len(), 2);
}

#[test]
fn a_card_with_an_own_exercise_says_before_that_it_goes_as_several_codes() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let mut folder = clinic(dir.path());
    add(&mut folder, 1);
    let check = |folder: &DataFolder, prescription: &Prescription| {
        let checked = drafting::check(folder, &at("11-25T08:00"), "K17", prescription).expect("checked");
        assert_eq!(checked.problems, []);
        checked.handover
    };
    let plain = check(&folder, &example());
    let request = |prescription| IssueRequest { code: "K17".into(), prescription };
    let card = issuing::issue(&mut folder, &at("11-25T08:00"), &request(example()), Some(&dir.path().join("one")));
    let version = card.expect("good").version.expect("a code");
    assert_eq!(plain, Some(Handover::Code { version }), "as it was issued then");
    assert_eq!(check(&folder, &confirmed(with_own(), &at("11-25T08:00"))), Some(Handover::Codes { n: 3 }));
    let card = issuing::issue(&mut folder, &at("11-25T08:00"), &request(with_own()), Some(&dir.path().join("two")));
    let card = card.expect("good");
    assert_eq!((card.svg, card.version, card.codes.len()), (None, None, 3));
    // Camera and files alike: one code after the other, in any order, until the last.
    let mut patient = Patient::without_card();
    let read = |place: usize| {
        let picture = std::fs::read(dir.path().join(format!("two/card-{place}.png"))).expect("written");
        let source = CardSource::File(base64::engine::general_purpose::STANDARD.encode(picture));
        taking::preview(&patient.folder, &taking::find(source).expect("a code"))
    };
    let part = |have, missing: &[u8]| Some(Failure::CardPart { have, of: 3, missing: missing.to_vec() });
    assert_eq!(read(3).err(), part(1, &[1, 2]));
    assert_eq!(read(3).err(), part(1, &[1, 2]), "a second time changes nothing");
    assert_eq!(read(1).err(), part(2, &[2]));
    let source = read(2).expect("all are read").source;
    assert_eq!(source, CardSource::Text(card.text));
    take(&mut patient.folder, &at("11-25T08:40"), source).expect("a good card");
    assert_eq!(shown(&patient.folder, &at("11-25T09:00")), ["Doorway 1"]);
}

#[test]
fn exercises_that_are_too_large_together_are_said_before_and_refused() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let mut folder = clinic(dir.path());
    let long = |n: usize| "x".repeat(n);
    let lines: Vec<String> = (0..8).map(|n| format!("\"{n}{}\"", long(270))).collect();
    let mut prescription = example();
    prescription.items.truncate(1);
    for n in 0..11 {
        let text = OWN_EXAMPLE.replace(NAME, &format!("large-{n}"));
        let rungs: String = (0..6).map(|rung| large_rung(rung, &lines.join(", "))).collect();
        let text = text.replace("\n# How it looks", &format!("{rungs}\n# How it looks"));
        own_exercises::add(&mut folder, &[("large.toml".into(), text.into_bytes())]).expect("open").expect("good");
        let item = Item {
            id: ItemId(n + 2),
            exercise: ExerciseId::new(format!("large-{n}")).expect("an id"),
            ..with_own().items[3].clone()
        };
        prescription.items.push(item);
    }
    let checked = drafting::check(&folder, &at("11-25T08:00"), "K17", &prescription).expect("checked");
    assert_eq!((checked.problems, checked.handover), (vec![], Some(Handover::TooLarge)));
    let request = IssueRequest { code: "K17".into(), prescription };
    let issued = issuing::issue(&mut folder, &at("11-25T08:00"), &request, Some(&dir.path().join("one")));
    assert_eq!(issued.err(), Some(Failure::PlanTooLarge));
}

/// A level with long steps in both languages.
fn large_rung(n: usize, lines: &str) -> String {
    let text = |lang| format!("[ladder.rung.text.{lang}]\nname = \"n\"\nchange = \"c\"\nsteps = [{lines}]\n");
    format!("[[ladder.rung]]\nid = \"large-{n}\"\n{}{}", text("en"), text("es"))
}

#[test]
fn the_patient_follows_the_newest_card_also_if_its_exercise_is_older() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let mut folder = clinic(dir.path());
    add(&mut folder, 1);
    let mut patient = Patient::without_card();
    let first = card_of(&mut folder, &at("11-25T08:00"), dir.path(), "one");
    take(&mut patient.folder, &at("11-25T08:40"), first).expect("a good card");
    assert_eq!(shown(&patient.folder, &at("11-25T09:00")), ["Doorway 1"]);
    drop(folder);
    copy(&dir.path().join("clinic"), &dir.path().join("put-back"));
    let mut folder = unlocked(&dir.path().join("clinic"));
    add(&mut folder, 2);
    let second = card_of(&mut folder, &at("11-26T08:00"), dir.path(), "two");
    assert!(taking::preview(&patient.folder, &second).expect("a later card").older.is_empty());
    take(&mut patient.folder, &at("11-26T08:40"), second).expect("a later card");
    assert_eq!(shown(&patient.folder, &at("11-26T09:00")), ["Doorway 2"], "new runs have the newer content");
    // The clinic's store was put back: it never heard of the second revision, neither of the plan nor of the exercise.
    let mut folder = unlocked(&dir.path().join("put-back"));
    card_of(&mut folder, &at("11-27T08:00"), dir.path(), "again two");
    let third = card_of(&mut folder, &at("11-27T08:10"), dir.path(), "three");
    let preview = taking::preview(&patient.folder, &third).expect("signed, and later");
    assert_eq!(preview.older.iter().map(ExerciseId::own_name).collect::<Vec<_>>(), [Some(NAME)], "the person is told");
    take(&mut patient.folder, &at("11-27T08:40"), third).expect("signed, and later");
    assert_eq!(shown(&patient.folder, &at("11-27T09:00")), ["Doorway 1"], "the newest card decides");
    let plan = plans::one(&patient.folder, None).expect("followed").plan().clone();
    assert_eq!((plan.header.revision, plan.prescription.items[3].content), (3, 1));
}

fn copy(from: &Path, to: &Path) {
    std::fs::create_dir_all(to).expect("a folder");
    std::fs::set_permissions(to, std::fs::metadata(from).expect("a folder").permissions()).expect("the test owns it");
    for entry in std::fs::read_dir(from).expect("a folder").flatten().filter(|entry| entry.path().is_file()) {
        std::fs::copy(entry.path(), to.join(entry.file_name())).expect("copied");
    }
}

fn unlocked(dir: &Path) -> DataFolder {
    let mut folder = DataFolder::open(dir, false).expect("a clinic");
    lock::unlock(&mut folder, PASSPHRASE.into()).expect("the passphrase");
    folder
}

#[test]
fn exercises_of_two_clinics_with_one_name_never_meet_on_a_device() {
    let dirs = [0; 2].map(|_| tempfile::tempdir().expect("a temporary folder"));
    let mut patient = Patient::without_card();
    let ids: Vec<ExerciseId> = (1..)
        .zip(&dirs)
        .map(|(revision, dir)| {
            let mut folder = clinic(dir.path());
            let id = add(&mut folder, revision);
            let card = card_of(&mut folder, &at("11-25T08:00"), dir.path(), "card");
            take(&mut patient.folder, &at("11-25T08:40"), card).expect("a good card");
            id
        })
        .collect();
    assert_ne!(ids[0], ids[1]);
    assert_eq!(ids.iter().map(|id| id.own_name()).collect::<Vec<_>>(), [Some(NAME); 2]);
    let mut names = shown(&patient.folder, &at("11-25T09:00"));
    names.sort();
    assert_eq!(names, ["Doorway 1", "Doorway 2"]);
}

#[test]
fn two_plans_of_one_clinic_may_have_two_revisions_of_an_exercise() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let mut folder = clinic(dir.path());
    let mut patient = Patient::without_card();
    add(&mut folder, 1);
    let first = card_of(&mut folder, &at("11-25T08:00"), dir.path(), "one");
    take(&mut patient.folder, &at("11-25T08:40"), first).expect("a good card");
    add(&mut folder, 2);
    patients::add(&mut folder, &at("11-25T08:00"), &AddPatientRequest { code: "K18".into(), name: None }).expect("new");
    let request = IssueRequest { code: "K18".into(), prescription: with_own() };
    let second = issuing::issue(&mut folder, &at("11-25T09:00"), &request, Some(&dir.path().join("two"))).expect("good");
    take(&mut patient.folder, &at("11-25T09:10"), CardSource::Text(second.text)).expect("another plan");
    let mut names = shown(&patient.folder, &at("11-25T09:20"));
    names.sort();
    assert_eq!(names, ["Doorway 1", "Doorway 2"], "each plan shows its own");
}

#[test]
fn a_card_whose_own_exercise_is_none_is_refused_and_changes_nothing() {
    let keys = vault::keys::for_now();
    let shipped = DataFolder::shipped_catalogue().expect("sound");
    let CardSource::Text(text) = card() else { unreachable!("it is text") };
    let card = format::card::open(&format::card::from_text(&text).expect("a card")).expect("a card");
    let card = vault::card::verify(card, None).expect("signed");
    let with = |own: &str| {
        let own = vault::card::of_clinic(&keys, card.plan.clone(), card.pairing_secret.clone(), vec![own.to_owned()]);
        vault::card::issue(&keys, &own).expect("well formed")
    };
    let example = OWN_EXAMPLE.replace(NAME, "own-abcdef-lean");
    assert!(taking::check(&[with(&example)], &shipped).is_ok());
    let wall_sit = OWN_EXAMPLE.replace(NAME, "wall-sit");
    let long = "x".repeat(40_000);
    for bad in
        ["", "id = \"own-abcdef-x\"", &wall_sit, OWN_EXAMPLE, &long, &example.replace("hold_s = 20", "hold_s = 20000")]
    {
        assert_eq!(taking::check(&[with(bad)], &shipped).err(), Some(Failure::CardOwnUnfit), "{bad:.60}");
    }
}

#[test]
fn texts_in_one_language_are_shown_to_everybody() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let mut folder = clinic(dir.path());
    let mut exercise: Exercise = format::catalogue::read_own("x", OWN_EXAMPLE).expect("the example");
    exercise.texts.remove(&Lang::En);
    exercise.ladders[0].rungs.iter_mut().for_each(|rung| drop(rung.texts.remove(&Lang::En)));
    let text = format::catalogue::write(&exercise).into_bytes();
    let added = own_exercises::add(&mut folder, &[("uno.toml".into(), text)]).expect("open").expect("no fault");
    assert_eq!((added[0].only, added[0].is_known), (Some(Lang::Es), false));
    let mut patient = Patient::without_card();
    let card = card_of(&mut folder, &at("11-25T08:00"), dir.path(), "card");
    take(&mut patient.folder, &at("11-25T08:40"), card).expect("a good card");
    assert_eq!(shown(&patient.folder, &at("11-25T09:00")), ["Inclinarse en una puerta"], "to who reads English too");
}
