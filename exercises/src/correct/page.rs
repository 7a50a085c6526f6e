//! The page on which entries are corrected: the entries by day, and the choices for one entry.

use super::{Correctable, EntryContent};
use crate::log::Correction;
use crate::log::{Barrier, DayOffReason};
use crate::score::Score;
use chrono::{Duration, NaiveDate};

/// Number of days shown at first, today included.
pub const FIRST_DAYS: u16 = 7;

/// The factor by which the number of days grows each time the person asks for more.
const MORE: u16 = 4;

/// The entries of one day.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Day {
    /// The day on which the entries were made.
    pub day: NaiveDate,
    /// The entries, newest first.
    pub lines: Vec<Correctable>,
}

/// Groups entries, which are sorted newest first, by the day on which they were made.
pub fn by_day(entries: &[Correctable]) -> Vec<Day> {
    let days = entries.chunk_by(|one, next| one.at.date() == next.at.date());
    days.map(|lines| Day { day: lines[0].at.date(), lines: lines.to_vec() }).collect()
}

/// The number of days to show when the person asks for more than `days`; `None` if these already reach back to the plan's
/// first day.
pub fn earlier_days(days: u16, start: NaiveDate, today: NaiveDate) -> Option<u16> {
    let oldest = today - Duration::days(i64::from(days.max(1)) - 1);
    (oldest > start).then(|| days.max(1).saturating_mul(MORE))
}

/// What an entry can be changed to, starting from what it says at present.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Change {
    /// It cannot be changed, only withdrawn or restored.
    Nothing,
    /// Another score, of pain or of an activity.
    Score {
        /// The score at present.
        now: Score,
        /// Whether it is a score of pain, where a higher score is worse.
        pain: bool,
    },
    /// The one other answer there is, to a question with two answers.
    Other(EntryContent),
    /// Another reason for skipping the slot; this is the reason at present.
    Reason(Barrier),
    /// Other days off, or another reason for them. The values are those at present.
    Days {
        /// First day off.
        from: NaiveDate,
        /// Last day off, included.
        until: NaiveDate,
        /// The reason.
        why: DayOffReason,
    },
}

/// The choices that a person has for one entry.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Choices {
    /// What the entry can be changed to.
    pub change: Change,
    /// Whether the entry can be withdrawn as a mistake.
    pub take_out: bool,
    /// Whether an earlier correction can be taken back, so that the entry again says what it said when it was made.
    pub stands: bool,
}

impl Correctable {
    /// The choices for this entry. An entry that was withdrawn can only be restored.
    pub fn choices(&self) -> Choices {
        let out = self.correction == Some(Correction::Never);
        let change = self.now.filter(|_| !out).map_or(Change::Nothing, change);
        Choices { change, take_out: !out, stands: self.correction.is_some() }
    }

    /// The correction after which the entry says `wanted`. If that is what it said when it was made, earlier corrections are
    /// taken back.
    pub fn correction_to(&self, wanted: EntryContent) -> Correction {
        match wanted {
            wanted if wanted == self.said => Correction::Stands,
            EntryContent::Morning { score, .. }
            | EntryContent::During { score, .. }
            | EntryContent::Pain { score, .. }
            | EntryContent::Rated { score, .. } => Correction::Score(score),
            EntryContent::Settled { settled, .. } => Correction::Settled(settled),
            EntryContent::Skipped { reason, .. } => Correction::Reason(reason),
            EntryContent::DaysOff { from, until, why } => Correction::DaysOff { from, until, why },
            // A run or an alarm cannot be changed to another one.
            EntryContent::Run { .. } | EntryContent::Trouble { .. } => Correction::Stands,
        }
    }
}

impl EntryContent {
    /// The same rating with another score; any other content is returned unchanged.
    pub fn with_score(self, score: Score) -> EntryContent {
        match self {
            EntryContent::Morning { complaint, .. } => EntryContent::Morning { complaint, score },
            EntryContent::During { item, .. } => EntryContent::During { item, score },
            EntryContent::Pain { complaint, after, .. } => EntryContent::Pain { complaint, score, after },
            EntryContent::Rated { activity, .. } => EntryContent::Rated { activity, score },
            other => other,
        }
    }

    /// The same skipped slot with another reason; any other content is returned unchanged.
    pub fn with_reason(self, reason: Barrier) -> EntryContent {
        if let EntryContent::Skipped { slot, .. } = self { EntryContent::Skipped { slot, reason } } else { self }
    }
}

fn change(now: EntryContent) -> Change {
    match now {
        EntryContent::Morning { score, .. } | EntryContent::During { score, .. } | EntryContent::Pain { score, .. } => {
            Change::Score { now: score, pain: true }
        }
        EntryContent::Rated { score, .. } => Change::Score { now: score, pain: false },
        EntryContent::Settled { complaint, settled } => {
            Change::Other(EntryContent::Settled { complaint, settled: !settled })
        }
        EntryContent::Skipped { reason, .. } => Change::Reason(reason),
        EntryContent::DaysOff { from, until, why } => Change::Days { from, until, why },
        EntryContent::Run { .. } | EntryContent::Trouble { .. } => Change::Nothing,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::alarm::Trouble;
    use crate::id::{ComplaintId, ItemId};
    use crate::slots::SlotRef;
    use crate::time::Stamp;

    const DAY_MS: i64 = 86_400_000;
    const PAIN: EntryContent = EntryContent::Pain { complaint: ComplaintId(1), score: Score::at_most_ten(8), after: None };

    fn entry(
        n: u32,
        days: i64,
        said: EntryContent,
        correction: Option<Correction>,
        now: Option<EntryContent>,
    ) -> Correctable {
        Correctable { n, at: Stamp { utc_ms: days * DAY_MS, offset_s: 0 }, wrong_clock: None, said, correction, now }
    }

    fn date(text: &str) -> NaiveDate {
        text.parse().expect("a date")
    }

    #[test]
    fn entries_are_listed_under_the_day_on_which_they_were_made() {
        let entries = [(9, 3), (7, 3), (6, 1)].map(|(n, day)| entry(n, day, PAIN, None, Some(PAIN)));
        let days = by_day(&entries);
        let numbers = |day: &Day| day.lines.iter().map(|line| line.n).collect::<Vec<_>>();
        let days: Vec<_> = days.iter().map(|day| (day.day.to_string(), numbers(day))).collect();
        assert_eq!(days, [("1970-01-04".to_owned(), vec![9, 7]), ("1970-01-02".to_owned(), vec![6])]);
        assert_eq!(by_day(&[]), []);
    }

    #[test]
    fn the_list_goes_further_back_until_the_plan_began() {
        let (start, today) = (date("2027-03-01"), date("2027-03-20"));
        assert_eq!(earlier_days(FIRST_DAYS, start, today), Some(28));
        assert_eq!(earlier_days(28, start, today), None);
        assert_eq!(earlier_days(20, start, today), None, "the first day is among them");
        assert_eq!(earlier_days(19, start, today), Some(76));
        assert_eq!(earlier_days(0, start, today), Some(4));
    }

    #[test]
    fn what_was_never_corrected_can_be_changed_or_taken_out() {
        let choices = entry(1, 0, PAIN, None, Some(PAIN)).choices();
        assert_eq!(
            choices,
            Choices { change: Change::Score { now: Score::at_most_ten(8), pain: true }, take_out: true, stands: false }
        );
    }

    #[test]
    fn a_changed_entry_shows_its_present_value_and_can_be_restored() {
        let now = PAIN.with_score(Score::at_most_ten(3));
        let line = entry(1, 0, PAIN, Some(Correction::Score(Score::at_most_ten(3))), Some(now));
        assert_eq!(
            line.choices(),
            Choices { change: Change::Score { now: Score::at_most_ten(3), pain: true }, take_out: true, stands: true }
        );
        assert_eq!(line.correction_to(PAIN.with_score(Score::at_most_ten(5))), Correction::Score(Score::at_most_ten(5)));
        assert_eq!(line.correction_to(PAIN), Correction::Stands, "the first value needs no correction");
    }

    #[test]
    fn a_withdrawn_entry_can_only_be_restored() {
        let line = entry(1, 0, PAIN, Some(Correction::Never), None);
        assert_eq!(line.choices(), Choices { change: Change::Nothing, take_out: false, stands: true });
        let alarm = EntryContent::Trouble { trouble: Trouble::NearlyFell, item: None };
        let noted = entry(2, 0, alarm, Some(Correction::Never), Some(alarm));
        assert_eq!(noted.choices(), Choices { change: Change::Nothing, take_out: false, stands: true });
    }

    #[test]
    fn each_kind_changes_to_its_own_kind() {
        let slot = SlotRef { item: ItemId(1), day: date("2027-03-01"), number: 0 };
        let left = EntryContent::Skipped { slot, reason: Barrier::Forgot };
        let (from, until) = (date("2027-03-02"), date("2027-03-03"));
        let day_off = EntryContent::DaysOff { from, until, why: DayOffReason::Ill };
        let settled = |settled| EntryContent::Settled { complaint: ComplaintId(1), settled };
        let offered = |said| entry(1, 0, said, None, Some(said)).choices().change;
        assert_eq!(offered(left), Change::Reason(Barrier::Forgot));
        assert_eq!(offered(day_off), Change::Days { from, until, why: DayOffReason::Ill });
        assert_eq!(offered(settled(true)), Change::Other(settled(false)));

        let to = |said, wanted| entry(1, 0, said, None, Some(said)).correction_to(wanted);
        assert_eq!(to(left, left.with_reason(Barrier::NoTime)), Correction::Reason(Barrier::NoTime));
        assert_eq!(to(settled(true), settled(false)), Correction::Settled(false));
        let longer = EntryContent::DaysOff { from, until: until + Duration::days(1), why: DayOffReason::Ill };
        assert_eq!(
            to(day_off, longer),
            Correction::DaysOff { from, until: until + Duration::days(1), why: DayOffReason::Ill }
        );
        assert_eq!(left.with_score(Score::at_most_ten(4)), left);
        assert_eq!(PAIN.with_reason(Barrier::Forgot), PAIN);
    }
}
