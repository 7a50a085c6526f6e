//! A made-up language for tests of the screens: every vowel is doubled and has an accent. It is still readable, some 40 % longer
//! than English, and its accents show which text comes from this crate.

use std::collections::BTreeMap;
use std::sync::{Mutex, PoisonError};

/// The texts made so far. Each is kept for the rest of the program, so that it can be returned as `&'static str` like any other
/// text.
static KEPT: Mutex<BTreeMap<&str, &str>> = Mutex::new(BTreeMap::new());

/// The made-up version of a text.
pub(crate) fn text(text: &'static str) -> &'static str {
    let mut kept = KEPT.lock().unwrap_or_else(PoisonError::into_inner);
    kept.entry(text).or_insert_with(|| {
        let mut out = String::with_capacity(text.len() * 2);
        expand(text, &mut out);
        Box::leak(out.into_boxed_str())
    })
}

/// Appends the made-up version of a piece of text; values are not changed.
pub(crate) fn expand(text: &str, out: &mut String) {
    for letter in text.chars() {
        match "aeiouAEIOU".find(letter).and_then(|at| "àèìòùÀÈÌÒÙ".chars().nth(at)) {
            Some(vowel) => out.extend([vowel; 2]),
            None => out.push(letter),
        }
    }
}

#[cfg(test)]
mod tests {
    use crate::{Key, Locale, Words};
    use chrono::NaiveDate;
    use wire::Failure;

    const PSEUDO: Words = Words::new(Locale::En).in_pseudo(true);

    #[test]
    fn vowels_are_doubled_and_values_kept() {
        assert_eq!(PSEUDO.dose_hold(3, 10), "3 hòòlds òòf 10 sèècòònds");
        assert!(PSEUDO.ask_morning("arm").ends_with(": arm"));
    }

    #[test]
    fn dates_refusals_and_the_lines_of_the_review_are_made_up_too() {
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
