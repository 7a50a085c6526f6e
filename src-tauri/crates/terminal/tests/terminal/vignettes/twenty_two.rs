//! Twenty-two people whose courses every clinician knows.

use super::person::Person;
use super::prescribed::{
    Dose, Plan, about, chin_back, chin_nod, heel_raise, heel_to_toe, hip_bridge, one_leg, sit_to_stand, toe_lift,
};
use super::review::k_of_n;
use chrono::NaiveDate;
use serde_json::{Value, json};

#[test]
fn v01_what_is_done_an_hour_late_every_day_is_done() {
    let mut ana = Person::with(&[heel_raise()]);
    ana.mornings(0..15, 1);
    for day in (0..15).filter(|day| *day != 6) {
        ana.does(1, day, "19:05");
        ana.hurts(1, day, "19:12", 1 + (day % 2) as u8);
    }
    let review = ana.review(14);
    assert_eq!(review.0["until"], 14);
    assert_eq!((review.done(1), &review.of("adherence", 1)["late"]), ((14, 15), &json!(14)));
    assert_eq!(review.of("adherence", 1)["broke_off_day"], Value::Null);
    assert_eq!(review.alarms(), []);
    review.proposes(1, "progress");
    review.asks(1, &[]);
}

#[test]
fn v02_two_ratings_in_a_row_above_the_limit_suspend_the_exercise() {
    let mut ben = Person::with(&[heel_raise()]);
    ben.mornings(0..15, 1);
    for (day, score) in (10..15).zip([2, 3, 4, 6, 7]) {
        ben.does(1, day, "19:05");
        ben.hurts(1, day, "19:12", score);
    }
    for day in 0..10 {
        ben.does(1, day, "19:05");
        ben.hurts(1, day, "19:12", 2);
    }
    let review = ben.review(14);
    let kind = "pain-above-limit".to_owned();
    assert_eq!(review.alarms(), [(13, kind.clone(), vec![]), (14, kind, vec![1])]);
    assert_eq!((&review.of("during", 1)["last"], &review.of("during", 1)["above_limit"]), (&json!([7, 6, 4]), &json!(2)));
    review.proposes(1, "talk");
    review.because(1, &["alarm"]);
    ben.does(1, 15, "19:05");
    ben.is_refused("this exercise is paused");
}

#[test]
fn v03_a_target_reached_nine_days_running_is_at_the_cap() {
    let mut cleo = Person::with(&[one_leg()]);
    for day in 0..22 {
        cleo.morning(day, 4 - (day / 6) as u8);
        if day != 5 {
            cleo.stands(1, day, "18:10", &about((16 + day).min(28)));
        }
    }
    let mut dana = Person::with(&[one_leg()]);
    for day in 0..22 {
        dana.morning(day, 4 - (day / 6) as u8);
        match day {
            5 => {}
            0..=12 => dana.stands(1, day, "18:10", &about(14 + day)),
            _ => dana.does(1, day, "18:10"),
        }
    }
    dana.hurts(1, 15, "18:20", 1);
    dana.hurts(1, 20, "18:20", 0);
    let review = dana.review(21);
    assert_eq!(review.done(1), (21, 22));
    assert_eq!(
        (&review.of("balance", 1)["verdict"], &review.of("balance", 1)["side"]),
        (&json!("at-the-cap"), &json!("left"))
    );
    assert_eq!(review.of("during", 1)["known"], json!({ "k": 2, "n": 21 }));
    review.proposes(1, "progress");
    review.asks(1, &[]);
    assert_eq!(review.of("items", 1)["step"], "target +5 s");
    // Somebody who stays below the target is not at the cap, and keeps on.
    let review = cleo.review(21);
    assert_ne!(review.of("balance", 1)["verdict"], "at-the-cap");
    review.proposes(1, "keep");
    review.because(1, &["not-met"]);
}

#[test]
fn v04_without_any_rating_it_progresses_once_pain_is_asked_about() {
    let mut eli = Person::with(&[chin_back().hourly("09:00", "17:00")]);
    for day in 0..15 {
        // 107 of 135 sessions.
        for hour in (9..18).filter(|hour| hour % 5 != 0 || (*hour == 10 && day % 7 == 0)) {
            eli.does(1, day, &format!("{hour}:02"));
        }
    }
    let review = eli.review(14);
    let (k, n) = review.done(1);
    assert!(n == 135 && (78..=82).contains(&(100 * k / n)), "{k} of {n}");
    assert_eq!((&review.of("during", 1)["last"], k_of_n(&review.of("during", 1)["known"])), (&json!([]), (0, 15)));
    review.proposes(1, "progress");
    review.asks(1, &["pain"]);
    review.because(1, &["target-met", "pain-unknown"]);
}

#[test]
fn v05_a_good_week_and_then_five_without_a_record_is_broken_off() {
    let monday = NaiveDate::from_ymd_opt(2026, 11, 2).expect("a date");
    let plan =
        Plan { age: "40-49", complaints: vec![("calf", None, Some(4))], items: vec![heel_raise()], clear: Vec::new() };
    // She comes home with the card when that day's session is over.
    let mut fay = Person::taking_it_at("19:00", monday, &[(0, "+01:00")], plan);
    for day in 1..8 {
        fay.morning(day, 4);
        fay.does(1, day, "18:04");
    }
    let review = fay.review(42);
    assert_eq!((review.done(1), review.last14(1)), ((7, 42), (0, 14)));
    assert_eq!(review.of("adherence", 1)["broke_off_day"], 8);
    assert_eq!((&review.pain(1)["verdict"], &review.pain(1)["last_day"]), (&json!("not-known-lately"), &json!(7)));
    review.proposes(1, "talk");
    review.because(1, &["nothing-done", "none-given"]);
}

#[test]
fn v06_little_done_for_want_of_time_is_asked_for_less_often() {
    let mut gus = Person::with(&[chin_back().hourly("09:00", "17:00")]);
    for day in 0..20 {
        gus.morning(day, 3);
        gus.does(1, day, &format!("{}:03", 9 + day % 9));
        if day % 3 == 0 {
            gus.does(1, day, &format!("{}:03", 9 + (day + 4) % 9));
        }
        gus.skips(1, day, &format!("{}:05", 9 + (day + 2) % 9), if day % 4 == 0 { "forgot" } else { "no-time" });
    }
    let review = gus.review(19);
    let (k, n) = review.done(1);
    assert!((13..=17).contains(&(100 * k / n)), "{k} of {n}");
    assert_eq!(review.pain(1)["verdict"], "no-clear-change");
    review.proposes(1, "reduce");
    review.because(1, &["little-done", "given-no-time"]);
    assert_eq!(review.of("items", 1)["step"], "5 of 9 a day");
    review.asks(1, &[]);
}

#[test]
fn v07_little_done_because_it_hurts_is_talked_about() {
    let mut hal = Person::with(&[chin_back().hourly("09:00", "17:00")]);
    for day in 0..20 {
        hal.does(1, day, &format!("{}:03", 9 + day % 9));
        if day % 4 != 0 {
            hal.does(1, day, &format!("{}:03", 9 + (day + 4) % 9));
        }
        hal.skips(1, day, &format!("{}:05", 9 + (day + 2) % 9), "pain");
    }
    let review = hal.review(19);
    let (k, n) = review.done(1);
    assert!((18..=22).contains(&(100 * k / n)), "{k} of {n}");
    review.proposes(1, "talk");
    review.because(1, &["given-pain", "little-done"]);
    assert_eq!(review.of("items", 1)["step"], Value::Null);
}

#[test]
fn v08_low_mornings_that_rise_are_worse() {
    let mut ida = Person::with(&[heel_raise()]);
    for (day, score) in (0..6).zip([1, 1, 1, 7, 8, 8]) {
        ida.morning(day, score);
    }
    let review = ida.review(5);
    let pain = review.pain(1);
    assert_eq!((&pain["verdict"], &pain["base"], &pain["now"]), (&json!("worse"), &json!(1.0), &json!(8.0)));
}

#[test]
fn v09_of_two_items_for_one_complaint_only_the_one_that_hurts_is_eased() {
    let mut jon = Person::with(&[heel_raise(), hip_bridge().number(2).at(&["18:30"])]);
    jon.mornings(0..15, 2);
    for day in 0..15 {
        jon.does(1, day, "18:02");
        jon.hurts(1, day, "18:10", 1);
        jon.does(2, day, "18:32");
        jon.hurts(2, day, "18:40", if day == 14 { 7 } else { 2 });
    }
    let review = jon.review(14);
    review.proposes(1, "progress");
    review.proposes(2, "ease");
    review.because(2, &["above-limit"]);
}

#[test]
fn v09_the_second_time_it_is_suspended_and_the_other_still_progresses() {
    let mut kim = Person::with(&[heel_raise(), hip_bridge().number(2).at(&["18:30"])]);
    kim.mornings(0..15, 2);
    for day in 0..15 {
        kim.does(1, day, "18:02");
        kim.hurts(1, day, "18:10", 1);
        if day < 8 {
            kim.does(2, day, "18:32");
            kim.hurts(2, day, "18:40", if day < 6 { 2 } else { 7 });
        }
    }
    let review = kim.review(14);
    review.proposes(1, "progress");
    review.proposes(2, "talk");
    assert_eq!(review.done(2), (8, 8), "what is suspended is not owed");
}

#[test]
fn v10_a_stand_on_both_feet_has_no_side_and_no_norm() {
    let mut lea = Person::with(&[heel_to_toe()]);
    for day in 0..20 {
        lea.stands(1, day, "18:10", &about(8 + day));
    }
    let review = lea.review(19);
    let balance = review.of("balance", 1);
    assert_eq!((&balance["verdict"], &balance["side"], &balance["now_s"]), (&json!("rising"), &Value::Null, &json!(27.0)));
    let words = lea.review_in_words(19);
    assert!(words.contains("No published times for comparison: they are for standing on one leg."), "{words}");
    assert!(!words.contains("For comparison:"), "{words}");
}

#[test]
fn v11_after_a_fall_everything_done_standing_is_suspended_and_the_rest_goes_on() {
    let items = [
        heel_raise(),
        sit_to_stand().number(2).at(&["18:10"]),
        one_leg().number(3).at(&["18:20"]),
        heel_to_toe().number(4).at(&["18:30"]),
        toe_lift().number(5).at(&["18:40"]).level("sitting"),
        chin_back().number(6).at(&["18:50"]).level("chair"),
        chin_nod().number(7).at(&["19:00"]),
    ];
    let mut mia = Person::with(&items);
    (1..8).for_each(|item| {
        mia.does(item, 0, ["18:02", "18:12", "18:22", "18:32", "18:42", "18:52", "19:02"][usize::from(item) - 1])
    });
    mia.says_wrong("fell", None, 1, "11:00");
    mia.morning(2, 3);
    (5..8).for_each(|item| {
        mia.does(item, 2, ["18:02", "18:12", "18:22", "18:32", "18:42", "18:52", "19:02"][usize::from(item) - 1])
    });
    let review = mia.review(2);
    assert_eq!(review.alarms(), [(1, "fell".to_owned(), vec![1, 2, 3, 4])]);
    (1..5).for_each(|item| review.proposes(item, "talk"));
    (5..8).for_each(|item| review.proposes(item, "keep"));
    assert_eq!((review.done(1), review.done(5)), ((1, 1), (2, 3)));
    mia.does(1, 3, "18:00");
    mia.is_refused("this exercise is paused");
    mia.does(5, 3, "18:40");
    mia.review(3);
}

#[test]
fn v11_a_level_done_standing_is_suspended_although_the_exercise_begins_sitting() {
    let mut nora = Person::with(&[toe_lift().level("standing"), chin_back().number(2).level("standing")]);
    nora.says_wrong("fell", None, 0, "20:00");
    assert_eq!(nora.review(0).alarms(), [(0, "fell".to_owned(), vec![1, 2])]);
}

#[test]
fn v12_a_near_fall_suspends_nothing_and_short_seconds_ease_nothing() {
    let near_fall_on = |near_fall: u64| {
        let mut olga = Person::with(&[one_leg()]);
        for day in 0..20 {
            olga.stands(1, day, "18:10", &about(8 + day));
            if day == near_fall {
                olga.says_wrong("nearly-fell", Some(1), day, "18:16");
            }
        }
        olga.review(19)
    };
    let review = near_fall_on(3);
    assert_eq!(review.alarms(), [(3, "nearly-fell".to_owned(), vec![])]);
    assert_eq!(review.of("balance", 1)["verdict"], "rising");
    assert_eq!(review.done(1), (20, 20));
    review.proposes(1, "keep");
    review.because(1, &["not-met"]);
    let review = near_fall_on(15);
    assert_eq!(review.alarms(), [(15, "nearly-fell".to_owned(), vec![])]);
    review.never_proposes(1, &["talk", "progress"]);
    review.because(1, &["near-fall"]);
}

#[test]
fn v13_a_rising_target_is_one_series() {
    let mut pia = Person::with(&[one_leg().dose(Dose::Balance(3, 20))]);
    for day in 0..42 {
        if matches!(day, 14 | 28) {
            pia.gets_another_card(day, |plan| plan.items[0].dose = Dose::Balance(3, if day == 14 { 25 } else { 30 }));
        }
        pia.stands(1, day, "18:10", &about(9 + day / 2));
    }
    let review = pia.review(41);
    assert_eq!(review.list("balance").len(), 1, "one leg, one series");
    assert_eq!(review.of("balance", 1)["verdict"], "rising");
    assert_eq!(review.of("balance", 1)["now_s"], json!(29.0));
}

#[test]
fn v14_two_of_four_sessions_short_by_one_repetition_are_eased() {
    let mut rita = Person::with(&[heel_raise()]);
    for day in 0..15 {
        if matches!(day, 11 | 13) {
            rita.falls_short(1, day, "18:02");
        } else {
            rita.does(1, day, "18:02");
        }
        rita.hurts(1, day, "18:10", 1);
    }
    let review = rita.review(14);
    review.proposes(1, "ease");
    review.because(1, &["target-missed"]);
    assert_eq!(review.of("adherence", 1)["in_part"], 2);
}

#[test]
fn v15_a_flare_is_told_although_the_end_equals_the_beginning() {
    let mut sam = Person::with(&[heel_raise(), toe_lift().number(2).at(&["18:30"])]);
    sam.mornings(0..10, 4);
    sam.mornings(10..19, 7);
    sam.mornings(19..30, 3);
    for day in 0..10 {
        sam.does(1, day, "18:02");
        sam.hurts(1, day, "18:10", 2);
    }
    for (item, day, score) in [(1, 10, 6), (1, 11, 8), (2, 12, 7), (2, 13, 6)] {
        sam.does(item, day, "18:32");
        sam.hurts(item, day, "18:40", score);
    }
    let review = sam.review(29);
    assert_eq!(review.pain(1)["flares"], json!([{ "from": 10, "to": 18, "peak": 7 }]));
    assert_eq!(review.pain(1)["verdict"], "no-clear-change");
    let kind = || "pain-above-limit".to_owned();
    let alarms = [(10, kind(), vec![]), (11, kind(), vec![1]), (12, kind(), vec![]), (13, kind(), vec![2])];
    assert_eq!(review.alarms(), alarms);
}

#[test]
fn v15_ratings_that_go_on_although_it_is_suspended_are_in_the_flare() {
    let mut tom = Person::with(&[heel_raise()]);
    tom.mornings(0..10, 4);
    tom.mornings(10..19, 7);
    tom.mornings(19..30, 3);
    for day in 0..19 {
        if day < 12 {
            tom.does(1, day, "18:02");
        }
        tom.hurts(1, day, "18:10", if day < 10 { 2 } else { [6, 7, 8][day as usize % 3] });
    }
    let review = tom.review(29);
    assert_eq!(review.pain(1)["flares"], json!([{ "from": 10, "to": 18, "peak": 8 }]), "one, with its days");
    assert_eq!(review.alarms().len(), 9);
    assert_eq!(review.of("during", 1)["above_limit"], 9);
}

#[test]
fn v16_sessions_stopped_after_the_first_set_for_want_of_time_are_reduced() {
    let mut una = Person::with(&[heel_raise()]);
    for day in 0..14 {
        if day % 2 == 0 {
            una.stops_early(1, day, "18:02");
        } else {
            una.skips(1, day, "18:05", "no-time");
        }
    }
    let review = una.review(13);
    assert_eq!((review.done(1), review.last14(1)), ((0, 14), (7, 14)));
    assert_eq!(review.of("adherence", 1)["in_part"], 7);
    review.proposes(1, "reduce");
    review.because(1, &["little-done", "given-no-time"]);
    assert_eq!(review.of("items", 1)["step"], "sets -1");
    let words = una.review_in_words(13);
    assert!(words.contains("Reduce to 1 set"), "{words}");
    assert!(words.contains("in part"), "{words}");
}

#[test]
fn v17_who_does_the_hours_before_noon_is_asked_for_these() {
    let mut vera = Person::with(&[chin_back().hourly("09:00", "17:00")]);
    for day in 0..15 {
        (9..12).for_each(|hour| vera.does(1, day, &format!("{hour}:02")));
        if day % 5 == 0 {
            vera.does(1, day, "15:02");
        }
    }
    let review = vera.review(14);
    review.proposes(1, "reduce");
    assert_eq!(review.of("items", 1)["step"], "only before noon");
    review.asks(1, &["reason"]);
}

#[test]
fn v18_ordinary_ups_and_downs_do_not_stand_in_the_way() {
    let mut will = Person::with(&[heel_raise()]);
    for day in 0..21 {
        will.morning(day, 2 + (day % 2) as u8);
        will.does(1, day, "18:02");
        will.hurts(1, day, "18:10", 1);
    }
    let review = will.review(20);
    assert_eq!(review.pain(1)["flares"], json!([]));
    review.proposes(1, "progress");
}

#[test]
fn v19_a_plateau_from_nothing_is_worse_and_no_progress() {
    let mut xena = Person::with(&[heel_raise()]);
    xena.mornings(0..5, 0);
    xena.mornings(5..21, 6);
    for day in 0..21 {
        xena.does(1, day, "18:02");
        xena.hurts(1, day, "18:10", 2);
    }
    let review = xena.review(20);
    assert_eq!((&review.pain(1)["verdict"], &review.pain(1)["base"]), (&json!("worse"), &json!(0.0)));
    review.never_proposes(1, &["progress"]);
    assert_eq!(review.done(1), (21, 21));
}

#[test]
fn v20_days_off_are_not_held_against_anybody() {
    let mut yves = Person::with(&[heel_raise()]);
    yves.takes_days_off(10, 19, "travelling");
    for day in (0..10).chain(20..24) {
        yves.morning(day, 3);
        yves.does(1, day, "18:02");
        yves.hurts(1, day, "18:10", 1);
    }
    let review = yves.review(23);
    assert_eq!((review.done(1), review.last14(1)), ((14, 14), (4, 4)));
    review.never_proposes(1, &["reduce", "talk"]);
}

#[test]
fn v21_three_times_a_week_each_a_day_late_is_moved_and_done() {
    let mut zoe = Person::with(&[heel_raise().on(&["mon", "wed", "fri"])]);
    // The plan begins on a Monday.
    for week in 0..3 {
        [1, 3, 5].into_iter().for_each(|day| zoe.does(1, 7 * week + day, "17:30"));
    }
    let review = zoe.review(20);
    assert_eq!(review.done(1), (9, 9));
    assert_eq!(review.of("adherence", 1)["moved"], 9);
}

#[test]
fn v22_what_progressed_three_days_ago_is_kept() {
    let mut abel = Person::with(&[heel_raise()]);
    for day in 0..15 {
        if day == 11 {
            abel.gets_another_card(day, |plan| plan.items[0].dose = Dose::Reps(2, 11));
        }
        abel.morning(day, 1);
        abel.does(1, day, "18:02");
        abel.hurts(1, day, "18:10", 1);
    }
    let review = abel.review(14);
    review.proposes(1, "keep");
    review.because(1, &["changed-lately"]);
    assert_eq!(review.done(1), (15, 15));
}
