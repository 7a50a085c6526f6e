//! The exercises that ship with the program, compiled into it.

use super::{Fault, TextFile, read};
use exercises::catalogue::{Catalogue, Lang};

/// The files of a shipped exercise.
#[derive(Debug, Clone, Copy)]
pub struct Files {
    /// The name of the exercise file.
    pub name: &'static str,
    /// The content of the exercise file.
    pub text: &'static str,
    /// The language files that belong to it.
    pub texts: [TextFile<'static>; Lang::ALL.len()],
}

/// The content of a file in the catalogue's folder.
macro_rules! text {
    ($id:literal, $ending:literal) => {
        include_str!(concat!("../../../../../exercises/catalogue/", $id, $ending))
    };
}

macro_rules! files {
    ($($id:literal),* $(,)?) => {
        /// The files of all shipped exercises, in the order in which a clinician is offered them.
        pub const FILES: &[Files] = &[
            $(Files {
                name: concat!($id, ".toml"),
                text: text!($id, ".toml"),
                texts: [
                    TextFile { lang: Lang::En, name: concat!($id, ".en.ftl"), text: text!($id, ".en.ftl") },
                    TextFile { lang: Lang::Es, name: concat!($id, ".es.ftl"), text: text!($id, ".es.ftl") },
                ],
            },)*
        ];
    };
}

files! {
    "sit-tall-chin-back",
    "shoulder-blade-set",
    "chin-nod-lying",
    "neck-side-press",
    "wrist-level-hold",
    "finger-glides",
    "hip-bridge",
    "side-lying-leg-lift",
    "wall-sit",
    "knee-straighten",
    "sit-to-stand",
    "chair-rise-30s",
    "one-leg-stand",
    "one-leg-timed",
    "heel-to-toe-stand",
    "stand-turn-head",
    "heel-raise",
    "toe-lift",
    "calf-stretch",
    "heel-slide",
    "walk",
    "slow-breath",
    "rest-lying",
    "change-position",
    "warm-pack",
    "sitting-time",
    "bag-lift",
    "arm-nerve-glide",
    "arm-pendulum",
    "back-shoulder-stretch",
    "band-side-step",
    "bend-back-over-chair",
    "buttock-stretch",
    "chest-open-side-lying",
    "doorway-chest-stretch",
    "elbow-bend-straighten",
    "forearm-stretch",
    "front-lying-press-up",
    "half-kneel-hip-stretch",
    "heel-slide-steady-back",
    "jaw-open-relaxed",
    "knee-to-chest",
    "knees-roll",
    "neck-side-stretch",
    "neck-turn",
    "gaze-on-spot",
    "opposite-arm-leg",
    "pelvis-tilt",
    "round-and-hollow",
    "stick-raise",
    "stick-turn-out",
    "strap-leg-stretch",
    "table-slide",
    "thumb-to-fingers",
    "worktop-heel-to-toe-walk",
    "wrist-up-down",
    "neck-press-front-back",
    "nod-sitting",
    "head-lift-small",
    "wall-arm-slide",
    "arms-lift-front-lying",
    "band-row",
    "press-into-wall",
    "band-turn-out",
    "side-lying-turn-out",
    "wall-push",
    "arm-raise-diagonal",
    "forearm-turn",
    "wrist-lower-slowly",
    "wrist-curl",
    "grip-hold",
    "finger-spread",
    "side-prop",
    "small-curl-up",
    "hip-hinge",
    "knees-open-side-lying",
    "hip-press-wall",
    "thigh-tighten-lying",
    "straight-leg-raise",
    "step-up",
    "step-down-slow",
    "small-squat",
    "heel-raise-one-leg",
    "band-ankle-out",
    "foot-arch-lift",
}

/// The catalogue of shipped exercises.
///
/// # Errors
/// All faults of all files. A test checks that there are none.
pub fn embedded() -> Result<Catalogue, Vec<Fault>> {
    let mut catalogue = Catalogue::default();
    let mut faults = Vec::new();
    for files in FILES {
        match read(files.name, files.text, &files.texts) {
            Ok(exercise) => catalogue.exercises.push(exercise),
            Err(found) => faults.extend(found),
        }
    }
    if faults.is_empty() { Ok(catalogue) } else { Err(faults) }
}
