//! Texts as they can be printed: a character that the font does not have is replaced by a visible one.

use crate::font::{Face, Fonts};
use exercises::plain_text::is_hidden;
use unicode_normalization::UnicodeNormalization;

/// A text ready to be set.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Printable {
    /// What is printed. Every sign of it is in the font.
    pub shown: String,
    /// What was written, if signs of it are not in the font: it is what a screen reader says and what is copied.
    pub written: Option<String>,
}

/// Characters that join or select others and have no look of their own.
fn joins(character: char) -> bool {
    matches!(character, '\u{ad}' | '\u{200b}'..='\u{200d}' | '\u{2060}' | '\u{fe00}'..='\u{fe0f}' | '\u{feff}' | '\u{1f3fb}'..='\u{1f3ff}')
}

/// The text as it is written: letters composed, white space made one space, without what is hidden.
fn written(text: &str) -> String {
    let words: Vec<&str> = text.split(|character: char| character.is_whitespace() && character != '\u{a0}').collect();
    let seen = |word: &&str| word.nfc().filter(|character| !is_hidden(*character)).collect::<String>();
    words.iter().map(seen).filter(|word| !word.is_empty()).collect::<Vec<_>>().join(" ")
}

/// The text for a reader of the file's own lines: its title, its chapters, what stands in the place of a drawing.
pub fn told(text: &str) -> String {
    written(text).chars().filter(|character| is_speakable(*character)).collect()
}

/// The text with [`Fonts::stand_in`] for each run of signs that the font lacks.
pub fn printable(fonts: &Fonts, face: Face, text: &str) -> Printable {
    let written = written(text);
    let mut shown = String::new();
    let mut lacking = false;
    for character in written.chars() {
        if fonts.has(face, character) {
            shown.push(character);
            lacking = false;
        } else if !joins(character) && !lacking {
            shown.push(fonts.stand_in());
            lacking = true;
        }
    }
    let differs = shown != written;
    Printable { shown, written: differs.then_some(written).filter(|text| text.chars().all(is_speakable)) }
}

/// Whether a character may be in a text for screen readers: not one that no text has (noncharacters, or of private use).
fn is_speakable(character: char) -> bool {
    let code = u32::from(character);
    let private = (0xE000..=0xF8FF).contains(&code) || code >= 0xF_0000;
    !private && !(0xFDD0..=0xFDEF).contains(&code) && code & 0xFFFE != 0xFFFE
}

#[cfg(test)]
mod tests {
    use super::*;

    fn shown(text: &str) -> (String, Option<String>) {
        let fonts = Fonts::new().expect("the fonts");
        let Printable { shown, written } = printable(&fonts, Face::Regular, text);
        (shown, written)
    }

    #[test]
    fn usual_texts_stay_as_they_are() {
        for text in ["Sit tall, chin back", "¿Señales? Años, así: “3 × 10”", "Łódź – 5 °C"] {
            assert_eq!(shown(text), (text.to_owned(), None));
        }
    }

    #[test]
    fn white_space_is_one_space_and_letters_are_composed() {
        assert_eq!(shown(" a\t\n b\u{0}c "), ("a bc".to_owned(), None));
        assert_eq!(shown("man\u{303}ana"), ("mañana".to_owned(), None));
    }

    #[test]
    fn a_sign_that_the_font_lacks_is_seen_and_its_text_is_kept() {
        let fonts = Fonts::new().expect("the fonts");
        let (seen, kept) = shown("run 🏃🏽‍♀️ now");
        assert_eq!(seen, format!("run {} now", fonts.stand_in()));
        assert_eq!(kept.as_deref(), Some("run 🏃🏽‍♀️ now"));
        assert_eq!(shown("שלום").0, fonts.stand_in().to_string());
        assert_eq!(shown("a\u{f0000}"), (format!("a{}", fonts.stand_in()), None));
        assert_eq!(told("a\u{f0000} \u{1b}[31m\u{202e}b\u{ffff}"), "a [31mb");
    }
}
