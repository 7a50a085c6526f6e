//! What the log keeps of one trial: the few figures that rules and screens need, and all details as text.

use crate::run::{Trial, TrialEnd};

use super::{
    analysis::{Analysis, Figures},
    detection::{Class, Event},
    hold::OtherHold,
    parameters::VERSION,
    printed::{Printed, printed},
    sample::{AnsweredAt, Marks, Sample, TouchAnswer, samples_around},
    source::{Os, Screen, Source, SourceFault, SourceKind},
    verdict::{Flag, Reason},
};

/// Raw samples within this time of an event are logged with it, s.
const AROUND_S: f64 = 2.0;
/// Raw samples are logged for at most this many events, because shaking a phone makes hundreds.
const MAX_AROUND: usize = 8;

/// One trial as the sensor measured it. Figures are whole numbers in tenths of a millimetre, so that device and clinic read the same
/// values.
#[derive(Debug, Clone, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Sensed {
    /// The kind of source: figures of different kinds are never compared.
    pub kind: SourceKind,
    /// Time from the start tone to the first touch-down, ms.
    pub held_ms: u32,
    /// Whether no touch-down was found: the hold is then a lower bound.
    pub censored: bool,
    /// Whether samples are missing during the hold: a touch-down cannot be excluded there.
    pub gap: bool,
    /// The other possible duration, while the hold still has to be confirmed.
    pub otherwise: Option<AlternativeHold>,
    /// Number of touch-downs that are definite or that the patient confirmed.
    pub touch_downs: u8,
    /// The figures, if there are any.
    pub figures: Option<ReportedFigures>,
    /// Why nothing was measured; empty if there are figures.
    pub reasons: Vec<Reason>,
    /// Cautions about the hold and the figures.
    pub flags: Vec<Flag>,
}

/// The other possible duration of a hold.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct AlternativeHold {
    /// Duration, ms.
    pub held_ms: u32,
    /// Whether this duration would be a lower bound.
    pub censored: bool,
}

/// The figures that may be shown.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct ReportedFigures {
    /// Sideways (ML), root mean square, 0.1 mm/s2; `None` if side and front cannot be told apart.
    pub rms_ml: Option<u32>,
    /// In the horizontal plane, root mean square, 0.1 mm/s2.
    pub rms_planar: u32,
    /// Length of the path per second, 0.1 mm/s3.
    pub path_per_s: u32,
}

impl Sensed {
    /// From an analysed trial; `None` if the marks do not bound a stretch of time.
    pub fn of(analysis: &Analysis, source: &Source) -> Option<Sensed> {
        let hold = analysis.hold.as_ref()?;
        let events = analysis.detection.as_ref().map_or(&[][..], |found| &found.events);
        Some(Sensed {
            kind: source.kind,
            held_ms: ms(hold.seconds),
            censored: hold.censored,
            gap: hold.gap,
            otherwise: hold
                .otherwise
                .map(|OtherHold { seconds, censored }| AlternativeHold { held_ms: ms(seconds), censored }),
            touch_downs: u8::try_from(events.iter().filter(|event| touched(event)).count()).unwrap_or(u8::MAX),
            figures: analysis.measures().map(|of| ReportedFigures {
                rms_ml: of.rms_ml.map(tenths),
                rms_planar: tenths(of.rms_planar),
                path_per_s: tenths(of.path_per_s),
            }),
            reasons: match &analysis.figures {
                Figures::Measured(_) => Vec::new(),
                Figures::NotMeasured(reasons) => reasons.clone(),
            },
            flags: analysis.flags.clone(),
        })
    }

    /// Applies the sensor's result to the trial: its first touch-down ends the trial. A trial that was ended before the target by a
    /// detected touch-down which the patient denies is only a lower bound and not a measurement.
    pub fn settle(&self, raw: Trial) -> Trial {
        let end = match (self.censored, raw.end) {
            (false, _) => TrialEnd::Touch,
            (true, TrialEnd::Target) => TrialEnd::Target,
            (true, _) => TrialEnd::CutOff,
        };
        Trial { leg: raw.leg, held_ms: self.held_ms, end }
    }

    /// Whether the hold still has to be confirmed.
    pub fn to_be_confirmed(&self) -> bool {
        self.otherwise.is_some()
    }
}

fn touched(event: &Event) -> bool {
    match event.answer {
        TouchAnswer::Yes => true,
        TouchAnswer::No => false,
        TouchAnswer::Unsure | TouchAnswer::NotAsked => event.class == Class::Definite,
    }
}

/// Seconds to milliseconds, rounded; NaN becomes 0.
fn ms(seconds: f64) -> u32 {
    libm::round(seconds * 1000.0) as u32
}

/// From units to ten-thousandths, rounded: m/s2 to 0.1 mm/s2.
fn tenths(figure: f64) -> u32 {
    libm::round(figure * 10_000.0) as u32
}

/// Everything about a trial as one line of JSON: version, source, marks as recorded, the whole printed form, and the raw samples
/// around each event.
pub fn detail(samples: &[Sample], marks: &Marks, source: &Source, analysis: &Analysis) -> String {
    let events = analysis.detection.as_ref().map_or(&[][..], |found| &found.events);
    let around = events.iter().take(MAX_AROUND).map(|event| raw(&samples_around(samples, event.t_s, AROUND_S)));
    Printed::Map(vec![
        ("version", Printed::Text(VERSION)),
        ("source", of_source(source)),
        ("t_on", Printed::Number(marks.t_on_s)),
        ("t_off", Printed::Number(marks.t_off_s)),
        ("taps", Printed::List(marks.taps_s.iter().copied().map(Printed::Number).collect())),
        ("answers", Printed::List(marks.answers.iter().map(said).collect())),
        ("result", printed(analysis)),
        ("around", Printed::List(around.collect())),
    ])
    .to_string()
}

fn of_source(source: &Source) -> Printed {
    let kind = match source.kind {
        SourceKind::Native => "native",
        SourceKind::Web => "web",
        SourceKind::File => "file",
    };
    let os = match source.os {
        Os::Android => "android",
        Os::Ios => "ios",
        Os::Other => "other",
    };
    let screen = match source.screen {
        Screen::Away => "away",
        Screen::TowardBody => "toward_body",
    };
    let fault = source.fault.map(|fault| match fault {
        SourceFault::Hidden => "hidden",
        SourceFault::PermissionDenied => "permission_denied",
        SourceFault::NoSensor => "no_sensor",
    });
    Printed::Map(vec![
        ("kind", Printed::Text(kind)),
        ("os", Printed::Text(os)),
        ("sign_flipped", Printed::Bool(source.sign_flipped)),
        ("screen", Printed::Text(screen)),
        ("fault", fault.map_or(Printed::Null, Printed::Text)),
    ])
}

fn said(answer: &AnsweredAt) -> Printed {
    let word = match answer.answer {
        TouchAnswer::Yes => "yes",
        TouchAnswer::No => "no",
        TouchAnswer::Unsure => "unsure",
        TouchAnswer::NotAsked => "not_asked",
    };
    Printed::Map(vec![("t", Printed::Number(answer.t_s)), ("answer", Printed::Text(word))])
}

fn raw(samples: &[Sample]) -> Printed {
    let row = |sample: &Sample| {
        let [x, y, z] = sample.a;
        Printed::List([sample.t_s, x, y, z].into_iter().map(Printed::Number).collect())
    };
    Printed::List(samples.iter().map(row).collect())
}
