//! Numbers of revisions and secrets of cards: what a store that was put back to an older copy does, and what an old card cannot do.

use crate::people::{Patient, at, clinic, example, issue};
use crate::receiving::{receive, unlocked};
use actions::DataFolder;
use actions::clinic::{devices, drafting, issuing, receiving, reviewing};
use actions::patient::{answering, plans, sealing, taking};
use chrono::NaiveDate;
use exercises::alarm::Trouble;
use exercises::id::{ItemId, LogId, RunId};
use exercises::run::{RunEnd, Share};
use exercises::summary::{FormerPart, RunOn, RunTiming, Summary, TakenOn};
use exercises::time::DayNumber;
use format::card::Card;
use std::path::Path;
use wire::Failure;
use wire::clinic::{IssueRequest, ReviewNotice};
use wire::patient::{CardSource, SealRequest, TakeCardRequest, TroubleRequest};
use wire::receiving::{Outcome, Receipt, ReceiptNotice};

fn take(patient: &mut Patient, text: &str, moment: &str) {
    let request = TakeCardRequest { source: CardSource::Text(text.to_owned()), agreed: Vec::new() };
    taking::take(&mut patient.folder, &at(moment), &request).expect("a valid card");
    patient.plan = plans::one(&patient.folder, None).expect("taken").plan().header.id;
}

fn sealed(patient: &mut Patient, moment: &str) -> Vec<u8> {
    let seal = SealRequest { plan: patient.plan, from: None, until: at(moment).now.date(), note: None };
    let out = patient.dir.path().join("summary.age");
    sealing::seal(&mut patient.folder, &at(moment), &seal, Some(&out)).expect("a day to hand over");
    std::fs::read(out).expect("written")
}

fn receipt(folder: &mut DataFolder, moment: &str, sealed: Vec<u8>) -> Receipt {
    receiving::receive(folder, &at(moment), vec![("a.age".into(), Ok(sealed))]).expect("open").remove(0)
}

/// The next plan, with the list of absent risks confirmed on its day.
fn issue_on(folder: &mut DataFolder, moment: &str, out: &Path) -> (u16, String) {
    let mut prescription = example();
    prescription.confirmed = Some(at(moment).now.date());
    let request = IssueRequest { code: "K17".into(), prescription };
    let card = issuing::issue(folder, &at(moment), &request, Some(out)).expect("a plan that may be issued");
    (card.plan.header.revision, card.text)
}

fn copy(from: &Path, to: &Path) {
    std::fs::create_dir_all(to).expect("a folder");
    for file in std::fs::read_dir(from).expect("the folder") {
        let file = file.expect("a file");
        std::fs::copy(file.path(), to.join(file.file_name())).expect("copied");
    }
}

#[test]
fn a_store_that_was_put_back_issues_no_revision_twice() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let mut folder = clinic(dir.path());
    let first = issue(&mut folder, &at("11-25T08:00"), example(), &dir.path().join("one"));
    drop(folder);
    copy(&dir.path().join("clinic"), &dir.path().join("older"));
    let mut patient = Patient::without_card();
    take(&mut patient, &first, "11-25T08:40");
    let mut folder = unlocked(dir.path());
    assert_eq!(issue_on(&mut folder, "11-26T08:00", &dir.path().join("two")).0, 2);
    let (revision, third) = issue_on(&mut folder, "11-27T08:00", &dir.path().join("three"));
    assert_eq!(revision, 3);
    drop(folder);
    take(&mut patient, &third, "11-27T08:40");
    std::fs::remove_dir_all(dir.path().join("clinic")).expect("removed");
    copy(&dir.path().join("older"), &dir.path().join("clinic"));

    let mut folder = unlocked(dir.path());
    assert_eq!(drafting::draft(&folder, &at("11-28T08:00"), "K17").expect("a draft").revision, 2, "nothing else is known");
    let receipt = receipt(&mut folder, "11-28T08:00", sealed(&mut patient, "11-28T07:00"));
    assert_eq!(receipt.outcome, Outcome::New { code: "K17".into(), days: 4 });
    assert_eq!(receipt.notices, [ReceiptNotice::StoreBehind { revision: 3, next: 4 }]);
    let page = reviewing::page(&folder, &at("11-28T08:00"), "K17").expect("a page");
    assert_eq!(page.notices, [ReviewNotice::StoreBehind { revision: 3, next: 4 }]);
    let text = words::Words::new(words::Locale::En).review_text(&page);
    assert!(text.contains("follows plan 3, which this store does not have"), "{text}");
    assert_eq!(drafting::draft(&folder, &at("11-28T08:00"), "K17").expect("a draft").revision, 4);
    let (revision, fourth) = issue_on(&mut folder, "11-28T08:00", &dir.path().join("four"));
    assert_eq!(revision, 4);
    take(&mut patient, &fourth, "11-28T08:40");
    let page = reviewing::page(&folder, &at("11-28T09:00"), "K17").expect("a page");
    assert_eq!(page.notices, [], "the newest card is known again");
}

fn card(text: &str) -> Card {
    let bytes = format::card::from_text(text).expect("a card");
    format::card::open(&bytes).expect("a card").into_card_after_checking_the_signature()
}

/// A summary as somebody with this card makes it, claiming to have taken these revisions.
fn claiming(card: &Card, log: u8, revisions: &[u16]) -> Vec<u8> {
    let taken = revisions.iter().map(|revision| TakenOn { day: DayNumber(0), revision: *revision, agreed: Vec::new() });
    let summary = Summary { taken: taken.collect(), ..nothing(card, log) };
    vault::summary::seal(&summary, &card.pairing_secret, &card.recipient).expect("a summary")
}

/// A summary of the plan's first day in which nothing is said.
fn nothing(card: &Card, log: u8) -> Summary {
    Summary {
        plan: card.plan.header.id,
        log: LogId([log; 8]),
        former: Vec::new(),
        counter: 1,
        from: DayNumber(0),
        until: DayNumber(0),
        taken: Vec::new(),
        seen: [DayNumber(0)].into(),
        days: Vec::new(),
        runs: Vec::new(),
        mornings: Vec::new(),
        during: Vec::new(),
        settled: Vec::new(),
        well_again: Vec::new(),
        rated: Vec::new(),
        alarms: Vec::new(),
        delays: Vec::new(),
        note: None,
        corrections: Default::default(),
        wrong_clock: Default::default(),
    }
}

#[test]
fn each_card_has_its_own_secret_and_an_old_one_cannot_speak_for_a_new_plan() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let mut folder = clinic(dir.path());
    let first = card(&issue(&mut folder, &at("11-25T08:00"), example(), &dir.path().join("one")));
    let second = card(&issue_on(&mut folder, "11-26T08:00", &dir.path().join("two")).1);
    assert_ne!(first.pairing_secret, second.pairing_secret);
    let not_from_card = Outcome::Refused(Failure::SummaryNotFromCard);
    assert_eq!(receive(&mut folder, &claiming(&first, 1, &[1, 2])), not_from_card, "who photographed the first card");
    assert_eq!(receive(&mut folder, &claiming(&first, 1, &[1])), Outcome::New { code: "K17".into(), days: 1 });
    let said = receipt(&mut folder, "11-26T09:00", claiming(&second, 2, &[1, 2]));
    assert!(!matches!(said.outcome, Outcome::Refused(_)), "{said:?}");
    assert_eq!(said.notices, [ReceiptNotice::NewDevice { device: LogId([2; 8]) }]);
    let mut later = card(&issue_on(&mut folder, "11-27T08:00", &dir.path().join("three")).1);
    later.pairing_secret = vault::random::pairing_secret();
    assert_eq!(receive(&mut folder, &claiming(&later, 3, &[3])), not_from_card);
}

#[test]
fn a_device_can_be_left_out_of_the_review_and_taken_in_again() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let mut folder = clinic(dir.path());
    let text = issue(&mut folder, &at("11-25T08:00"), example(), &dir.path().join("one"));
    let mut patient = Patient::without_card();
    take(&mut patient, &text, "11-25T08:40");
    let hers = sealed(&mut patient, "11-25T20:00");
    assert_eq!(receipt(&mut folder, "11-26T08:00", hers).notices, [], "the first device is no news");
    let mut other = Patient::without_card();
    take(&mut other, &text, "11-25T09:00");
    let trouble = TroubleRequest { plan: other.plan, trouble: Trouble::Fell, item: None, circumstances: Default::default() };
    answering::trouble(&mut other.folder, &at("11-25T10:00"), &trouble).expect("raised");
    let theirs = receipt(&mut folder, "11-27T08:00", sealed(&mut other, "11-25T20:00"));
    let device = plans::one(&other.folder, None).expect("taken").log;
    assert_eq!(theirs.notices, [ReceiptNotice::NewDevice { device }]);

    let page = |folder: &DataFolder| reviewing::page(folder, &at("11-27T08:00"), "K17").expect("a page");
    let review = page(&folder).review.expect("received");
    assert_eq!((review.logs, review.alarms.len()), (2, 1));
    let lines = devices::leave_out(&mut folder, "K17", device, true).expect("known");
    let seen: Vec<_> = lines.iter().map(|line| (line.first_seen, line.left_out)).collect();
    assert_eq!(seen, [(Some(at("11-26T08:00").now.date()), false), (Some(at("11-27T08:00").now.date()), true)]);
    let left = page(&folder);
    let review = left.review.as_ref().expect("received");
    assert_eq!((review.logs, review.alarms.len()), (1, 0));
    let text = words::Words::new(words::Locale::En).review_text(&left);
    assert!(text.contains("Device 2 is left out") && text.contains(&device.to_string()), "{text}");
    devices::leave_out(&mut folder, "K17", device, false).expect("known");
    assert_eq!(page(&folder).review.expect("received").alarms.len(), 1);
    let unknown = devices::leave_out(&mut folder, "K17", LogId([9; 8]), true).err();
    assert_eq!(unknown, Some(Failure::NoSuchDevice { code: "K17".into(), device: "0909090909090909".into() }));
}

/// A patient does two sessions on one phone, moves the record to another and does a third there. A third device has the card, and recorded
/// nothing.
#[test]
fn devices_are_numbered_and_a_record_that_was_moved_is_told_from_a_foreign_one() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let mut folder = clinic(dir.path());
    let card = card(&issue(&mut folder, &at("11-25T08:00"), example(), &dir.path().join("one")));
    let session = |n: u32, day: u16| RunOn {
        run: RunId(n),
        day: DayNumber(day),
        item: ItemId(1),
        rung: None,
        slot: None,
        hour: 9,
        live: true,
        timing: RunTiming::InTime,
        end: RunEnd::Completed,
        dose: Share { done: 1, of: 1 },
        parts: Share { done: 1, of: 1 },
        stance: None,
        tally: None,
    };
    let until = |day: u16, log: u8, runs: Vec<RunOn>| {
        let seen = (0..=day).map(DayNumber).filter(|_| !runs.is_empty()).collect();
        let taken = vec![TakenOn { day: DayNumber(0), revision: 1, agreed: Vec::new() }];
        Summary { until: DayNumber(day), seen, runs, taken, ..nothing(&card, log) }
    };
    let phone = until(1, 7, vec![session(1, 0), session(2, 1)]);
    let part = FormerPart { log: LogId([7; 8]), entries: 9, runs: 2, until: DayNumber(2) };
    let moved = Summary { former: vec![part], ..until(2, 3, vec![session(1, 0), session(2, 1), session(3, 2)]) };
    for (moment, summary) in [("11-26T20:00", phone), ("11-27T20:00", moved), ("11-28T20:00", until(2, 1, Vec::new()))] {
        let sealed = vault::summary::seal(&summary, &card.pairing_secret, &card.recipient).expect("a summary");
        let said = receipt(&mut folder, moment, sealed);
        assert!(!matches!(said.outcome, Outcome::Refused(_)), "{said:?}");
    }
    let lines = devices::list(&folder, "K17").expect("the patient");
    let day = |day| NaiveDate::from_ymd_opt(2026, 11, day);
    let told: Vec<_> = lines.iter().map(|line| (line.number, line.used, line.sessions, line.goes_on_as)).collect();
    let used = |from, until| day(from).zip(day(until));
    assert_eq!(told, [(Some(1), used(25, 26), 2, Some(2)), (Some(2), used(27, 27), 1, None), (Some(3), None, 0, None),]);
    let words = words::Words::new(words::Locale::En);
    let said: Vec<_> = lines.iter().map(|line| words.review_device(line)).collect();
    assert_eq!(
        said,
        [
            "Device 1: used from 25 November to 26 November, 2 sessions.",
            "Device 2: used on 27 November, 1 session.",
            "Device 3: nothing recorded.",
        ]
    );
    let which = words.review_device_which(&lines[0]);
    let first =
        "First summary received on 26 November. Its record goes on as device 2. Number on the device: 0707070707070707";
    assert_eq!(which.as_deref(), Some(first));
}
