//! PNG, row by row.

use super::{MAX_PIXELS, brightness, broken, check_size};
use crate::PictureError;
use image::GrayImage;
use png::{Decoder, Limits, Transformations};
use std::io::Cursor;

/// Memory that the decoder may use for itself, in bytes: rows, palette, and what else a file has besides its pixels.
const MAX_MEMORY: usize = 16_000_000;

/// Where the pixels of an interlaced picture's passes are: first column, columns from one to the next, first row, rows from one to the
/// next (PNG, third edition, section 8.2).
const PASSES: [[usize; 4]; 7] =
    [[0, 8, 0, 8], [4, 8, 0, 8], [0, 4, 4, 8], [2, 4, 0, 4], [0, 2, 2, 4], [1, 2, 0, 2], [0, 1, 1, 2]];
const ONE_PASS: [[usize; 4]; 1] = [[0, 1, 0, 1]];

pub(super) fn decode(bytes: &[u8]) -> Result<GrayImage, PictureError> {
    let mut decoder = Decoder::new_with_limits(Cursor::new(bytes), Limits { bytes: MAX_MEMORY });
    decoder.set_transformations(Transformations::normalize_to_color8());
    decoder.set_ignore_text_chunk(true);
    decoder.set_ignore_iccp_chunk(true);
    let header = decoder.read_header_info().map_err(broken)?;
    let (width, height) = header.size();
    let passes: &[_] = if header.interlaced { &PASSES } else { &ONE_PASS };
    check_size(width, height, MAX_PIXELS)?;
    let mut reader = decoder.read_info().map_err(broken)?;
    let samples = reader.output_color_type().0.samples();
    let mut luma = vec![0; width as usize * height as usize];
    let (across, down) = (width as usize, height as usize);
    // A pass without columns has no rows in the file either.
    let rows = passes.iter().filter(|[first, ..]| *first < across);
    for (first, step, y) in
        rows.flat_map(|&[first, step, top, apart]| (top..down).step_by(apart).map(move |y| (first, step, y)))
    {
        let row = reader.next_row().map_err(broken)?.ok_or_else(|| broken("rows are missing"))?;
        let line = luma[y * across..(y + 1) * across][first..].iter_mut().step_by(step);
        line.zip(row.data().chunks_exact(samples)).for_each(|(pixel, found)| *pixel = brightness_of(found));
    }
    reader.finish().map_err(broken)?;
    GrayImage::from_raw(width, height, luma).ok_or_else(|| broken("pixels are missing"))
}

/// The brightness of a pixel, on white where it is transparent.
fn brightness_of(pixel: &[u8]) -> u8 {
    match *pixel {
        [grey] => grey,
        [grey, alpha] => on_white(grey, alpha),
        [red, green, blue] => brightness([red, green, blue]),
        [red, green, blue, alpha] => on_white(brightness([red, green, blue]), alpha),
        _ => 255,
    }
}

fn on_white(luma: u8, alpha: u8) -> u8 {
    let (luma, alpha) = (u16::from(luma), u16::from(alpha));
    u8::try_from((luma * alpha + 255 * (255 - alpha)) / 255).expect("a mean of two bytes is a byte")
}
