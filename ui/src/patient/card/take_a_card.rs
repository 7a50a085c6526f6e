//! Taking a new card, as a page of its own.

use leptos::prelude::*;
use words::Key;

use super::form::CardForm;
use crate::patient::context::PatientContext;
use crate::shared::Fault;

/// The form with a way back.
#[component]
pub fn TakeACard() -> impl IntoView {
    let context = PatientContext::current();
    view! {
        <main class="screen">
            <div class="column stack-5">
                <Fault/>
                <CardForm title=Key::AddNewCard>
                    <button type="button" class="quiet" data-back="" on:click=move |_| context.back()>{context.app.text(Key::Back)}</button>
                </CardForm>
            </div>
        </main>
    }
}
