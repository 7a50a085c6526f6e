//! The clinic's window: the door, drafts, cards, files.

use crate::people::{PASSPHRASE, Patient, at, clinic, example, issue};
use actions::House;
use actions::clinic::{door, drafting, issuing, patients, receiving, reviewing};
use actions::patient::{sealing, taking};
use exercises::id::{ActivityId, ComplaintId, ItemId};
use exercises::plan::{Activity, Aftercare, Complaint, Side};
use wire::Failure;
use wire::clinic::{AddPatient, AskIssue, Outcome};
use wire::house::Door;
use wire::patient::{CardSource, SealAsk, TakeAsk};

#[test]
fn behind_a_locked_door_nothing_is_shown_or_done() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    drop(clinic(dir.path()));
    let mut house = House::open(&dir.path().join("clinic"), false).expect("the folder opens");
    assert_eq!(door::stands(&house), Ok(Door::Locked));
    let now = at("11-25T08:00");
    assert_eq!(patients::list(&house).err(), Some(Failure::ClinicLocked));
    assert_eq!(reviewing::page(&house, &now, "K17").err(), Some(Failure::ClinicLocked));
    assert_eq!(drafting::draft(&house, &now, "K17").err(), Some(Failure::ClinicLocked));
    assert_eq!(receiving::receive(&mut house, Vec::new()).err(), Some(Failure::ClinicLocked));
    assert_eq!(patients::add(&mut house, &AddPatient { code: "X1".into(), name: None }).err(), Some(Failure::ClinicLocked));
    let ask = AskIssue { code: "K17".into(), prescription: example() };
    assert_eq!(issuing::issue(&mut house, &now, &ask, Some(dir.path())).err(), Some(Failure::ClinicLocked));
    assert_eq!(door::unlock(&mut house, "seven grey herons".into()), Err(Failure::WrongPassphrase));
    assert_eq!(door::stands(&house), Ok(Door::Locked));
    door::unlock(&mut house, PASSPHRASE.into()).expect("the passphrase");
    assert_eq!(patients::list(&house).map(|all| all.len()), Ok(1));
}

#[test]
fn from_draft_to_draft_numbers_keep_their_meaning() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let mut house = clinic(dir.path());
    let first = drafting::draft(&house, &at("11-25T08:00"), "K17").expect("an empty one");
    assert_eq!((first.draft.prescription.items.len(), first.replaces), (0, None));
    let problems = drafting::problems(&house, &at("11-25T08:00"), "K17", &first.draft.prescription).expect("checked");
    assert!(problems.contains(&exercises::plan::check::Problem::NoItem), "{problems:?}");
    issue(&mut house, &at("11-25T08:00"), example(), &dir.path().join("one"));
    let second = drafting::draft(&house, &at("12-02T08:00"), "K17").expect("the last one carried over");
    assert_eq!((second.draft.prescription.items.len(), second.replaces), (3, Some(1)));
    let mut dropped = second.draft.prescription.clone();
    assert!(dropped.absent.is_empty(), "what speaks against balance is asked anew at each visit");
    dropped.absent = example().absent;
    dropped.items.remove(0);
    issue(&mut house, &at("12-02T08:00"), dropped, &dir.path().join("two"));
    let third = drafting::draft(&house, &at("12-09T08:00"), "K17").expect("the last one carried over");
    assert_eq!((third.replaces, third.start), (Some(2), second.start), "one plan through all revisions");
    let wall_sit = third.exercises.iter().find(|exercise| exercise.id.as_str() == "wall-sit").expect("shipped");
    let mut draft = third.draft;
    assert_eq!(draft.add(wall_sit), Some(ItemId(4)), "1 was dropped, and nothing else takes its number");
}

#[test]
fn a_refused_plan_uses_up_no_revision_and_writes_nothing() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let mut house = clinic(dir.path());
    let mut prescription = example();
    prescription.items[0].side = Side::Left;
    let ask = AskIssue { code: "K17".into(), prescription };
    let out = dir.path().join("card");
    assert!(matches!(issuing::issue(&mut house, &at("11-25T08:00"), &ask, Some(&out)), Err(Failure::PlanRefused(_))));
    assert!(!out.exists());
    let card = issuing::issue(&mut house, &at("11-25T08:00"), &AskIssue { prescription: example(), ..ask }, Some(&out))
        .expect("good");
    assert_eq!(card.plan.header.revision, 1);
}

/// Texts of that many letters that do not pack well.
fn scattered() -> impl FnMut(usize) -> String {
    let mut state: u32 = 1;
    move |length| {
        let letter = |_| {
            state = state.wrapping_mul(1_664_525).wrapping_add(1_013_904_223);
            char::from(b'a' + (state >> 24) as u8 % 26)
        };
        (0..length).map(letter).collect()
    }
}

#[test]
fn a_plan_too_large_for_a_code_leaves_no_older_code_beside_it() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let mut house = clinic(dir.path());
    let out = dir.path().join("card");
    issue(&mut house, &at("11-25T08:00"), example(), &out);
    assert!(out.join("card.png").exists() && out.join("card.svg").exists());
    let mut large = example();
    let mut text = scattered();
    large.items =
        (1..=12).map(|n| exercises::plan::Item { id: ItemId(n), note: text(40), ..large.items[0].clone() }).collect();
    let complaint = large.complaints[0].clone();
    large.complaints = (1..=5).map(|n| Complaint { id: ComplaintId(n), name: text(60), ..complaint.clone() }).collect();
    large.activities = (1..=5).map(|n| Activity { id: ActivityId(n), name: text(60), rating: Some(n) }).collect();
    large.aftercare = (0..8).map(|_| Aftercare::Own(text(120))).collect();
    let card =
        issuing::issue(&mut house, &at("11-26T08:00"), &AskIssue { code: "K17".into(), prescription: large }, Some(&out))
            .expect("good");
    assert_eq!((card.svg, card.version), (None, None), "{} characters are too many for a code", card.text.len());
    assert!(!out.join("card.png").exists() && !out.join("card.svg").exists(), "the code of another plan is gone");
    let mut patient = Patient::without_card();
    let ask = TakeAsk { source: CardSource::Text(card.text), agreed: Vec::new() };
    taking::take(&mut patient.house, &at("11-26T08:40"), &ask).expect("the text is enough");
}

#[test]
fn files_from_the_window_stand_each_for_itself() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let mut house = clinic(dir.path());
    let text = issue(&mut house, &at("11-25T08:00"), example(), &dir.path().join("card"));
    let mut patient = Patient::without_card();
    let ask = TakeAsk { source: CardSource::Text(text), agreed: Vec::new() };
    taking::take(&mut patient.house, &at("11-25T08:40"), &ask).expect("a good card");
    let plan = actions::patient::plans::one(&patient.house, None).expect("taken").plan().header.id;
    let seal = SealAsk { plan, from: None, until: at("11-25T20:00").now.date(), note: Some("  It went well.  ".into()) };
    let out = dir.path().join("x.age");
    sealing::seal(&mut patient.house, &at("11-25T20:00"), &seal, Some(&out)).expect("a day to hand over");
    let sealed = actions::outside::to_base64(&std::fs::read(&out).expect("written"));
    let files = receiving::from_window(&[
        ("a".into(), "?".into()),
        ("b".into(), sealed.clone()),
        ("c".into(), String::new()),
        ("d".into(), sealed),
    ]);
    let outcomes: Vec<Outcome> =
        receiving::receive(&mut house, files).expect("open").into_iter().map(|receipt| receipt.outcome).collect();
    assert!(matches!(outcomes[0], Outcome::Refused(_)), "{outcomes:?}");
    assert_eq!(outcomes[1], Outcome::New { code: "K17".into(), days: 1 });
    assert_eq!(outcomes[2], Outcome::Refused(Failure::SummaryForeign));
    assert_eq!(outcomes[3], Outcome::Known { code: "K17".into() });
}
