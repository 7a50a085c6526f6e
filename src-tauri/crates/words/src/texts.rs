//! Makes texts from the tables that the build generates from the Fluent files.

use crate::number::Number;
use crate::plural::{self, Plural};
use crate::pseudo;
use exercises::catalogue::Lang;

include!(concat!(env!("OUT_DIR"), "/texts.rs"));

/// The texts of one locale.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Words {
    /// The language, possibly as written in a region.
    pub locale: Locale,
    pseudo: bool,
}

/// The texts of a language, or those in which a region differs from its language.
pub(crate) struct Texts {
    plain: Table<&'static str>,
    made: Table<&'static [Piece]>,
}

enum Table<T: 'static> {
    /// All texts, by their index.
    All(&'static [T]),
    /// Only some texts, each with its index; sorted.
    Some(&'static [(u16, T)]),
}

impl<T: Copy> Table<T> {
    fn get(&self, at: u16) -> Option<T> {
        match self {
            Table::All(all) => all.get(usize::from(at)).copied(),
            Table::Some(some) => some.binary_search_by_key(&at, |one| one.0).ok().map(|found| some[found].1),
        }
    }
}

/// A piece of a text with values.
enum Piece {
    Text(&'static str),
    Value(u8),
    Choose(u8, &'static [(Case, &'static [Piece])]),
}

#[allow(dead_code, reason = "which of them occur is up to the texts")]
enum Case {
    Plural(Plural),
    Exactly(i64),
    Word(&'static str),
    Default,
}

/// The value for a place in a text.
#[derive(Clone, Copy)]
enum Value<'a> {
    Number(Number),
    Text(&'a str),
}

impl Words {
    /// The texts of `locale`.
    pub const fn new(locale: Locale) -> Words {
        Words { locale, pseudo: false }
    }

    /// The same texts, in the made-up language of the tests if `so` is true.
    pub const fn in_pseudo(self, so: bool) -> Words {
        Words { pseudo: so, ..self }
    }

    /// The texts of another locale.
    pub const fn in_locale(self, locale: Locale) -> Words {
        Words { locale, ..self }
    }

    /// The language of the catalogue's texts.
    pub fn lang(self) -> Lang {
        self.locale.lang()
    }

    /// A text without values.
    pub fn text(self, key: Key) -> &'static str {
        let text = self.plain(key);
        if self.pseudo { pseudo::text(text) } else { text }
    }

    /// A number as the locale writes it: "5,5".
    pub fn shown(self, number: impl Into<Number>) -> String {
        number.into().written(self.plain(Key::LocaleDecimalMark), self.plain(Key::LocaleMinusSign))
    }

    /// A text without values, never in the made-up language.
    pub(crate) fn plain(self, key: Key) -> &'static str {
        self.find(|texts| texts.plain.get(key as u16)).unwrap_or_default()
    }

    /// Makes a text from its pieces and values.
    fn make(self, at: u16, values: &[Value<'_>]) -> String {
        let mut out = String::new();
        self.put(self.find(|texts| texts.made.get(at)).unwrap_or_default(), values, &mut out);
        out
    }

    /// The region's own text if there is one, otherwise its language's.
    fn find<T>(self, get: impl Fn(&Texts) -> Option<T>) -> Option<T> {
        let own = get(self.locale.texts());
        own.or_else(|| get(self.locale.parent()?.texts()))
    }

    fn put(self, pieces: &[Piece], values: &[Value<'_>], out: &mut String) {
        for piece in pieces {
            match piece {
                Piece::Text(text) if self.pseudo => pseudo::expand(text, out),
                Piece::Text(text) => out.push_str(text),
                Piece::Value(at) => match values.get(usize::from(*at)) {
                    Some(Value::Number(number)) => out.push_str(&self.shown(number)),
                    Some(Value::Text(text)) => out.push_str(text),
                    None => {}
                },
                Piece::Choose(at, cases) => {
                    let value = values.get(usize::from(*at));
                    let chosen = value.and_then(|value| cases.iter().find(|(case, _)| self.is(case, *value)));
                    self.put(chosen.map_or(&[], |(_, pieces)| pieces), values, out);
                }
            }
        }
    }

    fn is(self, case: &Case, value: Value<'_>) -> bool {
        match (case, value) {
            (Case::Default, _) => true,
            (Case::Plural(plural), Value::Number(number)) => plural::of(self.locale, number) == *plural,
            (Case::Exactly(whole), Value::Number(number)) => number.is(*whole),
            (Case::Word(word), Value::Text(text)) => *word == text,
            _ => false,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Every text of a locale with its id. Each number is `number`, and each other value is "#".
    fn all(words: Words, number: i64) -> Vec<(String, String)> {
        let plain = Key::ALL.iter().map(|key| (format!("{key:?}"), words.text(*key).to_owned()));
        let made = MADE.iter().enumerate().map(|(at, (id, numbers))| {
            let value = |is_number: &bool| if *is_number { Value::Number(number.into()) } else { Value::Text("#") };
            ((*id).to_owned(), words.make(at as u16, &numbers.iter().map(value).collect::<Vec<_>>()))
        });
        plain.chain(made).collect()
    }

    #[test]
    fn a_region_uses_its_languages_texts_except_for_its_own() {
        let (es, mexico, spain) = (Words::new(Locale::Es), Words::new(Locale::EsMx), Words::new(Locale::EsEs));
        assert_eq!(es.text(Key::Back), mexico.text(Key::Back));
        assert_ne!(spain.text(Key::EmployerCanRead), mexico.text(Key::EmployerCanRead));
        assert_eq!((es.shown(Number::rounded(5.5, 1)), mexico.shown(Number::rounded(5.5, 1))), ("5,5".into(), "5.5".into()));
    }

    #[test]
    fn values_and_plural_forms() {
        let (en, es) = (Words::new(Locale::En), Words::new(Locale::Es));
        assert_eq!((en.dose_reps(1), en.dose_reps(12)), ("1 repetition".into(), "12 repetitions".into()));
        assert_eq!(es.done_failed(1), es.done_failed(1_u8));
        assert_eq!(en.seconds_short(Number::rounded(0.5, 1)), "0.5\u{a0}s");
    }

    #[test]
    fn no_text_is_empty_untidy_or_loud() {
        for locale in Locale::ALL {
            for (id, text) in [0, 1, 7].into_iter().flat_map(|number| all(Words::new(*locale), number)) {
                assert!(!text.is_empty() && text.trim() == text && !text.contains("  "), "{} {id}: {text:?}", locale.tag());
                assert!(!text.contains(['!', '{', '}']), "{} {id}: {text:?}", locale.tag());
            }
        }
    }

    #[test]
    fn every_text_of_the_made_up_language_has_no_plain_vowel() {
        for locale in Locale::ALL {
            for (id, text) in all(Words::new(*locale).in_pseudo(true), 7) {
                assert!(!text.contains(['a', 'e', 'i', 'o', 'u']), "{id}: {text}");
            }
        }
    }
}
