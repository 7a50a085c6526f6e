//! People who do exercises of the rarer kinds.

use super::person::Person;
use super::prescribed::{Dose, about, chin_back, turn_head};
use serde_json::{Value, json};

#[test]
fn a_timed_stand_on_both_feet_is_a_series_of_its_own_without_side_and_norm() {
    let mut zoe = Person::with(&[turn_head().dose(Dose::Limit(3, 40))]);
    for day in 0..20 {
        zoe.stands(1, day, "18:10", &about(8 + day));
        zoe.hurts(1, day, "18:20", 1);
    }
    let review = zoe.review(19);
    let balance = review.of("balance", 1);
    assert_eq!((&balance["verdict"], &balance["side"], &balance["now_s"]), (&json!("rising"), &Value::Null, &json!(27.0)));
    assert_eq!((&balance["exercise"], &balance["level"]), (&json!("stand-turn-head"), &json!("feet-apart")));
    review.proposes(1, "keep");
    review.because(1, &["not-met"]);
    let words = zoe.review_in_words(19);
    assert!(words.contains("No published times for comparison: they are for standing on one leg."), "{words}");
}

#[test]
fn seconds_grow_before_the_feet_come_together() {
    let after = |cap: u32| {
        let mut ada = Person::with(&[turn_head().dose(Dose::Limit(3, cap))]);
        for day in 0..9 {
            ada.stands(1, day, "18:10", &[f64::from(cap); 3]);
            ada.hurts(1, day, "18:20", 1);
        }
        let review = ada.review(8);
        review.proposes(1, "progress");
        review.of("items", 1)["step"].clone()
    };
    assert_eq!([after(20), after(30)], [json!("target +5 s"), json!("level feet-together")]);
}

#[test]
fn after_a_fall_a_timed_stand_is_suspended_and_sitting_goes_on() {
    let mut bea = Person::with(&[turn_head(), chin_back().number(2).at(&["18:40"]).level("chair")]);
    bea.stands(1, 0, "18:10", &about(15));
    bea.says_wrong("fell", Some(1), 0, "18:16");
    assert_eq!(bea.review(0).alarms(), [(0, "fell".to_owned(), vec![1])]);
    bea.stands(1, 1, "18:10", &about(15));
    bea.is_refused("this exercise is paused");
}
