//! Bytes in the forms in which they cross to the window or lie in a file.

use crate::{ActionResult, refuse};
use base64::Engine;
use base64::engine::general_purpose::STANDARD;
use wire::Failure;
use wire::patient::CardSource;

/// Bytes that the window sends as Base64.
pub fn from_base64(text: &str) -> ActionResult<Vec<u8>> {
    STANDARD.decode(text).map_err(|_| Failure::Internal { detail: "the window sent no Base64".into() })
}

/// Bytes as the window sends them.
pub fn to_base64(bytes: &[u8]) -> String {
    STANDARD.encode(bytes)
}

/// The card's bytes, whatever they came in: text, a picture of the code, a card file.
pub(crate) fn card_bytes(source: &CardSource) -> ActionResult<Vec<u8>> {
    match source {
        CardSource::Text(text) => format::card::from_text(text).map_err(refuse::card),
        CardSource::File(base64) => card_in_file(&from_base64(base64)?),
    }
}

fn card_in_file(bytes: &[u8]) -> ActionResult<Vec<u8>> {
    if is_picture(bytes) {
        let text = pictures::qr::read(bytes).map_err(refuse::picture)?;
        return format::card::from_text(&text).map_err(refuse::card);
    }
    match std::str::from_utf8(bytes) {
        Ok(text) => format::card::from_text(text).map_err(refuse::card),
        Err(_) => Ok(bytes.to_vec()),
    }
}

/// Whether these are the first bytes of a PNG or JPEG picture.
pub(crate) fn is_picture(bytes: &[u8]) -> bool {
    bytes.starts_with(b"\x89PNG") || bytes.starts_with(&[0xFF, 0xD8, 0xFF])
}
