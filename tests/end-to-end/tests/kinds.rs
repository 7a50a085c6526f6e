//! A run of each kind of exercise in the window: what is shown, what is pressed, and what stands in the record afterwards.

use end_to_end::scenes::{TAKEN, ZONE};
use end_to_end::{Desktop, Window};

/// All are due at nine; the doses are the smallest there are.
const PLAN: &str = r#"
review = 2027-04-12
age = "18-39"

[[item]]
number = 1
exercise = "calf-stretch"
side = "left"
stretch = { repetitions = 1, seconds = 8, rest = 0 }
at = ["09:00"]
days = "every-day"

[[item]]
number = 2
exercise = "heel-slide"
side = "right"
move = { repetitions = 3 }
at = ["09:00"]
days = "every-day"

[[item]]
number = 3
exercise = "walk"
go = { minutes = 1, effort = 3 }
at = ["09:00"]
days = "every-day"

[[item]]
number = 4
exercise = "slow-breath"
breath = { minutes = 1, pace = [3, 0, 4, 0] }
at = ["09:00"]
days = "every-day"

[[item]]
number = 5
exercise = "rest-lying"
care = { minutes = 1 }
at = ["09:00"]
days = "every-day"

[[item]]
number = 6
exercise = "change-position"
prompt = {}
at = ["09:00"]
days = "every-day"
"#;

#[track_caller]
fn looked_at(window: &Window, name: &str) {
    window.fits();
    window.look_at_phone_sizes(&format!("kind-{name}"));
}

/// The pose of the figure is drawn anew while it moves.
#[track_caller]
fn figure_moves(window: &Window) {
    window.ask("window.firstFigure = document.querySelector('.run-figure svg').innerHTML", &[]);
    window.wait_for("return document.querySelector('.run-figure svg').innerHTML !== window.firstFigure");
}

#[test]
fn every_kind_is_guided_and_recorded() {
    let desktop = Desktop::new();
    let made = desktop.prescribe(PLAN, TAKEN);
    let window = desktop.open("patient").at("2027-03-01T09:00:30+01:00").zone(ZONE).start();

    window.see("1 stretch of 8 seconds, left");
    looked_at(&window, "stretch-now");
    window.start_what_is_due();
    window.see("Ease into it");
    figure_moves(&window);
    window.see("Keep the stretch");
    window.screenshot("kind-stretch");
    window.see("1 of 1 stretch completed.");
    window.press("Continue");
    window.press("0");

    window.see("3 movements at your own pace, right");
    window.start_what_is_due();
    window.see("At your own pace");
    figure_moves(&window);
    window.press("Count one");
    window.see("of 3");
    looked_at(&window, "move");
    window.press("Count one");
    window.press("Count one");
    window.see("3 of 3 repetitions done.");
    window.press("Continue");
    window.press("0");

    window.see("1 minute at effort 3 of 10");
    window.start_what_is_due();
    window.see("You can switch the screen off. The time goes on.");
    window.see("Effort aimed at: 3 of 10.");
    figure_moves(&window);
    looked_at(&window, "go");
    window.press("Pause");
    window.see("Paused");
    window.press("Stop");
    window.see("Stopped here");
    window.see("0 of 1 minute.");
    window.press("Continue");
    window.press("0");

    window.see("1 minute, 3 s in and 4 s out");
    window.start_what_is_due();
    window.see("Breathe in");
    figure_moves(&window);
    looked_at(&window, "breath");
    window.see("Breathe out");
    window.press("Stop");
    window.see("Stopped here");
    window.press("Continue");

    window.see("Rest on the back, knees bent");
    window.start_what_is_due();
    window.see("The time is running");
    looked_at(&window, "care");
    window.press("Stop");
    window.press("Continue");

    window.see("Change your position");
    assert!(!window.can_press("Start") && !window.can_press("I already did it"), "one press does it");
    looked_at(&window, "prompt");
    window.press("I’ve done it");
    window.see_no_more("I’ve done it");
    window.press("Record");
    looked_at(&window, "record");
    window.close();

    let counts = made.patient("2027-03-01T12:00:00+01:00", &["correct"]);
    assert!(counts.contains("calf-stretch") || counts.contains("Calf stretch"), "{counts}");
}

/// The kinds that have a result or a beat, with the smallest doses there are.
const RESULTS: &str = r#"
review = 2027-04-12
age = "18-39"
absent = ["high-fall-risk", "vertigo-or-fainting", "numb-feet", "neurological-unsteadiness", "partial-weight-bearing", "fresh-injury", "severe-osteoporosis", "sedatives-or-alcohol", "cognitive-impairment", "late-pregnancy"]

[[item]]
number = 1
exercise = "stand-turn-head"
limit = { trials = 1, cap = 5, rest = 0 }
at = ["09:00"]
days = "every-day"

[[item]]
number = 2
exercise = "chair-rise-30s"
count = { seconds = 10 }
at = ["09:00"]
days = "every-day"

[[item]]
number = 3
exercise = "gaze-on-spot"
beat = { repetitions = 1, seconds = 5, per_minute = 120, rest = 0 }
at = ["09:00"]
days = "every-day"

[[item]]
number = 4
exercise = "bag-lift"
quota-times = { times = 2, step = 1, every_days = 1, goal = 4 }
at = ["09:00"]
days = "every-day"
"#;

#[test]
fn what_has_a_result_or_a_beat_is_guided_and_recorded() {
    let desktop = Desktop::new();
    desktop.prescribe(RESULTS, TAKEN);
    let window = desktop.open("patient").at("2027-03-01T09:00:30+01:00").zone(ZONE).start();

    window.see("1 attempt of up to 5 seconds");
    assert!(!window.can_press("I already did it"), "nobody knows the seconds");
    window.start_what_is_due();
    window.see("Both feet on the floor");
    looked_at(&window, "limit-before");
    window.press("Start countdown");
    window.see("It begins at the rising tone.");
    window.screenshot("kind-limit-count-in");
    window.see("when you take a step or hold on");
    window.screenshot("kind-limit");
    window.see("5 s, target reached");
    looked_at(&window, "limit-done");
    window.press("Continue");
    window.press("0");

    window.see("as many as you can in 10 seconds");
    assert!(!window.can_press("I already did it"), "nobody knows the number");
    window.start_what_is_due();
    looked_at(&window, "count-before");
    window.press("Start countdown");
    window.see("The time is running");
    window.press("Count one");
    window.press("Count one");
    looked_at(&window, "count");
    window.see("How many were complete?");
    looked_at(&window, "count-number");
    window.type_into("How many were complete?", "3");
    window.press("Save this number");
    window.see("3 in 10 s");
    looked_at(&window, "count-done");
    window.press("Continue");
    window.press("0");

    window.see("1 round of 5 seconds at 120 beats a minute");
    window.start_what_is_due();
    window.see("On the beat");
    window.wait_for(
        "const bob = document.querySelector('.bob').getAttribute('d'); window.bob ??= bob; return window.bob !== bob",
    );
    window.screenshot("kind-beat");
    window.see("1 of 1 round completed.");
    window.press("Continue");
    window.see("Are you dizzier than before you began?");
    looked_at(&window, "beat-dizzier");
    window.press("Yes, and it stays");
    window.see("Before this is recorded");
    window.press("Back");
    window.press("A little, and it is settling");
    window.press("0");

    window.see("2 times, 1 more every day, up to 4");
    looked_at(&window, "quota-now");
    window.start_what_is_due();
    window.see("At your own pace");
    looked_at(&window, "quota");
    window.press("Count one");
    window.press("Count one");
    window.see("2 of 2 repetitions done.");
    window.press("Continue");
    window.press("0");
    window.press("Record");
    window.see("Tests by repetitions");
    looked_at(&window, "record-results");
    window.close();

    let next_day = desktop.open("patient").at("2027-03-02T09:00:30+01:00").zone(ZONE).start();
    next_day.press("Plan");
    next_day.see("3 times, 1 more every day, up to 4");
    looked_at(&next_day, "quota-plan");
}
