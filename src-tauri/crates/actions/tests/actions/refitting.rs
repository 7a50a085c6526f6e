//! Moving the times of a plan that is followed: reminders, Now, the record, the summary and the clinic agree on them.

use crate::people::{Patient, at, clinic, example, issue, slot};
use actions::DataFolder;
use actions::clinic::receiving;
use actions::patient::{due_reminder, plans, record, refitting, reminders, sealing, taking, today};
use exercises::history::Mark;
use exercises::id::ItemId;
use exercises::plan::{Days, Pattern, Schedule};
use exercises::slots::SlotRef;
use wire::Failure;
use wire::patient::{CardSource, RefitRequest, SealRequest, SlotRequest, TakeCardRequest};
use wire::receiving::Outcome;

const HOLD: ItemId = ItemId(1);
/// The card's times of the hold, and those to which it is moved, as minutes of the day.
const CARD: [u16; 9] = [540, 600, 660, 720, 780, 840, 900, 960, 1020];
const MOVED: [u16; 3] = [630, 690, 750];

fn every(minutes: u16, from: u16, to: u16) -> Schedule {
    Schedule { days: Days::ALL, pattern: Pattern::Every { minutes, from, to } }
}

fn refit(patient: &mut Patient, moment: &str, schedule: Schedule) -> Result<Vec<wire::patient::PlanPage>, Failure> {
    let request = RefitRequest { plan: patient.plan, item: HOLD, schedule };
    refitting::refit(&mut patient.folder, &at(moment), &request)
}

/// The minutes of the hold's slots on Now.
fn on_now(patient: &Patient, moment: &str) -> Vec<u16> {
    let page = today::page(&patient.folder, &at(moment)).expect("a page");
    page.string.iter().filter(|knot| knot.slot.item == HOLD).map(|knot| knot.minute).collect()
}

/// The minutes and marks of the hold's slots of each day in the record.
fn in_record(patient: &Patient, moment: &str) -> Vec<Vec<(u16, Mark)>> {
    let review = record::pages(&patient.folder, &at(moment)).expect("pages").remove(0).review.expect("two days");
    let of_day = |knots: &[exercises::review::Knot]| {
        knots.iter().filter(|knot| knot.item == HOLD).map(|knot| (knot.minute, knot.mark)).collect()
    };
    review.days.iter().map(|day| of_day(&day.knots)).collect()
}

fn did(patient: &mut Patient, moment: &str, slot: SlotRef) {
    let request = SlotRequest { plan: patient.plan, slot };
    today::did_it(&mut patient.folder, &at(moment), &request).expect("an open slot");
}

#[test]
fn new_times_apply_from_the_next_day_everywhere() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let mut practice = clinic(dir.path());
    let mut patient = taken(&mut practice);
    did(&mut patient, "11-25T10:05", slot(1, 1));
    let pages = refit(&mut patient, "11-25T12:30", every(60, 630, 750)).expect("within the limits");
    let (from, ahead) = pages[0].ahead.clone().expect("from tomorrow");
    assert_eq!(from, at("11-26T08:00").now.date());
    assert_eq!(ahead.item(HOLD).expect("there").schedule, every(60, 630, 750));
    assert_eq!(on_now(&patient, "11-25T12:31"), CARD, "today stays as it is");
    let coming = reminders::upcoming(&patient.folder, &at("11-25T19:30"), 24).expect("looks");
    let of_hold = coming.iter().filter(|one| one.reminder.slot.item == HOLD).map(|one| one.at.minute());
    assert_eq!(of_hold.collect::<Vec<_>>(), MOVED, "the list ahead has the new times");

    let mut patient = patient.restarted();
    refitting::settle(&mut patient.folder, &at("11-26T07:00")).expect("written");
    let mut patient = patient.restarted();
    assert_eq!(on_now(&patient, "11-26T08:00"), MOVED);
    let mut due = |moment| due_reminder::due(&mut patient.folder, &at(moment)).expect("looks").map(|it| it.slot.item);
    assert_eq!((due("11-26T10:00"), due("11-26T10:30")), (None, Some(HOLD)));
    did(&mut patient, "11-26T10:35", SlotRef { day: from, item: HOLD, number: 0 });

    let days = in_record(&patient, "11-26T20:00");
    let minutes: Vec<Vec<u16>> = days.iter().map(|day| day.iter().map(|(minute, _)| *minute).collect()).collect();
    assert_eq!(minutes, [CARD.to_vec(), MOVED.to_vec()], "each day with its own times");
    assert_eq!((days[0][1].1, days[1][0].1, days[1][1].1), (Mark::Done, Mark::Done, Mark::NotDone));
    assert_eq!(received(&mut practice, &mut patient, "11-26T20:00"), [Outcome::New { code: "K17".into(), days: 2 }]);
}

/// A patient of this clinic who took the card at 08:40 on 25 November.
fn taken(practice: &mut DataFolder) -> Patient {
    let mut patient = Patient::without_card();
    let text = issue(practice, &at("11-25T08:00"), example(), &patient.dir.path().join("card"));
    take(&mut patient, text, "11-25T08:40");
    patient
}

fn take(patient: &mut Patient, text: String, moment: &str) {
    let request = TakeCardRequest { source: CardSource::Text(text), agreed: Vec::new() };
    taking::take(&mut patient.folder, &at(moment), &request).expect("a valid card");
    patient.plan = plans::one(&patient.folder, None).expect("taken").plan().header.id;
}

/// What the clinic says to the summary until this moment.
fn received(practice: &mut DataFolder, patient: &mut Patient, moment: &str) -> Vec<Outcome> {
    let seal = SealRequest { plan: patient.plan, from: None, until: at(moment).now.date(), note: None };
    let out = patient.dir.path().join("summary.age");
    sealing::seal(&mut patient.folder, &at(moment), &seal, Some(&out)).expect("days to hand over");
    let bytes = std::fs::read(&out).expect("written");
    let receipts = receiving::receive(practice, &at("11-25T20:00"), vec![("summary.age".into(), Ok(bytes))]).expect("open");
    receipts.into_iter().map(|receipt| receipt.outcome).collect()
}

#[test]
fn times_that_come_late_do_not_count_for_the_days_before() {
    let mut patient = Patient::new();
    refit(&mut patient, "11-25T12:30", every(60, 630, 750)).expect("within the limits");
    // The program did not run on the 26th.
    refitting::settle(&mut patient.folder, &at("11-27T09:00")).expect("written");
    let days = in_record(&patient, "11-27T20:00");
    let counts: Vec<usize> = days.iter().map(Vec::len).collect();
    assert_eq!(counts, [CARD.len(), CARD.len(), MOVED.len()]);
    let one = plans::one(&patient.folder, None).expect("taken");
    assert!(!one.followed.history.seen.contains(&at("11-26T09:00").now.date()), "that day has no record");
}

#[test]
fn other_days_another_interval_or_times_over_midnight_are_refused() {
    let mut patient = Patient::new();
    let before = patient.bytes();
    let weekdays = Schedule { days: [chrono::Weekday::Mon].into_iter().collect(), ..every(60, 630, 750) };
    let fixed = Schedule { days: Days::ALL, pattern: Pattern::At { times: vec![630] } };
    for schedule in [weekdays, fixed, every(30, 630, 750), every(60, 1320, 120)] {
        assert!(matches!(refit(&mut patient, "11-25T12:30", schedule), Err(Failure::Internal { .. })));
    }
    assert!(patient.bytes() == before);
}

#[test]
fn new_times_are_withdrawn_by_choosing_the_old_ones_and_by_a_later_card() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let mut practice = clinic(dir.path());
    let mut patient = taken(&mut practice);
    refit(&mut patient, "11-25T12:30", every(60, 630, 750)).expect("within the limits");
    let back = refit(&mut patient, "11-25T12:31", every(60, 540, 1020)).expect("the card's own");
    assert_eq!(back[0].ahead, None);
    refit(&mut patient, "11-25T12:32", every(60, 630, 750)).expect("within the limits");
    let text = issue(&mut practice, &at("11-25T18:00"), example(), &dir.path().join("second"));
    take(&mut patient, text, "11-25T18:10");
    refitting::settle(&mut patient.folder, &at("11-26T07:00")).expect("written");
    assert_eq!(on_now(&patient, "11-26T08:00"), CARD, "those of the later card");
}
