//! A tour of every screen: the demo's patient and clinic, a new patient's first day, a new clinic's first plan. What is done at
//! each screen is the caller's: keep a picture, check it for accessibility, look for what is cut off.

use crate::{Desktop, Opening, Window};
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
    /// Called at each screen, with its name.
    pub at_screen: &'a dyn Fn(&Window, &str),
}

impl Tour<'_> {
    /// The demo's patient at the office.
    pub fn patient(&self) {
        let desktop = Desktop::new();
        let window = self.open(&desktop, "A11-work");
        let keep = |name: &str| (self.at_screen)(&window, &format!("patient-{name}"));
        window.see("Now");
        keep("now");
        if window.can_press("Leave it out") {
            window.press("Leave it out");
            keep("leave-out");
            window.press("Leave out whole days");
            keep("leave-out-days");
            window.press("Back");
        }
        window.press("Plan");
        keep("plan");
        window.press_part("How to do it");
        keep("how-to");
        window.press("Back");
        window.press("Record");
        window.see("For the visit");
        keep("record");
        window.press("For the visit");
        window.see("What is handed over");
        keep("visit");
    }

    /// A new patient's first minutes, on a data folder that goes with the desktop.
    pub fn first_day(&self) {
        let desktop = Desktop::new();
        let window = self.begin(desktop.open("new"));
        let keep = |name: &str| (self.at_screen)(&window, &format!("first-{name}"));
        window.see("I do exercises");
        keep("side");
        window.press("I do exercises");
        window.see("Card text");
        keep("card");
        window.choose_file("Card picture or file", &self.card());
        window.see("Take this plan");
        keep("preview");
        window.press("Take this plan");
        window.press("Do one now");
        keep("which-one");
        window.press_part("Sit tall");
        window.see("Before you begin");
        keep("cautions");
        window.press("I have read this. Begin");
        window.see("Half-way");
        keep("hold");
        window.press("Stop");
        window.press("Continue");
        window.press("Do one now");
        window.press_part("Stand on one leg");
        window.press("I have read this. Begin");
        keep("set-up");
        window.press("Start the count");
        window.see("Touch anywhere when your foot comes down");
        keep("balance");
        window.touch_anywhere();
        window.see("Last trial");
        keep("between");
        window.press("Stop");
        window.see("Stopped here");
        keep("result");
        window.press("Continue");
        window.see("Pain now");
        keep("question");
        window.press("Rather not answer");
        window.press("Something is wrong");
        keep("something-is-wrong");
        window.press("I nearly fell");
        window.see("What is held back");
        keep("advice-fall");
        window.press("Close");
        window.press("Something is wrong");
        window.press("Too much pain");
        window.see("During which exercise?");
        keep("during-which");
        window.press_part("Sit tall");
        window.see("What is held back");
        window.press("Close");
        window.press("Something is wrong");
        window.press_part("Chest pain");
        window.see("Call your local emergency number now");
        keep("advice-urgent");
        window.press("Close");
        window.see("Your plan is on hold");
        keep("on-hold");
    }

    /// A new clinic's first plan, as far as its gate and its card.
    pub fn first_patient(&self) {
        let desktop = Desktop::new();
        let window = self.begin(desktop.open("new"));
        let keep = |name: &str| (self.at_screen)(&window, &format!("clinic-first-{name}"));
        window.press("I prescribe exercises");
        window.see("Set up your clinic");
        keep("door");
        window.type_into("Clinic's name", "Ropewalk Practice");
        window.type_into("Passphrase", "plumb line and lantern");
        window.type_into("Passphrase again", "plumb line and lantern");
        window.press("Set up the clinic");
        window.see("No patient yet");
        keep("patients");
        window.type_into("Code", "K17");
        window.press("Add patient");
        window.press("First plan: K17");
        window.see("Nothing in the plan yet");
        keep("plan-empty");
        if !window.can_press("Add Heel raise") {
            window.press("Exercises");
        }
        window.press("Add Stand on one leg");
        window.see("Balance at home");
        keep("plan-gate");
        window.press("Take out: Stand on one leg");
        window.press("Add Heel raise");
        window.see("Nothing stands against it.");
        window.press("Issue plan card");
        window.see("Whoever photographs this card");
        keep("card");
        window.press("Patients");
        window.press_part("K17");
        window.see("Receive it here");
        keep("review-empty");
    }

    /// A card of the scenario, as a picture.
    fn card(&self) -> PathBuf {
        let cards = std::fs::read_dir(self.homes.join("cards")).expect("the demo has cards");
        let first = cards.filter_map(Result::ok).find(|card| card.file_name().to_string_lossy().starts_with("A11"));
        let card = first.expect("the demo has a card for A11").path().join("card.png");
        std::path::absolute(card).expect("a card has a path")
    }

    /// The demo's clinic.
    pub fn clinic(&self) {
        let desktop = Desktop::new();
        let window = self.open(&desktop, "clinic");
        let keep = |name: &str| (self.at_screen)(&window, &format!("clinic-{name}"));
        let words = std::fs::read_to_string(self.homes.join("passphrase.txt")).expect("the demo has a passphrase");
        window.see("Passphrase");
        keep("door");
        window.type_into("Passphrase", words.trim());
        window.press("Open");
        window.see("E58");
        keep("patients");
        for code in ["B24", "E58", "F63"] {
            window.press_part(code);
            window.see("What got in the way");
            keep(&format!("review-{code}"));
            if code == "F63" {
                window.press("Next plan");
                window.see("Issue plan card");
                keep("plan");
            } else {
                window.press("Patients");
            }
        }
    }

    fn open(&self, desktop: &Desktop, home: &str) -> Window {
        let home = std::path::absolute(self.homes.join(home)).expect("a folder has a path");
        self.begin(desktop.open_at(&home))
    }

    fn begin(&self, opening: Opening<'_>) -> Window {
        let opening = opening.at(&self.at).size(self.size.0, self.size.1);
        if self.dark { opening.dark().start() } else { opening.start() }
    }
}
