//! Renewing the clinic's keys: new ones sign its cards and open its summaries from then on, and the former ones are kept for what is
//! still under way. The key that seals the clinic's rows stays: no card or summary depends on it.

use super::{clinicians, lock};
use crate::{ActionResult, DataFolder, Moment, platform};
use chrono::NaiveDate;
use store::{StoreError, Tx, table};
use vault::Keys;
use wire::{Failure, Secret};

/// The setting with the day of the last renewal and the fingerprint of the keys that came with it. Neither is secret: the fingerprint is
/// on every card. With it keys are recognised that were saved before.
const RENEWED: &str = "clinic-keys-renewed";

/// Renews the keys, once the passphrase has confirmed it. The new key file replaces the old one as a whole, before any card is signed
/// with it; the passphrase stays. Other clinicians
/// are removed, because their passphrases are not known here: they are added again. Keys that were saved before do not contain the new ones.
///
/// # Errors
/// [`Failure::ClinicLocked`], [`Failure::WrongPassphrase`]; [`Failure::KeysRenewedTooOften`] after the last time that is possible.
pub fn renew(folder: &mut DataFolder, moment: &Moment, confirmed: &Secret) -> ActionResult<()> {
    lock::unlocked_keys(folder)?;
    let (keys, _) = lock::open_with(folder, confirmed)?;
    let most = vault::keys::MAX_FORMER as u8;
    let renewed = vault::keys::renew(&keys, moment.now.date()).map_err(|_| Failure::KeysRenewedTooOften { most })?;
    let sealed = vault::keys::seal(&renewed, &lock::typed(confirmed), platform::passphrase_cost());
    clinicians::keep_only(folder, &sealed, |tx| put(tx, &renewed))?;
    folder.keys = Some(renewed);
    Ok(())
}

/// Notes of which renewal the stored keys are, unless they were saved before the one that was noted last.
pub(super) fn note(tx: &Tx<'_>, keys: &Keys) -> Result<(), StoreError> {
    let noted = table::setting::get(tx, RENEWED)?;
    if older(noted.as_deref(), keys).is_some() { Ok(()) } else { put(tx, keys) }
}

fn put(tx: &Tx<'_>, keys: &Keys) -> Result<(), StoreError> {
    let Some(last) = keys.former().first() else { return Ok(()) };
    table::setting::put(tx, RENEWED, &format!("{} {}", last.until(), keys.fingerprint()))
}

/// The day on which the clinic renewed its keys after those with which it is unlocked were saved, if that is known.
pub(super) fn renewed_since(folder: &DataFolder) -> ActionResult<Option<NaiveDate>> {
    Ok(older(folder.setting(RENEWED)?.as_deref(), lock::unlocked_keys(folder)?))
}

/// The noted day, if the keys are none that came with that renewal or later.
fn older(noted: Option<&str>, keys: &Keys) -> Option<NaiveDate> {
    let (day, fingerprint) = noted?.split_once(' ')?;
    let known = keys.fingerprint() == fingerprint || keys.former().iter().any(|one| one.fingerprint() == fingerprint);
    if known { None } else { day.parse().ok() }
}
