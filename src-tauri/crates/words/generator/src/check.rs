//! Compares the languages with each other, and determines the type of every value.

use crate::read::{Locale, Piece, Text};
use std::collections::{BTreeMap, BTreeSet};

/// The type of a value.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Type {
    /// A number, shown as the locale writes it.
    Number,
    /// Text, inserted unchanged.
    Text,
}

/// A value in a text.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Value {
    /// Its name, without `$`.
    pub name: String,
    /// Its type.
    pub kind: Type,
    /// Whether a language may omit it.
    pub optional: bool,
}

/// The values of every text, by id, in the order of their first use in the first language.
pub type Texts = BTreeMap<String, Vec<Value>>;

const CATEGORIES: [&str; 6] = ["zero", "one", "two", "few", "many", "other"];

/// Determines the values of every text, and adds every inconsistency to `faults`.
pub fn texts(locales: &[Locale], first: &str, faults: &mut Vec<String>) -> Texts {
    let Some(leading) = locales.iter().find(|locale| locale.tag == first) else {
        faults.push(format!("there is no folder {first}"));
        return Texts::new();
    };
    let all: Texts = leading.texts.iter().map(|(id, text)| (id.clone(), values(text))).collect();
    for locale in locales {
        complete(locale, locales, &all, faults);
        for (id, text) in &locale.texts {
            match all.get(id) {
                Some(values) => alike(id, text, values, faults),
                None => faults.push(format!("{}: {id} is not in {first}", text.at)),
            }
        }
    }
    names(&all, leading, faults);
    all
}

/// Checks that a language has every text, and that a region has a language.
fn complete(locale: &Locale, locales: &[Locale], all: &Texts, faults: &mut Vec<String>) {
    match locale.parent() {
        Some(parent) if locales.iter().any(|other| other.tag == parent) => {}
        Some(parent) => faults.push(format!("{}: there is no {parent}", locale.tag)),
        None => {
            let missing = all.keys().filter(|id| !locale.texts.contains_key(*id));
            faults.extend(missing.map(|id| format!("{}: {id} is missing", locale.tag)));
        }
    }
}

/// Checks that a text has the same values as in the first language.
fn alike(id: &str, text: &Text, values: &[Value], faults: &mut Vec<String>) {
    let mut uses = Vec::new();
    used(&text.pieces, &mut uses);
    let used: BTreeSet<&str> = uses.into_iter().map(|one| one.name).collect();
    let known: BTreeSet<&str> = values.iter().map(|value| value.name.as_str()).collect();
    let needed = values.iter().filter(|value| !value.optional).map(|value| value.name.as_str());
    for name in used.difference(&known) {
        faults.push(format!("{}: {id} has no value ${name}", text.at));
    }
    for name in needed.filter(|name| !used.contains(name)) {
        faults.push(format!("{}: {id} leaves out the value ${name}", text.at));
    }
    choices(id, text, &text.pieces, values, faults);
}

/// Checks that a selection by number uses plural categories or digits, with "other" for all other numbers.
fn choices(id: &str, text: &Text, pieces: &[Piece], values: &[Value], faults: &mut Vec<String>) {
    for piece in pieces {
        let Piece::Choose(name, cases) = piece else { continue };
        if values.iter().any(|value| value.name == *name && value.kind == Type::Number) {
            for (case, _) in cases.iter().filter(|(case, _)| !counts(case)) {
                faults.push(format!("{}: {id}: [{case}] is no plural category", text.at));
            }
            if cases.last().is_none_or(|(case, _)| case != "other") {
                faults.push(format!("{}: {id}: the default of ${name} must be *[other]", text.at));
            }
        }
        cases.iter().for_each(|(_, pieces)| choices(id, text, pieces, values, faults));
    }
}

/// Checks the names: ids that differ in Fluent may become the same name in Rust, or a keyword of Rust.
fn names(all: &Texts, leading: &Locale, faults: &mut Vec<String>) {
    const KEYWORDS: [&str; 14] =
        ["as", "break", "const", "continue", "else", "for", "if", "in", "loop", "match", "move", "return", "type", "while"];
    for id in all.keys().filter(|id| KEYWORDS.contains(&id.as_str()) || id.contains('_')) {
        faults.push(format!("{}: {id} cannot be a name in Rust", leading.texts[id].at));
    }
}

/// The values of a text. A value is a number if the text chooses by plural categories or digits, or if its comment says so;
/// otherwise it is text.
fn values(text: &Text) -> Vec<Value> {
    let mut uses = Vec::new();
    used(&text.pieces, &mut uses);
    let mut values: Vec<Value> = Vec::new();
    for one in &uses {
        if values.iter().all(|known| known.name != one.name) {
            let chosen = uses.iter().filter(|other| other.name == one.name).find_map(|other| other.cases.as_ref());
            let counted = chosen.is_some_and(|cases| cases.iter().all(|case| counts(case)));
            let said = text.comment.contains(&format!("${} (Number)", one.name));
            let kind = if counted || said { Type::Number } else { Type::Text };
            values.push(Value { name: one.name.to_owned(), kind, optional: false });
        }
    }
    values.extend(optional(&text.comment));
    values
}

/// Values that only other languages use: `$hour (Number, optional)`.
fn optional(comment: &str) -> impl Iterator<Item = Value> {
    let all = [("(Number, optional)", Type::Number), ("(Text, optional)", Type::Text)];
    all.into_iter().flat_map(move |(mark, kind)| {
        let named = comment.match_indices(mark).filter_map(|(at, _)| comment[..at].trim_end().rsplit('$').next());
        named.map(move |name| Value { name: name.to_owned(), kind, optional: true }).collect::<Vec<_>>()
    })
}

fn counts(case: &str) -> bool {
    CATEGORIES.contains(&case) || case.parse::<i64>().is_ok()
}

/// The use of a value in a text, with the cases if the text chooses by it.
struct Use<'a> {
    name: &'a str,
    cases: Option<Vec<&'a str>>,
}

fn used<'a>(pieces: &'a [Piece], out: &mut Vec<Use<'a>>) {
    for piece in pieces {
        match piece {
            Piece::Text(_) => {}
            Piece::Value(name) => out.push(Use { name, cases: None }),
            Piece::Choose(name, cases) => {
                out.push(Use { name, cases: Some(cases.iter().map(|(case, _)| case.as_str()).collect()) });
                cases.iter().for_each(|(_, pieces)| used(pieces, out));
            }
        }
    }
}
