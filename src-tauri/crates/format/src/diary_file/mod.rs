//! A diary that was kept on paper, typed as TOML.

use crate::fields::{self, Value, Wrong};
use chrono::NaiveDate;
use exercises::file_fault::{FaultKind, FileFault};
use exercises::id::{ComplaintId, ItemId};
use exercises::plan::{MAX_ITEMS, MAX_NAMED};
use exercises::score::Score;
use exercises::summary::{MAX_DAYS, MAX_SESSIONS, PaperDay};

/// Size of the largest file that is read, in bytes.
pub const MAX_BYTES: u64 = 256 * 1024;

/// Two days with comments, to start from.
pub fn example(first: NaiveDate) -> String {
    let second = first.succ_opt().unwrap_or(first);
    include_str!("example.toml").replace("DAY1", &first.to_string()).replace("DAY2", &second.to_string())
}

/// Reads a diary.
///
/// # Errors
/// The first [`FileFault`] that is found in the file.
pub fn read(text: &str) -> Result<Vec<PaperDay>, FileFault> {
    let file = fields::toml(text)?;
    days(&file).map_err(|wrong| wrong.in_text(text))
}

fn days(file: &Value) -> Result<Vec<PaperDay>, Wrong> {
    let fields = file.fields()?;
    fields.only(&["day"])?;
    let list = fields.required("day")?;
    at_most(list, usize::from(MAX_DAYS))?;
    let mut days: Vec<PaperDay> = Vec::new();
    for value in list.list()? {
        let one = day(value)?;
        if days.iter().any(|other| other.day == one.day) {
            return Err(value.wrong_here(FaultKind::Duplicate { id: one.day.to_string() }));
        }
        days.push(one);
    }
    Ok(days)
}

fn day(value: &Value) -> Result<PaperDay, Wrong> {
    let fields = value.fields()?;
    fields.only(&["date", "sessions", "mornings"])?;
    let day = fields.required("date")?.date()?;
    let done = match fields.optional("sessions") {
        Some(list) => numbered(list, ("item", "n"), MAX_ITEMS, MAX_SESSIONS)?,
        None => Vec::new(),
    };
    let mornings = match fields.optional("mornings") {
        Some(list) => numbered(list, ("complaint", "pain"), MAX_NAMED, 10)?,
        None => Vec::new(),
    };
    let done = done.into_iter().map(|(number, n)| (ItemId(number), n)).collect();
    let mornings = mornings.into_iter().map(|(number, pain)| (ComplaintId(number), Score::at_most_ten(pain))).collect();
    Ok(PaperDay { day, done, mornings })
}

/// Numbers of something with an amount each; none twice.
fn numbered(list: &Value, (name, amount): (&str, &str), most: usize, greatest: u8) -> Result<Vec<(u8, u8)>, Wrong> {
    at_most(list, most)?;
    let mut all: Vec<(u8, u8)> = Vec::new();
    for value in list.list()? {
        let fields = value.fields()?;
        fields.only(&[name, amount])?;
        let number: u8 = fields.required(name)?.whole(u8::MAX)?;
        if all.iter().any(|(other, _)| *other == number) {
            return Err(value.wrong_here(FaultKind::Duplicate { id: number.to_string() }));
        }
        all.push((number, fields.required(amount)?.whole(greatest)?));
    }
    Ok(all)
}

fn at_most(list: &Value, most: usize) -> Result<(), Wrong> {
    let n = list.list()?.len();
    (n <= most).then_some(()).ok_or_else(|| list.wrong(FaultKind::NumberRange { least: 0, most: most as i64 }))
}
