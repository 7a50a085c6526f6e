//! Converts Fluent's syntax tree to the few forms that are generated as Rust. References to terms and other messages are resolved
//! here.

use fluent_syntax::ast::{Comment, Entry, Expression, InlineExpression, Pattern, PatternElement, Resource, VariantKey};
use fluent_syntax::parser;
use std::collections::BTreeMap;
use std::fs;
use std::path::{Path, PathBuf};

/// Largest depth of references between texts; deeper ones are taken for a cycle.
const DEEPEST: u8 = 8;

/// A piece of a text.
#[derive(Debug, Clone, PartialEq)]
pub enum Piece {
    /// Text as it is shown.
    Text(String),
    /// The value with this name.
    Value(String),
    /// The value that decides, and the pieces for each case; the default is the last.
    Choose(String, Vec<(String, Vec<Piece>)>),
}

/// A text in a file.
#[derive(Debug)]
pub struct Text {
    /// "file.ftl:12".
    pub at: String,
    /// The comment above it, without `#`.
    pub comment: String,
    /// Its pieces, in order.
    pub pieces: Vec<Piece>,
}

/// All texts of a language tag.
#[derive(Debug)]
pub struct Locale {
    /// "es", "es-MX".
    pub tag: String,
    /// The texts by id; attributes as "id.name".
    pub texts: BTreeMap<String, Text>,
}

impl Locale {
    /// The language of a region: "es" of "es-MX".
    pub fn parent(&self) -> Option<&str> {
        self.tag.split_once('-').map(|(language, _)| language)
    }
}

/// A message, attribute or term before its references are resolved.
struct Source<'s> {
    at: String,
    comment: String,
    pattern: Pattern<&'s str>,
}

type Sources<'s> = BTreeMap<String, Source<'s>>;

/// The languages in `root`, one per folder, sorted: a language comes before its regions.
pub fn locales(root: &Path, faults: &mut Vec<String>) -> Vec<Locale> {
    let folders = sorted(root, faults).into_iter().filter(|path| path.is_dir());
    folders.collect::<Vec<_>>().iter().map(|folder| locale(folder, faults)).collect()
}

fn locale(folder: &Path, faults: &mut Vec<String>) -> Locale {
    let mut files = Vec::new();
    for file in sorted(folder, faults).into_iter().filter(|path| path.extension().is_some_and(|end| end == "ftl")) {
        match fs::read_to_string(&file) {
            Ok(text) => files.push((file, text)),
            Err(error) => faults.push(format!("{}: {error}", file.display())),
        }
    }
    let mut sources = Sources::new();
    for (file, text) in &files {
        gather(file, text, &mut sources, faults);
    }
    let mut texts = BTreeMap::new();
    for (id, Source { at, comment, pattern }) in sources.iter().filter(|(id, _)| !id.starts_with('-')) {
        match pieces(pattern, &sources, 0) {
            Ok(pieces) => drop(texts.insert(id.clone(), Text { at: at.clone(), comment: comment.clone(), pieces })),
            Err(fault) => faults.push(format!("{at}: {id}: {fault}")),
        }
    }
    Locale { tag: folder.file_name().unwrap_or_default().to_string_lossy().into_owned(), texts }
}

/// Every message, attribute ("id.name") and term ("-id") of a file.
fn gather<'s>(file: &Path, text: &'s str, sources: &mut Sources<'s>, faults: &mut Vec<String>) {
    let line = |end: usize| 1 + text[..end].matches('\n').count();
    let place = |part: &str| format!("{}:{}", file.display(), line(part.as_ptr() as usize - text.as_ptr() as usize));
    for entry in parse(file, text, faults).body {
        let (id, name, value, attributes, comment) = match entry {
            Entry::Message(one) => (one.id.name.to_owned(), one.id.name, one.value, one.attributes, one.comment),
            Entry::Term(one) => (format!("-{}", one.id.name), one.id.name, Some(one.value), one.attributes, one.comment),
            _ => continue,
        };
        let comment = comment.map(|Comment { content }| content.join("\n")).unwrap_or_default();
        let value = value.map(|value| (id.clone(), place(name), value));
        let attributes = attributes.into_iter().map(|one| (format!("{id}.{}", one.id.name), place(one.id.name), one.value));
        for (id, at, pattern) in value.into_iter().chain(attributes) {
            let source = Source { at: at.clone(), comment: comment.clone(), pattern };
            if let Some(first) = sources.insert(id.clone(), source) {
                faults.push(format!("{at}: {id} is already in {}", first.at));
            }
        }
    }
}

/// Parses a file; adds what the parser could not read to `faults`.
fn parse<'s>(file: &Path, text: &'s str, faults: &mut Vec<String>) -> Resource<&'s str> {
    parser::parse(text).unwrap_or_else(|(resource, errors)| {
        let line = |end: usize| 1 + text[..end].matches('\n').count();
        faults.extend(errors.iter().map(|error| format!("{}:{}: {}", file.display(), line(error.pos.start), error.kind)));
        resource
    })
}

fn pieces(pattern: &Pattern<&str>, all: &Sources<'_>, depth: u8) -> Result<Vec<Piece>, String> {
    if depth > DEEPEST {
        return Err("refers to itself".into());
    }
    let mut out = Vec::new();
    for element in &pattern.elements {
        match element {
            PatternElement::TextElement { value } => push(&mut out, Piece::Text((*value).to_owned())),
            PatternElement::Placeable { expression } => {
                placed(expression, all, depth)?.into_iter().for_each(|piece| push(&mut out, piece));
            }
        }
    }
    Ok(out)
}

/// Appends a piece; text is joined to the text before it.
fn push(out: &mut Vec<Piece>, piece: Piece) {
    match (out.last_mut(), piece) {
        (Some(Piece::Text(last)), Piece::Text(text)) => last.push_str(&text),
        (_, piece) => out.push(piece),
    }
}

fn placed(expression: &Expression<&str>, all: &Sources<'_>, depth: u8) -> Result<Vec<Piece>, String> {
    match expression {
        Expression::Inline(inline) => inlined(inline, all, depth),
        Expression::Select { selector: InlineExpression::VariableReference { id }, variants } => {
            let mut cases = Vec::new();
            for variant in variants.iter().filter(|one| !one.default).chain(variants.iter().filter(|one| one.default)) {
                let (VariantKey::Identifier { name } | VariantKey::NumberLiteral { value: name }) = &variant.key;
                cases.push(((*name).to_owned(), pieces(&variant.value, all, depth + 1)?));
            }
            Ok(vec![Piece::Choose(id.name.to_owned(), cases)])
        }
        Expression::Select { .. } => Err("chooses by something other than a value".into()),
    }
}

fn inlined(inline: &InlineExpression<&str>, all: &Sources<'_>, depth: u8) -> Result<Vec<Piece>, String> {
    let other = |id: String| match all.get(&id) {
        Some(source) => pieces(&source.pattern, all, depth + 1),
        None => Err(format!("there is no {id}")),
    };
    match inline {
        InlineExpression::VariableReference { id } => Ok(vec![Piece::Value(id.name.to_owned())]),
        InlineExpression::StringLiteral { value } => {
            Ok(vec![Piece::Text(fluent_syntax::unicode::unescape_unicode_to_string(value).into_owned())])
        }
        InlineExpression::NumberLiteral { value } => Ok(vec![Piece::Text((*value).to_owned())]),
        InlineExpression::Placeable { expression } => placed(expression, all, depth),
        InlineExpression::MessageReference { id, attribute } => other(match attribute {
            Some(attribute) => format!("{}.{}", id.name, attribute.name),
            None => id.name.to_owned(),
        }),
        InlineExpression::TermReference { id, attribute: None, arguments: None } => other(format!("-{}", id.name)),
        InlineExpression::TermReference { .. } => Err("terms take no values here".into()),
        InlineExpression::FunctionReference { id, .. } => {
            Err(format!("{}() is not needed: a number is shown as the language writes it", id.name))
        }
    }
}

fn sorted(folder: &Path, faults: &mut Vec<String>) -> Vec<PathBuf> {
    let entries = fs::read_dir(folder).and_then(Iterator::collect::<std::io::Result<Vec<_>>>);
    let entries = entries.unwrap_or_else(|error| {
        faults.push(format!("{}: {error}", folder.display()));
        Vec::new()
    });
    let mut all: Vec<PathBuf> = entries.iter().map(fs::DirEntry::path).collect();
    all.sort();
    all
}
