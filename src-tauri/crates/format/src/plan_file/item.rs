//! Reads one item of the file.

use super::days::days;
use super::doses;
use crate::fields::{Fields, Value, Wrong};
use chrono::{Duration, NaiveDate};
use exercises::catalogue::{ExerciseId, RungId};
use exercises::file_fault::{FaultKind, PlanFault};
use exercises::id::{ComplaintId, ItemId};
use exercises::plan::{DEFAULT_PAIN_LIMIT, Item, Kilograms, Load, Pattern, Phase, Schedule, Side};
use exercises::score::Score;

/// The fields of an item, apart from the dose.
const FIELDS: [&str; 17] = [
    "number",
    "exercise",
    "rung",
    "side",
    "load",
    "effort",
    "helper",
    "every",
    "at",
    "as_needed",
    "days",
    "first",
    "last",
    "pain_limit",
    "may_step",
    "serves",
    "note",
];

/// The heaviest load, in kilograms.
const MOST_KG: i64 = 100;
/// The last day of a plan that a file can name by its number.
const MAX_DAY: i64 = u16::MAX as i64;

/// Reads an item from its fields; `today` is the day of issue, from which days are counted unless the file says otherwise.
pub(super) fn item(value: &Value, today: NaiveDate) -> Result<Item, Wrong> {
    let item = value.fields()?;
    item.only(&[&FIELDS[..], &doses::names()].concat())?;
    let number = item.required("number")?.whole(u8::MAX)?;
    let exercise = item.required("exercise")?;
    let exercise = ExerciseId::new(exercise.text()?).map_err(|fault| exercise.wrong(FaultKind::Id(fault)))?;
    let rung = item.maybe("rung", |rung| RungId::new(rung.text()?).map_err(|fault| rung.wrong(FaultKind::Id(fault))))?;
    let day = |value: &Value| day_of_plan(value, today);
    let first = item.maybe("first", day)?;
    // Days are counted from the item's first one.
    let schedule = schedule(&item, first.unwrap_or(today))?;
    let dose = doses::only(&item)?;
    Ok(Item {
        content: 0,
        load: item.maybe("load", load)?,
        effort: item.maybe("effort", |effort| effort.whole(Score::MOST))?,
        with_helper: item.maybe("helper", Value::truth)?.unwrap_or(false),
        phase: Phase { first, last: item.maybe("last", day)? },
        rung,
        side: item.maybe("side", Value::named)?.unwrap_or(Side::Neither),
        pain_limit: item.maybe("pain_limit", |limit| limit.whole(Score::MOST))?.unwrap_or(DEFAULT_PAIN_LIMIT),
        may_step: item.maybe("may_step", Value::truth)?.unwrap_or(false),
        serves: item.maybe("serves", |number| number.whole(u8::MAX))?.map(ComplaintId),
        note: item.maybe("note", Value::text)?.unwrap_or_default().to_owned(),
        ..Item::new(ItemId(number), exercise, dose, schedule)
    })
}

/// When the item is due; nothing that is done as needed has days.
fn schedule(item: &Fields<'_>, today: NaiveDate) -> Result<Schedule, Wrong> {
    let as_needed = item.maybe("as_needed", Value::truth)?.unwrap_or(false);
    let pattern = match (item.optional("every"), item.optional("at"), as_needed) {
        (Some(every), None, false) => every_pattern(every)?,
        (None, Some(at), false) => Pattern::At { times: at.each(Value::minute)? },
        (None, None, true) if item.optional("days").is_none() => return Ok(Schedule::AS_NEEDED),
        (None, None, true) => return Err(item.one_of(&["as_needed", "days"])),
        _ => return Err(item.one_of(&["every", "at", "as_needed"])),
    };
    Ok(Schedule { days: days(item.required("days")?, today)?, pattern })
}

/// A weight in kilograms, or a band.
fn load(value: &Value) -> Result<Load, Wrong> {
    let load = value.fields()?;
    load.only(&["kg", "band"])?;
    match (load.optional("kg"), load.optional("band")) {
        (Some(kg), None) => {
            let weight = Kilograms::of(kg.number(MOST_KG)?);
            weight.map(Load::Weight).ok_or_else(|| kg.wrong(FaultKind::Plan(PlanFault::Weight)))
        }
        (None, Some(band)) => band.named().map(Load::Band),
        _ => Err(load.one_of(&["kg", "band"])),
    }
}

/// A date, or the number of a day of the plan, where 1 is the day of issue.
fn day_of_plan(value: &Value, today: NaiveDate) -> Result<NaiveDate, Wrong> {
    if value.date().is_ok() {
        return value.date();
    }
    let number = value.whole_between(1, MAX_DAY)?;
    Ok(today.checked_add_signed(Duration::days(number - 1)).unwrap_or(today))
}

fn every_pattern(value: &Value) -> Result<Pattern, Wrong> {
    let every = value.fields()?;
    every.only(&["minutes", "from", "to"])?;
    Ok(Pattern::Every {
        minutes: every.required("minutes")?.whole(u16::MAX)?,
        from: every.required("from")?.minute()?,
        to: every.required("to")?.minute()?,
    })
}
