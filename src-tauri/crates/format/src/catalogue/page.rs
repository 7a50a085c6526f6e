//! A file while it is read, with a fault for everything that is not as it should be.
//!
//! What is wrong is noted and gives `None`, so that one reading finds all faults of a file.

use crate::fields::{Fields, Value, Wrong, quoted};
use crate::names::Named;
use exercises::catalogue::Quantity;
use exercises::file_fault::{ExerciseFault, FaultKind, FileFault};
use exercises::plain_text::is_hidden;
use std::cell::RefCell;

/// What is wrong in a file of an exercise.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Fault {
    /// The name under which the file was given.
    pub file: String,
    /// What is wrong in it, and where.
    pub fault: FileFault,
}

/// What is known of a file while it is read: its name, its text and the faults so far.
pub(super) struct Page<'a> {
    file: &'a str,
    pub text: &'a str,
    /// Whether what is not yet written, or is too long so far, is no fault.
    is_unfinished: bool,
    faults: RefCell<Vec<FileFault>>,
}

impl<'a> Page<'a> {
    pub fn new(file: &'a str, text: &'a str) -> Self {
        Self { file, text, is_unfinished: false, faults: RefCell::default() }
    }

    /// The page of a file that somebody is still writing.
    pub fn unfinished(text: &'a str) -> Self {
        Self { is_unfinished: true, ..Self::new("", text) }
    }

    /// Where `part`, a slice of the text, begins.
    pub fn place_of(&self, part: &'a str) -> usize {
        part.as_ptr() as usize - self.text.as_ptr() as usize
    }

    /// Notes a fault of a place, in bytes from the beginning.
    pub fn fault(&self, at: usize, field: &str, kind: FaultKind) {
        self.note(Wrong { at: Some(at), field: field.to_owned(), kind });
    }

    fn note(&self, wrong: Wrong) {
        if !self.lets_pass(&wrong.kind) {
            self.found(wrong.in_text(self.text));
        }
    }

    /// Whether this is no fault as long as the file is unfinished: it then is read as it is.
    fn lets_pass(&self, kind: &FaultKind) -> bool {
        use ExerciseFault::{BalanceNeeds, ListsDiffer, SidesOfLadder};
        let is_open = match kind {
            FaultKind::TextLength { .. } | FaultKind::ListLength { .. } => true,
            FaultKind::MissingField { field } => field == "set_up" || field == "steps",
            FaultKind::Exercise(fault) => matches!(fault, BalanceNeeds | ListsDiffer { .. } | SidesOfLadder),
            _ => false,
        };
        self.is_unfinished && is_open
    }

    /// Notes a fault whose line is known.
    pub fn found(&self, fault: FileFault) {
        self.faults.borrow_mut().push(fault);
    }

    /// What was read, or `None` with the fault noted.
    pub fn noted<T>(&self, read: Result<T, Wrong>) -> Option<T> {
        read.map_err(|wrong| self.note(wrong)).ok()
    }

    /// The faults in the order of their lines.
    pub fn into_faults(self) -> Vec<Fault> {
        let mut faults = self.faults.into_inner();
        faults.sort_by_key(|fault| fault.line);
        faults.into_iter().map(|fault| Fault { file: self.file.to_owned(), fault }).collect()
    }
}

/// A table of the file.
#[derive(Clone, Copy)]
pub(super) struct Table<'a> {
    page: &'a Page<'a>,
    fields: Fields<'a>,
}

/// A value of the file.
#[derive(Clone, Copy)]
pub(super) struct Item<'a> {
    page: &'a Page<'a>,
    value: &'a Value,
}

impl<'a> Table<'a> {
    /// Whether the file is still being written.
    pub fn is_unfinished(&self) -> bool {
        self.page.is_unfinished
    }

    /// Notes a fault at a field of this table, or at its head if the field is not there.
    pub fn fault(&self, field: &str, kind: FaultKind) {
        self.page.note(self.fields.wrong(field, kind));
    }

    /// Notes a fault for every field that is not in `allowed`.
    pub fn only(&self, allowed: &[&str]) {
        self.fields.unknown(allowed).for_each(|wrong| self.page.note(wrong));
    }

    /// Every field of the table with its value.
    pub fn all(&self) -> impl Iterator<Item = (&'a str, Item<'a>)> {
        let page = self.page;
        self.fields.all().map(move |(name, value)| (name, Item { page, value }))
    }

    pub fn optional(&self, field: &str) -> Option<Item<'a>> {
        self.fields.optional(field).map(|value| Item { page: self.page, value })
    }

    pub fn required(&self, field: &str) -> Option<Item<'a>> {
        self.page.noted(self.fields.required(field)).map(|value| Item { page: self.page, value })
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
        whole(items.iter().map(|item| item.line(Quantity::LineCharacters)))
    }

    /// One word of a choice.
    pub fn word<T: Named>(&self, field: &str) -> Option<T> {
        self.required(field)?.word()
    }

    /// A list of words of a choice, none of which may be repeated; empty if the field is not there.
    pub fn words<T: Named + PartialEq>(&self, field: &str) -> Option<Vec<T>> {
        let Some(item) = self.optional(field) else {
            return Some(Vec::new());
        };
        let items = item.list(None)?;
        let mut words = Vec::new();
        for item in &items {
            match item.word() {
                Some(word) if words.contains(&word) => {
                    let id = quoted(item.text().unwrap_or_default());
                    item.fault(FaultKind::Duplicate { id });
                }
                word => words.extend(word),
            }
        }
        (words.len() == items.len()).then_some(words)
    }

    pub fn table(&self, field: &str) -> Option<Table<'a>> {
        self.required(field)?.table()
    }
}

impl<'a> Item<'a> {
    /// The value that the whole file is.
    pub fn of_file(page: &'a Page<'a>, value: &'a Value) -> Self {
        Self { page, value }
    }

    pub fn fault(&self, kind: FaultKind) {
        self.page.note(self.value.wrong(kind));
    }

    /// A whole number within the range of `quantity`.
    pub fn number(&self, quantity: Quantity) -> Option<i64> {
        let bound = quantity.bound();
        self.between(bound.min, bound.max)
    }

    pub fn between(&self, least: i64, most: i64) -> Option<i64> {
        self.page.noted(self.value.whole_between(least, most))
    }

    pub fn truth(&self) -> Option<bool> {
        self.page.noted(self.value.truth())
    }

    pub fn text(&self) -> Option<&'a str> {
        self.page.noted(self.value.text())
    }

    /// The text, if it is one; nothing is noted.
    pub fn plain_text(&self) -> Option<&'a str> {
        self.value.text().ok()
    }

    /// One line that can be shown, without space around it, of at most the length of `quantity`.
    pub fn line(&self, quantity: Quantity) -> Option<String> {
        let text = self.text()?;
        match checked_line(text, quantity) {
            Err(kind) if self.page.lets_pass(&kind) => Some(text.to_owned()),
            line => self.page.noted(line.map_err(|kind| self.value.wrong(kind))),
        }
    }

    /// One word of a choice.
    pub fn word<T: Named>(&self) -> Option<T> {
        self.page.noted(self.value.named())
    }

    pub fn table(&self) -> Option<Table<'a>> {
        self.page.noted(self.value.fields()).map(|fields| Table { page: self.page, fields })
    }

    /// The values of a list, with the range of their count where there is one.
    pub fn list(&self, count: Option<Quantity>) -> Option<Vec<Item<'a>>> {
        let values = self.page.noted(self.value.list())?;
        if let Some(Err(kind)) = count.map(|quantity| checked_count(values.len(), quantity))
            && !self.page.lets_pass(&kind)
        {
            self.fault(kind);
            return None;
        }
        Some(values.iter().map(|value| Item { page: self.page, value }).collect())
    }

    /// The tables of a list of tables.
    pub fn tables(&self, count: Quantity) -> Option<Vec<Table<'a>>> {
        whole(self.list(Some(count))?.iter().map(Item::table))
    }
}

/// All of them, or `None` if one is missing; each is read, so that the faults of all are noted.
pub(super) fn whole<T>(read: impl Iterator<Item = Option<T>>) -> Option<Vec<T>> {
    let read: Vec<Option<T>> = read.collect();
    read.into_iter().collect()
}

/// One line that can be shown, without space around it, of at most the length of `quantity`.
pub(super) fn checked_line(text: &str, quantity: Quantity) -> Result<String, FaultKind> {
    let line = text.trim();
    if let Some(character) = line.chars().find(|&c| unprintable(c)) {
        return Err(FaultKind::Exercise(ExerciseFault::Unprintable { character }));
    }
    let (least, most) = (quantity.bound().min, quantity.bound().max);
    let found = counted(line.chars().count());
    match quantity.check(found) {
        Ok(_) => Ok(line.to_owned()),
        Err(_) => Err(FaultKind::TextLength { least, most, found }),
    }
}

/// Whether a list has as many lines as `quantity` allows.
pub(super) fn checked_count(lines: usize, quantity: Quantity) -> Result<(), FaultKind> {
    let (least, most) = (quantity.bound().min, quantity.bound().max);
    let found = counted(lines);
    quantity.check(found).map(|_| ()).map_err(|_| FaultKind::ListLength { least, most, found })
}

fn counted(count: usize) -> i64 {
    i64::try_from(count).unwrap_or(i64::MAX)
}

/// Control characters, line ends, the marks that turn the direction of writing, and what is put for bytes that are no text.
fn unprintable(c: char) -> bool {
    c.is_control() || is_hidden(c) || matches!(c, '\u{2028}' | '\u{2029}' | '\u{FEFF}' | '\u{FFFD}')
}
