//! `carryover patient`.

use crate::Done;
use crate::args::{Args, Correct, Patient};
use crate::home;
use crate::out::Out;
use actions::patient::taking::{self, CheckedCard};
use actions::patient::{correcting, import_runs, refitting, sealing, today};
use actions::zone::{self, Tz};
use actions::{ActionResult, Clock, DataFolder, Moment, platform};
use chrono::{DateTime, FixedOffset, NaiveDate};
use exercises::id::PlanId;
use exercises::time::Stamp;
use exercises::today::{Today, TodayWeek};
use serde_json::json;
use std::path::{Path, PathBuf};
use wire::Failure;
use wire::app::Role;
use wire::patient::{CorrectRequest, CorrectableRequest, SealRequest};
use words::review::Names;
use words::{Key, Words};

pub fn run(args: &Args, which: Option<PlanId>, what: &Patient, clock: &Clock, out: &mut Out) -> Done {
    let moment = clock.moment();
    match what {
        Patient::Accept { card, yes } => accept(args, card, *yes, &moment, out),
        Patient::Slots { from, days, zone } => slots(args, which, *from, *days, *zone, out),
        Patient::Record { runs } => record(args, which, runs, &moment, out),
        Patient::Now => now(args, &moment, out),
        Patient::Summary { from, until, note, out: path, frames } => {
            let mut folder = open(args, &moment, out)?;
            let plan = actions::patient::plans::one(&folder, which)?.plan().header.id;
            let request = SealRequest { plan, from: *from, until: *until, note: note.clone() };
            let saved = match frames {
                Some(dir) => sealing::seal_to_frames(&mut folder, &moment, &request, dir, path.as_deref())?,
                None => vec![sealing::seal(&mut folder, &moment, &request, path.as_deref())?],
            };
            saved.iter().for_each(|saved| out.say(|_| format!("{} ({} bytes)", saved.path, saved.bytes), || json!(saved)));
            Ok(true)
        }
        Patient::Correct(what) => correct(args, which, what, &moment, out),
        Patient::DeviceCommand(what) => crate::device::run(args, which, what, &moment, out),
    }
}

/// Opens the data folder. Times that were agreed to for today or before apply from now on.
pub(crate) fn open(args: &Args, moment: &Moment, out: &mut Out) -> ActionResult<DataFolder> {
    let mut folder = home::open(args, out)?;
    if folder.role() == Some(Role::Patient) {
        match refitting::settle(&mut folder, moment) {
            // What is there can still be shown and exported.
            Err(failure) if actions::data_folder::is_no_room(&failure) => {}
            settled => settled?,
        }
    }
    Ok(folder)
}

fn accept(args: &Args, files: &[PathBuf], yes: bool, moment: &Moment, out: &mut Out) -> Done {
    let read = files.iter().map(|file| platform::read(file, platform::MAX_PICTURE));
    let (mut folder, card) = folder_for(&args.home()?, &read.collect::<ActionResult<Vec<_>>>()?, out)?;
    let preview = card.preview(&folder)?;
    if preview.other_keys && !yes {
        let (clinic, fingerprint) = (preview.plan.header.clinic, preview.fingerprint);
        return Err(Failure::ClinicNameKnown { clinic, fingerprint });
    }
    for exercise in preview.exercises.iter().filter(|exercise| preview.older.contains(&exercise.id)) {
        out.note(&out.words.older_exercise(out.words.exercise_name(exercise)));
    }
    card.take(&mut folder, moment, &[])?;
    let plan = &preview.plan;
    out.say(
        |words| {
            let items = plan.prescription.items.iter().map(|item| {
                let exercise = preview.exercises.iter().find(|exercise| exercise.id == item.exercise);
                let name = exercise.and_then(|e| e.text(words.lang())).map_or("", |text| text.name.as_str());
                format!("  {}", words.plan_line(item.id.0, name, &words.dose_of(item), &words.due(item)))
            });
            let items: Vec<String> = items.collect();
            let renewed = if preview.renewed { format!("{}\n", words.text(Key::RenewedKeys)) } else { String::new() };
            let (clinic, revision, fingerprint) = (&plan.header.clinic, plan.header.revision, &preview.fingerprint);
            format!("{clinic} {revision} ({fingerprint})\n{renewed}{}", items.join("\n"))
        },
        || {
            json!({ "plan": plan.header.id.to_string(), "revision": plan.header.revision, "clinic": plan.header.clinic,
                   "fingerprint": preview.fingerprint, "renewed": preview.renewed, "review": plan.prescription.review,
                   "items": plan.prescription.items.len() })
        },
    );
    Ok(true)
}

fn correct(args: &Args, which: Option<PlanId>, what: &Correct, moment: &Moment, out: &mut Out) -> Done {
    let mut folder = home::open(args, out)?;
    let (plan, days) = (actions::patient::plans::one(&folder, which)?.plan().header.id, what.days);
    let page = match what.entry.zip(what.to.correction()?) {
        Some((entry, to)) => correcting::correct(&mut folder, moment, &CorrectRequest { plan, entry, to, days })?,
        None => correcting::page(&folder, moment, &CorrectableRequest { plan, days })?,
    };
    if page.entries.is_empty() && !out.json() {
        out.say(|words| words.correct_none(days), || json!(null));
    }
    for line in page.entries.iter().filter(|line| what.entry.is_none_or(|entry| entry == line.n)) {
        out.say(
            |words| {
                let names = Names::of_prescription(words, &page.plan.prescription, &page.exercises);
                let now = words.corrected(line, names).map(|now| format!(". {now}")).unwrap_or_default();
                let clock = words.wrong_clock_then(line).map(|clock| format!(". {clock}")).unwrap_or_default();
                format!("{}\t{}\t{}{now}{clock}", line.n, instant(line.at), words.said_so(line.said, names))
            },
            || json!(line),
        );
    }
    Ok(true)
}

/// The data folder that takes the card, and the card. A first card is checked before a folder is created and a side is chosen, so
/// that a refused card leaves nothing behind.
fn folder_for(home: &Path, files: &[Vec<u8>], out: &mut Out) -> ActionResult<(DataFolder, CheckedCard)> {
    let mut folder = match home::open_at(home, false, out) {
        Err(Failure::HomeMissing { .. }) => {
            let card = taking::check(files, &DataFolder::shipped_catalogue()?)?;
            card.can_be_followed()?;
            let mut folder = home::open_at(home, true, out)?;
            folder.choose_role(Role::Patient)?;
            return Ok((folder, card));
        }
        opened => opened?,
    };
    let is_first = folder.role().is_none();
    if !is_first {
        folder.choose_role(Role::Patient)?;
    }
    let card = taking::check(files, folder.catalogue())?;
    if is_first {
        card.can_be_followed()?;
        folder.choose_role(Role::Patient)?;
    }
    Ok((folder, card))
}

fn slots(args: &Args, which: Option<PlanId>, from: NaiveDate, days: u16, place: Tz, out: &mut Out) -> Done {
    let folder = home::open(args, out)?;
    let one = actions::patient::plans::one(&folder, which)?;
    let around = from.and_hms_opt(12, 0, 0).unwrap_or_default().and_utc().timestamp();
    let offsets = zone::offsets(place, around);
    for day in from.iter_days().take(days.into()) {
        for slot in one.followed.slots_on(day, &offsets) {
            let (due, closes) = (slot.due.map(instant), slot.closes.map(instant));
            out.say(
                |words| match (&due, &closes) {
                    (Some(due), Some(closes)) => words.slot_line(&slot.slot.item.to_string(), due, due, closes),
                    _ => format!("{} {} {}", slot.slot.item, day, words.mark(exercises::history::Mark::NoSuchHour)),
                },
                || {
                    json!({ "item": slot.slot.item, "day": day, "number": slot.slot.number, "minute": slot.minute,
                           "due": due, "opens": due, "closes": closes })
                },
            );
        }
    }
    Ok(true)
}

/// The moment in RFC 3339 with its offset from UTC, to the second.
pub(crate) fn instant(stamp: Stamp) -> String {
    let offset = FixedOffset::east_opt(stamp.offset_s);
    let utc = DateTime::from_timestamp(stamp.utc_ms.div_euclid(1000), 0).unwrap_or_default();
    offset.map_or_else(|| utc.to_rfc3339(), |offset| utc.with_timezone(&offset).to_rfc3339())
}

fn record(args: &Args, which: Option<PlanId>, runs: &Path, moment: &Moment, out: &mut Out) -> Done {
    let name = runs.display().to_string();
    let bytes = platform::read(runs, format::runs_file::MAX_BYTES)?;
    let entries = format::text(&bytes).and_then(format::runs_file::read).map_err(platform::not_understood(&name))?;
    let mut folder = open(args, moment, out)?;
    let recorded = import_runs::record(&mut folder, which, &moment.zone, &name, &entries)?;
    out.say(|_| format!("{recorded}"), || json!({ "recorded": recorded }));
    Ok(true)
}

/// What was done this week of each exercise of which the person chooses the days.
fn weeks(page: &Today, words: Words) -> Vec<String> {
    let line = |week: &TodayWeek| {
        let item = page.items.iter().find(|item| (item.plan, item.item.id) == (week.plan, week.item))?;
        let so_far = words.week_so_far(week.so_far.done, week.so_far.of);
        Some(words.named_text(words.exercise_name(&item.exercise), &so_far))
    };
    page.weeks.iter().filter_map(line).collect()
}

fn now(args: &Args, moment: &Moment, out: &mut Out) -> Done {
    let folder = open(args, moment, out)?;
    let page = today::page(&folder, moment)?;
    out.say(
        |words| {
            let knots = page.string.iter().map(|knot| format!("{} {}", words.minute(knot.minute), words.mark(knot.mark)));
            knots.chain(weeks(&page, words)).collect::<Vec<_>>().join("\n")
        },
        || json!(page),
    );
    Ok(true)
}
