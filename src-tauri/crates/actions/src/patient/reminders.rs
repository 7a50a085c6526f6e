//! The person's settings for reminders, and the list of coming reminders.

use super::plans::{self, FollowedPlan};
use crate::{ActionResult, DataFolder, Moment, refuse};
use exercises::remind::{
    self, MAX_MEETING, MAX_QUIET, Meeting, PlanInForce, ReminderContext, Settings, Span, UpcomingReminder,
};
use exercises::time::Stamp;
use std::sync::Arc;
use store::table::setting;
use wire::Failure;
use wire::app::Role;
use wire::device::{MeetingRequest, QuietTimesRequest, Reminders};

const REMINDERS: &str = "reminders";
/// How far ahead the next reminder is looked for, in hours: two weeks.
const LOOK_AHEAD_HOURS: u16 = 14 * 24;

/// The person's settings; without any, no quiet times and no meeting.
pub(crate) fn settings(folder: &DataFolder) -> ActionResult<Settings> {
    folder.require_role(Role::Patient)?;
    Ok(folder.setting(REMINDERS)?.map_or_else(Settings::default, |text| format::reminders::read(&text)))
}

fn keep(folder: &mut DataFolder, settings: &Settings) -> ActionResult<()> {
    let dir = folder.dir();
    let text = format::reminders::write(settings);
    folder.home.store_mut().transaction(|tx| setting::put(tx, REMINDERS, &text)).map_err(refuse::store(&dir))
}

/// The input of the reminder rules.
pub(crate) fn reminder_context<'a>(
    followed: &'a [Arc<FollowedPlan>],
    settings: &'a Settings,
    moment: &'a Moment,
) -> ReminderContext<'a> {
    let of = followed.iter().map(|one| PlanInForce { followed: &one.followed, catalogue: &one.catalogue });
    ReminderContext::new(of.collect(), settings, &moment.zone)
}

/// The state of the reminders.
pub fn show(folder: &DataFolder, moment: &Moment) -> ActionResult<Reminders> {
    let settings = settings(folder)?;
    let followed = plans::all_at(folder, moment)?;
    let next = remind::upcoming(reminder_context(&followed, &settings, moment), moment.now, LOOK_AHEAD_HOURS)
        .first()
        .map(|one| one.at);
    Ok(Reminders {
        meeting_until: meeting_until(&settings, moment),
        silent: settings.is_silent(moment.now),
        silent_until: settings.silent_until(moment.now, &moment.zone),
        next,
        quiet: settings.quiet,
    })
}

/// When the current meeting ends, by the clock of the person's present place; `None` if there is no meeting.
pub(super) fn meeting_until(settings: &Settings, moment: &Moment) -> Option<Stamp> {
    settings.meeting_at(moment.now).map(|meeting| moment.zone.stamp(meeting.until.utc_ms))
}

/// Replaces the quiet times.
///
/// # Errors
/// [`Failure::QuietUnfit`] for too many, or for one that is not valid; then nothing changes.
pub fn set(folder: &mut DataFolder, moment: &Moment, request: &QuietTimesRequest) -> ActionResult<Reminders> {
    let mut quiet = request.quiet.clone();
    quiet.sort();
    quiet.dedup();
    if quiet.len() > MAX_QUIET || !quiet.iter().all(|span| span.fits()) {
        return Err(unfit());
    }
    let settings = Settings { quiet, ..settings(folder)? };
    keep(folder, &settings)?;
    show(folder, moment)
}

/// Reads quiet times as they were typed.
///
/// # Errors
/// [`Failure::QuietUnfit`] for the first that is not valid.
pub fn typed(texts: &[String]) -> ActionResult<Vec<Span>> {
    texts.iter().map(|text| format::reminders::span(text).ok_or_else(unfit)).collect()
}

fn unfit() -> Failure {
    Failure::QuietUnfit { most: MAX_QUIET as u8 }
}

/// Starts a meeting now, or ends one.
///
/// # Errors
/// [`Failure::OutOfRange`] for 0 or too many minutes.
pub fn meeting(folder: &mut DataFolder, moment: &Moment, request: MeetingRequest) -> ActionResult<Reminders> {
    let meeting = match request.minutes {
        None => None,
        Some(minutes) if (1..=MAX_MEETING).contains(&minutes) => {
            let until: Stamp = moment.zone.stamp(moment.now.utc_ms + i64::from(minutes) * 60_000);
            Some(Meeting { from: moment.now, until })
        }
        Some(_) => return Err(Failure::OutOfRange { least: 1, most: MAX_MEETING.into() }),
    };
    let settings = Settings { meeting, ..settings(folder)? };
    keep(folder, &settings)?;
    show(folder, moment)
}

/// Changes the quiet times, the meeting, or both, either completely or not at all. Returns the new state of the reminders.
pub fn change(
    folder: &mut DataFolder,
    moment: &Moment,
    quiet: Option<&QuietTimesRequest>,
    request: Option<MeetingRequest>,
) -> ActionResult<Reminders> {
    folder.all_or_nothing(|folder| {
        if let Some(quiet) = quiet {
            set(folder, moment, quiet)?;
        }
        match request {
            Some(request) => meeting(folder, moment, request),
            None => show(folder, moment),
        }
    })
}

/// The reminders of the next `hours` if nothing happens, for a system that shows them by itself; at most [`remind::MAX_AHEAD`].
pub fn upcoming(folder: &DataFolder, moment: &Moment, hours: u16) -> ActionResult<Vec<UpcomingReminder>> {
    let settings = settings(folder)?;
    let followed = plans::all_at(folder, moment)?;
    Ok(remind::upcoming(reminder_context(&followed, &settings, moment), moment.now, hours))
}
