//! Reminder settings, export and erasure in the real window: when reminders come and when not, the files that a person can take
//! along, and erasing everything.

use end_to_end::scenes::HOLD;
use end_to_end::{Desktop, Window, carryover};
use exercises::remind::{MEETINGS, Span};
use std::path::{Path, PathBuf};
use std::time::Duration;
use words::{Key, Locale, Words};

const EN: Words = Words::new(Locale::En);
const ZONE: &str = "Europe/Vienna";
const NOON: Span = Span { from: 12 * 60, to: 13 * 60 };

/// A patient who took a card at half past eight.
fn prepare(desktop: &Desktop) {
    desktop.prescribe(HOLD, "2027-03-01T08:30:00+01:00");
}

fn open(desktop: &Desktop, time: &str) -> Window {
    desktop.open("patient").at(&format!("2027-03-01T{time}+01:00")).zone(ZONE).start()
}

fn to_reminders(window: &Window, words: Words) {
    window.press(words.text(Key::PlacePlan));
    window.press(words.text(Key::RemindersTitle));
    window.see(words.text(Key::NoReminderHoursTitle));
}

fn to_mine(window: &Window, words: Words) {
    window.press(words.text(Key::PlaceRecord));
    window.press(words.text(Key::MineTitle));
    window.see(words.text(Key::EraseTitle));
}

/// Waits for an effect of the program outside its window.
#[track_caller]
fn becomes(event: &str, so: impl Fn() -> bool) {
    let waited = (0..1200).any(|_| {
        std::thread::sleep(Duration::from_millis(100));
        so()
    });
    assert!(waited, "never so: {event}");
}

#[test]
fn a_meeting_suppresses_reminders_until_it_is_over() {
    let desktop = Desktop::new();
    prepare(&desktop);
    let window = open(&desktop, "08:50:00");
    to_reminders(&window, EN);
    window.see("Next reminder: Monday 1 March, 09:00.");
    window.press("30 minutes");
    window.see("In a meeting until 09:2");
    window.see("Next reminder: Monday 1 March, 09:2");
    window.close();

    let window = open(&desktop, "08:59:50");
    window.see("In a meeting until 09:2");
    window.see("Monday, 09:00");
    window.see("Start");
    // Another minute later, the loop has checked many times since the slot opened.
    becomes("09:01", || window.sees("Monday, 09:01"));
    assert_eq!(desktop.notifications(), 0, "silence");
    window.press("End meeting");
    window.see_no_more("In a meeting until");
    desktop.notified("09:00: about");
    assert_eq!(desktop.notifications(), 1);
}

#[test]
fn a_meeting_is_begun_and_ended_on_now_and_begun_on_a_notification() {
    let desktop = Desktop::new();
    prepare(&desktop);
    let window = open(&desktop, "09:10:00");
    desktop.notified("09:00: about");
    window.press("1 hour");
    window.see("In a meeting until 10:1");
    assert!(!window.can_press("1 hour"), "one meeting at a time");
    window.resize(360, 640);
    window.screenshot("own-meeting-360x640");
    whole_in_sight(&window, "Start");
    window.press("End meeting");
    window.see("In a meeting? No reminders for:");
    window.see_no_more("In a meeting until");
    desktop.press_on_notification("In a meeting: 1 hour");
    window.see("In a meeting until 10:1");
    whole_in_sight(&window, "Start");
}

/// Checks that the button with these words is on the first screen, above the main menu.
#[track_caller]
fn whole_in_sight(window: &Window, button: &str) {
    let seen = "const box = [...document.querySelectorAll('button')].find((it) => it.textContent === arguments[0]).getBoundingClientRect();
        const main = document.querySelector('main'); main.scrollTo(0, 0);
        return box.top >= 0 && box.bottom <= main.getBoundingClientRect().bottom;";
    assert_eq!(window.ask(seen, &[button.into()]), serde_json::json!(true), "{button}");
}

#[test]
fn a_notification_disappears_when_its_slot_is_done_in_the_window() {
    let desktop = Desktop::new();
    prepare(&desktop);
    let window = open(&desktop, "09:10:00");
    desktop.notified("09:00: about");
    window.press("I already did it");
    window.see("Nothing to do now");
    desktop.no_notification();
    assert_eq!(desktop.notifications(), 1);
}

/// Two items at once: the page shows one, and the person looks at the other.
const TWO: &str = r#"
review = 2027-04-12
age = "18-39"

[[item]]
number = 1
exercise = "sit-tall-chin-back"
hold = { repetitions = 3, seconds = 10, rest = 10 }
at = ["09:00"]
days = "every-day"

[[item]]
number = 2
exercise = "heel-raise"
reps = { sets = 2, repetitions = 10, rest = 30, tempo = [2, 1, 2] }
at = ["09:00"]
days = "every-day"
"#;

#[test]
fn a_chosen_slot_that_is_put_off_shows_when_it_comes_back() {
    let desktop = Desktop::new();
    desktop.prescribe(TWO, "2027-03-01T08:30:00+01:00");
    let window = open(&desktop, "09:10:00");
    let title = "return document.querySelector('main h1')?.textContent === arguments[0]";
    let speaks_of = |name: &str| window.wait_for(&title.replace("arguments[0]", &format!("'{name}'")));
    speaks_of("Sit tall, chin back");
    window.press("due now");
    speaks_of("Heel raise");
    window.press("Remind me in 10 minutes");
    window.see("Reminder at 09:2");
    window.see("due now, reminder at 09:2");
    speaks_of("Heel raise");
    window.fits();
    window.screenshot("own-put-off");
}

#[test]
fn without_a_tray_closing_asks_and_leaves_no_notification_behind() {
    let desktop = Desktop::new();
    prepare(&desktop);
    let window = open(&desktop, "09:10:00");
    desktop.notified("09:00: ");
    window.see("Start");
    window.ask_to_close();
    window.see("Close and stop reminders?");
    window.fits();
    window.screenshot("own-closing");
    window.press("Back");
    window.see("Start");
    window.ask_to_close();
    window.press("Keep it in the background");
    window.see("Start");
    window.ask_to_close();
    window.see("Close and stop reminders?");
    let lock = window.home().join("lock");
    // A moment later, so that the driver gets its answer before the program ends.
    window.ask(
        "const end = [...document.querySelectorAll('button')].find((it) => it.textContent === 'Close and stop reminders');
            setTimeout(() => end.click(), 300); return end.textContent",
        &[],
    );
    becomes("ended", || std::fs::File::open(&lock).is_ok_and(|file| file.try_lock().is_ok()));
    desktop.no_notification();
}

#[test]
fn closing_the_window_again_while_being_asked_ends_the_program() {
    let desktop = Desktop::new();
    prepare(&desktop);
    let window = open(&desktop, "09:10:00");
    window.see("Start");
    window.ask_to_close();
    window.see("Close and stop reminders?");
    let lock = window.home().join("lock");
    window.ask_to_close();
    becomes("ended", || std::fs::File::open(&lock).is_ok_and(|file| file.try_lock().is_ok()));
    desktop.no_notification();
}

#[test]
fn a_clock_a_day_behind_is_reported_and_an_extra_session_counted() {
    let desktop = Desktop::new();
    prepare(&desktop);
    let window = open(&desktop, "08:40:00");
    window.press("Do one now");
    window.press_part("Sit tall");
    window.press("I have read this. Start");
    window.see("Halfway");
    window.press("Stop");
    window.press("Continue");
    window.press(EN.text(Key::PlaceRecord));
    window.see("1 extra session.");
    window.screenshot("own-extra");
    window.close();
    let window = desktop.open("patient").at("2027-02-28T20:00:00+01:00").zone(ZONE).start();
    window.press(EN.text(Key::PlaceRecord));
    window.see("this device says that today is 28 February");
    assert!(!window.sees(EN.text(Key::NothingYet)), "{}", window.text());
    window.fits();
    window.screenshot("own-clock-behind");
}

#[test]
fn the_tray_summarises_the_day_and_suppresses_reminders() {
    let desktop = Desktop::new();
    prepare(&desktop);
    let window = open(&desktop, "09:30:00");
    let day = ["0 of 9 done.", "Due now, until 10:00."];
    desktop.tray_says(&[&day[..], &["Open", "In a meeting for 2 hours", "Quit"]].concat());
    desktop.choose_in_tray("In a meeting for 2 hours");
    window.see("In a meeting until 11:30.");
    desktop.tray_says(&[&day[..], &["In a meeting until 11:30.", "Open", "End meeting", "Quit"]].concat());
    window.press("End meeting");
    window.press("I already did it");
    desktop.tray_says(&["1 of 9 done.", "Next at 10:00.", "Open", "In a meeting for 2 hours", "Quit"]);
    window.press(EN.text(Key::PlaceRecord));
    desktop.choose_in_tray("Quit");
    let lock = window.home().join("lock");
    becomes("ended", || std::fs::File::open(&lock).is_ok_and(|file| file.try_lock().is_ok()));
}

#[test]
fn quiet_times_are_kept_and_the_window_says_until_when() {
    let desktop = Desktop::new();
    prepare(&desktop);
    let window = open(&desktop, "11:30:00");
    to_reminders(&window, EN);
    window.see("None.");
    window.press("Add hours");
    window.see("Saved: no reminders from 12:00 to 13:00.");
    assert!(!window.can_press("Add hours"), "it is there already");
    window.press("Back");
    to_reminders(&window, EN);
    window.see(&EN.quiet_span(NOON));
    window.choose("From", "22:00");
    window.choose("To", "07:00");
    window.press("Add hours");
    window.see("Saved: no reminders from 22:00 to 07:00.");
    window.press("Remove: 22:00 to 07:00");
    window.see("Removed: 22:00 to 07:00.");
    window.screenshot("own-quiet-saved");
    window.close();

    let window = open(&desktop, "12:05:00");
    window.see("No reminder until 13:00.");
    window.press("Reminders");
    window.see(&EN.quiet_span(NOON));
    assert!(!window.sees("22:00 to 07:00"), "{}", window.text());
    window.see("Next reminder: Monday 1 March, 13:00.");
}

#[test]
fn opening_at_login_is_off_and_is_what_the_system_says() {
    let desktop = Desktop::new();
    prepare(&desktop);
    let window = open(&desktop, "10:30:00");
    to_reminders(&window, EN);
    window.see(EN.text(Key::StayEnds));
    assert!(started_at_login(&desktop).is_empty(), "off at first");
    window.press_part(EN.text(Key::StayAtLogin));
    becomes("opens at login", || !started_at_login(&desktop).is_empty());
    let entry = std::fs::read_to_string(&started_at_login(&desktop)[0]).expect("a desktop entry");
    let home = window.home().to_string_lossy().into_owned();
    for part in ["Exec=/", "carryover-shell --hidden --home", &home] {
        assert!(entry.contains(part), "{part:?} in {entry}");
    }
    // Removed by somebody else in the system's own settings; the page must show that.
    std::fs::remove_file(&started_at_login(&desktop)[0]).expect("the test owns it");
    window.press("Back");
    to_reminders(&window, EN);
    window.see(EN.text(Key::StayAtLogin));
    window.wait_for("return document.querySelector('input[type=checkbox]').checked === false");
    window.press_part(EN.text(Key::StayAtLogin));
    becomes("opens at login again", || !started_at_login(&desktop).is_empty());
    window.press_part(EN.text(Key::StayAtLogin));
    becomes("no more", || started_at_login(&desktop).is_empty());
}

/// The programs that start when somebody logs in to this desktop.
fn started_at_login(desktop: &Desktop) -> Vec<PathBuf> {
    let entries = std::fs::read_dir(desktop.path(".config/autostart"));
    entries.map(|entries| entries.flatten().map(|entry| entry.path()).collect()).unwrap_or_default()
}

#[test]
fn everything_is_exported_and_then_erased_and_the_window_starts_over() {
    let desktop = Desktop::new();
    prepare(&desktop);
    let window = open(&desktop, "10:30:00");
    to_reminders(&window, EN);
    window.press("Save the times for a calendar");
    window.see("Saved as calendar-2027-03-01.ics in your home folder.");
    let calendar = std::fs::read_to_string(desktop.path("calendar-2027-03-01.ics")).expect("the calendar");
    assert!(calendar.starts_with("BEGIN:VCALENDAR") && calendar.contains("BEGIN:VEVENT"), "{calendar}");
    window.press_part(EN.text(Key::StayAtLogin));
    becomes("opens at login", || !started_at_login(&desktop).is_empty());
    window.press("Back");

    to_mine(&window, EN);
    calls_its_downloads(&desktop, "Descargas");
    window.press("Export my data");
    let folder = desktop.path("Descargas/carryover-2027-03-01");
    window.see("Saved in the folder carryover-2027-03-01 in Downloads.");
    saved_whole(&folder);

    window.ask("localStorage.setItem('told-tray', '1')", &[]);
    window.press("Erase everything");
    window.see("Erase everything, for good?");
    window.wait_for("return document.activeElement.textContent === 'No, keep it'");
    window.press("No, keep it");
    window.see_no_more("for good?");
    window.press("Erase everything");
    window.press("Yes, erase everything");
    window.see("Everything is erased.");
    window.welcomed();
    window.see("I prescribe exercises");
    assert_eq!(window.ask("return localStorage.length", &[]), serde_json::json!(0));
    becomes("no more at login", || started_at_login(&desktop).is_empty());
    saved_whole(&folder);
    window.press("I do exercises");
    window.see("Add your plan card");
    window.close();

    let window = open(&desktop, "10:40:00");
    window.see("Add your plan card");
}

/// Writes the file in which a desktop names a person's folders, in their language.
fn calls_its_downloads(desktop: &Desktop, name: &str) {
    let config = desktop.path("config");
    std::fs::create_dir_all(&config)
        .and_then(|()| std::fs::create_dir(desktop.path(name)))
        .expect("the test owns the folder");
    std::fs::write(config.join("user-dirs.dirs"), format!("XDG_DOWNLOAD_DIR=\"$HOME/{name}\"\n")).expect("written");
}

/// Checks that the folder contains everything: the log as JSON, tables, the plan.
fn saved_whole(folder: &Path) {
    let json = std::fs::read_to_string(folder.join("everything.json")).expect("everything.json");
    let json: serde_json::Value = serde_json::from_str(&json).expect("JSON");
    assert!(json.to_string().contains("Ropewalk Practice"), "{json}");
    let tables = std::fs::read_dir(folder).expect("the folder").flatten();
    assert!(tables.filter(|file| file.path().extension().is_some_and(|ending| ending == "csv")).count() > 0);
}

/// Each page in each language, on narrow, low and wide pages, light and dark: nothing is cut off or too small to press.
#[test]
fn every_page_fits_and_is_kept_as_a_picture() {
    for (name, (width, height), dark, locale) in [
        ("phone", (390, 844), false, Locale::En),
        ("small-dark-es", (360, 640), true, Locale::EsEs),
        ("desk-es", (1280, 800), false, Locale::EsEs),
        ("desk-dark", (1280, 800), true, Locale::En),
    ] {
        let desktop = Desktop::new();
        prepare(&desktop);
        let home = desktop.path("patient").to_string_lossy().into_owned();
        let quiet = ["patient", "reminders", "--quiet", "12:00-13:00", "--meeting", "120"];
        carryover(&[&["--home", &home, "--at", "2027-03-01T11:25:00+01:00"], &quiet[..]].concat());
        let mut opening = desktop.open("patient").at("2027-03-01T11:31:00+01:00").zone(ZONE).size(width, height);
        opening = if dark { opening.dark() } else { opening };
        opening = opening.with("LC_ALL", if locale == Locale::EsEs { "es_ES.UTF-8" } else { "C.UTF-8" });
        look_around(&opening.start(), Words::new(locale), name);
    }
}

fn look_around(window: &Window, words: Words, name: &str) {
    let keep = |event: &str| {
        window.fits();
        window.screenshot(&format!("own-{name}-{event}"));
    };
    window.see(words.text(Key::MeetingEnd));
    window.ask_to_close();
    window.see(words.text(Key::ClosingWhat));
    keep("closing");
    window.press(words.text(Key::Back));
    window.see(words.text(Key::MeetingEnd));
    keep("now");
    to_reminders(window, words);
    keep("meeting");
    window.press(words.text(Key::MeetingEnd));
    window.see(&words.for_minutes(MEETINGS[0]));
    window.choose(words.text(Key::From), "12:30");
    window.press(words.text(Key::NoReminderHoursAdd));
    keep("reminders");
    window.ask("document.querySelector('main').scrollTo(0, 430)", &[]);
    keep("reminders-middle");
    window.press(words.text(Key::CalendarSave));
    window.see(words.text(Key::StayTitle));
    window.ask("document.querySelector('main').scrollTo(0, 9999)", &[]);
    keep("reminders-foot");
    window.press(words.text(Key::Back));
    to_mine(window, words);
    window.press(words.text(Key::MineSave));
    keep("mine");
    for (title, name) in [(Key::HelpTitle, "help"), (Key::PrivacyTitle, "privacy"), (Key::AboutTitle, "about")] {
        window.press(words.text(title));
        window.see_no_more(words.text(Key::MineWhat));
        window.wait_for("return document.querySelector('main').scrollTop === 0");
        keep(name);
        window.press(words.text(Key::Back));
    }
    window.press(words.text(Key::EraseTitle));
    window.see(words.text(Key::EraseAsk));
    keep("sure");
}
