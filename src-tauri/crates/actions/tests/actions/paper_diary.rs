//! A diary on paper that is entered at the clinic.

use crate::people::{at, clinic, example, issue};
use crate::receiving::{receive, summary};
use actions::DataFolder;
use actions::clinic::{devices, paper_diary, reviewing};
use chrono::{Duration, NaiveDate};
use exercises::id::{ComplaintId, ItemId, LogId};
use exercises::score::Score;
use exercises::summary::PaperDay;
use tempfile::TempDir;
use wire::Failure;
use wire::receiving::Outcome;
use wire::visiting::{DiaryPage, DiaryRequest};

const VISIT: &str = "12-09T09:00";

fn day(number: i64) -> NaiveDate {
    at("11-25T08:00").now.date() + Duration::days(number)
}

fn paper(number: i64, sessions: u8, pain: u8) -> PaperDay {
    PaperDay {
        day: day(number),
        done: vec![(ItemId(1), sessions)],
        mornings: vec![(ComplaintId(1), Score::at_most_ten(pain))],
    }
}

fn prescribed() -> (TempDir, DataFolder, String) {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let mut folder = clinic(dir.path());
    let card = issue(&mut folder, &at("11-25T08:00"), example(), &dir.path().join("card"));
    (dir, folder, card)
}

fn enter(folder: &mut DataFolder, days: Vec<PaperDay>) -> Result<DiaryPage, Failure> {
    paper_diary::enter(folder, &at(VISIT), &DiaryRequest { code: "K17".into(), days })
}

/// Sessions of the first exercise done in full, and owed.
fn kept(folder: &DataFolder) -> (u32, u32) {
    let page = reviewing::page(folder, &at(VISIT), "K17").expect("the patient");
    let review = page.review.expect("a review");
    let kept = review.adherence.iter().find(|one| one.item == ItemId(1)).and_then(|one| one.kept).expect("owed");
    (kept.k, kept.n)
}

#[test]
fn days_are_entered_entered_again_and_taken_out_and_the_review_follows() {
    let (_dir, mut folder, _) = prescribed();
    let page = paper_diary::page(&folder, &at(VISIT), "K17").expect("a plan");
    assert_eq!((page.days.len(), page.days[0].day, page.days[14].day), (15, day(0), day(14)));
    let due = page.days[1].due.iter().find(|(item, _)| *item == ItemId(1)).expect("of the plan").1;
    assert!(due > 2 && page.days.iter().all(|line| line.entered.is_none()));
    let page = enter(&mut folder, (1..=6).map(|number| paper(number, due, 5)).collect()).expect("days of the plan");
    assert_eq!(page.days[1].entered, Some(paper(1, due, 5)));
    let (k, n) = kept(&folder);
    assert!(k == n && n > 0, "{k} of {n}");
    enter(&mut folder, vec![paper(2, 0, 5)]).expect("again");
    assert_eq!(kept(&folder), (n - u32::from(due), n));
    let empty = PaperDay { day: day(2), done: Vec::new(), mornings: Vec::new() };
    let page = enter(&mut folder, vec![empty]).expect("taken out");
    assert_eq!(page.days[2].entered, None);
    let known = devices::list(&folder, "K17").expect("the patient");
    assert_eq!(known.iter().map(|line| (line.device, line.summaries)).collect::<Vec<_>>(), [(LogId::PAPER, 3)]);
}

#[test]
fn a_diary_and_a_device_count_together_and_each_can_be_left_out() {
    let (_dir, mut folder, card) = prescribed();
    let patient = tempfile::tempdir().expect("a temporary folder");
    let brought = summary(&patient.path().join("patient"), &card);
    assert!(matches!(receive(&mut folder, &brought), Outcome::New { .. }));
    let before = reviewing::page(&folder, &at(VISIT), "K17").expect("the patient").review.expect("a review").logs;
    enter(&mut folder, vec![paper(1, 3, 4)]).expect("a day");
    let both = reviewing::page(&folder, &at(VISIT), "K17").expect("the patient");
    assert_eq!(both.review.expect("a review").logs, before + 1);
    devices::leave_out(&mut folder, "K17", LogId::PAPER, true).expect("it is known");
    let one = reviewing::page(&folder, &at(VISIT), "K17").expect("the patient");
    assert_eq!(one.review.expect("a review").logs, before);
}

#[test]
fn what_does_not_fit_is_refused_and_nothing_is_stored() {
    let (_dir, mut folder, _) = prescribed();
    for wrong in [day(-1), day(15)] {
        let of = PaperDay { day: wrong, ..paper(1, 1, 1) };
        assert_eq!(enter(&mut folder, vec![paper(1, 1, 1), of]).err(), Some(Failure::DiaryDay { day: wrong }));
    }
    let unknown = PaperDay { done: vec![(ItemId(99), 1)], ..paper(1, 1, 1) };
    assert_eq!(enter(&mut folder, vec![unknown]).err(), Some(Failure::DiaryNumber { day: day(1), most: 99 }));
    let many = PaperDay { done: vec![(ItemId(1), 100)], ..paper(1, 1, 1) };
    assert_eq!(enter(&mut folder, vec![many]).err(), Some(Failure::DiaryNumber { day: day(1), most: 99 }));
    enter(&mut folder, Vec::new()).expect("nothing to do");
    assert!(devices::list(&folder, "K17").expect("the patient").is_empty(), "nothing was stored");
}

#[test]
fn a_patient_without_a_plan_has_no_diary() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let folder = clinic(dir.path());
    let got = paper_diary::page(&folder, &at(VISIT), "K17");
    assert_eq!(got.err(), Some(Failure::NoCardIssued { code: "K17".into() }));
}

#[test]
fn a_file_of_days_is_read_and_its_faults_are_named_with_their_line() {
    let text = format::diary_file::example(day(1));
    let days = paper_diary::read("diary.toml", text.as_bytes()).expect("the example");
    assert_eq!(days.iter().map(|one| one.day).collect::<Vec<_>>(), [day(1), day(2)]);
    assert_eq!(days[0].done, [(ItemId(1), 3), (ItemId(2), 1)]);
    let wrong = [
        ("", 1),
        ("[[day]]", 1),
        ("[[day]]\ndate = 2026-11-26\nsessions = [{ item = 1, n = 100 }]", 3),
        ("[[day]]\ndate = 2026-11-26\nsessions = [{ item = 1, n = 1 }, { item = 1, n = 2 }]", 3),
        ("[[day]]\ndate = 2026-11-26\nmornings = [{ complaint = 1, pain = 11 }]", 3),
        ("[[day]]\ndate = 2026-11-26\n\n[[day]]\ndate = 2026-11-26", 4),
        ("[[day]]\ndate = \"today\"", 2),
        ("day = 3", 1),
        ("\u{0}", 1),
    ];
    for (text, line) in wrong {
        match paper_diary::read("diary.toml", text.as_bytes()) {
            Err(Failure::NotUnderstood { fault, .. }) => assert_eq!(fault.line, line, "{text:?}: {fault:?}"),
            other => panic!("{text:?}: {other:?}"),
        }
    }
}
