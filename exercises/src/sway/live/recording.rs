//! One trial while it is recorded: collects the samples and marks, says what to ask the patient, and produces the result.

use super::{Announcement, LiveTrace, TracePoint, provisional_touch_down};
use crate::sway::{
    analysis::{Analysis, analyse},
    parameters::MAX_SAMPLES,
    sample::{AnsweredAt, Marks, Sample, TouchAnswer},
    sensed::{Sensed, detail},
    set_up::AskAfter,
    source::{Source, SourceFault},
};

/// Time between two searches for a touch-down, s. Each search processes the whole record.
const LOOK_EVERY_S: f64 = 0.25;

/// A question to the patient after a trial.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum TrialQuestion {
    /// Whether the foot touched at this moment, s after the start tone.
    At(f64),
    /// Whether the foot touched at all; or at another moment, if some moments were already asked about.
    AtAll {
        /// Whether the question is about another moment.
        another: bool,
        /// Duration of the trial, s.
        within_s: f64,
    },
}

/// One trial while it is recorded. All times are on the samples' clock.
#[derive(Debug, Clone, PartialEq)]
pub struct Recording {
    source: Source,
    samples: Vec<Sample>,
    marks: Marks,
    trace: LiveTrace,
    looked_s: f64,
    announced: Option<Announcement>,
    began: bool,
    over: bool,
    asked_at_all: bool,
}

impl Recording {
    /// Begins to take samples, before the start tone.
    pub fn new(source: Source) -> Recording {
        Recording {
            trace: LiveTrace::new(source.screen),
            source,
            samples: Vec::new(),
            marks: Marks::default(),
            looked_s: f64::NEG_INFINITY,
            announced: None,
            began: false,
            over: false,
            asked_at_all: false,
        }
    }

    /// Marks the start tone.
    pub fn begin(&mut self, t_on_s: f64) {
        self.marks.t_on_s = t_on_s;
        self.began = true;
    }

    /// Adds a sample, in the sign convention of [`Sample::a`], and returns the newest point of the trace. Samples beyond the longest
    /// allowed record are not kept.
    pub fn on_sample(&mut self, sample: Sample) -> Option<TracePoint> {
        if self.samples.len() < MAX_SAMPLES {
            self.samples.push(sample);
        }
        self.trace.push(sample)
    }

    /// Records a touch of the screen or a key press.
    pub fn touch(&mut self, t_s: f64) {
        self.marks.taps_s.push(t_s);
    }

    /// Ends the trial: by a touch, at the target duration, or by a touch-down that the sensor proposes.
    pub fn end(&mut self, t_off_s: f64) {
        if !self.over {
            self.marks.t_off_s = t_off_s;
            self.over = true;
        }
    }

    /// Looks for a touch-down to announce. Returns the first one of the trial, once.
    pub fn detect_touch_down(&mut self) -> Option<Announcement> {
        let newest = self.samples.last()?.t_s;
        let due = newest - self.looked_s >= LOOK_EVERY_S;
        if !self.began || self.over || self.announced.is_some() || !due {
            return None;
        }
        self.looked_s = newest;
        self.announced = provisional_touch_down(&self.samples, self.marks.t_on_s, &self.source);
        self.announced
    }

    /// Time of the start tone, s.
    pub fn began_s(&self) -> f64 {
        self.marks.t_on_s
    }

    /// Whether the trial has begun and ended.
    pub fn is_over(&self) -> bool {
        self.began && self.over
    }

    /// Records that the source failed: nothing is measured, but the touches are kept.
    pub fn failed(&mut self, fault: SourceFault) {
        self.source.fault = Some(fault);
    }

    /// The touch-down that was announced during the trial, if any.
    pub fn announced(&self) -> Option<Announcement> {
        self.announced
    }

    /// Whether at least one finite sample was received.
    pub fn has_samples(&self) -> bool {
        self.samples.iter().any(|sample| sample.t_s.is_finite() && sample.a.iter().all(|axis| axis.is_finite()))
    }

    /// Analyses the whole record with the answers given so far.
    pub fn analysis(&self) -> Analysis {
        analyse(&self.samples, &self.marks, &self.source)
    }

    /// What is kept in the log: the short form, and all details as text.
    pub fn result(&self) -> Option<(Sensed, String)> {
        let analysis = self.analysis();
        let sensed = Sensed::of(&analysis, &self.source)?;
        Some((sensed, detail(&self.samples, &self.marks, &self.source, &analysis)))
    }

    /// The next question to the patient, if there is one.
    pub fn next_question(&self) -> Option<TrialQuestion> {
        let hold = self.analysis().hold?;
        let after = self.source.set_up.ask_after();
        if after == AskAfter::Nothing {
            return None;
        }
        let said = |answer| self.marks.answers.iter().any(|one| one.answer == answer);
        let (confirmed, unsure) = (said(TouchAnswer::Yes), said(TouchAnswer::Unsure));
        match hold.ask_s.first() {
            _ if confirmed => None,
            Some(t_s) => Some(TrialQuestion::At(t_s - self.marks.t_on_s)),
            // After an "unsure", no further question is asked.
            None if after == AskAfter::Always && !self.asked_at_all && !unsure && self.marks.taps_s.is_empty() => {
                let another = !self.marks.answers.is_empty();
                Some(TrialQuestion::AtAll { another, within_s: self.marks.t_off_s - self.marks.t_on_s })
            }
            None => None,
        }
    }

    /// Stores an answer. `after_s` is the moment that was asked about or that the patient gave, in s after the start tone.
    pub fn answer(&mut self, asked: TrialQuestion, after_s: f64, answer: TouchAnswer) {
        if let TrialQuestion::AtAll { .. } = asked {
            self.asked_at_all = true;
        }
        // The answer "did not touch at all" belongs to no moment, and no detected event has to be changed for it.
        if !(matches!(asked, TrialQuestion::AtAll { .. }) && answer == TouchAnswer::No) {
            self.marks.answers.push(AnsweredAt { t_s: self.marks.t_on_s + after_s, answer });
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::run::SetUp;

    /// A calm stance with one touch-down: the body leans, the phone is knocked, and the body leans back.
    fn calm(touch_at: Option<f64>) -> Vec<Sample> {
        let at = |k: i32| {
            let t = f64::from(k) / 100.0;
            let mut a = [0.1 * libm::sin(2.0 * t), 9.80665 + 0.01 * libm::sin(37.0 * t), 0.1 * libm::cos(1.3 * t)];
            if let Some(touch) = touch_at.filter(|touch| t >= *touch) {
                let since = t - touch;
                a[1] += 2.0 * libm::exp(-since / 0.1) * libm::sin(2.0 * core::f64::consts::PI * 7.0 * since);
                a[0] += 0.9 * libm::exp(-since / 3.0);
            }
            Sample { t_s: t, a }
        };
        (0..=2000).map(at).collect()
    }

    fn recorded(set_up: SetUp, touch_at: Option<f64>, until: f64) -> Recording {
        let mut recording = Recording::new(Source { set_up, ..Source::file() });
        recording.begin(0.0);
        for sample in calm(touch_at).into_iter().filter(|sample| sample.t_s <= until + 1.0) {
            recording.on_sample(sample);
            recording.detect_touch_down();
        }
        recording.end(until);
        recording
    }

    #[test]
    fn only_a_finite_reading_counts_as_received() {
        let mut recording = Recording::new(Source::file());
        assert!(!recording.has_samples());
        recording.on_sample(Sample { t_s: 0.0, a: [f64::NAN, 9.8, 0.0] });
        assert!(!recording.has_samples());
        recording.on_sample(Sample { t_s: 0.01, a: [0.0, 9.8, 0.0] });
        assert!(recording.has_samples());
    }

    #[test]
    fn at_the_breastbone_only_detected_touch_downs_are_asked_about() {
        assert_eq!(recorded(SetUp::AtBreastbone, None, 15.0).next_question(), None);
        let touched = recorded(SetUp::AtBreastbone, Some(12.0), 15.0);
        let Some(TrialQuestion::At(t)) = touched.next_question() else { panic!("{:?}", touched.analysis()) };
        assert!((t - 12.0).abs() < 0.2, "{t}");
    }

    #[test]
    fn a_touch_down_is_announced_once_and_only_when_its_evidence_is_complete() {
        let recording = recorded(SetUp::InPocket, Some(12.0), 15.0);
        let announced = recording.announced().expect("a touch-down");
        assert!(announced.seen_until_s - announced.t_s >= 1.2 && announced.seen_until_s < 14.0, "{announced:?}");
    }

    #[test]
    fn in_the_pocket_it_is_always_asked_and_the_answer_decides() {
        let mut calm = recorded(SetUp::InPocket, None, 15.0);
        let asked = calm.next_question().expect("always");
        assert_eq!(asked, TrialQuestion::AtAll { another: false, within_s: 15.0 });
        calm.answer(asked, 8.0, TouchAnswer::Yes);
        assert_eq!(calm.next_question(), None);
        let (sensed, _) = calm.result().expect("sound marks");
        assert_eq!((sensed.held_ms, sensed.censored), (8000, false));
    }

    #[test]
    fn after_a_wrong_detection_another_moment_is_asked_for() {
        let mut touched = recorded(SetUp::InPocket, Some(12.0), 15.0);
        let asked = touched.next_question().expect("a proposal");
        let TrialQuestion::At(t) = asked else { panic!("{asked:?}") };
        touched.answer(asked, t, TouchAnswer::No);
        let asked = touched.next_question().expect("another moment");
        assert_eq!(asked, TrialQuestion::AtAll { another: true, within_s: 15.0 });
        touched.answer(asked, 0.0, TouchAnswer::No);
        assert_eq!(touched.next_question(), None);
        let (sensed, _) = touched.result().expect("sound marks");
        assert_eq!((sensed.held_ms, sensed.censored, sensed.touch_downs), (15_000, true, 0));
    }

    #[test]
    fn unsure_keeps_both_times() {
        let mut touched = recorded(SetUp::InPocket, Some(12.0), 15.0);
        let asked = touched.next_question().expect("a proposal");
        let TrialQuestion::At(t) = asked else { panic!("{asked:?}") };
        touched.answer(asked, t, TouchAnswer::Unsure);
        assert_eq!(touched.next_question(), None);
        let (sensed, _) = touched.result().expect("sound marks");
        assert!(sensed.held_ms < 12_200 && !sensed.censored);
        assert_eq!(sensed.otherwise.map(|other| (other.held_ms, other.censored)), Some((15_000, true)));
    }

    #[test]
    fn a_phone_on_the_support_asks_nothing() {
        let mut lying = recorded(SetUp::OnSupport, Some(12.0), 15.0);
        assert_eq!((lying.next_question(), lying.announced()), (None, None));
        lying.touch(12.5);
        assert_eq!(lying.result().map(|(sensed, _)| sensed.figures), Some(None), "nothing worn, nothing measured");
    }

    #[test]
    fn the_text_holds_marks_answers_and_the_samples_around() {
        let mut touched = recorded(SetUp::AtBreastbone, Some(12.0), 15.0);
        touched.touch(12.6);
        let (_, text) = touched.result().expect("sound marks");
        let read: serde_json::Value = serde_json::from_str(&text).expect("JSON");
        assert_eq!((&read["version"], &read["taps"][0]), (&"sway/1".into(), &12.6.into()));
        assert!(read["result"]["detection"]["events"][0]["tap"].is_f64(), "{read}");
        let around = read["around"][0].as_array().expect("rows");
        assert!((390..=401).contains(&around.len()), "two seconds on either side: {}", around.len());
    }
}
