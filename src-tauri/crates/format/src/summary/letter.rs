//! The letter around a summary: what the summary is about, and the tag that shows who it is from.

use super::{MAX_LETTER, SummaryFault, VERSION};
use exercises::id::{LogId, PlanId};

/// The first bytes of every letter.
const MAGIC: [u8; 4] = *b"\x8FCsu";
/// The kind of recipient key: an X25519 key of the age format.
const X25519: u8 = 1;
/// The authenticated bytes begin with this, so that a summary's tag cannot be used for anything else.
const PREFIX: &[u8] = b"carryover/summary/v1\0";
/// Number of bytes in the header: magic, version, kind of recipient, plan, log, counter, tag.
const HEAD: usize = 4 + 2 + 8 + 8 + 4 + 32;

/// A packed summary, with what it is about.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Body {
    /// The plan that the summary is about.
    pub plan: PlanId,
    /// The installation that made it.
    pub log: LogId,
    /// The summary's number within the log, from 1.
    pub counter: u32,
    /// The packed contents.
    pub packed: Vec<u8>,
    /// The version of the letter, 1 to [`VERSION`].
    pub version: u8,
}

/// A summary with its tag; this is what gets encrypted.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Letter {
    /// The summary.
    pub body: Body,
    /// HMAC-SHA-256 over [`Letter::authenticated`].
    pub tag: [u8; 32],
}

impl Letter {
    /// The bytes that the tag covers. Each field has its length before it, so that bytes of one field cannot be taken for
    /// part of another.
    pub fn authenticated(body: &Body, recipient: &[u8; 32]) -> Vec<u8> {
        let Body { plan, log, counter, packed, version } = body;
        let mut bytes = PREFIX.to_vec();
        let fields: [&[u8]; 6] = [&[*version, X25519], &plan.0, &log.0, recipient, &counter.to_be_bytes(), packed];
        for field in fields {
            let length = u32::try_from(field.len()).expect("contents are limited to megabytes");
            bytes.extend(length.to_be_bytes());
            bytes.extend(field);
        }
        bytes
    }

    /// The bytes to be encrypted.
    pub fn to_bytes(&self) -> Vec<u8> {
        let Letter { body: Body { plan, log, counter, packed, version }, tag } = self;
        [&MAGIC, &[*version, X25519][..], &plan.0, &log.0, &counter.to_be_bytes(), tag, packed].concat()
    }

    /// Takes a letter apart. The body is not read here, because the tag must be checked first.
    ///
    /// # Errors
    /// [`SummaryFault`] says why the bytes are not a letter.
    pub fn parse(bytes: &[u8]) -> Result<Letter, SummaryFault> {
        if bytes.len() > MAX_LETTER {
            return Err(SummaryFault::TooBig { most: MAX_LETTER });
        }
        let rest = bytes.strip_prefix(&MAGIC).ok_or(SummaryFault::NotASummary)?;
        match rest {
            [] | [1..=VERSION] => return Err(SummaryFault::Cut),
            [0, ..] => return Err(SummaryFault::Malformed { field: "version" }),
            [1..=VERSION, X25519, ..] => {}
            [1..=VERSION, ..] => return Err(SummaryFault::Malformed { field: "recipient" }),
            [found, ..] => return Err(SummaryFault::NewerVersion { found: *found }),
        }
        let (head, packed) = bytes.split_at_checked(HEAD).ok_or(SummaryFault::Cut)?;
        let body = Body {
            plan: PlanId(part(head, 6)),
            log: LogId(part(head, 14)),
            counter: u32::from_be_bytes(part(head, 22)),
            packed: packed.to_vec(),
            version: head[4],
        };
        Ok(Letter { body, tag: part(head, 26) })
    }
}

/// The `N` bytes of the header that begin at `from`.
fn part<const N: usize>(head: &[u8], from: usize) -> [u8; N] {
    head[from..from + N].try_into().expect("the head is as long as its parts")
}

#[cfg(test)]
mod tests {
    use super::*;

    fn letter() -> Letter {
        let body = Body { plan: PlanId([1; 8]), log: LogId([2; 8]), counter: 3, packed: b"packed".to_vec(), version: 1 };
        Letter { body, tag: [4; 32] }
    }

    #[test]
    fn a_letter_comes_apart_as_it_was_put_together() {
        for version in 1..=VERSION {
            let mut letter = letter();
            letter.body.version = version;
            assert_eq!(Letter::parse(&letter.to_bytes()), Ok(letter));
        }
    }

    /// So that nobody can make a reader take contents of one version for those of another.
    #[test]
    fn the_tag_covers_the_version() {
        let tagged = |version| Letter::authenticated(&Body { version, ..letter().body }, &[5; 32]);
        assert_ne!(tagged(1), tagged(2));
    }

    #[test]
    fn a_letter_cut_within_its_header_is_reported_as_cut() {
        let bytes = letter().to_bytes();
        for length in 4..HEAD {
            assert_eq!(Letter::parse(&bytes[..length]), Err(SummaryFault::Cut), "at {length}");
        }
        assert_eq!(Letter::parse(&bytes[..3]), Err(SummaryFault::NotASummary));
    }

    #[test]
    fn another_version_is_named() {
        let with = |version: u8, recipient: u8| {
            let mut bytes = letter().to_bytes();
            (bytes[4], bytes[5]) = (version, recipient);
            Letter::parse(&bytes)
        };
        assert_eq!(with(3, 1), Err(SummaryFault::NewerVersion { found: 3 }));
        assert_eq!(with(0, 1), Err(SummaryFault::Malformed { field: "version" }));
        assert_eq!(with(1, 9), Err(SummaryFault::Malformed { field: "recipient" }));
    }

    #[test]
    fn the_tagged_bytes_separate_every_field_from_its_neighbour() {
        let Letter { body, .. } = letter();
        let expected = [
            b"carryover/summary/v1\0".to_vec(),
            vec![0, 0, 0, 2, 1, 1],
            [vec![0, 0, 0, 8], vec![1; 8]].concat(),
            [vec![0, 0, 0, 8], vec![2; 8]].concat(),
            [vec![0, 0, 0, 32], vec![5; 32]].concat(),
            vec![0, 0, 0, 4, 0, 0, 0, 3],
            [vec![0, 0, 0, 6], b"packed".to_vec()].concat(),
        ];
        assert_eq!(Letter::authenticated(&body, &[5; 32]), expected.concat());
    }
}
