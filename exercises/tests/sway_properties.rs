//! Changes of the input that must not change a figure: the sign of all axes, the phone turned back to front or within its plane, the
//! origin of the clock. And no input may cause a panic.

use exercises::sway::{
    Analysis, AnsweredAt, Event, Marks, Os, Sample, Screen, SetUp, Source, SourceKind, TouchAnswer, analyse, printed,
    printed_measures,
};
use proptest::prelude::*;
use serde_json::Value;
use std::f64::consts::PI;

/// A generated trial: tilted gravity, slow sway in two directions, sensor noise, jitter, possibly a knock.
#[derive(Debug, Clone)]
struct Trial {
    seconds: f64,
    pitch: f64,
    roll: f64,
    waves: Vec<(f64, f64, f64)>,
    noise: f64,
    knock_at: Option<f64>,
    seed: u64,
}

fn a_trial() -> impl Strategy<Value = Trial> {
    let wave = (0.02..0.25f64, 0.2..3.0f64, 0.0..6.2f64);
    (
        12.0..22.0f64,
        -0.6..0.6f64,
        -0.6..0.6f64,
        proptest::collection::vec(wave, 2..6),
        0.005..0.05f64,
        proptest::option::of(4.0..10.0f64),
        1..u64::MAX,
    )
        .prop_map(|(seconds, pitch, roll, waves, noise, knock_at, seed)| Trial {
            seconds,
            pitch,
            roll,
            waves,
            noise,
            knock_at,
            seed,
        })
}

/// Numbers from -1 to 1, determined by a seed (xorshift).
fn numbers(seed: u64) -> impl FnMut() -> f64 {
    let mut state = seed;
    move || {
        state ^= state << 13;
        state ^= state >> 7;
        state ^= state << 17;
        (state >> 11) as f64 / (1u64 << 52) as f64 - 1.0
    }
}

impl Trial {
    fn samples(&self) -> Vec<Sample> {
        let mut number = numbers(self.seed);
        let count = (self.seconds * 100.0) as usize;
        (0..=count)
            .map(|k| {
                let t_s = k as f64 / 100.0 + 0.0004 * number();
                let noise = [0; 3].map(|_| self.noise * number());
                self.at(t_s, noise)
            })
            .collect()
    }

    fn at(&self, t_s: f64, noise: [f64; 3]) -> Sample {
        let sum = |odd: bool| -> f64 {
            let mine = self.waves.iter().enumerate().filter(|(place, _)| (place % 2 == 1) == odd);
            mine.map(|(_, (size, hz, phase))| size * libm::sin(2.0 * PI * hz * t_s + phase)).sum()
        };
        let after = self.knock_at.map_or(-1.0, |at| t_s - at);
        let knock = if after < 0.0 { 0.0 } else { 1.5 * libm::exp(-after / 0.08) * libm::sin(45.0 * after) };
        let [left, up, front] = [sum(false), 9.80665 + knock, sum(true) + if after > 0.0 { 0.5 } else { 0.0 }];
        let (sin_p, cos_p) = (libm::sin(self.pitch), libm::cos(self.pitch));
        let (sin_r, cos_r) = (libm::sin(self.roll), libm::cos(self.roll));
        let (y, z) = (up * cos_p - front * sin_p, up * sin_p + front * cos_p);
        let a = [left * cos_r - y * sin_r, left * sin_r + y * cos_r, z];
        Sample { t_s, a: [0, 1, 2].map(|axis| a[axis] + noise[axis]) }
    }

    fn analysed(&self, change: impl Fn(Sample) -> Sample, later_s: f64) -> Analysis {
        let samples: Vec<Sample> = self.samples().into_iter().map(change).collect();
        let marks = Marks::between(later_s, later_s + self.seconds);
        analyse(&samples, &marks, &Source::file())
    }
}

fn turned(angle: f64) -> impl Fn(Sample) -> Sample {
    let (sin, cos) = (libm::sin(angle), libm::cos(angle));
    move |Sample { t_s, a: [x, y, z] }| Sample { t_s, a: [x * cos - y * sin, x * sin + y * cos, z] }
}

/// Largest relative difference of the detector's evidence. It is measured from the median of each axis, which turns exactly with the
/// phone only by quarter turns; in between, the evidence changes a little.
const BY_MEDIAN: f64 = 0.02;

/// The verdicts are the same, and the figures agree within a relative error of 1e-9.
fn agree(one: &Analysis, other: &Analysis, later_s: f64) -> Result<(), TestCaseError> {
    agree_but_for_events(one, other)?;
    agree_in_events(one, other, later_s, 1e-9)
}

fn agree_but_for_events(one: &Analysis, other: &Analysis) -> Result<(), TestCaseError> {
    let window = |of: &Analysis| of.window.map(|window| (window.k0, window.k1));
    prop_assert_eq!(window(one), window(other));
    prop_assert_eq!(&one.flags, &other.flags);
    prop_assert_eq!(one.reasons(), other.reasons());
    let figures = |of: &Analysis| -> Option<Value> {
        let printed = of.measures().map(printed_measures)?;
        Some(serde_json::from_str(&printed.to_string()).expect("JSON"))
    };
    if let (Some(one), Some(other)) = (figures(one), figures(other)) {
        for (key, value) in one.as_object().expect("a map") {
            close(key, value.as_f64(), other[key].as_f64(), 1e-9)?;
        }
    }
    Ok(())
}

fn agree_in_events(one: &Analysis, other: &Analysis, later_s: f64, rel: f64) -> Result<(), TestCaseError> {
    let events = |of: &Analysis| -> Vec<Event> { of.detection.iter().flat_map(|found| found.events.clone()).collect() };
    prop_assert_eq!(events(one).len(), events(other).len());
    for (one, other) in events(one).iter().zip(events(other)) {
        prop_assert_eq!(one.class, other.class);
        prop_assert!((other.t_s - one.t_s - later_s).abs() < 0.01);
        close("p2p", Some(one.p2p), Some(other.p2p), rel)?;
        close("shift", Some(one.shift), Some(other.shift), rel)?;
    }
    Ok(())
}

fn close(what: &str, one: Option<f64>, other: Option<f64>, rel: f64) -> Result<(), TestCaseError> {
    let near = match (one, other) {
        (Some(one), Some(other)) => (one - other).abs() <= (rel * one.abs()).max(1e-12),
        (one, other) => one == other,
    };
    prop_assert!(near, "{}: {:?} is not {:?}", what, one, other);
    Ok(())
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(24))]

    #[test]
    fn all_axes_negated(trial in a_trial()) {
        let plain = trial.analysed(|sample| sample, 0.0);
        let negated = trial.analysed(|Sample { t_s, a }| Sample { t_s, a: a.map(|axis| -axis) }, 0.0);
        prop_assert_eq!(plain, negated);
    }

    #[test]
    fn the_phone_turned_back_to_front(trial in a_trial()) {
        let plain = trial.analysed(|sample| sample, 0.0);
        let back = trial.analysed(|Sample { t_s, a: [x, y, z] }| Sample { t_s, a: [-x, y, -z] }, 0.0);
        prop_assert_eq!(plain, back);
    }

    #[test]
    fn the_phone_turned_within_its_plane(trial in a_trial(), angle in -3.2..3.2f64) {
        let plain = trial.analysed(|sample| sample, 0.0);
        let quarter = |Sample { t_s, a: [x, y, z] }: Sample| Sample { t_s, a: [-y, x, z] };
        agree(&plain, &trial.analysed(quarter, 0.0), 0.0)?;
        let other = trial.analysed(turned(angle), 0.0);
        agree_but_for_events(&plain, &other)?;
        agree_in_events(&plain, &other, 0.0, BY_MEDIAN)?;
    }

    #[test]
    fn another_origin_of_the_clock(trial in a_trial(), later_s in 1.0..2000.0f64) {
        let plain = trial.analysed(|sample| sample, 0.0);
        let later = trial.analysed(|sample| Sample { t_s: sample.t_s + later_s, ..sample }, later_s);
        agree(&plain, &later, later_s)?;
    }

    #[test]
    fn a_phone_that_lies_flat_has_planar_figures_that_do_not_depend_on_its_direction(trial in a_trial(), angle in -3.2..3.2f64) {
        let flat = |sample: Sample| Sample { a: [sample.a[0], sample.a[2], sample.a[1]], ..sample };
        let plain = trial.analysed(flat, 0.0);
        let spun = turned(angle);
        let other = trial.analysed(|sample| spun(flat(sample)), 0.0);
        agree_but_for_events(&plain, &other)?;
        agree_in_events(&plain, &other, 0.0, BY_MEDIAN)?;
    }
}

fn any_source() -> impl Strategy<Value = Source> {
    (0..3usize, 0..3usize, proptest::option::of(any::<f64>())).prop_map(|(kind, set_up, range_ms2)| Source {
        kind: [SourceKind::Native, SourceKind::Web, SourceKind::File][kind],
        os: Os::Other,
        sign_flipped: false,
        set_up: SetUp::ALL[set_up],
        screen: Screen::Away,
        range_ms2,
        fault: None,
    })
}

fn a_number() -> impl Strategy<Value = f64> {
    prop_oneof![any::<f64>(), -20.0..20.0f64, Just(f64::NAN), Just(f64::INFINITY), Just(f64::MAX), Just(0.0),]
}

proptest! {
    #[test]
    fn hostile_rows_get_a_verdict(
        rows in proptest::collection::vec((a_number(), a_number(), a_number(), a_number()), 0..60),
        on in a_number(), off in a_number(), taps_s in proptest::collection::vec(a_number(), 0..5),
        said in proptest::collection::vec(a_number(), 0..3), source in any_source(),
    ) {
        let samples: Vec<Sample> = rows.iter().map(|&(t_s, x, y, z)| Sample { t_s, a: [x, y, z] }).collect();
        let answers = said.into_iter().map(|t_s| AnsweredAt { t_s, answer: TouchAnswer::Yes }).collect();
        let marks = Marks { t_on_s: on, t_off_s: off, taps_s, answers };
        let got = analyse(&samples, &marks, &source);
        prop_assert!(got.measures().is_some() == got.reasons().is_empty());
        let text = printed(&got).to_string();
        prop_assert!(serde_json::from_str::<Value>(&text).is_ok(), "{}", text);
        if let Some(hold) = got.hold {
            prop_assert!(hold.seconds >= 0.0 && hold.seconds <= off - on);
        }
    }

    #[test]
    fn hostile_values_on_a_sound_clock_get_a_verdict(values in proptest::collection::vec(a_number(), 1..40), trial in a_trial()) {
        let mut samples = trial.samples();
        let count = samples.len();
        for (place, value) in values.iter().enumerate() {
            samples[(place * 7919) % count].a[place % 3] = *value;
        }
        let got = analyse(&samples, &Marks::between(0.0, trial.seconds), &Source::file());
        if let Some(measures) = got.measures() {
            let text = printed_measures(measures).to_string();
            prop_assert!(!text.contains("NaN") && !text.contains("inf"));
            prop_assert!(measures.rms_planar.is_finite() && measures.path.is_finite());
        }
    }
}
