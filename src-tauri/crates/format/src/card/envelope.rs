//! The bytes around a card's contents: header, length, checksum, signature.

use super::{CardFault, VERSION};

/// The first bytes of every card. The first one does not occur at the start of a text in any common encoding.
const MAGIC: [u8; 4] = *b"\x8FCrd";
/// The kind of recipient key: summaries are encrypted to an X25519 key of the age format.
const X25519: u8 = 1;
/// The signed bytes begin with this, so that a card's signature cannot be used for anything else.
const PREFIX: &[u8] = b"carryover/plan-card\0";
/// Number of bytes in the header: magic, version, kind of recipient, length, checksum.
const HEAD: usize = 12;
const SIGNATURE: usize = 64;
/// Largest number of bytes in a card; its length is written in two bytes.
pub(super) const MAX_BYTES: usize = HEAD + u16::MAX as usize;

/// A card, taken apart.
pub(super) struct Opened<'b> {
    /// The card's version.
    pub version: u8,
    /// The bytes that the signature covers.
    pub message: Vec<u8>,
    /// The contents, as they were signed.
    pub contents: &'b [u8],
    /// The signature.
    pub signature: [u8; SIGNATURE],
}

/// The bytes to be signed for the contents of a card of this version.
pub(super) fn message(version: u8, contents: &[u8]) -> Vec<u8> {
    signed(&[version, X25519], contents)
}

fn signed(kind: &[u8], contents: &[u8]) -> Vec<u8> {
    [PREFIX, kind, contents].concat()
}

/// Number of bytes in the card made from `message`.
pub(super) fn sealed_len(message: &[u8]) -> usize {
    HEAD + message.len() - PREFIX.len() - 2 + SIGNATURE
}

/// The whole card of a message for which [`sealed_len`] is at most [`MAX_BYTES`].
pub(super) fn seal(message: &[u8], signature: &[u8; SIGNATURE]) -> Vec<u8> {
    let (kind, contents) = message[PREFIX.len()..].split_at(2);
    let rest = [contents, signature.as_slice()].concat();
    let length = u16::try_from(rest.len()).expect("a payload is never made longer");
    let check = checksum(kind, &rest);
    [&MAGIC, kind, &length.to_be_bytes(), &check.to_be_bytes(), &rest].concat()
}

/// Takes a card apart, or says what is wrong with the bytes.
pub(super) fn open(bytes: &[u8]) -> Result<Opened<'_>, CardFault> {
    if bytes.len() > MAX_BYTES {
        return Err(CardFault::TooBig { most: MAX_BYTES });
    }
    let Some((head, rest)) = bytes.split_at_checked(HEAD) else { return Err(headless(bytes)) };
    if head[..4] != MAGIC {
        return Err(CardFault::NotACard);
    }
    let kind = &head[4..6];
    let length = usize::from(u16::from_be_bytes([head[6], head[7]]));
    let check = u32::from_be_bytes([head[8], head[9], head[10], head[11]]);
    let whole = checksum(kind, rest) == check;
    match rest.len() {
        have if have < length && !whole => return Err(CardFault::Cut),
        have if have > length && checksum(kind, &rest[..length]) == check => return Err(CardFault::Surplus),
        have if have != length || !whole => return Err(CardFault::Damaged),
        _ => {}
    }
    match (kind[0], kind[1]) {
        (1..=VERSION, X25519) => {}
        (1..=VERSION, found) => return Err(CardFault::UnknownRecipient { found }),
        (0, _) => return Err(CardFault::Malformed { field: "version" }),
        (found, _) => return Err(CardFault::NewerVersion { found }),
    }
    let parts = rest.split_last_chunk::<SIGNATURE>().ok_or(CardFault::Malformed { field: "signature" })?;
    let (contents, signature) = (parts.0, *parts.1);
    Ok(Opened { version: kind[0], message: signed(kind, contents), contents, signature })
}

/// Whether these bytes are the beginning of a longer card.
pub(super) fn is_cut(bytes: &[u8]) -> bool {
    matches!(open(bytes), Err(CardFault::Cut))
}

/// The length in bytes that the header states for the whole card; `None` if there is no header of a card.
pub(super) fn whole_len(bytes: &[u8]) -> Option<usize> {
    let head = bytes.first_chunk::<HEAD>().filter(|head| head[..4] == MAGIC)?;
    Some(HEAD + usize::from(u16::from_be_bytes([head[6], head[7]])))
}

/// The fault of bytes shorter than a header: the beginning of a card, or something else.
fn headless(bytes: &[u8]) -> CardFault {
    let known = bytes.len().min(MAGIC.len());
    if known > 0 && bytes[..known] == MAGIC[..known] { CardFault::Cut } else { CardFault::NotACard }
}

fn checksum(kind: &[u8], rest: &[u8]) -> u32 {
    let mut sum = crc32fast::Hasher::new();
    sum.update(kind);
    sum.update(rest);
    sum.finalize()
}

#[cfg(test)]
mod tests {
    use super::*;

    fn card() -> Vec<u8> {
        seal(&message(2, b"the contents"), &[9; 64])
    }

    /// `card` with another version and kind of recipient and a correct checksum.
    fn of_kind(version: u8, recipient: u8) -> Vec<u8> {
        let mut card = card();
        (card[4], card[5]) = (version, recipient);
        let check = checksum(&card[4..6], &card[HEAD..]);
        card[8..12].copy_from_slice(&check.to_be_bytes());
        card
    }

    fn fault(bytes: &[u8]) -> Option<CardFault> {
        open(bytes).err()
    }

    #[test]
    fn a_card_comes_apart_as_it_was_put_together() {
        let card = card();
        let opened = open(&card).expect("a whole card");
        assert_eq!((opened.contents, opened.signature), (&b"the contents"[..], [9; 64]));
        assert_eq!(opened.message, b"carryover/plan-card\0\x02\x01the contents");
        assert_eq!(card.len(), sealed_len(&opened.message));
        assert_eq!(opened.version, 2);
        for version in [1, 3, 4] {
            let other = of_kind(version, X25519);
            let opened = open(&other).expect("a whole card");
            assert_eq!(opened.message, [b"carryover/plan-card\0", &[version, 1][..], b"the contents"].concat());
            assert_eq!(opened.version, version);
        }
    }

    #[test]
    fn a_card_cut_at_any_length_is_reported_as_cut() {
        let card = card();
        for length in 1..card.len() {
            assert_eq!(fault(&card[..length]), Some(CardFault::Cut), "at {length}");
        }
        assert_eq!(fault(&[]), Some(CardFault::NotACard), "nothing at all is no card");
    }

    #[test]
    fn any_changed_bit_after_the_first_four_bytes_is_reported_as_damage() {
        let card = card();
        for bit in 0..card.len() * 8 {
            let mut flipped = card.clone();
            flipped[bit / 8] ^= 1 << (bit % 8);
            let expected = if bit < 32 { CardFault::NotACard } else { CardFault::Damaged };
            let found = fault(&flipped);
            // A longer length in the header looks like a missing end at first, but the checksum of the bytes that are there
            // is right.
            assert_eq!(found, Some(expected), "bit {bit}");
        }
    }

    #[test]
    fn a_tail_is_refused_as_such() {
        assert_eq!(fault(&[card(), vec![0]].concat()), Some(CardFault::Surplus));
        assert_eq!(fault(&[card(), card()].concat()), Some(CardFault::Surplus));
    }

    #[test]
    fn a_whole_card_of_another_version_or_recipient_is_named() {
        assert_eq!(fault(&of_kind(5, 1)), Some(CardFault::NewerVersion { found: 5 }));
        assert_eq!(fault(&of_kind(255, 9)), Some(CardFault::NewerVersion { found: 255 }));
        assert_eq!(fault(&of_kind(1, 2)), Some(CardFault::UnknownRecipient { found: 2 }));
        assert_eq!(fault(&of_kind(0, 1)), Some(CardFault::Malformed { field: "version" }));
    }

    #[test]
    fn ten_megabytes_are_refused_by_their_length() {
        let mut big = card();
        big.resize(10_000_000, b'x');
        assert_eq!(fault(&big), Some(CardFault::TooBig { most: MAX_BYTES }));
    }
}
