//! `carryover clinic`.

use crate::Done;
use crate::args::{Args, Clinic, Form};
use crate::case;
use crate::clinicians;
use crate::facts;
use crate::handing_over;
use crate::home;
use crate::issuing;
use crate::out::Out;
use crate::prescribing;
use crate::printing;
use crate::receiving;
use crate::reporting;
use crate::review;
use crate::secrets;
use crate::visiting;
use actions::clinic::issuing::save_again;
use actions::clinic::{cases, devices, lock, norms, paper_diary, passphrase, patients, renewing, saved_keys};
use actions::{ActionResult, Clock, DataFolder, Moment, platform};
use exercises::norms::ClinicTable;
use serde_json::json;
use std::path::Path;
use wire::app::LockState;
use wire::cases::CloseRequest;
use wire::clinic::{AddPatientRequest, DeviceLine, PatientList, RemovePatientRequest, StoreNotice};
use wire::visiting::{DiaryRequest, PrintRequest, Printed};
use wire::{Failure, Secret};
use words::{Key, Words};

pub fn run(args: &Args, door: Door<'_>, what: &Clinic, clock: &Clock, out: &mut Out) -> Done {
    let Door { passphrase_file, who } = door;
    let moment = clock.moment();
    if let Clinic::Start { name, phone, from_keys } = what {
        let saved = from_keys.as_deref().map(|file| platform::read(file, saved_keys::MAX_BYTES)).transpose()?;
        let typed = match saved {
            Some(_) => secrets::passphrase(passphrase_file, out.words)?,
            None => secrets::new_passphrase(passphrase_file, out.words)?,
        };
        return start(args, name, phone.as_deref(), typed, saved.as_deref(), out);
    }
    let mut folder = home::open(args, out)?;
    let typed = secrets::passphrase(passphrase_file, out.words)?;
    if let Clinic::Passphrase { from_keys: Some(file), .. } = what {
        let saved = platform::read(file, saved_keys::MAX_BYTES)?;
        saved_keys::recover(&mut folder, who, &saved, &typed)?;
        warn_of_all(&folder, out)?;
        return changed(out);
    }
    lock::unlock_as(&mut folder, who, typed.clone())?;
    warn_of_all(&folder, out)?;
    match what {
        Clinic::Start { .. } => Ok(true),
        Clinic::Passphrase { new_passphrase_file, .. } => {
            let new = secrets::new_passphrase(new_passphrase_file.as_deref(), out.words)?;
            passphrase::change(&mut folder, &typed, &new)?;
            changed(out)
        }
        Clinic::Keys { out: file, sheet, new_passphrase_file } => {
            let new = secrets::new_passphrase(new_passphrase_file.as_deref(), out.words)?;
            save_keys(&folder, &moment, &new, file, sheet.as_deref(), out)
        }
        Clinic::Clinicians { add, own_name, remove, new_passphrase_file } => {
            let change =
                clinicians::Change { add: add.as_deref(), own_name: own_name.as_deref(), remove: remove.as_deref() };
            clinicians::run(&mut folder, &change, new_passphrase_file.as_deref(), &typed, out)
        }
        Clinic::RenewKeys { yes } => renew_keys(&mut folder, &moment, &typed, *yes, out),
        Clinic::Add { code, name, name_file } => {
            let typed = name_file.as_deref().map(secrets::name).transpose()?;
            let name = name.clone().or_else(|| typed.map(|name| name.expose().to_owned()));
            patients::add(&mut folder, &moment, &AddPatientRequest { code: code.clone(), name })?;
            out.say(|_| code.clone(), || json!({ "added": code }));
            Ok(true)
        }
        Clinic::Issue { code, plan, out: out_folder, .. } => {
            issuing::issue(&mut folder, &moment, code, plan, out_folder.as_deref(), out)
        }
        Clinic::Receive { paths } => receiving::run(&mut folder, &moment, paths, out),
        Clinic::Review { code, form: Form::Pdf, out: file, letter, .. } => {
            reporting::report(&mut folder, &moment, (code.as_deref(), file.as_deref()), *letter, out)
        }
        Clinic::Server { address, token_file, remove } => {
            handing_over::server(&mut folder, (address.as_deref(), token_file.as_deref()), *remove, out)
        }
        Clinic::HandOver { code, all: _, with_name } => {
            handing_over::hand_over(&folder, &moment, code.as_deref(), *with_name, out)
        }
        Clinic::ClosingLetter { code, text, letter, out: file } => {
            reporting::closing_letter(&folder, &moment, (code, text, *letter), file, out)
        }
        Clinic::Review { code, form, out: file, with_name, .. } => {
            let what = review::What { code: code.as_deref(), form: *form, with_name: *with_name, file: file.as_deref() };
            review::run(&folder, &moment, &what, out)
        }
        Clinic::Patients { closed } => list(&mut folder, &moment, *closed, out),
        Clinic::Close { code, reason, words } => {
            let asked = CloseRequest { code: code.clone(), reason: *reason, words: words.clone() };
            case::show(&cases::close(&mut folder, &moment, &asked)?, out)
        }
        Clinic::Reopen { code } => case::show(&cases::reopen(&mut folder, &moment, code)?, out),
        Clinic::Rename { code, to, name, name_file } => {
            let typed = name_file.as_deref().map(secrets::name).transpose()?;
            let name = name.clone().or_else(|| typed.map(|name| name.expose().to_owned()));
            case::rename(&mut folder, &moment, code, to.as_deref(), name, out)
        }
        Clinic::Plans { code } => case::plans(&cases::page(&folder, &moment, code)?, out),
        Clinic::Print { code, revision, diary, letter, out: file } => {
            let what = if *diary { Printed::Diary } else { Printed::HandOut };
            let asked = PrintRequest { code: code.clone(), what, revision: *revision, letter: *letter };
            printing::run(&mut folder, &moment, &asked, file, out)
        }
        Clinic::Diary { code, file } => on_paper(&mut folder, &moment, code, file.as_deref(), out),
        Clinic::Visit { what } => visiting::run(&mut folder, &moment, what, out),
        Clinic::Facts { code, flags, lacks } => facts::run(&mut folder, code, flags.as_ref(), lacks.as_ref(), out),
        Clinic::Card { code, revision, out: out_folder } => {
            let saved = save_again(&mut folder, &moment, code, *revision, Some(out_folder))?;
            issuing::show_card(&saved, out)
        }
        Clinic::Devices { code, exclude, include } => {
            let change = exclude.map(|log| (log, true)).or(include.map(|log| (log, false)));
            let lines = match change {
                Some((log, left_out)) => devices::leave_out(&mut folder, code, log, left_out)?,
                None => devices::list(&folder, code)?,
            };
            lines.iter().for_each(|line| out.say(|words| device(words, line), || json!(line)));
            Ok(true)
        }
        Clinic::Remove { code, yes, keep_backups } => {
            let typed = if *yes { code.clone() } else { String::new() };
            let asked = RemovePatientRequest { code: code.clone(), typed, also_backups: !keep_backups };
            patients::remove_from_window(&mut folder, &moment, &asked)?;
            let said =
                |words: Words| if *keep_backups { words.patient_removed_here(code) } else { words.patient_removed(code) };
            out.say(said, || json!({ "removed": code, "backups": !keep_backups }));
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
        Clinic::Exercise { what } => prescribing::exercise(&mut folder, what, out),
        Clinic::Set { what } => prescribing::set(&mut folder, &moment, what, out),
        Clinic::Identity { show, sheet } => identity(&folder, &moment, *show, sheet.as_deref(), out),
    }
}

/// With what the clinic is unlocked.
pub struct Door<'a> {
    /// Where the passphrase comes from.
    pub passphrase_file: Option<&'a Path>,
    /// The clinician's name.
    pub who: Option<&'a str>,
}

/// Prints everything that was found wrong when the store was unlocked.
fn warn_of_all(folder: &DataFolder, out: &Out) -> ActionResult<()> {
    patients::notices(folder)?.iter().for_each(|notice| warn(notice, out));
    Ok(())
}

/// Prints what is wrong with the store to stderr; the command goes on.
fn warn(notice: &StoreNotice, out: &Out) {
    let said = out.words.store_notice(notice);
    out.say_to_stderr(&if out.json() { json!({ "warning": said, "notice": notice }).to_string() } else { said });
}

/// Prints a line for each patient whose case is open, or closed.
fn list(folder: &mut DataFolder, moment: &Moment, closed: bool, out: &mut Out) -> Done {
    let PatientList { lines, notices } = patients::show(folder, moment)?;
    for line in lines.into_iter().filter(|line| line.closed.is_some() == closed) {
        let text = |words: Words| match line.damaged {
            true => format!("{}\t{}", line.code, words.text(Key::RecordDamaged)),
            false => match line.closed {
                Some((on, reason)) => format!("{}\t{on}\t{}", line.code, words.close_reason(reason)),
                None => format!("{}\t{}", line.code, line.alarms),
            },
        };
        out.say(text, || json!(line));
    }
    // The others were printed when the store was unlocked.
    notices
        .iter()
        .filter(|notice| matches!(notice, StoreNotice::DamagedRecords { .. }))
        .for_each(|notice| warn(notice, out));
    Ok(true)
}

/// A device's name, the days of its first summary and of its last record, and whether it counts.
fn device(words: Words, line: &DeviceLine) -> String {
    let day = |day: Option<chrono::NaiveDate>| day.map_or_else(|| "-".to_owned(), |day| day.to_string());
    let counts = words.text(if line.left_out { Key::DeviceLeftOut } else { Key::DeviceCounted });
    format!("{}\t{}\t{}\t{counts}", line.device, day(line.first_seen), day(line.until))
}

/// An unsuitable name or passphrase is refused before a folder is created.
fn start(args: &Args, name: &str, phone: Option<&str>, typed: Secret, saved: Option<&[u8]>, out: &mut Out) -> Done {
    match saved {
        Some(saved) => saved_keys::could_open(saved, &typed)?,
        None => lock::could_start(name, phone, &typed)?,
    }
    let mut folder = home::open_at(&args.home()?, true, out)?;
    match saved {
        Some(saved) => lock::start_with_saved_keys(&mut folder, name, phone, typed, saved)?,
        None => lock::start(&mut folder, name, phone, typed)?,
    }
    if let LockState::Open { clinic, fingerprint, .. } = lock::state(&folder)? {
        out.say(|_| format!("{clinic}: {fingerprint}"), || json!({ "clinic": clinic, "fingerprint": fingerprint }));
    }
    Ok(true)
}

/// Prints the stored table, one line per row, with its source.
fn show_norms(table: Option<&ClinicTable>, out: &mut Out) -> Done {
    out.say(|words| words.norms_kept(table).join("\n"), || json!({ "norms": table }));
    Ok(true)
}

fn changed(out: &mut Out) -> Done {
    let said = [Key::PassphraseChanged, Key::PassphraseOlderCopies];
    out.say(|words| said.map(|key| words.text(key)).join(" "), || json!({ "changed": true }));
    Ok(true)
}

/// Renews the keys, and prints the new fingerprint with what follows from it.
fn renew_keys(folder: &mut DataFolder, moment: &Moment, typed: &Secret, yes: bool, out: &mut Out) -> Done {
    if !yes {
        return Err(Failure::RenewalNotConfirmed);
    }
    renewing::renew(folder, moment, typed)?;
    if let LockState::Open { clinic, fingerprint, .. } = lock::state(folder)? {
        let said = |words: Words| {
            let after = [Key::RenewKeysDone, Key::RenewKeysSave].map(|key| words.text(key)).join(" ");
            format!("{clinic}: {fingerprint}\n{after}")
        };
        out.say(said, || json!({ "clinic": clinic, "fingerprint": fingerprint }));
    }
    Ok(true)
}

fn save_keys(folder: &DataFolder, moment: &Moment, new: &Secret, file: &Path, sheet: Option<&Path>, out: &mut Out) -> Done {
    let saved = saved_keys::make(folder, moment, new)?;
    platform::write(file, &saved.file)?;
    sheet.map_or(Ok(()), |sheet| platform::write(sheet, saved.sheet.as_bytes()))?;
    let files: Vec<String> = [Some(file), sheet].into_iter().flatten().map(|path| path.display().to_string()).collect();
    out.say(|_| files.join("\n"), || json!({ "files": files }));
    Ok(true)
}

/// The secret key: masked, shown, or on a sheet for paper.
fn identity(folder: &DataFolder, moment: &Moment, show: bool, sheet: Option<&Path>, out: &mut Out) -> Done {
    let identity = saved_keys::identity(folder)?;
    if !show && sheet.is_none() {
        out.say(|words| words.text(Key::IdentityMasked).to_owned(), || json!({ "identity": null }));
        return Ok(true);
    }
    let warning = out.words.text(Key::IdentityWarning);
    if out.json() {
        eprintln!("{}", json!({ "warning": warning }));
    } else {
        eprintln!("{warning}");
    }
    if let Some(sheet) = sheet {
        platform::write(sheet, saved_keys::plain_sheet(folder, moment)?.as_bytes())?;
        out.say(|_| sheet.display().to_string(), || json!({ "files": [sheet] }));
    }
    if show {
        let identity = identity.expose_the_identity_for_printing();
        out.say(|_| identity.to_owned(), || json!({ "identity": identity }));
    }
    Ok(true)
}

/// Enters days of a diary on paper, if there is a file, and shows what was entered.
fn on_paper(folder: &mut DataFolder, moment: &Moment, code: &str, file: Option<&Path>, out: &mut Out) -> Done {
    let page = match file {
        None => paper_diary::page(folder, moment, code)?,
        Some(file) => {
            let bytes = platform::read(file, format::diary_file::MAX_BYTES)?;
            let days = paper_diary::read(&file.display().to_string(), &bytes)?;
            paper_diary::enter(folder, moment, &DiaryRequest { code: code.to_owned(), days })?
        }
    };
    out.say(|words| words.diary_text(&page), || json!(page.days));
    Ok(true)
}
