//! QR codes on paper: large enough that a phone reads them there, and drawn as one shape, so that no hairlines are between modules.

use crate::PaperError;
use crate::mark::{Mark, filled, rectangle};
use crate::style::{BLACK, mm};
use pictures::qr::{Code, QUIET};

/// Side of a module, in millimetres, where there is room.
const MODULE_MM: f32 = 0.5;
/// The smallest side of a module, in millimetres, that is read from paper by a phone's camera.
const SMALLEST_MM: f32 = 0.4;

/// A code's side with its quiet zone, in points, in a column of this width.
pub fn side(code: &Code, width: f32) -> Result<f32, PaperError> {
    let modules = code.outer_side();
    let module = mm(MODULE_MM).min(width / modules as f32);
    if module < mm(SMALLEST_MM) { Err(PaperError::CodeTooLarge { modules }) } else { Ok(module * modules as f32) }
}

/// The width of the quiet zone of a code of this side.
pub fn quiet(code: &Code, side: f32) -> f32 {
    side / code.outer_side() as f32 * QUIET as f32
}

/// A code of this side; `to` is the upper left corner of its quiet zone.
pub fn marks(code: &Code, to: (f32, f32), side: f32) -> Vec<Mark> {
    let module = side / code.outer_side() as f32;
    let at = |n: usize| (n + QUIET) as f32 * module;
    let mut outline = Vec::new();
    for y in 0..code.side() {
        let mut x = 0;
        while x < code.side() {
            let dark = (x..code.side()).take_while(|x| code.dark(*x, y)).count();
            if dark > 0 {
                outline.extend(rectangle(to.0 + at(x), to.1 + at(y), dark as f32 * module, module));
            }
            x += dark.max(1);
        }
    }
    vec![filled(outline, BLACK)]
}
