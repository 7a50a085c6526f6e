//! What the targets share: the outer parts of each format, made around the bytes that are varied, so that a checksum or packing is no
//! hindrance to what lies within.

use exercises::catalogue::Catalogue;
use exercises::plan::Plan;
use std::sync::LazyLock;

/// The catalogue that ships with the program.
pub static CATALOGUE: LazyLock<Catalogue> = LazyLock::new(|| format::catalogue::embedded().expect("it ships with the program"));

/// A card of the clinic, with items of all kinds, as everybody's summaries and logs refer to.
pub static CARD: &[u8] = include_bytes!("../../../src-tauri/crates/format/tests/frozen/card-2.bin");

/// The plan of [`CARD`].
pub static PLAN: LazyLock<Plan> =
    LazyLock::new(|| format::card::open(CARD).expect("a card").into_card_after_checking_the_signature().plan);

/// Number of bytes of a card before its packed contents: its header, and its fixed part.
const CARD_HEAD: usize = 12;
const CARD_FIXED: usize = 104;

/// Bytes as a deflate stream (RFC 1951) that stores them as they are, whatever dictionary the reader has.
pub fn stored(plain: &[u8]) -> Vec<u8> {
    let mut blocks = plain.chunks(u16::MAX.into()).peekable();
    let mut packed = Vec::with_capacity(plain.len() + 16);
    if plain.is_empty() {
        packed.extend([1, 0, 0, 0xFF, 0xFF]);
    }
    while let Some(block) = blocks.next() {
        let length = u16::try_from(block.len()).expect("a block is short enough");
        packed.push(u8::from(blocks.peek().is_none()));
        packed.extend(length.to_le_bytes());
        packed.extend((!length).to_le_bytes());
        packed.extend(block);
    }
    packed
}

/// Number of bytes of a former key with its signature.
const FORMER: usize = 96;

/// A card with these contents unpacked; its checksum is right, its signature is not. In version 3 the contents begin with the number of
/// former keys and these.
pub fn card(version: u8, contents: &[u8]) -> Vec<u8> {
    let fixed = &CARD[CARD_HEAD..CARD_HEAD + CARD_FIXED];
    let number = contents.first().filter(|_| version == 3).map_or(0, |number| 1 + usize::from(*number) * FORMER);
    let (former, contents) = contents.split_at(number.min(contents.len()));
    let rest = [fixed, former, &stored(contents), &[0; 64]].concat();
    let kind = [version, 1];
    let check = sum(&[&kind, &rest]);
    let length = u16::try_from(rest.len()).unwrap_or(u16::MAX);
    [b"\x8FCrd", &kind[..], &length.to_be_bytes(), &check.to_be_bytes(), &rest].concat()
}

/// The text of a frame with this head (transfer, place, number of frames) and part; its checksum is right.
pub fn frame(head: &[u8; 10], part: &[u8]) -> String {
    let head = [&[1], &head[..]].concat();
    let check = sum(&[&head, part]);
    format!("CARRYOVER-SUMMARY {}", base45::encode(&[&head, &check.to_be_bytes()[..], part].concat()))
}

/// A PNG with the right checksum of each of its parts.
pub fn summed(png: &[u8]) -> Vec<u8> {
    let mut png = png.to_vec();
    let mut at = 8;
    while let Some(length) = png.get(at..at + 4) {
        let length = u32::from_be_bytes(length.try_into().expect("four bytes")) as usize;
        let Some(end) = at.checked_add(8).and_then(|from| from.checked_add(length)).filter(|end| *end + 4 <= png.len()) else { break };
        let check = sum(&[&png[at + 4..end]]);
        png[end..end + 4].copy_from_slice(&check.to_be_bytes());
        at = end + 4;
    }
    png
}

/// The pieces of an input: each has its length before it, in two bytes, and the last takes what is left.
pub fn pieces(mut input: &[u8]) -> Vec<&[u8]> {
    let mut found = Vec::new();
    while let Some((length, rest)) = input.split_first_chunk::<2>() {
        let (piece, rest) = rest.split_at(rest.len().min(u16::from_le_bytes(*length).into()));
        found.push(piece);
        input = rest;
    }
    found
}

fn sum(parts: &[&[u8]]) -> u32 {
    let mut sum = crc32fast::Hasher::new();
    parts.iter().for_each(|part| sum.update(part));
    sum.finalize()
}
