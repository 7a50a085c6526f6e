//! The printed form of a trial: an ordered tree of keys and values, the same in window, on paper and in the terminal.
//!
//! The keys are part of "sway/1". What is not measured or not reported is null, never a number.

use super::{
    analysis::Analysis,
    detection::{Detection, Event},
    hold::Hold,
    measures::{Measures, Spectrum},
    quality::Quality,
    verdict::{Flag, Reason},
    window::Window,
};
use std::fmt::{self, Write};

/// A value of the printed form. Its [`Display`](fmt::Display) is JSON on one line.
#[derive(Debug, Clone, PartialEq)]
pub enum Printed {
    /// Not measured, or not reported.
    Null,
    /// Yes or no.
    Bool(bool),
    /// A count.
    Count(usize),
    /// A figure; printed as null if it is not finite.
    Number(f64),
    /// One of the fixed names.
    Text(&'static str),
    /// Several values.
    List(Vec<Printed>),
    /// Named values, in order.
    Map(Vec<(&'static str, Printed)>),
}

impl Printed {
    /// The value of a key, if this is a map that has it.
    pub fn get(&self, key: &str) -> Option<&Printed> {
        let Printed::Map(entries) = self else {
            return None;
        };
        entries.iter().find(|(name, _)| *name == key).map(|(_, value)| value)
    }
}

/// The printed form of a whole trial.
pub fn printed(analysis: &Analysis) -> Printed {
    let of_hold = |value: fn(&Hold) -> Printed| analysis.hold.as_ref().map_or(Printed::Null, value);
    let detection = analysis.detection.as_ref();
    let window = analysis.window.as_ref();
    Printed::Map(vec![
        ("hold_s", of_hold(|hold| Printed::Number(hold.seconds))),
        ("hold_censored", of_hold(|hold| Printed::Bool(hold.censored))),
        ("detection", detection.map_or(Printed::Null, printed_detection)),
        ("hold_gap", of_hold(|hold| Printed::Bool(hold.gap))),
        ("ask_patient", of_hold(|hold| numbers(&hold.ask_s))),
        ("quality", printed_quality(&analysis.quality, &analysis.flags, analysis.reasons())),
        ("window", window.map_or(Printed::Null, printed_window)),
        ("measures", analysis.measures().map_or(Printed::Null, printed_measures)),
    ])
}

/// The printed form of the figures alone. Every key is always present.
pub fn printed_measures(of: &Measures) -> Printed {
    let mut entries = vec![
        ("n", Printed::Count(of.n)),
        ("duration_s", Printed::Number(of.duration_s)),
        ("axes_identified", Printed::Bool(of.axes_identified)),
        ("rms_ml", maybe(of.rms_ml)),
        ("rms_ap", maybe(of.rms_ap)),
        ("rms_v", Printed::Number(of.rms_v)),
        ("rms_planar", Printed::Number(of.rms_planar)),
        ("mean_dist", Printed::Number(of.mean_dist)),
        ("range_ml", maybe(of.range_ml)),
        ("range_ap", maybe(of.range_ap)),
        ("path", Printed::Number(of.path)),
        ("path_per_s", Printed::Number(of.path_per_s)),
        ("jerk", maybe(of.jerk)),
        ("jerk_per_s", maybe(of.jerk_per_s)),
        ("njs_ml", maybe(of.njs_ml)),
        ("njs_ap", maybe(of.njs_ap)),
        ("ldlj_a", maybe(of.ldlj_a)),
        ("jerk_over_rms", maybe(of.jerk_over_rms)),
        ("ell_chi2", Printed::Number(of.ell_chi2)),
        ("ell_pred_F", Printed::Number(of.ell_pred_f)),
        ("ell_prieto_F", Printed::Number(of.ell_prieto_f)),
    ];
    let names = [
        ["pwr_ml", "cf_ml", "f50_ml", "f95_ml", "fd_ml"],
        ["pwr_ap", "cf_ap", "f50_ap", "f95_ap", "fd_ap"],
        ["pwr_pl", "cf_pl", "f50_pl", "f95_pl", "fd_pl"],
    ];
    for (names, spectrum) in names.into_iter().zip([of.spectrum_ml, of.spectrum_ap, of.spectrum_pl]) {
        entries.extend(names.into_iter().zip(printed_spectrum(spectrum)));
    }
    Printed::Map(entries)
}

fn printed_spectrum(spectrum: Option<Spectrum>) -> [Printed; 5] {
    let of = |figure: fn(Spectrum) -> Option<f64>| maybe(spectrum.and_then(figure));
    [
        of(|known| Some(known.pwr)),
        of(|known| known.cf),
        of(|known| Some(known.f50)),
        of(|known| known.f95),
        of(|known| Some(known.fd)),
    ]
}

fn printed_detection(of: &Detection) -> Printed {
    Printed::Map(vec![
        ("events", Printed::List(of.events.iter().map(printed_event).collect())),
        ("unmatched_taps", numbers(&of.unmatched_taps_s)),
        ("thr_lo", Printed::Number(of.thr_lo)),
        ("thr_hi", Printed::Number(of.thr_hi)),
        ("p2p_median", Printed::Number(of.p2p_median)),
        ("p2p_mad", Printed::Number(of.p2p_mad)),
    ])
}

fn printed_event(of: &Event) -> Printed {
    Printed::Map(vec![
        ("t", Printed::Number(of.t_s)),
        ("p2p", Printed::Number(of.p2p)),
        ("pre", Printed::Number(of.pre)),
        ("shift", Printed::Number(of.shift)),
        ("support", Printed::Bool(of.support)),
        ("tap", maybe(of.tap_s)),
        ("cls", Printed::Text(of.class.code())),
    ])
}

fn printed_quality(of: &Quality, flags: &[Flag], reasons: &[Reason]) -> Printed {
    Printed::Map(vec![
        ("n_raw", Printed::Count(of.n_raw)),
        ("fs_est", maybe(of.fs_est)),
        ("jitter_p95", maybe(of.jitter_p95)),
        ("max_gap_s", maybe(of.max_gap_s)),
        ("missing_frac", maybe(of.missing_frac)),
        ("lsb", maybe(of.lsb)),
        ("coarse", Printed::Bool(of.coarse)),
        ("g_mean", maybe(of.g_mean)),
        ("max_abs", maybe(of.max_abs)),
        ("stall_s", Printed::Number(of.stall_s)),
        ("tilt_change_deg", maybe(of.tilt_change_deg)),
        ("flags", Printed::List(flags.iter().map(|flag| Printed::Text(flag.code())).collect())),
        ("not_measured", Printed::List(reasons.iter().map(|reason| Printed::Text(reason.code())).collect())),
    ])
}

fn printed_window(of: &Window) -> Printed {
    Printed::Map(vec![
        ("k0", Printed::Count(of.k0)),
        ("k1", Printed::Count(of.k1)),
        ("t0", Printed::Number(of.t0)),
        ("t1", Printed::Number(of.t1)),
    ])
}

fn maybe(figure: Option<f64>) -> Printed {
    figure.map_or(Printed::Null, Printed::Number)
}

fn numbers(of: &[f64]) -> Printed {
    Printed::List(of.iter().copied().map(Printed::Number).collect())
}

impl fmt::Display for Printed {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Printed::Null => f.write_str("null"),
            Printed::Bool(value) => write!(f, "{value}"),
            Printed::Count(value) => write!(f, "{value}"),
            // `{:?}` prints the shortest digits that read back as the same number.
            Printed::Number(value) if value.is_finite() => write!(f, "{value:?}"),
            Printed::Number(_) => f.write_str("null"),
            // The fixed names contain no character that JSON would have to escape.
            Printed::Text(value) => write!(f, "\"{value}\""),
            Printed::List(values) => joined(f, ('[', ']'), values, |f, value| write!(f, "{value}")),
            Printed::Map(entries) => joined(f, ('{', '}'), entries, |f, (key, value)| write!(f, "\"{key}\":{value}")),
        }
    }
}

fn joined<T>(
    f: &mut fmt::Formatter<'_>,
    (open, close): (char, char),
    items: &[T],
    one: impl Fn(&mut fmt::Formatter<'_>, &T) -> fmt::Result,
) -> fmt::Result {
    f.write_char(open)?;
    for (place, item) in items.iter().enumerate() {
        if place > 0 {
            f.write_char(',')?;
        }
        one(f, item)?;
    }
    f.write_char(close)
}

#[cfg(feature = "serde")]
impl serde::Serialize for Printed {
    fn serialize<S: serde::Serializer>(&self, to: S) -> Result<S::Ok, S::Error> {
        match self {
            Printed::Null => to.serialize_none(),
            Printed::Bool(value) => to.serialize_bool(*value),
            Printed::Count(value) => to.serialize_u64(*value as u64),
            Printed::Number(value) if value.is_finite() => to.serialize_f64(*value),
            Printed::Number(_) => to.serialize_none(),
            Printed::Text(value) => to.serialize_str(value),
            Printed::List(values) => to.collect_seq(values),
            Printed::Map(entries) => to.collect_map(entries.iter().map(|(key, value)| (key, value))),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn json_on_one_line() {
        let value = Printed::Map(vec![
            ("a", Printed::List(vec![Printed::Number(1e-7), Printed::Number(30.0), Printed::Count(2)])),
            ("b", Printed::Map(vec![])),
            ("c", Printed::Number(f64::NAN)),
            ("d", Printed::Text("gap")),
            ("e", Printed::Bool(true)),
            ("f", Printed::Null),
        ]);
        let text = value.to_string();
        assert_eq!(text, r#"{"a":[1e-7,30.0,2],"b":{},"c":null,"d":"gap","e":true,"f":null}"#);
        let read: serde_json::Value = serde_json::from_str(&text).expect("it is JSON");
        assert_eq!(read["a"][0], 1e-7);
        assert_eq!(value.get("d"), Some(&Printed::Text("gap")));
        assert_eq!(value.get("z"), None);
    }
}
