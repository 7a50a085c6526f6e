//! The clinic's keys: created under a passphrase at the first start, opened with it later.

use crate::{ActionResult, DataFolder, refuse};
use exercises::plan::{MAX_PHONE, is_phone};
use store::table::keys;
use vault::{IdentityText, Keys, KeysFault, Passphrase};
use wire::Failure;
use wire::app::{LockState, Role};

/// Least number of characters in a passphrase.
pub const MIN_PASSPHRASE: u8 = 12;
const NAME: &str = "clinic-name";
const PHONE: &str = "clinic-phone";

/// Creates the clinic's keys and unlocks the store. The data folder becomes a clinic's only with this step; nothing is stored
/// before.
///
/// # Errors
/// A weak passphrase, a name that [`could_start`] refuses, or keys that exist already.
pub fn start(folder: &mut DataFolder, name: &str, phone: Option<&str>, passphrase: String) -> ActionResult<()> {
    if folder.role() == Some(Role::Patient) {
        return Err(Failure::OtherRole);
    }
    if sealed(folder)?.is_some() {
        return Err(Failure::ClinicStarted);
    }
    let name = name.trim();
    could_start(name, phone, &passphrase)?;
    let phone = phone.map(str::trim).filter(|phone| !phone.is_empty());
    let passphrase = Passphrase::new(passphrase);
    let (made, sealed) = vault::keys::create(&passphrase);
    let before = folder.role();
    let kept = folder.all_or_nothing(|folder| {
        folder.choose_role(Role::Clinic)?;
        let dir = folder.dir();
        let kept = folder.home.store_mut().transaction(|tx| {
            store::table::setting::put(tx, NAME, name)?;
            phone.map_or(Ok(()), |phone| store::table::setting::put(tx, PHONE, phone))?;
            keys::insert(tx, &sealed)
        });
        kept.map_err(refuse::store(&dir))
    });
    if kept.is_err() {
        folder.role = before;
    }
    kept?;
    folder.keys = Some(made);
    Ok(())
}

/// Checks name, telephone number and passphrase before a data folder is created, so that a refusal leaves nothing behind.
///
/// # Errors
/// A weak passphrase; a name that is empty, too long or has a character that cannot be displayed; a text that is no telephone number.
pub fn could_start(name: &str, phone: Option<&str>, passphrase: &str) -> ActionResult<()> {
    if passphrase.chars().count() < MIN_PASSPHRASE.into() {
        return Err(Failure::WeakPassphrase { least: MIN_PASSPHRASE });
    }
    let name = name.trim();
    let most = exercises::plan::MAX_NAME;
    if !(1..=most).contains(&name.chars().count()) {
        return Err(Failure::ClinicNameLength { most: most as u16 });
    }
    if name.chars().any(char::is_control) {
        return Err(Failure::ClinicNameUnprintable);
    }
    fitting(phone.unwrap_or_default()).map(drop)
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
    folder.home.store_mut().transaction(|tx| store::table::setting::put(tx, PHONE, phone)).map_err(refuse::store(&dir))
}

/// Unlocks the store with the passphrase.
pub fn unlock(folder: &mut DataFolder, passphrase: String) -> ActionResult<()> {
    folder.require_role(Role::Clinic)?;
    let sealed = sealed(folder)?.ok_or(Failure::ClinicNotStarted)?;
    let opened = vault::keys::open(&sealed, &Passphrase::new(passphrase)).map_err(|fault| match fault {
        KeysFault::WrongPassphrase => Failure::WrongPassphrase,
        KeysFault::NewerVersion { .. } => Failure::HomeNewer { home: folder.dir().display().to_string() },
        KeysFault::NotKeys | KeysFault::Damaged | KeysFault::TooCostly { .. } => Failure::KeysDamaged,
    })?;
    folder.keys = Some(opened);
    Ok(())
}

/// Whether the store is set up and unlocked.
pub fn state(folder: &DataFolder) -> ActionResult<LockState> {
    if let Some(keys) = &folder.keys {
        return Ok(LockState::Open { clinic: name(folder)?, phone: phone(folder)?, fingerprint: keys.fingerprint() });
    }
    Ok(if sealed(folder)?.is_some() { LockState::Locked } else { LockState::NotStarted })
}

/// Whether the clinic's keys exist.
pub(crate) fn is_started(folder: &DataFolder) -> ActionResult<bool> {
    Ok(sealed(folder)?.is_some())
}

/// The age identity of the clinic, so that its summaries can be opened with any age tool.
pub fn identity(folder: &DataFolder) -> ActionResult<IdentityText> {
    Ok(unlocked_keys(folder)?.identity_string())
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
