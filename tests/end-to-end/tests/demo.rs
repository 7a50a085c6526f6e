//! The demo on any day: its scenario is made for a day, and the windows are opened on it. What is due depends on the weekday, so the
//! exercises are started on each; the whole story is gone through on days that are difficult in several ways at once.

use end_to_end::{Demo, Desktop, Part, Story, Window};
use std::cell::RefCell;
use std::path::Path;

const PHONE: (u32, u32) = (390, 844);
const DESK: (u32, u32) = (1280, 800);

/// The demo for `day` in `zone`.
fn demo(day: &str, zone: &str) -> Demo {
    Demo::make(&Path::new(env!("CARGO_TARGET_TMPDIR")).join(format!("demo-{day}")), day, Some(zone))
}

/// The parts that were shown when `tell` goes through the story of `day`.
fn shown(day: &str, zone: &str, tell: impl Fn(&Story<'_>)) -> Vec<Part> {
    let Demo { homes, first, at } = demo(day, zone);
    let shown = RefCell::new(Vec::new());
    let at_part = |_: &Window, part: Part| shown.borrow_mut().push(part);
    let zone = Some(zone.to_owned());
    tell(&Story { homes: homes.clone(), first, at, zone, phone: PHONE, desk: DESK, dark: false, at_part: &at_part });
    std::fs::remove_dir_all(&homes).expect("it can be removed");
    shown.into_inner()
}

/// Checks that on this day the patient finds both exercises, is guided, and returns to the Now page.
#[track_caller]
fn begins_on(day: &str) {
    let parts = shown(day, "Europe/Vienna", |story| drop(story.exercises(&Desktop::new())));
    assert_eq!(parts, [Part::Now, Part::GuidedHold, Part::BalanceTrial], "{day}");
}

#[test]
fn exercises_are_guided_on_each_working_day() {
    for day in ["2026-11-23", "2026-11-24", "2026-11-25", "2026-11-26", "2026-11-27"] {
        begins_on(day);
    }
}

#[test]
fn exercises_are_guided_at_a_weekend() {
    for day in ["2026-11-28", "2026-11-29"] {
        begins_on(day);
    }
}

#[test]
fn the_whole_story_works_on_a_sunday_at_the_end_of_a_month_east_of_the_date_line() {
    assert_eq!(shown("2027-01-31", "Pacific/Auckland", |story| story.whole()), Part::ALL);
}

#[test]
fn the_whole_story_works_on_a_leap_day_west_of_the_date_line() {
    assert_eq!(shown("2028-02-29", "America/Los_Angeles", |story| story.whole()), Part::ALL);
}
