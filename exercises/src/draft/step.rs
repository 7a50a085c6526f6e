//! Accepting a suggestion with one press.

use super::Draft;
use crate::plan::Item;
use crate::suggest::{Proposal, Suggestion};

/// Changes `item` to what the suggestion proposes: the level and dose in use, a step forward or back, or fewer slots. "Keep" and "talk"
/// set what is in use; what comes of the talk, the clinician enters.
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
    if let Proposal::Reduce(reduction) = &suggestion.proposal {
        *item = reduction.apply(item);
    }
}

impl Draft {
    /// Accepts a suggestion.
    pub fn apply(&mut self, suggestion: &Suggestion) {
        self.edit(suggestion.item, |item| apply(item, suggestion));
    }

    /// Accepts all suggestions that ask nothing first.
    pub fn apply_all(&mut self, suggestions: &[Suggestion]) {
        suggestions.iter().filter(|one| one.ask.is_empty()).for_each(|one| self.apply(one));
    }

    /// Whether [`Draft::apply_all`] would change nothing.
    pub fn follows_all(&self, suggestions: &[Suggestion]) -> bool {
        suggestions
            .iter()
            .filter(|one| one.ask.is_empty() && self.prescription.item(one.item).is_some())
            .all(|one| self.follows(one))
    }

    /// Whether the item is in the state that the suggestion proposes.
    pub fn follows(&self, suggestion: &Suggestion) -> bool {
        self.prescription.item(suggestion.item).is_some_and(|item| {
            let mut proposed = item.clone();
            apply(&mut proposed, suggestion);
            proposed == *item
        })
    }
}
