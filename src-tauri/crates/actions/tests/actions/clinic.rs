//! The clinic's side: lock, drafts, cards, files.

use crate::people::{PASSPHRASE, Patient, at, clinic, example, issue};
use actions::DataFolder;
use actions::clinic::{drafting, issuing, lock, patients, receiving, reviewing};
use actions::patient::{sealing, taking};
use exercises::id::{ActivityId, ComplaintId, ItemId};
use exercises::plan::{Activity, Aftercare, Complaint, Side};
use exercises::score::Score;
use wire::Failure;
use wire::app::{LockState, Role};
use wire::clinic::{AddPatientRequest, IssueRequest};
use wire::patient::{CardSource, SealRequest, TakeCardRequest};
use wire::receiving::Outcome;

#[test]
fn while_locked_nothing_is_shown_or_done() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    drop(clinic(dir.path()));
    let mut folder = DataFolder::open(&dir.path().join("clinic"), false).expect("the folder opens");
    assert_eq!(lock::state(&folder), Ok(LockState::Locked { several: false }));
    let now = at("11-25T08:00");
    assert_eq!(patients::list(&folder, &at("12-02T08:00")).err(), Some(Failure::ClinicLocked));
    assert_eq!(reviewing::page(&folder, &now, "K17").err(), Some(Failure::ClinicLocked));
    assert_eq!(drafting::draft(&folder, &now, "K17").err(), Some(Failure::ClinicLocked));
    assert_eq!(receiving::receive(&mut folder, &now, Vec::new()).err(), Some(Failure::ClinicLocked));
    assert_eq!(
        patients::add(&mut folder, &at("11-25T08:00"), &AddPatientRequest { code: "X1".into(), name: None }).err(),
        Some(Failure::ClinicLocked)
    );
    let request = IssueRequest { code: "K17".into(), prescription: example() };
    assert_eq!(issuing::issue(&mut folder, &now, &request, Some(dir.path())).err(), Some(Failure::ClinicLocked));
    assert_eq!(lock::unlock(&mut folder, "seven grey herons".into()), Err(Failure::WrongPassphrase));
    assert_eq!(lock::state(&folder), Ok(LockState::Locked { several: false }));
    lock::unlock(&mut folder, PASSPHRASE.into()).expect("the passphrase");
    assert_eq!(patients::list(&folder, &at("12-02T08:00")).map(|all| all.lines.len()), Ok(1));
}

#[test]
fn a_folder_is_a_clinics_only_once_the_clinic_is_set_up() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let home = dir.path().join("new");
    let mut folder = DataFolder::open(&home, true).expect("a new folder");
    assert!(lock::start(&mut folder, "Linden Lane Practice", None, "short".into()).is_err());
    assert!(lock::start(&mut folder, "", None, PASSPHRASE.into()).is_err());
    assert_eq!(folder.role(), None, "a refusal leaves the side free");
    // As an earlier version left it: the side was chosen, but the clinic was not set up.
    folder.choose_role(Role::Clinic).expect("free to choose");
    drop(folder);
    let mut folder = DataFolder::open(&home, false).expect("the folder opens");
    assert_eq!(folder.app_state(&at("11-25T08:00")).map(|now| now.role), Ok(None));
    folder.choose_role(Role::Patient).expect("free to choose");
    drop(folder);
    let mut folder = DataFolder::open(&home, false).expect("the folder opens");
    assert_eq!(folder.role(), Some(Role::Patient));
    assert_eq!(lock::start(&mut folder, "Linden Lane Practice", None, PASSPHRASE.into()), Err(Failure::OtherRole));
}

fn on(month: u32, day: u32) -> Option<chrono::NaiveDate> {
    chrono::NaiveDate::from_ymd_opt(2026, month, day)
}

#[test]
fn from_draft_to_draft_numbers_keep_their_meaning() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let mut folder = clinic(dir.path());
    let first = drafting::draft(&folder, &at("11-25T08:00"), "K17").expect("an empty one");
    assert_eq!((first.draft.prescription.items.len(), first.replaces), (0, None));
    let problems = drafting::check(&folder, &at("11-25T08:00"), "K17", &first.draft.prescription).expect("checked").problems;
    assert!(problems.contains(&exercises::plan::check::Problem::NoItem), "{problems:?}");
    issue(&mut folder, &at("11-25T08:00"), example(), &dir.path().join("one"));
    let second = drafting::draft(&folder, &at("12-02T08:00"), "K17").expect("the last one carried over");
    assert_eq!((second.draft.prescription.items.len(), second.replaces), (3, Some(1)));
    let mut dropped = second.draft.prescription.clone();
    assert_eq!((&dropped.absent, dropped.confirmed), (&example().absent, on(11, 25)), "carried over, with its day");
    let not_confirmed = drafting::check(&folder, &at("12-02T08:00"), "K17", &dropped).expect("checked").problems;
    let earlier = on(11, 25).expect("a date");
    assert_eq!(not_confirmed, [exercises::plan::check::Problem::NotConfirmed(earlier)]);
    dropped.confirmed = on(12, 2);
    dropped.items.remove(0);
    issue(&mut folder, &at("12-02T08:00"), dropped, &dir.path().join("two"));
    let third = drafting::draft(&folder, &at("12-09T08:00"), "K17").expect("the last one carried over");
    assert_eq!((third.replaces, third.start), (Some(2), second.start), "one plan through all revisions");
    let wall_sit = third.exercises.iter().find(|exercise| exercise.id.as_str() == "wall-sit").expect("shipped");
    let mut draft = third.draft;
    assert_eq!(draft.add(wall_sit), Some(ItemId(4)), "1 was removed, and nothing else gets its number");
}

#[test]
fn a_refused_plan_uses_up_no_revision_and_writes_nothing() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let mut folder = clinic(dir.path());
    let mut prescription = example();
    prescription.items[0].side = Side::Left;
    let request = IssueRequest { code: "K17".into(), prescription };
    let out = dir.path().join("card");
    assert!(matches!(issuing::issue(&mut folder, &at("11-25T08:00"), &request, Some(&out)), Err(Failure::PlanRefused(_))));
    assert!(!out.exists());
    let card =
        issuing::issue(&mut folder, &at("11-25T08:00"), &IssueRequest { prescription: example(), ..request }, Some(&out))
            .expect("it is valid");
    assert_eq!(card.plan.header.revision, 1);
}

/// Texts of the given number of letters that hardly compress.
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
    let mut folder = clinic(dir.path());
    let out = dir.path().join("card");
    issue(&mut folder, &at("11-25T08:00"), example(), &out);
    assert!(out.join("card.png").exists() && out.join("card.svg").exists());
    let mut large = example();
    let mut text = scattered();
    large.items =
        (1..=12).map(|n| exercises::plan::Item { id: ItemId(n), note: text(40), ..large.items[0].clone() }).collect();
    let complaint = large.complaints[0].clone();
    large.complaints = (1..=5).map(|n| Complaint { id: ComplaintId(n), name: text(60), ..complaint.clone() }).collect();
    large.activities = (1..=5).map(|n| Activity { id: ActivityId(n), name: text(60), rating: Score::new(n) }).collect();
    large.aftercare = (0..8).map(|_| Aftercare::Own(text(120))).collect();
    let card = issuing::issue(
        &mut folder,
        &at("11-26T08:00"),
        &IssueRequest { code: "K17".into(), prescription: large },
        Some(&out),
    )
    .expect("it is valid");
    assert_eq!((card.svg, card.version), (None, None), "{} characters are too many for a code", card.text.len());
    assert!(!out.join("card.png").exists() && !out.join("card.svg").exists(), "the code of another plan is gone");
    let several = card.codes.len();
    assert!(several > 1 && out.join(format!("card-{several}.png")).exists(), "it goes as {several} codes");
    let mut patient = Patient::without_card();
    let request = TakeCardRequest { source: CardSource::Text(card.text), agreed: Vec::new() };
    taking::take(&mut patient.folder, &at("11-26T08:40"), &request).expect("the text is enough");
    let small = exercises::plan::Prescription { confirmed: on(11, 27), ..example() };
    issue(&mut folder, &at("11-27T08:00"), small, &out);
    let left = std::fs::read_dir(&out).expect("a folder").flatten().filter(|file| file.file_name() != "card.png");
    assert!(
        left.map(|file| file.path()).all(|path| path.extension().is_some_and(|ending| ending != "png")),
        "nor the other way"
    );
}

#[test]
fn a_plan_card_among_the_summaries_is_reported_as_a_plan_card() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let mut folder = clinic(dir.path());
    let card = dir.path().join("card");
    issue(&mut folder, &at("11-25T08:00"), example(), &card);
    for name in ["card.png", "card.txt", "card.bin"] {
        let bytes = std::fs::read(card.join(name)).expect("written");
        let receipts = receiving::receive(&mut folder, &at("11-25T20:00"), vec![(name.into(), Ok(bytes))]).expect("open");
        let outcomes: Vec<Outcome> = receipts.into_iter().map(|receipt| receipt.outcome).collect();
        assert_eq!(outcomes, [Outcome::Refused(Failure::PlanCardNotSummary)], "{name}");
    }
}

#[test]
fn each_file_from_the_window_is_handled_separately() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let mut folder = clinic(dir.path());
    let text = issue(&mut folder, &at("11-25T08:00"), example(), &dir.path().join("card"));
    let mut patient = Patient::without_card();
    let request = TakeCardRequest { source: CardSource::Text(text), agreed: Vec::new() };
    taking::take(&mut patient.folder, &at("11-25T08:40"), &request).expect("a valid card");
    let plan = actions::patient::plans::one(&patient.folder, None).expect("taken").plan().header.id;
    let seal = SealRequest { plan, from: None, until: at("11-25T20:00").now.date(), note: Some("  It went well.  ".into()) };
    let out = dir.path().join("x.age");
    sealing::seal(&mut patient.folder, &at("11-25T20:00"), &seal, Some(&out)).expect("a day to hand over");
    let sealed = actions::platform::to_base64(&std::fs::read(&out).expect("written"));
    let files = receiving::from_window([
        ("a".into(), "?".into()),
        ("b".into(), sealed.clone()),
        ("c".into(), String::new()),
        ("d".into(), sealed),
    ]);
    let outcomes: Vec<Outcome> = receiving::receive(&mut folder, &at("11-25T20:00"), files)
        .expect("open")
        .into_iter()
        .map(|receipt| receipt.outcome)
        .collect();
    assert!(matches!(outcomes[0], Outcome::Refused(_)), "{outcomes:?}");
    assert_eq!(outcomes[1], Outcome::New { code: "K17".into(), days: 1 });
    assert_eq!(outcomes[2], Outcome::Refused(Failure::SummaryForeign));
    assert_eq!(outcomes[3], Outcome::Known { code: "K17".into() });
}
