//! Plans, cards and summaries for tests. All persons and clinics in them are invented.
#![allow(dead_code, reason = "each test file uses its own part of this")]

pub mod any;

use chrono::NaiveDate;
use exercises::alarm::{Circumstance, ClearedAlarm, Trouble};
use exercises::catalogue::{Dose, ExerciseId, Eyes, RungId, Surface, Tempo};
use exercises::history::Mark;
use exercises::id::{ActivityId, AlarmId, ComplaintId, EntryRef, ItemId, LogId, PlanId, RunId};
use exercises::log::{Barrier, DayOffReason};
use exercises::plan::{
    Activity, Aftercare, AgeBand, Band, BodySide, Complaint, Days, Header, Item, Kilograms, Load, Pattern, Phase, Plan,
    Prescription, Risk, Schedule, Side, StanceBaseline, Weekdays,
};
use exercises::run::{RunEnd, SetUp, Share, Trial, TrialEnd};
use exercises::score::Score;
use exercises::summary::{
    AlarmOn, Corrections, DuringOn, ItemDay, MorningOn, RatedOn, RunOn, RunTiming, SettledOn, StanceOn, Summary, TakenOn,
    WeekDelay, WellAgainOn,
};
use exercises::time::DayNumber;
use format::card::{Card, FormerKey, PairingSecret};
use std::collections::BTreeSet;

pub fn date(year: i32, month: u32, day: u32) -> NaiveDate {
    NaiveDate::from_ymd_opt(year, month, day).expect("a date")
}

/// An item of the given exercise and rung, side, dose, schedule, complaint and note.
fn item(id: u8, (exercise, rung): (&str, &str), side: Side, dose: Dose, schedule: Schedule, serves: u8, note: &str) -> Item {
    let exercise = ExerciseId::new(exercise).expect("an id");
    Item {
        rung: Some(RungId::new(rung).expect("an id")),
        side,
        pain_limit: Score::at_most_ten(4),
        may_step: id.is_multiple_of(2),
        serves: Some(ComplaintId(serves)),
        note: note.to_owned(),
        ..Item::new(ItemId(id), exercise, dose, schedule)
    }
}

fn hourly() -> Schedule {
    Schedule { days: Days::WORKDAYS, pattern: Pattern::Every { minutes: 60, from: 540, to: 1020 } }
}

fn at(times: &[u16]) -> Schedule {
    Schedule { days: Days::ALL, pattern: Pattern::At { times: times.to_vec() } }
}

/// Six items of all kinds, as a clinician might prescribe them after a first visit.
fn items() -> Vec<Item> {
    let hold = |repetitions, hold_s| Dose::Hold { repetitions, hold_s, rest_s: 5 };
    let balance = Dose::Balance { trials: 3, target_s: 30, rest_s: 30 };
    let reps = |sets, repetitions| {
        let tempo = Tempo { up_s: 2, hold_s: 1, down_s: 3 };
        Dose::Reps { sets, repetitions, rest_s: 60, tempo }
    };
    vec![
        item(1, ("sit-tall-chin-back", "chair"), Side::Neither, hold(3, 10), hourly(), 1, "Chin level, not down"),
        item(2, ("one-leg-stand", "firm-open"), Side::Both, balance, at(&[450, 1140]), 2, "Kitchen worktop in front of you"),
        item(3, ("sit-to-stand", "arms-crossed"), Side::Neither, reps(3, 8), at(&[1140]), 2, "Knees over the second toe"),
        item(4, ("shoulder-blade-set", "standing"), Side::Neither, hold(5, 8), hourly(), 1, "Long neck, soft jaw"),
        item(5, ("calf-rise", "both-legs"), Side::Neither, reps(2, 12), at(&[480, 1110]), 2, "Slowly down, three seconds"),
        item(
            6,
            ("side-lying-open-book", "arm-bent"),
            Side::Left,
            reps(1, 10),
            at(&[1260]),
            1,
            "Breathe out on the way back",
        ),
    ]
}

/// A realistic first plan with the first `count` of the six items.
pub fn plan(count: usize) -> Plan {
    let complaint = |id, name: &str, side, pain| Complaint { id: ComplaintId(id), name: name.to_owned(), side, pain };
    let activity = |id, name: &str, rating| Activity { id: ActivityId(id), name: name.to_owned(), rating };
    let (surface, eyes) = (Surface::Firm, Eyes::Open);
    let baseline = |leg, tenths, capped| StanceBaseline { taken: None, leg, surface, eyes, tenths, capped };
    Plan {
        header: Header {
            id: PlanId([0x3D, 0x91, 0x5A, 0xC7, 0x08, 0xEE, 0x42, 0xB6]),
            revision: 1,
            clinic: "Practice for hands-on therapy, Example Lane".to_owned(),
            phone: None,
            start: date(2026, 11, 25),
            issued: date(2026, 11, 25),
        },
        prescription: Prescription {
            review: date(2027, 1, 6),
            age: Some(AgeBand::From50),
            absent: Risk::ALL.into_iter().collect(),
            confirmed: None,
            items: items().into_iter().take(count).collect(),
            complaints: vec![
                complaint(1, "Upper back and neck, worse at the desk", Side::Neither, Some(Score::at_most_ten(5))),
                complaint(2, "Ankle, gives way on uneven ground", Side::Right, Some(Score::at_most_ten(3))),
            ],
            activities: vec![
                activity(1, "Reading on screen for two hours", Some(Score::at_most_ten(4))),
                activity(2, "Walking the dog over the fields", Some(Score::at_most_ten(6))),
                activity(3, "Reversing the car", Some(Score::at_most_ten(5))),
            ],
            baselines: vec![baseline(BodySide::Left, 300, true), baseline(BodySide::Right, 124, false)],
            aftercare: vec![
                Aftercare::SorenessIsUsual,
                Aftercare::KeepMoving,
                Aftercare::ContactIfWorse,
                Aftercare::Own("No running until Saturday; walk as much as you like.".to_owned()),
            ],
            cleared: Vec::new(),
        },
    }
}

/// The first card with that plan. Its keys are bytes that cannot be compressed.
pub fn card(count: usize) -> Card {
    Card {
        plan: plan(count),
        verify_key: scattered(1),
        recipient: scattered(2),
        pairing_secret: PairingSecret::new(scattered(3)),
        own: Vec::new(),
        former: Vec::new(),
    }
}

/// Thirty-two bytes without a pattern, so that they cannot be compressed.
pub fn scattered(seed: u8) -> [u8; 32] {
    let mut state = u32::from(seed) | 0x9E37_79B0;
    std::array::from_fn(|_| {
        state = state.wrapping_mul(1_664_525).wrapping_add(1_013_904_223);
        (state >> 24) as u8
    })
}

/// The frozen card: every part of a card at least once, with the keys that signed it.
pub fn frozen_card(verify_key: [u8; 32], recipient: [u8; 32]) -> Card {
    let mut plan = plan(6);
    plan.header.revision = 3;
    plan.header.issued = date(2026, 12, 16);
    plan.prescription.items[0].rung = None;
    plan.prescription.items[3].serves = None;
    plan.prescription.items[5].note = String::new();
    plan.prescription.complaints[1].pain = None;
    plan.prescription.activities[2].rating = None;
    let (leg, surface, eyes) = (BodySide::Right, Surface::Cushion, Eyes::Closed);
    plan.prescription.baselines.push(StanceBaseline { taken: None, leg, surface, eyes, tenths: 61, capped: false });
    let entry = EntryRef { log: LogId([0xA0, 1, 2, 3, 4, 5, 6, 7]), n: 70_000 };
    plan.prescription.cleared = vec![ClearedAlarm::of_entry(entry)];
    plan.prescription.absent.remove(&Risk::SevereVisualLoss);
    Card {
        plan,
        verify_key,
        recipient,
        pairing_secret: PairingSecret::new(scattered(3)),
        own: vec!["id = \"doorway-lean\"\nrevision = 2\n".to_owned()],
        former: Vec::new(),
    }
}

/// The frozen card whose stance times have their days.
pub fn frozen_card_with_days(verify_key: [u8; 32], recipient: [u8; 32]) -> Card {
    let mut card = frozen_card(verify_key, recipient);
    let days = [date(2026, 11, 25), date(2026, 12, 16), date(2026, 12, 9)];
    for (baseline, day) in card.plan.prescription.baselines.iter_mut().zip(days) {
        baseline.taken = Some(day);
    }
    card
}

/// The frozen card of version 2: with what version 1 does not have.
pub fn frozen_card_2(verify_key: [u8; 32], recipient: [u8; 32]) -> Card {
    let mut card = frozen_card_with_days(verify_key, recipient);
    card.plan.header.phone = Some("+00 555 0100".to_owned());
    card.plan.prescription.confirmed = Some(date(2026, 12, 16));
    let seen = Some((Trouble::Limb, DayNumber(300)));
    card.plan.prescription.cleared.push(ClearedAlarm { id: AlarmId([0xB0, 1, 2, 3, 4, 5, 6, 7]), seen });
    card
}

/// The frozen card of version 3: the one of version 2, signed with other keys than the plan's earlier cards.
pub fn frozen_card_3(verify_key: [u8; 32], recipient: [u8; 32], former: Vec<FormerKey>) -> Card {
    Card { former, ..frozen_card_2(verify_key, recipient) }
}

/// The frozen card of version 4: the one of version 2, with days that are counted.
pub fn frozen_card_4(verify_key: [u8; 32], recipient: [u8; 32]) -> Card {
    let mut card = frozen_card_2(verify_key, recipient);
    let items = &mut card.plan.prescription.items;
    items[0].schedule.days = Days::EveryNth { n: 2, from: date(2026, 11, 25) };
    items[1].schedule =
        Schedule { days: Days::TimesAWeek { n: 3, from: date(2026, 11, 25) }, pattern: Pattern::At { times: vec![1080] } };
    card
}

/// Another frozen card of version 4: items as needed and in phases.
pub fn frozen_card_4_phases(verify_key: [u8; 32], recipient: [u8; 32]) -> Card {
    let mut card = frozen_card_2(verify_key, recipient);
    let items = &mut card.plan.prescription.items;
    items[0].schedule = Schedule::AS_NEEDED;
    items[1].phase = Phase { first: Some(date(2026, 12, 1)), last: Some(date(2026, 12, 20)) };
    items[2].phase.first = Some(date(2026, 12, 21));
    card
}

/// One more: loads, an effort and a helper, signed with other keys than the plan's earlier cards.
pub fn frozen_card_4_loads(verify_key: [u8; 32], recipient: [u8; 32], former: Vec<FormerKey>) -> Card {
    let mut card = Card { former, ..frozen_card_2(verify_key, recipient) };
    let items = &mut card.plan.prescription.items;
    items[0].load = Kilograms::of(2.25).map(Load::Weight);
    items[0].effort = Some(Score::at_most_ten(4));
    items[1].with_helper = true;
    items[2].load = Some(Load::Band(Band::ExtraStrong));
    card
}

/// That many former keys, in order. What they have instead of a signature cannot be compressed, like a signature.
pub fn former(count: u8) -> Vec<FormerKey> {
    let mut keys: Vec<[u8; 32]> = (0..count).map(|nth| scattered(40 + nth)).collect();
    keys.sort();
    let signature = |nth: u8| {
        let halves = [scattered(60 + nth), scattered(80 + nth)].concat();
        std::array::from_fn(|at| halves[at])
    };
    keys.into_iter().zip(0..).map(|(key, nth)| FormerKey { key, signature: signature(nth) }).collect()
}

/// Six weeks of an hourly hold on workdays and of stance twice a day, with pain every day: the most that a diligent person
/// brings.
pub fn six_weeks() -> Summary {
    let mut summary = Summary {
        plan: PlanId([0x3D, 0x91, 0x5A, 0xC7, 0x08, 0xEE, 0x42, 0xB6]),
        log: LogId([0x11, 0x9C, 0x55, 0x02, 0xE1, 0x7A, 0x30, 0x84]),
        former: Vec::new(),
        counter: 1,
        from: DayNumber(0),
        until: DayNumber(41),
        taken: vec![TakenOn { day: DayNumber(0), revision: 1, agreed: Vec::new() }],
        seen: (0..42).filter(|day| day % 7 != 6).map(DayNumber).collect(),
        days: Vec::new(),
        runs: Vec::new(),
        mornings: Vec::new(),
        during: Vec::new(),
        settled: Vec::new(),
        well_again: Vec::new(),
        rated: Vec::new(),
        alarms: Vec::new(),
        delays: (0..6).map(week_delay).collect(),
        note: None,
        corrections: Corrections::default(),
        wrong_clock: Default::default(),
    };
    for day in 0..42_u16 {
        hourly_holds(&mut summary, day);
        stances(&mut summary, day);
        let n = u32::from(day) * 40 + 7;
        summary.mornings.push(MorningOn {
            n,
            day: DayNumber(day),
            complaint: ComplaintId(1),
            score: Score::at_most_ten(6 - (day / 8) as u8),
        });
        summary.during.push(DuringOn {
            n: n + 9,
            day: DayNumber(day),
            item: ItemId(2),
            score: Score::at_most_ten((day % 3) as u8),
        });
    }
    summary.rated = (0..6)
        .map(|week| RatedOn {
            n: 300 * week + 5,
            day: DayNumber(7 * week as u16),
            activity: ActivityId(1),
            score: Score::at_most_ten(4),
        })
        .collect();
    summary
}

fn week_delay(week: u16) -> WeekDelay {
    WeekDelay { week, runs: 40 - week, lower_s: 31 + week, median_s: 94 + 3 * week, upper_s: 412 + 17 * week }
}

fn next_run(summary: &Summary) -> RunId {
    RunId(summary.runs.len() as u32 + 1)
}

fn hourly_holds(summary: &mut Summary, day: u16) {
    if day % 7 >= 5 {
        return;
    }
    let mut slots = Vec::new();
    for slot in 0..9_u8 {
        let luck = u32::from(day) * 31 + u32::from(slot) * 17;
        let mark = match luck % 13 {
            0 | 5 => Mark::NotDone,
            3 => Mark::Skipped(Barrier::NoTime),
            8 => Mark::Partly(Share { done: 2, of: 3 }),
            _ => Mark::Done,
        };
        slots.push((slot, mark));
        let done = match mark {
            Mark::Done => 30_000,
            Mark::Partly(_) => 20_000 + luck * 7,
            _ => continue,
        };
        summary.runs.push(RunOn {
            run: next_run(summary),
            day: DayNumber(day),
            item: ItemId(1),
            rung: Some(RungId::new("chair").expect("an id")),
            slot: Some(slot),
            hour: 9 + slot,
            live: true,
            timing: RunTiming::InTime,
            end: if done == 30_000 { RunEnd::Completed } else { RunEnd::Stopped },
            dose: Share { done, of: 30_000 },
            parts: Share { done: done / 10_000, of: 3 },
            stance: None,
            tally: None,
        });
    }
    summary.days.push(ItemDay { day: DayNumber(day), item: ItemId(1), revision: 1, slots });
}

fn stances(summary: &mut Summary, day: u16) {
    let trial = |at: u32| {
        let held_ms = 9_000 + u32::from(day) * 311 + at * 2_477;
        let end = if held_ms >= 30_000 { TrialEnd::Target } else { TrialEnd::Touch };
        let leg = if at.is_multiple_of(2) { BodySide::Left } else { BodySide::Right };
        Trial { leg: Some(leg), held_ms: held_ms.min(30_000), end }
    };
    for slot in 0..2_u8 {
        let stance = StanceOn {
            set_up: SetUp::AtBreastbone,
            surface: Surface::Firm,
            eyes: Eyes::Open,
            target_s: 30,
            trials: (0..6).map(|at| trial(at + u32::from(slot))).collect(),
            sway: Vec::new(),
        };
        summary.runs.push(RunOn {
            run: next_run(summary),
            day: DayNumber(day),
            item: ItemId(2),
            rung: Some(RungId::new("firm-open").expect("an id")),
            slot: Some(slot),
            hour: if slot == 0 { 7 } else { 19 },
            live: true,
            timing: RunTiming::InTime,
            end: RunEnd::Completed,
            dose: Share { done: 6, of: 6 },
            parts: Share { done: 6, of: 6 },
            stance: Some(stance),
            tally: None,
        });
    }
    summary.days.push(ItemDay {
        day: DayNumber(day),
        item: ItemId(2),
        revision: 1,
        slots: vec![(0, Mark::Done), (1, Mark::Done)],
    });
}

/// An alarm of the frozen summary's log, in which alarms have no names of their own.
fn alarm_of_version_1(n: u32, trouble: Trouble, item: Option<ItemId>) -> AlarmOn {
    let entry = EntryRef { log: LogId([0x11, 0x9C, 0x55, 0x02, 0xE1, 0x7A, 0x30, 0x84]), n };
    AlarmOn { n, id: AlarmId::of_entry(entry), day: DayNumber(8), trouble, item, circumstances: BTreeSet::new() }
}

/// The frozen summary of version 2: with what version 1 does not have.
pub fn frozen_summary_2() -> Summary {
    let mut summary = frozen_summary();
    summary.runs[0].timing = RunTiming::Late;
    summary.runs[1].timing = RunTiming::Moved;
    summary.alarms.push(AlarmOn {
        n: 13,
        id: AlarmId([0xB0, 1, 2, 3, 4, 5, 6, 7]),
        day: DayNumber(8),
        trouble: Trouble::Unwell,
        item: None,
        circumstances: [Circumstance::SweatsOrWeightLoss].into(),
    });
    summary.well_again.push(WellAgainOn { n: 14, day: DayNumber(8) });
    summary
}

/// The frozen summary of version 1: two days with every part of a summary at least once.
pub fn frozen_summary() -> Summary {
    let agreed = Schedule {
        days: Days::On(Weekdays::from_bits(0b101).expect("seven bits")),
        pattern: Pattern::At { times: vec![480, 1200] },
    };
    let marks = [
        Mark::Done,
        Mark::Partly(Share { done: 1, of: 3 }),
        Mark::Skipped(Barrier::RatherNotSay),
        Mark::DayOff(DayOffReason::Holiday),
        Mark::Paused,
        Mark::NotDone,
        Mark::NoSuchHour,
    ];
    let written_in = RunOn {
        run: RunId(1),
        day: DayNumber(8),
        item: ItemId(1),
        rung: None,
        slot: None,
        hour: 23,
        live: false,
        timing: RunTiming::InTime,
        end: RunEnd::Completed,
        dose: Share { done: 12_345, of: 30_000 },
        parts: Share { done: 1, of: 3 },
        stance: None,
        tally: None,
    };
    let mut six_weeks = six_weeks();
    let stance =
        six_weeks.runs.iter_mut().find(|run| run.stance.is_some() && run.day == DayNumber(7)).expect("one a day").clone();
    Summary {
        counter: 12,
        from: DayNumber(7),
        until: DayNumber(8),
        taken: vec![
            TakenOn { day: DayNumber(0), revision: 1, agreed: Vec::new() },
            TakenOn { day: DayNumber(8), revision: 2, agreed: vec![(ItemId(2), agreed)] },
        ],
        seen: [7, 8].map(DayNumber).into(),
        days: vec![ItemDay { day: DayNumber(7), item: ItemId(1), revision: 1, slots: (0..).zip(marks).collect() }],
        runs: vec![written_in, RunOn { run: RunId(2), ..stance }],
        mornings: vec![MorningOn { n: 3, day: DayNumber(7), complaint: ComplaintId(1), score: Score::at_most_ten(10) }],
        during: vec![DuringOn { n: 70_000, day: DayNumber(8), item: ItemId(2), score: Score::at_most_ten(0) }],
        settled: vec![SettledOn { n: 9, day: DayNumber(8), complaint: ComplaintId(2), settled: true }],
        rated: vec![RatedOn { n: 10, day: DayNumber(8), activity: ActivityId(1), score: Score::at_most_ten(7) }],
        alarms: vec![
            alarm_of_version_1(11, Trouble::NearlyFell, Some(ItemId(2))),
            alarm_of_version_1(12, Trouble::HeadOrNeck, None),
        ],
        delays: vec![WeekDelay { week: 1, runs: 5, lower_s: 20, median_s: 300, upper_s: 301 }],
        note: Some("Dos días en la montaña; ¡qué prados!".to_owned()),
        ..six_weeks
    }
}
