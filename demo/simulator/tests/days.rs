//! The scenario around any day: each weekday, the ends of months and of a year, a leap day, in zones on both sides of the date line
//! and with any language of the machine.

use actions::clinic::{lock, reviewing};
use actions::patient::today;
use actions::{Clock, DataFolder, Moment, clock};
use chrono::{Datelike, Duration, NaiveDate, Weekday};
use chrono_tz::Tz;
use exercises::today::Head;
use std::path::{Path, PathBuf};
use std::process::Command;

const AUCKLAND: &str = "Pacific/Auckland";
const LOS_ANGELES: &str = "America/Los_Angeles";
const CODES: [&str; 7] = ["A11", "B24", "C37", "D42", "E58", "F63", "G71"];
const HOMES: [&str; 8] = ["A11-work", "A11-home", "B24", "C37", "D42", "E58", "F63", "G71"];

/// Makes the scenario for a day, or without one for the day that it chooses; returns its folder and the two moments that it prints.
fn make(day: Option<&str>, zone: &str) -> (PathBuf, String, String) {
    let name = format!("{}-{}", day.unwrap_or("chosen"), zone.replace('/', "-"));
    let out = Path::new(env!("CARGO_TARGET_TMPDIR")).join(name);
    let _ = std::fs::remove_dir_all(&out);
    let mut simulator = Command::new(env!("CARGO_BIN_EXE_simulator"));
    simulator.arg(&out).args(day.map(|day| ["--until", day]).iter().flatten());
    let made =
        simulator.env("TZ", zone).env("LANG", "es_ES.UTF-8").env("LC_ALL", "es_ES.UTF-8").output().expect("it starts");
    assert!(made.status.success(), "{day:?} in {zone}: {}", String::from_utf8_lossy(&made.stderr));
    let printed = String::from_utf8(made.stdout).expect("text");
    let (first, at) = printed.trim_end().split_once(' ').expect("two moments");
    (out, first.to_owned(), at.to_owned())
}

fn moment(instant: &str, zone: &str) -> Moment {
    let place: Tz = zone.parse().expect("a zone");
    let read = chrono::DateTime::parse_from_rfc3339(instant).expect("RFC 3339");
    // The window accepts the same text.
    Clock::set_to(instant).expect("the window takes it");
    let moment = clock::at(read.timestamp_millis(), place);
    assert_eq!(read.offset().local_minus_utc(), moment.now.offset_s, "{instant} has the offset of {zone}");
    moment
}

/// Checks that the scenario of this day is complete: every device has its plan, and every patient has a review.
fn is_whole(day: &str, zone: &str) {
    let (out, first, at) = make(Some(day), zone);
    let date: NaiveDate = day.parse().expect("a date");
    assert!(at.starts_with(&format!("{day}T14:02:00")), "{at}");
    assert!(first.starts_with(&format!("{}T08:30:00", date - Duration::days(42))), "{first}");
    let now = moment(&at, zone);
    for home in HOMES {
        let folder = DataFolder::open(&out.join(home), false).expect("a device's folder");
        let page = today::page(&folder, &now).expect("its page Now");
        assert!(!matches!(page.head, Head::NoPlan | Head::Over { .. }), "{day}, {home}: {:?}", page.head);
        assert!(page.items.iter().any(|item| item.paused.is_none()), "{day}, {home}: there is something to begin");
    }
    let weekend = matches!(date.weekday(), Weekday::Sat | Weekday::Sun);
    let folder = DataFolder::open(&out.join("A11-home"), false).expect("a device's folder");
    let head = today::page(&folder, &now).expect("its page Now").head;
    // On the day of the visit nothing is done yet: on a working day the hold of 14:00 is due.
    assert_eq!(matches!(head, Head::Due { .. }), !weekend, "{day}: {head:?}");
    let mut clinic = DataFolder::open(&out.join("clinic"), false).expect("the clinic's folder");
    let passphrase = std::fs::read_to_string(out.join("passphrase.txt")).expect("its passphrase");
    lock::unlock(&mut clinic, passphrase.trim_end().into()).expect("the clinic opens");
    for code in CODES {
        let page = reviewing::page(&clinic, &now, code).expect("a page");
        assert_eq!(page.today, date, "{day}, {code}");
        assert!(page.review.is_some(), "{day}, {code}: its summaries have come");
    }
    std::fs::remove_dir_all(&out).expect("it can be removed");
}

#[test]
fn each_day_of_a_week() {
    for day in ["2026-11-23", "2026-11-24", "2026-11-25", "2026-11-26", "2026-11-27", "2026-11-28", "2026-11-29"] {
        is_whole(day, "UTC");
    }
}

#[test]
fn the_ends_of_months_of_a_year_and_a_leap_day_on_both_sides_of_the_date_line() {
    for (day, zone) in [
        ("2027-01-31", AUCKLAND),
        ("2028-02-29", LOS_ANGELES),
        ("2027-12-31", AUCKLAND),
        ("2028-01-01", LOS_ANGELES),
        // The clocks change within the six weeks, and on the day itself.
        ("2027-03-14", LOS_ANGELES),
        ("2027-04-04", AUCKLAND),
        // The first and the last day that demo/run accepts.
        ("2021-01-01", "Asia/Kathmandu"),
        ("2198-12-31", "Europe/Vienna"),
    ] {
        is_whole(day, zone);
    }
}

#[test]
fn without_a_day_it_chooses_a_working_day() {
    for zone in [AUCKLAND, LOS_ANGELES] {
        let (out, _, at) = make(None, zone);
        let date = moment(&at, zone).now.date();
        assert!(!matches!(date.weekday(), Weekday::Sat | Weekday::Sun), "{at}");
        std::fs::remove_dir_all(&out).expect("it can be removed");
    }
}
