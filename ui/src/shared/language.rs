//! The choice of language.

use leptos::prelude::*;
use wire::app::{ChooseLocale, LocaleRequest};
use words::{Key, Locale};

use super::{AppContext, focus};

/// The id by which the list is found again after the page is redrawn.
const ID: &str = "language";

/// A list of the languages, each by its own name; a choice takes effect immediately.
#[component]
pub fn LanguageChoice() -> impl IntoView {
    let app = AppContext::current();
    let words = app.words();
    let chosen = app.state.with_untracked(|state| state.as_ref().and_then(|state| state.chosen_locale.clone()));
    let chosen = chosen.unwrap_or_default();
    let options = Locale::ALL.iter().map(|locale| {
        let selected = locale.tag() == chosen;
        view! { <option value=locale.tag() lang=locale.tag() selected=selected>{words.language_name(*locale)}</option> }
    });
    let choose = move |event| {
        let tag = Some(event_target_value(&event)).filter(|tag| !tag.is_empty());
        app.request::<ChooseLocale>(LocaleRequest { tag }, move |state| {
            app.state.set(Some(state));
            request_animation_frame(|| focus::give_to(ID));
        });
    };
    view! {
        <label class="language">
            {words.text(Key::LanguageLabel)}
            <select id=ID on:change=choose>
                <option value="" selected=chosen.is_empty()>{words.text(Key::LanguageAsSystem)}</option>
                {options.collect_view()}
            </select>
        </label>
    }
}
