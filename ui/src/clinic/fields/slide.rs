//! A number that is slid.

use leptos::prelude::*;

/// A labelled slider with its number beside it, which can be typed as well. `put` gets each value on the way, `left` is called when the
/// slider is let go.
#[component]
pub fn Slide(
    label: &'static str,
    #[prop(into)] value: Signal<i16>,
    range: (i16, i16),
    put: impl Fn(i16) + Copy + 'static,
    left: impl Fn() + Copy + 'static,
) -> impl IntoView {
    let (least, most) = range;
    let take = move |text: String| {
        if let Ok(typed) = text.trim().parse::<i16>() {
            put(typed.clamp(least, most));
        }
    };
    let (least, most) = (least.to_string(), most.to_string());
    view! {
        <div class="slide">
            <label>
                <span>{label}</span>
                <input type="range" min=least.clone() max=most.clone() prop:value=move || value.get().to_string()
                    on:input:target=move |event| take(event.target().value()) on:change=move |_| left()/>
            </label>
            <input type="number" aria-label=label min=least max=most prop:value=move || value.get().to_string()
                on:change:target=move |event| { take(event.target().value()); left(); event.target().set_value(&value.get_untracked().to_string()); }/>
        </div>
    }
}
