//! A card as text: a word, a space and Base45 (RFC 9285).
//!
//! Because of the word a phone's camera does not take the code for a web address, and a person sees what it is. Base45 of
//! whole bytes never ends in a space (a group's last character stays under 33 or 6 of 45), so white space around the text can
//! be removed. Line breaks added by a mail program can be removed as well.

use super::{CardFault, MAX_TEXT, envelope};

/// The word and the space before the card.
const WORD: &str = "CARRYOVER ";
/// Number of characters that hold at least a card's header.
const HEAD_GROUPS: usize = 24;

/// The card's bytes as text.
pub fn to_text(card: &[u8]) -> String {
    format!("{WORD}{}", base45::encode(card))
}

/// The bytes of a card's text. What they contain is not checked here; [`super::open`] does that.
///
/// # Errors
/// [`CardFault::TooBig`] before anything is read, [`CardFault::NotACard`] without the word, [`CardFault::Cut`] if the end is
/// missing within a group of characters, [`CardFault::Surplus`] if other text follows, [`CardFault::Damaged`] for characters
/// that are not valid together.
pub fn from_text(text: &str) -> Result<Vec<u8>, CardFault> {
    if text.len() > MAX_TEXT {
        return Err(CardFault::TooBig { most: MAX_TEXT });
    }
    let text = text.trim_start_matches('\u{FEFF}').trim();
    let Some(groups) = text.strip_prefix(WORD) else {
        let begun = text.len() >= 4 && WORD.starts_with(text);
        return Err(if begun { CardFault::Cut } else { CardFault::NotACard });
    };
    let groups = groups.replace(['\r', '\n', '\t'], "");
    // Fewer characters than a header has; the last byte of an incomplete group may be wrong, so the text is not decoded.
    if groups.len() < HEAD_GROUPS {
        return Err(CardFault::Cut);
    }
    decode(&groups).ok_or_else(|| what_happened(&groups))
}

/// The fault of a card's text that cannot be decoded as a whole.
fn what_happened(groups: &str) -> CardFault {
    let whole_groups = groups.len() - groups.len() % 3;
    let begun = groups.get(..whole_groups).and_then(decode);
    if begun.is_some_and(|bytes| envelope::is_cut(&bytes)) {
        return CardFault::Cut;
    }
    let card = groups.get(..HEAD_GROUPS).and_then(decode).and_then(|head| envelope::whole_len(&head));
    let card = card.and_then(|bytes| groups.get(..bytes / 2 * 3 + bytes % 2 * 2)).and_then(decode);
    if card.is_some_and(|bytes| envelope::open(&bytes).is_ok()) { CardFault::Surplus } else { CardFault::Damaged }
}

/// Decodes Base45, and accepts only what an encoder would write: the decoder used here also accepts `::` as one byte,
/// although its value is too large for a byte.
pub(crate) fn decode(groups: &str) -> Option<Vec<u8>> {
    base45::decode(groups).ok().filter(|bytes| base45::encode(bytes) == groups)
}

#[cfg(test)]
mod tests {
    use super::*;

    /// The examples of RFC 9285, sections 4.3 and 4.4, and one more.
    #[test]
    fn the_published_examples_hold_both_ways() {
        for (plain, coded) in
            [("AB", "BB8"), ("Hello!!", "%69 VD92EX0"), ("base-45", "UJCLQE7W581"), ("ietf!", "QED8WEX0"), ("", "")]
        {
            assert_eq!(base45::encode(plain), coded);
            assert_eq!(decode(coded).as_deref(), Some(plain.as_bytes()));
        }
    }

    #[test]
    fn text_that_an_encoder_never_writes_is_refused() {
        for (coded, why) in [
            ("GGW", "65536 in three characters"),
            (":::", "91124 in three characters"),
            ("::", "2024 in two characters"),
            ("V5", "256 in two characters"),
            ("BB8A", "one character left over"),
            ("bb8", "small letters"),
            ("BB_", "a character outside"),
            ("É", "two bytes that are no characters of it"),
        ] {
            assert_eq!(decode(coded), None, "{coded}: {why}");
        }
        assert_eq!((decode("U5"), decode("FGW")), (Some(vec![255]), Some(vec![255, 255])), "the largest that fit");
    }

    #[test]
    fn white_space_around_and_line_breaks_within_do_not_matter() {
        let card: Vec<u8> = (0..200).collect();
        let text = to_text(&card);
        let broken = format!("\u{FEFF}\r\n  {}\n{}\r\n", &text[..40], &text[40..]);
        assert_eq!(from_text(&broken), Ok(card));
    }

    #[test]
    fn no_text_of_whole_bytes_ends_in_a_space() {
        for last in 0..=u16::MAX {
            let [high, low] = last.to_be_bytes();
            assert!(!base45::encode([high, low]).ends_with(' '), "{last}");
            assert!(!base45::encode([low]).ends_with(' '), "{low}");
        }
    }

    #[test]
    fn other_texts_are_no_cards() {
        for other in ["", " ", "https://example.org/", "WIFI:T:WPA;S:x;P:y;;", "carryover BB8", "CARRYOVERBB8", "CAR", "…"]
        {
            assert_eq!(from_text(other), Err(CardFault::NotACard), "{other}");
        }
        assert_eq!(from_text("CARRYOVE"), Err(CardFault::Cut), "the word itself is cut");
    }

    #[test]
    fn ten_megabytes_of_text_are_refused_by_their_length() {
        let big = format!("{WORD}{}", "A".repeat(10_000_000));
        assert_eq!(from_text(&big), Err(CardFault::TooBig { most: MAX_TEXT }));
    }
}
