//! What both sides know before a card's contents begin: names of exercises and rungs, everyday words of notes in English and
//! Spanish, and rows as plans usually have them. A card of six items gets a fifth shorter by it.

/// The dictionary of version 1. Put together once from the catalogue of that day; never changed since, or no card that is
/// on paper could be read. What is not in it packs as well as without; a better one needs a new version.
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
