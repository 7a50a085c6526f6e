//! What every screen of the patient's side can reach.

use exercises::id::{ItemId, PlanId};
use exercises::plan::Plan;
use exercises::slots::SlotRef;
use exercises::today::{Head, Today, TodayItem};
use leptos::prelude::*;
use wire::app::ShowAppState;
use wire::device::{Meeting, MeetingRequest, Reminders, ShowReminders};
use wire::patient::{Begin, BeginRequest, ShowToday};

use super::page::{Page, Place};
use super::{sounds, wake};
use crate::shared::AppContext;

/// What every screen of the patient's side can reach. It lives as long as the window.
#[derive(Clone, Copy)]
pub struct PatientContext {
    /// The window's own.
    pub app: AppContext,
    /// The Now page; `None` until the shell has answered.
    pub today: RwSignal<Option<Today>>,
    /// Milliseconds from the shell's last answer until the Now page would say something else by the passing of time.
    pub changes_in_ms: RwSignal<Option<u64>>,
    /// How reminders stand; `None` until the shell has answered.
    pub reminders: RwSignal<Option<Reminders>>,
    /// The place chosen.
    pub place: RwSignal<Place>,
    /// What lies over it.
    pub page: RwSignal<Option<Page>>,
    /// The slot that the person looks at, where it is not the one that the page would speak of.
    pub chosen: RwSignal<Option<SlotRef>>,
    /// The slot whose figure has moved: its page is drawn anew as time passes, and the figure then rests.
    moved: StoredValue<Option<SlotRef>>,
    /// Questions of the day that the person put away until the window opens again.
    pub put_away: RwSignal<bool>,
    /// Whether the window was to be closed, and the person is asked what becomes of the reminders.
    pub closing: RwSignal<bool>,
}

impl PatientContext {
    /// Before anything is known.
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
            put_away: RwSignal::new(false),
            closing: RwSignal::new(false),
        }
    }

    /// The one of this window.
    pub fn current() -> PatientContext {
        expect_context()
    }

    /// Whether all this is a sample plan, of which nothing is kept.
    pub fn is_sample(self) -> bool {
        self.app.state.with(|state| state.as_ref().is_some_and(|state| state.sample))
    }

    /// Whether the slot's figure has moved already; from now on it has.
    pub fn mark_moved(self, slot: SlotRef) -> bool {
        self.moved.try_update_value(|moved| moved.replace(slot) == Some(slot)).unwrap_or_default()
    }

    /// Asks the shell for the Now page.
    pub fn refresh(self) {
        self.app.query::<ShowToday>((), move |today| self.show(today));
        self.load_reminders();
    }

    /// Asks the shell how reminders stand.
    pub fn load_reminders(self) {
        self.app.query::<ShowReminders>((), move |reminders| self.show_reminders(reminders));
    }

    /// No reminders for so many minutes, or from now on again.
    pub fn meeting(self, minutes: Option<u16>) {
        self.app.request::<Meeting>(MeetingRequest { minutes }, move |reminders| self.show_reminders(reminders));
    }

    fn show_reminders(self, reminders: Reminders) {
        let same = self.reminders.with_untracked(|old| old.as_ref() == Some(&reminders));
        if !same {
            self.reminders.set(Some(reminders));
        }
    }

    /// Shows what the shell answered. A page that says the same is not drawn anew.
    pub fn show(self, today: Today) {
        self.changes_in_ms.set(Some(today.changes_in_ms()));
        let same = self.today.with_untracked(|old| old.as_ref().is_some_and(|old| old.says_the_same(&today)));
        if !same {
            self.today.set(Some(today));
        }
    }

    /// Goes to a place; whatever lay over it is closed.
    pub fn go(self, place: Place) {
        self.page.set(None);
        self.app.fault.set(None);
        if place == Place::Now {
            self.refresh();
        }
        self.place.set(place);
    }

    /// Lays a page over the place.
    pub fn open(self, page: Page) {
        self.app.fault.set(None);
        self.page.set(Some(page));
    }

    /// Closes the page that lies over the place.
    pub fn close(self) {
        self.app.fault.set(None);
        self.page.set(None);
        self.refresh();
    }

    /// Asks whether a notification wants a slot's page, and opens it.
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

    /// Begins a run of an item. Called by a press, so that sound and screen may be claimed.
    pub fn begin(self, plan: PlanId, item: ItemId) {
        self.begin_with(BeginRequest { plan, item, step: false });
    }

    /// Begins a run with the step that is offered.
    pub fn begin_step(self, plan: PlanId, item: ItemId) {
        self.begin_with(BeginRequest { plan, item, step: true });
    }

    fn begin_with(self, request: BeginRequest) {
        sounds::unlock();
        wake::keep();
        self.app.request::<Begin>(request, move |script| {
            let script = Box::new(script);
            self.open(if script.first { Page::Cautions(script) } else { Page::Run(script) });
        });
    }

    /// The plan to which a report belongs that names no item: that of the item spoken of, else the first.
    pub fn any_plan(self) -> Option<PlanId> {
        self.today.with_untracked(|today| {
            let today = today.as_ref()?;
            today.item.as_ref().or(today.items.first()).map(|item| item.plan)
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

    /// Whether nothing can be asked of a plan yet.
    pub fn has_no_plan(self) -> bool {
        self.today.with(|today| today.as_ref().is_some_and(|today| today.head == Head::NoPlan))
    }
}

/// A complaint's name, for an item that serves one.
pub fn served(plan: &Plan, item: &exercises::plan::Item) -> Option<String> {
    let id = item.serves?;
    plan.prescription.complaints.iter().find(|complaint| complaint.id == id).map(|complaint| complaint.name.clone())
}
