//! Balance with the phone on the body: recorded trials are replayed as if they came from the sensor, the person is asked about
//! detected touch-downs, and log and review contain what the reference program found.

use end_to_end::scenes::{BALANCE as PLAN, TAKEN as AT, recorded_trial as trial};
use end_to_end::{Desktop, Prescribed, Window};
use exercises::log::LogEvent;
use exercises::run::{SetUp, TrialEnd, Work};
use exercises::sway::SourceKind;
use rusqlite::Connection;
use serde_json::Value;

fn begin(window: &Window, place: &str) {
    window.press("Start");
    window.press("I have read this. Start");
    window.press(place);
}

/// The sensor's results in the order of the log: the trial's index, the short form, and the details.
fn said(desktop: &Desktop) -> Vec<(u16, exercises::sway::Sensed, Value)> {
    let db = Connection::open(desktop.path("patient").join("carryover.db")).expect("the patient's database");
    let mut rows = db.prepare("SELECT payload FROM entry ORDER BY n").expect("the log");
    let rows = rows.query_map([], |row| row.get::<_, Vec<u8>>(0)).expect("entries");
    let read = rows.map(|payload| format::entry::read(&payload.expect("bytes")).expect("an entry"));
    let said = read.filter_map(|event| match event {
        LogEvent::Sensed { trial, sensed, detail, .. } => {
            Some((trial, sensed, serde_json::from_str(&detail).expect("the account is JSON")))
        }
        _ => None,
    });
    said.collect()
}

fn reference(name: &str) -> Value {
    let text = std::fs::read_to_string(trial(name).with_file_name("reference.json")).expect("the reference");
    serde_json::from_str::<Value>(&text).expect("JSON")["trials"][name]["result"].clone()
}

/// Checks that every figure of the reference that the details contain is the same within a relative error of 1e-9.
#[track_caller]
fn figures_agree(account: &Value, name: &str) {
    let (got, want) = (&account["result"], reference(name));
    for key in ["k0", "k1"] {
        assert_eq!(got["window"][key], want["window"][key], "{name}: {key}");
    }
    let measures = want["measures"].as_object().expect("figures");
    let mut compared = 0;
    for (key, want) in measures.iter().filter(|(_, want)| want.is_number()) {
        let (Some(got), Some(want)) = (got["measures"][key].as_f64(), want.as_f64()) else { continue };
        assert!((got - want).abs() <= 1e-9 * want.abs().max(1e-3), "{name}: {key} is {got} and not {want}");
        compared += 1;
    }
    assert!(compared >= 12, "{name}: only {compared} figures in {account}");
}

#[test]
fn held_to_the_breastbone_a_touch_ends_the_trial_and_the_sensor_proposes() {
    let desktop = Desktop::new();
    let made = desktop.prescribe(PLAN, AT);
    let files = [trial("b_touchdowns_web60"), trial("a_stable_native100")];
    let window = desktop.open("patient").at("2027-03-01T09:00:30+01:00").zone("Europe/Vienna").motion(&files).start();
    begin(&window, "At the breastbone");
    window.see("screen facing away from you");
    window.screenshot("sway-breastbone-set-up");
    window.press("Start countdown");
    window.see("Touch anywhere when your foot comes down");
    // The foot touches at 14.28 s; the announcement waits for its evidence, then the person touches the screen.
    window.see("Your foot seems to have touched");
    window.screenshot("sway-breastbone-announced");
    window.touch_anywhere();
    // A touch more than 1.5 s after the foot's touch-down matches no event; the person is then asked about the detected one.
    window.wait_for("return /attempt 2 of 2|after about 14.3 s/i.test(document.body.innerText)");
    if window.sees("Did your foot touch") {
        window.screenshot("sway-breastbone-asked");
        window.press("Yes");
    }
    window.press("Start countdown");
    window.see("2 of 2 attempts done.");
    window.press("What the sensor measured");
    window.see("Side to side 13.9 cm/s²");
    window.screenshot("sway-breastbone-results");
    window.press("Continue");
    window.close();

    let said = said(&desktop);
    let (_, first, account) = said.iter().rfind(|(place, ..)| *place == 0).expect("the first trial");
    assert_eq!((first.held_ms, first.censored, first.kind), (14_277, false, SourceKind::File));
    assert_eq!(account["source"]["kind"], "file");
    assert!(account["around"][0].as_array().is_some_and(|rows| rows.len() > 150), "raw samples stand beside the event");
    figures_agree(account, "b_touchdowns_web60");
    let (_, second, account) = said.iter().rfind(|(place, ..)| *place == 1).expect("the second trial");
    assert_eq!((second.held_ms, second.censored, second.touch_downs), (30_000, true, 0));
    figures_agree(account, "a_stable_native100");
    the_review_shows(&desktop, &made, "AtBreastbone");
}

/// The summary is received by the clinic, whose review then has a session of two trials.
fn the_review_shows(desktop: &Desktop, made: &Prescribed, set_up: &str) {
    let summary = desktop.path("summary.age").to_string_lossy().into_owned();
    made.patient("2027-03-01T10:00:00+01:00", &["summary", "--until", "2027-03-01", "--out", &summary]);
    made.clinic(&["receive", &summary]);
    let review: Value = serde_json::from_str(&made.clinic(&["review", "K17", "--as", "json"])).expect("one object");
    let series = &review["balance"][0];
    assert_eq!((&series["set_up"], &series["sway"]["kind"]), (&set_up.into(), &"file".into()));
    assert_eq!((&series["days"][0]["trials"], &series["sway"]["sessions"][0]["trials"]), (&2.into(), &2.into()));
    let planar = series["sway"]["sessions"][0]["rms_planar"].as_f64().expect("a mean");
    assert!((planar - (0.360_344 + 0.186_554) / 2.0).abs() < 1e-4, "{planar}");
}

#[test]
fn in_the_pocket_the_sensor_ends_the_trial_and_it_is_always_asked() {
    let desktop = Desktop::new();
    desktop.prescribe(PLAN, AT);
    let files = [trial("c_coarse_gap_landscape"), trial("b_touchdowns_web60")];
    let window = desktop.open("patient").at("2027-03-01T09:00:30+01:00").zone("Europe/Vienna").motion(&files).start();
    begin(&window, "In a pocket at the waist");
    window.screenshot("sway-pocket-set-up");
    window.press("Start countdown");
    window.see("Stand until the sound");
    // The cloth of a pocket touches the screen all the time.
    window.touch_anywhere();
    window.screenshot("sway-pocket-trial");
    window.see("Did your foot touch the floor, or did you hold on?");
    window.screenshot("sway-pocket-asked");
    window.press("No");
    window.press("Start countdown");
    window.see("Did your foot touch the floor after about 14.3 s?");
    window.press("Not sure");
    window.see("Not certain");
    window.screenshot("sway-pocket-results");
    window.press("Continue");
    window.close();

    let said = said(&desktop);
    let (_, first, account) = said.iter().rfind(|(place, ..)| *place == 0).expect("the first trial");
    assert_eq!((first.held_ms, first.censored, first.gap), (30_000, true, true));
    assert_eq!(account["result"]["measures"]["jerk"], Value::Null, "never from coarse steps");
    figures_agree(account, "c_coarse_gap_landscape");
    let (_, second, account) = said.iter().rfind(|(place, ..)| *place == 1).expect("the second trial");
    assert_eq!((second.held_ms, second.censored, second.to_be_confirmed()), (14_277, false, true));
    assert_eq!(account["answers"][0]["answer"], "unsure");
    figures_agree(account, "b_touchdowns_web60");
    let run = last_run(&desktop);
    let Work::Balance(balance) = run.work else { panic!("a stance") };
    assert_eq!((balance.set_up, balance.trials[0].end), (SetUp::InPocket, TrialEnd::Target));
    assert_eq!(balance.trials[1].end, TrialEnd::CutOff, "raw: nobody confirmed it when the sensor ended it");
    assert!((15_400..18_000).contains(&balance.trials[1].held_ms), "the evidence needs 1.2 s: {:?}", balance.trials[1]);
}

fn last_run(desktop: &Desktop) -> exercises::run::Run {
    let db = Connection::open(desktop.path("patient").join("carryover.db")).expect("the patient's database");
    let mut rows = db.prepare("SELECT payload FROM entry ORDER BY n DESC").expect("the log");
    let rows = rows.query_map([], |row| row.get::<_, Vec<u8>>(0)).expect("entries");
    let mut read = rows.map(|payload| format::entry::read(&payload.expect("bytes")).expect("an entry"));
    read.find_map(|event| if let LogEvent::Run(run) = event { Some(run) } else { None }).expect("a run")
}
