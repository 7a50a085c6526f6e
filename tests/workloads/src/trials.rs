//! Balance trials: the three of the reference, and one of a minute.

use core::f64::consts::TAU;
use exercises::sway::{Analysis, Marks, Sample, Source, analyse};

const STABLE: &str = include_str!("../../../exercises/tests/data/sway/a_stable_native100.csv");
const TOUCH_DOWNS: &str = include_str!("../../../exercises/tests/data/sway/b_touchdowns_web60.csv");
const COARSE: &str = include_str!("../../../exercises/tests/data/sway/c_coarse_gap_landscape.csv");

/// The three trials of the reference: name, samples, taps in seconds.
pub(crate) fn reference() -> [(&'static str, Vec<Sample>, Vec<f64>); 3] {
    let samples = |csv: &str| format::motion::read(csv.as_bytes()).expect("the reference's files are sound");
    [
        ("a_stable_native100", samples(STABLE), Vec::new()),
        ("b_touchdowns_web60", samples(TOUCH_DOWNS), vec![14.85]),
        ("c_coarse_gap_landscape", samples(COARSE), Vec::new()),
    ]
}

/// The analysis of a trial with its taps.
pub(crate) fn analysed(samples: &[Sample], taps_s: &[f64]) -> Analysis {
    analyse(samples, &Marks { taps_s: taps_s.to_vec(), ..Marks::between(0.0, 30.0) }, &Source::file())
}

/// A minute at 100 per second: sway of an inverted pendulum as a sum of slow waves, breath, heart beat, a sensor's noise,
/// and one knock of a foot at 41 s.
pub fn minute() -> Vec<Sample> {
    let mut noise = Noise(0x2545_F491_4F6C_DD1D);
    (0..=6000).map(|k| sample(f64::from(k) / 100.0, &mut noise)).collect()
}

/// The trial of [`minute`] in the form that the program reads.
pub fn minute_csv() -> String {
    let row = |sample: Sample| format!("{},{},{},{}\n", sample.t_s, sample.a[0], sample.a[1], sample.a[2]);
    format!("{}\n{}", format::motion::HEADER, minute().into_iter().map(row).collect::<String>())
}

fn sample(t: f64, noise: &mut Noise) -> Sample {
    let wave = |size: f64, hz: f64, turn: f64| size * libm::sin(TAU * hz * t + turn);
    let side = wave(0.16, 0.31, 0.4) + wave(0.09, 0.83, 1.9) + wave(0.05, 1.7, 2.2) + wave(0.02, 3.1, 0.7);
    let front = wave(0.14, 0.23, 2.8) + wave(0.08, 0.71, 0.1) + wave(0.04, 1.9, 1.3) + wave(0.02, 2.7, 3.0);
    let up = 9.80665 + wave(0.03, 0.25, 0.0) + wave(0.06, 8.0, 1.1);
    let after = (t - 41.0).max(0.0);
    let knock = 1.5 * libm::exp(-after / 0.08) * libm::sin(45.0 * after);
    let jitter = 0.0004 * noise.next();
    Sample {
        t_s: t + jitter,
        a: [side + 0.02 * noise.next(), up + knock + 0.02 * noise.next(), front + 1.2 + 0.02 * noise.next()],
    }
}

/// Numbers from -1 to 1 that look like noise and are the same in every run (xorshift; Marsaglia 2003, J Stat Softw 8:14).
struct Noise(u64);

impl Noise {
    fn next(&mut self) -> f64 {
        self.0 ^= self.0 << 13;
        self.0 ^= self.0 >> 7;
        self.0 ^= self.0 << 17;
        (self.0 >> 11) as f64 / (1u64 << 52) as f64 - 1.0
    }
}
