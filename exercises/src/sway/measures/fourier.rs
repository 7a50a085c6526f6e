//! The Fourier sums of a real segment at a few low frequencies.
//!
//! A segment of L points is split into P interleaved parts of M = L/P points. The sums of each part repeat after M frequencies and
//! are symmetric, so few of them are needed: with n = m P + r, the sum over n of x_n e^(-2 pi i k n/L) is the sum over r of e^(-2 pi
//! i k r/L) times the part's own sum at k modulo M (the first step of Cooley & Tukey 1965, Math Comput 19:297-301). For 49
//! frequencies no more of a fast transform is needed.

use crate::sway::lanes::dot;
use core::f64::consts::PI;

/// Number of parts that a segment is split into if its length is divisible by it; a segment of 1000 points has 25 in each part.
const PARTS: usize = 40;

/// The tables that do not depend on the segment's values.
pub(super) struct Fourier {
    parts: usize,
    of_part: usize,
    first: usize,
    last: usize,
    cos: Vec<f64>,
    sin: Vec<f64>,
    /// The rotation (cosine) of each part at each frequency; the parts of one frequency are next to each other.
    turn_cos: Vec<f64>,
    turn_sin: Vec<f64>,
}

/// Each part's own sums, all parts next to each other: the real part, and the imaginary part with its sign changed.
struct OwnSums {
    re: Vec<f64>,
    im: Vec<f64>,
}

impl Fourier {
    /// For segments of `length` points, at the frequencies `first` to `last` in cycles per segment. `last` may be at most half of
    /// `length`.
    pub(super) fn new(length: usize, first: usize, last: usize) -> Fourier {
        let parts = if length.is_multiple_of(PARTS) { PARTS } else { 1 };
        let turns = (0..length).map(|k| 2.0 * PI * k as f64 / length as f64);
        let (cos, sin): (Vec<f64>, Vec<f64>) = turns.map(|turn| (libm::cos(turn), libm::sin(turn))).unzip();
        // The rotations are looked up, because they repeat after the segment's length.
        let places = || (first..=last).flat_map(|k| (0..parts).map(move |part| k * part % length));
        let (turn_cos, turn_sin) = places().map(|at| (cos[at], sin[at])).unzip();
        Fourier { parts, of_part: length / parts, first, last, cos, sin, turn_cos, turn_sin }
    }

    /// The cosine at each point of the segment, over one full turn.
    pub(super) fn cosines(&self) -> &[f64] {
        &self.cos
    }

    /// Adds the squared magnitude at each frequency to `power`.
    pub(super) fn add_squares(&self, segment: &[f64], power: &mut [f64]) {
        let own = self.own_sums(segment);
        let turns = self.turn_cos.chunks_exact(self.parts).zip(self.turn_sin.chunks_exact(self.parts));
        for ((into, k), (cos, sin)) in power.iter_mut().zip(self.first..=self.last).zip(turns) {
            let place = k % self.of_part;
            // The sums above half the part's length mirror those below it, with the sign of the imaginary part changed.
            let (place, sign) = if 2 * place > self.of_part { (self.of_part - place, -1.0) } else { (place, 1.0) };
            let row = place * self.parts..(place + 1) * self.parts;
            let (own_re, own_im) = (&own.re[row.clone()], &own.im[row]);
            let re = dot(own_re, cos) - sign * dot(own_im, sin);
            let im = dot(own_re, sin) + sign * dot(own_im, cos);
            *into += re * re + im * im;
        }
    }

    fn own_sums(&self, segment: &[f64]) -> OwnSums {
        let (width, half) = (self.parts, self.of_part / 2);
        let folded = self.folded(segment);
        let places = half.min(self.last) + 1;
        let mut own = OwnSums { re: Vec::with_capacity(places * width), im: vec![0.0; places * width] };
        for place in 0..places {
            own.re.extend_from_slice(&segment[..width]);
            let (re, im) = (&mut own.re[place * width..], &mut own.im[place * width..][..width]);
            for (m, (even, odd)) in (1..=half).zip(folded.0.chunks_exact(width).zip(folded.1.chunks_exact(width))) {
                let at = place * m % self.of_part * width;
                let (cos, sin) = (self.cos[at], self.sin[at]);
                re.iter_mut().zip(even).for_each(|(sum, value)| *sum += cos * value);
                im.iter_mut().zip(odd).for_each(|(sum, value)| *sum += sin * value);
            }
        }
        own
    }

    /// Sums and differences of the values at equal distance from start and end, because cosines are even and sines are odd.
    fn folded(&self, segment: &[f64]) -> (Vec<f64>, Vec<f64>) {
        let (width, half) = (self.parts, self.of_part / 2);
        let row = |m: usize| &segment[m * width..(m + 1) * width];
        let (mut even, mut odd) = (Vec::with_capacity(half * width), Vec::with_capacity(half * width));
        for m in 1..=half {
            let mirrored = row(self.of_part - m);
            // The point in the middle is its own mirror.
            let alone = 2 * m == self.of_part;
            even.extend(row(m).iter().zip(mirrored).map(|(one, other)| if alone { *one } else { one + other }));
            odd.extend(row(m).iter().zip(mirrored).map(|(one, other)| one - other));
        }
        (even, odd)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// The sum computed directly from its definition.
    fn plain(segment: &[f64], k: usize) -> f64 {
        let turn = |n: usize| 2.0 * PI * ((k * n) % segment.len()) as f64 / segment.len() as f64;
        let sum = |of: fn(f64) -> f64| segment.iter().enumerate().map(|(n, x)| x * of(turn(n))).sum::<f64>();
        let (re, im) = (sum(libm::cos), sum(libm::sin));
        re * re + im * im
    }

    #[test]
    fn the_same_as_the_plain_sum_whether_parts_come_out_even_or_not() {
        for length in [1, 2, 7, 40, 80, 120, 160, 199, 250, 999, 1000] {
            let segment: Vec<f64> = (0..length).map(|n| ((n * n * 31 + 7 * n) % 101) as f64 - 50.0).collect();
            let last = length / 2;
            let mut power = vec![0.0; last + 1];
            Fourier::new(length, 0, last).add_squares(&segment, &mut power);
            let scale: f64 = segment.iter().map(|x| x * x).sum::<f64>() * length as f64 + 1.0;
            for (k, got) in power.iter().enumerate() {
                assert!((got - plain(&segment, k)).abs() < 1e-13 * scale, "{length} points, frequency {k}");
            }
        }
    }

    #[test]
    fn squares_are_added_onto_what_is_there() {
        let mut power = vec![5.0];
        Fourier::new(4, 1, 1).add_squares(&[1.0, 0.0, 0.0, 0.0], &mut power);
        assert_eq!(power, [6.0]);
    }
}
