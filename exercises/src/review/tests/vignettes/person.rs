//! An invented person with one device: what happened becomes a log, a summary and a review, as in the program.

use crate::alarm::Trouble;
use crate::catalogue::{Catalogue, Dose};
use crate::history::History;
use crate::id::{ComplaintId, ItemId, RunId};
use crate::log::{Barrier, DayOffReason, Entry, Log, LogEvent};
use crate::plan::{BodySide, Days, Item, Pattern, Plan, Prescription, Schedule, Side};
use crate::review::samples::{BALANCE, BALANCE_DOSE, PHONE, PLAN, REPS_DOSE, catalogue, item, plan, revised, start};
use crate::review::{Review, build};
use crate::run::{Balance, HoldRecord, Run, RunEnd, SetRecord, SetUp, Trial, TrialEnd, Work};
use crate::score::Score;
use crate::summary::{Period, Sealing, reduce};
use crate::time::{Offsets, Stamp};
use std::collections::BTreeMap;

/// A day of the plan, and a minute of it.
#[derive(Clone, Copy)]
pub struct At(pub i64, pub i64);

pub struct Person {
    pub catalogue: Catalogue,
    revisions: BTreeMap<u16, Plan>,
    entries: Vec<(Stamp, LogEvent)>,
    runs: u32,
}

pub fn daily(minute: u16) -> Schedule {
    Schedule { days: Days::ALL, pattern: Pattern::At { times: vec![minute] } }
}

pub fn hourly(from: u16, to: u16) -> Schedule {
    Schedule { days: Days::ALL, pattern: Pattern::Every { minutes: 60, from, to } }
}

pub fn reps(schedule: Schedule) -> Item {
    Item { schedule, ..item(REPS_DOSE, Side::Neither) }
}

pub fn balance(schedule: Schedule) -> Item {
    Item { schedule, ..item(BALANCE_DOSE, Side::Both) }
}

impl At {
    fn stamp(self) -> Stamp {
        let midnight = (start() + chrono::Duration::days(self.0)).and_time(chrono::NaiveTime::MIN).and_utc();
        Stamp { utc_ms: midnight.timestamp_millis() + self.1 * 60_000, offset_s: 0 }
    }
}

impl Person {
    /// Takes a card with these items early on day 0. Their complaint has no rating at the visit.
    pub fn with(items: impl IntoIterator<Item = Item>) -> Person {
        let mut plan = plan();
        plan.prescription.items = items.into_iter().collect();
        plan.prescription.review = start() + chrono::Duration::days(90);
        plan.prescription.complaints.iter_mut().for_each(|complaint| complaint.pain = None);
        let mut person =
            Person { catalogue: catalogue(), revisions: BTreeMap::from([(1, plan)]), entries: Vec::new(), runs: 0 };
        person.log(At(0, 4 * 60), LogEvent::Taken { revision: 1, agreed: Vec::new() });
        person
    }

    fn log(&mut self, at: At, event: LogEvent) {
        self.entries.push((at.stamp(), event));
    }

    fn plan(&self) -> &Plan {
        self.revisions.values().next_back().expect("one at least")
    }

    fn history(&self) -> History {
        let mut entries = self.entries.clone();
        entries.sort_by_key(|(at, _)| at.utc_ms);
        let entries = (1..).zip(entries).map(|(n, (at, event))| Entry { n, plan: PLAN, at, event });
        History::fold(&Log { id: PHONE, former: Vec::new(), entries: entries.collect() }, PLAN)
    }

    /// Takes the next card, with a change.
    pub fn takes_a_card(&mut self, day: i64, change: impl FnOnce(&mut Prescription)) {
        let revision = self.plan().header.revision + 1;
        let mut next = Plan { prescription: self.plan().prescription.clone(), ..revised(revision, day) };
        change(&mut next.prescription);
        self.revisions.insert(revision, next);
        self.log(At(day, 4 * 60), LogEvent::Taken { revision, agreed: Vec::new() });
    }

    /// The target of the balance item from now on, by a card if it changes.
    pub fn set_target(&mut self, seconds: u16) {
        let day = self.entries.last().map_or(0, |(at, _)| at.date().signed_duration_since(start()).num_days() + 1);
        let dose = Dose::Balance { trials: 3, target_s: seconds, rest_s: 30 };
        if self.plan().prescription.items[0].dose != dose {
            self.takes_a_card(day, |plan| plan.items[0].dose = dose);
        }
    }

    fn run(&mut self, item: ItemId, at: At, end: RunEnd, work: Work) {
        let taken = self.history().taken.last().expect("a card").at;
        let slot = self.history().slot_for(self.plan(), item, at.stamp(), &Offsets::fixed(0), taken);
        let planned = self.plan().item(item).expect("an item of the plan").clone();
        self.runs += 1;
        let run = Run {
            id: RunId(self.runs),
            item,
            exercise: planned.exercise,
            rung: planned.rung,
            dose: planned.dose,
            slot,
            started: at.stamp(),
            live: true,
            end,
            paused_ms: 0,
            interruptions: Vec::new(),
            work,
        };
        self.log(at, LogEvent::Run(run));
    }

    /// Does an item in full.
    pub fn does(&mut self, item: ItemId, at: At) {
        self.falls_short(item, at, 0);
    }

    /// Carries an item to its end, with the last `missed` repetitions failed.
    pub fn falls_short(&mut self, item: ItemId, at: At, missed: u8) {
        let work = match self.plan().item(item).expect("an item of the plan").dose {
            Dose::Hold { repetitions, hold_s, .. } => {
                Work::Timed(vec![HoldRecord { side: None, held_ms: u32::from(hold_s) * 1000 }; usize::from(repetitions)])
            }
            Dose::Reps { sets, repetitions, .. } => {
                let whole = SetRecord { side: None, done: repetitions, failed: 0 };
                let mut all = vec![whole; usize::from(sets)];
                let last = all.last_mut().expect("a set");
                (last.done, last.failed) = (repetitions - missed, missed);
                Work::Counted(all)
            }
            Dose::Balance { target_s, .. } => return self.stands(at, target_s.into()),
            other => Work::in_full(other, &[None]).expect("a dose that is done in full"),
        };
        self.run(item, at, RunEnd::Completed, work);
    }

    /// Stops an item after its first set.
    pub fn stops_after_the_first_set(&mut self, item: ItemId, at: At) {
        let Dose::Reps { repetitions, .. } = self.plan().item(item).expect("an item").dose else { panic!("no sets") };
        let work = Work::Counted(vec![SetRecord { side: None, done: repetitions, failed: 0 }]);
        self.run(item, at, RunEnd::Stopped, work);
    }

    /// Stands three times on each leg for so long.
    pub fn stands(&mut self, at: At, seconds: u32) {
        let Dose::Balance { target_s, .. } = self.plan().item(BALANCE).expect("a balance item").dose else {
            panic!("balance")
        };
        let end = if seconds >= u32::from(target_s) { TrialEnd::Target } else { TrialEnd::Touch };
        let trial = |leg| Trial { leg, held_ms: seconds * 1000, end };
        let trials = [vec![trial(Some(BodySide::Left)); 3], vec![trial(Some(BodySide::Right)); 3]].concat();
        let (surface, eyes) = self.plan().item(BALANCE).expect("a balance item").conditions(&self.catalogue);
        self.run(BALANCE, at, RunEnd::Completed, Work::Balance(Balance { set_up: SetUp::OnSupport, surface, eyes, trials }));
    }

    /// Skips the slot that is open then.
    pub fn skips(&mut self, item: ItemId, at: At, reason: Barrier) {
        let taken = self.history().taken.last().expect("a card").at;
        let slot = self.history().slot_for(self.plan(), item, at.stamp(), &Offsets::fixed(0), taken);
        self.log(at, LogEvent::Skipped { slot: slot.expect("an open slot"), reason });
    }

    pub fn takes_days_off(&mut self, from: i64, until: i64, why: DayOffReason) {
        let date = |day| start() + chrono::Duration::days(day);
        self.log(At(from - 1, 20 * 60), LogEvent::DaysOff { from: date(from), until: date(until), why });
    }

    pub fn says_in_the_morning(&mut self, day: i64, complaint: ComplaintId, score: u8) {
        self.log(At(day, 7 * 60), LogEvent::Morning { complaint, score: Score::new(score).expect("0 to 10") });
    }

    /// Rates the pain while doing an item in the evening; above the limit it raises the program's own alarm.
    pub fn says_while_doing(&mut self, item: ItemId, day: i64, score: u8) {
        let score = Score::new(score).expect("0 to 10");
        self.log(At(day, 19 * 60 + 30), LogEvent::During { item, score });
        if self.plan().item(item).is_some_and(|item| score > item.pain_limit) {
            self.raises(Trouble::PainAboveLimit, Some(item), At(day, 19 * 60 + 31));
        }
    }

    pub fn raises(&mut self, trouble: Trouble, item: Option<ItemId>, at: At) {
        self.log(at, LogEvent::Trouble { trouble, item, id: None, circumstances: Default::default() });
    }

    /// The review at three o'clock after `day`.
    pub fn review(&self, day: i64) -> Review {
        let until = start() + chrono::Duration::days(day);
        let period = Period { from: start(), until };
        let now = At(day + 1, 3 * 60).stamp();
        let sealing = Sealing { log: PHONE, period, now, counter: 1, note: None };
        let summary = reduce(&self.history(), &self.revisions, &self.catalogue, &Offsets::fixed(0), sealing);
        build(&self.revisions, &self.catalogue, &[summary.expect("a period")]).expect("a plan and a summary")
    }
}
