//! A tour of every screen: the demo's patient and clinic, a new patient's first day, a new clinic's first plan, and what
//! comes with the weeks. What is done at each screen is the caller's: keep a picture, check it for accessibility, look for what is cut off.

mod clinic;
mod first_day;
mod pages;
mod patient;
mod visit;

use crate::{Desktop, Opening, Window, scenes};
use std::path::PathBuf;

/// Where the tour goes, and what is done at each screen.
pub struct Tour<'a> {
    /// The folder with the demo's data folders.
    pub homes: PathBuf,
    /// The moment that the windows take for now.
    pub at: String,
    /// Width and height of the page in CSS pixels.
    pub size: (u32, u32),
    /// On a desktop that is set to dark.
    pub dark: bool,
    /// In the made-up language of the tests.
    pub pseudo: bool,
    /// Called at each screen, with its name.
    pub at_screen: &'a dyn Fn(&Window, &str),
}

impl Tour<'_> {
    /// All screens of the patient's side.
    pub fn patients_side(&self) {
        self.patient();
        self.first_day();
        self.step();
        self.sensed();
        self.visit();
        self.erased();
    }

    /// All screens of the clinic's side.
    pub fn clinics_side(&self) {
        self.clinic();
        self.first_patient();
    }

    /// One of the demo's data folders.
    fn open(&self, desktop: &Desktop, home: &str) -> Window {
        let home = std::path::absolute(self.homes.join(home)).expect("a folder has a path");
        self.begin(desktop.open_at(&home).at(&self.at))
    }

    /// The patient of a scene, at its own time.
    fn scene(&self, desktop: &Desktop, at: &str) -> Window {
        self.begin(desktop.open("patient").at(at).zone(scenes::ZONE))
    }

    fn begin(&self, opening: Opening<'_>) -> Window {
        let opening = opening.size(self.size.0, self.size.1);
        let opening = if self.pseudo { opening.pseudo() } else { opening };
        if self.dark { opening.dark().start() } else { opening.start() }
    }
}
