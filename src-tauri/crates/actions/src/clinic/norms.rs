//! The clinic's own table of norms, stored encrypted as the text that was imported.

use super::lock;
use super::sealed::{self, NOBODY, Sealer, norms_place};
use crate::{ActionResult, DataFolder, platform, refuse};
use exercises::norms::{ClinicTable, Norms};
use format::norms_file;
use store::{StoreError, Tx, table};
use wire::Failure;

/// Stores the table from a file in place of the previous one. `file` is the name that a failure mentions.
///
/// # Errors
/// [`Failure::NotUnderstood`] with the fault and its position; then nothing has changed.
pub fn save(folder: &mut DataFolder, file: &str, bytes: &[u8]) -> ActionResult<ClinicTable> {
    let read = format::text(bytes).and_then(norms_file::read).map_err(platform::not_understood(file))?;
    change(folder, |tx, sealer, before| {
        table::norms::put(tx, &sealer.replace(NOBODY, &norms_place(), before.as_deref(), bytes))
    })?;
    Ok(read)
}

/// The stored table, if there is one.
///
/// # Errors
/// [`Failure::HomeDamaged`] if it cannot be opened or read.
pub fn load(folder: &DataFolder) -> ActionResult<Option<ClinicTable>> {
    let keys = lock::unlocked_keys(folder)?;
    let damaged = || Failure::HomeDamaged { home: folder.home.dir().display().to_string() };
    let sealed = folder.home.store().read(table::norms::get).map_err(refuse::store(folder.home.dir()))?;
    let open = |sealed: Vec<u8>| {
        let plain = vault::rows::open(keys, &norms_place(), &sealed).ok()?;
        norms_file::read(std::str::from_utf8(&plain).ok()?).ok()
    };
    sealed.map(|sealed| open(sealed).ok_or_else(damaged)).transpose()
}

/// Removes the table. Returns whether there was one.
pub fn remove(folder: &mut DataFolder) -> ActionResult<bool> {
    let was = load(folder)?.is_some();
    if was {
        change(folder, |tx, sealer, before| {
            sealer.removed(NOBODY, &norms_place(), before.as_deref());
            table::norms::remove(tx)
        })?;
    }
    Ok(was)
}

/// The norms that reviews are compared with: the program's own rows and those of the clinic's table.
pub(crate) fn all(folder: &DataFolder) -> ActionResult<Norms> {
    let Some(table) = load(folder)? else { return Ok(Norms::built_in()) };
    Norms::built_in().with(&table).map_err(|_| Failure::HomeDamaged { home: folder.home.dir().display().to_string() })
}

/// Changes the row so that nothing of the previous one remains in the files; `work` gets its bytes.
fn change(
    folder: &mut DataFolder,
    work: impl FnOnce(&Tx<'_>, &mut Sealer<'_>, Option<Vec<u8>>) -> Result<(), StoreError>,
) -> ActionResult<()> {
    sealed::change(folder, |tx, sealer| {
        let before = table::norms::get(tx)?;
        work(tx, sealer, before)
    })?;
    folder.home.store().settle().map_err(refuse::store(folder.home.dir()))
}
