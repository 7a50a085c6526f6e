//! What patient and clinician look at together at a visit.

use end_to_end::{Desktop, Window};
use serde_json::json;

const PLAN: &str = r#"
review = 2027-03-15

[[complaint]]
number = 1
name = "neck"
side = "left"
pain = 6

[[activity]]
number = 1
name = "reading at the desk"
rating = 4

[[item]]
number = 1
exercise = "sit-tall-chin-back"
hold = { repetitions = 2, seconds = 10, rest = 10 }
every = { minutes = 60, from = "09:00", to = "17:00" }
days = "every-day"
serves = 1

[[item]]
number = 2
exercise = "heel-raise"
reps = { sets = 1, repetitions = 10, rest = 0, tempo = [2, 1, 2] }
at = ["18:00"]
days = "every-day"
"#;
const ISSUED: &str = "2027-03-01T08:30:00+01:00";
const VISIT: &str = "2027-03-15T08:30:00+01:00";

/// Two weeks: mornings get better, of nine holds a day three are done, none of which hurts, and there is never time for another.
fn two_weeks() -> String {
    (1..=14).map(a_day).collect()
}

fn a_day(day: u32) -> String {
    let at = |time: &str| format!("2027-03-{day:02}T{time}:00+01:00");
    let hold = |hour: u32| {
        let run = json!({"do": "run", "at": at(&format!("{hour:02}:01")), "item": 1, "held": [10, 10]});
        format!("{run}\n")
    };
    let pain = json!({"do": "pain", "at": at("08:45"), "complaint": 1, "score": if day > 6 { 2 } else { 6 }});
    let skip = json!({"do": "skip", "at": at("14:02"), "item": 1, "reason": "no-time"});
    format!("{pain}\n{}{skip}\n", (9..=11).map(hold).collect::<String>())
}

/// The page of K17 after these two weeks.
fn looked_at_together(desktop: &Desktop) -> Window {
    let made = desktop.prescribe(PLAN, ISSUED);
    let deeds = desktop.path("deeds.jsonl");
    std::fs::write(&deeds, two_weeks()).expect("the desktop's folder is writable");
    made.patient("2027-03-14T20:00:00+01:00", &["record", &deeds.to_string_lossy()]);
    let brought = desktop.path("brought.age").to_string_lossy().into_owned();
    made.patient("2027-03-15T08:00:00+01:00", &["summary", "--until", "2027-03-14", "--out", &brought]);
    made.clinic_at(VISIT, &["receive", &brought]);
    let clinic = desktop.unlocked_clinic(VISIT);
    clinic.press_part("K17");
    clinic.press("Look at it together");
    clinic.see("What next?");
    clinic
}

#[test]
fn in_two_minutes_a_visit_ends_in_a_plan_that_both_have_seen() {
    let desktop = Desktop::new();
    let clinic = looked_at_together(&desktop);
    clinic.see("In the last 14 days you did 42 of 140 sessions in full. Most of it did not get done.");
    clinic.see("Neck, left: pain 6 of 10 in the morning at first, 2 lately. That is clearly better.");
    clinic.see("Nothing else can be compared yet.");
    clinic.see("“no time, or could not get away”, 14 times");
    clinic.see("As until now. A full day: 10 sessions");
    clinic.look_at_desk_and_phones("together-before");
    // Half as often.
    clinic.press_part("5 sessions a day");
    clinic.see("Until now. A full day: 10 sessions");
    clinic.see("From today on. A full day: 6 sessions");
    clinic.look_at_desk_and_phones("together-fewer");
    clinic.press_part("Leave it out");
    clinic.see("From today on. A full day: 1 session");
    clinic.press("Keep");
    clinic.see("As until now. A full day: 10 sessions");
    clinic.press_part("5 sessions a day");
    clinic.see("From today on. A full day: 6 sessions");
    // It is the same draft as on the page of the plan, and on the review.
    clinic.press("Change anything else");
    clinic.see("A full day: 6 sessions");
    clinic.press("Review");
    clinic.press("Look at it together");
    clinic.see("From today on. A full day: 6 sessions");
    clinic.press("Issue plan card");
    clinic.see("Plan card for");
    clinic.close();
}

const WHY: &str = "Why not as proposed? (optional)";

/// How many options of an exercise are shown as chosen.
fn chosen(clinic: &Window, item: u32) -> serde_json::Value {
    let script = "return document.querySelectorAll('.together li')[arguments[0]].querySelectorAll('.proposal [aria-pressed=true]').length";
    clinic.ask(script, &[item.into()])
}

/// Waits until this reason, or none, is shown as given.
#[track_caller]
fn given(clinic: &Window, reason: &str) {
    clinic.wait_for(&format!(
        "return [...document.querySelectorAll('.why [aria-pressed=true]')].map((it) => it.textContent.trim()).join() === '{reason}'"
    ));
}

#[test]
fn a_reason_for_another_choice_is_kept_with_the_visit_until_the_proposal_is_followed() {
    let desktop = Desktop::new();
    let clinic = looked_at_together(&desktop);
    assert_eq!([chosen(&clinic, 0), chosen(&clinic, 1)], [1, 0], "what is to be talked about first is nobody's choice yet");
    clinic.see("Heel raise: nothing is chosen, so it stays as it is.");
    assert!(!clinic.sees(WHY), "no option was pressed");
    clinic.press_part("5 sessions a day");
    clinic.see(WHY);
    given(&clinic, "");
    clinic.press("Too little time");
    given(&clinic, "Too little time");
    clinic.look_at_desk_and_phones("together-why");
    clinic.press("Review");
    clinic.press("Visit");
    clinic.see("“Do less” not followed. Too little time");
    clinic.press("Review");
    clinic.press("Look at it together");
    given(&clinic, "Too little time");
    clinic.press("In other words");
    clinic.type_into("Your reason", "She starts a new job");
    clinic.press("Note");
    given(&clinic, "In other words");
    clinic.press("Leave it out");
    given(&clinic, "In other words");
    clinic.press_part("only the sessions before noon");
    clinic.see_no_more(WHY);
    clinic.press("Review");
    clinic.press("Visit");
    clinic.see("Nothing is noted yet.");
    clinic.close();
}
