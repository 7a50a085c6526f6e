//! A tour of every screen: the demo's patient and clinic, a new patient's first day, a new clinic's first plan, and screens that
//! occur only after weeks. The caller decides what is done at each screen: take a picture, check accessibility, look for what is cut
//! off.

mod clinic;
mod first_day;
mod from_review;
mod pages;
mod patient;
mod visit;

use crate::{Desktop, Opening, Window, scenes};
use std::path::PathBuf;

/// The settings of the tour, and what is done at each screen.
pub struct Tour<'a> {
    /// The folder with the demo's data folders.
    pub homes: PathBuf,
    /// The time that the windows show.
    pub at: String,
    /// Width and height of the page in CSS pixels.
    pub size: (u32, u32),
    /// Whether the desktop is set to dark.
    pub dark: bool,
    /// Whether texts are in the made-up language of the tests.
    pub pseudo: bool,
    /// Called at each screen, with its name.
    pub at_screen: &'a dyn Fn(&Window, &str),
}

impl Tour<'_> {
    /// Visits all screens of the patient's side.
    pub fn patients_side(&self) {
        self.patient();
        self.first_day();
        self.step();
        self.sensed();
        self.visit();
        self.erased();
    }

    /// Visits all screens of the clinic's side.
    pub fn clinics_side(&self) {
        self.clinic();
        self.first_patient();
    }

    /// Opens one of the demo's data folders.
    fn open(&self, desktop: &Desktop, home: &str) -> Window {
        let home = std::path::absolute(self.homes.join(home)).expect("a folder has a path");
        self.begin(desktop.open_at(&home).at(&self.at))
    }

    /// Opens the patient of a scene at its own time.
    fn scene(&self, desktop: &Desktop, at: &str) -> Window {
        self.begin(desktop.open("patient").at(at).zone(scenes::ZONE))
    }

    fn begin(&self, opening: Opening<'_>) -> Window {
        let opening = opening.size(self.size.0, self.size.1);
        let opening = if self.pseudo { opening.pseudo() } else { opening };
        if self.dark { opening.dark().start() } else { opening.start() }
    }
}
