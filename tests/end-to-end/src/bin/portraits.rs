//! Opens the demo's windows one after the other and keeps pictures of their screens.
//!
//! `portraits HOMES OUT INSTANT SIDE`: the folder with the demo's data folders, the folder for the pictures, the moment that
//! the windows take for now, and `patient`, `clinic` or `both`.

use end_to_end::{Desktop, Window};
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
        }
        if side != "patient" {
            sitting.clinic(dark, desk);
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
        window.press("Plan");
        keep("plan");
        window.press("Record");
        window.see("For the visit");
        keep("record");
        window.press("Now");
        window.press("Something is wrong");
        keep("something-is-wrong");
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
        let opening = desktop
            .open_at(&std::path::absolute(self.homes.join(home)).expect("a folder has a path"))
            .at(&self.at)
            .size(size.0, size.1);
        if dark { opening.dark().start() } else { opening.start() }
    }

    fn keep(&self, window: &Window, name: &str, dark: bool, size: (u32, u32)) {
        let shade = if dark { "dark" } else { "light" };
        let file = format!("{name}-{}x{}-{shade}.png", size.0, size.1);
        window.picture(Path::new(&self.out).join(file).as_path());
    }
}
