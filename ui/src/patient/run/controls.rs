//! What can be pressed during holds and repetitions.

use exercises::guide::{Phase, Press};
use leptos::prelude::*;
use words::Key;

use super::driver::Driver;
use super::sounds;
use crate::shared::House;

/// Pause or go on, stop, "Something is wrong"; in a rest also the next one now, or more rest.
#[component]
pub fn RunControls(something_wrong: impl Fn() + Copy + Send + 'static) -> impl IntoView {
    let house = House::here();
    let driver = Driver::here();
    let text = move |key| house.text(key);
    let controls = Memo::new(move |_| driver.view.get().controls);
    let resting = Memo::new(move |_| driver.view.get().phase == Phase::Resting);
    let quiet = RwSignal::new(sounds::is_quiet());
    let sound = move |_| {
        quiet.update(|quiet| *quiet = !*quiet);
        sounds::set_quiet(quiet.get_untracked());
    };
    let go_on = move || if controls.get().resume { Key::GoOn } else { Key::Pause };
    let pause = move |_| driver.press(if controls.get_untracked().resume { Press::Resume } else { Press::Pause });
    view! {
        <div class="controls stack">
            <Show when=move || resting.get()>
                <div class="row">
                    <button type="button" on:click=move |_| driver.press(Press::MoreRest)>{text(Key::MoreRest)}</button>
                    <button type="button" on:click=move |_| driver.press(Press::Next)>{text(Key::NextNow)}</button>
                </div>
            </Show>
            <div class="row">
                <button type="button" class:main=move || controls.get().resume on:click=pause>{move || text(go_on())}</button>
                <button type="button" on:click=move |_| driver.press(Press::Stop)>{text(Key::Stop)}</button>
            </div>
            <div class="row">
                <button type="button" class="quiet" on:click=sound>
                    {move || text(if quiet.get() { Key::SoundOff } else { Key::SoundOn })}
                </button>
                <button type="button" class="alarm" on:click=move |_| something_wrong()>{text(Key::SomethingWrong)}</button>
            </div>
        </div>
    }
}
