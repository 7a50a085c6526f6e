//! The list of patients.

use super::rows;
use super::{digests, issuing, lines, lock, own_exercises, renewing, sealed};
use crate::{ActionResult, DataFolder, Moment, backup, refuse};
use exercises::draft::PatientFacts;
use exercises::plain_text::is_hidden;
use exercises::plan::MAX_NAME;
use store::{StoreError, table};
use wire::Failure;
use wire::clinic::{AddPatientRequest, MAX_CODE, PatientLine, PatientList, RemovePatientRequest, StoreNotice};

/// All patients, those with alarms first, then those whose visit is today, those with a new summary, and by code; with what is wrong with the
/// store. One patient's damaged record is a line that says so. As in the review, no patient's days are counted beyond the clinic's own.
///
/// # Errors
/// [`Failure::ClinicLocked`]; any failure to read the store.
pub fn list(folder: &DataFolder, moment: &Moment) -> ActionResult<PatientList> {
    lock::unlocked_keys(folder)?;
    let state = folder.home.store().state_by_others().map_err(refuse::store(folder.home.dir()))?;
    folder.known_lines.borrow_mut().hold_for(state);
    digests::take_over(folder)?;
    let today = moment.now.date();
    let (mut lines, damaged) = lines::all(folder, today)?;
    let place = |line: &PatientLine| (line.alarms == 0, !line.visits_on(today), !line.has_new_summary());
    lines.sort_by(|one, other| (place(one), &one.code).cmp(&(place(other), &other.code)));
    let mut notices = notices(folder)?;
    notices.extend((damaged > 0).then(|| StoreNotice::DamagedRecords { n: u16::try_from(damaged).unwrap_or(u16::MAX) }));
    Ok(PatientList { lines, notices })
}

/// All patients, as [`list()`]; the lines that had to be made are stored for the next time. That they cannot be is no reason to show none.
///
/// # Errors
/// As for [`list()`].
pub fn show(folder: &mut DataFolder, moment: &Moment) -> ActionResult<PatientList> {
    let list = list(folder, moment)?;
    let _ = digests::store(folder);
    Ok(list)
}

/// What was found to be wrong when the store was unlocked: what was changed from outside, and keys that were saved before a renewal.
///
/// # Errors
/// [`Failure::ClinicLocked`]; any failure to read the store.
pub fn notices(folder: &DataFolder) -> ActionResult<Vec<StoreNotice>> {
    let changed = &folder.changed_outside;
    let rows = changed.rows.values().fold(0, |sum: u32, rows| sum.saturating_add(*rows));
    let codes = rows::codes(folder, changed.rows.keys().copied())?;
    let by_rows = (rows > 0).then_some(StoreNotice::ChangedOutside { rows, codes });
    let manifest = changed.manifest.then_some(StoreNotice::ManifestChanged);
    let keys = renewing::renewed_since(folder)?.map(|renewed| StoreNotice::KeysOlder { renewed });
    Ok(manifest.into_iter().chain(by_rows).chain(keys).collect())
}

/// Adds a patient with a code. The name is stored only here; it is never on a card or in a summary.
///
/// # Errors
/// [`Failure::CodeBad`] and [`Failure::TextUnfit`] for what does not fit; [`Failure::CodeTaken`] if another patient has the code;
/// [`Failure::ClinicLocked`]; any failure to read or write the store.
pub fn add(folder: &mut DataFolder, moment: &Moment, request: &AddPatientRequest) -> ActionResult<PatientList> {
    let (code, name) = fitting(&request.code, request.name.as_deref())?;
    if rows::is_taken(folder, &code)? {
        return Err(Failure::CodeTaken { code });
    }
    let plain = rows::write_patient(&code, name.as_deref(), &PatientFacts::default());
    sealed::change(folder, |tx, sealer| {
        table::patient::insert(tx, |id| Ok::<_, StoreError>(sealer.seal(id, &sealed::patient_place(id), &plain)))
    })?;
    list(folder, moment)
}

/// A code and a name without spaces around them; an empty name is none.
///
/// # Errors
/// [`Failure::CodeBad`], [`Failure::TextUnfit`].
pub(super) fn fitting(code: &str, name: Option<&str>) -> ActionResult<(String, Option<String>)> {
    let code = code.trim().to_owned();
    let fits = (1..=MAX_CODE).contains(&code.chars().count()) && code.chars().all(|c| c.is_ascii_alphanumeric() || c == '-');
    if !fits {
        return Err(Failure::CodeBad);
    }
    let name = name.map(str::trim).filter(|name| !name.is_empty());
    if name.is_some_and(|name| name.chars().count() > MAX_NAME || name.chars().any(|c| c.is_control() || is_hidden(c))) {
        return Err(Failure::TextUnfit { most: MAX_NAME as u16 });
    }
    Ok((code, name.map(str::to_owned)))
}

/// Removes a patient for good: name, cards, draft and summaries, also from the write-ahead log. `typed` confirms it: the code once
/// more. A patient whose cards or summaries are damaged can be removed as well. Backups that were made before still hold the patient,
/// unless [`backup::remove_older`] removes them.
///
/// # Errors
/// [`Failure::RemovalNotConfirmed`] if something else was typed.
pub fn remove(folder: &mut DataFolder, code: &str, typed: &str) -> ActionResult<()> {
    let row = rows::patient_row(folder, code)?.id;
    let code = rows::codes(folder, [row])?.pop().unwrap_or_else(|| code.to_owned());
    if !typed.trim().eq_ignore_ascii_case(&code) {
        return Err(Failure::RemovalNotConfirmed { code });
    }
    folder.all_or_nothing(|folder| {
        sealed::change(folder, |tx, sealer| {
            sealer.forget(row);
            table::setting::remove(tx, &issuing::unsaved_setting(row))?;
            table::patient::remove(tx, row)
        })?;
        // What only the patient's cards had of the clinic's own exercises goes too.
        own_exercises::forget_unused(folder)
    })?;
    folder.plan_holders.borrow_mut().forget(row);
    folder.issued_cards.borrow_mut().retain(|_, card| !card.is_of(row));
    folder.changed_outside.rows.remove(&row);
    folder.home.store().settle().map_err(refuse::store(folder.home.dir()))
}

/// Removes a patient as the window asks for it: if wanted, with the older copies in the data folder that hold the patient.
///
/// # Errors
/// As for [`remove`] and [`backup::remove_older`]. If only the latter fails, the patient is removed nevertheless.
pub fn remove_from_window(
    folder: &mut DataFolder,
    moment: &Moment,
    request: &RemovePatientRequest,
) -> ActionResult<PatientList> {
    remove(folder, &request.code, &request.typed)?;
    if request.also_backups {
        backup::remove_older(folder, moment)?;
    }
    list(folder, moment)
}
