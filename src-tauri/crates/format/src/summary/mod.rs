//! The summary, version 2: what a patient takes to the visit, as the bytes that are then encrypted to the clinic.
//!
//! ```text
//! letter   8F 43 73 75 | version | kind of recipient | plan, 8 | log, 8 | counter, u32 | tag, 32 | body
//! body     contents: CBOR with integer keys (RFC 8949), deflated (RFC 1951)
//! ```
//!
//! Numbers are big-endian. Encryption does not show who sent a file, because the recipient's key is printed on the card and
//! no secret. The tag does: HMAC-SHA-256 (RFC 2104) with a key derived from the card's pairing secret, over
//! [`Letter::authenticated`], which includes the recipient, so that a receiver cannot pass the letter on to somebody else in
//! the patient's name. This crate holds no key; the tag is computed and checked elsewhere.
//!
//! A summary contains no date, no name of a person or device, and no time of day except the hour in which a run began, whether it was
//! more than an hour late or on another day, and, as quartiles of each week, how long after its reminder.
//!
//! Version 2 has two lists of ratings, this morning and while doing an item, where version 1 has one; and alarms with ids and with what
//! was answered about them. Contents of both versions are read: their keys say which they hold.

mod answers;
mod bytes;
mod contents;
mod corrections;
mod former;
mod letter;
mod runs;
mod slots;
mod stance;
mod tally;
mod wrong_clock;

pub use bytes::parts;
pub use letter::{Body, Letter};

use exercises::id::{LogId, PlanId};
use exercises::summary::Summary;

/// The newest version, which this program writes. It also reads version 1, in which one list of pain has two meanings.
pub const VERSION: u8 = 2;
/// Largest number of bytes in an encrypted summary.
pub const MAX_SEALED: usize = 4 * 1024 * 1024;
/// Largest number of bytes in a decrypted letter.
pub const MAX_LETTER: usize = 8 * 1024 * 1024;
/// Largest number of bytes in the unpacked contents.
pub const MAX_CONTENTS: usize = 8 * 1024 * 1024;

/// Why the bytes are not a summary that can be read. No variant contains anything from the summary's contents.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
pub enum SummaryFault {
    /// It is something else.
    #[error("not a summary")]
    NotASummary,
    /// It is larger than a summary may be.
    #[error("larger than the {most} bytes that a summary may have")]
    TooBig {
        /// The limit that was exceeded, in bytes.
        most: usize,
    },
    /// The end is missing.
    #[error("cut short")]
    Cut,
    /// It is of a version that this program does not know.
    #[error("version {found}, newer than {VERSION}")]
    NewerVersion {
        /// The summary's version.
        found: u8,
    },
    /// A part of it has a value that a summary cannot have.
    #[error("no summary has such a part: {field}")]
    Malformed {
        /// The part.
        field: &'static str,
    },
}

/// Packs a summary.
///
/// # Errors
/// [`SummaryFault::TooBig`] or [`SummaryFault::Malformed`] for a summary that [`read`] would refuse.
pub fn write(summary: &Summary) -> Result<Body, SummaryFault> {
    let plain = contents::write(summary)?;
    if plain.len() > MAX_CONTENTS {
        return Err(SummaryFault::TooBig { most: MAX_CONTENTS });
    }
    contents::read(&plain)?;
    let packed = crate::packed::pack(b"", &plain);
    Ok(Body { plan: summary.plan, log: summary.log, counter: summary.counter, packed, version: VERSION })
}

/// Unpacks a summary. Call it only for a letter whose tag has been checked.
///
/// # Errors
/// [`SummaryFault`], also if the contents are about another plan, log or counter than the letter.
pub fn read(body: &Body) -> Result<Summary, SummaryFault> {
    let plain = crate::packed::unpack(b"", &body.packed, MAX_CONTENTS).map_err(|fault| match fault {
        crate::packed::UnpackFault::TooBig => SummaryFault::TooBig { most: MAX_CONTENTS },
        crate::packed::UnpackFault::Broken => SummaryFault::Malformed { field: "packing" },
    })?;
    let summary = contents::read(&plain)?;
    let same = |plan: PlanId, log: LogId, counter: u32| (plan, log, counter) == (body.plan, body.log, body.counter);
    if same(summary.plan, summary.log, summary.counter) {
        Ok(summary)
    } else {
        Err(SummaryFault::Malformed { field: "letter" })
    }
}
