//! Pain in the morning and while doing it.

use super::person::Person;
use super::prescribed::{Plan, chin_back, finger_glides, heel_raise, shoulder_blades};
use super::review::{Review, k_of_n};
use serde_json::{Value, json};

#[test]
fn an_item_without_a_complaint_is_asked_about_as_well() {
    let mut ivo = Person::with(&[finger_glides().serves(None)]);
    (0..10).for_each(|day| ivo.does(1, day, "18:05"));
    let review = ivo.review(9);
    assert_eq!(k_of_n(&review.of("during", 1)["known"]), (0, 10));
    review.proposes(1, "progress");
    review.asks(1, &["pain"]);
    ivo.hurts(1, 10, "18:12", 6);
    let review = ivo.review(10);
    review.proposes(1, "ease");
}

#[test]
fn pain_without_a_rating_at_the_visit_has_no_base_before_the_third_morning() {
    let items = vec![heel_raise()];
    let mut mo =
        Person::of(Plan { age: "18-39", complaints: vec![("calf", Some("right"), None)], items, clear: Vec::new() });
    mo.mornings(0..2, 4);
    let review = mo.review(1);
    assert_eq!((&review.pain(1)["verdict"], &review.pain(1)["base"]), (&json!("too-few"), &Value::Null));
    mo.mornings(2..4, 6);
    assert_eq!(mo.review(3).pain(1)["base"], 4.0);
}

#[test]
fn with_a_rating_at_the_visit_that_is_the_base_until_the_third_morning() {
    let mut nan = Person::with(&[heel_raise()]);
    nan.mornings(0..2, 6);
    assert_eq!(nan.review(1).pain(1)["base"], 3.0);
    nan.morning(2, 5);
    assert_eq!(nan.review(2).pain(1)["base"], 6.0);
}

/// A runner's calf: four points while doing it for three days, within the limit, and low since.
fn after_a_flare(days_since: u64) -> Review {
    let mut ole = Person::with(&[heel_raise()]);
    for day in 0..=(12 + days_since) {
        ole.morning(day, 1);
        ole.does(1, day, "18:05");
        ole.hurts(1, day, "18:12", if (10..13).contains(&day) { 4 } else { 1 });
    }
    ole.review(12 + days_since)
}

#[test]
fn a_flare_that_is_just_over_blocks_a_step_and_a_week_later_it_does_not() {
    let review = after_a_flare(6);
    assert_eq!(review.pain(1)["flares"], json!([{ "from": 10, "to": 12, "peak": 4 }]));
    review.proposes(1, "keep");
    review.because(1, &["flare-lately"]);
    after_a_flare(7).proposes(1, "progress");
}

/// An office worker's neck, two items, and two mornings that had not settled.
fn two_bad_mornings(rated: bool) -> Review {
    let mut wim = Person::with(&[chin_back(), shoulder_blades().number(2).at(&["18:30"])]);
    for day in 0..15 {
        wim.morning(day, if matches!(day, 10 | 13) { 5 } else { 2 });
        wim.does(1, day, "18:05");
        wim.does(2, day, "18:35");
        if rated {
            wim.hurts(1, day, "18:10", 1);
            wim.hurts(2, day, "18:40", 3);
        }
    }
    wim.review(14)
}

#[test]
fn mornings_that_had_not_settled_count_against_what_hurt_most_the_day_before() {
    let review = two_bad_mornings(true);
    assert_eq!(review.pain(1)["unsettled"], json!([10, 13]));
    review.proposes(1, "progress");
    review.proposes(2, "ease");
    review.because(2, &["unsettled"]);
}

#[test]
fn mornings_of_which_it_is_not_known_what_they_count_against_ask_for_the_pain() {
    let review = two_bad_mornings(false);
    for item in [1, 2] {
        review.never_proposes(item, &["ease", "progress"]);
        review.asks(item, &["pain"]);
    }
}

#[test]
fn two_devices_add_up_and_of_two_mornings_the_higher_counts() {
    let mut fin = Person::with(&[heel_raise().at(&["09:00", "18:00"])]);
    fin.gets_another_device("tablet", 0);
    for day in 0..6 {
        fin.on("phone").morning(day, 2);
        fin.does(1, day, "09:04");
        fin.on("tablet").morning(day, if day == 5 { 4 } else { 1 });
        fin.does(1, day, "18:04");
    }
    let review = fin.review(5);
    assert_eq!(review.done(1), (12, 12));
    let pain = review.pain(1);
    assert_eq!((&pain["base"], &pain["now"], &pain["last_day"]), (&json!(2.0), &json!(2.0), &json!(5)));
}
