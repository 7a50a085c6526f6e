//! Issuing a plan card, and saving the files of one that was issued.

use super::rows::{self, Patient};
use super::sealed;
use super::{cases, drafting, lock, own_catalogue};
use crate::{ActionResult, DataFolder, Moment, platform, refuse};
use exercises::catalogue::Catalogue;
use exercises::plan::{Header, Plan};
use format::card::{Card, CardFault};
use format::frames;
use pictures::qr::Code;
use std::path::{Path, PathBuf};
use store::{StoreError, table};
use vault::card::IssueFault;
use wire::Failure;
use wire::clinic::{Handover, IssueRequest, IssuedCard};

/// Pixels per module of the code in the PNG: 0.5 mm or more when printed at 300 dots per inch.
const MODULE_PX: u8 = 8;
/// The name of a card's files, and their endings.
const CARD: &str = "card";
const PNG: &str = "png";
const SVG: &str = "svg";
const BIN: &str = "bin";

/// A card as it is in the store.
struct StoredCard {
    card: Card,
    bytes: Vec<u8>,
}

/// What the window may do with the files of the card that it issued or saved again last.
#[derive(Default)]
pub(crate) struct LastCard {
    /// Forms of the card that were not asked for.
    unsaved: Vec<(PathBuf, Vec<u8>)>,
    /// The files that were written.
    saved: Vec<PathBuf>,
}

/// Issues a plan to a patient: signs its card, stores it, and writes it as PNG, SVG, text and bytes to `out`. Without `out`, only what is
/// printed or handed over is written, into a new folder for saved files: the PNG of each code, or the bytes if the card is too large for
/// codes. The
/// card is stored before any file is written, so that no card is handed over that the clinic does not know.
///
/// If the files of a card could not be written, or the program ended before, the same plan is not issued a second time: its card is
/// saved again.
///
/// # Errors
/// [`Failure::CaseClosed`], [`Failure::PlanRefused`] with every problem that prevents the plan from being issued, the failure to make the
/// folder `out`, keys that cannot continue the plan ([`Failure::PlanOfManyKeys`], [`Failure::PlanOfMissingKeys`]), or
/// [`Failure::PlanTooLarge`]; then nothing is issued. [`Failure::CardNotSaved`] if the card is issued
/// and its files could not be written: [`save_again`] writes them elsewhere.
pub fn issue(
    folder: &mut DataFolder,
    moment: &Moment,
    request: &IssueRequest,
    out: Option<&Path>,
) -> ActionResult<IssuedCard<String>> {
    let patient = rows::patient(folder, &request.code)?;
    cases::must_be_open(folder, &patient)?;
    let catalogue = own_catalogue::catalogue(folder, &patient)?;
    let plan = drafting::finish(folder, moment, &patient, &catalogue, &request.prescription)?;
    // A folder that cannot be made is no reason to issue a card that then has no files.
    out.map_or(Ok(()), platform::folder)?;
    let stored = if is_unsaved(folder, &patient, &plan)? {
        stored(folder, &patient, None)?
    } else {
        let signed = sign(folder, &patient, plan, &catalogue)?;
        keep(folder, &patient, &signed)?;
        signed
    };
    save(folder, moment, &patient, &stored, out)
}

/// Writes the files of a card that was issued, as [`issue`] does: the newest one, or that of a `revision`.
///
/// # Errors
/// [`Failure::NoCardIssued`] or [`Failure::NoSuchRevision`] if there is no such card; [`Failure::CardNotSaved`] if the files cannot be
/// written.
pub fn save_again(
    folder: &mut DataFolder,
    moment: &Moment,
    code: &str,
    revision: Option<u16>,
    out: Option<&Path>,
) -> ActionResult<IssuedCard<String>> {
    let patient = rows::patient(folder, code)?;
    let stored = stored(folder, &patient, revision)?;
    save(folder, moment, &patient, &stored, out)
}

/// A patient's card of this revision, or the newest one, and the codes that it is handed over as; none if it is too large for codes.
pub(super) fn card_of(folder: &DataFolder, patient: &Patient, revision: Option<u16>) -> ActionResult<(Card, Vec<Code>)> {
    let StoredCard { card, bytes } = stored(folder, patient, revision)?;
    let codes = codes(&format::card::to_text(&bytes), &bytes);
    Ok((card, codes))
}

/// The setting that holds the revision of a patient's card until its files are written.
pub(super) fn unsaved_setting(patient: i64) -> String {
    format!("card-not-saved-{patient}")
}

/// Whether the patient's newest card has this plan and the clinic's present keys, and its files were never written. Revision and day of
/// issue may differ.
fn is_unsaved(folder: &DataFolder, patient: &Patient, plan: &Plan) -> ActionResult<bool> {
    let Some(card) = patient.newest() else { return Ok(false) };
    let Header { revision, issued, .. } = card.plan.header;
    let again = Plan { header: Header { revision, issued, ..plan.header.clone() }, ..plan.clone() };
    let present = card.verify_key == lock::unlocked_keys(folder)?.verify_key();
    Ok(present && again == card.plan && folder.setting(&unsaved_setting(patient.row))? == Some(revision.to_string()))
}

/// How the card of this plan would be handed over; `None` if it cannot be signed, which issuing says.
pub(super) fn handover(folder: &DataFolder, patient: &Patient, plan: Plan, catalogue: &Catalogue) -> Option<Handover> {
    match sign(folder, patient, plan, catalogue) {
        Ok(signed) => Some(handed_over(&signed.bytes)),
        Err(Failure::PlanTooLarge) => Some(Handover::TooLarge),
        Err(_) => None,
    }
}

/// How a card with these bytes is handed over.
fn handed_over(bytes: &[u8]) -> Handover {
    if let Some(version) = Code::version_of(&format::card::to_text(bytes)) {
        return Handover::Code { version };
    }
    let frames = frames::split_card(bytes).ok().and_then(|frames| u8::try_from(frames.len()).ok());
    frames.map_or(Handover::File, |n| Handover::Codes { n })
}

/// The codes of a card: one, or several if it is too large for one; none if it is too large for several.
fn codes(text: &str, bytes: &[u8]) -> Vec<Code> {
    if let Ok(code) = Code::of(text) {
        return vec![code];
    }
    let frames = frames::split_card(bytes).unwrap_or_default();
    frames.iter().map(|frame| Code::of(frame)).collect::<Result<_, _>>().unwrap_or_default()
}

/// The name of the file with a code, without its ending.
fn name(place: usize, of: usize) -> String {
    if of == 1 { CARD.to_owned() } else { format!("{CARD}-{}", place + 1) }
}

fn sign(folder: &DataFolder, patient: &Patient, plan: Plan, catalogue: &Catalogue) -> ActionResult<StoredCard> {
    let keys = lock::unlocked_keys(folder)?;
    let secret = vault::card::pairing_secret(keys, plan.header.id, plan.header.revision);
    let own = own_catalogue::for_card(&plan, catalogue);
    let card = vault::card::of_clinic(keys, plan, secret, own);
    let signed: Vec<[u8; 32]> = patient.cards.values().map(|card| card.verify_key).collect();
    let code = || patient.code.clone();
    let card = vault::card::continuing(keys, card, &signed).map_err(|fault| match fault {
        IssueFault::TooManyFormerKeys => Failure::PlanOfManyKeys { code: code(), most: format::card::MAX_FORMER as u8 },
        IssueFault::MissingKey => Failure::PlanOfMissingKeys { code: code() },
        IssueFault::OtherKeys | IssueFault::Contents(_) => refuse::internal(fault),
    })?;
    let bytes = vault::card::issue(keys, &card).map_err(|fault| match fault {
        IssueFault::Contents(CardFault::TooBig { .. }) => Failure::PlanTooLarge,
        other => refuse::internal(other),
    })?;
    Ok(StoredCard { card, bytes })
}

/// Stores the card, and deletes the draft that it was made from.
fn keep(folder: &mut DataFolder, patient: &Patient, signed: &StoredCard) -> ActionResult<()> {
    let (row, revision) = (patient.row, u32::from(signed.card.plan.header.revision));
    let by = cases::noting_who(folder, patient, |case, name| {
        case.issued_by.insert(signed.card.plan.header.revision, name);
    })?;
    sealed::change(folder, |tx, sealer| {
        drafting::remove(tx, sealer, row)?;
        by.map_or(Ok(()), |case| cases::put(tx, sealer, row, &case))?;
        let seal = |id| Ok::<_, StoreError>(sealer.seal(row, &sealed::issued_place(id, row, revision), &signed.bytes));
        table::issued::insert(tx, row, revision, seal)?;
        table::setting::put(tx, &unsaved_setting(row), &revision.to_string())
    })
}

/// The card of a revision, or the newest one, as it is in the store.
fn stored(folder: &DataFolder, patient: &Patient, revision: Option<u16>) -> ActionResult<StoredCard> {
    let code = || patient.code.clone();
    let newest = patient.newest().ok_or_else(|| Failure::NoCardIssued { code: code() })?;
    let revision = revision.unwrap_or(newest.plan.header.revision);
    let keys = lock::unlocked_keys(folder)?;
    let issued = rows::read(folder, |view| table::issued::of_patient(view, patient.row))?;
    let card = patient.cards.get(&revision);
    let row = issued.iter().find(|row| row.revision == u32::from(revision));
    let (card, row) = card.zip(row).ok_or_else(|| Failure::NoSuchRevision { code: code(), revision })?;
    let bytes = rows::card_bytes(keys, row).ok_or_else(|| Failure::RecordDamaged { code: code() })?;
    Ok(StoredCard { card: Card::clone(card), bytes })
}

/// Writes the files of a stored card: all to `out`, or the one that is needed into a new folder.
fn save(
    folder: &mut DataFolder,
    moment: &Moment,
    patient: &Patient,
    stored: &StoredCard,
    out: Option<&Path>,
) -> ActionResult<IssuedCard<String>> {
    let StoredCard { card, bytes } = stored;
    let revision = card.plan.header.revision;
    let text = format::card::to_text(bytes);
    let codes = codes(&text, bytes);
    // Its name says nothing about the patient.
    let out_folder = out.map_or_else(|| platform::free_name(folder, moment, "plan-card", ""), Path::to_path_buf);
    let mut files = files(&out_folder, &text, bytes, &codes);
    let wanted = if codes.is_empty() { BIN } else { PNG };
    let unsaved = if out.is_some() { Vec::new() } else { files.extract_if(.., |(path, _)| !ends(path, wanted)).collect() };
    let code = || patient.code.clone();
    let not_saved = |_| Failure::CardNotSaved { code: code(), revision, folder: out_folder.display().to_string() };
    write(&out_folder, &files).map_err(not_saved)?;
    let saved: Vec<PathBuf> = files.into_iter().map(|(path, _)| path).collect();
    let names = saved.iter().map(|path| path.display().to_string()).collect();
    folder.last_card = LastCard { unsaved, saved };
    if revision >= patient.newest_revision() {
        let dir = folder.dir();
        let done = folder.home.store_mut().transaction(|tx| table::setting::remove(tx, &unsaved_setting(patient.row)));
        done.map_err(refuse::store(&dir))?;
    }
    let one = codes.first().filter(|_| codes.len() == 1);
    Ok(IssuedCard {
        plan: card.plan.clone(),
        svg: one.map(Code::svg),
        codes: if one.is_some() { Vec::new() } else { codes.iter().map(Code::svg).collect() },
        version: one.map(Code::version),
        text,
        fingerprint: vault::fingerprint(&card.verify_key, &card.recipient),
        files: names,
    })
}

fn write(out_folder: &Path, files: &[(PathBuf, Vec<u8>)]) -> ActionResult<()> {
    platform::folder(out_folder)?;
    platform::write_all(files)?;
    // A code from an earlier card must not remain next to the text of this one.
    let most = usize::from(frames::MAX_FRAMES);
    let names = [name(0, 1)].into_iter().chain((0..most).map(|place| name(place, most)));
    let codes: Vec<PathBuf> =
        names.flat_map(|name| [PNG, SVG].map(|ending| out_folder.join(format!("{name}.{ending}")))).collect();
    codes.iter().filter(|code| files.iter().all(|(path, _)| path != *code)).try_for_each(|code| platform::remove(code))
}

fn files(out_folder: &Path, text: &str, bytes: &[u8], codes: &[Code]) -> Vec<(PathBuf, Vec<u8>)> {
    let file = |name: &str, ending: &str| out_folder.join(format!("{name}.{ending}"));
    let mut files = Vec::new();
    for (place, code) in codes.iter().enumerate() {
        let name = name(place, codes.len());
        files.push((file(&name, PNG), code.png(MODULE_PX)));
        files.push((file(&name, SVG), code.svg().into_bytes()));
    }
    files.push((file(CARD, "txt"), text.as_bytes().to_vec()));
    files.push((file(CARD, BIN), bytes.to_vec()));
    files
}

fn ends(path: &Path, ending: &str) -> bool {
    path.extension().is_some_and(|found| found == ending)
}

/// Writes the other forms of the card that was issued last, beside its picture; returns the paths of all its files.
///
/// # Errors
/// [`Failure::ClinicLocked`], or the failure to write.
pub fn save_other_forms(folder: &mut DataFolder) -> ActionResult<Vec<String>> {
    lock::unlocked_keys(folder)?;
    let last = &mut folder.last_card;
    platform::write_all(&last.unsaved)?;
    last.saved.extend(last.unsaved.drain(..).map(|(path, _)| path));
    Ok(last.saved.iter().map(|path| path.display().to_string()).collect())
}

/// Removes the files of the card that was issued last, and their folder if nothing else is in it. The card stays issued.
///
/// # Errors
/// [`Failure::ClinicLocked`], or the failure to remove one.
pub fn remove_files(folder: &mut DataFolder) -> ActionResult<()> {
    lock::unlocked_keys(folder)?;
    let saved = &mut folder.last_card.saved;
    let parent = saved.first().and_then(|path| path.parent()).map(Path::to_path_buf);
    saved.iter().try_for_each(|path| platform::remove(path))?;
    saved.clear();
    parent.map_or(Ok(()), |parent| platform::remove_empty_folder(&parent))
}
