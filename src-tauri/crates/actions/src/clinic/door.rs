//! The clinic's keys: made under a passphrase at first start, opened with it later.

use crate::{Answer, House, refuse};
use exercises::plan::check::{Problem, TextPlace};
use store::table::keys;
use vault::{IdentityText, Keys, KeysFault, Passphrase};
use wire::Failure;
use wire::house::{Door, Role};

/// A passphrase has at least so many characters.
pub const LEAST_PASSPHRASE: u8 = 12;
const NAME: &str = "clinic-name";

/// Makes the clinic's keys and opens the door. Only then the data folder is a clinic's: until it is set up, nothing of it is kept.
///
/// # Errors
/// A weak passphrase, an empty name, or keys that exist already.
pub fn start(house: &mut House, name: &str, passphrase: String) -> Answer<()> {
    if house.role() == Some(Role::Patient) {
        return Err(Failure::OtherRole);
    }
    if sealed(house)?.is_some() {
        return Err(Failure::ClinicStarted);
    }
    let name = name.trim();
    could_start(name, &passphrase)?;
    let passphrase = Passphrase::new(passphrase);
    let (made, sealed) = vault::keys::create(&passphrase);
    let before = house.role();
    let kept = house.all_or_nothing(|house| {
        house.choose(Role::Clinic)?;
        let dir = house.dir();
        let kept = house.home.store_mut().transaction(|tx| {
            store::table::setting::put(tx, NAME, name)?;
            keys::insert(tx, &sealed)
        });
        kept.map_err(refuse::store(&dir))
    });
    if kept.is_err() {
        house.role = before;
    }
    kept?;
    house.keys = Some(made);
    Ok(())
}

/// Looks at name and passphrase before there is a data folder: a refusal then leaves nothing behind.
///
/// # Errors
/// A weak passphrase or an unfit name.
pub fn could_start(name: &str, passphrase: &str) -> Answer<()> {
    if passphrase.chars().count() < LEAST_PASSPHRASE.into() {
        return Err(Failure::WeakPassphrase { least: LEAST_PASSPHRASE });
    }
    let name = name.trim();
    let most = exercises::plan::MAX_NAME;
    if (1..=most).contains(&name.chars().count()) && !name.chars().any(char::is_control) {
        return Ok(());
    }
    Err(Failure::PlanRefused(vec![Problem::Text { what: TextPlace::Clinic, most }]))
}

/// Opens the door with the passphrase.
pub fn unlock(house: &mut House, passphrase: String) -> Answer<()> {
    house.must_be(Role::Clinic)?;
    let sealed = sealed(house)?.ok_or(Failure::ClinicNotStarted)?;
    let opened = vault::keys::open(&sealed, &Passphrase::new(passphrase)).map_err(|fault| match fault {
        KeysFault::WrongPassphrase => Failure::WrongPassphrase,
        KeysFault::NewerVersion { .. } => Failure::HomeNewer { home: house.dir().display().to_string() },
        KeysFault::NotKeys | KeysFault::Damaged | KeysFault::TooCostly { .. } => Failure::KeysDamaged,
    })?;
    house.keys = Some(opened);
    Ok(())
}

/// How far the door is open.
pub fn stands(house: &House) -> Answer<Door> {
    if let Some(keys) = &house.keys {
        return Ok(Door::Open { clinic: name(house)?, fingerprint: keys.fingerprint() });
    }
    Ok(if sealed(house)?.is_some() { Door::Locked } else { Door::NotStarted })
}

/// Whether there are keys.
pub(crate) fn is_started(house: &House) -> Answer<bool> {
    Ok(sealed(house)?.is_some())
}

/// The age identity of the clinic, so that its summaries can be opened with any age tool.
pub fn identity(house: &House) -> Answer<IdentityText> {
    Ok(open(house)?.identity_string())
}

/// The clinic's name.
pub(crate) fn name(house: &House) -> Answer<String> {
    house.setting(NAME)?.ok_or(Failure::ClinicNotStarted)
}

/// The keys, if the door is open.
pub(crate) fn open(house: &House) -> Answer<&Keys> {
    house.must_be(Role::Clinic)?;
    match &house.keys {
        Some(keys) => Ok(keys),
        None if sealed(house)?.is_some() => Err(Failure::ClinicLocked),
        None => Err(Failure::ClinicNotStarted),
    }
}

fn sealed(house: &House) -> Answer<Option<Vec<u8>>> {
    house.home.store().read(keys::get).map_err(refuse::store(house.home.dir()))
}
