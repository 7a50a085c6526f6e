//! What came from one patient at once, and what it adds to what was received before. Needs no data folder, so that several patients' are
//! looked at side by side.

use super::opening;
use crate::ActionResult;
use crate::clinic::rows::{self, Patient};
use crate::clinic::{lines, numbering, reviewing};
use chrono::NaiveDate;
use exercises::catalogue::Catalogue;
use exercises::closing::{Closing, in_force};
use exercises::id::LogId;
use exercises::summary::Summary;
use exercises::summary::union::{self, ArrivalEffect};
use exercises::time::DayNumber;
use format::devices::Device;
use format::summary::Body;
use std::borrow::Cow;
use store::table::received::Received;
use vault::Keys;
use vault::summary::Unsealed;
use wire::Failure;
use wire::clinic::PatientLine;
use wire::receiving::{Outcome, ReceiptNotice};

/// A decrypted summary, and its place in the batch.
pub(super) struct Arrived<'b> {
    pub(super) place: usize,
    pub(super) file: &'b str,
    pub(super) unsealed: &'b Unsealed,
}

/// What is stored of a patient, still sealed but for what is short.
pub(super) struct Stored {
    pub(super) received: Vec<Received>,
    pub(super) devices: Vec<Device>,
    pub(super) closings: Vec<Closing>,
}

/// A patient, and all that came from them.
pub(super) struct OfPatient<'b> {
    pub(super) patient: Patient,
    pub(super) catalogue: Cow<'b, Catalogue>,
    pub(super) stored: ActionResult<Stored>,
    pub(super) arrived: Vec<Arrived<'b>>,
}

/// A summary that is to be kept.
pub(super) struct ToKeep {
    pub(super) patient: i64,
    pub(super) log: LogId,
    pub(super) counter: u32,
    /// Its contents, as the patient's copy packed them.
    pub(super) packed: Vec<u8>,
    /// The devices that were known before it.
    pub(super) devices: Vec<Device>,
}

/// What is said of a summary.
pub(super) type Said = (Outcome, Vec<ReceiptNotice>);

/// What was found out about a summary, by its place.
pub(super) struct Looked {
    pub(super) place: usize,
    pub(super) said: ActionResult<Said>,
    pub(super) to_keep: Option<ToKeep>,
}

/// What was found out about all that came from a patient.
pub(super) struct Found {
    pub(super) looked: Vec<Looked>,
    /// If something is to be kept: the patient's line of the list as it is then, and whether later days leave it as it is.
    pub(super) line: Option<(i64, PatientLine, bool)>,
}

/// What was received from a patient before, and what is about to be kept.
struct History<'b> {
    of: &'b OfPatient<'b>,
    /// What was stored before.
    bodies: Vec<Body>,
    /// What was stored before and what is about to be kept; `None` as long as nobody has asked for it.
    received: Option<Vec<Summary>>,
    devices: Vec<Device>,
    closings: &'b [Closing],
    /// Whether each summary is reviewed with those before it, and not all together at the end.
    is_careful: bool,
    has_grown: bool,
}

impl OfPatient<'_> {
    /// What each summary adds, also to those before it. A review of all of them shows that the patient's page can be shown with them; if it
    /// cannot, each is reviewed with those before it, so that only one with which it cannot be shown is refused.
    pub(super) fn look_at(&self, keys: &Keys, today: NaiveDate) -> Found {
        let (found, can_be_shown) = self.all(keys, today, false);
        if can_be_shown { found } else { self.all(keys, today, true).0 }
    }

    fn all(&self, keys: &Keys, today: NaiveDate, is_careful: bool) -> (Found, bool) {
        let mut history = History::of(keys, self, is_careful);
        let one = |arrived: &Arrived<'_>| {
            let looked = self.one(keys, today, arrived, &mut history);
            let (said, to_keep) = looked.map_or_else(|failure| (Err(failure), None), |(said, keep)| (Ok(said), keep));
            Looked { place: arrived.place, said, to_keep }
        };
        let looked = self.arrived.iter().map(one).collect();
        let can_be_shown = is_careful || history.as_ref().map_or(true, History::can_be_shown);
        (Found { looked, line: history.ok().and_then(|history| history.line(today)) }, can_be_shown)
    }

    /// What one summary adds.
    fn one(
        &self,
        keys: &Keys,
        today: NaiveDate,
        arrived: &Arrived<'_>,
        history: &mut ActionResult<History<'_>>,
    ) -> ActionResult<(Said, Option<ToKeep>)> {
        let Arrived { file, unsealed, .. } = arrived;
        let patient = &self.patient;
        let summary = opening::authentic(keys, file, unsealed, patient)?;
        let day = reviewing::day_of(patient, today);
        let history = history.as_mut().map_err(|failure| failure.clone())?;
        let is_stored = history.is_stored(&summary, unsealed.packed());
        let gain = if is_stored { ArrivalEffect::Known } else { gain(history.received()?, &summary, day) };
        let mut notices = Vec::new();
        let ahead_days = reviewing::one_as_known(&summary, day).wrong_clock.ahead_days;
        let revision = numbering::unknown(patient, std::slice::from_ref(&summary));
        let mut kept = None;
        if gain != ArrivalEffect::Known {
            let (new_device, to_keep) = history.add(summary, unsealed.packed(), today)?;
            notices.extend(new_device.map(|device| ReceiptNotice::NewDevice { device }));
            kept = Some(to_keep);
        }
        if let Some(revision) = revision {
            notices
                .push(ReceiptNotice::StoreBehind { revision, next: numbering::next_after(patient, history.received()?)? });
        }
        notices.extend(in_force(history.closings).map(|closing| ReceiptNotice::CaseClosed { on: closing.on }));
        if ahead_days > 0 {
            notices.push(ReceiptNotice::ClockAhead { days: ahead_days });
        }
        let code = patient.code.clone();
        let outcome = match gain {
            ArrivalEffect::New { days } => Outcome::New { code, days },
            ArrivalEffect::Filled { days } => Outcome::Filled { code, days },
            ArrivalEffect::Known => Outcome::Known { code },
        };
        Ok(((outcome, notices), kept))
    }

    fn damaged(&self) -> Failure {
        Failure::RecordDamaged { code: self.patient.code.clone() }
    }
}

impl<'b> History<'b> {
    fn of(keys: &Keys, of: &'b OfPatient<'b>, is_careful: bool) -> ActionResult<History<'b>> {
        let Stored { received, devices, closings } = of.stored.as_ref().map_err(Clone::clone)?;
        let bodies: Option<Vec<Body>> = received.iter().map(|row| rows::open_body(keys, &of.patient, row)).collect();
        let bodies = bodies.ok_or_else(|| of.damaged())?;
        Ok(History { of, bodies, received: None, devices: devices.clone(), closings, is_careful, has_grown: false })
    }

    /// Whether the very same is stored already, so that nothing else of the patient has to be read.
    fn is_stored(&self, summary: &Summary, packed: &[u8]) -> bool {
        let name = (summary.log, summary.counter);
        self.bodies.iter().any(|body| (body.log, body.counter) == name && body.packed == packed)
    }

    fn received(&mut self) -> ActionResult<&mut Vec<Summary>> {
        if self.received.is_none() {
            let read: Result<Vec<Summary>, _> = self.bodies.iter().map(format::summary::read).collect();
            self.received = Some(read.map_err(|_| self.of.damaged())?);
        }
        Ok(self.received.get_or_insert_default())
    }

    /// All summaries, if any was added.
    fn grown(&self) -> Option<&[Summary]> {
        self.received.as_deref().filter(|_| self.has_grown)
    }

    fn can_be_shown(&self) -> bool {
        self.grown().is_none_or(|all| reviewing::could_review(&self.of.patient, &self.of.catalogue, all).is_ok())
    }

    fn line(&self, today: NaiveDate) -> Option<(i64, PatientLine, bool)> {
        let counts = |one: &&Summary| !self.devices.iter().any(|device| device.log == one.log && device.left_out);
        let (line, lasts) = lines::one(&self.of.patient, self.grown()?.iter().filter(counts), self.closings, today).ok()?;
        Some((self.of.patient.row, line, lasts))
    }

    /// Adds a summary that tells something new. Returns its device, if that is to be announced, and what is to be kept. After a failure
    /// everything is as before.
    fn add(&mut self, summary: Summary, packed: &[u8], today: NaiveDate) -> ActionResult<(Option<LogId>, ToKeep)> {
        let (log, counter, of, is_careful) = (summary.log, summary.counter, self.of, self.is_careful);
        let received = self.received()?;
        if received.iter().any(|other| (other.log, other.counter) == (log, counter)) {
            return Err(Failure::SummaryNumberTaken);
        }
        received.push(summary);
        if is_careful && let Err(failure) = reviewing::could_review(&of.patient, &of.catalogue, received) {
            received.pop();
            return Err(failure);
        }
        self.has_grown = true;
        let devices = self.devices.clone();
        let is_new = devices.iter().all(|device| device.log != log);
        if is_new {
            self.devices.push(Device { log, first_seen: Some(today), left_out: false });
        }
        let announced = (is_new && !devices.is_empty()).then_some(log);
        Ok((announced, ToKeep { patient: of.patient.row, log, counter, packed: packed.to_vec(), devices }))
    }
}

/// What a summary adds, as it is to be read today. One that says only what a clock that was ahead recorded is kept as well.
fn gain(received: &[Summary], summary: &Summary, day: Option<DayNumber>) -> ArrivalEffect {
    let raw = union::arrival_effect(received, summary);
    let as_known: Vec<Cow<'_, Summary>> = received.iter().map(|one| reviewing::one_as_known(one, day)).collect();
    let new = reviewing::one_as_known(summary, day);
    let is_plain = |one: &Cow<'_, Summary>| matches!(one, Cow::Borrowed(_));
    // Read as they are written, they were compared already.
    if raw == ArrivalEffect::Known || as_known.iter().all(is_plain) && is_plain(&new) {
        return raw;
    }
    let as_known: Vec<Summary> = as_known.into_iter().map(Cow::into_owned).collect();
    match union::arrival_effect(&as_known, &new) {
        ArrivalEffect::Known => ArrivalEffect::Filled { days: 0 },
        gain => gain,
    }
}
