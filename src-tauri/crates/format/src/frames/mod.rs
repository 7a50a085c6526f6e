//! Frames, version 1: an encrypted summary, or a card that is too large for one code, cut into a few QR codes that are read one by one in
//! any order.
//!
//! ```text
//! frame    version | transfer, 8 | place, from 1 | number of frames | CRC-32 | part
//! as text  the word CARRYOVER-SUMMARY or CARRYOVER-CARD, a space, Base45 (RFC 9285) of the frame
//! ```
//!
//! The check sum (the one of RFC 1952, big-endian) covers the frame except itself. The transfer is a random number for one
//! encrypted summary. It prevents parts of two summaries from being put together, and it says nothing about the plan or the
//! person. ISO/IEC 18004 has its own way to spread a text over several codes (structured append), but many readers do not
//! support it. The transfer of a card is the end of its signature: however often a card is cut, its frames fit together. A frame
//! protects and proves nothing by itself: what it carries is encrypted, and only decrypting it shows
//! whether it is complete and who it is from.

mod gathered;

pub use gathered::Gathered;

use crate::card::strict_base45;

/// The newest version, which this program writes and reads.
pub const VERSION: u8 = 1;
/// Largest number of frames of one summary; people lose track if they have to hold more pages before a camera.
pub const MAX_FRAMES: u8 = 8;
/// Largest number of bytes in a part. With its header and the word it fills a code of version 22 at level L, which is 1460
/// characters.
pub const MAX_PART: usize = 945;
/// Number of bytes in a part that still fits the same code at level M (1134 characters), which is less easily spoilt by a
/// reflection on a screen.
const GOOD_PART: usize = 729;
/// Largest number of bytes in an encrypted summary that can be sent as frames.
pub const MAX_WHOLE: usize = MAX_FRAMES as usize * MAX_PART;
/// Largest number of bytes in a frame's text, including white space around it.
const MAX_TEXT: usize = 2048;

/// The word and the space before a frame of a summary. Because of them a phone's camera does not take the code for a web address.
const SUMMARY: &str = "CARRYOVER-SUMMARY ";
/// The word and the space before a frame of a card.
const CARD: &str = "CARRYOVER-CARD ";
/// Number of bytes in the header: version, transfer, place, number of frames, check sum.
const HEAD: usize = 1 + 8 + 1 + 1 + 4;

/// A random number that identifies one encrypted summary.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Transfer(pub [u8; 8]);

/// Why a text is not a frame, or why a summary cannot be sent as frames.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
pub enum FrameFault {
    /// It is something else.
    #[error("not a frame of a summary")]
    NotAFrame,
    /// A part of the frame is missing or was changed, or it contradicts another frame of the same transfer.
    #[error("a damaged frame")]
    Damaged,
    /// The frame is of a version that this program does not know.
    #[error("version {found}, newer than {VERSION}")]
    NewerVersion {
        /// The frame's version.
        found: u8,
    },
    /// The data is larger than frames can carry.
    #[error("larger than the {most} bytes that frames carry")]
    TooBig {
        /// The limit that was exceeded, in bytes.
        most: usize,
    },
}

/// One frame that was read.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Frame {
    /// The encrypted summary that the frame belongs to.
    pub transfer: Transfer,
    /// The frame's place among the frames, from 1.
    pub place: u8,
    /// Number of frames.
    pub of: u8,
    part: Vec<u8>,
}

/// Cuts an encrypted summary into frames and returns their texts in order: as few frames as can be read well, all of about
/// the same length.
///
/// # Errors
/// [`FrameFault::TooBig`] for more than [`MAX_WHOLE`] bytes.
pub fn split(sealed: &[u8], transfer: Transfer) -> Result<Vec<String>, FrameFault> {
    cut(sealed, transfer, SUMMARY)
}

/// Cuts a card into frames, as [`split`] does with a summary.
///
/// # Errors
/// As for [`split`]; [`FrameFault::NotAFrame`] for bytes that are too short for a card.
pub fn split_card(card: &[u8]) -> Result<Vec<String>, FrameFault> {
    let transfer = Transfer(*card.last_chunk().ok_or(FrameFault::NotAFrame)?);
    cut(card, transfer, CARD)
}

fn cut(sealed: &[u8], transfer: Transfer, word: &str) -> Result<Vec<String>, FrameFault> {
    if sealed.len() > MAX_WHOLE {
        return Err(FrameFault::TooBig { most: MAX_WHOLE });
    }
    let of = sealed.len().div_ceil(GOOD_PART).clamp(1, MAX_FRAMES.into());
    let parts = sealed.chunks(sealed.len().div_ceil(of).max(1));
    // The length of a part was rounded up, so there may be one part fewer than computed.
    let of = u8::try_from(parts.len()).expect("at most as many as reckoned");
    Ok((1..=of).zip(parts).map(|(place, part)| text(&Frame { transfer, place, of, part: part.to_vec() }, word)).collect())
}

fn text(Frame { transfer, place, of, part }: &Frame, word: &str) -> String {
    let mut bytes = vec![VERSION];
    bytes.extend(transfer.0);
    bytes.extend([*place, *of]);
    bytes.extend(sum(&bytes, part).to_be_bytes());
    bytes.extend(part);
    format!("{word}{}", base45::encode(&bytes))
}

fn sum(head: &[u8], part: &[u8]) -> u32 {
    let mut sum = crc32fast::Hasher::new();
    sum.update(head);
    sum.update(part);
    sum.finalize()
}

/// Reads the text of one QR code of a summary.
///
/// # Errors
/// [`FrameFault`]; [`FrameFault::NotAFrame`] for any text that does not begin with the word.
pub fn read(text: &str) -> Result<Frame, FrameFault> {
    read_as(text, SUMMARY)
}

/// Reads the text of one QR code of a card.
///
/// # Errors
/// As for [`read`].
pub fn read_card(text: &str) -> Result<Frame, FrameFault> {
    read_as(text, CARD)
}

/// The texts of frames of a card that were read.
pub fn card_texts(frames: &[Frame]) -> Vec<String> {
    frames.iter().map(|frame| text(frame, CARD)).collect()
}

fn read_as(text: &str, word: &str) -> Result<Frame, FrameFault> {
    let text = text.trim_start_matches('\u{FEFF}').trim();
    let groups = text.strip_prefix(word).ok_or(FrameFault::NotAFrame)?;
    if text.len() > MAX_TEXT {
        return Err(FrameFault::TooBig { most: MAX_TEXT });
    }
    let bytes = strict_base45(groups).ok_or(FrameFault::Damaged)?;
    match bytes.first() {
        Some(&VERSION) => {}
        Some(&found) if found > VERSION => return Err(FrameFault::NewerVersion { found }),
        _ => return Err(FrameFault::Damaged),
    }
    let (head, part) = bytes.split_at_checked(HEAD).ok_or(FrameFault::Damaged)?;
    let (head, told) = head.split_at(HEAD - 4);
    let (place, of) = (head[9], head[10]);
    let sound = told == sum(head, part).to_be_bytes();
    let fits = (1..=of).contains(&place) && of <= MAX_FRAMES && (1..=MAX_PART).contains(&part.len());
    if !sound || !fits {
        return Err(FrameFault::Damaged);
    }
    let transfer = Transfer(head[1..9].try_into().expect("eight of the head's bytes"));
    Ok(Frame { transfer, place, of, part: part.to_vec() })
}
