//! Receives encrypted summaries.

use js_sys::Reflect;
use leptos::html;
use leptos::prelude::*;
use wasm_bindgen::JsValue;
use web_sys::HtmlInputElement;
use wire::receiving::ENDINGS;
use words::Key;

use super::told::Told;
use crate::clinic::context::ClinicContext;
use crate::clinic::receiving::{Chosen, Progress};
use crate::shared::{AppContext, file};

/// Choosing files or a folder, how far it is, and what was done with each summary. `received` is called when what was received may be
/// shown elsewhere on the page.
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
                    <input type="file" multiple accept=ENDINGS.join(",") on:change:target=move |event| choose(event.target())/>
                </label>
                <ChooseFolder/>
            </div>
            <p class="small soft">{drop}</p>
            <Going/>
            <Told/>
        </section>
    }
}

/// Chooses a folder: in a dialogue that the shell opens, where there is one, otherwise in the page.
#[component]
fn ChooseFolder() -> impl IntoView {
    let (app, receiving) = (AppContext::current(), ClinicContext::current().receiving);
    let field = NodeRef::<html::Input>::new();
    // The shell notes it in the page. The web view of Linux cannot be asked: its fields have the property for folders, and open a dialogue
    // in which none can be chosen.
    let by_shell = Reflect::get(&window(), &"systemChoosesFolders".into()).is_ok_and(|noted| noted == JsValue::TRUE);
    if by_shell {
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
