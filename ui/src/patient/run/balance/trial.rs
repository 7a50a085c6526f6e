//! A count-in or a trial: no control on the screen, all of it is the place to touch.

use exercises::guide::{GuideView, Phase, Press};
use exercises::plan::Leg;
use exercises::thread;
use leptos::ev;
use leptos::html;
use leptos::prelude::*;
use wire::patient::RunScript;
use words::{Key, Words};

use super::super::driver::Driver;
use super::super::seconds::Seconds;
use super::super::thread::Thread;
use crate::shared::House;

/// The whole screen: a touch anywhere, or any key, ends the trial (or takes its count-in back).
#[component]
pub fn WholeScreen(script: Box<RunScript>) -> impl IntoView {
    let words = House::here().words();
    let driver = Driver::here();
    let own = script.own_median_ms.clone();
    let target_ms = script.run.dose.work_s() as f64 * 1000.0 / f64::from(script.run.dose.parts().max(1));
    let going = Signal::derive(move || {
        let view = driver.view.get();
        let progress = if matches!(view.phase, Phase::Trial | Phase::Settling) { view.progress } else { 0.0 };
        thread::stance(progress, own_part(&own, view.part.leg, target_ms))
    });
    let seconds = Memo::new(move |_| driver.view.get().seconds);
    let title = Memo::new(move |_| title(&driver.view.get(), words));
    let foot = Memo::new(move |_| foot(&driver.view.get(), words));
    let head = Memo::new(move |_| driver.view.get().part.leg.map(|leg| words.stand_on(leg)));
    let touch = move || driver.press(Press::Touch);
    let keys = window_event_listener(ev::keydown, move |event| {
        event.prevent_default();
        touch();
    });
    on_cleanup(move || keys.remove());
    let whole = NodeRef::<html::Main>::new();
    Effect::new(move || {
        if let Some(whole) = whole.get() {
            // Where the focus cannot go, a touch still does.
            let _ = whole.focus();
        }
    });
    view! {
        <main class="screen run whole" tabindex="-1" node_ref=whole on:pointerdown=move |event| { event.prevent_default(); touch() }>
            <div class="run-head">
                <p class="soft">{head}</p>
                <h1>{title}</h1>
            </div>
            <div class="whole-seconds"><Seconds seconds/></div>
            <div class="run-middle"><Thread going/></div>
            <p class="soft foot">{foot}</p>
        </main>
    }
}

fn title(view: &GuideView, words: Words) -> String {
    words.text(if view.phase == Phase::CountIn { Key::LiftAtTone } else { Key::TouchWhenDown }).to_owned()
}

fn foot(view: &GuideView, words: Words) -> String {
    words.text(if view.phase == Phase::CountIn { Key::TouchTakesBack } else { Key::AnyTouchEnds }).to_owned()
}

/// The person's own middle value of that leg as a part of the aim.
fn own_part(own: &[(Leg, u32)], leg: Option<Leg>, target_ms: f64) -> Option<f64> {
    let (_, ms) = own.iter().find(|(one, _)| Some(*one) == leg)?;
    Some(f64::from(*ms) / target_ms.max(1.0))
}
