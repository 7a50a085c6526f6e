//! One item of the file: its fields, and what they mean.

use super::doses::{self, WithDoses};
use super::read::{Wrong, days, every_pattern, minute, named};
use super::shape::{DaysShape, EveryShape, Word};
use exercises::catalogue::{ExerciseId, RungId};
use exercises::id::{ComplaintId, ItemId};
use exercises::plan::{DEFAULT_PAIN_LIMIT, Item, Pattern, Schedule, Side};
use serde::Deserialize;
use toml::Spanned;

/// The fields besides the dose.
#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct ItemShape {
    number: u8,
    exercise: Word,
    rung: Option<Word>,
    side: Option<Word>,
    every: Option<EveryShape>,
    at: Option<Vec<Word>>,
    days: Spanned<DaysShape>,
    pain_limit: Option<u8>,
    #[serde(default)]
    may_step: bool,
    serves: Option<u8>,
    #[serde(default)]
    note: String,
}

/// The item that the fields say.
pub(super) fn item(shape: Spanned<WithDoses<ItemShape>>) -> Result<Item, Wrong> {
    let whole = shape.span();
    let WithDoses { rest: shape, doses } = shape.into_inner();
    let exercise = ExerciseId::new(shape.exercise.get_ref().as_str());
    let exercise = exercise.map_err(|fault| Wrong(Some(shape.exercise.span()), format!("exercise: {fault}")))?;
    let rung = shape.rung.as_ref().map(|word| {
        RungId::new(word.get_ref().as_str()).map_err(|fault| Wrong(Some(word.span()), format!("rung: {fault}")))
    });
    let pattern = match (shape.every, shape.at) {
        (Some(every), None) => every_pattern(&every)?,
        (None, Some(at)) => Pattern::At { times: at.iter().map(minute).collect::<Result<_, _>>()? },
        _ => return Err(Wrong(Some(whole), "an item needs either every or at".into())),
    };
    let [dose] = doses[..] else {
        return Err(Wrong(Some(whole), format!("an item needs one of {}", doses::names().join(", "))));
    };
    let schedule = Schedule { days: days(&shape.days)?, pattern };
    Ok(Item {
        content: 0,
        rung: rung.transpose()?,
        side: shape.side.as_ref().map_or(Ok(Side::Neither), named)?,
        pain_limit: shape.pain_limit.unwrap_or(DEFAULT_PAIN_LIMIT),
        may_step: shape.may_step,
        serves: shape.serves.map(ComplaintId),
        note: shape.note,
        ..Item::new(ItemId(shape.number), exercise, dose, schedule)
    })
}
