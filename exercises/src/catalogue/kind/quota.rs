//! Graded activity: an amount for each time that the calendar raises, whatever the pain was. Minutes and numbers of times are two kinds,
//! because a kind has one form in which its work is recorded.
//!
//! The amount of a day is the first amount and a step for each whole interval since the card was issued, up to the amount agreed on as
//! the goal.
//! Quotas that time and not pain decides, begun below what is tolerated, are what graded activity is (Fordyce 1973, Arch Phys Med Rehabil
//! 54:399-408; recalled); the amounts are the clinician's.

use super::Dose;
use super::rules::{
    DoseField, DoseUnit, KindRules, Lead, PartCourse, PartWork, RunFlags, StepForward, Totals, UsualTimes, WorkForm, even,
    fit,
};
use crate::catalogue::bounds::Quantity;

pub(super) struct QuotaRules;

pub(super) struct QuotaTimesRules;

impl KindRules for QuotaRules {
    fn code(&self) -> u8 {
        12
    }

    fn name(&self) -> &'static str {
        "quota"
    }

    fn parts_name(&self) -> &'static str {
        "quotas"
    }

    fn fields(&self) -> &'static [DoseField] {
        const {
            &[
                DoseField::minutes(Quantity::QuotaMinutes, "minutes", "minutes"),
                DoseField::count(Quantity::QuotaStep, "step", "step"),
                DoseField::count(Quantity::QuotaDays, "every_days", "every_days"),
                DoseField::minutes(Quantity::QuotaGoal, "goal", "goal"),
            ]
        }
    }

    fn values(&self, dose: &Dose) -> Vec<i64> {
        let Dose::Quota { minutes, step, every_days, goal } = *dose else { return Vec::new() };
        [minutes, step, every_days, goal].map(i64::from).to_vec()
    }

    fn dose(&self, values: &[i64]) -> Option<Dose> {
        let [minutes, step, every_days, goal] = *values else { return None };
        Some(Dose::Quota { minutes: fit(minutes)?, step: fit(step)?, every_days: fit(every_days)?, goal: fit(goal)? })
    }

    fn parts(&self, _dose: &Dose) -> u8 {
        1
    }

    fn course(&self, dose: &Dose) -> PartCourse {
        let s = if let Dose::Quota { minutes, .. } = *dose { u16::from(minutes) * 60 } else { 0 };
        PartCourse { lead: Lead::AtOnce, rest_s: 0, work: PartWork::Timer { s, moves: false } }
    }

    /// The person sits, types or stands meanwhile and does not look at the screen, so the time goes on when it is off.
    fn flags(&self) -> RunFlags {
        RunFlags { goes_on_unseen: true, ..RunFlags::USUAL }
    }

    fn form(&self) -> WorkForm {
        WorkForm::Timed
    }

    fn unit(&self) -> DoseUnit {
        DoseUnit::Minutes
    }

    fn is_stepped(&self) -> bool {
        false
    }

    fn usual_times(&self) -> UsualTimes {
        UsualTimes::Evening
    }

    fn forward(&self) -> &'static [StepForward] {
        &[]
    }

    fn back(&self) -> &'static [(Quantity, i16)] {
        &[(Quantity::QuotaMinutes, -5), (Quantity::QuotaMinutes, -1)]
    }

    fn after_days(&self, dose: &Dose, days: i64) -> Dose {
        grown(dose, Quantity::QuotaMinutes, days)
    }

    fn dose_of_totals(&self, planned: &Dose, totals: Totals) -> Option<Dose> {
        let Dose::Quota { step, every_days, goal, .. } = *planned else { return None };
        Some(Dose::Quota { minutes: fit(even(totals.amount, 60_000)?)?, step, every_days, goal })
    }
}

impl KindRules for QuotaTimesRules {
    fn code(&self) -> u8 {
        13
    }

    fn name(&self) -> &'static str {
        "quota-times"
    }

    fn parts_name(&self) -> &'static str {
        "quotas"
    }

    fn fields(&self) -> &'static [DoseField] {
        const {
            &[
                DoseField::count(Quantity::Repetitions, "times", "times"),
                DoseField::count(Quantity::QuotaStep, "step", "step"),
                DoseField::count(Quantity::QuotaDays, "every_days", "every_days"),
                DoseField::count(Quantity::QuotaGoal, "goal", "goal"),
            ]
        }
    }

    fn values(&self, dose: &Dose) -> Vec<i64> {
        let Dose::QuotaTimes { times, step, every_days, goal } = *dose else { return Vec::new() };
        [times, step, every_days, goal].map(i64::from).to_vec()
    }

    fn dose(&self, values: &[i64]) -> Option<Dose> {
        let [times, step, every_days, goal] = *values else { return None };
        Some(Dose::QuotaTimes { times: fit(times)?, step: fit(step)?, every_days: fit(every_days)?, goal: fit(goal)? })
    }

    fn parts(&self, _dose: &Dose) -> u8 {
        1
    }

    fn course(&self, dose: &Dose) -> PartCourse {
        let count = if let Dose::QuotaTimes { times, .. } = *dose { times } else { 0 };
        PartCourse { lead: Lead::AtOnce, rest_s: 0, work: PartWork::OwnPace { count } }
    }

    fn form(&self) -> WorkForm {
        WorkForm::Counted
    }

    fn unit(&self) -> DoseUnit {
        DoseUnit::Repetitions
    }

    fn is_stepped(&self) -> bool {
        false
    }

    fn usual_times(&self) -> UsualTimes {
        UsualTimes::Evening
    }

    fn forward(&self) -> &'static [StepForward] {
        &[]
    }

    fn back(&self) -> &'static [(Quantity, i16)] {
        &[(Quantity::Repetitions, -1)]
    }

    fn after_days(&self, dose: &Dose, days: i64) -> Dose {
        grown(dose, Quantity::Repetitions, days)
    }

    fn dose_of_totals(&self, planned: &Dose, totals: Totals) -> Option<Dose> {
        let Dose::QuotaTimes { step, every_days, goal, .. } = *planned else { return None };
        Some(Dose::QuotaTimes { times: fit(totals.amount?)?, step, every_days, goal })
    }
}

/// `dose` with the `amount` that it has `days` days after it was prescribed. It never passes the goal, nor what a run can hold; an amount
/// that is above the goal from the start stays.
fn grown(dose: &Dose, amount: Quantity, days: i64) -> Dose {
    let value = |quantity| dose.value(quantity).unwrap_or_default();
    let whole = days.max(0) / value(Quantity::QuotaDays).max(1);
    let risen = value(amount).saturating_add(value(Quantity::QuotaStep).saturating_mul(whole));
    let most = value(Quantity::QuotaGoal).min(amount.bound().max).max(value(amount));
    dose.with(amount, risen.min(most))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_calendar_raises_the_amount_up_to_the_goal() {
        let sitting = Dose::Quota { minutes: 10, step: 2, every_days: 3, goal: 15 };
        let minutes = |days| sitting.after_days(days).value(Quantity::QuotaMinutes);
        assert_eq!([-5, 0, 2, 3, 5, 6, 8, 9, 400].map(minutes), [10, 10, 10, 12, 12, 14, 14, 15, 15].map(Some));
        let lifting = Dose::QuotaTimes { times: 3, step: 1, every_days: 2, goal: 180 };
        let times = |days| lifting.after_days(days).value(Quantity::Repetitions);
        assert_eq!([1, 2, 1_000].map(times), [3, 4, 50].map(Some), "a run holds fifty movements");
    }

    #[test]
    fn a_goal_below_the_start_lowers_nothing() {
        let dose = Dose::Quota { minutes: 20, step: 5, every_days: 1, goal: 10 };
        assert_eq!(dose.after_days(7), dose);
    }

    #[test]
    fn other_kinds_do_not_grow_by_themselves() {
        let walk = Dose::Go { minutes: 10, effort: 3 };
        assert_eq!(walk.after_days(100), walk);
    }
}
