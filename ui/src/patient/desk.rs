//! What every screen of the patient's side can reach.

use exercises::id::{ItemId, PlanId};
use exercises::plan::Plan;
use exercises::slots::SlotRef;
use exercises::today::{Head, Today, TodayItem};
use leptos::prelude::*;
use wire::house::Situate;
use wire::own::{Meeting, MeetingAsk, Reminders, ShowReminders};
use wire::patient::{Begin, BeginAsk, ShowToday};

use super::page::Page;
use super::places::Place;
use super::run::{sounds, wake};
use crate::shared::House;

/// What every screen of the patient's side can reach. It lives as long as the window.
#[derive(Clone, Copy)]
pub struct Desk {
    /// The window's own.
    pub house: House,
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
}

impl Desk {
    /// Before anything is known.
    pub fn new(house: House) -> Desk {
        Desk {
            house,
            today: RwSignal::new(None),
            changes_in_ms: RwSignal::new(None),
            reminders: RwSignal::new(None),
            place: RwSignal::new(Place::Now),
            page: RwSignal::new(None),
            chosen: RwSignal::new(None),
            moved: StoredValue::new(None),
            put_away: RwSignal::new(false),
        }
    }

    /// The one of this window.
    pub fn here() -> Desk {
        expect_context()
    }

    /// Whether all this is a sample plan, of which nothing is kept.
    pub fn is_sample(self) -> bool {
        self.house.situation.with(|situation| situation.as_ref().is_some_and(|situation| situation.sample))
    }

    /// Whether the slot's figure has moved already; from now on it has.
    pub fn has_moved(self, slot: SlotRef) -> bool {
        self.moved.try_update_value(|moved| moved.replace(slot) == Some(slot)).unwrap_or_default()
    }

    /// Asks the shell for the Now page.
    pub fn refresh(self) {
        self.house.tell::<ShowToday>((), move |today| self.show(today));
        self.look_at_reminders();
    }

    /// Asks the shell how reminders stand.
    pub fn look_at_reminders(self) {
        self.house.tell::<ShowReminders>((), move |stand| self.stands(stand));
    }

    /// No reminders for so many minutes, or from now on again.
    pub fn meeting(self, minutes: Option<u16>) {
        self.house.ask::<Meeting>(MeetingAsk { minutes }, move |stand| self.stands(stand));
    }

    fn stands(self, stand: Reminders) {
        let same = self.reminders.with_untracked(|old| old.as_ref() == Some(&stand));
        if !same {
            self.reminders.set(Some(stand));
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
        self.house.fault.set(None);
        if place == Place::Now {
            self.refresh();
        }
        self.place.set(place);
    }

    /// Lays a page over the place.
    pub fn open(self, page: Page) {
        self.house.fault.set(None);
        self.page.set(Some(page));
    }

    /// Closes the page that lies over the place.
    pub fn close(self) {
        self.house.fault.set(None);
        self.page.set(None);
        self.refresh();
    }

    /// Asks whether a notification wants a slot's page, and opens it.
    pub fn look_for_call(self) {
        self.house.tell::<Situate>((), move |situation| {
            if let Some(slot) = situation.open_slot {
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
        self.begin_with(BeginAsk { plan, item, step: false });
    }

    /// Begins a run with the step that is offered.
    pub fn begin_step(self, plan: PlanId, item: ItemId) {
        self.begin_with(BeginAsk { plan, item, step: true });
    }

    fn begin_with(self, ask: BeginAsk) {
        sounds::unlock();
        wake::keep();
        self.house.ask::<Begin>(ask, move |script| {
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
