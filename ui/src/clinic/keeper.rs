//! Stores drafts of plans in the shell while they are edited.

use leptos::prelude::*;
use leptos::task::spawn_local;
use wire::clinic::{AskKeep, KeepDraft};

use crate::invoke;
use crate::shared::AppContext;

/// Sends each change to the shell. It lives as long as the window, so that the last change is stored even if its page is left.
#[derive(Clone, Copy)]
pub struct Keeper {
    app: AppContext,
    /// The newest state that was not sent to the shell yet.
    newest: StoredValue<Option<AskKeep>>,
    /// Whether the shell is storing a state.
    busy: StoredValue<bool>,
    /// What is done once everything is stored.
    then: StoredValue<Option<Then>, LocalStorage>,
}

/// What is done once everything is stored.
type Then = Box<dyn FnOnce()>;

impl Keeper {
    /// A keeper without a state to store.
    pub fn new(app: AppContext) -> Keeper {
        Keeper { app, newest: StoredValue::new(None), busy: StoredValue::new(false), then: StoredValue::new_local(None) }
    }

    /// Stores a state. While the shell is still busy with an earlier one, only the newest state waits.
    pub fn keep(self, state: AskKeep) {
        self.newest.set_value(Some(state));
        if self.busy.get_value() {
            return;
        }
        self.busy.set_value(true);
        spawn_local(async move {
            while let Some(state) = self.newest.try_update_value(Option::take).flatten() {
                if let Err(failure) = invoke::call::<KeepDraft>(&state).await {
                    self.app.fault.set(Some(failure));
                }
            }
            self.busy.set_value(false);
            if let Some(then) = self.then.try_update_value(Option::take).flatten() {
                then();
            }
        });
    }

    /// Calls `then` once the newest state is stored: at once, if nothing waits.
    pub fn when_kept(self, then: impl FnOnce() + 'static) {
        if self.busy.get_value() {
            self.then.set_value(Some(Box::new(then)));
        } else {
            then();
        }
    }

    /// Drops the waiting state, because the plan was issued or discarded.
    pub fn forget(self) {
        self.newest.set_value(None);
    }
}
