//! Compares the processing with the reference program (numpy and scipy): three trials and a closed-form one, relative error 1e-9.

use exercises::sway::{Analysis, Flag, Marks, Reason, Sample, Source, analyse, printed, printed_measures};
use serde_json::Value;

const A: &str = include_str!("data/sway/a_stable_native100.csv");
const B: &str = include_str!("data/sway/b_touchdowns_web60.csv");
const C: &str = include_str!("data/sway/c_coarse_gap_landscape.csv");

fn reference() -> Value {
    serde_json::from_str(include_str!("data/sway/reference.json")).expect("JSON")
}

fn samples(csv: &str) -> Vec<Sample> {
    let row = |line: &str| -> Vec<f64> { line.split(',').map(|cell| cell.parse().expect("a number")).collect() };
    csv.lines().skip(1).map(row).map(|cells| Sample { t_s: cells[0], a: [cells[1], cells[2], cells[3]] }).collect()
}

fn trial(csv: &str, taps_s: &[f64]) -> Analysis {
    analyse(&samples(csv), &Marks { taps_s: taps_s.to_vec(), ..Marks::between(0.0, 30.0) }, &Source::file())
}

fn as_json(printed: &exercises::sway::Printed) -> Value {
    serde_json::from_str(&printed.to_string()).expect("the printed form is JSON")
}

/// Asserts equality with the same keys in the same order; numbers agree within the relative error `rel` (absolute 1e-12 near 0).
#[track_caller]
fn agree(path: &str, got: &Value, want: &Value, rel: f64) {
    match (got, want) {
        (Value::Number(got), Value::Number(want)) => {
            let (got, want) = (got.as_f64().expect("a float"), want.as_f64().expect("a float"));
            assert!((got - want).abs() <= (rel * want.abs()).max(1e-12), "{path}: {got} is not {want}");
        }
        (Value::Array(got), Value::Array(want)) => {
            assert_eq!(got.len(), want.len(), "{path}");
            for (place, (got, want)) in got.iter().zip(want).enumerate() {
                agree(&format!("{path}[{place}]"), got, want, rel);
            }
        }
        (Value::Object(got), Value::Object(want)) => {
            let keys = |of: &serde_json::Map<String, Value>| {
                let mut keys: Vec<String> = of.keys().cloned().collect();
                keys.sort();
                keys
            };
            assert_eq!(keys(got), keys(want), "{path}");
            got.keys().for_each(|key| agree(&format!("{path}.{key}"), &got[key], &want[key], rel));
        }
        _ => assert_eq!(got, want, "{path}"),
    }
}

#[test]
fn a_stable_trial() {
    let want = &reference()["trials"]["a_stable_native100"]["result"];
    agree("a", &as_json(&printed(&trial(A, &[]))), want, 1e-9);
}

#[test]
fn a_trial_with_two_touch_downs_and_a_tap() {
    let want = &reference()["trials"]["b_touchdowns_web60"]["result"];
    agree("b", &as_json(&printed(&trial(B, &[14.85]))), want, 1e-9);
}

#[test]
fn a_coarse_trial_with_a_gap() {
    let want = &reference()["trials"]["c_coarse_gap_landscape"]["result"];
    let got = trial(C, &[]);
    let all = got.unsuppressed.as_ref().expect("measured");
    agree("c.measures", &as_json(&printed_measures(all)), &want["measures"], 1e-9);
    let mut reported = want.clone();
    for (key, value) in reported["measures"].as_object_mut().expect("a map") {
        let fine = ["jerk", "njs_", "ldlj_", "cf_", "f95_"].iter().any(|start| key.starts_with(start));
        if fine {
            *value = Value::Null;
        }
    }
    agree("c", &as_json(&printed(&got)), &reported, 1e-9);
    assert_eq!(got.flags, vec![Flag::Gap, Flag::CoarseQuantisation]);
}

#[test]
fn windows_are_equal_to_the_point() {
    let ends = |csv, taps: &[f64]| trial(csv, taps).window.map(|window| (window.k0, window.k1));
    assert_eq!(ends(A, &[]), Some((200, 2949)));
    assert_eq!(ends(B, &[14.85]), Some((198, 1375)));
    assert_eq!(ends(C, &[]), Some((198, 2046)));
}

fn closed_form_samples() -> Vec<Sample> {
    let sample = |k: i32| {
        let t = f64::from(k) / 100.0;
        let wave = |size: f64, hz: f64| size * libm::cos(2.0 * std::f64::consts::PI * hz * (t - 2.0));
        Sample { t_s: t, a: [wave(0.3, 0.4), 9.80665, wave(0.2, 0.8)] }
    };
    (0..=3000).map(sample).collect()
}

#[test]
fn the_closed_form_case() {
    let got = analyse(&closed_form_samples(), &Marks::between(0.0, 30.0), &Source::file());
    let measures = as_json(&printed_measures(got.measures().expect("measured")));
    let reference = &reference()["analytic_and_properties"];
    agree("closed form, computed", &measures, &reference["computed"], 1e-9);
    for (key, want) in reference["expected_closed_form"].as_object().expect("a map") {
        agree(key, &measures[key], want, 0.01);
    }
}

#[test]
fn every_parameter_equals_that_of_the_reference() {
    use exercises::sway::parameters as p;
    let reference = reference();
    let want = |key: &str| reference["parameters"][key].as_f64().expect("a number");
    for (key, got) in [
        ("fs", p::FS),
        ("fc_sway", p::FC_SWAY),
        ("fc_event", p::FC_EVENT),
        ("settle_s", p::SETTLE_S),
        ("guard_s", p::GUARD_S),
        ("min_window_s", p::MIN_WINDOW_S),
        ("min_spectral_s", p::MIN_SPECTRAL_S),
        ("gap_split_s", p::GAP_SPLIT_S),
        ("gap_warn_s", p::GAP_WARN_S),
        ("max_missing_frac", p::MAX_MISSING),
        ("stall_s", p::STALL_S),
        ("fs_ok", p::FS_DETECT),
        ("fs_min", p::FS_MIN),
        ("g_tol", p::G_TOLERANCE),
        ("tilt_warn_deg", p::TILT_WARN_DEG),
        ("tilt_fail_deg", p::TILT_FAIL_DEG),
        ("ap_min_sin", p::AP_MIN_SIN),
        ("coarse_lsb", p::COARSE_LSB),
        ("coarse_rms_min", p::COARSE_RMS_MIN),
        ("clip_abs", p::CLIP_ABS),
        ("band_lo", p::BAND_LOW),
        ("band_hi", p::BAND_HIGH),
        ("td_lo", p::SWING_LOW),
        ("td_hi", p::SWING_HIGH),
        ("td_klo", p::SWING_LOW_SPREADS),
        ("td_khi", p::SWING_HIGH_SPREADS),
        ("td_ignore_start_s", p::IGNORE_START_S),
        ("td_shift", p::SUPPORT_SHIFT),
        ("td_horiz", p::SUPPORT_PRE),
        ("tap_before_s", p::TAP_BEFORE_S),
        ("tap_after_s", p::TAP_AFTER_S),
        ("tap_knock_s", p::TAP_KNOCK_S),
        ("tap_delay_s", p::TAP_DELAY_S),
    ] {
        assert_eq!(got, want(key), "{key}");
    }
    assert_eq!(reference["parameters"]["version"], p::VERSION);
}

#[test]
fn without_the_tap_the_sensor_ends_the_hold_provisionally() {
    let got = trial(B, &[]);
    let hold = got.hold.as_ref().expect("sound marks");
    assert!((hold.seconds - 14.2768).abs() < 1e-9 && !hold.censored && hold.to_be_confirmed());
    assert_eq!(hold.ask_s.len(), 1);
    assert_eq!(got.flags, vec![Flag::Auto]);
    let answered = |answer| {
        let marks =
            Marks { answers: vec![exercises::sway::AnsweredAt { t_s: hold.ask_s[0], answer }], ..Marks::between(0.0, 30.0) };
        analyse(&samples(B), &marks, &Source::file()).hold.expect("sound marks")
    };
    let no = answered(exercises::sway::TouchAnswer::No);
    assert!((no.seconds - 22.6568).abs() < 1e-9, "the second touch-down ends it then");
    let yes = answered(exercises::sway::TouchAnswer::Yes);
    assert!((yes.seconds - 14.2768).abs() < 1e-9 && !yes.to_be_confirmed());
}

#[test]
fn a_trial_that_is_too_short_still_has_its_hold() {
    let got = analyse(&samples(A), &Marks { taps_s: vec![9.0], ..Marks::between(0.0, 30.0) }, &Source::file());
    assert_eq!(got.reasons(), [Reason::WindowTooShort]);
    assert_eq!(got.flags, vec![Flag::TapOnly]);
    assert_eq!(got.hold.expect("sound marks").seconds, 8.5);
    let json = as_json(&printed(&trial(A, &[9.0])));
    assert_eq!(json["measures"], Value::Null);
    assert_eq!(json["quality"]["not_measured"][0], "window_too_short");
}
