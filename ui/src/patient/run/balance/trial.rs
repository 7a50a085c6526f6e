//! A count-in or a trial: there is no control on the screen, because the whole screen can be touched.

use exercises::catalogue::Kind;
use exercises::day_string;
use exercises::guide::{GuideView, Phase, Press};
use exercises::history::own_median_ms;
use leptos::ev;
use leptos::html;
use leptos::prelude::*;
use wire::patient::RunScript;
use words::{Key, Words};

use super::super::driver::Driver;
use super::super::run_string::RunStringView;
use super::super::seconds::Seconds;
use crate::shared::AppContext;

/// The whole screen: a touch anywhere, or any key, ends the trial (or cancels its count-in).
#[component]
pub fn WholeScreen(script: Box<RunScript>) -> impl IntoView {
    let words = AppContext::current().words();
    let driver = Driver::current();
    let own = script.own.clone();
    let set_up = driver.set_up.get_untracked();
    let target_ms = f64::from(script.run.dose.part_ms());
    let going = Signal::derive(move || {
        let view = driver.view.get();
        let progress = if matches!(view.phase, Phase::Trial | Phase::Settling) { view.progress } else { 0.0 };
        let own_ms = own_median_ms(&own, set_up, view.part.side);
        let going = day_string::stance(progress, own_ms.map(|ms| f64::from(ms) / target_ms.max(1.0)));
        match driver.motion.sway.get() {
            Some((left, _)) => going.swinging(left),
            None => going,
        }
    });
    // In a pocket the cloth touches the screen, so only a key ends the trial.
    let touchable = set_up.touch_ends();
    let seconds = Memo::new(move |_| driver.view.get().seconds);
    let title = Memo::new(move |_| title(&driver.view.get(), touchable, driver.motion.has_sensor(), words));
    let foot = Memo::new(move |_| foot(&driver.view.get(), touchable, driver.motion.has_sensor(), words));
    let announced = move || driver.motion.announced.get() && touchable;
    let head = Memo::new(move |_| words.stood_on(driver.view.get().part.side));
    let press = move || driver.press(Press::Touch);
    let touch = move || {
        if touchable {
            press()
        }
    };
    let keys = window_event_listener(ev::keydown, move |event| {
        event.prevent_default();
        // The key that started the countdown may still be pressed.
        if !event.repeat() {
            press();
        }
    });
    on_cleanup(move || keys.remove());
    let whole = NodeRef::<html::Main>::new();
    Effect::new(move || {
        if let Some(whole) = whole.get() {
            // If the focus cannot be set, a touch still works.
            let _ = whole.focus();
        }
    });
    view! {
        <main class="screen run whole" tabindex="-1" node_ref=whole on:pointerdown=move |event| { event.prevent_default(); touch() }>
            <div class="run-head">
                <p class="soft">{head}</p>
                <h1>{title}</h1>
                <p class="announced" role="status">{move || announced().then(|| words.text(Key::SeemsTouched))}</p>
            </div>
            <div class="whole-seconds"><Seconds seconds/></div>
            <div class="run-middle"><RunStringView going/></div>
            <p class="soft foot">{foot}</p>
        </main>
    }
}

fn title(view: &GuideView, touchable: bool, has_sensor: bool, words: Words) -> &'static str {
    words.text(match (view.phase, touchable, has_sensor) {
        (Phase::Settling, ..) => Key::AttemptOver,
        (Phase::CountIn, ..) if view.kind.is_by_leg() => Key::LiftAtTone,
        (Phase::CountIn, ..) => Key::BeginsAtTone,
        (_, touchable, has_sensor) => during_trial(view.kind, touchable, has_sensor),
    })
}

/// What ends the trial: a touch, any key on a device without a sensor, or the sound if the phone is in a pocket.
pub fn during_trial(kind: Kind, touchable: bool, has_sensor: bool) -> Key {
    match (touchable, has_sensor, kind.is_by_leg()) {
        (true, true, true) => Key::TouchWhenDown,
        (true, false, true) => Key::PressWhenDown,
        (true, true, false) => Key::TouchWhenStep,
        (true, false, false) => Key::PressWhenStep,
        (false, ..) => Key::StandUntilSound,
    }
}

/// The line at the bottom; `None` when the trial is over, because a touch then has no effect.
fn foot(view: &GuideView, touchable: bool, has_sensor: bool, words: Words) -> Option<&'static str> {
    let key = match (view.phase, touchable, has_sensor) {
        (Phase::Settling, ..) => return None,
        (_, false, _) => Key::HoldAskedAfter,
        (Phase::CountIn, true, true) => Key::TouchGoesBack,
        (Phase::CountIn, true, false) => Key::AnyKeyGoesBack,
        (_, true, true) => Key::AnyTouchEndsAttempt,
        (_, true, false) => Key::AnyKeyEndsAttempt,
    };
    Some(words.text(key))
}
