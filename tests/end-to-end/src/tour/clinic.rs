//! The tour of the clinic: the demo's patients, and a new clinic's first plan.

use super::Tour;
use crate::{Desktop, Window};

/// Of the new clinic.
const PASSPHRASE: &str = "plumb line and lantern";

impl Tour<'_> {
    /// Visits the demo's clinic.
    pub(super) fn clinic(&self) {
        let desktop = Desktop::new();
        let window = self.open(&desktop, "clinic");
        let keep = |name: &str| (self.at_screen)(&window, &format!("clinic-{name}"));
        let words = std::fs::read_to_string(self.homes.join("passphrase.txt")).expect("the demo has a passphrase");
        window.see("Passphrase");
        keep("door");
        window.type_into("Passphrase", words.trim());
        window.press("Unlock");
        window.see("E58");
        keep("patients");
        self.pages(&window, "clinic", "E58");
        window.press("Passphrase and keys");
        window.see("Secret key for other programs");
        keep("keys");
        window.press("Patients");
        window.see("E58");
        self.own(&window);
        self.received(&window);
        for code in ["B24", "E58", "G71", "F63"] {
            window.press_part(code);
            window.see("What got in the way");
            keep(&format!("review-{code}"));
            if code == "E58" {
                window.press("Visit");
                window.see("Noted today");
                keep("visit");
                window.press("Review");
                window.see("What got in the way");
            }
            match code {
                "E58" => self.opened_in_review(&window, code),
                "F63" => {
                    window.press("Next plan");
                    window.see("Issue plan card");
                    keep("plan");
                }
                _ => window.press("Patients"),
            }
        }
    }

    /// Visits the pages for exercises of the clinic's own; nothing is kept.
    fn own(&self, window: &Window) {
        let keep = |name: &str| (self.at_screen)(window, &format!("clinic-{name}"));
        window.press("Your exercises and sets");
        window.see("Exercises you wrote");
        keep("own");
        window.press("Start from a copy");
        window.type_into("Find an exercise to copy", "wall");
        window.see("Wall sit");
        keep("own-copies");
        window.press("Start from nothing");
        window.see("What the patient sees");
        keep("write");
        window.press("Your exercises and sets");
        window.press("Patients");
        window.see("E58");
    }

    /// Receives summaries that the clinic has already, and a picture and a file that are no summaries, and visits the list of results.
    fn received(&self, window: &Window) {
        let summaries = std::fs::read_dir(self.homes.join("summaries")).expect("the demo has summaries");
        let none = self.homes.join("none.age");
        std::fs::write(&none, "no summary").expect("the demo's folder is writable");
        let all = summaries.filter_map(Result::ok).map(|file| file.path()).chain([none, self.card()]);
        let all: Vec<_> = all.map(|file| std::path::absolute(file).expect("a file has a path")).collect();
        window.choose_files("Choose files", &all);
        window.see(&format!("New: 0 · known already: {} · refused: 2", all.len() - 2));
        (self.at_screen)(window, "clinic-received");
    }

    /// Visits a new clinic's first plan, including the balance gate and the card.
    pub(super) fn first_patient(&self) {
        let desktop = Desktop::new();
        let window = self.begin(desktop.open("new").at(&self.at));
        let keep = |name: &str| (self.at_screen)(&window, &format!("clinic-first-{name}"));
        window.welcomed();
        window.press("I prescribe exercises");
        window.see("Set up your clinic");
        keep("door");
        window.type_into("Clinic's name", "Ropewalk Practice");
        window.type_into("Passphrase", PASSPHRASE);
        window.type_into("Passphrase again", PASSPHRASE);
        window.press("Set up the clinic");
        window.see("No patients yet");
        keep("patients");
        window.type_into("Code", "K17");
        window.press("Add patient");
        window.press("First plan: K17");
        window.see("The plan is empty");
        keep("plan-empty");
        if !window.can_press("Add Heel raise") {
            window.press("Exercises");
        }
        self.find_and_tick(&window);
        window.press("Add Stand on one leg");
        window.see("Balance at home");
        keep("plan-gate");
        window.press_part("Attempts: ");
        keep("plan-number");
        window.press("Remove: Stand on one leg");
        window.press("Add Heel raise");
        window.see("Ready to issue.");
        window.press("Issue plan card");
        window.see("Anyone who photographs this card");
        keep("card");
        window.press("Patients");
        window.press_part("K17");
        window.see("Receive it here");
        keep("review-empty");
        window.press("Patients");
        self.clinicians(&window);
        self.closed(&window);
    }

    /// Visits the clinicians of a clinic that has one more, and how each of them unlocks it.
    fn clinicians(&self, window: &Window) {
        let keep = |name: &str| (self.at_screen)(window, &format!("clinic-first-{name}"));
        window.press("Passphrase and keys");
        window.press_part("Add a clinician");
        window.type_into("Clinician's name", "Ash Lindqvist");
        window.type_into("Your own name", "Rowan Hale");
        window.type_into("Their first passphrase", "eight brown wrens in a kettle");
        window.type_into("Your passphrase, to confirm it", PASSPHRASE);
        keep("clinician");
        window.press("Add this clinician");
        window.see("Ash Lindqvist was added.");
        window.press_part("Remove a clinician");
        keep("clinicians");
        window.press("Lock");
        window.see("Clinician's name");
        keep("unlock");
        window.type_into("Clinician's name", "Rowan Hale");
        window.type_into("Passphrase", PASSPHRASE);
        window.press("Unlock");
        window.see("Secret key for other programs");
        window.press("Patients");
    }

    /// Visits a case that is closed, and the list that leaves it out.
    fn closed(&self, window: &Window) {
        let keep = |name: &str| (self.at_screen)(window, &format!("clinic-first-{name}"));
        window.press("Case of K17");
        window.type_into("More about it (optional)", "moved away");
        keep("case");
        window.press("Close the case");
        window.see("Open the case again");
        keep("case-closed");
        window.press("Patients");
        window.press("Closed: 1");
        window.see("K17");
        keep("patients-closed");
    }

    /// Visits the ways to find an exercise, and what is ticked for a patient; nothing is added.
    fn find_and_tick(&self, window: &Window) {
        let keep = |name: &str| (self.at_screen)(window, &format!("clinic-first-{name}"));
        window.press_part("Filters");
        keep("plan-filters");
        window.press_part("Filters");
        window.type_into("Find an exercise", "giraffe");
        window.see("No exercise fits");
        keep("plan-nothing-found");
        window.press("Clear words and filters");
        window.press("All figures");
        keep("plan-figures");
        window.press("Back to the plan");
        window.press_part("To think of with this patient");
        window.press("Osteoporosis");
        keep("plan-facts");
        window.press_part("To think of with this patient");
    }
}
