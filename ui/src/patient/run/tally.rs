//! A test by repetitions in a set time: the person presses for each complete movement, or says the number afterwards.

use exercises::day_string;
use exercises::guide::{GuideView, Phase, Press};
use leptos::prelude::*;
use wire::patient::RunScript;
use words::Key;

use super::driver::Driver;
use super::guided::Guided;
use super::run_string::RunStringView;
use super::seconds::Seconds;
use crate::patient::sounds;
use crate::shared::AppContext;

/// The screen of a test by repetitions.
#[component]
pub fn TallyRun(script: Box<RunScript>, something_wrong: impl Fn() + Copy + Send + 'static) -> impl IntoView {
    let driver = Driver::current();
    let going = Signal::derive(move || day_string::hold(straight(&driver.view.get())));
    let seconds = Memo::new(move |_| driver.view.get().seconds);
    let counted = Memo::new(move |_| driver.view.get().tally.filter(|_| driver.view.get().phase == Phase::Tallying));
    let pressed = view! { <Buttons/> }.into_any();
    view! {
        <Guided script something_wrong pressed>
            <RunStringView going><Seconds seconds/></RunStringView>
            {move || counted.get().map(|counted| view! { <p class="count number"><span class="seconds">{counted}</span></p> })}
        </Guided>
    }
}

/// How much of the string is straight.
fn straight(view: &GuideView) -> f64 {
    match view.phase {
        Phase::Tallying => view.progress,
        Phase::Saying | Phase::Ended(_) => 1.0,
        _ => 0.0,
    }
}

/// The button that starts the count-in, then the large one for each movement, then the question for the number.
#[component]
fn Buttons() -> impl IntoView {
    let words = AppContext::current().words();
    let driver = Driver::current();
    let phase = Memo::new(move |_| driver.view.get().phase);
    let start = move |_| {
        sounds::unlock();
        driver.press(Press::Next);
    };
    let count = move |_| driver.press(Press::CountOne);
    move || match phase.get() {
        Phase::Waiting => {
            view! { <button type="button" class="main" on:click=start>{words.text(Key::StartCount)}</button> }.into_any()
        }
        Phase::Tallying => {
            view! { <button type="button" class="count-one" on:click=count>{words.text(Key::CountOne)}</button> }.into_any()
        }
        Phase::Saying => view! { <HowMany/> }.into_any(),
        _ => ().into_any(),
    }
}

/// Asks for the number: what was pressed is shown, and can be corrected; if nothing was pressed, no number stands there that somebody
/// could confirm unseen.
#[component]
fn HowMany() -> impl IntoView {
    let words = AppContext::current().words();
    let driver = Driver::current();
    let number = RwSignal::new(driver.view.with_untracked(|view| view.tally));
    let label = words.text(Key::HowManyComplete);
    let typed = move |text: String| number.set(text.trim().parse().ok());
    let add = move |by: i8| number.update(|number| *number = Some(number.unwrap_or_default().saturating_add_signed(by)));
    let save = move |_| {
        if let Some(number) = number.get_untracked() {
            driver.press(Press::Number(number));
        }
    };
    view! {
        <div class="stack">
            <p class="soft">{words.text(Key::HowManyWhat)}</p>
            <div class="row number-row" role="group" aria-label=label>
                <button type="button" class="step" aria-label=words.step_less(label) on:click=move |_| add(-1)>"−"</button>
                <input
                    type="text"
                    inputmode="numeric"
                    class="number"
                    aria-label=label
                    prop:value=move || number.get().map(|number| number.to_string()).unwrap_or_default()
                    on:input=move |event| typed(event_target_value(&event))
                />
                <button type="button" class="step" aria-label=words.step_more(label) on:click=move |_| add(1)>"+"</button>
            </div>
            <button type="button" class="main" disabled=move || number.get().is_none() on:click=save>{words.text(Key::SaveNumber)}</button>
        </div>
    }
}
