//! The clinic's keys: created under a passphrase at the first start, opened with it later, and dropped when the store is locked.

use super::clinicians::{self, FIRST};
use super::issuing::LastCard;
use super::upkeep::ChangedOutside;
use super::{idle, passphrase, renewing, saved_keys, sealed as sealed_rows, upkeep};
use crate::{ActionResult, DataFolder, platform, refuse};
use exercises::plain_text::is_hidden;
use exercises::plan::{MAX_PHONE, is_phone};
use store::table::{self, keys};
use store::{StoreError, Tx};
use vault::manifest::Manifest;
use vault::{Keys, KeysFault, Passphrase};
use wire::app::{LockState, Role};
use wire::clinic::StartClinicRequest;
use wire::{Failure, Secret};

const NAME: &str = "clinic-name";
const PHONE: &str = "clinic-phone";

/// Creates the clinic's keys and unlocks the store. The data folder becomes a clinic's only with this step; nothing is stored
/// before.
///
/// # Errors
/// A weak passphrase, a name that [`could_start`] refuses, or keys that exist already.
pub fn start(folder: &mut DataFolder, name: &str, phone: Option<&str>, passphrase: Secret) -> ActionResult<()> {
    could_be_a_clinic(folder)?;
    could_start(name, phone, &passphrase)?;
    let created = vault::keys::create(&typed(&passphrase), platform::passphrase_cost());
    keep(folder, name, phone, created)
}

/// Sets the clinic up with its saved keys, on a new computer or for a restored backup, and unlocks the store. Their passphrase becomes
/// the clinic's.
///
/// # Errors
/// As for [`start`]; a wrong passphrase, or bytes that are no saved keys.
pub fn start_with_saved_keys(
    folder: &mut DataFolder,
    name: &str,
    phone: Option<&str>,
    passphrase: Secret,
    saved: &[u8],
) -> ActionResult<()> {
    could_be_a_clinic(folder)?;
    good_name(name)?;
    fitting(phone.unwrap_or_default())?;
    let opened = saved_keys::open(saved, &passphrase)?;
    keep(folder, name, phone, opened)
}

/// Sets the clinic up as it was asked for in the window.
///
/// # Errors
/// As for [`start`] and [`start_with_saved_keys`].
pub fn start_from_window(folder: &mut DataFolder, asked: StartClinicRequest) -> ActionResult<()> {
    let StartClinicRequest { name, phone, passphrase, saved_keys } = asked;
    match saved_keys {
        None => start(folder, &name, phone.as_deref(), passphrase),
        Some(saved) => {
            let saved = platform::from_base64(saved.expose())?;
            start_with_saved_keys(folder, &name, phone.as_deref(), passphrase, &saved)
        }
    }
}

fn could_be_a_clinic(folder: &DataFolder) -> ActionResult<()> {
    if folder.role() == Some(Role::Patient) {
        return Err(Failure::OtherRole);
    }
    if sealed(folder)?.is_some() { Err(Failure::ClinicStarted) } else { Ok(()) }
}

fn keep(folder: &mut DataFolder, name: &str, phone: Option<&str>, (made, sealed): (Keys, Vec<u8>)) -> ActionResult<()> {
    let name = name.trim();
    let phone = phone.map(str::trim).filter(|phone| !phone.is_empty());
    let before = folder.role();
    let kept = folder.all_or_nothing(|folder| {
        folder.choose_role(Role::Clinic)?;
        let dir = folder.dir();
        let kept = folder.home.store_mut().transaction(|tx| {
            table::setting::put(tx, NAME, name)?;
            phone.map_or(Ok(()), |phone| table::setting::put(tx, PHONE, phone))?;
            begin_manifest(tx, &made)?;
            keys::insert(tx, &sealed)?;
            renewing::note(tx, &made)
        });
        kept.map_err(refuse::store(&dir))
    });
    if kept.is_err() {
        folder.role = before;
    }
    kept?;
    open(folder, made)
}

/// Begins the manifest of a new clinic. In a database whose keys were lost there may be rows, or a manifest that says which are missing:
/// then it stays as it is.
fn begin_manifest(tx: &Tx<'_>, keys: &Keys) -> Result<(), StoreError> {
    let mut any = table::manifest::get(tx)?.is_some();
    sealed_rows::each_row(tx, |_| any = true)?;
    if any {
        return Ok(());
    }
    sealed_rows::put_manifest(tx, keys, &Manifest::default())
}

/// Opens the store with these keys, and checks whether its rows were changed from outside.
pub(super) fn open(folder: &mut DataFolder, keys: Keys) -> ActionResult<()> {
    folder.keys = Some(keys);
    let done = upkeep::after_unlocking(folder);
    if done.is_err() {
        lock(folder);
    }
    done
}

/// Checks name, telephone number and passphrase before a data folder is created, so that a refusal leaves nothing behind.
///
/// # Errors
/// A weak passphrase; a name that is empty, too long or has a character that cannot be displayed; a text that is no telephone number.
pub fn could_start(name: &str, phone: Option<&str>, passphrase: &Secret) -> ActionResult<()> {
    passphrase::check(passphrase, &[name, phone.unwrap_or_default()])?;
    good_name(name)?;
    fitting(phone.unwrap_or_default()).map(drop)
}

fn good_name(name: &str) -> ActionResult<()> {
    let name = name.trim();
    let most = exercises::plan::MAX_NAME;
    if !(1..=most).contains(&name.chars().count()) {
        return Err(Failure::ClinicNameLength { most: most as u16 });
    }
    if name.chars().any(|c| c.is_control() || is_hidden(c)) {
        return Err(Failure::ClinicNameUnprintable);
    }
    Ok(())
}

/// The telephone number without spaces around it; `None` if it is empty.
fn fitting(phone: &str) -> ActionResult<Option<&str>> {
    match phone.trim() {
        "" => Ok(None),
        phone if is_phone(phone) => Ok(Some(phone)),
        _ => Err(Failure::PhoneUnfit { most: MAX_PHONE as u16 }),
    }
}

/// Replaces the clinic's telephone number, which the next cards carry; an empty one removes it.
///
/// # Errors
/// [`Failure::PhoneUnfit`] for a text that is no telephone number.
pub fn set_phone(folder: &mut DataFolder, phone: &str) -> ActionResult<()> {
    unlocked_keys(folder)?;
    let phone = fitting(phone)?.unwrap_or_default();
    let dir = folder.dir();
    folder.home.store_mut().transaction(|tx| table::setting::put(tx, PHONE, phone)).map_err(refuse::store(&dir))
}

/// Unlocks the store with the passphrase, and checks whether its rows were changed from outside: [`super::patients::notices`] says so.
/// Keys that an older program sealed, with less work for each try or under another form of the same letters, are sealed anew.
///
/// # Errors
/// As for [`unlock_as`], of a clinic with one clinician.
pub fn unlock(folder: &mut DataFolder, passphrase: Secret) -> ActionResult<()> {
    unlock_as(folder, None, passphrase)
}

/// The same for the clinician with this name, which is needed only if there are several.
///
/// # Errors
/// [`Failure::WrongPassphrase`], [`Failure::ClinicianNameMissing`], [`Failure::NoSuchClinician`], and damaged keys.
pub fn unlock_as(folder: &mut DataFolder, name: Option<&str>, passphrase: Secret) -> ActionResult<()> {
    folder.require_role(Role::Clinic)?;
    let named = clinicians::named(folder, name)?;
    let before = std::mem::replace(&mut folder.clinician, named);
    // A refusal changes nothing: what is open stays open for whom it was opened.
    let (opened, renewed) = open_with(folder, &passphrase).inspect_err(|_| folder.clinician = before)?;
    if let Some(renewed) = renewed {
        // Without room on the disk the old form stays and still opens; the next time it is tried again.
        let _ = replace(folder, &renewed, |tx| renewing::note(tx, &opened));
    }
    open(folder, opened)
}

/// Locks the store: wipes the keys, and drops everything that was decrypted with them.
pub fn lock(folder: &mut DataFolder) {
    folder.keys = None;
    folder.issued_cards.take();
    folder.known_lines.take();
    folder.own_rows.take();
    folder.plan_holders.take();
    folder.looked_at.take();
    folder.last_card = LastCard::default();
    folder.changed_outside = ChangedOutside::default();
}

/// Opens the keys with the passphrase of the clinician who is in or was named last, whether the store is locked or not. The second
/// result is a renewed file, if the stored one is outdated.
pub(super) fn open_with(folder: &DataFolder, passphrase: &Secret) -> ActionResult<(Keys, Option<Vec<u8>>)> {
    let sealed = clinicians::key_file(folder, folder.clinician)?;
    let newer = || Failure::HomeNewer { home: folder.dir().display().to_string() };
    vault::keys::open_and_renew(&sealed, &typed(passphrase), platform::passphrase_cost()).map_err(|fault| match fault {
        KeysFault::WrongPassphrase => Failure::WrongPassphrase,
        KeysFault::NewerVersion { .. } => newer(),
        KeysFault::NotKeys | KeysFault::Damaged | KeysFault::TooCostly { .. } => Failure::KeysDamaged,
    })
}

/// Replaces the stored keys of the clinician who is in, does `more` with them or neither, and removes their old form from the database's files.
pub(super) fn replace(
    folder: &mut DataFolder,
    sealed: &[u8],
    more: impl FnOnce(&Tx<'_>) -> Result<(), StoreError>,
) -> ActionResult<()> {
    let clinician = folder.clinician;
    clinicians::change(folder, |tx| {
        match clinician {
            FIRST => table::keys::replace(tx, sealed)?,
            id => table::clinician::replace(tx, id, sealed)?,
        }
        more(tx)
    })
}

/// A passphrase as the keys take it.
pub(super) fn typed(passphrase: &Secret) -> Passphrase {
    Passphrase::new(passphrase.expose().to_owned())
}

/// Whether the store is set up and unlocked.
pub fn state(folder: &DataFolder) -> ActionResult<LockState> {
    if let Some(keys) = &folder.keys {
        let (clinic, phone, fingerprint) = (name(folder)?, phone(folder)?, keys.fingerprint());
        return Ok(LockState::Open { clinic, phone, fingerprint, idle_minutes: idle::minutes(folder)? });
    }
    Ok(if sealed(folder)?.is_some() {
        LockState::Locked { several: clinicians::are_several(folder)? }
    } else {
        LockState::NotStarted
    })
}

/// Whether the clinic's keys exist.
pub(crate) fn is_started(folder: &DataFolder) -> ActionResult<bool> {
    Ok(sealed(folder)?.is_some())
}

/// The clinic's name.
pub(crate) fn name(folder: &DataFolder) -> ActionResult<String> {
    folder.setting(NAME)?.ok_or(Failure::ClinicNotStarted)
}

/// The clinic's telephone number, if one was entered.
pub(crate) fn phone(folder: &DataFolder) -> ActionResult<Option<String>> {
    Ok(folder.setting(PHONE)?.filter(|phone| !phone.is_empty()))
}

/// The keys, if the store is unlocked; otherwise a failure.
pub(crate) fn unlocked_keys(folder: &DataFolder) -> ActionResult<&Keys> {
    folder.require_role(Role::Clinic)?;
    match &folder.keys {
        Some(keys) => Ok(keys),
        None if sealed(folder)?.is_some() => Err(Failure::ClinicLocked),
        None => Err(Failure::ClinicNotStarted),
    }
}

fn sealed(folder: &DataFolder) -> ActionResult<Option<Vec<u8>>> {
    folder.home.store().read(keys::get).map_err(refuse::store(folder.home.dir()))
}
