//! The device's clock is years ahead, and somebody corrects it while the program is open.

use crate::people::{Patient, at, slot};
use actions::Moment;
use actions::patient::{due_reminder, plans, record, refitting, running, today};
use exercises::id::ItemId;
use exercises::plan::{Days, Pattern, Schedule};
use wire::patient::{BeginRequest, RefitRequest, RunSnapshot, SlotRequest};

const HOLD: ItemId = ItemId(1);

/// The same time of the day more than three years later.
fn ahead(text: &str) -> Moment {
    let now = at(text);
    actions::clock::at(now.now.utc_ms + 1_200 * 86_400_000, actions::zone::named("Europe/Vienna").expect("a zone"))
}

#[test]
fn a_run_goes_on_when_the_clock_is_put_right_in_the_middle_of_it() {
    let mut patient = Patient::new();
    let request = BeginRequest { plan: patient.plan, item: HOLD, step: false };
    let script = running::begin(&mut patient.folder, &ahead("11-25T09:01"), &request).expect("nothing is paused");
    let mut snapshot = RunSnapshot { plan: patient.plan, run: script.run };
    snapshot.run.end = exercises::run::RunEnd::Stopped;
    running::checkpoint(&mut patient.folder, &at("11-25T09:03"), &snapshot).expect("it is still known");
    let one = plans::one(&patient.folder, None).expect("taken");
    assert_eq!((one.followed.history.runs.len(), one.followed.history.wrong_clock.runs.len()), (0, 1));
    let again = running::begin(&mut patient.folder, &at("11-25T09:05"), &request).expect("nothing is paused");
    assert_eq!((again.run.id.0, again.run.slot), (2, Some(slot(1, 0))), "the slot is still to be done");
}

#[test]
fn a_reminder_comes_and_an_opening_is_logged_once_the_clock_is_right() {
    let mut patient = Patient::new();
    today::opened(&mut patient.folder, &at("11-25T08:41")).expect("written");
    today::opened(&mut patient.folder, &ahead("11-25T08:42")).expect("a new day");
    let known = |patient: &Patient| plans::one(&patient.folder, None).expect("taken").followed.history.clone();
    assert_eq!(known(&patient).seen.len(), 2, "nothing contradicts it yet");
    for _ in 0..2 {
        today::opened(&mut patient.folder, &at("11-25T08:43")).expect("written");
    }
    assert_eq!(known(&patient).seen, [at("11-25T08:43").now.date()].into(), "the log itself shows it now");
    let reminder = due_reminder::due(&mut patient.folder, &at("11-25T09:00")).expect("looks").expect("one is due");
    assert_eq!(reminder.slot, slot(1, 0));
    let pages = record::pages(&patient.folder, &at("11-25T20:00")).expect("pages");
    assert_eq!(pages[0].later, None, "the clock is not behind");
}

#[test]
fn what_was_put_off_ahead_is_reminded_of_in_time() {
    let mut patient = Patient::new();
    let request = SlotRequest { plan: patient.plan, slot: slot(1, 0) };
    today::put_off(&mut patient.folder, &ahead("11-25T08:50"), &request).expect("it can be put off");
    let next = due_reminder::next_due_ms(&patient.folder, &at("11-25T08:55")).expect("looks");
    assert_eq!(next, Some(at("11-25T09:00").now.utc_ms));
    let reminder = due_reminder::due(&mut patient.folder, &at("11-25T09:00")).expect("looks");
    assert_eq!(reminder.map(|one| one.slot), Some(slot(1, 0)));
}

#[test]
fn times_that_were_moved_ahead_apply_once_the_clock_is_right() {
    let mut patient = Patient::new();
    let schedule = Schedule { days: Days::ALL, pattern: Pattern::Every { minutes: 60, from: 630, to: 750 } };
    let request = RefitRequest { plan: patient.plan, item: HOLD, schedule };
    refitting::refit(&mut patient.folder, &ahead("11-25T12:30"), &request).expect("within the limits");
    refitting::settle(&mut patient.folder, &at("11-26T08:00")).expect("written");
    let page = today::page(&patient.folder, &at("11-26T08:01")).expect("a page");
    let minutes = page.string.iter().filter(|knot| knot.slot.item == HOLD).map(|knot| knot.minute).collect::<Vec<_>>();
    assert_eq!(minutes, [630, 690, 750]);
}

/// Somebody looks while an empty battery has set the clock back: nothing that is right is marked for that.
#[test]
fn a_look_by_a_clock_that_is_before_the_card_marks_nothing() {
    let mut patient = Patient::new();
    today::opened(&mut patient.folder, &at("11-25T08:41")).expect("written");
    let back = actions::clock::at(1_577_880_000_000, actions::zone::named("Europe/Vienna").expect("a zone"));
    today::opened(&mut patient.folder, &back).expect("written");
    let one = plans::one_at(&patient.folder, &back, None).expect("taken");
    assert!(one.followed.history.seen.contains(&at("11-25T08:41").now.date()));
    assert!(record::pages(&patient.folder, &back).expect("pages")[0].later.is_some(), "the record says that it is behind");
}
