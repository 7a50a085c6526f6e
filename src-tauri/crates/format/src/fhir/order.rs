//! The items of the plan as orders.

use super::codes::{self, EXERCISES, UCUM};
use super::elements::{CodeableConcept, Coding, Extension, Quantity, Resource, ServiceRequest};
use super::{Facts, Known, Named, plan, timing};
use crate::names::name;
use chrono::NaiveDate;
use exercises::catalogue::{Exercise, Quantity as Amount, Region, Unit};
use exercises::id::ItemId;
use exercises::plan::{BodySide, Item, Load, PhaseState, Plan};
use std::collections::BTreeSet;

/// What FHIR has no elements for: the dose in its parts, the load, the level.
const DOSE: &str = "urn:uuid:9d2f6a1e-1c0b-4e43-8f0e-2b7d5c3a9e58";

/// An order for each item of the plan, and for each that an earlier card had: what was measured of it belongs to it.
pub(super) fn all(facts: &Facts<'_>) -> Vec<Named> {
    let mut known: BTreeSet<ItemId> = BTreeSet::new();
    let items = facts.revisions().flat_map(|plan| plan.prescription.items.iter().map(move |item| (plan, item)));
    items.filter(|(_, item)| known.insert(item.id)).map(|(plan, item)| order(facts, plan, item)).collect()
}

fn order(facts: &Facts<'_>, plan: &Plan, item: &Item) -> Named {
    let order = facts.order_name(item.id);
    let exercise = facts.exercise(&item.exercise);
    let last = until(facts, plan);
    // An item is ordered since the first card that has it.
    let issued = facts.revisions().filter(|plan| plan.item(item.id).is_some()).map(|plan| plan.header.issued).min();
    let bounds = timing::bounds(item, issued.unwrap_or(plan.header.issued), last);
    let (body_site, order_detail) = sides(facts, item, exercise);
    let as_needed = item.schedule.is_as_needed();
    let request = ServiceRequest {
        extension: vec![dose(item)],
        identifier: vec![order.clone()],
        status: status(facts, item),
        intent: "order",
        category: vec![plan::home_exercise()],
        code: code(facts, item, exercise),
        order_detail,
        subject: facts.patient(),
        occurrence_period: as_needed.then(|| bounds.clone()),
        occurrence_timing: timing::timing(item, bounds, facts.texts.due(item)),
        as_needed_boolean: as_needed.then_some(true),
        authored_on: plan.header.issued.to_string(),
        performer: vec![facts.patient()],
        body_site,
        patient_instruction: facts.texts.instruction(item),
    };
    Named { name: order, resource: Resource::ServiceRequest(request), known: Known::Replaced }
}

/// The last day of a card: that of the next visit, or that of the card which came before.
fn until(facts: &Facts<'_>, plan: &Plan) -> NaiveDate {
    let later = facts.revisions().map(|plan| &plan.header).filter(|header| header.revision > plan.header.revision);
    later.map(|header| header.issued).chain([plan.prescription.review]).min().unwrap_or(plan.prescription.review)
}

/// Active, completed once its phase is over, revoked once the newest card no longer has it.
fn status(facts: &Facts<'_>, item: &Item) -> &'static str {
    if facts.plan.is_none_or(|plan| plan.item(item.id).is_none()) {
        return "revoked";
    }
    match item.phase.on(facts.at.date()) {
        PhaseState::Over(_) => "completed",
        PhaseState::ToCome(_) | PhaseState::Now => "active",
    }
}

fn code(facts: &Facts<'_>, item: &Item, exercise: Option<&Exercise>) -> CodeableConcept {
    let id = Coding { system: EXERCISES, code: item.exercise.to_string(), display: String::new() };
    let known = exercise.and_then(|exercise| codes::therapy(&exercise.purposes));
    let coding = known.map(codes::Known::coding).into_iter().chain([id]).collect();
    CodeableConcept { coding, text: facts.texts.item(item.id) }
}

/// Legs are body sites with their side; elsewhere the side is a detail of the order, because no code says "the left of it".
fn sides(facts: &Facts<'_>, item: &Item, exercise: Option<&Exercise>) -> (Vec<CodeableConcept>, Vec<CodeableConcept>) {
    let leg = exercise.is_some_and(|exercise| {
        matches!(exercise.region, Region::Hip | Region::Knee | Region::Ankle) || exercise.kind.is_by_leg()
    });
    let sides = item.side.in_turn().iter().flatten();
    if leg {
        return (sides.map(|side| leg_of(facts, *side)).collect(), Vec::new());
    }
    let side = codes::side(item.side);
    let side = side.map(|side| CodeableConcept::new(side.coding(), facts.texts.side(item.side)));
    (Vec::new(), side.into_iter().collect())
}

/// A leg as a body site.
pub(super) fn leg_of(facts: &Facts<'_>, side: BodySide) -> CodeableConcept {
    CodeableConcept::new(codes::leg(side).coding(), facts.texts.leg(side))
}

/// The dose by its fields, as a plan file names them.
fn dose(item: &Item) -> Extension {
    let fields = item.dose.fields().iter().zip(item.dose.values());
    let mut parts: Vec<Extension> = fields.map(|(field, value)| amount(field.key, field.quantity, value)).collect();
    parts.insert(0, word("kind", item.dose.kind().rules().name()));
    parts.push(word("side", name(&item.side)));
    parts.extend(item.rung.iter().map(|level| word("level", &level.to_string())));
    parts.extend(item.load.map(load));
    parts.extend(item.effort.map(|effort| measured("effort", u32::from(effort.points()).into(), ("{score}", "{score}"))));
    parts.push(measured("pain-limit", u32::from(item.pain_limit.points()).into(), ("{score}", "{score}")));
    Extension { url: DOSE, extension: parts, ..Extension::default() }
}

fn word(url: &'static str, value: &str) -> Extension {
    Extension { url, value_code: value.to_owned(), ..Extension::default() }
}

fn amount(url: &'static str, quantity: Amount, value: i64) -> Extension {
    let unit = match (quantity, quantity.bound().unit) {
        (Amount::BeatsPerMinute, _) => ("/min", "/min"),
        (Amount::Effort, _) => ("{score}", "{score}"),
        (_, Unit::Seconds) => ("s", "s"),
        (_, Unit::Minutes) => ("min", "min"),
        _ => ("1", "1"),
    };
    measured(url, value.into(), unit)
}

fn load(load: Load) -> Extension {
    match load {
        Load::Weight(weight) => {
            let kilograms = serde_json::Number::from_f64(weight.kilograms());
            measured("weight", kilograms.unwrap_or_else(|| 0.into()), ("kg", "kg"))
        }
        Load::Band(band) => word("band", name(&band)),
    }
}

fn measured(url: &'static str, value: serde_json::Number, (unit, code): (&'static str, &'static str)) -> Extension {
    let quantity = Quantity { value: Some(value), comparator: None, unit: unit.to_owned(), system: UCUM, code };
    Extension { url, value_quantity: Some(quantity), ..Extension::default() }
}

/// The item that a measure belongs to has an order only if a card had it.
pub(super) fn is_known(facts: &Facts<'_>, item: ItemId) -> bool {
    facts.revisions().any(|plan| plan.item(item).is_some())
}
