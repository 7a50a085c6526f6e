//! The screen of a run: depending on its kind, then its end. After a press on "Something is wrong", the questions about it cover it.

use exercises::catalogue::Kind;
use exercises::guide::{Phase, Press};
use leptos::prelude::*;
use wire::patient::RunScript;
use words::Key;

use super::balance::{AskTouched, BalanceRun};
use super::beat::BeatRun;
use super::breath::BreathRun;
use super::done::Done;
use super::driver::Driver;
use super::hold::HoldRun;
use super::own_pace::OwnPaceRun;
use super::reps::RepsRun;
use super::status::RunStatus;
use super::tally::TallyRun;
use super::timer::TimerRun;
use crate::patient::context::PatientContext;
use crate::patient::trouble::AskTrouble;
use crate::shared::screen;

/// One run from beginning to end.
#[component]
pub fn Run(script: Box<RunScript>) -> impl IntoView {
    let context = PatientContext::current();
    let Some(driver) = Driver::start(context, &script) else {
        return view! { <CannotBeGuided/> }.into_any();
    };
    provide_context(driver);
    let asking = RwSignal::new(false);
    let ended = Memo::new(move |_| matches!(driver.view.get().phase, Phase::Ended(_)));
    let kind = script.exercise.kind;
    let kept = StoredValue::new(script);
    let something_wrong = move || {
        driver.press(Press::Pause);
        asking.set(true);
    };
    let shown = move || {
        let script = kept.get_value();
        if asking.get() {
            let (plan, item) = (script.plan, script.run.item);
            return screen(move || {
                view! {
                    <AskTrouble during=Some((plan, item)) nothing=move || asking.set(false) stop=move || driver.press(Press::Trouble)/>
                }
            });
        }
        if let Some(asked) = driver.motion.asked.get() {
            return screen(move || view! { <AskTouched asked something_wrong/> });
        }
        if ended.get() { screen(move || view! { <Done script/> }) } else { going(kind, script, something_wrong) }
    };
    view! { <RunStatus/>{shown} }.into_any()
}

/// The screen of each kind while a run is in progress.
fn going(kind: Kind, script: Box<RunScript>, something_wrong: impl Fn() + Copy + Send + 'static) -> AnyView {
    match kind {
        Kind::Hold | Kind::Stretch => screen(move || view! { <HoldRun script something_wrong/> }),
        Kind::Balance | Kind::Limit => screen(move || view! { <BalanceRun script something_wrong/> }),
        Kind::Reps => screen(move || view! { <RepsRun script something_wrong/> }),
        Kind::Beat => screen(move || view! { <BeatRun script something_wrong/> }),
        Kind::Count => screen(move || view! { <TallyRun script something_wrong/> }),
        Kind::Move | Kind::Prompt | Kind::QuotaTimes => screen(move || view! { <OwnPaceRun script something_wrong/> }),
        Kind::Go | Kind::Care | Kind::Quota => screen(move || view! { <TimerRun script something_wrong/> }),
        Kind::Breath => screen(move || view! { <BreathRun script something_wrong/> }),
    }
}

/// A dose for which there is no guide: a fault of the plan, stated plainly.
#[component]
fn CannotBeGuided() -> impl IntoView {
    let context = PatientContext::current();
    view! {
        <main class="screen">
            <div class="column stack-5">
                <p role="alert">{context.app.text(Key::CannotBeGuided)}</p>
                <button type="button" data-back="" on:click=move |_| context.close()>{context.app.text(Key::Back)}</button>
            </div>
        </main>
    }
}
