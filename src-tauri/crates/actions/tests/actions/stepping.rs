//! A change of level that the clinician allowed: offered when the rules propose it, accepted by a press, and used from then on.

use crate::people::{Patient, at, clinic, example, issue};
use actions::patient::{answering, running, taking, today};
use exercises::catalogue::{Dose, Quantity};
use exercises::id::ItemId;
use exercises::run::{HoldRecord, RunEnd, Work};
use exercises::score::Score;
use exercises::suggest::Step;
use exercises::today::TodayItem;
use wire::Failure;
use wire::patient::{BeginRequest, CardSource, QuestionAnswer, RunSnapshot, TakeCardRequest};

/// A patient whose plan has only the hourly hold, no complaints, and possibly the permission to change the level.
fn patient(may_step: bool) -> Patient {
    let mut plan = example();
    plan.items.truncate(1);
    plan.complaints.clear();
    plan.items[0].serves = None;
    plan.items[0].may_step = may_step;
    let mut patient = Patient::without_card();
    let text = issue(&mut clinic(patient.dir.path()), &at("11-25T08:00"), plan, &patient.dir.path().join("card"));
    let request = TakeCardRequest { source: CardSource::Text(text), agreed: Vec::new() };
    taking::take(&mut patient.folder, &at("11-25T08:40"), &request).expect("a valid card");
    patient.plan = actions::patient::plans::one(&patient.folder, None).expect("taken").plan().header.id;
    patient
}

fn request(patient: &Patient, step: bool) -> BeginRequest {
    BeginRequest { plan: patient.plan, item: ItemId(1), step }
}

/// A week of days on which everything is done.
const WEEK: [&str; 7] = ["11-25", "11-26", "11-27", "11-28", "11-29", "11-30", "12-01"];

/// Does every hold of a day completely, and rates the pain while doing it.
fn whole_day(patient: &mut Patient, day: &str) {
    for hour in 9..=17 {
        let moment = at(&format!("{day}T{hour:02}:02"));
        let request = request(patient, false);
        let script = running::begin(&mut patient.folder, &moment, &request).expect("nothing pauses it");
        let Dose::Hold { repetitions, hold_s, .. } = script.run.dose else { panic!("a hold") };
        let held = HoldRecord { side: None, held_ms: u32::from(hold_s) * 1000 };
        let work = Work::Timed(vec![held; repetitions.into()]);
        let run = exercises::run::Run { work, end: RunEnd::Completed, ..script.run };
        running::checkpoint(&mut patient.folder, &moment, &RunSnapshot { plan: patient.plan, run }).expect("begun here");
    }
    let during = QuestionAnswer::During { plan: patient.plan, item: ItemId(1), score: Score::at_most_ten(1) };
    answering::answer(&mut patient.folder, &at(&format!("{day}T17:10")), &during).expect("an item of the plan");
}

fn item(patient: &Patient, moment: &str) -> TodayItem {
    today::page(&patient.folder, &at(moment)).expect("a page").items.remove(0)
}

#[test]
fn a_step_is_offered_taken_and_then_in_use() {
    let mut patient = patient(true);
    for day in WEEK {
        assert_eq!(item(&patient, &format!("{day}T08:50")).step, None, "less than a week");
        whole_day(&mut patient, day);
    }
    let offered = item(&patient, "12-02T08:55");
    let step = offered.step.as_ref().and_then(|step| step.offered(&offered.item)).expect("met for a week");
    assert_eq!(*step, Step::Change { quantity: Quantity::HoldSeconds, by: 5 });
    let Dose::Hold { hold_s: before, .. } = offered.item.dose else { panic!("a hold") };
    let request = request(&patient, true);
    let script = running::begin(&mut patient.folder, &at("12-02T09:01"), &request).expect("it is offered");
    let Dose::Hold { hold_s: after, .. } = script.run.dose else { panic!("a hold") };
    assert_eq!(after, before + 5);
    let patient = patient.restarted();
    let used = item(&patient, "12-02T10:01");
    assert_eq!((used.item.dose, used.step), (script.run.dose, None), "in use, and no other step within a week");
}

#[test]
fn without_the_clinicians_permission_nothing_is_offered_and_a_press_is_refused() {
    let mut patient = patient(false);
    WEEK.into_iter().for_each(|day| whole_day(&mut patient, day));
    assert_eq!(item(&patient, "12-02T08:55").step, None);
    let before = patient.bytes();
    let request = request(&patient, true);
    let refused = running::begin(&mut patient.folder, &at("12-02T09:01"), &request);
    assert_eq!(refused.err(), Some(Failure::NoSuchItem));
    assert!(patient.bytes() == before);
}
