//! What the parts of the page share.

use leptos::prelude::*;
use wire::prescribing::OwnExercises;

/// What the page knows and says.
#[derive(Clone, Copy)]
pub struct OwnPage {
    /// The exercises, finished and unfinished; `None` until the shell has answered.
    pub all: RwSignal<Option<OwnExercises>>,
    /// What was done last.
    pub said: RwSignal<Option<String>>,
}
