//! Decodes a file to brightness values, within limits that are checked before decoding.
//!
//! A small file may claim a picture of any size, so neither time nor memory may follow from the claim alone: at most one byte is kept
//! for a pixel, whatever the file has, and a picture with more than [`MAX_PIXELS`] is refused by its header.

mod jpeg;
mod png;

use crate::PictureError;
use image::GrayImage;

/// Largest file that is accepted, in bytes.
pub const MAX_BYTES: u64 = 20 * 1024 * 1024;

/// Largest picture that is accepted, in pixels: a telephone's camera makes up to 50 million in its usual settings.
pub const MAX_PIXELS: u64 = 64_000_000;

/// Longest side that is accepted, in pixels.
pub const MAX_SIDE: u32 = 16_384;

/// The picture's brightness, with transparent parts on white.
pub(super) fn of(bytes: &[u8]) -> Result<GrayImage, PictureError> {
    let found = bytes.len() as u64;
    if found > MAX_BYTES {
        return Err(PictureError::FileTooBig { found, most: MAX_BYTES });
    }
    match bytes {
        [0x89, b'P', b'N', b'G', ..] => png::decode(bytes),
        [0xFF, 0xD8, 0xFF, ..] => jpeg::decode(bytes),
        _ => Err(PictureError::NotAPicture { detail: "neither PNG nor JPEG".into() }),
    }
}

/// Refuses a picture by the size in its header.
fn check_size(width: u32, height: u32, most: u64) -> Result<(), PictureError> {
    let found = u64::from(width) * u64::from(height);
    if found > most {
        return Err(PictureError::TooManyPixels { found, most });
    }
    match width.max(height) {
        found if found > MAX_SIDE => Err(PictureError::TooLong { found, most: MAX_SIDE }),
        _ => Ok(()),
    }
}

/// The brightness of a colour, in the weights of ITU-R BT.709.
fn brightness([red, green, blue]: [u8; 3]) -> u8 {
    let sum = 2126 * u32::from(red) + 7152 * u32::from(green) + 722 * u32::from(blue);
    u8::try_from(sum / 10_000).expect("a mean of bytes is a byte")
}

fn broken(error: impl std::fmt::Display) -> PictureError {
    PictureError::NotAPicture { detail: error.to_string() }
}
