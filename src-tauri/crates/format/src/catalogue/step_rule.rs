//! Reads how an exercise is made harder: its tables `step`, in order.

use super::page::{Item, Table, whole};
use crate::fields::quoted;
use exercises::catalogue::kind::{DoseField, StepForward};
use exercises::catalogue::{Grows, Kind, Quantity, StepRule};
use exercises::file_fault::{ExerciseFault, FaultKind};

/// The largest share of a value that one step adds, in percent.
const MAX_PERCENT: i64 = 50;

/// The word for the next level, in place of a field of the dose.
const LEVEL: &str = "level";

/// The step rules of an exercise; empty if it has none. A test has none, because no step changes it.
pub(super) fn rules(top: &Table, kind: Option<Kind>, test: Option<bool>) -> Option<Vec<StepRule>> {
    let Some(item) = top.optional("step") else {
        return Some(Vec::new());
    };
    if test == Some(true) {
        top.fault("step", FaultKind::Exercise(ExerciseFault::StepOfTest));
    }
    let kind = kind?;
    whole(item.tables(Quantity::StepRules)?.iter().map(|table| rule(table, kind)))
}

fn rule(table: &Table, kind: Kind) -> Option<StepRule> {
    let basis = table.word("basis");
    let grows = table.required("grows").and_then(|item| {
        if item.text()? == LEVEL {
            table.only(&["grows", "basis"]);
            return Some(Grows::Level);
        }
        table.only(&["grows", "by", "percent", "to", "basis"]);
        of_dose(table, &field(&item, kind)?, kind)
    });
    Some(StepRule { grows: grows?, basis: basis? })
}

/// The field of the dose that grows: one of those that steps of this kind change.
fn field(item: &Item, kind: Kind) -> Option<DoseField> {
    let changed = |field: &&DoseField| kind.rules().back().iter().any(|(quantity, _)| *quantity == field.quantity);
    let fields: Vec<DoseField> = kind.rules().fields().iter().filter(changed).copied().collect();
    let found = item.text()?;
    let field = fields.iter().find(|field| field.key == found).copied();
    if field.is_none() {
        let allowed = fields.iter().map(|field| field.key).chain([LEVEL]).map(str::to_owned).collect();
        item.fault(FaultKind::UnknownWord { found: quoted(found), allowed });
    }
    field
}

fn of_dose(table: &Table, field: &DoseField, kind: Kind) -> Option<Grows> {
    let bound = field.quantity.bound();
    let by = table.required("by").and_then(|item| item.between(1, bound.max));
    let percent = table.optional("percent").map_or(Some(0), |item| item.between(1, MAX_PERCENT));
    let most = table.required("to").and_then(|item| item.number(field.quantity));
    let by = i16::try_from(by?).ok()?;
    let percent = u8::try_from(percent?).ok()?;
    let short_if_often = kind.rules().forward().iter().all(|step| step.short_if_often);
    Some(Grows::Dose(StepForward { quantity: field.quantity, by, percent, most: most?, short_if_often }))
}
