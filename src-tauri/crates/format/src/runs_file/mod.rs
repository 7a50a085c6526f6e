//! What somebody did, as one JSON object on each line. Tests and scripts use it to put a history into a patient's copy.

use crate::fields::{self, Fields, Value, Wrong, quoted};
use crate::names;
use chrono::{DateTime, Datelike, NaiveDate};
use exercises::alarm::Trouble;
use exercises::file_fault::{FaultKind, FileFault, RunsFault};
use exercises::id::{ActivityId, ComplaintId, ItemId};
use exercises::log::{Barrier, LogEvent};
use exercises::plan::BodySide;
use exercises::run::{SetUp, TrialEnd};
use exercises::score::Score;
use exercises::time::Stamp;

/// Size of the largest file that is read, in bytes.
pub const MAX_BYTES: u64 = 64 * 1024 * 1024;

/// Largest number of holds, sets or trials in one run.
const MAX_PARTS: usize = 64;

/// The years that a log can hold.
const YEARS: std::ops::Range<i32> = 2020..2199;

/// Something that was done at a certain moment.
#[derive(Debug, Clone, PartialEq)]
pub struct RunsFileEntry {
    /// The number of its line in the file, from 1.
    pub line: u32,
    /// When it was done.
    pub at: Stamp,
    /// What was done.
    pub event: RunsFileEvent,
}

/// What was done, as one line says it.
#[derive(Debug, Clone, PartialEq)]
pub enum RunsFileEvent {
    /// A run of an item.
    Run {
        /// The item that was done.
        item: ItemId,
        /// Whether it was timed while it was done (true if the file does not say); otherwise it was written in afterwards.
        live: bool,
        /// What was done in the run.
        parts: Parts,
    },
    /// The slot of this item that was open at that moment was skipped.
    Skipped {
        /// The item.
        item: ItemId,
        /// The reason.
        reason: Barrier,
    },
    /// An event that goes into the log unchanged: opening the program, an answer, days off, or something that was wrong.
    Entry(LogEvent),
}

/// What was done in a run. The sides are taken from the plan.
#[derive(Debug, Clone, PartialEq)]
pub enum Parts {
    /// Milliseconds of each hold.
    Held(Vec<u32>),
    /// Repetitions of each set: done, failed.
    Counted(Vec<(u8, u8)>),
    /// The number of movements in the whole time of a test.
    Number(u8),
    /// The trials of a balance exercise.
    Trials {
        /// Where the phone was; `None` if the file does not say.
        phone: Option<SetUp>,
        /// The leg, or none on both feet, the milliseconds and the end of each trial.
        each: Vec<(Option<BodySide>, u32, TrialEnd)>,
    },
}

/// The reason with that name.
///
/// # Errors
/// All names of reasons.
pub fn reason(name: &str) -> Result<Barrier, Vec<String>> {
    names::find(name).ok_or_else(names::all::<Barrier>)
}

/// The values of `do`, each with its fields other than `do` and `at`.
const DONE: [(&str, &[&str]); 10] = [
    ("opened", &[]),
    ("run", &["item", "live", "held", "done", "failed", "trials", "phone", "count"]),
    ("skip", &["item", "reason"]),
    ("days-off", &["from", "until", "why"]),
    ("pain", &["complaint", "score"]),
    ("hurt", &["item", "score"]),
    ("settled", &["complaint", "settled"]),
    ("activity", &["activity", "score"]),
    ("trouble", &["what", "item", "circumstances"]),
    ("well-again", &[]),
];

/// Reads all entries of a file. Empty lines and lines that begin with `#` are ignored.
///
/// # Errors
/// The first line that cannot be read, with one of its faults.
pub fn read(text: &str) -> Result<Vec<RunsFileEntry>, FileFault> {
    let lines = text.lines().enumerate().filter(|(_, line)| !line.trim().is_empty() && !line.trim_start().starts_with('#'));
    lines
        .map(|(number, line)| {
            let number = number as u32 + 1;
            let value = fields::json(line).map_err(|kind| FileFault::at(number, kind))?;
            one(&value, number).map_err(|Wrong { field, kind, .. }| FileFault { line: number, field, kind })
        })
        .collect()
}

fn one(value: &Value, line: u32) -> Result<RunsFileEntry, Wrong> {
    let fields = value.fields()?;
    let done = fields.required("do")?;
    let name = newest_name(done.text()?);
    let Some((_, others)) = DONE.iter().find(|(known, _)| *known == name) else {
        let allowed = DONE.iter().map(|(known, _)| (*known).to_owned()).collect();
        return Err(done.wrong(FaultKind::UnknownWord { found: quoted(name), allowed }));
    };
    fields.only(&[&["do", "at"], *others].concat())?;
    let at = stamp(fields.required("at")?)?;
    Ok(RunsFileEntry { line, at, event: event(name, &fields)? })
}

/// The present name for a name from earlier files.
fn newest_name(name: &str) -> &str {
    match name {
        "leave-out" => "skip",
        "excuse" => "days-off",
        name => name,
    }
}

fn event(name: &str, fields: &Fields<'_>) -> Result<RunsFileEvent, Wrong> {
    let number = |name| fields.required(name)?.whole(u8::MAX);
    let score = || fields.required("score")?.whole(Score::MOST);
    Ok(RunsFileEvent::Entry(match name {
        "run" => {
            return Ok(RunsFileEvent::Run {
                item: ItemId(number("item")?),
                live: fields.maybe("live", Value::truth)?.unwrap_or(true),
                parts: parts(fields)?,
            });
        }
        "skip" => {
            return Ok(RunsFileEvent::Skipped {
                item: ItemId(number("item")?),
                reason: fields.required("reason")?.named()?,
            });
        }
        "days-off" => LogEvent::DaysOff {
            from: date(fields.required("from")?)?,
            until: date(fields.required("until")?)?,
            why: fields.required("why")?.named()?,
        },
        "pain" => LogEvent::Morning { complaint: ComplaintId(number("complaint")?), score: score()? },
        "hurt" => LogEvent::During { item: ItemId(number("item")?), score: score()? },
        "settled" => {
            LogEvent::Settled { complaint: ComplaintId(number("complaint")?), settled: fields.required("settled")?.truth()? }
        }
        "activity" => LogEvent::Rated { activity: ActivityId(number("activity")?), score: score()? },
        "trouble" => LogEvent::Trouble {
            trouble: trouble(fields.required("what")?)?,
            item: fields.maybe("item", |item| item.whole(u8::MAX))?.map(ItemId),
            id: None,
            circumstances: fields.each("circumstances", Value::named)?.into_iter().collect(),
        },
        "well-again" => LogEvent::WellAgain,
        _ => LogEvent::Opened,
    }))
}

/// What was wrong. The longer names are those of earlier files; the rating above an item's limit is the program's to raise.
fn trouble(value: &Value) -> Result<Trouble, Wrong> {
    match value.text()? {
        "heart-or-breath" => Ok(Trouble::HeartOrBreath),
        "head-or-neck" => Ok(Trouble::HeadOrNeck),
        "bladder-or-bowel" => Ok(Trouble::BladderOrBowel),
        "too-much-pain" => Ok(Trouble::TooMuchPain),
        _ => value.named(),
    }
}

/// What was done in a run: one of these.
const PARTS: &[&str] = &["held", "done", "trials", "count"];

fn parts(fields: &Fields<'_>) -> Result<Parts, Wrong> {
    let given = ["held", "done", "trials"].map(|name| fields.optional(name));
    for list in given.into_iter().flatten() {
        if list.list()?.len() > MAX_PARTS {
            return Err(list.wrong_here(FaultKind::Runs(RunsFault::TooManyParts { most: MAX_PARTS as u32 })));
        }
    }
    let count = fields.maybe("count", |count| match given {
        [None, None, None] => count.whole(u8::MAX),
        _ => Err(fields.one_of(PARTS)),
    })?;
    if let Some(count) = count {
        return Ok(Parts::Number(count));
    }
    let phone = fields.maybe("phone", |phone| match given {
        [None, None, Some(_)] => phone.named(),
        _ => Err(phone.wrong_here(FaultKind::Runs(RunsFault::PhoneWithoutTrials))),
    })?;
    match (given, fields.optional("failed")) {
        ([None, None, Some(trials)], None) => Ok(Parts::Trials { phone, each: trials.each(trial)? }),
        ([Some(held), None, None], None) => Ok(Parts::Held(held.each(ms)?)),
        ([None, Some(done), None], failed) => counted(done, failed),
        _ => Err(fields.one_of(PARTS)),
    }
}

/// Repetitions done and failed in each set; none failed if the file does not say.
fn counted(done: &Value, failed: Option<&Value>) -> Result<Parts, Wrong> {
    let counts = |value: &Value| value.each(|count| count.whole(u8::MAX));
    let done = counts(done)?;
    let Some(value) = failed else { return Ok(Parts::Counted(done.into_iter().map(|done| (done, 0)).collect())) };
    let failed = counts(value)?;
    if failed.len() != done.len() {
        return Err(value.wrong_here(FaultKind::Runs(RunsFault::FailedCount)));
    }
    Ok(Parts::Counted(done.into_iter().zip(failed).collect()))
}

fn trial(value: &Value) -> Result<(Option<BodySide>, u32, TrialEnd), Wrong> {
    let trial = value.fields()?;
    trial.only(&["leg", "seconds", "end"])?;
    Ok((trial.maybe("leg", Value::named)?, ms(trial.required("seconds")?)?, trial.required("end")?.named()?))
}

/// Seconds of up to an hour, as milliseconds.
fn ms(value: &Value) -> Result<u32, Wrong> {
    value.number(3600).map(|seconds| (seconds * 1000.0).round() as u32)
}

fn date(value: &Value) -> Result<NaiveDate, Wrong> {
    value.text()?.parse().map_err(|_| value.wrong(FaultKind::Date))
}

/// A moment with its offset, in a year that a log can hold.
fn stamp(value: &Value) -> Result<Stamp, Wrong> {
    let at = DateTime::parse_from_rfc3339(value.text()?).ok().filter(|at| YEARS.contains(&at.year()));
    let at = at.ok_or_else(|| value.wrong(FaultKind::Moment))?;
    Ok(Stamp { utc_ms: at.timestamp_millis(), offset_s: at.offset().local_minus_utc() })
}

/// Two days of entries that fit the example plan, beginning on `start`; `offset` is the offset from UTC of all times.
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
    use exercises::file_fault::ValueKind;

    #[test]
    fn the_example_is_valid() {
        let start = NaiveDate::from_ymd_opt(2026, 11, 25).expect("a date");
        let entries = read(&example(start, "+01:00")).expect("the example reads");
        assert!(entries.len() > 10);
        assert!(entries.iter().any(|entry| matches!(&entry.event, RunsFileEvent::Run { parts: Parts::Trials { .. }, .. })));
        assert!(entries.windows(2).all(|pair| pair[0].at <= pair[1].at), "in order of time");
    }

    /// Checks that a line after a comment is refused for that field and reason.
    #[track_caller]
    fn refused(line: &str, field: &str, kind: FaultKind) {
        let fault = FileFault { line: 2, field: field.into(), kind };
        assert_eq!(read(&format!("# a comment\n{line}\n")), Err(fault), "{line}");
    }

    /// The same for a line that begins with `{"do":"...","at":...`.
    #[track_caller]
    fn refused_after(done: &str, more: &str, field: &str, kind: FaultKind) {
        refused(&format!(r#"{{"do":"{done}","at":"2026-11-25T09:02:00Z"{more}}}"#), field, kind);
    }

    fn owned(words: &[&str]) -> Vec<String> {
        words.iter().map(|word| (*word).to_owned()).collect()
    }

    #[test]
    fn a_line_that_is_no_object_is_named_with_what_the_parser_says() {
        refused("{", "", FaultKind::NotJson { column: 1, detail: "EOF while parsing an object".into() });
        refused("5", "", FaultKind::WrongKind { expected: ValueKind::Table, found: ValueKind::WholeNumber });
        refused_after("opened", r#","at":"2026-11-25T09:03:00Z""#, "", FaultKind::Duplicate { id: "at".into() });
    }

    #[test]
    fn a_wrong_field_or_word_is_named_with_those_that_there_are() {
        let done = FaultKind::UnknownWord { found: "jump".into(), allowed: owned(&DONE.map(|(name, _)| name)) };
        refused_after("jump", "", "do", done);
        let allowed = owned(&["do", "at", "item", "live", "held", "done", "failed", "trials", "phone", "count"]);
        let speed = FaultKind::UnknownField { found: "speed".into(), allowed };
        refused_after("run", r#","item":1,"held":[1],"speed":3"#, "", speed);
        refused_after("pain", r#","complaint":1"#, "", FaultKind::MissingField { field: "score".into() });
        refused_after("pain", r#","complaint":1,"score":null"#, "", FaultKind::MissingField { field: "score".into() });
        let places = FaultKind::UnknownWord { found: "in-hand".into(), allowed: names::all::<SetUp>() };
        refused_after("run", r#","item":1,"trials":[],"phone":"in-hand""#, "phone", places);
        let troubles = FaultKind::UnknownWord { found: "gloom".into(), allowed: names::all::<Trouble>() };
        refused_after("trouble", r#","what":"gloom""#, "what", troubles);
    }

    #[test]
    fn a_wrong_number_or_moment_is_named_with_its_bounds() {
        let range = |most| FaultKind::NumberRange { least: 0, most };
        refused_after("pain", r#","complaint":1,"score":11"#, "score", range(10));
        refused_after("pain", r#","complaint":-1,"score":1"#, "complaint", range(255));
        refused_after("run", r#","item":1,"held":[1,1e9]"#, "held", range(3600));
        let number = FaultKind::WrongKind { expected: ValueKind::Number, found: ValueKind::Text };
        refused_after("run", r#","item":1,"held":[1,"2"]"#, "held", number);
        for at in ["yesterday", "2026-11-25T09:02:00", "2019-12-31T23:59:00Z", "2199-01-01T00:00:00Z"] {
            refused(&format!(r#"{{"do":"opened","at":"{at}"}}"#), "at", FaultKind::Moment);
        }
        refused_after("days-off", r#","from":"soon","until":"2026-11-25","why":"ill""#, "from", FaultKind::Date);
    }

    #[test]
    fn names_of_earlier_files_are_still_read() {
        let line = |name: &str, more: &str| read(&format!(r#"{{"do":"{name}","at":"2026-11-25T09:02:00Z",{more}}}"#));
        let skipped = r#""item":1,"reason":"no-time""#;
        assert_eq!(line("leave-out", skipped), line("skip", skipped));
        let off = r#""from":"2026-11-26","until":"2026-11-27","why":"ill""#;
        assert_eq!(line("excuse", off), line("days-off", off));
        for (old, new) in [
            ("heart-or-breath", "heart"),
            ("head-or-neck", "neck"),
            ("bladder-or-bowel", "bladder"),
            ("too-much-pain", "pain"),
        ] {
            let what = |name| line("trouble", &format!(r#""what":"{name}""#));
            assert!(what(new).is_ok() && what(old) == what(new), "{old}");
        }
        assert!(line("skip", skipped).is_ok() && line("days-off", off).is_ok());
    }

    #[test]
    fn a_run_has_parts_of_one_kind() {
        let one_of = || FaultKind::OneOfFields { fields: owned(PARTS) };
        refused_after("run", r#","item":1"#, "", one_of());
        refused_after("run", r#","item":1,"held":[1],"done":[1]"#, "", one_of());
        refused_after("run", r#","item":1,"held":[1],"failed":[1]"#, "", one_of());
        refused_after("run", r#","item":1,"done":[1,2],"failed":[1]"#, "", FaultKind::Runs(RunsFault::FailedCount));
        refused_after(
            "run",
            r#","item":1,"held":[1],"phone":"in-pocket""#,
            "",
            FaultKind::Runs(RunsFault::PhoneWithoutTrials),
        );
        let many = format!(r#","item":1,"held":[{}]"#, ["1"; 65].join(","));
        refused_after("run", &many, "", FaultKind::Runs(RunsFault::TooManyParts { most: 64 }));
    }

    #[test]
    fn text_that_is_quoted_is_short_and_can_be_shown() {
        let found = format!("a\u{fffd}{}", "b".repeat(38));
        let kind = FaultKind::UnknownWord { found, allowed: owned(&DONE.map(|(name, _)| name)) };
        refused(&format!(r#"{{"do":"a\u001b{}"}}"#, "b".repeat(60)), "do", kind);
    }
}
