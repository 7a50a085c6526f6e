//! The analyses alone: compares the printed figures with those of the reference program and of the worked series.

use crate::place::Place;
use serde_json::{Value, json};
use std::path::PathBuf;

fn data(name: &str) -> String {
    let folder = PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("../../../exercises/tests/data/sway");
    folder.join(name).display().to_string()
}

fn object(line: &str) -> Value {
    assert_eq!(line.lines().count(), 1, "one object a line");
    serde_json::from_str(line).expect("JSON")
}

/// Whether two objects have the same keys and, within a relative error of 1e-9, the same figures.
fn same(got: &Value, want: &Value) -> bool {
    match (got, want) {
        (Value::Number(got), Value::Number(want)) => {
            let (got, want) = (got.as_f64().unwrap_or(f64::NAN), want.as_f64().unwrap_or(f64::NAN));
            (got - want).abs() <= (1e-9 * want.abs()).max(1e-12)
        }
        (Value::Array(got), Value::Array(want)) => {
            got.len() == want.len() && got.iter().zip(want).all(|(got, want)| same(got, want))
        }
        (Value::Object(got), Value::Object(want)) => {
            got.len() == want.len() && want.iter().all(|(key, want)| got.get(key).is_some_and(|got| same(got, want)))
        }
        _ => got == want,
    }
}

fn sway(trial: &str, more: &[&str]) -> Value {
    let file = data(&format!("{trial}.csv"));
    let arguments = ["sway", "--trial", &file, "--on", "0", "--off", "30", "--json"];
    object(&Place::empty().done(&[&arguments[..], more].concat()))
}

fn reference(trial: &str) -> Value {
    let text = std::fs::read_to_string(data("reference.json")).expect("the reference");
    serde_json::from_str::<Value>(&text).expect("JSON")["trials"][trial]["result"].clone()
}

#[test]
fn a_trial_prints_what_the_reference_program_found() {
    for (trial, taps) in [("a_stable_native100", &[][..]), ("b_touchdowns_web60", &["--tap", "14.85"])] {
        let (got, want) = (sway(trial, taps), reference(trial));
        assert!(same(&got, &want), "{trial}: {got}\nis not\n{want}");
    }
}

#[test]
fn figures_lost_in_coarse_steps_are_null_and_the_others_are_there() {
    let (got, mut want) = (sway("c_coarse_gap_landscape", &[]), reference("c_coarse_gap_landscape"));
    let suppressed = |key: &str| ["jerk", "njs", "ldlj", "cf_", "f95_"].iter().any(|start| key.starts_with(start));
    let measures = want["measures"].as_object_mut().expect("figures");
    measures.iter_mut().filter(|(key, _)| suppressed(key)).for_each(|(_, value)| *value = Value::Null);
    assert!(same(&got, &want), "{got}\nis not\n{want}");
}

#[test]
fn the_opposite_sign_of_one_system_changes_no_figure() {
    let turned = sway("a_stable_native100", &["--os", "ios"]);
    assert!(same(&turned, &reference("a_stable_native100")));
}

#[test]
fn a_trial_that_cannot_be_measured_says_why() {
    let place = Place::empty();
    let rows = |count: u32| -> String {
        let row = |k: u32| format!("{},0,9.80665,0\n", f64::from(k) / 100.0);
        (0..count).map(row).collect()
    };
    place.write("one.csv", format!("t_s,ax,ay,az\n{}", rows(1)));
    place.write("nan.csv", "t_s,ax,ay,az\n0,nan,9.8,0\n0.01,inf,9.8,0\n");
    place.write("still.csv", format!("t_s,ax,ay,az\n{}", rows(3001)));
    for (file, on, off, reason) in [
        ("one.csv", "0", "30", "window_too_short"),
        ("nan.csv", "0", "30", "no_sensor"),
        ("still.csv", "0", "30", "sensor_stalled"),
        ("still.csv", "30", "0", "marks_invalid"),
    ] {
        let got = object(&place.done(&["sway", "--trial", file, "--on", on, "--off", off, "--json"]));
        let reasons = got["quality"]["not_measured"].as_array().expect("reasons");
        assert!(reasons.contains(&json!(reason)) && got["measures"].is_null(), "{file}: {got}");
    }
}

#[test]
fn a_hostile_file_gets_one_sentence() {
    let place = Place::empty();
    let sway = |file: &'static str| ["sway", "--trial", file, "--on", "0", "--off", "30", "--json"];
    for (file, bytes, says) in [
        ("empty.csv", String::new(), "the file is empty"),
        (
            "units.csv",
            "t_ms,gx,gy,gz\n0,0,1,0\n".into(),
            "units.csv, line 1: the first line must be t_s,ax,ay,az, but it is “t_ms,gx,gy,gz”.",
        ),
        (
            "semicolons.csv",
            "t_s;ax;ay;az\n0;0;9,8;0\n".into(),
            "semicolons.csv, line 1: commas are expected between the columns, but there is “;”.",
        ),
        (
            "words.csv",
            "t_s,ax,ay,az\n0,a,b,c\n".into(),
            "words.csv, line 2: column ax: a number with a decimal point is expected, but there is “a”.",
        ),
        ("huge.csv", format!("t_s,ax,ay,az\n{}", "0,0,9.8,0\n".repeat(10_000_000)), "larger than the limit of 16 MB."),
    ] {
        place.write(file, bytes);
        place.refused(&sway(file), &[file, says]);
    }
    place.refused(&sway("nowhere.csv"), &["There is no file nowhere.csv"]);
    place.write("days.csv", "day,value\n3,1\n2,5\n");
    place.refused(
        &["trend", "--series", "days.csv"],
        &["days.csv, line 3: column day: the day must be later than in the line before"],
    );
    place.refused(&["proportion", "3", "2"], &["0 to 2"]);
}

fn trend(days: &[i32], values: &[f64], more: &[&str]) -> Value {
    let place = Place::empty();
    let rows = days.iter().zip(values).map(|(day, value)| format!("{day},{value}\n"));
    place.write("series.csv", format!("day,value\n{}", rows.collect::<String>()));
    object(&place.done(&[&["trend", "--series", "series.csv", "--json"][..], more].concat()))
}

#[track_caller]
fn near(got: &Value, want: f64) {
    let got = got.as_f64().expect("a figure");
    assert!((got - want).abs() <= 5e-7, "{got} is not {want}");
}

#[test]
fn a_series_prints_slope_test_and_verdict() {
    let got = trend(&[0, 2, 4, 7, 9, 11, 14], &[8.2, 9.0, 7.5, 10.1, 11.4, 10.8, 12.9], &["--mdc", "2"]);
    for (key, want) in [
        ("n", 7.0),
        ("slope", 0.335714286),
        ("low", 0.175),
        ("high", 0.65),
        ("intercept_separate", 7.75),
        ("s", 15.0),
        ("tau", 0.714285714),
        ("p", 0.035498),
        ("p_exact", 0.030158730),
    ] {
        near(&got[key], want);
    }
    assert_eq!((got["verdict"].as_str(), got.as_object().map(|all| all.len())), (Some("rising"), Some(10)));
}

#[test]
fn what_is_not_defined_is_null() {
    let same = trend(&[0, 1, 2, 3, 4], &[5.0; 5], &["--mdc", "1"]);
    assert_eq!((&same["tau"], &same["verdict"]), (&Value::Null, &json!("no_clear_change")));
    near(&same["p"], 1.0);
    let capped = [31.0, 38.5, 45.0, 42.0, 45.0, 45.0, 45.0];
    let capped = trend(&[0, 1, 2, 3, 4, 5, 6], &capped, &["--cap", "45", "--mdc", "1"]);
    assert_eq!((&capped["slope"], &capped["low"], &capped["verdict"]), (&Value::Null, &Value::Null, &json!("at_the_cap")));
    near(&capped["p_exact"], 0.038095238);
    let one = trend(&[7], &[5.0], &[]);
    assert_eq!((&one["slope"], &one["verdict"]), (&Value::Null, &json!("too_few_data")));
    let days: Vec<i32> = (0..61).collect();
    let long = trend(&days, &days.iter().map(|day| f64::from(*day)).collect::<Vec<f64>>(), &["--mdc", "1"]);
    assert_eq!((&long["p_exact"], &long["verdict"]), (&Value::Null, &json!("rising")));
}

#[test]
fn a_share_prints_its_limits() {
    let place = Place::empty();
    let share = |arguments: &[&str]| object(&place.done(&[&["proportion", "--json"][..], arguments].concat()));
    let plain = share(&["42", "60"]);
    near(&plain["share"], 0.7);
    near(&plain["low"], 0.574913);
    near(&plain["high"], 0.801018);
    let clustered = share(&["84", "140", "--per-day", "7", "--rho", "0.2"]);
    near(&clustered["low"], 0.477280);
    near(&clustered["high"], 0.711335);
    assert_eq!(share(&["0", "0"]), json!({ "share": null, "low": null, "high": null }), "of nothing there is no share");
}

#[test]
fn text_output_has_one_figure_per_line() {
    let place = Place::empty();
    assert_eq!(place.done(&["proportion", "1", "1"]), "high 1.0\nlow 0.20654931437723745\nshare 1.0\n");
    let file = data("b_touchdowns_web60.csv");
    let text = place.done(&["sway", "--trial", &file, "--on", "0", "--off", "30", "--tap", "14.85"]);
    assert!(text.contains("\ndetection.events.2.cls definite\n") && text.contains("\nmeasures.cf_ml -\n"), "{text}");
}
