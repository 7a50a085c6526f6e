//! Finds the locale with texts for a language tag from the system or the settings.

use crate::{Key, Locale, Words};
use exercises::catalogue::Lang;

impl Locale {
    /// The locale for a tag such as "es", "es-MX", "es_AR.UTF-8" or "es_ES@euro": that of the region if there is one, otherwise that
    /// of the language; `None` for a language without texts.
    pub fn closest(tag: &str) -> Option<Locale> {
        let tag = tag.split(['.', '@']).next().unwrap_or_default();
        let mut parts = tag.split(['-', '_']);
        let language = parts.next().unwrap_or_default().to_ascii_lowercase();
        // There may be a script such as "Latn" between language and region.
        let region = parts.find(|part| part.len() == 2).map(str::to_ascii_uppercase);
        let find = |tag: &str| Locale::ALL.iter().copied().find(|locale| locale.tag() == tag);
        region.and_then(|region| find(&format!("{language}-{region}"))).or_else(|| find(&language))
    }

    /// The language in which the catalogue's texts are shown.
    pub fn lang(self) -> Lang {
        let language = self.parent().unwrap_or(self);
        Lang::from_code(language.tag()).unwrap_or(Lang::En)
    }
}

impl Words {
    /// The name of a language in that language: "Español (México)".
    pub fn language_name(self, locale: Locale) -> &'static str {
        self.in_locale(locale).text(Key::LanguageName)
    }

    /// The name of a language of the catalogue's texts, in that language.
    pub fn language_of(self, lang: Lang) -> &'static str {
        Locale::closest(lang.code()).map_or(lang.code(), |locale| self.language_name(locale))
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use std::collections::BTreeSet;

    #[test]
    fn the_closest_is_the_region_then_the_language() {
        let closest = |tag| Locale::closest(tag).map(Locale::tag);
        assert_eq!(closest("es_MX.UTF-8"), Some("es-MX"));
        assert_eq!(closest("es-ar"), Some("es"));
        assert_eq!(closest("en-Latn-us"), Some("en-US"));
        assert_eq!(closest("en_GB@euro"), Some("en-GB"));
        assert_eq!(closest("en"), Some("en"));
        assert_eq!([closest("C.UTF-8"), closest(""), closest("estonian"), closest("de-ES")], [None; 4]);
    }

    #[test]
    fn every_tag_gives_its_locale_and_every_language_has_its_own_name() {
        for locale in Locale::ALL {
            assert_eq!(Locale::closest(locale.tag()), Some(*locale));
            assert!(locale.tag().starts_with(locale.lang().code()), "{locale:?}");
        }
        let of_texts = Lang::ALL.map(|lang| Words::new(Locale::En).language_of(lang));
        assert_eq!(of_texts, [Locale::En, Locale::Es].map(|locale| Words::new(Locale::Es).language_name(locale)));
        let names: BTreeSet<&str> = Locale::ALL.iter().map(|locale| Words::new(Locale::En).language_name(*locale)).collect();
        assert_eq!(names.len(), Locale::ALL.len());
    }
}
