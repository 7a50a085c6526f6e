//! Buttons that lead to the pages.

use leptos::prelude::*;

use super::page::InfoPage;
use crate::shared::AppContext;

/// A button for each page.
#[component]
pub fn PageLinks(open: impl Fn(InfoPage) + Copy + Send + 'static) -> impl IntoView {
    let app = AppContext::current();
    let links = InfoPage::ALL.map(|page| {
        view! { <li><button type="button" class="quiet" on:click=move |_| open(page)>{app.text(page.title())}</button></li> }
    });
    view! { <ul class="page-links">{links}</ul> }
}
