//! The state of the clinic's side: which page is shown.

use leptos::prelude::*;
use wire::clinic::{BeginPlan, IssuedCard, PatientCode, PlanDraft, ReviewPage, ShowReview};

use super::keeper::Keeper;
use crate::pages::InfoPage;
use crate::shared::AppContext;

/// A page of the clinic's side, with its data.
#[derive(Clone, PartialEq)]
pub enum Page {
    /// All patients.
    Patients,
    /// One patient's review.
    Review(Box<ReviewPage>),
    /// One patient's next plan.
    Plan(String, Box<PlanDraft>),
    /// A page that explains the program.
    Info(InfoPage),
    /// A card that was issued to a patient.
    Issued(String, Box<IssuedCard>),
}

/// The shared state of all pages of the clinic's side. It lives as long as the window.
#[derive(Clone, Copy)]
pub struct ClinicContext {
    /// The state of the whole window.
    pub app: AppContext,
    /// The page that is shown.
    pub page: RwSignal<Page>,
    /// Stores drafts of plans.
    pub keeper: Keeper,
}

impl ClinicContext {
    /// The state at the beginning, with the list of patients.
    pub fn new(app: AppContext) -> ClinicContext {
        ClinicContext { app, page: RwSignal::new(Page::Patients), keeper: Keeper::new(app) }
    }

    /// The context of this window.
    pub fn current() -> ClinicContext {
        expect_context()
    }

    /// Shows a page and clears the last error.
    pub fn show(self, page: Page) {
        self.app.fault.set(None);
        self.page.set(page);
    }

    /// Opens a patient's review.
    pub fn review(self, code: String) {
        self.app.request::<ShowReview>(PatientCode { code }, move |page| self.show(Page::Review(Box::new(page))));
    }

    /// Opens a patient's next plan.
    pub fn plan(self, code: String) {
        let whose = code.clone();
        self.app.request::<BeginPlan>(PatientCode { code }, move |draft| self.show(Page::Plan(whose, Box::new(draft))));
    }
}
