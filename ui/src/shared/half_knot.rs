//! A knot that is not drawn tight: what was done in part.

use exercises::day_string::{HalfTied, half_tied};
use leptos::prelude::*;

/// A cubic curve that comes back to its beginning reaches so far of the way to its controls, along and across.
const REACHES: (f64, f64) = (0.75, 0.289);

/// Its core on the string at a point, a loop that is still open at the right, and the loose end at the left. `part` of 0 to 1
/// was done; `r` is the radius of a whole knot.
pub fn half_knot(part: f64, x: f64, y: f64, r: f64) -> AnyView {
    let HalfTied { core, reach, open } = half_tied(part);
    let (out, across) = (x + reach / REACHES.0 * r, open / REACHES.1 * r);
    let open_loop = format!("M{x:.2} {y:.2}C{out:.2} {:.2} {out:.2} {:.2} {x:.2} {y:.2}", y - across, y + across);
    let end = format!("M{x:.2} {y:.2}Q{:.2} {:.2} {:.2} {:.2}", x - 0.7 * r, y + 0.1 * r, x - 1.15 * r, y + 0.8 * r);
    view! {
        <path class="open-tie" d=open_loop/>
        <path class="open-tie" d=end/>
        <circle class="done" cx=x cy=y r=core * r/>
    }
    .into_any()
}
