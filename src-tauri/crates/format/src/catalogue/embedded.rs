//! The exercises that ship with the program, compiled in.

use super::{Fault, read};
use exercises::catalogue::Catalogue;

macro_rules! files {
    ($($name:literal),* $(,)?) => {
        /// Name and text of every shipped exercise file, in the order in which a clinician is offered them.
        pub const FILES: &[(&str, &str)] = &[
            $(($name, include_str!(concat!("../../../../../exercises/catalogue/", $name))),)*
        ];
    };
}

files! {
    "sit-tall-chin-back.toml",
    "shoulder-blade-set.toml",
    "chin-nod-lying.toml",
    "neck-side-press.toml",
    "wrist-level-hold.toml",
    "finger-glides.toml",
    "hip-bridge.toml",
    "side-lying-leg-lift.toml",
    "wall-sit.toml",
    "knee-straighten.toml",
    "sit-to-stand.toml",
    "one-leg-stand.toml",
    "one-leg-timed.toml",
    "heel-to-toe-stand.toml",
    "heel-raise.toml",
    "toe-lift.toml",
}

/// The shipped catalogue.
///
/// # Errors
/// All faults of all files. A test holds that there are none.
pub fn embedded() -> Result<Catalogue, Vec<Fault>> {
    let mut catalogue = Catalogue::default();
    let mut faults = Vec::new();
    for (name, text) in FILES {
        match read(name, text) {
            Ok(exercise) => catalogue.exercises.push(exercise),
            Err(found) => faults.extend(found),
        }
    }
    if faults.is_empty() { Ok(catalogue) } else { Err(faults) }
}
