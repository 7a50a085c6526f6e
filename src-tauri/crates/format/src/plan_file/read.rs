//! From the file's words to a plan.

use super::shape::{DaysShape, EveryShape, PlanShape, StanceShape, Word};
use crate::names::{self, Named};
use chrono::{NaiveDate, Weekday};
use exercises::id::{ActivityId, ComplaintId, EntryRef, LogId};
use exercises::plan::stance::MAX_STANCE_TENTHS;
use exercises::plan::{Activity, Aftercare, Complaint, Pattern, Prescription, Side, StanceBaseline, Weekdays};
use exercises::time::MinuteOfDay;
use std::ops::Range;
use toml::Spanned;

/// Where and why a file cannot be understood.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
#[error("line {line}: {expected}")]
pub struct FileFault {
    /// The line, from 1; 0 where none can be named.
    pub line: u32,
    /// What was expected, in plain English.
    pub expected: String,
}

/// A fault at a place of the text, before its line is counted.
pub(super) struct Wrong(pub Option<Range<usize>>, pub String);

/// Reads a prescription. The editions of exercises are 0 until it is issued; `today` is the day of issue.
///
/// # Errors
/// The first [`FileFault`] of the file. Ranges of doses and the gates of balance are not looked at here:
/// `exercises::plan::check` does that.
pub fn read(text: &str, today: NaiveDate) -> Result<Prescription, FileFault> {
    let line = |span: Option<Range<usize>>| {
        span.map_or(0, |span| 1 + text[..span.start.min(text.len())].matches('\n').count() as u32)
    };
    let shape: PlanShape =
        toml::from_str(text).map_err(|error| FileFault { line: line(error.span()), expected: plainly(error.message()) })?;
    prescription(shape, today).map_err(|Wrong(span, expected)| FileFault { line: line(span), expected })
}

/// A parser's message on one line, without the names that only a programmer knows.
pub(crate) fn plainly(message: &str) -> String {
    let mut said = message.replace('\n', ", ");
    for (ours, plain) in [
        ("expected u8", "expected a whole number from 0 to 255"),
        ("expected u16", "expected a whole number from 0 to 65535"),
        ("expected u32", "expected a whole number from 0 on"),
        ("expected f64", "expected a number"),
        ("expected an array of length 3", "expected a list of three numbers"),
    ] {
        said = said.replace(ours, plain);
    }
    said
}

fn prescription(shape: PlanShape, today: NaiveDate) -> Result<Prescription, Wrong> {
    let PlanShape { review, age, absent, aftercare, clear, complaint, activity, item, stance } = shape;
    let complaints = complaint.into_iter().map(|c| {
        let side = c.side.as_ref().map_or(Ok(Side::Neither), named)?;
        Ok(Complaint { id: ComplaintId(c.number), name: c.name, side, pain: c.pain })
    });
    let activities = activity.into_iter().map(|a| Activity { id: ActivityId(a.number), name: a.name, rating: a.rating });
    Ok(Prescription {
        review: date(&review)?,
        age: age.as_ref().map(named).transpose()?,
        absent: absent.iter().map(named).collect::<Result<_, _>>()?,
        items: item.into_iter().map(super::item::item).collect::<Result<_, _>>()?,
        complaints: complaints.collect::<Result<_, Wrong>>()?,
        activities: activities.collect(),
        baselines: stance.into_iter().map(|taken| self::stance(taken, today)).collect::<Result<_, _>>()?,
        aftercare: aftercare.into_iter().map(line_of_aftercare).collect(),
        cleared: clear.iter().map(entry).collect::<Result<_, _>>()?,
    })
}

pub(super) fn every_pattern(every: &EveryShape) -> Result<Pattern, Wrong> {
    Ok(Pattern::Every { minutes: every.minutes, from: minute(&every.from)?, to: minute(&every.to)? })
}

fn stance(shape: StanceShape, today: NaiveDate) -> Result<StanceBaseline, Wrong> {
    let seconds = *shape.seconds.get_ref();
    let most = f64::from(MAX_STANCE_TENTHS) / 10.0;
    if !(0.0..=most).contains(&seconds) {
        return Err(Wrong(Some(shape.seconds.span()), format!("seconds must be 0 to {most}")));
    }
    let taken = shape.taken.as_ref().map(date).transpose()?;
    if let (Some(word), Some(_)) = (&shape.taken, taken.filter(|taken| *taken > today)) {
        return Err(Wrong(Some(word.span()), format!("taken must not be after today, {today}")));
    }
    Ok(StanceBaseline {
        taken,
        leg: named(&shape.leg)?,
        surface: named(&shape.surface)?,
        eyes: named(&shape.eyes)?,
        tenths: (seconds * 10.0).round() as u16,
        capped: shape.capped,
    })
}

pub(super) fn named<T: Named>(word: &Word) -> Result<T, Wrong> {
    names::find(word.get_ref())
        .ok_or_else(|| Wrong(Some(word.span()), format!("one of {} belongs here", names::list::<T>())))
}

fn date(word: &Spanned<toml::value::Datetime>) -> Result<NaiveDate, Wrong> {
    let only_date = word.get_ref().date.filter(|_| word.get_ref().time.is_none());
    let found = only_date.and_then(|d| NaiveDate::from_ymd_opt(d.year.into(), d.month.into(), d.day.into()));
    found.ok_or_else(|| Wrong(Some(word.span()), "a date such as 2027-01-31".into()))
}

pub(super) fn minute(word: &Word) -> Result<u16, Wrong> {
    let time = word.get_ref().parse().map(MinuteOfDay::minutes);
    time.map_err(|_| Wrong(Some(word.span()), "a time such as \"09:00\" belongs here".into()))
}

pub(super) fn days(word: &Spanned<DaysShape>) -> Result<Weekdays, Wrong> {
    let wrong = || {
        Wrong(
            Some(word.span()),
            "\"workdays\", \"every-day\", or a list of mon, tue, wed, thu, fri, sat, sun belongs here".into(),
        )
    };
    match word.get_ref() {
        DaysShape::Name(name) if name == "workdays" => Ok(Weekdays::WORKDAYS),
        DaysShape::Name(name) if name == "every-day" => Ok(Weekdays::ALL),
        DaysShape::Name(_) => Err(wrong()),
        DaysShape::List(list) => list.iter().map(|name| weekday(name).ok_or_else(wrong)).collect(),
    }
}

fn weekday(name: &str) -> Option<Weekday> {
    let named = ["mon", "tue", "wed", "thu", "fri", "sat", "sun"].iter().position(|known| *known == name)?;
    Weekdays::ALL.iter().nth(named)
}

fn line_of_aftercare(word: Word) -> Aftercare {
    names::find(word.get_ref()).unwrap_or_else(|| Aftercare::Own(word.into_inner()))
}

/// An alarm's name, `0123456789abcdef:42`.
fn entry(word: &Word) -> Result<EntryRef, Wrong> {
    let parsed = word.get_ref().split_once(':').and_then(|(log, n)| {
        let bytes = u64::from_str_radix(log, 16).ok().filter(|_| log.len() == 16)?;
        Some(EntryRef { log: LogId(bytes.to_be_bytes()), n: n.parse().ok()? })
    });
    parsed.ok_or_else(|| Wrong(Some(word.span()), "an alarm's name such as \"0123456789abcdef:42\" belongs here".into()))
}

#[cfg(test)]
mod tests {
    use super::*;

    fn today() -> NaiveDate {
        NaiveDate::from_ymd_opt(2026, 11, 25).expect("a date")
    }

    fn example() -> String {
        super::super::example(NaiveDate::from_ymd_opt(2027, 1, 6).expect("a date"))
    }

    #[test]
    fn the_example_is_valid() {
        let plan = read(&example(), today()).expect("the example reads");
        assert_eq!((plan.items.len(), plan.complaints.len(), plan.baselines.len()), (3, 2, 2));
        assert_eq!(plan.items[0].schedule.pattern, Pattern::Every { minutes: 60, from: 540, to: 1020 });
    }

    /// The example with one change is refused at the changed line, and the text says what is allowed.
    fn refused(from: &str, to: &str, says: &str) {
        let text = example().replacen(from, to, 1);
        let line = 1 + example()[..example().find(from).expect("part of the example")].matches('\n').count() as u32;
        let fault = read(&text, today()).expect_err(to);
        assert!(fault.expected.contains(says), "{to}: {fault}");
        assert_eq!(fault.line, line, "{to}: {fault}");
    }

    #[test]
    fn a_wrong_word_is_named_with_its_line() {
        refused("\"40-49\"", "\"old\"", "one of under-18");
        refused("\"numb-feet\"", "\"cold-feet\"", "one of high-fall-risk");
        refused("\"every-day\"", "\"weekends\"", "every-day");
        refused("from = \"09:00\"", "from = \"9 o'clock\"", "a time such as");
        refused("repetitions = 3", "repetitions = -3", "expected a whole number from 0 to 255");
        refused("repetitions = 3", "repetitions = 10000", "expected a whole number from 0 to 255");
        refused("days = \"every-day\"", "days = 5", "or a list of mon");
        refused("serves = 1", "serves_what = 1", "unknown field");
        refused("side = \"left\"", "side = \"up\"", "one of left");
        refused("seconds = 12.4", "seconds = 1e9", "0 to 600");
        refused("seconds = 12.4", "taken = 2026-11-26\nseconds = 12.4", "not be after today");
        refused("seconds = 12.4", "taken = \"Monday\"\nseconds = 12.4", "datetime");
        refused("clear = []", "clear = [\"x\"]", "an alarm's name");
    }

    #[test]
    fn a_stance_time_keeps_the_day_that_the_file_gives() {
        let text = example().replacen("seconds = 12.4", "taken = 2026-11-18\nseconds = 12.4", 1);
        let plan = read(&text, today()).expect("a plan");
        let taken: Vec<_> = plan.baselines.iter().map(|baseline| baseline.taken).collect();
        assert_eq!(taken, [NaiveDate::from_ymd_opt(2026, 11, 18), None], "a file without days is read as it always was");
    }

    #[test]
    fn both_every_and_at_are_refused() {
        let text = example().replacen("at = [\"19:45\"]", "", 1);
        assert!(read(&text, today()).expect_err("no times").expected.contains("either every or at"));
    }
}
