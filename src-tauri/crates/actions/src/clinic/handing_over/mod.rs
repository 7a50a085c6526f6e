//! Hands reviews over to a server of medical records (HL7 FHIR R4) that runs on this computer.
//!
//! It is off until the clinic sets an address, and takes addresses of this computer alone. So nothing leaves the computer by it, and no
//! encryption of the connection is needed. What is sent is the transaction of [`records`]: what the server has already is replaced.

mod address;
mod sending;

pub use address::MAX_ADDRESS;
pub use sending::{MAX_ANSWER, Parcel, Patience};

use super::records::{self, Asked, RecordForm};
use super::{lock, rows, visiting};
use crate::{ActionResult, DataFolder, Moment, refuse};
use address::Address;
use base64::Engine;
use base64::engine::general_purpose::STANDARD;
use store::table;
use vault::rows::RowPlace;
use wire::handing_over::{HandOverFault, ServerSetting, SetServerRequest};
use wire::{Failure, Secret};
use words::Words;
use zeroize::Zeroizing;

/// The setting with the sealed address and token.
const SETTING: &str = "clinic-server";
/// The most characters of a token.
pub const MAX_TOKEN: usize = 4_096;

/// Where reviews are handed over to.
///
/// # Errors
/// [`Failure::ClinicLocked`]; [`Failure::HomeDamaged`] if the setting cannot be opened.
pub fn setting(folder: &DataFolder) -> ActionResult<ServerSetting> {
    let set = load(folder)?;
    Ok(ServerSetting {
        address: set.as_ref().map(|(address, _)| address.shown()),
        has_token: set.is_some_and(|(_, token)| token.is_some()),
    })
}

/// Sets the server in place of the previous one, of which nothing stays in the files.
///
/// # Errors
/// [`HandOverFault::AddressElsewhere`] and [`HandOverFault::TokenUnfit`] as a [`Failure::HandOver`].
pub fn set(folder: &mut DataFolder, request: &SetServerRequest) -> ActionResult<ServerSetting> {
    let address = Address::read(&request.address).ok_or(Failure::HandOver(HandOverFault::AddressElsewhere))?;
    let token = request.token.as_ref().map(|token| token.expose().trim()).filter(|token| !token.is_empty());
    if !token.is_none_or(is_token) {
        return Err(Failure::HandOver(HandOverFault::TokenUnfit));
    }
    let plain = Zeroizing::new(format!("{}\n{}", address.shown(), token.unwrap_or_default()));
    let sealed = vault::rows::seal(lock::unlocked_keys(folder)?, &place(), plain.as_bytes());
    write(folder, Some(&STANDARD.encode(sealed)))?;
    setting(folder)
}

/// Hands nothing over any more.
///
/// # Errors
/// [`Failure::ClinicLocked`], and a failure to write.
pub fn remove(folder: &mut DataFolder) -> ActionResult<ServerSetting> {
    lock::unlocked_keys(folder)?;
    write(folder, None)?;
    setting(folder)
}

/// The codes of those who can be handed over: of all patients those with a plan or a visit.
///
/// # Errors
/// [`Failure::NothingToExport`] if there is none; [`Failure::RecordDamaged`] if one of them cannot be read.
pub fn codes_of_all(folder: &DataFolder) -> ActionResult<Vec<String>> {
    let mut told = Vec::new();
    for code in records::codes_of_all(folder)? {
        // One whose visits cannot be read is refused alone when their turn comes.
        let is_visited =
            || visiting::findings(folder, &code).map_or(true, |(visits, back)| !visits.is_empty() || !back.is_empty());
        if rows::patient(folder, &code)?.newest().is_some() || is_visited() {
            told.push(code);
        }
    }
    if told.is_empty() { Err(Failure::NothingToExport) } else { Ok(told) }
}

/// Makes a patient's review ready to be sent.
///
/// # Errors
/// [`HandOverFault::NotSet`] as a [`Failure::HandOver`], and those of [`records::make`].
pub fn parcel(folder: &DataFolder, moment: &Moment, words: Words, code: &str, with_name: bool) -> ActionResult<Parcel> {
    let (address, token) = load(folder)?.ok_or(Failure::HandOver(HandOverFault::NotSet))?;
    let code = rows::patient(folder, code)?.code;
    let asked = Asked { code: Some(&code), form: RecordForm::Transaction, with_names: with_name };
    let body = records::make(folder, moment, words, asked)?;
    Ok(Parcel { code, body, address, token })
}

/// As a bearer token may be written (RFC 6750).
fn is_token(text: &str) -> bool {
    text.len() <= MAX_TOKEN && text.bytes().all(|byte| byte.is_ascii_alphanumeric() || b"-._~+/=".contains(&byte))
}

fn place() -> RowPlace {
    RowPlace::new("setting", &[SETTING.as_bytes()])
}

fn load(folder: &DataFolder) -> ActionResult<Option<(Address, Option<Secret>)>> {
    let keys = lock::unlocked_keys(folder)?;
    let damaged = || Failure::HomeDamaged { home: folder.home.dir().display().to_string() };
    let stored = folder.home.store().read(|view| table::setting::get(view, SETTING));
    let open = |stored: String| {
        let plain = Zeroizing::new(vault::rows::open(keys, &place(), &STANDARD.decode(stored).ok()?).ok()?);
        let (address, token) = std::str::from_utf8(&plain).ok()?.split_once('\n')?;
        let token = Some(token).filter(|token| !token.is_empty());
        Some((Address::read(address)?, token.map(Secret::from)))
    };
    let stored = stored.map_err(refuse::store(folder.home.dir()))?;
    stored.map(|stored| open(stored).ok_or_else(damaged)).transpose()
}

fn write(folder: &mut DataFolder, value: Option<&str>) -> ActionResult<()> {
    let dir = folder.dir();
    let written = folder.home.store_mut().transaction(|tx| match value {
        Some(value) => table::setting::put(tx, SETTING, value),
        None => table::setting::remove(tx, SETTING),
    });
    written.map_err(refuse::store(&dir))?;
    folder.home.store().settle().map_err(refuse::store(&dir))
}
