//! One patient's plan and review as HL7 FHIR R4 (4.0.1), for medical records.
//!
//! One model is written in two forms. A *collection* is a file to hand over. A *transaction* is sent to the base address of a server. What
//! is written is what DEVELOPERS.md says in its chapter on records: the plan as a `CarePlan` with a `ServiceRequest` for each item, what
//! was measured as `Observation`s of weeks and days, and from whom and what it comes as `Provenance`. Single sessions are left out.
//!
//! Names of resources follow from plan, item and day, so that the same review gives the same file, and importing it twice or a later one
//! after it doubles nothing: a server looks for the name ([`transaction`]).

pub mod answer;
mod codes;
mod elements;
mod names;
mod observation;
mod order;
mod plan;
mod provenance;
mod timing;

use crate::measures::{self, Code, Measure, Reviewed};
use chrono::NaiveDate;
use elements::{Bundle, Entry, Identifier, Reference, Request, Resource};
use exercises::alarm::Trouble;
use exercises::catalogue::{Exercise, ExerciseId, Region};
use exercises::id::{ActivityId, ComplaintId, ItemId, LogId};
use exercises::plan::{BodySide, Item, Plan, Side};
use exercises::review::Review;
use exercises::time::Stamp;
use exercises::visit::{TakenBack, Visit};
use std::collections::BTreeSet;

/// Milliseconds of a minute.
const MINUTE_MS: i64 = 60_000;

/// What is to be written, and what only the caller knows of it.
pub struct Facts<'a> {
    /// What tells this clinic from others, and stays.
    pub clinic: &'a str,
    /// The clinic's code of the patient.
    pub code: &'a str,
    /// The patient's name, if it is to be in the file.
    pub name: Option<&'a str>,
    /// When the file is made.
    pub at: Stamp,
    /// The program's version.
    pub version: &'a str,
    /// The language of the texts, as BCP 47 has it.
    pub language: &'a str,
    /// The clinic's name.
    pub practice: &'a str,
    /// The plan in force, once there is one.
    pub plan: Option<&'a Plan>,
    /// Its earlier revisions, newest first.
    pub earlier: &'a [Plan],
    /// The exercises of all their items.
    pub exercises: &'a [Exercise],
    /// The review; `None` before any summary was received.
    pub review: Option<&'a Review>,
    /// The summaries that it was made of.
    pub sources: &'a [Source],
    /// What was found at visits, the newest first.
    pub visits: &'a [Visit],
    /// Findings that were taken back: they are sent as entered in error, because the server may have them.
    pub taken_back: &'a [TakenBack],
    /// What people read.
    pub texts: &'a dyn Texts,
}

/// A summary that was received.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Source {
    /// The log that it summarises.
    pub log: LogId,
    /// Its number within that log.
    pub counter: u32,
    /// Its contents, of which the hash is written.
    pub contents: Vec<u8>,
}

/// The texts for people, in the language of the file.
pub trait Texts {
    /// What the plan is called.
    fn plan(&self) -> String;
    /// The exercise of an item, with its side if it has one.
    fn item(&self, item: ItemId) -> String;
    /// The name of an exercise that no item has any more.
    fn exercise(&self, exercise: &ExerciseId) -> String;
    /// What the patient is to do: dose, side, load, when, the clinician's note.
    fn instruction(&self, item: &Item) -> String;
    /// When an item is due.
    fn due(&self, item: &Item) -> String;
    /// A side of the body, or both.
    fn side(&self, side: Side) -> String;
    /// A leg.
    fn leg(&self, leg: BodySide) -> String;
    /// A region of the body with its side.
    fn place(&self, region: Region, side: Side) -> String;
    /// A complaint.
    fn complaint(&self, complaint: ComplaintId) -> String;
    /// An activity that the patient named.
    fn activity(&self, activity: ActivityId) -> String;
    /// What was measured, and of what: "Pain in the morning: upper back".
    fn measured(&self, code: Code, of: Option<&str>) -> String;
    /// A warning sign.
    fn alarm(&self, trouble: Trouble) -> String;
}

/// A resource with the name that stays.
struct Named {
    name: Identifier,
    resource: Resource,
    /// How a server finds it.
    known: Known,
}

impl Named {
    /// Whether it is the same for all patients. Of anything else two of one name would be a fault, which validators find.
    fn is_shared(&self) -> bool {
        matches!(self.resource, Resource::Device(_) | Resource::CodeSystem(_))
    }
}

/// How a server knows that it has a resource already.
enum Known {
    /// By its name; what is there stays as it is.
    Kept,
    /// By its name; what is there is replaced, because a later review knows more of the same week.
    Replaced,
    /// By this id, which it keeps on the server, because it has no name there.
    ById(String),
    /// Not at all: it is only for files.
    FileOnly,
}

/// A file to hand over, about one patient or several.
pub fn collection(patients: &[Facts<'_>]) -> String {
    written(patients, "collection", |_| Some(None))
}

/// What a server is asked to take in.
///
/// The patient and the program are added only if they are not there. The plan, its items, goals and what was measured are replaced, since
/// a later card changes an item and a later review knows more of a week; so is what says where they come from. The meaning of our own
/// codes is left out: few servers of records let others add terms, and one refusal would refuse everything.
pub fn transaction(patients: &[Facts<'_>]) -> String {
    written(patients, "transaction", |named| request(named).map(Some))
}

fn request(named: &Named) -> Option<Request> {
    let kind = named.resource.kind();
    let search = format!("identifier={}", named.name.search());
    let added = |if_none_exist| Request { method: "POST", url: kind.to_owned(), if_none_exist };
    match &named.known {
        Known::Kept => Some(added(search)),
        Known::ById(id) => Some(Request { method: "PUT", url: format!("{kind}/{id}"), if_none_exist: String::new() }),
        Known::Replaced => Some(Request { method: "PUT", url: format!("{kind}?{search}"), if_none_exist: String::new() }),
        Known::FileOnly => None,
    }
}

/// Writes the resources that `request` takes, those that are the same for all patients once.
fn written(patients: &[Facts<'_>], kind: &'static str, request: impl Fn(&Named) -> Option<Option<Request>>) -> String {
    let mut known: BTreeSet<String> = BTreeSet::new();
    let all = patients.iter().flat_map(resources);
    let all = all.filter(|named| !named.is_shared() || known.insert(named.name.full_url()));
    let entries = all.filter_map(|named| {
        let request = request(&named)?;
        Some(Entry { full_url: named.name.full_url(), resource: Some(named.resource), request })
    });
    let first = patients.first();
    let bundle = Bundle {
        resource_type: "Bundle",
        language: first.map(|facts| facts.language.to_owned()).unwrap_or_default(),
        r#type: kind,
        timestamp: first.map(Facts::recorded).unwrap_or_default(),
        entry: entries.collect(),
    };
    let text = serde_json::to_string_pretty(&bundle).expect("texts and numbers are always written");
    format!("{text}\n")
}

/// All resources.
fn resources(facts: &Facts<'_>) -> Vec<Named> {
    let reviewed = facts.review.zip(facts.plan).map(|(review, plan)| Reviewed { review, plan, earlier: facts.earlier });
    let measures: Vec<Measure> = reviewed.map(measures::all).unwrap_or_default();
    let mut all = vec![provenance::patient(facts), provenance::device(facts)];
    all.extend(plan::care_plan(facts));
    all.extend(order::all(facts));
    all.extend(plan::goals(facts, &measures));
    let observations: Vec<Named> = measures.iter().map(|measure| observation::one(facts, measure)).collect();
    let origins = provenance::of_plan(facts, &all).into_iter().chain(provenance::of_measures(facts, &observations));
    let origins: Vec<Named> = origins.collect();
    let found = found(facts);
    let of_visits = provenance::of_visits(facts, &found);
    all.extend(observations);
    all.extend(origins);
    all.extend(found.into_iter().map(|(_, named)| named));
    all.extend(of_visits);
    let codes = Identifier::new(codes::OWN, "codes");
    all.push(Named { name: codes, resource: Resource::CodeSystem(codes::own()), known: Known::FileOnly });
    all
}

/// What was found at visits, with their days.
fn found(facts: &Facts<'_>) -> Vec<(NaiveDate, Named)> {
    let plans: Vec<&Plan> = facts.revisions().collect();
    let all = measures::at_visits(facts.visits, facts.taken_back, &plans);
    all.iter().filter_map(|measure| Some((measure.days?.0, observation::one(facts, measure)))).collect()
}

impl Facts<'_> {
    /// The name of something of a visit, which outlives the plan. It follows from the number of an entry: a clinic whose store was put back
    /// gives that number again, and what it then notes on that day stands in the place of what it lost.
    fn name_at_visit(&self, what: &str) -> Identifier {
        let patient = self.patient_name().uuid();
        Identifier::new(names::RECORD, format!("visit/{patient}/{what}"))
    }

    /// The clinic, as the card names it.
    fn clinic(&self) -> Reference {
        let name = self.plan.map_or(self.practice, |plan| &plan.header.clinic);
        Reference { display: name.to_owned(), ..Reference::default() }
    }

    /// The name of something of this plan. Whoever has none has nothing that is named so.
    fn name(&self, what: &str) -> Identifier {
        let plan = self.plan.map(|plan| plan.header.id.to_string()).unwrap_or_default();
        Identifier::new(names::RECORD, format!("{plan}/{what}"))
    }

    fn patient_name(&self) -> Identifier {
        Identifier::new(names::of_patients(self.clinic), self.code)
    }

    fn patient(&self) -> Reference {
        Reference::to(&self.patient_name())
    }

    fn device(&self) -> Reference {
        Reference::to(&self.program())
    }

    fn program(&self) -> Identifier {
        Identifier::new(names::PROGRAM, self.version)
    }

    fn order_name(&self, item: ItemId) -> Identifier {
        self.name(&format!("item-{item}"))
    }

    fn plan_name(&self) -> Identifier {
        self.name("plan")
    }

    /// When the file is made, to the minute: nobody needs it more exactly, and what is written twice is then the same.
    fn recorded(&self) -> String {
        crate::own_data::moment(Stamp { utc_ms: self.at.utc_ms - self.at.utc_ms.rem_euclid(MINUTE_MS), ..self.at })
    }

    fn exercise(&self, id: &ExerciseId) -> Option<&Exercise> {
        self.exercises.iter().find(|exercise| exercise.id == *id)
    }

    /// All revisions, the newest first.
    fn revisions(&self) -> impl Iterator<Item = &Plan> {
        self.plan.into_iter().chain(self.earlier)
    }
}
