//! The texts of one exercise in one language, read from a Fluent file: which messages it has, and that they are plain text.
//!
//! The only placeables allowed are texts in quotes, for characters that have a meaning in Fluent. All others are refused
//! before the file is parsed, so that a file with thousands of braces cannot overflow the parser's stack.

use super::page::{Fault, Page, checked_count, checked_line};
use super::{MAX_BYTES, TextFile, too_large};
use crate::fields::owned;
use exercises::catalogue::{Lang, Quantity};
use exercises::file_fault::{ExerciseFault, FaultKind};
use fluent_syntax::ast::{Entry, Expression, InlineExpression, Message, Pattern, PatternElement, Resource};
use fluent_syntax::parser;
use fluent_syntax::unicode::unescape_unicode_to_string;
use std::cell::Cell;
use std::collections::BTreeMap;

/// The message ids that are allowed, for faults. `N` is a number from 1, `RUNG` the id of a rung.
const MESSAGES: &[&str] = &[
    "name",
    "purpose",
    "set-up",
    "step-N",
    "should-feel",
    "should-not-feel",
    "mistake-N",
    "careful-N",
    "stop-N",
    "level-RUNG-name",
    "level-RUNG-change",
    "level-RUNG-set-up",
    "level-RUNG-step-N",
];

/// A language file that is being read.
pub(super) struct Language<'a> {
    pub lang: Lang,
    page: Page<'a>,
    /// The messages by id; `None` if the file could not be read at all, for which a fault is already noted.
    messages: Option<BTreeMap<&'a str, Text>>,
}

/// One message of the file.
struct Text {
    /// Where its id begins in the file, in bytes.
    at: usize,
    /// The text; `None` if it is not plain text, for which a fault is already noted.
    value: Option<String>,
    /// Whether the exercise has used this message.
    used: Cell<bool>,
}

impl<'a> Language<'a> {
    /// Reads the messages of a file. Whether the exercise needs them is checked later.
    pub fn new(file: &TextFile<'a>) -> Self {
        let mut read = Self { lang: file.lang, page: Page::new(file.name, file.text), messages: None };
        if let Some(resource) = parse(&read.page) {
            read.messages = Some(read.gathered(resource));
        }
        read
    }

    fn gathered(&self, resource: Resource<&'a str>) -> BTreeMap<&'a str, Text> {
        let page = &self.page;
        let mut messages = BTreeMap::new();
        for entry in resource.body {
            match entry {
                Entry::Message(message) => {
                    let id = message.id.name;
                    let at = page.place_of(id);
                    if messages.contains_key(id) {
                        page.fault(at, id, FaultKind::Duplicate { id: id.to_owned() });
                    } else {
                        messages.insert(id, Text { at, value: self.plain(&message), used: Cell::new(false) });
                    }
                }
                Entry::Term(term) => {
                    let kind = FaultKind::Exercise(ExerciseFault::Term);
                    page.fault(page.place_of(term.id.name), &format!("-{}", term.id.name), kind);
                }
                Entry::Comment(_) | Entry::GroupComment(_) | Entry::ResourceComment(_) | Entry::Junk { .. } => {}
            }
        }
        messages
    }

    /// The text of a message; a message with attributes is refused.
    fn plain(&self, message: &Message<&'a str>) -> Option<String> {
        let wrong = |part: &'a str, field: &str, fault| {
            self.page.fault(self.page.place_of(part), field, FaultKind::Exercise(fault));
        };
        let id = message.id.name;
        for attribute in &message.attributes {
            wrong(attribute.id.name, &format!("{id}.{}", attribute.id.name), ExerciseFault::Attribute);
        }
        let value = message.value.as_ref().and_then(plain_text);
        if value.is_none() && message.attributes.is_empty() {
            wrong(id, id, ExerciseFault::Placeable);
        }
        value.filter(|_| message.attributes.is_empty())
    }

    /// Notes a fault at the message with this id, or at the first line if there is no such message.
    pub fn fault(&self, id: &str, kind: FaultKind) {
        let at = self.messages.as_ref().and_then(|all| all.get(id)).map_or(0, |text| text.at);
        self.page.fault(at, id, kind);
    }

    /// Notes a fault at the last message of a list.
    pub fn fault_of_list(&self, stem: &str, kind: FaultKind) {
        let last = self.numbers(stem).last().map_or(1, |last| *last);
        self.fault(&format!("{stem}-{last}"), kind);
    }

    /// Whether there is a message with this id.
    pub fn has(&self, id: &str) -> bool {
        self.messages.as_ref().is_some_and(|all| all.contains_key(id))
    }

    /// Whether there is any message of a list.
    pub fn has_list(&self, stem: &str) -> bool {
        !self.numbers(stem).is_empty()
    }

    /// The text of a message, no longer than `quantity` allows.
    pub fn line(&self, id: &str, quantity: Quantity) -> Option<String> {
        let Some(text) = self.messages.as_ref()?.get(id) else {
            self.fault(id, FaultKind::Exercise(ExerciseFault::MissingMessage));
            return None;
        };
        text.used.set(true);
        let line = checked_line(text.value.as_deref()?, quantity);
        line.map_err(|kind| self.page.fault(text.at, id, kind)).ok()
    }

    /// The texts of the messages `stem-1`, `stem-2` and so on. `count` limits their number; each must be no longer than a
    /// line.
    pub fn lines(&self, stem: &str, count: Quantity) -> Option<Vec<String>> {
        self.messages.as_ref()?;
        let numbers = self.numbers(stem);
        let id = |number: u32| format!("{stem}-{number}");
        let read = |number: &u32| self.line(&id(*number), Quantity::LineCharacters);
        let lines: Vec<_> = numbers.iter().map(read).collect();
        if numbers.is_empty() {
            self.fault(&id(1), FaultKind::Exercise(ExerciseFault::MissingMessage));
            return None;
        }
        if let Some((expected, found)) = (1..).zip(&numbers).find(|(expected, found)| expected != *found) {
            self.fault(&id(*found), FaultKind::Exercise(ExerciseFault::Gap { missing: id(expected) }));
            return None;
        }
        if let Err(kind) = checked_count(numbers.len(), count) {
            self.fault_of_list(stem, kind);
            return None;
        }
        lines.into_iter().collect()
    }

    /// The numbers of the existing messages `stem-N`, sorted.
    fn numbers(&self, stem: &str) -> Vec<u32> {
        let ids = self.messages.iter().flat_map(BTreeMap::keys);
        let mut numbers: Vec<u32> = ids.filter_map(|id| number(id.strip_prefix(stem)?.strip_prefix('-')?)).collect();
        numbers.sort_unstable();
        numbers
    }

    /// Notes a fault for every message that the exercise has not used. If `rungs` is `None`, the rungs are not known, and
    /// messages for levels are not checked.
    pub fn left_over(&self, rungs: Option<&[String]>) {
        let unused = self.messages.iter().flatten().filter(|(_, text)| !text.used.get());
        for (id, text) in unused {
            let fault = match (level(id), rungs) {
                (Some(_), None) => continue,
                (Some(rung), Some(rungs)) => ExerciseFault::NoSuchLevel { found: rung.to_owned(), levels: rungs.to_vec() },
                (None, _) => ExerciseFault::UnknownMessage { allowed: owned(MESSAGES) },
            };
            self.page.fault(text.at, id, FaultKind::Exercise(fault));
        }
    }

    /// All faults of the file, in the order of its lines.
    pub fn into_faults(self) -> Vec<Fault> {
        self.page.into_faults()
    }
}

/// Parses the file; `None` with faults noted if it is not Fluent or not plain text.
fn parse<'a>(page: &Page<'a>) -> Option<Resource<&'a str>> {
    let bytes = page.text.len();
    if bytes > MAX_BYTES {
        page.fault(0, "", too_large(bytes));
        return None;
    }
    let placeables = placeables(page.text);
    for at in &placeables {
        page.fault(*at, "", FaultKind::Exercise(ExerciseFault::Placeable));
    }
    if !placeables.is_empty() {
        return None;
    }
    match parser::parse(page.text) {
        Ok(resource) => Some(resource),
        Err((_, errors)) => {
            for error in errors {
                let fault = ExerciseFault::NotFluent { detail: error.kind.to_string() };
                page.fault(error.pos.start, "", FaultKind::Exercise(fault));
            }
            None
        }
    }
}

/// Where placeables begin that are not text in quotes on one line, at most one for each line. Comment lines are not searched.
fn placeables(text: &str) -> Vec<usize> {
    let mut found = Vec::new();
    let mut start = 0;
    for line in text.split_inclusive('\n') {
        let mut at = 0;
        while let Some(brace) = line[at..].find('{').filter(|_| !line.starts_with('#')) {
            match quoted(&line[at + brace..]) {
                Some(length) => at += brace + length,
                None => {
                    found.push(start + at + brace);
                    break;
                }
            }
        }
        start += line.len();
    }
    found
}

/// The length in bytes of a placeable with text in quotes at the beginning of `text`.
fn quoted(text: &str) -> Option<usize> {
    let inner = text.strip_prefix('{')?.trim_start_matches(' ').strip_prefix('"')?;
    let mut escaped = false;
    let end = inner.find(|c| {
        let ends = c == '"' && !escaped;
        escaped = c == '\\' && !escaped;
        ends
    })?;
    let rest = inner[end + 1..].trim_start_matches(' ').strip_prefix('}')?;
    Some(text.len() - rest.len())
}

/// The text of a pattern. Line breaks in the file become spaces, because a text is one paragraph.
fn plain_text(pattern: &Pattern<&str>) -> Option<String> {
    let mut out = String::new();
    for element in &pattern.elements {
        match element {
            PatternElement::TextElement { value } => {
                let line = value.trim_end_matches(['\r', '\n']);
                out.push_str(line);
                if line.len() < value.len() && !out.ends_with(' ') {
                    out.push(' ');
                }
            }
            PatternElement::Placeable { expression: Expression::Inline(InlineExpression::StringLiteral { value }) } => {
                out.push_str(&unescape_unicode_to_string(value))
            }
            PatternElement::Placeable { .. } => return None,
        }
    }
    Some(out)
}

/// A number from 1, written without a sign and without leading zeros.
fn number(digits: &str) -> Option<u32> {
    let counted = digits.starts_with(|first| matches!(first, '1'..='9'));
    digits.parse().ok().filter(|_| counted)
}

/// The rung to which a message `level-RUNG-name`, `level-RUNG-change`, `level-RUNG-set-up` or `level-RUNG-step-N` belongs.
fn level(id: &str) -> Option<&str> {
    let rest = id.strip_prefix("level-")?;
    let of_list = || rest.rsplit_once("-step-").filter(|(_, n)| number(n).is_some()).map(|(rung, _)| rung);
    ["-name", "-change", "-set-up"].into_iter().find_map(|end| rest.strip_suffix(end)).or_else(of_list)
}
