//! Was the plan followed: the verdict, the counts, and the details.

use super::Finding;
use crate::{Key, Words};
use chrono::NaiveDate;
use exercises::adherence::{AS_AGREED_PERCENT, DoneAsNeeded, DoseKept, ItemAdherence, KofN, Level, PARTLY_PERCENT, Shares};
use exercises::chart::{LegendEntry, Shape};
use exercises::summary::WeekDelay;
use exercises::time::DayNumber;

/// A pause of fewer days than this is only visible in the strings and gets no sentence.
const PAUSE_DAYS: u16 = 3;
/// Least number of sessions in a week for which the review states how late they were.
const FEW_RUNS: u16 = 4;
/// Least number of hours a day for which mornings and afternoons are compared.
const HOURS: usize = 4;

impl Words {
    /// The verdict is that of the shares, summed; the counts tell apart what was done in full and in part. "Partly", and
    /// "96 of 180 sessions in full, 12 in part; together 57%. Last 14 days: 30 of 60, at
    /// least in part."
    pub fn adherence(self, item: &ItemAdherence, start: NaiveDate) -> Finding {
        let (Some(kept), Some(shares)) = (item.kept, item.shares) else {
            return match item.as_needed {
                Some(done) => self.finding(Key::ReviewAsNeeded, self.done_as_needed(done, start)),
                None => self.finding(Key::ReviewNothingDue, String::new()),
            };
        };
        let word = match shares.level() {
            Level::AsAgreed => Key::ReviewAsAgreed,
            Level::Partly => Key::ReviewPartly,
            Level::Little => Key::ReviewLittle,
        };
        let lately = item.last14.filter(|lately| lately.done.n < kept.n);
        let figures = [
            Some(match item.slots.partly {
                0 => self.review_sessions_in_full(kept.n, kept.k, percent(kept)),
                // The percentage is of what the verdict is of.
                partly => self.review_sessions_with_parts(kept.n, kept.k, partly, percent(shares.of_whole())),
            }),
            lately.map(|lately| match item.slots.partly {
                0 => self.review_last_14_days(lately.done.k, lately.done.n),
                _ => self.review_last_14_days_with_parts(lately.done.k, lately.done.n),
            }),
        ];
        let figures: Vec<String> = figures.into_iter().flatten().collect();
        let figures = self.sentences(&figures);
        self.finding(word, figures)
    }

    /// Since when the item is no longer done; `None` if it still is.
    pub fn broke_off(self, item: &ItemAdherence, start: NaiveDate) -> Option<String> {
        let broke = item.broke_off?;
        let done = |shares: Shares| self.number(f64::from(shares.thousandths) / 1000.0);
        let (before, after) = (broke.before, broke.after);
        let since = self.date(broke.since.date(start));
        Some(self.review_dropped_off(&since, done(before), before.n, done(after), after.n))
    }

    /// All other facts worth a line: dose, days, figures that are counted separately, pauses, stops.
    pub fn adherence_details(self, item: &ItemAdherence, start: NaiveDate) -> Vec<String> {
        let lines = [
            item.dose.map(|dose| self.dose_kept(dose)),
            item.days.kept.map(|days| self.review_days_met(days.n, days.k)),
            (item.slots.written_in > 0).then(|| self.review_entered_afterwards(item.slots.written_in)),
            self.with_days_off(item),
            (item.days.unrecorded > 0).then(|| self.review_days_unrecorded(item.days.unrecorded)),
            (item.late > 0).then(|| self.review_sessions_late(item.late)),
            (item.moved > 0).then(|| self.review_sessions_moved(item.moved)),
            (item.slots.paused > 0).then(|| self.review_sessions_paused(item.slots.paused)),
            self.pause(item, start),
            self.last_done(item, start),
            (item.extra.runs > 0).then(|| self.review_extra(item.extra.runs)),
            item.as_needed.filter(|_| item.kept.is_some()).map(|done| self.review_as_needed_besides(done.runs)),
            self.stopped(item),
            (item.stops.cut_off > 0).then(|| self.review_interrupted(item.stops.cut_off)),
        ];
        lines.into_iter().flatten().collect()
    }

    /// The last week's delay between reminder and run; `None` for a week with few sessions.
    pub fn delay(self, delays: &[WeekDelay], start: NaiveDate) -> Option<String> {
        let last = delays.last().filter(|last| last.runs >= FEW_RUNS)?;
        let minutes = |seconds: u16| (u32::from(seconds) + 30) / 60;
        let date = self.date(DayNumber(last.week.saturating_mul(7)).date(start));
        let (lower, upper) = (minutes(last.lower_s), minutes(last.upper_s));
        Some(self.review_delay(&date, lower, upper))
    }

    /// The meaning of a mark on a day's string; without a shape, of the string itself.
    pub fn legend(self, shape: Option<Shape>) -> &'static str {
        self.text(match shape {
            Some(Shape::Knot) => Key::ReviewLegendDone,
            Some(Shape::Half) => Key::ReviewLegendPartly,
            Some(Shape::Loop) => Key::ReviewLegendSkipped,
            Some(Shape::Bar) => Key::ReviewLegendDayOff,
            Some(Shape::Cross) => Key::ReviewLegendPaused,
            None => Key::ReviewLegendNotDone,
        })
    }

    /// The meaning of a sign on a day's string.
    pub fn sign(self, sign: LegendEntry) -> &'static str {
        match sign {
            LegendEntry::Mark(shape) => self.legend(Some(shape)),
            LegendEntry::Gap => self.legend(None),
            LegendEntry::Unseen => self.legend_no_record(),
        }
    }

    /// "no record", the meaning of a dotted string.
    pub fn legend_no_record(self) -> &'static str {
        self.text(Key::ReviewLegendNoRecord)
    }

    /// "Before noon 61 of 90, from noon on 12 of 180." `None` if slots are due in few hours of the day only.
    pub fn half_days(self, item: &ItemAdherence) -> Option<String> {
        let hours = &item.rhythm.hours;
        let sum = |of: &dyn Fn(u8) -> bool| {
            let half = hours.iter().filter(|(hour, _)| of(*hour));
            half.fold((0, 0), |(k, n): (u32, u32), (_, one)| (k.saturating_add(one.k), n.saturating_add(one.n)))
        };
        let (am, pm) = (sum(&|hour| hour < 12), sum(&|hour| hour >= 12));
        (hours.len() >= HOURS && am.1 > 0 && pm.1 > 0).then(|| self.review_half_days(am.0, am.1, pm.0, pm.1))
    }

    /// "done 7 times, last on 3 May."
    fn done_as_needed(self, done: DoneAsNeeded, start: NaiveDate) -> String {
        match done.last {
            Some(day) => self.review_done_times(done.runs, &self.date(day.date(start))),
            None => self.text(Key::ReviewNeededNever).to_owned(),
        }
    }

    fn dose_kept(self, dose: DoseKept) -> String {
        let percent = KofN::of(dose.done, dose.of).map_or(0, percent);
        self.part_of_dose(dose.unit, dose.done, dose.of, percent)
    }

    fn with_days_off(self, item: &ItemAdherence) -> Option<String> {
        let with = item.kept_with_days_off.filter(|_| item.slots.day_off > 0)?;
        Some(self.review_with_days_off(item.slots.day_off, with.k, with.n))
    }

    fn pause(self, item: &ItemAdherence, start: NaiveDate) -> Option<String> {
        let gap = item.longest_gap.filter(|gap| gap.days >= PAUSE_DAYS)?;
        let (from, until) = (self.date(gap.from.date(start)), self.date(gap.until.date(start)));
        let pause = self.review_longest_pause(gap.days, &from, &until);
        Some(match gap.unrecorded {
            0 => pause,
            // Something may have been done on these.
            unrecorded => format!("{pause} {}", self.review_pause_unrecorded(unrecorded)),
        })
    }

    fn last_done(self, item: &ItemAdherence, start: NaiveDate) -> Option<String> {
        item.kept?;
        Some(match item.last_done {
            Some(day) => self.review_last_done(&self.date(day.date(start))),
            None => self.text(Key::ReviewNeverDone).to_owned(),
        })
    }

    fn stopped(self, item: &ItemAdherence) -> Option<String> {
        let early = item.stops.stopped.saturating_add(item.stops.trouble);
        let (most, _) = item.stops.after.iter().max_by_key(|(_, runs)| *runs).filter(|_| early > 0)?;
        Some(match early {
            // "After 0 of 1" would say nothing.
            _ if most.of == 1 => self.review_stopped_within_the_part(early),
            1 => self.review_stopped_once(most.done, most.of),
            _ => self.review_stopped_early(early, most.done, most.of),
        })
    }
}

/// The share in whole percent, rounded; but never up to a share that has another word, nor to 100 or 0 unless it is exactly that.
fn percent(share: KofN) -> u32 {
    let (k, n) = (u64::from(share.k), u64::from(share.n.max(1)));
    let rounded = ((200 * k + n) / (2 * n)) as u32;
    let rounded = if k > 0 { rounded.max(1) } else { 0 };
    let not_reached = [PARTLY_PERCENT, AS_AGREED_PERCENT, 100].into_iter().find(|least| !share.reaches(*least));
    not_reached.map_or(rounded, |least| rounded.min(least - 1))
}

#[cfg(test)]
mod tests {
    use super::*;

    fn shown(k: u32, n: u32) -> u32 {
        percent(KofN::of(k, n).expect("something was owed"))
    }

    #[test]
    fn a_percentage_is_the_nearest_one() {
        assert_eq!(
            [(176, 540), (55, 60), (1, 3), (2, 3), (1, 2), (3, 8)].map(|(k, n)| shown(k, n)),
            [33, 92, 33, 67, 50, 38]
        );
        assert_eq!(shown(u32::MAX / 2, u32::MAX), 49, "just below the half");
    }

    #[test]
    fn a_percentage_contradicts_no_word_and_is_neither_all_nor_nothing_unless_it_is() {
        assert_eq!([(796, 1000), (799, 1000), (800, 1000), (804, 1000)].map(|(k, n)| shown(k, n)), [79, 79, 80, 80]);
        assert_eq!([(496, 1000), (499, 1000), (500, 1000)].map(|(k, n)| shown(k, n)), [49, 49, 50]);
        assert_eq!([(999, 1000), (1000, 1000), (1, 1000), (0, 1000)].map(|(k, n)| shown(k, n)), [99, 100, 1, 0]);
        for k in 0..=1000 {
            let share = KofN::of(k, 1000).expect("something was owed");
            assert_eq!(KofN::of(percent(share), 100).map(KofN::level), Some(share.level()), "{k}");
        }
    }
}
