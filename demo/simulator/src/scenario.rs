//! The whole scenario: the visit, six weeks at home, and the summaries received by the clinic.

use crate::calendar::FIRST_VISIT;
use crate::day::Day;
use crate::people::{PEOPLE, Person};
use actions::clinic::{drafting, issuing, lock, patients, receiving};
use actions::patient::{import_runs, plans, sealing, taking};
use actions::{ActionResult, DataFolder, Moment, clock, platform};
use chrono::{Duration, NaiveDate, NaiveTime};
use chrono_tz::Tz;
use exercises::draft::Draft;
use exercises::plan::{Plan, Prescription};
use exercises::score::Score;
use exercises::time::{Offsets, ResolvedTime, Stamp};
use format::runs_file::{RunsFileEntry, RunsFileEvent};
use rand::SeedableRng;
use rand::rngs::StdRng;
use std::path::Path;
use wire::Failure;
use wire::app::Role;
use wire::clinic::{AddPatientRequest, IssueRequest};
use wire::patient::{CardSource, SealRequest, TakeCardRequest};

/// The invented clinic.
pub const CLINIC: &str = "Ropewalk Practice";
/// Its telephone number, of the kind that is kept free for stories.
pub const CLINIC_PHONE: &str = "+00 555 0142";
/// Its passphrase in the demo. A real clinic chooses its own and does not write it down anywhere.
pub const PASSPHRASE: &str = "plumb line and lantern";
/// The history's length in days.
const DAYS: i64 = 42;

struct Scenario<'a> {
    out: &'a Path,
    start: NaiveDate,
    until: NaiveDate,
    place: Tz,
}

/// The day of the first visit if the next one is on `until`.
pub fn first_day(until: NaiveDate) -> NaiveDate {
    until - Duration::days(DAYS)
}

/// Creates every data folder in `out`: `clinic`, and one for each device.
pub fn make(out: &Path, until: NaiveDate, place: Tz, seed: u64) -> ActionResult<()> {
    let scenario = Scenario { out, start: first_day(until), until, place };
    let mut clinic = DataFolder::open(&out.join("clinic"), true)?;
    lock::start(&mut clinic, CLINIC, Some(CLINIC_PHONE), PASSPHRASE.into())?;
    platform::write(&out.join("passphrase.txt"), format!("{PASSPHRASE}\n").as_bytes())?;
    for (number, person) in PEOPLE.iter().enumerate() {
        let before = scenario.moment(scenario.start, 7, 0);
        patients::add(&mut clinic, &before, &AddPatientRequest { code: person.code.to_owned(), name: None })?;
        let mut chance = StdRng::seed_from_u64(seed + number as u64);
        scenario.live(&mut clinic, person, &mut chance)?;
    }
    Ok(())
}

impl Scenario<'_> {
    /// Simulates one person: the first card, six weeks, possibly a second card, and the summaries.
    fn live(&self, clinic: &mut DataFolder, person: &Person, chance: &mut StdRng) -> ActionResult<()> {
        let mut devices = self.devices(person)?;
        let review = self.until.max(self.start + Duration::days(1));
        let text = person.plan.replace("REVIEW", &review.to_string());
        let prescription = format::plan_file::read(&text, self.start).map_err(platform::not_understood(person.code))?;
        let mut plan = self.visit(clinic, person, &mut devices, self.start, prescription)?;
        let mut taken = self.moment(self.start, 8, 40).now;
        for number in 0..=DAYS as u16 {
            let date = self.start + Duration::days(number.into());
            if person.second_card == Some(number) {
                self.hand_over(clinic, person, &mut devices, date - Duration::days(1))?;
                let next = drafting::draft(clinic, &self.moment(date, 8, 30), person.code)?.draft;
                let next = Prescription { review, ..self.second(&plan.prescription, next) };
                plan = self.visit(clinic, person, &mut devices, date, next)?;
                taken = self.moment(date, 8, 40).now;
            }
            let zone = self.moment(date, 12, 0).zone;
            let day = Day { person, plan: &plan, date, number, zone: &zone, taken, device };
            let last = self.moment(self.until, 8, 0).now;
            for (device, entry) in day.entries(chance).into_iter().filter(|(_, entry)| entry.at < last) {
                let folder = &mut devices[device];
                if !is_paused(folder, &entry, &zone)? {
                    import_runs::record(folder, None, &zone, person.code, std::slice::from_ref(&entry))?;
                }
            }
        }
        self.hand_over(clinic, person, &mut devices, self.until)
    }

    fn devices(&self, person: &Person) -> ActionResult<Vec<DataFolder>> {
        let open = |name: &&str| {
            let mut folder = DataFolder::open(&self.out.join(name), true)?;
            folder.choose_role(Role::Patient)?;
            Ok(folder)
        };
        person.devices.iter().map(open).collect()
    }

    /// The prescription of the second visit: the rest is carried over, with today's ratings and stance times and slightly more to
    /// do.
    fn second(&self, first: &Prescription, next: Draft) -> Prescription {
        let baselines = first.baselines.iter().map(|b| exercises::plan::StanceBaseline {
            taken: Some(next.today),
            tenths: b.tenths.max(180),
            ..*b
        });
        let mut plan = Prescription { confirmed: Some(next.today), baselines: baselines.collect(), ..next.prescription };
        plan.complaints.iter_mut().for_each(|complaint| complaint.pain = Some(Score::at_most_ten(4)));
        plan.activities.iter_mut().for_each(|activity| activity.rating = Some(Score::at_most_ten(6)));
        for item in &mut plan.items {
            if let exercises::catalogue::Dose::Reps { repetitions, .. } = &mut item.dose {
                *repetitions += 2;
            }
        }
        plan
    }

    /// Simulates a visit: the clinician issues a card, and every device takes it.
    fn visit(
        &self,
        clinic: &mut DataFolder,
        person: &Person,
        devices: &mut [DataFolder],
        day: NaiveDate,
        prescription: Prescription,
    ) -> ActionResult<Plan> {
        let request = IssueRequest { code: person.code.to_owned(), prescription };
        let folder = self.out.join("cards").join(format!("{}-{day}", person.code));
        let issued = issuing::issue(clinic, &self.moment(day, FIRST_VISIT.0, FIRST_VISIT.1), &request, Some(&folder))?;
        for folder in devices {
            let source = CardSource::Text(issued.text.clone());
            taking::take(folder, &self.moment(day, 8, 40), &TakeCardRequest { source, agreed: Vec::new() })?;
        }
        Ok(issued.plan)
    }

    /// Every device seals its summary, and the clinic receives them.
    fn hand_over(
        &self,
        clinic: &mut DataFolder,
        person: &Person,
        devices: &mut [DataFolder],
        until: NaiveDate,
    ) -> ActionResult<()> {
        let moment = self.moment(until, 8, 5);
        for (folder, name) in devices.iter_mut().zip(person.devices) {
            let plan = actions::patient::plans::one(folder, None)?.plan().header.id;
            let path = self.out.join("summaries").join(format!("{name}-{until}.age"));
            platform::folder(&self.out.join("summaries"))?;
            sealing::seal(folder, &moment, &SealRequest { plan, from: None, until, note: None }, Some(&path))?;
            receive(clinic, &moment, &path)?;
        }
        Ok(())
    }

    fn moment(&self, day: NaiveDate, hour: u32, minute: u32) -> Moment {
        moment(day, hour, minute, self.place)
    }
}

/// Whether an alarm on this device pauses what the entry says was done.
fn is_paused(folder: &DataFolder, entry: &RunsFileEntry, zone: &Offsets) -> ActionResult<bool> {
    let (RunsFileEvent::Run { item, .. } | RunsFileEvent::Skipped { item, .. }) = &entry.event else { return Ok(false) };
    let pages = plans::pages(folder, &Moment { now: entry.at, zone: zone.clone() })?;
    Ok(pages.iter().any(|page| page.paused.iter().any(|(paused, _)| paused == item)))
}

/// The moment at which the clocks in `place` show this time; for a time skipped by a clock change, the same time in UTC.
pub fn moment(day: NaiveDate, hour: u32, minute: u32, place: Tz) -> Moment {
    let local = day.and_time(NaiveTime::from_hms_opt(hour, minute, 0).unwrap_or_default());
    let around = clock::at(local.and_utc().timestamp_millis(), place);
    let now: Stamp = match around.zone.resolve(local) {
        ResolvedTime::Once(at) | ResolvedTime::Twice(at) => at,
        ResolvedTime::Never => around.now,
    };
    Moment { now, zone: around.zone }
}

/// The device at work until five o'clock, the one at home afterwards.
fn device(devices: usize, hour: u16) -> usize {
    if (8..18).contains(&hour) { 0 } else { devices - 1 }
}

fn receive(clinic: &mut DataFolder, moment: &Moment, path: &Path) -> ActionResult<()> {
    let bytes = platform::read(path, platform::MAX_SUMMARY);
    let receipts = receiving::receive(clinic, moment, vec![(path.display().to_string(), bytes)])?;
    let refused = receipts.into_iter().find_map(|receipt| match receipt.outcome {
        wire::receiving::Outcome::Refused(failure) => Some(failure),
        _ => None,
    });
    refused.map_or(Ok(()), Err::<(), Failure>)
}
