//! The statistics on the series with which their own test compares them with other programs.

use exercises::statistics::{DayValue, mad, mann_kendall, median, normal_quantile, quartiles, tau_b, theil_sen, wilson};
use serde_json::Value;
use std::fmt::Write;

const VECTORS: &str = include_str!("../../../exercises/tests/data/statistics/vectors.json");

/// Every statistic of every series, one per line.
pub(crate) fn text() -> String {
    let vectors: Value = serde_json::from_str(VECTORS).expect("the vectors are JSON");
    let part = |name: &str| vectors[name].as_array().expect("a list").iter();
    let mut text = String::new();
    let mut line = |of: &dyn std::fmt::Debug| writeln!(text, "{of:?}").expect("a string takes any text");
    for case in part("trends") {
        let (days, values) = (numbers(&case["days"]), numbers(&case["values"]));
        let series: Vec<DayValue> =
            days.iter().zip(&values).map(|(&day, &value)| DayValue { day: day as i32, value }).collect();
        line(&mann_kendall(&series));
        line(&tau_b(&series));
        line(&(theil_sen(&series, 0.95), theil_sen(&series, 0.90)));
        line(&(median(&values), mad(&values), quartiles(&values)));
    }
    for case in part("wilson") {
        let count = |key: &str| case[key].as_u64().expect("whole") as u32;
        line(&wilson(count("done"), count("planned"), number(&case["confidence"])));
    }
    for case in part("normal") {
        line(&normal_quantile(number(&case["p"])));
    }
    text
}

fn number(of: &Value) -> f64 {
    of.as_f64().expect("a number")
}

fn numbers(of: &Value) -> Vec<f64> {
    of.as_array().expect("a list").iter().map(number).collect()
}
