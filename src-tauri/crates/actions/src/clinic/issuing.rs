//! Issuing a plan card.

use super::rows::{self, ISSUED, Patient};
use super::{door, drafting};
use crate::{Answer, House, Moment, outside, refuse};
use exercises::plan::Plan;
use format::card::Card;
use pictures::qr::Code;
use std::path::{Path, PathBuf};
use store::{StoreError, table};
use wire::Failure;
use wire::clinic::{AskIssue, IssuedCard};

/// Pixels of a module in the PNG: 0.5 mm and more on paper at 300 dots an inch.
const MODULE_PX: u8 = 8;
const PNG: &str = "card.png";
const SVG: &str = "card.svg";

/// Issues a plan to a patient: signs its card, keeps it, and writes its PNG, SVG, text and bytes to `out`, or into the folder
/// for what is saved.
///
/// # Errors
/// [`Failure::PlanRefused`] with everything that keeps the plan from being issued, or what keeps the files from being
/// written: a card that nobody got counts as never issued.
pub fn issue(house: &mut House, moment: &Moment, ask: &AskIssue, out: Option<&Path>) -> Answer<IssuedCard> {
    let patient = rows::patient(house, &ask.code)?;
    let plan = drafting::finish(house, moment, &patient, &ask.prescription)?;
    let (card, bytes) = sign(house, &patient, plan)?;
    let text = format::card::to_text(&bytes);
    let code = Code::of(&text).ok();
    let folder = out.map_or_else(|| free_folder(house, &ask.code, card.plan.header.revision), Path::to_path_buf);
    let files = files(&folder, &text, &bytes, code.as_ref());
    hand_over(house, &patient, &card.plan, &bytes, &folder, &files)?;
    Ok(IssuedCard {
        plan: card.plan,
        svg: code.as_ref().map(Code::svg),
        version: code.as_ref().map(Code::version),
        text,
        fingerprint: vault::fingerprint(&card.verify_key, &card.recipient),
        files: files.iter().map(|(path, _)| path.display().to_string()).collect(),
    })
}

fn sign(house: &House, patient: &Patient, plan: Plan) -> Answer<(Card, Vec<u8>)> {
    let keys = door::open(house)?;
    let secret = patient.newest().map_or_else(vault::random::pairing_secret, |card| card.pairing_secret.clone());
    let own = patient.newest().map(|card| card.own.clone()).unwrap_or_default();
    let card = vault::card::of_clinic(keys, plan, secret, own);
    let bytes = vault::card::issue(keys, &card).map_err(refuse::internal)?;
    Ok((card, bytes))
}

fn keep(house: &mut House, patient: &Patient, plan: &Plan, bytes: &[u8]) -> Answer<()> {
    let dir = house.dir();
    let House { home, keys, .. } = house;
    let Some(keys) = keys.as_ref() else { return Err(Failure::ClinicLocked) };
    let kept = home.store_mut().transaction(|tx| {
        table::issued::insert(tx, patient.row, plan.header.revision.into(), |id| {
            Ok::<_, StoreError>(vault::rows::seal(keys, ISSUED, &rows::bound(id), bytes))
        })
    });
    kept.map(drop).map_err(refuse::store(&dir))
}

/// Keeps the card and writes its files, both or neither: a card that the clinic does not know must not get to a patient.
fn hand_over(
    house: &mut House,
    patient: &Patient,
    plan: &Plan,
    bytes: &[u8],
    folder: &Path,
    files: &[(PathBuf, Vec<u8>)],
) -> Answer<()> {
    let mut written = false;
    let done = house.all_or_nothing(|house| {
        keep(house, patient, plan, bytes)?;
        outside::folder(folder)?;
        outside::write_all(files)?;
        written = true;
        Ok(())
    });
    if done.is_err() && written {
        files.iter().try_for_each(|(path, _)| outside::remove(path))?;
    }
    done?;
    // An earlier card's code must not lie beside this one's text.
    let codes = [PNG, SVG].map(|name| folder.join(name));
    codes.iter().filter(|code| files.iter().all(|(path, _)| path != *code)).try_for_each(|code| outside::remove(code))
}

fn files(folder: &Path, text: &str, bytes: &[u8], code: Option<&Code>) -> Vec<(PathBuf, Vec<u8>)> {
    let mut files = Vec::new();
    if let Some(code) = code {
        files.push((folder.join(PNG), code.png(MODULE_PX)));
        files.push((folder.join(SVG), code.svg().into_bytes()));
    }
    files.push((folder.join("card.txt"), text.as_bytes().to_vec()));
    files.push((folder.join("card.bin"), bytes.to_vec()));
    files
}

/// A folder that is not there yet: the code and the revision, and a number where there are several.
fn free_folder(house: &House, code: &str, revision: u16) -> PathBuf {
    let saves = outside::saves(&house.dir());
    let name = |number: u32| match number {
        1 => saves.join(format!("card-{code}-{revision}")),
        _ => saves.join(format!("card-{code}-{revision}-{number}")),
    };
    (1..).map(name).find(|path| !path.exists()).unwrap_or_else(|| name(1))
}
