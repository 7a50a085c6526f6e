//! A passphrase, how hard it is to guess, and the work that trying one needs.

use age::secrecy::{ExposeSecret, SecretString};
use std::fmt;
use unicode_normalization::UnicodeNormalization;
use zeroize::Zeroizing;
use zxcvbn::Score;

/// What a person types to open the clinic's keys. Masked in debug output, wiped when dropped.
///
/// Keyboards write one and the same letter in different ways (é as one character, or as e with an accent). New files are sealed under
/// Unicode's composed form (NFC), and a file is opened by every form of what was typed.
#[derive(Clone)]
pub struct Passphrase(SecretString);

impl Passphrase {
    /// Takes ownership of the text, as typed.
    pub fn new(typed: String) -> Passphrase {
        Passphrase(SecretString::from(typed))
    }

    /// Its length in characters of the composed form, for advice when choosing one.
    pub fn characters(&self) -> usize {
        self.0.expose_secret().nfc().count()
    }

    /// How hard it is to guess for somebody who knows `about`, such as the clinic's name.
    pub fn strength(&self, about: &[&str]) -> Strength {
        let composed = composed(self.0.expose_secret());
        let known: Vec<String> = about.iter().flat_map(|text| parts(text)).chain(["carryover".to_owned()]).collect();
        let known: Vec<&str> = known.iter().map(String::as_str).collect();
        if own_characters(&composed, &known) < MIN_OWN {
            return Strength::Guessable;
        }
        let score = |text: &str| match zxcvbn::zxcvbn(text, &known).score() {
            Score::Four => Strength::Strong,
            Score::Three => Strength::Good,
            _ => Strength::Guessable,
        };
        score(&composed).min(score(&each_word_once(&composed)))
    }

    /// The form under which new files are sealed.
    pub(crate) fn for_sealing(&self) -> SecretString {
        SecretString::from(composed(self.0.expose_secret()).as_str())
    }

    /// The forms to open a file with, each once: composed, as typed, decomposed.
    pub(crate) fn for_opening(&self) -> Vec<SecretString> {
        let typed = self.0.expose_secret();
        let decomposed = Zeroizing::new(typed.nfd().collect::<String>());
        let mut forms = vec![self.for_sealing()];
        for form in [typed, decomposed.as_str()] {
            if forms.iter().all(|known| known.expose_secret() != form) {
                forms.push(SecretString::from(form));
            }
        }
        forms
    }
}

/// A passphrase without the repetitions of its words, which the estimate takes for new ones if there are spaces between them.
fn each_word_once(composed: &str) -> Zeroizing<String> {
    let mut once = Zeroizing::new(String::with_capacity(composed.len()));
    let mut words: Vec<&str> = Vec::new();
    for word in composed.split_whitespace() {
        if !words.iter().any(|known| known.eq_ignore_ascii_case(word)) {
            once.push_str(if words.is_empty() { "" } else { " " });
            once.push_str(word);
            words.push(word);
        }
    }
    once
}

/// Least number of letters and digits that are not part of something known, such as the clinic's name.
const MIN_OWN: usize = 8;

/// Number of letters and digits in a passphrase without the known words in it; the longest are taken out first.
fn own_characters(composed: &str, known: &[&str]) -> usize {
    let mut words: Vec<String> = known.iter().map(|word| word.to_lowercase()).filter(|word| word.len() > 2).collect();
    words.sort_by_key(|word| std::cmp::Reverse(word.len()));
    let whole = Zeroizing::new(composed.to_lowercase());
    let rest = words.iter().fold(whole, |rest, word| Zeroizing::new(rest.replace(word.as_str(), " ")));
    rest.chars().filter(|character| character.is_alphanumeric()).count()
}

/// The words of a text, alone and joined with those that follow: "Elm Row" gives "Elm", "Elm Row", "ElmRow", "Row".
fn parts(text: &str) -> Vec<String> {
    let words: Vec<&str> = text.split_whitespace().collect();
    let runs = (0..words.len()).flat_map(|from| (from + 1..=words.len()).map(move |to| (from, to)));
    runs.flat_map(|(from, to)| [words[from..to].join(" "), words[from..to].concat()]).collect()
}

fn composed(typed: &str) -> Zeroizing<String> {
    Zeroizing::new(typed.nfc().collect())
}

impl fmt::Debug for Passphrase {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("Passphrase(..)")
    }
}

/// How hard a passphrase is to guess, estimated from words, names, dates, repetitions and neighbouring keys (zxcvbn).
///
/// Whoever has copied the key file can try passphrases at home, with nobody to slow them down but [`Cost`]. Below 10^8 guesses that is a
/// matter of days with some hundred computers, so only what is estimated above is good enough.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Strength {
    /// Fewer than 10^8 guesses.
    Guessable,
    /// 10^8 to 10^10 guesses.
    Good,
    /// More than 10^10 guesses.
    Strong,
}

/// The work of trying one passphrase: scrypt (RFC 7914) with N = 2^cost, r = 8, p = 1.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub struct Cost(u8);

impl Cost {
    /// The usual cost of new files: 128 MiB and less than half a second on a small computer.
    pub const USUAL: Cost = Cost(17);
    /// The highest cost that is accepted: 256 MiB. A file that demands more is refused before any work is done.
    pub const MAX_READ: Cost = Cost(18);

    /// The lowest cost, which protects from nothing.
    pub(crate) const LEAST: Cost = Cost(1);

    /// A cost from 1 (no protection, for tests) up to [`Cost::MAX_READ`].
    pub fn new(log_n: u8) -> Option<Cost> {
        (Cost::LEAST.0..=Cost::MAX_READ.0).contains(&log_n).then_some(Cost(log_n))
    }

    /// The exponent.
    pub fn log_n(self) -> u8 {
        self.0
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn debug_output_does_not_show_the_passphrase() {
        let shown = format!("{:?}", Passphrase::new("seven grey herons".to_owned()));
        assert_eq!(shown, "Passphrase(..)");
    }

    #[test]
    fn a_cost_out_of_range_cannot_be_made() {
        assert_eq!((Cost::new(0), Cost::new(19)), (None, None));
        assert_eq!(Cost::new(18), Some(Cost::MAX_READ));
    }

    #[test]
    fn a_passphrase_that_is_long_but_easily_guessed_is_recognised() {
        let strength = |typed: &str| Passphrase::new(typed.to_owned()).strength(&["Linden Lane Practice", "01 555 0100"]);
        let guessable = [
            "            ",
            "aaaaaaaaaaaa",
            "qwertyuiop[]",
            "password1234",
            "Linden Lane Practice",
            "lindenlane12",
            "carryover2026",
            "123456789012",
            "linden lane practice 2026",
            "------------------",
            "password password",
            "heron Heron heron heron",
        ];
        for typed in guessable {
            assert_eq!(strength(typed), Strength::Guessable, "{typed:?}");
        }
        for typed in ["seven grey herons wade", "correct horse battery staple", "tres zorros azules cenan"] {
            assert!(strength(typed) >= Strength::Good, "{typed:?}");
        }
    }

    #[test]
    fn the_forms_of_a_passphrase_are_tried_once_each() {
        let forms = |typed: &str| Passphrase::new(typed.to_owned()).for_opening().len();
        assert_eq!(forms("seven grey herons"), 1);
        assert_eq!((forms("siete peque\u{f1}os"), forms("siete pequen\u{303}os")), (2, 2));
        // Half composed and half not.
        assert_eq!(forms("se\u{f1}or pequen\u{303}o"), 3);
    }
}
