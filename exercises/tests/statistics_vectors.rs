//! Compares the statistics with scipy, statsmodels and pymannkendall: `data/statistics/vectors.json`, made by the script next to it.

use exercises::statistics::{DayValue, mad, mann_kendall, median, normal_quantile, quartiles, tau_b, theil_sen, wilson};
use serde_json::Value;

fn vectors(part: &str) -> Vec<Value> {
    let file: Value = serde_json::from_str(include_str!("data/statistics/vectors.json")).expect("JSON");
    file[part].as_array().expect("a list").clone()
}

fn number(of: &Value, key: &str) -> f64 {
    of[key].as_f64().unwrap_or_else(|| panic!("{key} is a number in {of}"))
}

fn numbers(of: &Value, key: &str) -> Vec<f64> {
    of[key].as_array().expect("a list").iter().map(|one| one.as_f64().expect("a number")).collect()
}

fn series(case: &Value) -> Vec<DayValue> {
    let days = numbers(case, "days");
    let values = numbers(case, "values");
    days.iter().zip(values).map(|(&day, value)| DayValue { day: day as i32, value }).collect()
}

#[track_caller]
fn close(what: &str, got: f64, want: f64) {
    let allowed = 1e-9 * want.abs() + 1e-12;
    assert!((got - want).abs() <= allowed, "{what}: {got} is not {want}");
}

#[test]
fn the_trend_test() {
    let mut exact = 0;
    for case in vectors("trends") {
        let got = mann_kendall(&series(&case)).expect("sound");
        assert_eq!(got.s, case["s"].as_i64().expect("whole"));
        close("variance", got.variance, number(&case, "variance"));
        close("z", got.z, number(&case, "z"));
        close("p by the normal approximation", got.p_normal, number(&case, "p_normal"));
        if let Some(p) = case["p_exact"].as_f64() {
            close("exact p", got.p_exact.expect("60 days or fewer"), p);
            exact += 1;
        }
    }
    assert!(exact >= 18, "only {exact} vectors have an exact p");
}

#[test]
fn tau() {
    for case in vectors("trends") {
        let got = tau_b(&series(&case)).expect("sound").expect("not all equal");
        close("tau-b", got, number(&case, "tau_b"));
    }
}

#[test]
fn the_line_and_its_limits() {
    for case in vectors("trends") {
        let line = |confidence| theil_sen(&series(&case), confidence).expect("sound").expect("two days or more");
        let got = line(0.95);
        close("slope", got.slope, number(&case, "slope"));
        close("intercept", got.intercept, number(&case, "intercept"));
        close("lower limit", got.limits.low, number(&case, "low"));
        close("upper limit", got.limits.high, number(&case, "high"));
        close("lower limit of 90 %", line(0.90).limits.low, number(&case, "low90"));
        close("upper limit of 90 %", line(0.90).limits.high, number(&case, "high90"));
    }
}

#[test]
fn medians_and_spreads() {
    for case in vectors("trends") {
        let values = numbers(&case, "values");
        close("median", median(&values).expect("values"), number(&case, "median"));
        close("MAD", mad(&values).expect("values"), number(&case, "mad"));
        let got = quartiles(&values).expect("values");
        for (got, want) in [got.lower, got.middle, got.upper].iter().zip(numbers(&case, "quartiles")) {
            close("quartile", *got, want);
        }
    }
}

#[test]
fn limits_of_a_proportion() {
    for case in vectors("wilson") {
        let count = |key| case[key].as_u64().expect("whole") as u32;
        let got = wilson(count("done"), count("planned"), number(&case, "confidence")).expect("sound");
        close("lower limit", got.low, number(&case, "low"));
        close("upper limit", got.high, number(&case, "high"));
    }
}

#[test]
fn quantiles_of_the_normal_distribution() {
    for case in vectors("normal") {
        close("z", normal_quantile(number(&case, "p")).expect("inside"), number(&case, "z"));
    }
}
