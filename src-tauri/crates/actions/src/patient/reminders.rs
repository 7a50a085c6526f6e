//! What a person chooses about reminders, and which ones would come.

use super::plans::{self, Carried};
use crate::{Answer, House, Moment, refuse};
use exercises::remind::{self, Coming, Lookout, MAX_MEETING, MAX_QUIET, Meeting, Of, Settings, Span};
use exercises::time::Stamp;
use std::sync::Arc;
use store::table::setting;
use wire::Failure;
use wire::house::Role;
use wire::own::{MeetingAsk, QuietTimes, Reminders};

const REMINDERS: &str = "reminders";
/// The next reminder is looked for so many hours ahead: two weeks.
const LOOK_AHEAD_HOURS: u16 = 14 * 24;

/// What was chosen; nothing yet is no quiet times and no meeting.
pub(crate) fn settings(house: &House) -> Answer<Settings> {
    house.must_be(Role::Patient)?;
    Ok(house.setting(REMINDERS)?.map_or_else(Settings::default, |text| format::reminders::read(&text)))
}

fn keep(house: &mut House, settings: &Settings) -> Answer<()> {
    let dir = house.dir();
    let text = format::reminders::write(settings);
    house.home.store_mut().transaction(|tx| setting::put(tx, REMINDERS, &text)).map_err(refuse::store(&dir))
}

/// What the rules look at.
pub(crate) fn lookout<'a>(carried: &'a [Arc<Carried>], settings: &'a Settings, moment: &'a Moment) -> Lookout<'a> {
    let of = carried.iter().map(|one| Of { followed: &one.followed, catalogue: &one.catalogue });
    Lookout::new(of.collect(), settings, &moment.zone)
}

/// How reminders stand.
pub fn show(house: &House, moment: &Moment) -> Answer<Reminders> {
    let settings = settings(house)?;
    let carried = plans::all(house)?;
    let next = remind::ahead(lookout(&carried, &settings, moment), moment.now, LOOK_AHEAD_HOURS).first().map(|one| one.at);
    Ok(Reminders {
        meeting_until: meeting_until(&settings, moment),
        silent: settings.silent(moment.now),
        silent_until: settings.silent_until(moment.now, &moment.zone),
        next,
        quiet: settings.quiet,
    })
}

/// Until when the meeting that goes on lasts, by the clocks of where the person is now.
pub(super) fn meeting_until(settings: &Settings, moment: &Moment) -> Option<Stamp> {
    settings.meeting_at(moment.now).map(|meeting| moment.zone.stamp(meeting.until.utc_ms))
}

/// Other quiet times, in place of those before.
///
/// # Errors
/// [`Failure::QuietUnfit`] for too many, or for one that is none; those before stay.
pub fn set(house: &mut House, moment: &Moment, ask: &QuietTimes) -> Answer<Reminders> {
    let mut quiet = ask.quiet.clone();
    quiet.sort();
    quiet.dedup();
    if quiet.len() > MAX_QUIET || !quiet.iter().all(|span| span.fits()) {
        return Err(unfit());
    }
    let settings = Settings { quiet, ..settings(house)? };
    keep(house, &settings)?;
    show(house, moment)
}

/// Quiet times as they are typed.
///
/// # Errors
/// [`Failure::QuietUnfit`] for the first that is none.
pub fn typed(texts: &[String]) -> Answer<Vec<Span>> {
    texts.iter().map(|text| format::reminders::span(text).ok_or_else(unfit)).collect()
}

fn unfit() -> Failure {
    Failure::QuietUnfit { most: MAX_QUIET as u8 }
}

/// A meeting from now on, or the end of one.
///
/// # Errors
/// [`Failure::OutOfRange`] for one of no or too many minutes.
pub fn meeting(house: &mut House, moment: &Moment, ask: MeetingAsk) -> Answer<Reminders> {
    let meeting = match ask.minutes {
        None => None,
        Some(minutes) if (1..=MAX_MEETING).contains(&minutes) => {
            let until: Stamp = moment.zone.stamp(moment.now.utc_ms + i64::from(minutes) * 60_000);
            Some(Meeting { from: moment.now, until })
        }
        Some(_) => return Err(Failure::OutOfRange { least: 1, most: MAX_MEETING.into() }),
    };
    let settings = Settings { meeting, ..settings(house)? };
    keep(house, &settings)?;
    show(house, moment)
}

/// Other quiet times, a meeting, both or neither: all of it or nothing. How reminders stand then.
pub fn change(house: &mut House, moment: &Moment, quiet: Option<&QuietTimes>, ask: Option<MeetingAsk>) -> Answer<Reminders> {
    house.all_or_nothing(|house| {
        if let Some(quiet) = quiet {
            set(house, moment, quiet)?;
        }
        match ask {
            Some(ask) => meeting(house, moment, ask),
            None => show(house, moment),
        }
    })
}

/// The reminders of the next `hours` if nothing happens, for a system that shows them by itself; at most
/// [`remind::MAX_AHEAD`].
pub fn ahead(house: &House, moment: &Moment, hours: u16) -> Answer<Vec<Coming>> {
    let settings = settings(house)?;
    let carried = plans::all(house)?;
    Ok(remind::ahead(lookout(&carried, &settings, moment), moment.now, hours))
}
