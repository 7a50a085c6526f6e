//! The clinicians of a clinic, each under a name and a passphrase of their own.
//!
//! Everybody's key file holds the clinic's keys, under the own passphrase. The first clinician's is where it always was; while it is the only
//! one, nobody is asked for a name. Names are in plain in the store: they are typed before anything can be decrypted.

use super::{lock, passphrase};
use crate::{ActionResult, DataFolder, platform, refuse};
use exercises::plain_text::is_hidden;
use exercises::plan::MAX_NAME;
use store::table::{self, clinician::Clinician};
use store::{StoreError, Tx};
use wire::Failure;
use wire::clinic::{AddClinicianRequest, ClinicianLine, MAX_CLINICIANS, RemoveClinicianRequest};

/// The setting with the first clinician's name, as soon as there was a second one.
const FIRST_NAME: &str = "clinician-name";
/// In memory, the first clinician; all others are numbered by their rows.
pub(crate) const FIRST: i64 = 0;

/// All clinicians, the first one first; none before the clinic is set up.
fn all(folder: &DataFolder) -> ActionResult<Vec<Clinician>> {
    let (first, others) = folder
        .home
        .store()
        .read(|view| Ok::<_, StoreError>((table::keys::get(view)?, table::clinician::all(view)?)))
        .map_err(refuse::store(folder.home.dir()))?;
    let name = folder.setting(FIRST_NAME)?.unwrap_or_default();
    let first = first.map(|sealed| Clinician { id: FIRST, name, sealed });
    Ok(first.into_iter().chain(others).collect())
}

/// Whether a name has to be typed to unlock.
pub(super) fn are_several(folder: &DataFolder) -> ActionResult<bool> {
    Ok(all(folder)?.len() > 1)
}

/// The key file of a clinician.
///
/// # Errors
/// [`Failure::ClinicNotStarted`] if there is none.
pub(super) fn key_file(folder: &DataFolder, id: i64) -> ActionResult<Vec<u8>> {
    let found = all(folder)?.into_iter().find(|one| one.id == id);
    found.map(|one| one.sealed).ok_or(Failure::ClinicNotStarted)
}

/// Whom a name means. While there is only one clinician, any name or none means that one.
///
/// # Errors
/// [`Failure::ClinicianNameMissing`], [`Failure::NoSuchClinician`].
pub(super) fn named(folder: &DataFolder, name: Option<&str>) -> ActionResult<i64> {
    let all = all(folder)?;
    if all.len() < 2 {
        return Ok(FIRST);
    }
    let name = name.map(str::trim).filter(|name| !name.is_empty()).ok_or(Failure::ClinicianNameMissing)?;
    let found = all.iter().find(|one| is_same(&one.name, name));
    found.map(|one| one.id).ok_or_else(|| Failure::NoSuchClinician { name: name.to_owned() })
}

/// The name of the clinician who is in; `None` for the only one who was never asked for it.
pub(super) fn own_name(folder: &DataFolder) -> ActionResult<Option<String>> {
    let me = all(folder)?.into_iter().find(|one| one.id == folder.clinician);
    Ok(me.map(|one| one.name).filter(|name| !name.is_empty()))
}

fn is_same(one: &str, other: &str) -> bool {
    one.to_lowercase() == other.to_lowercase()
}

/// All clinicians, with who of them is in.
///
/// # Errors
/// [`Failure::ClinicLocked`].
pub fn list(folder: &DataFolder) -> ActionResult<Vec<ClinicianLine>> {
    lock::unlocked_keys(folder)?;
    let line = |one: Clinician| ClinicianLine { is_you: one.id == folder.clinician, name: one.name };
    Ok(all(folder)?.into_iter().map(line).collect())
}

/// Adds a clinician under a first passphrase, which they change themselves. Whoever adds the second one says their own name as well.
///
/// # Errors
/// As for [`passphrase::confirm`] and [`passphrase::check_here`]; [`Failure::TextUnfit`] or [`Failure::ClinicianNameTaken`] for a name,
/// [`Failure::ClinicianNameMissing`], [`Failure::TooManyClinicians`].
pub fn add(folder: &mut DataFolder, request: &AddClinicianRequest) -> ActionResult<Vec<ClinicianLine>> {
    passphrase::confirm(folder, &request.confirmed)?;
    let all = all(folder)?;
    let name = fitting(&request.name)?;
    let own = match all.iter().find(|one| one.id == folder.clinician).filter(|one| one.name.is_empty()) {
        Some(_) => Some(fitting(request.own_name.as_deref().unwrap_or_default())?),
        None => None,
    };
    if all.iter().map(|one| one.name.as_str()).chain(own.as_deref()).any(|known| is_same(known, &name)) {
        return Err(Failure::ClinicianNameTaken { name });
    }
    if all.len() >= MAX_CLINICIANS {
        return Err(Failure::TooManyClinicians { most: MAX_CLINICIANS as u8 });
    }
    passphrase::check_here(folder, &request.first)?;
    let sealed = vault::keys::seal(lock::unlocked_keys(folder)?, &lock::typed(&request.first), platform::passphrase_cost());
    change(folder, |tx| {
        own.map_or(Ok(()), |own| table::setting::put(tx, FIRST_NAME, &own))?;
        table::clinician::insert(tx, &name, &sealed).map(drop)
    })?;
    list(folder)
}

/// Removes a clinician: their passphrase opens nothing any more, except copies of the data that were made before. Whoever removes the
/// first one takes that place.
///
/// # Errors
/// As for [`passphrase::confirm`]; [`Failure::LastClinician`], [`Failure::ClinicianIsYou`], [`Failure::NoSuchClinician`].
pub fn remove(folder: &mut DataFolder, request: &RemoveClinicianRequest) -> ActionResult<Vec<ClinicianLine>> {
    passphrase::confirm(folder, &request.confirmed)?;
    let all = all(folder)?;
    if all.len() < 2 {
        return Err(Failure::LastClinician);
    }
    let id = named(folder, Some(&request.name))?;
    let own = folder.clinician;
    if id == own {
        return Err(Failure::ClinicianIsYou);
    }
    let me = all.iter().find(|one| one.id == own).ok_or(Failure::ClinicNotStarted)?;
    change(folder, |tx| if id == FIRST { become_first(tx, me, &me.sealed) } else { table::clinician::remove(tx, id) })?;
    if id == FIRST {
        folder.clinician = FIRST;
    }
    list(folder)
}

/// Puts this clinician, with this key file, in the first one's place.
fn become_first(tx: &Tx<'_>, me: &Clinician, sealed: &[u8]) -> Result<(), StoreError> {
    table::keys::replace(tx, sealed)?;
    table::setting::put(tx, FIRST_NAME, &me.name)?;
    if me.id == FIRST { Ok(()) } else { table::clinician::remove(tx, me.id) }
}

/// Stores renewed keys as the only key file: nobody else's passphrase is known here, and their files have the former keys.
pub(super) fn keep_only(
    folder: &mut DataFolder,
    sealed: &[u8],
    more: impl FnOnce(&Tx<'_>) -> Result<(), StoreError>,
) -> ActionResult<()> {
    let all = all(folder)?;
    let own = folder.clinician;
    let me = all.iter().find(|one| one.id == own).ok_or(Failure::ClinicNotStarted)?;
    change(folder, |tx| {
        become_first(tx, me, sealed)?;
        let mut others = all.iter().filter(|one| one.id != FIRST && one.id != own);
        others.try_for_each(|one| table::clinician::remove(tx, one.id))?;
        more(tx)
    })?;
    folder.clinician = FIRST;
    Ok(())
}

/// Changes key files, and removes what they were from the database's files.
pub(super) fn change(folder: &mut DataFolder, work: impl FnOnce(&Tx<'_>) -> Result<(), StoreError>) -> ActionResult<()> {
    let dir = folder.dir();
    folder.home.store_mut().transaction(work).map_err(refuse::store(&dir))?;
    // If somebody else is reading, the write-ahead log is emptied when the program ends.
    let _ = folder.home.store().settle();
    Ok(())
}

fn fitting(name: &str) -> ActionResult<String> {
    let name = name.trim();
    if name.is_empty() {
        return Err(Failure::ClinicianNameMissing);
    }
    if name.chars().count() > MAX_NAME || name.chars().any(|c| c.is_control() || is_hidden(c)) {
        return Err(Failure::TextUnfit { most: MAX_NAME as u16 });
    }
    Ok(name.to_owned())
}
