//! Accepting a suggestion with one press.

use super::Draft;
use crate::catalogue::Exercise;
use crate::plan::Item;
use crate::suggest::{Advice, StepConditions, Suggestion, back, next};

/// Changes `item` to what the suggestion proposes: the level and dose in use, a step up or down. "Keep" and "stop and talk" set what
/// is in use.
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
    /// Accepts a suggestion; "stop and talk" removes the item from the plan.
    pub fn apply(&mut self, suggestion: &Suggestion) {
        match suggestion.advice {
            Advice::StopAndTalk => self.remove(suggestion.item),
            _ => self.edit(suggestion.item, |item| apply(item, suggestion)),
        }
    }

    /// Accepts all suggestions except "stop and talk", which needs its own press.
    pub fn apply_all(&mut self, suggestions: &[Suggestion]) {
        suggestions.iter().filter(|one| one.advice != Advice::StopAndTalk).for_each(|one| self.apply(one));
    }

    /// Whether [`Draft::apply_all`] would change nothing.
    pub fn follows_all(&self, suggestions: &[Suggestion]) -> bool {
        suggestions
            .iter()
            .filter(|one| one.advice != Advice::StopAndTalk && self.prescription.item(one.item).is_some())
            .all(|one| self.follows(one))
    }

    /// Whether the item is in the state that the suggestion proposes.
    pub fn follows(&self, suggestion: &Suggestion) -> bool {
        let item = self.prescription.item(suggestion.item);
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

/// The clinician's choices for one item, each starting from the level and dose in use.
#[derive(Debug, Clone, PartialEq)]
pub struct Choices {
    /// One step up, if there is one.
    pub advance: Option<Suggestion>,
    /// No change from what is in use.
    pub keep: Suggestion,
    /// One step down, if there is one.
    pub back: Option<Suggestion>,
}

impl Draft {
    /// The alternatives to `suggestion`. Gates do not restrict them: the clinician sees the step, and issuing asks for what the gate
    /// requires. `None` if the item is not in the draft.
    pub fn choices(&self, suggestion: &Suggestion, exercise: Option<&Exercise>) -> Option<Choices> {
        let mut in_use = self.prescription.item(suggestion.item)?.clone();
        let keep = Suggestion { advice: Advice::Keep, ..suggestion.clone() };
        apply(&mut in_use, &keep);
        let to = |advice| Suggestion { advice, ..suggestion.clone() };
        let ground = StepConditions { exercise, age: self.prescription.age, gate_open: true };
        Some(Choices {
            advance: next(&in_use, ground).ok().map(|step| to(Advice::Advance(step))),
            back: back(&in_use, exercise).map(|step| to(Advice::StepBack(step))),
            keep,
        })
    }
}
