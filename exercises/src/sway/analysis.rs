//! The whole of "sway/1" for one trial.

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

/// Figures, or why there are none.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
#[cfg_attr(feature = "serde", serde(rename_all = "snake_case"))]
pub enum Figures {
    /// Measured, without what the flags suppress.
    Measured(Box<Measures>),
    /// Not measured; at least one reason, in the order they are printed.
    NotMeasured(Vec<Reason>),
}

/// Everything that one trial gives.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Analysis {
    /// The hold; `None` where the marks bound no stretch of time.
    pub hold: Option<Hold>,
    /// Touch-downs; `None` where they cannot be looked for.
    pub detection: Option<Detection>,
    /// What the record says about its worth.
    pub quality: Quality,
    /// What to know about the figures and the hold.
    pub flags: Vec<Flag>,
    /// The stretch that is measured; `None` where nothing is left.
    pub window: Option<Window>,
    /// What is reported.
    pub figures: Figures,
    /// All that was computed, also what a flag suppresses: to check the numbers, never to show.
    #[cfg_attr(feature = "serde", serde(skip))]
    pub unsuppressed: Option<Box<Measures>>,
}

impl Analysis {
    /// The reported figures, where there are any.
    pub fn measures(&self) -> Option<&Measures> {
        match &self.figures {
            Figures::Measured(measures) => Some(measures),
            Figures::NotMeasured(_) => None,
        }
    }

    /// Why there are no figures; empty where there are.
    pub fn reasons(&self) -> &[Reason] {
        match &self.figures {
            Figures::Measured(_) => &[],
            Figures::NotMeasured(reasons) => reasons,
        }
    }
}

/// A record that was worth resampling.
struct Record {
    clean: Clean,
    grid: Grid,
}

/// Processes one trial. Never fails: whatever comes in, the answer is figures or the reasons for having none, and the
/// hold by the marks wherever they are sound. Samples are already in the sign of [`Sample::a`].
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

/// The record where it is worth resampling, and what is wrong before it is looked into.
fn received(samples: &[Sample], marks: &Marks, source: &Source) -> (Option<Record>, Vec<Reason>) {
    let record = record(samples, source);
    let marks = (!marks.sound()).then_some(Reason::MarksInvalid);
    let fault = source.fault.map(Reason::from);
    // A missing sensor can be told by the source and found in the record: once is enough.
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

/// Measures the window, and adds the flags and reasons that only the window shows.
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
        // A window has axes unless gravity has no direction, and then its implausibility is a reason already.
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
