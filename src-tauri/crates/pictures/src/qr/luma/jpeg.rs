//! JPEG, of which mostly the brightness alone is decoded.

use super::{MAX_PIXELS, brightness, broken, check_size};
use crate::PictureError;
use image::GrayImage;
use zune_core::bytestream::ZCursor;
use zune_core::colorspace::ColorSpace;
use zune_core::options::DecoderOptions;
use zune_jpeg::JpegDecoder;

/// Largest progressive picture, in pixels: its coefficients, up to six bytes for a pixel, are all in memory until the last scan.
const MAX_PROGRESSIVE: u64 = 24_000_000;

/// The most scans of a progressive picture. Each goes over all of it, and costs a few bytes in the file; programs write about ten.
const MAX_SCANS: usize = 24;

/// Bytes for a pixel where the brightness is not stored by itself.
const RGB: usize = 3;

pub(super) fn decode(bytes: &[u8]) -> Result<GrayImage, PictureError> {
    let side = usize::from(u16::MAX);
    let options = DecoderOptions::default().set_strict_mode(false).set_max_width(side).set_max_height(side);
    let options = options.jpeg_set_max_scans(MAX_SCANS).jpeg_set_out_colorspace(ColorSpace::Luma);
    let mut decoder = JpegDecoder::new_with_options(ZCursor::new(bytes), options);
    decoder.decode_headers().map_err(broken)?;
    let size = decoder.info().map(|info| (u32::from(info.width), u32::from(info.height)));
    let (width, height) = size.ok_or_else(|| broken("no size"))?;
    let most = if is_progressive(bytes) { MAX_PROGRESSIVE } else { MAX_PIXELS };
    check_size(width, height, most)?;
    let stored = decoder.input_colorspace();
    let luma = match stored {
        Some(ColorSpace::YCbCr | ColorSpace::Luma) => decoder.decode().map_err(broken)?,
        _ => {
            // Colours of printing and the like, which no camera writes: three bytes for a pixel for a while.
            check_size(width, height, MAX_PROGRESSIVE)?;
            let mut decoder =
                JpegDecoder::new_with_options(ZCursor::new(bytes), options.jpeg_set_out_colorspace(ColorSpace::RGB));
            let colours = decoder.decode().map_err(broken)?;
            colours.chunks_exact(RGB).map(|pixel| brightness([pixel[0], pixel[1], pixel[2]])).collect()
        }
    };
    GrayImage::from_raw(width, height, luma).ok_or_else(|| broken("pixels are missing"))
}

/// Whether the picture may be progressive: what follows from segment to segment does not lead to the first scan past a header of
/// another kind. A file that is put together otherwise, as no camera does, counts as progressive.
fn is_progressive(bytes: &[u8]) -> bool {
    /// Markers of frame headers (ITU-T T.81, table B.1): baseline and extended, and progressive.
    const SEQUENTIAL: [u8; 2] = [0xC0, 0xC1];
    const PROGRESSIVE: u8 = 0xC2;
    const SCAN: u8 = 0xDA;
    /// Markers that stand alone, without a length.
    const ALONE: [std::ops::RangeInclusive<u8>; 2] = [0x00..=0x01, 0xD0..=0xD9];
    let mut rest = bytes.get(2..).unwrap_or_default();
    let mut sequential = false;
    while let [0xFF, marker, high, low, ..] = *rest {
        if marker == SCAN {
            return !sequential;
        }
        if marker == PROGRESSIVE || marker == 0xFF || ALONE.iter().any(|alone| alone.contains(&marker)) {
            return true;
        }
        sequential |= SEQUENTIAL.contains(&marker);
        rest = rest.get(2 + usize::from(u16::from_be_bytes([high, low]))..).unwrap_or_default();
    }
    true
}
