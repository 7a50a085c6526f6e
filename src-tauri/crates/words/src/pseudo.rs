//! A made-up language, for tests of the screens: every vowel twice and with an accent. It can still be read, is some 40 %
//! longer than English, and shows by its accents what went through this crate.

use std::collections::BTreeMap;
use std::sync::{Mutex, PoisonError};

/// What was said so far: a text is kept once and for good, so that it can be handed out like one of a language.
static SAID: Mutex<BTreeMap<&str, &str>> = Mutex::new(BTreeMap::new());

/// A text of a language, as the made-up one says it.
pub fn text(text: &'static str) -> &'static str {
    let mut said = SAID.lock().unwrap_or_else(PoisonError::into_inner);
    said.entry(text).or_insert_with(|| Box::leak(expanded(text).into_boxed_str()))
}

/// The same of any text. The names of places stay as they are; plural forms are said.
pub fn expanded(text: &str) -> String {
    let mut out = String::with_capacity(text.len() * 2);
    let mut in_name = false;
    for letter in text.chars() {
        in_name = match letter {
            '{' => true,
            '|' | '}' => false,
            _ => in_name,
        };
        match accented(letter).filter(|_| !in_name) {
            Some(vowel) => out.extend([vowel; 2]),
            None => out.push(letter),
        }
    }
    out
}

fn accented(letter: char) -> Option<char> {
    Some(match letter {
        'a' => 'à',
        'e' => 'è',
        'i' => 'ì',
        'o' => 'ò',
        'u' => 'ù',
        'A' => 'À',
        'E' => 'È',
        'I' => 'Ì',
        'O' => 'Ò',
        'U' => 'Ù',
        _ => return None,
    })
}

#[cfg(test)]
mod tests {
    use crate::{Key, Lang, Words, fill};
    use chrono::NaiveDate;
    use wire::Failure;

    const PSEUDO: Words = Words::new(Lang::En).in_pseudo(true);

    #[test]
    fn vowels_are_doubled_and_names_of_places_kept() {
        assert_eq!(
            super::expanded("Hold {name}: {n|# hold|# holds} of {s} s"),
            "Hòòld {name}: {n|# hòòld|# hòòlds} òòf {s} s"
        );
        assert_eq!(PSEUDO.fill(Key::DoseHold, &[("n", &3), ("s", &10)]), "3 hòòlds òòf 10 sèècòònds");
    }

    #[test]
    fn every_text_has_its_places_and_no_plain_vowel_besides() {
        for key in Key::ALL {
            let (plain, said) = (Words::new(Lang::En).text(*key), PSEUDO.text(*key));
            assert_eq!(fill::places(plain), fill::places(said), "{key:?}");
            let values: Vec<(&str, &dyn std::fmt::Display)> =
                fill::places(plain).into_iter().map(|name| (name, &7 as &dyn std::fmt::Display)).collect();
            let filled = PSEUDO.fill(*key, &values);
            assert!(!filled.contains(['a', 'e', 'i', 'o', 'u', '{']), "{key:?}: {filled}");
        }
    }

    #[test]
    fn dates_refusals_and_the_lines_of_the_review_are_said_too() {
        let day = NaiveDate::from_ymd_opt(2027, 3, 1).expect("a date");
        assert_eq!(PSEUDO.date(day), "1 Mààrch");
        let refusal = PSEUDO.failure(&Failure::NoRole);
        let plain = |text: &str| text.contains(['a', 'e', 'i', 'o', 'u']);
        assert!(!plain(&refusal.fault) && !plain(&refusal.advice), "{refusal:?}");
        assert!(!plain(PSEUDO.risk(exercises::plan::Risk::NumbFeet)));
        assert!(!plain(PSEUDO.proposals_only()));
    }

    #[test]
    fn a_text_is_kept_once() {
        assert!(std::ptr::eq(PSEUDO.text(Key::Back), PSEUDO.text(Key::Back)));
    }
}
