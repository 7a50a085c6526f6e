//! What the parts of the page share.

use leptos::prelude::*;
use wire::prescribing::OwnExercises;
use wire::saved::SavedFile;

/// What the page knows and says.
#[derive(Clone, Copy)]
pub struct OwnPage {
    /// The exercises, finished and unfinished; `None` until the shell has answered.
    pub all: RwSignal<Option<OwnExercises>>,
    /// What was done last.
    pub said: RwSignal<Option<String>>,
    /// The file that was saved, if that was done last.
    pub saved: RwSignal<Vec<SavedFile>>,
}

impl OwnPage {
    /// Says what was done.
    pub fn say(self, said: Option<String>) {
        self.saved.set(Vec::new());
        self.said.set(said);
    }

    /// Says that a file was saved.
    pub fn say_saved(self, file: SavedFile) {
        self.said.set(None);
        self.saved.set(vec![file]);
    }
}
