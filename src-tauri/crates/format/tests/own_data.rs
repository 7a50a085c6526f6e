//! The export of a person's own data: every entry is in it, a spreadsheet runs none of it as a formula, and independent
//! libraries can read it.

mod support;

use exercises::alarm::{Circumstance, Trouble};
use exercises::catalogue::{Dose, Lang};
use exercises::history::{History, Mark};
use exercises::id::{ActivityId, AlarmId, ComplaintId, ItemId, LogId, RunId};
use exercises::log::{Barrier, DayOffReason, Entry, Log, LogEvent};
use exercises::plan::{BodySide, Days, Pattern, Plan, Schedule};
use exercises::remind::{Meeting, Settings, Span};
use exercises::run::{Balance, HoldRecord as OneHold, Run, RunEnd, SetRecord, SetUp, Share, Trial, TrialEnd, Work};
use exercises::score::Score;
use exercises::slots::SlotRef;
use exercises::summary::ItemDay;
use exercises::sway::{ReportedFigures, Sensed, SourceKind};
use exercises::time::DayNumber;
use exercises::time::Stamp;
use exercises::today::Followed;
use format::own_data::{OwnData, PlanData, files};
use proptest::prelude::*;
use serde_json::Value;
use std::collections::BTreeMap;

const LOG: LogId = LogId([9; 8]);

/// 25 November 2026 at that hour and minute, at UTC+1.
fn at(hour: i64, minute: i64) -> Stamp {
    Stamp { utc_ms: 1_795_561_200_000 + (hour * 60 + minute) * 60_000, offset_s: 3600 }
}

fn slot(item: u8, number: u8) -> SlotRef {
    SlotRef { day: at(12, 0).date(), item: ItemId(item), number }
}

fn run(id: u32, item: u8, dose: Dose, end: RunEnd, work: Work) -> Run {
    let plan = support::plan(6);
    let of = plan.item(ItemId(item)).expect("an item");
    Run {
        id: RunId(id),
        item: of.id,
        exercise: of.exercise.clone(),
        rung: of.rung.clone(),
        dose,
        slot: (id != 3).then_some(slot(item, 1)),
        started: at(10, 1),
        live: id != 3,
        end,
        paused_ms: 1500,
        interruptions: vec![2000],
        work,
    }
}

/// One event of each kind, and the same run logged twice.
fn happened() -> Vec<LogEvent> {
    let hold = Dose::Hold { repetitions: 3, hold_s: 10, rest_s: 5 };
    let held = |ms| {
        Work::Timed(vec![OneHold { side: None, held_ms: 10_000 }, OneHold { side: Some(BodySide::Right), held_ms: ms }])
    };
    let balance = Balance {
        set_up: SetUp::OnSupport,
        surface: exercises::catalogue::Surface::Firm,
        eyes: exercises::catalogue::Eyes::Open,
        trials: [(30_000, TrialEnd::Target), (12_340, TrialEnd::Touch), (5_000, TrialEnd::CutOff)]
            .map(|(held_ms, end)| Trial { leg: Some(BodySide::Left), held_ms, end })
            .into(),
    };
    let tempo = exercises::catalogue::Tempo { up_s: 2, hold_s: 1, down_s: 3 };
    let reps = Dose::Reps { sets: 3, repetitions: 8, rest_s: 60, tempo };
    let moved = Schedule { days: Days::WORKDAYS, pattern: Pattern::Every { minutes: 60, from: 480, to: 960 } };
    vec![
        LogEvent::Taken { revision: 1, agreed: vec![(ItemId(1), moved)] },
        LogEvent::Opened,
        LogEvent::Reminded { slot: slot(1, 1) },
        LogEvent::PutOff { slot: slot(1, 1), minutes: 10 },
        LogEvent::Run(run(1, 1, hold, RunEnd::Going, held(2_000))),
        LogEvent::Run(run(1, 1, hold, RunEnd::Completed, held(4_300))),
        LogEvent::Run(run(
            2,
            2,
            Dose::Balance { trials: 3, target_s: 30, rest_s: 30 },
            RunEnd::Stopped,
            Work::Balance(balance),
        )),
        LogEvent::Run(run(3, 3, reps, RunEnd::Trouble, Work::Counted(vec![SetRecord { side: None, done: 7, failed: 1 }]))),
        LogEvent::Run(run(4, 1, hold, RunEnd::Going, Work::Timed(Vec::new()))),
        LogEvent::Skipped { slot: slot(1, 2), reason: Barrier::NoTime },
        LogEvent::DaysOff { from: at(12, 0).date(), until: at(12, 0).date(), why: DayOffReason::Ill },
        LogEvent::Morning { complaint: ComplaintId(1), score: Score::at_most_ten(4) },
        LogEvent::During { item: ItemId(1), score: Score::at_most_ten(3) },
        LogEvent::Pain { complaint: ComplaintId(1), score: Score::at_most_ten(5), after: None },
        LogEvent::Settled { complaint: ComplaintId(1), settled: false },
        LogEvent::Rated { activity: ActivityId(2), score: Score::at_most_ten(6) },
        LogEvent::Trouble {
            trouble: Trouble::Fell,
            item: Some(ItemId(2)),
            id: Some(AlarmId([0xB0, 1, 2, 3, 4, 5, 6, 7])),
            circumstances: [Circumstance::BlowToTheHead, Circumstance::CouldNotGetUp].into(),
        },
        LogEvent::WellAgain,
        LogEvent::Sealed { counter: 1 },
        LogEvent::Sensed {
            run: RunId(2),
            trial: 1,
            sensed: sensed(),
            detail: r#"{"version":"sway/1","taps":[12.3]}"#.into(),
        },
    ]
}

/// What the motion sensor measured in the second trial.
fn sensed() -> Sensed {
    Sensed {
        kind: SourceKind::Web,
        held_ms: 12_277,
        censored: false,
        gap: true,
        otherwise: None,
        touch_downs: 2,
        figures: Some(ReportedFigures { rms_ml: None, rms_planar: 3603, path_per_s: 21_458 }),
        reasons: Vec::new(),
        flags: Vec::new(),
    }
}

/// The export of a copy that followed `plan`: its files by name.
fn written(plan: Plan) -> BTreeMap<&'static str, Vec<u8>> {
    let entries = happened().into_iter().enumerate();
    let entries = entries.map(|(n, event)| Entry { n: n as u32 + 1, plan: plan.header.id, at: at(8, 40 + n as i64), event });
    let log = Log { id: LOG, former: Vec::new(), entries: entries.collect() };
    let history = History::fold(&log, plan.header.id);
    let agreed = history.taken[0].agreed.clone();
    let followed = Followed { plan: plan.with_schedules(&agreed), taken: at(8, 40), ahead: None, history };
    let revisions = BTreeMap::from([(plan.header.revision, plan)]);
    let catalogue = format::catalogue::embedded().expect("the shipped catalogue");
    let days = vec![ItemDay {
        day: DayNumber(0),
        item: ItemId(1),
        revision: 1,
        slots: vec![
            (1, Mark::Done),
            (2, Mark::Skipped(Barrier::NoTime)),
            (3, Mark::Partly(Share { done: 2, of: 3 })),
            (4, Mark::NotDone),
        ],
    }];
    let meeting = Some(Meeting { from: at(9, 0), until: at(11, 0) });
    let reminders = Settings { quiet: vec![Span { from: 720, to: 780 }], meeting };
    let held = PlanData {
        fingerprint: "AAAA-BBBB-CCCC-DDDD".into(),
        revisions: &revisions,
        followed: &followed,
        catalogue: &catalogue,
        days,
    };
    let own_data = OwnData {
        program: "0.1.0",
        made: at(20, 0),
        log: LOG,
        lang: Lang::En,
        plans: vec![held],
        entries: &log.entries,
        reminders: &reminders,
    };
    files(&own_data).into_iter().collect()
}

/// The lines of a table as an independent library reads them, by the names in the header.
fn lines(bytes: &[u8]) -> Vec<BTreeMap<String, String>> {
    let mut reader = csv::ReaderBuilder::new().flexible(false).from_reader(bytes);
    reader.deserialize().collect::<Result<_, _>>().expect("a table with as many cells in each line as in its header")
}

fn column(lines: &[BTreeMap<String, String>], name: &str) -> Vec<String> {
    lines.iter().map(|line| line[name].clone()).collect()
}

#[test]
fn every_entry_is_there_with_its_day_and_local_time() {
    let files = written(support::plan(6));
    let whole: Value = serde_json::from_slice(&files["everything.json"]).expect("JSON");
    assert_eq!((&whole["format"], &whole["version"]), (&"carryover-everything".into(), &2.into()));
    let entries = whole["entries"].as_array().expect("a list");
    assert_eq!(entries.len(), happened().len());
    for (entry, n) in entries.iter().zip(0..) {
        assert_eq!((&entry["n"], &entry["day"]), (&(n + 1).into(), &"2026-11-25".into()));
        assert_eq!(entry["time"], format!("08:{}:00", 40 + n));
        assert_eq!(entry["at"], format!("2026-11-25T08:{}:00+01:00", 40 + n));
    }
    let what: Vec<&str> = entries.iter().filter_map(|entry| entry["what"].as_str()).collect();
    let expected = [
        "card_taken",
        "opened",
        "reminded",
        "put_off",
        "run",
        "run",
        "run",
        "run",
        "run",
        "skipped",
        "days_off",
        "morning",
        "during",
        "pain",
        "settled",
        "activity",
        "something_wrong",
        "well_again",
        "summary_sealed",
        "sensed",
    ];
    assert_eq!(what, expected);
    assert_eq!(entries[6]["done"]["trials"][2]["held_s"], Value::Null, "a trial that was cut off has no time");
    assert_eq!(entries[19]["detail"]["taps"][0], 12.3, "everything about a trial that was measured");
}

#[test]
fn plans_are_exported_with_their_texts_and_what_was_agreed() {
    let files = written(support::plan(6));
    let whole: Value = serde_json::from_slice(&files["everything.json"]).expect("JSON");
    let plan = &whole["plans"][0];
    assert_eq!(plan["agreed"][0]["schedule"]["from"], "08:00");
    let revision = &plan["revisions"][0];
    assert_eq!(revision["taken"][0], "2026-11-25T08:40:00+01:00");
    assert_eq!(revision["items"][0]["schedule"]["from"], "09:00", "the card's own");
    assert_eq!(revision["items"][0]["note"], "Chin level, not down");
    assert_eq!(revision["complaints"].as_array().map(Vec::len), Some(2));
    let exercises = plan["exercises"].as_array().expect("a list");
    assert!(
        exercises.iter().all(|exercise| exercise["steps"].as_array().is_some_and(|steps| !steps.is_empty())),
        "{exercises:?}"
    );
}

/// Programs written to read version 2 must always find the same names in it.
#[test]
fn version_2_never_changes_its_names() {
    let files = written(support::plan(2));
    let mut whole: Value = serde_json::from_slice(&files["everything.json"]).expect("JSON");
    // The texts of exercises are not compared, because the catalogue grows.
    whole["plans"][0]["exercises"] = Value::Null;
    let frozen: Value = serde_json::from_str(include_str!("frozen/everything-2.json")).expect("JSON");
    assert_eq!(whole, frozen);
}

#[test]
fn a_stance_time_has_its_day_if_the_card_gives_it() {
    let mut plan = support::plan(2);
    plan.prescription.baselines[0].taken = Some(support::date(2026, 11, 18));
    let whole: Value = serde_json::from_slice(&written(plan)["everything.json"]).expect("JSON");
    let stance = &whole["plans"][0]["revisions"][0]["stance"];
    assert_eq!((&stance[0]["taken"], stance[1].get("taken")), (&Value::from("2026-11-18"), None));
}

#[test]
fn a_line_for_each_hold_set_and_trial() {
    let files = written(support::plan(6));
    let runs = lines(&files["runs.csv"]);
    assert_eq!(
        column(&runs, "run"),
        ["1", "1", "2", "2", "2", "3", "4"],
        "each run as it ended, also one with nothing done"
    );
    assert_eq!(column(&runs, "part"), ["1", "2", "1", "2", "3", "1", ""]);
    assert_eq!(column(&runs, "held_s"), ["10", "4.3", "30", "12.277", "", "", ""]);
    assert_eq!(column(&runs, "ended_by"), ["", "", "target", "touch", "cut-off", "", ""]);
    assert_eq!((runs[5]["done"].as_str(), runs[5]["failed"].as_str(), runs[5]["asked"].as_str()), ("7", "1", "8"));
    assert_eq!((runs[5]["timed"].as_str(), runs[5]["slot"].as_str()), ("no", ""));
}

#[test]
fn answers_days_and_alarms_have_their_tables() {
    let files = written(support::plan(6));
    let answers = lines(&files["answers.csv"]);
    assert_eq!(
        column(&answers, "kind"),
        ["morning", "during", "morning", "settled", "activity"],
        "a rating of version 1 is read as a morning's"
    );
    assert_eq!(column(&answers, "answer"), ["4", "3", "5", "no", "6"]);
    assert_eq!(answers[4]["name"], "Walking the dog over the fields");
    let days = lines(&files["days.csv"]);
    assert_eq!(days[0]["day"], "2026-11-25");
    assert_eq!(
        days[0]["each"], "09:00 done; 10:00 skipped no-time; 11:00 partly 2 of 3; 12:00 not-done",
        "by the times agreed to"
    );
    let alarms = lines(&files["alarms.csv"]);
    assert_eq!((alarms[0]["trouble"].as_str(), alarms[0]["cleared"].as_str()), ("fell", "no"));
    assert_eq!(alarms[0]["circumstances"], "blow-to-the-head; could-not-get-up");
    assert_eq!(alarms[0]["alarm"], "b001020304050607");
}

#[test]
fn lines_end_as_the_standard_says_and_begin_with_their_names() {
    for (name, bytes) in written(support::plan(6)).into_iter().filter(|(name, _)| name.ends_with(".csv")) {
        let text = String::from_utf8(bytes).expect("UTF-8");
        assert!(text.starts_with("plan,") && text.ends_with("\r\n"), "{name}");
        assert_eq!(text.matches('\n').count(), text.matches("\r\n").count(), "{name}");
    }
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 64, failure_persistence: None, ..ProptestConfig::default() })]

    /// A complaint may have any name; the cell contains that name and is never a formula.
    #[test]
    fn no_name_is_run_by_a_spreadsheet(name in "[ ]?[=+@\t-]?.{0,30}|=cmd\\|' /C calc'!A0|\"=1,2\"") {
        let mut plan = support::plan(6);
        plan.prescription.complaints[0].name = name.clone();
        let answers = lines(&written(plan)["answers.csv"]);
        let cell = &answers[0]["name"];
        prop_assert!(*cell == name || *cell == format!("'{name}"), "{cell:?}");
        prop_assert!(!cell.trim_start_matches(' ').starts_with(['=', '+', '-', '@', '\t', '\r', '\n']), "{cell:?}");
    }
}
