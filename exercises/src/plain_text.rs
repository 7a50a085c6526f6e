//! Texts that somebody else wrote, without characters that are not seen but act: on a terminal an escape sequence gives commands, and a
//! direction mark shows a text in another order than it is read in.

use crate::plan::{Aftercare, Plan, Prescription};
use std::borrow::Cow;

/// Whether a character acts instead of being seen: a control character other than line break and tab, or a mark that sets the
/// direction of writing (U+061C, U+200E, U+200F, U+202A to U+202E, U+2066 to U+2069).
pub fn is_hidden(character: char) -> bool {
    match character {
        '\n' | '\t' => false,
        '\u{61c}' | '\u{200e}' | '\u{200f}' | '\u{202a}'..='\u{202e}' | '\u{2066}'..='\u{2069}' => true,
        other => other.is_control(),
    }
}

/// The text without hidden characters. Every text from outside is read through this, and every line of the terminal written.
pub fn shown(text: &str) -> Cow<'_, str> {
    if text.chars().any(is_hidden) {
        Cow::Owned(text.chars().filter(|character| !is_hidden(*character)).collect())
    } else {
        Cow::Borrowed(text)
    }
}

fn clean(text: &mut String) {
    if let Cow::Owned(clean) = shown(text) {
        *text = clean;
    }
}

impl Plan {
    /// Takes hidden characters out of all its texts.
    pub fn clean_texts(&mut self) {
        clean(&mut self.header.clinic);
        self.header.phone.iter_mut().for_each(clean);
        self.prescription.clean_texts();
    }
}

impl Prescription {
    /// Takes hidden characters out of all its texts.
    pub fn clean_texts(&mut self) {
        self.items.iter_mut().for_each(|item| clean(&mut item.note));
        self.complaints.iter_mut().for_each(|complaint| clean(&mut complaint.name));
        self.activities.iter_mut().for_each(|activity| clean(&mut activity.name));
        for line in &mut self.aftercare {
            if let Aftercare::Own(text) = line {
                clean(text);
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_is_seen_stays_and_what_acts_goes() {
        assert_eq!(shown("Señal: 20 °C,\n\ttwo lines 🙂"), "Señal: 20 °C,\n\ttwo lines 🙂");
        assert_eq!(shown("a\u{1b}[2Jb\rc\u{7}\u{9b}d\u{7f}"), "a[2Jbcd");
        let marks: String =
            "\u{61c}\u{200e}\u{200f}\u{202a}\u{202b}\u{202c}\u{202d}\u{202e}\u{2066}\u{2067}\u{2068}\u{2069}".into();
        assert_eq!(shown(&format!("one{marks}two")), "onetwo");
        assert!(matches!(shown("plain"), Cow::Borrowed("plain")));
    }
}
