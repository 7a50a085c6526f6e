//! Sway during a balance trial, measured with the accelerometer of a phone that the patient wears: the processing "sway/1".
//!
//! [`analyse`] takes the samples, the trial's marks and the properties of the source, and returns an [`Analysis`]: the hold, the
//! touch-downs, the quality of the record, and either figures or the [`Reason`]s why there are none. All arithmetic uses 64-bit
//! floats, and every function that platforms round differently comes from `libm`, so that window, terminal and tests agree.
//!
//! These may be shown: hold, `rms_ml`, `path_per_s`, `rms_planar`, the number of touch-downs. Stored beside them: `ell_chi2`,
//! `jerk_per_s`, `cf`, `f95`. None of it is validated for use at home: no norms, no statement about falls.
//!
//! Steps, one per file: `clean`, `grid`, `detection` and `hold`, `window`, `axes`, `filter`, `detrend`, `measures`. Other parts:
//! `quality` and `verdict`, [`printed()`] (the stored keys), [`session_change`] (compares two sessions), [`LiveTrace`] and
//! [`provisional_touch_down`] (while a trial runs), [`SetUp`] and [`Source`].
//!
//! Besides the [`printed()`] form, a log keeps: every event as detected, its thresholds, tap and answer, [`VERSION`], the kind of
//! source, and the raw samples of two seconds around each event ([`samples_around`]). The raw times of touches and answers are
//! stored unchanged: the assumed delay of a tap without a candidate is applied in the figures only.

mod analysis;
mod axes;
mod clean;
mod compare;
mod detection;
mod detrend;
mod filter;
mod grid;
mod hold;
mod lanes;
mod live;
mod measures;
pub mod parameters;
mod plane;
mod printed;
mod quality;
mod sample;
mod sensed;
mod set_up;
mod source;
mod verdict;
mod window;

pub use crate::run::SetUp;
pub use analysis::{Analysis, Figures, analyse};
pub use compare::{Comparable, SESSION_MIN_TRIALS, SPREAD_MIN_TRIALS, SessionChange, session_change, within_sd};
pub use detection::{Class, Detection, Event};
pub use hold::{EndedBy, Hold, OtherHold};
pub use live::{Announcement, LiveTrace, Recording, TracePoint, TrialQuestion, provisional_touch_down};
pub use measures::{Measures, Spectrum, milli_g};
pub use parameters::VERSION;
pub use printed::{Printed, printed, printed_measures};
pub use quality::Quality;
pub use sample::{AnsweredAt, Marks, Sample, TouchAnswer, samples_around};
pub use sensed::{AlternativeHold, ReportedFigures, Sensed, detail};
pub use set_up::{AskAfter, Placement};
pub use source::{Os, Screen, Source, SourceFault, SourceKind};
pub use verdict::{Flag, Reason};
pub use window::Window;
