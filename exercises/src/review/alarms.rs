//! What the alarms of all devices together suspend.

use crate::id::AlarmId;
use crate::plan::Plan;
use crate::summary::AlarmOn;
use crate::summary::union::United;
use crate::suspension::{self, Sign, SignKind, Suspends};

/// What the alarms that `newest` does not clear suspend, by alarm.
pub(super) fn suspensions(united: &United<'_>, newest: &Plan) -> Vec<(AlarmId, Suspends)> {
    let uncleared: Vec<&AlarmOn> =
        united.alarms.values().filter(|(_, alarm)| !clears(united, newest, alarm)).map(|(_, alarm)| alarm).collect();
    let signs = signs(united, newest, &uncleared);
    let in_force = suspension::in_force(&signs, None);
    in_force.into_iter().map(|one| (uncleared[one.place].id, one.suspends)).collect()
}

/// Whether `plan` clears this alarm.
pub(super) fn clears(united: &United<'_>, plan: &Plan, alarm: &AlarmOn) -> bool {
    let day = united.shown_day(alarm);
    plan.prescription.cleared.iter().any(|cleared| cleared.clears(alarm.id, alarm.trouble, day))
}

/// What was said on all devices that decides what is suspended, by day and number of the entry.
fn signs(united: &United<'_>, plan: &Plan, alarms: &[&AlarmOn]) -> Vec<Sign> {
    let alarms = alarms.iter().enumerate().map(|(place, alarm)| {
        let kind = SignKind::Alarm { place, trouble: alarm.trouble, circumstances: alarm.circumstances.clone() };
        ((alarm.day, alarm.n), Sign { day: alarm.day.0.into(), item: alarm.item, kind })
    });
    let within =
        united.during.values().filter(|rating| plan.item(rating.item).is_none_or(|item| rating.score <= item.pain_limit));
    let within = within.map(|rating| {
        let sign = Sign { day: rating.day.0.into(), item: Some(rating.item), kind: SignKind::WithinLimit };
        ((rating.day, rating.n), sign)
    });
    let well = united
        .well_again
        .values()
        .map(|said| ((said.day, said.n), Sign { day: said.day.0.into(), item: None, kind: SignKind::WellAgain }));
    let mut all: Vec<_> = alarms.chain(within).chain(well).collect();
    all.sort_by_key(|(when, _)| *when);
    all.into_iter().map(|(_, sign)| sign).collect()
}
