//! Step 3: chooses the stretch of the grid that is measured.
//!
//! It lies between 2 s after the start and 0.5 s before the end. Bad points are cut out with 0.5 s on each side, and the longest
//! stretch that is left is measured.

use std::ops::RangeInclusive;

use super::{
    grid::Grid,
    parameters::{DT, GAP_MARGIN, GUARD_S, SETTLE_S},
};

/// A stretch of the grid, both ends included.
#[derive(Debug, Clone, Copy, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Window {
    /// First grid point.
    pub k0: usize,
    /// Last grid point.
    pub k1: usize,
    /// Time of the first point, s.
    pub t0: f64,
    /// Time of the last point, s.
    pub t1: f64,
}

impl Window {
    /// Number of grid points.
    pub fn points(&self) -> usize {
        self.k1 - self.k0 + 1
    }

    /// Time from the first to the last point, s.
    pub fn duration_s(&self) -> f64 {
        (self.points() - 1) as f64 * DT
    }
}

/// The window of a hold from `t_on` to `t_end`, s; `None` if nothing is left.
pub(crate) fn window(grid: &Grid, t_on: f64, t_end: f64) -> Option<Window> {
    let points = grid.points(t_on + SETTLE_S, t_end - GUARD_S)?;
    let (k0, k1) = longest_stretch(&grid.bad, points)?;
    Some(Window { k0, k1, t0: grid.time(k0), t1: grid.time(k1) })
}

/// The longest stretch without a bad point nearby; if several are equal, the first.
fn longest_stretch(bad: &[bool], points: RangeInclusive<usize>) -> Option<(usize, usize)> {
    let usable = away_from_bad(bad);
    let mut best: Option<(usize, usize)> = None;
    let mut start: Option<usize> = None;
    for k in points {
        start = if usable[k] { start.or(Some(k)) } else { None };
        let Some(first) = start else { continue };
        if best.is_none_or(|(b0, b1)| k - first > b1 - b0) {
            best = Some((first, k));
        }
    }
    best
}

/// Which points have no bad point within the margin.
fn away_from_bad(bad: &[bool]) -> Vec<bool> {
    let mut usable = vec![true; bad.len()];
    for edge in bad.chunk_by(|one, other| one == other).scan(0, |at, run| {
        let start = *at;
        *at += run.len();
        Some((run[0], start, *at))
    }) {
        if let (true, start, end) = edge {
            let end = (end + GAP_MARGIN).min(bad.len());
            usable[start.saturating_sub(GAP_MARGIN)..end].fill(false);
        }
    }
    usable
}

#[cfg(test)]
mod tests {
    use super::*;

    fn grid(len: usize, bad: impl Fn(usize) -> bool) -> Grid {
        Grid { t_first: 0.0, axes: [0, 1, 2].map(|_| vec![0.0; len]), bad: (0..len).map(bad).collect() }
    }

    fn ends(grid: &Grid, t_on: f64, t_end: f64) -> Option<(usize, usize)> {
        window(grid, t_on, t_end).map(|window| (window.k0, window.k1))
    }

    #[test]
    fn settle_and_guard_are_left_out() {
        let plain = grid(3001, |_| false);
        assert_eq!(ends(&plain, 0.0, 30.0), Some((200, 2950)));
        assert_eq!(ends(&plain, -10.0, 99.0), Some((0, 3000)));
        assert_eq!(ends(&plain, 0.0, 2.5), Some((200, 200)));
        assert_eq!(ends(&plain, 0.0, 2.4), None);
        assert_eq!(ends(&plain, 40.0, 70.0), None);
        assert_eq!(ends(&plain, f64::NAN, 30.0), None);
    }

    #[test]
    fn the_longest_stretch_beside_a_gap_is_kept() {
        let gap = grid(3001, |k| (1000..1030).contains(&k));
        assert_eq!(ends(&gap, 0.0, 30.0), Some((1080, 2950)));
        let late = grid(3001, |k| (2097..2141).contains(&k));
        assert_eq!(ends(&late, 0.0, 30.0), Some((200, 2046)));
        assert_eq!(ends(&grid(3001, |_| true), 0.0, 30.0), None);
    }

    #[test]
    fn equal_stretches_keep_the_first() {
        let middle = grid(1401, |k| k == 700);
        assert_eq!(ends(&middle, -2.0, 14.5), Some((0, 649)));
    }
}
