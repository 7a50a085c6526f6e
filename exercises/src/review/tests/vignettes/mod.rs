//! Twenty-two invented people, from what they did to what the review says about it.

mod person;

use crate::alarm::Trouble;
use crate::catalogue::Quantity;
use crate::change::Flare;
use crate::id::ItemId;
use crate::log::{Barrier, DayOffReason};
use crate::review::Review;
use crate::review::samples::{BACK, BALANCE, HOLD, HOLD_DOSE, REPS, item};
use crate::statistics::{PainVerdict, Verdict};
use crate::suggest::{Ask, HalfOfDay, Proposal, Reason, Reduction, Step, Suggestion};
use person::{At, Person, balance, daily, hourly, reps};

fn of(review: &Review, item: ItemId) -> &Suggestion {
    review.items.iter().find(|one| one.item == item).expect("an item of the plan")
}

fn adherence(review: &Review, item: ItemId) -> &crate::adherence::ItemAdherence {
    review.adherence.iter().find(|one| one.item == item).expect("an item of the plan")
}

fn progresses(review: &Review, item: ItemId) -> bool {
    matches!(of(review, item).proposal, Proposal::Progress(_))
}

#[test]
fn v01_done_an_hour_late_is_done() {
    let mut person = Person::with([reps(daily(18 * 60))]);
    for day in 0..15 {
        person.says_in_the_morning(day, BACK, 1);
        if day != 7 {
            person.does(REPS, At(day, 19 * 60 + 5));
            person.says_while_doing(REPS, day, 1 + (day % 2) as u8);
        }
    }
    let review = person.review(14);
    let done = adherence(&review, REPS);
    assert_eq!((done.kept.map(|kept| (kept.k, kept.n)), done.late), (Some((14, 15)), 14));
    assert!(progresses(&review, REPS), "{:?}", of(&review, REPS));
    assert_eq!(of(&review, REPS).ask, []);
}

#[test]
fn v02_pain_above_the_limit_twice_suspends_and_leads_to_a_talk() {
    let mut person = Person::with([reps(daily(18 * 60))]);
    for (day, score) in (0..15).zip([2, 2, 2, 2, 2, 2, 2, 2, 2, 2, 2, 3, 4, 6, 7]) {
        person.says_in_the_morning(day, BACK, 1);
        person.does(REPS, At(day, 18 * 60 + 5));
        person.says_while_doing(REPS, day, score);
    }
    let review = person.review(14);
    let above: Vec<_> = review.alarms.iter().filter(|alarm| alarm.trouble == Trouble::PainAboveLimit).collect();
    assert_eq!(above.len(), 2);
    assert_eq!((&above[0].suspended[..], &above[1].suspended[..]), (&[REPS][..], &[][..]), "newest first");
    assert_eq!(of(&review, REPS).proposal, Proposal::Talk);
}

#[test]
fn v03_a_balance_target_reached_nine_days_running_is_at_the_cap_and_progresses() {
    let mut person = Person::with([balance(daily(18 * 60))]);
    for day in 0..22 {
        person.says_in_the_morning(day, BACK, [4, 3, 2, 1][usize::try_from(day / 6).expect("small").min(3)]);
        let seconds = if day < 13 { 18 + day as u32 } else { 30 };
        person.stands(At(day, 18 * 60), seconds);
    }
    person.says_while_doing(BALANCE, 15, 1);
    person.says_while_doing(BALANCE, 20, 0);
    let review = person.review(21);
    assert!(
        review.balance.iter().all(|series| series.change.verdict == Verdict::AtTheCap),
        "{:?}",
        review.balance[0].change
    );
    assert!(progresses(&review, BALANCE), "{:?}", of(&review, BALANCE));
    assert_eq!(of(&review, BALANCE).ask, []);
}

#[test]
fn v04_without_any_rating_it_progresses_and_pain_is_asked_about() {
    let mut person = Person::with([hourly_hold()]);
    for day in 0..15 {
        for hour in (9..=17).filter(|hour| hour % 5 != 0) {
            person.does(HOLD, At(day, hour * 60 + 2));
        }
    }
    let review = person.review(14);
    assert!(progresses(&review, HOLD), "{:?}", of(&review, HOLD));
    assert_eq!(of(&review, HOLD).ask, [Ask::Pain]);
}

#[test]
fn v05_who_stops_after_a_week_broke_off_on_the_eighth_day() {
    let mut person = Person::with([reps(daily(18 * 60))]);
    for day in 0..7 {
        person.says_in_the_morning(day, BACK, 4);
        person.does(REPS, At(day, 18 * 60));
    }
    let review = person.review(41);
    let done = adherence(&review, REPS);
    assert_eq!(done.broke_off.map(|broke| broke.since.0), Some(7));
    assert_eq!(done.last14.map(|lately| (lately.done.k, lately.done.n)), Some((0, 14)));
    assert_eq!(review.pain[0].change.verdict, PainVerdict::NotKnownLately);
    assert_eq!(of(&review, REPS).proposal, Proposal::Talk);
}

#[test]
fn v06_little_done_for_want_of_time_is_reduced() {
    let mut person = Person::with([hourly_hold()]);
    for day in 0..15 {
        person.says_in_the_morning(day, BACK, 3);
        person.does(HOLD, At(day, [10, 15][(day % 2) as usize] * 60 + 2));
        person.skips(HOLD, At(day, 11 * 60 + 2), Barrier::NoTime);
        person.skips(HOLD, At(day, 16 * 60 + 2), if day % 3 == 0 { Barrier::Forgot } else { Barrier::NoTime });
    }
    let review = person.review(14);
    assert!(matches!(of(&review, HOLD).proposal, Proposal::Reduce(_)), "{:?}", of(&review, HOLD));
    assert!(of(&review, HOLD).reasons.iter().any(|reason| matches!(reason, Reason::Given { barrier: Barrier::NoTime, .. })));
}

#[test]
fn v07_little_done_because_it_hurts_is_talked_about_and_not_reduced() {
    let mut person = Person::with([hourly_hold()]);
    for day in 0..15 {
        person.does(HOLD, At(day, 9 * 60 + 2));
        person.does(HOLD, At(day, 14 * 60 + 2));
        person.skips(HOLD, At(day, 11 * 60 + 2), Barrier::Pain);
    }
    let review = person.review(14);
    assert_eq!(of(&review, HOLD).proposal, Proposal::Talk);
    assert!(matches!(of(&review, HOLD).reasons[0], Reason::Given { barrier: Barrier::Pain, .. }));
}

#[test]
fn v08_low_mornings_that_rise_are_worse() {
    let mut person = Person::with([reps(daily(18 * 60))]);
    for (day, score) in (0..).zip([1, 1, 1, 7, 8, 8]) {
        person.says_in_the_morning(day, BACK, score);
    }
    assert_eq!(person.review(5).pain[0].change.verdict, PainVerdict::Worse);
}

#[test]
fn v09_of_two_items_for_one_complaint_only_the_one_that_hurts_is_eased() {
    let other = ItemId(8);
    let second = crate::plan::Item { id: other, ..item(HOLD_DOSE, crate::plan::Side::Neither) };
    let mut person = Person::with([reps(daily(18 * 60)), second]);
    for day in 0..15 {
        person.says_in_the_morning(day, BACK, 2);
        person.does(REPS, At(day, 18 * 60));
        person.does(other, At(day, 18 * 60 + 20));
        person.says_while_doing(REPS, day, 1);
        person.says_while_doing(other, day, 7);
    }
    let review = person.review(14);
    assert!(progresses(&review, REPS), "{:?}", of(&review, REPS));
    assert!(matches!(of(&review, other).proposal, Proposal::Ease(_) | Proposal::Talk), "{:?}", of(&review, other));
}

#[test]
fn unsettled_mornings_without_a_rating_the_day_before_ask_for_the_pain() {
    let other = ItemId(8);
    let second = crate::plan::Item { id: other, ..item(HOLD_DOSE, crate::plan::Side::Neither) };
    let mut person = Person::with([reps(daily(18 * 60)), second]);
    for day in 0..15 {
        person.says_in_the_morning(day, BACK, if day == 10 || day == 13 { 5 } else { 2 });
        person.does(REPS, At(day, 18 * 60));
        person.does(other, At(day, 18 * 60 + 20));
    }
    let review = person.review(14);
    for item in [REPS, other] {
        assert_eq!((&of(&review, item).proposal, &of(&review, item).ask[..]), (&Proposal::Keep, &[Ask::Pain][..]));
    }
}

#[test]
fn v10_a_stand_on_both_feet_has_no_side_and_no_norm() {
    let mut person = Person::with([balance(daily(18 * 60))]);
    person.catalogue.exercises[1].one_leg = false;
    for day in 0..20 {
        person.stands(At(day, 18 * 60), 8 + day as u32);
    }
    let review = person.review(19);
    assert_eq!(
        review.balance.iter().map(|series| (series.leg, series.change.verdict)).collect::<Vec<_>>(),
        [(None, Verdict::Rising)]
    );
    assert!(review.sides.is_empty());
    assert!(matches!(review.balance[0].norms.comparison, crate::norms::Comparison::Not(_)));
}

#[test]
fn v12_a_near_fall_suspends_nothing_and_short_seconds_alone_ease_nothing() {
    let mut person = Person::with([balance(daily(18 * 60))]);
    for day in 0..20 {
        person.stands(At(day, 18 * 60), 8 + day as u32);
        if day == 4 {
            person.raises(Trouble::NearlyFell, Some(BALANCE), At(day, 18 * 60 + 5));
        }
    }
    let review = person.review(19);
    assert_eq!((review.alarms.len(), &review.alarms[0].suspended[..]), (1, &[][..]));
    assert!(!matches!(of(&review, BALANCE).proposal, Proposal::Talk));
    assert!(!of(&review, BALANCE).reasons.iter().any(|reason| matches!(reason, Reason::TargetMissed { .. })));
}

#[test]
fn v13_a_rising_target_is_one_series() {
    let mut person = Person::with([balance(daily(18 * 60))]);
    for day in 0..42 {
        let target = [20, 25, 30][usize::try_from(day / 14).expect("small")];
        person.set_target(target);
        person.stands(At(day, 18 * 60), (10 + day as u32 / 2).min(target.into()));
    }
    let review = person.review(41);
    assert_eq!(review.balance.len(), 2, "one for each leg");
    assert!(review.balance.iter().all(|series| series.change.verdict == Verdict::Rising && series.target_s == 30));
}

#[test]
fn v14_two_of_the_last_four_sessions_short_by_one_repetition_are_eased() {
    let mut person = Person::with([reps(daily(18 * 60))]);
    for day in 0..15 {
        person.says_while_doing(REPS, day, 1);
        if matches!(day, 11 | 13) {
            person.falls_short(REPS, At(day, 18 * 60), 1)
        } else {
            person.does(REPS, At(day, 18 * 60))
        }
    }
    let review = person.review(14);
    assert!(matches!(of(&review, REPS).proposal, Proposal::Ease(_)), "{:?}", of(&review, REPS));
    assert_eq!(of(&review, REPS).reasons, [Reason::TargetMissed { missed: 2, of: 4 }]);
}

#[test]
fn v15_a_flare_is_told_although_the_end_equals_the_beginning() {
    let mut person = Person::with([reps(daily(18 * 60))]);
    for day in 0..30 {
        let flare = (10..19).contains(&day);
        person.says_in_the_morning(
            day,
            BACK,
            if flare {
                7
            } else if day < 10 {
                4
            } else {
                3
            },
        );
        person.does(REPS, At(day, 18 * 60));
        person.says_while_doing(REPS, day, if flare { 6 + (day % 3) as u8 } else { 2 });
    }
    let review = person.review(29);
    let flares: Vec<_> =
        review.pain[0].flares.iter().map(|Flare { from, to, peak, .. }| (from.0, to.0, peak.points())).collect();
    assert_eq!(flares, [(10, 18, 8)]);
    assert_eq!(review.alarms.iter().filter(|alarm| alarm.trouble == Trouble::PainAboveLimit).count(), 9);
}

#[test]
fn v16_sessions_stopped_half_way_for_want_of_time_are_reduced_and_not_eased() {
    let mut person = Person::with([reps(daily(18 * 60))]);
    for day in 0..14 {
        if day % 2 == 0 {
            person.stops_after_the_first_set(REPS, At(day, 18 * 60));
        } else {
            person.skips(REPS, At(day, 18 * 60 + 5), Barrier::NoTime);
        }
    }
    let review = person.review(13);
    let a_set_less = Step::Change { quantity: Quantity::Sets, by: -1 };
    assert_eq!(of(&review, REPS).proposal, Proposal::Reduce(Reduction::ShorterDose(a_set_less)));
    assert_eq!(adherence(&review, REPS).slots.partly, 7);
}

#[test]
fn v17_who_does_the_mornings_is_asked_for_the_mornings() {
    let mut person = Person::with([hourly_hold()]);
    for day in 0..15 {
        for hour in 9..=11 {
            person.does(HOLD, At(day, hour * 60 + 2));
        }
        if day % 5 == 0 {
            person.does(HOLD, At(day, 15 * 60 + 2));
        }
    }
    let review = person.review(14);
    assert_eq!(of(&review, HOLD).proposal, Proposal::Reduce(Reduction::Half(HalfOfDay::BeforeNoon)));
    assert_eq!(of(&review, HOLD).ask, [Ask::Reason]);
}

#[test]
fn v18_ordinary_ups_and_downs_do_not_stand_in_the_way() {
    let mut person = Person::with([reps(daily(18 * 60))]);
    for day in 0..21 {
        person.says_in_the_morning(day, BACK, 2 + (day % 2) as u8);
        person.does(REPS, At(day, 18 * 60));
        person.says_while_doing(REPS, day, 1);
    }
    let review = person.review(20);
    assert!(progresses(&review, REPS), "{:?}", of(&review, REPS));
}

#[test]
fn v19_a_plateau_from_nothing_is_worse_and_never_progresses() {
    let mut person = Person::with([reps(daily(18 * 60))]);
    for day in 0..21 {
        person.says_in_the_morning(day, BACK, if day < 5 { 0 } else { 6 });
        person.does(REPS, At(day, 18 * 60));
        person.says_while_doing(REPS, day, 2);
    }
    let review = person.review(20);
    assert_eq!(review.pain[0].change.verdict, PainVerdict::Worse);
    assert!(!progresses(&review, REPS));
}

#[test]
fn v20_days_off_are_not_held_against_anybody() {
    let mut person = Person::with([reps(daily(18 * 60))]);
    person.takes_days_off(10, 19, DayOffReason::Travelling);
    for day in (0..10).chain(20..24) {
        person.says_in_the_morning(day, BACK, 3);
        person.does(REPS, At(day, 18 * 60));
    }
    let review = person.review(23);
    assert!(!matches!(of(&review, REPS).proposal, Proposal::Reduce(_) | Proposal::Talk), "{:?}", of(&review, REPS));
}

#[test]
fn v21_three_times_a_week_a_day_late_is_moved_and_done() {
    let weekdays = [chrono::Weekday::Mon, chrono::Weekday::Wed, chrono::Weekday::Fri].into_iter().collect();
    let mut person = Person::with([reps(crate::plan::Schedule { days: weekdays, ..daily(18 * 60) })]);
    // The plan begins on a Wednesday.
    for week in 0..3 {
        for day in [1, 3, 6] {
            person.does(REPS, At(7 * week + day, 17 * 60));
        }
    }
    let review = person.review(20);
    let done = adherence(&review, REPS);
    assert_eq!((done.kept.map(|kept| (kept.k, kept.n)), done.moved, done.extra.runs), (Some((9, 9)), 9, 0));
}

#[test]
fn v22_what_progressed_three_days_ago_is_kept() {
    let mut person = Person::with([reps(daily(18 * 60))]);
    for day in 0..15 {
        if day == 11 {
            person.takes_a_card(day, |plan| {
                if let crate::catalogue::Dose::Reps { repetitions, .. } = &mut plan.items[0].dose {
                    *repetitions += 1;
                }
            });
        }
        person.says_in_the_morning(day, BACK, 1);
        person.does(REPS, At(day, 18 * 60));
        person.says_while_doing(REPS, day, 1);
    }
    let review = person.review(14);
    assert_eq!(of(&review, REPS).proposal, Proposal::Keep);
    assert!(matches!(of(&review, REPS).reasons[0], Reason::ChangedLately { .. }), "{:?}", of(&review, REPS));
}

fn hourly_hold() -> crate::plan::Item {
    crate::plan::Item { schedule: hourly(9 * 60, 17 * 60), ..item(HOLD_DOSE, crate::plan::Side::Neither) }
}
