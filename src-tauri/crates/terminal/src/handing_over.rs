//! `carryover clinic server` and `carryover clinic hand-over`.

use crate::Done;
use crate::out::Out;
use crate::secrets;
use actions::clinic::handing_over::{self, Patience};
use actions::{DataFolder, Moment};
use serde_json::json;
use std::path::Path;
use wire::handing_over::SetServerRequest;

/// Sets the server, removes it, or says which it is.
pub fn server(
    folder: &mut DataFolder,
    (address, token_file): (Option<&str>, Option<&Path>),
    remove: bool,
    out: &mut Out,
) -> Done {
    let set = match address {
        _ if remove => handing_over::remove(folder)?,
        None => handing_over::setting(folder)?,
        Some(address) => {
            let token = token_file.map(secrets::token).transpose()?;
            handing_over::set(folder, &SetServerRequest { address: address.to_owned(), token })?
        }
    };
    out.say(|words| words.server_said(&set), || json!(set));
    Ok(true)
}

/// Hands over one review, or those of all patients one after the other, a line for each. The first that fails ends it.
pub fn hand_over(folder: &DataFolder, moment: &Moment, code: Option<&str>, with_name: bool, out: &mut Out) -> Done {
    let codes = match code {
        Some(code) => vec![code.to_owned()],
        None => handing_over::codes_of_all(folder)?,
    };
    for code in &codes {
        let parcel = handing_over::parcel(folder, moment, out.words, code, with_name)?;
        let done = parcel.send(Patience::default())?;
        out.say(|words| words.record_handed_over(&done.code, done.added, done.known), || json!(done));
    }
    Ok(true)
}
