//! What a review measured, as one long table for a spreadsheet or a statistics program.
//!
//! A line holds one value. The columns, which are for good:
//!
//! | column | what it holds |
//! | --- | --- |
//! | `patient` | the clinic's code of the patient |
//! | `item` | the number of the plan's item |
//! | `exercise` | the id of the exercise |
//! | `level` | the id of its level |
//! | `side` | `left` or `right`, if one side is meant; of a complaint at a visit also `both` |
//! | `about` | the complaint or the activity, in the words of the plan; at a visit the region of the body, the movement, or what was measured |
//! | `from`, `to` | the first and the last day, `YYYY-MM-DD`; of a week the days that are covered |
//! | `measure` | the name of what was measured ([`crate::measures::Code`]); of a reason for skipping `reason-` and its name |
//! | `value` | a number with a decimal point, a word, or `yes` and `no` |
//! | `unit` | `%` `d` `s` `deg` `kg` `score` (0 to 10, of a change -5 to 5) or `count`; of a clinician's own measure as it was written; empty for words |
//! | `note` | `at-least`: the measuring ended before, so that the true value may be larger; `none-planned`: there is no share of nothing; `eyes-open`, `eyes-closed`: how it was done; `week-not-over`: a later review will say more of the week; `corrected`: of what was found at a visit |
//!
//! Parts of what was measured, such as the sessions planned in a week, follow it on lines of their own with the same first columns.
//! What was found at a visit stands after what was recorded at home and has names of its own (`visit-…`); what was taken back is left out.
//! An empty cell means "not known" or "does not apply". A text that a spreadsheet would take for a formula begins with an apostrophe.

use crate::measures::{self, About, Amount, Measure, PartCode, Reviewed, State, Unit, Value};
use crate::names::name;
use crate::spreadsheet::{some, table, text};
use exercises::id::{ActivityId, ComplaintId};
use exercises::plan::{Plan, Prescription, Side};
use exercises::review::Review;
use exercises::visit::Visit;

/// The header.
const COLUMNS: [&str; 12] =
    ["patient", "item", "exercise", "level", "side", "about", "from", "to", "measure", "value", "unit", "note"];

/// A patient's review with the plans that it is about.
#[derive(Debug, Clone, Copy)]
pub struct Reported<'a> {
    /// The clinic's code of the patient.
    pub code: &'a str,
    /// The plan in force, once there is one.
    pub plan: Option<&'a Plan>,
    /// Its earlier revisions, newest first.
    pub earlier: &'a [Plan],
    /// The review; `None` before any summary was received.
    pub review: Option<&'a Review>,
    /// What was found at visits, the newest first.
    pub visits: &'a [Visit],
}

/// The table of these patients, with one header.
pub fn write(patients: &[Reported<'_>]) -> Vec<u8> {
    table(COLUMNS, patients.iter().flat_map(lines))
}

fn lines(of: &Reported<'_>) -> Vec<[String; 12]> {
    let home = of.review.zip(of.plan).map(|(review, plan)| measures::all(Reviewed { review, plan, earlier: of.earlier }));
    let plans: Vec<&Plan> = of.plan.into_iter().chain(of.earlier).collect();
    let visits = measures::at_visits(of.visits, &[], &plans);
    home.unwrap_or_default().iter().chain(&visits).flat_map(|measure| of_measure(of, measure)).collect()
}

fn of_measure(of: &Reported<'_>, measure: &Measure) -> Vec<[String; 12]> {
    let method = measure.method.map(|method| method.code()).unwrap_or_default();
    let state = match measure.state {
        State::GoesOn => "week-not-over",
        State::Corrected => "corrected",
        State::Final | State::TakenBack => "",
    };
    let whole = (measure.value != Value::Parts).then(|| (measure.code.name().to_owned(), &measure.value));
    let parts = measure.parts.iter().map(|part| (part_name(part.code), &part.value));
    let one = |(what, value): (String, &Value)| {
        let (value, unit, note) = cells(value);
        let note = [note, &method, state].into_iter().filter(|note| !note.is_empty()).collect::<Vec<_>>().join(" ");
        [
            text(of.code),
            some(measure.item),
            some(measure.exercise.as_ref()),
            some(measure.level.as_ref()),
            side(measure).to_owned(),
            about(of, &measure.about).map(|about| text(&about)).unwrap_or_default(),
            some(measure.days.map(|(from, _)| from)),
            some(measure.days.map(|(_, to)| to)),
            what,
            value,
            unit,
            note,
        ]
    };
    whole.into_iter().chain(parts).map(one).collect()
}

fn part_name(part: PartCode) -> String {
    match part {
        PartCode::Of(code) => code.name().to_owned(),
        PartCode::Chosen(choice) => choice.code(),
    }
}

fn side(measure: &Measure) -> &'static str {
    match &measure.about {
        About::Place(_, side) if *side != Side::Neither => name(side),
        _ => measure.side.as_ref().map_or("", name),
    }
}

/// Value, unit and note.
fn cells(value: &Value) -> (String, String, &'static str) {
    match value {
        Value::Amount(amount, of) => (number(*amount), unit(of), ""),
        Value::AtLeast(amount, of) => (number(*amount), unit(of), "at-least"),
        Value::One(choice) => (choice.value.to_owned(), String::new(), ""),
        Value::Yes(yes) => (if *yes { "yes" } else { "no" }.to_owned(), String::new(), ""),
        Value::Text(said) => (text(said), String::new(), ""),
        Value::NonePlanned => (String::new(), unit(&Unit::Percent), "none-planned"),
        Value::Parts => (String::new(), String::new(), ""),
    }
}

fn number(amount: Amount) -> String {
    match amount {
        Amount::Whole(whole) => whole.to_string(),
        Amount::Tenths(tenths) => {
            let sign = if tenths < 0 { "-" } else { "" };
            format!("{sign}{}.{}", tenths.abs() / 10, tenths.abs() % 10)
        }
    }
}

fn unit(unit: &Unit) -> String {
    let known = match unit {
        Unit::One => "count",
        Unit::Percent => "%",
        Unit::Days => "d",
        Unit::Seconds => "s",
        Unit::Score => "score",
        Unit::Degrees => "deg",
        Unit::Kilograms => "kg",
        Unit::Other(written) => return text(written),
    };
    known.to_owned()
}

/// The complaint or activity, from the newest card that has it; what a finding is about.
fn about(of: &Reported<'_>, about: &About) -> Option<String> {
    let mut plans = of.plan.into_iter().chain(of.earlier).map(|plan| &plan.prescription);
    match about {
        About::Plan | About::Exercise => None,
        About::Complaint(id) => plans.find_map(|plan| complaint(plan, *id)),
        About::Activity(id) => plans.find_map(|plan| activity(plan, *id)),
        About::Place(region, _) => Some(name(region).to_owned()),
        About::Called(called) => Some(called.clone()),
    }
}

fn complaint(plan: &Prescription, id: ComplaintId) -> Option<String> {
    plan.complaints.iter().find(|one| one.id == id).map(|one| one.name.clone())
}

fn activity(plan: &Prescription, id: ActivityId) -> Option<String> {
    plan.activities.iter().find(|one| one.id == id).map(|one| one.name.clone())
}
