//! The sensor's result for each trial: its time, the sway, touch-downs, or why nothing was measured.

use exercises::run::{Trial, TrialEnd};
use exercises::sway::Sensed;
use leptos::prelude::*;
use words::review::upper;
use words::{Key, Words};

use crate::shared::AppContext;

/// The notes on each trial's time; the figures, which matter to the clinic, are folded.
#[component]
pub fn SwayNotes(trials: Vec<Trial>, sensed: Vec<(u16, Sensed)>) -> impl IntoView {
    let words = AppContext::current().words();
    let rows = |lines: fn(&Sensed, Words) -> Vec<String>| {
        let row = |(place, sensed): &(u16, Sensed)| {
            let trial = trials.get(usize::from(*place))?;
            let lines = lines(sensed, words);
            let said = lines.iter().map(|line| view! { <p class="small">{line.clone()}</p> }).collect_view();
            (!lines.is_empty()).then(|| view! { <li><p class="number"><strong>{head(trial, words)}</strong></p>{said}</li> })
        };
        let rows: Vec<_> = sensed.iter().filter_map(row).collect();
        (!rows.is_empty()).then(|| view! { <ul class="plain stack-2">{rows}</ul> })
    };
    let figures = rows(figures).map(|list| {
        view! { <details class="more"><summary>{words.text(Key::SwayFigures)}</summary>{list}</details> }
    });
    view! {
        <section class="sheet stack-2">
            <h2>{words.text(Key::SwayTitle)}</h2>
            {rows(notes)}
            {figures}
            <p class="small soft">{words.text(Key::SwayOwnOnly)}</p>
        </section>
    }
}

/// "Left leg, 14.2 s".
fn head(trial: &Trial, words: Words) -> String {
    let seconds = words.seconds(trial.held_ms);
    let seconds =
        if trial.end == TrialEnd::Target { words.seconds_target_reached(seconds) } else { words.seconds_short(seconds) };
    words.leg_and_seconds(words.stood_on(trial.leg), &seconds)
}

/// The notes on the trial's time.
fn notes(sensed: &Sensed, words: Words) -> Vec<String> {
    let touched = (sensed.touch_downs > 0).then(|| words.floor_touches(sensed.touch_downs));
    sentences([words.to_be_confirmed(sensed), touched, words.not_measured(sensed)])
}

fn figures(sensed: &Sensed, words: Words) -> Vec<String> {
    sentences([sensed.figures.as_ref().map(|figures| words.sway(figures))])
}

fn sentences<const N: usize>(lines: [Option<String>; N]) -> Vec<String> {
    lines.iter().flatten().map(|line| format!("{}.", upper(line))).collect()
}
