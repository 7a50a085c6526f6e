//! Which days are known and owed: summaries that leave days out, cards in the middle, clocks and travels.

use super::person::Person;
use super::prescribed::{Dose, Plan, finger_glides, heel_raise, heel_to_toe, hip_bridge, sit_to_stand, toe_lift};
use chrono::NaiveDate;
use serde_json::{Value, json};

fn date(year: i32, month: u32, day: u32) -> NaiveDate {
    NaiveDate::from_ymd_opt(year, month, day).expect("a date")
}

#[test]
fn another_load_is_a_change_and_a_step_of_the_dose_keeps_it() {
    let weight = |kg: &str| heel_raise().with(&format!("load = {{ kg = {kg} }}"));
    let mut gus = Person::with(&[weight("2.5")]);
    for day in 0..14 {
        gus.morning(day, 1);
        gus.does(1, day, "18:02");
        gus.hurts(1, day, "18:10", 1);
    }
    let words = gus.review_in_words(13);
    assert!(words.contains("same load"), "{words}");
    gus.review(13).proposes(1, "progress");
    gus.gets_another_card(14, |plan| plan.items[0] = weight("3"));
    for day in 14..17 {
        gus.does(1, day, "18:02");
    }
    let review = gus.review(16);
    review.proposes(1, "keep");
    review.because(1, &["changed-lately"]);
}

#[test]
fn once_the_repetitions_have_grown_the_weight_does() {
    let weight = heel_raise().dose(Dose::Reps(2, 15)).with("load = { kg = 2.5 }");
    let mut ida = Person::with(&[weight]);
    for day in 0..14 {
        ida.morning(day, 1);
        ida.does(1, day, "18:02");
        ida.hurts(1, day, "18:10", 1);
    }
    let review = ida.review(13);
    review.proposes(1, "progress");
    assert_eq!(review.of("items", 1)["step"], "load 3 kg");
    let words = ida.review_in_words(13);
    assert!(words.contains("repetitions with 3 kg"), "{words}");
}

#[test]
fn days_after_the_last_summary_are_not_counted() {
    let mut kit = Person::with(&[heel_raise()]);
    for day in 0..22 {
        kit.morning(day, if day < 11 { 5 } else { 2 });
        kit.does(1, day, "18:05");
    }
    // The summary ends three weeks before the visit.
    let review = kit.review_at(42, 0, 21);
    assert_eq!((&review.0["until"], review.done(1), review.last14(1)), (&json!(21), (22, 22), (14, 14)));
    assert_eq!(review.pain(1)["verdict"], "better");
    assert_eq!(review.of("adherence", 1)["broke_off_day"], Value::Null);
}

/// Whoever leaves out days hides them, and nothing is claimed about them; by default a summary begins with the plan.
#[test]
fn days_that_no_summary_covers_are_not_known() {
    let mut liv = Person::with(&[heel_raise()]);
    for day in (0..10).chain(20..30) {
        liv.does(1, day, "18:05");
    }
    liv.review(9);
    let review = liv.review_from(20, 29);
    assert_eq!(review.0["until"], 29);
    assert_eq!(review.done(1), (20, 20));
    let words = liv.review_in_words(29);
    assert!(words.contains("20 of 30 sessions"), "of the whole period, days without any record are owed:\n{words}");
}

#[test]
fn a_card_in_the_middle_brings_its_own_limit_and_drops_an_item() {
    let mut yan = Person::with(&[heel_raise(), sit_to_stand().number(2).at(&["18:30"])]);
    for day in 0..20 {
        if day == 10 {
            yan.gets_another_card(day, |plan| {
                plan.items.remove(1);
                plan.items[0] = heel_raise().limit(3);
            });
        }
        yan.does(1, day, "18:05");
        yan.hurts(1, day, "18:10", if matches!(day, 5 | 12) { 4 } else { 1 });
        if day < 10 {
            yan.does(2, day, "18:35");
        }
    }
    let review = yan.review(19);
    assert_eq!(review.alarms(), [(12, "pain-above-limit".to_owned(), vec![])]);
    assert_eq!(review.list("alarms")[0]["revision"], 2);
    assert_eq!(review.of("during", 1)["above_limit"], 1, "each day against the limit of its own card");
    assert_eq!((review.done(1), review.done(2)), ((20, 20), (10, 10)));
    assert_eq!(review.of("adherence", 2)["in_force"], false);
    assert!(review.list("items").iter().all(|item| item["item"] != 2));
}

#[test]
fn what_was_little_before_the_card_changed_it_is_not_held_against_it() {
    let mut rut = Person::with(&[hip_bridge()]);
    for day in 0..15 {
        if day == 10 {
            rut.gets_another_card(day, |plan| plan.items[0].dose = Dose::Hold(3, 10));
        }
        if day >= 10 {
            rut.does(1, day, "18:05");
        }
    }
    let review = rut.review(14);
    assert_eq!((review.done(1), review.last14(1)), ((5, 15), (5, 14)));
    review.proposes(1, "keep");
    review.because(1, &["changed-lately"]);
}

/// The clocks go forward on Sunday, 28 March 2027, from 02:00 to 03:00.
#[test]
fn an_hour_that_does_not_exist_is_not_owed() {
    let plan = Plan {
        age: "40-49",
        complaints: vec![("hand", None, Some(2))],
        items: vec![finger_glides().at(&["02:30"])],
        clear: vec![],
    };
    // A night nurse.
    let mut zac = Person::starting(date(2027, 3, 24), &[(0, "+01:00"), (4, "+02:00")], plan);
    for day in [1, 2, 3, 5, 6] {
        zac.does(1, day, "02:35");
    }
    assert_eq!(zac.review(6).done(1), (5, 5));
}

#[test]
fn the_day_on_which_the_clocks_change_is_a_day_as_any_other() {
    let plan = Plan {
        age: "40-49",
        complaints: vec![("hand", None, Some(2))],
        items: vec![heel_raise().at(&["07:00", "18:00"])],
        clear: vec![],
    };
    let mut zed = Person::starting(date(2027, 3, 24), &[(0, "+01:00"), (4, "+02:00")], plan);
    (0..8).for_each(|day| {
        ["07:04", "18:04"].iter().filter(|time| (day, **time) != (0, "07:04")).for_each(|time| zed.does(1, day, time))
    });
    let review = zed.review(7);
    assert_eq!((review.done(1), &review.of("adherence", 1)["late"]), ((15, 15), &json!(0)), "the card came at 08:40");
}

#[test]
fn who_travels_follows_the_wall_clock_of_the_place() {
    let plan = Plan { age: "40-49", complaints: vec![("calf", None, Some(2))], items: vec![heel_raise()], clear: vec![] };
    let zones = [(0, "+01:00"), (5, "-05:00"), (10, "+01:00")];
    let mut abe = Person::starting(date(2026, 11, 2), &zones, plan);
    (0..14).for_each(|day| abe.does(1, day, "18:05"));
    let review = abe.review(13);
    assert_eq!((review.done(1), &review.of("adherence", 1)["late"]), ((14, 14), &json!(0)));
}

#[test]
fn lists_are_in_the_order_of_items_whatever_the_order_of_the_plan() {
    let items = [toe_lift().number(3), heel_to_toe().number(2), heel_raise()];
    let mut bo = Person::with(&items);
    (1..4).for_each(|item| bo.does(item, 0, "18:05"));
    let review = bo.review(0);
    for key in ["adherence", "during", "items"] {
        let order: Vec<&Value> = review.list(key).iter().map(|one| &one["item"]).collect();
        assert_eq!(order, [&json!(1), &json!(2), &json!(3)], "{key}");
    }
}
