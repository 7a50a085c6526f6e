//! Resumes a draft that was left before its card was issued.

use super::{Draft, Unread};
use crate::plan::check::GATE_DAYS;
use crate::plan::stance::longest;
use chrono::NaiveDate;

/// A stored draft.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Kept {
    /// The prescription and its used numbers.
    pub draft: Draft,
    /// The revision that it would replace; `None` for a first plan.
    pub replaces: Option<u16>,
    /// Input that could not be read.
    pub unread: Unread,
    /// The day on which it was left.
    pub on: NaiveDate,
}

/// The draft to edit when `kept` is resumed; a new draft would be `fresh`.
///
/// On a later day, a rhythm of days that was begun in the draft begins on that day; the list of absent risks has to be confirmed again
/// and the times on one leg entered again, as at any other visit: the stored times count as earlier ones. Everything else stays as it was.
pub fn resume(kept: &Kept, fresh: &Draft) -> Draft {
    let Draft { prescription, used, today: _ } = kept.draft.clone();
    let mut draft = Draft { prescription, used: used.and(fresh.used), today: fresh.today };
    if kept.on != fresh.today {
        draft.count_days_from_today(kept.draft.today, fresh);
        let ticked = Some(kept.on).filter(|_| !draft.prescription.absent.is_empty());
        draft.prescription.confirmed = draft.prescription.confirmed.or(ticked);
        draft.prescription.baselines = longest(&draft.prescription.baselines, GATE_DAYS);
    }
    draft
}

#[cfg(test)]
mod tests {
    use super::super::first;
    use super::super::samples::{balance, day, empty};
    use super::*;
    use crate::plan::{Risk, StanceField};
    use crate::score::Score;

    const LEFT: StanceField = StanceField::FIRM_OPEN[0];

    /// A draft with balance, its ticks and a time, and a complaint with its pain.
    fn worked_on() -> Draft {
        let mut draft = empty();
        draft.add(&balance()).expect("room");
        let complaint = draft.add_complaint().expect("room");
        draft.edit_complaint(complaint, |complaint| complaint.pain = Some(Score::at_most_ten(6)));
        draft.prescription.absent = Risk::ALL.into_iter().collect();
        draft.set_stance(LEFT, Some(124), false);
        draft
    }

    fn fresh(month: u32, of: u32) -> Draft {
        first(day(month, of))
    }

    #[test]
    fn on_the_same_day_everything_is_as_it_was_left() {
        let draft = worked_on();
        let kept = Kept { on: draft.today, replaces: None, unread: Unread::default(), draft: draft.clone() };
        let again = resume(&kept, &Draft { used: Default::default(), ..empty() });
        assert_eq!(again, draft);
    }

    #[test]
    fn on_a_later_day_the_questions_of_the_visit_are_asked_again_and_the_rest_stays() {
        let draft = worked_on();
        let kept = Kept { on: draft.today, replaces: None, unread: Unread::default(), draft: draft.clone() };
        let again = resume(&kept, &fresh(12, 1));
        assert_eq!(again.today, day(12, 1));
        assert_eq!(again.prescription.absent, draft.prescription.absent);
        assert_eq!(again.prescription.confirmed, Some(draft.today), "of another day: no decision of today");
        assert_eq!(again.stance_today(LEFT), None);
        assert_eq!(again.stance_earlier(LEFT).map(|baseline| baseline.tenths), Some(124));
        let (again, left) = (&again.prescription, &draft.prescription);
        assert_eq!((&again.items, &again.complaints), (&left.items, &left.complaints));
    }
}
