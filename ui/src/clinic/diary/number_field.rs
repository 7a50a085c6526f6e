//! One field of the table.

use chrono::NaiveDate;
use leptos::prelude::*;

use super::typed::{Column, Typed};

/// A field for a number, with what was due beside it.
#[component]
pub fn NumberField(typed: Typed, day: NaiveDate, column: Column, label: String, due: Option<String>) -> impl IntoView {
    let value = move || typed.shown(day, column);
    let wrong = Memo::new(move |_| !typed.shown(day, column).trim().is_empty() && typed.number(day, column).is_none());
    let put = move |text: String| typed.put(day, column, text);
    view! {
        <td>
            <span class="entered">
                <input type="text" inputmode="numeric" maxlength="2" autocomplete="off" aria-label=label
                    aria-invalid=move || wrong.get().then_some("true") prop:value=value
                    on:input:target=move |event| put(event.target().value())/>
                <small class="soft">{due}</small>
            </span>
        </td>
    }
}
