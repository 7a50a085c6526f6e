//! Writes the texts as Rust code. Texts without values become tables of strings, those with values tables of pieces; a region has
//! only the texts that differ from its language.

use crate::check::{Texts, Type, Value};
use crate::read::{Locale, Piece, Text};

type One<'a> = (&'a String, &'a Vec<Value>);

/// The whole file.
pub fn rust(locales: &[Locale], first: &Locale, texts: &Texts) -> String {
    let (plain, made): (Vec<One<'_>>, Vec<One<'_>>) = texts.iter().partition(|(_, values)| values.is_empty());
    let mut out = vec![locale_enum(locales), key_enum(first, &plain)];
    out.extend(locales.iter().map(|locale| tables(locale, &plain, &made)));
    out.push(functions(first, &made));
    out.push(made_list(&made));
    out.join("\n")
}

fn locale_enum(locales: &[Locale]) -> String {
    let each = |of: &dyn Fn(&Locale) -> String| locales.iter().map(of).collect::<String>();
    let variants = each(&|locale| format!("    /// `{}`\n    {},\n", locale.tag, pascal(&locale.tag)));
    let all = each(&|locale| format!("Locale::{}, ", pascal(&locale.tag)));
    let tags = each(&|locale| format!("            Locale::{} => {:?},\n", pascal(&locale.tag), locale.tag));
    let parents = each(&|locale| {
        let parent = locale.parent().map_or("None".into(), |parent| format!("Some(Locale::{})", pascal(parent)));
        format!("            Locale::{} => {parent},\n", pascal(&locale.tag))
    });
    let tables = each(&|locale| format!("            Locale::{} => &{}_TEXTS,\n", pascal(&locale.tag), upper(&locale.tag)));
    format!(
        "/// A language, or a language as one region writes it.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Locale {{
{variants}}}

impl Locale {{
    /// All of them.
    pub const ALL: &'static [Locale] = &[{all}];

    /// The language tag: \"es-MX\".
    pub const fn tag(self) -> &'static str {{
        match self {{
{tags}        }}
    }}

    /// The language of a region.
    pub const fn parent(self) -> Option<Locale> {{
        match self {{
{parents}        }}
    }}

    pub(crate) const fn texts(self) -> &'static Texts {{
        match self {{
{tables}        }}
    }}
}}
"
    )
}

fn key_enum(first: &Locale, plain: &[One<'_>]) -> String {
    let variants: String =
        plain.iter().map(|(id, _)| format!("    /// {}\n    {},\n", shown(&first.texts[*id].pieces), pascal(id))).collect();
    let all: String = plain.iter().map(|(id, _)| format!("Key::{}, ", pascal(id))).collect();
    format!(
        "/// The name of a text without values.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[repr(u16)]
pub enum Key {{
{variants}}}

impl Key {{
    /// All of them.
    pub const ALL: &'static [Key] = &[{all}];
}}
"
    )
}

fn tables(locale: &Locale, plain: &[One<'_>], made: &[One<'_>]) -> String {
    let text = |text: &Text, _: &[Value]| match text.pieces.as_slice() {
        [Piece::Text(text)] => format!("{text:?}"),
        _ => "\"\"".into(),
    };
    let plain = table(locale, plain, text);
    let made = table(locale, made, |text, values| pieces(&text.pieces, values));
    format!("static {}_TEXTS: Texts = Texts {{ plain: {plain}, made: {made} }};\n", upper(&locale.tag))
}

/// All texts of a language by their index, or those of a region with their indices.
fn table(locale: &Locale, list: &[One<'_>], one: impl Fn(&Text, &[Value]) -> String) -> String {
    let own = list.iter().enumerate().filter_map(|(at, (id, values))| Some((at, one(locale.texts.get(*id)?, values))));
    match locale.parent() {
        None => format!("Table::All(&[\n{}])", own.map(|(_, text)| format!("    {text},\n")).collect::<String>()),
        Some(_) => {
            format!("Table::Some(&[\n{}])", own.map(|(at, text)| format!("    ({at}, {text}),\n")).collect::<String>())
        }
    }
}

fn pieces(all: &[Piece], values: &[Value]) -> String {
    let at = |name: &str| values.iter().position(|value| value.name == name).unwrap_or_default();
    let one = |piece: &Piece| match piece {
        Piece::Text(text) => format!("Piece::Text({text:?})"),
        Piece::Value(name) => format!("Piece::Value({})", at(name)),
        Piece::Choose(name, cases) => {
            let number = values.get(at(name)).is_some_and(|value| value.kind == Type::Number);
            let list = cases.iter().enumerate().map(|(place, (name, inner))| {
                let case = if place + 1 == cases.len() { "Case::Default".into() } else { case(name, number) };
                format!("({case}, {})", pieces(inner, values))
            });
            format!("Piece::Choose({}, &[{}])", at(name), list.collect::<Vec<_>>().join(", "))
        }
    };
    format!("&[{}]", all.iter().map(one).collect::<Vec<_>>().join(", "))
}

fn case(name: &str, number: bool) -> String {
    match name.parse::<i64>() {
        Ok(figure) if number => format!("Case::Exactly({figure})"),
        _ if number => format!("Case::Plural(Plural::{})", pascal(name)),
        _ => format!("Case::Word({name:?})"),
    }
}

fn functions(first: &Locale, made: &[One<'_>]) -> String {
    let all: String = made.iter().enumerate().map(|(at, one)| function(first, at, *one)).collect();
    format!("impl Words {{\n{all}}}\n")
}

fn function(first: &Locale, at: usize, (id, values): One<'_>) -> String {
    let kind = |value: &Value| match value.kind {
        Type::Number => "impl Into<Number>",
        Type::Text => "&str",
    };
    let taken: String = values.iter().map(|value| format!(", {}: {}", snake(&value.name), kind(value))).collect();
    let given = values.iter().map(|value| match value.kind {
        Type::Number => format!("Value::Number({}.into())", snake(&value.name)),
        Type::Text => format!("Value::Text({})", snake(&value.name)),
    });
    let given = given.collect::<Vec<_>>().join(", ");
    let (doc, name) = (shown(&first.texts[id].pieces), snake(id));
    let allow =
        if values.len() > 6 { "    #[allow(clippy::too_many_arguments, reason = \"one for each value\")]\n" } else { "" };
    format!(
        "    /// {doc}\n{allow}    pub fn {name}(self{taken}) -> String {{\n        self.make({at}, &[{given}])\n    }}\n\n"
    )
}

/// A list for tests that check all texts.
fn made_list(made: &[One<'_>]) -> String {
    let one = |(id, values): &One<'_>| {
        let numbers = values.iter().map(|value| (value.kind == Type::Number).to_string()).collect::<Vec<_>>().join(", ");
        format!("    ({id:?}, &[{numbers}]),\n")
    };
    let all: String = made.iter().map(one).collect();
    format!(
        "/// Every text with values: its id, and for each value whether it is a number.
#[cfg(test)]
pub(crate) const MADE: &[(&str, &[bool])] = &[
{all}];
"
    )
}

/// A text as its documentation shows it.
fn shown(all: &[Piece]) -> String {
    let one = |piece: &Piece| match piece {
        Piece::Text(text) => text.replace('\n', " ").replace(['[', ']', '<', '>', '`'], ""),
        Piece::Value(name) => format!("`{name}`"),
        Piece::Choose(_, cases) => cases.last().map(|(_, pieces)| shown(pieces)).unwrap_or_default(),
    };
    all.iter().map(one).collect()
}

fn pascal(id: &str) -> String {
    let capital = |part: &str| {
        let mut letters = part.chars();
        let first = letters.next().map(|first| first.to_ascii_uppercase());
        first.into_iter().chain(letters.map(|letter| letter.to_ascii_lowercase())).collect::<String>()
    };
    id.split(['-', '.', '_']).map(capital).collect()
}

fn snake(id: &str) -> String {
    id.replace(['-', '.'], "_").to_lowercase()
}

fn upper(tag: &str) -> String {
    snake(tag).to_uppercase()
}
