//! A patient with a plan, created with the terminal: for tests that begin after prescribing.

use crate::desktop::Desktop;
use crate::program::{carryover, carryover_in};
use crate::scenes::ZONE;
use crate::window::Window;
use std::path::Path;

const PASSPHRASE: &str = "plumb line and lantern";

/// A clinic and its patient K17 on one desktop. The patient has taken a plan's card. Their homes are `clinic` and `patient`; both live in
/// the zone of the scenes, wherever the test runs.
pub struct Prescribed {
    clinic: Vec<String>,
    patient: Vec<String>,
}

/// Writes a file that only its owner can read, as the terminal demands of one with a passphrase.
#[track_caller]
pub fn write_secret(path: &Path, text: &str) {
    std::fs::write(path, text).expect("the desktop's folder is writable");
    #[cfg(unix)]
    std::fs::set_permissions(path, std::os::unix::fs::PermissionsExt::from_mode(0o600)).expect("its owner may do that");
}

impl Desktop {
    /// Issues the plan (the text of a plan file) at this moment, and lets the patient take its card.
    #[track_caller]
    pub fn prescribe(&self, plan: &str, at: &str) -> Prescribed {
        self.prescribe_from(&["start", "--name", "Ropewalk Practice"], plan, at)
    }

    /// The same from a clinic with a telephone number.
    #[track_caller]
    pub fn prescribe_with_phone(&self, plan: &str, at: &str, phone: &str) -> Prescribed {
        self.prescribe_from(&["start", "--name", "Ropewalk Practice", "--phone", phone], plan, at)
    }

    #[track_caller]
    fn prescribe_from(&self, start: &[&str], plan: &str, at: &str) -> Prescribed {
        let path = |name: &str| self.path(name).to_string_lossy().into_owned();
        let write =
            |name: &str, text: &str| std::fs::write(self.path(name), text).expect("the desktop's folder is writable");
        write_secret(&self.path("passphrase"), PASSPHRASE);
        write("plan.toml", plan);
        let clinic = ["--home", &path("clinic"), "--at", at, "clinic", "--passphrase-file", &path("passphrase")];
        let made = Prescribed {
            clinic: clinic.map(str::to_owned).to_vec(),
            patient: ["--home", &path("patient"), "--at"].map(str::to_owned).to_vec(),
        };
        made.clinic(start);
        made.clinic(&["add", "K17"]);
        made.clinic(&["issue", "K17", &path("plan.toml"), "--out", &path("card")]);
        made.patient(at, &["accept", &format!("{}/card.bin", path("card"))]);
        made
    }
}

impl Desktop {
    /// The passphrase of every clinic here.
    pub fn passphrase(&self) -> &'static str {
        PASSPHRASE
    }

    /// Creates a clinic, whose home is `clinic`, and its patient K17, who has no plan yet; returns the passphrase.
    #[track_caller]
    pub fn with_a_clinic(&self) -> &'static str {
        let path = |name: &str| self.path(name).to_string_lossy().into_owned();
        write_secret(&self.path("passphrase"), PASSPHRASE);
        let (home, file) = (path("clinic"), path("passphrase"));
        let clinic = |arguments: &[&str]| {
            carryover(&[&["--home", &home, "clinic", "--passphrase-file", &file], arguments].concat());
        };
        clinic(&["start", "--name", "Ropewalk Practice"]);
        clinic(&["add", "K17"]);
        PASSPHRASE
    }

    /// The window of the clinic at this moment, as large as a desk's, unlocked and with its list of patients.
    #[track_caller]
    pub fn unlocked_clinic(&self, at: &str) -> Window {
        let clinic = self.open("clinic").at(at).zone(ZONE).size(1280, 800).start();
        clinic.type_into("Passphrase", PASSPHRASE);
        clinic.press("Unlock");
        clinic.see("Receive summaries");
        clinic
    }
}

impl Prescribed {
    /// The output of `carryover clinic` at the moment of the card.
    #[track_caller]
    pub fn clinic(&self, arguments: &[&str]) -> String {
        let own: Vec<&str> = self.clinic.iter().map(String::as_str).collect();
        carryover_in(ZONE, &[&own[..], arguments].concat())
    }

    /// The output of `carryover clinic` at this moment.
    #[track_caller]
    pub fn clinic_at(&self, at: &str, arguments: &[&str]) -> String {
        let mut own: Vec<&str> = self.clinic.iter().map(String::as_str).collect();
        let place = own.iter().position(|word| *word == "--at").expect("the moment of the card");
        own[place + 1] = at;
        carryover_in(ZONE, &[&own[..], arguments].concat())
    }

    /// The output of `carryover patient` at this moment.
    #[track_caller]
    pub fn patient(&self, at: &str, arguments: &[&str]) -> String {
        let own: Vec<&str> = self.patient.iter().map(String::as_str).collect();
        carryover_in(ZONE, &[&own[..], &[at, "patient"], arguments].concat())
    }
}
