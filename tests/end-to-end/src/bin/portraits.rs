//! Opens the demo's windows one after the other and keeps pictures of their screens.
//!
//! `portraits HOMES OUT INSTANT SIDE`: the folder with the demo's data folders, the folder for the pictures, the moment that
//! the windows take for now, and `patient`, `clinic` or `both`.

use end_to_end::{Desktop, Opening, Window};
use std::path::{Path, PathBuf};

const PHONE: (u32, u32) = (390, 844);
const SMALL: (u32, u32) = (360, 640);
const DESK: (u32, u32) = (1280, 800);

fn main() {
    let arguments: Vec<String> = std::env::args().skip(1).collect();
    let [homes, out, at, side] = arguments.as_slice() else { panic!("portraits HOMES OUT INSTANT SIDE") };
    let sitting = Sitting { homes: PathBuf::from(homes), out: PathBuf::from(out), at: at.clone() };
    for (dark, phone, desk) in [(false, PHONE, DESK), (true, PHONE, DESK), (false, SMALL, PHONE)] {
        if side != "clinic" {
            sitting.patient(dark, phone);
            sitting.first_day(dark, phone);
        }
        if side != "patient" {
            sitting.clinic(dark, desk);
            sitting.first_patient(dark, desk);
        }
    }
}

struct Sitting {
    homes: PathBuf,
    out: PathBuf,
    at: String,
}

impl Sitting {
    fn patient(&self, dark: bool, size: (u32, u32)) {
        let desktop = Desktop::new();
        let window = self.open(&desktop, "A11-work", dark, size);
        let keep = |name: &str| self.keep(&window, &format!("patient-{name}"), dark, size);
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
    fn first_day(&self, dark: bool, size: (u32, u32)) {
        let desktop = Desktop::new();
        let window = self.begin(desktop.open("new"), dark, size);
        let keep = |name: &str| self.keep(&window, &format!("first-{name}"), dark, size);
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
    fn first_patient(&self, dark: bool, size: (u32, u32)) {
        let desktop = Desktop::new();
        let window = self.begin(desktop.open("new"), dark, size);
        let keep = |name: &str| self.keep(&window, &format!("clinic-first-{name}"), dark, size);
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

    fn clinic(&self, dark: bool, size: (u32, u32)) {
        let desktop = Desktop::new();
        let window = self.open(&desktop, "clinic", dark, size);
        let keep = |name: &str| self.keep(&window, &format!("clinic-{name}"), dark, size);
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

    fn open(&self, desktop: &Desktop, home: &str, dark: bool, size: (u32, u32)) -> Window {
        let home = std::path::absolute(self.homes.join(home)).expect("a folder has a path");
        self.begin(desktop.open_at(&home), dark, size)
    }

    fn begin(&self, opening: Opening<'_>, dark: bool, size: (u32, u32)) -> Window {
        let opening = opening.at(&self.at).size(size.0, size.1);
        if dark { opening.dark().start() } else { opening.start() }
    }

    fn keep(&self, window: &Window, name: &str, dark: bool, size: (u32, u32)) {
        let shade = if dark { "dark" } else { "light" };
        let file = format!("{name}-{}x{}-{shade}.png", size.0, size.1);
        window.picture(Path::new(&self.out).join(file).as_path());
    }
}
