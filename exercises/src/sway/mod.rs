//! Sway during a balance trial, from the accelerometer of a phone that is worn: the processing "sway/1".
//!
//! [`analyse`] takes samples, the trial's marks and what is known of the source, and gives an [`Analysis`]: the hold, the
//! touch-downs, the record's worth, and figures or the [`Reason`]s for having none. All arithmetic is in 64-bit floats,
//! and every function that platforms round differently comes from `libm`, so that window, terminal and test agree.
//!
//! Shown may be: hold, `rms_ml`, `path_per_s`, `rms_planar`, the count of touch-downs. Stored beside them: `ell_chi2`,
//! `jerk_per_s`, `cf`, `f95`. None of it is validated for use at home: no norms, no statement about falls.
//!
//! Steps, one a file: `clean`, `grid`, `detection` and `hold`, `window`, `axes`, `filter`, `detrend`, `measures`. Around
//! them: `quality` and `verdict`, [`printed()`] (the stored keys), [`session_change`] (two sessions), [`LiveTrace`] and
//! [`provisional_touch_down`] (while a trial runs), [`SetUp`] and [`Source`].
//!
//! A log keeps, beside the [`printed()`] form: every event as found, its thresholds, tap and answer, [`VERSION`], the
//! kind of source, and the raw samples of two seconds around each event ([`samples_around`]). The raw times of touches
//! and answers stay as they came: the assumed delay of a lone tap is applied in the figures only.

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
