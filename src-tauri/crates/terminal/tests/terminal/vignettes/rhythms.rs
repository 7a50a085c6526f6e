//! People who do an exercise on days of their own choice, or every so many days.

use super::person::Person;
use super::prescribed::{Plan, Prescribed, chair_rise, chin_back, heel_raise};
use chrono::NaiveDate;
use serde_json::{Value, json};

fn thrice() -> Prescribed {
    heel_raise().on_days("{ times_a_week = 3 }")
}

fn with(start: NaiveDate, offsets: &[(u64, &'static str)], item: Prescribed) -> Person {
    let plan = Plan { age: "40-49", complaints: vec![("what hurts", None, Some(3))], items: vec![item], clear: Vec::new() };
    Person::starting(start, offsets, plan)
}

fn moved(review: &super::review::Review) -> &Value {
    &review.of("adherence", 1)["moved"]
}

#[test]
fn three_times_a_week_on_other_days_is_done_and_told_as_moved() {
    let mut ida = Person::with(&[thrice()]);
    // The plan begins on a Monday; slots lie on Monday, Wednesday and Friday.
    for week in 0..3 {
        [1, 3, 6].into_iter().for_each(|day| ida.does(1, 7 * week + day, "10:30"));
    }
    let review = ida.review(20);
    assert_eq!((review.done(1), moved(&review)), ((9, 9), &9.into()));
    review.never_proposes(1, &["reduce", "talk"]);
}

#[test]
fn a_week_in_progress_owes_only_what_was_done_until_it_is_over() {
    let mut jan = Person::with(&[thrice()]);
    jan.does(1, 1, "18:00");
    assert_eq!(jan.review(3).done(1), (1, 1));
    jan.does(1, 4, "18:00");
    assert_eq!(jan.review(5).done(1), (2, 2));
    assert_eq!(jan.review(7).done(1), (2, 3), "on the Monday after it is known");
}

#[test]
fn the_first_screen_says_how_far_the_week_has_come() {
    let mut ines = Person::with(&[thrice()]);
    ines.does(1, 1, "18:00");
    assert!(ines.sees_now(2, "09:00").contains("1 of 3 this week"));
    assert!(ines.sees_now(7, "09:00").contains("0 of 3 this week"));
}

#[test]
fn of_whoever_manages_once_a_week_twice_are_asked_and_not_three_times() {
    let mut jo = Person::with(&[thrice()]);
    (0..4).for_each(|week| jo.does(1, 7 * week + 1, "18:00"));
    (0..28).for_each(|day| jo.morning(day, 1));
    let review = jo.review(27);
    assert_eq!(review.done(1), (4, 12));
    review.proposes(1, "reduce");
    assert_eq!(review.of("items", 1)["step"], "2 of 3 a week");
}

#[test]
fn a_test_every_second_week_that_is_done_some_days_late_is_done_and_moved() {
    let mut kai = Person::with(&[chair_rise().on_days("{ every = 14 }")]);
    [3, 14, 25].into_iter().for_each(|day| kai.counts(1, day, "18:05", 12));
    (0..30).for_each(|day| kai.morning(day, 1));
    let review = kai.review(29);
    assert_eq!((review.done(1), moved(&review)), ((3, 3), &2.into()), "three days late, on its day, three days early");
}

#[test]
fn sessions_on_two_devices_count_together_and_the_same_day_once() {
    let mut kim = Person::with(&[thrice()]);
    kim.gets_another_device("tablet", 0);
    kim.does(1, 1, "18:00");
    kim.on("tablet").does(1, 1, "18:10");
    kim.does(1, 3, "18:00");
    kim.on("tablet").does(1, 8, "18:00");
    kim.on("phone").does(1, 9, "18:00");
    kim.on("tablet").does(1, 12, "18:00");
    let review = kim.review(14);
    assert_eq!(review.done(1), (5, 6), "two days of the first week, three of the second");
}

#[test]
fn a_second_device_that_came_late_asks_for_no_more() {
    let mut lea = Person::with(&[thrice()]);
    lea.does(1, 0, "18:00");
    lea.gets_another_device("tablet", 3);
    lea.on("tablet").does(1, 5, "18:00");
    assert_eq!(lea.review(7).done(1), (2, 3));
}

#[test]
fn a_card_in_the_middle_of_the_week_asks_for_nothing_twice() {
    let mut mia = Person::with(&[thrice()]);
    mia.does(1, 0, "18:00");
    mia.does(1, 1, "18:00");
    mia.gets_another_card(2, |plan| plan.items[0] = thrice().limit(4));
    mia.does(1, 5, "18:00");
    let review = mia.review(14);
    assert_eq!(review.done(1), (3, 6), "the first week is done, of the second nothing");
}

#[test]
fn days_off_are_not_owed_and_what_is_written_in_afterwards_counts() {
    let mut noa = Person::with(&[thrice()]);
    noa.takes_days_off(2, 3, "travelling");
    noa.does(1, 1, "18:00");
    noa.writes_in(1, 4, "18:00");
    assert_eq!(noa.review(7).done(1), (2, 2));
}

#[test]
fn a_plan_that_begins_on_a_thursday_owes_a_part_of_the_first_week() {
    let thursday = NaiveDate::from_ymd_opt(2026, 11, 5).expect("a date");
    let mut ole = with(thursday, &[(0, "+01:00")], thrice());
    ole.does(1, 2, "12:00");
    // Four days of seven: one of three. Then a whole week, of which nothing was done.
    assert_eq!(ole.review(11).done(1), (1, 4));
}

#[test]
fn weeks_are_those_of_the_place_when_the_clocks_change_and_on_a_journey() {
    // The clocks go back on Sunday, 25 October 2026; from day 9 on she is in another part of the world.
    let monday = NaiveDate::from_ymd_opt(2026, 10, 19).expect("a date");
    let mut pia = with(monday, &[(0, "+02:00"), (6, "+01:00"), (9, "-08:00")], thrice());
    [1, 3, 6, 8, 10, 13].into_iter().for_each(|day| pia.does(1, day, "21:30"));
    let review = pia.review(14);
    assert_eq!(review.done(1), (6, 6));
}

#[test]
fn every_other_day_goes_on_through_weeks_and_cards() {
    let mut rae = Person::with(&[heel_raise().on_days("{ every = 2 }")]);
    [0, 2, 4, 6, 8, 10].into_iter().for_each(|day| rae.does(1, day, "18:02"));
    rae.gets_another_card(11, |plan| plan.items[0] = heel_raise().on_days("{ every = 2 }").limit(4));
    // A day late, a day early, and on time.
    [13, 15, 16, 18].into_iter().for_each(|day| rae.does(1, day, "18:02"));
    let review = rae.review(19);
    assert_eq!((review.done(1), moved(&review)), ((10, 10), &2.into()));
}

#[test]
fn what_is_done_as_needed_is_counted_and_never_owed() {
    let mut tess = Person::with(&[chin_back().when_needed(), heel_raise().number(2)]);
    for day in [2, 3, 3, 9, 12, 15, 20] {
        tess.does(1, day, if day == 3 { "11:00" } else { "16:00" });
        tess.does(2, day, "18:02");
    }
    tess.hurts(1, 3, "11:30", 2);
    let review = tess.review(20);
    let told = review.of("adherence", 1);
    assert_eq!((&told["done"], &told["last14"], &told["broke_off_day"]), (&Value::Null, &Value::Null, &Value::Null));
    assert_eq!(told["as_needed"], json!({ "times": 7, "last_day": 20 }));
    assert_eq!((&review.of("adherence", 2)["as_needed"], review.done(2).1), (&Value::Null, 21));
    review.proposes(1, "keep");
    review.because(1, &["as-needed"]);
    let words = tess.review_in_words(20);
    assert!(words.contains("done 7 times, last on 22 November."), "{words}");
}

#[test]
fn what_hurts_above_the_limit_is_talked_about_although_nothing_is_owed() {
    let mut udo = Person::with(&[chin_back().when_needed().limit(3)]);
    udo.does(1, 2, "11:00");
    udo.hurts(1, 2, "11:10", 2);
    udo.does(1, 5, "11:00");
    udo.hurts(1, 5, "11:10", 4);
    let review = udo.review(6);
    assert_eq!(review.alarms().len(), 1);
    review.proposes(1, "talk");
    review.because(1, &["above-limit"]);
}

#[test]
fn what_becomes_as_needed_keeps_what_was_owed_before() {
    let mut vera = Person::with(&[heel_raise()]);
    [0, 1].into_iter().for_each(|day| vera.does(1, day, "18:02"));
    vera.gets_another_card(4, |plan| plan.items[0] = heel_raise().when_needed());
    [6, 9].into_iter().for_each(|day| vera.does(1, day, "12:00"));
    let review = vera.review(10);
    assert_eq!(review.done(1), (2, 4));
    assert_eq!(review.of("adherence", 1)["as_needed"], json!({ "times": 2, "last_day": 9 }));
}

#[test]
fn a_suspension_is_not_held_against_anybody() {
    let mut sam = Person::with(&[thrice()]);
    sam.does(1, 0, "18:00");
    sam.says_wrong("fell", None, 1, "12:00");
    let review = sam.review(14);
    assert_eq!(review.done(1), (1, 1));
}
