//! Two years of one invented person: an hourly hold at the desk, one-leg stance once a day, standing up three times a week; a visit
//! every quarter, each with a new card.

use chrono::{Duration, NaiveDate};
use exercises::catalogue::{Catalogue, Dose, ExerciseId, Eyes, RungId, Surface, Tempo};
use exercises::history::History;
use exercises::id::{ActivityId, ComplaintId, ItemId, LogId, PlanId, RunId};
use exercises::log::{Barrier, DayOffReason, Entry, Log, LogEvent};
use exercises::plan::{
    Activity, AgeBand, BodySide, Complaint, Header, Item, Pattern, Plan, Prescription, Risk, Schedule, Side, StanceBaseline,
    Weekdays,
};
use exercises::review::{Review, build};
use exercises::run::{Balance, HoldRecord, Run, RunEnd, SetRecord, SetUp, Trial, TrialEnd, Work};
use exercises::score::Score;
use exercises::slots::{Slot, of_day};
use exercises::summary::{Period, Sealing, Summary, reduce};
use exercises::time::{Offsets, Stamp};
use std::collections::BTreeMap;

const DAYS: i64 = 730;
/// Days between two visits.
const QUARTER: i64 = 91;
const HOLD: ItemId = ItemId(1);
const STANCE: ItemId = ItemId(2);
const RISE: ItemId = ItemId(3);
const LOG: LogId = LogId([1; 8]);
const PLAN: PlanId = PlanId([7; 8]);
const NECK: ComplaintId = ComplaintId(1);
const ANKLE: ComplaintId = ComplaintId(2);

/// The data of two years.
pub struct Years {
    catalogue: Catalogue,
    zone: Offsets,
    revisions: BTreeMap<u16, Plan>,
    log: Log,
    history: History,
    summaries: Vec<Summary>,
}

impl Years {
    /// Creates the data of two years.
    #[expect(clippy::new_without_default, reason = "it takes its time, which a default should not")]
    pub fn new() -> Years {
        let catalogue = format::catalogue::embedded().expect("the shipped catalogue is sound");
        let zone = zone();
        let revisions: BTreeMap<u16, Plan> = (1..)
            .map(revision)
            .take_while(|plan| plan.header.issued < day(DAYS))
            .map(|plan| (plan.header.revision, plan))
            .collect();
        let log = Diary::of(&revisions, &zone);
        let history = History::fold(&log, PLAN);
        let mut years = Years { catalogue, zone, revisions, log, history, summaries: Vec::new() };
        years.summaries = years.summed_up();
        years
    }

    /// A summary for each visit, as the patient's copy makes it.
    fn summed_up(&self) -> Vec<Summary> {
        (1..=self.revisions.len()).map(|counter| self.summary(counter)).collect()
    }

    /// Builds the review page from the summaries, as the clinic's copy does whenever a patient is opened.
    pub fn page(&self) -> Review {
        build(&self.revisions, &self.catalogue, &self.summaries).expect("there are a plan and its summaries")
    }

    /// Builds the review page from the log's history: a summary for each visit, as the patient's copy makes it, and the review of
    /// all of them, as the clinic's copy makes it.
    pub fn review(&self) -> Review {
        build(&self.revisions, &self.catalogue, &self.summed_up()).expect("there are a plan and its summaries")
    }

    /// All cards' plans, by revision.
    pub fn plans(&self) -> &BTreeMap<u16, Plan> {
        &self.revisions
    }

    /// A summary for each week, as a patient makes them who hands one over every week.
    pub fn weekly(&self) -> Vec<Summary> {
        let summary = |week: i64| {
            let end = (week * 7 + 6).min(DAYS - 1);
            let period = Period { from: day(week * 7), until: day(end) };
            let now = stamp(&self.zone, end, 20 * 60);
            let sealing = Sealing { log: LOG, period, now, counter: week as u32 + 1, note: None };
            reduce(&self.history, &self.revisions, &self.catalogue, &self.zone, sealing).expect("the week has days")
        };
        (0..=(DAYS - 1) / 7).map(summary).collect()
    }

    /// The summary of one quarter, which overlaps the previous one by a week.
    fn summary(&self, counter: usize) -> Summary {
        let end = (counter as i64 * QUARTER).min(DAYS - 1);
        let period = Period { from: day((end - QUARTER - 7).max(0)), until: day(end) };
        let now = stamp(&self.zone, end, 20 * 60);
        let sealing = Sealing { log: LOG, period, now, counter: counter as u32, note: None };
        reduce(&self.history, &self.revisions, &self.catalogue, &self.zone, sealing).expect("the quarter has days")
    }

    /// The number of slots in a year of the first card.
    pub fn slots_of_a_year(&self) -> usize {
        let mut plan = self.revisions[&1].clone();
        plan.prescription.review = day(365);
        let taken = stamp(&self.zone, 0, 0);
        (0..365).map(|number| of_day(&plan, day(number), &self.zone, taken).len()).sum()
    }

    /// Reads the log from its first entry and computes the history.
    pub fn fold(&self) -> History {
        History::fold(&self.log, PLAN)
    }

    /// The numbers of entries, runs, cards and days, as text.
    pub fn size(&self) -> String {
        let (entries, runs) = (self.log.entries.len(), self.history.runs.len());
        format!("{DAYS} days, {runs} runs, {entries} entries, {} cards", self.revisions.len())
    }
}

/// A place one hour ahead of UTC whose clocks go forward at the end of March and back at the end of October.
fn zone() -> Offsets {
    let change = |year, month, date, offset_s| {
        let at = NaiveDate::from_ymd_opt(year, month, date).and_then(|day| day.and_hms_opt(1, 0, 0)).expect("a date");
        (at.and_utc().timestamp(), offset_s)
    };
    let changes =
        vec![change(2027, 3, 28, 7200), change(2027, 10, 31, 3600), change(2028, 3, 26, 7200), change(2028, 10, 29, 3600)];
    Offsets { first_s: 3600, changes }
}

fn day(number: i64) -> NaiveDate {
    NaiveDate::from_ymd_opt(2027, 1, 4).expect("a date") + Duration::days(number)
}

fn stamp(zone: &Offsets, number: i64, minute: i64) -> Stamp {
    let wall = day(number).and_time(chrono::NaiveTime::MIN) + Duration::minutes(minute);
    zone.stamp((wall.and_utc().timestamp() - 3600) * 1000)
}

fn rung(id: &str) -> Option<RungId> {
    Some(RungId::new(id).expect("an id"))
}

fn revision(number: u16) -> Plan {
    let issued = day(i64::from(number - 1) * QUARTER);
    let complaint = |id, name: &str, side, pain| Complaint { id, name: name.into(), side, pain: Some(pain) };
    Plan {
        header: Header { id: PLAN, revision: number, clinic: "Bridge Street".into(), phone: None, start: day(0), issued },
        prescription: Prescription {
            review: issued + Duration::days(QUARTER),
            age: Some(AgeBand::From40),
            absent: Risk::ALL.into_iter().collect(),
            confirmed: None,
            items: items(),
            complaints: vec![
                complaint(NECK, "neck", Side::Neither, Score::at_most_ten(6)),
                complaint(ANKLE, "ankle", Side::Right, Score::at_most_ten(3)),
            ],
            activities: vec![
                Activity { id: ActivityId(1), name: "turning the head".into(), rating: Some(Score::at_most_ten(4)) },
                Activity { id: ActivityId(2), name: "going downstairs".into(), rating: Some(Score::at_most_ten(5)) },
            ],
            baselines: [(BodySide::Left, 220), (BodySide::Right, 120 + 10 * number)]
                .map(|(leg, tenths)| baseline(leg, tenths))
                .to_vec(),
            aftercare: Vec::new(),
            cleared: Vec::new(),
        },
    }
}

fn baseline(leg: BodySide, tenths: u16) -> StanceBaseline {
    StanceBaseline { taken: None, leg, surface: Surface::Firm, eyes: Eyes::Open, tenths, capped: false }
}

fn items() -> Vec<Item> {
    let hourly = Pattern::Every { minutes: 60, from: 9 * 60, to: 17 * 60 };
    let at = |minute| Pattern::At { times: vec![minute] };
    let hold = Dose::Hold { repetitions: 3, hold_s: 10, rest_s: 10 };
    let stance = Dose::Balance { trials: 3, target_s: 30, rest_s: 30 };
    let rise = Dose::Reps { sets: 2, repetitions: 8, rest_s: 60, tempo: Tempo { up_s: 2, hold_s: 0, down_s: 2 } };
    let item = |id, exercise: &str, first: &str, side, dose, days: Weekdays, pattern, serves| {
        let exercise = ExerciseId::new(exercise).expect("an id");
        let plain = Item::new(id, exercise, dose, Schedule { days: days.into(), pattern });
        Item { rung: rung(first), side, may_step: true, serves: Some(serves), ..plain }
    };
    vec![
        item(HOLD, "sit-tall-chin-back", "wall", Side::Neither, hold, Weekdays::ALL, hourly, NECK),
        item(STANCE, "one-leg-stand", "firm-open", Side::Both, stance, Weekdays::ALL, at(18 * 60), ANKLE),
        item(
            RISE,
            "sit-to-stand",
            "hands-push",
            Side::Neither,
            rise,
            Weekdays::from_bits(0b001_0101).expect("seven bits"),
            at(18 * 60 + 30),
            ANKLE,
        ),
    ]
}

/// Writes the log. The outcome of a slot depends only on the day and the slot's number.
struct Diary<'a> {
    zone: &'a Offsets,
    log: Log,
    runs: u32,
}

impl Diary<'_> {
    fn of(revisions: &BTreeMap<u16, Plan>, zone: &Offsets) -> Log {
        let mut diary = Diary { zone, log: Log { id: LOG, former: Vec::new(), entries: Vec::new() }, runs: 0 };
        let taken = stamp(zone, 0, 8 * 60);
        for number in 0..DAYS {
            let plan =
                revisions.values().rfind(|plan| plan.header.issued <= day(number)).expect("the first card is of day 0");
            diary.write(stamp(zone, number, 8 * 60), LogEvent::Opened);
            if plan.header.issued == day(number) {
                diary.write(
                    stamp(zone, number, 8 * 60),
                    LogEvent::Taken { revision: plan.header.revision, agreed: Vec::new() },
                );
            }
            diary.morning(number);
            for slot in of_day(plan, day(number), zone, taken) {
                diary.slot(number, plan, &slot);
            }
            diary.evening(number);
        }
        diary.log
    }

    fn write(&mut self, at: Stamp, event: LogEvent) {
        let n = self.log.entries.len() as u32 + 1;
        self.log.entries.push(Entry { n, plan: PLAN, at, event });
    }

    fn morning(&mut self, number: i64) {
        let at = stamp(self.zone, number, 8 * 60 + 5);
        let eased = |from: i64, every: i64| (from - number / every + number % 3).clamp(0, 10) as u8;
        if number % 2 == 0 {
            self.write(at, LogEvent::Morning { complaint: NECK, score: Score::at_most_ten(eased(6, 120)) });
            self.write(at, LogEvent::Morning { complaint: ANKLE, score: Score::at_most_ten(eased(3, 240)) });
        }
        if number % 200 == 190 {
            self.write(at, LogEvent::DaysOff { from: day(number), until: day(number + 9), why: DayOffReason::Travelling });
        }
    }

    fn evening(&mut self, number: i64) {
        let at = stamp(self.zone, number, 19 * 60);
        if number % 2 == 0 {
            self.write(at, LogEvent::During { item: ItemId(2), score: Score::at_most_ten((number % 3) as u8) });
        }
        if number % 7 == 6 {
            for id in [1, 2] {
                self.write(
                    at,
                    LogEvent::Rated {
                        activity: ActivityId(id),
                        score: Score::at_most_ten((4 + number / 130).min(10) as u8),
                    },
                );
            }
        }
    }

    fn slot(&mut self, number: i64, plan: &Plan, slot: &Slot) {
        let (Some(due), Some(item)) = (slot.due, plan.item(slot.slot.item)) else { return };
        self.write(due, LogEvent::Reminded { slot: slot.slot });
        let chance = (number * 31 + i64::from(slot.slot.number) * 17 + i64::from(item.id.0) * 7) % 23;
        match chance {
            0 => {}
            1 => self.write(
                due.plus_ms(60_000),
                LogEvent::Skipped { slot: slot.slot, reason: Barrier::ALL[number as usize % 11] },
            ),
            _ => self.run(number, item, slot, due.plus_ms((chance + 1) * 30_000)),
        }
    }

    fn run(&mut self, number: i64, item: &Item, slot: &Slot, started: Stamp) {
        self.runs += 1;
        let whole = Run {
            id: RunId(self.runs),
            item: item.id,
            exercise: item.exercise.clone(),
            rung: item.rung.clone(),
            dose: item.dose,
            slot: Some(slot.slot),
            started,
            live: number % 29 != 0,
            end: RunEnd::Completed,
            paused_ms: 0,
            interruptions: Vec::new(),
            work: work(number, item.id),
        };
        // A run is logged when it begins and when it ends.
        let begun = Run { end: RunEnd::Going, ..whole.clone() };
        self.write(started, LogEvent::Run(begun));
        self.write(started.plus_ms(150_000), LogEvent::Run(whole));
    }
}

/// What was done: mostly everything, sometimes less; stance times grow slowly and vary.
fn work(number: i64, item: ItemId) -> Work {
    match item {
        HOLD => Work::Timed((0..3).map(|_| HoldRecord { side: None, held_ms: 10_000 }).collect()),
        RISE => {
            let failed = u8::from(number % 10 == 4);
            Work::Counted((0..2).map(|_| SetRecord { side: None, done: 8 - failed, failed }).collect())
        }
        _ => {
            let trial = |leg, base: i64, place: i64| {
                let held_ms = (base + number * 12 + (number * 7919 + place * 104_729) % 6000).min(30_000) as u32;
                let end = if held_ms == 30_000 { TrialEnd::Target } else { TrialEnd::Touch };
                Trial { leg, held_ms, end }
            };
            let left = (0..3).map(|place| trial(Some(BodySide::Left), 21_000, place));
            let trials = left.chain((0..3).map(|place| trial(Some(BodySide::Right), 12_000, place))).collect();
            Work::Balance(Balance { set_up: SetUp::OnSupport, surface: Surface::Firm, eyes: Eyes::Open, trials })
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn two_years_have_the_size_to_be_measured() {
        let years = Years::new();
        assert!((6_500..7_500).contains(&years.history.runs.len()), "{}", years.size());
        let review = years.review();
        assert_eq!(review.days.len() as i64, DAYS);
        assert_eq!((review.adherence.len(), review.pain.len(), review.activities.len()), (3, 2, 2));
        assert!(review.adherence.iter().all(|item| item.slots.done > 0), "every item was done");
        assert_eq!(review.balance.len(), 2, "both legs");
        let (newest, weekly) = (&years.plans()[&(years.plans().len() as u16)], years.weekly());
        assert_eq!(weekly.len(), 105);
        let stands = exercises::review::standing(newest, &weekly).expect("there are summaries");
        assert_eq!(
            (stands.until, stands.open_alarms),
            (review.until.date(review.start), 0),
            "of the weeks as of the quarters"
        );
    }

    #[test]
    fn a_year_of_the_hourly_card() {
        assert_eq!(
            Years::new().slots_of_a_year(),
            365 * 9 + 365 + 157,
            "nine a day, one a day, three a week from a Monday on"
        );
    }
}
