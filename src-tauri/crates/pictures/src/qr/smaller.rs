//! Makes a picture smaller.

use image::GrayImage;
use std::ops::Range;

/// The picture with its longest side reduced to `side` pixels, each pixel the mean of the area that it covers; `None` if it is no longer
/// than that. Needs little memory besides the two pictures, unlike filters in floating point.
pub(super) fn smaller(whole: &GrayImage, side: u32) -> Option<GrayImage> {
    let longest = whole.width().max(whole.height());
    if longest <= side {
        return None;
    }
    let reduced = |edge: u32| u32::try_from((u64::from(edge) * u64::from(side) / u64::from(longest)).max(1)).ok();
    let (width, height) = (reduced(whole.width())?, reduced(whole.height())?);
    let (across, down) = (spans(whole.width(), width), spans(whole.height(), height));
    let area = u64::from(whole.width()) * u64::from(whole.height());
    let line = whole.width() as usize;
    let mut small = Vec::with_capacity(across.len() * down.len());
    for span in &down {
        let mut sums = vec![0; across.len()];
        for (y, weight) in span.weighted() {
            let row = &whole.as_raw()[y * line..(y + 1) * line];
            sums.iter_mut().zip(&across).for_each(|(sum, span)| *sum += weight * span.sum(row));
        }
        small.extend(sums.into_iter().map(|sum| u8::try_from((sum + area / 2) / area).expect("a mean of bytes is a byte")));
    }
    GrayImage::from_raw(width, height, small)
}

/// The pixels of a line that one pixel of the smaller line covers: the first and the last in part.
struct Span {
    first: usize,
    /// Those that are covered in full.
    full: Range<usize>,
    last: usize,
    /// Weights of the first, of each full one, and of the last; over all, their sum is the number of pixels of the line.
    weights: [u64; 3],
}

/// What each of `new` pixels covers of a line of `old` pixels, with `new` at most `old`.
fn spans(old: u32, new: u32) -> Vec<Span> {
    let (old, new) = (u64::from(old), u64::from(new));
    let span = |at: u64| {
        // In units in which a pixel of the line is as wide as `new`, and a pixel of the smaller line as wide as `old`.
        let (from, to) = (at * old, (at + 1) * old);
        let (first, last) = (from / new, (to - 1) / new);
        let begins = to.min((first + 1) * new) - from;
        let ends = if last > first { to - last * new } else { 0 };
        let index = |place: u64| usize::try_from(place).expect("a place in the line");
        Span { first: index(first), full: index(first + 1)..index(last), last: index(last), weights: [begins, new, ends] }
    };
    (0..new).map(span).collect()
}

impl Span {
    fn weighted(&self) -> impl Iterator<Item = (usize, u64)> {
        let [begins, full, ends] = self.weights;
        let inner = self.full.clone().map(move |place| (place, full));
        [(self.first, begins)].into_iter().chain(inner).chain([(self.last, ends)]).filter(|(_, weight)| *weight > 0)
    }

    fn sum(&self, line: &[u8]) -> u64 {
        let [begins, full, ends] = self.weights;
        let inner: u64 = line.get(self.full.clone()).unwrap_or_default().iter().map(|luma| u64::from(*luma)).sum();
        u64::from(line[self.first]) * begins + inner * full + u64::from(line[self.last]) * ends
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_pixel_is_the_mean_of_its_area() {
        let row = GrayImage::from_raw(5, 1, vec![0, 100, 200, 50, 10]).expect("five pixels");
        assert_eq!(smaller(&row, 5), None);
        // Two and a half pixels each: (0 + 100 + 200 / 2) / 2.5 and (200 / 2 + 50 + 10) / 2.5.
        assert_eq!(smaller(&row, 2).expect("smaller").into_raw(), [80, 64]);
        let column = GrayImage::from_raw(1, 5, vec![0, 100, 200, 50, 10]).expect("five pixels");
        assert_eq!(smaller(&column, 2).expect("smaller").into_raw(), [80, 64]);
        let four = GrayImage::from_raw(4, 2, vec![0, 4, 8, 12, 100, 104, 108, 112]).expect("eight pixels");
        assert_eq!(smaller(&four, 2).expect("smaller").into_raw(), [52, 60]);
    }

    #[test]
    fn one_colour_stays_as_it_is() {
        for (width, height, side) in [(4032, 3, 2000), (3, 4001, 2000), (1999, 1500, 1200), (65, 64, 63), (7, 7, 1)] {
            for luma in [0, 127, 255] {
                let even = GrayImage::from_pixel(width, height, image::Luma([luma]));
                let small = smaller(&even, side).expect("smaller");
                assert_eq!(small.width().max(small.height()), side);
                assert!(small.as_raw().iter().all(|found| *found == luma), "{width} x {height} to {side}");
            }
        }
    }
}
