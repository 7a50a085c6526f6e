//! A person's own stance times of the last days, to compare today's times with.

use super::History;
use crate::catalogue::Catalogue;
use crate::guide::balance_results;
use crate::plan::{BodySide, Item};
use crate::run::{Balance, SetUp, Trial};
use chrono::NaiveDate;

/// Number of days over which the person's own median is taken, today included.
pub const OWN_DAYS: i64 = 7;

/// The median of a person's own times for one leg, with the phone in one place.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct OwnMedian {
    /// Where the phone was.
    pub set_up: SetUp,
    /// The leg that the person stood on; `None` on both feet.
    pub leg: Option<BodySide>,
    /// The median of the measured trials, in milliseconds.
    pub median_ms: u32,
}

/// The median for that leg and that place of the phone, in milliseconds; `None` if there is none.
pub fn own_median_ms(all: &[OwnMedian], set_up: SetUp, leg: Option<BodySide>) -> Option<u32> {
    all.iter().find(|one| (one.set_up, one.leg) == (set_up, leg)).map(|one| one.median_ms)
}

impl History {
    /// The medians of the measured trials of the item's exercise, on the item's surface and with its eyes open or closed,
    /// over the [`OWN_DAYS`] days up to `today`. One for each place of the phone and leg that has a measured trial.
    pub fn own_medians(&self, item: &Item, catalogue: &Catalogue, today: NaiveDate) -> Vec<OwnMedian> {
        // Looked at before each run, and most exercises are not of balance.
        if !catalogue.get(&item.exercise).is_some_and(|exercise| exercise.kind.is_balance()) {
            return Vec::new();
        }
        let (surface, eyes) = item.conditions(catalogue);
        let recent = self.runs.values().filter(|run| {
            run.exercise == item.exercise && today.signed_duration_since(run.started.date()).num_days() < OWN_DAYS
        });
        let like: Vec<&Balance> = recent
            .filter_map(|run| run.work.balance())
            .filter(|balance| (balance.surface, balance.eyes) == (surface, eyes))
            .collect();
        let of = |set_up: SetUp| {
            let there = like.iter().filter(|balance| balance.set_up == set_up);
            let trials: Vec<Trial> = there.flat_map(|balance| balance.trials.iter().copied()).collect();
            balance_results(&trials).into_iter().map(move |one| OwnMedian { set_up, leg: one.leg, median_ms: one.median_ms })
        };
        SetUp::ALL.into_iter().flat_map(of).collect()
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::catalogue::{Eyes, Surface};
    use crate::id::RunId;
    use crate::plan::BodySide::{Left, Right};
    use crate::review::samples::{catalogue, plan, start};
    use crate::run::SetUp::{AtBreastbone, InPocket, OnSupport};
    use crate::run::{Run, RunEnd, TrialEnd, Work};
    use crate::time::Offsets;
    use chrono::Duration;

    fn balance(n: u32, days_ago: i64, set_up: SetUp, trials: &[(BodySide, u32)]) -> Run {
        let item = plan().prescription.items[1].clone();
        let noon = (today() - Duration::days(days_ago)).and_hms_opt(12, 0, 0).expect("a time").and_utc();
        let (surface, eyes) = item.conditions(&catalogue());
        let trials = trials.iter().map(|(leg, held_ms)| Trial { leg: Some(*leg), held_ms: *held_ms, end: TrialEnd::Touch });
        Run {
            id: RunId(n),
            item: item.id,
            exercise: item.exercise,
            rung: item.rung,
            dose: item.dose,
            slot: None,
            started: Offsets::fixed(0).stamp(noon.timestamp_millis()),
            live: true,
            end: RunEnd::Completed,
            paused_ms: 0,
            interruptions: Vec::new(),
            work: Work::Balance(Balance { set_up, surface, eyes, trials: trials.collect() }),
        }
    }

    fn today() -> NaiveDate {
        start() + Duration::days(20)
    }

    fn medians(runs: &[Run]) -> Vec<(SetUp, BodySide, u32)> {
        let history = History { runs: runs.iter().map(|run| (run.id, run.clone())).collect(), ..History::default() };
        let own = history.own_medians(&plan().prescription.items[1], &catalogue(), today());
        own.iter().map(|one| (one.set_up, one.leg.expect("a leg"), one.median_ms)).collect()
    }

    #[test]
    fn places_of_the_phone_are_never_mixed() {
        let runs = [
            balance(1, 0, OnSupport, &[(Left, 10_000), (Left, 12_000), (Right, 20_000)]),
            balance(2, 1, InPocket, &[(Left, 30_000)]),
            balance(3, 2, OnSupport, &[(Left, 15_001)]),
        ];
        assert_eq!(medians(&runs), [(OnSupport, Left, 12_000), (OnSupport, Right, 20_000), (InPocket, Left, 30_000)]);
        let history = History { runs: runs.into_iter().map(|run| (run.id, run)).collect(), ..History::default() };
        let own = history.own_medians(&plan().prescription.items[1], &catalogue(), today());
        assert_eq!(own_median_ms(&own, InPocket, Some(Left)), Some(30_000));
        assert_eq!(own_median_ms(&own, AtBreastbone, Some(Left)), None);
    }

    #[test]
    fn only_the_last_seven_days_under_the_same_conditions_and_what_was_measured() {
        let mut soft = balance(3, 0, OnSupport, &[(Left, 1_000)]);
        let mut cut_off = balance(4, 0, OnSupport, &[(Left, 1_000)]);
        for run in [&mut soft, &mut cut_off] {
            let Work::Balance(balance) = &mut run.work else { panic!("a balance run") };
            match run.id {
                RunId(3) => (balance.surface, balance.eyes) = (Surface::Foam, Eyes::Open),
                _ => balance.trials[0].end = TrialEnd::CutOff,
            }
        }
        let mut other = balance(5, 0, OnSupport, &[(Left, 1_000)]);
        other.exercise = plan().prescription.items[0].exercise.clone();
        let runs = [
            balance(1, 6, OnSupport, &[(Left, 10_000), (Left, 11_000)]),
            balance(2, 7, OnSupport, &[(Left, 90_000)]),
            soft,
            cut_off,
            other,
        ];
        assert_eq!(medians(&runs), [(OnSupport, Left, 10_500)], "an even count takes the mean of the two middle ones");
        assert_eq!(medians(&[]), []);
    }
}
