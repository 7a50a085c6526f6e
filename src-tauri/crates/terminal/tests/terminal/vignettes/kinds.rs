//! People who do exercises of the rarer kinds.

use super::person::Person;
use super::prescribed::{Dose, about, chair_rise, chin_back, gaze, sitting, turn_head};
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

#[test]
fn a_count_changes_only_beyond_the_error_of_testing_oneself() {
    let after = |last: u8| {
        let mut cora = Person::with(&[chair_rise().on(&["mon"])]);
        for (week, count) in [12, 14, last].into_iter().enumerate() {
            cora.counts(1, 7 * week as u64, "18:05", count);
        }
        cora.review(16)
    };
    let review = after(14);
    let counts = review.of("counts", 1);
    assert_eq!((&counts["verdict"], &counts["best"], &counts["last"]), (&json!("no-clear-change"), &json!(14), &json!(14)));
    assert_eq!((&counts["unit"], &counts["seconds"], &counts["error"]), (&json!("repetitions"), &json!(30), &json!(2.5)));
    assert_eq!(counts["days"], json!([{"day": 0, "count": 12}, {"day": 7, "count": 14}, {"day": 14, "count": 14}]));
    review.proposes(1, "keep");
    review.because(1, &["test"]);
    let review = after(15);
    assert_eq!(review.of("counts", 1)["verdict"], "rising");
    assert_eq!(review.done(1), (3, 3));
}

#[test]
fn a_test_is_talked_about_or_kept_and_never_asked_less_of() {
    let mut dora = Person::with(&[chair_rise()]);
    (0..14).for_each(|day| if day % 5 == 0 { dora.counts(1, day, "18:05", 12) } else { dora.morning(day, 1) });
    let review = dora.review(13);
    assert_eq!(review.done(1), (3, 14));
    review.proposes(1, "keep");
    let words = dora.review_in_words(13);
    assert!(words.contains("Within measurement error") && words.contains("first 12, last 12, best 12."), "{words}");
}

#[test]
fn the_beat_grows_first_and_then_the_seconds() {
    let after = |seconds: u32, beats: u32| {
        let mut elin = Person::with(&[gaze().dose(Dose::Beat(3, seconds, beats))]);
        for day in 0..9 {
            elin.does(1, day, "18:05");
            elin.hurts(1, day, "18:15", 1);
        }
        let review = elin.review(8);
        review.proposes(1, "progress");
        review.of("items", 1)["step"].clone()
    };
    assert_eq!([after(30, 60), after(30, 120)], [json!("beats +10"), json!("seconds +5")]);
}

#[test]
fn a_beat_that_was_too_much_is_made_slower() {
    let mut finn = Person::with(&[gaze()]);
    for day in 0..9 {
        if day % 2 == 0 { finn.falls_short(1, day, "18:05") } else { finn.does(1, day, "18:05") }
    }
    let review = finn.review(8);
    review.proposes(1, "ease");
    assert_eq!(review.of("items", 1)["step"], "beats -10");
}

#[test]
fn graded_activity_asks_each_day_for_what_the_calendar_says() {
    let mut gus = Person::with(&[sitting()]);
    // On the first day what is asked, later always two minutes less than that.
    (0..12).for_each(|day| gus.goes_on(1, day, "18:05", if day < 3 { 10 } else { 8 + 2 * (day / 3) }));
    let review = gus.review(11);
    assert_eq!(review.done(1), (3, 12));
    let words = gus.review_in_words(11);
    assert!(words.contains("138 of 156 minutes"), "{words}");
    assert!(words.contains("16 minutes, 2 more every 3 days, up to 30"), "{words}");
}

#[test]
fn graded_activity_is_kept_talked_about_or_made_shorter_and_pain_does_not_ease_it() {
    let mut hedy = Person::with(&[sitting()]);
    for day in 0..12 {
        hedy.goes_on(1, day, "18:05", 10 + 2 * (day / 3));
        hedy.hurts(1, day, "18:30", 5);
        hedy.morning(day, 4);
    }
    hedy.review(11).proposes(1, "keep");
    let mut ivo = Person::with(&[sitting()]);
    (0..14)
        .for_each(|day| if day % 6 == 0 { ivo.goes_on(1, day, "18:05", 10 + 2 * (day / 3)) } else { ivo.morning(day, 1) });
    let review = ivo.review(13);
    review.proposes(1, "reduce");
    let words = ivo.review_in_words(13);
    assert!(words.contains("to 13 minutes"), "from the eighteen that the calendar has reached: {words}");
}

#[test]
fn a_card_that_goes_on_with_graded_activity_is_no_change() {
    let mut jan = Person::with(&[sitting()]);
    (0..6).for_each(|day| jan.goes_on(1, day, "18:05", 10 + 2 * (day / 3)));
    jan.gets_another_card(6, |plan| plan.items[0].dose = Dose::Quota(14, 2, 30));
    (6..10)
        .for_each(|day| if day % 3 == 0 { jan.goes_on(1, day, "18:05", 10 + 2 * (day / 3)) } else { jan.morning(day, 1) });
    let review = jan.review(9);
    // Eight of ten since the first card; since the second alone it would be two of four, of which nothing can be said.
    assert_eq!(review.done(1), (8, 10));
    review.proposes(1, "keep");
    review.because(1, &["by-calendar"]);
}

#[test]
fn graded_activity_above_its_limit_is_talked_about_and_at_its_goal_a_new_one_is_due() {
    let mut kim = Person::with(&[sitting()]);
    for day in 0..6 {
        kim.goes_on(1, day, "18:05", 10 + 2 * (day / 3));
        kim.hurts(1, day, "18:30", if day == 5 { 7 } else { 3 });
    }
    let review = kim.review(5);
    review.proposes(1, "talk");
    review.because(1, &["above-limit"]);
    let mut lea = Person::with(&[sitting().dose(Dose::Quota(10, 2, 14))]);
    (0..9).for_each(|day| lea.goes_on(1, day, "18:05", (10 + 2 * (day / 3)).min(14)));
    let review = lea.review(8);
    review.proposes(1, "keep");
    review.because(1, &["goal-reached"]);
    assert_eq!(review.done(1), (9, 9));
}
