//! What the clinician's answers make of a proposal that asks something first.

use super::apply;
use crate::catalogue::Exercise;
use crate::log::Barrier;
use crate::plan::Item;
use crate::score::Score;
use crate::suggest::{Ask, EASY_PAIN, Proposal, Reason, Reduction, Suggestion, back};
use crate::time::DayNumber;

impl Suggestion {
    /// The proposal once it is known how much `item` hurts while it is done: eased above the limit, no step forward above
    /// [`EASY_PAIN`], otherwise as proposed. `on` is the day of the answer.
    pub fn with_pain(&self, score: Score, item: &Item, exercise: Option<&Exercise>, on: DayNumber) -> Suggestion {
        let mut answered = self.without(Ask::Pain);
        let known = self.reasons.iter().find_map(|reason| match reason {
            Reason::PainUnknown { known } => Some(*known),
            _ => None,
        });
        answered.reasons.retain(|reason| !matches!(reason, Reason::PainUnknown { .. }));
        if score > item.pain_limit {
            let step = back(&self.in_use(item), exercise);
            answered.proposal = step.map_or(Proposal::Talk, Proposal::Ease);
            answered.reasons = vec![Reason::AboveLimit { score, limit: item.pain_limit, day: on }];
        } else if score > EASY_PAIN && matches!(self.proposal, Proposal::Progress(_)) {
            answered.proposal = Proposal::Keep;
            answered.reasons = vec![Reason::PainTooHighToProgress { score }];
        } else if let Some(known) = known {
            answered.reasons.push(Reason::LowPain { most: score, known: known + 1 });
        }
        answered
    }

    /// The proposal once it is known why the item is not done: pain, or not being sure how, is talked about; a patient who feels fine
    /// or finds no help in it needs less of it, or none.
    pub fn with_reason(&self, given: Barrier) -> Suggestion {
        let mut answered = self.without(Ask::Reason);
        answered.reasons.retain(|reason| *reason != Reason::NoneGiven);
        answered.reasons.push(Reason::Given { barrier: given, times: 1 });
        match given {
            Barrier::Pain | Barrier::NotSureHow => answered.proposal = Proposal::Talk,
            Barrier::FeltFine | Barrier::NoHelp => answered.proposal = Proposal::Reduce(Reduction::ShortenOrEnd),
            _ => {}
        }
        answered
    }

    fn without(&self, asked: Ask) -> Suggestion {
        let mut answered = self.clone();
        answered.ask.retain(|ask| *ask != asked);
        answered
    }

    /// `item` at the level and with the dose in use.
    fn in_use(&self, item: &Item) -> Item {
        let mut used = item.clone();
        apply(&mut used, &Suggestion { proposal: Proposal::Keep, ..self.clone() });
        used
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::catalogue::Quantity;
    use crate::id::ItemId;
    use crate::plan::Side;
    use crate::review::samples::{HOLD_DOSE, item};
    use crate::suggest::Step;

    const STEP: Step = Step::Change { quantity: Quantity::HoldSeconds, by: 5 };

    fn asking(ask: Ask, proposal: Proposal, reason: Reason) -> Suggestion {
        let dose = HOLD_DOSE;
        Suggestion { item: ItemId(1), rung: None, dose, proposal, reasons: vec![reason], ask: vec![ask] }
    }

    fn answered(points: u8) -> Suggestion {
        let asked = asking(Ask::Pain, Proposal::Progress(STEP), Reason::PainUnknown { known: 0 });
        let item = Item { pain_limit: Score::at_most_ten(5), ..item(HOLD_DOSE, Side::Neither) };
        asked.with_pain(Score::at_most_ten(points), &item, None, DayNumber(9))
    }

    #[test]
    fn a_low_number_makes_the_step_final() {
        let said = answered(3);
        assert_eq!((said.proposal, said.ask), (Proposal::Progress(STEP), vec![]));
        assert_eq!(said.reasons, [Reason::LowPain { most: Score::at_most_ten(3), known: 1 }]);
    }

    #[test]
    fn a_number_within_the_limit_but_not_low_keeps_it() {
        let said = answered(4);
        assert_eq!((said.proposal, said.ask), (Proposal::Keep, vec![]));
    }

    #[test]
    fn a_number_above_the_limit_eases_it() {
        let said = answered(6);
        assert!(matches!(said.proposal, Proposal::Ease(_)), "{said:?}");
        assert!(matches!(said.reasons.as_slice(), [Reason::AboveLimit { .. }]), "{said:?}");
    }

    #[test]
    fn the_reason_decides_whether_less_is_asked_for() {
        let fewer = Proposal::Reduce(Reduction::FewerSlots { from: 8, to: 4 });
        let asked = asking(Ask::Reason, fewer.clone(), Reason::NoneGiven);
        assert_eq!(asked.with_reason(Barrier::NoTime).proposal, fewer);
        assert_eq!(asked.with_reason(Barrier::Pain).proposal, Proposal::Talk);
        assert_eq!(asked.with_reason(Barrier::FeltFine).proposal, Proposal::Reduce(Reduction::ShortenOrEnd));
        assert_eq!(asked.with_reason(Barrier::NoTime).ask, []);
    }
}
