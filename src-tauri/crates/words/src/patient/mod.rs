//! Sentences of the patient's screens.

mod advice;
pub mod correcting;
mod handed_over;
mod part;
mod reminders;
mod sway;
mod tray;

use crate::date::upper;
use crate::review::Names;
use crate::{Key, Number, Words};
use chrono::NaiveDate;
use exercises::adherence::{DoseUnit, ItemAdherence};
use exercises::catalogue::Exercise;
use exercises::change::PainVerdict;
use exercises::day_string::PartDone;
use exercises::plan::{Band, BodySide, Item, Load, Schedule, Side};
use exercises::review::{Compared, Review, ThenAndNow};
use exercises::run::{Balance, Run, Share, Work};
use exercises::time::Stamp;

/// Waits of this many minutes or more are given in hours.
const HOURS_FROM: i64 = 90;
/// Milliseconds in a minute.
const MINUTE_MS: u32 = 60_000;

impl Words {
    /// "In 58 minutes."
    pub fn ahead(self, minutes: i64) -> String {
        if minutes < HOURS_FROM { self.ahead_minutes(minutes.max(1)) } else { self.ahead_hours((minutes + 30) / 60) }
    }

    /// "Next: tomorrow at 09:00."
    pub fn next_on(self, now: Stamp, next: Stamp) -> String {
        let time = self.minute_inline(next.minute());
        if now.date().succ_opt() == Some(next.date()) {
            return self.next_tomorrow(&time);
        }
        self.next_on_day(&self.weekday_date_inline(next.date()), &time)
    }

    /// "3 holds of 10 seconds, both sides, with 2.5 kg"; the side is added if the exercise has sides.
    pub fn dose_of(self, item: &Item) -> String {
        let helper = item.with_helper.then(|| self.text(Key::HelperBesideYou).to_owned());
        self.commas(&[vec![self.dose_and_side(item)], self.demands(item), helper.into_iter().collect()].concat())
    }

    /// The same for the clinician, who is not the one beside whom somebody is.
    pub fn dose_prescribed(self, item: &Item) -> String {
        let helper = item.with_helper.then(|| self.text(Key::HelperBesidePatient).to_owned());
        self.commas(&[vec![self.dose_and_side(item)], self.demands(item), helper.into_iter().collect()].concat())
    }

    /// What an item is done with, for the beginning of a run: "With 2.5 kg, with somebody beside you"; `None` if with nothing.
    pub fn done_with(self, item: &Item) -> Option<String> {
        let helper = item.with_helper.then(|| self.text(Key::HelperBesideYou).to_owned());
        let all = [self.demands(item), helper.into_iter().collect()].concat();
        (!all.is_empty()).then(|| upper(&self.commas(&all)))
    }

    /// "with 2.5 kg" and "effort about 4 of 10", as far as they are prescribed.
    fn demands(self, item: &Item) -> Vec<String> {
        let load = item.load.map(|load| self.load(load));
        load.into_iter().chain(item.effort.map(|effort| self.aimed_effort(effort))).collect()
    }

    /// "with 2.5 kg".
    pub fn load(self, load: Load) -> String {
        match load {
            Load::Weight(weight) => self.load_weight(Number::rounded(weight.kilograms(), 2)),
            Load::Band(band) => self.text(self.band(band)).to_owned(),
        }
    }

    fn band(self, band: Band) -> Key {
        match band {
            Band::Light => Key::BandLight,
            Band::Medium => Key::BandMedium,
            Band::Strong => Key::BandStrong,
            Band::ExtraStrong => Key::BandExtraStrong,
        }
    }

    fn dose_and_side(self, item: &Item) -> String {
        let dose = self.dose(item.dose);
        match item.side {
            Side::Neither => dose,
            Side::Left => self.dose_with_side(&dose, self.of_side(BodySide::Left)),
            Side::Right => self.dose_with_side(&dose, self.of_side(BodySide::Right)),
            Side::Both | Side::Alternating => self.dose_with_side(&dose, self.side(item.side)),
        }
    }

    /// The level's name, if the exercise has more than one.
    pub fn rung_of(self, item: &Item, exercise: &Exercise) -> Option<String> {
        let only = exercise.ladders.iter().map(|ladder| ladder.rungs.len()).sum::<usize>() <= 1;
        let rung = exercise.rung(item.rung.as_ref()?)?;
        (!only).then(|| rung.text(self.lang()).map(|texts| texts.name.clone())).flatten()
    }

    /// "Monday to Friday, every hour from 09:00 to 17:00", at the beginning of a line.
    pub fn phrase_schedule(self, schedule: &Schedule) -> String {
        upper(&self.schedule(schedule))
    }

    /// "Left leg".
    pub fn stand_on(self, leg: BodySide) -> &'static str {
        self.text(match leg {
            BodySide::Left => Key::StandOnLeft,
            BodySide::Right => Key::StandOnRight,
        })
    }

    /// "Left leg", or "Both feet on the floor".
    pub fn stood_on(self, leg: Option<BodySide>) -> &'static str {
        leg.map_or_else(|| self.text(Key::StandOnBoth), |leg| self.stand_on(leg))
    }

    /// "left side". "Left" alone, after a number or "not done", could be read as "remaining".
    fn of_side(self, leg: BodySide) -> &'static str {
        self.text(match leg {
            BodySide::Left => Key::LeftSide,
            BodySide::Right => Key::RightSide,
        })
    }

    /// "left side"; empty if there are no sides.
    pub fn side_of_part(self, leg: Option<BodySide>) -> String {
        leg.map(|leg| self.of_side(leg).to_owned()).unwrap_or_default()
    }

    /// "Hold 2 of 3, left side".
    pub fn with_side(self, part: String, leg: Option<BodySide>) -> String {
        match leg {
            Some(leg) if part.is_empty() => upper(self.of_side(leg)),
            Some(leg) => self.name_with_side(&part, self.of_side(leg)),
            None => part,
        }
    }

    /// "Firm floor, eyes open"; empty for an exercise other than a stance.
    pub fn conditions(self, work: &Work) -> String {
        let said = |balance: &Balance| upper(&self.surface_and_eyes(self.surface(balance.surface), self.eyes(balance.eyes)));
        work.balance().map(said).unwrap_or_default()
    }

    /// Milliseconds shown as seconds: "12.3". Truncated and not rounded, so that a time just below 30 is not shown as 30.
    pub fn seconds(self, ms: u32) -> Number {
        self.number(f64::from(ms / 100) / 10.0)
    }

    /// "2 of 3 holds completed.", for an item done on that many sides.
    pub fn done_of(self, run: &Run, sides: u32) -> String {
        let parts = run.parts(sides);
        let done = self.parts_done(run.dose.kind(), parts.done, parts.of);
        match &run.work {
            Work::Timed(_) if run.dose.kind().rules().unit() == DoseUnit::Minutes => {
                let Share { done, of } = run.share(sides);
                self.done_minutes(of / MINUTE_MS, done / MINUTE_MS)
            }
            Work::Counted(sets) if sets.iter().any(|set| set.failed > 0) => {
                let failed: u32 = sets.iter().map(|set| u32::from(set.failed)).sum();
                self.two_sentences(&done, &self.done_failed(failed))
            }
            _ => done,
        }
    }

    /// "held in full", "4 of 10 s", "12.3 s".
    pub fn part_done(self, done: PartDone) -> String {
        match done {
            PartDone::Lasted(ms, of) => self.part_minutes(ms / MINUTE_MS, of / MINUTE_MS),
            PartDone::Held(ms, of) if ms >= of => self.text(Key::PartHeld).to_owned(),
            PartDone::Held(ms, of) => self.part_held_partly(self.seconds(ms), of / 1000),
            PartDone::Counted(n, of) => self.part_counted(n, of),
            PartDone::Stood(ms, false) => self.seconds_short(self.seconds(ms)),
            PartDone::Stood(ms, true) => self.seconds_target_reached(self.seconds(ms)),
            PartDone::Tallied(Some(count), ms, of) if ms >= of => self.part_tallied(count, of / 1000),
            PartDone::Tallied(count, ms, _) => self.part_tallied_partly(count.unwrap_or_default(), ms / 1000),
            PartDone::CutOff => self.text(Key::PartInterrupted).to_owned(),
            PartDone::Not => self.text(Key::PartNotDone).to_owned(),
        }
    }

    /// What is different at the item's level, if the exercise has more than one.
    pub fn change_of(self, item: &Item, exercise: &Exercise) -> Option<String> {
        self.rung_of(item, exercise)?;
        let rung = exercise.rung(item.rung.as_ref()?)?;
        rung.text(self.lang()).map(|texts| self.at_this_level(&texts.change))
    }

    /// "96 of 180 done. 2 extra sessions."; `None` if nothing was asked for and nothing was done.
    pub fn done_plainly(self, item: &ItemAdherence) -> Option<String> {
        let kept = item.kept.map(|kept| match item.slots.partly {
            0 => self.done_count(kept.k, kept.n),
            partly => self.done_count_partly(kept.k, kept.n, partly),
        });
        let extra = (item.extra.runs > 0).then(|| self.extra_plainly(item.extra.runs));
        let needed = item.as_needed.filter(|done| done.runs > 0).map(|done| self.as_needed_plainly(done.runs));
        let said: Vec<String> = [kept, needed, extra].into_iter().flatten().collect();
        (!said.is_empty()).then(|| self.sentences(&said))
    }

    /// The record in one or two sentences: how much was done lately, and a clear change of pain. `None` before anything was owed.
    pub fn record_in_short(self, review: &Review, names: Names<'_>) -> Option<String> {
        let counts = |item: &&ItemAdherence| item.in_force && names.is_exercise(item.item);
        let lately = review.adherence.iter().filter(counts).filter_map(|item| item.last14);
        let (k, n) = lately.fold((0, 0), |(k, n), lately| (k + lately.done.k, n + lately.done.n));
        let done = (n > 0).then(|| self.record_last_14_days(n, k))?;
        let changed = |verdict| review.pain.iter().find(|series| series.change.verdict == verdict);
        let pain = match (changed(PainVerdict::Worse), changed(PainVerdict::Better)) {
            (Some(worse), _) => self.record_pain_higher(&names.complaint(worse.complaint)),
            (None, Some(better)) => self.record_pain_lower(&names.complaint(better.complaint)),
            (None, None) => return Some(done),
        };
        Some(self.two_sentences(&done, &pain))
    }

    /// That other devices are not counted, where an exercise was asked for and never done although others were: it may have been
    /// done on another one.
    pub fn other_device_not_counted(self, review: &Review) -> Option<&'static str> {
        let done = |item: &ItemAdherence| {
            item.last_done.is_some() || item.extra.runs > 0 || item.as_needed.is_some_and(|done| done.runs > 0)
        };
        let items = &review.adherence;
        let never = items.iter().any(|item| item.in_force && item.kept.is_some() && !done(item));
        (never && items.iter().any(done)).then(|| self.text(Key::RecordOtherDevice))
    }

    /// The name of what is compared on "Then and now", and both values.
    pub fn then_and_now_row(self, row: &ThenAndNow<'_>, names: Names<'_>) -> (String, String, String) {
        let value = |value: f64| match row.what {
            Compared::Stance(_) => self.seconds_short(self.number(value)),
            Compared::Activity(_) | Compared::Morning(_) => self.shown(self.number(value)),
        };
        let name = match row.what {
            Compared::Stance(series) => {
                let leg = series.leg.map(|leg| self.leg(leg));
                let name = names.exercise(&series.exercise);
                leg.map_or(name.clone(), |leg| self.list_comma(&name, leg))
            }
            Compared::Activity(id) => upper(&names.activity(id)),
            Compared::Morning(id) => self.then_and_now_mornings(&names.complaint(id)),
        };
        (name, value(row.then), value(row.now))
    }

    /// The warning that the device's clock is behind the record: with the day of the last entry, and today's date by the clock.
    pub fn clock_is_behind(self, last: NaiveDate, today: NaiveDate) -> String {
        self.clock_behind(&self.date(last), &self.date(today))
    }

    /// "your usual this week: 14 s; target 30 s".
    pub fn own_and_aim(self, own_ms: Option<u32>, aim_s: u32) -> String {
        match own_ms {
            Some(own) => self.usual_and_target(self.seconds(own), aim_s),
            None => self.target_only(aim_s),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::Locale;

    const EN: Words = Words::new(Locale::En);
    const ES: Words = Words::new(Locale::Es);
    /// 14:02 on Wednesday 25 February 2026, at UTC+1.
    const NOW: Stamp = Stamp { utc_ms: 1_772_024_520_000, offset_s: 3600 };

    #[test]
    fn the_next_one_by_day() {
        let tomorrow = NOW.plus_ms((18 * 60 + 58) * 60_000);
        assert_eq!(EN.next_on(NOW, tomorrow), "Next: tomorrow at 09:00.");
        let monday = NOW.plus_ms((4 * 24 * 60 + 18 * 60 + 58) * 60_000);
        assert_eq!(EN.next_on(NOW, monday), "Next: Monday 2 March at 09:00.");
        assert_eq!(ES.next_on(NOW, monday), "Siguiente: el lunes 2 de marzo a las 09:00.");
    }

    #[test]
    fn a_side_cannot_be_read_as_remaining() {
        let said = |words: Words| words.with_side(words.part_done(PartDone::Not), Some(BodySide::Left));
        assert_eq!([said(EN), said(ES)], ["not done, left side", "sin hacer, lado izquierdo"]);
        assert_eq!(EN.with_side("Hold 2 of 3".into(), Some(BodySide::Right)), "Hold 2 of 3, right side");
        assert_eq!(EN.side_of_part(None), "");
    }

    #[test]
    fn the_warning_about_a_slow_clock_names_both_days() {
        let (last, today) = (NOW.date(), NOW.date().pred_opt().expect("a day before"));
        assert!(
            EN.clock_is_behind(last, today)
                .starts_with("The last entry here is from 25 February, but this device says that today is 24")
        );
        assert!(ES.clock_is_behind(last, today).contains("25 de febrero"), "{}", ES.clock_is_behind(last, today));
    }

    #[test]
    fn a_wait_in_minutes_and_in_hours() {
        let said = [0, 1, 58, 89, 90, 200].map(|minutes| EN.ahead(minutes));
        let expected =
            ["In a minute.", "In a minute.", "In 58 minutes.", "In 89 minutes.", "In about 2 hours.", "In about 3 hours."];
        assert_eq!(said, expected);
    }

    #[test]
    fn seconds_are_truncated_and_not_rounded() {
        assert_eq!([29_990, 30_000, 12_340].map(|ms| EN.shown(EN.seconds(ms))), ["29.9", "30", "12.3"]);
        assert_eq!(ES.shown(ES.seconds(12_340)), "12,3");
    }

    /// The sentence above the record for this verdict on pain, and this number of sessions done lately out of those owed.
    fn in_short(words: Words, verdict: PainVerdict, lately: &[(u32, u32)]) -> Option<String> {
        let page = crate::review::samples::page();
        let mut review = page.review.clone().expect("a summary was received");
        review.pain[0].change.verdict = verdict;
        for (item, lately) in review.adherence.iter_mut().zip(lately) {
            let last14 = item.last14.as_mut().expect("owed lately");
            (last14.done.k, last14.done.n) = *lately;
        }
        if lately.is_empty() {
            review.adherence.iter_mut().for_each(|item| item.last14 = None);
        }
        words.record_in_short(&review, Names::of(words, &page))
    }

    #[test]
    fn the_record_in_short_says_how_much_was_done_and_a_clear_change_of_pain() {
        let some = [(3, 40), (4, 7)];
        let said = |verdict| in_short(EN, verdict, &some).expect("something was owed");
        let done = "In the last 14 days you did 7 of 47 sessions, at least in part.";
        for unclear in [PainVerdict::NoClearChange, PainVerdict::NotKnownLately, PainVerdict::TooFewRatings] {
            assert_eq!(said(unclear), done, "{unclear:?}");
        }
        let better = said(PainVerdict::Better);
        assert!(
            better.starts_with(done) && better.contains("lower than at first") && better.contains("upper back"),
            "{better}"
        );
        let worse = said(PainVerdict::Worse);
        assert!(worse.starts_with(done) && worse.contains("higher than at first"), "{worse}");
        assert!(worse.ends_with("Talk about it at your visit."), "{worse}");
        let spanish = in_short(ES, PainVerdict::Worse, &some).expect("something was owed");
        assert!(spanish.contains("47") && spanish.contains('7') && !spanish.contains('{'), "{spanish}");
        let one = in_short(EN, PainVerdict::NoClearChange, &[(1, 1), (0, 0)]);
        assert_eq!(one.as_deref(), Some("In the last 14 days you did 1 of 1 session, at least in part."));
    }

    #[test]
    fn other_devices_are_named_where_one_exercise_was_never_done_and_another_was() {
        let mut review = crate::review::samples::page().review.expect("a summary was received");
        assert_eq!(EN.other_device_not_counted(&review), None, "all were done");
        let never = |item: &mut ItemAdherence| {
            (item.last_done, item.as_needed) = (None, None);
            item.extra.runs = 0;
        };
        never(&mut review.adherence[0]);
        assert_eq!(EN.other_device_not_counted(&review), Some("What you did on another device is not counted here."));
        assert_eq!(ES.other_device_not_counted(&review), Some("Lo que hizo en otro dispositivo no se cuenta aquí."));
        review.adherence.iter_mut().for_each(never);
        assert_eq!(EN.other_device_not_counted(&review), None, "none was done");
    }

    #[test]
    fn before_anything_was_owed_there_is_no_record_in_short() {
        assert_eq!(in_short(EN, PainVerdict::Better, &[]), None);
        assert_eq!(in_short(EN, PainVerdict::Better, &[(0, 0), (0, 0)]), None);
    }

    #[test]
    fn a_dose_says_what_it_is_done_with() {
        use exercises::plan::{Band, Kilograms};
        let mut item = crate::review::samples::page().plan.expect("a plan").prescription.items[0].clone();
        let plain = EN.dose_of(&item);
        assert_eq!(EN.done_with(&item), None);
        item.load = Kilograms::of(2.25).map(Load::Weight);
        item.effort = exercises::score::Score::new(4);
        item.with_helper = true;
        let with = "with 2.25 kg, effort about 4 of 10, with somebody beside you";
        assert_eq!(EN.dose_of(&item), format!("{plain}, {with}"));
        assert_eq!(EN.done_with(&item).as_deref(), Some("With 2.25 kg, effort about 4 of 10, with somebody beside you"));
        assert!(EN.dose_prescribed(&item).ends_with("with somebody beside the patient"));
        let es = Words::new(crate::Locale::Es);
        assert!(es.dose_of(&item).contains("con 2,25 kg"), "{}", es.dose_of(&item));
        let bands: std::collections::BTreeSet<String> = Band::ALL.map(|band| es.load(Load::Band(band))).into();
        assert_eq!(bands.len(), Band::ALL.len());
    }

    #[test]
    fn the_record_in_short_leaves_out_what_is_no_longer_in_the_plan() {
        let page = crate::review::samples::page();
        let mut review = page.review.clone().expect("a summary was received");
        review.pain.clear();
        review.adherence[1].in_force = false;
        let of_first = review.adherence[0].last14.expect("owed lately").done;
        let said = EN.record_in_short(&review, Names::of(EN, &page)).expect("something was owed");
        assert_eq!(said, EN.record_last_14_days(of_first.n, of_first.k));
    }
}
