//! The rules, from the facts about one item to its proposal, and from a whole plan with what devices recorded to all of them.

use super::*;
use crate::adherence::{DoseUnit, SlotOn};
use crate::alarm::ClearedAlarm;
use crate::catalogue::Catalogue;
use crate::change::Flare;
use crate::history::Mark;
use crate::plan::{AgeBand, Plan, Side};
use crate::review::samples::{
    BALANCE, BALANCE_DOSE, HOLD_DOSE, PHONE, REPS, REPS_DOSE, alarm, catalogue, during, item, item_day, plan, revised,
    revisions, run, rung, summary,
};
use crate::run::Share;
use crate::summary::{RunTiming, Summary, TakenOn};

/// The last day that is looked at.
const UNTIL: u16 = 20;

fn slot(day: u16, mark: Mark) -> SlotOn {
    SlotOn {
        day: DayNumber(day),
        weekday: (day % 7) as u8,
        seen: true,
        item: REPS,
        revision: 1,
        number: 0,
        minute: 18 * 60,
        mark,
        written_in: false,
        dose: Share { done: if mark == Mark::Done { 16 } else { 0 }, of: 16 },
        over: 0,
        unit: DoseUnit::Repetitions,
        timing: RunTiming::InTime,
    }
}

fn session(day: u16) -> Session {
    Session { day: DayNumber(day), finished: true, met: true }
}

fn rated(day: u16, score: u8) -> (DayNumber, Score) {
    (DayNumber(day), Score::at_most_ten(score))
}

/// Two weeks in which everything was done, met the target and hurt little.
fn all_well<'a>(planned: &'a Item, catalogue: &'a Catalogue) -> ItemFacts<'a> {
    ItemFacts {
        planned,
        item: planned.clone(),
        exercise: catalogue.get(&planned.exercise),
        age: Some(AgeBand::From40),
        gate_open: true,
        until: DayNumber(UNTIL),
        changed: DayNumber(0),
        alarm: None,
        last_alarm: None,
        near_fall: None,
        slots: (7..=UNTIL).map(|day| slot(day, Mark::Done)).collect(),
        sessions: (7..=UNTIL).map(session).collect(),
        phase: crate::plan::PhaseState::Now,
        during: vec![rated(12, 1), rated(18, 2)],
        unsettled: Vec::new(),
        unsettled_unknown: Vec::new(),
        pain_worse: false,
        flares: Vec::new(),
        falling: false,
        asks_pain: true,
    }
}

/// The proposal for an item of which all is well but for `change`.
fn of_item(planned: &Item, change: impl FnOnce(&mut ItemFacts<'_>)) -> Suggestion {
    let catalogue = catalogue();
    let mut facts = all_well(planned, &catalogue);
    change(&mut facts);
    propose(&facts)
}

fn of_reps(change: impl FnOnce(&mut ItemFacts<'_>)) -> Suggestion {
    of_item(&item(REPS_DOSE, Side::Neither), change)
}

fn progresses(suggestion: &Suggestion) -> bool {
    matches!(suggestion.proposal, Proposal::Progress(_))
}

#[test]
fn what_is_done_as_needed_is_kept_or_talked_about() {
    let planned = Item { schedule: crate::plan::Schedule::AS_NEEDED, ..item(REPS_DOSE, Side::Neither) };
    let kept = of_item(&planned, |facts| facts.slots.clear());
    assert_eq!((kept.proposal, kept.reasons), (Proposal::Keep, vec![Reason::Hindered(Hindrance::AsNeeded)]));
    let sore = of_item(&planned, |facts| facts.unsettled = vec![DayNumber(8), DayNumber(10)]);
    assert_eq!(sore.proposal, Proposal::Keep, "nothing but a high rating or an alarm leads to a talk");
    let hurt = of_item(&planned, |facts| facts.during.push((DayNumber(19), planned.pain_limit.up())));
    assert_eq!(hurt.proposal, Proposal::Talk);
    assert!(matches!(hurt.reasons[..], [Reason::AboveLimit { .. }]));
    let fell = of_item(&planned, |facts| facts.alarm = Some((AlarmId([3; 8]), Trouble::Fell)));
    assert!(matches!((fell.proposal, &fell.reasons[..]), (Proposal::Talk, [Reason::Alarm { .. }])));
}

#[test]
fn an_item_outside_its_phase_is_kept_unless_an_alarm_suspends_it() {
    use crate::plan::PhaseState::{Over, ToCome};
    let day = chrono::NaiveDate::from_ymd_opt(2027, 3, 1).expect("a date");
    let nothing = |facts: &mut ItemFacts<'_>| facts.slots.iter_mut().for_each(|slot| slot.mark = Mark::NotDone);
    for (phase, why) in [(ToCome(day), Hindrance::ToCome), (Over(day), Hindrance::Over)] {
        let kept = of_reps(|facts| {
            nothing(facts);
            facts.phase = phase;
        });
        assert_eq!((kept.proposal, kept.reasons), (Proposal::Keep, vec![Reason::Hindered(why)]));
        let fell = of_reps(|facts| (facts.phase, facts.alarm) = (phase, Some((AlarmId([3; 8]), Trouble::Fell))));
        assert_eq!(fell.proposal, Proposal::Talk);
    }
}

#[test]
fn of_five_rules_the_first_that_holds_is_the_proposal() {
    let fell = (AlarmId([3; 8]), Trouble::Fell);
    let little = |facts: &mut ItemFacts<'_>| facts.slots.iter_mut().skip(2).for_each(|slot| slot.mark = Mark::NotDone);
    let unsettled = |facts: &mut ItemFacts<'_>| facts.unsettled = vec![DayNumber(8), DayNumber(10)];
    let all = of_reps(|facts| {
        facts.alarm = Some(fell);
        unsettled(facts);
        little(facts);
    });
    assert_eq!((all.proposal, &all.reasons[0]), (Proposal::Talk, &Reason::Alarm { id: fell.0, trouble: fell.1 }));
    let nothing = of_reps(|facts| {
        unsettled(facts);
        facts.slots.iter_mut().for_each(|slot| slot.mark = Mark::NotDone);
    });
    assert_eq!((nothing.proposal, &nothing.reasons[0]), (Proposal::Talk, &Reason::NothingDone { owed: 14 }));
    let eased = of_reps(|facts| {
        unsettled(facts);
        little(facts);
    });
    assert!(matches!(eased.proposal, Proposal::Ease(_)), "{eased:?}");
    let reduced = of_reps(little);
    assert!(matches!(reduced.proposal, Proposal::Reduce(_)), "{reduced:?}");
    assert!(progresses(&of_reps(|_| {})));
    let changed = of_reps(|facts| facts.changed = DayNumber(UNTIL - 6));
    assert_eq!(changed.proposal, Proposal::Keep);
    assert_eq!(changed.reasons, [Reason::ChangedLately { day: DayNumber(UNTIL - 6) }]);
}

#[test]
fn whatever_alarm_suspends_it_and_however_long_ago_it_is_talked_about() {
    for trouble in Trouble::ALL {
        let suspended = of_reps(|facts| {
            facts.alarm = Some((AlarmId([3; 8]), trouble));
            facts.last_alarm = Some((trouble, DayNumber(0)));
        });
        assert_eq!(suspended.proposal, Proposal::Talk, "{trouble:?}");
        assert_eq!(suspended.offered(&item(REPS_DOSE, Side::Neither)), None, "{trouble:?}");
    }
}

#[test]
fn an_alarm_that_was_cleared_stands_in_the_way_of_a_step_for_a_week() {
    let with = |day| of_reps(|facts| facts.last_alarm = Some((Trouble::Dizzy, DayNumber(day))));
    for day in [UNTIL, UNTIL - 6] {
        let kept = with(day);
        assert_eq!(kept.proposal, Proposal::Keep, "day {day}");
        assert_eq!(kept.reasons, [Reason::AlarmLately { trouble: Trouble::Dizzy, day: DayNumber(day) }]);
    }
    assert!(progresses(&with(UNTIL - 7)));
}

#[test]
fn without_two_ratings_pain_is_asked_and_no_step_is_offered_at_home() {
    let planned = item(REPS_DOSE, Side::Neither);
    for known in [Vec::new(), vec![rated(18, 1)]] {
        let count = known.len() as u32;
        let open = of_item(&planned, |facts| facts.during = known);
        assert!(progresses(&open) && open.step().is_some(), "{open:?}");
        assert_eq!((&open.ask[..], open.reasons.last()), (&[Ask::Pain][..], Some(&Reason::PainUnknown { known: count })));
        assert_eq!(open.offered(&planned), None, "{count} ratings");
    }
    let known = of_item(&planned, |_| {});
    assert_eq!((&known.ask[..], known.offered(&planned)), (&[][..], known.step()));
    assert!(known.step().is_some());
    let not_asked = of_item(&planned, |facts| (facts.asks_pain, facts.during) = (false, Vec::new()));
    assert!(progresses(&not_asked) && not_asked.ask.is_empty(), "its pain is not asked about");
}

#[test]
fn at_home_a_step_is_offered_only_for_the_item_and_only_where_the_card_allows_it() {
    let planned = item(REPS_DOSE, Side::Neither);
    let step = of_item(&planned, |_| {});
    assert!(step.offered(&planned).is_some());
    assert_eq!(step.offered(&Item { may_step: false, ..planned.clone() }), None);
    assert_eq!(step.offered(&Item { id: BALANCE, ..planned }), None);
}

#[test]
fn after_a_near_fall_the_card_follows_to_the_level_in_use_at_home() {
    let planned = Item { rung: Some(rung("towel")), ..item(BALANCE_DOSE, Side::Both) };
    let at_home = of_item(&planned, |facts| {
        facts.item.rung = Some(rung("firm"));
        facts.near_fall = Some(DayNumber(12));
    });
    assert_eq!(at_home.proposal, Proposal::Ease(Step::Rung { to: rung("firm"), dose: BALANCE_DOSE }));
    assert_eq!(at_home.reasons, [Reason::NearFall { day: DayNumber(12) }]);
    let harder_at_home = of_item(&planned, |facts| {
        facts.item.rung = Some(rung("foam"));
        facts.near_fall = Some(DayNumber(12));
    });
    assert_eq!(
        harder_at_home.proposal,
        Proposal::Ease(Step::Rung { to: rung("towel"), dose: BALANCE_DOSE }),
        "from a harder level it goes one back"
    );
    let same = of_item(&planned, |facts| facts.near_fall = Some(DayNumber(12)));
    assert_eq!(same.proposal, Proposal::Ease(Step::Rung { to: rung("firm"), dose: BALANCE_DOSE }), "one level back");
    let no_near_fall = of_item(&planned, |facts| facts.item.rung = Some(rung("firm")));
    assert!(!matches!(no_near_fall.proposal, Proposal::Ease(_)), "{no_near_fall:?}");
}

#[test]
fn a_test_is_never_stepped() {
    let mut catalogue = catalogue();
    catalogue.exercises.iter_mut().for_each(|exercise| exercise.test = true);
    for planned in [item(HOLD_DOSE, Side::Neither), item(BALANCE_DOSE, Side::Both), item(REPS_DOSE, Side::Neither)] {
        let mut facts = all_well(&planned, &catalogue);
        let kept = propose(&facts);
        assert_eq!((kept.proposal, &kept.reasons[..]), (Proposal::Keep, &[Reason::Hindered(Hindrance::Test)][..]));
        facts.unsettled = vec![DayNumber(8), DayNumber(10)];
        let unsettled = propose(&facts);
        assert_eq!(unsettled.proposal, Proposal::Talk, "there is no easier test");
        assert!(matches!(unsettled.reasons[0], Reason::Unsettled { .. }));
    }
}

/// A sequence of numbers that is the same in every run.
struct Numbers(u32);

impl Numbers {
    /// The next number, from 0 to `below` - 1.
    fn next(&mut self, below: u16) -> u16 {
        self.0 = self.0.wrapping_mul(1_664_525).wrapping_add(1_013_904_223);
        ((self.0 >> 8) % u32::from(below)) as u16
    }

    /// True once in `of` times.
    fn once_in(&mut self, of: u16) -> bool {
        self.next(of) == 0
    }

    /// One of the fourteen days that are looked at, the last one included.
    fn day(&mut self) -> DayNumber {
        DayNumber(UNTIL - self.next(14))
    }
}

/// Facts in which each thing that can go wrong does so now and then.
fn any_facts<'a>(numbers: &mut Numbers, planned: &'a Item, catalogue: &'a Catalogue) -> ItemFacts<'a> {
    let mut facts = all_well(planned, catalogue);
    facts.item.pain_limit = Score::at_most_ten(numbers.next(7) as u8);
    facts.gate_open = !numbers.once_in(4);
    facts.age = (!numbers.once_in(4)).then_some(AgeBand::From65);
    facts.changed = DayNumber(if numbers.once_in(5) { UNTIL - numbers.next(9) } else { 0 });
    let trouble = Trouble::ALL[usize::from(numbers.next(Trouble::ALL.len() as u16))];
    facts.alarm = numbers.once_in(5).then_some((AlarmId([3; 8]), trouble));
    facts.last_alarm = numbers.once_in(5).then(|| (trouble, numbers.day()));
    facts.near_fall = numbers.once_in(8).then(|| numbers.day());
    facts.falling = numbers.once_in(8);
    facts.pain_worse = numbers.once_in(5);
    facts.unsettled = (0..numbers.next(6).saturating_sub(3)).map(|_| numbers.day()).collect();
    facts.unsettled_unknown = (0..numbers.next(5).saturating_sub(3)).map(|_| numbers.day()).collect();
    facts.flares = (0..numbers.next(5).saturating_sub(3))
        .map(|_| numbers.day())
        .map(|to| Flare { from: DayNumber(2), to, least: Score::at_most_ten(6), peak: Score::at_most_ten(8) })
        .collect();
    let skips = numbers.next(12);
    facts.slots.iter_mut().for_each(|slot| {
        if numbers.next(12) < skips / 3 {
            slot.mark = Mark::NotDone;
        }
    });
    facts.sessions.retain(|_| !numbers.once_in(6));
    facts.sessions.iter_mut().for_each(|session| session.met = !numbers.once_in(10));
    let high = if numbers.once_in(3) { 8 } else { 4 };
    let mut days: Vec<DayNumber> = (0..numbers.next(5)).map(|_| numbers.day()).collect();
    days.sort();
    days.dedup();
    facts.during = days.into_iter().map(|day| (day, Score::at_most_ten(numbers.next(high) as u8))).collect();
    facts
}

#[test]
fn whatever_the_facts_are_nothing_that_hurts_is_made_harder() {
    let catalogue = catalogue();
    let planned = [item(HOLD_DOSE, Side::Neither), item(BALANCE_DOSE, Side::Both), item(REPS_DOSE, Side::Neither)];
    let mut numbers = Numbers(1);
    let mut forward = 0;
    for round in 0..30_000 {
        let facts = any_facts(&mut numbers, &planned[round % 3], &catalogue);
        let suggestion = propose(&facts);
        assert!(!suggestion.reasons.is_empty(), "{facts:?}");
        if !progresses(&suggestion) {
            continue;
        }
        forward += 1;
        let lately = |day: &DayNumber| UNTIL - day.0 < 7;
        let last_three = facts.during.iter().rev().take(3);
        assert_eq!(last_three.filter(|(_, score)| *score > facts.item.pain_limit).count(), 0, "above the limit: {facts:?}");
        assert!(facts.alarm.is_none(), "an alarm that no card has cleared: {facts:?}");
        assert!(!facts.last_alarm.is_some_and(|(_, day)| lately(&day)), "an alarm within a week: {facts:?}");
        assert!(!facts.pain_worse, "worse: {facts:?}");
        assert!(![&facts.unsettled, &facts.unsettled_unknown].into_iter().flatten().any(lately), "unsettled: {facts:?}");
        assert_eq!(suggestion.ask.is_empty(), facts.during.len() >= 2, "asked with two ratings or fewer: {facts:?}");
    }
    assert!(forward > 500, "only {forward} of them went forward");
}

/// Three weeks of counted movement every evening, in full and without pain, and whatever `change` adds.
fn three_weeks(change: impl FnOnce(&mut Summary)) -> Summary {
    let mut told = summary(PHONE, 1, 0, UNTIL);
    told.runs = (0..=UNTIL).map(|day| run(u32::from(day) + 1, day, REPS, Some(0))).collect();
    told.days = (0..=UNTIL).map(|day| item_day(day, REPS, &[Mark::Done])).collect();
    told.during = vec![during(900, 12, REPS, 1), during(901, 18, REPS, 2)];
    change(&mut told);
    told
}

/// The proposal of the whole plan for one item.
fn of_plan_item(plans: impl IntoIterator<Item = Plan>, told: Summary, item: ItemId) -> Suggestion {
    let review = crate::review::build(&revisions(plans), &catalogue(), &[told]).expect("a plan and a summary");
    review.items.into_iter().find(|one| one.item == item).expect("an item of the plan")
}

#[test]
fn of_a_plan_an_alarm_never_leads_forward_and_a_cleared_one_not_within_a_week() {
    let raised = |day| alarm(PHONE, 950, day, Trouble::Fell, None);
    let of = |day, cleared: bool| {
        let told = three_weeks(|told| {
            told.alarms.push(raised(day));
            told.taken.push(TakenOn { day: DayNumber(day), revision: 2, agreed: Vec::new() });
        });
        let mut next = revised(2, day.into());
        let clearing = ClearedAlarm { id: raised(day).id, seen: Some((Trouble::Fell, DayNumber(day))) };
        next.prescription.cleared = cleared.then_some(clearing).into_iter().collect();
        of_plan_item([plan(), next], told, REPS)
    };
    assert!(progresses(&of_plan_item([plan()], three_weeks(|_| {}), REPS)));
    for day in [0, 13, 14, 20] {
        let open = of(day, false);
        assert_eq!(open.proposal, Proposal::Talk, "day {day}");
        assert!(matches!(open.reasons[0], Reason::Alarm { trouble: Trouble::Fell, .. }), "{open:?}");
    }
    let lately = of(14, true);
    assert_eq!(lately.proposal, Proposal::Keep);
    assert_eq!(lately.reasons, [Reason::AlarmLately { trouble: Trouble::Fell, day: DayNumber(14) }]);
    assert!(progresses(&of(13, true)), "{:?}", of(13, true));
}

#[test]
fn of_a_plan_a_near_fall_delays_a_step_by_a_week_although_it_suspends_nothing() {
    let of = |day, item| {
        let raised = alarm(PHONE, 950, day, Trouble::NearlyFell, Some(item));
        let told = three_weeks(|told| {
            told.alarms.push(raised.clone());
            told.taken.push(TakenOn { day: DayNumber(day), revision: 2, agreed: Vec::new() });
        });
        let mut next = revised(2, day.into());
        let seen = Some((Trouble::NearlyFell, DayNumber(day)));
        next.prescription.cleared = vec![ClearedAlarm { id: raised.id, seen }];
        of_plan_item([plan(), next], told, REPS)
    };
    assert_eq!(of(14, REPS).reasons, [Reason::AlarmLately { trouble: Trouble::NearlyFell, day: DayNumber(14) }]);
    assert!(progresses(&of(13, REPS)), "a week ago");
    assert!(progresses(&of(14, BALANCE)), "in another item");
}

#[test]
fn of_a_plan_a_near_fall_eases_to_the_level_that_the_device_uses_since() {
    let mut on_a_towel = plan();
    let balance = on_a_towel.prescription.items.iter_mut().find(|item| item.id == BALANCE).expect("a balance item");
    (balance.rung, balance.may_step) = (Some(rung("towel")), false);
    let told = |near_fall: bool| {
        let mut told = summary(PHONE, 1, 0, UNTIL);
        told.alarms = near_fall.then(|| alarm(PHONE, 950, 12, Trouble::NearlyFell, Some(BALANCE))).into_iter().collect();
        told.days = (0..=UNTIL).map(|day| item_day(day, BALANCE, &[Mark::Done])).collect();
        told.runs = (0..=UNTIL).map(|day| run(u32::from(day) + 1, day, BALANCE, Some(0))).collect();
        for run in told.runs.iter_mut().filter(|run| run.day.0 <= 12) {
            run.rung = Some(rung("towel"));
        }
        told
    };
    let eased = of_plan_item([on_a_towel.clone()], told(true), BALANCE);
    assert_eq!(eased.rung, Some(rung("firm")), "the level in use");
    assert_eq!(eased.proposal, Proposal::Ease(Step::Rung { to: rung("firm"), dose: BALANCE_DOSE }));
    assert_eq!(eased.reasons, [Reason::NearFall { day: DayNumber(12) }]);
    let without = of_plan_item([on_a_towel], told(false), BALANCE);
    assert!(!matches!(without.proposal, Proposal::Ease(_)), "{without:?}");
}
