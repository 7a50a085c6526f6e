//! A suggestion taken over by one click.

use super::{Draft, with};
use crate::catalogue::Quantity;
use crate::plan::Item;
use crate::suggest::{Advice, Step, Suggestion};

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
        take(item, step);
    }
}

fn take(item: &mut Item, step: &Step) {
    let (quantity, by) = match step {
        Step::Rung(rung) => {
            item.rung = Some(rung.clone());
            return;
        }
        Step::HoldSeconds(by) => (Quantity::HoldSeconds, *by),
        Step::Repetitions(by) => (Quantity::Repetitions, *by),
        Step::TargetSeconds(by) => (Quantity::TargetSeconds, *by),
        Step::Trials(by) => (Quantity::Trials, *by),
    };
    let now = item.dose.quantities().into_iter().find(|(other, _)| *other == quantity);
    if let Some((_, value)) = now {
        item.dose = with(item.dose, quantity, value + i64::from(by));
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
