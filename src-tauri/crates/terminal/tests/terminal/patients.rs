//! What the clinic does with its patients: the devices that summaries came from, and removing a patient.

use crate::place::{DONE, Place, TAKEN, clinic, patient};
use exercises::plain_text::is_hidden;

#[test]
fn a_patient_is_removed_only_if_it_is_confirmed_and_then_for_good() {
    let place = Place::prepared();
    place.clinic(&["add", "K18"]);
    place.clinic(&["receive", "summary.age"]);
    place.refused(
        &clinic(&["remove", "K17"]),
        &["permanently remove K17", "also from the automatic backups", "--yes", "--keep-backups"],
    );
    place.refused(&clinic(&["remove", "K99", "--yes"]), &["There is no patient with the code K99."]);
    let said = place.clinic(&["remove", "K17", "--yes", "--keep-backups"]);
    assert!(
        said.contains("K17 is removed") && said.contains("Backups that were made earlier still hold this patient"),
        "{said}"
    );
    assert_eq!(place.clinic(&["patients"]), "K18\t0\n");
    place.refused(&clinic(&["review", "K17"]), &["There is no patient with the code K17."]);
    let said = place.run(&clinic(&["receive", "summary.age"]));
    assert_eq!((said.code, said.out.as_str()), (Some(1), ""), "its plan is not known any more");
}

#[test]
fn devices_are_listed_and_one_is_left_out_of_the_review() {
    let place = Place::prepared();
    assert_eq!(place.clinic(&["devices", "K17"]), "");
    place.clinic(&["receive", "summary.age"]);
    let first = place.clinic(&["devices", "K17"]);
    let name = first.split('\t').next().expect("a name").to_owned();
    assert_eq!(first, format!("{name}\t2026-11-27\t2026-11-26\tcounted\n"));
    // The same card on another device, on which nothing was done.
    place.done(&["--home", "phone", "--at", TAKEN, "patient", "accept", "card/card.txt"]);
    place.done(&["--home", "phone", "--at", DONE, "patient", "summary", "--until", "2026-11-26", "--out", "second.age"]);
    let said = place.clinic(&["receive", "second.age"]);
    assert!(said.contains("It comes from a new device ("), "{said}");
    let review = place.clinic(&["review", "K17"]);
    assert!(review.contains("from 2 devices") && review.contains("Device 2: used on 25 November, no session."), "{review}");
    let which = format!(
        "Device 1: used from 25 November to 26 November, 9 sessions.\n  First summary received on 27 November. Number on the device: {name}"
    );
    assert!(review.contains(&which), "{review}");
    place.clinic(&["devices", "K17", "--exclude", &name]);
    let review = place.clinic(&["review", "K17"]);
    assert!(review.contains("Device 1 is left out of this review") && review.contains(&name), "{review}");
    let json = place.clinic(&["review", "K17", "--as", "json"]);
    let json: serde_json::Value = serde_json::from_str(&json).expect("an object");
    assert_eq!((json["logs"].as_u64(), json["devices"].as_array().map(Vec::len)), (Some(1), Some(2)));
    place.clinic(&["devices", "K17", "--include", &name]);
    assert!(place.clinic(&["review", "K17"]).contains("from 2 devices"));
    place.refused(&clinic(&["devices", "K17", "--exclude", "0909090909090909"]), &["No summary of K17 came from a device"]);
}

#[test]
fn no_character_that_a_terminal_obeys_is_printed() {
    let place = Place::prepared();
    let note = "red \u{1b}[31m\u{202e}txet\u{2069} \u{200f}end";
    let seal = ["summary", "--until", "2026-11-26", "--note", note, "--out", "noted.age"];
    place.done(&[&["--home", "done", "--at", DONE, "patient"][..], &seal].concat());
    let plan = place.text("plan.toml").replacen("name = \"", "name = \"\\u202e\\u200f", 1);
    assert!(plan.contains("\\u202e"), "{plan}");
    place.write("marked.toml", plan);
    let mut printed = vec![
        place.clinic(&["receive", "noted.age"]),
        place.clinic(&["review", "K17"]),
        place.clinic(&["review", "K17", "--as", "json"]),
        place.clinic(&["issue", "K17", "marked.toml", "--out", "marked"]),
    ];
    assert!(printed[1].contains("red [31mtxet end"), "{}", printed[1]);
    printed.push(place.done(&patient(&["accept", "marked/card.bin"])));
    let said = place.run(&clinic(&["receive", "no\u{1b}[31m\u{202e}file.age"]));
    printed.extend([said.out, said.err]);
    for text in &printed {
        assert!(!text.chars().any(is_hidden), "{text:?}");
    }
}

#[test]
fn what_to_think_of_with_a_patient_is_kept_and_named_when_a_card_is_issued() {
    let place = Place::prepared();
    assert_eq!(place.clinic(&["facts", "K17"]), "none\n");
    let flags = "blood-thinners,osteoporosis";
    let said = place.clinic(&["facts", "K17", "--flags", flags, "--lacks", "worktop"]);
    assert!(said.contains("osteoporosis; not there at home: a worktop"), "{said}");
    let asked = clinic(&["issue", "K17", "plan.toml", "--out", "named"]);
    let issued = place.run(&asked);
    assert_eq!(issued.code, Some(0), "it prevents nothing: {issued:?}");
    assert!(issued.err.contains("Stand on one leg: Think of: osteoporosis"), "{}", issued.err);
    assert!(issued.err.contains("Stand on one leg: Not there at home: a worktop"), "{}", issued.err);
    assert_eq!(place.clinic(&["facts", "K17", "--flags", "", "--lacks", ""]), "none\n");
}

#[test]
fn a_case_is_closed_and_opened_again_and_the_patient_gets_another_code() {
    let place = Place::prepared();
    place.refused(&clinic(&["reopen", "K17"]), &["The case of K17 is open."]);
    place.refused(&clinic(&["close", "K17", "--reason", "other"]), &["said in words"]);
    let said = place.clinic(&["close", "K17", "--reason", "stopped-coming", "--words", "no answer to two calls"]);
    assert!(said.starts_with("K17: Closed on ") && said.contains(": stopped coming: no answer to two calls."), "{said}");
    assert_eq!(place.clinic(&["patients"]), "");
    assert!(place.clinic(&["patients", "--closed"]).ends_with("\tstopped coming\n"));
    place.refused(
        &clinic(&["issue", "K17", "plan.toml", "--out", "next"]),
        &["The case of K17 is closed.", "Open the case again"],
    );
    let said = place.clinic(&["receive", "summary.age"]);
    assert!(said.contains("The case is closed since "), "{said}");
    let said = place.clinic(&["reopen", "K17"]);
    assert_eq!(said, "K17: The case is open.\n");
    assert_eq!(place.clinic(&["rename", "K17", "--to", "K19", "--name", "Ottoline Marsh"]), "K19\n");
    place.refused(&clinic(&["plans", "K17"]), &["There is no patient with the code K17."]);
    place.clinic(&["issue", "K19", "plan.toml", "--out", "next"]);
    let plans = place.clinic(&["plans", "K19"]);
    assert!(plans.starts_with("Plan 2: issued on ") && plans.contains("\nPlan 1: issued on "), "{plans}");
    assert!(plans.contains("What is different from the plan before"), "{plans}");
    place.clinic(&["print", "K19", "--revision", "1", "--out", "first.pdf"]);
    place.refused(&clinic(&["print", "K19", "--revision", "7", "--out", "none.pdf"]), &["K19 has no plan 7."]);
}
