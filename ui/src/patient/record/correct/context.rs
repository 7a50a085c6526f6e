//! What the page about mistaken entries works on.

use exercises::correct::{Correctable, EntryContent, FIRST_DAYS};
use exercises::id::PlanId;
use leptos::prelude::*;
use wire::patient::{Correct, CorrectPage, CorrectRequest, CorrectableRequest, ShowCorrectable};
use words::review::Names;

use crate::patient::context::PatientContext;

/// The entries, how far back they go, and the one that is open.
#[derive(Clone, Copy)]
pub struct CorrectionContext {
    patient: PatientContext,
    plan: PlanId,
    /// What the shell answered last.
    pub page: RwSignal<Option<CorrectPage>>,
    /// So many days back.
    pub days: RwSignal<u16>,
    /// The entry of which the choices are shown.
    pub open: RwSignal<Option<u32>>,
}

impl CorrectionContext {
    /// The last week of a plan.
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

    /// The one of this page.
    pub fn current() -> CorrectionContext {
        expect_context()
    }

    /// Asks for so many days.
    pub fn load_days(self, days: u16) {
        self.patient.app.query::<ShowCorrectable>(CorrectableRequest { plan: self.plan, days }, move |page| {
            self.days.set(days);
            self.page.set(Some(page));
        });
    }

    /// Shows an entry's choices, or puts them away.
    pub fn toggle(self, entry: u32) {
        self.patient.app.fault.set(None);
        self.open.update(|open| *open = (*open != Some(entry)).then_some(entry));
    }

    /// Has the entry say `wanted` from now on.
    pub fn say(self, line: Correctable, wanted: EntryContent) {
        self.correct(line, line.correction_to(wanted));
    }

    /// Puts the entry right; the focus goes back to it, where it says what counts now.
    pub fn correct(self, line: Correctable, to: exercises::log::Correction) {
        let request = CorrectRequest { plan: self.plan, entry: line.n, to, days: self.days.get_untracked() };
        self.patient.app.request::<Correct>(request, move |page| {
            self.open.set(None);
            self.page.set(Some(page));
            self.patient.refresh();
            request_animation_frame(move || focus(line.n));
        });
    }

    /// What is said with the names of the plan.
    pub fn named<T>(self, say: impl FnOnce(Names<'_>) -> T) -> Option<T> {
        let words = self.patient.app.words();
        self.page.with_untracked(|page| {
            page.as_ref().map(|page| say(Names::of_prescription(words, &page.plan.prescription, &page.exercises)))
        })
    }
}

/// The name of an entry's button on the page.
pub fn name(entry: u32) -> String {
    format!("entry-{entry}")
}

fn focus(entry: u32) {
    if let Some(button) = document().get_element_by_id(&name(entry)) {
        use wasm_bindgen::JsCast;
        // A page that was left meanwhile takes no focus.
        let _ = button.unchecked_into::<web_sys::HtmlElement>().focus();
    }
}
