//! What one installation's log of one plan adds up to: the last snapshot of each run, the slots skipped, the answers given.

mod alarms;
mod attribution;
mod own;
mod week;
mod wrong_clock;

use crate::alarm::Alarm;
use crate::catalogue::Catalogue;
use crate::correct::Corrected;
use crate::id::{ActivityId, AlarmId, ComplaintId, EntryRef, ItemId, LogId, PlanId, RunId};
use crate::log::{Barrier, DayOffReason, Entry, FormerLog, Log, LogEvent};
use crate::plan::{Item, Schedule};
use crate::run::{Run, Share, Work};
use crate::score::Score;
use crate::slots::{Slot, SlotRef};
use crate::sway::Sensed;
use crate::time::Stamp;
use chrono::NaiveDate;
use std::borrow::Cow;
use std::collections::{BTreeMap, BTreeSet};

pub use own::{OWN_DAYS, OwnMedian, own_median_ms};
pub use week::WeekSoFar;
pub use wrong_clock::{Known, WrongClockRecord, last_true};

/// A rating, with the entry that recorded it and the time at which it was given.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Rating<T> {
    /// The number of the entry that recorded it.
    pub n: u32,
    /// When it was given.
    pub at: Stamp,
    /// What was rated.
    pub of: T,
    /// 0 to 10.
    pub score: Score,
}

/// The answer to "settled by this morning?".
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Settled {
    /// The number of the entry that recorded it.
    pub n: u32,
    /// When it was answered.
    pub at: Stamp,
    /// The complaint that the question was about.
    pub complaint: ComplaintId,
    /// Whether the pain had settled.
    pub settled: bool,
}

/// A card that the patient's copy took.
#[derive(Debug, Clone, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct TakenCard {
    /// The number of the entry that recorded it.
    pub n: u32,
    /// When it was taken.
    pub at: Stamp,
    /// The card's revision, from 1.
    pub revision: u16,
    /// The schedules that the patient agreed to, where they differ from those of the card.
    pub agreed: Vec<(ItemId, Schedule)>,
}

/// One log of one plan, folded into its present state.
#[derive(Debug, Clone, Default, PartialEq)]
pub struct History {
    /// Runs by number, each as its last snapshot shows it.
    pub runs: BTreeMap<RunId, Run>,
    /// The runs that were done for a slot, sorted by slot so that they are found quickly: a year has thousands of both.
    naming: BTreeSet<(SlotRef, RunId)>,
    /// The runs that name no slot, by item and start (milliseconds since 1970 UTC).
    extra: BTreeSet<(ItemId, i64, RunId)>,
    /// When the card was taken that brought each item of which the patient chooses the days, by the day from which they count.
    begun: BTreeMap<(ItemId, NaiveDate), Stamp>,
    /// The day on which the last card was issued that gave an item another level than the card before.
    levels_decided: BTreeMap<ItemId, NaiveDate>,
    /// The last run of each item, so that an item that was never done is not looked for in a whole year.
    last: BTreeMap<ItemId, RunId>,
    /// What the motion sensor measured, by run and by the trial's place in the run, from 0.
    pub sensed: BTreeMap<(RunId, u16), Sensed>,
    /// Skipped slots, with the last reason given.
    pub skipped: BTreeMap<SlotRef, Barrier>,
    /// The time until which a slot's reminder was put off.
    pub put_off: BTreeMap<SlotRef, Stamp>,
    /// The time at which the person put the reminder off.
    pub put_off_at: BTreeMap<SlotRef, Stamp>,
    /// The time at which the last snapshot of a run for the slot was recorded.
    pub recorded: BTreeMap<SlotRef, Stamp>,
    /// The time of the first reminder shown for a slot.
    pub reminded: BTreeMap<SlotRef, Stamp>,
    /// The time of the last reminder shown for a slot; a reminder that was put off is shown again.
    pub reminded_last: BTreeMap<SlotRef, Stamp>,
    /// Ratings of each complaint's pain in the morning, in the order in which they were given.
    pub mornings: Vec<Rating<ComplaintId>>,
    /// Ratings of the pain while doing an item, in the order in which they were given.
    pub during: Vec<Rating<ItemId>>,
    /// When the person said to be well again, with the number of the entry.
    pub well_again: Vec<(u32, Stamp)>,
    /// Answers to "settled by this morning?", in the order in which they were given.
    pub settled: Vec<Settled>,
    /// Ratings of named activities, in the order in which they were given.
    pub rated: Vec<Rating<ActivityId>>,
    /// Alarms in the order in which they were raised, those that a card has cleared included.
    pub alarms: Vec<Alarm>,
    /// Days off: first day, last day (included), reason.
    pub days_off: Vec<(NaiveDate, NaiveDate, DayOffReason)>,
    /// Cards taken, in the order in which they were taken.
    pub taken: Vec<TakenCard>,
    /// Days on which any entry was made.
    pub seen: BTreeSet<NaiveDate>,
    /// The highest number that a summary of this log has had; 0 if there was none.
    pub counter: u32,
    /// The ids that the log had before it was copied, moved or put back, the oldest first.
    pub former: Vec<FormerHistory>,
    /// The corrections that have been applied to everything above.
    pub corrected: Corrected,
    /// What was recorded while the device's clock was wrong. Of it, only alarms, cards, "I am well again", days off and the numbers of
    /// summaries are in the lists above.
    pub wrong_clock: WrongClockRecord,
}

/// What was recorded under an id that the log had before it was copied, moved or put back.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct FormerHistory {
    /// The id.
    pub log: LogId,
    /// The number of the last entry that was made under it.
    pub entries: u32,
    /// The number of the last run of this plan that was begun under it; 0 if there was none.
    pub runs: u32,
    /// When the first entry of this plan was made after it; `None` if there is none yet.
    pub since: Option<Stamp>,
}

impl History {
    /// Folds the entries of `plan` as [`History::fold_known`] does, where of the time nothing is known but the order of the entries.
    pub fn fold(log: &Log, plan: PlanId) -> History {
        History::fold_known(log, plan, Known::default())
    }

    /// Folds the entries of `plan`, each as last corrected. A day counts as seen if any entry was made on it, even one that
    /// was corrected later. What `known` says of the time decides which entries have a wrong time; those go to [`History::wrong_clock`].
    pub fn fold_known(log: &Log, plan: PlanId, known: Known) -> History {
        let wrong_clock = WrongClockRecord::find(log, plan, known);
        let mut history = History { corrected: Corrected::find(log, plan), wrong_clock, ..History::default() };
        let mut former = log.former.iter().peekable();
        // Also of runs that were corrected to not have happened.
        let mut runs = 0;
        let ended = |of: &FormerLog, runs, since| FormerHistory { log: of.id, entries: of.entries, runs, since };
        for entry in log.entries.iter().filter(|entry| entry.plan == plan) {
            while let Some(of) = former.next_if(|former| former.entries < entry.n) {
                history.former.push(ended(of, runs, Some(history.placed(entry.n, entry.at))));
            }
            if let LogEvent::Run(run) = &entry.event {
                runs = runs.max(run.id.0);
            }
            history.add(log.id_of(entry.n), entry);
        }
        history.former.extend(former.map(|of| ended(of, runs, None)));
        history
    }

    /// Adds an entry of this plan that was made after all those that were folded. Returns `false`, and nothing changes, if it says how
    /// others are to be read, or by its time makes a clock doubtful: then the log has to be folded anew.
    pub fn extend(&mut self, log: &Log, entry: &Entry) -> bool {
        if matches!(entry.event, LogEvent::Corrected { .. }) || entry.n <= log.former.last().map_or(0, |last| last.entries) {
            return false;
        }
        if !self.wrong_clock.extend(entry) {
            return false;
        }
        self.former.iter_mut().filter(|part| part.since.is_none()).for_each(|part| part.since = Some(entry.at));
        self.add(log.id, entry);
        true
    }

    fn add(&mut self, log: LogId, entry: &Entry) {
        let mark = self.wrong_clock.mark(entry.n);
        if mark.is_none() {
            self.seen.insert(entry.at.date());
        }
        let Some(event) = self.corrected.of(entry).map(Cow::into_owned) else { return };
        let with_its_run = match &event {
            LogEvent::Run(run) => {
                !self.wrong_clock.runs.contains_key(&run.id) && (mark.is_none() || self.runs.contains_key(&run.id))
            }
            LogEvent::Sensed { .. } => true,
            _ => mark.is_none(),
        };
        match (with_its_run, mark) {
            (true, _) => self.take(log, entry.n, self.placed(entry.n, entry.at), &event),
            (false, mark) => self.take_misdated(log, entry, &event, mark),
        }
    }

    fn take(&mut self, log: LogId, n: u32, at: Stamp, event: &LogEvent) {
        match event {
            LogEvent::Opened | LogEvent::Corrected { .. } => {}
            LogEvent::Taken { revision, agreed } => {
                self.taken.push(TakenCard { n, at, revision: *revision, agreed: agreed.clone() });
            }
            LogEvent::Run(run) => {
                match run.slot {
                    Some(slot) => {
                        self.naming.insert((slot, run.id));
                        self.recorded.insert(slot, at);
                    }
                    None => {
                        self.extra.insert((run.item, run.started.utc_ms, run.id));
                    }
                }
                let last = self.last.entry(run.item).or_insert(run.id);
                *last = (*last).max(run.id);
                self.runs.insert(run.id, run.clone());
                self.settle_trials(run.id);
            }
            LogEvent::Reminded { slot } => {
                self.reminded.entry(*slot).or_insert(at);
                self.reminded_last.insert(*slot, at);
            }
            LogEvent::PutOff { slot, minutes } => {
                self.put_off.insert(*slot, at.plus_ms(i64::from(*minutes) * 60_000));
                self.put_off_at.insert(*slot, at);
            }
            LogEvent::Skipped { slot, reason } => {
                self.skipped.insert(*slot, *reason);
            }
            LogEvent::DaysOff { from, until, why } => self.days_off.push((*from, *until, *why)),
            LogEvent::Morning { complaint, score } => {
                self.mornings.push(Rating { n, at, of: *complaint, score: *score });
            }
            LogEvent::During { item, score } => self.during.push(Rating { n, at, of: *item, score: *score }),
            // Of a run that did not happen nothing is known.
            LogEvent::Pain { score, after: Some(run), .. } => {
                if let Some(item) = self.run(*run).map(|run| run.item) {
                    self.during.push(Rating { n, at, of: item, score: *score });
                }
            }
            LogEvent::Pain { complaint, score, after: None } => {
                self.mornings.push(Rating { n, at, of: *complaint, score: *score });
            }
            LogEvent::Settled { complaint, settled } => {
                self.settled.push(Settled { n, at, complaint: *complaint, settled: *settled });
            }
            LogEvent::WellAgain => self.well_again.push((n, at)),
            LogEvent::Rated { activity, score } => {
                self.rated.push(Rating { n, at, of: *activity, score: *score });
            }
            LogEvent::Trouble { trouble, item, id, circumstances } => {
                let entry = EntryRef { log, n };
                let id = id.unwrap_or_else(|| AlarmId::of_entry(entry));
                self.alarms.push(Alarm {
                    id,
                    entry,
                    at,
                    trouble: *trouble,
                    item: *item,
                    circumstances: circumstances.clone(),
                });
            }
            LogEvent::Sensed { run, trial, sensed, .. } => {
                self.sensed.insert((*run, *trial), sensed.clone());
                self.settle_trials(*run);
            }
            LogEvent::Sealed { counter } => self.counter = self.counter.max(*counter),
        }
    }

    /// The sensor and the person's answers about a trial give its time more exactly than the touch that ended it, so their
    /// time replaces the recorded one.
    fn settle_trials(&mut self, run: RunId) {
        let known = self.sensed.range((run, 0)..=(run, u16::MAX));
        let Some(Work::Balance(balance)) = self.runs.get_mut(&run).map(|run| &mut run.work) else { return };
        for ((_, place), sensed) in known {
            if let Some(trial) = balance.trials.get_mut(usize::from(*place)) {
                *trial = sensed.settle(*trial);
            }
        }
    }

    /// The number for the next run. No number is used twice, not even that of a run that was corrected to not have happened.
    pub fn next_run(&self) -> RunId {
        let last =
            self.runs.keys().next_back().max(self.corrected.runs.last()).max(self.wrong_clock.runs.keys().next_back());
        RunId(last.map_or(1, |last| last.0 + 1))
    }

    /// A run by its number, also one that was begun while the device's clock was wrong.
    pub fn run(&self, id: RunId) -> Option<&Run> {
        self.runs.get(&id).or_else(|| self.wrong_clock.runs.get(&id))
    }

    /// The last run of an item.
    pub fn last_run(&self, item: ItemId) -> Option<&Run> {
        self.runs.get(self.last.get(&item)?)
    }

    /// The card in force at `at`: the last one taken until then.
    pub fn in_force(&self, at: Stamp) -> Option<&TakenCard> {
        self.taken.iter().rev().find(|taken| taken.at.utc_ms <= at.utc_ms)
    }

    /// The reason why `day` is a day off; `None` if it is not.
    pub fn day_off(&self, day: NaiveDate) -> Option<DayOffReason> {
        self.days_off.iter().rev().find(|(from, until, _)| (*from..=*until).contains(&day)).map(|(_, _, why)| *why)
    }

    /// How `slot` went, as seen at `now`. If several runs were done for the slot, the most complete one counts.
    pub fn mark(&self, slot: &Slot, item: &Item, now: Stamp) -> Mark {
        let sides = item.side.in_turn().len() as u32;
        let filling = self.filling(slot, item);
        let shares = filling.iter().map(|run| run.parts(sides));
        let fullest = shares.max_by_key(|share| (u64::from(share.done) << 32) / u64::from(share.of.max(1)));
        match fullest {
            Some(share) if share.full() => return Mark::Done,
            Some(share) if share.done > 0 => return Mark::Partly(share),
            _ => {}
        }
        if let Some(reason) = self.skipped.get(&slot.slot) {
            return Mark::Skipped(*reason);
        }
        if let Some(share) = fullest.filter(|_| filling.iter().any(|run| run.tried())) {
            return Mark::Partly(share);
        }
        let (Some(due), Some(closes)) = (slot.due, slot.can_be_done_until()) else { return Mark::NoSuchHour };
        if let Some(why) = self.day_off(slot.slot.day) {
            return Mark::DayOff(why);
        }
        if now.utc_ms < due.utc_ms {
            Mark::ToCome
        } else if now.utc_ms < closes.utc_ms {
            Mark::Due
        } else {
            Mark::NotDone
        }
    }

    /// The runs of balance exercises, oldest first.
    pub fn balance_runs<'a>(&'a self, catalogue: &'a Catalogue) -> impl Iterator<Item = &'a Run> {
        let balance = |run: &&Run| catalogue.get(&run.exercise).is_some_and(|exercise| exercise.kind.is_balance());
        self.runs.values().filter(balance)
    }
}

/// How a slot went, or whether it is still open or to come.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Mark {
    /// The whole dose was done.
    Done,
    /// Part of the dose was done: the number of holds, repetitions or trials done, out of those prescribed.
    Partly(Share),
    /// The person skipped it and gave a reason.
    #[cfg_attr(feature = "serde", serde(rename = "LeftOut"))]
    Skipped(Barrier),
    /// Its day is a day off.
    #[cfg_attr(feature = "serde", serde(rename = "Excused"))]
    DayOff(DayOffReason),
    /// An alarm paused it.
    #[cfg_attr(feature = "serde", serde(rename = "HeldBack"))]
    Paused,
    /// It closed without being done and without an answer.
    #[cfg_attr(feature = "serde", serde(rename = "PassedBy"))]
    NotDone,
    /// It is open now.
    Due,
    /// It is not due yet.
    ToCome,
    /// Its time does not exist on this day, because the clocks were put forward over it.
    NoSuchHour,
}

#[cfg(test)]
mod tests;
