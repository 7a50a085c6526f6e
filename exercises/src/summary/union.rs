//! Unites the summaries of one plan from several devices and periods.
//!
//! Within one log, the summary with the higher number counts, for each item and day, each run and each entry. What it reports
//! as a mistake is removed, and what only an older summary contains is kept. Records of different logs never collide, because
//! log ids are random. A log that was copied, moved or put back goes on under another id; runs and entries from before keep the
//! id under which they were made, so that they count once, and what a device no longer has after it was put back is kept. An authentic summary is never refused for being old, because it may fill gaps. The order of arrival
//! does not matter.

use super::{
    AlarmOn, Corrections, DuringOn, ItemDay, MorningOn, RatedOn, RunOn, SettledOn, Summary, TakenOn, WeekDelay, WellAgainOn,
};
use crate::id::{AlarmId, EntryRef, ItemId, LogId, PlanId, RunId};
use crate::time::DayNumber;
use std::collections::{BTreeMap, BTreeSet};

/// Identifies one item on one day on one device: the device's log, the day, the item.
pub type ItemDayName = (LogId, DayNumber, ItemId);

/// All summaries of one plan, united. Large parts are borrowed from the summaries.
#[derive(Debug, Clone, PartialEq)]
pub struct United<'a> {
    /// The plan that all the summaries are about.
    pub plan: PlanId,
    /// What is known of each device.
    pub logs: BTreeMap<LogId, DeviceRecord>,
    /// Days that any summary covers.
    pub covered: BTreeSet<DayNumber>,
    /// Days on which an entry was made on any device.
    pub seen: BTreeSet<DayNumber>,
    /// How the slots went on each device, by day and item.
    pub days: BTreeMap<ItemDayName, Vec<&'a ItemDay>>,
    /// The runs on each device.
    pub runs: BTreeMap<(LogId, RunId), &'a RunOn>,
    /// Ratings of the pain in the morning.
    pub mornings: BTreeMap<EntryRef, MorningOn>,
    /// Ratings of the pain while doing an item.
    pub during: BTreeMap<EntryRef, DuringOn>,
    /// When the person said to be well again.
    pub well_again: BTreeMap<EntryRef, WellAgainOn>,
    /// Answers to "settled by this morning?".
    pub settled: BTreeMap<EntryRef, SettledOn>,
    /// Ratings of named activities.
    pub rated: BTreeMap<EntryRef, RatedOn>,
    /// The alarms by name, with the log of the entry that raised each: a log that was restored repeats numbers, not names.
    pub alarms: BTreeMap<AlarmId, (LogId, AlarmOn)>,
    /// How long after the reminder runs began, by device and week. Of two summaries the one with more runs in that week
    /// counts; with the same number, the newer.
    pub delays: BTreeMap<(LogId, u16), WeekDelay>,
    /// The notes, those of older summaries first; the same note only once.
    pub notes: Vec<String>,
    /// What was corrected on each device, according to its newest summary.
    pub corrections: BTreeMap<LogId, Corrections>,
    /// Days on which a device's log began to go on under another id, because it had been copied, moved or put back.
    pub renewed: BTreeSet<DayNumber>,
    /// What was recorded while a device's clock was wrong.
    pub wrong_clock: UnitedWrongClock<'a>,
    /// The first id of each log.
    pub(crate) firsts: BTreeMap<LogId, LogId>,
}

/// What was recorded on all devices while their clocks were wrong. The days in it are those that the clocks showed.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct UnitedWrongClock<'a> {
    /// The runs.
    pub runs: BTreeMap<(LogId, RunId), &'a RunOn>,
    /// Ratings of the pain in the morning.
    pub mornings: BTreeMap<EntryRef, MorningOn>,
    /// Ratings of the pain while doing an item.
    pub during: BTreeMap<EntryRef, DuringOn>,
    /// Ratings of named activities.
    pub rated: BTreeMap<EntryRef, RatedOn>,
    /// The days that the clocks showed for alarms raised then. In [`United::alarms`] these have the day of what was recorded before them.
    pub alarms: BTreeMap<AlarmId, DayNumber>,
    /// Days by which a device's clock was ahead when it made its newest summary, by device.
    pub ahead_days: BTreeMap<LogId, u16>,
}

/// What is known about one device.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct DeviceRecord {
    /// Days that any of its summaries covers.
    pub covered: BTreeSet<DayNumber>,
    /// The cards that it took, according to its newest summary.
    pub taken: Vec<TakenOn>,
    /// Whether the log goes on under another id.
    pub goes_on: bool,
}

impl DeviceRecord {
    /// The card in force on `day`: the last one taken on or before that day.
    pub fn in_force(&self, day: DayNumber) -> Option<&TakenOn> {
        self.taken.iter().rfind(|taken| taken.day <= day)
    }
}

/// Unites `summaries`; those of another plan than the first one's are left out. `None` if there are no summaries.
pub fn unite<'a>(summaries: impl IntoIterator<Item = &'a Summary>) -> Option<United<'a>> {
    let mut all: Vec<&Summary> = summaries.into_iter().collect();
    let plan = all.first()?.plan;
    all.retain(|summary| summary.plan == plan);
    // A log that goes on under another id is newer than it was before, whatever its number was then.
    all.sort_by_key(|summary| (summary.former.len(), summary.counter, summary.log, summary.until, summary.from));
    let back = TakenBack::by(&all);
    let mut united = United {
        runs: told(&all, |place, summary| {
            let named = summary.runs.iter().map(|run| ((summary.log_of_run(run.run), run.run), run));
            named.filter(|(name, _)| back.runs.get(name).is_none_or(|by| *by <= place)).collect()
        }),
        days: told(&all, |_, summary| by_item_day(summary)),
        mornings: told(&all, |place, summary| back.standing(place, summary, &summary.mornings, |rating| rating.n)),
        during: told(&all, |place, summary| back.standing(place, summary, &summary.during, |rating| rating.n)),
        well_again: told(&all, |place, summary| back.standing(place, summary, &summary.well_again, |said| said.n)),
        settled: told(&all, |place, summary| back.standing(place, summary, &summary.settled, |answer| answer.n)),
        rated: told(&all, |place, summary| back.standing(place, summary, &summary.rated, |rating| rating.n)),
        alarms: told(&all, |_, summary| {
            summary.alarms.iter().map(|alarm| (alarm.id, (summary.log_of_entry(alarm.n), alarm.clone()))).collect()
        }),
        ..United::of(plan)
    };
    united.wrong_clock = wrong_clock(&all, &united, &back);
    for summary in all {
        united.take(summary);
    }
    united.place_alarms();
    Some(united)
}

/// Collects one kind of record from all summaries, by key. `all` is sorted so that of two records with the same key the later
/// one counts.
fn told<'a, K: Ord, T>(all: &[&'a Summary], list: impl Fn(usize, &'a Summary) -> Vec<(K, T)>) -> BTreeMap<K, T> {
    let mut told: Vec<(K, T)> = all.iter().enumerate().flat_map(|(place, summary)| list(place, summary)).collect();
    // The sort is stable, so for each key the last record stays in front of the earlier ones.
    told.reverse();
    told.sort_by(|one, other| one.0.cmp(&other.0));
    told.dedup_by(|earlier, last| earlier.0 == last.0);
    told.into_iter().collect()
}

/// What was recorded by wrong clocks. What any summary, also an earlier one, knows a true day of is left out.
fn wrong_clock<'a>(all: &[&'a Summary], known: &United<'_>, back: &TakenBack) -> UnitedWrongClock<'a> {
    let mut wrong = UnitedWrongClock {
        runs: told(all, |_, summary| {
            summary.wrong_clock.runs.iter().map(|run| ((summary.log_of_run(run.run), run.run), run)).collect()
        }),
        mornings: told(all, |place, summary| back.standing(place, summary, &summary.wrong_clock.mornings, |one| one.n)),
        during: told(all, |place, summary| back.standing(place, summary, &summary.wrong_clock.during, |one| one.n)),
        rated: told(all, |place, summary| back.standing(place, summary, &summary.wrong_clock.rated, |one| one.n)),
        ..UnitedWrongClock::default()
    };
    wrong.runs.retain(|name, _| !known.runs.contains_key(name));
    wrong.mornings.retain(|name, _| !known.mornings.contains_key(name));
    wrong.during.retain(|name, _| !known.during.contains_key(name));
    wrong.rated.retain(|name, _| !known.rated.contains_key(name));
    for summary in all {
        for alarm in &summary.alarms {
            match summary.wrong_clock.alarms.contains(&alarm.n) {
                true => drop(wrong.alarms.insert(alarm.id, alarm.day)),
                false => drop(wrong.alarms.remove(&alarm.id)),
            }
        }
        match summary.wrong_clock.ahead_days {
            0 => drop(wrong.ahead_days.remove(&summary.first_log())),
            days => drop(wrong.ahead_days.insert(summary.first_log(), days)),
        }
    }
    wrong
}

fn by_item_day(summary: &Summary) -> Vec<(ItemDayName, Vec<&ItemDay>)> {
    let name = |day: &ItemDay| (summary.log, day.day, day.item);
    let mut days: Vec<&ItemDay> = summary.days.iter().collect();
    days.sort_by_key(|day| name(day));
    days.chunk_by(|one, other| name(one) == name(other)).map(|days| (name(days[0]), days.to_vec())).collect()
}

/// What summaries report as a mistake, or as recorded while the clock was wrong, with the place in the list of the last summary that
/// does so. Earlier summaries lose that record.
struct TakenBack {
    runs: BTreeMap<(LogId, RunId), usize>,
    answers: BTreeMap<EntryRef, usize>,
}

impl TakenBack {
    fn by(all: &[&Summary]) -> TakenBack {
        let mut back = TakenBack { runs: BTreeMap::new(), answers: BTreeMap::new() };
        for (place, summary) in all.iter().enumerate() {
            let wrong = &summary.wrong_clock;
            let runs = summary.corrections.runs.iter().copied().chain(wrong.runs.iter().map(|run| run.run));
            back.runs.extend(runs.map(|run| ((summary.log_of_run(run), run), place)));
            let misdated = wrong.mornings.iter().map(|one| one.n).chain(wrong.during.iter().map(|one| one.n));
            let misdated = misdated.chain(wrong.rated.iter().map(|one| one.n));
            let gone = summary.corrections.gone.iter().copied().chain(misdated);
            back.answers.extend(gone.map(|n| (EntryRef { log: summary.log_of_entry(n), n }, place)));
        }
        back
    }

    /// The answers of the summary at `place`, by key, without those that a later summary withdraws.
    fn standing<T: Copy>(&self, place: usize, of: &Summary, answers: &[T], n: fn(&T) -> u32) -> Vec<(EntryRef, T)> {
        let named = answers.iter().map(|answer| {
            let n = n(answer);
            (EntryRef { log: of.log_of_entry(n), n }, *answer)
        });
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
            mornings: BTreeMap::new(),
            during: BTreeMap::new(),
            well_again: BTreeMap::new(),
            settled: BTreeMap::new(),
            rated: BTreeMap::new(),
            alarms: BTreeMap::new(),
            delays: BTreeMap::new(),
            notes: Vec::new(),
            corrections: BTreeMap::new(),
            renewed: BTreeSet::new(),
            wrong_clock: UnitedWrongClock::default(),
            firsts: BTreeMap::new(),
        }
    }

    /// Adds what a summary says about the device and the plan as a whole. Summaries of one log are added in order, the newest
    /// last.
    fn take(&mut self, summary: &Summary) {
        let log = summary.log;
        let of_log = self.logs.entry(log).or_default();
        of_log.covered.extend(summary.from.through(summary.until));
        of_log.taken.clone_from(&summary.taken);
        of_log.taken.sort_by_key(|taken| (taken.day, taken.revision));
        self.covered.extend(summary.from.through(summary.until));
        self.seen.extend(&summary.seen);
        for part in &summary.former {
            let before = self.logs.entry(part.log).or_default();
            before.goes_on = true;
            if before.taken.is_empty() {
                before.taken.clone_from(&summary.taken);
            }
            self.renewed.insert(part.until);
            self.firsts.insert(part.log, summary.first_log());
        }
        self.firsts.insert(log, summary.first_log());
        self.correct(summary);
        for delay in &summary.delays {
            let known = self.delays.entry((summary.first_log(), delay.week)).or_insert(*delay);
            if delay.runs >= known.runs {
                *known = *delay;
            }
        }
        if let Some(note) = summary.note.as_ref().filter(|note| !self.notes.contains(note)) {
            self.notes.push(note.clone());
        }
    }

    /// Gives alarms that were raised while a clock was wrong the day of what the same log recorded last before them, else first after
    /// them; without either the last day covered.
    fn place_alarms(&mut self) {
        if self.wrong_clock.alarms.is_empty() {
            return;
        }
        let known = self.dated();
        for id in self.wrong_clock.alarms.keys() {
            let Some((log, alarm)) = self.alarms.get_mut(id) else { continue };
            let own = EntryRef { log: *log, n: alarm.n };
            let before = known.range(..own).next_back().filter(|(name, _)| name.log == *log);
            let first = || known.range(EntryRef { log: *log, n: 0 }..).next().filter(|(name, _)| name.log == *log);
            let placed = before.or_else(first).map(|(_, day)| *day);
            alarm.day = placed.or(self.covered.last().copied()).unwrap_or_default();
        }
    }

    /// The day of each answer and alarm that was recorded while the clock may have been right.
    fn dated(&self) -> BTreeMap<EntryRef, DayNumber> {
        let mornings = self.mornings.iter().map(|(name, one)| (*name, one.day));
        let during = self.during.iter().map(|(name, one)| (*name, one.day));
        let rated = self.rated.iter().map(|(name, one)| (*name, one.day));
        let well_again = self.well_again.iter().map(|(name, one)| (*name, one.day));
        let alarms = self.alarms.iter().filter(|(id, _)| !self.wrong_clock.alarms.contains_key(id));
        let alarms = alarms.map(|(_, (log, alarm))| (EntryRef { log: *log, n: alarm.n }, alarm.day));
        mornings.chain(during).chain(rated).chain(well_again).chain(alarms).collect()
    }

    /// The day of an alarm as the device's clock showed it, by which a card clears it.
    pub fn shown_day(&self, alarm: &AlarmOn) -> DayNumber {
        self.wrong_clock.alarms.get(&alarm.id).copied().unwrap_or(alarm.day)
    }

    /// Takes over what was corrected, by the ids under which it was made. Of an id that the log had before, older summaries may know
    /// corrections that were lost when it was put back.
    fn correct(&mut self, summary: &Summary) {
        let Corrections { runs, gone, changed, days, alarms } = &summary.corrections;
        self.corrections.insert(summary.log, Corrections { days: *days, ..Corrections::default() });
        for part in &summary.former {
            let before = self.corrections.entry(part.log).or_default();
            before.days = before.days.saturating_sub(*days);
        }
        for run in runs {
            self.corrections.entry(summary.log_of_run(*run)).or_default().runs.insert(*run);
        }
        for n in gone {
            let of_log = self.corrections.entry(summary.log_of_entry(*n)).or_default();
            of_log.changed.remove(n);
            of_log.gone.insert(*n);
        }
        for n in changed {
            let of_log = self.corrections.entry(summary.log_of_entry(*n)).or_default();
            of_log.gone.remove(n);
            of_log.changed.insert(*n);
        }
        for n in alarms {
            self.corrections.entry(summary.log_of_entry(*n)).or_default().alarms.insert(*n);
        }
    }

    /// The device that a log is of, named by the first id that its log had.
    pub fn device(&self, log: LogId) -> LogId {
        self.firsts.get(&log).copied().unwrap_or(log)
    }

    /// Everything known about one day that another summary could add to.
    fn on(&self, day: DayNumber) -> OnDay<'_> {
        OnDay {
            seen: self.seen.contains(&day),
            slots: self.days.iter().filter(|((_, of, _), _)| *of == day).collect(),
            runs: self.runs.iter().filter(|(_, run)| run.day == day).map(|(name, run)| (name, *run)).collect(),
            mornings: self.mornings.iter().filter(|(_, rating)| rating.day == day).collect(),
            during: self.during.iter().filter(|(_, rating)| rating.day == day).collect(),
            well_again: self.well_again.iter().filter(|(_, said)| said.day == day).collect(),
            settled: self.settled.iter().filter(|(_, answer)| answer.day == day).collect(),
            rated: self.rated.iter().filter(|(_, rating)| rating.day == day).collect(),
            alarms: self.alarms.iter().filter(|(_, (_, alarm))| alarm.day == day).collect(),
        }
    }
}

#[derive(PartialEq)]
struct OnDay<'a> {
    seen: bool,
    slots: Vec<(&'a ItemDayName, &'a Vec<&'a ItemDay>)>,
    runs: Vec<(&'a (LogId, RunId), &'a RunOn)>,
    mornings: Vec<(&'a EntryRef, &'a MorningOn)>,
    during: Vec<(&'a EntryRef, &'a DuringOn)>,
    well_again: Vec<(&'a EntryRef, &'a WellAgainOn)>,
    settled: Vec<(&'a EntryRef, &'a SettledOn)>,
    rated: Vec<(&'a EntryRef, &'a RatedOn)>,
    alarms: Vec<(&'a AlarmId, &'a (LogId, AlarmOn))>,
}

/// What an arriving summary adds to those already known.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum ArrivalEffect {
    /// It covers days that no summary covered before.
    New {
        /// Number of such days.
        days: u16,
    },
    /// All its days were covered already, but it adds something new.
    Filled {
        /// Number of days that it adds something to; 0 if it only adds a note, a card that was taken, a correction or a
        /// week's delays.
        days: u16,
    },
    /// It adds nothing.
    Known,
}

/// What `new` adds to those of `before` that are of the same plan. Only a summary of days that were covered already, and not the same once
/// more, is compared with all the others united.
pub fn arrival_effect(before: &[Summary], new: &Summary) -> ArrivalEffect {
    let same_plan = before.iter().filter(|summary| summary.plan == new.plan);
    let is_covered = |day: DayNumber| same_plan.clone().any(|known| known.from <= day && day <= known.until);
    let days = |count: usize| u16::try_from(count).unwrap_or(u16::MAX);
    let fresh = new.from.through(new.until).filter(|day| !is_covered(*day)).count();
    if fresh > 0 {
        return ArrivalEffect::New { days: days(fresh) };
    }
    if before.contains(new) {
        return ArrivalEffect::Known;
    }
    let known = unite(same_plan.clone()).unwrap_or_else(|| United::of(new.plan));
    let Some(with_it) = unite(same_plan.chain([new])) else { return ArrivalEffect::Known };
    if with_it == known {
        return ArrivalEffect::Known;
    }
    ArrivalEffect::Filled { days: days(with_it.covered.iter().filter(|day| known.on(**day) != with_it.on(**day)).count()) }
}
