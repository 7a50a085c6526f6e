//! A stop-watch for standing on one leg: one key or touch begins, the next ends.

use exercises::visit::{MAX_TRIALS, STANCE_CAP_TENTHS};
use leptos::prelude::*;
use words::Key;

use super::context::VisitContext;
use crate::shared::clock;

/// How often the shown time is renewed, in milliseconds.
const RENEWED_MS: u64 = 100;

/// The running time in large digits. Each ended trial is added to the results; at the cap it ends by itself.
#[component]
pub fn StopWatch() -> impl IntoView {
    let context = VisitContext::current();
    let (words, results) = (context.words(), context.forms.results);
    let began = RwSignal::new(None::<f64>);
    let shown = RwSignal::new(0_i32);
    let end = move || {
        let Some(from) = began.get_untracked() else { return };
        let tenths = (((clock::steady_ms() - from) / 100.0).round() as i32).min(STANCE_CAP_TENTHS);
        began.set(None);
        shown.set(tenths);
        results.update(|text| {
            let before: Vec<String> = text.split_whitespace().map(str::to_owned).collect();
            // A fourth trial takes the place of all before.
            let kept = if before.len() < MAX_TRIALS { before } else { Vec::new() };
            let now = words.shown(words.number(f64::from(tenths) / 10.0));
            *text = kept.into_iter().chain([now]).collect::<Vec<_>>().join(" ");
        });
    };
    clock::every(RENEWED_MS, move || {
        if let Some(from) = began.get_untracked() {
            let tenths = ((clock::steady_ms() - from) / 100.0) as i32;
            if tenths >= STANCE_CAP_TENTHS { end() } else { shown.set(tenths) }
        }
    });
    let press = move |_| match began.get_untracked() {
        Some(_) => end(),
        None => {
            shown.set(0);
            began.set(Some(clock::steady_ms()));
        }
    };
    let runs = Memo::new(move |_| began.with(Option::is_some));
    view! {
        <button type="button" class="stop-watch" class:runs=runs on:click=press>
            <span class="number" aria-hidden="true">{move || words.shown(words.number(f64::from(shown.get()) / 10.0))}</span>
            <span>{move || words.text(if runs.get() { Key::VisitWatchStop } else { Key::VisitWatchStart })}</span>
        </button>
    }
}
