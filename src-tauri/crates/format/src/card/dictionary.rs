//! The dictionary that cards are packed with: names of exercises and rungs, common words of notes in English and Spanish, and
//! rows as plans usually have them. It makes a card of six items a fifth shorter.

/// The dictionary of version 1, made once from the catalogue of that time. It must never change, because cards on paper could
/// then no longer be read. Words that are not in it are packed as without a dictionary; a better dictionary needs a new
/// version of the card.
pub(super) const VERSION_1: &[u8] = include_bytes!("dictionary-1.bin");

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn it_is_the_one_that_cards_on_paper_were_packed_with() {
        let sum = crc32fast::hash(VERSION_1);
        assert_eq!((VERSION_1.len(), sum), (2057, 0x668F_9A4D), "{sum:#x}");
    }
}
