//! The patient, the program, and from whom and from what the rest comes.

use super::codes::{ASSEMBLER, AUTHOR};
use super::elements::{
    Agent, Device, DeviceName, DeviceVersion, Entity, HumanName, Identifier, Patient, Provenance, Reference, Resource,
};
use super::{Facts, Known, Named, Source, names};
use chrono::NaiveDate;
use std::collections::BTreeSet;

/// The patient, known by the clinic's code alone unless a name is to be there.
pub(super) fn patient(facts: &Facts<'_>) -> Named {
    let name = facts.patient_name();
    let identifier = Identifier { assigner: Some(facts.clinic()), ..name.clone() };
    let names = facts.name.map(|name| HumanName { text: name.to_owned() });
    let patient = Patient { identifier: vec![identifier], name: names.into_iter().collect() };
    // What the clinic's record system says of a person is never replaced from here.
    Named { name, resource: Resource::Patient(patient), known: Known::Kept }
}

/// The program.
pub(super) fn device(facts: &Facts<'_>) -> Named {
    let name = facts.program();
    let device = Device {
        identifier: vec![name.clone()],
        status: "active",
        device_name: vec![DeviceName { name: "Carryover", r#type: "user-friendly-name" }],
        version: vec![DeviceVersion { value: facts.version.to_owned() }],
    };
    Named { name, resource: Resource::Device(device), known: Known::Kept }
}

/// The plan comes from the clinic's card.
pub(super) fn of_plan(facts: &Facts<'_>, all: &[Named]) -> Option<Named> {
    let ours = |named: &&Named| matches!(named.known, Known::Replaced);
    let target: Vec<Reference> = all.iter().filter(ours).map(|named| Reference::to(&named.name)).collect();
    let header = &facts.plan?.header;
    let author = facts.clinic();
    let card = Identifier::new(names::SOURCE, format!("card/{}/{}", header.id, header.revision));
    origin(facts, Facts::name, target, author, vec![card])
}

/// What was measured comes from the patient's summaries.
pub(super) fn of_measures(facts: &Facts<'_>, all: &[Named]) -> Option<Named> {
    let target = all.iter().map(|named| Reference::to(&named.name)).collect();
    let source = |one: &Source| {
        let value = format!("summary/{}/{}/sha256/{}", one.log, one.counter, names::hash(&one.contents));
        Identifier::new(names::SOURCE, value)
    };
    origin(facts, Facts::name, target, facts.patient(), facts.sources.iter().map(source).collect())
}

/// What was found at a visit comes from the clinic. Each visit has its own, which stays as it is when there are more visits.
pub(super) fn of_visits(facts: &Facts<'_>, findings: &[(NaiveDate, Named)]) -> Vec<Named> {
    let days: BTreeSet<NaiveDate> = findings.iter().map(|(day, _)| *day).collect();
    let one = |day: NaiveDate| {
        let target = findings.iter().filter(|(of, _)| *of == day).map(|(_, named)| Reference::to(&named.name)).collect();
        let source = Identifier::new(names::SOURCE, facts.name_at_visit(&day.to_string()).value);
        origin(facts, Facts::name_at_visit, target, facts.clinic(), vec![source])
    };
    days.into_iter().filter_map(one).collect()
}

/// What `target` comes from, under a name that `named` makes: one of the plan, or one that outlives it.
fn origin<'a>(
    facts: &Facts<'a>,
    named: fn(&Facts<'a>, &str) -> Identifier,
    target: Vec<Reference>,
    author: Reference,
    sources: Vec<Identifier>,
) -> Option<Named> {
    if target.is_empty() || sources.is_empty() {
        return None;
    }
    let values: Vec<&str> = sources.iter().map(|source| source.value.as_str()).collect();
    let name = named(facts, &format!("origin/{}", names::uuid(&values.join("\n"))));
    // In R4 it has no identifier by which a server could find it.
    let id = name.uuid();
    let provenance = Provenance {
        id: id.clone(),
        target,
        recorded: facts.recorded(),
        agent: vec![
            Agent { r#type: AUTHOR.concept(), who: author },
            Agent { r#type: ASSEMBLER.concept(), who: facts.device() },
        ],
        entity: sources.into_iter().map(|source| Entity { role: "source", what: Reference::outside(source) }).collect(),
    };
    Some(Named { name, resource: Resource::Provenance(provenance), known: Known::ById(id) })
}
