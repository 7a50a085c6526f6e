//! Unites the summaries of one plan, over devices and over time.
//!
//! Rule: within one log the summary with the higher counter counts, for each item and day, each run, and each entry; what
//! it calls a mistake is taken back, and what
//! only an older one tells is kept. Over logs nothing collides, for a log's id is random. An authentic summary is never
//! refused for being old: it fills what is missing. The order of arrival does not matter.

use super::{AlarmOn, Corrections, ItemDay, PainOn, RatedOn, RunOn, SettledOn, Summary, TakenOn, WeekDelay};
use crate::id::{EntryRef, ItemId, LogId, PlanId, RunId};
use crate::time::DayNumber;
use std::collections::{BTreeMap, BTreeSet};

/// One item's day on one device: the device, the day, the item.
pub type ItemDayName = (LogId, DayNumber, ItemId);

/// All summaries of one plan, united. What is much is borrowed from them.
#[derive(Debug, Clone, PartialEq)]
pub struct United<'a> {
    /// The plan.
    pub plan: PlanId,
    /// The devices.
    pub logs: BTreeMap<LogId, DeviceRecord>,
    /// Days within the period of any summary.
    pub covered: BTreeSet<DayNumber>,
    /// Days on which any device has an entry.
    pub seen: BTreeSet<DayNumber>,
    /// Slots of each device, by day and item.
    pub days: BTreeMap<ItemDayName, Vec<&'a ItemDay>>,
    /// Runs of each device.
    pub runs: BTreeMap<(LogId, RunId), &'a RunOn>,
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
pub struct DeviceRecord {
    /// Days within the period of any of its summaries.
    pub covered: BTreeSet<DayNumber>,
    /// The cards that it took, as its newest summary tells.
    pub taken: Vec<TakenOn>,
}

impl DeviceRecord {
    /// The revision in force on `day` as far as days tell: the last one taken on it or before.
    pub fn in_force(&self, day: DayNumber) -> Option<&TakenOn> {
        self.taken.iter().rfind(|taken| taken.day <= day)
    }
}

/// Unites `summaries`; those of another plan than the first one's are left out. `None` for none.
pub fn unite<'a>(summaries: impl IntoIterator<Item = &'a Summary>) -> Option<United<'a>> {
    let mut all: Vec<&Summary> = summaries.into_iter().collect();
    let plan = all.first()?.plan;
    all.retain(|summary| summary.plan == plan);
    all.sort_by_key(|summary| (summary.counter, summary.log, summary.until, summary.from));
    let back = TakenBack::by(&all);
    let mut united = United {
        runs: told(&all, |place, summary| {
            let stands = |run: &&RunOn| back.runs.get(&(summary.log, run.run)).is_none_or(|by| *by <= place);
            summary.runs.iter().filter(stands).map(|run| ((summary.log, run.run), run)).collect()
        }),
        days: told(&all, |_, summary| by_item_day(summary)),
        pain: told(&all, |place, summary| back.standing(place, summary, &summary.pain, |rating| rating.n)),
        settled: told(&all, |place, summary| back.standing(place, summary, &summary.settled, |answer| answer.n)),
        rated: told(&all, |place, summary| back.standing(place, summary, &summary.rated, |rating| rating.n)),
        alarms: told(&all, |_, summary| {
            summary.alarms.iter().map(|alarm| (EntryRef { log: summary.log, n: alarm.n }, *alarm)).collect()
        }),
        ..United::of(plan)
    };
    for summary in all {
        united.take(summary);
    }
    Some(united)
}

/// What all summaries, in the order in which they count, tell of one kind of thing, by name; of one name the last counts.
fn told<'a, K: Ord, T>(all: &[&'a Summary], list: impl Fn(usize, &'a Summary) -> Vec<(K, T)>) -> BTreeMap<K, T> {
    let mut told: Vec<(K, T)> = all.iter().enumerate().flat_map(|(place, summary)| list(place, summary)).collect();
    // The sort is stable: what was told last stays in front of what was told before.
    told.reverse();
    told.sort_by(|one, other| one.0.cmp(&other.0));
    told.dedup_by(|earlier, last| earlier.0 == last.0);
    told.into_iter().collect()
}

fn by_item_day(summary: &Summary) -> Vec<(ItemDayName, Vec<&ItemDay>)> {
    let name = |day: &ItemDay| (summary.log, day.day, day.item);
    let mut days: Vec<&ItemDay> = summary.days.iter().collect();
    days.sort_by_key(|day| name(day));
    days.chunk_by(|one, other| name(one) == name(other)).map(|days| (name(days[0]), days.to_vec())).collect()
}

/// What summaries call a mistake, with the place of the last that does: what those before it tell is taken back.
struct TakenBack {
    runs: BTreeMap<(LogId, RunId), usize>,
    answers: BTreeMap<EntryRef, usize>,
}

impl TakenBack {
    fn by(all: &[&Summary]) -> TakenBack {
        let mut back = TakenBack { runs: BTreeMap::new(), answers: BTreeMap::new() };
        for (place, summary) in all.iter().enumerate() {
            back.runs.extend(summary.corrections.runs.iter().map(|run| ((summary.log, *run), place)));
            let gone = summary.corrections.gone.iter().map(|n| (EntryRef { log: summary.log, n: *n }, place));
            back.answers.extend(gone);
        }
        back
    }

    /// Those answers of the summary at `place` that stand, by name.
    fn standing<T: Copy>(&self, place: usize, of: &Summary, answers: &[T], n: fn(&T) -> u32) -> Vec<(EntryRef, T)> {
        let named = answers.iter().map(|answer| (EntryRef { log: of.log, n: n(answer) }, *answer));
        named.filter(|(name, _)| self.answers.get(name).is_none_or(|by| *by <= place)).collect()
    }
}

impl<'a> United<'a> {
    fn of(plan: PlanId) -> United<'a> {
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

    /// Takes what a summary, newer than all that were taken of its log, tells of the whole.
    fn take(&mut self, summary: &Summary) {
        let log = summary.log;
        let of_log = self.logs.entry(log).or_default();
        of_log.covered.extend(summary.from.through(summary.until));
        of_log.taken.clone_from(&summary.taken);
        of_log.taken.sort_by_key(|taken| (taken.day, taken.revision));
        self.covered.extend(summary.from.through(summary.until));
        self.seen.extend(&summary.seen);
        self.corrections.insert(log, summary.corrections.clone());
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

    /// What is known of one day: everything that a summary can add to it.
    fn on(&self, day: DayNumber) -> OnDay<'_> {
        OnDay {
            seen: self.seen.contains(&day),
            slots: self.days.iter().filter(|((_, of, _), _)| *of == day).collect(),
            runs: self.runs.iter().filter(|(_, run)| run.day == day).map(|(name, run)| (name, *run)).collect(),
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
    slots: Vec<(&'a ItemDayName, &'a Vec<&'a ItemDay>)>,
    runs: Vec<(&'a (LogId, RunId), &'a RunOn)>,
    pain: Vec<(&'a EntryRef, &'a PainOn)>,
    settled: Vec<(&'a EntryRef, &'a SettledOn)>,
    rated: Vec<(&'a EntryRef, &'a RatedOn)>,
    alarms: Vec<(&'a EntryRef, &'a AlarmOn)>,
}

/// What an arriving summary tells.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum ArrivalEffect {
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
pub fn arrival_effect(before: &[Summary], new: &Summary) -> ArrivalEffect {
    let same_plan = before.iter().filter(|summary| summary.plan == new.plan);
    let known = unite(same_plan.clone()).unwrap_or_else(|| United::of(new.plan));
    let Some(with_it) = unite(same_plan.chain([new])) else { return ArrivalEffect::Known };
    let days = |count: usize| u16::try_from(count).unwrap_or(u16::MAX);
    let fresh = new.from.through(new.until).filter(|day| !known.covered.contains(day)).count();
    if fresh > 0 {
        return ArrivalEffect::New { days: days(fresh) };
    }
    if with_it == known || before.contains(new) {
        return ArrivalEffect::Known;
    }
    ArrivalEffect::Filled { days: days(with_it.covered.iter().filter(|day| known.on(**day) != with_it.on(**day)).count()) }
}
