//! A step that the clinician allowed, offered on the patient's page once the rules propose it, and taken by a press.

use end_to_end::Desktop;

const PLAN: &str = r#"
review = 2027-04-12
age = "18-39"

[[item]]
number = 1
exercise = "sit-tall-chin-back"
hold = { repetitions = 3, seconds = 10, rest = 10 }
every = { minutes = 60, from = "09:00", to = "17:00" }
days = "every-day"
may_step = true
"#;

/// Two days on which every hold was done.
fn two_days() -> String {
    let hours = |day: u32| (9..=17).map(move |hour| (day, hour));
    let run = |(day, hour): (u32, u32)| {
        format!("{{\"do\":\"run\",\"at\":\"2027-03-{day:02}T{hour:02}:02:00+01:00\",\"item\":1,\"held\":[10,10,10]}}\n")
    };
    hours(1).chain(hours(2)).map(run).collect()
}

#[test]
fn a_step_is_offered_and_taken() {
    let desktop = Desktop::new();
    let made = desktop.prescribe(PLAN, "2027-03-01T08:30:00+01:00");
    let runs = desktop.path("runs.jsonl");
    std::fs::write(&runs, two_days()).expect("the desktop's folder is writable");
    made.patient("2027-03-02T20:00:00+01:00", &["record", &runs.to_string_lossy()]);

    let window = desktop.open("patient").at("2027-03-03T09:00:30+01:00").zone("Europe/Vienna").start();
    window.see("On to 15 seconds a hold?");
    window.see("3 holds of 10 seconds");
    window.fits();
    window.screenshot("step-offered");
    window.press("Begin with this step");
    window.see("Hold 1 of 3");
    window.press("Stop");
    window.press("Continue");
    window.see("3 holds of 15 seconds");
    window.screenshot("step-in-use");
}
