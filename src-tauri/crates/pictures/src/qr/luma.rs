//! Decodes a file to brightness values, within limits that are checked before decoding.

use crate::PictureError;
use image::{DynamicImage, GrayImage, ImageFormat, ImageReader, Limits};
use std::io::Cursor;

/// Largest file that is accepted, in bytes.
pub const MAX_BYTES: u64 = 20_000_000;

/// Largest picture that is accepted, in pixels.
pub const MAX_PIXELS: u64 = 40_000_000;

/// Memory limit for decoding, in bytes: four channels of two bytes per pixel, the widest that both formats know.
const MAX_MEMORY: u64 = MAX_PIXELS * 8;

/// The picture's brightness, with transparent parts on white.
pub(super) fn of(bytes: &[u8]) -> Result<GrayImage, PictureError> {
    let found = bytes.len() as u64;
    if found > MAX_BYTES {
        return Err(PictureError::FileTooBig { found, most: MAX_BYTES });
    }
    let format = match image::guess_format(bytes) {
        Ok(format @ (ImageFormat::Png | ImageFormat::Jpeg)) => format,
        Ok(other) => {
            return Err(PictureError::NotAPicture { detail: format!("{other:?}") });
        }
        Err(error) => return Err(broken(error)),
    };
    let (width, height) = ImageReader::with_format(Cursor::new(bytes), format).into_dimensions().map_err(broken)?;
    let found = u64::from(width) * u64::from(height);
    if found > MAX_PIXELS {
        return Err(PictureError::TooManyPixels { found, most: MAX_PIXELS });
    }
    let mut reader = ImageReader::with_format(Cursor::new(bytes), format);
    let mut limits = Limits::no_limits();
    limits.max_alloc = Some(MAX_MEMORY);
    reader.limits(limits);
    Ok(on_white(reader.decode().map_err(broken)?))
}

fn on_white(picture: DynamicImage) -> GrayImage {
    if !picture.color().has_alpha() {
        return picture.into_luma8();
    }
    let seen = picture.into_luma_alpha8();
    GrayImage::from_fn(seen.width(), seen.height(), |x, y| {
        let [luma, alpha] = seen.get_pixel(x, y).0.map(u16::from);
        let mixed = (luma * alpha + 255 * (255 - alpha)) / 255;
        image::Luma([u8::try_from(mixed).expect("a mean of two bytes is a byte")])
    })
}

fn broken(error: image::ImageError) -> PictureError {
    PictureError::NotAPicture { detail: error.to_string() }
}
