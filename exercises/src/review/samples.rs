//! An invented plan with its exercises and summaries, for the tests.

use crate::alarm::Trouble;
use crate::catalogue::{
    Catalogue, Dose, Exercise, ExerciseId, Eyes, Factor, Figure, Ladder, LadderId, Region, Rung, RungId, Sidedness, Surface,
    Tempo, View,
};
use crate::history::Mark;
use crate::id::{ActivityId, AlarmId, ComplaintId, EntryRef, ItemId, LogId, PlanId, RunId};
use crate::plan::{
    Activity, AgeBand, BodySide, Complaint, Days, Header, Item, Pattern, Plan, Prescription, Risk, Schedule, Side,
    StanceBaseline,
};
use crate::run::{RunEnd, SetUp, Share, Trial, TrialEnd};
use crate::score::Score;
use crate::summary::{AlarmOn, DuringOn, ItemDay, MorningOn, RunOn, RunTiming, SettledOn, StanceOn, Summary, TakenOn};
use crate::time::DayNumber;
use chrono::NaiveDate;
use std::collections::{BTreeMap, BTreeSet};

pub const HOLD: ItemId = ItemId(1);
pub const BALANCE: ItemId = ItemId(2);
pub const REPS: ItemId = ItemId(3);
pub const BACK: ComplaintId = ComplaintId(1);
pub const ANKLE: ComplaintId = ComplaintId(2);
pub const PHONE: LogId = LogId([1; 8]);
pub const DESK: LogId = LogId([2; 8]);
pub const PLAN: PlanId = PlanId([7; 8]);

pub const HOLD_DOSE: Dose = Dose::Hold { repetitions: 3, hold_s: 10, rest_s: 10 };
pub const BALANCE_DOSE: Dose = Dose::Balance { trials: 3, target_s: 30, rest_s: 30 };
pub const REPS_DOSE: Dose =
    Dose::Reps { sets: 2, repetitions: 8, rest_s: 60, tempo: Tempo { up_s: 2, hold_s: 0, down_s: 2 } };

pub fn rung(id: &str) -> RungId {
    RungId::new(id).expect("an id")
}

fn version(id: &str, surface: Option<Surface>, eyes: Option<Eyes>) -> Rung {
    Rung { surface, eyes, ..Rung::new(rung(id)) }
}

fn ladder(id: &str, factor: Factor, rungs: Vec<Rung>) -> Ladder {
    Ladder { id: LadderId::new(id).expect("an id"), factor, rungs }
}

pub fn exercise(id: &str, dose: Dose, side: Sidedness, ladders: Vec<Ladder>) -> Exercise {
    let poses = Figure {
        view: View::Side,
        furniture: Vec::new(),
        links: Vec::new(),
        plumb: false,
        contacts: Vec::new(),
        poses: Vec::new(),
        arrows: Vec::new(),
        eyes: None,
    };
    Exercise {
        id: ExerciseId::new(id).expect("an id"),
        revision: 1,
        region: Region::Ankle,
        purposes: Vec::new(),
        flags: Vec::new(),
        kind: dose.kind(),
        side,
        posture: None,
        equipment: Vec::new(),
        one_leg: id == "one-leg",
        count_error_tenths: None,
        test: false,
        step_rules: Vec::new(),
        dose_basis: None,
        dose,
        ladders,
        poses,
        texts: BTreeMap::new(),
    }
}

/// A hold with two rungs; standing on one leg with a ladder of surfaces and a ladder with closed eyes; a counted movement.
pub fn catalogue() -> Catalogue {
    let open = |id, surface| version(id, Some(surface), Some(Eyes::Open));
    let closed = |id, surface| version(id, Some(surface), Some(Eyes::Closed));
    let plain = |id| version(id, None, None);
    let surfaces = vec![open("firm", Surface::Firm), open("towel", Surface::FoldedTowel), open("foam", Surface::Foam)];
    let eyes = vec![closed("firm-closed", Surface::Firm), closed("towel-closed", Surface::FoldedTowel)];
    let stance = vec![ladder("surface", Factor::Surface, surfaces), ladder("eyes-closed", Factor::Surface, eyes)];
    let tall = vec![ladder("support", Factor::Support, vec![plain("wall"), plain("chair")])];
    let stand = vec![ladder("height", Factor::Range, vec![plain("high"), plain("low")])];
    Catalogue {
        exercises: vec![
            exercise("sit-tall", HOLD_DOSE, Sidedness::None, tall),
            exercise("one-leg", BALANCE_DOSE, Sidedness::EachSide, stance),
            exercise("stand-up", REPS_DOSE, Sidedness::None, stand),
        ],
    }
}

fn once_a_day() -> Schedule {
    Schedule { days: Days::ALL, pattern: Pattern::At { times: vec![18 * 60] } }
}

/// An item of the sample exercise that has this kind of dose.
pub fn item(dose: Dose, side: Side) -> Item {
    let (id, exercise, first, serves) = match dose {
        Dose::Hold { .. } => (HOLD, "sit-tall", "wall", BACK),
        Dose::Balance { .. } => (BALANCE, "one-leg", "firm", ANKLE),
        Dose::Reps { .. } => (REPS, "stand-up", "high", BACK),
        other => panic!("no sample exercise has a dose of {other:?}"),
    };
    let exercise = ExerciseId::new(exercise).expect("an id");
    Item {
        rung: Some(rung(first)),
        side,
        may_step: true,
        serves: Some(serves),
        ..Item::new(id, exercise, dose, once_a_day())
    }
}

/// Every hour from nine to eleven.
pub fn three_times_a_day() -> Schedule {
    Schedule { days: Days::ALL, pattern: Pattern::Every { minutes: 60, from: 9 * 60, to: 11 * 60 } }
}

/// Wednesday, 25 November 2026.
pub fn start() -> NaiveDate {
    NaiveDate::from_ymd_opt(2026, 11, 25).expect("a date")
}

/// A stance time with eyes open on the firm floor, without a day.
pub fn baseline(leg: BodySide, tenths: u16) -> StanceBaseline {
    StanceBaseline { taken: None, leg, surface: Surface::Firm, eyes: Eyes::Open, tenths, capped: false }
}

/// The sample plan as a later revision, issued the given number of days after the plan's start.
pub fn revised(revision: u16, days: i64) -> Plan {
    let header = Header { revision, issued: start() + chrono::Duration::days(days), ..plan().header };
    Plan { header, ..plan() }
}

/// The hold three times a day, balance on both legs and the counted movement once a day, for four weeks.
pub fn plan() -> Plan {
    let hold = Item { schedule: three_times_a_day(), ..item(HOLD_DOSE, Side::Neither) };
    let complaint = |id, name: &str, side, pain| Complaint { id, name: name.into(), side, pain: Some(pain) };
    Plan {
        header: Header {
            id: PLAN,
            revision: 1,
            clinic: "Bridge Street".into(),
            phone: None,
            start: start(),
            issued: start(),
        },
        prescription: Prescription {
            review: start() + chrono::Duration::days(28),
            age: Some(AgeBand::From40),
            absent: Risk::ALL.into_iter().collect(),
            confirmed: None,
            items: vec![hold, item(BALANCE_DOSE, Side::Both), item(REPS_DOSE, Side::Neither)],
            complaints: vec![
                complaint(BACK, "upper back", Side::Neither, Score::at_most_ten(6)),
                complaint(ANKLE, "ankle", Side::Right, Score::at_most_ten(3)),
            ],
            activities: vec![Activity {
                id: ActivityId(1),
                name: "turning the head".into(),
                rating: Some(Score::at_most_ten(4)),
            }],
            baselines: vec![baseline(BodySide::Left, 220), baseline(BodySide::Right, 124)],
            aftercare: Vec::new(),
            cleared: Vec::new(),
        },
    }
}

pub fn revisions(plans: impl IntoIterator<Item = Plan>) -> BTreeMap<u16, Plan> {
    plans.into_iter().map(|plan| (plan.header.revision, plan)).collect()
}

/// A summary of days on which the program was opened and nothing else happened.
pub fn summary(log: LogId, counter: u32, from: u16, until: u16) -> Summary {
    Summary {
        plan: PLAN,
        log,
        former: Vec::new(),
        counter,
        from: DayNumber(from),
        until: DayNumber(until),
        taken: vec![TakenOn { day: DayNumber(0), revision: 1, agreed: Vec::new() }],
        seen: (from..=until).map(DayNumber).collect(),
        days: Vec::new(),
        runs: Vec::new(),
        mornings: Vec::new(),
        during: Vec::new(),
        well_again: Vec::new(),
        settled: Vec::new(),
        rated: Vec::new(),
        alarms: Vec::new(),
        delays: Vec::new(),
        note: None,
        corrections: crate::summary::Corrections::default(),
        wrong_clock: crate::summary::ByWrongClock::default(),
    }
}

/// How an item's slots of one day went.
pub fn item_day(day: u16, item: ItemId, marks: &[Mark]) -> ItemDay {
    let slots = marks.iter().enumerate().map(|(number, mark)| (number as u8, *mark));
    ItemDay { day: DayNumber(day), item, revision: 1, slots: slots.collect() }
}

/// A completed run of an item of [`plan`] at its rung and dose, timed while it was done.
pub fn run(n: u32, day: u16, item: ItemId, slot: Option<u8>) -> RunOn {
    let (rung_id, dose, parts) = match item {
        HOLD => ("wall", 30_000, 3),
        BALANCE => ("firm", 6, 6),
        _ => ("high", 16, 16),
    };
    let whole = |of| Share { done: of, of };
    RunOn {
        run: RunId(n),
        day: DayNumber(day),
        item,
        rung: Some(rung(rung_id)),
        slot,
        hour: 18,
        live: true,
        timing: RunTiming::InTime,
        end: RunEnd::Completed,
        dose: whole(dose),
        parts: whole(parts),
        stance: (item == BALANCE).then(|| stance(&[30_000; 3], &[30_000; 3])),
        tally: None,
    }
}

/// Trials of both legs with a target of 30 s on the firm floor with eyes open; 30,000 ms or more reach the target.
pub fn stance(left_ms: &[u32], right_ms: &[u32]) -> StanceOn {
    let trial = |leg| {
        move |held_ms: &u32| Trial {
            leg,
            held_ms: *held_ms,
            end: if *held_ms >= 30_000 { TrialEnd::Target } else { TrialEnd::Touch },
        }
    };
    let trials = left_ms.iter().map(trial(Some(BodySide::Left))).chain(right_ms.iter().map(trial(Some(BodySide::Right))));
    StanceOn {
        set_up: SetUp::OnSupport,
        surface: Surface::Firm,
        eyes: Eyes::Open,
        target_s: 30,
        trials: trials.collect(),
        sway: Vec::new(),
    }
}

/// An alarm of the phone's log, named after its entry.
pub fn alarm(log: LogId, n: u32, day: u16, trouble: Trouble, item: Option<ItemId>) -> AlarmOn {
    let id = AlarmId::of_entry(EntryRef { log, n });
    AlarmOn { n, id, day: DayNumber(day), trouble, item, circumstances: BTreeSet::new() }
}

pub fn morning(n: u32, day: u16, complaint: ComplaintId, score: u8) -> MorningOn {
    MorningOn { n, day: DayNumber(day), complaint, score: Score::at_most_ten(score) }
}

pub fn during(n: u32, day: u16, item: ItemId, score: u8) -> DuringOn {
    DuringOn { n, day: DayNumber(day), item, score: Score::at_most_ten(score) }
}

pub fn settled(n: u32, day: u16, complaint: ComplaintId, settled: bool) -> SettledOn {
    SettledOn { n, day: DayNumber(day), complaint, settled }
}
