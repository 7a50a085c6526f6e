//! The string of an exercise in progress, with the bob at the present moment and the seconds beside it.

use exercises::day_string::{HEIGHT, MIDDLE, RunString, WIDTH};
use leptos::prelude::*;

use crate::shared::paint;

/// Half the width and half the height of the bob.
const BOB: (f64, f64) = (15.0, 22.0);

/// The string. `beside` is shown next to the bob and moves with it.
#[component]
pub fn RunStringView(going: Signal<RunString>, #[prop(optional)] children: Option<Children>) -> impl IntoView {
    let frame = format!("0 0 {WIDTH} {HEIGHT}");
    let straight = move || {
        let going = going.get();
        format!("M{MIDDLE} 0L{:.1} {:.1}", MIDDLE + going.swing, going.straight_to)
    };
    let below = move || paint::points(&going.get().below);
    let bob = move || {
        let (y, x) = (going.get().bob, MIDDLE + going.get().swing);
        let (wide, high) = BOB;
        format!("M{x:.1} {:.1}L{:.1} {y:.1}L{x:.1} {:.1}L{:.1} {y:.1}Z", y - high, x + wide, y + high, x - wide)
    };
    let peg = move |at: Option<f64>, class: &'static str| {
        at.map(|y| view! { <path class=class d=format!("M{} {y:.1}H{}", MIDDLE - 16.0, MIDDLE + 16.0)/> })
    };
    let beside = children.map(|children| {
        let top = move || format!("{:.2}%", going.get().bob / HEIGHT * 100.0);
        view! { <div class="beside" style:top=top>{children()}</div> }
    });
    view! {
        <div class="going">
            <svg class="going-string" viewBox=frame aria-hidden="true">
                {move || peg(going.get().aim, "peg-aim")}
                {move || peg(going.get().own, "peg-own")}
                <polyline class="string-to-come" points=below/>
                <path class="string" d=straight/>
                <path class="bob" d=bob/>
            </svg>
            {beside}
        </div>
    }
}
