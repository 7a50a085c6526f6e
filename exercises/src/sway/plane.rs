//! The window's signal, filtered, cut to the window and detrended, along ML, AP and up.

use super::{
    axes::{Axes, along, views},
    detrend::detrend,
    filter::zero_phase,
    grid::Grid,
    parameters::PAD,
    window::Window,
};

/// The three components over the window, m/s2, each without its linear trend.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Plane {
    pub(crate) ml: Vec<f64>,
    pub(crate) ap: Vec<f64>,
    pub(crate) up: Vec<f64>,
}

/// The window's signal along the three axes, low-passed at `fc` (Hz).
pub(crate) fn plane(grid: &Grid, window: &Window, axes: &Axes, fc: f64) -> Plane {
    let [ml, ap, up] = components(grid, window, [axes.ml, axes.ap, axes.up], fc);
    Plane { ml, ap, up }
}

/// The signal along each of `axes`: low-passed at `fc` (Hz) with up to half a second more on each side where the record has it, cut
/// to the window and detrended. The filter is linear, so the result is the same as if it were filtered before projecting onto the
/// axes.
pub(crate) fn components<const N: usize>(grid: &Grid, window: &Window, axes: [[f64; 3]; N], fc: f64) -> [Vec<f64>; N] {
    let from = window.k0.saturating_sub(PAD);
    let to = (window.k1 + PAD).min(grid.len() - 1);
    let record = views(&grid.axes).map(|axis| &axis[from..=to]);
    let raw = axes.map(|axis| along(record, axis));
    zero_phase(fc, raw.each_ref().map(Vec::as_slice)).map(|mut signal| {
        signal.truncate(window.k1 - from + 1);
        signal.drain(..window.k0 - from);
        detrend(&mut signal);
        signal
    })
}
