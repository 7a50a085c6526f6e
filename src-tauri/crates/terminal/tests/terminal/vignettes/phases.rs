//! People whose plan has phases.

use super::person::Person;
use super::prescribed::{Dose, chin_back, heel_raise, sit_to_stand};
use serde_json::Value;

#[test]
fn of_two_phases_only_the_second_is_missed() {
    let mut wim = Person::with(&[chin_back().ending_on(6), heel_raise().number(2).starting_on(7)]);
    (0..7).for_each(|day| wim.does(1, day, "18:02"));
    let before = wim.review(6);
    assert_eq!((before.done(1), &before.of("adherence", 2)["done"]), ((7, 7), &Value::Null));
    before.proposes(2, "keep");
    before.because(2, &["phase-to-come"]);
    let review = wim.review(20);
    assert_eq!((review.done(1), review.done(2)), ((7, 7), (0, 14)));
    review.proposes(1, "keep");
    review.because(1, &["phase-over"]);
    review.proposes(2, "talk");
    review.because(2, &["nothing-done", "none-given"]);
}

#[test]
fn the_same_exercise_goes_on_with_another_dose() {
    let harder = heel_raise().number(2).dose(Dose::Reps(3, 10)).starting_on(7);
    let mut xena = Person::with(&[heel_raise().ending_on(6), harder]);
    (0..7).for_each(|day| xena.does(1, day, "18:02"));
    (7..14).for_each(|day| xena.does(2, day, "18:02"));
    let review = xena.review(13);
    assert_eq!((review.done(1), review.done(2)), ((7, 7), (7, 7)));
    let words = xena.review_in_words(13);
    assert!(words.contains("until 8 November") && words.contains("from 9 November"), "{words}");
}

#[test]
fn nothing_is_stepped_within_a_week_of_the_beginning_of_a_phase() {
    let mut yuri = Person::with(&[heel_raise().starting_on(7), sit_to_stand().number(2)]);
    yuri.mornings(0..13, 1);
    (7..13).for_each(|day| yuri.does(1, day, "18:02"));
    (7..13).for_each(|day| yuri.hurts(1, day, "18:10", 1));
    let review = yuri.review(12);
    assert_eq!(review.done(1), (6, 6));
    review.proposes(1, "keep");
    review.because(1, &["changed-lately"]);
}

#[test]
fn three_times_a_week_in_a_phase_owes_the_proportion_of_its_weeks() {
    // From a Thursday to the Wednesday of the week after the next: four days, a week, three days.
    let item = heel_raise().on_days("{ times_a_week = 3 }").starting_on(3).ending_on(16);
    let mut zita = Person::with(&[item, chin_back().number(2)]);
    [4, 8, 9].into_iter().for_each(|day| zita.does(1, day, "18:00"));
    let review = zita.review(20);
    assert_eq!(review.done(1), (3, 5), "one of one, two of three, none of one");
}
