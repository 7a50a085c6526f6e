//! People at the extremes of what can be recorded, whose files the validators have to take.

use super::{faults, json, lines, measured, of, part};
use crate::place::{DONE, Place};
use crate::vignettes::person::{Person, Records};
use crate::vignettes::prescribed::{
    Dose, Plan, about, chair_rise, chin_back, gaze, heel_raise, one_leg, sit_to_stand, turn_head,
};
use serde_json::{Value, json};
use std::sync::LazyLock;

/// Nobody asked about pain, and nothing was done.
static NOTHING: LazyLock<Records> = LazyLock::new(does_nothing);

fn does_nothing() -> Records {
    let items = vec![chin_back().serves(None).hourly("09:00", "17:00").on(&["mon", "tue", "wed", "thu", "fri"])];
    Person::of(Plan { age: "40-49", complaints: Vec::new(), items, clear: Vec::new() }).for_records(20)
}

/// Reaches the cap on one day and not on another.
static CAP: LazyLock<Records> = LazyLock::new(reaches_the_cap);

fn reaches_the_cap() -> Records {
    let mut person = Person::with(&[one_leg()]);
    person.stands(1, 0, "18:10", &[30.0, 30.0, 12.5]);
    person.stands(1, 1, "18:10", &[11.0, 12.34, 9.0]);
    person.for_records(1)
}

/// Says that something is wrong: everything pauses, and in the second week nothing is planned.
static UNWELL: LazyLock<Records> = LazyLock::new(is_unwell);

fn is_unwell() -> Records {
    let mut person = Person::with(&[chin_back(), heel_raise().number(2).at(&["18:30"])]);
    person.does(1, 0, "18:05");
    person.says_wrong_with("heart", &[], 0, "19:00");
    person.for_records(13)
}

/// Rates above the limit, falls, and gets a card that clears one of both.
static WARNED: LazyLock<Records> = LazyLock::new(is_warned);

fn is_warned() -> Records {
    let mut person = Person::with(&[heel_raise().limit(3), one_leg().number(2).at(&["19:00"])]);
    person.does(1, 0, "18:05");
    person.hurts(1, 0, "18:10", 7);
    person.says_wrong("nearly-fell", Some(2), 1, "19:05");
    person.mornings(0..6, 4);
    let id = person.review(5).list("alarms")[0]["id"].as_str().expect("a name").to_owned();
    person.gets_another_card(6, |plan| plan.clear.push(id));
    person.does(1, 6, "18:05");
    person.for_records(8)
}

/// Rhythms of all sorts, phases, and what is done as needed.
static RHYTHMS: LazyLock<Records> = LazyLock::new(has_rhythms);

fn has_rhythms() -> Records {
    let mut person = Person::with(&[
        chin_back().when_needed(),
        heel_raise().number(2).on_days("{ every = 3 }").with("load = { kg = 2.5 }\neffort = 4\nhelper = true"),
        sit_to_stand().number(3).on_days("{ times_a_week = 3 }").ending_on(6),
        sit_to_stand().number(4).on(&["mon", "thu"]).starting_on(7).dose(Dose::Reps(3, 8)),
        chin_back().number(5).hourly("22:00", "02:00").on(&["mon", "tue"]).level("chair"),
    ]);
    person.does(1, 0, "11:00");
    person.does(1, 4, "12:00");
    person.does(2, 0, "18:05");
    person.does(3, 1, "18:05");
    person.does(3, 2, "18:05");
    person.for_records(16)
}

/// The rarer kinds.
static RARER: LazyLock<Records> = LazyLock::new(does_the_rarer_kinds);

fn does_the_rarer_kinds() -> Records {
    let mut person = Person::with(&[turn_head(), chair_rise().number(2).on(&["mon"]), gaze().number(3).at(&["12:00"])]);
    for day in 0..9 {
        person.stands(1, day, "18:10", &about(10));
        person.does(3, day, "12:02");
    }
    person.counts(2, 0, "18:30", 12);
    person.counts(2, 7, "18:30", 14);
    person.for_records(8)
}

/// Two devices, days off, skipped sessions, an item that the second card has no longer; names that mean something to a spreadsheet.
static DEVICES: LazyLock<Records> = LazyLock::new(has_two_devices);

fn has_two_devices() -> Records {
    let mut person = Person::of(Plan {
        age: "65-69",
        complaints: vec![("=1+1 <b>&\"quoted\"", Some("left"), Some(6)), ("@knee", None, None)],
        items: vec![chin_back(), one_leg().number(2).at(&["19:00"]).serves(Some(2))],
        clear: Vec::new(),
    });
    person.gets_another_device("desk", 0);
    person.on("desk").does(1, 0, "18:02");
    person.on("phone").stands(2, 0, "19:05", &about(12));
    person.on("phone").skips(1, 1, "18:05", "no-time");
    person.on("phone").morning(1, 5);
    person.on("desk").morning_of(2, 1, 2);
    person.on("phone").takes_days_off(2, 3, "holiday");
    person.gets_another_card(5, |plan| plan.items.truncate(1));
    person.on("phone").falls_short(1, 6, "18:05");
    person.for_records(8)
}

/// An exercise of the clinic's own, in Spanish.
static OWN: LazyLock<Records> = LazyLock::new(has_an_own_exercise);

fn has_an_own_exercise() -> Records {
    let place = Place::prepared();
    place.write("mine.toml", place.done(&["example", "exercise"]));
    let item =
        "\n[[item]]\nnumber = 4\nexercise = \"my-doorway-lean\"\nhold = { repetitions = 3, seconds = 20, rest = 20 }\n";
    place.write("own-plan.toml", place.text("plan.toml") + item + "at = [\"12:00\"]\ndays = \"every-day\"\n");
    place.clinic(&["exercise", "add", "mine.toml"]);
    place.run(&crate::place::clinic(&["issue", "K17", "own-plan.toml", "--out", "own-card"]));
    place.done(&["--home", "done", "--at", DONE, "patient", "accept", "own-card/card.txt"]);
    place.done(&["--home", "done", "--at", DONE, "patient", "summary", "--until", "2026-11-26", "--out", "own.age"]);
    place.clinic(&["receive", "own.age"]);
    written_in_spanish(&place, "K17")
}

fn written_in_spanish(place: &Place, code: &str) -> Records {
    let written = |form| {
        let mut command = place.command(&crate::place::clinic(&["review", code, "--as", form]));
        let said = command.env("LC_ALL", "es_ES.UTF-8").output().expect("it starts");
        assert!(said.status.success(), "{said:?}");
        String::from_utf8(said.stdout).expect("text")
    };
    Records { collection: written("fhir"), transaction: written("fhir-transaction"), table: written("csv") }
}

/// Was treated at one visit, and given nothing to do at home.
pub(super) static TREATED: LazyLock<Records> = LazyLock::new(is_treated_without_a_plan);

fn is_treated_without_a_plan() -> Records {
    let place = Place::prepared();
    place.clinic(&["add", "K18"]);
    place.clinic(&["visit", "complaint", "K18", "neck-upper-back", "6", "--side", "left"]);
    place.clinic(&["visit", "measure", "K18", "motion", "40", "--of", "turning", "--when", "before"]);
    place.clinic(&["visit", "note", "K18", "two words too many"]);
    place.clinic(&["visit", "take-back", "K18", "3"]);
    written_in_spanish(&place, "K18")
}

/// Two visits at which everything is noted that can be, one finding is put right, and two are taken back.
pub(super) static VISITS: LazyLock<Records> = LazyLock::new(has_visits);

fn has_visits() -> Records {
    let mut person = Person::with(&[heel_raise(), one_leg().number(2).at(&["19:00"])]);
    person.mornings(0..9, 3);
    person.does(1, 0, "18:05");
    notes_everything(&person);
    person.for_records(8)
}

fn notes_everything(person: &Person) {
    person.visit(0, &["screening", "--flags", "osteoporosis,blood-pressure", "--fell"]);
    person.visit(0, &["complaint", "low-back", "6", "--side", "left", "--line", "=after, \"driving\""]);
    person.visit(0, &["measure", "motion", "40", "--of", "bending forward", "--when", "before"]);
    person.visit(0, &["measure", "motion", "55.5", "--of", "bending forward", "--when", "after"]);
    person.visit(0, &["measure", "stance", "60", "12.4", "--side", "left"]);
    person.visit(0, &["measure", "pain", "7", "--of", "bending forward", "--when", "before"]);
    person.visit(0, &["measure", "pain", "5", "--of", "bending forward", "--when", "before", "--correct", "6"]);
    person.visit(0, &["note", "two words too many"]);
    person.visit(0, &["take-back", "8"]);
    person.visit(8, &["change", "--words", "sleeps through", "--", "-3"]);
    person.visit(8, &["complaint", "knee", "2", "--side", "both"]);
    person.visit(8, &["measure", "grip", "31.2", "32", "30.5", "--side", "right"]);
    person.visit(8, &["measure", "chair-rise", "14"]);
    person.visit(8, &["measure", "other", "32.5", "--of", "step length", "--unit", "cm"]);
    person.visit(8, &["measure", "motion", "--of", "turning", "--", "-5.5"]);
    person.visit(8, &["screening", "--same"]);
    person.visit(8, &["note", "Lifts at work again."]);
    person.visit(8, &["override", "1", "progress", "Wants to wait a week."]);
    person.visit(8, &["override", "2", "keep", "no"]);
    person.visit(8, &["take-back", "19"]);
}

#[test]
fn validators_of_others_find_nothing_wrong() {
    let people: [(&str, &Records); 10] = [
        ("nothing", &NOTHING),
        ("cap", &CAP),
        ("unwell", &UNWELL),
        ("warned", &WARNED),
        ("rhythms", &RHYTHMS),
        ("rarer", &RARER),
        ("devices", &DEVICES),
        ("own", &OWN),
        ("visits", &VISITS),
        ("treated", &TREATED),
    ];
    let files = people.iter().flat_map(|(name, records)| {
        [(format!("{name}.json"), records.collection.as_str()), (format!("{name}-server.json"), &records.transaction)]
    });
    let found = faults(&files.collect::<Vec<_>>());
    assert!(found.is_empty(), "{}", found.join("\n"));
}

#[test]
fn who_did_nothing_has_every_session_planned_and_none_done() {
    let bundle = json(&NOTHING.collection);
    let weeks = measured(&bundle, "adherence-percent");
    let told: Vec<_> = weeks.iter().map(|week| (&week["valueQuantity"]["value"], part(week, "sessions-planned"))).collect();
    // The card is taken at 08:40 on the first day.
    assert_eq!(told, [(&json!(0), &json!(45)); 3]);
    assert_eq!(measured(&bundle, "longest-gap-days")[0]["valueQuantity"]["value"], 15);
    assert!(measured(&bundle, "pain-in-the-morning").is_empty());
    assert_eq!(lines(&NOTHING)[0][8..11], ["adherence-percent", "0.0", "%"]);
}

#[test]
fn a_time_that_reached_the_cap_is_never_a_bare_number() {
    let bundle = json(&CAP.collection);
    let times = measured(&bundle, "single-leg-stance-time");
    let told = |place: usize| {
        let value = &times[place]["valueQuantity"];
        (value["comparator"].as_str(), value["value"].as_f64(), times[place]["effectiveDateTime"].as_str())
    };
    assert_eq!(told(0), (Some(">="), Some(30.0), Some("2026-11-02")));
    assert_eq!(told(1), (None, Some(12.3), Some("2026-11-03")));
    assert_eq!(times[0]["bodySite"]["coding"][0]["code"], "32153003");
    assert_eq!(times[0]["method"]["coding"][0]["code"], "eyes-open");
    let longest: Vec<_> = lines(&CAP).into_iter().filter(|line| line[8] == "single-leg-stance-time").collect();
    let expected = [["30.0", "s", "at-least eyes-open"], ["12.3", "s", "eyes-open"]];
    assert_eq!(longest.iter().map(|line| line[9..].to_vec()).collect::<Vec<_>>(), expected);
}

#[test]
fn a_week_in_which_nothing_was_planned_has_no_share() {
    let bundle = json(&UNWELL.collection);
    let second = measured(&bundle, "adherence-percent")
        .into_iter()
        .find(|week| week["effectivePeriod"]["start"] == "2026-11-09")
        .expect("a second week");
    assert_eq!((&second["valueQuantity"], part(second, "sessions-planned")), (&Value::Null, &json!(0)));
    assert_eq!(second["dataAbsentReason"]["coding"][0]["code"], "not-applicable");
    assert_eq!(part(second, "sessions-paused"), &json!(7));
    let line = lines(&UNWELL).into_iter().find(|line| line[6] == "2026-11-09").expect("its line");
    assert_eq!(line[8..], ["adherence-percent", "", "%", "none-planned"]);
    let last = json(&CAP.collection);
    assert_eq!(
        (&second["status"], &measured(&last, "adherence-percent")[0]["status"]),
        (&json!("final"), &json!("preliminary"))
    );
    let alarms = measured(&bundle, "alarm");
    assert_eq!(alarms[0]["valueCodeableConcept"]["coding"][0]["code"], "alarm-heart");
}

#[test]
fn what_warned_is_told_with_what_became_of_it() {
    let bundle = json(&WARNED.collection);
    let alarms = measured(&bundle, "alarm");
    let cleared = |alarm: &Value| {
        let parts = alarm["component"].as_array().expect("a list");
        parts.iter().find(|part| part["code"]["coding"][0]["code"] == "alarm-cleared").expect("said")["valueBoolean"].clone()
    };
    let told: Vec<_> =
        alarms.iter().map(|alarm| (&alarm["valueCodeableConcept"]["coding"][0]["code"], cleared(alarm))).collect();
    assert_eq!(told, [(&json!("alarm-nearly-fell"), json!(true)), (&json!("alarm-pain-above-limit"), json!(false))]);
    assert_eq!((part(alarms[1], "pain-rated"), part(alarms[1], "pain-limit")), (&json!(7), &json!(3)));
    let pain = measured(&bundle, "pain-in-the-morning");
    assert_eq!(
        pain[0]["code"]["coding"][0],
        json!({
            "system": "http://loinc.org", "code": "72514-3", "display": "Pain severity - 0-10 verbal numeric rating [Score] - Reported",
        })
    );
}

#[test]
fn each_rhythm_is_told_as_fhir_can_tell_it() {
    let bundle = json(&RHYTHMS.collection);
    let orders = of(&bundle, "ServiceRequest");
    assert_eq!((&orders[0]["asNeededBoolean"], &orders[0]["occurrenceTiming"]), (&json!(true), &Value::Null));
    assert_eq!(orders[0]["occurrencePeriod"]["start"], "2026-11-02");
    let repeat = |place: usize| &orders[place]["occurrenceTiming"]["repeat"];
    let often = |place: usize| {
        let repeat = repeat(place);
        (repeat["frequency"].as_u64(), repeat["period"].as_u64(), repeat["periodUnit"].as_str())
    };
    assert_eq!([often(1), often(2)], [(Some(1), Some(3), Some("d")), (Some(3), Some(1), Some("wk"))]);
    assert_eq!((&orders[2]["status"], &orders[3]["status"]), (&json!("completed"), &json!("active")));
    assert_eq!(repeat(2)["boundsPeriod"], json!({ "start": "2026-11-02", "end": "2026-11-08" }));
    assert_eq!((&repeat(3)["dayOfWeek"], &repeat(3)["timeOfDay"]), (&json!(["mon", "thu"]), &json!(["18:00:00"])));
    assert_eq!(often(4), (Some(10), Some(1), Some("wk")), "five times on two nights, which end on the next day");
    let said = orders[1]["patientInstruction"].as_str().expect("a text");
    assert!(
        said.starts_with(
            "2 sets of 10 repetitions, with 2.5 kg, effort about 4 of 10, with somebody beside you. Every 3 days"
        ),
        "{said}"
    );
    assert_eq!(measured(&bundle, "times-as-needed")[0]["valueQuantity"]["value"], 2);
}

#[test]
fn tests_and_stands_on_both_feet_have_codes_of_their_own() {
    let bundle = json(&RARER.collection);
    let counts = measured(&bundle, "repetitions-in-time");
    let told: Vec<_> = counts.iter().map(|count| (&count["valueQuantity"]["value"], part(count, "test-seconds"))).collect();
    assert_eq!(told, [(&json!(12), &json!(30)), (&json!(14), &json!(30))]);
    let stands = measured(&bundle, "stance-time");
    assert_eq!((stands.len(), &stands[0]["bodySite"]), (9, &Value::Null));
}

#[test]
fn what_the_newest_card_no_longer_has_is_revoked_and_keeps_its_results() {
    let bundle = json(&DEVICES.collection);
    let orders = of(&bundle, "ServiceRequest");
    assert_eq!([&orders[0]["status"], &orders[1]["status"]], ["active", "revoked"]);
    let until = |place: usize| orders[place]["occurrenceTiming"]["repeat"]["boundsPeriod"]["end"].as_str();
    assert_eq!([until(0), until(1)], [Some("2027-02-10"), Some("2026-11-07")], "until the visit, and until the next card");
    assert_eq!(of(&bundle, "CarePlan")[0]["activity"].as_array().map(Vec::len), Some(1));
    assert_eq!(measured(&bundle, "single-leg-stance-time").len(), 1);
    let sources = of(&bundle, "Provenance")[1]["entity"].as_array().expect("a list").len();
    assert_eq!(sources, 2, "a summary of each device");
    assert!(DEVICES.table.contains(",\"'=1+1"), "no formula: {}", DEVICES.table);
    assert!(DEVICES.table.contains(",'@knee,"), "no formula: {}", DEVICES.table);
}

#[test]
fn texts_are_in_the_language_and_codes_are_not() {
    let bundle = json(&OWN.collection);
    assert_eq!(bundle["language"], "es");
    let orders = of(&bundle, "ServiceRequest");
    let own = orders.last().expect("an item");
    let code = own["code"]["coding"].as_array().expect("a list").last().expect("its id")["code"].as_str().expect("a text");
    assert!(code.starts_with("own-") && code.ends_with("-my-doorway-lean"), "{code}");
    assert!(own["patientInstruction"].as_str().is_some_and(|said| said.ends_with("Todos los días, a las 12:00.")), "{own}");
    assert_eq!(of(&bundle, "CarePlan")[0]["title"], "Plan de ejercicios en casa");
    assert_eq!(of(&bundle, "CodeSystem")[0]["title"], "Codes for home exercise");
}
