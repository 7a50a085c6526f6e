//! Balance trials in progress. During a trial the whole screen can be touched.

use exercises::guide::{Phase, Press};
use leptos::prelude::*;
use wire::patient::RunScript;

use super::driver::Driver;
use crate::shared::screen;

mod ask_touched;
mod between;
mod trial;
mod where_phone;

pub use ask_touched::AskTouched;
use between::Between;
use trial::WholeScreen;
pub(super) use trial::during_trial;

/// The screen of balance trials.
#[component]
pub fn BalanceRun(script: Box<RunScript>, something_wrong: impl Fn() + Copy + Send + 'static) -> impl IntoView {
    let driver = Driver::current();
    let between =
        Memo::new(move |_| matches!(driver.view.get().phase, Phase::Waiting | Phase::Resting | Phase::Paused { .. }));
    let script = StoredValue::new(script);
    move || {
        let script = script.get_value();
        if between.get() {
            let next = move || driver.press(Press::Next);
            screen(move || view! { <Between script next something_wrong/> })
        } else {
            screen(move || view! { <WholeScreen script/> })
        }
    }
}
