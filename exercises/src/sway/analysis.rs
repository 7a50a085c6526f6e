//! Runs all steps of "sway/1" on one trial.

use super::{
    axes::axes,
    clean::{Clean, clean},
    detection::{Detection, detect, match_taps},
    grid::{Grid, resample},
    hold::{EndedBy, Hold, apply_answers, hold},
    measures::{Measures, measure, narrowest_rms},
    parameters::{COARSE_RMS_MIN, MAX_RECORD_S, MAX_SAMPLES, MIN_WINDOW_S, TILT_FAIL_DEG, TILT_WARN_DEG},
    quality::{Quality, tilt_change_deg},
    sample::{Marks, Sample},
    source::Source,
    verdict::{Flag, Reason},
    window::{Window, window},
};

/// The measured figures, or the reasons why there are none.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
#[cfg_attr(feature = "serde", serde(rename_all = "snake_case"))]
pub enum Figures {
    /// The figures, without those that a flag suppresses.
    Measured(Box<Measures>),
    /// Nothing was measured. Holds at least one reason; the reasons are in the order in which they are printed.
    NotMeasured(Vec<Reason>),
}

/// The whole result of one trial.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Analysis {
    /// The hold; `None` if the marks do not bound a stretch of time.
    pub hold: Option<Hold>,
    /// The detected touch-downs; `None` if detection was not possible.
    pub detection: Option<Detection>,
    /// Figures about the quality of the record.
    pub quality: Quality,
    /// Cautions about the figures and the hold.
    pub flags: Vec<Flag>,
    /// The part of the record that is measured; `None` if nothing is left to measure.
    pub window: Option<Window>,
    /// The figures that are reported.
    pub figures: Figures,
    /// Everything that was computed, including figures that a flag suppresses. For checking the numbers only; never shown.
    #[cfg_attr(feature = "serde", serde(skip))]
    pub unsuppressed: Option<Box<Measures>>,
}

impl Analysis {
    /// The reported figures, if there are any.
    pub fn measures(&self) -> Option<&Measures> {
        match &self.figures {
            Figures::Measured(measures) => Some(measures),
            Figures::NotMeasured(_) => None,
        }
    }

    /// The reasons why there are no figures; empty if there are figures.
    pub fn reasons(&self) -> &[Reason] {
        match &self.figures {
            Figures::Measured(_) => &[],
            Figures::NotMeasured(reasons) => reasons,
        }
    }
}

/// A record that is good enough to be resampled.
struct Record {
    clean: Clean,
    grid: Grid,
}

/// Processes one trial. Never fails: the result holds either figures or the reasons why there are none, and always the hold if the
/// marks are sound. The samples must already have the sign convention of [`Sample::a`].
pub fn analyse(samples: &[Sample], marks: &Marks, source: &Source) -> Analysis {
    let (record, mut reasons) = received(samples, marks, source);
    let mut quality = record.as_ref().map_or(Quality::unseen(), |of| Quality::of(&of.clean, &of.grid));
    let detection = record.as_ref().and_then(|record| touch_downs(record, &quality, marks, source));
    let clean = record.as_ref().map(|record| &record.clean);
    let hold = marks.sound().then(|| hold(detection.as_ref(), &marks.taps_in_order(), marks, clean));
    let end = hold.as_ref().map(|hold| marks.t_on_s + hold.seconds);
    let mut flags = quality.flags(source);
    let mut found = (None, None);
    if let Some(record) = &record {
        reasons.extend(quality.reasons());
        let stretch = end.and_then(|end| window(&record.grid, marks.t_on_s, end));
        quality.tilt_change_deg = stretch.map(|stretch| tilt_change_deg(&record.grid, &stretch));
        found = (stretch, figures(&record.grid, stretch, &quality, &mut flags, &mut reasons));
    }
    flags.extend(hold.as_ref().and_then(flag_of_end));
    let (window, measures) = found;
    Analysis {
        hold,
        detection,
        figures: reported(measures, &reasons, quality.coarse),
        unsuppressed: measures.map(Box::new),
        quality,
        flags,
        window,
    }
}

/// The record, if it is good enough to be resampled, and the reasons against measuring that are known before the samples are
/// examined.
fn received(samples: &[Sample], marks: &Marks, source: &Source) -> (Option<Record>, Vec<Reason>) {
    let record = record(samples, source);
    let marks = (!marks.sound()).then_some(Reason::MarksInvalid);
    let fault = source.fault.map(Reason::from);
    // A missing sensor can be reported by the source and also found in the record; the reason is listed once.
    let found = record.as_ref().err().copied().filter(|found| fault != Some(*found));
    let reasons = [fault, marks, found].into_iter().flatten().collect();
    (record.ok(), reasons)
}

fn record(samples: &[Sample], source: &Source) -> Result<Record, Reason> {
    if source.placement().is_none() {
        return Err(Reason::PhoneNotWorn);
    }
    if samples.len() > MAX_SAMPLES {
        return Err(Reason::RecordTooLong);
    }
    let clean = clean(samples);
    if clean.span_s() > MAX_RECORD_S {
        return Err(Reason::RecordTooLong);
    }
    let grid = resample(&clean).ok_or(Reason::NoSensor)?;
    Ok(Record { clean, grid })
}

fn touch_downs(record: &Record, quality: &Quality, marks: &Marks, source: &Source) -> Option<Detection> {
    let may = marks.sound() && quality.fast_enough_to_detect() && source.set_up.sensor_proposes();
    let mut found = if may {
        detect(&record.grid, marks)?
    } else {
        return None;
    };
    found.unmatched_taps_s = match_taps(&mut found.events, &marks.taps_in_order());
    apply_answers(&mut found.events, &marks.answers);
    Some(found)
}

/// Measures the window, and adds the flags and reasons that can only be known from the window.
fn figures(
    grid: &Grid,
    stretch: Option<Window>,
    quality: &Quality,
    flags: &mut Vec<Flag>,
    reasons: &mut Vec<Reason>,
) -> Option<Measures> {
    let turn = quality.tilt_change_deg.unwrap_or(0.0);
    if turn > TILT_WARN_DEG {
        flags.push(Flag::PhoneMoved);
    }
    if turn > TILT_FAIL_DEG {
        reasons.push(Reason::PhoneMoved);
    }
    let axes = stretch.and_then(|stretch| axes(grid.mean(stretch.k0, stretch.k1)));
    if axes.is_some_and(|axes| !axes.identified) {
        flags.push(Flag::MlApNotIdentified);
    }
    if quality.coarse {
        flags.push(Flag::CoarseQuantisation);
    }
    let long_enough = stretch.filter(|stretch| stretch.duration_s() >= MIN_WINDOW_S);
    if long_enough.is_none() {
        reasons.push(Reason::WindowTooShort);
    }
    let (measures, sway) = measure(grid, &long_enough?, &axes?);
    if quality.coarse && narrowest_rms(&measures, &sway) < COARSE_RMS_MIN {
        reasons.push(Reason::SignalBelowResolution);
    }
    if !measures.finite() {
        reasons.push(Reason::ValuesImplausible);
    }
    Some(measures)
}

fn reported(measures: Option<Measures>, reasons: &[Reason], coarse: bool) -> Figures {
    match measures {
        Some(measures) if reasons.is_empty() => {
            let kept = if coarse { measures.from_coarse_steps() } else { measures };
            Figures::Measured(Box::new(kept))
        }
        // Axes are missing only if gravity has no direction, and then `GravityImplausible` is already among the reasons.
        _ => Figures::NotMeasured(reasons.to_vec()),
    }
}

fn flag_of_end(hold: &Hold) -> Option<Flag> {
    match hold.ended_by {
        EndedBy::SensorOnly => Some(Flag::Auto),
        EndedBy::TapOnly => Some(Flag::TapOnly),
        EndedBy::End | EndedBy::TapAndSensor | EndedBy::TouchAnswer => None,
    }
}
