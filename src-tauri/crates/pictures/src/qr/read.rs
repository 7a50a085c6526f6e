//! Finds the code in a picture: several views of it are tried, the fast and likely ones first.

use super::luma;
use super::smaller::smaller;
use crate::PictureError;
use image::GrayImage;
use image::imageops;
use rxing::common::{BitMatrix, DetectorRXingResult, HybridBinarizer};
use rxing::qrcode::cpp_port::{decoder::Decode, detector};
use rxing::{Binarizer, Luma8LuminanceSource};
use std::collections::BTreeSet;
use std::panic::{AssertUnwindSafe, catch_unwind};

/// The views that are tried: their longest side in pixels, and how much they are smoothed first (standard deviation in pixels). A
/// code of version 22 has three pixels per module in the first view if it fills a third of a photo's long side, in the third view if
/// it fills a sixth. Smoothing helps against noise in a photo taken in poor light.
const VIEWS: [(u32, f32); 6] = [(1200, 0.0), (800, 0.0), (2000, 0.0), (500, 0.0), (1200, 1.0), (2000, 1.2)];

/// A picture with more finder patterns than this is not a photo of a card, but made to keep the program busy.
const MAX_PATTERNS: usize = 400;

/// Number of finder patterns in a code.
const PATTERNS: usize = 3;

/// Largest number of plausible triples of finder patterns that are tried in a view.
const MAX_TRIPLES: usize = 400;

/// The text of the only QR code in a PNG or JPEG picture, in any orientation, also white on black.
///
/// Checks the file's size and the picture's size in the header before decoding anything: at most [`MAX_BYTES`](super::MAX_BYTES),
/// [`MAX_PIXELS`](super::MAX_PIXELS) and [`MAX_SIDE`](super::MAX_SIDE).
pub fn read(picture: &[u8]) -> Result<String, PictureError> {
    guarded(picture, search)
}

/// The texts of all QR codes in a PNG or JPEG picture, without duplicates, for example from a photo of several pages side by side.
///
/// Tries fewer views if every finder pattern belongs to a code that was already read.
///
/// # Errors
/// As for [`read`], except that several codes are not an error.
pub fn read_all(picture: &[u8]) -> Result<Vec<String>, PictureError> {
    guarded(picture, gather)
}

/// Decodes the picture and looks for codes in it. The libraries use what the file says as indices: a picture made to mislead them must
/// cause an error for this picture and not end the program.
fn guarded<T>(picture: &[u8], look: impl FnOnce(&GrayImage) -> Result<T, PictureError>) -> Result<T, PictureError> {
    let decoded = catch_unwind(AssertUnwindSafe(|| luma::of(picture)));
    let whole = decoded.unwrap_or_else(|_| Err(PictureError::NotAPicture { detail: "the decoder failed".into() }))?;
    catch_unwind(AssertUnwindSafe(|| look(&largest(whole)))).unwrap_or(Err(PictureError::NoCode))
}

fn gather(whole: &GrayImage) -> Result<Vec<String>, PictureError> {
    let mut all = BTreeSet::new();
    for view in views(whole) {
        for inverted in [false, true] {
            let Ok(Seen { texts, patterns }) = codes(&view, inverted) else { continue };
            let everything = !texts.is_empty() && patterns <= PATTERNS * texts.len();
            all.extend(texts);
            if everything {
                return Ok(all.into_iter().collect());
            }
        }
    }
    if all.is_empty() { Err(PictureError::NoCode) } else { Ok(all.into_iter().collect()) }
}

fn search(whole: &GrayImage) -> Result<String, PictureError> {
    for view in views(whole) {
        for inverted in [false, true] {
            let mut found = codes(&view, inverted)?.texts;
            match found.len() {
                0 => {}
                1 => return found.pop_first().ok_or(PictureError::NoCode),
                count => return Err(PictureError::SeveralCodes { count }),
            }
        }
    }
    Err(PictureError::NoCode)
}

/// The picture in the size of the largest view; the other views are made of it.
fn largest(whole: GrayImage) -> GrayImage {
    let largest = VIEWS.iter().map(|(side, _)| *side).max().unwrap_or_default();
    smaller(&whole, largest).unwrap_or(whole)
}

/// The picture in the sizes of [`VIEWS`], never enlarged, and none twice.
fn views(whole: &GrayImage) -> impl Iterator<Item = GrayImage> {
    let longest = whole.width().max(whole.height());
    let mut tried = BTreeSet::new();
    let new = move |&(side, smoothing): &(u32, f32)| tried.insert((side.min(longest), smoothing > 0.0));
    VIEWS.into_iter().filter(new).map(move |(side, smoothing)| {
        let view = smaller(whole, side);
        match view {
            view if smoothing > 0.0 => imageops::blur(view.as_ref().unwrap_or(whole), smoothing),
            view => view.unwrap_or_else(|| whole.clone()),
        }
    })
}

/// What was found in one view.
#[derive(Default)]
struct Seen {
    /// The different texts of all codes.
    texts: BTreeSet<String>,
    /// Number of finder patterns, some of which may only look like one.
    patterns: usize,
}

/// All codes in one view.
fn codes(view: &GrayImage, inverted: bool) -> Result<Seen, PictureError> {
    let Some(bits) = black(view, inverted) else {
        return Ok(Seen::default());
    };
    let mut patterns = detector::FindFinderPatterns(&bits, true, 0);
    if patterns.len() > MAX_PATTERNS {
        return Err(PictureError::NoCode);
    }
    let seen = patterns.len();
    let triples = detector::GenerateFinderPatternSets(&mut patterns);
    let text = |triple| {
        let sampled = detector::SampleQR(&bits, triple).ok()?;
        let decoded = Decode(sampled.getBits()).ok().filter(|decoded| decoded.isValid())?;
        Some(decoded.text())
    };
    Ok(Seen { texts: triples.iter().take(MAX_TRIPLES).filter_map(text).collect(), patterns: seen })
}

/// The dark parts of the view, compared with their surroundings.
fn black(view: &GrayImage, inverted: bool) -> Option<BitMatrix> {
    let mut luma = view.as_raw().clone();
    if inverted {
        luma.iter_mut().for_each(|byte| *byte = !*byte);
    }
    let source = Luma8LuminanceSource::new(luma, view.width(), view.height()).ok()?;
    HybridBinarizer::new(source).get_black_matrix().ok().cloned()
}
