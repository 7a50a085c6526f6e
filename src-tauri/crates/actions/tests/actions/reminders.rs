//! Reminders: each slot once, never several at once, never for a slot that is done or paused.

use crate::people::{Patient, at, slot};
use actions::patient::due_reminder::{self, Choice, Reminder};
use actions::patient::{answering, reminders, running, today};
use exercises::alarm::Trouble;
use exercises::history::Mark;
use exercises::id::ItemId;
use exercises::log::Barrier;
use exercises::run::{HoldRecord, Run, RunEnd, Work};
use std::collections::BTreeSet;
use wire::patient::{BeginRequest, RunSnapshot, SlotRequest, TroubleRequest};

fn due(patient: &mut Patient, moment: &str) -> Option<Reminder> {
    due_reminder::due(&mut patient.folder, &at(moment)).expect("the loop can look")
}

fn mark(patient: &Patient, moment: &str, number: u8) -> Mark {
    let page = today::page(&patient.folder, &at(moment)).expect("a page");
    page.string.iter().find(|knot| knot.slot == slot(1, number)).expect("a slot of the day").mark
}

#[test]
fn each_slot_is_reminded_of_once_while_it_is_open() {
    let mut patient = Patient::new();
    assert_eq!(due(&mut patient, "11-25T08:59"), None, "not yet");
    let nine = due(&mut patient, "11-25T09:00").expect("nine o'clock");
    assert_eq!((nine.slot, nine.open_ms), (slot(1, 0), 3_600_000));
    assert_eq!(due(&mut patient, "11-25T09:01"), None, "once");
    let mut patient = patient.restarted();
    assert_eq!(due(&mut patient, "11-25T09:02"), None, "also after a restart");
    assert_eq!(due(&mut patient, "11-25T10:00").map(|reminder| reminder.slot), Some(slot(1, 1)));
}

#[test]
fn after_sleep_old_reminders_do_not_pile_up() {
    let mut patient = Patient::new();
    // The lid was closed from 09:30 to 16:20.
    due(&mut patient, "11-25T09:00");
    assert_eq!(due(&mut patient, "11-25T16:20").map(|reminder| reminder.slot), Some(slot(1, 7)), "the open one alone");
    assert_eq!(due(&mut patient, "11-25T16:21"), None);
}

#[test]
fn a_clock_set_back_repeats_no_reminder() {
    let mut patient = Patient::new();
    due(&mut patient, "11-25T10:00").expect("ten o'clock");
    assert_eq!(
        due(&mut patient, "11-25T09:30").map(|reminder| reminder.slot),
        Some(slot(1, 0)),
        "nine was not announced yet"
    );
    assert_eq!(due(&mut patient, "11-25T10:00"), None, "ten was");
}

#[test]
fn a_reminder_put_off_comes_once_more_ten_minutes_later() {
    let mut patient = Patient::new();
    let nine = due(&mut patient, "11-25T09:00").expect("nine o'clock");
    due_reminder::choose(&mut patient.folder, &at("11-25T09:05"), &nine, Choice::PutOff).expect("an open slot");
    assert_eq!(due(&mut patient, "11-25T09:14"), None);
    assert_eq!(
        due_reminder::next_due_ms(&patient.folder, &at("11-25T09:06")).expect("looks"),
        Some(at("11-25T09:15").now.utc_ms)
    );
    assert_eq!(due(&mut patient, "11-25T09:15").map(|reminder| reminder.slot), Some(slot(1, 0)));
    assert_eq!(due(&mut patient, "11-25T09:16"), None, "once more, not for ever");
}

#[test]
fn a_meeting_begun_on_a_reminder_suppresses_the_reminders_of_an_hour() {
    let mut patient = Patient::new();
    let nine = due(&mut patient, "11-25T09:00").expect("nine o'clock");
    due_reminder::choose(&mut patient.folder, &at("11-25T09:05"), &nine, Choice::Meeting).expect("always possible");
    let mut patient = patient.restarted();
    let shown = reminders::show(&patient.folder, &at("11-25T09:06")).expect("readable");
    assert_eq!(shown.meeting_until.map(|until| until.minute()), Some(10 * 60 + 5));
    assert_eq!(due(&mut patient, "11-25T10:00"), None, "in the meeting");
    assert_eq!(due(&mut patient, "11-25T10:05").map(|reminder| reminder.slot), Some(slot(1, 1)), "it is over");
    assert_eq!(mark(&patient, "11-25T09:30", 0), Mark::Due, "the session itself can still be done");
}

#[test]
fn a_run_that_was_stopped_part_way_comes_back_in_ten_minutes() {
    let mut patient = Patient::new();
    let nine = due(&mut patient, "11-25T09:00").expect("nine o'clock");
    let request = BeginRequest { plan: patient.plan, item: ItemId(1), step: false };
    let begun = running::begin(&mut patient.folder, &at("11-25T09:01"), &request).expect("due");
    let held = Work::Timed(vec![HoldRecord { side: None, held_ms: 10_000 }]);
    let run = Run { end: RunEnd::Stopped, work: held, ..begun.run };
    running::checkpoint(&mut patient.folder, &at("11-25T09:02"), &RunSnapshot { plan: patient.plan, run })
        .expect("begun here");
    assert!(matches!(mark(&patient, "11-25T09:03", 0), Mark::Partly(_)));
    assert_eq!(due(&mut patient, "11-25T09:04"), None, "it had its reminder");
    due_reminder::choose(&mut patient.folder, &at("11-25T09:05"), &nine, Choice::PutOff).expect("an open slot");
    let mut patient = patient.restarted();
    assert_eq!(due(&mut patient, "11-25T09:14"), None);
    assert_eq!(due(&mut patient, "11-25T09:15").map(|reminder| reminder.slot), Some(slot(1, 0)));
    let stands = due_reminder::still_applies(&patient.folder, &at("11-25T09:20"), patient.plan, slot(1, 0));
    assert_eq!(stands, Ok(true), "it is not taken away at once");
}

#[test]
fn slots_done_skipped_or_paused_are_not_reminded_of() {
    let mut patient = Patient::new();
    let request = SlotRequest { plan: patient.plan, slot: slot(1, 0) };
    today::did_it(&mut patient.folder, &at("11-25T09:00"), &request).expect("open");
    assert_eq!(due(&mut patient, "11-25T09:01"), None, "done");
    let ten =
        Reminder { plan: patient.plan, slot: slot(1, 1), due: at("11-25T10:00").now, takes_s: 60, open_ms: 1, light: false };
    due_reminder::choose(&mut patient.folder, &at("11-25T10:00"), &ten, Choice::Skip).expect("open");
    assert_eq!(due(&mut patient, "11-25T10:01"), None, "left out");
    assert_eq!(mark(&patient, "11-25T10:02", 1), Mark::Skipped(Barrier::RatherNotSay), "and nobody was asked why");
    let wrong = TroubleRequest {
        plan: patient.plan,
        trouble: Trouble::Nerve,
        item: Some(ItemId(1)),
        circumstances: BTreeSet::new(),
    };
    answering::trouble(&mut patient.folder, &at("11-25T10:30"), &wrong).expect("always possible");
    assert_eq!(due(&mut patient, "11-25T11:00"), None, "held back");
}

#[test]
fn a_click_on_an_old_notification_changes_nothing() {
    let mut patient = Patient::new();
    let nine = due(&mut patient, "11-25T09:00").expect("nine o'clock");
    let request = SlotRequest { plan: patient.plan, slot: slot(1, 0) };
    today::did_it(&mut patient.folder, &at("11-25T09:02"), &request).expect("open");
    let before = patient.bytes();
    for choice in [Choice::PutOff, Choice::Skip] {
        due_reminder::choose(&mut patient.folder, &at("11-25T09:03"), &nine, choice).expect("no fault");
    }
    assert!(patient.bytes() == before);
    assert_eq!(mark(&patient, "11-25T09:04", 0), Mark::Done);
}
