//! Drafts of a plan: stored encrypted, resumed, discarded, and deleted when the card is issued.

use crate::people::{PASSPHRASE, at, clinic, example, issue};
use actions::DataFolder;
use actions::clinic::{drafting, issuing, lock, patients};
use chrono::NaiveDate;
use exercises::catalogue::{Equipment, PrescriberFlag};
use exercises::draft::{Draft, PatientFacts, TypedField, Unread};
use exercises::id::ItemId;
use exercises::plan::check::Problem;
use exercises::plan::{Prescription, StanceBaseline};
use std::collections::BTreeSet;
use wire::Failure;
use wire::clinic::{AddPatientRequest, AskKeep, IssueRequest, PlanDraft};

fn on(month: u32, day: u32) -> Option<NaiveDate> {
    NaiveDate::from_ymd_opt(2026, month, day)
}

/// The window's request after a change: the draft with another prescription.
fn keeping(open: &PlanDraft, prescription: Prescription) -> AskKeep {
    let PlanDraft { draft, replaces, unread, facts, .. } = open.clone();
    AskKeep { code: "K17".into(), draft: Draft { prescription, ..draft }, replaces, unread, facts }
}

/// The first draft for patient K17, with the example's items and a list of times that cannot be read.
fn compose(folder: &mut DataFolder, moment: &str) -> AskKeep {
    let draft = drafting::draft(folder, &at(moment), "K17").expect("an empty one");
    assert_eq!((draft.draft.prescription.items.len(), draft.left_on), (0, None), "nobody was composing it");
    let mut request = keeping(&draft, Prescription { review: draft.draft.prescription.review, ..example() });
    request.unread.put(TypedField::Times(ItemId(2)), Some("8am 7pn"));
    drafting::keep(folder, &at(moment), request.clone()).expect("kept");
    request
}

#[test]
fn a_draft_is_resumed_after_the_program_was_closed() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let mut folder = clinic(dir.path());
    let left = compose(&mut folder, "11-25T08:00");
    drop(folder);
    let mut folder = DataFolder::open(&dir.path().join("clinic"), false).expect("the folder opens");
    let now = at("11-25T10:00");
    assert_eq!(drafting::draft(&folder, &now, "K17").err(), Some(Failure::ClinicLocked));
    assert_eq!(drafting::keep(&mut folder, &now, left.clone()), Err(Failure::ClinicLocked));
    assert_eq!(drafting::discard(&mut folder, &now, "K17").err(), Some(Failure::ClinicLocked));
    lock::unlock(&mut folder, PASSPHRASE.into()).expect("the passphrase");
    let again = drafting::draft(&folder, &now, "K17").expect("the one that was left");
    assert_eq!(again.left_on, on(11, 25));
    assert_eq!(again.draft.prescription, left.draft.prescription);
    assert_eq!(again.unread.get(TypedField::Times(ItemId(2))), Some("8am 7pn"));
}

#[test]
fn a_draft_is_stored_encrypted() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let mut folder = clinic(dir.path());
    let left = compose(&mut folder, "11-25T08:00");
    let name = left.draft.prescription.complaints[0].name.as_bytes().to_vec();
    assert_eq!(
        drafting::draft(&folder, &at("11-25T08:00"), "K17").map(|draft| draft.left_on),
        Ok(on(11, 25)),
        "it is there"
    );
    drop(folder);
    for file in std::fs::read_dir(dir.path().join("clinic")).expect("the folder") {
        let path = file.expect("a file").path();
        if path.is_file() {
            let bytes = std::fs::read(&path).expect("readable");
            let holds = |what: &[u8]| bytes.windows(what.len()).any(|part| part == what);
            assert!(!holds(&name) && !holds(b"8am 7pn"), "{} contains the draft unencrypted", path.display());
        }
    }
}

#[test]
fn on_a_later_day_the_questions_of_the_visit_are_asked_again() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let mut folder = clinic(dir.path());
    let left = compose(&mut folder, "11-25T08:00");
    assert!(
        !left.draft.prescription.absent.is_empty() && !left.draft.prescription.baselines.is_empty(),
        "the example balances"
    );
    let again = drafting::draft(&folder, &at("11-27T08:00"), "K17").expect("the one that was left");
    assert_eq!((again.left_on, again.draft.today), (on(11, 25), on(11, 27).expect("a date")));
    let prescription = &again.draft.prescription;
    assert_eq!((prescription.absent.is_empty(), prescription.confirmed), (false, on(11, 25)));
    let earlier = |baseline: &StanceBaseline| baseline.taken.is_none_or(|taken| taken < again.draft.today);
    assert!(!prescription.baselines.is_empty() && prescription.baselines.iter().all(earlier));
    assert_eq!(prescription.items, left.draft.prescription.items);
}

#[test]
fn an_issued_card_deletes_its_draft_for_good() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let mut folder = clinic(dir.path());
    let late = compose(&mut folder, "11-25T08:00");
    issue(&mut folder, &at("11-25T09:00"), example(), &dir.path().join("card"));
    drafting::keep(&mut folder, &at("11-25T09:00"), late).expect("nothing to keep");
    let next = drafting::draft(&folder, &at("11-25T09:01"), "K17").expect("the issued plan carried over");
    assert_eq!((next.left_on, next.replaces, next.unread), (None, Some(1), Unread::default()));
}

#[test]
fn a_discarded_draft_leaves_the_last_card_as_the_start() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let mut folder = clinic(dir.path());
    issue(&mut folder, &at("11-25T08:00"), example(), &dir.path().join("card"));
    let now = at("12-02T08:00");
    let next = drafting::draft(&folder, &now, "K17").expect("carried over");
    let mut changed = next.draft.prescription.clone();
    changed.items.remove(0);
    drafting::keep(&mut folder, &now, keeping(&next, changed.clone())).expect("kept");
    assert_eq!(drafting::draft(&folder, &now, "K17").map(|draft| draft.draft.prescription.items), Ok(changed.items));
    let anew = drafting::discard(&mut folder, &now, "K17").expect("begun again");
    assert_eq!(anew, next);
    assert_eq!(drafting::draft(&folder, &now, "K17"), Ok(next));
}

#[test]
fn a_refused_card_keeps_its_draft() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let mut folder = clinic(dir.path());
    let left = compose(&mut folder, "11-25T08:00");
    let mut prescription = left.draft.prescription;
    prescription.items.clear();
    let request = wire::clinic::IssueRequest { code: "K17".into(), prescription };
    let refused = actions::clinic::issuing::issue(&mut folder, &at("11-25T08:10"), &request, Some(&dir.path().join("card")));
    assert!(matches!(refused, Err(Failure::PlanRefused(_))));
    assert_eq!(drafting::draft(&folder, &at("11-25T08:11"), "K17").map(|draft| draft.left_on), Ok(on(11, 25)));
}

#[test]
fn absent_risks_are_carried_over_with_their_day_and_a_card_needs_them_confirmed_on_its_own_day() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let mut folder = clinic(dir.path());
    issue(&mut folder, &at("11-25T08:00"), example(), &dir.path().join("one"));
    let now = at("12-02T08:00");
    let carried = drafting::draft(&folder, &now, "K17").expect("carried over").draft.prescription;
    assert_eq!((&carried.absent, carried.confirmed), (&example().absent, on(11, 25)));
    assert!(!carried.absent.is_empty(), "the example balances");
    let out = dir.path().join("two");
    let mut issue_with = |confirmed: Option<NaiveDate>| {
        let request = IssueRequest { code: "K17".into(), prescription: Prescription { confirmed, ..carried.clone() } };
        issuing::issue(&mut folder, &now, &request, Some(&out)).map(|card| card.plan)
    };
    for day in [on(11, 25), on(12, 1), on(12, 3)] {
        let refused = Failure::PlanRefused(day.map(Problem::NotConfirmed).into_iter().collect());
        assert_eq!(issue_with(day), Err(refused), "{day:?}");
    }
    assert!(!out.exists());
    let issued = issue_with(on(12, 2)).expect("confirmed today");
    assert_eq!((issued.header.revision, issued.prescription.absent), (2, example().absent));
    let next = drafting::draft(&folder, &at("12-09T08:00"), "K17").expect("carried over").draft.prescription;
    assert_eq!(next.confirmed, on(12, 2));
}

#[test]
fn a_draft_left_on_an_earlier_day_is_not_issued_before_the_absent_risks_are_confirmed_again() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let mut folder = clinic(dir.path());
    compose(&mut folder, "11-25T08:00");
    let now = at("11-27T08:00");
    let resumed = drafting::draft(&folder, &now, "K17").expect("the one that was left").draft.prescription;
    let request = |prescription| IssueRequest { code: "K17".into(), prescription };
    let out = dir.path().join("card");
    let refused = issuing::issue(&mut folder, &now, &request(resumed.clone()), Some(&out)).map(|card| card.plan);
    let not_confirmed = on(11, 25).map(Problem::NotConfirmed).into_iter().collect();
    assert_eq!(refused, Err(Failure::PlanRefused(not_confirmed)));
    let confirmed = Prescription { confirmed: on(11, 27), ..resumed };
    assert!(issuing::issue(&mut folder, &now, &request(confirmed), Some(&out)).is_ok());
}

/// What the window sends after a tick.
fn ticking(open: &PlanDraft, flag: PrescriberFlag) -> AskKeep {
    let mut asked = keeping(open, open.draft.prescription.clone());
    asked.facts.put_flag(flag, true);
    asked
}

#[test]
fn what_is_ticked_for_a_patient_is_carried_from_visit_to_visit_and_is_on_no_card() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let mut folder = clinic(dir.path());
    let now = at("11-25T08:00");
    let first = drafting::draft(&folder, &now, "K17").expect("an empty one");
    assert!(first.facts.is_empty());
    let asked = ticking(&first, PrescriberFlag::Osteoporosis);
    drafting::keep(&mut folder, &now, asked.clone()).expect("kept");
    issue(&mut folder, &now, example(), &dir.path().join("card"));
    let card = std::fs::read(dir.path().join("card/card.bin")).expect("its bytes");
    drop(folder);
    let mut folder = DataFolder::open(&dir.path().join("clinic"), false).expect("the folder opens");
    lock::unlock(&mut folder, PASSPHRASE.into()).expect("the passphrase");
    let later = at("12-02T08:00");
    let next = drafting::draft(&folder, &later, "K17").expect("carried over");
    assert_eq!(next.facts, asked.facts);
    // A card that is made without the tick is the same.
    let plan = format::card::open(&card).expect("a card").into_card_after_checking_the_signature().plan;
    assert_eq!(plan.prescription.items.len(), example().items.len());
    assert!(!card.windows(12).any(|part| part == b"osteoporosis"));
    // A change that comes after the card was issued is not lost with its draft.
    let late = ticking(&first, PrescriberFlag::Pregnancy);
    drafting::keep(&mut folder, &later, late.clone()).expect("nothing but what was ticked is kept");
    let again = drafting::draft(&folder, &later, "K17").expect("carried over");
    assert_eq!((again.left_on, again.facts), (None, late.facts));
    let again = drafting::discard(&mut folder, &later, "K17").expect("begun anew");
    assert!(again.facts.flags.contains(&PrescriberFlag::Pregnancy), "it belongs to the patient, not to the draft");
}

#[test]
fn what_is_ticked_lies_sealed_beside_the_name() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let mut folder = clinic(dir.path());
    let named = AddPatientRequest { code: "N5".into(), name: Some("Wilhelmina Underhill".into()) };
    patients::add(&mut folder, &at("11-25T08:00"), &named).expect("a new code");
    let mut facts = PatientFacts::default();
    facts.put_flag(PrescriberFlag::BloodThinners, true);
    facts.put_lack(Equipment::Mat, true);
    drafting::put_facts(&mut folder, "N5", &facts).expect("kept");
    assert_eq!(drafting::facts(&folder, "N5"), Ok(facts));
    let list = patients::list(&folder, &at("11-25T08:00")).expect("two");
    let name = |code: &str| list.lines.iter().find(|line| line.code == code).and_then(|line| line.name.clone());
    assert_eq!(name("N5").as_deref(), Some("Wilhelmina Underhill"));
    drafting::put_facts(&mut folder, "N5", &PatientFacts::default()).expect("kept");
    assert_eq!(drafting::facts(&folder, "N5"), Ok(PatientFacts::default()));
    assert!(list.notices.is_empty(), "the manifest knows the row");
}

#[test]
fn what_was_prescribed_is_counted_by_patients_and_not_by_cards() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let mut folder = clinic(dir.path());
    assert_eq!(drafting::draft(&folder, &at("11-25T08:00"), "K17").expect("an empty one").prescribed, []);
    for (day, card) in [("11-25T08:00", "card"), ("11-26T08:00", "card2")] {
        let prescription = Prescription { confirmed: None, ..example() };
        issue(&mut folder, &at(day), prescription, &dir.path().join(card));
    }
    let counted = drafting::draft(&folder, &at("11-27T08:00"), "K17").expect("carried over").prescribed;
    let exercises: BTreeSet<_> = example().items.into_iter().map(|item| item.exercise).collect();
    assert!(counted.iter().map(|(id, _)| id).eq(&exercises) && counted.iter().all(|(_, n)| *n == 1), "{counted:?}");
}
