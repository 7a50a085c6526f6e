//! Each state of the head, on the sample plan: a hold at nine, ten and eleven, balance and repetitions at six.

use super::*;
use crate::alarm::Alarm;
use crate::id::{EntryRef, ItemId, PlanId, RunId};
use crate::log::{Barrier, DayOffReason, Entry, Log, LogEvent};
use crate::review::samples::{BALANCE, HOLD, PHONE, REPS, catalogue, plan, start};
use crate::run::{HoldRecord, Run, RunEnd, Work};
use crate::time::Offsets;

fn at(day: i64, hour: i64, minute: i64) -> Stamp {
    let midnight = start().and_time(chrono::NaiveTime::MIN).and_utc().timestamp_millis();
    Stamp { utc_ms: midnight + ((day * 24 + hour) * 60 + minute) * 60_000, offset_s: 0 }
}

/// A plan whose card was taken on day 0 at eight, followed by these events.
fn followed(happened: &[(Stamp, LogEvent)]) -> Followed {
    let entries = happened.iter().enumerate();
    let entries =
        entries.map(|(n, (at, event))| Entry { n: n as u32 + 1, plan: plan().header.id, at: *at, event: event.clone() });
    let log = Log { id: PHONE, former: Vec::new(), entries: entries.collect() };
    Followed { plan: plan(), taken: at(0, 8, 0), ahead: None, history: History::fold(&log, plan().header.id) }
}

fn head(happened: &[(Stamp, LogEvent)], now: Stamp) -> Head {
    composed(&[followed(happened)], &catalogue(), now, &Offsets::fixed(0)).head
}

/// The same of another plan, of which nothing is done.
fn head_of(plan: &crate::plan::Plan, now: Stamp) -> Head {
    let followed = Followed { plan: plan.clone(), ..followed(&[]) };
    composed(&[followed], &catalogue(), now, &Offsets::fixed(0)).head
}

fn slot(day: i64, item: ItemId, number: u8) -> SlotRef {
    SlotRef { day: at(day, 0, 0).date(), item, number }
}

fn skipped(day: i64, item: ItemId, number: u8) -> (Stamp, LogEvent) {
    (at(day, 8, 30), LogEvent::Skipped { slot: slot(day, item, number), reason: Barrier::NoTime })
}

#[test]
fn without_a_card_there_is_no_plan() {
    assert_eq!(composed::<Followed>(&[], &catalogue(), at(0, 9, 0), &Offsets::fixed(0)).head, Head::NoPlan);
}

#[test]
fn an_open_slot_is_due_until_it_closes() {
    let due = |put_off| Head::Due { slot: slot(1, HOLD, 1), due: at(1, 10, 0), closes: at(1, 11, 0), put_off };
    assert_eq!(head(&[], at(1, 10, 59)), due(None));
    let later = LogEvent::PutOff { slot: slot(1, HOLD, 1), minutes: 10 };
    assert_eq!(head(&[(at(1, 10, 1), later)], at(1, 10, 5)), due(Some(at(1, 10, 11))));
}

#[test]
fn ten_minutes_ahead_it_can_be_begun_and_earlier_it_is_next() {
    let soon = Head::Due { slot: slot(1, HOLD, 0), due: at(1, 9, 0), closes: at(1, 10, 0), put_off: None };
    assert_eq!(head(&[], at(1, 8, 50)), soon);
    assert_eq!(head(&[], at(1, 8, 49)), Head::Next { slot: slot(1, HOLD, 0), due: at(1, 9, 0) });
}

#[test]
fn a_skipped_slot_makes_room_for_the_next() {
    assert_eq!(head(&[skipped(1, HOLD, 0)], at(1, 9, 5)), Head::Next { slot: slot(1, HOLD, 1), due: at(1, 10, 0) });
}

#[test]
fn after_the_last_slot_the_day_is_over() {
    let over = Head::DoneForToday { done: 0, of: 5, next: Some(at(2, 9, 0)) };
    assert_eq!(head(&[skipped(1, BALANCE, 0), skipped(1, REPS, 0)], at(1, 18, 5)), over);
}

#[test]
fn what_is_due_at_a_set_time_is_offered_until_the_persons_day_ends() {
    let offered = Head::Due { slot: slot(1, BALANCE, 0), due: at(1, 18, 0), closes: at(2, 3, 0), put_off: None };
    assert_eq!(head(&[], at(1, 19, 30)), offered);
    assert_eq!(head(&[], at(2, 2, 59)), offered, "after midnight too");
    assert_eq!(head(&[], at(2, 3, 0)), Head::Next { slot: slot(2, HOLD, 0), due: at(2, 9, 0) });
}

#[test]
fn what_is_due_by_the_hour_comes_before_what_can_wait() {
    let mut plan = plan();
    plan.prescription.items[1].schedule.pattern = crate::plan::Pattern::At { times: vec![8 * 60] };
    assert_eq!(
        head_of(&plan, at(1, 8, 55)),
        Head::Due { slot: slot(1, BALANCE, 0), due: at(1, 8, 0), closes: at(2, 3, 0), put_off: None }
    );
    assert!(matches!(head_of(&plan, at(1, 9, 5)), Head::Due { slot, .. } if slot.item == HOLD));
}

#[test]
fn a_day_off_shows_the_next_due_slot_after_it() {
    let until = at(2, 0, 0).date();
    let ill = LogEvent::DaysOff { from: at(1, 0, 0).date(), until, why: DayOffReason::Ill };
    assert_eq!(head(&[(at(1, 7, 0), ill)], at(1, 9, 5)), Head::DayOff { chosen: true, next: Some(at(3, 9, 0)) });
}

#[test]
fn after_the_review_the_plan_is_over() {
    assert_eq!(
        head(&[], at(28, 9, 0)),
        Head::Due { slot: slot(28, HOLD, 0), due: at(28, 9, 0), closes: at(28, 10, 0), put_off: None }
    );
    assert_eq!(head(&[], at(29, 9, 0)), Head::Over { review: plan().prescription.review });
}

#[test]
fn when_everything_is_paused_the_gravest_alarm_is_shown() {
    let pain = |minute, item| {
        (
            at(1, 9, minute),
            LogEvent::Trouble {
                trouble: Trouble::TooMuchPain,
                item: Some(item),
                id: None,
                circumstances: Default::default(),
            },
        )
    };
    let heart = (
        at(1, 9, 9),
        LogEvent::Trouble { trouble: Trouble::HeartOrBreath, item: None, id: None, circumstances: Default::default() },
    );
    assert!(matches!(head(&[pain(1, HOLD)], at(1, 9, 10)), Head::Next { .. }), "the other exercises go on");
    assert_eq!(head(&[pain(1, HOLD), heart.clone()], at(1, 9, 10)), Head::Stopped(Trouble::HeartOrBreath));
    let each = [pain(1, HOLD), pain(2, REPS), pain(3, BALANCE)];
    assert_eq!(head(&each, at(1, 9, 10)), Head::Stopped(Trouble::TooMuchPain), "one alarm for each exercise stops all too");
}

#[test]
fn a_card_that_clears_the_alarm_opens_the_plan_again() {
    let mut one = followed(&[(
        at(1, 9, 1),
        LogEvent::Trouble { trouble: Trouble::Nerve, item: None, id: None, circumstances: Default::default() },
    )]);
    let Alarm { entry, .. } = one.history.alarms[0].clone();
    assert_eq!(entry, EntryRef { log: PHONE, n: 1 });
    let head = |one: &Followed| composed(std::slice::from_ref(one), &catalogue(), at(1, 9, 10), &Offsets::fixed(0)).head;
    assert_eq!(head(&one), Head::Stopped(Trouble::Nerve));
    one.plan.prescription.cleared = vec![crate::alarm::ClearedAlarm::of_entry(entry)];
    assert!(matches!(head(&one), Head::Due { .. }));
}

#[test]
fn of_two_plans_the_earlier_slot_is_shown() {
    let mut other = followed(&[]);
    other.plan.header.id = PlanId([7; 8]);
    other.plan.prescription.items.retain(|item| item.id == HOLD);
    other.plan.prescription.items[0].schedule.pattern = crate::plan::Pattern::At { times: vec![8 * 60 + 30] };
    let today = composed(&[followed(&[]), other.clone()], &catalogue(), at(1, 8, 35), &Offsets::fixed(0));
    assert_eq!(today.item.map(|item| item.plan), Some(PlanId([7; 8])));
    assert_eq!(today.string.len(), 6, "both plans' slots are on the day's string");
    let mine = composed(&[followed(&[]), other], &catalogue(), at(1, 9, 31), &Offsets::fixed(0));
    assert_eq!(mine.item.map(|item| item.plan), Some(plan().header.id), "the same number in the other plan is another item");
}

/// A run of the hold, outside its slots, with one hold of this length.
fn extra_hold(started: Stamp, held_ms: u32) -> Run {
    let item = plan().item(HOLD).expect("the sample plan has it").clone();
    Run {
        id: RunId(1),
        item: item.id,
        exercise: item.exercise,
        rung: item.rung,
        dose: item.dose,
        slot: None,
        started,
        live: true,
        end: RunEnd::Stopped,
        paused_ms: 0,
        interruptions: Vec::new(),
        work: Work::Timed(vec![HoldRecord { side: None, held_ms }]),
    }
}

#[test]
fn until_something_was_done_the_first_exercise_can_be_tried_while_nothing_is_due() {
    let page = |happened: &[(Stamp, LogEvent)], now| {
        composed(&[followed(happened)], &catalogue(), now, &Offsets::fixed(0)).try_first
    };
    let first = Some(TryFirst { plan: plan().header.id, item: HOLD, extra: true });
    assert_eq!(page(&[], at(0, 8, 10)), first, "the card was taken ten minutes ago");
    assert_eq!(page(&[], at(0, 19, 0)), None, "the evening's one can still be done");
    assert_eq!(page(&[], at(0, 9, 10)), None, "one is due");
    let run = |started, held_ms| (started, LogEvent::Run(extra_hold(started, held_ms)));
    assert_eq!(page(&[run(at(0, 8, 5), 10_000)], at(0, 8, 10)), None, "it was tried");
    assert_eq!(page(&[run(at(0, 8, 5), 0)], at(0, 8, 10)), first, "it was given up before it began");
    assert_eq!(page(&[run(at(-3, 8, 5), 10_000)], at(0, 8, 10)), first, "tried before this card");
    let pain =
        LogEvent::Trouble { trouble: Trouble::TooMuchPain, item: Some(HOLD), id: None, circumstances: Default::default() };
    let next = plan().prescription.items.iter().map(|item| item.id).find(|id| *id != HOLD);
    let second = next.map(|item| TryFirst { plan: plan().header.id, item, extra: false });
    assert_eq!(page(&[(at(0, 8, 5), pain)], at(0, 8, 10)), second, "the first is paused; this one counts for later today");
    let off = LogEvent::DaysOff { from: start(), until: start(), why: DayOffReason::Ill };
    assert_eq!(page(&[(at(0, 8, 5), off)], at(0, 8, 10)), None, "on a day off nobody is asked");
}

#[test]
fn times_agreed_for_a_later_day_are_those_of_that_day() {
    let mut one = followed(&[]);
    one.plan.prescription.items.retain(|item| item.id == HOLD);
    let mut plan = one.plan.clone();
    plan.prescription.items[0].schedule.pattern = crate::plan::Pattern::At { times: vec![8 * 60 + 30, 20 * 60] };
    one.ahead = Some((at(2, 0, 0).date(), plan));
    let minutes = |day| {
        let slots = one.slots_on(at(day, 0, 0).date(), &Offsets::fixed(0));
        slots.iter().filter(|slot| slot.slot.item == HOLD).map(|slot| slot.minute / 60).collect::<Vec<_>>()
    };
    assert_eq!((minutes(1), minutes(2)), (vec![9, 10, 11], vec![8, 20]));
    let evening = composed(std::slice::from_ref(&one), &catalogue(), at(1, 19, 0), &Offsets::fixed(0));
    assert!(
        matches!(evening.head, Head::DoneForToday { next: Some(next), .. } if next == at(2, 8, 30)),
        "{:?}",
        evening.head
    );
}

#[test]
fn the_summary_counts_slots_done_and_says_whether_a_plan_is_followed() {
    let page = |happened: &[(Stamp, LogEvent)], now| composed(&[followed(happened)], &catalogue(), now, &Offsets::fixed(0));
    let morning = page(&[], at(1, 8, 0));
    assert_eq!((morning.count().0, morning.is_followed()), (0, true));
    assert_eq!(usize::from(morning.count().1), morning.string.len(), "every hour of this day exists");
    assert!(!page(&[], at(400, 8, 0)).is_followed(), "its review date has passed");
    assert!(!composed::<Followed>(&[], &catalogue(), at(0, 9, 0), &Offsets::fixed(0)).is_followed());
}

#[test]
fn while_all_is_stopped_nothing_is_asked() {
    let heart = (
        at(7, 9, 5),
        LogEvent::Trouble { trouble: Trouble::HeartOrBreath, item: None, id: None, circumstances: Default::default() },
    );
    let questions = |happened: &[(Stamp, LogEvent)]| {
        composed(&[followed(happened)], &catalogue(), at(7, 9, 10), &Offsets::fixed(0)).questions
    };
    assert!(!questions(&[]).is_empty(), "the activity of the week");
    assert_eq!(questions(&[heart]), []);
}

#[test]
fn a_slot_that_was_put_off_shows_until_when_whatever_the_head_is_about() {
    let balance = slot(1, BALANCE, 0);
    let later = (at(1, 18, 1), LogEvent::PutOff { slot: balance, minutes: 10 });
    let page = |now| composed(&[followed(std::slice::from_ref(&later))], &catalogue(), now, &Offsets::fixed(0));
    let put_off = |now| page(now).string.iter().find(|knot| knot.slot == balance).map(|knot| knot.put_off);
    assert_eq!(
        page(at(1, 18, 2)).item.map(|item| item.item.id),
        Some(REPS),
        "a slot that was put off comes after one that was not"
    );
    assert_eq!(put_off(at(1, 18, 2)), Some(Some(at(1, 18, 11))));
    assert_eq!(put_off(at(1, 18, 11)), Some(None), "it has come");
    let skipped = followed(&[later.clone(), (at(1, 18, 2), LogEvent::Skipped { slot: balance, reason: Barrier::NoTime })]);
    let after = composed(&[skipped], &catalogue(), at(1, 18, 3), &Offsets::fixed(0));
    assert!(after.string.iter().all(|knot| knot.put_off.is_none()), "a skipped slot gives no reminder");
}

#[test]
fn with_two_clinics_each_item_names_its_clinic_and_equal_instructions_appear_once() {
    let mut other = followed(&[]);
    other.plan.header.id = PlanId([7; 8]);
    let aftercare = vec![crate::plan::Aftercare::KeepMoving];
    other.plan.prescription.aftercare = aftercare.clone();
    let mut mine = followed(&[]);
    mine.plan.prescription.aftercare = aftercare.clone();
    let page = |other: &Followed| composed(&[mine.clone(), other.clone()], &catalogue(), at(0, 9, 0), &Offsets::fixed(0));
    assert!(page(&other).items.iter().all(|item| item.clinic.is_none()), "one clinic: nobody asks whose");
    other.plan.header.clinic = "Harbour Rooms".into();
    let clinics: Vec<_> = page(&other).items.into_iter().filter_map(|item| item.clinic).collect();
    assert!(clinics.contains(&"Harbour Rooms".to_owned()) && clinics.contains(&plan().header.clinic), "{clinics:?}");
    assert_eq!(page(&other).aftercare, aftercare);
}

/// What the alarm that was raised last suspends until a card, by the rule for the log.
fn suspended_by_the_last(one: &Followed) -> Option<suspension::Suspends> {
    let last = one.history.alarms.len() - 1;
    one.history.suspends_until_card(&one.plan).iter().find(|alarm| alarm.place == last).map(|alarm| alarm.suspends)
}

#[test]
fn what_is_said_before_an_alarm_is_what_it_suspends_once_it_is_raised() {
    let now = at(9, 10, 0);
    let alarm = |at, trouble, item| {
        let event = LogEvent::Trouble { trouble, item, id: None, circumstances: Default::default() };
        (at, event)
    };
    let nearly = |at, item| alarm(at, Trouble::NearlyFell, item);
    let before = [
        ("nothing", vec![], false),
        ("a near fall today", vec![nearly(at(9, 9, 0), Some(BALANCE))], true),
        ("one six days ago", vec![nearly(at(3, 9, 0), Some(BALANCE))], true),
        ("one six days ago outside a run", vec![nearly(at(3, 9, 0), None)], true),
        ("one a week ago", vec![nearly(at(2, 9, 0), Some(BALANCE))], false),
        ("one in the night a week ago", vec![nearly(at(3, 2, 59), Some(BALANCE))], false),
        ("a fall", vec![alarm(at(8, 9, 0), Trouble::Fell, Some(BALANCE))], false),
    ];
    for (which, happened, counts) in before {
        let page = composed(&[followed(&happened)], &catalogue(), now, &Offsets::fixed(0));
        for (trouble, item) in
            Trouble::ALL.into_iter().flat_map(|trouble| [None, Some(HOLD), Some(BALANCE)].map(|of| (trouble, of)))
        {
            let said = page.would_suspend(plan().header.id, trouble, item);
            let raised = followed(&[happened.clone(), vec![alarm(now, trouble, item)]].concat());
            assert_eq!(said, suspended_by_the_last(&raised), "{trouble:?} of {item:?} after {which}");
        }
        let near_fall = page.would_suspend(plan().header.id, Trouble::NearlyFell, Some(BALANCE));
        assert_eq!(near_fall.is_some(), counts, "{which}");
        assert_eq!(page.would_suspend(PlanId([9; 8]), Trouble::NearlyFell, Some(BALANCE)), None, "another plan's {which}");
    }
}

#[test]
fn a_near_fall_that_a_card_has_cleared_is_not_counted_with_the_next() {
    let event = |item| LogEvent::Trouble { trouble: Trouble::NearlyFell, item, id: None, circumstances: Default::default() };
    let mut one = followed(&[(at(8, 9, 0), event(Some(BALANCE)))]);
    let would = |one: &Followed| {
        let page = composed(std::slice::from_ref(one), &catalogue(), at(9, 10, 0), &Offsets::fixed(0));
        page.would_suspend(one.plan.header.id, Trouble::NearlyFell, Some(BALANCE))
    };
    assert_eq!(would(&one), Some(suspension::Suspends::Standing));
    one.plan.prescription.cleared = vec![crate::alarm::ClearedAlarm { id: one.history.alarms[0].id, seen: None }];
    assert_eq!(would(&one), None);
    let mut raised = followed(&[(at(8, 9, 0), event(Some(BALANCE))), (at(9, 10, 0), event(Some(BALANCE)))]);
    raised.plan.prescription.cleared = one.plan.prescription.cleared;
    assert_eq!(suspended_by_the_last(&raised), None);
}

#[test]
fn an_item_is_offered_in_its_phase_and_new_on_its_first_day_until_it_was_done() {
    let mut plan = plan();
    let first = at(3, 0, 0).date();
    plan.prescription.items[0].phase.first = Some(first);
    let state = |happened: &[(Stamp, LogEvent)], now| {
        let followed = Followed { plan: plan.clone(), ..followed(happened) };
        let today = composed(&[followed], &catalogue(), now, &Offsets::fixed(0));
        let item = &today.items[0];
        (item.can_be_done(), item.is_new)
    };
    assert_eq!(state(&[], at(2, 12, 0)), (false, false));
    assert_eq!(state(&[], at(3, 2, 0)), (false, false), "before three o'clock it is the day before");
    assert_eq!(state(&[], at(3, 12, 0)), (true, true));
    assert_eq!(state(&[], at(4, 12, 0)), (true, false), "once");
}

#[test]
fn what_begins_later_does_not_hide_that_everything_is_paused() {
    let mut plan = plan();
    plan.prescription.items[0].phase.first = Some(at(3, 0, 0).date());
    let fell =
        LogEvent::Trouble { trouble: Trouble::HeartOrBreath, item: None, id: None, circumstances: Default::default() };
    let followed = Followed { plan: plan.clone(), ..followed(&[(at(1, 9, 0), fell)]) };
    let today = composed(&[followed], &catalogue(), at(1, 10, 0), &Offsets::fixed(0));
    assert_eq!(today.head, Head::Stopped(Trouble::HeartOrBreath));
}
