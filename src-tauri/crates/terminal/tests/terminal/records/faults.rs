//! Faults that are put into a file, and which validator finds each: no one of them finds all.

use super::faults;
use crate::vignettes::person::Person;
use crate::vignettes::prescribed::chin_back;
use serde_json::{Value, json};

/// What is put into a file.
type Change = fn(&mut Value);

/// The resource of this type at this place among those of its type.
fn resource<'a>(bundle: &'a mut Value, kind: &str) -> &'a mut Value {
    let entries = bundle["entry"].as_array_mut().expect("a list").iter_mut();
    let mut found = entries.map(|entry| &mut entry["resource"]).filter(|resource| resource["resourceType"] == kind);
    found.next().unwrap_or_else(|| panic!("a {kind}"))
}

/// The observation with a value.
fn observation(bundle: &mut Value) -> &mut Value {
    resource(bundle, "Observation")
}

fn repeat(bundle: &mut Value) -> &mut Value {
    &mut resource(bundle, "ServiceRequest")["occurrenceTiming"]["repeat"]
}

fn remove(object: &mut Value, key: &str) {
    let gone = object.as_object_mut().expect("an object").remove(key);
    assert!(gone.is_some(), "there was a {key}");
}

/// For a file to hand over: name, the validators that find it, and the fault.
const FAULTS: [(&str, &[&str], Change); 13] = [
    ("no-code", &["fhir", "fhir.resources", "medplum"], |bundle| remove(observation(bundle), "code")),
    ("no-intent", &["fhir", "fhir.resources", "medplum"], |bundle| remove(resource(bundle, "CarePlan"), "intent")),
    ("plan-status", &["fhir", "fhir.resources"], |bundle| resource(bundle, "CarePlan")["status"] = json!("running")),
    ("observation-status", &["fhir"], |bundle| observation(bundle)["status"] = json!("done")),
    ("day", &["fhir.resources"], |bundle| repeat(bundle)["dayOfWeek"] = json!(["monday"])),
    ("unit", &["fhir.resources"], |bundle| repeat(bundle)["durationUnit"] = json!("sec")),
    ("no-unit", &["medplum"], |bundle| remove(repeat(bundle), "durationUnit")),
    ("two-values", &["fhir.resources"], |bundle| observation(bundle)["valueString"] = json!("x")),
    ("date", &["fhir.resources", "medplum"], |bundle| resource(bundle, "CarePlan")["created"] = json!("2026-13-40")),
    ("detail", &["medplum"], |bundle| {
        resource(bundle, "CarePlan")["activity"][0]["detail"] = json!({ "status": "scheduled" });
    }),
    ("absent", &["rules"], |bundle| {
        let absent = "http://terminology.hl7.org/CodeSystem/data-absent-reason";
        observation(bundle)["dataAbsentReason"] = json!({ "coding": [{ "system": absent, "code": "not-applicable" }] });
    }),
    ("frequency", &["rules"], |bundle| {
        repeat(bundle)["frequency"] = json!(1);
        repeat(bundle)["period"] = json!(1);
        repeat(bundle)["periodUnit"] = json!("d");
    }),
    ("dangling", &["rules"], |bundle| {
        observation(bundle)["subject"]["reference"] = json!("urn:uuid:00000000-0000-4000-8000-000000000000");
    }),
];

/// For a server.
const FAULTS_OF_REQUESTS: [(&str, &[&str], Change); 4] = [
    ("no-request", &["medplum"], |bundle| remove(&mut bundle["entry"][1], "request")),
    ("twice", &["rules"], |bundle| remove(&mut bundle["entry"][0]["request"], "ifNoneExist")),
    ("other-name", &["rules"], |bundle| bundle["entry"][2]["request"]["url"] = json!("CarePlan?identifier=a|b")),
    ("unknown-code", &["rules"], |bundle| {
        observation(bundle)["code"]["coding"][0] = json!({ "system": "http://loinc.org", "code": "99999-9" });
    }),
];

#[test]
fn every_fault_that_is_put_in_is_found_by_those_who_can() {
    let mut person = Person::with(&[chin_back()]);
    person.does(1, 0, "18:05");
    let records = person.for_records(1);
    let whole = [(&records.collection, &FAULTS[..]), (&records.transaction, &FAULTS_OF_REQUESTS)];
    let seeded: Vec<(String, String, &[&str])> = whole
        .iter()
        .flat_map(|(text, seeds)| seeds.iter().map(move |seed| (text, seed)))
        .map(|(text, (name, by, change))| {
            let mut bundle = super::json(text);
            change(&mut bundle);
            (format!("{name}.json"), bundle.to_string(), *by)
        })
        .collect();
    let files: Vec<(String, &str)> = seeded.iter().map(|(name, text, _)| (name.clone(), text.as_str())).collect();
    let found = faults(&files);
    for (name, _, by) in &seeded {
        let of = |line: &&String| line.split('\t').nth(1) == Some(name);
        let mut who: Vec<&str> = found.iter().filter(of).filter_map(|line| line.split('\t').next()).collect();
        who.sort_unstable();
        who.dedup();
        assert_eq!(who, *by, "{name}: {found:#?}");
    }
}
