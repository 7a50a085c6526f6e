//! Where in the clinic's side the person is.

use leptos::prelude::*;
use wire::clinic::{BeginPlan, IssuedCard, PatientCode, PlanDraft, ReviewPage, ShowReview};

use super::keeper::Keeper;
use crate::pages::InfoPage;
use crate::shared::AppContext;

/// A page of the clinic's side, with what it shows.
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

/// What every page of the clinic's side can reach. It lives as long as the window.
#[derive(Clone, Copy)]
pub struct ClinicContext {
    /// The window's own.
    pub app: AppContext,
    /// The page.
    pub page: RwSignal<Page>,
    /// Keeps plans that are being composed.
    pub keeper: Keeper,
}

impl ClinicContext {
    /// At the list of patients.
    pub fn new(app: AppContext) -> ClinicContext {
        ClinicContext { app, page: RwSignal::new(Page::Patients), keeper: Keeper::new(app) }
    }

    /// The one of this window.
    pub fn current() -> ClinicContext {
        expect_context()
    }

    /// Shows a page; what went wrong on the last one is over.
    pub fn show(self, page: Page) {
        self.app.fault.set(None);
        self.page.set(page);
    }

    /// Goes to a patient's review.
    pub fn review(self, code: String) {
        self.app.request::<ShowReview>(PatientCode { code }, move |page| self.show(Page::Review(Box::new(page))));
    }

    /// Goes to a patient's next plan.
    pub fn plan(self, code: String) {
        let whose = code.clone();
        self.app.request::<BeginPlan>(PatientCode { code }, move |draft| self.show(Page::Plan(whose, Box::new(draft))));
    }
}
