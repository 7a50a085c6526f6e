//! Bytes as they are sent to the window or stored in a file.

use crate::ActionResult;
use base64::Engine;
use base64::engine::general_purpose::STANDARD;
use wire::Failure;

/// Decodes bytes that the window sends as Base64.
pub fn from_base64(text: &str) -> ActionResult<Vec<u8>> {
    STANDARD.decode(text).map_err(|_| Failure::Internal { detail: "the window sent no Base64".into() })
}

/// Encodes bytes as Base64 for the window.
pub fn to_base64(bytes: &[u8]) -> String {
    STANDARD.encode(bytes)
}

/// Whether the bytes begin like a PNG or JPEG picture.
pub(crate) fn is_picture(bytes: &[u8]) -> bool {
    bytes.starts_with(b"\x89PNG") || bytes.starts_with(&[0xFF, 0xD8, 0xFF])
}
