//! What is wrong, what it suspends, and until when.

use super::person::Person;
use super::prescribed::{Plan, about, chin_back, heel_raise, heel_to_toe, one_leg, shoulder_blades};
use serde_json::{Value, json};

/// A woman of 74 whose ankle gives way: balance, heel raises, and her neck on a chair.
fn with_a_weak_ankle() -> Person {
    let items = [one_leg(), heel_raise().number(2).at(&["18:20"]), chin_back().number(3).level("chair").at(&["18:40"])];
    let complaints = vec![("ankle gives way", Some("left"), Some(3))];
    Person::of(Plan { age: "70-79", complaints, items: items.to_vec(), clear: Vec::new() })
}

/// She does all three on each of these days, as far as nothing is suspended.
fn stands_and_raises(person: &mut Person, day: u64, standing: bool) {
    if standing {
        person.stands(1, day, "18:02", &about(12));
        person.does(2, day, "18:22");
    }
    person.does(3, day, "18:42");
}

#[test]
fn two_near_falls_in_a_week_are_as_a_fall() {
    let mut ada = with_a_weak_ankle();
    for day in 0..12 {
        stands_and_raises(&mut ada, day, day <= 9);
        if matches!(day, 3 | 9) {
            ada.says_wrong("nearly-fell", Some(1), day, "18:50");
        }
    }
    let review = ada.review(11);
    let kind = || "nearly-fell".to_owned();
    assert_eq!(review.alarms(), [(3, kind(), vec![]), (9, kind(), vec![1, 2])]);
    assert_eq!((review.done(2), review.done(3)), ((10, 10), (12, 12)), "what is suspended is not owed");
    (1..3).for_each(|item| review.proposes(item, "talk"));
    review.never_proposes(3, &["talk"]);
}

#[test]
fn two_near_falls_with_more_than_a_week_between_suspend_nothing() {
    let mut bea = with_a_weak_ankle();
    for day in 0..13 {
        stands_and_raises(&mut bea, day, true);
        if matches!(day, 2 | 11) {
            bea.says_wrong("nearly-fell", Some(1), day, "18:50");
        }
    }
    let review = bea.review(12);
    let kind = || "nearly-fell".to_owned();
    assert_eq!(review.alarms(), [(2, kind(), vec![]), (11, kind(), vec![])]);
    review.never_proposes(1, &["progress"]);
    review.because(1, &["near-fall"]);
}

/// Neither device knows of the other's near fall; the review counts both.
#[test]
fn near_falls_on_two_devices_are_counted_together() {
    let mut gwen = with_a_weak_ankle();
    gwen.gets_another_device("tablet", 0);
    (0..7).for_each(|day| stands_and_raises(&mut gwen, day, true));
    gwen.says_wrong("nearly-fell", Some(1), 2, "18:50");
    gwen.on("tablet").says_wrong("nearly-fell", Some(1), 5, "18:50");
    let review = gwen.review(6);
    let kind = || "nearly-fell".to_owned();
    assert_eq!(review.alarms(), [(2, kind(), vec![]), (5, kind(), vec![1, 2])]);
    review.proposes(2, "talk");
}

/// A near fall makes it one level easier at home, without a card.
#[test]
fn after_a_near_fall_the_easier_level_is_practised_and_proposed() {
    let mut flo = Person::with(&[heel_to_toe().level("half-step")]);
    for day in 0..15 {
        flo.stands(1, day, "18:02", &about(14));
        if day == 9 {
            flo.says_wrong("nearly-fell", Some(1), day, "18:10");
        }
    }
    let review = flo.review(14);
    assert_eq!(review.alarms(), [(9, "nearly-fell".to_owned(), vec![])]);
    assert_eq!(review.done(1), (15, 15));
    review.proposes(1, "ease");
    review.because(1, &["near-fall"]);
    assert_eq!(review.of("items", 1)["step"], "level feet-together");
    let levels: Vec<&Value> = review.list("balance").iter().map(|series| &series["level"]).collect();
    assert!(levels.contains(&&json!("feet-together")) && levels.contains(&&json!("half-step")), "{levels:?}");
}

#[test]
fn dizziness_suspends_what_is_done_standing_until_a_card_clears_it() {
    let mut cai = with_a_weak_ankle();
    (0..4).for_each(|day| stands_and_raises(&mut cai, day, true));
    cai.says_wrong("dizzy", None, 4, "11:00");
    (4..8).for_each(|day| stands_and_raises(&mut cai, day, false));
    let before = cai.review(7);
    assert_eq!(before.alarms(), [(4, "dizzy".to_owned(), vec![1, 2])]);
    assert_eq!((before.done(2), before.done(3)), ((4, 4), (8, 8)));
    before.proposes(1, "talk");
    let id = before.list("alarms")[0]["id"].as_str().expect("a name").to_owned();
    cai.gets_another_card(8, |plan| plan.clear = vec![id]);
    (8..11).for_each(|day| stands_and_raises(&mut cai, day, true));
    let after = cai.review(10);
    assert_eq!(after.alarms(), [(4, "dizzy".to_owned(), vec![])]);
    assert_eq!(after.list("alarms")[0]["cleared"], true);
    assert_eq!((after.done(2), after.done(3)), ((7, 7), (11, 11)), "the days in between stay suspended");
    after.never_proposes(1, &["talk"]);
}

#[test]
fn an_illness_that_has_passed_suspends_nothing_any_more() {
    let ill_for_three_days = |circumstances: &[&str]| {
        let mut dov = Person::with(&[heel_raise(), chin_back().number(2).level("chair")]);
        (0..3).for_each(|day| (1..3).for_each(|item| dov.does(item, day, "18:05")));
        dov.says_wrong_with("unwell", circumstances, 3, "08:00");
        dov.is_well_again(6, "08:00");
        if circumstances.is_empty() {
            (6..8).for_each(|day| (1..3).for_each(|item| dov.does(item, day, "18:05")));
        }
        dov.review(7)
    };
    let review = ill_for_three_days(&[]);
    assert_eq!(review.alarms(), [(3, "unwell".to_owned(), vec![])]);
    assert_eq!((review.done(1), review.done(2)), ((5, 5), (5, 5)), "ill for three days");
    review.never_proposes(1, &["talk", "reduce"]);
    let review = ill_for_three_days(&["sweats-or-weight-loss"]);
    assert_eq!(review.alarms(), [(3, "unwell".to_owned(), vec![1, 2])], "until a card says so");
    (1..3).for_each(|item| review.proposes(item, "talk"));
}

/// A swollen calf is about all of it, and a card that clears another alarm does not clear it.
#[test]
fn a_swollen_calf_suspends_everything() {
    let mut eva = with_a_weak_ankle();
    stands_and_raises(&mut eva, 0, true);
    eva.says_wrong("nearly-fell", Some(1), 0, "18:50");
    let id = eva.review(0).list("alarms")[0]["id"].as_str().expect("a name").to_owned();
    eva.says_wrong("limb", None, 1, "11:00");
    eva.gets_another_card(2, |plan| plan.clear = vec![id]);
    let review = eva.review(3);
    assert_eq!(review.alarms(), [(0, "nearly-fell".to_owned(), vec![]), (1, "limb".to_owned(), vec![1, 2, 3])]);
    (1..4).for_each(|item| review.proposes(item, "talk"));
    assert_eq!(review.done(3), (1, 1));
}

#[test]
fn two_ratings_in_a_row_above_the_limit_count_across_devices() {
    let mut gil = Person::with(&[heel_raise(), chin_back().number(2)]);
    gil.gets_another_device("tablet", 0);
    for (day, device) in [(1, "phone"), (2, "tablet")] {
        gil.on(device).does(1, day, "18:04");
        gil.hurts(1, day, "18:12", 6);
    }
    let review = gil.review(3);
    let kind = || "pain-above-limit".to_owned();
    assert_eq!(review.alarms(), [(1, kind(), vec![]), (2, kind(), vec![1])]);
    review.proposes(1, "talk");
    review.never_proposes(2, &["talk"]);
}

#[test]
fn above_the_limit_the_exercise_stops_for_that_day_only() {
    let mut rob = Person::with(&[shoulder_blades().at(&["09:00", "18:00"])]);
    rob.does(1, 1, "09:05");
    rob.hurts(1, 1, "09:10", 6);
    rob.does(1, 1, "18:05");
    rob.is_refused("this exercise is paused");
    rob.does(1, 1, "09:05");
    rob.hurts(1, 1, "09:10", 6);
    rob.does(1, 2, "09:05");
    rob.does(1, 2, "18:05");
    let review = rob.review(2);
    assert_eq!(review.alarms(), [(1, "pain-above-limit".to_owned(), vec![])]);
    assert_eq!(review.done(1), (3, 5), "the session of that evening is not owed");
}

#[test]
fn once_above_the_limit_and_then_within_suspends_nothing() {
    let until = |until: u64| {
        let mut pat = Person::with(&[heel_raise()]);
        for day in 0..=until {
            pat.morning(day, 1);
            pat.does(1, day, "18:05");
            pat.hurts(1, day, "18:12", if day == 8 { 6 } else { 2 });
        }
        pat.review(until)
    };
    let review = until(10);
    assert_eq!(review.alarms(), [(8, "pain-above-limit".to_owned(), vec![])]);
    review.proposes(1, "ease");
    review.because(1, &["above-limit"]);
    // Three known ratings later nothing is to be eased, and nothing yet to be made harder.
    let review = until(11);
    review.proposes(1, "keep");
    review.because(1, &["pain-too-high"]);
    assert_eq!(review.of("during", 1)["above_limit"], 1);
    until(14).proposes(1, "progress");
}
