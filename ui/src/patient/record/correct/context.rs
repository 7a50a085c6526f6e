//! The state of the page for corrections.

use exercises::correct::{Correctable, EntryContent, FIRST_DAYS};
use exercises::id::PlanId;
use leptos::prelude::*;
use wire::patient::{Correct, CorrectPage, CorrectRequest, CorrectableRequest, ShowCorrectable};
use words::review::Names;

use crate::patient::context::PatientContext;

/// The entries, the number of days they cover, and the entry that is open.
#[derive(Clone, Copy)]
pub struct CorrectionContext {
    patient: PatientContext,
    plan: PlanId,
    /// The last answer of the shell.
    pub page: RwSignal<Option<CorrectPage>>,
    /// Number of days, counted back from today.
    pub days: RwSignal<u16>,
    /// The entry whose choices are shown.
    pub open: RwSignal<Option<u32>>,
}

impl CorrectionContext {
    /// The context for the last week of a plan.
    pub fn new(plan: PlanId) -> CorrectionContext {
        let context = CorrectionContext {
            patient: PatientContext::current(),
            plan,
            page: RwSignal::new(None),
            days: RwSignal::new(FIRST_DAYS),
            open: RwSignal::new(None),
        };
        context.load_days(FIRST_DAYS);
        context
    }

    /// The context of this page.
    pub fn current() -> CorrectionContext {
        expect_context()
    }

    /// Asks the shell for the entries of this many days.
    pub fn load_days(self, days: u16) {
        self.patient.app.query::<ShowCorrectable>(CorrectableRequest { plan: self.plan, days }, move |page| {
            self.days.set(days);
            self.page.set(Some(page));
        });
    }

    /// Shows an entry's choices, or hides them.
    pub fn toggle(self, entry: u32) {
        self.patient.app.fault.set(None);
        self.open.update(|open| *open = (*open != Some(entry)).then_some(entry));
    }

    /// Corrects the entry to `wanted`.
    pub fn say(self, line: Correctable, wanted: EntryContent) {
        self.correct(line, line.correction_to(wanted));
    }

    /// Corrects the entry; the focus returns to it, where it shows what counts now.
    pub fn correct(self, line: Correctable, to: exercises::log::Correction) {
        let request = CorrectRequest { plan: self.plan, entry: line.n, to, days: self.days.get_untracked() };
        self.patient.app.request::<Correct>(request, move |page| {
            self.open.set(None);
            self.page.set(Some(page));
            self.patient.refresh();
            request_animation_frame(move || focus(line.n));
        });
    }

    /// Calls `say` with the names of the plan.
    pub fn named<T>(self, say: impl FnOnce(Names<'_>) -> T) -> Option<T> {
        let words = self.patient.app.words();
        self.page.with_untracked(|page| {
            page.as_ref().map(|page| say(Names::of_prescription(words, &page.plan.prescription, &page.exercises)))
        })
    }
}

/// The id of an entry's button on the page.
pub fn name(entry: u32) -> String {
    format!("entry-{entry}")
}

fn focus(entry: u32) {
    if let Some(button) = document().get_element_by_id(&name(entry)) {
        use wasm_bindgen::JsCast;
        // If the page was left meanwhile, it cannot take the focus.
        let _ = button.unchecked_into::<web_sys::HtmlElement>().focus();
    }
}
