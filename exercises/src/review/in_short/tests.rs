use super::*;
use crate::history::Mark;
use crate::id::ActivityId;
use crate::review::build;
use crate::review::samples::{
    ANKLE, BACK, BALANCE, HOLD, PHONE, catalogue, item_day, morning, plan, revisions, run, stance, summary,
};
use crate::score::Score;
use crate::summary::{RatedOn, RunOn, Summary};

fn review_of(summary: Summary) -> Review {
    build(&revisions([plan()]), &catalogue(), &[summary]).expect("a plan and a summary")
}

fn mornings(complaint: crate::id::ComplaintId, from: u32, scores: &[u8]) -> Vec<crate::summary::MorningOn> {
    let all = scores.iter().enumerate();
    all.map(|(day, score)| morning(from + day as u32, day as u16, complaint, *score)).collect()
}

#[test]
fn sessions_of_all_exercises_are_added_up_over_the_last_two_weeks() {
    let mut all = summary(PHONE, 1, 0, 20);
    all.days = (0..=20).map(|day| item_day(day, HOLD, &[Mark::Done, Mark::Done, Mark::NotDone])).collect();
    all.runs = (0..=20).map(|day| run(u32::from(day) + 1, day, BALANCE, Some(0))).collect();
    all.days.extend((0..=20).map(|day| item_day(day, BALANCE, &[Mark::Done])));
    let review = review_of(all);
    let done = in_short(&review, |_| true).done.expect("owed");
    assert_eq!((done.lately, done.since), (true, None));
    let lately =
        |item| review.adherence.iter().find(|one| one.item == item).and_then(|one| one.last14).expect("owed lately");
    let both = [lately(HOLD), lately(BALANCE)];
    let reps: u32 = review.adherence.iter().filter_map(|one| one.last14).map(|one| one.done.n).sum();
    assert_eq!(done.in_full, both.iter().map(|one| one.in_full).sum::<u32>());
    assert_eq!(done.owed, reps);
    let hold = in_short(&review, |item| item == HOLD).done.expect("owed");
    assert_eq!((hold.in_full, hold.in_part, hold.owed), (28, 0, 42), "fourteen days of three, two of them done");
}

#[test]
fn worse_is_said_before_better_and_better_before_no_change() {
    let of = |back: &[u8], ankle: &[u8]| {
        let mut all = summary(PHONE, 1, 0, 20);
        all.mornings = [mornings(BACK, 1, back), mornings(ANKLE, 100, ankle)].concat();
        let review = review_of(all);
        in_short(&review, |_| true).pain.map(|series| (series.complaint, series.change.verdict))
    };
    let (better, worse, same) = ([[6; 10], [2; 10]].concat(), [[3; 10], [7; 10]].concat(), [3; 20]);
    assert_eq!(of(&better, &worse), Some((ANKLE, PainVerdict::Worse)));
    assert_eq!(of(&same, &better), Some((ANKLE, PainVerdict::Better)));
    assert_eq!(of(&same, &[3, 3]), Some((BACK, PainVerdict::NoClearChange)));
}

#[test]
fn an_activity_comes_before_seconds_unless_it_cannot_be_compared() {
    let with = |ratings: &[(u16, u8)]| {
        let mut all = summary(PHONE, 1, 0, 20);
        all.runs = (0..=20_u16)
            .map(|day| {
                let ms = 8_000 + u32::from(day) * 1_000;
                RunOn { stance: Some(stance(&[ms; 3], &[ms; 3])), ..run(u32::from(day) + 1, day, BALANCE, Some(0)) }
            })
            .collect();
        all.rated = ratings
            .iter()
            .map(|(day, score)| RatedOn {
                n: 300 + u32::from(*day),
                day: DayNumber(*day),
                activity: ActivityId(1),
                score: Score::at_most_ten(*score),
            })
            .collect();
        review_of(all)
    };
    let rated = with(&[(10, 8), (18, 9)]);
    assert!(matches!(in_short(&rated, |_| true).progress, Some(Progress::Activity(_))));
    let measured = with(&[]);
    assert!(matches!(in_short(&measured, |_| true).progress, Some(Progress::Stance(_))));
    let nothing = review_of(summary(PHONE, 1, 0, 3));
    let told = in_short(&nothing, |_| true);
    assert_eq!((told.progress.is_none(), told.barriers.is_empty(), told.alarms.is_empty()), (true, true, true));
}

#[test]
fn of_the_reasons_pain_is_named_and_the_most_frequent_other() {
    let all = [(Barrier::Pain, 1), (Barrier::RatherNotSay, 9), (Barrier::NoTime, 7), (Barrier::Forgot, 2)];
    assert_eq!(barriers(&all), [(Barrier::Pain, 1), (Barrier::NoTime, 7)]);
    assert_eq!(barriers(&all[1..]), [(Barrier::NoTime, 7)]);
    assert_eq!(barriers(&all[1..2]), []);
}
