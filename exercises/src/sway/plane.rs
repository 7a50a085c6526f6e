//! The window's signal, filtered, cut and detrended, along ML, AP and up.

use super::{
    axes::{Axes, along},
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

/// Low-passed at `fc` with half a second more on each side, as far as the record goes.
pub(crate) fn plane(grid: &Grid, window: &Window, axes: &Axes, fc: f64) -> Plane {
    let from = window.k0.saturating_sub(PAD);
    let to = (window.k1 + PAD).min(grid.len() - 1);
    let [x, y, z] = &grid.axes;
    let filtered = zero_phase(fc, [&x[from..=to], &y[from..=to], &z[from..=to]]);
    let cut = filtered.map(|axis| axis[window.k0 - from..=window.k1 - from].to_vec());
    let component = |axis: [f64; 3]| {
        let mut signal = along(&cut, axis);
        detrend(&mut signal);
        signal
    };
    Plane { ml: component(axes.ml), ap: component(axes.ap), up: component(axes.up) }
}
