//! Every byte of a summary, with what it means.

use leptos::prelude::*;
use wire::patient::{SealRequest, ShowSummaryBytes, SummaryBytes};
use words::{Key, Words};

use super::AppContext;

/// A button that shows the bytes of the summary that `asked` describes, and hides them again. They are hidden as well when it describes
/// another one.
#[component]
pub fn ShownBytes(asked: impl Fn() -> SealRequest + Copy + Send + Sync + 'static) -> impl IntoView {
    let app = AppContext::current();
    let shown = RwSignal::new(None::<SummaryBytes>);
    Effect::new(move || {
        asked();
        shown.set(None);
    });
    let press = move |_| match shown.with_untracked(Option::is_some) {
        true => shown.set(None),
        false => app.request::<ShowSummaryBytes>(untrack(asked), move |bytes| shown.set(Some(bytes))),
    };
    let is_shown = Memo::new(move |_| shown.with(Option::is_some));
    let name = move || app.text(if is_shown.get() { Key::BytesHide } else { Key::BytesShow });
    view! {
        <button type="button" class="quiet" aria-expanded=move || is_shown.get().to_string() disabled=app.busy on:click=press>{name}</button>
        {move || shown.get().map(|bytes| list(app.words(), bytes))}
    }
}

/// The sizes, and each part with its bytes.
fn list(words: Words, SummaryBytes { parts, plain, packed }: SummaryBytes) -> impl IntoView {
    let parts = parts.into_iter().map(|(part, hex)| {
        let name = words.summary_part(part);
        let count = words.bytes_count(hex.split(' ').count());
        view! {
            <li class="stack-1">
                <p>{name}" "<span class="small soft">{count}</span></p>
                <code class="bytes" translate="no" tabindex="0" data-scrolls role="group" aria-label=name>{hex}</code>
            </li>
        }
    });
    view! {
        <p class="small">{words.bytes_sizes(plain, packed)}" "{words.text(Key::BytesAround)}</p>
        <ul class="stack bytes-list">{parts.collect_view()}</ul>
    }
}
