//! The state of the clinic's side: which page is shown.

use leptos::prelude::*;
use wire::app::{AppState, LockState};
use wire::cases::{CasePage, ShowCase};
use wire::clinic::{BeginPlan, IssuedCard, Lock, PatientCode, PlanDraft, ReviewPage, ShowReview};
use wire::prescribing::OwnEdited;
use wire::visiting::{DiaryPage, ShowDiary, ShowVisit, VisitPage};

use super::filter::Filter;
use super::keeper::Keeper;
use super::receiving::Receiving;
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
    /// One patient's review in short and the next plan, to look at together.
    Together(Box<(ReviewPage, PlanDraft)>),
    /// One patient's visit.
    Visit(Box<VisitPage>),
    /// The days of a patient's diary on paper.
    Diary(Box<DiaryPage>),
    /// A page that explains the program.
    Info(InfoPage),
    /// A patient to be removed.
    Remove(String),
    /// A patient's case, and the plans that were issued.
    Case(Box<CasePage>),
    /// A card that was issued to a patient.
    Issued(String, Box<IssuedCard>),
    /// The passphrase, the lock and the saved keys.
    Keys,
    /// The clinic's own exercises and its sets; with a sentence about what was just done.
    Own(Option<String>),
    /// An exercise of the clinic's own that is being written.
    Write(Box<OwnEdited>),
}

/// Where to go back to after the lock: as little of a page as is needed to open it again.
#[derive(Clone)]
enum Left {
    Patients,
    Review(String),
    Plan(String),
    Together(String),
    Visit(String),
    Diary(String),
    Case(String),
    Info(InfoPage),
    Keys,
    Own,
}

/// The shared state of all pages of the clinic's side. It lives as long as the window.
#[derive(Clone, Copy)]
pub struct ClinicContext {
    /// The state of the whole window.
    pub app: AppContext,
    /// The page that is shown.
    pub page: RwSignal<Page>,
    /// Stores drafts of plans, and unfinished exercises.
    pub keeper: Keeper,
    /// What is looked for in the list of patients. It stays while other pages are shown.
    pub find: RwSignal<String>,
    /// Which patients of the list are shown.
    pub filter: RwSignal<Filter>,
    /// What is being received, and what was.
    pub receiving: Receiving,
    left: StoredValue<Left>,
}

impl ClinicContext {
    /// The state at the beginning, with the list of patients.
    pub fn new(app: AppContext) -> ClinicContext {
        ClinicContext {
            app,
            page: RwSignal::new(Page::Patients),
            keeper: Keeper::new(app),
            find: RwSignal::new(String::new()),
            filter: RwSignal::new(Filter::All),
            receiving: Receiving::new(app),
            left: StoredValue::new(Left::Patients),
        }
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

    /// Whether the store is unlocked.
    pub fn is_open(self) -> bool {
        let is_open = |state: &AppState| matches!(state.lock, LockState::Open { .. });
        self.app.state.with(|state| state.as_ref().is_some_and(is_open))
    }

    /// Locks the store, once the newest change of a draft is stored.
    pub fn lock(self) {
        if untrack(|| self.is_open()) {
            self.keeper.when_kept(move || self.app.request::<Lock>((), move |state| self.locked(state)));
        }
    }

    /// Drops everything that was decrypted for the window, and shows the page that asks for the passphrase.
    pub fn locked(self, state: AppState) {
        if !untrack(|| self.is_open()) {
            return;
        }
        self.left.set_value(self.page.with_untracked(|page| match page {
            Page::Patients => Left::Patients,
            Page::Review(page) => Left::Review(page.code.clone()),
            Page::Plan(code, _) => Left::Plan(code.clone()),
            Page::Together(both) => Left::Together(both.0.code.clone()),
            Page::Visit(page) => Left::Visit(page.code.clone()),
            Page::Diary(page) => Left::Diary(page.code.clone()),
            Page::Case(page) => Left::Case(page.code.clone()),
            Page::Info(page) => Left::Info(*page),
            Page::Issued(code, _) => Left::Review(code.clone()),
            Page::Keys => Left::Keys,
            Page::Own(_) | Page::Write(_) => Left::Own,
            Page::Remove(_) => Left::Patients,
        }));
        self.keeper.forget();
        self.find.set(String::new());
        self.receiving.forget();
        // First, so that the page that asks for the passphrase takes the place of all others before one of them asks for data.
        self.app.state.set(Some(state));
        self.show(Page::Patients);
    }

    /// Shows the page that was open before the lock.
    pub fn unlocked(self, state: AppState) {
        self.app.state.set(Some(state));
        match self.left.try_update_value(|left| std::mem::replace(left, Left::Patients)) {
            Some(Left::Review(code)) => self.review(code),
            Some(Left::Plan(code)) => self.plan(code),
            Some(Left::Together(code)) => self.together(code),
            Some(Left::Visit(code)) => self.visit(code),
            Some(Left::Diary(code)) => self.diary(code),
            Some(Left::Case(code)) => self.case(code),
            Some(Left::Info(page)) => self.show(Page::Info(page)),
            Some(Left::Keys) => self.show(Page::Keys),
            Some(Left::Own) => self.show(Page::Own(None)),
            Some(Left::Patients) | None => {}
        }
    }

    /// Opens a patient's review.
    pub fn review(self, code: String) {
        self.app.request::<ShowReview>(PatientCode { code }, move |page| self.show(Page::Review(Box::new(page))));
    }

    /// Opens a patient's visit.
    pub fn visit(self, code: String) {
        self.app.request::<ShowVisit>(PatientCode { code }, move |page| self.show(Page::Visit(Box::new(page))));
    }

    /// Opens a patient's diary on paper.
    pub fn diary(self, code: String) {
        self.app.request::<ShowDiary>(PatientCode { code }, move |page| self.show(Page::Diary(Box::new(page))));
    }

    /// Opens a patient's case.
    pub fn case(self, code: String) {
        self.app.request::<ShowCase>(PatientCode { code }, move |page| self.show(Page::Case(Box::new(page))));
    }

    /// Opens a patient's next plan.
    pub fn plan(self, code: String) {
        let whose = code.clone();
        self.app.request::<BeginPlan>(PatientCode { code }, move |draft| self.show(Page::Plan(whose, Box::new(draft))));
    }

    /// Opens what patient and clinician look at together.
    pub fn together(self, code: String) {
        self.app.request::<ShowReview>(PatientCode { code: code.clone() }, move |page| {
            self.app
                .request::<BeginPlan>(PatientCode { code }, move |draft| self.show(Page::Together(Box::new((page, draft)))));
        });
    }
}
