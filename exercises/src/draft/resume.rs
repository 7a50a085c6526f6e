//! A draft that was left before its card was issued, taken up again.

use super::{Draft, Unread};
use crate::plan::Plan;
use crate::plan::check::GATE_DAYS;
use crate::plan::stance::longest;
use chrono::NaiveDate;

/// A draft as it was left.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Kept {
    /// The plan and its numbers.
    pub draft: Draft,
    /// What was typed and could not be read.
    pub unread: Unread,
    /// The day on which it was left.
    pub on: NaiveDate,
}

/// What is on the table when `kept` is taken up again, where a new draft would be `fresh`; `None` where a card has been
/// issued since, so that it is a draft of a revision that exists.
///
/// On a later day than it was left, what speaks against balance and the times on one leg are asked anew, as at any other
/// visit: the times count as earlier ones. Everything else stays as it was.
pub fn resume(kept: &Kept, fresh: &Draft) -> Option<Draft> {
    let Draft { plan, used } = &kept.draft;
    if plan.revision != fresh.plan.revision {
        return None;
    }
    let base = &fresh.plan;
    let plan = Plan { id: base.id, clinic: base.clinic.clone(), start: base.start, issued: base.issued, ..plan.clone() };
    let mut draft = Draft { plan, used: used.and(fresh.used) };
    if kept.on != base.issued {
        draft.plan.absent.clear();
        draft.plan.baselines = longest(&draft.plan.baselines, GATE_DAYS);
    }
    Some(draft)
}

#[cfg(test)]
mod tests {
    use super::super::samples::{balance, day, empty};
    use super::super::{first, next};
    use super::*;
    use crate::id::PlanId;
    use crate::plan::{Risk, StanceField};

    const LEFT: StanceField = StanceField::FIRM_OPEN[0];

    /// With balance, its ticks and a time, and a complaint with its pain.
    fn worked_on() -> Draft {
        let mut draft = empty();
        draft.add(&balance()).expect("room");
        let complaint = draft.add_complaint().expect("room");
        draft.edit_complaint(complaint, |complaint| complaint.pain = Some(6));
        draft.plan.absent = Risk::ALL.into_iter().collect();
        draft.set_stance(LEFT, Some(124), false);
        draft
    }

    fn fresh(month: u32, of: u32) -> Draft {
        first(PlanId([9; 8]), "Bridge Street", day(month, of))
    }

    #[test]
    fn on_the_same_day_everything_is_as_it_was_left() {
        let draft = worked_on();
        let kept = Kept { on: draft.plan.issued, unread: Unread::default(), draft: draft.clone() };
        let again = resume(&kept, &Draft { used: Default::default(), ..empty() }).expect("the same revision");
        assert_eq!(again, draft);
    }

    #[test]
    fn on_a_later_day_the_questions_of_the_visit_come_anew_and_the_rest_stays() {
        let draft = worked_on();
        let kept = Kept { on: draft.plan.issued, unread: Unread::default(), draft: draft.clone() };
        let again = resume(&kept, &fresh(12, 1)).expect("the same revision");
        assert_eq!((again.plan.issued, again.plan.id), (day(12, 1), PlanId([9; 8])));
        assert!(again.plan.absent.is_empty(), "ticks of another day are no decision of today");
        assert_eq!(again.stance_today(LEFT), None);
        assert_eq!(again.stance_earlier(LEFT).map(|baseline| baseline.tenths), Some(124));
        assert_eq!((&again.plan.items, &again.plan.complaints), (&draft.plan.items, &draft.plan.complaints));
    }

    #[test]
    fn a_draft_of_a_revision_that_was_issued_is_no_draft() {
        let draft = worked_on();
        let issued = next(&draft.plan, draft.used, "Bridge Street", day(11, 26));
        let kept = Kept { on: draft.plan.issued, unread: Unread::default(), draft };
        assert_eq!(resume(&kept, &issued), None);
    }
}
