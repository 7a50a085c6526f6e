//! The drawing of a half-tied knot: a slot done in part.

use exercises::day_string::{HalfTied, half_tied};
use leptos::prelude::*;

/// How far a cubic curve that returns to its start reaches towards its control points, along and across, as a share.
const REACHES: (f64, f64) = (0.75, 0.289);

/// The core on the string, an open loop at the right, and the loose end at the left. `part`, 0 to 1, is the share done; `r` is the
/// radius of a full knot.
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
