//! `carryover clinic`.

use crate::Done;
use crate::args::{Args, Clinic, Form};
use crate::out::Out;
use actions::clinic::{issuing, lock, norms, patients, receiving, reviewing};
use actions::{ActionResult, Clock, DataFolder, Moment, platform};
use exercises::norms::ClinicTable;
use serde_json::json;
use std::path::Path;
use wire::Failure;
use wire::app::LockState;
use wire::clinic::{AddPatientRequest, IssueRequest, Outcome, ReviewPage};
use words::{Key, Words};

pub fn run(args: &Args, passphrase_file: Option<&Path>, what: &Clinic, clock: &Clock, out: &mut Out) -> Done {
    let moment = clock.moment();
    if let Clinic::Start { name, phone } = what {
        return start(args, name, phone.as_deref(), passphrase(passphrase_file, out.words)?, out);
    }
    let mut folder = DataFolder::open(&args.home(), false)?;
    lock::unlock(&mut folder, passphrase(passphrase_file, out.words)?)?;
    match what {
        Clinic::Start { .. } => Ok(true),
        Clinic::Add { code, name } => {
            patients::add(&mut folder, &AddPatientRequest { code: code.clone(), name: name.clone() })?;
            out.say(|_| code.clone(), || json!({ "added": code }));
            Ok(true)
        }
        Clinic::Issue { code, plan, out: out_folder } => issue(&mut folder, &moment, code, plan, out_folder, out),
        Clinic::Receive { files } => {
            let read = files.iter().map(|file| (file.display().to_string(), platform::read_received(file)));
            let read = read.collect();
            receive(&mut folder, read, out)
        }
        Clinic::Review { code, form } => review(&folder, &moment, code, *form, out),
        Clinic::Patients => {
            for line in patients::list(&folder)? {
                out.say(|_| format!("{}\t{}", line.code, line.alarms), || json!(line));
            }
            Ok(true)
        }
        Clinic::Norms { file: Some(file), .. } => {
            let bytes = platform::read(file, format::norms_file::MAX_BYTES)?;
            let table = norms::save(&mut folder, &file.display().to_string(), &bytes)?;
            show_norms(Some(&table), out)
        }
        Clinic::Norms { remove: true, .. } => {
            let was = norms::remove(&mut folder)?;
            out.say(|words| words.norms_removed(was).to_owned(), || json!({ "removed": was }));
            Ok(true)
        }
        Clinic::Norms { .. } => show_norms(norms::load(&folder)?.as_ref(), out),
        Clinic::Phone { number } => {
            if let Some(number) = number {
                lock::set_phone(&mut folder, number)?;
            }
            if let LockState::Open { phone, .. } = lock::state(&folder)? {
                out.say(|_| phone.clone().unwrap_or_default(), || json!({ "phone": phone }));
            }
            Ok(true)
        }
        Clinic::Identity => identity(&folder, out),
    }
}

/// The lines that a plan file needs to clear the open alarms, ready to be copied.
fn to_clear(page: &ReviewPage) -> String {
    let alarms = page.review.iter().flat_map(|review| &review.alarms).filter(|alarm| !alarm.cleared);
    let names: Vec<String> = alarms.map(|alarm| format!("\"{}\"", alarm.id)).collect();
    if names.is_empty() { String::new() } else { format!("\nclear = [{}]\n", names.join(", ")) }
}

/// The passphrase: the first line of the file, or typed at the terminal without being shown.
fn passphrase(file: Option<&Path>, words: Words) -> ActionResult<String> {
    match file {
        Some(path) => {
            let bytes = platform::read(path, 4096)?;
            let text = String::from_utf8(bytes).map_err(|_| Failure::FileUnreadable { file: path.display().to_string() })?;
            Ok(text.lines().next().unwrap_or_default().to_owned())
        }
        None => rpassword::prompt_password(format!("{} ", words.text(Key::PassphrasePrompt)))
            .map_err(|_| Failure::PassphraseMissing),
    }
}

/// An unsuitable name or passphrase is refused before a folder is created.
fn start(args: &Args, name: &str, phone: Option<&str>, passphrase: String, out: &mut Out) -> Done {
    lock::could_start(name, phone, &passphrase)?;
    let mut folder = DataFolder::open(&args.home(), true)?;
    lock::start(&mut folder, name, phone, passphrase)?;
    if let LockState::Open { clinic, fingerprint, .. } = lock::state(&folder)? {
        out.say(|_| format!("{clinic}: {fingerprint}"), || json!({ "clinic": clinic, "fingerprint": fingerprint }));
    }
    Ok(true)
}

fn issue(folder: &mut DataFolder, moment: &Moment, code: &str, plan: &Path, out_folder: &Path, out: &mut Out) -> Done {
    let name = plan.display().to_string();
    let bytes = platform::read(plan, format::plan_file::MAX_BYTES)?;
    let read = format::text(&bytes).and_then(|text| format::plan_file::read(text, moment.now.date()));
    let prescription = read.map_err(platform::not_understood(&name))?;
    let issued = issuing::issue(folder, moment, &IssueRequest { code: code.to_owned(), prescription }, Some(out_folder))?;
    out.say(
        |_| issued.files.join("\n"),
        || {
            json!({ "plan": issued.plan.header.id.to_string(), "revision": issued.plan.header.revision, "version": issued.version,
                   "fingerprint": issued.fingerprint, "files": issued.files })
        },
    );
    Ok(true)
}

fn receive(folder: &mut DataFolder, files: Vec<(String, ActionResult<Vec<u8>>)>, out: &mut Out) -> Done {
    let receipts = receiving::receive(folder, files)?;
    for receipt in &receipts {
        if let Outcome::Refused(failure) = &receipt.outcome {
            if out.json() {
                let refusal = out.words.failure(failure);
                let line =
                    json!({ "file": receipt.file, "refused": failure, "fault": refusal.fault, "advice": refusal.advice });
                eprintln!("{line}");
            } else {
                eprintln!("{}", out.words.receipt(receipt));
            }
            continue;
        }
        out.say(|words| words.receipt(receipt), || json!(receipt));
    }
    Ok(receipts.iter().all(|receipt| !matches!(receipt.outcome, Outcome::Refused(_))))
}

fn review(folder: &DataFolder, moment: &Moment, code: &str, form: Form, out: &mut Out) -> Done {
    let page = reviewing::page(folder, moment, code)?;
    if form == Form::Json || out.json() {
        out.print(&format!("{}\n", reviewing::json(&page)));
    } else {
        let text = out.words.review_text(&page);
        out.print(&text);
        out.print(&to_clear(&page));
    }
    Ok(true)
}

/// Prints the stored table, one line per row, with its source.
fn show_norms(table: Option<&ClinicTable>, out: &mut Out) -> Done {
    out.say(|words| words.norms_kept(table).join("\n"), || json!({ "norms": table }));
    Ok(true)
}

fn identity(folder: &DataFolder, out: &mut Out) -> Done {
    let identity = lock::identity(folder)?;
    let warning = out.words.text(words::Key::IdentityWarning);
    if out.json() {
        eprintln!("{}", json!({ "warning": warning }));
    } else {
        eprintln!("{warning}");
    }
    let identity = identity.expose_the_identity_for_printing();
    out.say(|_| identity.to_owned(), || json!({ "identity": identity }));
    Ok(true)
}
