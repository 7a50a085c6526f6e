//! Runs in progress: checkpoints, crashes, and what the window may report.

use crate::people::{Patient, at, clinic, example, issue, slot};
use actions::patient::{answering, plans, running, sealing, taking, today};
use exercises::alarm::Trouble;
use exercises::history::Mark;
use exercises::id::{ComplaintId, ItemId};
use exercises::plan::BodySide;
use exercises::run::{HoldRecord, RunEnd, Share, Trial, TrialEnd, Work};
use exercises::score::Score;
use exercises::sway::{Sensed, SourceKind};
use std::collections::BTreeSet;
use wire::Failure;
use wire::patient::{
    BeginRequest, CardSource, QuestionAnswer, RunScript, RunSnapshot, SealRequest, SensedTrial, SkipRequest, SlotRequest,
    TakeCardRequest, TroubleRequest,
};

fn begin(patient: &mut Patient, moment: &str, item: u8) -> RunScript {
    let request = BeginRequest { plan: patient.plan, item: ItemId(item), step: false };
    running::begin(&mut patient.folder, &at(moment), &request).expect("nothing pauses it")
}

fn checkpoint(patient: &mut Patient, moment: &str, script: &RunScript, work: Work, end: RunEnd) {
    let run = exercises::run::Run { work, end, ..script.run.clone() };
    running::checkpoint(&mut patient.folder, &at(moment), &RunSnapshot { plan: patient.plan, run }).expect("begun here");
}

fn held(times: &[u32]) -> Work {
    Work::Timed(times.iter().map(|held_ms| HoldRecord { side: None, held_ms: *held_ms }).collect())
}

fn mark(patient: &Patient, moment: &str, number: u8) -> Mark {
    let page = today::page(&patient.folder, &at(moment)).expect("a page");
    page.string.iter().find(|knot| knot.slot == slot(1, number)).expect("a slot of the day").mark
}

#[test]
fn what_was_done_before_the_lid_closed_is_kept() {
    let mut patient = Patient::new();
    let script = begin(&mut patient, "11-25T09:02", 1);
    assert_eq!((script.run.slot, script.cautions_first), (Some(slot(1, 0)), true));
    checkpoint(&mut patient, "11-25T09:03", &script, held(&[10_000]), RunEnd::Going);
    let patient = patient.restarted();
    assert_eq!(mark(&patient, "11-25T10:30", 0), Mark::Partly(Share { done: 1, of: 3 }), "one hold of three");
}

/// Issues the next card with the hold at this level, and takes it.
fn card_at_level(clinic: &mut actions::DataFolder, patient: &mut Patient, moment: &str, level: &str) {
    let mut plan = example();
    plan.items[0].rung = level.parse().ok();
    let text = issue(clinic, &at(moment), plan, &patient.dir.path().join(level));
    let request = TakeCardRequest { source: CardSource::Text(text), agreed: Vec::new() };
    taking::take(&mut patient.folder, &at(moment), &request).expect("a valid card");
    patient.plan = plans::one(&patient.folder, None).expect("taken").plan().header.id;
}

#[test]
fn precautions_come_before_the_first_run_at_each_level() {
    let mut patient = Patient::without_card();
    let mut clinic = clinic(patient.dir.path());
    card_at_level(&mut clinic, &mut patient, "11-25T08:00", "chair");
    assert!(begin(&mut patient, "11-25T09:02", 1).cautions_first, "never read");
    assert!(!begin(&mut patient, "11-25T10:02", 1).cautions_first, "read an hour ago");
    assert!(begin(&mut patient, "11-25T10:10", 2).cautions_first, "another exercise");
    card_at_level(&mut clinic, &mut patient, "11-26T08:00", "standing");
    assert!(begin(&mut patient, "11-26T09:02", 1).cautions_first, "read for another level");
    assert!(!begin(&mut patient, "11-26T10:02", 1).cautions_first, "read for this level");
    card_at_level(&mut clinic, &mut patient, "11-27T08:00", "chair");
    assert!(begin(&mut patient, "11-27T09:02", 1).cautions_first, "the level was last another one");
}

#[test]
fn a_run_that_has_ended_stays_as_it_ended() {
    let mut patient = Patient::new();
    let script = begin(&mut patient, "11-25T09:02", 1);
    checkpoint(&mut patient, "11-25T09:04", &script, held(&[10_000; 3]), RunEnd::Completed);
    let before = patient.bytes();
    checkpoint(&mut patient, "11-25T09:05", &script, held(&[]), RunEnd::Going);
    assert!(patient.bytes() == before, "a late word from the window changes nothing");
    assert_eq!(mark(&patient, "11-25T09:06", 0), Mark::Done);
}

#[test]
fn the_window_cannot_move_a_run_to_another_slot_or_time() {
    let mut patient = Patient::new();
    let script = begin(&mut patient, "11-25T09:02", 1);
    let mut moved = script.clone();
    moved.run.slot = Some(slot(1, 1));
    moved.run.started = at("11-25T10:02").now;
    moved.run.item = ItemId(3);
    checkpoint(&mut patient, "11-25T09:04", &moved, held(&[10_000; 3]), RunEnd::Completed);
    assert_eq!((mark(&patient, "11-25T10:30", 0), mark(&patient, "11-25T10:30", 1)), (Mark::Done, Mark::Due));
}

#[test]
fn a_run_nobody_began_is_refused() {
    let mut patient = Patient::new();
    let mut script = begin(&mut patient, "11-25T09:02", 1);
    script.run.id = exercises::id::RunId(99);
    let before = patient.bytes();
    let snapshot = RunSnapshot { plan: patient.plan, run: script.run };
    let refused = running::checkpoint(&mut patient.folder, &at("11-25T09:03"), &snapshot);
    assert_eq!(refused, Err(Failure::NoSuchItem));
    assert!(patient.bytes() == before);
}

/// Whatever a faulty window reports, the log can be read and a summary can be made.
#[test]
fn an_endless_run_does_not_spoil_the_log() {
    let mut patient = Patient::new();
    let script = begin(&mut patient, "11-25T19:31", 2);
    let Work::Balance(mut balance) = script.run.work.clone() else { panic!("a balance item") };
    balance.trials = vec![Trial { leg: Some(BodySide::Left), held_ms: 900, end: TrialEnd::Touch }; 2000];
    checkpoint(&mut patient, "11-25T19:50", &script, Work::Balance(balance), RunEnd::Completed);
    let mut patient = patient.restarted();
    today::page(&patient.folder, &at("11-25T20:00")).expect("the log is readable");
    let request = SealRequest { plan: patient.plan, from: None, until: at("11-25T20:00").now.date(), note: None };
    let out = patient.dir.path().join("x.age");
    sealing::seal(&mut patient.folder, &at("11-25T20:00"), &request, Some(&out)).expect("it can be handed over");
}

#[test]
fn the_detail_of_a_measured_trial_has_a_limit() {
    let mut patient = Patient::new();
    let script = begin(&mut patient, "11-25T19:31", 2);
    let Work::Balance(mut balance) = script.run.work.clone() else { panic!("a balance item") };
    balance.trials = vec![Trial { leg: Some(BodySide::Left), held_ms: 900, end: TrialEnd::Touch }];
    checkpoint(&mut patient, "11-25T19:50", &script, Work::Balance(balance), RunEnd::Completed);
    let sensed = Sensed {
        kind: SourceKind::File,
        held_ms: 900,
        censored: false,
        gap: false,
        otherwise: None,
        touch_downs: 1,
        figures: None,
        reasons: Vec::new(),
        flags: Vec::new(),
    };
    let mut report = SensedTrial { plan: patient.plan, run: script.run.id, trial: 0, sensed, detail: "x".repeat(1 << 20) };
    report.detail.push('x');
    let before = patient.bytes();
    assert_eq!(running::save_sensed(&mut patient.folder, &at("11-25T19:51"), &report), Err(Failure::NoSuchItem));
    assert!(patient.bytes() == before);
    report.detail.pop();
    running::save_sensed(&mut patient.folder, &at("11-25T19:51"), &report).expect("as long as it may be");
}

#[test]
fn a_complaint_pauses_what_it_must_until_a_newer_card() {
    let mut patient = Patient::new();
    let wrong =
        TroubleRequest { plan: patient.plan, trouble: Trouble::Fell, item: Some(ItemId(2)), circumstances: BTreeSet::new() };
    answering::trouble(&mut patient.folder, &at("11-25T19:40"), &wrong).expect("always possible");
    let mut patient = patient.restarted();
    let before = patient.bytes();
    let request = BeginRequest { plan: patient.plan, item: ItemId(2), step: false };
    assert_eq!(
        running::begin(&mut patient.folder, &at("11-26T08:00"), &request).err(),
        Some(Failure::Paused(Trouble::Fell))
    );
    assert!(patient.bytes() == before);
    let standing = BeginRequest { item: ItemId(1), ..request };
    let paused = running::begin(&mut patient.folder, &at("11-26T09:00"), &standing).err();
    assert_eq!(paused, Some(Failure::Paused(Trouble::Fell)), "its first level is done standing");
}

/// A near fall pauses nothing.
#[test]
fn after_a_near_fall_everything_goes_on() {
    let mut patient = Patient::new();
    let near_fall = TroubleRequest {
        plan: patient.plan,
        trouble: Trouble::NearlyFell,
        item: Some(ItemId(2)),
        circumstances: BTreeSet::new(),
    };
    answering::trouble(&mut patient.folder, &at("11-25T19:40"), &near_fall).expect("always possible");
    begin(&mut patient, "11-26T08:00", 2);
    begin(&mut patient, "11-26T09:00", 1);
}

#[test]
fn answers_and_slots_that_the_plan_does_not_have_are_refused() {
    let mut patient = Patient::new();
    let plan = patient.plan;
    let before = patient.bytes();
    let now = at("11-25T12:30");
    let folder = &mut patient.folder;
    let score = Score::at_most_ten(3);
    let pain = |complaint| QuestionAnswer::Morning { plan, complaint: ComplaintId(complaint), score };
    assert_eq!(answering::answer(folder, &now, &pain(7)).err(), Some(Failure::NoSuchItem));
    let during = QuestionAnswer::During { plan, item: ItemId(7), score };
    assert_eq!(answering::answer(folder, &now, &during).err(), Some(Failure::NoSuchItem));
    let no_slot = [slot(1, 9), slot(9, 0), slot(2, 0)];
    for slot in no_slot {
        let request = SlotRequest { plan, slot };
        assert_eq!(today::put_off(folder, &now, &request).err(), Some(Failure::NoSuchSlot), "{slot:?}");
        assert_eq!(today::did_it(folder, &now, &request).err(), Some(Failure::NoSuchSlot), "{slot:?}");
        let request = SkipRequest { plan, slot, reason: exercises::log::Barrier::NoTime };
        assert_eq!(today::skip(folder, &now, &request).err(), Some(Failure::NoSuchSlot), "{slot:?}");
    }
    let not_yet = SlotRequest { plan, slot: slot(1, 8) };
    assert_eq!(today::did_it(folder, &now, &not_yet).err(), Some(Failure::NoSuchSlot), "17:00 has not come");
    let timed = SlotRequest { plan, slot: slot(2, 1) };
    assert_eq!(
        today::did_it(folder, &at("11-25T19:40"), &timed).err(),
        Some(Failure::NoSuchSlot),
        "a trial's time is its result"
    );
    assert!(patient.bytes() == before);
}

#[test]
fn opening_the_program_is_one_record_a_day() {
    let mut patient = Patient::new();
    patient.folder.app_state(&at("11-26T08:00")).expect("a folder with a plan");
    let once = patient.bytes();
    for moment in ["11-26T08:01", "11-26T23:59"] {
        assert!(patient.folder.app_state(&at(moment)).expect("a folder with a plan").has_plan);
    }
    assert!(patient.bytes() == once);
}
