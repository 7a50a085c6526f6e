//! Visits: what was found is noted entry by entry, sealed, and corrected by further entries.

use super::rows::{self, Patient};
use super::{clinicians, drafting, lock, sealed};
use crate::{ActionResult, DataFolder, Moment, refuse};
use exercises::draft::PatientFacts;
use exercises::visit::{Finding, MAX_ENTRIES, TakenBack, Visit, VisitEntry, last_screening, taken_back, visits};
use store::{StoreError, table};
use wire::Failure;
use wire::visiting::{NoteRequest, VisitPage};

/// A patient's visits, and what today's is compared with. Entries that do not open are counted and left out.
///
/// # Errors
/// [`Failure::ClinicLocked`]; [`Failure::NoSuchPatient`]; [`Failure::RecordDamaged`] if one of the patient's cards does not open, and
/// [`Failure::RecordsDamaged`] if the patient's own row may be one that does not; any failure to read the store.
pub fn page(folder: &DataFolder, moment: &Moment, code: &str) -> ActionResult<VisitPage> {
    let patient = rows::patient(folder, code)?;
    let (entries, unreadable) = entries(folder, &patient)?;
    Ok(VisitPage {
        visits: visits(&entries),
        today: moment.now.date(),
        flags: patient.facts.flags.clone(),
        unreadable: u16::try_from(unreadable).unwrap_or(u16::MAX),
        code: patient.code,
        name: patient.name,
    })
}

/// Notes a finding of today, corrects one, or takes one back. A correction belongs to the day of what it corrects. What the newest
/// screening says holds for the next plans too; a correction of an older one changes nothing but that one.
///
/// # Errors
/// [`Failure::VisitUnfit`] with what is wrong with it; [`Failure::VisitChanged`] if what is to be corrected was corrected already;
/// [`Failure::TooManyFindings`].
pub fn note(folder: &mut DataFolder, moment: &Moment, request: &NoteRequest) -> ActionResult<VisitPage> {
    let patient = rows::patient(folder, &request.code)?;
    let (before, _) = entries(folder, &patient)?;
    if let Some(Err(fault)) = request.finding.as_ref().map(Finding::check) {
        return Err(Failure::VisitUnfit(fault));
    }
    if before.len() >= MAX_ENTRIES {
        return Err(Failure::TooManyFindings { most: MAX_ENTRIES as u16 });
    }
    let day = match request.replaces {
        None => moment.now.date(),
        Some(n) => {
            let all = visits(&before);
            let visit = all.iter().find(|visit| visit.found.iter().any(|found| found.n == n));
            visit.ok_or(Failure::VisitChanged)?.day
        }
    };
    if let (None, None) = (&request.finding, request.replaces) {
        return Err(Failure::VisitChanged);
    }
    let by = clinicians::own_name(folder)?;
    let entry = VisitEntry { n: 0, at: moment.now, day, replaces: request.replaces, finding: request.finding.clone(), by };
    let plain = format::visit::write(&entry).map_err(refuse::internal)?;
    folder.all_or_nothing(|folder| {
        sealed::change(folder, |tx, sealer| {
            table::visit::insert(tx, patient.row, |id| {
                Ok::<_, StoreError>(sealer.seal(patient.row, &sealed::visit_place(id, patient.row), &plain))
            })
        })?;
        match &request.finding {
            Some(Finding::Screening(screening))
                if last_screening(&visits(&before)).is_none_or(|(newest, _)| newest <= day) =>
            {
                let facts = PatientFacts { flags: screening.flags.clone(), lacks: patient.facts.lacks.clone() };
                drafting::put_facts(folder, &patient.code, &facts)
            }
            _ => Ok(()),
        }
    })?;
    page(folder, moment, &patient.code)
}

/// A patient's visits, the newest first, and what was taken back, for whoever hands them on.
///
/// # Errors
/// [`Failure::RecordDamaged`] if an entry does not open: what is handed on leaves nothing out unseen.
pub fn findings(folder: &DataFolder, code: &str) -> ActionResult<(Vec<Visit>, Vec<TakenBack>)> {
    let patient = rows::patient(folder, code)?;
    match entries(folder, &patient)? {
        (entries, 0) => Ok((visits(&entries), taken_back(&entries))),
        _ => Err(Failure::RecordDamaged { code: patient.code }),
    }
}

/// The entries that open, in order, and how many do not.
fn entries(folder: &DataFolder, patient: &Patient) -> ActionResult<(Vec<VisitEntry>, usize)> {
    let keys = lock::unlocked_keys(folder)?;
    let stored = rows::read(folder, |view| table::visit::of_patient(view, patient.row))?;
    let open = |row: &table::visit::Row| {
        let plain = vault::rows::open(keys, &sealed::visit_place(row.id, row.patient), &row.sealed).ok()?;
        format::visit::read(u32::try_from(row.id).ok()?, &plain).ok()
    };
    let entries: Vec<VisitEntry> = stored.iter().filter_map(open).collect();
    let unreadable = stored.len() - entries.len();
    Ok((entries, unreadable))
}
