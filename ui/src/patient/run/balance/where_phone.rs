//! Where the phone is during the trials of this run: chosen before the first one, or why there is no choice.

use exercises::run::SetUp;
use leptos::prelude::*;
use words::Key;

use super::super::driver::Driver;
use super::super::motion::Sensor;
use crate::shared::AppContext;

/// The three set-ups if there is a motion sensor, otherwise why not. After the first trial only what went wrong.
#[component]
pub fn WherePhone() -> impl IntoView {
    let words = AppContext::current().words();
    let driver = Driver::current();
    let may_choose = driver.may_choose_set_up();
    let places = move || {
        SetUp::ALL.map(|place| {
            let chosen = move || driver.set_up.get() == place;
            view! {
                <label class="place" class:chosen=chosen>
                    <input type="radio" name="phone" prop:checked=chosen on:change=move |_| driver.choose_set_up(place)/>
                    <span>{words.phone_place(place).0}</span>
                </label>
            }
        })
    };
    let choice = move || {
        view! {
            <div class="where-phone stack-1" role="radiogroup" aria-labelledby="where-phone">
                <p id="where-phone" class="small soft">{words.text(Key::WherePhone)}</p>
                <div class="row phone-places">{places()}</div>
                <p class="small soft">{move || words.phone_place(driver.set_up.get()).1}</p>
            </div>
        }
    };
    let said = move |key| view! { <p class="small soft" role="status">{words.text(key)}</p> }.into_any();
    move || match (driver.motion.sensor.get(), may_choose) {
        (Sensor::Ready, true) => choice().into_any(),
        (Sensor::Denied, true) => view! { {said(Key::SensorNotAllowed)}{choice()} }.into_any(),
        (Sensor::Missing, true) => said(Key::NoMotionSensor),
        (Sensor::Silent, _) => said(Key::SensorSilent),
        (_, false) => ().into_any(),
    }
}
