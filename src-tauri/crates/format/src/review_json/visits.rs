//! What was found at visits.

use crate::names::name;
use exercises::plan::Side;
use exercises::visit::{Finding, Found, Measure, Measured, Visit};
use serde_json::{Value, json};

/// The visits, the newest first, each with what was found and not taken back. A visit may be before the first card, so it has a date and no
/// number of a day.
pub fn visits(all: &[Visit]) -> Value {
    let one = |visit: &Visit| json!({ "date": visit.day.to_string(), "by": visit.by(), "found": visit.found.iter().map(found).collect::<Vec<_>>() });
    all.iter().map(one).collect()
}

fn found(found: &Found) -> Value {
    let (kind, mut keys) = match &found.finding {
        Finding::Complaint(one) => {
            let side = (one.side != Side::Neither).then(|| name(&one.side));
            (
                "complaint",
                json!({ "region": name(&one.region), "side": side, "score": one.score.points(), "words": one.line }),
            )
        }
        Finding::Change(one) => ("change", json!({ "score": one.score, "words": one.words })),
        Finding::Measure(one) => ("measure", measure(one)),
        Finding::Screening(one) => {
            ("screening", json!({ "conditions": one.flags.iter().map(name).collect::<Vec<_>>(), "fell": one.fell }))
        }
        Finding::Note(note) => ("note", json!({ "words": note })),
        Finding::Overridden(one) => {
            ("override", json!({ "item": one.item.0, "proposal": name(&one.proposed), "words": one.reason }))
        }
    };
    keys["kind"] = json!(kind);
    keys["n"] = json!(found.n);
    keys["corrected"] = json!(found.corrected);
    keys
}

fn measure(one: &Measure) -> Value {
    let (what, called, unit) = match &one.what {
        Measured::Pain { movement } => ("pain", Some(movement), "score"),
        Measured::Motion { movement } => ("motion", Some(movement), "deg"),
        Measured::Grip => ("grip", None, "kg"),
        Measured::ChairRise => ("chair-rise", None, "count"),
        Measured::Stance { .. } => ("stance", None, "s"),
        Measured::Other { name, unit } => ("other", Some(name), unit.as_str()),
    };
    let (surface, eyes) = match &one.what {
        Measured::Stance { surface, eyes } => (Some(name(surface)), Some(name(eyes))),
        _ => (None, None),
    };
    json!({
        "what": what,
        "called": called,
        "unit": unit,
        "treatment": name(&one.moment),
        "side": one.side.as_ref().map(name),
        "surface": surface,
        "eyes": eyes,
        "value": number(one.result()),
        "at_least": one.is_capped(),
        "trials": one.tenths.iter().copied().map(number).collect::<Vec<_>>(),
    })
}

fn number(tenths: i32) -> f64 {
    f64::from(tenths) / 10.0
}
