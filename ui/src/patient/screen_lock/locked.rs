//! The window while it is locked.

use leptos::prelude::*;
use wire::device::{ScreenCode, UnlockScreen};
use words::Key;

use crate::shared::line::TimeIsSet;
use crate::shared::{AppContext, Fault};

/// A field for the code. Calling for help needs none.
#[component]
pub fn Locked() -> impl IntoView {
    let app = AppContext::current();
    let code = RwSignal::new(String::new());
    let open = move |event: leptos::ev::SubmitEvent| {
        event.prevent_default();
        let typed = code.get_untracked().into();
        code.set(String::new());
        app.request::<UnlockScreen>(ScreenCode { code: typed }, move |state| app.state.set(Some(state)));
    };
    view! {
        <div class="window">
            <main class="screen">
                <form class="column stack-5" on:submit=open>
                    <div><p class="soft">{app.text(Key::AppName)}</p><h1>{app.text(Key::ScreenLockedTitle)}</h1></div>
                    <Fault/>
                    <label>{app.text(Key::ScreenLockCode)}
                        <input type="password" autocomplete="off" prop:value=code
                            on:input:target=move |event| code.set(event.target().value())/></label>
                    <button type="submit" class="main" disabled=move || code.with(String::is_empty) || app.busy.get()>
                        {app.text(Key::ScreenLockedOpen)}
                    </button>
                    <p>{app.text(Key::ScreenLockedEmergency)}</p>
                    <p class="small soft">{app.text(Key::ScreenLockForgotten)}</p>
                    <TimeIsSet/>
                </form>
            </main>
        </div>
    }
}
