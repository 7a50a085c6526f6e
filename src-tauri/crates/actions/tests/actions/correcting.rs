//! Corrections of mistaken entries: which correction applies to which entry, and what the window shows afterwards.

use crate::people::{Patient, at, slot};
use actions::patient::{answering, correcting, plans, sealing, today};
use exercises::correct::EntryContent;
use exercises::history::Mark;
use exercises::id::ComplaintId;
use exercises::log::Correction;
use exercises::log::{Barrier, DayOffReason};
use exercises::score::Score;
use wire::Failure;
use wire::patient::{
    CorrectPage, CorrectRequest, CorrectableRequest, QuestionAnswer, SealRequest, SkipRequest, SlotRequest,
};

fn correct(patient: &mut Patient, entry: u32, to: Correction) -> Result<CorrectPage, Failure> {
    let request = CorrectRequest { plan: patient.plan, entry, to, days: 7 };
    correcting::correct(&mut patient.folder, &at("11-25T12:00"), &request)
}

fn page(patient: &Patient, moment: &str, days: u16) -> CorrectPage {
    correcting::page(&patient.folder, &at(moment), &CorrectableRequest { plan: patient.plan, days }).expect("a page")
}

fn rate(patient: &mut Patient, score: u8) -> u32 {
    let said = QuestionAnswer::Morning { plan: patient.plan, complaint: ComplaintId(1), score: Score::at_most_ten(score) };
    answering::answer(&mut patient.folder, &at("11-25T11:00"), &said).expect("a complaint of the plan");
    page(patient, "11-25T11:00", 1).entries[0].n
}

#[test]
fn a_score_is_corrected_and_the_correction_undone() {
    let mut patient = Patient::new();
    let n = rate(&mut patient, 9);
    let scores = |patient: &Patient| {
        let history = &plans::one(&patient.folder, None).expect("taken").followed.history;
        history.mornings.iter().map(|rating| rating.score.points()).collect::<Vec<_>>()
    };
    let shown = correct(&mut patient, n, Correction::Score(Score::at_most_ten(2))).expect("a score");
    assert_eq!(shown.entries[0].correction, Some(Correction::Score(Score::at_most_ten(2))));
    assert!(matches!(shown.entries[0].now, Some(EntryContent::Morning { score, .. }) if score.points() == 2), "{shown:?}");
    assert_eq!(scores(&patient), [2]);
    let patient = &mut patient.restarted();
    assert_eq!(scores(patient), [2], "after a start as well");
    let before = patient.bytes();
    correct(patient, n, Correction::Score(Score::at_most_ten(2))).expect("the same again");
    assert!(patient.bytes() == before, "the same again is nothing new");
    correct(patient, n, Correction::Never).expect("a rating");
    assert_eq!(scores(patient), [0_u8; 0]);
    correct(patient, n, Correction::Stands).expect("the original value");
    assert_eq!(scores(patient), [9]);
}

#[test]
fn a_correction_that_does_not_apply_is_refused_and_not_logged() {
    let mut patient = Patient::new();
    let n = rate(&mut patient, 9);
    let day = at("11-25T12:00").now.date();
    let week = chrono::Duration::days(60);
    let before = patient.bytes();
    for (entry, to, failure) in [
        (n, Correction::Reason(Barrier::Pain), Failure::CorrectionUnfit),
        (n, Correction::Settled(true), Failure::CorrectionUnfit),
        (n, Correction::DaysOff { from: day, until: day - week, why: DayOffReason::Ill }, Failure::EmptyPeriod),
        (n, Correction::DaysOff { from: day, until: day + week, why: DayOffReason::Ill }, Failure::EmptyPeriod),
        (1, Correction::Never, Failure::NoSuchEntry { entry: 1 }),
        (n + 1, Correction::Never, Failure::NoSuchEntry { entry: n + 1 }),
    ] {
        assert_eq!(correct(&mut patient, entry, to).err(), Some(failure), "{entry}: {to:?}");
    }
    assert!(patient.bytes() == before, "not a byte");
}

#[test]
fn a_correction_reopens_a_slot_that_was_done_or_skipped() {
    let mut patient = Patient::new();
    let mark = |patient: &Patient, number: u8| {
        let page = today::page(&patient.folder, &at("11-25T12:00")).expect("a page");
        page.string.iter().find(|knot| knot.slot == slot(1, number)).expect("a slot of the day").mark
    };
    let done = SlotRequest { plan: patient.plan, slot: slot(1, 0) };
    today::did_it(&mut patient.folder, &at("11-25T10:30"), &done).expect("it is due");
    let left = SkipRequest { plan: patient.plan, slot: slot(1, 1), reason: Barrier::NoTime };
    today::skip(&mut patient.folder, &at("11-25T10:31"), &left).expect("it is open");
    let listed = page(&patient, "11-25T12:00", 1).entries;
    let [left, run] = [listed[0].n, listed[1].n];
    correct(&mut patient, left, Correction::Reason(Barrier::Unwell)).expect("a reason");
    assert_eq!(mark(&patient, 1), Mark::Skipped(Barrier::Unwell));
    correct(&mut patient, left, Correction::Never).expect("not left out");
    assert_eq!(mark(&patient, 1), Mark::NotDone);
    assert_eq!(mark(&patient, 0), Mark::Done);
    correct(&mut patient, run, Correction::Never).expect("it did not happen");
    assert_eq!(mark(&patient, 0), Mark::NotDone);
    today::did_it(&mut patient.folder, &at("11-25T12:01"), &done).expect("it can be said again");
    assert_eq!(mark(&patient, 0), Mark::Done, "under a number of its own");
    let request = SealRequest { plan: patient.plan, from: None, until: at("11-25T20:00").now.date(), note: None };
    let summary = sealing::preview(&patient.folder, &at("11-25T20:00"), &request).expect("a day");
    assert_eq!((summary.runs.len(), summary.corrections.count()), (1, 2));
}

#[test]
fn the_list_goes_as_far_back_as_asked() {
    let mut patient = Patient::new();
    rate(&mut patient, 4);
    assert_eq!(page(&patient, "11-26T11:00", 1).entries.len(), 0, "today alone");
    assert_eq!(page(&patient, "11-26T11:00", 2).entries.len(), 1);
    assert_eq!(page(&patient, "11-26T11:00", 0).entries.len(), 0, "no days are one day");
}
