//! Folding a log, and how its slots are marked.

use super::*;
use crate::alarm::Trouble;
use crate::log::Entry;
use crate::review::samples::{BACK, HOLD, PHONE, PLAN, catalogue, plan, start};
use crate::run::{HoldRecord, RunEnd, SetRecord, Trial, TrialEnd, Work};
use crate::score::Score;
use crate::slots;
use crate::sway::Sensed;
use crate::time::Offsets;

fn zone() -> Offsets {
    Offsets::fixed(3600)
}

/// The moment that is `minute` minutes after midnight on the given day of the plan.
fn at(day: i64, minute: i64) -> Stamp {
    let midnight = (start() + chrono::Duration::days(day)).and_time(chrono::NaiveTime::MIN).and_utc();
    zone().stamp(midnight.timestamp_millis() + (minute * 60 - 3600) * 1000)
}

/// Folds these entries, in order.
fn history(events: Vec<(Stamp, LogEvent)>) -> History {
    let entries = (1..).zip(events).map(|(n, (at, event))| Entry { n, plan: PLAN, at, event });
    History::fold(&Log { id: PHONE, former: Vec::new(), entries: entries.collect() }, PLAN)
}

fn taken(revision: u16) -> LogEvent {
    LogEvent::Taken { revision, agreed: Vec::new() }
}

fn item() -> Item {
    plan().prescription.items[0].clone()
}

fn slot(day: i64, number: u8) -> Slot {
    let date = start() + chrono::Duration::days(day);
    slots::of_item(&item(), date, &zone())[usize::from(number)]
}

/// A run of the hold that began at `begun`, with the milliseconds for which each hold was held.
fn run(n: u32, begun: Stamp, slot: Option<SlotRef>, held_ms: &[u32]) -> Run {
    Run {
        id: RunId(n),
        item: HOLD,
        exercise: item().exercise,
        rung: item().rung,
        dose: item().dose,
        slot,
        started: begun,
        live: true,
        end: RunEnd::Completed,
        paused_ms: 0,
        interruptions: Vec::new(),
        work: Work::Timed(held_ms.iter().map(|held_ms| HoldRecord { side: None, held_ms: *held_ms }).collect()),
    }
}

fn done(begun: Stamp, slot: &Slot) -> LogEvent {
    LogEvent::Run(run(1, begun, Some(slot.slot), &[10_000; 3]))
}

/// The mark of the first slot of day 1 at a minute of that day, after these entries.
fn mark(events: Vec<(Stamp, LogEvent)>, minute: i64) -> Mark {
    history(events).mark(&slot(1, 0), &item(), at(1, minute))
}

#[test]
fn a_slot_is_to_come_then_due_then_not_done() {
    for (minute, expected) in
        [(9 * 60 - 1, Mark::ToCome), (9 * 60, Mark::Due), (10 * 60 - 1, Mark::Due), (10 * 60, Mark::NotDone)]
    {
        assert_eq!(mark(Vec::new(), minute), expected, "{minute}");
    }
}

#[test]
fn a_run_fills_its_slot_as_far_as_the_fullest_got() {
    let begun = at(1, 9 * 60 + 5);
    let named = Some(slot(1, 0).slot);
    let with = |runs: Vec<Run>| mark(runs.into_iter().map(|run| (begun, LogEvent::Run(run))).collect(), 11 * 60);
    let share = |done| Share { done, of: 3 };
    assert_eq!(with(vec![run(1, begun, named, &[10_000; 3])]), Mark::Done);
    assert_eq!(with(vec![run(1, begun, named, &[10_000, 10_000])]), Mark::Partly(share(2)));
    assert_eq!(with(vec![run(1, begun, named, &[10_000]), run(2, begun, named, &[10_000; 2])]), Mark::Partly(share(2)));
    assert_eq!(with(vec![run(1, begun, None, &[10_000; 3])]), Mark::NotDone, "an extra run fills nothing");
    assert_eq!(with(vec![run(1, begun, named, &[])]), Mark::NotDone, "begun and nothing tried");
}

#[test]
fn of_one_run_the_last_snapshot_counts() {
    let begun = at(1, 9 * 60 + 5);
    let named = Some(slot(1, 0).slot);
    let snapshots = [[10_000, 2_000, 0], [10_000, 10_000, 10_000]];
    let events = snapshots.iter().map(|held| (begun, LogEvent::Run(run(4, begun, named, held)))).collect();
    let history = history(events);
    assert_eq!(history.runs.len(), 1);
    assert_eq!((history.mark(&slot(1, 0), &item(), at(2, 0)), history.next_run()), (Mark::Done, RunId(5)));
}

#[test]
fn holds_ended_just_before_the_target_still_count_as_tried() {
    let begun = at(1, 9 * 60 + 5);
    let almost = run(1, begun, Some(slot(1, 0).slot), &[9_900; 3]);
    assert_eq!(mark(vec![(begun, LogEvent::Run(almost.clone()))], 11 * 60), Mark::Partly(Share { done: 0, of: 3 }));
    let reason = LogEvent::Skipped { slot: slot(1, 0).slot, reason: Barrier::Pain };
    let both = vec![(begun, LogEvent::Run(almost)), (begun, reason)];
    assert_eq!(mark(both, 11 * 60), Mark::Skipped(Barrier::Pain), "the reason says more");
}

#[test]
fn a_run_counts_before_a_skip_and_a_skip_before_a_day_off() {
    let named = slot(1, 0).slot;
    let out = |reason| (at(1, 9 * 60), LogEvent::Skipped { slot: named, reason });
    assert_eq!(mark(vec![out(Barrier::NoTime), out(Barrier::Unwell)], 9 * 60 + 30), Mark::Skipped(Barrier::Unwell));
    let day_off = (
        at(1, 8 * 60),
        LogEvent::DaysOff { from: start(), until: start() + chrono::Duration::days(1), why: DayOffReason::Ill },
    );
    assert_eq!(mark(vec![day_off.clone()], 9 * 60), Mark::DayOff(DayOffReason::Ill));
    assert_eq!(mark(vec![day_off.clone(), out(Barrier::NoTime)], 9 * 60), Mark::Skipped(Barrier::NoTime));
    let run = (at(1, 9 * 60 + 1), done(at(1, 9 * 60 + 1), &slot(1, 0)));
    assert_eq!(mark(vec![day_off, out(Barrier::NoTime), run], 9 * 60 + 30), Mark::Done);
}

#[test]
fn days_off_have_a_first_and_a_last() {
    let why = DayOffReason::Travelling;
    let day_off =
        LogEvent::DaysOff { from: start() + chrono::Duration::days(1), until: start() + chrono::Duration::days(2), why };
    let history = history(vec![(at(0, 600), day_off)]);
    let told = (0..4).map(|day| history.day_off(start() + chrono::Duration::days(day)));
    assert_eq!(told.collect::<Vec<_>>(), [None, Some(why), Some(why), None]);
}

#[test]
fn an_hour_that_does_not_exist_is_marked() {
    let missing = Slot { due: None, closes: None, ..slot(1, 0) };
    assert_eq!(history(Vec::new()).mark(&missing, &item(), at(2, 0)), Mark::NoSuchHour);
}

/// A second card, whose first slot is due at eleven, is taken on day 1 at half past ten.
fn two_cards() -> (Vec<(Stamp, LogEvent)>, Item, Slot) {
    let mut later = item();
    later.schedule.pattern = crate::plan::Pattern::Every { minutes: 240, from: 11 * 60, to: 15 * 60 };
    let first = slots::of_item(&later, start() + chrono::Duration::days(1), &zone())[0];
    (vec![(at(0, 8 * 60), taken(1)), (at(1, 10 * 60 + 30), taken(2))], later, first)
}

#[test]
fn a_run_of_the_card_before_does_not_fill_the_next_cards_slot_of_the_same_name() {
    let (mut events, later, first) = two_cards();
    assert_eq!(first.slot, slot(1, 0).slot, "one name for two slots");
    events.insert(1, (at(1, 9 * 60 + 5), done(at(1, 9 * 60 + 5), &slot(1, 0))));
    let told = history(events.clone());
    assert_eq!(told.mark(&slot(1, 0), &item(), at(1, 20 * 60)), Mark::Done);
    assert_eq!(told.mark(&first, &later, at(1, 20 * 60)), Mark::NotDone);
    let after = run(2, at(1, 11 * 60 + 5), Some(first.slot), &[10_000; 3]);
    events.push((after.started, LogEvent::Run(after)));
    assert_eq!(history(events).mark(&first, &later, at(1, 20 * 60)), Mark::Done);
}

#[test]
fn a_run_begun_just_before_the_new_card_still_counts_for_the_slot_that_comes() {
    let (mut events, later, mut first) = two_cards();
    events[1].0 = at(1, 10 * 60 + 57);
    let early = run(1, at(1, 10 * 60 + 55), Some(first.slot), &[10_000; 3]);
    events.insert(1, (early.started, LogEvent::Run(early)));
    assert_eq!(history(events.clone()).mark(&first, &later, at(1, 20 * 60)), Mark::Done);
    first.due = Some(at(1, 11 * 60 + 10));
    first.opens = first.due;
    assert_eq!(history(events).mark(&first, &later, at(1, 20 * 60)), Mark::NotDone, "eleven minutes are too early");
}

#[test]
fn what_is_written_in_afterwards_counts_for_the_slot_it_names() {
    let (mut events, later, first) = two_cards();
    let written = Run { live: false, ..run(1, at(0, 0), Some(first.slot), &[10_000; 3]) };
    events.push((at(1, 18 * 60), LogEvent::Run(written)));
    assert_eq!(history(events).mark(&first, &later, at(1, 20 * 60)), Mark::Done);
}

#[test]
fn the_card_in_force_is_the_last_one_taken() {
    let told = history(vec![(at(0, 600), taken(1)), (at(5, 600), taken(2))]);
    let revision = |stamp| told.in_force(stamp).map(|taken| taken.revision);
    assert_eq!(
        (revision(at(0, 599)), revision(at(0, 600)), revision(at(5, 599)), revision(at(5, 600))),
        (None, Some(1), Some(1), Some(2))
    );
}

#[test]
fn an_alarm_pauses_what_was_due_after_it() {
    let trouble = LogEvent::Trouble { trouble: Trouble::Nerve, item: None, id: None, circumstances: Default::default() };
    let told = history(vec![(at(1, 9 * 60 + 30), trouble)]);
    let (plan, catalogue) = (plan(), catalogue());
    let held = |number| told.was_paused(&slot(1, number), &item(), &plan, &catalogue);
    assert_eq!((held(0), held(1)), (false, true));
}

#[test]
fn the_first_reminder_stays_and_the_last_delay_counts() {
    let named = slot(1, 0).slot;
    let told = history(vec![
        (at(1, 540), LogEvent::Reminded { slot: named }),
        (at(1, 541), LogEvent::PutOff { slot: named, minutes: 10 }),
        (at(1, 551), LogEvent::Reminded { slot: named }),
        (at(1, 552), LogEvent::PutOff { slot: named, minutes: 10 }),
    ]);
    assert_eq!((told.reminded[&named], told.put_off[&named]), (at(1, 540), at(1, 562)));
}

#[test]
fn every_entry_makes_its_day_seen_and_another_plans_none() {
    let entry = |n, day, plan| Entry { n, plan, at: at(day, 600), event: LogEvent::Opened };
    let log = Log { id: PHONE, former: Vec::new(), entries: vec![entry(1, 0, PLAN), entry(2, 3, PlanId([9; 8]))] };
    assert_eq!(History::fold(&log, PLAN).seen, [start()].into());
}

#[test]
fn answers_keep_their_entrys_number_and_the_highest_counter_counts() {
    let rating = LogEvent::During { item: HOLD, score: Score::at_most_ten(6) };
    let told = history(vec![
        (at(0, 600), LogEvent::Sealed { counter: 3 }),
        (at(0, 601), rating),
        (at(0, 602), LogEvent::Sealed { counter: 2 }),
    ]);
    assert_eq!((told.counter, told.during[0].n, told.during[0].of), (3, 2, HOLD));
}

#[test]
fn a_rating_of_version_1_is_read_as_one_while_doing_it_after_a_run_and_as_a_mornings_otherwise() {
    let rated = |after| LogEvent::Pain { complaint: BACK, score: Score::at_most_ten(6), after };
    let begun = at(0, 600);
    let told = history(vec![
        (begun, LogEvent::Run(run(1, begun, None, &[10_000]))),
        (at(0, 601), rated(Some(RunId(1)))),
        (at(0, 602), rated(None)),
        (at(0, 603), rated(Some(RunId(9)))),
    ]);
    assert_eq!(told.during.iter().map(|rating| (rating.n, rating.of)).collect::<Vec<_>>(), [(2, HOLD)]);
    assert_eq!(told.mornings.iter().map(|rating| (rating.n, rating.of)).collect::<Vec<_>>(), [(3, BACK)]);
}

#[test]
fn repetitions_that_all_failed_were_tried() {
    let mut reps = plan().prescription.items[2].clone();
    reps.schedule = item().schedule;
    let named = slots::of_item(&reps, start(), &zone())[0];
    let failed = Run {
        item: reps.id,
        dose: reps.dose,
        slot: Some(named.slot),
        work: Work::Counted(vec![SetRecord { side: None, done: 0, failed: 3 }]),
        ..run(1, at(0, 545), None, &[])
    };
    let told = history(vec![(at(0, 545), LogEvent::Run(failed))]);
    assert_eq!(told.mark(&named, &reps, at(1, 0)), Mark::Partly(Share { done: 0, of: 16 }));
}

/// A balance run with one trial on the left leg, and what the sensor measured in it.
fn stood(end: TrialEnd, sensed: Option<(u32, bool)>) -> Vec<LogEvent> {
    let trials = vec![Trial { leg: Some(crate::plan::BodySide::Left), held_ms: 15_600, end }];
    let balance = crate::run::Balance {
        set_up: crate::run::SetUp::InPocket,
        surface: crate::catalogue::Surface::Firm,
        eyes: crate::catalogue::Eyes::Open,
        trials,
    };
    let run = Run { work: Work::Balance(balance), ..run(1, at(1, 600), None, &[]) };
    let said = sensed.map(|(held_ms, censored)| LogEvent::Sensed {
        run: RunId(1),
        trial: 0,
        sensed: Sensed {
            kind: crate::sway::SourceKind::Web,
            held_ms,
            censored,
            gap: false,
            otherwise: None,
            touch_downs: u8::from(!censored),
            figures: None,
            reasons: Vec::new(),
            flags: Vec::new(),
        },
        detail: String::new(),
    });
    [LogEvent::Run(run)].into_iter().chain(said).collect()
}

fn the_trial(events: Vec<LogEvent>) -> (u32, TrialEnd) {
    let history = history(events.into_iter().map(|event| (at(1, 610), event)).collect());
    let Work::Balance(balance) = &history.runs[&RunId(1)].work else { panic!("a stance") };
    (balance.trials[0].held_ms, balance.trials[0].end)
}

#[test]
fn the_first_touch_down_ends_a_trial_and_not_the_hand() {
    assert_eq!(the_trial(stood(TrialEnd::Touch, None)), (15_600, TrialEnd::Touch));
    assert_eq!(the_trial(stood(TrialEnd::Touch, Some((14_277, false)))), (14_277, TrialEnd::Touch));
    assert_eq!(the_trial(stood(TrialEnd::CutOff, Some((14_277, false)))), (14_277, TrialEnd::Touch));
    assert_eq!(the_trial(stood(TrialEnd::Target, Some((9_000, false)))), (9_000, TrialEnd::Touch));
}

#[test]
fn without_a_touch_down_only_the_target_is_a_time() {
    assert_eq!(the_trial(stood(TrialEnd::Target, Some((30_000, true)))), (30_000, TrialEnd::Target));
    let denied = stood(TrialEnd::CutOff, Some((15_600, true)));
    assert_eq!(the_trial(denied), (15_600, TrialEnd::CutOff), "ended by a proposal that was denied");
}

#[test]
fn a_snapshot_that_comes_late_does_not_undo_it() {
    let mut events = stood(TrialEnd::Touch, Some((14_277, false)));
    events.push(events[0].clone());
    assert_eq!(the_trial(events), (14_277, TrialEnd::Touch));
}

mod attribution {
    use super::*;
    use crate::plan::{Days, Pattern, Schedule, Weekdays};
    use chrono::Weekday;

    /// The sample plan with its hold at these minutes on these weekdays. It begins on a Wednesday.
    fn at_set_times(times: &[u16], days: Weekdays) -> crate::plan::Plan {
        let mut plan = plan();
        plan.prescription.items[0].schedule =
            Schedule { days: Days::On(days), pattern: Pattern::At { times: times.to_vec() } };
        plan
    }

    /// Does the hold in full at these moments, one after the other, and says which slots of the plan are done then, by day and number.
    fn done_at(plan: &crate::plan::Plan, moments: &[(i64, i64)]) -> Vec<(i64, u8)> {
        let mut events = vec![(at(0, 0), taken(1))];
        for (n, (day, minute)) in (1..).zip(moments) {
            let begun = at(*day, *minute);
            let slot = history(events.clone()).slot_for(plan, HOLD, begun, &zone(), at(0, 0));
            events.push((begun, LogEvent::Run(run(n, begun, slot, &[10_000; 3]))));
        }
        let history = history(events);
        let item = &plan.prescription.items[0];
        let days = 0..20_i64;
        let all = days.flat_map(|day| slots::of_item(item, start() + chrono::Duration::days(day), &zone()));
        let done = all.filter(|slot| history.mark(slot, item, at(30, 0)) == Mark::Done);
        done.map(|slot| (slot.slot.day.signed_duration_since(start()).num_days(), slot.slot.number)).collect()
    }

    #[test]
    fn anything_done_within_the_part_counts() {
        let daily = at_set_times(&[1080], Weekdays::ALL);
        for minute in [180, 600, 1079, 1080, 1145, 1439, 1440 + 179] {
            assert_eq!(done_at(&daily, &[(2, minute)]), [(2, 0)], "{minute}");
        }
        assert_eq!(done_at(&daily, &[(2, 179)]), [(1, 0)], "before three o'clock it is still the day before");
    }

    #[test]
    fn a_second_run_in_a_part_fills_a_missed_neighbour_an_hour_later() {
        let twice = at_set_times(&[480, 1200], Weekdays::ALL);
        assert_eq!(done_at(&twice, &[(2, 900), (2, 1205)]), [(2, 0), (2, 1)], "the morning's is done late");
        assert_eq!(done_at(&twice, &[(2, 1205), (2, 1240)]), [(2, 1)], "half an hour is one session");
        assert_eq!(done_at(&twice, &[(2, 430), (2, 600)]), [(2, 0)], "the evening's is still to come");
    }

    #[test]
    fn on_a_free_day_a_run_fills_the_missed_slot_beside_it() {
        let weekdays = [Weekday::Mon, Weekday::Wed, Weekday::Fri].into_iter().collect();
        let thrice = at_set_times(&[1080], weekdays);
        // Days 0, 2 and 5 are a Wednesday, a Friday and a Monday.
        assert_eq!(done_at(&thrice, &[(1, 600)]), [(0, 0)], "a day late");
        assert_eq!(done_at(&thrice, &[(0, 1100), (1, 600)]), [(0, 0), (2, 0)], "a day early, if the day itself has none");
        assert_eq!(done_at(&thrice, &[(0, 1100), (1, 600), (2, 1100)]), [(0, 0), (2, 0)]);
        assert_eq!(done_at(&thrice, &[(3, 600)]), [(2, 0)]);
        assert_eq!(done_at(&thrice, &[(4, 600)]), [(5, 0)]);
    }

    #[test]
    fn what_comes_every_second_week_may_be_done_up_to_six_days_early_or_late() {
        let mut fortnightly = at_set_times(&[1080], Weekdays::ALL);
        let from = start() + chrono::Duration::days(1);
        fortnightly.prescription.items[0].schedule.days = Days::EveryNth { n: 14, from };
        assert_eq!(done_at(&fortnightly, &[(4, 600)]), [(1, 0)], "three days late");
        assert_eq!(done_at(&fortnightly, &[(7, 1200)]), [(1, 0)]);
        assert_eq!(done_at(&fortnightly, &[(8, 600)]), [], "nearer to none");
        assert_eq!(done_at(&fortnightly, &[(1, 1100), (9, 600)]), [(1, 0), (15, 0)], "six days early");
        assert_eq!(done_at(&fortnightly, &[(1, 1100), (4, 600)]), [(1, 0)], "a second time is extra");
    }

    #[test]
    fn what_an_older_program_took_for_extra_counts_within_its_part() {
        let daily = at_set_times(&[1080], Weekdays::ALL);
        let item = &daily.prescription.items[0];
        let slot = slots::of_item(item, start() + chrono::Duration::days(1), &zone())[0];
        let mark = |begun| {
            history(vec![(at(0, 0), taken(1)), (begun, LogEvent::Run(run(1, begun, None, &[10_000; 3])))]).mark(
                &slot,
                item,
                at(9, 0),
            )
        };
        assert_eq!(mark(at(1, 1145)), Mark::Done);
        assert_eq!(mark(at(2, 1145)), Mark::NotDone);
    }

    #[test]
    fn by_the_hour_nothing_is_filled_afterwards() {
        let hourly = plan();
        assert_eq!(done_at(&hourly, &[(1, 545), (1, 550), (1, 800)]), [(1, 0)]);
    }
}
