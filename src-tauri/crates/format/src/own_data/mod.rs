//! Everything that a patient's copy holds about the patient, exported for that person: one JSON file with all of it, and
//! tables for a spreadsheet. The files are not encrypted; the pairing secret and keys are not in them.
//!
//! # `everything.json`, version 2
//! One object:
//! * `format` is `carryover-everything`, `version` is 2; `program` is the program's version, `made` when the file was
//!   written, `log` the id of this copy's log.
//! * `plans` is a list; each has `id`, `clinic`, `fingerprint`, `start`, `follows` (the revision in force), `agreed` (items
//!   whose times the person moved, with the `schedule` agreed to), `revisions`, and `exercises` (the texts of all exercises
//!   in the plan, in the person's language).
//! * A revision has `revision`, `taken` (moments), `issued`, `review`, `age`, `considered_absent`, `items`, `complaints`,
//!   `activities`, `stance`, `aftercare`, `cleared` (ids of alarms), `phone` (the clinic's telephone
//!   number), `confirmed` (the day on which `considered_absent` was last confirmed).
//! * `entries` is the whole log, in order; each entry has `n`, `plan`, `at`, `day`, `time` (both by the wall clock of that
//!   moment), `clock` (`ahead` or `behind`, only if the device's clock was wrong then), `what`,
//!   and the details of that kind of entry. A run appears once for each of its snapshots; the last one with
//!   the same `run` counts.
//! * `reminders` has the `quiet` times and the last `meeting`.
//!
//! Moments are in RFC 3339 with the offset that applied then, days in ISO 8601, times as `HH:MM:SS`, durations in seconds. A
//! value that was not measured, not answered or does not apply is `null`. A later version may add keys; if a meaning changes,
//! `version` rises. Version 1 has one kind of entry, `pain`, for two meanings, alarms without ids, and other words for skipped slots
//! and days off. Entries that were logged by version 1 keep their kinds, `pain` and `settled`.
//!
//! # Tables
//! RFC 4180 with a header line, UTF-8. An empty cell means "not measured" or "does not apply". A text that a spreadsheet
//! would take for a formula has an apostrophe before it.
//! The column `clock` says `wrong` where the device's clock was wrong: moments and days are then what it showed.
//! * `runs.csv`: a line for each hold, set or trial of each run, from the run's last snapshot; `slot` is its number within
//!   the day, from 1.
//! * `answers.csv`: a line for each answer; `kind` is `morning` (the pain of a complaint), `during` (the pain while doing an
//!   item), `settled`, or `activity`.
//! * `days.csv`: a line for each day and item: the number of slots with each mark, and each slot with its time.
//! * `alarms.csv`: a line for each alarm: what the person said was wrong, and each rating above an item's limit.
//! * `corrections.csv`: a line for each correction that the person made. The other tables hold the corrected values;
//!   `everything.json` has both the first value and the correction, each as an entry.

mod corrections;
mod entries;
mod plans;
mod tables;

use chrono::{DateTime, FixedOffset, SecondsFormat};
use exercises::catalogue::{Catalogue, Lang};
use exercises::id::LogId;
use exercises::log::Entry;
use exercises::misdated::WrongClock;
use exercises::plan::Plan;
use exercises::remind::Settings;
use exercises::summary::ItemDay;
use exercises::time::{MinuteOfDay, Stamp};
use exercises::today::Followed;
use serde_json::{Value, json};
use std::collections::BTreeMap;

/// The version of `everything.json`.
pub const VERSION: u8 = 2;

/// One plan, with everything that the copy holds about it.
#[derive(Debug, Clone)]
pub struct PlanData<'a> {
    /// The fingerprint of the clinic's key.
    pub fingerprint: String,
    /// All revisions that were taken, as their cards give them.
    pub revisions: &'a BTreeMap<u16, Plan>,
    /// The revision in force, with the schedules agreed to, and its history.
    pub followed: &'a Followed,
    /// The catalogue with the plan's exercises.
    pub catalogue: &'a Catalogue,
    /// How the slots of all days until now went.
    pub days: Vec<ItemDay>,
}

/// Everything that the copy holds.
#[derive(Debug, Clone)]
pub struct OwnData<'a> {
    /// The program's version.
    pub program: &'a str,
    /// When the files are written.
    pub made: Stamp,
    /// The id of this copy's log.
    pub log: LogId,
    /// The person's language.
    pub lang: Lang,
    /// All plans.
    pub plans: Vec<PlanData<'a>>,
    /// The whole log.
    pub entries: &'a [Entry],
    /// The person's settings for reminders.
    pub reminders: &'a Settings,
}

/// The files, each with its name.
pub fn files(own_data: &OwnData<'_>) -> Vec<(&'static str, Vec<u8>)> {
    vec![
        ("everything.json", everything(own_data)),
        ("runs.csv", tables::runs(own_data)),
        ("answers.csv", tables::answers(own_data)),
        ("days.csv", tables::days(own_data)),
        ("alarms.csv", tables::alarms(own_data)),
        ("corrections.csv", corrections::corrections(own_data)),
    ]
}

fn everything(own_data: &OwnData<'_>) -> Vec<u8> {
    let quiet = own_data.reminders.quiet.iter().map(|span| json!({ "from": clock(span.from), "to": clock(span.to) }));
    let whole = json!({
        "format": "carryover-everything",
        "version": VERSION,
        "program": own_data.program,
        "made": moment(own_data.made),
        "log": own_data.log.to_string(),
        "plans": own_data.plans.iter().map(|held| plans::plan(held, own_data.lang)).collect::<Vec<Value>>(),
        "entries": own_data.entries.iter().map(|entry| entries::entry(entry, wrong_clock(own_data, entry))).collect::<Vec<Value>>(),
        "reminders": {
            "quiet": quiet.collect::<Vec<Value>>(),
            "meeting": own_data.reminders.meeting.map(|one| json!({ "from": moment(one.from), "until": moment(one.until) })),
        },
    });
    let mut bytes = serde_json::to_vec_pretty(&whole).expect("a value made of texts and numbers can be written");
    bytes.push(b'\n');
    bytes
}

/// How the device's clock was wrong when the entry was made; `None` if nothing speaks against it.
fn wrong_clock(own_data: &OwnData<'_>, entry: &Entry) -> Option<WrongClock> {
    let of_plan = own_data.plans.iter().find(|held| held.followed.plan.header.id == entry.plan)?;
    of_plan.followed.history.wrong_clock.mark(entry.n).map(|mark| mark.wrong)
}

/// The moment as RFC 3339, with the offset that applied then.
pub(crate) fn moment(stamp: Stamp) -> String {
    let utc = DateTime::from_timestamp_millis(stamp.utc_ms).unwrap_or_default();
    match FixedOffset::east_opt(stamp.offset_s) {
        Some(offset) => utc.with_timezone(&offset).to_rfc3339_opts(SecondsFormat::AutoSi, false),
        None => utc.to_rfc3339_opts(SecondsFormat::AutoSi, false),
    }
}

/// A time of day such as "09:00"; minutes from 1440 on are on the next day.
fn clock(minute: u16) -> String {
    MinuteOfDay::on_the_clock(minute).to_string()
}

/// Milliseconds as seconds.
fn seconds(ms: u32) -> f64 {
    f64::from(ms) / 1000.0
}
