//! Answers that are taken back, and what alarms pause and make easier until a card or the person says otherwise.

use crate::people::{Patient, at, clinic, example, issue};
use actions::DataFolder;
use actions::clinic::{receiving, reviewing};
use actions::patient::{answering, plans, running, sealing, taking, today};
use exercises::alarm::{Circumstance, ClearedAlarm, Trouble};
use exercises::catalogue::RungId;
use exercises::id::{ActivityId, AlarmId, ComplaintId, ItemId, PlanId};
use exercises::plan::{BodySide, Prescription};
use exercises::score::Score;
use exercises::suspension::Suspends;
use exercises::time::DayNumber;
use exercises::today::{Head, PauseEnd, Today};
use std::collections::BTreeSet;
use wire::Failure;
use wire::patient::{BeginRequest, CardSource, QuestionAnswer, RunScript, SealRequest, TakeCardRequest, TroubleRequest};

/// The hourly hold, with a limit of 5.
const HOLD: ItemId = ItemId(1);
/// Standing on the left leg.
const BALANCE: ItemId = ItemId(2);

fn during(plan: PlanId, score: u8) -> QuestionAnswer {
    QuestionAnswer::During { plan, item: HOLD, score: Score::at_most_ten(score) }
}

fn morning(plan: PlanId, score: u8) -> QuestionAnswer {
    QuestionAnswer::Morning { plan, complaint: ComplaintId(1), score: Score::at_most_ten(score) }
}

fn answer(patient: &mut Patient, moment: &str, said: &QuestionAnswer) -> Today {
    answering::answer(&mut patient.folder, &at(moment), said).expect("something of the plan")
}

fn take_back(patient: &mut Patient, moment: &str, said: &QuestionAnswer) -> Today {
    answering::take_back(&mut patient.folder, &at(moment), said).expect("a plan")
}

fn begin(patient: &mut Patient, moment: &str, item: ItemId) -> Result<RunScript, Failure> {
    let request = BeginRequest { plan: patient.plan, item, step: false };
    running::begin(&mut patient.folder, &at(moment), &request)
}

fn raise(patient: &mut Patient, moment: &str, trouble: Trouble, item: Option<ItemId>, said: &[Circumstance]) -> Today {
    let circumstances: BTreeSet<Circumstance> = said.iter().copied().collect();
    let request = TroubleRequest { plan: patient.plan, trouble, item, circumstances };
    answering::trouble(&mut patient.folder, &at(moment), &request).expect("an item of the plan")
}

/// What pauses an item, on this page.
fn pauses(page: &Today, item: ItemId) -> Option<Trouble> {
    page.items.iter().find(|one| one.item.id == item).expect("an item of the plan").paused
}

fn ratings(patient: &Patient) -> Vec<u8> {
    let history = &plans::one(&patient.folder, None).expect("taken").followed.history;
    history.during.iter().map(|rating| rating.score.points()).collect()
}

#[test]
fn a_rating_above_the_limit_that_is_taken_back_pauses_nothing_any_more() {
    let mut patient = Patient::new();
    let plan = patient.plan;
    let said = during(plan, 8);
    let page = answer(&mut patient, "11-25T09:10", &said);
    assert_eq!(pauses(&page, HOLD), Some(Trouble::PainAboveLimit));
    assert_eq!(page.alarms.len(), 1);
    assert_eq!(begin(&mut patient, "11-25T10:01", HOLD).err(), Some(Failure::Paused(Trouble::PainAboveLimit)));
    let page = take_back(&mut patient, "11-25T10:02", &said);
    assert_eq!((pauses(&page, HOLD), page.alarms.len(), ratings(&patient)), (None, 0, vec![]));
    let mut patient = patient.restarted();
    assert!(begin(&mut patient, "11-25T10:03", HOLD).is_ok(), "after a start as well");
}

#[test]
fn of_two_ratings_above_the_limit_the_second_taken_back_leaves_the_item_open_the_next_day() {
    let suspended = |taken_back: bool| {
        let mut patient = Patient::new();
        let plan = patient.plan;
        let said = during(plan, 8);
        answer(&mut patient, "11-25T17:10", &said);
        answer(&mut patient, "11-26T17:10", &said);
        if taken_back {
            take_back(&mut patient, "11-26T17:11", &said);
            assert_eq!(ratings(&patient), [8], "the day before keeps its own");
        }
        begin(&mut patient, "11-27T09:01", HOLD).err()
    };
    assert_eq!(suspended(false), Some(Failure::Paused(Trouble::PainAboveLimit)));
    assert_eq!(suspended(true), None);
}

#[test]
fn only_the_last_of_equal_answers_is_taken_back_at_once() {
    let mut patient = Patient::new();
    let plan = patient.plan;
    let said = during(plan, 3);
    answer(&mut patient, "11-25T12:00", &said);
    answer(&mut patient, "11-25T16:00", &during(plan, 4));
    answer(&mut patient, "11-25T17:00", &said);
    take_back(&mut patient, "11-25T17:01", &said);
    assert_eq!(ratings(&patient), [3, 4]);
    take_back(&mut patient, "11-25T17:02", &said);
    assert_eq!(ratings(&patient), [4]);
}

#[test]
fn a_mornings_or_an_activitys_answer_that_is_taken_back_is_asked_again() {
    let mut patient = Patient::new();
    let plan = patient.plan;
    let before = today::page(&patient.folder, &at("12-02T08:00")).expect("a page").questions;
    let activity = QuestionAnswer::Activity { plan: patient.plan, activity: ActivityId(1), score: Score::at_most_ten(6) };
    for said in [morning(plan, 3), activity] {
        let asked = answer(&mut patient, "12-02T08:01", &said).questions;
        assert_eq!(asked.len(), before.len() - 1, "{said:?}");
        assert_eq!(take_back(&mut patient, "12-02T08:02", &said).questions, before, "{said:?}");
    }
}

#[test]
fn without_such_an_answer_today_nothing_is_written() {
    let mut patient = Patient::new();
    let plan = patient.plan;
    answer(&mut patient, "11-25T17:10", &during(plan, 8));
    let unchanged = |patient: &mut Patient, moment: &str, said: &QuestionAnswer| {
        let before = patient.bytes();
        take_back(patient, moment, said);
        assert!(patient.bytes() == before, "{said:?} at {moment}");
    };
    unchanged(&mut patient, "11-25T17:11", &during(plan, 7));
    unchanged(&mut patient, "11-25T17:11", &morning(plan, 8));
    unchanged(&mut patient, "11-26T03:00", &during(plan, 8));
    assert_eq!(ratings(&patient), [8]);
    take_back(&mut patient, "11-26T02:59", &during(plan, 8));
    assert_eq!(ratings(&patient), [0_u8; 0], "the person's day ends at three");
    unchanged(&mut patient, "11-26T02:59", &during(plan, 8));
}

#[test]
fn a_passing_illness_pauses_everything_until_the_person_is_well_again() {
    let mut patient = Patient::new();
    let page = raise(&mut patient, "11-25T09:10", Trouble::Unwell, None, &[]);
    assert_eq!((page.head.clone(), page.ill()), (Head::Stopped(Trouble::Unwell), vec![patient.plan]));
    assert_eq!(begin(&mut patient, "11-27T09:01", HOLD).err(), Some(Failure::Paused(Trouble::Unwell)));
    let page = answering::well_again(&mut patient.folder, &at("11-27T09:02"), patient.plan).expect("a plan");
    assert!(page.items.iter().all(|item| item.paused.is_none()), "{:?}", page.items);
    let mut patient = patient.restarted();
    assert!(begin(&mut patient, "11-27T09:03", HOLD).is_ok());
    let again = raise(&mut patient, "11-28T09:10", Trouble::Unwell, None, &[]);
    assert_eq!(again.head, Head::Stopped(Trouble::Unwell), "it ends only what was said before");
}

#[test]
fn with_a_warning_sign_only_a_card_ends_what_an_illness_pauses() {
    let mut patient = Patient::new();
    let page = raise(&mut patient, "11-25T09:10", Trouble::Unwell, None, &[Circumstance::SweatsOrWeightLoss]);
    assert_eq!((page.alarms[0].ends, page.ill()), (PauseEnd::Card, vec![]));
    let page = answering::well_again(&mut patient.folder, &at("11-25T09:11"), patient.plan).expect("a plan");
    assert_eq!(page.head, Head::Stopped(Trouble::Unwell));
    assert_eq!(begin(&mut patient, "11-25T10:01", HOLD).err(), Some(Failure::Paused(Trouble::Unwell)));
}

/// A patient who stands on a folded towel from the beginning, which thirty seconds on the floor on two days allow.
fn at_level(level: &str) -> Prescription {
    let mut plan: Prescription = example();
    plan.items[1].rung = Some(RungId::new(level).expect("an id"));
    let mut left = *plan.baselines.iter().find(|one| one.leg == BodySide::Left).expect("the example has one");
    (left.tenths, left.capped) = (300, true);
    plan.baselines.retain(|one| one.leg != BodySide::Left);
    for days in [2, 0] {
        left.taken = Some(at("11-25T08:00").now.date() - chrono::Duration::days(days));
        plan.baselines.push(left);
    }
    plan
}

/// The patient takes a card that the clinic has just issued.
fn take_next(patient: &mut Patient, folder: &mut DataFolder, moment: &str, plan: Prescription) {
    let out = patient.dir.path().join(moment.replace(':', "-"));
    let text = issue(folder, &at(moment), plan, &out);
    let request = TakeCardRequest { source: CardSource::Text(text), agreed: Vec::new() };
    taking::take(&mut patient.folder, &at(moment), &request).expect("a valid card");
    patient.plan = plans::one(&patient.folder, None).expect("taken").plan().header.id;
}

fn on_a_towel() -> Patient {
    let mut patient = Patient::without_card();
    let mut folder = clinic(patient.dir.path());
    take_next(&mut patient, &mut folder, "11-25T08:00", at_level("towel-open"));
    patient
}

fn level(script: &RunScript) -> Option<String> {
    script.item.rung.as_ref().map(|rung| rung.as_str().to_owned())
}

#[test]
fn a_near_fall_makes_its_item_one_level_easier_and_asks_for_a_hand_at_the_easiest() {
    let mut patient = on_a_towel();
    let before = begin(&mut patient, "11-25T08:50", BALANCE).expect("nothing pauses it");
    assert_eq!((level(&before).as_deref(), before.hand_on_support), (Some("towel-open"), false));
    let page = raise(&mut patient, "11-25T08:55", Trouble::NearlyFell, Some(BALANCE), &[]);
    assert_eq!((pauses(&page, BALANCE), page.alarms[0].suspends), (None, None), "nothing is paused");
    let mut patient = patient.restarted();
    let after = begin(&mut patient, "11-25T19:31", BALANCE).expect("nothing pauses it");
    assert_eq!((level(&after).as_deref(), after.run.rung == after.item.rung), (Some("firm-open"), true));
    assert!(after.hand_on_support && after.cautions_first && !after.item.may_step);
    let other = begin(&mut patient, "11-25T19:46", ItemId(3)).expect("nothing pauses it");
    assert!(!other.hand_on_support, "another item stays as it is");
}

#[test]
fn a_near_fall_at_the_easiest_level_leaves_it_with_a_hand_on_the_support() {
    let mut patient = Patient::new();
    let before = begin(&mut patient, "11-25T08:50", BALANCE).expect("nothing pauses it");
    assert_eq!((level(&before).as_deref(), before.hand_on_support), (Some("firm-open"), false));
    raise(&mut patient, "11-25T08:55", Trouble::NearlyFell, Some(BALANCE), &[]);
    let after = begin(&mut patient, "11-25T19:31", BALANCE).expect("nothing pauses it");
    assert_eq!((level(&after), after.run.dose, after.hand_on_support), (level(&before), before.run.dose, true));
    let page = raise(&mut patient, "11-26T08:10", Trouble::NearlyFell, Some(BALANCE), &[]);
    assert_eq!(page.alarms.iter().filter_map(|one| one.suspends).collect::<Vec<_>>(), [Suspends::Standing]);
    let refused = begin(&mut patient, "11-26T19:31", BALANCE).err();
    assert_eq!(refused, Some(Failure::Paused(Trouble::NearlyFell)), "the second within a week");
}

#[test]
fn after_a_near_fall_a_card_with_another_level_is_followed_and_one_with_the_same_level_stays_eased() {
    let mut patient = Patient::without_card();
    let mut folder = clinic(patient.dir.path());
    take_next(&mut patient, &mut folder, "11-25T08:00", at_level("towel-open"));
    raise(&mut patient, "11-27T08:55", Trouble::NearlyFell, Some(BALANCE), &[]);
    let next = |level: &str| Prescription { confirmed: None, ..at_level(level) };
    take_next(&mut patient, &mut folder, "12-02T08:00", next("towel-open"));
    let same = begin(&mut patient, "12-02T19:31", BALANCE).expect("nothing pauses it");
    assert_eq!((level(&same).as_deref(), same.hand_on_support), (Some("firm-open"), true), "nothing else was decided");
    take_next(&mut patient, &mut folder, "12-04T08:00", next("firm-open"));
    let other = begin(&mut patient, "12-04T19:31", BALANCE).expect("nothing pauses it");
    assert_eq!((level(&other).as_deref(), other.hand_on_support), (Some("firm-open"), false), "as the card has it");
    raise(&mut patient, "12-04T19:40", Trouble::NearlyFell, Some(BALANCE), &[]);
    let again = begin(&mut patient.restarted(), "12-05T19:31", BALANCE).expect("nothing pauses it");
    assert!(again.hand_on_support, "nobody knew of this one when the card was issued");
}

#[test]
fn a_card_that_only_names_an_alarm_gets_its_sign_and_day_from_what_was_received() {
    let mut patient = Patient::without_card();
    let dir = patient.dir.path().to_owned();
    let mut folder = clinic(&dir);
    let text = issue(&mut folder, &at("11-25T08:00"), example(), &dir.join("card"));
    let request = TakeCardRequest { source: CardSource::Text(text), agreed: Vec::new() };
    taking::take(&mut patient.folder, &at("11-25T08:40"), &request).expect("a valid card");
    patient.plan = plans::one(&patient.folder, None).expect("taken").plan().header.id;
    raise(&mut patient, "11-27T09:10", Trouble::Fell, Some(BALANCE), &[]);
    let seal = SealRequest { plan: patient.plan, from: None, until: at("11-28T20:00").now.date(), note: None };
    let out = dir.join("x.age");
    sealing::seal(&mut patient.folder, &at("11-28T20:00"), &seal, Some(&out)).expect("days to hand over");
    let files = vec![("x.age".to_owned(), Ok(std::fs::read(&out).expect("written")))];
    receiving::receive(&mut folder, &at("11-25T20:00"), files).expect("open");
    let review = reviewing::page(&folder, &at("12-02T08:00"), "K17").expect("a patient").review.expect("received");
    let (named, unknown) = (review.alarms[0].id, AlarmId([7; 8]));
    let next = Prescription {
        confirmed: None,
        cleared: [named, unknown].map(|id| ClearedAlarm { id, seen: None }).to_vec(),
        ..example()
    };
    let text = issue(&mut folder, &at("12-02T08:00"), next, &dir.join("next"));
    let request = TakeCardRequest { source: CardSource::Text(text), agreed: Vec::new() };
    taking::take(&mut patient.folder, &at("12-02T09:00"), &request).expect("the next card");
    let cleared = plans::one(&patient.folder, None).expect("taken").plan().prescription.cleared.clone();
    let seen = |id| cleared.iter().find(|one| one.id == id).expect("listed").seen;
    assert_eq!(seen(named), Some((Trouble::Fell, DayNumber(2))));
    assert_eq!(seen(unknown), None, "nothing is known of it");
    assert!(begin(&mut patient, "12-02T19:31", BALANCE).is_ok(), "what it paused goes on");
}
