//! The input: samples, and the marks of the trial.

/// One reading of the accelerometer, gravity included.
#[derive(Debug, Clone, Copy, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Sample {
    /// Monotonic time of the reading, s, from any origin.
    pub t_s: f64,
    /// Specific force along the device's axes, m/s2: x to the right of the screen, y to its top, z out of it; a phone
    /// that lies flat, screen up, reads (0, 0, +9.8).
    pub a: [f64; 3],
}

/// What the patient answered about one moment.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
#[cfg_attr(feature = "serde", serde(rename_all = "snake_case"))]
pub enum TouchAnswer {
    /// The foot touched.
    Yes,
    /// The foot did not touch.
    No,
    /// The patient is not sure.
    Unsure,
    /// The question was not asked, or not answered yet.
    NotAsked,
}

/// An answer and the moment it belongs to.
#[derive(Debug, Clone, Copy, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct AnsweredAt {
    /// Time of the event that was asked about, or the time that the patient gave, s on the samples' clock.
    pub t_s: f64,
    /// The answer.
    pub answer: TouchAnswer,
}

/// The marks of one trial, all on the samples' clock.
#[derive(Debug, Clone, PartialEq, Default)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Marks {
    /// The start tone, s.
    pub t_on_s: f64,
    /// The planned end or the end of the recording, whichever came first, s.
    pub t_off_s: f64,
    /// Every touch of the screen (or a key where there is one) while the trial ran, s.
    pub taps_s: Vec<f64>,
    /// Answers given afterwards. Empty at the first analysis; analysing again with answers moves the end of the hold.
    pub answers: Vec<AnsweredAt>,
}

impl Marks {
    /// The marks of a trial without taps.
    pub fn between(t_on_s: f64, t_off_s: f64) -> Marks {
        Marks { t_on_s, t_off_s, ..Marks::default() }
    }

    /// Whether the marks bound a stretch of time: both finite and in order.
    pub(crate) fn sound(&self) -> bool {
        self.t_on_s.is_finite() && self.t_off_s.is_finite() && self.t_on_s < self.t_off_s
    }

    /// The taps from the start tone on, in order of time. A tap before the tone does not end the hold.
    pub(crate) fn taps_in_order(&self) -> Vec<f64> {
        let sound = |tap: &f64| tap.is_finite() && *tap >= self.t_on_s;
        let mut taps: Vec<f64> = self.taps_s.iter().copied().filter(sound).collect();
        taps.sort_by(f64::total_cmp);
        taps
    }
}

/// The raw samples within `reach_s` seconds of a moment, which are logged with an event.
pub fn samples_around(samples: &[Sample], t_s: f64, reach_s: f64) -> Vec<Sample> {
    samples.iter().copied().filter(|sample| (sample.t_s - t_s).abs() <= reach_s).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn touches_are_ordered_and_those_before_the_tone_left_out() {
        let marks = Marks { taps_s: vec![9.0, f64::NAN, 1.0, 3.0, f64::INFINITY], ..Marks::between(2.0, 30.0) };
        assert_eq!(marks.taps_in_order(), vec![3.0, 9.0]);
    }

    #[test]
    fn marks_that_bound_no_stretch_of_time() {
        assert!(Marks::between(0.0, 30.0).sound());
        for (on, off) in [(5.0, 5.0), (6.0, 5.0), (f64::NAN, 5.0), (0.0, f64::INFINITY)] {
            assert!(!Marks::between(on, off).sound());
        }
    }

    #[test]
    fn two_seconds_around_a_moment() {
        let samples: Vec<Sample> = (0..10).map(|k| Sample { t_s: f64::from(k), a: [0.0; 3] }).collect();
        let near = samples_around(&samples, 4.0, 2.0);
        assert_eq!(near.iter().map(|sample| sample.t_s).collect::<Vec<_>>(), [2.0, 3.0, 4.0, 5.0, 6.0]);
    }
}
