//! Reads the values of a TOML file.

use super::{Entry, Node, Value};
use exercises::file_fault::{FaultKind, FileFault};
use toml::Spanned;
use toml::de::{DeInteger, DeTable, DeValue};

/// The table that makes up the whole file.
///
/// # Errors
/// The parser's message about the syntax.
pub(crate) fn toml(text: &str) -> Result<Value, FileFault> {
    let top = DeTable::parse(text).map_err(|error| {
        let detail = error.message().replace('\n', ", ");
        let at = error.span().map_or(0, |span| span.start);
        super::Wrong { at: Some(at), field: String::new(), kind: FaultKind::NotToml { detail } }.in_text(text)
    })?;
    Ok(Value { at: Some(0), field: String::new(), node: table(top.get_ref()) })
}

fn table(fields: &DeTable<'_>) -> Node {
    let entry = |(name, found): (&Spanned<_>, &Spanned<DeValue<'_>>)| Entry {
        at: Some(name.span().start),
        value: value(AsRef::<str>::as_ref(name.get_ref()), found),
    };
    Node::Table(fields.iter().map(entry).collect())
}

fn value(field: &str, found: &Spanned<DeValue<'_>>) -> Value {
    let node = match found.get_ref() {
        DeValue::String(text) => Node::Text(text.to_string()),
        DeValue::Integer(number) => Node::Whole(whole(number)),
        DeValue::Float(number) => Node::Number(number.as_str().parse().unwrap_or(f64::NAN)),
        DeValue::Boolean(truth) => Node::Truth(*truth),
        DeValue::Datetime(date) => Node::Date(*date),
        DeValue::Array(values) => Node::List(values.iter().map(|one| value(field, one)).collect()),
        DeValue::Table(fields) => table(fields),
    };
    Value { at: Some(found.span().start), field: field.to_owned(), node }
}

fn whole(number: &DeInteger<'_>) -> i64 {
    let farthest = if number.as_str().starts_with('-') { i64::MIN } else { i64::MAX };
    i64::from_str_radix(number.as_str(), number.radix()).unwrap_or(farthest)
}
