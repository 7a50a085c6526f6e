//! What is out of range, unknown or out of order in what was recorded: refused in one sentence with nothing lost, or read as it was
//! meant.

use super::person::Person;
use super::prescribed::heel_raise;
use super::review::k_of_n;
use serde_json::json;

#[test]
fn a_score_out_of_range_is_refused_and_nothing_of_the_file_is_kept() {
    let mut cy = Person::with(&[heel_raise()]);
    cy.does(1, 0, "18:05");
    cy.hurts(1, 0, "18:12", 11);
    cy.is_refused("score: a number from 0 to 10 is expected here");
    cy.does(1, 1, "18:05");
    let at = cy.moment(1, "07:30");
    cy.line(format!(r#"{{"do":"pain","at":"{at}","complaint":1,"score":-1}}"#));
    cy.is_refused("score: a number from 0 to 10 is expected here");
    cy.does(1, 2, "18:05");
    assert_eq!(cy.review(2).done(1), (1, 3), "the refused files left nothing behind");
}

#[test]
fn a_rating_for_an_item_or_a_complaint_that_the_plan_does_not_have_is_refused() {
    let mut dag = Person::with(&[heel_raise()]);
    dag.hurts(9, 0, "18:12", 3);
    dag.is_refused("line 1: ");
    dag.morning_of(7, 0, 3);
    dag.is_refused("line 1: ");
    dag.morning(0, 3);
    assert_eq!(dag.review(0).pain(1)["last_day"], 0);
}

#[test]
fn of_two_mornings_on_one_day_the_first_counts() {
    let mut els = Person::with(&[heel_raise()]);
    for day in 0..6 {
        els.morning(day, 2);
        let at = els.moment(day, "11:00");
        els.line(format!(r#"{{"do":"pain","at":"{at}","complaint":1,"score":9}}"#));
    }
    let review = els.review(5);
    let pain = review.pain(1);
    assert_eq!((&pain["base"], &pain["now"], &pain["verdict"]), (&json!(2.0), &json!(2.0), &json!("no-clear-change")));
}

#[test]
fn a_rating_before_its_session_is_of_that_day() {
    let mut fay = Person::with(&[heel_raise()]);
    fay.hurts(1, 0, "17:55", 2);
    fay.does(1, 0, "18:05");
    let review = fay.review(0);
    assert_eq!((k_of_n(&review.of("during", 1)["known"]), &review.of("during", 1)["last"]), ((1, 1), &json!([2])));
}

/// Between two recordings the device's clock goes back by two days, as with an empty battery.
#[test]
fn a_clock_that_jumps_back_loses_nothing() {
    let mut gus = Person::with(&[heel_raise()]);
    gus.morning(3, 2);
    gus.does(1, 3, "18:05");
    gus.review(3);
    gus.morning(1, 4);
    gus.does(1, 1, "18:05");
    gus.hurts(1, 1, "18:12", 1);
    let review = gus.review(4);
    assert_eq!(review.done(1), (2, 5));
    assert_eq!(review.pain(1)["last_day"], 3);
    assert_eq!(k_of_n(&review.of("during", 1)["known"]), (1, 2));
}

#[test]
fn the_order_of_the_lines_does_not_matter() {
    let mut hugo = Person::with(&[heel_raise()]);
    for day in [4, 0, 2, 1, 3] {
        hugo.hurts(1, day, "18:12", 1);
        hugo.does(1, day, "18:05");
        hugo.morning(day, 1);
    }
    let review = hugo.review(4);
    assert_eq!((review.done(1), k_of_n(&review.of("during", 1)["known"])), ((5, 5), (5, 5)));
}

#[test]
fn an_alarm_that_only_the_program_raises_cannot_be_written_by_hand() {
    let mut ina = Person::with(&[heel_raise()]);
    ina.says_wrong("pain-above-limit", Some(1), 0, "18:12");
    ina.is_refused("line 1: ");
    assert_eq!(ina.review(0).alarms(), []);
}
