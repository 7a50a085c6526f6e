//! What was measured.

use super::codes::{NOT_APPLICABLE, OF_ACTIVITY, OF_SURVEY, PAIN, UCUM};
use super::elements::{CodeableConcept, Coding, Component, Identifier, Observation, Quantity, Reference, Resource};
use super::{Facts, Known, Named, order, plan, timing};
use crate::measures::{About, Amount, Code, Measure, Part, PartCode, Unit, Value};
use crate::names;
use exercises::alarm::Trouble;
use serde_json::Number;

/// The name of what was measured, which follows from what it is and when it was.
pub(super) fn name(facts: &Facts<'_>, measure: &Measure) -> Identifier {
    let item = measure.item.map(|item| format!("/item-{item}")).unwrap_or_default();
    let which = if measure.which.is_empty() { String::new() } else { format!("/{}", measure.which) };
    facts.name(&format!("{}{item}{which}", measure.code.name()))
}

pub(super) fn one(facts: &Facts<'_>, measure: &Measure) -> Named {
    let name = name(facts, measure);
    let mut observation = Observation {
        identifier: vec![name.clone()],
        based_on: vec![Reference::to(&based_on(facts, measure))],
        status: if measure.goes_on { "preliminary" } else { "final" },
        category: vec![category(measure.code), plan::home_exercise()],
        code: CodeableConcept { coding: codings(measure.code), text: said(facts, measure) },
        subject: facts.patient(),
        performer: vec![facts.patient()],
        method: measure.method.map(|method| method.coding().into()),
        device: Some(facts.device()),
        component: measure.parts.iter().map(component).collect(),
        ..Observation::default()
    };
    when(&mut observation, measure);
    value(&mut observation, facts, measure);
    place(&mut observation, facts, measure);
    Named { name, resource: Resource::Observation(observation), known: Known::Replaced }
}

fn based_on(facts: &Facts<'_>, measure: &Measure) -> Identifier {
    let item = measure.item.filter(|item| order::is_known(facts, *item));
    item.map_or_else(|| facts.plan_name(), |item| facts.order_name(item))
}

fn category(code: Code) -> CodeableConcept {
    match code {
        Code::MorningPain | Code::DuringPain | Code::Activity | Code::Alarm | Code::Reasons => OF_SURVEY.concept(),
        _ => OF_ACTIVITY.concept(),
    }
}

/// A rating of the pain in the morning is what its LOINC code says; for nothing else measured here is there a code that fits.
fn codings(code: Code) -> Vec<Coding> {
    let known = (code == Code::MorningPain).then(|| PAIN.coding());
    known.into_iter().chain([code.coding()]).collect()
}

fn said(facts: &Facts<'_>, measure: &Measure) -> String {
    let of = match measure.about {
        About::Plan => None,
        About::Complaint(complaint) => Some(facts.texts.complaint(complaint)),
        About::Activity(activity) => Some(facts.texts.activity(activity)),
        About::Exercise => match (measure.item, &measure.exercise) {
            (Some(item), _) => Some(facts.texts.item(item)),
            (None, exercise) => exercise.as_ref().map(|exercise| facts.texts.exercise(exercise)),
        },
    };
    facts.texts.measured(measure.code, of.as_deref())
}

fn when(observation: &mut Observation, measure: &Measure) {
    match measure.days {
        Some((from, to)) if from == to => observation.effective_date_time = from.to_string(),
        Some((from, to)) => observation.effective_period = Some(timing::period(from, to)),
        None => {}
    }
}

fn value(observation: &mut Observation, facts: &Facts<'_>, measure: &Measure) {
    let Written { quantity, concept, yes } = written(measure.value);
    observation.value_quantity = quantity;
    observation.value_boolean = yes;
    observation.value_codeable_concept = concept.map(|concept| {
        let trouble = match measure.value {
            Value::One(choice) => names::find::<Trouble>(choice.value).filter(|_| measure.code == Code::Alarm),
            _ => None,
        };
        CodeableConcept { text: trouble.map(|trouble| facts.texts.alarm(trouble)).unwrap_or_default(), ..concept }
    });
    if measure.value == Value::NonePlanned {
        observation.data_absent_reason = Some(NOT_APPLICABLE.concept());
    }
}

/// A leg with its side, or a complaint in the clinician's words.
fn place(observation: &mut Observation, facts: &Facts<'_>, measure: &Measure) {
    observation.body_site = match (measure.code, measure.side, measure.about) {
        (Code::OneLegStance, Some(side), _) => Some(order::leg_of(facts, side)),
        (_, _, About::Complaint(complaint)) => Some(CodeableConcept::said(facts.texts.complaint(complaint))),
        _ => None,
    };
}

fn component(part: &Part) -> Component {
    let coding = match part.code {
        PartCode::Of(code) => code.coding(),
        PartCode::Chosen(choice) => choice.coding(),
    };
    let Written { quantity, concept, yes } = written(part.value);
    Component { code: coding.into(), value_quantity: quantity, value_codeable_concept: concept, value_boolean: yes }
}

/// A value in the one element that is for its type.
#[derive(Default)]
struct Written {
    quantity: Option<Quantity>,
    concept: Option<CodeableConcept>,
    yes: Option<bool>,
}

fn written(value: Value) -> Written {
    match value {
        Value::Amount(amount, unit) => Written { quantity: Some(quantity(amount, unit)), ..Written::default() },
        Value::AtLeast(amount, unit) => {
            let quantity = Quantity { comparator: Some(">="), ..quantity(amount, unit) };
            Written { quantity: Some(quantity), ..Written::default() }
        }
        Value::One(choice) => Written { concept: Some(choice.coding().into()), ..Written::default() },
        Value::Yes(yes) => Written { yes: Some(yes), ..Written::default() },
        Value::NonePlanned | Value::Parts => Written::default(),
    }
}

fn quantity(amount: Amount, unit: Unit) -> Quantity {
    let (unit, code) = match unit {
        Unit::One => ("1", "1"),
        Unit::Percent => ("%", "%"),
        Unit::Days => ("d", "d"),
        Unit::Seconds => ("s", "s"),
        Unit::Score => ("{score}", "{score}"),
    };
    Quantity { value: Some(number(amount)), comparator: None, unit, system: UCUM, code }
}

/// A whole number without a point: what was counted is not more exact than that.
fn number(amount: Amount) -> Number {
    match amount {
        Amount::Whole(whole) => whole.into(),
        Amount::Tenths(tenths) if tenths.is_multiple_of(10) => (tenths / 10).into(),
        Amount::Tenths(tenths) => Number::from_f64(f64::from(tenths) / 10.0).unwrap_or_else(|| 0.into()),
    }
}
