//! The figures of one trial.

mod ellipse;
mod extent;
mod fourier;
mod jerk;
mod spectrum;

pub use spectrum::Spectrum;

use super::{
    axes::Axes,
    grid::Grid,
    parameters::{FC_EVENT, FC_SWAY, G0, MIN_SPECTRAL_S},
    plane::{Plane, components, plane},
    window::Window,
};

/// The figures of a window with `n` points and T = `duration_s`; x = ML and y = AP, low-passed at 3.5 Hz.
///
/// `None` means "not reported": front and side not identified, too short for spectra, steps too coarse, or not defined for
/// the signal. An integrated velocity (wrong by a factor of about two, because it integrates the tilt) and the ellipse of
/// the mean (which shrinks with the number of samples) are never computed.
#[derive(Debug, Clone, Copy, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Measures {
    /// Number of grid points.
    pub n: usize,
    /// (n - 1)/100, s.
    pub duration_s: f64,
    /// Whether ML and AP really mean side and front.
    pub axes_identified: bool,
    /// sqrt(mean x^2), m/s2.
    pub rms_ml: Option<f64>,
    /// sqrt(mean y^2), m/s2.
    pub rms_ap: Option<f64>,
    /// Root mean square of the vertical component, m/s2.
    pub rms_v: f64,
    /// sqrt(rms_ml^2 + rms_ap^2), m/s2.
    pub rms_planar: f64,
    /// Mean of sqrt(x^2 + y^2), m/s2.
    pub mean_dist: f64,
    /// Largest minus smallest x, m/s2.
    pub range_ml: Option<f64>,
    /// Largest minus smallest y, m/s2.
    pub range_ap: Option<f64>,
    /// Sum of sqrt(dx^2 + dy^2), m/s2.
    pub path: f64,
    /// path/T, m/s3.
    pub path_per_s: f64,
    /// Half the integral of x'^2 + y'^2, m2/s5 (Mancini 2012, J Neuroeng Rehabil 9:59).
    pub jerk: Option<f64>,
    /// jerk/T, m2/s6: does not depend on the duration.
    pub jerk_per_s: Option<f64>,
    /// sqrt(T^5/2 integral x'^2), m; comparable only at equal T (Sensors 2019;19:2227).
    pub njs_ml: Option<f64>,
    /// sqrt(T^5/2 integral y'^2), m.
    pub njs_ap: Option<f64>,
    /// -ln(T/peak^2 integral of x'^2 + y'^2), peak = largest distance from the mean (log dimensionless jerk of an
    /// acceleration: Melendez-Calderon 2021, Front Bioeng Biotechnol 8:558771).
    pub ldlj_a: Option<f64>,
    /// sqrt(integral of x'^2 + y'^2 / T)/rms_planar, 1/s.
    pub jerk_over_rms: Option<f64>,
    /// 95 % ellipse by chi squared, m2/s4.
    pub ell_chi2: f64,
    /// 95 % prediction ellipse (Schubert & Kirchner 2014, Gait Posture 39:518-522), m2/s4.
    #[cfg_attr(feature = "serde", serde(rename = "ell_pred_F"))]
    pub ell_pred_f: f64,
    /// 2 pi F sqrt(det C) (Prieto 1996, IEEE Trans Biomed Eng 43:956-966), m2/s4.
    #[cfg_attr(feature = "serde", serde(rename = "ell_prieto_F"))]
    pub ell_prieto_f: f64,
    /// Spectrum of x; `None` below 15 s or where ML is not identified.
    pub spectrum_ml: Option<Spectrum>,
    /// Spectrum of y; `None` as for x.
    pub spectrum_ap: Option<Spectrum>,
    /// Sum of both spectra; `None` below 15 s.
    pub spectrum_pl: Option<Spectrum>,
}

impl Measures {
    /// The figures that may be reported from a sensor with coarse steps: without jerk in all its forms, and without cf and f95,
    /// because the steps raise them by tens of percent.
    pub fn from_coarse_steps(self) -> Measures {
        let dull = |spectrum: Option<Spectrum>| spectrum.map(|known| Spectrum { cf: None, f95: None, ..known });
        Measures {
            jerk: None,
            jerk_per_s: None,
            njs_ml: None,
            njs_ap: None,
            ldlj_a: None,
            jerk_over_rms: None,
            spectrum_ml: dull(self.spectrum_ml),
            spectrum_ap: dull(self.spectrum_ap),
            spectrum_pl: dull(self.spectrum_pl),
            ..self
        }
    }

    /// Whether all figures that are never optional are finite.
    pub(crate) fn finite(&self) -> bool {
        let always = [
            self.rms_v,
            self.rms_planar,
            self.mean_dist,
            self.path,
            self.path_per_s,
            self.ell_chi2,
            self.ell_pred_f,
            self.ell_prieto_f,
        ];
        always.iter().all(|figure| figure.is_finite())
    }
}

/// Converts an acceleration from m/s2 to thousandths of standard gravity.
pub fn milli_g(acceleration: f64) -> f64 {
    acceleration / G0 * 1000.0
}

/// All figures of a window, before any are removed because of coarse steps.
pub(crate) fn measure(grid: &Grid, window: &Window, axes: &Axes) -> (Measures, Plane) {
    let sway = plane(grid, window, axes, FC_SWAY);
    let time = of_plane(&sway, axes.identified);
    if time.duration_s < MIN_SPECTRAL_S {
        return (time, sway);
    }
    let [ml, ap] = components(grid, window, [axes.ml, axes.ap], FC_EVENT);
    let [ml, ap] = spectrum::densities([&ml, &ap]);
    let sum: Vec<f64> = ml.power.iter().zip(&ap.power).map(|(ml, ap)| ml + ap).collect();
    let one_axis = |of: &spectrum::Density| of.figures().filter(|_| axes.identified);
    let measures = Measures {
        spectrum_ml: one_axis(&ml),
        spectrum_ap: one_axis(&ap),
        spectrum_pl: spectrum::Density { power: sum, ..ml }.figures(),
        ..time
    };
    (measures, sway)
}

/// The time-domain figures of a plane that is already filtered and detrended.
fn of_plane(sway: &Plane, identified: bool) -> Measures {
    let (extent, jerk) = (extent::of(sway), jerk::of(sway));
    let ellipses = ellipse::of(sway);
    let per_axis = |figure: f64| identified.then_some(figure);
    let finite = |figure: f64| Some(figure).filter(|figure| figure.is_finite());
    let time = extent.duration_s;
    Measures {
        n: sway.ml.len(),
        duration_s: time,
        axes_identified: identified,
        rms_ml: per_axis(extent.rms_ml),
        rms_ap: per_axis(extent.rms_ap),
        rms_v: extent.rms_v,
        rms_planar: extent.rms_planar,
        mean_dist: extent.mean_dist,
        range_ml: per_axis(extent.range_ml),
        range_ap: per_axis(extent.range_ap),
        path: extent.path,
        path_per_s: extent.path / time,
        jerk: finite(jerk.planar() / 2.0),
        jerk_per_s: finite(jerk.planar() / 2.0 / time),
        njs_ml: per_axis(jerk::normalised(jerk.ml, time)).and_then(finite),
        njs_ap: per_axis(jerk::normalised(jerk.ap, time)).and_then(finite),
        ldlj_a: finite(jerk::log_dimensionless(jerk.planar(), time, extent.peak)),
        jerk_over_rms: finite(libm::sqrt(jerk.planar() / time) / extent.rms_planar),
        ell_chi2: ellipses.chi2,
        ell_pred_f: ellipses.pred_f,
        ell_prieto_f: ellipses.prieto_f,
        spectrum_ml: None,
        spectrum_ap: None,
        spectrum_pl: None,
    }
}

/// Root mean square along the narrower principal direction, m/s2. Coarse steps hide this first, whichever way the phone was turned.
pub(crate) fn narrowest_rms(measures: &Measures, sway: &Plane) -> f64 {
    match (measures.rms_ml, measures.rms_ap) {
        (Some(ml), Some(ap)) => ml.min(ap),
        _ => ellipse::narrower_sd(sway),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn plane_of(x: impl Fn(f64) -> f64, y: impl Fn(f64) -> f64) -> Plane {
        let signal = |f: &dyn Fn(f64) -> f64| (0..1500).map(|k| f(f64::from(k) / 100.0)).collect();
        Plane { ml: signal(&x), ap: signal(&y), up: vec![0.01; 1500] }
    }

    fn wave(size: f64, hz: f64) -> impl Fn(f64) -> f64 {
        move |t| size * libm::sin(2.0 * core::f64::consts::PI * hz * t + 0.3)
    }

    #[test]
    fn twice_the_sway_doubles_lengths_and_quadruples_squares() {
        let once = of_plane(&plane_of(wave(0.2, 0.7), wave(0.1, 1.1)), true);
        let twice = of_plane(&plane_of(wave(0.4, 0.7), wave(0.2, 1.1)), true);
        let ratio = |of: &dyn Fn(&Measures) -> f64| of(&twice) / of(&once);
        assert_eq!(ratio(&|m| m.rms_planar), 2.0);
        assert_eq!(ratio(&|m| m.path_per_s), 2.0);
        assert_eq!(ratio(&|m| m.jerk_per_s.expect("a wave")), 4.0);
        assert_eq!(ratio(&|m| m.ell_chi2), 4.0);
        assert_eq!(ratio(&|m| m.ldlj_a.expect("a wave")), 1.0);
    }

    #[test]
    fn a_signal_without_movement_has_no_jerk_ratio() {
        let still = of_plane(&plane_of(|_| 0.0, |_| 0.0), true);
        assert_eq!((still.rms_planar, still.jerk), (0.0, Some(0.0)));
        assert_eq!((still.ldlj_a, still.jerk_over_rms), (None, None));
    }

    #[test]
    fn without_axes_only_what_does_not_depend_on_them_is_left() {
        let got = of_plane(&plane_of(wave(0.2, 0.7), wave(0.1, 1.1)), false);
        let per_axis = [got.rms_ml, got.rms_ap, got.range_ml, got.range_ap, got.njs_ml, got.njs_ap];
        assert_eq!(per_axis, [None; 6]);
        assert!(got.rms_planar > 0.15 && got.jerk.is_some());
    }

    #[test]
    fn a_thousandth_of_gravity() {
        assert_eq!(milli_g(9.80665), 1000.0);
    }
}
