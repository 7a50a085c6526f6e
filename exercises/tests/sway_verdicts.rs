//! Every reason for having no figures, and every flag, on complete trials.

use exercises::sway::{
    Analysis, Figures, Flag, LiveTrace, Marks, Os, Reason, Sample, Screen, SetUp, Source, SourceFault, SourceKind, analyse,
    parameters, printed, provisional_touch_down, samples_around,
};

const A: &str = include_str!("data/sway/a_stable_native100.csv");
const B: &str = include_str!("data/sway/b_touchdowns_web60.csv");

fn samples(csv: &str) -> Vec<Sample> {
    let row = |line: &str| -> Vec<f64> { line.split(',').map(|cell| cell.parse().expect("a number")).collect() };
    csv.lines().skip(1).map(row).map(|cells| Sample { t_s: cells[0], a: [cells[1], cells[2], cells[3]] }).collect()
}

fn changed(change: impl Fn(&Sample) -> Option<Sample>) -> Analysis {
    let samples: Vec<Sample> = samples(A).iter().filter_map(change).collect();
    analyse(&samples, &Marks::between(0.0, 30.0), &Source::file())
}

fn with(source: Source) -> Analysis {
    analyse(&samples(A), &Marks::between(0.0, 30.0), &source)
}

/// A rotation about the device's x axis by an angle that grows with time.
fn turning(degrees_at_end: f64) -> Analysis {
    changed(move |sample| {
        let turn = (degrees_at_end * sample.t_s / 30.0).to_radians();
        let (sin, cos) = (libm::sin(turn), libm::cos(turn));
        let [x, y, z] = sample.a;
        Some(Sample { a: [x, y * cos - z * sin, y * sin + z * cos], ..*sample })
    })
}

#[test]
fn a_good_trial_has_neither_flags_nor_reasons() {
    let got = changed(|sample| Some(*sample));
    assert!(got.flags.is_empty() && got.reasons().is_empty() && got.measures().is_some());
    assert_eq!(got.quality.dropped, 0);
}

#[test]
fn no_samples_and_unusable_samples() {
    assert_eq!(changed(|_| None).reasons(), [Reason::NoSensor]);
    assert_eq!(changed(|sample| Some(Sample { t_s: f64::NAN, ..*sample })).reasons(), [Reason::NoSensor]);
    let one = changed(|sample| (sample.t_s < 0.005).then_some(*sample));
    assert_eq!(one.reasons(), [Reason::RateTooLow, Reason::TooMuchMissing, Reason::WindowTooShort]);
    assert_eq!(one.hold.expect("sound marks").seconds, 30.0);
}

#[test]
fn a_slow_sensor() {
    let every = |n: i64| changed(move |sample| ((sample.t_s * 100.0).round() as i64 % n == 0).then_some(*sample));
    assert_eq!(every(4).reasons(), [Reason::RateTooLow]);
    let slow = every(3);
    assert!(slow.measures().is_some() && slow.detection.is_none());
    assert_eq!(slow.flags, vec![Flag::NoDetection]);
}

#[test]
fn missing_parts() {
    let without = |from: f64, to: f64| changed(move |sample| (sample.t_s < from || sample.t_s > to).then_some(*sample));
    assert_eq!(without(10.0, 10.15).flags, vec![Flag::Gap]);
    assert!(!without(10.0, 10.15).hold.expect("sound marks").gap);
    let split = without(10.0, 10.5);
    assert!(split.hold.as_ref().expect("sound marks").gap);
    assert_eq!(split.window.map(|window| (window.k0, window.k1)), Some((1100, 2949)));
    assert_eq!(without(10.0, 12.0).reasons(), [Reason::TooMuchMissing]);
}

#[test]
fn a_sensor_that_repeats_its_values() {
    let got = changed(|sample| {
        let held = sample.t_s > 10.0 && sample.t_s < 10.7;
        Some(if held { Sample { a: [0.0, 9.7, -1.7], ..*sample } } else { *sample })
    });
    assert_eq!(got.reasons(), [Reason::SensorStalled]);
}

#[test]
fn another_unit() {
    let got = changed(|sample| Some(Sample { a: sample.a.map(|axis| axis / 9.80665), ..*sample }));
    assert_eq!(got.reasons(), [Reason::GravityImplausible]);
    let in_milliseconds = changed(|sample| Some(Sample { t_s: sample.t_s * 1000.0, ..*sample }));
    assert_eq!(in_milliseconds.reasons(), [Reason::RecordTooLong]);
}

#[test]
fn a_phone_that_turns() {
    assert_eq!(turning(8.0).flags, vec![]);
    let some = turning(20.0);
    assert_eq!((some.flags.as_slice(), some.reasons()), (&[Flag::PhoneMoved][..], &[][..]));
    let much = turning(40.0);
    assert_eq!((much.flags.as_slice(), much.reasons()), (&[Flag::PhoneMoved][..], &[Reason::PhoneMoved][..]));
}

#[test]
fn a_phone_that_lies_flat_has_planar_figures_only() {
    let got = changed(|sample| Some(Sample { a: [sample.a[0], -sample.a[2], sample.a[1]], ..*sample }));
    assert_eq!(got.flags, vec![Flag::MlApNotIdentified]);
    let measures = got.measures().expect("measured");
    assert_eq!((measures.rms_ml, measures.njs_ap, measures.spectrum_ml), (None, None, None));
    assert!(measures.spectrum_pl.is_some());
    // The same movement as with an upright phone, within the difference that the two axes' tilt makes.
    let upright = changed(|sample| Some(*sample));
    let want = upright.measures().expect("measured").rms_planar;
    assert!((measures.rms_planar - want).abs() < 1e-9 * want);
}

#[test]
fn coarse_steps_hide_a_very_quiet_stance() {
    let rounded = |size: f64| {
        changed(move |sample| {
            let mean = [-0.72, 9.66, -1.83];
            let a = [0, 1, 2].map(|axis| {
                let value = mean[axis] + size * (sample.a[axis] - mean[axis]);
                (value * 10.0).round() / 10.0
            });
            Some(Sample { a, ..*sample })
        })
    };
    let plain = rounded(1.0);
    assert_eq!(plain.flags, vec![Flag::CoarseQuantisation]);
    let measures = plain.measures().expect("measured");
    assert_eq!((measures.jerk, measures.jerk_per_s, measures.njs_ml), (None, None, None));
    assert_eq!((measures.ldlj_a, measures.jerk_over_rms), (None, None));
    let spectrum = measures.spectrum_pl.expect("28 s");
    assert_eq!((spectrum.cf, spectrum.f95), (None, None));
    assert!(plain.unsuppressed.expect("computed").jerk.is_some());
    let quiet = rounded(0.3);
    assert_eq!(quiet.reasons(), [Reason::SignalBelowResolution]);
}

#[test]
fn clipping_is_flagged() {
    let got = changed(|sample| {
        let knock = (sample.t_s - 10.0).abs() < 0.006;
        Some(if knock { Sample { a: [sample.a[0], 39.2, sample.a[2]], ..*sample } } else { *sample })
    });
    assert!(got.flags.contains(&Flag::PossibleClipping));
}

#[test]
fn faults_of_the_source_still_leave_the_hold_by_tap() {
    for (fault, reason) in [
        (SourceFault::Hidden, Reason::Hidden),
        (SourceFault::PermissionDenied, Reason::PermissionDenied),
        (SourceFault::NoSensor, Reason::NoSensor),
    ] {
        let source = Source { fault: Some(fault), ..Source::file() };
        let marks = Marks { taps_s: vec![12.0], ..Marks::between(0.0, 30.0) };
        let got = analyse(&[], &marks, &source);
        assert_eq!(got.reasons()[0], reason);
        assert_eq!(got.reasons().iter().filter(|one| **one == Reason::NoSensor).count(), 1);
        assert_eq!(got.hold.expect("sound marks").seconds, 11.5);
    }
    assert_eq!(with(Source { fault: Some(SourceFault::Hidden), ..Source::file() }).reasons(), [Reason::Hidden]);
}

#[test]
fn a_phone_on_the_support_times_the_hold_and_measures_nothing() {
    let marks = Marks { taps_s: vec![12.0], ..Marks::between(0.0, 30.0) };
    let got = analyse(&samples(B), &marks, &Source { set_up: SetUp::OnSupport, ..Source::file() });
    assert_eq!(got.figures, Figures::NotMeasured(vec![Reason::PhoneNotWorn]));
    assert_eq!((got.detection, got.hold.expect("sound marks").seconds), (None, 11.5));
}

#[test]
fn marks_out_of_order_give_no_hold() {
    let got = analyse(&samples(A), &Marks::between(30.0, 0.0), &Source::file());
    assert!(got.hold.is_none() && got.reasons().contains(&Reason::MarksInvalid));
    assert!(printed(&got).to_string().starts_with(r#"{"hold_s":null"#));
}

#[test]
fn too_long_and_too_many() {
    let slow = |k: u32| Sample { t_s: f64::from(k) / 60.0, a: [0.0, 9.8, 0.0] };
    let hour: Vec<Sample> = (0..60 * 3600).map(slow).collect();
    let got = analyse(&hour, &Marks::between(0.0, 3600.0), &Source::file());
    assert_eq!(got.reasons(), [Reason::RecordTooLong]);
    let many = vec![Sample { t_s: 0.0, a: [0.0; 3] }; parameters::MAX_SAMPLES + 1];
    assert_eq!(analyse(&many, &Marks::between(0.0, 30.0), &Source::file()).reasons(), [Reason::RecordTooLong]);
    let ends = [Sample { t_s: -1e300, a: [0.0; 3] }, Sample { t_s: 1e300, a: [0.0; 3] }];
    assert_eq!(analyse(&ends, &Marks::between(0.0, 30.0), &Source::file()).reasons(), [Reason::RecordTooLong]);
}

#[test]
fn rows_out_of_order_and_repeated_are_dropped_and_counted() {
    let sound = samples(A);
    let mut rows = sound.clone();
    rows.insert(500, rows[100]);
    rows.insert(1000, rows[999]);
    rows.insert(1500, Sample { t_s: rows[1499].t_s + 1e-5, a: [f64::INFINITY, 0.0, 0.0] });
    let got = analyse(&rows, &Marks::between(0.0, 30.0), &Source::file());
    assert_eq!(got.quality.dropped, 3);
    assert_eq!(got.measures(), with(Source::file()).measures());
}

#[test]
fn a_touch_down_is_announced_only_when_its_evidence_is_complete() {
    let all = samples(B);
    let up_to = |t: f64| all.iter().copied().filter(|sample| sample.t_s <= t).collect::<Vec<_>>();
    let announced = |t: f64| provisional_touch_down(&up_to(t), 0.0, &Source::file());
    assert_eq!(announced(14.2), None);
    assert_eq!(announced(14.2768 + 1.1), None);
    let got = announced(14.2768 + 1.25).expect("the first touch-down");
    assert!((got.t_s - 14.2768).abs() < 0.05, "{got:?}");
    let resting = Source { set_up: SetUp::OnSupport, ..Source::file() };
    assert_eq!(provisional_touch_down(&all, 0.0, &resting), None);
    assert_eq!(provisional_touch_down(&[], 0.0, &Source::file()), None);
    assert_eq!(provisional_touch_down(&samples(A), 0.0, &Source::file()), None);
}

#[test]
fn a_quiet_trial_is_drawn_and_its_trace_stays_near_the_middle() {
    let mut trace = LiveTrace::new(Screen::Away);
    let points: Vec<_> = samples(A).into_iter().filter_map(|sample| trace.push(sample)).collect();
    assert!(points.len() > 2000);
    assert!(points.iter().all(|point| point.left.abs() < 2.0 && point.front.abs() < 2.0));
}

#[test]
fn the_seconds_around_an_event_can_be_kept() {
    let kept = samples_around(&samples(B), 14.2768, 2.0);
    assert!(kept.len() > 230 && kept.iter().all(|sample| (sample.t_s - 14.2768).abs() <= 2.0));
}

#[test]
fn a_known_range_counts_for_the_native_source_only() {
    let near = |kind| Source { kind, os: Os::Android, range_ms2: Some(9.9), ..Source::file() };
    assert_eq!(with(near(SourceKind::Native)).flags, vec![Flag::PossibleClipping]);
    assert_eq!(with(near(SourceKind::Web)).flags, vec![]);
}

/// Functions that platforms round differently come from `libm`, on every platform.
#[test]
fn no_rounding_is_left_to_the_platform() {
    let here = std::path::Path::new(env!("CARGO_MANIFEST_DIR")).join("src");
    let mut seen = 0;
    for folder in ["sway", "statistics"] {
        let mut open = vec![here.join(folder)];
        while let Some(path) = open.pop() {
            if path.is_dir() {
                open.extend(std::fs::read_dir(&path).expect("a folder").map(|entry| entry.expect("an entry").path()));
                continue;
            }
            let text = std::fs::read_to_string(&path).expect("a source file");
            for call in [
                ".sin()",
                ".cos()",
                ".tan()",
                ".ln()",
                ".exp()",
                ".powf(",
                ".powi(",
                ".atan2(",
                ".acos()",
                ".hypot(",
                ".log10()",
                ".exp_m1()",
                ".ln_1p()",
                ".sin_cos()",
                ".cbrt()",
                ".mul_add(",
            ] {
                assert!(!text.contains(call), "{} calls {call}", path.display());
            }
            seen += 1;
        }
    }
    assert!(seen > 30, "only {seen} files were read");
}
