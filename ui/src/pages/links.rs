//! Buttons that lead to the pages.

use leptos::prelude::*;
use strum::VariantArray;

use super::page::InfoPage;
use crate::shared::AppContext;

/// A button for each page.
#[component]
pub fn PageLinks(open: impl Fn(InfoPage) + Copy + Send + 'static) -> impl IntoView {
    let app = AppContext::current();
    let link = |page: InfoPage| {
        view! { <li><button type="button" class="quiet" on:click=move |_| open(page)>{app.text(page.title())}</button></li> }
    };
    let links = InfoPage::VARIANTS.iter().copied().map(link).collect_view();
    view! { <ul class="page-links">{links}</ul> }
}
