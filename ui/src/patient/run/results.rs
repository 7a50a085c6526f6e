//! Each leg's results in this run, compared with the person's own last days.

use exercises::guide::{BalanceResult, balance_results};
use exercises::history::{OwnMedian, own_median_ms};
use exercises::run::Balance;
use exercises::sway::Sensed;
use leptos::prelude::*;
use words::Key;

use super::sway_notes::SwayNotes;
use crate::shared::AppContext;

/// Longest and median time by leg. `own` are the person's medians over the last seven days, of which those with the same set-up of
/// the phone are shown.
#[component]
pub fn Results(balance: Balance, sensed: Vec<(u16, Sensed)>, own: Vec<OwnMedian>) -> impl IntoView {
    let words = AppContext::current().words();
    let Balance { set_up, trials, .. } = balance;
    let legs = balance_results(&trials).into_iter().map(|BalanceResult { leg, best_ms, median_ms, capped, .. }| {
        let best = words.seconds(best_ms);
        let best = if capped { words.seconds_target_reached(best) } else { words.seconds_short(best) };
        let longest = if set_up.touch_ends() || capped { Key::BestToday } else { Key::LongestRemembered };
        let middle = words.seconds_short(words.seconds(median_ms));
        let own = own_median_ms(&own, set_up, leg)
            .map_or_else(|| words.text(Key::UsualNotKnown).to_owned(), |ms| words.seconds_short(words.seconds(ms)));
        view! {
            <section class="sheet stack-2">
                <h2>{words.stood_on(leg)}</h2>
                <dl class="figures">
                    <div><dt>{words.text(longest)}</dt><dd class="number">{best}</dd></div>
                    <div><dt>{words.text(Key::UsualToday)}</dt><dd class="number">{middle}</dd></div>
                    <div><dt>{words.text(Key::UsualWeek)}</dt><dd class="number">{own}</dd></div>
                </dl>
            </section>
        }
    });
    let legs = legs.collect_view();
    let sway = (!sensed.is_empty()).then(|| view! { <SwayNotes trials=trials.clone() sensed=sensed/> });
    view! { <div class="stack">{legs}{sway}<p class="small soft">{words.text(Key::OneAttemptVaries)}</p></div> }
}
