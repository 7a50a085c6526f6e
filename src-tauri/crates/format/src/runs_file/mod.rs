//! What somebody did, one JSON object a line: how tests and scripts put a history into a patient's copy.

use crate::names::{self, Named};
use crate::plan_file::{FileFault, plainly};
use chrono::{DateTime, NaiveDate};
use exercises::alarm::Trouble;
use exercises::id::{ActivityId, ComplaintId, ItemId};
use exercises::log::{Barrier, DayOffReason};
use exercises::plan::Leg;
use exercises::run::{SetUp, TrialEnd};
use exercises::time::Stamp;
use serde::Deserialize;

/// Longest file that is read, in bytes.
pub const MAX_BYTES: u64 = 64 * 1024 * 1024;

/// Most holds, sets or trials of one run.
const MAX_PARTS: usize = 64;

/// Something that was done at a moment.
#[derive(Debug, Clone, PartialEq)]
pub struct RunsFileEntry {
    /// The line that says so, from 1.
    pub line: u32,
    /// When.
    pub at: Stamp,
    /// What.
    pub event: RunsFileEvent,
}

/// What was done.
#[derive(Debug, Clone, PartialEq)]
pub enum RunsFileEvent {
    /// The program was opened.
    Opened,
    /// A run of an item. Timed live unless `live` is false.
    Run {
        /// The item.
        item: ItemId,
        /// Timed live.
        live: bool,
        /// What was done in it.
        parts: Parts,
    },
    /// The slot of this item that is open at that moment was left out.
    Skipped {
        /// The item.
        item: ItemId,
        /// Why.
        reason: Barrier,
    },
    /// Days off were taken.
    DaysOff {
        /// First day.
        from: NaiveDate,
        /// Last day.
        until: NaiveDate,
        /// Why.
        why: DayOffReason,
    },
    /// Pain was rated.
    Pain {
        /// The complaint.
        complaint: ComplaintId,
        /// 0 to 10.
        score: u8,
    },
    /// The morning after was answered.
    Settled {
        /// The complaint.
        complaint: ComplaintId,
        /// Whether it had settled.
        settled: bool,
    },
    /// An activity was rated.
    Rated {
        /// The activity.
        activity: ActivityId,
        /// 0 to 10.
        score: u8,
    },
    /// Something was wrong.
    Trouble {
        /// What.
        trouble: Trouble,
        /// During which item.
        item: Option<ItemId>,
    },
}

/// What was done in a run. Sides follow from the plan.
#[derive(Debug, Clone, PartialEq)]
pub enum Parts {
    /// Milliseconds of each hold.
    Held(Vec<u32>),
    /// Repetitions of each set: done, failed.
    Counted(Vec<(u8, u8)>),
    /// Balance trials.
    Trials {
        /// Where the phone was, where that is said.
        phone: Option<SetUp>,
        /// Leg, milliseconds, end of each.
        each: Vec<(Leg, u32, TrialEnd)>,
    },
}

/// The reason of that name.
///
/// # Errors
/// The names that there are.
pub fn reason(name: &str) -> Result<Barrier, String> {
    named(name)
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields, rename_all = "kebab-case", tag = "do")]
enum Line {
    Opened {
        at: String,
    },
    Run {
        at: String,
        item: u8,
        #[serde(default = "yes")]
        live: bool,
        held: Option<Vec<f64>>,
        done: Option<Vec<u8>>,
        failed: Option<Vec<u8>>,
        trials: Option<Vec<TrialLine>>,
        phone: Option<String>,
    },
    LeaveOut {
        at: String,
        item: u8,
        reason: String,
    },
    Excuse {
        at: String,
        from: NaiveDateText,
        until: NaiveDateText,
        why: String,
    },
    Pain {
        at: String,
        complaint: u8,
        score: u8,
    },
    Settled {
        at: String,
        complaint: u8,
        settled: bool,
    },
    Activity {
        at: String,
        activity: u8,
        score: u8,
    },
    Trouble {
        at: String,
        what: String,
        item: Option<u8>,
    },
}

#[derive(Deserialize)]
struct NaiveDateText(String);

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct TrialLine {
    leg: String,
    seconds: f64,
    end: String,
}

fn yes() -> bool {
    true
}

/// Reads a whole file of entries. Empty lines and lines that begin with `#` are passed over.
///
/// # Errors
/// The first line that cannot be understood, with what was expected.
pub fn read(text: &str) -> Result<Vec<RunsFileEntry>, FileFault> {
    let lines = text.lines().enumerate().filter(|(_, line)| !line.trim().is_empty() && !line.trim_start().starts_with('#'));
    lines
        .map(|(number, line)| {
            let number = number as u32 + 1;
            one(line, number).map_err(|expected| FileFault { line: number, expected })
        })
        .collect()
}

fn one(line: &str, number: u32) -> Result<RunsFileEntry, String> {
    let parsed: Line = serde_json::from_str(line).map_err(|error| wrong(&error))?;
    let (at, what) = match parsed {
        Line::Opened { at } => (at, RunsFileEvent::Opened),
        Line::Run { at, item, live, held, done, failed, trials, phone } => {
            let parts = at_phone(parts(held, done, failed, trials)?, phone)?;
            (at, RunsFileEvent::Run { item: ItemId(item), live, parts })
        }
        Line::LeaveOut { at, item, reason } => (at, RunsFileEvent::Skipped { item: ItemId(item), reason: named(&reason)? }),
        Line::Excuse { at, from, until, why } => {
            (at, RunsFileEvent::DaysOff { from: date(&from)?, until: date(&until)?, why: named(&why)? })
        }
        Line::Pain { at, complaint, score } => {
            (at, RunsFileEvent::Pain { complaint: ComplaintId(complaint), score: ten(score)? })
        }
        Line::Settled { at, complaint, settled } => {
            (at, RunsFileEvent::Settled { complaint: ComplaintId(complaint), settled })
        }
        Line::Activity { at, activity, score } => {
            (at, RunsFileEvent::Rated { activity: ActivityId(activity), score: ten(score)? })
        }
        Line::Trouble { at, what, item } => (at, RunsFileEvent::Trouble { trouble: named(&what)?, item: item.map(ItemId) }),
    };
    Ok(RunsFileEntry { line: number, at: stamp(&at)?, event: what })
}

/// What is wrong with a line. The parser sees one line only, and would call each of them the first.
fn wrong(error: &serde_json::Error) -> String {
    let said = error.to_string();
    let said = plainly(said.split(" at line 1 column ").next().unwrap_or_default());
    match error.column() {
        0 => said,
        column => format!("{said} (at character {column})"),
    }
}

fn parts(
    held: Option<Vec<f64>>,
    done: Option<Vec<u8>>,
    failed: Option<Vec<u8>>,
    trials: Option<Vec<TrialLine>>,
) -> Result<Parts, String> {
    let counts = [held.as_ref().map(Vec::len), done.as_ref().map(Vec::len), trials.as_ref().map(Vec::len)];
    if counts.into_iter().flatten().any(|count| count > MAX_PARTS) {
        return Err(format!("a run has at most {MAX_PARTS} holds, sets or trials"));
    }
    match (held, done, failed, trials) {
        (Some(held), None, None, None) => Ok(Parts::Held(held.into_iter().map(ms).collect::<Result<_, _>>()?)),
        (None, Some(done), failed, None) => {
            let failed = failed.unwrap_or_else(|| vec![0; done.len()]);
            if failed.len() != done.len() {
                return Err("failed must have as many numbers as done".into());
            }
            Ok(Parts::Counted(done.into_iter().zip(failed).collect()))
        }
        (None, None, None, Some(trials)) => {
            let trials = trials.into_iter().map(|trial| Ok((named(&trial.leg)?, ms(trial.seconds)?, named(&trial.end)?)));
            Ok(Parts::Trials { phone: None, each: trials.collect::<Result<_, String>>()? })
        }
        _ => Err("a run needs one of held, done (with failed), trials".into()),
    }
}

/// Only trials depend on where the phone was.
fn at_phone(parts: Parts, phone: Option<String>) -> Result<Parts, String> {
    match (parts, phone) {
        (Parts::Trials { each, .. }, Some(phone)) => Ok(Parts::Trials { phone: Some(named(&phone)?), each }),
        (_, Some(_)) => Err("phone stands only beside trials".into()),
        (parts, None) => Ok(parts),
    }
}

fn ms(seconds: f64) -> Result<u32, String> {
    if (0.0..=3600.0).contains(&seconds) {
        Ok((seconds * 1000.0).round() as u32)
    } else {
        Err("seconds must be 0 to 3600".into())
    }
}

fn ten(score: u8) -> Result<u8, String> {
    if score <= 10 { Ok(score) } else { Err("a score must be 0 to 10".into()) }
}

fn named<T: Named>(name: &str) -> Result<T, String> {
    names::find(name).ok_or_else(|| format!("\"{name}\" is not one of {}", names::list::<T>()))
}

fn date(text: &NaiveDateText) -> Result<NaiveDate, String> {
    text.0.parse().map_err(|_| "a date such as 2026-11-25 belongs here".into())
}

fn stamp(text: &str) -> Result<Stamp, String> {
    let at = DateTime::parse_from_rfc3339(text)
        .map_err(|_| "at must be an instant such as 2026-11-25T09:02:00+01:00".to_owned())?;
    Ok(Stamp { utc_ms: at.timestamp_millis(), offset_s: at.offset().local_minus_utc() })
}

/// Two days of entries that fit the example plan, beginning on `start`, at the offset of `offset_s`.
pub fn example(start: NaiveDate, offset: &str) -> String {
    let next = start.succ_opt().unwrap_or(start);
    include_str!("example.jsonl")
        .replace("DAY1", &start.to_string())
        .replace("DAY2", &next.to_string())
        .replace("OFFSET", offset)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_example_is_valid() {
        let start = NaiveDate::from_ymd_opt(2026, 11, 25).expect("a date");
        let entries = read(&example(start, "+01:00")).expect("the example reads");
        assert!(entries.len() > 10);
        assert!(entries.iter().any(|entry| matches!(&entry.event, RunsFileEvent::Run { parts: Parts::Trials { .. }, .. })));
        assert!(entries.windows(2).all(|pair| pair[0].at <= pair[1].at), "in order of time");
    }

    #[test]
    fn a_wrong_line_is_named() {
        for (line, says) in [
            ("{", "EOF while parsing an object (at character 1)"),
            (r#"{"do":"jump","at":"2026-11-25T09:02:00Z"}"#, "unknown variant"),
            (r#"{"do":"pain","at":"2026-11-25T09:02:00Z","complaint":1,"score":11}"#, "0 to 10"),
            (r#"{"do":"pain","at":"yesterday","complaint":1,"score":1}"#, "an instant such as"),
            (r#"{"do":"run","at":"2026-11-25T09:02:00Z","item":1}"#, "one of held"),
            (r#"{"do":"run","at":"2026-11-25T09:02:00Z","item":1,"held":[1e9]}"#, "0 to 3600"),
            (r#"{"do":"run","at":"2026-11-25T09:02:00Z","item":1,"held":[1],"speed":3}"#, "unknown field"),
            (r#"{"do":"run","at":"2026-11-25T09:02:00Z","item":1,"held":[1],"phone":"in-pocket"}"#, "only beside trials"),
            (r#"{"do":"run","at":"2026-11-25T09:02:00Z","item":1,"trials":[],"phone":"in-hand"}"#, "one of on-support"),
            (r#"{"do":"trouble","at":"2026-11-25T09:02:00Z","what":"gloom"}"#, "is not one of"),
        ] {
            let fault = read(&format!("# a comment\n{line}\n")).expect_err(line);
            assert_eq!(fault.line, 2, "{line}");
            assert!(fault.expected.contains(says), "{line}: {fault}");
        }
    }
}
