//! The plan that is being composed: kept sealed, resumed, discarded, done with.

use crate::people::{PASSPHRASE, at, clinic, example, issue};
use actions::DataFolder;
use actions::clinic::{drafting, lock};
use chrono::NaiveDate;
use exercises::draft::{TypedField, Unread};
use exercises::id::ItemId;
use exercises::plan::{Plan, StanceBaseline};
use wire::Failure;
use wire::clinic::{AskKeep, PlanDraft};

fn on(month: u32, day: u32) -> Option<NaiveDate> {
    NaiveDate::from_ymd_opt(2026, month, day)
}

/// What the window asks after a change: the draft with another plan.
fn keeping(draft: &PlanDraft, plan: Plan) -> AskKeep {
    let PlanDraft { used, unread, .. } = draft.clone();
    AskKeep { code: "K17".into(), plan, used, unread }
}

/// K17's first plan, with the example's items in it and a list of times that cannot be read.
fn compose(folder: &mut DataFolder, moment: &str) -> AskKeep {
    let draft = drafting::draft(folder, &at(moment), "K17").expect("an empty one");
    assert_eq!((draft.plan.items.len(), draft.left_on), (0, None), "nobody was composing it");
    let mut request = keeping(&draft, Plan { revision: draft.plan.revision, review: draft.plan.review, ..example() });
    request.unread.put(TypedField::Times(ItemId(2)), Some("8am 7pn"));
    drafting::keep(folder, &at(moment), request.clone()).expect("kept");
    request
}

#[test]
fn what_was_left_is_resumed_after_the_program_was_closed() {
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
    assert_eq!((&again.plan.items, &again.plan.complaints), (&left.plan.items, &left.plan.complaints));
    assert_eq!((&again.plan.absent, &again.plan.baselines), (&left.plan.absent, &left.plan.baselines));
    assert_eq!(again.unread.get(TypedField::Times(ItemId(2))), Some("8am 7pn"));
    assert_eq!(again.plan.clinic, "Linden Lane Practice");
}

#[test]
fn a_draft_lies_sealed_in_the_folder() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let mut folder = clinic(dir.path());
    let left = compose(&mut folder, "11-25T08:00");
    let name = left.plan.complaints[0].name.as_bytes().to_vec();
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
            assert!(!holds(&name) && !holds(b"8am 7pn"), "{} holds the draft in plain", path.display());
        }
    }
}

#[test]
fn on_a_later_day_the_visits_own_questions_come_anew() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let mut folder = clinic(dir.path());
    let left = compose(&mut folder, "11-25T08:00");
    assert!(!left.plan.absent.is_empty() && !left.plan.baselines.is_empty(), "the example balances");
    let again = drafting::draft(&folder, &at("11-27T08:00"), "K17").expect("the one that was left");
    assert_eq!((again.left_on, again.plan.issued), (on(11, 25), on(11, 27).expect("a date")));
    assert!(again.plan.absent.is_empty());
    let earlier = |baseline: &StanceBaseline| baseline.taken.is_none_or(|taken| taken < again.plan.issued);
    assert!(!again.plan.baselines.is_empty() && again.plan.baselines.iter().all(earlier));
    assert_eq!(again.plan.items, left.plan.items);
}

#[test]
fn an_issued_card_ends_its_draft_and_none_comes_back_later() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let mut folder = clinic(dir.path());
    let late = compose(&mut folder, "11-25T08:00");
    issue(&mut folder, &at("11-25T09:00"), example(), &dir.path().join("card"));
    drafting::keep(&mut folder, &at("11-25T09:00"), late).expect("nothing to keep");
    let next = drafting::draft(&folder, &at("11-25T09:01"), "K17").expect("the issued plan carried over");
    assert_eq!((next.left_on, next.plan.revision, next.unread), (None, 2, Unread::default()));
}

#[test]
fn a_discarded_draft_leaves_the_last_card_as_the_start() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let mut folder = clinic(dir.path());
    issue(&mut folder, &at("11-25T08:00"), example(), &dir.path().join("card"));
    let now = at("12-02T08:00");
    let next = drafting::draft(&folder, &now, "K17").expect("carried over");
    let mut changed = next.plan.clone();
    changed.items.remove(0);
    drafting::keep(&mut folder, &now, keeping(&next, changed.clone())).expect("kept");
    assert_eq!(drafting::draft(&folder, &now, "K17").map(|draft| draft.plan.items), Ok(changed.items));
    let anew = drafting::discard(&mut folder, &now, "K17").expect("begun anew");
    assert_eq!(anew, next);
    assert_eq!(drafting::draft(&folder, &now, "K17"), Ok(next));
}

#[test]
fn a_refused_card_keeps_its_draft() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let mut folder = clinic(dir.path());
    let left = compose(&mut folder, "11-25T08:00");
    let mut plan = left.plan;
    plan.items.clear();
    let request = wire::clinic::IssueRequest { code: "K17".into(), plan };
    let refused = actions::clinic::issuing::issue(&mut folder, &at("11-25T08:10"), &request, Some(&dir.path().join("card")));
    assert!(matches!(refused, Err(Failure::PlanRefused(_))));
    assert_eq!(drafting::draft(&folder, &at("11-25T08:11"), "K17").map(|draft| draft.left_on), Ok(on(11, 25)));
}
