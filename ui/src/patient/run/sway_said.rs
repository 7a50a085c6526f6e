//! What the sensor said of each trial: its time, the sway, touch-downs, or why nothing was measured.

use exercises::run::{Trial, TrialEnd};
use exercises::sway::Sensed;
use leptos::prelude::*;
use words::review::upper;
use words::{Key, Words};

use crate::shared::House;

/// A line for each trial that the sensor took part in.
#[component]
pub fn SwaySaid(trials: Vec<Trial>, sensed: Vec<(u16, Sensed)>) -> impl IntoView {
    let words = House::here().words();
    let rows = sensed.iter().filter_map(|(place, sensed)| {
        let trial = trials.get(usize::from(*place))?;
        let lines = lines(sensed, words).into_iter().map(|line| view! { <p class="small">{line}</p> });
        Some(view! { <li><p class="number"><strong>{head(trial, words)}</strong></p>{lines.collect_view()}</li> })
    });
    view! {
        <section class="sheet stack-2">
            <h2>{words.text(Key::SwayTitle)}</h2>
            <ul class="plain stack-2">{rows.collect_view()}</ul>
            <p class="small soft">{words.text(Key::SwayOwnOnly)}</p>
        </section>
    }
}

/// "Left leg, 14.2 s".
fn head(trial: &Trial, words: Words) -> String {
    let key = if trial.end == TrialEnd::Target { Key::AtLeastSeconds } else { Key::SecondsShort };
    format!("{}, {}", words.stand_on(trial.leg), words.fill(key, &[("s", &words.seconds(trial.held_ms))]))
}

fn lines(sensed: &Sensed, words: Words) -> Vec<String> {
    let figures = sensed.figures.as_ref().map(|figures| words.sway(figures));
    let touched = (sensed.touch_downs > 0).then(|| words.fill(Key::TouchDowns, &[("n", &sensed.touch_downs)]));
    let all = [words.to_be_confirmed(sensed), figures, touched, words.not_measured(sensed)];
    all.iter().flatten().map(|line| format!("{}.", upper(line))).collect()
}
