//! The system's language.

use words::Locale;

/// The language of the system: the first of the person's preferred languages that has texts; otherwise English.
pub fn locale() -> Locale {
    closest(sys_locale::get_locales())
}

/// Without a language ("C", "POSIX"), English is used.
fn closest(preferred: impl Iterator<Item = String>) -> Locale {
    let mut named = preferred.take_while(|tag| !matches!(tag.as_str(), "C" | "POSIX"));
    named.find_map(|tag| Locale::closest(&tag)).unwrap_or(Locale::En)
}

/// The texts of a language. A debug build returns them in the made-up language if that is requested.
pub fn words(locale: Locale) -> words::Words {
    words::Words::new(locale).in_pseudo(is_pseudo())
}

/// Whether texts are in the made-up language of the tests; never in a release build.
pub fn is_pseudo() -> bool {
    cfg!(debug_assertions) && std::env::var_os("CARRYOVER_PSEUDO").is_some()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_first_preferred_language_with_texts_counts() {
        let of = |tags: &[&str]| closest(tags.iter().map(|tag| (*tag).to_owned())).tag();
        assert_eq!(of(&["es-MX"]), "es-MX");
        assert_eq!(of(&["ca", "es-AR", "en-US"]), "es");
        assert_eq!(of(&["de", "fr"]), "en");
        assert_eq!(of(&["C", "es-ES"]), "en", "without a request there is none");
        assert_eq!(of(&[]), "en");
    }
}
