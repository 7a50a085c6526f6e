//! Frames, version 1: a sealed summary cut into a few pictures, each a QR code that is read by itself, in any order.
//!
//! ```text
//! frame    version | transfer, 8 | place, from 1 | of so many | CRC-32 | part
//! as text  the word CARRYOVER-SUMMARY, a space, Base45 (RFC 9285) of the frame
//! ```
//!
//! The check sum (the one of RFC 1952, big-endian) covers the frame without itself. The transfer is a random name for one
//! sealing: parts of two summaries never make a third, and it says nothing about plan or person. ISO/IEC 18004 has a way of
//! its own to spread a text over several codes (structured append), but many readers do not know it. A frame keeps nothing
//! secret and proves nothing: what it carries is sealed, and only opening that says whether it is whole and from whom.

mod gathered;

pub use gathered::Gathered;

use crate::card::strict_base45;

/// The newest version that this program writes and reads.
pub const VERSION: u8 = 1;
/// Most frames of one summary: more pages than that nobody holds before a camera without losing the thread.
pub const MAX_FRAMES: u8 = 8;
/// Most bytes of a part: with its head and the word it fills a code of version 22 at level L, which is 1460 characters.
pub const MAX_PART: usize = 945;
/// A part that still fits the same code at level M (1134 characters), which a reflection on a screen spoils less easily.
const GOOD_PART: usize = 729;
/// Most bytes of a sealed summary that goes as frames.
pub const MAX_WHOLE: usize = MAX_FRAMES as usize * MAX_PART;
/// Most bytes of a frame's text, with room for white space around it.
const MAX_TEXT: usize = 2048;

/// Stands before the frame, with a space: it keeps a phone's camera from taking the code for a web address.
const WORD: &str = "CARRYOVER-SUMMARY ";
/// Version, transfer, place, count, check sum.
const HEAD: usize = 1 + 8 + 1 + 1 + 4;

/// A random name for one sealing.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Transfer(pub [u8; 8]);

/// Why a text is no frame, or why a summary cannot go as frames.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
pub enum FrameFault {
    /// Something else.
    #[error("not a frame of a summary")]
    NotAFrame,
    /// A part of it is missing or was changed, or it contradicts another frame of its transfer.
    #[error("a damaged frame")]
    Damaged,
    /// Of a version that this program does not know.
    #[error("version {found}, newer than {VERSION}")]
    NewerVersion {
        /// Its version.
        found: u8,
    },
    /// More than frames carry.
    #[error("larger than the {most} bytes that frames carry")]
    TooBig {
        /// The limit that it breaks, in bytes.
        most: usize,
    },
}

/// One frame, read.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Frame {
    /// The sealing that it belongs to.
    pub transfer: Transfer,
    /// Which one it is, from 1.
    pub place: u8,
    /// Of how many.
    pub of: u8,
    part: Vec<u8>,
}

/// Cuts what is sealed into frames, as texts in their order; as few as are read well, all about equally long.
///
/// # Errors
/// [`FrameFault::TooBig`] over [`MAX_WHOLE`] bytes.
pub fn split(sealed: &[u8], transfer: Transfer) -> Result<Vec<String>, FrameFault> {
    if sealed.len() > MAX_WHOLE {
        return Err(FrameFault::TooBig { most: MAX_WHOLE });
    }
    let of = sealed.len().div_ceil(GOOD_PART).clamp(1, MAX_FRAMES.into());
    let parts = sealed.chunks(sealed.len().div_ceil(of).max(1));
    // Parts are rounded up, so that there may be one less than reckoned.
    let of = u8::try_from(parts.len()).expect("at most as many as reckoned");
    Ok((1..=of).zip(parts).map(|(place, part)| text(&Frame { transfer, place, of, part: part.to_vec() })).collect())
}

fn text(Frame { transfer, place, of, part }: &Frame) -> String {
    let mut bytes = vec![VERSION];
    bytes.extend(transfer.0);
    bytes.extend([*place, *of]);
    bytes.extend(sum(&bytes, part).to_be_bytes());
    bytes.extend(part);
    format!("{WORD}{}", base45::encode(&bytes))
}

fn sum(head: &[u8], part: &[u8]) -> u32 {
    let mut sum = crc32fast::Hasher::new();
    sum.update(head);
    sum.update(part);
    sum.finalize()
}

/// Reads the text of one code.
///
/// # Errors
/// [`FrameFault`]; [`FrameFault::NotAFrame`] for whatever does not begin with the word.
pub fn read(text: &str) -> Result<Frame, FrameFault> {
    let text = text.trim_start_matches('\u{FEFF}').trim();
    let groups = text.strip_prefix(WORD).ok_or(FrameFault::NotAFrame)?;
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
