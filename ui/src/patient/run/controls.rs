//! The buttons during holds and repetitions.

use exercises::guide::{Phase, Press, SoundMode};
use leptos::prelude::*;
use words::Key;

use super::driver::Driver;
use crate::patient::{sounds, voice};
use crate::shared::AppContext;

/// Pause or continue, stop, "Something is wrong"; in a rest also skipping or extending it.
#[component]
pub fn RunControls(something_wrong: impl Fn() + Copy + Send + 'static) -> impl IntoView {
    let app = AppContext::current();
    let driver = Driver::current();
    let text = move |key| app.text(key);
    let controls = Memo::new(move |_| driver.view.get().controls);
    let pausable = driver.view.with_untracked(|view| view.kind.rules().flags().pausable);
    let resting = Memo::new(move |_| driver.view.get().phase == Phase::Resting);
    let sound_mode = RwSignal::new(sounds::sound_mode().effective(voice::can_speak()));
    let sound = move |_| {
        sound_mode.update(|sound_mode| *sound_mode = sound_mode.next(voice::can_speak()));
        sounds::set_sound_mode(sound_mode.get_untracked());
    };
    let heard = move || match sound_mode.get() {
        SoundMode::Tones => Key::SoundOn,
        SoundMode::Voice => Key::SoundVoice,
        SoundMode::Nothing => Key::SoundOff,
    };
    let go_on = move || if controls.get().resume { Key::Resume } else { Key::Pause };
    let pause = move |_| driver.press(if controls.get_untracked().resume { Press::Resume } else { Press::Pause });
    view! {
        <div class="controls stack">
            <Show when=move || resting.get()>
                <div class="row">
                    <button type="button" on:click=move |_| driver.press(Press::MoreRest)>{text(Key::MoreRest)}</button>
                    <button type="button" on:click=move |_| driver.press(Press::Next)>{text(Key::ContinueNow)}</button>
                </div>
            </Show>
            <div class="row">
                {pausable.then(|| view! { <button type="button" class:main=move || controls.get().resume on:click=pause>{move || text(go_on())}</button> })}
                <button type="button" on:click=move |_| driver.press(Press::Stop)>{text(Key::Stop)}</button>
            </div>
            <div class="row">
                <button type="button" class="quiet" on:click=sound>
                    {move || text(heard())}
                </button>
                <button type="button" class="alarm" on:click=move |_| something_wrong()>{text(Key::SomethingWrong)}</button>
            </div>
        </div>
    }
}
