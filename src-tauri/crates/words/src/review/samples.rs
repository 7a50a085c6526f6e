//! Sample data of an invented patient: four weeks of hourly holds that are broken off, and balance that improves.

use chrono::{Duration, NaiveDate};
use exercises::alarm::Trouble;
use exercises::catalogue::{
    Catalogue, Dose, Exercise, ExerciseId, Eyes, Factor, Figure, Ladder, LadderId, Lang, Region, Rung, RungId, RungTexts,
    Sidedness, Surface, Texts, View,
};
use exercises::draft::first;
use exercises::history::Mark;
use exercises::id::{AlarmId, ComplaintId, ItemId, LogId, PlanId, RunId};
use exercises::log::Barrier;
use exercises::plan::{Activity, BodySide, Complaint, Header, Plan, Side, StanceBaseline};
use exercises::review::build;
use exercises::run::{RunEnd, SetUp, Share, Trial, TrialEnd};
use exercises::score::Score;
use exercises::summary::{
    AlarmOn, DuringOn, ItemDay, MorningOn, RatedOn, RunOn, RunTiming, StanceOn, Summary, TakenOn, WeekDelay,
};
use exercises::time::DayNumber;
use std::collections::{BTreeMap, BTreeSet};
use wire::clinic::ReviewPage;

fn start() -> NaiveDate {
    NaiveDate::from_ymd_opt(2026, 10, 26).expect("a Monday")
}

fn exercise(id: &str, names: [&str; 2], dose: Dose, side: Sidedness, rungs: &[(&str, &str, Option<Surface>)]) -> Exercise {
    let rung = |(id, name, surface): &(&str, &str, Option<Surface>)| Rung {
        surface: *surface,
        eyes: surface.map(|_| Eyes::Open),
        texts: Lang::ALL
            .into_iter()
            .map(|lang| (lang, RungTexts { name: (*name).into(), ..RungTexts::default() }))
            .collect(),
        ..Rung::new(RungId::new(*id).expect("an id"))
    };
    let texts = |name: &str| Texts {
        name: name.into(),
        purpose: String::new(),
        set_up: String::new(),
        steps: Vec::new(),
        should_feel: String::new(),
        should_not_feel: String::new(),
        mistakes: Vec::new(),
        cautions: Vec::new(),
        stop_signs: Vec::new(),
    };
    Exercise {
        id: ExerciseId::new(id).expect("an id"),
        revision: 1,
        region: Region::NeckUpperBack,
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
        ladders: vec![Ladder {
            id: LadderId::new("only").expect("an id"),
            factor: Factor::Support,
            rungs: rungs.iter().map(rung).collect(),
        }],
        poses: Figure {
            view: View::Side,
            furniture: Vec::new(),
            links: Vec::new(),
            plumb: false,
            contacts: Vec::new(),
            poses: Vec::new(),
            arrows: Vec::new(),
            eyes: None,
        },
        texts: [(Lang::En, texts(names[0])), (Lang::Es, texts(names[1]))].into(),
    }
}

pub fn exercises() -> Vec<Exercise> {
    let hold = Dose::Hold { repetitions: 3, hold_s: 10, rest_s: 10 };
    let balance = Dose::Balance { trials: 3, target_s: 30, rest_s: 30 };
    vec![
        exercise(
            "sit-tall",
            ["Sit tall, chin back", "Siéntese alto, barbilla atrás"],
            hold,
            Sidedness::None,
            &[("wall", "Back against a wall", None), ("chair", "Back free", None)],
        ),
        exercise(
            "one-leg",
            ["Stand on one leg", "De pie sobre una pierna"],
            balance,
            Sidedness::EachSide,
            &[("firm", "Firm floor", Some(Surface::Firm)), ("cushion", "Cushion", Some(Surface::Cushion))],
        ),
    ]
}

pub fn plan() -> Plan {
    let mut draft = first(start());
    for exercise in exercises() {
        draft.add(&exercise).expect("room");
    }
    let mut plan = Plan { header: Header::first(PlanId([5; 8]), "Mill Lane", start()), prescription: draft.prescription };
    plan.prescription.complaints = vec![Complaint {
        id: ComplaintId(1),
        name: "upper back".into(),
        side: Side::Left,
        pain: Some(Score::at_most_ten(7)),
    }];
    plan.prescription.items[1].serves = Some(ComplaintId(1));
    plan.prescription.activities = vec![Activity {
        id: exercises::id::ActivityId(1),
        name: "carry the shopping".into(),
        rating: Some(Score::at_most_ten(3)),
    }];
    plan.prescription.baselines = vec![
        StanceBaseline {
            taken: Some(start()),
            leg: BodySide::Left,
            surface: Surface::Firm,
            eyes: Eyes::Open,
            tenths: 124,
            capped: false,
        },
        StanceBaseline {
            taken: Some(start()),
            leg: BodySide::Right,
            surface: Surface::Firm,
            eyes: Eyes::Open,
            tenths: 450,
            capped: true,
        },
    ];
    plan
}

/// Four weeks: followed until day 11, then little; no record of the third week's weekend.
fn summary(plan: &Plan) -> Summary {
    let days: Vec<u16> = (0..28).collect();
    let workday = |day: &&u16| **day % 7 < 5;
    let holds = days.iter().filter(workday).map(|day| ItemDay {
        day: DayNumber(*day),
        item: ItemId(1),
        revision: 1,
        slots: (0..9).map(|number| (number, mark(*day, number))).collect(),
    });
    let evenings = days.iter().map(|day| ItemDay {
        day: DayNumber(*day),
        item: ItemId(2),
        revision: 1,
        slots: vec![(0, if stood(*day) { Mark::Done } else { Mark::NotDone })],
    });
    Summary {
        plan: plan.header.id,
        log: LogId([3; 8]),
        former: Vec::new(),
        counter: 1,
        from: DayNumber(0),
        until: DayNumber(27),
        taken: vec![TakenOn { day: DayNumber(0), revision: 1, agreed: Vec::new() }],
        seen: days.iter().copied().filter(|day| !matches!(day, 19 | 20)).map(DayNumber).collect(),
        days: holds.chain(evenings).collect(),
        runs: days.iter().filter(|day| stood(**day)).map(|day| trials(*day)).collect(),
        mornings: days.iter().map(|day| morning(*day)).collect(),
        during: vec![DuringOn { n: 902, day: DayNumber(18), item: ItemId(2), score: Score::at_most_ten(2) }],
        well_again: Vec::new(),
        settled: Vec::new(),
        rated: vec![RatedOn {
            n: 900,
            day: DayNumber(26),
            activity: exercises::id::ActivityId(1),
            score: Score::at_most_ten(7),
        }],
        alarms: vec![AlarmOn {
            n: 901,
            id: AlarmId([9; 8]),
            day: DayNumber(18),
            trouble: Trouble::NearlyFell,
            item: Some(ItemId(2)),
            circumstances: BTreeSet::new(),
        }],
        delays: vec![WeekDelay { week: 3, runs: 9, lower_s: 120, median_s: 300, upper_s: 720 }],
        note: Some("The <chair> at work was changed.".into()),
        corrections: Default::default(),
        wrong_clock: Default::default(),
    }
}

fn mark(day: u16, number: u8) -> Mark {
    match (day, number) {
        (0..=11, 4) => Mark::Partly(Share { done: 2, of: 3 }),
        (0..=11, _) => Mark::Done,
        (_, 0 | 1) => Mark::Done,
        (_, 5) => Mark::Skipped(Barrier::NoPlace),
        (_, 6) => Mark::Skipped(Barrier::Pain),
        _ => Mark::NotDone,
    }
}

fn stood(day: u16) -> bool {
    !matches!(day, 19 | 20) && day % 5 != 4
}

fn trials(day: u16) -> RunOn {
    let trial = |leg, seconds: u32| Trial { leg, held_ms: seconds * 1000, end: TrialEnd::Touch };
    let left = 8 + u32::from(day) / 2;
    RunOn {
        run: RunId(u32::from(day) + 1),
        day: DayNumber(day),
        item: ItemId(2),
        rung: Some(RungId::new("firm").expect("an id")),
        slot: Some(0),
        hour: 18,
        live: true,
        timing: RunTiming::InTime,
        end: RunEnd::Completed,
        dose: Share { done: 6, of: 6 },
        parts: Share { done: 6, of: 6 },
        tally: None,
        stance: Some(StanceOn {
            set_up: SetUp::OnSupport,
            surface: Surface::Firm,
            eyes: Eyes::Open,
            target_s: 30,
            sway: Vec::new(),
            trials: vec![trial(Some(BodySide::Left), left), trial(Some(BodySide::Right), 24 + u32::from(day % 3))],
        }),
    }
}

fn morning(day: u16) -> MorningOn {
    let score = Score::at_most_ten(if day < 10 { 6 } else { 3 });
    MorningOn { n: u32::from(day) + 100, day: DayNumber(day), complaint: ComplaintId(1), score }
}

/// The review page after four weeks.
pub fn page() -> ReviewPage {
    let plan = plan();
    let catalogue = Catalogue { exercises: exercises() };
    let revisions = BTreeMap::from([(1, plan.clone())]);
    ReviewPage {
        code: "K17".into(),
        name: Some("Ana".into()),
        today: start() + Duration::days(28),
        review: build(&revisions, &catalogue, &[summary(&plan)]),
        plan: Some(plan),
        earlier: Vec::new(),
        exercises: catalogue.exercises,
        devices: Vec::new(),
        notices: Vec::new(),
    }
}
