//! Creates the encrypted summary for the visit.

use super::plans::{self, FollowedPlan};
use crate::{ActionResult, DataFolder, Moment, Saved, platform, refuse};
use exercises::log::LogEvent;
use exercises::summary::{MAX_NOTE, Period, Sealing, Summary, reduce};
use format::frames::FrameFault;
use format::summary::SummaryFault;
use pictures::qr::Code;
use std::path::Path;
use store::table;
use wire::Failure;
use wire::patient::{SealRequest, SummaryBytes};

/// Pixels per module of the code in a picture that is written: a whole frame is as wide as the screen of a large phone.
const MODULE_PX: u8 = 8;

/// The exact contents of a summary of this period; nothing is encrypted or written.
pub fn preview(folder: &DataFolder, moment: &Moment, request: &SealRequest) -> ActionResult<Summary> {
    let one = plans::one_at(folder, moment, Some(request.plan))?;
    summary(&one, moment, request, one.followed.history.counter + 1)
}

/// The bytes of a summary of this period, part by part; nothing is encrypted or written.
pub fn bytes(folder: &DataFolder, moment: &Moment, request: &SealRequest) -> ActionResult<SummaryBytes> {
    let summary = preview(folder, moment, request)?;
    let unfit = |fault: SummaryFault| refuse::internal(fault.to_string());
    let packed = format::summary::write(&summary).map_err(unfit)?.packed.len();
    let parts = format::summary::parts(&summary).map_err(unfit)?;
    let plain: usize = parts.iter().map(|(_, bytes)| bytes.len()).sum();
    let hex = |bytes: &[u8]| bytes.iter().map(|byte| format!("{byte:02x}")).collect::<Vec<_>>().join(" ");
    Ok(SummaryBytes {
        parts: parts.iter().map(|(part, bytes)| (*part, hex(bytes))).collect(),
        plain: u32::try_from(plain).unwrap_or(u32::MAX),
        packed: u32::try_from(packed).unwrap_or(u32::MAX),
    })
}

/// Encrypts a summary and writes it to `path`, or into the folder for saved files.
///
/// The summary's number is taken and logged in one step before the file is written. A number is never used for two summaries; if the
/// disk becomes full at that moment, a number only remains unused. A path that cannot be written is reported before.
pub fn seal(folder: &mut DataFolder, moment: &Moment, request: &SealRequest, path: Option<&Path>) -> ActionResult<Saved> {
    let one = plans::one_at(folder, moment, Some(request.plan))?;
    summary(&one, moment, request, 1)?;
    let path = path.map_or_else(|| platform::free_name(folder, moment, "summary", ".age"), Path::to_path_buf);
    platform::could_write(&path)?;
    let sealed = sealed(folder, moment, request, &one)?;
    platform::write(&path, &sealed)?;
    Ok(Saved { path: path.display().to_string(), bytes: sealed.len() as u64 })
}

/// Encrypts a summary and draws it as codes to be shown one after the other, each an SVG element.
///
/// # Errors
/// [`Failure::FramesTooMany`] if the summary is too long; then no number was taken.
pub fn frames(folder: &mut DataFolder, moment: &Moment, request: &SealRequest) -> ActionResult<Vec<String>> {
    let (_, codes) = folder.all_or_nothing(|folder| as_frames(folder, moment, request))?;
    Ok(codes.iter().map(Code::svg).collect())
}

/// Encrypts a summary once, writes it as pictures into a new folder at `dir`, and also to `path` if one is given.
///
/// # Errors
/// As for [`frames`], or if the folder or path cannot be written; then no number was taken.
pub fn seal_to_frames(
    folder: &mut DataFolder,
    moment: &Moment,
    request: &SealRequest,
    dir: &Path,
    path: Option<&Path>,
) -> ActionResult<Vec<Saved>> {
    path.map_or(Ok(()), platform::could_write)?;
    let (sealed, pictures) = folder.all_or_nothing(|folder| {
        let (sealed, codes) = as_frames(folder, moment, request)?;
        let names = (1..).map(|place: u8| format!("frame-{place:02}.png"));
        let pictures: Vec<(String, Vec<u8>)> = names.zip(codes.iter().map(|code| code.png(MODULE_PX))).collect();
        let named: Vec<(&str, Vec<u8>)> = pictures.iter().map(|(name, png)| (name.as_str(), png.clone())).collect();
        platform::write_folder(dir, &named)?;
        Ok((sealed, pictures))
    })?;
    let saved = |path: &Path, bytes: usize| Saved { path: path.display().to_string(), bytes: bytes as u64 };
    let mut all: Vec<Saved> = pictures.iter().map(|(name, png)| saved(&dir.join(name), png.len())).collect();
    if let Some(path) = path {
        platform::write(path, &sealed)?;
        all.push(saved(path, sealed.len()));
    }
    Ok(all)
}

/// The encrypted bytes, the same as in a file, and the codes that contain them.
fn as_frames(folder: &mut DataFolder, moment: &Moment, request: &SealRequest) -> ActionResult<(Vec<u8>, Vec<Code>)> {
    let one = plans::one_at(folder, moment, Some(request.plan))?;
    summary(&one, moment, request, 1)?;
    let sealed = sealed(folder, moment, request, &one)?;
    let texts = format::frames::split(&sealed, vault::random::transfer()).map_err(|fault| match fault {
        FrameFault::TooBig { most } => Failure::FramesTooMany { most: most as u32 },
        other => refuse::internal(other),
    })?;
    let codes = texts.iter().map(|text| Code::of(text).map_err(refuse::internal)).collect::<ActionResult<_>>()?;
    Ok((sealed, codes))
}

/// Takes the next number, and encrypts the summary with it.
fn sealed(folder: &mut DataFolder, moment: &Moment, request: &SealRequest, one: &FollowedPlan) -> ActionResult<Vec<u8>> {
    let counter = next_counter(folder, moment, one)?;
    let summary = summary(one, moment, request, counter)?;
    vault::summary::seal(&summary, &one.secret, &one.recipient).map_err(refuse::internal)
}

fn next_counter(folder: &mut DataFolder, moment: &Moment, one: &FollowedPlan) -> ActionResult<u32> {
    let dir = folder.dir();
    let plan = one.plan().header.id;
    let taken = folder.home.store_mut().transaction(|tx| {
        let counter = table::log::next_export(tx)?;
        let payload = format::entry::write(&LogEvent::Sealed { counter });
        let entry = table::entry::NewEntry {
            plan: &plan.0,
            at_ms: moment.now.utc_ms,
            offset_s: moment.now.offset_s,
            payload: &payload,
        };
        table::entry::append(tx, &entry)?;
        Ok(counter)
    });
    taken.map_err(refuse::store(&dir))
}

fn summary(one: &FollowedPlan, moment: &Moment, request: &SealRequest, counter: u32) -> ActionResult<Summary> {
    let note = request.note.as_deref().map(str::trim).filter(|note| !note.is_empty());
    if note.is_some_and(|note| note.chars().count() > MAX_NOTE) {
        return Err(Failure::TextUnfit { most: MAX_NOTE as u16 });
    }
    let period = Period { from: request.from.unwrap_or(one.plan().header.start), until: request.until };
    let sealing = Sealing { log: one.log, period, now: moment.now, counter, note: note.map(str::to_owned) };
    let reduced = reduce(&one.followed.history, &one.revisions, &one.catalogue, &moment.zone, sealing);
    reduced.ok_or(Failure::EmptyPeriod)
}
