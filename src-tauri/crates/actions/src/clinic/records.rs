//! Reviews for medical records: as a table, or as HL7 FHIR R4.

use super::rows::{self, Patient};
use super::{lock, reviewing, visiting};
use crate::{ActionResult, DataFolder, Moment, Saved, platform};
use exercises::alarm::Trouble;
use exercises::catalogue::{ExerciseId, Region};
use exercises::id::{ActivityId, ComplaintId, ItemId};
use exercises::plan::{BodySide, Item, Side};
use exercises::visit::{TakenBack, Visit};
use format::fhir::{self, Facts, Source, Texts};
use format::measures::Code;
use format::review_csv::{self, Reported};
use std::path::Path;
use wire::Failure;
use wire::clinic::ReviewPage;
pub use wire::visiting::RecordForm;
use wire::visiting::RecordRequest;
use words::review::Names;
use words::{Key, Words};

/// Whose reviews, and with what.
#[derive(Debug, Clone, Copy)]
pub struct Asked<'a> {
    /// The patient's code; `None` for all patients with a plan or a visit.
    pub code: Option<&'a str>,
    /// As what.
    pub form: RecordForm,
    /// Whether the patients' names are to be in it, where they are known. A table has none.
    pub with_names: bool,
}

/// The reviews as bytes.
///
/// # Errors
/// [`Failure::NothingToExport`] without a plan and without a visit, of the patient or of all of them;
/// [`Failure::RecordDamaged`] if one of them cannot be read: nothing is written that leaves somebody out unseen.
pub fn make(folder: &DataFolder, moment: &Moment, words: Words, asked: Asked<'_>) -> ActionResult<Vec<u8>> {
    let codes = match asked.code {
        Some(code) => vec![code.to_owned()],
        None => codes_of_all(folder)?,
    };
    let mut all = Vec::new();
    for code in codes {
        let page = reviewing::page(folder, moment, &code)?;
        let (visits, taken_back) = visiting::findings(folder, &code)?;
        if is_worth_telling(&page, &visits, &taken_back) {
            all.push(Recorded { page, visits, taken_back });
        }
    }
    if all.is_empty() {
        return Err(Failure::NothingToExport);
    }
    if asked.form == RecordForm::Csv {
        return Ok(review_csv::write(&all.iter().map(reported).collect::<Vec<_>>()));
    }
    as_fhir(folder, moment, words, asked, &all)
}

/// A patient of whom there is something to write.
struct Recorded {
    page: ReviewPage,
    visits: Vec<Visit>,
    taken_back: Vec<TakenBack>,
}

fn as_fhir(folder: &DataFolder, moment: &Moment, words: Words, asked: Asked<'_>, all: &[Recorded]) -> ActionResult<Vec<u8>> {
    let clinic = lock::unlocked_keys(folder)?.mark().to_string();
    let practice = lock::name(folder)?;
    let sources = all.iter().map(|one| sources(folder, &one.page.code)).collect::<ActionResult<Vec<_>>>()?;
    let texts: Vec<_> = all.iter().map(|one| PageTexts { words, names: Names::of(words, &one.page) }).collect();
    let each = all.iter().zip(&sources).zip(&texts);
    let facts = each.map(|((Recorded { page, visits, taken_back }, sources), texts)| Facts {
        clinic: &clinic,
        code: &page.code,
        name: page.name.as_deref().filter(|_| asked.with_names),
        at: moment.now,
        version: env!("CARGO_PKG_VERSION"),
        language: words.lang().code(),
        practice: &practice,
        plan: page.plan.as_ref(),
        earlier: &page.earlier,
        exercises: &page.exercises,
        review: page.review.as_ref(),
        sources,
        visits,
        taken_back,
        texts,
    });
    let facts: Vec<Facts<'_>> = facts.collect();
    let written = if asked.form == RecordForm::Collection { fhir::collection(&facts) } else { fhir::transaction(&facts) };
    Ok(written.into_bytes())
}

/// Whether a patient has anything for records: a plan, or something that was found at a visit. What was taken back counts too, because a
/// server that has it must learn of it.
fn is_worth_telling(page: &ReviewPage, visits: &[Visit], taken_back: &[TakenBack]) -> bool {
    page.plan.is_some() || !visits.is_empty() || !taken_back.is_empty()
}

/// Writes the reviews to `path`, or into the folder for saved files, completely or not at all.
///
/// # Errors
/// Those of [`make`], and a failure to write.
pub fn save(
    folder: &DataFolder,
    moment: &Moment,
    words: Words,
    asked: Asked<'_>,
    path: Option<&Path>,
) -> ActionResult<Saved> {
    let bytes = make(folder, moment, words, asked)?;
    let ending = if asked.form == RecordForm::Csv { ".csv" } else { ".json" };
    // Others may see the file's name, so it has nothing of the patient.
    let path = path.map_or_else(|| platform::free_name(folder, moment, "review", ending), Path::to_path_buf);
    platform::write(&path, &bytes)?;
    Ok(Saved { path: path.display().to_string(), bytes: bytes.len() as u64 })
}

/// Saves one patient's review as the window asks for it, without the name, into the folder for saved files.
///
/// # Errors
/// Those of [`save`].
pub fn save_from_window(folder: &DataFolder, moment: &Moment, request: &RecordRequest) -> ActionResult<Saved> {
    let asked = Asked { code: Some(&request.code), form: request.form, with_names: false };
    save(folder, moment, platform::words(folder.locale()), asked, None)
}

/// The codes of all patients, in order.
///
/// # Errors
/// [`Failure::RecordDamaged`] or [`Failure::RecordsDamaged`] if one of them cannot be read.
pub fn codes_of_all(folder: &DataFolder) -> ActionResult<Vec<String>> {
    let all = rows::patients(folder)?;
    if all.damaged > 0 {
        return Err(Failure::RecordsDamaged { n: u16::try_from(all.damaged).unwrap_or(u16::MAX) });
    }
    let code =
        |one: Result<Patient, String>| one.map(|patient| patient.code).map_err(|code| Failure::RecordDamaged { code });
    all.patients.into_iter().map(code).collect()
}

fn reported(Recorded { page, visits, .. }: &Recorded) -> Reported<'_> {
    let ReviewPage { code, plan, earlier, review, .. } = page;
    Reported { code, plan: plan.as_ref(), earlier, review: review.as_ref(), visits }
}

/// What the review was made of: summaries of devices that the clinic leaves out are no source of it.
fn sources(folder: &DataFolder, code: &str) -> ActionResult<Vec<Source>> {
    let patient = rows::patient(folder, code)?;
    let left_out = super::devices::left_out(folder, &patient)?;
    let all = rows::packed_summaries(folder, &patient)?.into_iter();
    let source = all.filter(|body| !left_out.contains(&body.log));
    Ok(source.map(|body| Source { log: body.log, counter: body.counter, contents: body.packed }).collect())
}

/// The texts of one review.
struct PageTexts<'a> {
    words: Words,
    names: Names<'a>,
}

impl Texts for PageTexts<'_> {
    fn plan(&self) -> String {
        self.words.text(Key::RecordPlanTitle).to_owned()
    }

    fn item(&self, item: ItemId) -> String {
        self.names.item(item)
    }

    fn exercise(&self, exercise: &ExerciseId) -> String {
        self.names.exercise(exercise)
    }

    fn instruction(&self, item: &Item) -> String {
        self.words.instruction(item)
    }

    fn due(&self, item: &Item) -> String {
        self.words.at_line_start(&self.words.due(item))
    }

    fn side(&self, side: Side) -> String {
        self.words.side(side).to_owned()
    }

    fn leg(&self, leg: BodySide) -> String {
        self.words.leg(leg).to_owned()
    }

    fn place(&self, region: Region, side: Side) -> String {
        self.words.place_of_body(region, side)
    }

    fn complaint(&self, complaint: ComplaintId) -> String {
        self.names.complaint(complaint)
    }

    fn activity(&self, activity: ActivityId) -> String {
        self.names.activity(activity)
    }

    fn measured(&self, code: Code, of: Option<&str>) -> String {
        let measure = measure(code).map_or(code.name(), |key| self.words.text(key));
        of.map_or_else(|| measure.to_owned(), |name| self.words.record_of(measure, name))
    }

    fn alarm(&self, trouble: Trouble) -> String {
        self.words.trouble_noted(trouble).to_owned()
    }
}

/// The text of a measure that is an observation of its own. The components of an observation have the name of their code.
fn measure(code: Code) -> Option<Key> {
    let key = match code {
        Code::Adherence => Key::RecordAdherence,
        Code::LongestGap => Key::RecordLongestGap,
        Code::AsNeeded => Key::RecordAsNeeded,
        Code::OneLegStance => Key::RecordOneLeg,
        Code::Stance => Key::RecordStance,
        Code::MorningPain => Key::RecordMorningPain,
        Code::DuringPain => Key::RecordDuringPain,
        Code::Repetitions => Key::RecordRepetitions,
        Code::Activity => Key::RecordActivity,
        Code::Alarm => Key::RecordAlarm,
        Code::Reasons => Key::RecordReasons,
        Code::VisitPain => Key::RecordVisitPain,
        Code::VisitChange => Key::RecordVisitChange,
        Code::VisitMovementPain => Key::RecordVisitMovementPain,
        Code::VisitMotion => Key::RecordVisitMotion,
        Code::VisitGrip => Key::RecordVisitGrip,
        Code::VisitChairRise => Key::RecordVisitChairRise,
        Code::VisitStance => Key::RecordVisitStance,
        Code::VisitOther => Key::RecordVisitOther,
        Code::VisitScreening => Key::RecordVisitScreening,
        Code::VisitNote => Key::RecordVisitNote,
        Code::VisitOverridden => Key::RecordVisitOverridden,
        _ => return None,
    };
    Some(key)
}
