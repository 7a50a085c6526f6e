//! Measures how late reminders come: one a minute for so many minutes (`lateness MINUTES`), by the real clock, from the slot's
//! time to the moment at which the notification service shows it.

use end_to_end::Desktop;
use std::fmt::Write;
use std::time::{Duration, SystemTime, UNIX_EPOCH};

/// So many times of day an item may have.
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

fn main() {
    let minutes: usize = std::env::args().nth(1).and_then(|text| text.parse().ok()).unwrap_or(30);
    let minutes = minutes.min(TIMES * EXERCISES.len());
    let now = now_ms() / 1000;
    // The first minute that leaves time to open the window; all of them on one day.
    let first = now / 60 + 2;
    assert!((first + minutes as u64) / 1440 == first / 1440, "the minutes go over midnight (UTC): try again after it");
    let desktop = Desktop::new();
    let at = |minute: u64| format!("{:02}:{:02}", minute / 60 % 24, minute % 60);
    let (today, review) = today_and_later(now);
    desktop.prescribe(&plan(&review, first, minutes, at), &format!("{today}T{}:00Z", at(now / 60)));
    let window = desktop.open("patient").zone("UTC").start();
    let mut late = Vec::new();
    for minute in first..first + minutes as u64 {
        while desktop.notifications() <= late.len() && now_ms() < (minute + 1) * 60_000 {
            std::thread::sleep(Duration::from_millis(2));
        }
        if desktop.notifications() <= late.len() {
            println!("no reminder came at {}", at(minute));
            return;
        }
        late.push(now_ms() as f64 - (minute * 60_000) as f64);
    }
    drop(window);
    late.sort_by(f64::total_cmp);
    let place = |share: f64| late[((late.len() - 1) as f64 * share).round() as usize];
    println!(
        "{} reminders, milliseconds late: median {:.0}, p99 {:.0}, worst {:.0}",
        late.len(),
        place(0.5),
        place(0.99),
        place(1.0)
    );
}

fn plan(review: &str, first: u64, minutes: usize, at: impl Fn(u64) -> String) -> String {
    let mut plan = format!("review = {review}\n");
    for (number, exercise) in EXERCISES.iter().enumerate() {
        let own = (number * TIMES..((number + 1) * TIMES).min(minutes)).map(|n| format!("\"{}\"", at(first + n as u64)));
        let own: Vec<String> = own.collect();
        if own.is_empty() {
            continue;
        }
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

/// Today and the day four weeks from now, by UTC.
fn today_and_later(now_s: u64) -> (String, String) {
    let day = |s: u64| exercises::time::Stamp { utc_ms: (s * 1000) as i64, offset_s: 0 }.date().to_string();
    (day(now_s), day(now_s + 28 * 86_400))
}

fn now_ms() -> u64 {
    SystemTime::now().duration_since(UNIX_EPOCH).map_or(0, |since| since.as_millis() as u64)
}
