//! Compares the detector with a second implementation in numpy and scipy: `data/sway/detector.json`, made by the script next to it
//! from changed copies of the three trials. Event times agree within a grid step, the rest within a relative error of 1e-6.

use exercises::sway::{Detection, Marks, Sample, Source, analyse};
use serde_json::Value;

fn cases() -> Vec<Value> {
    let file: Value = serde_json::from_str(include_str!("data/sway/detector.json")).expect("JSON");
    file["cases"].as_array().expect("a list").clone()
}

fn number(of: &Value) -> f64 {
    of.as_f64().expect("a number")
}

fn trial(name: &str) -> &'static str {
    match name {
        "a_stable_native100" => include_str!("data/sway/a_stable_native100.csv"),
        "b_touchdowns_web60" => include_str!("data/sway/b_touchdowns_web60.csv"),
        "c_coarse_gap_landscape" => include_str!("data/sway/c_coarse_gap_landscape.csv"),
        other => panic!("no trial {other}"),
    }
}

fn changed(case: &Value) -> Vec<Sample> {
    let scale = number(&case["scale"]);
    let loud = case["axis"].as_u64().expect("whole") as usize;
    let knocks = case["knocks"].as_array().expect("a list");
    let sample = |line: &str| {
        let cells: Vec<f64> = line.split(',').map(|cell| cell.parse().expect("a number")).collect();
        let about = |axis: usize| number(&case["about"][axis]);
        let mut a = [0, 1, 2].map(|axis| about(axis) + scale * (cells[axis + 1] - about(axis)));
        for knock in knocks {
            let after = (cells[0] - number(&knock[0])).max(0.0);
            a[loud] += number(&knock[1]) * libm::exp(-after / 0.08) * libm::sin(45.0 * after);
        }
        Sample { t_s: cells[0], a }
    };
    trial(case["trial"].as_str().expect("a name")).lines().skip(1).map(sample).collect()
}

#[track_caller]
fn close(what: &str, got: f64, want: &Value) {
    let want = number(want);
    assert!((got - want).abs() <= (1e-6 * want.abs()).max(1e-9), "{what}: {got} is not {want}");
}

fn check(case: &Value, got: &Detection) {
    close("lower threshold", got.thr_lo, &case["thr_lo"]);
    close("upper threshold", got.thr_hi, &case["thr_hi"]);
    close("median", got.p2p_median, &case["p2p_median"]);
    close("spread", got.p2p_mad, &case["p2p_mad"]);
    let want = case["events"].as_array().expect("a list");
    assert_eq!(got.events.len(), want.len(), "{case}");
    for (got, want) in got.events.iter().zip(want) {
        assert!((got.t_s - number(&want["t"])).abs() < 0.01, "{got:?} is not {want}");
        close("swing", got.p2p, &want["p2p"]);
        close("before", got.pre, &want["pre"]);
        close("shift", got.shift, &want["shift"]);
        assert_eq!(got.support, want["support"], "{got:?}");
        assert_eq!(got.class.code(), want["cls"], "{got:?}");
    }
}

#[test]
fn events_thresholds_and_evidence() {
    let mut classes = std::collections::BTreeMap::new();
    for case in cases() {
        let marks = Marks::between(number(&case["t_on"]), number(&case["t_off"]));
        let got = analyse(&changed(&case), &marks, &Source::file()).detection.expect("fast enough");
        check(&case, &got);
        got.events.iter().for_each(|event| *classes.entry(event.class.code()).or_insert(0) += 1);
    }
    assert!(classes["definite"] >= 5 && classes["possible"] >= 5, "{classes:?}");
}
