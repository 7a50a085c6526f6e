//! The review as one JSON object, for programs of others.
//!
//! The keys written here are permanent; a later version may add keys, and callers put others beside them. The chapter "The review as
//! JSON" of DEVELOPERS.md says of each key its type, its range and when it is null. Days are numbered from 0, the day of the first card;
//! lists are ordered by item or complaint, then by side; alarms and visits newest first.

mod next;
mod visits;

use crate::names::{Named, name};
use exercises::adherence::{ItemAdherence, KofN};
use exercises::catalogue::{ExerciseId, RungId};
use exercises::change::{DuringSeries, Flare, PainSeries};
use exercises::id::ItemId;
use exercises::plan::{BodySide, Plan};
use exercises::review::{CountSeries, Review, ReviewAlarm, StanceSeries, WrongClockEntry, WrongClockNotes};
use exercises::score::Score;
use exercises::statistics::{PainVerdict, Verdict};
use exercises::time::DayNumber;
use serde_json::{Map, Value, json};

pub use visits::visits;

/// Number of ratings while doing an item that are listed.
const LAST_RATINGS: usize = 3;

/// The keys of a review, without a review: every list is empty, and nothing is covered.
pub fn empty() -> Map<String, Value> {
    let lists = ["alarms", "adherence", "pain", "during", "balance", "counts", "items", "visits"];
    let lists = lists.into_iter().map(|name| (name.to_owned(), json!([])));
    let clock = clock(&WrongClockNotes::default());
    lists.chain([("until".to_owned(), Value::Null), ("clock".to_owned(), clock)]).collect()
}

/// The keys of `review`, whose newest card has `plan`. `whole` is everything that the caller knows of the review, as JSON with its
/// lists in the review's own order: what it holds of a list's element stands beside the element's keys. It may be null.
pub fn write(review: &Review, plan: &Plan, whole: &Value) -> Map<String, Value> {
    let until = review.until.0;
    let lists = [
        ("alarms", beside(&whole["alarms"], review.alarms.iter().map(alarm).enumerate())),
        ("adherence", ordered(&whole["adherence"], &review.adherence, |one| one.item, adherence)),
        ("pain", ordered(&whole["pain"], &review.pain, |one| one.complaint, pain)),
        ("during", ordered(&whole["during"], &review.during, |one| one.item, during)),
        ("balance", balance(&whole["balance"], &review.balance, plan)),
        ("counts", counts(&whole["counts"], &review.counts, plan)),
        ("items", ordered(&whole["items"], &review.items, |one| one.item, next::suggestion)),
    ];
    let others = [("until", json!(until)), ("clock", clock(&review.wrong_clock))];
    lists.into_iter().chain(others).map(|(name, value)| (name.to_owned(), value)).collect()
}

/// The list in the order of the items or complaints, whatever the order of the plan.
fn ordered<T, K: Ord>(whole: &Value, all: &[T], key: fn(&T) -> K, one: fn(&T) -> Value) -> Value {
    let mut all: Vec<(usize, &T)> = all.iter().enumerate().collect();
    all.sort_by_key(|(_, one)| key(one));
    beside(whole, all.into_iter().map(|(place, of)| (place, one(of))))
}

/// Each element's keys with what `whole` has at its place.
fn beside(whole: &Value, keys: impl Iterator<Item = (usize, Value)>) -> Value {
    let element = |(place, keys): (usize, Value)| match (whole[place].clone(), keys) {
        (Value::Object(mut all), Value::Object(keys)) => {
            all.extend(keys);
            Value::Object(all)
        }
        (_, keys) => keys,
    };
    keys.map(element).collect()
}

fn alarm(alarm: &ReviewAlarm) -> Value {
    let (score, limit) = alarm.above.unzip();
    json!({
        "id": alarm.id.to_string(),
        "kind": name(&alarm.trouble),
        "day": alarm.day.0,
        "item": alarm.item.map(number),
        "suspended": alarm.suspended.iter().map(|item| item.0).collect::<Vec<_>>(),
        "cleared": alarm.cleared,
        "revision": alarm.revision,
        "circumstances": alarm.circumstances.iter().map(name).collect::<Vec<_>>(),
        "score": score.map(Score::points),
        "limit": limit.map(Score::points),
        "said_mistaken": alarm.said_mistaken,
        "wrong_clock": alarm.wrong_clock,
    })
}

fn clock(notes: &WrongClockNotes) -> Value {
    let entry = |entry: &WrongClockEntry| {
        let (kind, item, complaint, activity, score) = match *entry {
            WrongClockEntry::Run { item } => ("session", Some(item.0), None, None, None),
            WrongClockEntry::During { item, score } => ("during", Some(item.0), None, None, Some(score)),
            WrongClockEntry::Morning { complaint, score } => ("morning", None, Some(complaint.0), None, Some(score)),
            WrongClockEntry::Rated { activity, score } => ("activity", None, None, Some(activity.0), Some(score)),
        };
        let score = score.map(Score::points);
        json!({ "kind": kind, "item": item, "complaint": complaint, "activity": activity, "score": score })
    };
    json!({ "entries": notes.entries.iter().map(entry).collect::<Vec<_>>(), "ahead_days": notes.ahead_days })
}

fn adherence(item: &ItemAdherence) -> Value {
    json!({
        "item": item.item.0,
        "done": item.kept.map(k_of_n),
        "in_part": item.slots.partly,
        "last14": item.last14.map(|lately| k_of_n(lately.done)),
        "late": item.late,
        "moved": item.moved,
        "broke_off_day": item.broke_off.map(|broke| broke.since.0),
        "in_force": item.in_force,
        "as_needed": item.as_needed.map(|done| json!({ "times": done.runs, "last_day": done.last.map(day) })),
    })
}

fn pain(series: &PainSeries) -> Value {
    json!({
        "complaint": series.complaint.0,
        "verdict": name(&series.change.verdict),
        "base": series.change.base,
        "now": series.change.now,
        "last_day": series.change.last_day.map(day),
        "flares": series.flares.iter().map(flare).collect::<Value>(),
        "unsettled": series.unsettled.iter().map(|day| day.0).collect::<Vec<_>>(),
    })
}

fn flare(flare: &Flare) -> Value {
    json!({ "from": flare.from.0, "to": flare.to.0, "peak": flare.peak.points() })
}

fn during(series: &DuringSeries) -> Value {
    let last = series.points.iter().rev().take(LAST_RATINGS).map(|(_, score)| score.points());
    json!({
        "item": series.item.0,
        "known": series.known.map(k_of_n),
        "above_limit": series.above_limit,
        "last": last.collect::<Vec<_>>(),
    })
}

/// The series by the item that they belong to; those of exercises that the plan no longer has come last, without an item.
fn balance(whole: &Value, all: &[StanceSeries], plan: &Plan) -> Value {
    let mut ordered: Vec<(Option<ItemId>, (usize, &StanceSeries))> =
        all.iter().enumerate().map(|(place, series)| (item_of(series, plan), (place, series))).collect();
    ordered.sort_by_key(|(item, (_, series))| (item.is_none(), *item, series.leg));
    let series = ordered.into_iter().map(|(item, (place, series))| {
        let keys = json!({
            "item": item.map(number),
            "side": series.leg.as_ref().map(name),
            "verdict": name(&series.change.verdict),
            "now_s": series.days.last().map(|day| day.median_s),
            "last_day": series.days.last().map(|last| day(last.day)),
            "exercise": series.exercise.to_string(),
            "level": series.rung.as_ref().map(ToString::to_string),
        });
        (place, keys)
    });
    beside(whole, series)
}

/// Results of tests by repetitions, by the item that they belong to, as counts with their unit.
fn counts(whole: &Value, all: &[CountSeries], plan: &Plan) -> Value {
    let item = |series: &CountSeries| item_with(plan, &series.exercise, series.rung.as_ref(), |_| true);
    let mut ordered: Vec<(Option<ItemId>, (usize, &CountSeries))> =
        all.iter().enumerate().map(|(place, series)| (item(series), (place, series))).collect();
    ordered.sort_by_key(|(item, _)| (item.is_none(), *item));
    let series = ordered.into_iter().map(|(item, (place, series))| {
        let days = series.days.iter().map(|one| json!({ "day": one.day.0, "count": one.count }));
        let keys = json!({
            "item": item.map(number),
            "unit": "repetitions",
            "seconds": series.seconds,
            "last": series.days.last().map(|one| one.count),
            "last_day": series.days.last().map(|last| day(last.day)),
            "best": series.best,
            "verdict": series.change.as_ref().map(name),
            "error": series.error_tenths.map(|tenths| f64::from(tenths) / 10.0),
            "days": days.collect::<Vec<_>>(),
            "exercise": series.exercise.to_string(),
            "level": series.rung.as_ref().map(ToString::to_string),
        });
        (place, keys)
    });
    beside(whole, series)
}

/// The item with the series' exercise: the one at its level, else the first.
fn item_of(series: &StanceSeries, plan: &Plan) -> Option<ItemId> {
    let fits = |leg: BodySide, item: &exercises::plan::Item| item.side.in_turn().contains(&Some(leg));
    item_with(plan, &series.exercise, series.rung.as_ref(), |item| series.leg.is_none_or(|leg| fits(leg, item)))
}

/// The item with an exercise that `fits`: the one at the level, else the first.
fn item_with(
    plan: &Plan,
    exercise: &ExerciseId,
    rung: Option<&RungId>,
    fits: impl Fn(&exercises::plan::Item) -> bool,
) -> Option<ItemId> {
    let same = || plan.prescription.items.iter().filter(|item| item.exercise == *exercise && fits(item));
    same().find(|item| item.rung.as_ref() == rung).or_else(|| same().next()).map(|item| item.id)
}

fn number(item: ItemId) -> u8 {
    item.0
}

fn day(day: DayNumber) -> u16 {
    day.0
}

fn k_of_n(of: KofN) -> Value {
    json!({ "k": of.k, "n": of.n })
}

impl Named for PainVerdict {
    const NAMES: &'static [(&'static str, PainVerdict)] = &[
        ("better", PainVerdict::Better),
        ("worse", PainVerdict::Worse),
        ("no-clear-change", PainVerdict::NoClearChange),
        ("too-few", PainVerdict::TooFewRatings),
        ("not-known-lately", PainVerdict::NotKnownLately),
    ];
}

impl Named for Verdict {
    const NAMES: &'static [(&'static str, Verdict)] = &[
        ("rising", Verdict::Rising),
        ("falling", Verdict::Falling),
        ("no-clear-change", Verdict::NoClearChange),
        ("at-the-cap", Verdict::AtTheCap),
        ("too-few", Verdict::TooFewData),
    ];
}
