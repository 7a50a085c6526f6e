//! Log entries in `everything.json`.

use super::{moment, plans, seconds};
use crate::names::name;
use exercises::log::Correction;
use exercises::log::{Entry, LogEvent};
use exercises::misdated::WrongClock;
use exercises::run::{Run, TrialEnd, Work};
use exercises::slots::SlotRef;
use exercises::sway::Sensed;
use serde_json::{Map, Value, json};

pub(super) fn entry(entry: &Entry, wrong_clock: Option<WrongClock>) -> Value {
    let local = entry.at.local();
    let (event, rest) = event(&entry.event);
    let head = json!({
        "n": entry.n,
        "plan": entry.plan.to_string(),
        "at": moment(entry.at),
        "day": local.date().to_string(),
        "time": local.time().format("%H:%M:%S").to_string(),
        "what": event,
    });
    let mut all: Map<String, Value> = Map::new();
    all.extend([head, rest].into_iter().filter_map(|part| part.as_object().cloned()).flatten());
    if let Some(wrong) = wrong_clock {
        let how = match wrong {
            WrongClock::Ahead => "ahead",
            WrongClock::Behind => "behind",
        };
        all.insert("clock".to_owned(), json!(how));
    }
    Value::Object(all)
}

/// The name of an event, and its details.
fn event(event: &LogEvent) -> (&'static str, Value) {
    match event {
        LogEvent::Opened => ("opened", json!({})),
        LogEvent::Taken { revision, agreed } => {
            ("card_taken", json!({ "revision": revision, "agreed": plans::agreed(agreed) }))
        }
        LogEvent::Run(run) => ("run", self::run(run)),
        LogEvent::Reminded { slot } => ("reminded", json!({ "slot": self::slot(slot) })),
        LogEvent::PutOff { slot, minutes } => ("put_off", json!({ "slot": self::slot(slot), "minutes": minutes })),
        LogEvent::Skipped { slot, reason } => ("skipped", json!({ "slot": self::slot(slot), "reason": name(reason) })),
        LogEvent::DaysOff { from, until, why } => {
            ("days_off", json!({ "from": from.to_string(), "until": until.to_string(), "why": name(why) }))
        }
        LogEvent::Morning { complaint, score } => ("morning", json!({ "complaint": complaint.0, "score": score.points() })),
        LogEvent::During { item, score } => ("during", json!({ "item": item.0, "score": score.points() })),
        LogEvent::WellAgain => ("well_again", json!({})),
        LogEvent::Pain { complaint, score, after } => {
            ("pain", json!({ "complaint": complaint.0, "score": score.points(), "after_run": after.map(|run| run.0) }))
        }
        LogEvent::Settled { complaint, settled } => ("settled", json!({ "complaint": complaint.0, "settled": settled })),
        LogEvent::Rated { activity, score } => ("activity", json!({ "activity": activity.0, "score": score.points() })),
        LogEvent::Trouble { trouble, item, id, circumstances } => {
            let circumstances: Vec<_> = circumstances.iter().map(name).collect();
            let (item, id) = (item.map(|item| item.0), id.map(|id| id.to_string()));
            (
                "something_wrong",
                json!({ "trouble": name(trouble), "item": item, "alarm": id, "circumstances": circumstances }),
            )
        }
        LogEvent::Sensed { run, trial, sensed, detail } => ("sensed", self::sensed(run.0, *trial, sensed, detail)),
        LogEvent::Corrected { entry, to } => ("corrected", self::correction(*entry, *to)),
        LogEvent::Sealed { counter } => ("summary_sealed", json!({ "counter": counter })),
    }
}

/// The entry that was corrected, and how; the values next to `as` are the new ones.
fn correction(entry: u32, to: Correction) -> Value {
    match to {
        Correction::Stands => json!({ "entry": entry, "as": "first_said" }),
        Correction::Never => json!({ "entry": entry, "as": "mistake" }),
        Correction::Score(score) => json!({ "entry": entry, "as": "changed", "score": score.points() }),
        Correction::Settled(settled) => json!({ "entry": entry, "as": "changed", "settled": settled }),
        Correction::Reason(reason) => json!({ "entry": entry, "as": "changed", "reason": name(&reason) }),
        Correction::DaysOff { from, until, why } => json!({
            "entry": entry, "as": "changed", "from": from.to_string(), "until": until.to_string(), "why": name(&why),
        }),
    }
}

fn slot(slot: &SlotRef) -> Value {
    json!({ "day": slot.day.to_string(), "item": slot.item.0, "number": slot.number })
}

fn run(run: &Run) -> Value {
    json!({
        "run": run.id.0,
        "item": run.item.0,
        "exercise": run.exercise.to_string(),
        "rung": run.rung.as_ref().map(ToString::to_string),
        "dose": plans::dose(run.dose),
        "slot": run.slot.as_ref().map(slot),
        "started": moment(run.started),
        "timed": run.live,
        "end": name(&run.end),
        "paused_s": seconds(run.paused_ms),
        "interrupted_at_s": run.interruptions.iter().map(|ms| seconds(*ms)).collect::<Vec<_>>(),
        "done": done(run),
    })
}

/// The parts of a run, under the name that the run's kind gives to them.
fn done(run: &Run) -> Value {
    let parts: Vec<Value> = match &run.work {
        Work::Timed(parts) => {
            let part = |one: &exercises::run::HoldRecord| json!({ "side": one.side.as_ref().map(name), "held_s": seconds(one.held_ms) });
            parts.iter().map(part).collect()
        }
        Work::Counted(sets) => {
            let set = |one: &exercises::run::SetRecord| json!({ "side": one.side.as_ref().map(name), "done": one.done, "failed": one.failed });
            sets.iter().map(set).collect()
        }
        Work::Balance(balance) => {
            // A trial that was cut off has no time.
            let trial = |one: &exercises::run::Trial| {
                let held = (one.end != TrialEnd::CutOff).then(|| seconds(one.held_ms));
                json!({ "leg": one.leg.as_ref().map(name), "held_s": held, "end": name(&one.end) })
            };
            balance.trials.iter().map(trial).collect()
        }
        // Nothing was done yet in a test that was only begun.
        Work::Tally(tally) if tally.held_ms == 0 => Vec::new(),
        Work::Tally(tally) => vec![
            json!({ "held_s": seconds(tally.held_ms), "count": tally.count, "whole": run.result().is_some_and(|(_, whole)| whole) }),
        ],
    };
    let mut all = json!({ run.dose.kind().rules().parts_name(): parts });
    if let Some(balance) = run.work.balance() {
        all["phone"] = name(&balance.set_up).into();
        all["surface"] = name(&balance.surface).into();
        all["eyes"] = name(&balance.eyes).into();
    }
    all
}

fn sensed(run: u32, trial: u16, sensed: &Sensed, detail: &str) -> Value {
    let figures = sensed.figures.map(|shown| {
        let mm = |tenths: u32| f64::from(tenths) / 10.0;
        json!({
            "rms_side_to_side_mm_s2": shown.rms_ml.map(mm),
            "rms_all_round_mm_s2": mm(shown.rms_planar),
            "path_mm_s3": mm(shown.path_per_s),
        })
    });
    json!({
        "run": run,
        "trial": trial,
        "held_s": seconds(sensed.held_ms),
        "lower_bound": sensed.censored,
        "gap": sensed.gap,
        "to_be_confirmed": sensed.to_be_confirmed(),
        "touch_downs": sensed.touch_downs,
        "figures": figures,
        // A text that is not JSON is kept as text.
        "detail": serde_json::from_str::<Value>(detail).unwrap_or_else(|_| Value::String(detail.to_owned())),
    })
}
