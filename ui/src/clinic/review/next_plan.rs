//! The draft of the next plan, into which the review puts what the clinician accepts.

use exercises::alarm::ClearedAlarm;
use exercises::draft::{Draft, ItemOption};
use exercises::suggest::{Proposal, Suggestion};
use leptos::prelude::*;
use wire::clinic::{AskKeep, BeginPlan, PatientCode, PlanDraft};

use crate::clinic::context::{ClinicContext, Page};

/// The draft of the patient's next plan. It is stored with each press, like one that is edited on its own page.
#[derive(Clone, Copy)]
pub struct NextPlan {
    clinic: ClinicContext,
    code: StoredValue<String>,
    /// The draft; `None` until the shell has answered, and for a patient without a plan.
    pub draft: RwSignal<Option<PlanDraft>>,
}

impl NextPlan {
    /// Asks the shell for the draft of the patient with `code`.
    pub fn load(clinic: ClinicContext, code: String) -> NextPlan {
        let draft = RwSignal::new(None);
        clinic.app.query::<BeginPlan>(PatientCode { code: code.clone() }, move |loaded| {
            draft.try_set(Some(loaded));
        });
        NextPlan { clinic, code: StoredValue::new(code), draft }
    }

    /// Opens its page.
    pub fn open(self) {
        match self.draft.get_untracked() {
            Some(draft) => self.clinic.show(Page::Plan(self.code.get_value(), Box::new(draft))),
            None => self.clinic.plan(self.code.get_value()),
        }
    }

    /// Calls `then` once the newest change is stored.
    pub fn when_kept(self, then: impl FnOnce() + 'static) {
        self.clinic.keeper.when_kept(then);
    }

    /// Whether the draft is as the suggestion proposes; `None` if its item is not in the draft.
    pub fn follows(self, suggestion: &Suggestion) -> Option<bool> {
        self.draft.with(|next| {
            let next = next.as_ref()?;
            next.draft.prescription.item(suggestion.item)?;
            Some(next.draft.has_chosen(&option(next, suggestion)?))
        })
    }

    /// Puts a suggestion into the draft, or takes it out again: the item is then as it is in use.
    pub fn toggle(self, suggestion: &Suggestion) {
        let keep = Suggestion { proposal: Proposal::Keep, ..suggestion.clone() };
        let chosen = self.draft.with_untracked(|next| {
            let next = next.as_ref()?;
            let proposed = option(next, suggestion)?;
            let chosen = if next.draft.has_chosen(&proposed) { option(next, &keep)? } else { proposed };
            Some((chosen, next.carried.clone()))
        });
        if let Some((chosen, carried)) = chosen {
            self.change(|draft| draft.choose(&chosen, &carried));
        }
    }

    /// Whether the draft clears an alarm.
    pub fn clears(self, alarm: ClearedAlarm) -> bool {
        self.draft.with(|next| next.as_ref().is_some_and(|next| next.draft.prescription.cleared.contains(&alarm)))
    }

    /// Clears an alarm with the next plan, or not any more.
    pub fn toggle_cleared(self, alarm: ClearedAlarm) {
        self.change(|draft| {
            let cleared = &mut draft.prescription.cleared;
            match cleared.iter().position(|other| *other == alarm) {
                Some(place) => drop(cleared.remove(place)),
                None => cleared.push(alarm),
            }
        });
    }

    fn change(self, change: impl FnOnce(&mut Draft)) {
        self.draft.update(|next| {
            let Some(next) = next else { return };
            change(&mut next.draft);
            self.clinic.keeper.keep(AskKeep {
                code: self.code.get_value(),
                draft: next.draft.clone(),
                replaces: next.replaces,
                unread: next.unread.clone(),
                facts: next.facts.clone(),
            });
        });
    }
}

/// What a suggestion makes of its item as the last plan has it; `None` if the last plan does not have it.
fn option(next: &PlanDraft, suggestion: &Suggestion) -> Option<ItemOption> {
    let item = next.carried.iter().find(|item| item.id == suggestion.item)?;
    Some(ItemOption::of(suggestion.clone(), item))
}
