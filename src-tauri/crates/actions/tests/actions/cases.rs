//! A patient's case: closed, opened again, under another code or name, and the plans that were issued.

use crate::people::{at, example, issue};
use crate::receiving::{summary, two_patients, unlocked};
use crate::sealed_rows::{copy, database};
use actions::DataFolder;
use actions::clinic::{cases, issuing, patients, printing, receiving};
use exercises::closing::{CloseReason, MAX_CLOSINGS, MAX_WORDS};
use std::path::Path;
use wire::Failure;
use wire::cases::{CasePage, CloseRequest, RenameRequest};
use wire::clinic::{IssueRequest, StoreNotice};
use wire::receiving::{Outcome, ReceiptNotice};
use wire::visiting::{PrintRequest, Printed};

fn close(folder: &mut DataFolder, reason: CloseReason, words: &str) -> Result<CasePage, Failure> {
    cases::close(folder, &at("12-01T08:00"), &CloseRequest { code: "K17".into(), reason, words: words.into() })
}

fn issue_again(folder: &mut DataFolder, dir: &Path) -> Result<u16, Failure> {
    let request = IssueRequest { code: "K17".into(), prescription: example() };
    issuing::issue(folder, &at("12-02T08:00"), &request, Some(dir)).map(|card| card.plan.header.revision)
}

#[test]
fn a_closed_case_takes_no_card_until_it_is_opened_again_and_a_summary_all_the_same() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let cards = two_patients(dir.path());
    let mut folder = unlocked(dir.path());
    let closed_of = |folder: &DataFolder| {
        let list = patients::list(folder, &at("12-02T08:00")).expect("unlocked");
        list.lines.into_iter().find(|line| line.code == "K17").expect("in the list").closed
    };
    assert_eq!(closed_of(&folder), None);
    close(&mut folder, CloseReason::SentOn, " to a colleague ").expect("open");
    let day = at("12-01T08:00").now.date();
    assert_eq!(closed_of(&folder), Some((day, CloseReason::SentOn)));
    assert_eq!(close(&mut folder, CloseReason::Finished, ""), Err(Failure::CaseClosed { code: "K17".into() }));
    let out = dir.path().join("K17-2");
    assert_eq!(issue_again(&mut folder, &out), Err(Failure::CaseClosed { code: "K17".into() }));
    assert!(!out.exists(), "and nothing was written");
    let sealed = summary(&dir.path().join("a"), &cards[0]);
    let receipts = receiving::receive(&mut folder, &at("12-02T08:00"), [("a".to_owned(), Ok(sealed))]).expect("unlocked");
    assert!(matches!(receipts[0].outcome, Outcome::New { .. }), "{:?}", receipts[0]);
    assert_eq!(receipts[0].notices, [ReceiptNotice::CaseClosed { on: day }]);
    drop(folder);
    let mut folder = unlocked(dir.path());
    let page = cases::reopen(&mut folder, &at("12-02T08:00"), "k17").expect("closed");
    let [closing] = page.closings.as_slice() else { panic!("{page:?}") };
    assert_eq!((closing.words.as_str(), closing.reopened), ("to a colleague", Some(at("12-02T08:00").now.date())));
    assert_eq!(cases::reopen(&mut folder, &at("12-02T08:00"), "K17"), Err(Failure::CaseOpen { code: "K17".into() }));
    assert_eq!((closed_of(&folder), issue_again(&mut folder, &out)), (None, Ok(2)));
    assert_eq!(patients::notices(&folder), Ok(Vec::new()));
}

#[test]
fn why_a_case_is_closed_fits_on_a_line_and_other_says_it_in_words() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    two_patients(dir.path());
    let mut folder = unlocked(dir.path());
    assert_eq!(close(&mut folder, CloseReason::Other, "  "), Err(Failure::CaseWordsMissing));
    for words in ["x".repeat(MAX_WORDS + 1), "two\nlines".into(), "a\ttab".into(), "hidden\u{202e}".into()] {
        let refused = close(&mut folder, CloseReason::Other, &words);
        assert_eq!(refused, Err(Failure::TextUnfit { most: MAX_WORDS as u16 }), "{words:?}");
    }
    for n in 0..MAX_CLOSINGS {
        close(&mut folder, CloseReason::Other, &"ö".repeat(MAX_WORDS)).unwrap_or_else(|failure| panic!("{n}: {failure:?}"));
        cases::reopen(&mut folder, &at("12-02T08:00"), "K17").expect("closed");
    }
    let most = MAX_CLOSINGS as u8;
    assert_eq!(close(&mut folder, CloseReason::Finished, ""), Err(Failure::CaseClosedTooOften { most }));
}

#[test]
fn a_patient_under_another_code_keeps_plans_and_summaries() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let cards = two_patients(dir.path());
    let mut folder = unlocked(dir.path());
    let rename = |folder: &mut DataFolder, new_code: &str, name: Option<&str>| {
        let asked = RenameRequest { code: "K17".into(), new_code: new_code.into(), name: name.map(str::to_owned) };
        cases::rename(folder, &at("12-01T08:00"), &asked)
    };
    assert_eq!(rename(&mut folder, "k18", None), Err(Failure::CodeTaken { code: "k18".into() }));
    assert_eq!(rename(&mut folder, "K 19", None), Err(Failure::CodeBad));
    assert!(matches!(rename(&mut folder, "K19", Some("hidden\u{202e}")), Err(Failure::TextUnfit { .. })));
    let same = rename(&mut folder, "k17", Some("Ottoline Marsh")).expect("its own code in other letters");
    assert_eq!((same.code.as_str(), same.name.as_deref()), ("k17", Some("Ottoline Marsh")));
    let page = rename(&mut folder, " K19 ", Some(" ")).expect("free");
    assert_eq!((page.code.as_str(), page.name, page.plans.len()), ("K19", None, 1));
    assert_eq!(rename(&mut folder, "K20", None), Err(Failure::NoSuchPatient { code: "K17".into() }));
    let sealed = summary(&dir.path().join("a"), &cards[0]);
    let receipts = receiving::receive(&mut folder, &at("12-02T08:00"), [("a".to_owned(), Ok(sealed))]).expect("unlocked");
    assert!(matches!(&receipts[0].outcome, Outcome::New { code, .. } if code == "K19"), "{:?}", receipts[0]);
    drop(folder);
    assert_eq!(patients::notices(&unlocked(dir.path())), Ok(Vec::new()));
}

#[test]
fn plans_that_were_issued_are_shown_saved_and_printed_again() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    two_patients(dir.path());
    let mut folder = unlocked(dir.path());
    let mut second = example();
    second.items.pop();
    issue(&mut folder, &at("12-01T08:00"), second, &dir.path().join("K17-2"));
    let page = cases::page(&folder, &at("12-02T08:00"), "K17").expect("whole");
    let items: Vec<_> = page.plans.iter().map(|plan| (plan.header.revision, plan.prescription.items.len())).collect();
    assert_eq!(items, [(2, 2), (1, 3)]);
    assert_eq!(exercises::plan::differ::item_changes(&page.plans[1], &page.plans[0]).len(), 1);
    assert_eq!((page.held.plans, page.held.summaries, page.held.findings, page.held.draft), (2, 0, 0, false));
    let again = issuing::save_again(&mut folder, &at("12-02T08:00"), "K17", Some(1), Some(&dir.path().join("again")));
    assert_eq!(again.map(|card| card.plan), Ok(page.plans[1].clone()));
    let print = |folder: &mut DataFolder, revision| {
        let asked = PrintRequest { code: "K17".into(), what: Printed::HandOut, revision, letter: false };
        let out = dir.path().join("plan.pdf");
        printing::save(folder, &at("12-02T08:00"), &asked, Some(&out)).map(|_| std::fs::read(out).expect("written"))
    };
    let (newest, second, first) = (print(&mut folder, None), print(&mut folder, Some(2)), print(&mut folder, Some(1)));
    assert!(newest.is_ok() && newest == second && newest != first, "each is the revision's own");
    assert_eq!(print(&mut folder, Some(3)), Err(Failure::NoSuchRevision { code: "K17".into(), revision: 3 }));
}

#[test]
fn a_closing_that_is_removed_or_changed_from_outside_is_found() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    two_patients(dir.path());
    let mut folder = unlocked(dir.path());
    close(&mut folder, CloseReason::Finished, "").expect("open");
    patients::show(&mut folder, &at("12-02T08:00")).expect("unlocked");
    drop(folder);
    for sql in ["DELETE FROM patient_case", "UPDATE patient_case SET sealed = x'02'", "UPDATE patient_case SET patient = 2"]
    {
        let place = copy(dir.path(), sql);
        database(&place).execute_batch(sql).expect("allowed");
        let folder = unlocked(&place);
        let notices = patients::notices(&folder).expect("unlocked");
        assert!(
            matches!(notices.as_slice(), [StoreNotice::ChangedOutside { codes, .. }] if codes[0] == "K17"),
            "{sql}: {notices:?}"
        );
        let list = patients::list(&folder, &at("12-02T08:00")).expect("unlocked");
        assert_eq!(list.lines.iter().filter(|line| line.closed.is_some()).count(), 0, "{sql}");
    }
}
