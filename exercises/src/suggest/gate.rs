//! The gates of soft surfaces and closed eyes.
//!
//! Rule (our design, from public safety sheets): a softer surface or closed eyes only after [`GATE_TENTHS`] with eyes open on
//! the firm floor on [`GATE_DAYS`] days, for each leg that is prescribed; soft and closed together never alone from 65 years
//! on, or where the age is not known; and a step never closes the eyes: a clinician does.

use super::Hindrance;
use crate::catalogue::{Eyes, Rung, Surface};
use crate::plan::check::GATE_TENTHS;
use crate::plan::{AgeBand, Leg, Side, StanceBaseline};
use std::collections::BTreeSet;

/// On so many days the gate's time must be reached.
pub const GATE_DAYS: usize = 2;

/// Whether each leg of `side` has reached the gate's time on enough days. `reached` are the days and legs of trials at home
/// with eyes open on the firm floor that lasted it, in tenths of a second; a stance time taken at a visit is a day of its
/// own.
pub fn gate_open(side: Side, at_home: &[(u16, Leg, u32)], at_visits: &[StanceBaseline]) -> bool {
    side.in_turn().iter().flatten().all(|leg| {
        let home: BTreeSet<u16> = at_home
            .iter()
            .filter(|(_, of, tenths)| of == leg && *tenths >= u32::from(GATE_TENTHS))
            .map(|(day, ..)| *day)
            .collect();
        let firm_open = |baseline: &&StanceBaseline| {
            baseline.leg == *leg && baseline.surface == Surface::Firm && baseline.eyes == Eyes::Open
        };
        let visits = at_visits.iter().filter(firm_open).filter(|baseline| baseline.tenths >= GATE_TENTHS).count();
        home.len() + visits >= GATE_DAYS
    })
}

/// Whether a step from `now` to `harder` may be proposed.
pub(super) fn allows(now: &Rung, harder: &Rung, age: Option<AgeBand>, gate_open: bool) -> Result<(), Hindrance> {
    let closed = |rung: &Rung| rung.eyes == Some(Eyes::Closed);
    let soft = |rung: &Rung| rung.surface.is_some_and(Surface::is_soft);
    let young_enough = age.is_some_and(|age| age < AgeBand::From65);
    if closed(harder) && !closed(now) {
        return Err(Hindrance::EyesApart);
    }
    if closed(harder) && soft(harder) && !young_enough {
        return Err(Hindrance::SoftAndClosed);
    }
    if (closed(harder) || soft(harder)) && !gate_open {
        return Err(Hindrance::GateClosed);
    }
    Ok(())
}
