//! A clinic's own table of stance times: stored, shown, removed, and compared with a patient's times only if all conditions match.

use crate::place::{DONE, ISSUED, Place, TAKEN, clinic};
use serde_json::{Value, json};

const PLAN: &str = r#"
review = 2027-01-06
age = "40-49"
absent = [
    "high-fall-risk", "vertigo-or-fainting", "numb-feet", "neurological-unsteadiness", "partial-weight-bearing",
    "fresh-injury", "severe-osteoporosis", "sedatives-or-alcohol", "severe-visual-loss", "cognitive-impairment",
    "late-pregnancy",
]
[[item]]
number = 1
exercise = "EXERCISE"
rung = "RUNG"
side = "left"
balance = { trials = 3, target = TARGET, rest = 30 }
at = ["08:00", "19:30"]
days = "every-day"
[[stance]]
leg = "left"
surface = "firm"
eyes = "open"
seconds = 45
capped = true
"#;

/// The conditions of a patient's trials.
#[derive(Clone, Copy)]
struct Trials {
    exercise: &'static str,
    rung: &'static str,
    target: u16,
    phone: &'static str,
    trials: usize,
}

/// The conditions of the rows of `example norms`.
const FITS: Trials = Trials { exercise: "one-leg-timed", rung: "firm-open", target: 30, phone: "in-pocket", trials: 3 };

/// Adds a second patient of the prepared clinic who did such trials on the first evening, and receives her summary.
fn record_trials(place: &Place, how: Trials) {
    let plan = PLAN.replace("EXERCISE", how.exercise).replace("RUNG", how.rung);
    place.write("stand.toml", plan.replace("TARGET", &how.target.to_string()));
    place.clinic(&["add", "S1"]);
    let issue = ["issue", "S1", "stand.toml", "--out", "stand"];
    place.done(&[&["--home", "clinic", "--at", ISSUED, "clinic", "--passphrase-file", "pw"][..], &issue].concat());
    place.done(&["--home", "stands", "--at", TAKEN, "patient", "accept", "stand/card.txt"]);
    let times = [12.0, 18.5, 15.0, 9.0, 8.0, 7.0];
    let trial = |seconds: &f64| json!({ "leg": "left", "seconds": seconds, "end": "touch" });
    let trials: Vec<Value> = times[..how.trials].iter().map(trial).collect();
    let at = "2026-11-25T19:35:00+01:00";
    let run = json!({ "do": "run", "at": at, "item": 1, "phone": how.phone, "trials": trials });
    place.write("stand.jsonl", format!("{run}\n"));
    place.done(&["--home", "stands", "--at", DONE, "patient", "record", "stand.jsonl"]);
    let seal = ["patient", "summary", "--until", "2026-11-26", "--out", "stand.age"];
    place.done(&[&["--home", "stands", "--at", DONE][..], &seal].concat());
    place.clinic(&["receive", "stand.age"]);
}

fn example(place: &Place) -> String {
    place.done(&["example", "norms"])
}

fn keep(place: &Place, table: &str) {
    place.write("norms.toml", table);
    place.clinic(&["norms", "norms.toml"]);
}

/// The review of the second patient, its lines joined.
fn review(place: &Place) -> String {
    place.clinic(&["review", "S1"]).split_whitespace().collect::<Vec<_>>().join(" ")
}

#[test]
fn a_table_is_kept_shown_replaced_and_removed() {
    let place = Place::prepared();
    assert_eq!(place.clinic(&["norms"]), "The clinic has no table of its own.\n");
    keep(&place, &example(&place));
    let kept = place.clinic(&["norms"]);
    assert!(kept.starts_with("2 rows. Source: INVENTED EXAMPLE, not a publication\n"), "{kept}");
    assert!(kept.contains("a mean of 21.5 s, standard deviation 7.5 s: 40 to 49 years, eyes open, firm floor, bare feet"));
    let sealed = place.all();
    let plain = |bytes: &Vec<u8>| bytes.windows(16).any(|part| part == b"INVENTED EXAMPLE");
    let readable: Vec<_> =
        sealed.iter().filter(|(path, bytes)| path.starts_with(place.path("clinic")) && plain(bytes)).collect();
    assert!(readable.is_empty(), "it is stored encrypted");
    keep(&place, "source = \"Own list\"\n[[row]]\nmedian = 5\n");
    assert_eq!(place.clinic(&["norms"]), "1 row. Source: Own list\na median of 5 s\n");
    let object: Value = serde_json::from_str(&place.clinic(&["norms", "--json"])).expect("JSON");
    assert_eq!(object["norms"]["source"], "Own list");
    assert_eq!(place.clinic(&["norms", "--remove"]), "The clinic's table was removed.\n");
    assert_eq!(place.clinic(&["norms"]), "The clinic has no table of its own.\n");
    assert_eq!(place.clinic(&["norms", "--remove"]), "The clinic has no table of its own.\n");
}

#[test]
fn a_faulty_table_is_refused_and_the_previous_one_stays() {
    let place = Place::prepared();
    keep(&place, &example(&place));
    let before = place.clinic(&["norms"]);
    for (text, says) in [
        (
            example(&place).replacen("arms = \"crossed\"", "arms = \"up\"", 1),
            "bad.toml, line 18: arms: “up” is not allowed here; allowed: crossed, on-hips, free.",
        ),
        ("source = \"x\"".to_owned(), "[[row]]"),
        ("[[row]]\nmean = 1".to_owned(), "line 1: the field “source” is missing."),
        ("#".repeat(70_000), "bad.toml"),
    ] {
        place.write("bad.toml", text);
        place.refused(&clinic(&["norms", "bad.toml"]), &[says]);
    }
    place.write("bad.toml", b"source = \"\xff\"");
    place.refused(&clinic(&["norms", "bad.toml"]), &["UTF-8"]);
    place.refused(&clinic(&["norms", "missing.toml"]), &["There is no file"]);
    assert_eq!(place.clinic(&["norms"]), before);
}

#[test]
fn a_row_is_compared_with_trials_under_the_same_conditions() {
    let place = Place::prepared();
    record_trials(&place, FITS);
    keep(&place, &example(&place));
    let said = "On 25 November, best of 3 attempts: 18.5 s. For comparison: a mean of 21.5 s, standard deviation 7.5 s (40 to 49 \
                years, 12 people). Source: INVENTED EXAMPLE, not a publication.";
    let with = review(&place);
    assert!(with.contains(said), "{with}");
    place.clinic(&["norms", "--remove"]);
    let without = review(&place);
    assert!(without.contains(NONE), "without the table no row applies: {without}");
}

#[test]
fn the_median_is_taken_where_only_it_has_a_row() {
    let place = Place::prepared();
    record_trials(&place, FITS);
    keep(&place, &example(&place).replace("best-of-3\" #", "median-of-3\" #"));
    let review = review(&place);
    assert!(review.contains("On 25 November, median of 3 attempts: 15 s. For comparison: a mean of 21.5 s"), "{review}");
}

const NONE: &str = "No published times for comparison: ";

/// The only reason why there is no comparison.
#[track_caller]
fn only(place: &Place, reason: &str) {
    let review = review(place);
    assert!(review.contains(&format!("{NONE}{reason}.")), "{reason:?} in {review}");
}

#[test]
fn a_different_condition_of_the_trials_is_given_as_the_reason() {
    for (how, reason) in [
        (Trials { phone: "on-support", ..FITS }, "different in the closest source: arms"),
        (Trials { phone: "at-breastbone", ..FITS }, "different in the closest source: arms"),
        (Trials { target: 40, ..FITS }, "different in the closest source: when an attempt ends"),
        (Trials { trials: 2, ..FITS }, "different in the closest source: how the figure is made"),
        (Trials { exercise: "one-leg-stand", ..FITS }, "not known of these attempts: arms"),
        (Trials { exercise: "heel-to-toe-stand", rung: "heel-to-toe", ..FITS }, "they are for standing on one leg"),
    ] {
        let place = Place::prepared();
        keep(&place, &example(&place));
        record_trials(&place, how);
        only(&place, reason);
    }
}

#[test]
fn a_condition_that_the_table_lacks_or_has_differently_is_given_as_the_reason() {
    let place = Place::prepared();
    record_trials(&place, FITS);
    // Only the first row, so that no row for another age matches better.
    let table = example(&place);
    let first = table.rsplit_once("[[row]]").expect("two rows").0;
    for (from, to, reason) in [
        ("\"40-49\"", "\"50-59\"", "different in the closest source: age"),
        ("eyes = \"open\"", "eyes = \"closed\"", "different in the closest source: eyes"),
        ("feet = \"bare\"", "feet = \"covered\"", "different in the closest source: feet"),
        ("arms = \"crossed\"", "arms = \"on-hips\"", "different in the closest source: arms"),
        ("\"best-of-3\"", "\"mean-of-3\"", "different in the closest source: how the figure is made"),
        ("cap = 30", "cap = \"none\"", "different in the closest source: when an attempt ends"),
        ("feet = \"bare\"", "#", "not stated by the closest source: feet"),
        ("surface = \"firm\"", "#", "not stated by the closest source: surface"),
    ] {
        keep(&place, &first.replacen(from, to, 1));
        only(&place, reason);
    }
}

/// Under these conditions only rows apply that were quoted from memory and not checked.
#[test]
fn unchecked_rows_are_never_shown() {
    let place = Place::prepared();
    record_trials(&place, Trials { target: 45, ..FITS });
    only(&place, "those that fit have not been checked against their paper");
    for form in ["text", "json"] {
        let review = place.clinic(&["review", "S1", "--as", form]);
        for part in ["Springer", "41.9", "9.9 s"] {
            assert!(!review.contains(part), "{part:?} in {review}");
        }
    }
}
