//! A clinic's own exercise as its store keeps it, encrypted: CBOR with integer keys. It never leaves the clinic in this form; what is
//! handed over is the text within.

use crate::cbor::{Malformed, MapIn, MapOut};

/// Size of the largest text of an unfinished exercise, in bytes.
pub const MAX_DRAFT: usize = crate::catalogue::MAX_BYTES;

/// What a row holds.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct OwnRow {
    /// What is with the exercise.
    pub state: OwnState,
    /// A finished exercise as [`crate::catalogue::write()`] writes it, under the name that its author gave it. An unfinished one as far as
    /// it was written, whatever that is.
    pub text: String,
}

/// What is with an own exercise.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum OwnState {
    /// It can be prescribed.
    Offered,
    /// It is prescribed no longer, and kept because a card has it.
    Removed,
    /// It is unfinished.
    Draft,
}

/// The bytes are not such a row, or the text is too long for one.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
#[error("no own exercise has such a part: {field}")]
pub struct OwnRowFault {
    /// The part at fault.
    pub field: &'static str,
}

impl From<Malformed> for OwnRowFault {
    fn from(Malformed(field): Malformed) -> OwnRowFault {
        OwnRowFault { field }
    }
}

/// Writes a row.
///
/// # Errors
/// If the text is longer than [`MAX_DRAFT`].
pub fn write(row: &OwnRow) -> Result<Vec<u8>, OwnRowFault> {
    let OwnRow { state, text } = row;
    let mut map = MapOut::default();
    let state = match state {
        OwnState::Offered => 0u8,
        OwnState::Removed => 1,
        OwnState::Draft => 2,
    };
    map.put(0, "state", &state)?;
    map.put(1, "text", &fitting(text)?)?;
    Ok(map.finish())
}

/// Reads what [`write()`] wrote, ignoring keys that it does not know.
///
/// # Errors
/// The part whose value a row cannot have.
pub fn read(bytes: &[u8]) -> Result<OwnRow, OwnRowFault> {
    let map = MapIn::split(bytes, "own exercise")?;
    let state = match map.need::<u8>(0, "state")? {
        0 => OwnState::Offered,
        1 => OwnState::Removed,
        2 => OwnState::Draft,
        _ => return Err(Malformed("state").into()),
    };
    Ok(OwnRow { state, text: fitting(map.need(1, "text")?)?.to_owned() })
}

fn fitting(text: &str) -> Result<&str, Malformed> {
    if text.len() <= MAX_DRAFT { Ok(text) } else { Err(Malformed("text")) }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn row(state: OwnState) -> OwnRow {
        OwnRow { state, text: "id = \"x\"".into() }
    }

    #[test]
    fn every_state_comes_back_and_is_written_as_it_always_was() {
        for (state, code) in [(OwnState::Offered, 0), (OwnState::Removed, 1), (OwnState::Draft, 2)] {
            let bytes = write(&row(state)).expect("short enough");
            assert_eq!(bytes, [&[0xA2, 0, code, 1, 0x68][..], b"id = \"x\""].concat());
            assert_eq!(read(&bytes), Ok(row(state)));
        }
    }

    #[test]
    fn other_states_cut_rows_and_long_texts_are_refused() {
        let bytes = write(&row(OwnState::Draft)).expect("short enough");
        let mut other = bytes.clone();
        other[2] = 3;
        assert_eq!(read(&other), Err(OwnRowFault { field: "state" }));
        for at in 0..bytes.len() {
            assert!(read(&bytes[..at]).is_err(), "cut at {at}");
        }
        let long = OwnRow { text: "x".repeat(MAX_DRAFT + 1), ..row(OwnState::Draft) };
        assert_eq!(write(&long), Err(OwnRowFault { field: "text" }));
        assert!(write(&OwnRow { text: "x".repeat(MAX_DRAFT), ..long }).is_ok_and(|bytes| read(&bytes).is_ok()));
    }
}
