//! The contents of a summary, line by line.

use crate::date::upper;
use crate::review::Names;
use crate::{Key, Words};
use chrono::NaiveDate;
use exercises::id::ItemId;
use exercises::summary::Summary;
use exercises::time::DayNumber;
use std::collections::BTreeMap;

impl Words {
    /// Everything that is in `summary`, in plain words; empty parts are not mentioned.
    pub fn handed_over(self, summary: &Summary, names: Names<'_>, start: NaiveDate) -> Vec<String> {
        let date = |day: DayNumber| self.date(day.date(start));
        let days = summary.until.days_since(summary.from) + 1;
        let trials: usize =
            summary.runs.iter().filter_map(|run| run.stance.as_ref()).map(|stance| stance.trials.len()).sum();
        let counted = |n: usize, line: fn(Words, usize) -> String| (n > 0).then(|| line(self, n));
        let mut lines = vec![self.shared_days(days, &date(summary.from), &date(summary.until))];
        lines.extend((!summary.taken.is_empty()).then(|| self.text(Key::SharedCard).to_owned()));
        lines.extend(slots(summary).into_iter().map(|(item, n)| self.shared_sessions(n, &upper(&names.item(item)))));
        lines.extend(counted(summary.runs.len(), Words::shared_exercises_done));
        lines.extend(counted(trials, Words::shared_attempts));
        lines.extend((!summary.runs.is_empty()).then(|| self.text(Key::SharedTiming).to_owned()));
        lines.extend(counted(summary.mornings.len(), Words::shared_pain));
        lines.extend(counted(summary.during.len(), Words::shared_during));
        lines.extend(counted(summary.well_again.len(), Words::shared_well_again));
        lines.extend(counted(summary.settled.len(), Words::shared_settled));
        lines.extend(counted(summary.rated.len(), Words::shared_ratings));
        let alarms = summary.alarms.iter();
        lines.extend(alarms.map(|alarm| self.shared_alarms(&date(alarm.day), self.trouble(alarm.trouble))));
        lines.extend(counted(summary.corrections.count() as usize, Words::shared_corrections));
        let wrong = &summary.wrong_clock;
        let misdated = wrong.runs.len() + wrong.mornings.len() + wrong.during.len() + wrong.rated.len();
        lines.extend(counted(misdated, Words::shared_wrong_clock));
        lines.extend((!summary.delays.is_empty()).then(|| self.text(Key::SharedDelays).to_owned()));
        lines
    }
}

/// The number of slots of each item, ordered by item.
fn slots(summary: &Summary) -> BTreeMap<ItemId, usize> {
    let mut by_item = BTreeMap::new();
    for day in &summary.days {
        *by_item.entry(day.item).or_insert(0) += day.slots.len();
    }
    by_item
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::Locale;
    use crate::review::Names;
    use exercises::alarm::Trouble;
    use exercises::history::Mark;
    use exercises::id::{AlarmId, ComplaintId, LogId, PlanId};
    use exercises::score::Score;
    use exercises::summary::{AlarmOn, DuringOn, ItemDay, MorningOn};
    use std::collections::BTreeSet;

    fn empty() -> Summary {
        Summary {
            plan: PlanId([1; 8]),
            log: LogId([2; 8]),
            former: Vec::new(),
            counter: 1,
            from: DayNumber(0),
            until: DayNumber(6),
            taken: Vec::new(),
            seen: BTreeSet::new(),
            days: Vec::new(),
            runs: Vec::new(),
            mornings: Vec::new(),
            during: Vec::new(),
            well_again: Vec::new(),
            settled: Vec::new(),
            rated: Vec::new(),
            alarms: Vec::new(),
            delays: Vec::new(),
            note: None,
            corrections: Default::default(),
            wrong_clock: Default::default(),
        }
    }

    fn said(summary: &Summary) -> Vec<String> {
        let words = Words::new(Locale::En);
        let plan = crate::review::samples::plan();
        let exercises = crate::review::samples::exercises();
        let start = NaiveDate::from_ymd_opt(2026, 10, 28).expect("a date");
        words.handed_over(summary, Names::of_prescription(words, &plan.prescription, &exercises), start)
    }

    #[test]
    fn an_empty_period_names_its_days_only() {
        assert_eq!(said(&empty()), ["7 days: from 28 October to 3 November, counted from the plan's start"]);
    }

    #[test]
    fn everything_in_the_summary_is_named() {
        let day = |day| ItemDay { day, item: ItemId(1), revision: 1, slots: vec![(0, Mark::Done), (1, Mark::NotDone)] };
        let summary = Summary {
            days: vec![day(DayNumber(0)), day(DayNumber(1))],
            mornings: vec![MorningOn { n: 4, day: DayNumber(0), complaint: ComplaintId(1), score: Score::at_most_ten(3) }],
            during: vec![DuringOn { n: 6, day: DayNumber(0), item: ItemId(1), score: Score::at_most_ten(2) }],
            alarms: vec![AlarmOn {
                n: 5,
                id: AlarmId([9; 8]),
                day: DayNumber(2),
                trouble: Trouble::NearlyFell,
                item: None,
                circumstances: BTreeSet::new(),
            }],
            ..empty()
        };
        let lines = said(&summary);
        assert!(lines[1].contains("each of 4 sessions"), "{lines:?}");
        assert_eq!(
            lines[2..],
            [
                "1 rating of pain in the morning",
                "1 rating of pain while exercising",
                "Something was wrong on 30 October: I nearly fell"
            ]
        );
    }
}
