//! The shared state of all screens of the patient's side.

use exercises::id::{ItemId, PlanId};
use exercises::plan::Plan;
use exercises::slots::SlotRef;
use exercises::today::{Head, Today, TodayItem};
use leptos::prelude::*;
use std::time::Duration;
use wire::app::ShowAppState;
use wire::device::{Meeting, MeetingRequest, Reminders, ShowReminders};
use wire::patient::{Begin, BeginRequest, ShowToday, TakeAnswerBack};

use super::given::Given;
use super::page::{Page, Place};
use super::{sounds, wake};
use crate::shared::AppContext;
use crate::shared::top::{self, ScrolledTo};

/// For how long an answer can be taken back where it was given.
pub const UNDO_FOR: Duration = Duration::from_secs(10);

/// The shared state of all screens of the patient's side. It lives as long as the window.
#[derive(Clone, Copy)]
pub struct PatientContext {
    /// The state of the whole window.
    pub app: AppContext,
    /// The Now page; `None` until the shell has answered.
    pub today: RwSignal<Option<Today>>,
    /// Milliseconds from the shell's last answer until the Now page changes simply because time passes.
    pub changes_in_ms: RwSignal<Option<u64>>,
    /// The state of the reminders; `None` until the shell has answered.
    pub reminders: RwSignal<Option<Reminders>>,
    /// The main page that was chosen.
    pub place: RwSignal<Place>,
    /// The page that covers the main page.
    pub page: RwSignal<Option<Page>>,
    /// The slot that the person looks at, if it differs from the one that the page would show.
    pub chosen: RwSignal<Option<SlotRef>>,
    /// The slot whose figure has already moved. Its page is redrawn as time passes, and the figure must not move again.
    moved: StoredValue<Option<SlotRef>>,
    /// The pages that the person came through to the one that is shown, the main page first.
    left: StoredValue<Vec<(Option<Page>, ScrolledTo)>>,
    /// Where the page was left to which the person is returning.
    returning: StoredValue<Option<ScrolledTo>>,
    /// The answer that the person gave last and can still take back.
    pub answered: RwSignal<Option<Given>>,
    /// Whether the person closed the day's questions until the window opens again.
    pub put_away: RwSignal<bool>,
    /// Whether the person is being asked about closing the window and the reminders.
    pub closing: RwSignal<bool>,
}

impl PatientContext {
    /// The state before anything is known.
    pub fn new(app: AppContext) -> PatientContext {
        PatientContext {
            app,
            today: RwSignal::new(None),
            changes_in_ms: RwSignal::new(None),
            reminders: RwSignal::new(None),
            place: RwSignal::new(Place::Now),
            page: RwSignal::new(None),
            chosen: RwSignal::new(None),
            moved: StoredValue::new(None),
            left: StoredValue::new(Vec::new()),
            returning: StoredValue::new(None),
            answered: RwSignal::new(None),
            put_away: RwSignal::new(false),
            closing: RwSignal::new(false),
        }
    }

    /// The context of this window.
    pub fn current() -> PatientContext {
        expect_context()
    }

    /// Whether this is a sample plan, of which nothing is kept.
    pub fn is_sample(self) -> bool {
        self.app.state.with(|state| state.as_ref().is_some_and(|state| state.sample))
    }

    /// Returns whether the slot's figure has already moved, and records that it has.
    pub fn mark_moved(self, slot: SlotRef) -> bool {
        self.moved.try_update_value(|moved| moved.replace(slot) == Some(slot)).unwrap_or_default()
    }

    /// Asks the shell for the Now page.
    pub fn refresh(self) {
        self.app.query::<ShowToday>((), move |today| self.show(today));
        self.load_reminders();
    }

    /// Asks the shell for the state of the reminders.
    pub fn load_reminders(self) {
        self.app.query::<ShowReminders>((), move |reminders| self.show_reminders(reminders));
    }

    /// Suppresses reminders for this many minutes; `None` ends that.
    pub fn meeting(self, minutes: Option<u16>) {
        self.app.request::<Meeting>(MeetingRequest { minutes }, move |reminders| self.show_reminders(reminders));
    }

    fn show_reminders(self, reminders: Reminders) {
        let same = self.reminders.with_untracked(|old| old.as_ref() == Some(&reminders));
        if !same {
            self.reminders.set(Some(reminders));
        }
    }

    /// Shows the shell's answer. A page with the same content is not redrawn.
    pub fn show(self, today: Today) {
        self.changes_in_ms.set(Some(today.changes_in_ms()));
        let same = self.today.with_untracked(|old| old.as_ref().is_some_and(|old| old.says_the_same(&today)));
        if !same {
            self.today.set(Some(today));
        }
    }

    /// Goes to a main page and closes any page that covers it.
    pub fn go(self, place: Place) {
        self.left.set_value(Vec::new());
        self.page.set(None);
        self.app.fault.set(None);
        if place == Place::Now {
            self.refresh();
        }
        self.place.set(place);
    }

    /// Opens a page that covers the one that is shown; [`PatientContext::back`] returns to that one.
    pub fn open(self, page: Page) {
        let left = (self.page.get_untracked(), top::scrolled_to());
        self.left.update_value(|pages| pages.push(left));
        self.replace(page);
    }

    /// Shows a page in place of the one that is shown, to which there is no way back.
    pub fn replace(self, page: Page) {
        // A press may come before the page that was returned to has gone to its place, which is not the new page's.
        self.returning.set_value(None);
        self.app.fault.set(None);
        self.page.set(Some(page));
    }

    /// Returns to the page from which this one was opened, at the place where it was left.
    pub fn back(self) {
        let left = self.left.try_update_value(Vec::pop).flatten();
        self.return_to(left);
    }

    /// Closes all pages that cover the main page, because what they were opened for is done.
    pub fn close(self) {
        let left = self.left.try_update_value(std::mem::take).and_then(|pages| pages.into_iter().next());
        // On Now there is something else at the top.
        self.return_to(left.filter(|_| self.place.get_untracked() != Place::Now));
    }

    fn return_to(self, left: Option<(Option<Page>, ScrolledTo)>) {
        let (page, at) = left.unzip();
        self.returning.set_value(at);
        self.app.fault.set(None);
        self.page.set(page.flatten());
        self.refresh();
    }

    /// Where the page that is now shown was left, if the person is returning to it.
    pub fn returning(self) -> Option<ScrolledTo> {
        self.returning.try_update_value(Option::take).flatten()
    }

    /// Asks whether a notification requested a slot's page, and opens it.
    pub fn open_requested_slot(self) {
        self.app.query::<ShowAppState>((), move |state| {
            if let Some(slot) = state.open_slot {
                self.open_slot(slot);
            }
        });
    }

    /// Opens a slot's page, unless an exercise is being done.
    pub fn open_slot(self, slot: SlotRef) {
        if !self.running() {
            self.chosen.set(Some(slot));
            self.go(Place::Now);
        }
    }

    /// Whether an exercise is being done.
    pub fn running(self) -> bool {
        self.page.with_untracked(|page| matches!(page, Some(Page::Run(_) | Page::Cautions(_))))
    }

    /// Takes back an answer of today and asks its question again, before those that are still open on the page.
    pub fn take_back(self, given: Given) {
        self.app.request::<TakeAnswerBack>(given.answer(), move |today| {
            self.answered.set(None);
            self.show(today);
            let open = match self.page.get_untracked() {
                Some(Page::After(questions)) => questions,
                Some(_) => Vec::new(),
                None => return self.open(Page::After(vec![given.question])),
            };
            self.replace(Page::After(std::iter::once(given.question).chain(open).collect()));
        });
    }

    /// The clinic of a plan with its telephone number, if its card has one.
    pub fn phone(self, plan: Option<PlanId>) -> Option<(String, String)> {
        self.today.with_untracked(|today| {
            let clinic = today.as_ref()?.clinics.iter().find(|clinic| Some(clinic.plan) == plan)?;
            Some((clinic.name.clone(), clinic.phone.clone()?))
        })
    }

    /// Begins a run of an item. Must be called by a press, so that sound and keeping the screen awake are allowed.
    pub fn begin(self, plan: PlanId, item: ItemId) {
        self.begin_with(BeginRequest { plan, item, step: false });
    }

    /// Begins a run with the change that is offered.
    pub fn begin_step(self, plan: PlanId, item: ItemId) {
        self.begin_with(BeginRequest { plan, item, step: true });
    }

    fn begin_with(self, request: BeginRequest) {
        sounds::unlock();
        wake::keep();
        self.app.request::<Begin>(request, move |script| {
            let script = Box::new(script);
            self.open(if script.cautions_first { Page::Cautions(script) } else { Page::Run(script) });
        });
    }

    /// The plan for a report that names no item: that of the item shown, otherwise the first.
    pub fn any_plan(self) -> Option<PlanId> {
        self.today.with_untracked(|today| {
            let today = today.as_ref()?;
            today.item.as_ref().or(today.items.first()).map(|item| item.plan)
        })
    }

    /// The only item there is; `None` if there are several.
    pub fn only_item(self) -> Option<(PlanId, ItemId)> {
        self.today.with_untracked(|today| match today.as_ref()?.items.as_slice() {
            [item] => Some((item.plan, item.item.id)),
            _ => None,
        })
    }

    /// The item of a slot.
    pub fn item_of(self, slot: SlotRef) -> Option<TodayItem> {
        self.today.with(|today| {
            let today = today.as_ref()?;
            let plan = today.string.iter().find(|knot| knot.slot == slot).map(|knot| knot.plan)?;
            today.items.iter().find(|item| item.item.id == slot.item && item.plan == plan).cloned()
        })
    }

    /// Whether there is no plan yet.
    pub fn has_no_plan(self) -> bool {
        self.today.with(|today| today.as_ref().is_some_and(|today| today.head == Head::NoPlan))
    }
}

/// The name of the complaint for which an item is meant.
pub fn served(plan: &Plan, item: &exercises::plan::Item) -> Option<String> {
    let id = item.serves?;
    plan.prescription.complaints.iter().find(|complaint| complaint.id == id).map(|complaint| complaint.name.clone())
}
