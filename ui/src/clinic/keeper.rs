//! Plans that are being composed, kept by the shell as one works.

use leptos::prelude::*;
use leptos::task::spawn_local;
use wire::clinic::{AskKeep, KeepDraft};

use crate::invoke;
use crate::shared::AppContext;

/// Hands each change to the shell. It lives as long as the window, so that the last change of a page that is left is kept too.
#[derive(Clone, Copy)]
pub struct Keeper {
    app: AppContext,
    /// The newest state that the shell has not been asked to keep yet.
    newest: StoredValue<Option<AskKeep>>,
    /// Whether the shell is keeping one.
    busy: StoredValue<bool>,
}

impl Keeper {
    /// With nothing to keep yet.
    pub fn new(app: AppContext) -> Keeper {
        Keeper { app, newest: StoredValue::new(None), busy: StoredValue::new(false) }
    }

    /// Has a state kept. While the shell is still busy with an earlier one, only the newest waits.
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
        });
    }

    /// Lets go of what waits to be kept: it was issued or discarded.
    pub fn forget(self) {
        self.newest.set_value(None);
    }
}
