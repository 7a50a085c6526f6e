//! The days of an item, as they are chosen.

use super::Draft;
use crate::choice::array;
use crate::id::ItemId;
use crate::plan::{Days, Item, Pattern, Phase, Prescription};
use crate::time::DAY_BEGINS;
use chrono::NaiveDate;
use strum::VariantArray;

/// Days from one to the next that are offered first: every other day.
const USUAL_EVERY: u8 = 2;
/// Times a week that are offered first.
const USUAL_TIMES: u8 = 3;
/// When an item is due whose days the patient chooses, if it had no time that fits: in the evening.
const USUAL_TIME: u16 = 18 * 60;

/// How the days of an item are stated.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, VariantArray)]
pub enum DaysKind {
    /// On days of the week.
    OnWeekdays,
    /// Every so many days.
    EveryNth,
    /// So many times a week, on days that the patient chooses.
    TimesAWeek,
}

impl DaysKind {
    /// All kinds, in the order in which they are offered.
    pub const ALL: [DaysKind; DaysKind::VARIANTS.len()] = array(DaysKind::VARIANTS);

    /// The kind of these days.
    pub fn of(days: Days) -> DaysKind {
        match days {
            Days::On(_) => DaysKind::OnWeekdays,
            Days::EveryNth { .. } => DaysKind::EveryNth,
            Days::TimesAWeek { .. } => DaysKind::TimesAWeek,
        }
    }
}

impl Draft {
    /// Puts an item on the usual days of another kind. Days that are counted begin on the day of issue; of days that the patient chooses
    /// an item is due once.
    pub fn put_on(&mut self, id: ItemId, kind: DaysKind) {
        let today = self.today;
        self.edit(id, |item| {
            let from = item.schedule.days.begin().or(item.phase.first).unwrap_or(today);
            item.schedule.days = match kind {
                _ if kind == DaysKind::of(item.schedule.days) => item.schedule.days,
                DaysKind::OnWeekdays => Days::ALL,
                DaysKind::EveryNth => Days::EveryNth { n: USUAL_EVERY, from },
                DaysKind::TimesAWeek => Days::TimesAWeek { n: USUAL_TIMES, from },
            };
            if kind == DaysKind::TimesAWeek {
                let times = item.schedule.pattern.minutes();
                let time = times.into_iter().find(|time| (DAY_BEGINS..crate::time::DAY_MINUTES).contains(time));
                item.schedule.pattern = Pattern::At { times: vec![time.unwrap_or(USUAL_TIME)] };
            }
        });
    }

    /// Gives an item the days from which to which it is to be done. Days that are counted begin with the first of them.
    pub fn put_in_phase(&mut self, id: ItemId, phase: Phase) {
        let today = self.today;
        self.edit(id, |item| {
            let moved = phase.first != item.phase.first;
            if moved {
                item.schedule.days = item.schedule.days.counted_from(phase.first.unwrap_or(today));
            }
            item.phase = phase;
        });
    }

    /// Counts the days of items that a draft of `before` began from today; those that the last card has stay as they are.
    pub(super) fn count_days_from_today(&mut self, before: NaiveDate, fresh: &Draft) {
        let today = self.today;
        let issued =
            |item: &Item| fresh.prescription.item(item.id).is_some_and(|last| last.schedule.days == item.schedule.days);
        for item in &mut self.prescription.items {
            if item.schedule.days.begin() == Some(before) && item.phase.first.is_none() && !issued(item) {
                item.schedule.days = item.schedule.days.counted_from(today);
            }
        }
    }
}

/// Counts days as the last card does where an item has the same rhythm as there and was to be counted from `today`: a plan file does not
/// say when a rhythm began, and a card that leaves it as it is must not shift it.
pub fn keep_rhythms(prescription: &mut Prescription, last: &Prescription, today: NaiveDate) {
    for item in prescription.items.iter_mut().filter(|item| item.schedule.days.begin() == Some(today)) {
        let before = last.item(item.id).map(|last| last.schedule.days);
        let same = before.filter(|days| days.counted_from(today) == item.schedule.days);
        item.schedule.days = same.unwrap_or(item.schedule.days);
    }
}

#[cfg(test)]
mod tests {
    use super::super::samples::{balance, day, empty, hold};
    use super::super::{Kept, Unread, first, resume};
    use super::*;

    #[test]
    fn other_days_keep_the_time_and_are_counted_from_the_day_of_issue() {
        let mut draft = empty();
        let id = draft.add(&balance()).expect("room");
        let today = draft.today;
        draft.put_on(id, DaysKind::EveryNth);
        assert_eq!(draft.prescription.items[0].schedule.days, Days::EveryNth { n: 2, from: today });
        draft.put_on(id, DaysKind::TimesAWeek);
        let schedule = draft.prescription.items[0].schedule.clone();
        assert_eq!(
            (schedule.days, schedule.pattern),
            (Days::TimesAWeek { n: 3, from: today }, Pattern::At { times: vec![1080] })
        );
        draft.put_on(id, DaysKind::OnWeekdays);
        assert_eq!(draft.prescription.items[0].schedule.days, Days::ALL);
    }

    #[test]
    fn days_that_the_patient_chooses_have_one_time() {
        let mut draft = empty();
        let id = draft.add(&hold()).expect("room");
        draft.put_on(id, DaysKind::TimesAWeek);
        assert_eq!(draft.prescription.items[0].schedule.pattern, Pattern::At { times: vec![540] });
        draft.edit(id, |item| {
            item.schedule.days = Days::ALL;
            item.schedule.pattern = Pattern::At { times: vec![60] };
        });
        draft.put_on(id, DaysKind::TimesAWeek);
        assert_eq!(draft.prescription.items[0].schedule.pattern, Pattern::At { times: vec![1080] });
    }

    #[test]
    fn a_card_that_leaves_a_rhythm_as_it_is_does_not_shift_it() {
        let mut last = empty();
        let id = last.add(&balance()).expect("room");
        last.put_on(id, DaysKind::EveryNth);
        let mut next = last.prescription.clone();
        let later = day(12, 4);
        next.items[0].schedule.days = Days::EveryNth { n: 2, from: later };
        keep_rhythms(&mut next, &last.prescription, later);
        assert_eq!(next, last.prescription);
        next.items[0].schedule.days = Days::EveryNth { n: 3, from: later };
        let other = next.clone();
        keep_rhythms(&mut next, &last.prescription, later);
        assert_eq!(next, other, "another rhythm begins anew");
        next.items[0].schedule.days = Days::EveryNth { n: 2, from: day(12, 1) };
        let named = next.clone();
        keep_rhythms(&mut next, &last.prescription, later);
        assert_eq!(next, named, "a day that the file names stays");
    }

    #[test]
    fn days_are_counted_from_the_first_day_of_the_phase() {
        let mut draft = empty();
        let id = draft.add(&balance()).expect("room");
        draft.put_in_phase(id, Phase { first: Some(day(12, 10)), last: None });
        draft.put_on(id, DaysKind::EveryNth);
        assert_eq!(draft.prescription.items[0].schedule.days.begin(), Some(day(12, 10)));
        draft.put_in_phase(id, Phase { first: Some(day(12, 13)), last: Some(day(12, 20)) });
        assert_eq!(draft.prescription.items[0].schedule.days.begin(), Some(day(12, 13)));
        draft.put_in_phase(id, Phase::WHOLE);
        assert_eq!(draft.prescription.items[0].schedule.days.begin(), Some(draft.today));
    }

    #[test]
    fn every_kind_is_that_of_its_days() {
        let mut draft = empty();
        let id = draft.add(&balance()).expect("room");
        for kind in DaysKind::ALL {
            draft.put_on(id, kind);
            let days = draft.prescription.items[0].schedule.days;
            assert_eq!(DaysKind::of(days), kind);
            draft.put_on(id, kind);
            assert_eq!(draft.prescription.items[0].schedule.days, days, "the same kind again changes nothing");
        }
    }

    #[test]
    fn a_draft_that_is_resumed_later_counts_from_then_and_what_a_card_has_goes_on() {
        let mut draft = empty();
        let ids = [balance(), hold()].map(|exercise| draft.add(&exercise).expect("room"));
        ids.iter().for_each(|id| draft.put_on(*id, DaysKind::EveryNth));
        let kept = Kept { on: draft.today, replaces: None, unread: Unread::default(), draft: draft.clone() };
        let mut fresh = first(day(12, 1));
        fresh.prescription.items.push(draft.prescription.items[1].clone());
        let again = resume(&kept, &fresh);
        let from: Vec<_> = again.prescription.items.iter().map(|item| item.schedule.days.begin()).collect();
        assert_eq!(from, [Some(day(12, 1)), Some(draft.today)]);
        assert_eq!(resume(&kept, &Draft { ..first(draft.today) }).prescription, draft.prescription);
    }
}
