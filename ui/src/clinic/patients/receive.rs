//! Receives encrypted summaries.

use js_sys::Reflect;
use leptos::html;
use leptos::prelude::*;
use web_sys::HtmlInputElement;
use wire::receiving::{Outcome, Receipt};
use words::Key;

use crate::clinic::context::ClinicContext;
use crate::clinic::receiving::{Chosen, Progress};
use crate::shared::{AppContext, file};

/// The files that the system's dialogue offers: sealed files, and photos of codes. What a file really is depends on its contents.
const ACCEPTED: &str = ".age,.png,.jpg,.jpeg";

/// Number of lines that are shown at first, and that each press adds.
const LINES: usize = 20;

/// Choosing files or a folder, how far it is, and a line for each summary, first those that were refused. `received` is called when what
/// was received may be shown elsewhere on the page.
#[component]
pub fn Receive(received: impl Fn() + Copy + Send + 'static) -> impl IntoView {
    let (app, receiving) = (AppContext::current(), ClinicContext::current().receiving);
    receiving.is_shown();
    Effect::new(move |seen: Option<u32>| {
        let now = receiving.news.get();
        if seen.is_some_and(|seen| seen != now) {
            received();
        }
        now
    });
    let choose = move |field: HtmlInputElement| {
        receiving.chosen(Chosen::files(file::chosen(&field)));
        // Allows the same file to be chosen again.
        field.set_value("");
    };
    let drop = move || app.text(if receiving.over.get() { Key::ReceiveDropHere } else { Key::ReceiveDrop });
    view! {
        <section class="sheet stack receive" class:over=receiving.over>
            <h2>{app.text(Key::ReceiveSummaries)}</h2>
            <p class="small soft">{app.text(Key::ReceiveWhat)}</p>
            <div class="presses">
                <label class="pick">
                    <span>{app.text(Key::ChooseFiles)}</span>
                    <input type="file" multiple accept=ACCEPTED on:change:target=move |event| choose(event.target())/>
                </label>
                <ChooseFolder/>
            </div>
            <p class="small soft">{drop}</p>
            <Going/>
            <Told/>
        </section>
    }
}

/// Chooses a folder: in the page, if the web view can, otherwise in a dialogue of the system.
#[component]
fn ChooseFolder() -> impl IntoView {
    let (app, receiving) = (AppContext::current(), ClinicContext::current().receiving);
    let field = NodeRef::<html::Input>::new();
    let can =
        document().create_element("input").is_ok_and(|field| Reflect::has(&field, &"webkitdirectory".into()) == Ok(true));
    if !can {
        return view! {
            <button type="button" disabled=app.busy on:click=move |_| receiving.choose_folder()>{app.text(Key::ChooseFolder)}</button>
        }
        .into_any();
    }
    let choose = move |field: HtmlInputElement| {
        receiving.chosen(Chosen::folder(file::chosen(&field)));
        field.set_value("");
    };
    view! {
        <label class="pick">
            <span>{app.text(Key::ChooseFolder)}</span>
            <input type="file" multiple node_ref=field prop:webkitdirectory=true on:change:target=move |event| choose(event.target())/>
        </label>
    }
    .into_any()
}

/// How far it is, and a button that stops it. It is not announced file by file: who wants to know finds it here.
#[component]
fn Going() -> impl IntoView {
    let (app, receiving) = (AppContext::current(), ClinicContext::current().receiving);
    let words = app.words();
    let goes = Memo::new(move |_| receiving.progress.with(Option::is_some));
    let progress = move || receiving.progress.get().unwrap_or(Progress { read: 0, done: 0, of: 0 });
    let said = move || {
        let Progress { read, done, of } = progress();
        if read > done { words.receive_progress_read(done, of, read) } else { words.receive_progress(done, of) }
    };
    // Reading a file is half of it, so that the bar moves on while files are read and while they are taken in.
    let halves = move || f64::from(progress().read) + f64::from(progress().done);
    let stop = move |_| receiving.stop();
    view! {
        <Show when=move || goes.get()>
            <div class="going">
                <progress aria-label=words.text(Key::ReceiveSummaries) aria-valuetext=said
                    max=move || (2 * progress().of.max(1)).to_string() prop:value=halves></progress>
                <span class="small">{said}</span>
                <button type="button" on:click=stop>{words.text(Key::ReceiveStop)}</button>
            </div>
        </Show>
    }
}

/// What was done: how many of each, and a line for each summary.
#[component]
fn Told() -> impl IntoView {
    let (app, receiving) = (AppContext::current(), ClinicContext::current().receiving);
    let words = app.words();
    let shown = RwSignal::new(LINES);
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
    let lines = move || receiving.report.with(|report| report.first(shown.get()));
    let more = move || receiving.report.with(|report| report.told() as usize > shown.get());
    view! {
        <div role="status" tabindex="-1" class="small stack-2 counts" node_ref=counts>{sum}</div>
        <ul class="receipts">{move || lines().into_iter().map(|receipt| view! { <OneReceipt receipt/> }).collect_view()}</ul>
        <Show when=more>
            <button type="button" class="quiet" on:click=move |_| shown.update(|shown| *shown += LINES)>
                {words.text(Key::ReceiveMore)}
            </button>
        </Show>
    }
}

/// What was done with one summary; it leads to the patient's review.
#[component]
fn OneReceipt(receipt: Receipt) -> impl IntoView {
    let context = ClinicContext::current();
    let line = context.app.words().receipt(&receipt);
    if let Outcome::Refused(_) = receipt.outcome {
        return view! { <li class="refused">{line}</li> }.into_any();
    }
    let code = receipt.outcome.code().unwrap_or_default().to_owned();
    let open = move |_| context.review(code.clone());
    view! { <li><button type="button" class="quiet" on:click=open>{line}</button></li> }.into_any()
}
