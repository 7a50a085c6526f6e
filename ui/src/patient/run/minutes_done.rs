//! Asks how long a walk or a rest was of which the device slept through a part.

use exercises::guide::Press;
use exercises::run::Work;
use leptos::prelude::*;
use words::Key;

use super::driver::Driver;
use crate::shared::AppContext;

/// Milliseconds in a minute.
const MINUTE_MS: u32 = 60_000;

/// The minutes that the clock says, which can be made fewer, and a button to save them.
#[component]
pub fn MinutesDone() -> impl IntoView {
    let words = AppContext::current().words();
    let driver = Driver::current();
    let most = i64::from(counted(&driver.run().work).div_ceil(MINUTE_MS));
    let minutes = RwSignal::new(most);
    let label = words.text(Key::MinutesDone);
    let unseen = driver.unseen_minutes();
    let save = move |_| driver.press(Press::Minutes(u8::try_from(minutes.get_untracked()).unwrap_or(u8::MAX)));
    view! {
        <div class="stack">
            <p>{words.done_unseen(unseen)}</p>
            <div class="row number-row" role="group" aria-label=label>
                <button type="button" class="step" aria-label=words.step_less(label) disabled=move || minutes.get() <= 0 on:click=move |_| minutes.update(|n| *n -= 1)>"−"</button>
                <output class="number">{move || minutes.get()}</output>
                <button type="button" class="step" aria-label=words.step_more(label) disabled=move || minutes.get() >= most on:click=move |_| minutes.update(|n| *n += 1)>"+"</button>
            </div>
            <button type="button" class="main" on:click=save>{words.text(Key::SaveMinutes)}</button>
        </div>
    }
}

fn counted(work: &Work) -> u32 {
    if let Work::Timed(parts) = work { parts.iter().map(|part| part.held_ms).sum() } else { 0 }
}
