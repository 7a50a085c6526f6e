//! Sentences of the patient's screens.

mod advice;
pub mod correcting;
mod handed_over;
mod reminders;
mod sway;
mod tray;

use crate::review::upper;
use crate::{Key, Words};
use chrono::{Datelike, NaiveDate};
use exercises::adherence::ItemAdherence;
use exercises::catalogue::{Exercise, Lang};
use exercises::day_string::PartDone;
use exercises::plan::{Item, Leg, Schedule, Side};
use exercises::run::{Run, Share, Work};
use exercises::time::Stamp;

/// From so many minutes on a wait is told in hours.
const HOURS_FROM: i64 = 90;

impl Words {
    /// "Wednesday".
    pub fn weekday(self, day: NaiveDate) -> String {
        const NAMES_WIDTH: [Key; 7] =
            [Key::Monday, Key::Tuesday, Key::Wednesday, Key::Thursday, Key::Friday, Key::Saturday, Key::Sunday];
        upper(self.text(NAMES_WIDTH[day.weekday().num_days_from_monday() as usize]))
    }

    /// "Wednesday, 28 October".
    pub fn weekday_date(self, day: NaiveDate) -> String {
        format!("{}, {}", self.weekday(day), self.date(day))
    }

    /// "In 58 minutes."
    pub fn ahead(self, minutes: i64) -> String {
        if minutes < HOURS_FROM {
            self.fill(Key::AheadMinutes, &[("n", &minutes.max(1))])
        } else {
            self.fill(Key::AheadHours, &[("n", &((minutes + 30) / 60))])
        }
    }

    /// "Next: tomorrow at 09:00."
    pub fn next_on(self, now: Stamp, next: Stamp) -> String {
        let time = self.minute(next.minute());
        if now.date().succ_opt() == Some(next.date()) {
            return self.fill(Key::NextTomorrow, &[("time", &time)]);
        }
        let day = match self.lang {
            Lang::En => self.weekday_date(next.date()),
            Lang::Es => self.weekday_date(next.date()).to_lowercase(),
        };
        self.fill(Key::NextOn, &[("day", &day), ("time", &time)])
    }

    /// "3 holds of 10 seconds, both sides"; where each side gets it, that is said.
    pub fn dose_of(self, item: &Item) -> String {
        let dose = self.dose(item.dose);
        match item.side {
            Side::Neither => dose,
            side => format!("{dose}, {}", self.side(side)),
        }
    }

    /// The rung's name, where the exercise has more than one.
    pub fn rung_of(self, item: &Item, exercise: &Exercise) -> Option<String> {
        let only = exercise.ladders.iter().map(|ladder| ladder.rungs.len()).sum::<usize>() <= 1;
        let rung = exercise.rung(item.rung.as_ref()?)?;
        (!only).then(|| rung.text(self.lang).map(|texts| texts.name.clone())).flatten()
    }

    /// "Monday to Friday, every hour from 09:00 to 17:00", at the beginning of a line.
    pub fn phrase_schedule(self, schedule: &Schedule) -> String {
        upper(&self.schedule(schedule))
    }

    /// "Left leg".
    pub fn stand_on(self, leg: Leg) -> &'static str {
        self.text(match leg {
            Leg::Left => Key::StandOnLeft,
            Leg::Right => Key::StandOnRight,
        })
    }

    /// "left"; empty where there are no sides.
    pub fn side_of_part(self, leg: Option<Leg>) -> String {
        leg.map(|leg| self.leg_short(leg).to_owned()).unwrap_or_default()
    }

    /// "Hold 2 of 3, left".
    pub fn with_side(self, part: String, leg: Option<Leg>) -> String {
        match leg {
            Some(leg) => format!("{part}, {}", self.leg_short(leg)),
            None => part,
        }
    }

    /// "Firm floor, eyes open"; empty where nothing is stood on.
    pub fn conditions(self, work: &Work) -> String {
        match work {
            Work::Balance(balance) => upper(&format!("{}, {}", self.surface(balance.surface), self.eyes(balance.eyes))),
            Work::Hold(_) | Work::Reps(_) => String::new(),
        }
    }

    /// "12.3", of milliseconds. Cut and not rounded, so that nobody reads 30 who did not reach it.
    pub fn seconds(self, ms: u32) -> String {
        self.number(f64::from(ms / 100) / 10.0)
    }

    /// "2 of 3 holds held to the end."
    pub fn done_of(self, run: &Run, parts: Share) -> String {
        let key = match run.work {
            Work::Hold(_) => Key::DoneHolds,
            Work::Reps(_) => Key::DoneReps,
            Work::Balance(_) => Key::DoneTries,
        };
        let done = self.fill(key, &[("done", &parts.done), ("of", &parts.of)]);
        match &run.work {
            Work::Reps(sets) if sets.iter().any(|set| set.failed > 0) => {
                let failed: u32 = sets.iter().map(|set| u32::from(set.failed)).sum();
                format!("{done} {}", self.fill(Key::DoneFailed, &[("n", &failed)]))
            }
            _ => done,
        }
    }

    /// "held in full", "4 of 10 s", "12.3 s".
    pub fn part_done(self, done: PartDone) -> String {
        match done {
            PartDone::Held(ms, of) if ms >= of => self.text(Key::PartHeld).to_owned(),
            PartDone::Held(ms, of) => self.fill(Key::PartHeldSo, &[("s", &self.seconds(ms)), ("of", &(of / 1000))]),
            PartDone::Counted(n, of) => self.fill(Key::PartCounted, &[("n", &n), ("of", &of)]),
            PartDone::Stood(ms, false) => self.fill(Key::SecondsShort, &[("s", &self.seconds(ms))]),
            PartDone::Stood(ms, true) => self.fill(Key::AtLeastSeconds, &[("s", &self.seconds(ms))]),
            PartDone::CutOff => self.text(Key::PartCutOff).to_owned(),
            PartDone::Not => self.text(Key::PartNot).to_owned(),
        }
    }

    /// What is different on the item's rung, where the exercise has more than one.
    pub fn change_of(self, item: &Item, exercise: &Exercise) -> Option<String> {
        self.rung_of(item, exercise)?;
        let rung = exercise.rung(item.rung.as_ref()?)?;
        rung.text(self.lang).map(|texts| self.fill(Key::OnThisRung, &[("change", &texts.change)]))
    }

    /// "96 of 180 done."; nothing where nothing was asked for.
    pub fn done_plainly(self, item: &ItemAdherence) -> Option<String> {
        item.kept.map(|kept| self.fill(Key::DonePlainly, &[("k", &kept.k), ("n", &kept.n)]))
    }

    /// "your middle value this week: 14 s; aim 30 s".
    pub fn own_and_aim(self, own_ms: Option<u32>, aim_s: u32) -> String {
        match own_ms {
            Some(own) => self.fill(Key::OwnAndAim, &[("own", &self.seconds(own)), ("aim", &aim_s)]),
            None => self.fill(Key::OnlyAim, &[("aim", &aim_s)]),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    const EN: Words = Words::new(Lang::En);
    const ES: Words = Words::new(Lang::Es);
    /// 14:02 on Wednesday 25 February 2026, at UTC+1.
    const NOW: Stamp = Stamp { utc_ms: 1_772_024_520_000, offset_s: 3600 };

    #[test]
    fn the_next_one_by_day() {
        let tomorrow = NOW.plus_ms((18 * 60 + 58) * 60_000);
        assert_eq!(EN.next_on(NOW, tomorrow), "Next: tomorrow at 09:00.");
        let monday = NOW.plus_ms((4 * 24 * 60 + 18 * 60 + 58) * 60_000);
        assert_eq!(EN.next_on(NOW, monday), "Next: Monday, 2 March at 09:00.");
        assert_eq!(ES.next_on(NOW, monday), "Lo siguiente: lunes, 2 de marzo a las 09:00.");
    }

    #[test]
    fn a_wait_in_minutes_and_in_hours() {
        let said = [0, 1, 58, 89, 90, 200].map(|minutes| EN.ahead(minutes));
        let expected =
            ["In a minute.", "In a minute.", "In 58 minutes.", "In 89 minutes.", "In about 2 hours.", "In about 3 hours."];
        assert_eq!(said, expected);
    }

    #[test]
    fn seconds_are_cut_and_not_rounded() {
        assert_eq!([29_990, 30_000, 12_340].map(|ms| EN.seconds(ms)), ["29.9", "30", "12.3"]);
        assert_eq!(ES.seconds(12_340), "12,3");
    }
}
