//! "Something is wrong": the questions and the advice that the patient sees, and clearing the alarm on the clinician's side.

use end_to_end::scenes::{FOUR_WEEKS_ON, HOLD, TAKEN, ZONE};
use end_to_end::{Desktop, Window};
use serde_json::json;
use words::{Key, Locale, Words};

/// The sizes in which the pages are looked at.
const SIZES: [(u32, u32); 2] = [(390, 844), (360, 640)];

const PHONE: &str = "00 555 0100";

/// A hold at ten in the morning only, with a pain limit of 5.
fn once_a_day() -> String {
    HOLD.replace("every = { minutes = 60, from = \"09:00\", to = \"17:00\" }", "at = [\"10:00\"]")
}

#[track_caller]
fn open(desktop: &Desktop, at: &str) -> Window {
    desktop.open("patient").at(at).zone(ZONE).start()
}

#[track_caller]
fn look(window: &Window, name: &str) {
    for (width, height) in SIZES {
        window.resize(width, height);
        window.fits();
        window.screenshot(&format!("alarms-{name}-{width}x{height}"));
    }
    window.resize(390, 844);
}

/// Stops the hold that has begun half-way; then it is asked how much it hurt.
#[track_caller]
fn stop_a_hold(window: &Window) {
    window.see("Hold 1 of 3");
    window.see("Halfway");
    window.press("Stop");
    window.press("Continue");
    window.see("Pain while doing it: Sit tall, chin back");
}

#[test]
fn a_rating_above_the_limit_shows_both_numbers_and_the_clinics_and_can_be_taken_back() {
    let desktop = Desktop::new();
    desktop.prescribe_with_phone(&once_a_day(), TAKEN, PHONE);
    let window = open(&desktop, "2027-03-01T10:02:00+01:00");
    window.start_what_is_due();
    stop_a_hold(&window);
    look(&window, "asked");
    window.press("8");
    window.see("You rated the pain 8. Your limit for this exercise is 5.");
    window.see(PHONE);
    window.see("This exercise is paused for today.");
    look(&window, "above-the-limit");
    window.press("That was a mistake: change the number");
    window.see("Pain while doing it: Sit tall, chin back");
    window.press("3");
    window.see("Pain while doing Sit tall, chin back: 3 of 10");
    look(&window, "answered");
    window.press("Undo");
    window.see("How did it go?");
    window.press("4");
    window.see("Pain while doing Sit tall, chin back: 4 of 10");
    window.close();
    let window = open(&desktop, "2027-03-02T10:02:00+01:00");
    window.press("Start");
    stop_a_hold(&window);
    window.see("Last time: 4");
}

#[test]
fn what_is_paused_is_said_before_it_is_recorded_and_an_illness_ends_when_the_person_says_so() {
    let desktop = Desktop::new();
    desktop.prescribe_with_phone(&once_a_day(), TAKEN, PHONE);
    let window = open(&desktop, "2027-03-01T09:00:00+01:00");
    window.press("Something is wrong");
    window.press("I fell");
    window.see("If you record it, everything that you do standing");
    window.press_part("I hit my head");
    look(&window, "before-a-fall-is-recorded");
    window.press("Back");
    window.press("Fever, or feeling ill");
    window.see("until you say that you are well again");
    window.press("Record it");
    window.see("Stop and rest.");
    look(&window, "ill");
    window.press("Close");
    window.see("until you say that you are well again");
    look(&window, "paused-while-ill");
    window.press("I am well again");
    window.see("Nothing to do now");
}

#[test]
fn an_urgent_page_has_nothing_beside_the_call_for_help() {
    let desktop = Desktop::new();
    desktop.prescribe_with_phone(&once_a_day(), TAKEN, PHONE);
    let window = open(&desktop, "2027-03-01T09:00:00+01:00");
    window.press("Something is wrong");
    window.press_part("Chest pain");
    window.see("Call your local emergency number now, or ask somebody to call");
    let framed =
        "return [...document.querySelectorAll('main:not([hidden]) :is(button:not(.quiet), .sheet, .clinic-phone)')].length";
    assert_eq!(window.ask(framed, &[]), json!(0), "{}", window.text());
    look(&window, "urgent");
    window.press("Close");
    window.see("Only a new card from your clinic can restart it.");
}

#[test]
fn from_the_review_an_alarm_and_a_proposal_go_into_the_next_plan_with_one_press_each() {
    let desktop = Desktop::new();
    let made = desktop.with_four_weeks();
    let file = desktop.path("summary.age").to_string_lossy().into_owned();
    made.patient(FOUR_WEEKS_ON, &["summary", "--until", "2027-03-28", "--out", &file]);
    made.clinic(&["receive", &file]);
    let window = desktop.open("clinic").at("2027-03-29T09:00:00+02:00").zone(ZONE).size(1280, 800).start();
    let words = Words::new(Locale::En);
    window.type_into(words.text(Key::Passphrase), "plumb line and lantern");
    window.press(words.text(Key::ClinicUnlock));
    window.press_part("K17");
    window.see("What next");
    window.see("Nearly fell");
    window.screenshot("alarms-review-1280x800");
    window.press("Talked about it: clear it with the next plan");
    window.see("Talked about it: cleared in the next plan");
    window.press("Put it into the next plan");
    window.see("In the next plan");
    window.press("Next plan");
    window.see("Plan 2 for K17");
    let ticked = "return [...document.querySelectorAll('.alarm-banner input')].filter((it) => it.checked).length";
    assert_eq!(window.ask(ticked, &[]), json!(1));
    window.see("Last confirmed on 1 March");
    window.press("Still true today");
    window.see("Confirmed today");
}
