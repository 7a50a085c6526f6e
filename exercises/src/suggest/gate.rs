//! The conditions for steps to soft surfaces and with closed eyes.
//!
//! Our design, from public safety sheets: a softer surface or closed eyes only after [`GATE_TENTHS`] with eyes open on the
//! firm floor on [`GATE_DAYS`] days, for each leg that is prescribed; a soft surface together with closed eyes never without
//! supervision from 65 years on, or if the age is not known; and no step changes open eyes to closed ones, because only the
//! clinician prescribes that.

use crate::catalogue::{Eyes, Rung, Surface};
use crate::plan::check::{GATE_DAYS, GATE_TENTHS};
use crate::plan::stance::days_reached;
use crate::plan::{AgeBand, BodySide, Side, StanceBaseline};
use chrono::NaiveDate;

/// The reason why the next step is not allowed.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Hindrance {
    /// There is no harder rung.
    AtTheTop,
    /// A softer surface or closed eyes need 30 s with eyes open on the firm floor on two days, for each leg.
    GateClosed,
    /// A soft surface with closed eyes is not for practice without supervision from 65 years on, or if the age is not known.
    SoftAndClosed,
    /// The step would change open eyes to closed ones, which only the clinician prescribes.
    EyesApart,
    /// It is a test, which no step changes.
    Test,
    /// It is of a kind that no step changes: breathing, care, a prompt.
    NotStepped,
    /// The calendar raises it, not a step.
    ByCalendar,
    /// The calendar has raised it to its goal.
    GoalReached,
    /// It is done whenever the patient needs it, which no step changes.
    AsNeeded,
    /// Its phase begins later.
    ToCome,
    /// Its phase is over.
    Over,
    /// The catalogue does not have the exercise or the rung.
    Unknown,
}

/// Whether each leg of `side` has reached the required time on enough days; never where no leg is meant. `at_home` holds the days, legs and tenths of a
/// second of trials at home with eyes open on the firm floor; `at_visits` the plan's dated stance times.
pub fn gate_open(side: Side, at_home: &[(NaiveDate, BodySide, u32)], at_visits: &[StanceBaseline]) -> bool {
    let legs: Vec<&BodySide> = side.in_turn().iter().flatten().collect();
    !legs.is_empty()
        && legs.into_iter().all(|leg| {
            let long = at_home.iter().filter(|(_, of, tenths)| of == leg && *tenths >= u32::from(GATE_TENTHS));
            days_reached(at_visits, *leg, GATE_TENTHS, long.map(|(day, ..)| *day)) >= GATE_DAYS
        })
}

/// Whether a step from `now` to `harder` may be proposed; otherwise the reason why not.
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
