//! The days of an item.

use crate::fields::{Value, Wrong};
use crate::toml_text::quoted;
use chrono::{NaiveDate, Weekday};
use exercises::file_fault::{FaultKind, PlanFault};
use exercises::plan::{Days, Weekdays};

/// Reads days: a word, a list of days of the week, or a table with a rhythm, which is counted from `today` if it names no day.
pub(super) fn days(value: &Value, today: NaiveDate) -> Result<Days, Wrong> {
    let wrong = || value.wrong(FaultKind::Plan(PlanFault::Days));
    match (value.text(), value.list(), value.fields()) {
        (Ok("workdays"), ..) => Ok(Days::WORKDAYS),
        (Ok("every-day"), ..) => Ok(Days::ALL),
        (_, Ok(list), _) => {
            let named = |name: &Value| name.text().ok().and_then(weekday).ok_or_else(wrong);
            list.iter().map(named).collect()
        }
        (.., Ok(rhythm)) => {
            rhythm.only(&["every", "times_a_week", "from"])?;
            let from = rhythm.maybe("from", Value::date)?.unwrap_or(today);
            match (rhythm.optional("every"), rhythm.optional("times_a_week")) {
                (Some(n), None) => Ok(Days::EveryNth { n: n.whole(u8::MAX)?, from }),
                (None, Some(n)) => Ok(Days::TimesAWeek { n: n.whole(u8::MAX)?, from }),
                _ => Err(rhythm.one_of(&["every", "times_a_week"])),
            }
        }
        _ => Err(wrong()),
    }
}

fn weekday(name: &str) -> Option<Weekday> {
    let named = ["mon", "tue", "wed", "thu", "fri", "sat", "sun"].iter().position(|known| *known == name)?;
    Weekdays::ALL.iter().nth(named)
}

/// The days as [`days`] reads them, with the day from which they are counted or without.
pub(super) fn written(days: Days, dated: bool) -> String {
    let from = |from: NaiveDate| if dated { format!(", from = {from}") } else { String::new() };
    match days {
        Days::ALL => quoted("every-day"),
        Days::WORKDAYS => quoted("workdays"),
        Days::On(some) => {
            let days: Vec<String> = some.iter().map(|day| quoted(&day.to_string().to_lowercase())).collect();
            format!("[{}]", days.join(", "))
        }
        Days::EveryNth { n, from: day } => format!("{{ every = {n}{} }}", from(day)),
        Days::TimesAWeek { n, from: day } => format!("{{ times_a_week = {n}{} }}", from(day)),
    }
}
