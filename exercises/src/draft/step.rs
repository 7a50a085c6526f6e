//! A suggestion taken over by one click.

use super::Draft;
use crate::catalogue::Exercise;
use crate::plan::Item;
use crate::suggest::{Advice, StepConditions, Suggestion, back, next};

/// Makes `item` what the suggestion proposes: the rung and dose in use, a step further or back. "Keep" and "stop and talk"
/// leave the item at what is in use.
pub fn apply(item: &mut Item, suggestion: &Suggestion) {
    if suggestion.rung.is_some() {
        item.rung.clone_from(&suggestion.rung);
    }
    if suggestion.dose.kind() == item.dose.kind() {
        item.dose = suggestion.dose;
    }
    if let Some(step) = suggestion.step() {
        *item = step.apply(item);
    }
}

impl Draft {
    /// Takes a suggestion over; "stop and talk" takes the item out of the plan.
    pub fn apply(&mut self, suggestion: &Suggestion) {
        match suggestion.advice {
            Advice::StopAndTalk => self.remove(suggestion.item),
            _ => self.edit(suggestion.item, |item| apply(item, suggestion)),
        }
    }

    /// Takes all suggestions over but "stop and talk", which wants a press of its own.
    pub fn apply_all(&mut self, suggestions: &[Suggestion]) {
        suggestions.iter().filter(|one| one.advice != Advice::StopAndTalk).for_each(|one| self.apply(one));
    }

    /// Whether [`Draft::apply_all`] would change nothing.
    pub fn follows_all(&self, suggestions: &[Suggestion]) -> bool {
        suggestions
            .iter()
            .filter(|one| one.advice != Advice::StopAndTalk && self.plan.item(one.item).is_some())
            .all(|one| self.follows(one))
    }

    /// Whether the item stands as the suggestion proposes.
    pub fn follows(&self, suggestion: &Suggestion) -> bool {
        let item = self.plan.item(suggestion.item);
        match (&suggestion.advice, item) {
            (Advice::StopAndTalk, item) => item.is_none(),
            (_, None) => false,
            (_, Some(item)) => {
                let mut proposed = item.clone();
                apply(&mut proposed, suggestion);
                proposed == *item
            }
        }
    }
}

/// What a clinician may choose for one item, each from the rung and dose in use.
#[derive(Debug, Clone, PartialEq)]
pub struct Choices {
    /// One step forward, where there is one.
    pub advance: Option<Suggestion>,
    /// As it is in use.
    pub keep: Suggestion,
    /// One step back, where there is one.
    pub back: Option<Suggestion>,
}

impl Draft {
    /// The choices beside `suggestion`. Gates do not narrow them: the clinician sees the step, and issuing asks for what the
    /// gate needs. `None` where the item is not in the draft.
    pub fn choices(&self, suggestion: &Suggestion, exercise: Option<&Exercise>) -> Option<Choices> {
        let mut in_use = self.plan.item(suggestion.item)?.clone();
        let keep = Suggestion { advice: Advice::Keep, ..suggestion.clone() };
        apply(&mut in_use, &keep);
        let to = |advice| Suggestion { advice, ..suggestion.clone() };
        let ground = StepConditions { exercise, age: self.plan.age, gate_open: true };
        Some(Choices {
            advance: next(&in_use, ground).ok().map(|step| to(Advice::Advance(step))),
            back: back(&in_use, exercise).map(|step| to(Advice::StepBack(step))),
            keep,
        })
    }
}
