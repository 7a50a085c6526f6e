//! What the motion sensor measured in one trial, as written in a log entry.

use crate::cbor::AtMost;
use crate::codes::Code;
use exercises::id::RunId;
use exercises::log::LogEvent;
use exercises::sway::{AlternativeHold, Flag, Reason, ReportedFigures, Sensed, SourceKind};
use minicbor::{Decode, Encode};

/// Largest number of flags or reasons, more than there are.
const MAX: usize = 32;

#[derive(Encode, Decode)]
pub(super) struct SensedOut {
    #[n(0)]
    run: u32,
    #[n(1)]
    trial: u16,
    #[n(2)]
    kind: Code<SourceKind>,
    #[n(3)]
    held_ms: u32,
    #[n(4)]
    censored: bool,
    #[n(5)]
    gap: bool,
    #[n(6)]
    otherwise: Option<OtherOut>,
    #[n(7)]
    touch_downs: u8,
    #[n(8)]
    figures: Option<ShownOut>,
    #[n(9)]
    reasons: AtMost<Code<Reason>, MAX>,
    #[n(10)]
    flags: AtMost<Code<Flag>, MAX>,
    #[n(11)]
    detail: String,
}

#[derive(Encode, Decode)]
struct OtherOut(#[n(0)] u32, #[n(1)] bool);

/// Sway sideways, sway in the horizontal plane, path per second.
#[derive(Encode, Decode)]
pub(crate) struct ShownOut(#[n(0)] Option<u32>, #[n(1)] u32, #[n(2)] u32);

impl From<ReportedFigures> for ShownOut {
    fn from(ReportedFigures { rms_ml, rms_planar, path_per_s }: ReportedFigures) -> ShownOut {
        ShownOut(rms_ml, rms_planar, path_per_s)
    }
}

impl From<ShownOut> for ReportedFigures {
    fn from(ShownOut(rms_ml, rms_planar, path_per_s): ShownOut) -> ReportedFigures {
        ReportedFigures { rms_ml, rms_planar, path_per_s }
    }
}

impl SensedOut {
    pub(super) fn new(run: RunId, trial: u16, sensed: &Sensed, detail: &str) -> SensedOut {
        let Sensed { kind, held_ms, censored, gap, otherwise, touch_downs, figures, reasons, flags } = sensed;
        SensedOut {
            run: run.0,
            trial,
            kind: Code(*kind),
            held_ms: *held_ms,
            censored: *censored,
            gap: *gap,
            otherwise: otherwise.map(|AlternativeHold { held_ms, censored }| OtherOut(held_ms, censored)),
            touch_downs: *touch_downs,
            figures: figures.map(ShownOut::from),
            reasons: AtMost(reasons.iter().take(MAX).copied().map(Code).collect()),
            flags: AtMost(flags.iter().take(MAX).copied().map(Code).collect()),
            detail: detail.to_owned(),
        }
    }

    pub(super) fn event(self) -> LogEvent {
        let sensed = Sensed {
            kind: self.kind.0,
            held_ms: self.held_ms,
            censored: self.censored,
            gap: self.gap,
            otherwise: self.otherwise.map(|OtherOut(held_ms, censored)| AlternativeHold { held_ms, censored }),
            touch_downs: self.touch_downs,
            figures: self.figures.map(ReportedFigures::from),
            reasons: self.reasons.0.into_iter().map(|code| code.0).collect(),
            flags: self.flags.0.into_iter().map(|code| code.0).collect(),
        };
        LogEvent::Sensed { run: RunId(self.run), trial: self.trial, sensed, detail: self.detail }
    }
}
