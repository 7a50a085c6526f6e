//! The optional lock of the patient's window. It keeps people away who pass by; it encrypts nothing, because reminders must come while
//! nobody is there to type a code.

use crate::{ActionResult, DataFolder, refuse};
use store::table::setting;
use vault::{Passphrase, screen_code};
use wire::app::{Role, ScreenLock};
use wire::device::{MIN_SCREEN_CODE, ScreenCodeRequest};
use wire::{Failure, Secret};

/// What is stored of the code.
const CODE: &str = "screen-code";

/// Whether there is a lock, and whether it is locked.
pub fn state(folder: &DataFolder) -> ActionResult<ScreenLock> {
    if folder.role != Some(Role::Patient) || stored(folder)?.is_none() {
        return Ok(ScreenLock::Off);
    }
    Ok(if folder.screen_is_open { ScreenLock::Open } else { ScreenLock::Locked })
}

/// Refuses what the window must not do or show while it is locked.
///
/// # Errors
/// [`Failure::ScreenLocked`].
pub fn refuse_if_locked(folder: &DataFolder) -> ActionResult<()> {
    if state(folder)? == ScreenLock::Locked { Err(Failure::ScreenLocked) } else { Ok(()) }
}

/// Begins the lock with a code, replaces its code, or ends it.
///
/// # Errors
/// [`Failure::ScreenCodeWrong`] if there is a code and another one was typed; [`Failure::ScreenCodeShort`] for a new code with fewer than
/// [`MIN_SCREEN_CODE`] characters.
pub fn choose(folder: &mut DataFolder, request: &ScreenCodeRequest) -> ActionResult<()> {
    refuse_if_locked(folder)?;
    if let Some(stored) = stored(folder)? {
        let typed = request.old.as_ref().map(code);
        if !typed.is_some_and(|typed| screen_code::fits(&stored, &typed)) {
            return Err(Failure::ScreenCodeWrong);
        }
    }
    let sealed = match &request.new {
        None => None,
        Some(new) => {
            let new = code(new);
            if new.characters() < usize::from(MIN_SCREEN_CODE) {
                return Err(Failure::ScreenCodeShort { least: MIN_SCREEN_CODE });
            }
            Some(screen_code::seal(&new))
        }
    };
    write(folder, sealed.as_deref())?;
    folder.screen_is_open = true;
    Ok(())
}

/// Ends the lock without its code: for the terminal, in which the record can be read anyway.
pub fn remove(folder: &mut DataFolder) -> ActionResult<()> {
    write(folder, None)
}

/// Opens the window with the code.
///
/// # Errors
/// [`Failure::ScreenCodeWrong`].
pub fn unlock(folder: &mut DataFolder, typed: &Secret) -> ActionResult<()> {
    if let Some(stored) = stored(folder)?
        && !screen_code::fits(&stored, &code(typed))
    {
        return Err(Failure::ScreenCodeWrong);
    }
    folder.screen_is_open = true;
    Ok(())
}

/// Locks the window, if there is a code.
pub fn lock(folder: &mut DataFolder) {
    folder.screen_is_open = false;
}

fn code(typed: &Secret) -> Passphrase {
    Passphrase::new(typed.expose().to_owned())
}

fn stored(folder: &DataFolder) -> ActionResult<Option<String>> {
    folder.setting(CODE)
}

fn write(folder: &mut DataFolder, sealed: Option<&str>) -> ActionResult<()> {
    let dir = folder.dir();
    let written = folder.home.store_mut().transaction(|tx| match sealed {
        Some(sealed) => setting::put(tx, CODE, sealed),
        None => setting::remove(tx, CODE),
    });
    written.map_err(refuse::store(&dir))
}
