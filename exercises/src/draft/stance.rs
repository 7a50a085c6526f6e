//! Stance times taken at the visit, beside those of earlier visits.

use super::Draft;
use crate::catalogue::{Eyes, Surface};
use crate::plan::{Leg, StanceBaseline};

/// The longest stance time that can be written in, in tenths of a second: ten minutes.
const MAX_TENTHS: f64 = 6000.0;

/// Which stance time is meant.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct StanceField {
    /// The leg stood on.
    pub leg: Leg,
    /// What it stands on.
    pub surface: Surface,
    /// Eyes open or closed.
    pub eyes: Eyes,
}

impl StanceField {
    /// The two that every balance item needs: eyes open on the firm floor.
    pub const FIRM_OPEN: [StanceField; 2] = [
        StanceField { leg: Leg::Left, surface: Surface::Firm, eyes: Eyes::Open },
        StanceField { leg: Leg::Right, surface: Surface::Firm, eyes: Eyes::Open },
    ];

    fn is_of(&self, baseline: &StanceBaseline) -> bool {
        (baseline.leg, baseline.surface, baseline.eyes) == (self.leg, self.surface, self.eyes)
    }
}

/// Tenths of a second of what was typed in seconds, with point or comma; `None` where it is no such number.
pub fn tenths_of(text: &str) -> Option<u16> {
    let seconds: f64 = text.trim().replace(',', ".").parse().ok()?;
    let tenths = libm::round(seconds * 10.0);
    (0.0..=MAX_TENTHS).contains(&tenths).then_some(tenths as u16)
}

impl Draft {
    /// The time taken at this visit.
    pub fn stance_today(&self, field: StanceField) -> Option<StanceBaseline> {
        self.plan.baselines.iter().skip(self.earlier).find(|baseline| field.is_of(baseline)).copied()
    }

    /// The longest time of earlier visits.
    pub fn stance_earlier(&self, field: StanceField) -> Option<StanceBaseline> {
        let earlier = self.plan.baselines.iter().take(self.earlier).filter(|baseline| field.is_of(baseline));
        earlier.max_by_key(|baseline| baseline.tenths).copied()
    }

    /// Writes the time of this visit in, or takes it out.
    pub fn set_stance(&mut self, field: StanceField, tenths: Option<u16>, capped: bool) {
        let today = self.plan.baselines.split_off(self.earlier);
        self.plan.baselines.extend(today.into_iter().filter(|baseline| !field.is_of(baseline)));
        if let Some(tenths) = tenths {
            let StanceField { leg, surface, eyes } = field;
            self.plan.baselines.push(StanceBaseline { leg, surface, eyes, tenths, capped });
        }
    }
}

/// Stance times of earlier visits that go on: of each leg, surface and eyes the two longest, for the gate of softer surfaces
/// asks for two days.
const CARRIED: usize = 2;

/// What is worth carrying over into the next revision, longest first.
pub(super) fn longest(baselines: &[StanceBaseline]) -> Vec<StanceBaseline> {
    let mut sorted = baselines.to_vec();
    sorted.sort_by_key(|baseline| std::cmp::Reverse(baseline.tenths));
    let mut kept: Vec<StanceBaseline> = Vec::new();
    for baseline in sorted {
        let field = StanceField { leg: baseline.leg, surface: baseline.surface, eyes: baseline.eyes };
        if kept.iter().filter(|other| field.is_of(other)).count() < CARRIED {
            kept.push(baseline);
        }
    }
    kept
}
