//! Dose done out of the dose asked for, by kind.
//!
//! Rule: seconds held out of the seconds asked for; repetitions done out of those asked for; balance trials attempted out of those
//! asked for (seconds on one leg are a result, never adherence). Each slot's dose is capped at its own target, so that doing more
//! on one day never hides a slot that was not done on another; the excess is counted separately. Frequency and duration are
//! separate figures because they differ in the same people (60.7 % and 70.9 %: Medina-Mirapeix 2009, BMC Musculoskelet Disord
//! 10:155, 10.1186/1471-2474-10-155; seen).

use super::SlotOn;
use crate::history::Mark;
use crate::plan::Item;

pub use crate::catalogue::kind::DoseUnit;

/// Dose done out of the dose asked for.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct DoseKept {
    /// The unit of the amounts.
    pub unit: DoseUnit,
    /// Amount done, each slot capped at its target; whole units, rounded down.
    pub done: u32,
    /// Amount asked for, in whole units.
    pub of: u32,
    /// Amount done beyond the target within slots; whole units, rounded down.
    pub over: u32,
}

/// What one run of `item` asks for, all sides together: its unit, and the amount in the units of [`crate::run::Share`].
pub fn target(item: &Item) -> (DoseUnit, u32) {
    let sides = item.side.in_turn().len() as u32;
    (item.dose.kind().rules().unit(), sides * u32::from(item.dose.parts()) * item.dose.part_amount())
}

/// The dose over the slots that were asked for, as [`super::SlotCounts::kept`] counts them; slots in another unit than `unit` are
/// left out. `None` if nothing was asked for.
pub fn dose_kept(slots: &[SlotOn], unit: DoseUnit) -> Option<DoseKept> {
    let counted = slots.iter().filter(|slot| slot.unit == unit && asked_for(slot));
    let sum = |(done, of, over): (u64, u64, u64), slot: &SlotOn| {
        (done + u64::from(slot.dose.done), of + u64::from(slot.dose.of), over + u64::from(slot.over))
    };
    let (done, of, over) = counted.fold((0, 0, 0), sum);
    let whole = |amount: u64| u32::try_from(amount / unit.divisor()).unwrap_or(u32::MAX);
    (of > 0).then(|| DoseKept { unit, done: whole(done), of: whole(of), over: whole(over) })
}

fn asked_for(slot: &SlotOn) -> bool {
    match slot.mark {
        Mark::Done | Mark::Partly(_) | Mark::Skipped(_) => true,
        Mark::NotDone => slot.seen,
        Mark::DayOff(_) | Mark::Paused | Mark::NoSuchHour | Mark::Due | Mark::ToCome => false,
    }
}

#[cfg(test)]
mod tests {
    use super::super::samples::{DAY_OFF, PARTLY, SKIPPED, day, slot, unseen};
    use super::*;
    use crate::catalogue::{Dose, Tempo};
    use crate::plan::Side;
    use crate::review::samples::item;
    use crate::run::Share;

    #[test]
    fn each_slot_is_capped_so_that_doing_more_hides_no_missed_slot() {
        let overdone = SlotOn { over: 20_000, ..slot(0, 0, Mark::Done) };
        let kept = dose_kept(&[overdone, slot(0, 1, Mark::NotDone)], DoseUnit::HoldSeconds);
        assert_eq!(kept, Some(DoseKept { unit: DoseUnit::HoldSeconds, done: 30, of: 60, over: 20 }));
    }

    #[test]
    fn unfinished_parts_count_partially() {
        let kept = dose_kept(&day(0, &[Mark::Done, PARTLY, SKIPPED]), DoseUnit::HoldSeconds).expect("asked for");
        assert_eq!((kept.done, kept.of), (40, 90));
    }

    #[test]
    fn milliseconds_are_not_rounded_up_to_a_second() {
        let almost = SlotOn { dose: Share { done: 29_999, of: 30_000 }, ..slot(0, 0, PARTLY) };
        assert_eq!(dose_kept(&[almost], DoseUnit::HoldSeconds).map(|kept| kept.done), Some(29));
    }

    #[test]
    fn only_slots_that_were_asked_for_count() {
        let mut slots = day(0, &[DAY_OFF, Mark::Paused, Mark::NoSuchHour]);
        slots.extend(unseen(day(1, &[Mark::NotDone])));
        assert_eq!(dose_kept(&slots, DoseUnit::HoldSeconds), None);
    }

    #[test]
    fn different_units_are_never_added_up() {
        let trials = SlotOn { unit: DoseUnit::Trials, dose: Share { done: 3, of: 3 }, ..slot(1, 0, Mark::Done) };
        let slots = [slot(0, 0, Mark::Done), trials];
        assert_eq!(dose_kept(&slots, DoseUnit::Trials).map(|kept| (kept.done, kept.of)), Some((3, 3)));
        assert_eq!(dose_kept(&slots, DoseUnit::HoldSeconds).map(|kept| (kept.done, kept.of)), Some((30, 30)));
    }

    #[test]
    fn the_target_of_one_run_by_kind_and_sides() {
        let hold = Dose::Hold { repetitions: 3, hold_s: 10, rest_s: 10 };
        let tempo = Tempo { up_s: 2, hold_s: 0, down_s: 2 };
        let reps = Dose::Reps { sets: 2, repetitions: 8, rest_s: 60, tempo };
        let balance = Dose::Balance { trials: 3, target_s: 30, rest_s: 30 };
        for (dose, side, unit, of) in [
            (hold, Side::Neither, DoseUnit::HoldSeconds, 30_000),
            (hold, Side::Both, DoseUnit::HoldSeconds, 60_000),
            (reps, Side::Left, DoseUnit::Repetitions, 16),
            (reps, Side::Both, DoseUnit::Repetitions, 32),
            (balance, Side::Both, DoseUnit::Trials, 6),
        ] {
            assert_eq!(target(&item(dose, side)), (unit, of), "{dose:?} {side:?}");
        }
    }
}
