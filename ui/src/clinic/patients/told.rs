//! What was done with the files that were received.

use leptos::html;
use leptos::prelude::*;
use wire::Failure;
use wire::receiving::Receipt;
use words::Key;

use crate::clinic::context::ClinicContext;
use crate::shared::AppContext;

/// Number of lines of a list that are shown at first, and that each press adds.
const LINES: usize = 20;

/// What was done: how many of each, a line for each summary, and at the end what was refused.
#[component]
pub fn Told() -> impl IntoView {
    let (app, receiving) = (AppContext::current(), ClinicContext::current().receiving);
    let words = app.words();
    let counts = NodeRef::<html::Div>::new();
    let finished = Memo::new(move |_| receiving.report.with(|report| report.finished));
    Effect::new(move |before: Option<bool>| {
        let now = finished.get();
        // The button that stops is gone, and with it the focus if it had it.
        let lost = document().active_element().is_none_or(|element| element.tag_name() == "BODY");
        if let Some(counts) = counts.get_untracked().filter(|_| before == Some(false) && now && lost) {
            let _ = counts.focus();
        }
        now
    });
    let sum = move || {
        receiving.report.with(|report| {
            let lines = [
                (report.told() > 0)
                    .then(|| words.receive_counts(report.counts.new, report.counts.known, report.counts.refused)),
                (report.untouched > 0).then(|| words.receive_stopped(report.untouched)),
                report.nothing.then(|| words.text(Key::ReceiveNothing).to_owned()),
                (report.passed_over > 0 && !report.nothing).then(|| words.receive_passed_over(report.passed_over)),
            ];
            report.finished.then(|| lines.into_iter().flatten().map(|line| view! { <p>{line}</p> }).collect_view())
        })
    };
    view! {
        <div role="status" tabindex="-1" class="small stack-2 counts" node_ref=counts>{sum}</div>
        <Taken/>
        <Refusals/>
    }
}

/// The summaries that were received: first what is new, then what was known.
#[component]
fn Taken() -> impl IntoView {
    let report = ClinicContext::current().receiving.report;
    let shown = RwSignal::new(LINES);
    let count = Memo::new(move |_| report.with(|report| report.received()));
    // The same file may be received twice, with the same words.
    let lines = move || report.with(|report| report.first(shown.get()).into_iter().enumerate().collect::<Vec<_>>());
    view! {
        <ul class="receipts">
            <For each=lines key=|line| format!("{line:?}") children=|(_, receipt)| view! { <OneReceipt receipt/> }/>
        </ul>
        <More count shown/>
    }
}

/// What was done with one summary; it leads to the patient's review.
#[component]
fn OneReceipt(receipt: Receipt) -> impl IntoView {
    let context = ClinicContext::current();
    let line = context.app.words().received(&receipt);
    let code = receipt.outcome.code().unwrap_or_default().to_owned();
    let open = move |_| context.review(code.clone());
    view! {
        <li><button type="button" class="quiet" on:click=open>{line}<small>{receipt.file}</small></button></li>
    }
}

/// The files that were refused, those of the same reason in one line.
#[component]
fn Refusals() -> impl IntoView {
    let report = ClinicContext::current().receiving.report;
    let shown = RwSignal::new(LINES);
    let count = Memo::new(move |_| report.with(|report| report.refused().len()));
    let reasons = move || {
        report.with(|report| {
            let reasons = report.refused().iter().take(shown.get()).map(|refused| refused.failure.clone());
            reasons.enumerate().collect::<Vec<_>>()
        })
    };
    view! {
        <ul class="receipts">
            <For each=reasons key=|reason| format!("{reason:?}") children=|(n, failure)| view! { <Refusal n failure/> }/>
        </ul>
        <More count shown/>
    }
}

/// The `n`th reason for which files were refused: one file is named in the line, of several the names are folded below it.
#[component]
fn Refusal(n: usize, failure: Failure) -> impl IntoView {
    let context = ClinicContext::current();
    let (words, report) = (context.app.words(), context.receiving.report);
    let shown = RwSignal::new(LINES);
    let first = move |most: usize| {
        report.with(|report| {
            let files = report.refused().get(n).map(|refused| refused.files.iter().take(most).cloned());
            files.into_iter().flatten().enumerate().collect::<Vec<_>>()
        })
    };
    let count = Memo::new(move |_| report.with(|report| report.refused().get(n).map_or(0, |refused| refused.files.len())));
    let several = Memo::new(move |_| count.get() > 1);
    let failure = StoredValue::new(failure);
    let line = move || match count.get() {
        0 | 1 => failure.with_value(|failure| first(1).iter().map(|(_, file)| words.refused_file(file, failure)).collect()),
        count => failure.with_value(|failure| words.refused_files(count, failure)),
    };
    let names = move || first(shown.get());
    let content = move || match several.get() {
        false => line.into_any(),
        true => view! {
            <details class="fold">
                <summary><span class="title">{line}</span></summary>
                <div>
                    <ul class="files"><For each=names key=Clone::clone children=|(_, file)| view! { <li>{file}</li> }/></ul>
                    <More count shown/>
                </div>
            </details>
        }
        .into_any(),
    };
    view! { <li class="refused">{content}</li> }
}

/// A button that shows more of a list of `count` lines, as long as there are more than are `shown`.
#[component]
fn More(count: Memo<usize>, shown: RwSignal<usize>) -> impl IntoView {
    let words = AppContext::current().words();
    view! {
        <Show when=move || { count.get() > shown.get() }>
            <button type="button" class="quiet" on:click=move |_| shown.update(|shown| *shown += LINES)>
                {words.text(Key::ReceiveMore)}
            </button>
        </Show>
    }
}
