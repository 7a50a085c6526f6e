//! The trials of a balance run in the form in which they are written. The keys never change.

use crate::cbor::AtMost;
use crate::codes::Code;
use crate::entry::ShownOut;
use exercises::catalogue::{Eyes, Surface};
use exercises::plan::BodySide;
use exercises::run::{SetUp, Trial, TrialEnd};
use exercises::summary::{StanceOn, SwayOn};
use exercises::sway::{ReportedFigures, SourceKind};
use minicbor::{Decode, Encode};

/// Largest number of trials in one run, more than ten for each side. Any beyond it are left out, because otherwise the
/// summary could not be sent at all.
const MAX_TRIALS: usize = 64;

#[derive(Encode, Decode)]
#[cbor(map)]
pub(super) struct StanceOut {
    #[n(0)]
    set_up: Code<SetUp>,
    #[n(1)]
    surface: Code<Surface>,
    #[n(2)]
    eyes: Code<Eyes>,
    #[n(3)]
    target_s: u16,
    #[n(4)]
    trials: AtMost<TrialOut, MAX_TRIALS>,
    /// Left out if no motion sensor was used.
    #[n(5)]
    sway: Option<AtMost<SwayOut, MAX_TRIALS>>,
}

#[derive(Encode, Decode)]
#[cbor(map)]
struct SwayOut {
    #[n(0)]
    trial: u8,
    #[n(1)]
    kind: Code<SourceKind>,
    #[n(2)]
    touch_downs: u8,
    #[n(3)]
    figures: Option<ShownOut>,
    #[n(4)]
    gap: bool,
    #[n(5)]
    to_confirm: bool,
}

impl From<&SwayOn> for SwayOut {
    fn from(SwayOn { trial, kind, touch_downs, figures, gap, to_confirm }: &SwayOn) -> SwayOut {
        let figures = figures.map(ShownOut::from);
        SwayOut { trial: *trial, kind: Code(*kind), touch_downs: *touch_downs, figures, gap: *gap, to_confirm: *to_confirm }
    }
}

impl From<SwayOut> for SwayOn {
    fn from(SwayOut { trial, kind: Code(kind), touch_downs, figures, gap, to_confirm }: SwayOut) -> SwayOn {
        SwayOn { trial, kind, touch_downs, figures: figures.map(ReportedFigures::from), gap, to_confirm }
    }
}

#[derive(Encode, Decode)]
#[cbor(map)]
struct TrialOut {
    /// Left out on both feet.
    #[n(0)]
    leg: Option<Code<BodySide>>,
    #[n(1)]
    held_ms: u32,
    #[n(2)]
    end: Code<TrialEnd>,
}

impl From<&StanceOn> for StanceOut {
    fn from(StanceOn { set_up, surface, eyes, target_s, trials, sway }: &StanceOn) -> StanceOut {
        let trial =
            |Trial { leg, held_ms, end }: &Trial| TrialOut { leg: leg.map(Code), held_ms: *held_ms, end: Code(*end) };
        let trials = AtMost(trials.iter().take(MAX_TRIALS).map(trial).collect());
        let sway = (!sway.is_empty()).then(|| AtMost(sway.iter().take(MAX_TRIALS).map(SwayOut::from).collect()));
        StanceOut { set_up: Code(*set_up), surface: Code(*surface), eyes: Code(*eyes), target_s: *target_s, trials, sway }
    }
}

impl StanceOut {
    pub(super) fn stance(self) -> StanceOn {
        let StanceOut { set_up: Code(set_up), surface: Code(surface), eyes: Code(eyes), target_s, trials, sway } = self;
        let trial = |TrialOut { leg, held_ms, end: Code(end) }| Trial { leg: leg.map(|Code(leg)| leg), held_ms, end };
        let trials = trials.0.into_iter().map(trial).collect();
        let sway = sway.map_or_else(Vec::new, |sway| sway.0.into_iter().map(SwayOn::from).collect());
        StanceOn { set_up, surface, eyes, target_s, trials, sway }
    }
}
