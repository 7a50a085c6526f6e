//! The patient's pages on a phone: what is needed is in reach, and every page leads back to where it was opened.

use end_to_end::scenes::{BALANCE, Doses, HOLD, TAKEN, ZONE};
use end_to_end::{Desktop, Window};
use serde_json::json;
use words::{Key, Locale, Words};

/// Phones, upright and on their side, and the size in which the window opens on a desktop.
const SIZES: [(u32, u32); 4] = [(390, 844), (360, 640), (640, 360), (460, 844)];

/// A hold, repetitions and trials, long enough to look at each screen.
const DOSES: Doses = Doses {
    hold: "{ repetitions = 2, seconds = 30, rest = 60 }",
    reps: "{ sets = 1, repetitions = 2, rest = 60, tempo = [3, 3, 3] }",
    balance: "{ trials = 3, target = 60, rest = 0 }",
};

#[track_caller]
fn open(desktop: &Desktop, plan: &str, time: &str) -> Window {
    desktop.prescribe(plan, TAKEN);
    desktop.open("patient").at(&format!("2027-03-01T{time}:30+01:00")).zone(ZONE).start()
}

/// Checks that these buttons are on the screen, whether the page is at its top or at its end, in every size of screen and of text.
#[track_caller]
fn in_reach(window: &Window, screen: &str, buttons: [&str; 2]) {
    let seen = "const main = document.querySelector('main:not([hidden])'); main.scrollTo(0, arguments[1]);
        const button = [...document.querySelectorAll('button')].find((it) => it.textContent === arguments[0]);
        const box = button.getBoundingClientRect(), page = main.getBoundingClientRect();
        return box.top >= page.top && box.bottom <= page.bottom + 1;";
    let mut found = Vec::new();
    for (width, height) in SIZES {
        for large in [false, true] {
            window.resize(width, height);
            window.enlarge_text(large);
            let name = format!("patient-{screen}-{width}x{height}{}", if large { "-large" } else { "" });
            for (place, top) in [("top", 0), ("end", 99_999)] {
                let out = buttons.iter().filter(|words| window.ask(seen, &[json!(words), json!(top)]) != json!(true));
                found.extend(out.map(|words| format!("{name}, {place}: {words}")));
            }
            window.ask("document.querySelector('main').scrollTo(0, 0)", &[]);
            window.screenshot(&name);
            found.extend(window.misfits().into_iter().chain(window.cramped()).map(|line| format!("{name}: {line}")));
        }
    }
    window.enlarge_text(false);
    window.resize(390, 844);
    assert!(found.is_empty(), "{}", found.join("\n"));
}

#[test]
fn a_card_and_the_precautions_keep_their_buttons_in_reach_and_the_first_exercise_can_be_tried() {
    let desktop = Desktop::new();
    desktop.prescribe(HOLD, TAKEN);
    let window = desktop.open("new").at("2027-03-01T10:03:00+01:00").zone(ZONE).start();
    window.welcomed();
    window.press("I do exercises");
    window.choose_file("Card picture or file", &desktop.path("card/card.png"));
    window.see("Start this plan");
    assert!(!window.can_press("Look around with a sample plan"), "the card is there");
    in_reach(&window, "card", ["Start this plan", "Use another card"]);
    window.press("Start this plan");
    window.see("Nothing to do now");
    window.see("Sit tall, chin back. It counts as an extra session.");
    window.screenshot("patient-try-first");
    window.press("Try the first one now");
    window.see("Before you start");
    window.see("Stop if pain goes above 5 of 10.");
    in_reach(&window, "precautions", ["I have read this. Start", "Not now"]);
    window.press("I have read this. Start");
    window.see("Halfway");
    window.press("Stop");
    window.press("Continue");
    window.see("Nothing to do now");
    window.see_no_more("Try the first one now");
    window.press("Record");
    window.see("1 extra session.");
    window.see_no_more("Not enough data");
}

#[test]
fn back_and_escape_return_to_the_place_that_was_left() {
    let desktop = Desktop::new();
    let window = desktop.with_one_of_each_kind(&DOSES, "09:00").size(360, 640).start();
    let scrolled = "return document.querySelector('main:not([hidden])').scrollTop";
    window.press("Plan");
    window.see("Stand on one leg");
    for leave in ["Back", "Escape"] {
        window.press("How to do it: Stand on one leg");
        window.see("What it is for");
        let at = "const main = document.querySelector('main'); main.scrollTo(0, 150); return main.scrollTop";
        assert_eq!(window.ask(at, &[]), json!(150), "a page of its own");
        if leave == "Back" {
            window.press("Back")
        } else {
            window.key("Escape")
        }
        window.see("Stand on one leg");
        window.wait_for("return document.activeElement.ariaLabel === 'How to do it: Stand on one leg'");
        assert!(window.ask(scrolled, &[]).as_f64() > Some(100.0), "{leave}: {}", window.ask(scrolled, &[]));
    }
    window.press("Record");
    window.press("Your data");
    window.press("Help");
    window.see("What if I missed a session?");
    window.key("Escape");
    window.see("Erase everything");
    window.key("Escape");
    window.see("For the visit");
    window.press("Now");
    window.press("Something is wrong");
    window.press("Too much pain, or a new pain");
    window.see("During which exercise?");
    window.key("Escape");
    window.see("What is wrong?");
    window.key("Escape");
    window.see("Remind me in 10 minutes");
    window.press("Skip this time");
    window.press("Take days off");
    window.see("First day off");
    window.key("Escape");
    window.see("Why skip it?");
    window.key("Escape");
    window.see("Remind me in 10 minutes");
    window.key("Escape");
    window.see("Remind me in 10 minutes");
}

#[test]
fn five_reasons_come_first_and_two_of_them_lead_to_help() {
    let desktop = Desktop::new();
    let window = open(&desktop, HOLD, "09:00");
    window.press("Skip this time");
    window.see("Why skip it?");
    let count = "return document.querySelectorAll('.choices button:not(.quiet)').length";
    assert_eq!(window.ask(count, &[]), json!(5));
    window.fits();
    window.screenshot("patient-skip");
    window.press("More reasons");
    window.wait_for("return document.querySelectorAll('.choices button').length === 11");
    window.press("Not sure how to do it");
    window.see("Would you like to see how it is done?");
    window.screenshot("patient-skipped-not-sure");
    window.press("How to do it");
    window.see("Common mistakes");
    window.press("Back");
    window.see("Nothing to do now");
    window.see("skipped: not sure how to do it");
}

#[test]
fn a_session_skipped_because_of_pain_offers_what_to_do_and_can_be_left_at_that() {
    let desktop = Desktop::new();
    let window = open(&desktop, HOLD, "09:00");
    window.press("Skip this time");
    window.press_part("It hurt");
    window.see("If something is wrong, say so now");
    window.screenshot("patient-skipped-pain");
    window.press("Something is wrong");
    window.see("What is wrong?");
    window.press("Nothing is wrong, go back");
    window.see("Nothing to do now");
}

#[test]
fn days_off_can_start_later() {
    let desktop = Desktop::new();
    let window = open(&desktop, HOLD, "09:00");
    window.press("Plan");
    window.press("Take days off");
    window.choose("First day off", "Thursday 4 March");
    window.choose("Last day off", "Friday 5 March");
    window.fits();
    window.screenshot("patient-days-off");
    window.press("Travelling");
    window.see("Change times");
    window.press("Now");
    window.see("Remind me in 10 minutes");
    window.press("Record");
    window.press("Was something entered by mistake?");
    window.see("Days off from 4 March to 5 March: travelling");
}

#[test]
fn times_are_moved_from_the_plan() {
    let desktop = Desktop::new();
    let window = open(&desktop, HOLD, "09:00");
    window.press("Plan");
    window.press("Change times: Sit tall, chin back");
    window.see("The new times start tomorrow.");
    assert!(!window.can_press("Save times"), "nothing is changed yet");
    window.choose("From", "10:30");
    window.choose("To", "14:30");
    window.see("5 times a day");
    for (width, height) in [(360, 640), (390, 844)] {
        window.resize(width, height);
        window.fits();
        window.screenshot(&format!("patient-times-{width}x{height}"));
    }
    window.press("Save times");
    window.see("From Tuesday 2 March: every day, every hour from 10:30 to 14:30");
    window.see("Every day, every hour from 09:00 to 17:00");
    window.screenshot("patient-times-saved");
    window.press("Now");
    window.see("Remind me in 10 minutes");
    window.close();
    let window = desktop.open("patient").at("2027-03-02T08:00:00+01:00").zone(ZONE).start();
    window.see("Next: Sit tall, chin back, at 10:30");
    window.press("Plan");
    window.see("Every day, every hour from 10:30 to 14:30");
    assert!(!window.sees("From Tuesday"), "{}", window.text());
}

#[test]
fn without_a_sensor_no_phone_is_laid_down_and_the_first_days_record_says_once_that_data_are_few() {
    let desktop = Desktop::new();
    let window = open(&desktop, BALANCE, "09:00");
    window.start_what_is_due();
    window.see("Start countdown");
    window.see("Have this device beside it, within reach.");
    assert!(!window.sees("Lay the phone"), "{}", window.text());
    window.fits();
    window.screenshot("patient-no-sensor");
    window.press("Start countdown");
    window.see("press any key or touch the screen");
    window.key("Space");
    window.see("Last attempt");
    window.press("Stop");
    window.press("Continue");
    window.press("I'd rather not answer");
    window.press("Record");
    window.see("Where no change is stated, there is not enough data yet.");
    assert!(!window.sees("Not enough data"), "once is enough: {}", window.text());
    window.fits();
    window.screenshot("patient-record-first-day");
}

#[test]
fn a_heel_raise_goes_up_and_down_and_nothing_has_failed_before_it_begins() {
    let desktop = Desktop::new();
    let window = desktop.with_one_of_each_kind(&DOSES, "10:00").start();
    window.start_what_is_due();
    window.see("Get ready");
    assert!(!window.sees("Couldn't do that one"), "{}", window.text());
    window.screenshot("patient-reps-ready");
    for (beat, name) in [("Up", "up"), ("Hold", "hold"), ("Down", "down")] {
        window.wait_for(&format!("return document.querySelector('main h1')?.textContent === '{beat}'"));
        assert!(window.sees("Couldn't do that one"), "{}", window.text());
        window.screenshot(&format!("patient-reps-{name}"));
    }
}

/// Each page in each language, on a small and a larger phone, light and dark: nothing is cut off, and Start is on the first screen.
#[test]
fn pages_fit_in_each_language_light_and_dark() {
    let looks = [(Locale::EsEs, (360, 640), true), (Locale::En, (360, 640), false), (Locale::EsEs, (390, 844), false)];
    for (locale, (width, height), dark) in looks.into_iter().chain([(Locale::En, (390, 844), true)]) {
        let desktop = Desktop::new();
        desktop.prescribe(HOLD, TAKEN);
        let opening = desktop.open("patient").at("2027-03-01T09:10:00+01:00").zone(ZONE).size(width, height);
        let opening = opening.with("LC_ALL", if locale == Locale::EsEs { "es_ES.UTF-8" } else { "C.UTF-8" });
        let window = if dark { opening.dark().start() } else { opening.start() };
        let tone = if dark { "dark" } else { "light" };
        look_around(&window, Words::new(locale), &format!("{}-{width}x{height}-{tone}", locale.tag()));
    }
}

fn look_around(window: &Window, words: Words, name: &str) {
    let say = |key| words.text(key);
    let keep = |page: &str| {
        window.fits();
        window.screenshot(&format!("pages-{name}-{page}"));
    };
    window.see(say(Key::MeetingNow));
    keep("now");
    window.ask("document.querySelector('main').scrollTo(0, 9999)", &[]);
    keep("now-end");
    window.press(&words.for_minutes(60));
    window.see(say(Key::MeetingEnd));
    window.ask("document.querySelector('main').scrollTo(0, 0)", &[]);
    keep("meeting");
    let start = "const start = [...document.querySelectorAll('button')].find((it) => it.textContent === arguments[0]);
        return start.getBoundingClientRect().bottom <= document.querySelector('main').getBoundingClientRect().bottom";
    assert_eq!(window.ask(start, &[json!(say(Key::StartSession))]), json!(true), "{name}");
    window.press(say(Key::StartSession));
    window.see(say(Key::Precautions));
    keep("precautions");
    window.press(say(Key::NotNow));
    window.press(say(Key::SkipThisTime));
    window.see(say(Key::SkipMoreReasons));
    keep("skip");
    window.press(say(Key::TakeDaysOff));
    window.see(say(Key::DaysOffFrom));
    keep("days-off");
    window.key("Escape");
    window.see(say(Key::SkipMoreReasons));
    window.key("Escape");
    window.press(say(Key::PlacePlan));
    window.press_part(say(Key::ChangeTimes));
    window.see(say(Key::ChangeTimesWhat));
    window.choose(say(Key::To), "02:00");
    window.see(say(Key::TimesOverMidnight));
    keep("times");
    window.choose(say(Key::To), "15:00");
    window.press(say(Key::SaveTimes));
    window.see(say(Key::ChangeTimes));
    keep("plan");
}
