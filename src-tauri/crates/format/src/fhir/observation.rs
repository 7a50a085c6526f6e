//! What was measured.

use super::codes::{self, NOT_APPLICABLE, OF_ACTIVITY, OF_EXAM, OF_SURVEY, PAIN, UCUM};
use super::elements::{CodeableConcept, Coding, Component, Identifier, Observation, Quantity, Reference, Resource};
use super::{Facts, Known, Named, order, plan, timing};
use crate::measures::{About, Amount, Code, Measure, Part, PartCode, State, Unit, Value};
use crate::names;
use exercises::alarm::Trouble;
use exercises::plan::{BodySide, Side};
use serde_json::Number;

/// The name of what was measured, which follows from what it is and when it was.
pub(super) fn name(facts: &Facts<'_>, measure: &Measure) -> Identifier {
    // A visit is the patient's and not of one plan: a plan begun later has the same visits.
    if measure.at_visit {
        return facts.name_at_visit(&measure.which);
    }
    let item = measure.item.map(|item| format!("/item-{item}")).unwrap_or_default();
    let which = if measure.which.is_empty() { String::new() } else { format!("/{}", measure.which) };
    facts.name(&format!("{}{item}{which}", measure.code.name()))
}

pub(super) fn one(facts: &Facts<'_>, measure: &Measure) -> Named {
    let name = name(facts, measure);
    let mut observation = Observation {
        identifier: vec![name.clone()],
        based_on: based_on(facts, measure).iter().map(Reference::to).collect(),
        status: status(measure.state),
        category: vec![category(measure.code), plan::home_exercise()],
        code: CodeableConcept { coding: codings(measure.code), text: said(facts, measure) },
        subject: facts.patient(),
        performer: vec![if is_said_by_patient(measure) { facts.patient() } else { facts.clinic() }],
        method: measure.method.map(|method| method.coding().into()),
        device: (!measure.at_visit).then(|| facts.device()),
        component: measure.parts.iter().map(component).chain(side(facts, measure)).collect(),
        ..Observation::default()
    };
    when(&mut observation, measure);
    value(&mut observation, facts, measure);
    place(&mut observation, facts, measure);
    Named { name, resource: Resource::Observation(observation), known: Known::Replaced }
}

fn status(state: State) -> &'static str {
    match state {
        State::Final => "final",
        State::GoesOn => "preliminary",
        State::Corrected => "corrected",
        State::TakenBack => "entered-in-error",
    }
}

/// What is measured at home belongs to the plan; what is found at a visit only to an item that it is about.
fn based_on(facts: &Facts<'_>, measure: &Measure) -> Option<Identifier> {
    let item = measure.item.filter(|item| order::is_known(facts, *item));
    item.map(|item| facts.order_name(item)).or_else(|| (!measure.at_visit).then(|| facts.plan_name()))
}

fn is_said_by_patient(measure: &Measure) -> bool {
    !measure.at_visit || matches!(measure.code, Code::VisitPain | Code::VisitChange | Code::VisitMovementPain)
}

fn category(code: Code) -> CodeableConcept {
    match code {
        Code::MorningPain | Code::DuringPain | Code::Activity | Code::Alarm | Code::Reasons => OF_SURVEY.concept(),
        Code::VisitPain | Code::VisitChange | Code::VisitMovementPain | Code::VisitScreening => OF_SURVEY.concept(),
        _ if code.is_of_visit() => OF_EXAM.concept(),
        _ => OF_ACTIVITY.concept(),
    }
}

/// A rating of the pain in the morning is what its LOINC code says; for nothing else measured here is there a code that fits. A rating at a
/// visit would fit it as well, but then a reader who goes by that code would mix it into the series from home.
fn codings(code: Code) -> Vec<Coding> {
    let known = (code == Code::MorningPain).then(|| PAIN.coding());
    known.into_iter().chain([code.coding()]).collect()
}

fn said(facts: &Facts<'_>, measure: &Measure) -> String {
    let of = match &measure.about {
        About::Plan => None,
        About::Complaint(complaint) => Some(facts.texts.complaint(*complaint)),
        About::Activity(activity) => Some(facts.texts.activity(*activity)),
        About::Place(region, side) => Some(facts.texts.place(*region, *side)),
        About::Called(name) => Some(name.clone()),
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
    let Written { quantity, concept, yes, said } = written(&measure.value);
    observation.value_quantity = quantity;
    observation.value_boolean = yes;
    observation.value_string = said;
    observation.value_codeable_concept = concept.map(|concept| {
        let trouble = match measure.value {
            Value::One(choice) => names::find::<Trouble>(choice.value).filter(|_| measure.code == Code::Alarm),
            _ => None,
        };
        CodeableConcept { text: trouble.map(|trouble| facts.texts.alarm(trouble)).unwrap_or_default(), ..concept }
    });
    if measure.value == Value::NonePlanned || measure.state == State::TakenBack {
        observation.data_absent_reason = Some(NOT_APPLICABLE.concept());
    }
}

/// A leg with its side, another side of the body, or a complaint in the clinician's words.
fn place(observation: &mut Observation, facts: &Facts<'_>, measure: &Measure) {
    observation.body_site = match (measure.code, measure.side, &measure.about) {
        (Code::OneLegStance | Code::VisitStance, Some(side), _) => Some(order::leg_of(facts, side)),
        (_, _, About::Complaint(complaint)) => Some(CodeableConcept::said(facts.texts.complaint(*complaint))),
        (_, _, About::Place(region, side)) => Some(CodeableConcept::said(facts.texts.place(*region, *side))),
        _ => None,
    };
}

/// The side of what is measured at a visit on other parts of the body than a leg: no code of a body site says "the left of it".
fn side(facts: &Facts<'_>, measure: &Measure) -> Option<Component> {
    let side = measure.side.filter(|_| measure.at_visit && measure.code != Code::VisitStance)?;
    let side = match side {
        BodySide::Left => Side::Left,
        BodySide::Right => Side::Right,
    };
    let value = CodeableConcept::new(codes::side(side)?.coding(), facts.texts.side(side));
    Some(Component { code: Code::VisitSide.coding().into(), value_codeable_concept: Some(value), ..Component::default() })
}

fn component(part: &Part) -> Component {
    let coding = match part.code {
        PartCode::Of(code) => code.coding(),
        PartCode::Chosen(choice) => choice.coding(),
    };
    let Written { quantity, concept, yes, said } = written(&part.value);
    Component {
        code: coding.into(),
        value_quantity: quantity,
        value_codeable_concept: concept,
        value_boolean: yes,
        value_string: said,
    }
}

/// A value in the one element that is for its type.
#[derive(Default)]
struct Written {
    quantity: Option<Quantity>,
    concept: Option<CodeableConcept>,
    yes: Option<bool>,
    said: String,
}

fn written(value: &Value) -> Written {
    match value {
        Value::Amount(amount, unit) => Written { quantity: Some(quantity(*amount, unit)), ..Written::default() },
        Value::AtLeast(amount, unit) => {
            let quantity = Quantity { comparator: Some(">="), ..quantity(*amount, unit) };
            Written { quantity: Some(quantity), ..Written::default() }
        }
        Value::One(choice) => Written { concept: Some(choice.coding().into()), ..Written::default() },
        Value::Yes(yes) => Written { yes: Some(*yes), ..Written::default() },
        Value::Text(said) => Written { said: said.clone(), ..Written::default() },
        Value::NonePlanned | Value::Parts => Written::default(),
    }
}

fn quantity(amount: Amount, unit: &Unit) -> Quantity {
    let value = Some(number(amount));
    let code = match unit {
        Unit::One => "1",
        Unit::Percent => "%",
        Unit::Days => "d",
        Unit::Seconds => "s",
        Unit::Score => "{score}",
        Unit::Degrees => "deg",
        Unit::Kilograms => "kg",
        // What a clinician writes need not be a unit of UCUM.
        Unit::Other(written) => return Quantity { value, unit: written.clone(), ..Quantity::default() },
    };
    Quantity { value, comparator: None, unit: code.to_owned(), system: UCUM, code }
}

/// A whole number without a point: what was counted is not more exact than that.
fn number(amount: Amount) -> Number {
    match amount {
        Amount::Whole(whole) => whole.into(),
        Amount::Tenths(tenths) if tenths % 10 == 0 => (tenths / 10).into(),
        Amount::Tenths(tenths) => Number::from_f64(f64::from(tenths) / 10.0).unwrap_or_else(|| 0.into()),
    }
}
