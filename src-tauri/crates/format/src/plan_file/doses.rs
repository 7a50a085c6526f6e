//! Reads the dose among an item's fields. It has the name of its kind, and the fields that the kind defines.

use crate::fields::{Fields, Value, Wrong};
use exercises::catalogue::kind::DoseField;
use exercises::catalogue::{Dose, Kind};
use exercises::file_fault::ValueKind;

/// The field names that can hold a dose.
pub(super) fn names() -> Vec<&'static str> {
    Kind::ALL.iter().map(|kind| kind.rules().name()).collect()
}

/// The item's dose; exactly one must be given.
pub(super) fn only(item: &Fields<'_>) -> Result<Dose, Wrong> {
    let given = Kind::ALL.iter().filter_map(|kind| Some((*kind, item.optional(kind.rules().name())?)));
    match given.collect::<Vec<_>>()[..] {
        [(kind, value)] => dose(kind, value),
        _ => Err(item.one_of(&names())),
    }
}

fn dose(kind: Kind, value: &Value) -> Result<Dose, Wrong> {
    let groups: Vec<&[DoseField]> =
        kind.rules().fields().chunk_by(|one, next| one.group.is_some() && one.group == next.group).collect();
    let table = value.fields()?;
    table.only(&groups.iter().map(|group| name(group)).collect::<Vec<_>>())?;
    let mut values: Vec<i64> = Vec::new();
    for group in groups {
        let value = table.required(name(group))?;
        if group[0].group.is_none() {
            values.push(number(value, &group[0])?);
            continue;
        }
        let list = value.list()?;
        if list.len() != group.len() {
            return Err(value.wrong_kind(ValueKind::ListOfNumbers(group.len() as u32)));
        }
        for (value, field) in list.iter().zip(group) {
            values.push(number(value, field)?);
        }
    }
    // Each value has been checked to fit its field, so this cannot fail.
    Dose::from_values(kind, &values).ok_or_else(|| value.wrong_kind(ValueKind::Table))
}

fn name(group: &[DoseField]) -> &'static str {
    group[0].group.unwrap_or(group[0].plan_key)
}

fn number(value: &Value, field: &DoseField) -> Result<i64, Wrong> {
    value.whole(field.room).map(i64::from)
}
