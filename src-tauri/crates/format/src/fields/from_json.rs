//! Reads the values of a JSON object.

use super::{Entry, Node, Value};
use exercises::file_fault::FaultKind;
use serde::de::{Deserialize, Deserializer, MapAccess, SeqAccess, Visitor};
use std::fmt;

/// The value in a line of text.
///
/// # Errors
/// The parser's message about the syntax, and the character at which it stopped.
pub(crate) fn json(line: &str) -> Result<Value, FaultKind> {
    let node = serde_json::from_str(line).map_err(|error| {
        let said = error.to_string();
        // The parser reads a single line and would report each as line 1.
        let detail = said.split(" at line 1 column ").next().unwrap_or_default().to_owned();
        FaultKind::NotJson { column: u32::try_from(error.column()).unwrap_or(u32::MAX).max(1), detail }
    })?;
    Ok(Value { at: None, field: String::new(), node })
}

impl Value {
    /// The value of a field; if it is a list, each of its values gets the field's name too.
    fn of_field(field: &str, node: Node) -> Value {
        let node = match node {
            Node::List(values) => Node::List(values.into_iter().map(|value| Value::of_field(field, value.node)).collect()),
            other => other,
        };
        Value { at: None, field: field.to_owned(), node }
    }
}

impl<'de> Deserialize<'de> for Node {
    fn deserialize<D: Deserializer<'de>>(input: D) -> Result<Node, D::Error> {
        input.deserialize_any(AnyValue)
    }
}

struct AnyValue;

impl<'de> Visitor<'de> for AnyValue {
    type Value = Node;

    fn expecting(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        out.write_str("a value")
    }

    fn visit_bool<E>(self, truth: bool) -> Result<Node, E> {
        Ok(Node::Truth(truth))
    }

    fn visit_i64<E>(self, number: i64) -> Result<Node, E> {
        Ok(Node::Whole(number))
    }

    fn visit_u64<E>(self, number: u64) -> Result<Node, E> {
        Ok(Node::Whole(i64::try_from(number).unwrap_or(i64::MAX)))
    }

    fn visit_f64<E>(self, number: f64) -> Result<Node, E> {
        Ok(Node::Number(number))
    }

    fn visit_str<E>(self, text: &str) -> Result<Node, E> {
        Ok(Node::Text(text.to_owned()))
    }

    fn visit_unit<E>(self) -> Result<Node, E> {
        Ok(Node::Nothing)
    }

    fn visit_seq<A: SeqAccess<'de>>(self, mut list: A) -> Result<Node, A::Error> {
        let mut values = Vec::new();
        while let Some(node) = list.next_element()? {
            values.push(Value { at: None, field: String::new(), node });
        }
        Ok(Node::List(values))
    }

    fn visit_map<A: MapAccess<'de>>(self, mut object: A) -> Result<Node, A::Error> {
        let mut entries = Vec::new();
        while let Some((field, node)) = object.next_entry::<String, Node>()? {
            entries.push(Entry { at: None, value: Value::of_field(&field, node) });
        }
        Ok(Node::Table(entries))
    }
}
