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

/// The comparison for the only series of the review.
fn beside(place: &Place) -> Value {
    let review: Value = serde_json::from_str(&place.clinic(&["review", "S1", "--as", "json"])).expect("JSON");
    assert_eq!(review["balance"].as_array().map(Vec::len), Some(1), "{review}");
    review["balance"][0]["norms"].clone()
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
    let norms = beside(&place);
    let row = &norms["comparison"]["Beside"]["row"];
    assert_eq!(norms["own"]["seconds"], 18.5, "{norms}");
    assert_eq!(norms["own"]["statistic"], json!({ "BestOf": 3 }));
    assert_eq!(
        (&row["source"], &row["published"]["Mean"]["mean_s"]),
        (&json!("INVENTED EXAMPLE, not a publication"), &json!(21.5))
    );
    let review = place.clinic(&["review", "S1"]).split_whitespace().collect::<Vec<_>>().join(" ");
    let said = "On 25 November, best of 3 attempts: 18.5 s. For comparison: a mean of 21.5 s, standard deviation 7.5 s (40 to 49 \
                years, 12 people). Source: INVENTED EXAMPLE, not a publication.";
    assert!(review.contains(said), "{review}");
    place.clinic(&["norms", "--remove"]);
    assert!(beside(&place)["comparison"]["Not"].is_array(), "without the table no row applies");
}

#[test]
fn the_median_is_taken_where_only_it_has_a_row() {
    let place = Place::prepared();
    record_trials(&place, FITS);
    keep(&place, &example(&place).replace("best-of-3\" #", "median-of-3\" #"));
    let norms = beside(&place);
    assert_eq!((&norms["own"]["seconds"], &norms["own"]["statistic"]), (&json!(15.0), &json!({ "MedianOf": 3 })));
    assert!(norms["comparison"]["Beside"].is_object(), "{norms}");
}

/// The only reason why there is no comparison.
#[track_caller]
fn only(place: &Place, reason: Value) {
    let norms = beside(place);
    assert_eq!(norms["comparison"], json!({ "Not": [reason] }), "{norms}");
}

#[test]
fn a_different_condition_of_the_trials_is_given_as_the_reason() {
    let differs = |condition: &str| json!({ "Differs": condition });
    for (how, reason, said) in [
        (Trials { phone: "on-support", ..FITS }, differs("Arms"), "different in the closest source: arms."),
        (Trials { phone: "at-breastbone", ..FITS }, differs("Arms"), "different in the closest source: arms."),
        (Trials { target: 40, ..FITS }, differs("Cap"), "different in the closest source: when an attempt ends."),
        (Trials { trials: 2, ..FITS }, differs("Statistic"), "how the figure is made."),
        (Trials { exercise: "one-leg-stand", ..FITS }, json!({ "NotKnown": "Arms" }), "not known of these attempts: arms."),
        (
            Trials { exercise: "heel-to-toe-stand", rung: "heel-to-toe", ..FITS },
            json!("OtherStand"),
            "they are for standing on one leg.",
        ),
    ] {
        let place = Place::prepared();
        keep(&place, &example(&place));
        record_trials(&place, how);
        only(&place, reason);
        let review = place.clinic(&["review", "S1"]).split_whitespace().collect::<Vec<_>>().join(" ");
        assert!(review.contains(said), "{said:?} in {review}");
    }
}

#[test]
fn a_condition_that_the_table_lacks_or_has_differently_is_given_as_the_reason() {
    let place = Place::prepared();
    record_trials(&place, FITS);
    // Only the first row, so that no row for another age matches better.
    let table = example(&place);
    let first = table.rsplit_once("[[row]]").expect("two rows").0;
    let not = |kind: &str, condition: &str| json!({ kind: condition });
    for (from, to, reason) in [
        ("\"40-49\"", "\"50-59\"", not("Differs", "Age")),
        ("eyes = \"open\"", "eyes = \"closed\"", not("Differs", "Eyes")),
        ("feet = \"bare\"", "feet = \"covered\"", not("Differs", "Feet")),
        ("arms = \"crossed\"", "arms = \"on-hips\"", not("Differs", "Arms")),
        ("\"best-of-3\"", "\"mean-of-3\"", not("Differs", "Statistic")),
        ("cap = 30", "cap = \"none\"", not("Differs", "Cap")),
        ("feet = \"bare\"", "#", not("NotStated", "Feet")),
        ("surface = \"firm\"", "#", not("NotStated", "Surface")),
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
    only(&place, json!("OnlyUnchecked"));
    for form in ["text", "json"] {
        let review = place.clinic(&["review", "S1", "--as", form]);
        for part in ["Springer", "41.9", "9.9 s"] {
            assert!(!review.contains(part), "{part:?} in {review}");
        }
    }
    assert!(place.clinic(&["review", "S1"]).contains("have not been checked"));
}
