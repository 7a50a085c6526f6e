//! Helpers: a clinic and a patient, each with their own folder, and moments in Vienna.

use actions::clinic::{issuing, lock, patients};
use actions::patient::taking;
use actions::{DataFolder, Moment, clock, zone};
use chrono::DateTime;
use exercises::id::{ItemId, PlanId};
use exercises::plan::Prescription;
use exercises::slots::SlotRef;
use std::path::Path;
use std::sync::LazyLock;
use tempfile::TempDir;
use wire::app::Role;
use wire::clinic::{AddPatientRequest, IssueRequest};
use wire::patient::{CardSource, TakeCardRequest};

pub const PASSPHRASE: &str = "seven grey herons wade";

/// The moment for a text such as `11-25T09:00`, in the winter of 2026.
pub fn at(text: &str) -> Moment {
    let instant = DateTime::parse_from_rfc3339(&format!("2026-{text}:00+01:00")).expect("an instant");
    clock::at(instant.timestamp_millis(), zone::named("Europe/Vienna").expect("a zone"))
}

/// The example prescription as of 25 November.
pub fn example() -> Prescription {
    let today = at("11-25T08:00").now.date();
    format::plan_file::read(&format::plan_file::example(today + chrono::Duration::days(42)), today).expect("the example")
}

pub fn clinic(dir: &Path) -> DataFolder {
    let mut folder = DataFolder::open(&dir.join("clinic"), true).expect("a new folder");
    lock::start(&mut folder, "Linden Lane Practice", None, PASSPHRASE.into()).expect("new keys");
    patients::add(&mut folder, &at("11-25T08:00"), &AddPatientRequest { code: "K17".into(), name: None })
        .expect("a new code");
    folder
}

pub fn issue(folder: &mut DataFolder, moment: &Moment, prescription: Prescription, out: &Path) -> String {
    issuing::issue(folder, moment, &IssueRequest { code: "K17".into(), prescription }, Some(out))
        .expect("a plan that may be issued")
        .text
}

/// The first card of one clinic, shared by all tests of the patient's side.
static CARD: LazyLock<String> = LazyLock::new(|| {
    let dir = tempfile::tempdir().expect("a temporary folder");
    issue(&mut clinic(dir.path()), &at("11-25T08:00"), example(), &dir.path().join("card"))
});

pub fn card() -> CardSource {
    CardSource::Text(CARD.clone())
}

/// A patient who took the card at 08:40 on 25 November.
pub struct Patient {
    pub dir: TempDir,
    pub folder: DataFolder,
    pub plan: PlanId,
}

impl Patient {
    pub fn new() -> Patient {
        let mut patient = Patient::without_card();
        let request = TakeCardRequest { source: card(), agreed: Vec::new() };
        taking::take(&mut patient.folder, &at("11-25T08:40"), &request).expect("a valid card");
        patient.plan = actions::patient::plans::one(&patient.folder, None).expect("taken").plan().header.id;
        patient
    }

    pub fn without_card() -> Patient {
        let dir = tempfile::tempdir().expect("a temporary folder");
        let mut folder = DataFolder::open(&dir.path().join("patient"), true).expect("a new folder");
        folder.choose_role(Role::Patient).expect("free to choose");
        Patient { dir, folder, plan: PlanId([0; 8]) }
    }

    /// The same patient after the program was killed and started again.
    pub fn restarted(self) -> Patient {
        let Patient { dir, folder, plan } = self;
        drop(folder);
        let folder = DataFolder::open(&dir.path().join("patient"), false).expect("the folder opens");
        Patient { dir, folder, plan }
    }

    /// The contents of all files of the folder.
    pub fn bytes(&self) -> Vec<(String, Vec<u8>)> {
        let files = std::fs::read_dir(self.dir.path().join("patient")).expect("the folder").flatten();
        let mut all: Vec<_> = files
            .map(|file| (file.file_name().to_string_lossy().into_owned(), file.path()))
            .filter(|(name, _)| !name.ends_with("-shm"))
            .map(|(name, path)| (name, std::fs::read(path).expect("readable")))
            .collect();
        all.sort();
        all
    }
}

/// The slot of an item on 25 November.
pub fn slot(item: u8, number: u8) -> SlotRef {
    SlotRef { day: at("11-25T08:00").now.date(), item: ItemId(item), number }
}
