//! The clinic's keys outside its data folder: as a file and as a sheet of paper, under a passphrase of their own.

use super::{clinicians, lock, passphrase, renewing, rows};
use crate::{ActionResult, DataFolder, Moment, Saved, platform, refuse};
use pictures::qr::{self, Code};
use std::path::PathBuf;
use store::table;
use vault::{IdentityText, Keys, KeysFault};
use wire::{Failure, Secret};
use words::{Key, Words};

/// Largest size of a file or picture with saved keys, in bytes.
pub const MAX_BYTES: u64 = platform::MAX_PICTURE;

/// Saved keys.
pub struct SavedKeys {
    /// The key file.
    pub file: Vec<u8>,
    /// A page to print, in HTML, with the same file as a code and as text.
    pub sheet: String,
}

/// The clinic's keys under `new`, a passphrase chosen for them.
///
/// # Errors
/// [`Failure::ClinicLocked`], and a passphrase that is too weak.
pub fn make(folder: &DataFolder, moment: &Moment, new: &Secret) -> ActionResult<SavedKeys> {
    let keys = lock::unlocked_keys(folder)?;
    passphrase::check_here(folder, new)?;
    let file = vault::keys::seal(keys, &lock::typed(new), platform::passphrase_cost());
    let text = vault::keys::to_text(&file).map_err(refuse::internal)?;
    let words = platform::words(folder.locale());
    let how = [Key::KeySheetWhat, Key::KeySheetRestore, Key::KeySheetKeep, Key::KeySheetData, Key::KeySheetLater];
    let sheet = sheet(words, folder, keys, moment, &how, &text)?;
    Ok(SavedKeys { file, sheet })
}

/// A page to print with the age identity itself. It opens the summaries with any age tool and needs no passphrase.
///
/// # Errors
/// [`Failure::ClinicLocked`].
pub fn plain_sheet(folder: &DataFolder, moment: &Moment) -> ActionResult<String> {
    let keys = lock::unlocked_keys(folder)?;
    let identity = keys.identity_string();
    let words = platform::words(folder.locale());
    let mut how = vec![Key::KeySheetPlain, Key::KeySheetPlainNot, Key::KeySheetPlainKeep, Key::KeySheetLater];
    if !keys.former().is_empty() {
        how.push(Key::KeySheetPlainFormer);
    }
    sheet(words, folder, keys, moment, &how, identity.expose_the_identity_for_printing())
}

/// Writes the keys as a file and as a sheet into the folder for saved files, once the passphrase has confirmed it.
///
/// # Errors
/// As for [`passphrase::confirm`] and [`make`], and any failure to write.
pub fn export(folder: &DataFolder, moment: &Moment, confirmed: &Secret, new: &Secret) -> ActionResult<Vec<Saved>> {
    passphrase::confirm(folder, confirmed)?;
    let SavedKeys { file, sheet } = make(folder, moment, new)?;
    let name = |ending| platform::free_name(folder, moment, "clinic-keys", ending);
    let files: [(PathBuf, Vec<u8>); 2] = [(name(".keys"), file), (name(".html"), sheet.into_bytes())];
    platform::write_all(&files)?;
    let saved = |(path, bytes): &(PathBuf, Vec<u8>)| Saved { path: path.display().to_string(), bytes: bytes.len() as u64 };
    Ok(files.iter().map(saved).collect())
}

/// The age identity of the clinic, with which any age tool opens its summaries; all of them, if the keys were renewed.
///
/// # Errors
/// [`Failure::ClinicLocked`].
pub fn identity(folder: &DataFolder) -> ActionResult<IdentityText> {
    Ok(lock::unlocked_keys(folder)?.identity_string())
}

/// The age identity for the window, once the passphrase has confirmed it.
///
/// # Errors
/// As for [`passphrase::confirm`].
pub fn confirmed_identity(folder: &DataFolder, confirmed: &Secret) -> ActionResult<Secret> {
    passphrase::confirm(folder, confirmed)?;
    Ok(identity(folder)?.expose_the_identity_for_printing().into())
}

/// The keys in what was saved: the key file, the text of the sheet, or a picture of its code. The second result is the file to store.
///
/// # Errors
/// [`Failure::NotSavedKeys`], [`Failure::KeysDamaged`], [`Failure::WrongPassphrase`].
pub(super) fn open(saved: &[u8], passphrase: &Secret) -> ActionResult<(Keys, Vec<u8>)> {
    let read =
        if platform::is_picture(saved) { qr::read(saved).map_err(refuse::picture)?.into_bytes() } else { saved.into() };
    let refused = |fault| match fault {
        KeysFault::WrongPassphrase => Failure::WrongPassphrase,
        KeysFault::NotKeys | KeysFault::NewerVersion { .. } => Failure::NotSavedKeys,
        KeysFault::Damaged | KeysFault::TooCostly { .. } => Failure::KeysDamaged,
    };
    let file = vault::keys::of_kept(&read).map_err(refused)?;
    let (keys, renewed) =
        vault::keys::open_and_renew(&file, &lock::typed(passphrase), platform::passphrase_cost()).map_err(refused)?;
    Ok((keys, renewed.unwrap_or(file)))
}

/// Whether saved keys open with a passphrase, to be asked before a data folder is created.
///
/// # Errors
/// [`Failure::NotSavedKeys`], [`Failure::KeysDamaged`], [`Failure::WrongPassphrase`].
pub fn could_open(saved: &[u8], passphrase: &Secret) -> ActionResult<()> {
    open(saved, passphrase).map(drop)
}

/// Replaces a forgotten passphrase, that of the clinician with this name if there are several: the
/// saved keys of this very clinic are stored with their own passphrase, and the store is unlocked.
///
/// # Errors
/// As for saved keys that cannot be opened; [`Failure::OtherClinicsKeys`] if they do not open this clinic's patients. That they were saved
/// before the clinic renewed its keys is no error: [`super::patients::notices`] says so.
pub fn recover(folder: &mut DataFolder, name: Option<&str>, saved: &[u8], passphrase: &Secret) -> ActionResult<()> {
    if !lock::is_started(folder)? {
        return Err(Failure::ClinicNotStarted);
    }
    let (keys, file) = open(saved, passphrase)?;
    let dir = folder.dir();
    let patients = folder.home.store().read(table::patient::all).map_err(refuse::store(&dir))?;
    // One patient's row may be damaged; keys of another clinic open none.
    if !patients.is_empty() && !patients.iter().any(|row| rows::is_sealed_with(&keys, row)) {
        return Err(Failure::OtherClinicsKeys);
    }
    folder.clinician = clinicians::named(folder, name)?;
    lock::replace(folder, &file, |tx| renewing::note(tx, &keys))?;
    lock::lock(folder);
    lock::open(folder, keys)
}

/// A page to print: title, fingerprint and day, how it is used, the code, and what is in the code as text.
fn sheet(words: Words, folder: &DataFolder, keys: &Keys, moment: &Moment, how: &[Key], text: &str) -> ActionResult<String> {
    let code = Code::of(text).map_err(refuse::internal)?.svg();
    let title = escaped(&words.key_sheet_title(&lock::name(folder)?));
    let fingerprint = escaped(&words.named_text(words.text(Key::SecurityCode), &keys.fingerprint()));
    let day = escaped(&words.key_sheet_made(&words.date_in_full(moment.now.date())));
    let how: String = how.iter().map(|key| format!("<p>{}</p>\n", escaped(words.text(*key)))).collect();
    Ok(format!(
        "<!doctype html>\n<html lang=\"{lang}\"><head><meta charset=\"utf-8\"><title>{title}</title>\n<style>{STYLE}</style></head>\n\
         <body><h1>{title}</h1>\n<p>{fingerprint}<br>{day}</p>\n{how}<figure>{code}</figure>\n<pre>{text}</pre></body></html>\n",
        lang = folder.locale().tag(),
        text = escaped(text),
    ))
}

/// Black on white at any setting, for a printer.
const STYLE: &str = "body{background:#fff;color:#000;font:12pt/1.4 sans-serif;max-width:40em;margin:2em auto;padding:0 1em}\
    figure{margin:1em 0;width:9cm}svg{width:100%;height:auto}pre{font-size:9pt;white-space:pre-wrap;overflow-wrap:anywhere}";

fn escaped(text: &str) -> String {
    text.replace('&', "&amp;").replace('<', "&lt;").replace('>', "&gt;").replace('"', "&quot;")
}
