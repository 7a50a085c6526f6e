//! The trials of a balance run as they travel. Keys are frozen.

use crate::cbor::AtMost;
use crate::codes::Code;
use exercises::catalogue::{Eyes, Surface};
use exercises::plan::Leg;
use exercises::run::{SetUp, Trial, TrialEnd};
use exercises::summary::StanceOn;
use minicbor::{Decode, Encode};

/// Most trials of one run, with room over ten a side. More are left out: a summary that cannot be sealed at all would be
/// worse.
const MOST_TRIALS: usize = 64;

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
    trials: AtMost<TrialOut, MOST_TRIALS>,
}

#[derive(Encode, Decode)]
#[cbor(map)]
struct TrialOut {
    #[n(0)]
    leg: Code<Leg>,
    #[n(1)]
    held_ms: u32,
    #[n(2)]
    end: Code<TrialEnd>,
}

impl From<&StanceOn> for StanceOut {
    fn from(StanceOn { set_up, surface, eyes, target_s, trials }: &StanceOn) -> StanceOut {
        let trial = |Trial { leg, held_ms, end }: &Trial| TrialOut { leg: Code(*leg), held_ms: *held_ms, end: Code(*end) };
        let trials = AtMost(trials.iter().take(MOST_TRIALS).map(trial).collect());
        StanceOut { set_up: Code(*set_up), surface: Code(*surface), eyes: Code(*eyes), target_s: *target_s, trials }
    }
}

impl StanceOut {
    pub(super) fn stance(self) -> StanceOn {
        let StanceOut { set_up: Code(set_up), surface: Code(surface), eyes: Code(eyes), target_s, trials } = self;
        let trial = |TrialOut { leg: Code(leg), held_ms, end: Code(end) }| Trial { leg, held_ms, end };
        StanceOn { set_up, surface, eyes, target_s, trials: trials.0.into_iter().map(trial).collect() }
    }
}
