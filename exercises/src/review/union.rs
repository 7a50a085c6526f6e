//! Unites the summaries of one plan, over devices and over time.
//!
//! Rule: within one log the summary with the higher counter counts, for each item and day, each run, and each entry; what
//! it calls a mistake is taken back, and what
//! only an older one tells is kept. Over logs nothing collides, for a log's id is random. An authentic summary is never
//! refused for being old: it fills what is missing. The order of arrival does not matter.

use crate::id::{EntryRef, ItemId, LogId, PlanId, RunId};
use crate::summary::{AlarmOn, Corrections, ItemDay, PainOn, RatedOn, RunOn, SettledOn, Summary, TakenOn, WeekDelay};
use std::collections::{BTreeMap, BTreeSet};

/// One item's day on one device: the device, the day, the item.
pub type ItemDayName = (LogId, u16, ItemId);

/// All summaries of one plan, united.
#[derive(Debug, Clone, PartialEq)]
pub struct United {
    /// The plan.
    pub plan: PlanId,
    /// The devices.
    pub logs: BTreeMap<LogId, OfLog>,
    /// Days within the period of any summary.
    pub covered: BTreeSet<u16>,
    /// Days on which any device has an entry.
    pub seen: BTreeSet<u16>,
    /// Slots of each device, by day and item.
    pub days: BTreeMap<ItemDayName, Vec<ItemDay>>,
    /// Runs of each device.
    pub runs: BTreeMap<(LogId, RunId), RunOn>,
    /// Pain ratings.
    pub pain: BTreeMap<EntryRef, PainOn>,
    /// Answers about the morning after.
    pub settled: BTreeMap<EntryRef, SettledOn>,
    /// Ratings of activities.
    pub rated: BTreeMap<EntryRef, RatedOn>,
    /// Alarms.
    pub alarms: BTreeMap<EntryRef, AlarmOn>,
    /// Delays after the reminder, by device and week: of two summaries the one that knows more runs, then the newer.
    pub delays: BTreeMap<(LogId, u16), WeekDelay>,
    /// Notes, older summaries first, none twice.
    pub notes: Vec<String>,
    /// What each device has corrected, as its newest summary tells.
    pub corrections: BTreeMap<LogId, Corrections>,
}

/// What is known of one device as a whole.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct OfLog {
    /// Days within the period of any of its summaries.
    pub covered: BTreeSet<u16>,
    /// The cards that it took, as its newest summary tells.
    pub taken: Vec<TakenOn>,
}

impl OfLog {
    /// The revision in force on `day` as far as days tell: the last one taken on it or before.
    pub fn in_force(&self, day: u16) -> Option<&TakenOn> {
        self.taken.iter().rfind(|taken| taken.day <= day)
    }
}

/// Unites `summaries`; those of another plan than the first one's are left out. `None` for none.
pub fn unite<'a>(summaries: impl IntoIterator<Item = &'a Summary>) -> Option<United> {
    let mut all: Vec<&Summary> = summaries.into_iter().collect();
    let plan = all.first()?.plan;
    all.retain(|summary| summary.plan == plan);
    all.sort_by_key(|summary| (summary.counter, summary.log, summary.until, summary.from));
    let mut united = United::of(plan);
    for summary in all {
        united.take(summary);
    }
    Some(united)
}

impl United {
    fn of(plan: PlanId) -> United {
        United {
            plan,
            logs: BTreeMap::new(),
            covered: BTreeSet::new(),
            seen: BTreeSet::new(),
            days: BTreeMap::new(),
            runs: BTreeMap::new(),
            pain: BTreeMap::new(),
            settled: BTreeMap::new(),
            rated: BTreeMap::new(),
            alarms: BTreeMap::new(),
            delays: BTreeMap::new(),
            notes: Vec::new(),
            corrections: BTreeMap::new(),
        }
    }

    /// Takes in a summary that is newer than all that were taken in of its log.
    fn take(&mut self, summary: &Summary) {
        let log = summary.log;
        let of_log = self.logs.entry(log).or_default();
        of_log.covered.extend(summary.from..=summary.until);
        of_log.taken.clone_from(&summary.taken);
        of_log.taken.sort_by_key(|taken| (taken.day, taken.revision));
        self.covered.extend(summary.from..=summary.until);
        self.seen.extend(&summary.seen);
        self.put_right(log, &summary.corrections);
        let mut told: BTreeMap<ItemDayName, Vec<ItemDay>> = BTreeMap::new();
        for day in &summary.days {
            told.entry((log, day.day, day.item)).or_default().push(day.clone());
        }
        self.days.extend(told);
        self.runs.extend(summary.runs.iter().map(|run| ((log, run.run), run.clone())));
        let name = |n| EntryRef { log, n };
        self.pain.extend(summary.pain.iter().map(|rating| (name(rating.n), *rating)));
        self.settled.extend(summary.settled.iter().map(|answer| (name(answer.n), *answer)));
        self.rated.extend(summary.rated.iter().map(|rating| (name(rating.n), *rating)));
        self.alarms.extend(summary.alarms.iter().map(|alarm| (name(alarm.n), *alarm)));
        for delay in &summary.delays {
            let known = self.delays.entry((log, delay.week)).or_insert(*delay);
            if delay.runs >= known.runs {
                *known = *delay;
            }
        }
        if let Some(note) = summary.note.as_ref().filter(|note| !self.notes.contains(note)) {
            self.notes.push(note.clone());
        }
    }

    /// Takes back what older summaries tell and the newest one calls a mistake.
    fn put_right(&mut self, log: LogId, corrections: &Corrections) {
        corrections.runs.iter().for_each(|run| drop(self.runs.remove(&(log, *run))));
        for n in &corrections.gone {
            let name = EntryRef { log, n: *n };
            self.pain.remove(&name);
            self.settled.remove(&name);
            self.rated.remove(&name);
        }
        self.corrections.insert(log, corrections.clone());
    }

    /// What is known of one day: everything that a summary can add to it.
    fn on(&self, day: u16) -> OnDay<'_> {
        OnDay {
            seen: self.seen.contains(&day),
            slots: self.days.iter().filter(|((_, of, _), _)| *of == day).collect(),
            runs: self.runs.iter().filter(|(_, run)| run.day == day).collect(),
            pain: self.pain.iter().filter(|(_, rating)| rating.day == day).collect(),
            settled: self.settled.iter().filter(|(_, answer)| answer.day == day).collect(),
            rated: self.rated.iter().filter(|(_, rating)| rating.day == day).collect(),
            alarms: self.alarms.iter().filter(|(_, alarm)| alarm.day == day).collect(),
        }
    }
}

#[derive(PartialEq)]
struct OnDay<'a> {
    seen: bool,
    slots: Vec<(&'a ItemDayName, &'a Vec<ItemDay>)>,
    runs: Vec<(&'a (LogId, RunId), &'a RunOn)>,
    pain: Vec<(&'a EntryRef, &'a PainOn)>,
    settled: Vec<(&'a EntryRef, &'a SettledOn)>,
    rated: Vec<(&'a EntryRef, &'a RatedOn)>,
    alarms: Vec<(&'a EntryRef, &'a AlarmOn)>,
}

/// What an arriving summary tells.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Gain {
    /// Days that no summary covered before.
    New {
        /// How many.
        days: u16,
    },
    /// Days that were covered, of which it tells something that was not known.
    Filled {
        /// How many; 0 where it only brings a note, a card's taking or a week's delay.
        days: u16,
    },
    /// Everything was known.
    Known,
}

/// What `new` adds to `before`, all of one plan.
pub fn gain(before: &[Summary], new: &Summary) -> Gain {
    let same_plan = before.iter().filter(|summary| summary.plan == new.plan);
    let known = unite(same_plan.clone()).unwrap_or_else(|| United::of(new.plan));
    let Some(with_it) = unite(same_plan.chain([new])) else { return Gain::Known };
    let days = |count: usize| u16::try_from(count).unwrap_or(u16::MAX);
    let fresh = (new.from..=new.until).filter(|day| !known.covered.contains(day)).count();
    if fresh > 0 {
        return Gain::New { days: days(fresh) };
    }
    if with_it == known || before.contains(new) {
        return Gain::Known;
    }
    Gain::Filled { days: days(with_it.covered.iter().filter(|day| known.on(**day) != with_it.on(**day)).count()) }
}
