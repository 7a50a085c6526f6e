//! The summary, version 1: what a patient takes to the visit, as the bytes that are then sealed to the clinic.
//!
//! ```text
//! letter   8F 43 73 75 | version | kind of recipient | plan, 8 | log, 8 | counter, u32 | tag, 32 | body
//! body     contents: CBOR with integer keys (RFC 8949), deflated (RFC 1951)
//! ```
//!
//! Numbers are big-endian. Sealing says nothing about who sent a file, since a recipient printed on paper is no secret; the
//! tag does: HMAC-SHA-256 (RFC 2104) under a key derived from the card's pairing secret, over [`Letter::authenticated`],
//! which names the recipient too, so that a receiver cannot pass the letter on to another in the patient's name. This crate
//! holds no key: the tag is computed and checked elsewhere.
//!
//! Nothing in a summary is a date, a name of a person or device, or a clock time other than the hour in which a run
//! began and, as quartiles of a week, how long after its reminder.

mod answers;
mod contents;
mod corrections;
mod letter;
mod runs;
mod slots;
mod stance;

pub use letter::{Body, Letter};

use exercises::id::{LogId, PlanId};
use exercises::summary::Summary;

/// The newest version that this program writes and reads.
pub const VERSION: u8 = 1;
/// Most bytes of a sealed summary.
pub const MAX_SEALED: usize = 4 * 1024 * 1024;
/// Most bytes of a letter, opened.
pub const MAX_LETTER: usize = 8 * 1024 * 1024;
/// Most bytes of the contents, unpacked.
pub const MAX_CONTENTS: usize = 8 * 1024 * 1024;

/// Why bytes are no summary that can be read. No variant carries anything of the contents.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
pub enum SummaryFault {
    /// Something else.
    #[error("not a summary")]
    NotASummary,
    /// More than any summary has.
    #[error("larger than the {most} bytes that a summary may have")]
    TooBig {
        /// The limit that it breaks, in bytes.
        most: usize,
    },
    /// The end is missing.
    #[error("cut short")]
    Cut,
    /// Of a version that this program does not know.
    #[error("version {found}, newer than {VERSION}")]
    NewerVersion {
        /// Its version.
        found: u8,
    },
    /// A part of it says nothing that a summary can hold.
    #[error("no summary has such a part: {field}")]
    Malformed {
        /// Which part.
        field: &'static str,
    },
}

/// Packs a summary.
///
/// # Errors
/// [`SummaryFault::TooBig`] or [`SummaryFault::Malformed`] for a summary that [`read`] would not take back.
pub fn write(summary: &Summary) -> Result<Body, SummaryFault> {
    let plain = contents::write(summary)?;
    if plain.len() > MAX_CONTENTS {
        return Err(SummaryFault::TooBig { most: MAX_CONTENTS });
    }
    contents::read(&plain)?;
    Ok(Body { plan: summary.plan, log: summary.log, counter: summary.counter, packed: crate::packed::pack(b"", &plain) })
}

/// Unpacks a summary. Call it only for a letter of which the tag has been checked.
///
/// # Errors
/// [`SummaryFault`], also where the contents name another plan, log or counter than the letter does.
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
