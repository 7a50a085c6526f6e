//! Reads files of named values, TOML or JSON, field by field. Each value knows its place in the file and its field, so that a
//! fault can name both.

mod from_json;
mod from_toml;

pub(crate) use from_json::json;
pub(crate) use from_toml::toml;

use crate::names::{self, Named};
use ::toml::value::Datetime;
use chrono::NaiveDate;
use exercises::file_fault::{FaultKind, FileFault, ValueKind};
use exercises::time::MinuteOfDay;

/// Largest number of characters that a fault quotes from the file.
const MAX_QUOTED: usize = 40;

/// A fault at a place in the text, before its line number is known.
#[derive(Debug)]
pub(crate) struct Wrong {
    /// The place, in bytes from the beginning; `None` if it is not known.
    pub at: Option<usize>,
    /// The field whose value is wrong; empty if the kind of fault says enough.
    pub field: String,
    /// What is wrong.
    pub kind: FaultKind,
}

impl Wrong {
    /// The fault with its line number in `text`.
    pub fn in_text(self, text: &str) -> FileFault {
        let before = |at: usize| &text.as_bytes()[..at.min(text.len())];
        let line = self.at.map_or(0, |at| 1 + before(at).iter().filter(|byte| **byte == b'\n').count() as u32);
        FileFault { line, field: self.field, kind: self.kind }
    }
}

/// A value and its place in the file.
pub(crate) struct Value {
    at: Option<usize>,
    /// The field to which the value belongs; empty for the whole file.
    field: String,
    node: Node,
}

enum Node {
    Text(String),
    /// A whole number. One that does not fit 64 bits becomes the largest or smallest that does.
    Whole(i64),
    Number(f64),
    Truth(bool),
    Date(Datetime),
    List(Vec<Value>),
    Table(Vec<Entry>),
    Nothing,
}

/// A field of a table.
struct Entry {
    at: Option<usize>,
    value: Value,
}

impl Value {
    /// A fault of this value, with the name of its field.
    pub fn wrong(&self, kind: FaultKind) -> Wrong {
        Wrong { field: self.field.clone(), ..self.wrong_here(kind) }
    }

    /// A fault at the place of this value, without the name of a field.
    pub fn wrong_here(&self, kind: FaultKind) -> Wrong {
        Wrong { at: self.at, field: String::new(), kind }
    }

    /// The fault that this value is not of the expected kind.
    pub fn wrong_kind(&self, expected: ValueKind) -> Wrong {
        let found = match self.node {
            Node::Text(_) => ValueKind::Text,
            Node::Whole(_) => ValueKind::WholeNumber,
            Node::Number(_) => ValueKind::Number,
            Node::Truth(_) => ValueKind::Truth,
            Node::Date(_) => ValueKind::DateOrTime,
            Node::List(_) => ValueKind::List,
            Node::Table(_) => ValueKind::Table,
            Node::Nothing => ValueKind::Nothing,
        };
        self.wrong(FaultKind::WrongKind { expected, found })
    }

    pub fn text(&self) -> Result<&str, Wrong> {
        match &self.node {
            Node::Text(text) => Ok(text),
            _ => Err(self.wrong_kind(ValueKind::Text)),
        }
    }

    pub fn truth(&self) -> Result<bool, Wrong> {
        match self.node {
            Node::Truth(truth) => Ok(truth),
            _ => Err(self.wrong_kind(ValueKind::Truth)),
        }
    }

    /// A whole number from 0 to `most`.
    pub fn whole<T: TryFrom<i64>>(&self, most: T) -> Result<T, Wrong>
    where
        i64: From<T>,
    {
        let most = i64::from(most);
        let number = T::try_from(self.whole_between(0, most)?);
        number.map_err(|_| self.wrong(FaultKind::NumberRange { least: 0, most }))
    }

    /// A whole number from `least` to `most`.
    pub fn whole_between(&self, least: i64, most: i64) -> Result<i64, Wrong> {
        let Node::Whole(number) = self.node else { return Err(self.wrong_kind(ValueKind::WholeNumber)) };
        let fits = (least..=most).contains(&number);
        fits.then_some(number).ok_or_else(|| self.wrong(FaultKind::NumberRange { least, most }))
    }

    /// A number from 0 to `most`, with or without decimals.
    pub fn number(&self, most: i64) -> Result<f64, Wrong> {
        let number = match self.node {
            Node::Whole(number) => number as f64,
            Node::Number(number) => number,
            _ => return Err(self.wrong_kind(ValueKind::Number)),
        };
        let fits = (0.0..=most as f64).contains(&number);
        fits.then_some(number).ok_or_else(|| self.wrong(FaultKind::NumberRange { least: 0, most }))
    }

    /// The value of a choice whose name this is.
    pub fn named<T: Named>(&self) -> Result<T, Wrong> {
        let found = self.text()?;
        names::find(found)
            .ok_or_else(|| self.wrong(FaultKind::UnknownWord { found: quoted(found), allowed: names::all::<T>() }))
    }

    pub fn list(&self) -> Result<&[Value], Wrong> {
        match &self.node {
            Node::List(values) => Ok(values),
            _ => Err(self.wrong_kind(ValueKind::List)),
        }
    }

    /// Each value of the list, read by `read`.
    pub fn each<T>(&self, read: impl FnMut(&Value) -> Result<T, Wrong>) -> Result<Vec<T>, Wrong> {
        self.list()?.iter().map(read).collect()
    }

    /// A day, written without a time.
    pub fn date(&self) -> Result<NaiveDate, Wrong> {
        let Node::Date(found) = &self.node else { return Err(self.wrong(FaultKind::Date)) };
        let day = found.date.filter(|_| found.time.is_none());
        let day = day.and_then(|day| NaiveDate::from_ymd_opt(day.year.into(), day.month.into(), day.day.into()));
        day.ok_or_else(|| self.wrong(FaultKind::Date))
    }

    /// A time of day in minutes since midnight, 0 to 1439.
    pub fn minute(&self) -> Result<u16, Wrong> {
        self.text()?.parse().map(MinuteOfDay::minutes).map_err(|_| self.wrong(FaultKind::TimeOfDay))
    }

    /// The fields of a table; a repeated field is a fault.
    pub fn fields(&self) -> Result<Fields<'_>, Wrong> {
        let Node::Table(entries) = &self.node else { return Err(self.wrong_kind(ValueKind::Table)) };
        for (place, entry) in entries.iter().enumerate() {
            if entries[..place].iter().any(|other| other.value.field == entry.value.field) {
                let kind = FaultKind::Duplicate { id: quoted(&entry.value.field) };
                return Err(Wrong { at: entry.at, field: String::new(), kind });
            }
        }
        Ok(Fields { table: self, entries })
    }
}

/// The fields of a table.
#[derive(Clone, Copy)]
pub(crate) struct Fields<'a> {
    /// The table itself, for faults of the whole table.
    pub table: &'a Value,
    entries: &'a [Entry],
}

impl<'a> Fields<'a> {
    /// Refuses fields that are not in `allowed`.
    pub fn only(&self, allowed: &[&str]) -> Result<(), Wrong> {
        self.unknown(allowed).next().map_or(Ok(()), Err)
    }

    /// The fault of each field that is not in `allowed`.
    pub fn unknown(&self, allowed: &[&str]) -> impl Iterator<Item = Wrong> {
        let others = self.entries.iter().filter(|entry| !allowed.contains(&entry.value.field.as_str()));
        others.map(|other| {
            let kind = FaultKind::UnknownField { found: quoted(&other.value.field), allowed: owned(allowed) };
            Wrong { at: other.at, field: String::new(), kind }
        })
    }

    /// A fault of a field, at its place if it is there, or else at that of the table; no `field` is the table itself.
    pub fn wrong(&self, field: &str, kind: FaultKind) -> Wrong {
        let entry = self.entries.iter().find(|entry| entry.value.field == field);
        Wrong { at: entry.map_or(self.table.at, |entry| entry.at), field: field.to_owned(), kind }
    }

    /// Every field with its value.
    pub fn all(&self) -> impl Iterator<Item = (&'a str, &'a Value)> {
        self.entries.iter().map(|entry| (entry.value.field.as_str(), &entry.value))
    }

    /// The value of a field; `None` if it is missing or JSON's `null`.
    pub fn optional(&self, name: &str) -> Option<&'a Value> {
        let entry = self.entries.iter().find(|entry| entry.value.field == name)?;
        Some(&entry.value).filter(|value| !matches!(value.node, Node::Nothing))
    }

    /// The value of a field, which must be present.
    pub fn required(&self, name: &str) -> Result<&'a Value, Wrong> {
        self.optional(name).ok_or_else(|| self.table.wrong_here(FaultKind::MissingField { field: name.to_owned() }))
    }

    /// The value of a field, if present, converted by `read`.
    pub fn maybe<T>(&self, name: &str, read: impl FnOnce(&'a Value) -> Result<T, Wrong>) -> Result<Option<T>, Wrong> {
        self.optional(name).map(read).transpose()
    }

    /// The values of a list, converted by `read`; none if the field is missing.
    pub fn each<T>(&self, name: &str, read: impl FnMut(&Value) -> Result<T, Wrong>) -> Result<Vec<T>, Wrong> {
        self.optional(name).map_or(Ok(Vec::new()), |list| list.each(read))
    }

    /// The fault that exactly one of `fields` is required.
    pub fn one_of(&self, fields: &[&str]) -> Wrong {
        self.table.wrong_here(FaultKind::OneOfFields { fields: owned(fields) })
    }
}

/// Text from a file, shortened for a fault, with control characters replaced.
pub(crate) fn quoted(text: &str) -> String {
    let shown = |character: char| if character.is_control() { char::REPLACEMENT_CHARACTER } else { character };
    text.chars().take(MAX_QUOTED).map(shown).collect()
}

/// Words for a fault.
pub(crate) fn owned(words: &[&str]) -> Vec<String> {
    words.iter().map(|word| (*word).to_owned()).collect()
}
