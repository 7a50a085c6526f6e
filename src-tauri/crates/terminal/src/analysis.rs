//! `carryover sway`, `carryover trend` and `carryover proportion`: run the analyses alone, so that they can be checked.

use crate::Done;
use crate::args::{Proportion, Sway, System, Trend};
use crate::out::Out;
use actions::analysis;
use exercises::statistics::{self, Interval};
use exercises::sway::{Marks, Os};
use serde_json::{Value, json};
use wire::Failure;

/// Confidence level of a share's limits.
const CONFIDENCE: f64 = 0.95;

pub fn sway(what: &Sway, out: &mut Out) -> Done {
    let os = match what.os {
        System::Android => Os::Android,
        System::Ios => Os::Ios,
        System::Other => Os::Other,
    };
    let marks = Marks { taps_s: what.taps.clone(), ..Marks::between(what.on, what.off) };
    let printed = json!(analysis::sway(&what.trial, &marks, os)?);
    figures(&printed, out);
    Ok(true)
}

pub fn trend(what: &Trend, out: &mut Out) -> Done {
    let statistics = analysis::trend(&what.series, what.cap, what.mdc)?;
    let (line, test) = (statistics.line, statistics.test);
    let printed = json!({
        "n": statistics.n,
        "slope": line.map(|line| line.slope),
        "low": line.map(|line| line.limits.low),
        "high": line.map(|line| line.limits.high),
        "intercept_separate": line.map(|line| line.intercept),
        "s": test.s,
        "tau": test.tau_b,
        "p": test.p_normal,
        "p_exact": test.p_exact,
        "verdict": statistics.trend.verdict,
    });
    figures(&printed, out);
    Ok(true)
}

pub fn proportion(what: &Proportion, out: &mut Out) -> Done {
    if what.done > what.planned {
        return Err(Failure::OutOfRange { least: 0, most: what.planned.into() });
    }
    let limits = match (what.per_day, what.rho) {
        (Some(per_day), Some(rho)) => statistics::wilson_clustered(what.done, what.planned, CONFIDENCE, per_day, rho),
        _ => statistics::wilson(what.done, what.planned, CONFIDENCE),
    };
    // If nothing was planned there is no share.
    let share = (what.planned > 0).then(|| f64::from(what.done) / f64::from(what.planned));
    let limit = |which: fn(Interval) -> f64| limits.map(which);
    figures(&json!({ "share": share, "low": limit(|of| of.low), "high": limit(|of| of.high) }), out);
    Ok(true)
}

/// Prints one JSON object, or one figure per line with its full name.
fn figures(printed: &Value, out: &mut Out) {
    let mut lines = Vec::new();
    spell(printed, String::new(), &mut lines);
    out.say(|_| lines.join("\n"), || printed.clone());
}

fn spell(value: &Value, name: String, lines: &mut Vec<String>) {
    let inner = |key: &str| if name.is_empty() { key.to_owned() } else { format!("{name}.{key}") };
    match value {
        Value::Object(map) if !map.is_empty() => map.iter().for_each(|(key, value)| spell(value, inner(key), lines)),
        Value::Array(list) if list.iter().any(Value::is_object) => {
            list.iter().enumerate().for_each(|(place, value)| spell(value, inner(&(place + 1).to_string()), lines));
        }
        // A value that was not measured or is not reported is printed as "-".
        Value::Null => lines.push(format!("{name} -")),
        Value::Array(list) => {
            let words: Vec<String> = list.iter().map(plain).collect();
            lines.push(format!("{name} {}", if words.is_empty() { "-".into() } else { words.join(", ") }));
        }
        other => lines.push(format!("{name} {}", plain(other))),
    }
}

fn plain(value: &Value) -> String {
    value.as_str().map_or_else(|| value.to_string(), str::to_owned)
}
