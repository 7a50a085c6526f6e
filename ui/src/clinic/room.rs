//! Where in the clinic's side the person is.

use leptos::prelude::*;
use wire::clinic::{BeginPlan, IssuedCard, PatientCode, PlanDraft, ReviewPage, ShowReview};

use super::keeper::Keeper;
use crate::shared::House;

/// A page of the clinic's side, with what it shows.
#[derive(Clone, PartialEq)]
pub enum Page {
    /// All patients.
    Patients,
    /// One patient's review.
    Review(Box<ReviewPage>),
    /// One patient's next plan.
    Plan(String, Box<PlanDraft>),
    /// A card that was issued to a patient.
    Issued(String, Box<IssuedCard>),
}

/// What every page of the clinic's side can reach. It lives as long as the window.
#[derive(Clone, Copy)]
pub struct Room {
    /// The window's own.
    pub house: House,
    /// The page.
    pub page: RwSignal<Page>,
    /// Keeps plans that are being composed.
    pub keeper: Keeper,
}

impl Room {
    /// At the list of patients.
    pub fn new(house: House) -> Room {
        Room { house, page: RwSignal::new(Page::Patients), keeper: Keeper::new(house) }
    }

    /// The one of this window.
    pub fn here() -> Room {
        expect_context()
    }

    /// Shows a page; what went wrong on the last one is over.
    pub fn show(self, page: Page) {
        self.house.fault.set(None);
        self.page.set(page);
    }

    /// Goes to a patient's review.
    pub fn review(self, code: String) {
        self.house.ask::<ShowReview>(PatientCode { code }, move |page| self.show(Page::Review(Box::new(page))));
    }

    /// Goes to a patient's next plan.
    pub fn plan(self, code: String) {
        let whose = code.clone();
        self.house.ask::<BeginPlan>(PatientCode { code }, move |draft| self.show(Page::Plan(whose, Box::new(draft))));
    }
}
