//! The sample for looking around without a card: a temporary data folder that follows a sample plan, so that every screen is the
//! real one.

use super::taking;
use crate::{ActionResult, DataFolder, Moment, platform, refuse};
use chrono::Duration;
use exercises::plan::{Header, Plan};
use std::path::Path;
use wire::app::Role;
use words::{Key, Locale};

/// Days from today to the sample's visit.
const DAYS: i64 = 28;
/// How long before the present moment the sample's card was taken, in milliseconds.
const TAKEN_MS: i64 = 65 * 60 * 1000;

/// Creates a data folder in `dir` that follows the sample plan from `moment` on. The caller has to remove the folder.
///
/// # Errors
/// Any failure to create the folder.
pub fn open(dir: &Path, moment: &Moment, locale: Locale) -> ActionResult<DataFolder> {
    let mut folder = DataFolder::open(dir, true)?;
    folder.set_locale(Some(locale))?;
    folder.choose_role(Role::Patient)?;
    // The clinic exists only for this call: the card is read and checked like any other, and nobody can issue another one.
    let clinic = vault::keys::for_now();
    let card = vault::card::of_clinic(&clinic, plan(&folder, moment, locale)?, vault::random::pairing_secret(), Vec::new());
    let card = vault::card::issue(&clinic, &card).map_err(refuse::internal)?;
    let card = taking::check(&[&card], &folder.catalogue)?;
    // The card was taken a while ago, so that a slot is open at the present hour.
    let earlier = Moment { now: moment.zone.stamp(moment.now.utc_ms - TAKEN_MS), zone: moment.zone.clone() };
    card.take(&mut folder, &earlier, &[])?;
    folder.is_sample = true;
    Ok(folder)
}

fn plan(folder: &DataFolder, moment: &Moment, locale: Locale) -> ActionResult<Plan> {
    let today = moment.now.date();
    let words = platform::words(locale);
    let mut text = include_str!("sample.toml").replace("REVIEW", &(today + Duration::days(DAYS)).to_string());
    for (place, name) in [("BACK", Key::SampleBack), ("ANKLE", Key::SampleAnkle), ("MEETING", Key::SampleMeeting)] {
        text = text.replace(place, words.text(name));
    }
    let prescription = format::plan_file::read(&text, today).map_err(|fault| refuse::internal(format!("{fault:?}")))?;
    let header = Header::first(vault::random::plan_id(), words.text(Key::SampleClinic), today);
    let mut plan = Plan { header, prescription };
    for item in &mut plan.prescription.items {
        if let Some(exercise) = folder.catalogue().get(&item.exercise) {
            item.content = exercise.revision;
            item.rung = item.rung.take().or(exercise.first_rung().map(|rung| rung.id.clone()));
        }
    }
    Ok(plan)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::{clock, zone};

    #[test]
    fn the_sample_is_followed_in_every_language_and_marked() {
        for locale in Locale::ALL {
            let folder = tempfile::tempdir().expect("there is room for temporary files");
            let ten = chrono::DateTime::parse_from_rfc3339("2026-11-25T10:00:00+01:00").expect("an instant");
            let moment = clock::at(ten.timestamp_millis(), zone::named("Europe/Vienna").expect("a zone"));
            let mut folder = open(folder.path(), &moment, *locale).expect("the sample is sound");
            let situation = folder.app_state(&moment).expect("it is open");
            assert!(situation.sample && situation.has_plan && situation.locale == locale.tag());
            let today = crate::patient::today::page(&folder, &moment).expect("it has a day");
            assert!(matches!(today.head, exercises::today::Head::Due { .. }), "there is something to do at once");
            assert_eq!(today.items.len(), 3, "one of each kind");
        }
    }
}
