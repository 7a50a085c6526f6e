//! Stores drafts of plans, and unfinished exercises, in the shell while they are edited.

use exercises::catalogue::Exercise;
use exercises::id::ItemId;
use leptos::prelude::*;
use leptos::task::spawn_local;
use std::cell::Cell;
use std::collections::BTreeSet;
use std::rc::Rc;
use wire::clinic::{AskKeep, KeepDraft};
use wire::prescribing::{KeepOwnDraft, OwnDraftRequest};

use crate::invoke;
use crate::shared::AppContext;

/// Sends each change to the shell. It lives as long as the window, so that the last change is stored even if its page is left.
#[derive(Clone, Copy)]
pub struct Keeper {
    app: AppContext,
    /// The newest state that was not sent to the shell yet.
    newest: StoredValue<Option<AskKeep>>,
    /// The newest state of an exercise that was not sent to the shell yet.
    newest_exercise: StoredValue<Option<(Unfinished, Exercise)>, LocalStorage>,
    /// The items, with the patient's code, for which somebody pressed an option since the last card. Only as long as the window is open.
    pub chosen: RwSignal<BTreeSet<(String, ItemId)>>,
    /// Whether the shell is storing a state.
    busy: StoredValue<bool>,
    /// What is done once everything is stored.
    then: StoredValue<Option<Then>, LocalStorage>,
}

/// What is done once everything is stored.
type Then = Box<dyn FnOnce()>;

/// The number under which the shell keeps an unfinished exercise; `None` until it has kept it for the first time.
pub type Unfinished = Rc<Cell<Option<i64>>>;

impl Keeper {
    /// A keeper without a state to store.
    pub fn new(app: AppContext) -> Keeper {
        Keeper {
            app,
            newest: StoredValue::new(None),
            newest_exercise: StoredValue::new_local(None),
            chosen: RwSignal::new(BTreeSet::new()),
            busy: StoredValue::new(false),
            then: StoredValue::new_local(None),
        }
    }

    /// Stores a state. While the shell is still busy with an earlier one, only the newest state waits.
    pub fn keep(self, state: AskKeep) {
        self.newest.set_value(Some(state));
        self.send();
    }

    /// Stores an unfinished exercise as [`Keeper::keep`] does a plan.
    pub fn keep_exercise(self, unfinished: Unfinished, exercise: Exercise) {
        self.newest_exercise.set_value(Some((unfinished, exercise)));
        self.send();
    }

    fn send(self) {
        if self.busy.get_value() {
            return;
        }
        self.busy.set_value(true);
        spawn_local(async move {
            loop {
                let plan = self.newest.try_update_value(Option::take).flatten();
                let exercise = self.newest_exercise.try_update_value(Option::take).flatten();
                if plan.is_none() && exercise.is_none() {
                    break;
                }
                if let Some(state) = plan
                    && let Err(failure) = invoke::call::<KeepDraft>(&state).await
                {
                    self.app.fault.set(Some(failure));
                }
                if let Some((unfinished, exercise)) = exercise {
                    self.send_exercise(unfinished, exercise).await;
                }
            }
            self.busy.set_value(false);
            if let Some(then) = self.then.try_update_value(Option::take).flatten() {
                then();
            }
        });
    }

    async fn send_exercise(self, unfinished: Unfinished, exercise: Exercise) {
        let request = OwnDraftRequest { draft: unfinished.get(), exercise };
        match invoke::call::<KeepOwnDraft>(&request).await {
            Ok(number) => unfinished.set(Some(number.draft)),
            Err(failure) => self.app.fault.set(Some(failure)),
        }
    }

    /// Calls `then` once the newest state is stored: at once, if nothing waits.
    pub fn when_kept(self, then: impl FnOnce() + 'static) {
        if self.busy.get_value() {
            self.then.set_value(Some(Box::new(then)));
        } else {
            then();
        }
    }

    /// Drops the waiting states, because the plan was issued or discarded, or the store is locked.
    pub fn forget(self) {
        self.newest.set_value(None);
        self.newest_exercise.set_value(None);
        self.chosen.update(BTreeSet::clear);
    }
}
