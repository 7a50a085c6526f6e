//! Did they do it: the word, the counts, and what lies behind them.

use super::{Finding, Sentence};
use crate::Words;
use chrono::{Duration, NaiveDate};
use exercises::adherence::{DoseKept, DoseUnit, ItemAdherence, KofN, Level};
use exercises::chart::{LegendEntry, Shape};
use exercises::summary::WeekDelay;

/// A pause shorter than this is told by the strings alone, in days.
const PAUSE_DAYS: u16 = 3;
/// So many hours a day make a morning and an afternoon worth telling apart.
const HOURS: usize = 4;

impl Words {
    /// "Partly", and "96 of 180 slots, 53 %."
    pub fn adherence(self, item: &ItemAdherence) -> Finding {
        let Some(kept) = item.kept else {
            return Finding { word: self.sentence(Sentence::NothingAsked).to_owned(), figures: String::new() };
        };
        let word = match kept.level() {
            Level::AsAgreed => Sentence::AsAgreed,
            Level::Partly => Sentence::Partly,
            Level::Little => Sentence::Little,
        };
        let percent = percent(kept);
        self.finding(word, Sentence::SlotsDone, &[("k", &kept.k), ("n", &kept.n), ("percent", &percent)])
    }

    /// Since when it broke off; nothing where it did not.
    pub fn broke_off(self, item: &ItemAdherence, start: NaiveDate) -> Option<String> {
        let broke = item.broke_off?;
        let values = [broke.before.k, broke.before.n, broke.after.k, broke.after.n];
        Some(self.filled(
            Sentence::BrokeOff,
            &[
                ("date", &self.date(on(start, broke.since))),
                ("before_k", &values[0]),
                ("before_n", &values[1]),
                ("after_k", &values[2]),
                ("after_n", &values[3]),
            ],
        ))
    }

    /// Everything else that is worth a line: dose, days, what stands apart, pauses, stops.
    pub fn adherence_details(self, item: &ItemAdherence, start: NaiveDate) -> Vec<String> {
        let lines = [
            item.dose.map(|dose| self.dose_kept(dose)),
            item.days.kept.map(|days| self.filled(Sentence::DaysKept, &[("k", &days.k), ("n", &days.n)])),
            (item.slots.written_in > 0).then(|| self.filled(Sentence::WrittenIn, &[("n", &item.slots.written_in)])),
            self.with_days_off(item),
            self.with_unrecorded(item),
            (item.slots.paused > 0).then(|| self.filled(Sentence::HeldBackSlots, &[("n", &item.slots.paused)])),
            self.pause(item, start),
            self.last_done(item, start),
            (item.extra.runs > 0).then(|| self.filled(Sentence::Extra, &[("n", &item.extra.runs)])),
            self.stopped(item),
            (item.stops.cut_off > 0).then(|| self.filled(Sentence::CutOff, &[("n", &item.stops.cut_off)])),
        ];
        lines.into_iter().flatten().collect()
    }

    /// The last week's delay between reminder and run.
    pub fn delay(self, delays: &[WeekDelay], start: NaiveDate) -> Option<String> {
        let last = delays.last()?;
        let minutes = |seconds: u16| u32::from(seconds + 30) / 60;
        let date = self.date(on(start, last.week * 7));
        let (lower, upper) = (minutes(last.lower_s), minutes(last.upper_s));
        Some(self.filled(Sentence::Delay, &[("date", &date), ("lower", &lower), ("upper", &upper)]))
    }

    /// What a mark on a day's string means; without a shape, the string itself.
    pub fn legend(self, shape: Option<Shape>) -> &'static str {
        self.sentence(match shape {
            Some(Shape::Knot) => Sentence::LegendDone,
            Some(Shape::Half) => Sentence::LegendPartly,
            Some(Shape::Loop) => Sentence::LegendLeftOut,
            Some(Shape::Bar) => Sentence::LegendExcused,
            Some(Shape::Cross) => Sentence::LegendHeldBack,
            None => Sentence::LegendPassedBy,
        })
    }

    /// What a sign on a day's string means.
    pub fn sign(self, sign: LegendEntry) -> &'static str {
        match sign {
            LegendEntry::Mark(shape) => self.legend(Some(shape)),
            LegendEntry::Gap => self.legend(None),
            LegendEntry::Unseen => self.legend_no_record(),
        }
    }

    /// "no record", for a dotted string.
    pub fn legend_no_record(self) -> &'static str {
        self.sentence(Sentence::LegendNoRecord)
    }

    /// "Before noon 61 of 90, from noon on 12 of 180." Nothing where few hours are asked for.
    pub fn half_days(self, item: &ItemAdherence) -> Option<String> {
        let hours = &item.rhythm.hours;
        let sum = |of: &dyn Fn(u8) -> bool| {
            let half = hours.iter().filter(|(hour, _)| of(*hour));
            half.fold((0, 0), |(k, n), (_, one)| (k + one.k, n + one.n))
        };
        let (am, pm) = (sum(&|hour| hour < 12), sum(&|hour| hour >= 12));
        (hours.len() >= HOURS && am.1 > 0 && pm.1 > 0)
            .then(|| self.filled(Sentence::HalfDays, &[("am_k", &am.0), ("am_n", &am.1), ("pm_k", &pm.0), ("pm_n", &pm.1)]))
    }

    fn dose_kept(self, dose: DoseKept) -> String {
        let what = match dose.unit {
            DoseUnit::HoldSeconds => Sentence::DoseSeconds,
            DoseUnit::Repetitions => Sentence::DoseRepetitions,
            DoseUnit::Trials => Sentence::DoseTrials,
        };
        let percent = KofN::of(dose.done, dose.of).map_or(0, percent);
        self.filled(what, &[("done", &dose.done), ("of", &dose.of), ("percent", &percent)])
    }

    fn with_days_off(self, item: &ItemAdherence) -> Option<String> {
        let with = item.kept_with_days_off.filter(|_| item.slots.day_off > 0)?;
        Some(self.filled(Sentence::WithExcused, &[("excused", &item.slots.day_off), ("k", &with.k), ("n", &with.n)]))
    }

    fn with_unrecorded(self, item: &ItemAdherence) -> Option<String> {
        let with = item.kept_with_unrecorded.filter(|_| item.days.unrecorded > 0)?;
        Some(self.filled(Sentence::WithUnrecorded, &[("days", &item.days.unrecorded), ("k", &with.k), ("n", &with.n)]))
    }

    fn pause(self, item: &ItemAdherence, start: NaiveDate) -> Option<String> {
        let gap = item.longest_gap.filter(|gap| gap.days >= PAUSE_DAYS)?;
        let (from, until) = (self.date(on(start, gap.from)), self.date(on(start, gap.until)));
        Some(self.filled(Sentence::LongestPause, &[("days", &gap.days), ("from", &from), ("until", &until)]))
    }

    fn last_done(self, item: &ItemAdherence, start: NaiveDate) -> Option<String> {
        item.kept?;
        Some(match item.last_done {
            Some(day) => self.filled(Sentence::LastDone, &[("date", &self.date(on(start, day)))]),
            None => self.sentence(Sentence::NeverDone).to_owned(),
        })
    }

    fn stopped(self, item: &ItemAdherence) -> Option<String> {
        let early = item.stops.stopped + item.stops.trouble;
        let (most, _) = item.stops.after.iter().max_by_key(|(_, runs)| *runs).filter(|_| early > 0)?;
        let what = if early == 1 { Sentence::StoppedOnce } else { Sentence::StoppedEarly };
        Some(self.filled(what, &[("n", &early), ("done", &most.done), ("of", &most.of)]))
    }
}

/// The date of a day number.
pub(super) fn on(start: NaiveDate, day: u16) -> NaiveDate {
    start + Duration::days(i64::from(day))
}

/// Whole percent, never rounded up to 100.
fn percent(share: KofN) -> u32 {
    share.k * 100 / share.n.max(1)
}
