use super::samples::{balance, day, empty, hold, issued};
use super::*;
use crate::alarm::ClearedAlarm;
use crate::catalogue::{Catalogue, Dose, Quantity, RungId};
use crate::id::{ComplaintId, EntryRef, LogId, PlanId};
use crate::plan::check::{Problem, problems};
use crate::plan::{Aftercare, AgeBand, Header, Risk, StanceField};
use crate::score::Score;
use crate::suggest::{Ask, HalfOfDay, Proposal, Reason, Reduction, Step, Suggestion};
use crate::time::DayNumber;

fn catalogue() -> Catalogue {
    Catalogue { exercises: vec![hold(), balance()] }
}

fn with_hold() -> (Draft, ItemId) {
    let mut draft = empty();
    let id = draft.add(&hold()).expect("room");
    (draft, id)
}

fn suggestion(item: ItemId, proposal: Proposal) -> Suggestion {
    Suggestion {
        item,
        rung: Some(RungId::new("wall").expect("an id")),
        dose: hold().dose,
        proposal,
        reasons: vec![Reason::TargetMet { days: [DayNumber(3), DayNumber(4)] }],
        ask: Vec::new(),
    }
}

#[test]
fn one_press_makes_a_plan_that_can_be_issued() {
    let (draft, _) = with_hold();
    assert_eq!(problems(&issued(&draft), &catalogue()), []);
    let item = &draft.prescription.items[0];
    assert_eq!((item.schedule.clone(), item.side, item.may_step), (hourly(), Side::Neither, false));
    assert_eq!(item.content, 3, "the content revision that was taught from");
}

#[test]
fn a_hold_too_long_for_every_hour_comes_three_times_a_day() {
    let mut long = hold();
    long.dose = Dose::Hold { repetitions: 5, hold_s: 45, rest_s: 120 };
    assert_eq!(default_schedule(&long, day(11, 25)).pattern, Pattern::At { times: vec![480, 780, 1080] });
    assert_eq!(default_schedule(&balance(), day(11, 25)).pattern, Pattern::At { times: vec![1080] });
}

/// The hold, whose second level is done for each side and has a dose of its own.
fn with_levels() -> (Exercise, Dose, [RungId; 2]) {
    let mut exercise = hold();
    let own = Dose::Hold { repetitions: 2, hold_s: 6, rest_s: 20 };
    let [first, second] = &mut exercise.ladders[0].rungs[..] else { panic!("two levels") };
    (second.side, second.dose) = (Some(Sidedness::EachSide), Some(own));
    let ids = [first.id.clone(), second.id.clone()];
    (exercise, own, ids)
}

#[test]
fn another_level_brings_its_side_and_its_dose() {
    let (exercise, own, [first, second]) = with_levels();
    let mut draft = empty();
    let id = draft.add(&exercise).expect("room");
    let mut put = |rung: &RungId| {
        draft.edit(id, |item| put_on_level(item, &exercise, rung.clone()));
        let item = draft.prescription.item(id).expect("there");
        (item.rung.clone(), item.side, item.dose)
    };
    assert_eq!(put(&second), (Some(second.clone()), Side::Both, own));
    assert_eq!(put(&first), (Some(first.clone()), Side::Neither, exercise.dose));
    draft.edit(id, |item| item.dose = with(item.dose, Quantity::HoldSeconds, 25));
    draft.edit(id, |item| put_on_level(item, &exercise, second.clone()));
    let item = draft.prescription.item(id).expect("there");
    assert_eq!((item.side, item.dose), (Side::Both, with(exercise.dose, Quantity::HoldSeconds, 25)), "what was typed stays");
    draft.edit(id, |item| item.side = Side::Left);
    draft.edit(id, |item| put_on_level(item, &exercise, second));
    assert_eq!(draft.prescription.item(id).map(|item| item.side), Some(Side::Left), "a side that fits stays");
}

#[test]
fn an_exercise_is_added_with_the_side_and_the_dose_of_its_first_level() {
    let (mut exercise, own, _) = with_levels();
    exercise.ladders[0].rungs.remove(0);
    let mut draft = empty();
    draft.add(&exercise).expect("room");
    let item = &draft.prescription.items[0];
    assert_eq!((item.side, item.dose), (Side::Both, own));
}

#[test]
fn a_number_is_never_used_twice() {
    let (mut draft, first) = with_hold();
    draft.remove(first);
    let second = draft.add(&hold()).expect("room");
    assert_ne!(first, second, "the first item's history is not the second's");
    let later = next(&issued(&draft), UsedNumbers { items: 9, ..UsedNumbers::default() }, day(12, 9));
    let mut later = later;
    assert_eq!(later.add(&hold()), Some(ItemId(10)), "an older revision had item 9");
}

#[test]
fn a_full_plan_takes_no_more() {
    let mut draft = empty();
    let taken = (0..MAX_ITEMS + 3).filter(|_| draft.add(&hold()).is_some()).count();
    assert_eq!((taken, draft.prescription.items.len()), (MAX_ITEMS, MAX_ITEMS));
    draft.used.items = u8::MAX;
    draft.prescription.items.pop();
    assert_eq!(draft.add(&hold()), None, "no number is left");
}

#[test]
fn items_change_places_and_stop_at_the_ends() {
    let (mut draft, one) = with_hold();
    let two = draft.add(&balance()).expect("room");
    let order = |draft: &Draft| draft.prescription.items.iter().map(|item| item.id).collect::<Vec<_>>();
    draft.shift(one, Direction::Earlier);
    assert_eq!(order(&draft), [one, two]);
    draft.shift(one, Direction::Later);
    assert_eq!(order(&draft), [two, one]);
    draft.shift(one, Direction::Later);
    assert_eq!(order(&draft), [two, one]);
}

#[test]
fn a_note_is_truncated_at_forty_characters() {
    let (mut draft, id) = with_hold();
    draft.edit(id, |item| item.note = "ñ".repeat(50) + "\n");
    assert_eq!(draft.prescription.items[0].note, "ñ".repeat(40));
}

#[test]
fn a_test_is_for_no_complaint_until_one_is_chosen() {
    let mut draft = empty();
    let only = draft.add_complaint().expect("room");
    draft.add(&Exercise { test: true, ..hold() });
    draft.add(&hold());
    let served: Vec<_> = draft.prescription.items.iter().map(|item| item.serves).collect();
    assert_eq!(served, [None, Some(only)]);
}

#[test]
fn the_first_complaint_is_assigned_to_present_and_later_items() {
    let (mut draft, _) = with_hold();
    let first = draft.add_complaint().expect("room");
    draft.add(&balance());
    assert!(draft.prescription.items.iter().all(|item| item.serves == Some(first)));
    let second = draft.add_complaint().expect("room");
    draft.add(&hold());
    assert_eq!(draft.prescription.items[2].serves, None, "of two complaints it is not known which");
    draft.remove_complaint(first);
    assert!(draft.prescription.items.iter().all(|item| item.serves.is_none()));
    assert_eq!(draft.prescription.complaints.len(), 1);
    assert_eq!(draft.add_complaint(), Some(ComplaintId(second.0 + 1)));
}

#[test]
fn activities_are_added_and_removed_and_names_truncated() {
    let mut draft = empty();
    let id = draft.add_activity().expect("room");
    draft.edit_activity(id, |activity| activity.name = "x".repeat(80));
    assert_eq!(draft.prescription.activities[0].name.len(), crate::plan::MAX_NAME);
    while draft.add_activity().is_some() {}
    assert_eq!(draft.prescription.activities.len(), crate::plan::MAX_NAMED);
    draft.remove_activity(id);
    assert!(draft.prescription.activities.iter().all(|activity| activity.id != id));
}

#[test]
fn a_suggested_step_is_taken_from_what_is_in_use() {
    let (mut draft, id) = with_hold();
    let advance = suggestion(id, Proposal::Progress(Step::Change { quantity: Quantity::HoldSeconds, by: 5 }));
    assert!(!draft.follows(&advance));
    draft.apply(&advance);
    let longer = with(hold().dose, Quantity::HoldSeconds, 15);
    assert_eq!(draft.prescription.items[0].dose, longer);
    draft.apply(&advance);
    assert_eq!(draft.prescription.items[0].dose, longer, "a second click changes nothing more");
    assert!(draft.follows(&advance));
    draft.apply(&suggestion(id, Proposal::Keep));
    assert_eq!(draft.prescription.items[0].dose, hold().dose);
}

#[test]
fn a_rung_may_be_the_step_and_talk_changes_nothing() {
    let (mut draft, id) = with_hold();
    let chair = RungId::new("chair").expect("an id");
    draft.apply(&suggestion(id, Proposal::Progress(Step::Rung { to: chair.clone(), dose: hold().dose })));
    assert_eq!((draft.prescription.items[0].rung.clone(), draft.prescription.items[0].dose), (Some(chair), hold().dose));
    let before = draft.prescription.clone();
    let talk = Suggestion { rung: before.items[0].rung.clone(), ..suggestion(id, Proposal::Talk) };
    draft.apply(&talk);
    assert_eq!(draft.prescription, before);
}

#[test]
fn balance_needs_further_answers() {
    let mut draft = empty();
    assert!(!draft.balances(&catalogue().exercises));
    draft.add(&balance());
    assert!(draft.balances(&catalogue().exercises));
    assert!(problems(&issued(&draft), &catalogue()).contains(&Problem::AgeMissing));
    draft.prescription.age = Some(AgeBand::From50);
    draft.prescription.absent = Risk::ALL.into_iter().collect();
    for field in StanceField::FIRM_OPEN {
        draft.set_stance(field, tenths_of("12,4"), false);
    }
    assert_eq!(problems(&issued(&draft), &catalogue()), []);
}

#[test]
fn a_time_of_today_replaces_another_of_today_and_no_earlier_one() {
    let [left, _] = StanceField::FIRM_OPEN;
    let mut visit = empty();
    visit.set_stance(left, Some(310), false);
    let mut draft = next(&issued(&visit), visit.used, day(12, 9));
    assert_eq!((draft.prescription.baselines.len(), draft.stance_today(left)), (1, None));
    draft.set_stance(left, Some(290), false);
    draft.set_stance(left, Some(330), true);
    assert_eq!(draft.stance_today(left).map(|baseline| (baseline.tenths, baseline.capped)), Some((330, true)));
    assert_eq!(draft.stance_earlier(left).map(|baseline| baseline.tenths), Some(310));
    assert_eq!(draft.prescription.baselines.len(), 2);
    draft.set_stance(left, None, false);
    assert_eq!(draft.prescription.baselines.len(), 1);
}

#[test]
fn a_correction_on_the_same_day_makes_no_second_day() {
    let [left, _] = StanceField::FIRM_OPEN;
    let mut visit = empty();
    visit.set_stance(left, Some(310), false);
    let mut again = next(&issued(&visit), visit.used, day(11, 25));
    again.set_stance(left, Some(320), false);
    assert_eq!(again.prescription.baselines.len(), 1, "two tries of one day are one day");
}

#[test]
fn a_correction_on_the_day_of_a_second_visit_leaves_the_first_visits_time() {
    let [left, _] = StanceField::FIRM_OPEN;
    let mut visit = empty();
    visit.add(&balance()).expect("room");
    visit.prescription.items[0].rung = Some(RungId::new("cushion-open").expect("an id"));
    visit.prescription.age = Some(AgeBand::From50);
    visit.prescription.absent = Risk::ALL.into_iter().collect();
    StanceField::FIRM_OPEN.into_iter().for_each(|field| visit.set_stance(field, Some(310), false));
    let mut second = next(&issued(&visit), visit.used, day(12, 9));
    assert_eq!(second.prescription.absent, visit.prescription.absent);
    second.prescription.confirmed = Some(day(12, 9));
    StanceField::FIRM_OPEN.into_iter().for_each(|field| second.set_stance(field, Some(330), false));
    assert_eq!(problems(&issued(&second), &catalogue()), [], "thirty seconds on two days");
    let mut again = next(&issued(&second), second.used, day(12, 9));
    assert_eq!(again.stance_today(left).map(|baseline| baseline.tenths), Some(330), "not the first visit's");
    assert_eq!(again.stance_earlier(left).map(|baseline| baseline.tenths), Some(310));
    again.set_stance(left, Some(340), false);
    assert_eq!(again.prescription.baselines.iter().filter(|baseline| left.is_of(baseline)).count(), 2);
    assert_eq!(problems(&issued(&again), &catalogue()), [], "what was shown on two days is still shown");
}

#[test]
fn the_two_longest_times_of_each_condition_are_carried_over() {
    let [left, right] = StanceField::FIRM_OPEN;
    let visit = |before: Option<Draft>, day, times: &[(StanceField, u16)]| {
        let mut draft = before.map_or_else(empty, |before| next(&issued(&before), before.used, day));
        times.iter().for_each(|(field, tenths)| draft.set_stance(*field, Some(*tenths), false));
        draft
    };
    let first = visit(None, day(11, 25), &[(left, 310)]);
    let second = visit(Some(first), day(12, 1), &[(left, 90), (right, 50)]);
    let third = visit(Some(second), day(12, 8), &[(left, 320)]);
    let fourth = visit(Some(third), day(12, 15), &[]);
    let lefts = fourth.prescription.baselines.iter().filter(|baseline| baseline.leg == crate::plan::BodySide::Left);
    assert_eq!(lefts.map(|baseline| baseline.tenths).collect::<Vec<_>>(), [320, 310], "thirty seconds on two days");
    let right = fourth.stance_earlier(right).map(|baseline| baseline.tenths);
    assert_eq!((fourth.prescription.baselines.len(), right), (3, Some(50)));
}

#[test]
fn the_next_plan_drops_what_belongs_to_the_visit_and_keeps_the_rest() {
    let (mut draft, _) = with_hold();
    let complaint = draft.add_complaint().expect("room");
    draft.edit_complaint(complaint, |complaint| complaint.pain = Some(Score::at_most_ten(6)));
    let entry = EntryRef { log: LogId([1; 8]), n: 4 };
    let cleared = ClearedAlarm::of_entry(entry);
    draft.prescription.cleared.push(cleared);
    draft.prescription.absent.insert(Risk::NumbFeet);
    draft.prescription.aftercare.push(Aftercare::Own("Ring on Friday".into()));
    draft.prescription.review = day(12, 16);
    let later = next(&issued(&draft), draft.used, day(12, 16)).prescription;
    assert_eq!(later.review, chrono::NaiveDate::from_ymd_opt(2027, 1, 6).expect("a date"), "the same span ahead");
    assert_eq!((later.items.len(), later.complaints[0].pain, later.absent.len()), (1, None, 1));
    assert_eq!(later.confirmed, Some(draft.today), "the list is carried over with its day, and confirmed again");
    assert_eq!(later.aftercare, [Aftercare::SorenessIsUsual, Aftercare::ContactIfWorse]);
    assert_eq!(later.cleared, [cleared], "an alarm that was cleared stays cleared");
}

#[test]
fn seconds_are_read_with_point_or_comma() {
    assert_eq!([" 12.4", "12,46", "0", "600", "12 s", "12.4s"].map(tenths_of), [124, 125, 0, 6000, 120, 124].map(Some));
    for text in ["", "-1", "601", "900", "ten", "abc", "NaN", "inf", "1e2", "1.2.3", "1 2", ".5", "s"] {
        assert_eq!(tenths_of(text), None, "{text}");
    }
}

/// What the options of an item propose, in their order.
fn proposed(item: &Item, suggestion: &Suggestion) -> Vec<Proposal> {
    let all = options(item, suggestion, Some(&hold()), None);
    all.iter().filter_map(|option| Some(option.suggestion()?.proposal.clone())).collect()
}

#[test]
fn a_clinician_may_choose_differently_from_the_proposal() {
    let (mut draft, id) = with_hold();
    let carried = draft.prescription.items.clone();
    let keep = suggestion(id, Proposal::Keep);
    let change = |by| Step::Change { quantity: Quantity::HoldSeconds, by };
    let a_day = carried[0].schedule.pattern.minutes().len() as u8;
    let fewer = Proposal::Reduce(Reduction::FewerSlots { from: a_day, to: a_day.div_ceil(2) });
    let expected = [Proposal::Ease(change(-5)), fewer, Proposal::Keep, Proposal::Progress(change(5))];
    assert_eq!(proposed(&carried[0], &keep), expected);
    for option in options(&carried[0], &keep, Some(&hold()), None) {
        draft.choose(&option, &carried);
        assert!(draft.has_chosen(&option), "{option:?}");
        let all = options(&carried[0], &keep, Some(&hold()), None);
        assert_eq!(all.iter().filter(|one| draft.has_chosen(one)).count(), 1, "options differ: {option:?}");
    }
}

#[test]
fn what_is_planned_departs_from_what_says_what_to_do() {
    let (mut draft, id) = with_hold();
    let carried = draft.prescription.items.clone();
    let step = Proposal::Progress(Step::Change { quantity: Quantity::HoldSeconds, by: 5 });
    let [harder, keep, talk] = [step, Proposal::Keep, Proposal::Talk].map(|proposal| suggestion(id, proposal));
    let end = suggestion(id, Proposal::Reduce(Reduction::ShortenOrEnd));
    let departs = |draft: &Draft| [&harder, &keep, &talk, &end].map(|one| draft.departs_from(one, &carried));
    assert_eq!(departs(&draft), [true, false, false, false]);
    draft.choose(&ItemOption::of(harder.clone(), &carried[0]), &carried);
    assert_eq!(departs(&draft), [false, true, false, false]);
    draft.choose(&ItemOption::LeftOut(id), &carried);
    assert_eq!(departs(&draft), [true, true, false, false]);
    assert!(!draft.departs_from(&harder, &[]), "the last plan did not have it");
}

#[test]
fn keeping_it_brings_back_what_less_took_away() {
    let (mut draft, id) = with_hold();
    let carried = draft.prescription.items.clone();
    draft.edit(id, |item| item.note = "slowly".into());
    let less = suggestion(id, Proposal::Reduce(Reduction::Half(HalfOfDay::BeforeNoon)));
    let all = options(&carried[0], &less, Some(&hold()), None);
    assert_eq!(all[0].suggestion(), Some(&less), "what is proposed comes first");
    draft.choose(&all[0], &carried);
    assert!(draft.prescription.items[0].schedule.pattern.minutes().iter().all(|minute| *minute < 12 * 60));
    let keep = ItemOption::of(suggestion(id, Proposal::Keep), &carried[0]);
    draft.choose(&keep, &carried);
    assert_eq!(draft.prescription.items[0].schedule, carried[0].schedule);
    assert_eq!(draft.prescription.items[0].note, "slowly", "what an option does not change stays");
}

#[test]
fn an_item_that_was_left_out_comes_back_to_its_place() {
    let (mut draft, first) = with_hold();
    let second = draft.add(&balance()).expect("room");
    let carried = draft.prescription.items.clone();
    let added = draft.add(&hold()).expect("room");
    let out = [ItemOption::LeftOut(first), ItemOption::LeftOut(second)];
    out.iter().for_each(|option| draft.choose(option, &carried));
    assert!(out.iter().all(|option| draft.has_chosen(option)));
    let order = |draft: &Draft| draft.prescription.items.iter().map(|item| item.id).collect::<Vec<_>>();
    assert_eq!(order(&draft), [added]);
    for item in carried.iter().rev() {
        draft.choose(
            &ItemOption::of(Suggestion { rung: None, dose: item.dose, ..suggestion(item.id, Proposal::Keep) }, item),
            &carried,
        );
    }
    assert_eq!(order(&draft), [first, second, added]);
}

#[test]
fn accepting_all_proposals_leaves_out_those_that_ask_first() {
    let (mut draft, one) = with_hold();
    let two = draft.add(&hold()).expect("room");
    let all = [
        suggestion(one, Proposal::Progress(Step::Change { quantity: Quantity::HoldSeconds, by: 5 })),
        Suggestion {
            ask: vec![Ask::Pain],
            ..suggestion(two, Proposal::Progress(Step::Change { quantity: Quantity::HoldSeconds, by: 5 }))
        },
    ];
    assert!(!draft.follows_all(&all));
    draft.apply_all(&all);
    assert_eq!(draft.prescription.items[1].dose, hold().dose, "the other is asked about first");
    assert!(draft.follows_all(&all) && draft.follows(&all[0]));
    draft.remove(one);
    assert!(draft.follows_all(&all), "of an item that is gone nothing can be taken over");
}

#[test]
fn a_header_keeps_the_plans_data_and_counts_its_revisions() {
    let first = Header::first(PlanId([7; 8]), "Bridge Street", day(11, 25));
    assert_eq!((first.revision, first.start, first.issued), (1, day(11, 25), day(11, 25)));
    let next = first.next("Mill Lane", day(12, 16));
    let expected = Header { revision: 2, clinic: "Mill Lane".into(), issued: day(12, 16), ..first };
    assert_eq!(next, expected);
}

#[test]
fn graded_activity_goes_on_from_the_amount_that_the_calendar_reached() {
    let (mut draft, id) = with_hold();
    draft.edit(id, |item| item.dose = Dose::Quota { minutes: 10, step: 2, every_days: 3, goal: 30 });
    let last = issued(&draft);
    let reached =
        |today| next(&last, UsedNumbers::default(), today).prescription.items[0].dose.value(Quantity::QuotaMinutes);
    assert_eq!(reached(day(11, 25)), Some(10), "a correction of the same visit");
    assert_eq!(reached(day(12, 2)), Some(14));
    let mut later = last.clone();
    later.prescription.items[0].phase.first = Some(day(11, 30));
    let begun = next(&later, UsedNumbers::default(), day(12, 6)).prescription.items[0].dose;
    assert_eq!(begun.value(Quantity::QuotaMinutes), Some(14), "from the first day of its phase on");
}
