//! Issuing a plan card.

use super::rows::{self, ISSUED, Patient};
use super::{drafting, lock};
use crate::{ActionResult, DataFolder, Moment, platform, refuse};
use exercises::plan::Plan;
use format::card::Card;
use pictures::qr::Code;
use std::path::{Path, PathBuf};
use store::{StoreError, table};
use wire::Failure;
use wire::clinic::{IssueRequest, IssuedCard};

/// Pixels per module of the code in the PNG: 0.5 mm or more when printed at 300 dots per inch.
const MODULE_PX: u8 = 8;
const PNG: &str = "card.png";
const SVG: &str = "card.svg";

/// Issues a plan to a patient: signs its card, stores it, and writes it as PNG, SVG, text and bytes to `out`, or into the folder for
/// saved files.
///
/// # Errors
/// [`Failure::PlanRefused`] with every problem that prevents the plan from being issued, or the failure to write the files. A card
/// whose files could not be written does not count as issued.
pub fn issue(
    folder: &mut DataFolder,
    moment: &Moment,
    request: &IssueRequest,
    out: Option<&Path>,
) -> ActionResult<IssuedCard> {
    let patient = rows::patient(folder, &request.code)?;
    let plan = drafting::finish(folder, moment, &patient, &request.prescription)?;
    let (card, bytes) = sign(folder, &patient, plan)?;
    let text = format::card::to_text(&bytes);
    let code = Code::of(&text).ok();
    let out_folder = out.map_or_else(|| free_folder(folder, &request.code, card.plan.header.revision), Path::to_path_buf);
    let files = files(&out_folder, &text, &bytes, code.as_ref());
    hand_over(folder, &patient, &card.plan, &bytes, &out_folder, &files)?;
    Ok(IssuedCard {
        plan: card.plan,
        svg: code.as_ref().map(Code::svg),
        version: code.as_ref().map(Code::version),
        text,
        fingerprint: vault::fingerprint(&card.verify_key, &card.recipient),
        files: files.iter().map(|(path, _)| path.display().to_string()).collect(),
    })
}

fn sign(folder: &DataFolder, patient: &Patient, plan: Plan) -> ActionResult<(Card, Vec<u8>)> {
    let keys = lock::unlocked_keys(folder)?;
    let secret = patient.newest().map_or_else(vault::random::pairing_secret, |card| card.pairing_secret.clone());
    let own = patient.newest().map(|card| card.own.clone()).unwrap_or_default();
    let card = vault::card::of_clinic(keys, plan, secret, own);
    let bytes = vault::card::issue(keys, &card).map_err(refuse::internal)?;
    Ok((card, bytes))
}

/// Stores the card, and deletes the draft that it was made from.
fn keep(folder: &mut DataFolder, patient: &Patient, plan: &Plan, bytes: &[u8]) -> ActionResult<()> {
    let dir = folder.dir();
    let DataFolder { home, keys, .. } = folder;
    let Some(keys) = keys.as_ref() else { return Err(Failure::ClinicLocked) };
    let kept = home.store_mut().transaction(|tx| {
        table::draft::remove(tx, patient.row)?;
        table::issued::insert(tx, patient.row, plan.header.revision.into(), |id| {
            Ok::<_, StoreError>(vault::rows::seal(keys, ISSUED, &rows::bound(id), bytes))
        })
    });
    kept.map(drop).map_err(refuse::store(&dir))
}

/// Stores the card and writes its files, both or neither: a patient must not get a card that the clinic does not know.
fn hand_over(
    folder: &mut DataFolder,
    patient: &Patient,
    plan: &Plan,
    bytes: &[u8],
    out_folder: &Path,
    files: &[(PathBuf, Vec<u8>)],
) -> ActionResult<()> {
    let mut written = false;
    let done = folder.all_or_nothing(|folder| {
        keep(folder, patient, plan, bytes)?;
        platform::folder(out_folder)?;
        platform::write_all(files)?;
        written = true;
        Ok(())
    });
    if done.is_err() && written {
        files.iter().try_for_each(|(path, _)| platform::remove(path))?;
    }
    done?;
    // A code from an earlier card must not remain next to the text of this one.
    let codes = [PNG, SVG].map(|name| out_folder.join(name));
    codes.iter().filter(|code| files.iter().all(|(path, _)| path != *code)).try_for_each(|code| platform::remove(code))
}

fn files(out_folder: &Path, text: &str, bytes: &[u8], code: Option<&Code>) -> Vec<(PathBuf, Vec<u8>)> {
    let mut files = Vec::new();
    if let Some(code) = code {
        files.push((out_folder.join(PNG), code.png(MODULE_PX)));
        files.push((out_folder.join(SVG), code.svg().into_bytes()));
    }
    files.push((out_folder.join("card.txt"), text.as_bytes().to_vec()));
    files.push((out_folder.join("card.bin"), bytes.to_vec()));
    files
}

/// A folder that does not exist yet, named by patient code and revision, with a number added if necessary.
fn free_folder(folder: &DataFolder, code: &str, revision: u16) -> PathBuf {
    let saves = platform::saves(&folder.dir());
    let name = |number: u32| match number {
        1 => saves.join(format!("card-{code}-{revision}")),
        _ => saves.join(format!("card-{code}-{revision}-{number}")),
    };
    (1..).map(name).find(|path| !path.exists()).unwrap_or_else(|| name(1))
}
