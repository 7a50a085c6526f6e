//! What is done, how much of it, and what is proposed then.

use super::person::Person;
use super::prescribed::{Dose, Plan, about, heel_raise, hip_bridge, one_leg, one_leg_test, shoulder_blades};
use serde_json::{Value, json};

#[test]
fn a_test_is_never_made_harder() {
    let mut hedy = Person::with(&[one_leg_test()]);
    for day in 0..20 {
        hedy.does(1, day, "18:05");
        hedy.hurts(1, day, "18:15", 0);
    }
    let review = hedy.review(19);
    review.proposes(1, "keep");
    review.because(1, &["test"]);
    assert_eq!(review.of("items", 1)["step"], Value::Null);
}

#[test]
fn of_three_days_a_week_one_is_missed_and_a_second_run_on_another_does_not_fill_it() {
    let mut jo = Person::with(&[heel_raise().on(&["mon", "wed", "fri"])]);
    for week in 0..3 {
        for day in [0, 2, 4].into_iter().filter(|day| (week, *day) != (1, 2)) {
            jo.does(1, 7 * week + day, "18:05");
        }
    }
    // More on the Monday before is no session on the Wednesday.
    jo.does(1, 7, "20:30");
    let review = jo.review(20);
    assert_eq!((review.done(1), &review.of("adherence", 1)["moved"]), ((8, 9), &json!(0)));
    assert_eq!(review.last14(1), (5, 6));
}

#[test]
fn at_the_top_there_is_no_further_step() {
    let mut quin = Person::with(&[hip_bridge().level("heels-away").dose(Dose::Hold(10, 10))]);
    for day in 0..14 {
        quin.does(1, day, "18:05");
        quin.hurts(1, day, "18:15", 0);
    }
    let review = quin.review(13);
    review.proposes(1, "keep");
    review.because(1, &["at-the-top"]);
}

#[test]
fn who_does_it_in_the_afternoon_only_is_asked_for_the_afternoons() {
    let mut roy = Person::with(&[shoulder_blades().at(&["09:00", "16:00"])]);
    (0..15).for_each(|day| roy.does(1, day, "16:05"));
    let review = roy.review(14);
    assert_eq!((review.done(1), &review.of("adherence", 1)["late"]), ((15, 30), &json!(0)));
    review.proposes(1, "reduce");
    assert_eq!(review.of("items", 1)["step"], "only from noon on");
    review.asks(1, &["reason"]);
}

/// Two sessions a day, the first missed: the afternoon's counts for the second, and the evening's for the first.
#[test]
fn a_second_session_an_hour_later_fills_the_one_that_was_missed() {
    let mut raf = Person::with(&[shoulder_blades().at(&["09:00", "18:00"])]);
    for day in 0..6 {
        raf.does(1, day, "15:05");
        raf.does(1, day, if day < 3 { "20:05" } else { "15:50" });
    }
    let review = raf.review(5);
    assert_eq!(review.done(1), (9, 12), "twice within an hour is once");
}

#[test]
fn who_does_it_once_a_day_and_seldom_is_asked_for_a_shorter_dose() {
    let mut ron = Person::with(&[hip_bridge()]);
    [1, 4, 5, 9, 12].into_iter().for_each(|day| ron.does(1, day, "18:05"));
    let review = ron.review(13);
    assert_eq!(review.done(1), (5, 14));
    review.proposes(1, "reduce");
    review.because(1, &["little-done", "none-given"]);
    review.asks(1, &["reason"]);
    assert_eq!(review.of("items", 1)["step"], "hold -5 s");
}

#[test]
fn a_day_early_is_moved_as_well() {
    let mut sid = Person::with(&[heel_raise().on(&["mon", "wed", "fri"])]);
    // Monday, then Tuesday for Wednesday, then Friday; and Sunday for Monday.
    [0, 1, 4, 6].into_iter().for_each(|day| sid.does(1, day, "18:05"));
    let review = sid.review(7);
    assert_eq!((review.done(1), &review.of("adherence", 1)["moved"]), ((4, 4), &json!(2)));
}

/// After giving birth, she feels well and sees no need.
#[test]
fn who_feels_fine_may_do_less_or_end() {
    let complaints = vec![("pelvic floor", None, Some(2))];
    let items = vec![hip_bridge()];
    let mut sara = Person::of(Plan { age: "18-39", complaints, items, clear: Vec::new() });
    for day in 0..14 {
        if day % 4 == 0 {
            sara.does(1, day, "18:05");
        } else {
            sara.skips(1, day, "18:05", "felt-fine");
        }
    }
    let review = sara.review(13);
    review.proposes(1, "reduce");
    review.because(1, &["little-done", "given-felt-fine"]);
    assert_eq!(review.of("items", 1)["step"], "shorter dose or end");
}

#[test]
fn who_is_not_sure_how_is_shown_and_not_asked_for_less() {
    let mut tess = Person::with(&[hip_bridge()]);
    for day in 0..14 {
        if day % 4 == 0 {
            tess.does(1, day, "18:05");
        } else {
            tess.skips(1, day, "18:05", "not-sure-how");
        }
    }
    let review = tess.review(13);
    review.proposes(1, "talk");
    review.because(1, &["given-not-sure-how", "little-done"]);
}

#[test]
fn fourteen_days_off_are_nothing_owed() {
    let mut uma = Person::with(&[heel_raise()]);
    uma.takes_days_off(0, 13, "holiday");
    let review = uma.review(13);
    let adherence = review.of("adherence", 1);
    assert_eq!((&adherence["done"], &adherence["last14"]), (&Value::Null, &Value::Null), "not known, and not 0 of 0");
    review.proposes(1, "keep");
}

#[test]
fn what_is_written_in_is_done_and_says_nothing_about_the_target() {
    let mut vic = Person::with(&[heel_raise()]);
    (0..14).for_each(|day| vic.writes_in(1, day, "18:20"));
    let review = vic.review(13);
    assert_eq!(review.done(1), (14, 14));
    review.proposes(1, "keep");
    review.because(1, &["few-sessions"]);
}

#[test]
fn balance_that_falls_is_eased() {
    let mut xen = Person::with(&[one_leg()]);
    (0..20).for_each(|day| xen.stands(1, day, "18:05", &about(28 - day)));
    let review = xen.review(19);
    assert_eq!(review.of("balance", 1)["verdict"], "falling");
    review.proposes(1, "ease");
    review.because(1, &["balance-falling"]);
}
