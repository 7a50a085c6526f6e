//! All visible text, one file a language, with typed keys: window, notifications, paper and terminal.
//!
//! A [`Key`] names a text; `en.rs` and `es.rs` say it. A text that is missing in a language does not compile. Texts may hold
//! places: `{name}` takes a value, `{n|one|other}` takes the number `n` and chooses the plural form. Longer sentences made of
//! domain values stand in [`phrase`]; refusals, each as fault and advice, in [`failure`].
#![forbid(unsafe_code)]

pub mod clinic;
mod date;
mod en;
mod es;
pub mod failure;
mod fill;
mod key;
pub mod patient;
pub mod phrase;
mod pseudo;
pub mod review;

pub use exercises::catalogue::Lang;
pub use key::Key;

use std::fmt::Display;

/// The text of one language.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Words {
    /// The language.
    pub lang: Lang,
    pseudo: bool,
}

impl Words {
    /// The text of `lang`.
    pub const fn new(lang: Lang) -> Words {
        Words { lang, pseudo: false }
    }

    /// The same in the made-up language of the tests, if so.
    pub const fn in_pseudo(self, so: bool) -> Words {
        Words { pseudo: so, ..self }
    }

    /// A text without places.
    pub fn text(self, key: Key) -> &'static str {
        self.as_shown(match self.lang {
            Lang::En => en::text(key),
            Lang::Es => es::text(key),
        })
    }

    /// A text with its places filled.
    pub fn fill(self, key: Key, values: &[(&str, &dyn Display)]) -> String {
        fill::fill(self.text(key), values)
    }

    /// Every text of a language goes through here.
    pub(crate) fn as_shown(self, text: &'static str) -> &'static str {
        if self.pseudo { pseudo::text(text) } else { text }
    }

    /// So does every sentence that a language made of values by itself.
    pub(crate) fn owned_as_shown(self, text: String) -> String {
        if self.pseudo { pseudo::expanded(&text) } else { text }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn both_languages_fill_the_same_places() {
        for key in Key::ALL {
            assert_eq!(
                fill::places(Words::new(Lang::En).text(*key)),
                fill::places(Words::new(Lang::Es).text(*key)),
                "{key:?} has other places in Spanish"
            );
        }
    }

    #[test]
    fn no_text_is_empty_or_untidy() {
        for lang in [Lang::En, Lang::Es] {
            for key in Key::ALL {
                let text = Words::new(lang).text(*key);
                assert!(!text.is_empty() && text.trim() == text && !text.contains("  "), "{key:?}: {text:?}");
                assert!(!text.contains('!'), "{key:?} shouts: {text:?}");
            }
        }
    }
}
