//! Measures how late reminders come, from the slot's time to the moment at which the notification service shows it: one a minute for
//! a number of minutes by the real clock (`lateness MINUTES`), or those of a whole simulated day (`lateness day`).

use end_to_end::Desktop;
use std::fmt::Write;
use std::time::{Duration, SystemTime, UNIX_EPOCH};

/// Largest number of times of day for one item.
const TIMES: usize = 8;
const EXERCISES: [&str; 8] = [
    "sit-tall-chin-back",
    "heel-raise",
    "sit-to-stand",
    "heel-raise",
    "sit-tall-chin-back",
    "heel-raise",
    "sit-to-stand",
    "sit-tall-chin-back",
];

/// Where Debian's package faketime installs its library.
const FAKETIME: &str = "/usr/lib/x86_64-linux-gnu/faketime/libfaketime.so.1";
/// How long before a slot the clock is set, in seconds: longer than the longest sleep of the program plus the time for which the
/// library keeps a time.
const LEAD_S: i64 = 8;

fn main() {
    match std::env::args().nth(1).as_deref() {
        Some("day") => simulated_day(),
        minutes => by_the_minute(minutes.and_then(|text| text.parse().ok()).unwrap_or(30)),
    }
}

fn by_the_minute(minutes: usize) {
    let minutes = minutes.min(TIMES * EXERCISES.len());
    let now = now_ms() / 1000;
    // The first minute that leaves enough time to open the window; all minutes are on one day.
    let first = now / 60 + 2;
    assert!((first + minutes as i64) / 1440 == first / 1440, "the minutes go over midnight (UTC): try again after it");
    let desktop = Desktop::new();
    let dues: Vec<i64> = (first..first + minutes as i64).collect();
    desktop.prescribe(&plan(&dues), &instant(now / 60));
    let window = desktop.open("patient").zone("UTC").start();
    let late = dues.iter().map_while(|due| shown_late(&desktop, due * 60_000));
    tell(late.collect(), dues.len());
    drop(window);
}

/// A day from six in the morning with a reminder every quarter of an hour. Before each slot the program's clock jumps to some
/// seconds before it, as after sleep, and then runs like the real one.
fn simulated_day() {
    let morning = 29_695_980; // 2026-06-18, 05:00
    let dues: Vec<i64> = (0..(TIMES * EXERCISES.len()) as i64).map(|n| morning + 60 + 15 * n).collect();
    let desktop = Desktop::new();
    desktop.prescribe(&plan(&dues), &instant(morning));
    let folder = tempfile::tempdir().expect("there is room");
    let file = folder.path().join("ahead");
    let set_ahead = |seconds: i64| {
        let part = folder.path().join("part");
        std::fs::write(&part, format!("{seconds:+}")).and_then(|()| std::fs::rename(part, &file)).expect("there is room");
        seconds * 1000
    };
    let ahead_before = |due: i64| set_ahead(due * 60 - LEAD_S - now_ms() / 1000);
    ahead_before(morning + 30);
    let opening = desktop.open("patient").zone("UTC").with("LD_PRELOAD", FAKETIME).with("FAKETIME_CACHE_DURATION", "1");
    let opening = opening.with("FAKETIME_TIMESTAMP_FILE", &file.to_string_lossy());
    let window = opening.with("FAKETIME_DONT_FAKE_MONOTONIC", "1").start();
    let late = dues.iter().map_while(|due| shown_late(&desktop, due * 60_000 - ahead_before(*due)));
    tell(late.collect(), dues.len());
    drop(window);
}

/// How much later than due the next reminder is shown, in milliseconds; `None` if none comes within a minute.
fn shown_late(desktop: &Desktop, due_ms: i64) -> Option<f64> {
    let before = desktop.notifications();
    while desktop.notifications() <= before {
        if now_ms() >= due_ms + 60_000 {
            return None;
        }
        std::thread::sleep(Duration::from_millis(2));
    }
    Some((now_ms() - due_ms) as f64)
}

fn tell(mut late: Vec<f64>, due: usize) {
    late.sort_by(f64::total_cmp);
    let place = |share: f64| late.get((late.len().saturating_sub(1) as f64 * share).round() as usize).copied();
    let said = |share| place(share).map_or("none".to_owned(), |ms| format!("{ms:.0}"));
    let (median, p99, worst) = (said(0.5), said(0.99), said(1.0));
    println!("{} of {due} reminders, milliseconds late: median {median}, p99 {p99}, worst {worst}", late.len());
}

fn instant(minute: i64) -> String {
    let stamp = exercises::time::Stamp { utc_ms: minute * 60_000, offset_s: 0 };
    format!("{}Z", stamp.local().format("%Y-%m-%dT%H:%M:%S"))
}

/// A plan whose slots are due at these minutes since 1970 UTC, all on one day.
fn plan(dues: &[i64]) -> String {
    let date = |minute: i64| exercises::time::Stamp { utc_ms: minute * 60_000, offset_s: 0 }.date();
    let mut plan = format!("review = {}\n", date(dues[0] + 28 * 1440));
    for ((number, exercise), own) in EXERCISES.iter().enumerate().zip(dues.chunks(TIMES)) {
        let own: Vec<String> = own.iter().map(|due| format!("\"{:02}:{:02}\"", due / 60 % 24, due % 60)).collect();
        let dose = match *exercise {
            "sit-tall-chin-back" => "hold = { repetitions = 1, seconds = 5, rest = 5 }",
            _ => "reps = { sets = 1, repetitions = 3, rest = 10, tempo = [1, 0, 1] }",
        };
        let _ = writeln!(
            plan,
            "\n[[item]]\nnumber = {}\nexercise = \"{exercise}\"\n{dose}\nat = [{}]\ndays = \"every-day\"",
            number + 1,
            own.join(", ")
        );
    }
    plan
}

fn now_ms() -> i64 {
    SystemTime::now().duration_since(UNIX_EPOCH).map_or(0, |since| since.as_millis() as i64)
}
