//! A file while it is read, and one TOML table of it field by field, with a fault for everything that is not as it should be.
//!
//! Every method gives the value or notes the fault and gives `None`, so that one reading finds all faults of a file.

use super::fault::{Fault, FaultKind};
use super::names::Names;
use core::ops::Range;
use exercises::catalogue::{OutOfRange, Quantity};
use std::cell::RefCell;
use toml::Spanned;
use toml::de::{DeTable, DeValue};

/// What is known of a file while it is read: its name, its text and the faults so far.
pub(super) struct Page<'a> {
    pub file: &'a str,
    pub text: &'a str,
    pub faults: RefCell<Vec<Fault>>,
}

impl<'a> Page<'a> {
    pub fn new(file: &'a str, text: &'a str) -> Self {
        Self { file, text, faults: RefCell::default() }
    }

    pub fn line(&self, at: usize) -> usize {
        let before = self.text.as_bytes().get(..at).unwrap_or(self.text.as_bytes());
        1 + before.iter().filter(|&&byte| byte == b'\n').count()
    }

    /// Where `part`, a slice of the text, begins.
    pub fn place_of(&self, part: &'a str) -> usize {
        part.as_ptr() as usize - self.text.as_ptr() as usize
    }

    pub fn fault(&self, at: usize, field: &str, kind: FaultKind) {
        let fault = Fault { file: self.file.to_owned(), line: self.line(at), field: field.to_owned(), kind };
        self.faults.borrow_mut().push(fault);
    }

    /// One line that can be shown, without space around it, of at most the length of `quantity`.
    pub fn checked_line(&self, at: usize, field: &str, text: &str, quantity: Quantity) -> Option<String> {
        let line = text.trim();
        if let Some(character) = line.chars().find(|&c| unprintable(c)) {
            self.fault(at, field, FaultKind::UnprintableText { character });
            return None;
        }
        let characters = i64::try_from(line.chars().count()).unwrap_or(i64::MAX);
        if let Err(out) = quantity.check(characters) {
            self.fault(at, field, FaultKind::OutOfRange(out));
            return None;
        }
        Some(line.to_owned())
    }

    /// The faults in the order of their lines.
    pub fn into_faults(self) -> Vec<Fault> {
        let mut faults = self.faults.into_inner();
        faults.sort_by_key(|fault| fault.line);
        faults
    }
}

/// A table of the file and its place in it.
#[derive(Clone)]
pub(super) struct Table<'a> {
    pub page: &'a Page<'a>,
    /// How people call this place; empty for the top.
    pub path: String,
    pub span: Range<usize>,
    pub map: &'a DeTable<'a>,
}

/// A value of the file and its place in it.
pub(super) struct Item<'a> {
    pub page: &'a Page<'a>,
    pub path: String,
    pub span: Range<usize>,
    pub value: &'a DeValue<'a>,
}

impl<'a> Table<'a> {
    /// Notes a fault at a field of this table, or at its head if the field is not there.
    pub fn fault(&self, field: &str, kind: FaultKind) {
        let at =
            self.map.iter().find(|(key, _)| key.get_ref() == field).map_or(self.span.start, |(key, _)| key.span().start);
        self.page.fault(at, &self.path_of(field), kind);
    }

    /// Notes a fault for every field that is not in `allowed`.
    pub fn only(&self, allowed: &[&'static str]) {
        for key in self.map.keys().filter(|key| !allowed.contains(&key.get_ref().as_ref())) {
            let kind = FaultKind::Unknown { allowed: allowed.to_vec() };
            self.page.fault(key.span().start, &self.path_of(key.get_ref()), kind);
        }
    }

    pub fn optional(&self, field: &str) -> Option<Item<'a>> {
        let (_, value) = self.map.iter().find(|(key, _)| key.get_ref() == field)?;
        Some(Item::new(self.page, self.path_of(field), value))
    }

    pub fn required(&self, field: &str) -> Option<Item<'a>> {
        let item = self.optional(field);
        if item.is_none() {
            self.fault(field, FaultKind::Missing);
        }
        item
    }

    /// A whole number within the range of `quantity`.
    pub fn number(&self, field: &str, quantity: Quantity) -> Option<i64> {
        self.required(field)?.number(quantity)
    }

    /// One line of text of at most the length of `quantity`.
    pub fn line(&self, field: &str, quantity: Quantity) -> Option<String> {
        self.required(field)?.line(quantity)
    }

    /// A list of lines: how many by `count`, each of at most the length of a line.
    pub fn lines(&self, field: &str, count: Quantity) -> Option<Vec<String>> {
        let items = self.required(field)?.list(Some(count))?;
        let all = items.len();
        let lines: Vec<_> = items.into_iter().filter_map(|item| item.line(Quantity::LineCharacters)).collect();
        (lines.len() == all).then_some(lines)
    }

    /// One word of a closed list.
    pub fn word<T: Copy>(&self, field: &str, names: Names<T>) -> Option<T> {
        self.required(field)?.word(names)
    }

    pub fn table(&self, field: &str) -> Option<Table<'a>> {
        self.required(field)?.table()
    }

    fn path_of(&self, field: &str) -> String {
        match (self.path.as_str(), field) {
            ("", _) => field.to_owned(),
            (path, "") => path.to_owned(),
            (path, _) => format!("{path}, {field}"),
        }
    }
}

impl<'a> Item<'a> {
    fn new(page: &'a Page<'a>, path: String, value: &'a Spanned<DeValue<'a>>) -> Self {
        Self { page, path, span: value.span(), value: value.get_ref() }
    }

    pub fn fault(&self, kind: FaultKind) {
        self.page.fault(self.span.start, &self.path, kind);
    }

    fn wrong_type<T>(&self, expected: &'static str) -> Option<T> {
        let found = match self.value {
            DeValue::String(_) => "text",
            DeValue::Integer(_) => "a whole number",
            DeValue::Float(_) => "a number with a point",
            DeValue::Boolean(_) => "true or false",
            DeValue::Datetime(_) => "a date or time",
            DeValue::Array(_) => "a list",
            DeValue::Table(_) => "a table",
        };
        self.fault(FaultKind::WrongType { expected, found });
        None
    }

    /// A whole number of any size; one beyond 64 bits counts as the largest.
    pub fn whole(&self) -> Option<i64> {
        let DeValue::Integer(number) = self.value else {
            return self.wrong_type("a whole number");
        };
        let farthest = if number.as_str().starts_with('-') { i64::MIN } else { i64::MAX };
        Some(i64::from_str_radix(number.as_str(), number.radix()).unwrap_or(farthest))
    }

    pub fn number(&self, quantity: Quantity) -> Option<i64> {
        match quantity.check(self.whole()?) {
            Ok(value) => Some(value),
            Err(out) => {
                self.fault(FaultKind::OutOfRange(out));
                None
            }
        }
    }

    pub fn truth(&self) -> Option<bool> {
        match self.value {
            DeValue::Boolean(truth) => Some(*truth),
            _ => self.wrong_type("true or false"),
        }
    }

    pub fn text(&self) -> Option<&'a str> {
        match self.value {
            DeValue::String(text) => Some(text.as_ref()),
            _ => self.wrong_type("text"),
        }
    }

    /// One line that can be shown, without space around it, of at most the length of `quantity`.
    pub fn line(&self, quantity: Quantity) -> Option<String> {
        self.page.checked_line(self.span.start, &self.path, self.text()?, quantity)
    }

    pub fn word<T: Copy>(&self, names: Names<T>) -> Option<T> {
        let found = self.text()?;
        let value = names.iter().find(|(word, _)| *word == found).map(|(_, value)| *value);
        if value.is_none() {
            let allowed = names.iter().map(|(word, _)| *word).collect();
            self.fault(FaultKind::NotOneOf { found: found.chars().take(40).collect(), allowed });
        }
        value
    }

    pub fn table(&self) -> Option<Table<'a>> {
        let DeValue::Table(map) = self.value else {
            return self.wrong_type("a table");
        };
        Some(Table { page: self.page, path: self.path.clone(), span: self.span.clone(), map })
    }

    /// The items of a list, each called by its number; with the range of their count where there is one.
    pub fn list(&self, count: Option<Quantity>) -> Option<Vec<Item<'a>>> {
        let DeValue::Array(values) = self.value else {
            return self.wrong_type("a list");
        };
        if let Some(quantity) = count {
            let value = i64::try_from(values.len()).unwrap_or(i64::MAX);
            if quantity.check(value).is_err() {
                self.fault(FaultKind::OutOfRange(OutOfRange { quantity, value }));
                return None;
            }
        }
        let item = |(place, value)| Item::new(self.page, format!("{} {}", self.path, place + 1), value);
        Some(values.iter().enumerate().map(item).collect())
    }

    /// The tables of a list of tables.
    pub fn tables(&self, count: Quantity) -> Option<Vec<Table<'a>>> {
        let items = self.list(Some(count))?;
        let all = items.len();
        let tables: Vec<_> = items.into_iter().filter_map(|item| item.table()).collect();
        (tables.len() == all).then_some(tables)
    }
}

/// Control characters, line ends, the marks that turn the direction of writing, and what stands for bytes that are no text.
fn unprintable(c: char) -> bool {
    c.is_control()
        || matches!(c, '\u{2028}' | '\u{2029}' | '\u{200E}' | '\u{200F}' | '\u{202A}'..='\u{202E}' | '\u{2066}'..='\u{2069}' | '\u{FEFF}' | '\u{FFFD}')
}
