use super::*;
use crate::plan::{Days, Pattern};
use crate::review::samples::{BACK, BALANCE, HOLD, REPS, catalogue, plan, revised, revisions, start};
use crate::review::{self, Review};

fn day(number: i64) -> NaiveDate {
    start() + chrono::Duration::days(number)
}

fn paper(number: i64, done: &[(ItemId, u8)], pain: Option<u8>) -> PaperDay {
    let mornings = pain.map(|score| (BACK, Score::at_most_ten(score)));
    PaperDay { day: day(number), done: done.to_vec(), mornings: mornings.into_iter().collect() }
}

fn zone() -> Offsets {
    Offsets::fixed(3600)
}

/// At noon of this day.
fn noon(number: i64) -> Stamp {
    at(day(number), NOON, &zone()).expect("there is a noon")
}

fn summary_of(plans: &BTreeMap<u16, Plan>, days: &[PaperDay], earlier: &[Summary], now: Stamp) -> Option<Summary> {
    let (catalogue, zone) = (catalogue(), zone());
    from_paper(days, earlier, PaperContext { revisions: plans, catalogue: &catalogue, zone: &zone, now })
}

fn review_of(plans: &BTreeMap<u16, Plan>, summaries: &[Summary]) -> Review {
    review::build(plans, &catalogue(), summaries).expect("a plan and a summary")
}

fn kept(review: &Review, item: ItemId) -> (u32, u32) {
    let of = review.adherence.iter().find(|one| one.item == item).and_then(|one| one.kept).expect("owed");
    (of.k, of.n)
}

#[test]
fn two_weeks_of_ticks_are_reviewed_like_those_of_a_device_and_marked_as_entered_afterwards() {
    let plans = revisions([plan()]);
    let days: Vec<PaperDay> = (1..=14)
        .map(|number| paper(number, &[(HOLD, 2), (BALANCE, 1), (REPS, 1)], Some(if number < 7 { 6 } else { 2 })))
        .collect();
    let summary = summary_of(&plans, &days, &[], noon(15)).expect("days of the plan");
    assert_eq!((summary.log, summary.counter, summary.from, summary.until), (LogId::PAPER, 1, DayNumber(1), DayNumber(14)));
    let review = review_of(&plans, std::slice::from_ref(&summary));
    assert_eq!((kept(&review, HOLD), kept(&review, BALANCE), kept(&review, REPS)), ((28, 42), (14, 14), (14, 14)));
    let hold = review.adherence.iter().find(|one| one.item == HOLD).expect("it is there");
    assert_eq!(
        (hold.slots.written_in, hold.kept_timed.map(|of| of.k), hold.late, hold.days.unrecorded),
        (28, Some(0), 0, 0)
    );
    assert_eq!(review.pain[0].change.verdict, crate::change::PainVerdict::Better);
    assert!(review.balance.is_empty(), "a tick has no seconds");
    assert_eq!(paper_days(&summary, start()), days, "it can be read back");
}

#[test]
fn ticks_are_spread_over_the_day_so_that_no_half_of_it_looks_better() {
    let due: Vec<SlotRef> = (0..9).map(|number| SlotRef { day: day(1), item: HOLD, number }).collect();
    let numbers = |sessions| spread(&due, sessions).iter().map(|slot| slot.number).collect::<Vec<_>>();
    assert_eq!(numbers(3), [2, 5, 8]);
    assert_eq!((numbers(0), numbers(9).len(), numbers(99).len()), (Vec::new(), 9, 9));
    assert_eq!(spread(&[], 3), []);
}

#[test]
fn a_day_without_ticks_is_not_done_a_day_without_an_entry_is_not_known_and_on_the_first_day_only_ticks_count() {
    let plans = revisions([plan()]);
    let days = [paper(0, &[(HOLD, 1)], None), paper(1, &[(HOLD, 0)], None), paper(3, &[(HOLD, 3)], None)];
    let summary = summary_of(&plans, &days, &[], noon(4)).expect("days of the plan");
    let review = review_of(&plans, &[summary]);
    assert_eq!(
        kept(&review, HOLD),
        (4, 10),
        "one of the first day, none of three, none of three without an entry, three of three"
    );
    let hold = review.adherence.iter().find(|one| one.item == HOLD).expect("it is there");
    assert_eq!(hold.days.unrecorded, 1);
}

#[test]
fn more_than_was_due_is_extra() {
    let plans = revisions([plan()]);
    let summary = summary_of(&plans, &[paper(1, &[(HOLD, 5)], None)], &[], noon(2)).expect("a day of the plan");
    assert_eq!(paper_days(&summary, start())[0].done, [(HOLD, 5)]);
    let review = review_of(&plans, &[summary]);
    let hold = review.adherence.iter().find(|one| one.item == HOLD).expect("it is there");
    assert_eq!((kept(&review, HOLD), hold.extra.runs), ((3, 3), 2));
}

#[test]
fn what_is_entered_later_is_added_and_what_is_entered_again_takes_the_place_of_what_was() {
    let plans = revisions([plan()]);
    let first =
        summary_of(&plans, &[paper(1, &[(HOLD, 3)], Some(5)), paper(2, &[(HOLD, 3)], Some(5))], &[], noon(3)).expect("days");
    let second = summary_of(
        &plans,
        &[paper(2, &[(HOLD, 1)], None), paper(3, &[(HOLD, 2)], Some(4))],
        std::slice::from_ref(&first),
        noon(4),
    )
    .expect("days");
    assert_eq!(second.counter, 2);
    for order in [[first.clone(), second.clone()], [second.clone(), first.clone()]] {
        let review = review_of(&plans, &order);
        assert_eq!(kept(&review, HOLD), (6, 9));
        let mornings: Vec<u16> = review.pain[0].points.iter().map(|(day, _)| day.0).collect();
        assert_eq!(mornings, [1, 3], "the second day's was taken out");
    }
    let third = summary_of(&plans, &[paper(3, &[], None)], &[second, first], noon(4)).expect("what was entered before");
    assert_eq!(
        (third.counter, third.until, third.corrections.gone.len()),
        (3, DayNumber(2), 2),
        "the third day is taken out"
    );
    assert_eq!(third.corrections.runs.len(), 4);
    assert_eq!(summary_of(&plans, &[1, 2].map(|day| paper(day, &[], None)), &[third], noon(4)), None);
}

#[test]
fn a_later_card_counts_from_its_day_on() {
    let mut second = revised(2, 3);
    second.prescription.items.retain(|item| item.id == REPS);
    let plans = revisions([plan(), second]);
    let days: Vec<PaperDay> = (1..=5).map(|number| paper(number, &[(HOLD, 3), (REPS, 1)], None)).collect();
    let review = review_of(&plans, &[summary_of(&plans, &days, &[], noon(6)).expect("days")]);
    assert_eq!((kept(&review, HOLD), kept(&review, REPS)), ((6, 6), (5, 5)));
}

#[test]
fn of_days_of_the_patients_choice_any_day_counts_also_through_the_night() {
    let mut night = plan();
    night.prescription.items[0].schedule.pattern = Pattern::Every { minutes: 60, from: 22 * 60, to: 60 };
    night.prescription.items[2].schedule = crate::plan::Schedule {
        days: Days::TimesAWeek { n: 2, from: start() },
        pattern: Pattern::At { times: vec![18 * 60] },
    };
    let plans = revisions([night]);
    // Monday and Thursday of the first whole week.
    let days: Vec<PaperDay> = (5..=11)
        .map(|number| paper(number, if number == 5 || number == 8 { &[(HOLD, 4), (REPS, 1)] } else { &[(HOLD, 4)] }, None))
        .collect();
    let summary = summary_of(&plans, &days, &[], noon(13)).expect("days");
    assert_eq!(paper_days(&summary, start()), days);
    let review = review_of(&plans, &[summary]);
    assert_eq!(kept(&review, HOLD), (28, 28));
    assert_eq!(kept(&review, REPS).0, 2);
}

#[test]
fn days_outside_the_plan_and_to_come_are_left_out() {
    let plans = revisions([plan()]);
    let outside = [paper(-1, &[(HOLD, 3)], None), paper(9, &[(HOLD, 3)], None), paper(70_000, &[], None)];
    assert_eq!(summary_of(&plans, &outside, &[], noon(2)), None);
    let mut many = outside.to_vec();
    many.push(paper(1, &[(HOLD, MAX_SESSIONS), (ItemId(77), 3)], Some(10)));
    let summary = summary_of(&plans, &many, &[], noon(2)).expect("one day");
    assert_eq!((summary.from, summary.until, summary.runs.len()), (DayNumber(1), DayNumber(1), usize::from(MAX_SESSIONS)));
    assert_eq!(summary_of(&BTreeMap::new(), &many, &[], noon(2)), None);
}
