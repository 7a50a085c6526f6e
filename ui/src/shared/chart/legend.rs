//! What the marks on the strings mean.

use exercises::chart::Shape;
use leptos::prelude::*;

use crate::shared::House;

/// Every mark with its words.
#[component]
pub fn Legend() -> impl IntoView {
    let words = House::here().words();
    let shapes = Shape::ALL.map(|shape| {
        let mark = match shape {
            Shape::Knot => view! { <circle class="done" cx="8" cy="10" r="4.5"/> }.into_any(),
            Shape::Half => view! { <circle class="done-edge" cx="8" cy="10" r="4.5"/><path class="done" d="M3.5 10A4.5 4.5 0 0 0 12.5 10Z"/> }.into_any(),
            Shape::Loop => view! { <circle class="loop" cx="8" cy="10" r="4.5"/> }.into_any(),
            Shape::Bar => view! { <path class="ink-line" d="M3 10H13"/> }.into_any(),
            Shape::Cross => view! { <path class="alarm-line" d="M4 6L12 14M4 14L12 6"/> }.into_any(),
        };
        view! {
            <li><svg viewBox="0 0 16 20" aria-hidden="true"><path class="string" d="M8 0V20"/>{mark}</svg>{words.legend(Some(shape))}</li>
        }
    });
    view! {
        <ul class="legend small soft">
            {shapes}
            <li><svg viewBox="0 0 16 20" aria-hidden="true"><path class="string" d="M8 0V5M8 15V20"/></svg>{words.legend(None)}</li>
            <li><svg viewBox="0 0 16 20" aria-hidden="true"><path class="string unseen" d="M8 0V20"/></svg>{words.legend_no_record()}</li>
        </ul>
    }
}
