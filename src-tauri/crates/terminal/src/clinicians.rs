//! `carryover clinic clinicians`.

use crate::Done;
use crate::out::Out;
use crate::secrets;
use actions::DataFolder;
use actions::clinic::clinicians;
use serde_json::json;
use std::path::Path;
use wire::Secret;
use wire::clinic::{AddClinicianRequest, RemoveClinicianRequest};
use words::{Key, Words};

/// What is to be changed; nothing to list them.
pub struct Change<'a> {
    pub add: Option<&'a str>,
    pub own_name: Option<&'a str>,
    pub remove: Option<&'a str>,
}

/// Adds or removes a clinician, and lists all.
pub fn run(folder: &mut DataFolder, change: &Change<'_>, new: Option<&Path>, typed: &Secret, out: &mut Out) -> Done {
    let lines = match (change.add, change.remove) {
        (Some(name), _) => {
            let first = secrets::new_passphrase(new, out.words)?;
            let own_name = change.own_name.map(str::to_owned);
            let asked = AddClinicianRequest { name: name.to_owned(), own_name, first, confirmed: typed.clone() };
            clinicians::add(folder, &asked)?
        }
        (None, Some(name)) => {
            let lines =
                clinicians::remove(folder, &RemoveClinicianRequest { name: name.to_owned(), confirmed: typed.clone() })?;
            let said = out.words.text(Key::ClinicianRemoveWhat);
            out.say_to_stderr(&if out.json() { json!({ "warning": said }).to_string() } else { said.to_owned() });
            lines
        }
        (None, None) => clinicians::list(folder)?,
    };
    for line in lines {
        let text = |words: Words| match line.is_you {
            true => format!("{}\t{}", line.name, words.text(Key::ClinicianYou)),
            false => line.name.clone(),
        };
        out.say(text, || json!(line));
    }
    Ok(true)
}
