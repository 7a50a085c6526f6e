//! Choosing and changing the clinic's passphrase, and confirming with it.

use super::lock;
use crate::{ActionResult, DataFolder, platform};
use vault::Strength;
use wire::clinic::PassphraseStrength;
use wire::{Failure, Secret};

/// Least number of characters in a passphrase.
pub const MIN_PASSPHRASE: u8 = 12;

/// How hard a passphrase is to guess for somebody who knows `about`, such as the clinic's name.
pub fn strength(passphrase: &Secret, about: &[&str]) -> PassphraseStrength {
    let passphrase = lock::typed(passphrase);
    if passphrase.characters() < MIN_PASSPHRASE.into() {
        return PassphraseStrength::TooShort;
    }
    match passphrase.strength(about) {
        Strength::Guessable => PassphraseStrength::Guessable,
        Strength::Good => PassphraseStrength::Good,
        Strength::Strong => PassphraseStrength::Strong,
    }
}

/// The same for a clinic that may exist already: its own name and number are known to everybody.
///
/// # Errors
/// Any failure to read the clinic's name.
pub fn strength_here(folder: &DataFolder, passphrase: &Secret, clinic: Option<&str>) -> ActionResult<PassphraseStrength> {
    let about = about(folder)?;
    let about: Vec<&str> = about.iter().map(String::as_str).chain(clinic).collect();
    Ok(strength(passphrase, &about))
}

fn about(folder: &DataFolder) -> ActionResult<Vec<String>> {
    if !lock::is_started(folder)? {
        return Ok(Vec::new());
    }
    Ok([Some(lock::name(folder)?), lock::phone(folder)?].into_iter().flatten().collect())
}

/// # Errors
/// [`Failure::WeakPassphrase`] or [`Failure::GuessablePassphrase`].
pub(super) fn check(passphrase: &Secret, about: &[&str]) -> ActionResult<()> {
    match strength(passphrase, about) {
        PassphraseStrength::TooShort => Err(Failure::WeakPassphrase { least: MIN_PASSPHRASE }),
        PassphraseStrength::Guessable => Err(Failure::GuessablePassphrase),
        PassphraseStrength::Good | PassphraseStrength::Strong => Ok(()),
    }
}

/// Refuses a new passphrase that is too weak for this clinic.
///
/// # Errors
/// [`Failure::WeakPassphrase`] or [`Failure::GuessablePassphrase`].
pub fn check_here(folder: &DataFolder, passphrase: &Secret) -> ActionResult<()> {
    let about = about(folder)?;
    check(passphrase, &about.iter().map(String::as_str).collect::<Vec<_>>())
}

/// Confirms a sensitive action: the store must be unlocked, and the passphrase must be its own.
///
/// # Errors
/// [`Failure::ClinicLocked`], [`Failure::WrongPassphrase`].
pub fn confirm(folder: &DataFolder, passphrase: &Secret) -> ActionResult<()> {
    lock::unlocked_keys(folder)?;
    lock::open_with(folder, passphrase).map(drop)
}

/// Changes the passphrase. The keys themselves stay the same; a backup made before still opens with the old passphrase.
///
/// # Errors
/// As for [`confirm`] with the old passphrase, and as for [`check_here`] with the new one.
pub fn change(folder: &mut DataFolder, old: &Secret, new: &Secret) -> ActionResult<()> {
    lock::unlocked_keys(folder)?;
    let (keys, _) = lock::open_with(folder, old)?;
    check_here(folder, new)?;
    let sealed = vault::keys::seal(&keys, &lock::typed(new), platform::passphrase_cost());
    lock::replace(folder, &sealed, |_| Ok(()))
}
