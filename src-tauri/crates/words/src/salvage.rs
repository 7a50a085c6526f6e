//! What was saved of a damaged database, table by table.

use crate::{Key, Words};

impl Words {
    /// How many rows of a table of this name were saved and how many are lost. More may be lost unless the whole table could be read.
    pub fn salvaged(self, table: &str, saved: u64, lost: u64, is_whole: bool) -> String {
        let name = match table {
            "entry" => Key::SalvageEntries,
            "card" | "issued" => Key::SalvageCards,
            "patient" => Key::SalvagePatients,
            "received" => Key::SalvageSummaries,
            "keys" => Key::SalvageKeys,
            "draft" => Key::SalvageDrafts,
            "norms" => Key::SalvageNorms,
            "setting" => Key::SalvageSettings,
            "device" => Key::SalvageDevices,
            "own_exercise" => Key::SalvageOwnExercises,
            "plan_set" => Key::SalvageSets,
            "visit" => Key::SalvageVisits,
            "digest" => Key::SalvageDigests,
            "patient_case" => Key::SalvageCases,
            "clinician" => Key::SalvageClinicians,
            "manifest" => Key::SalvageManifest,
            _ => Key::SalvageOther,
        };
        let name = self.text(name);
        match (lost, is_whole) {
            (0, true) => self.salvage_whole(name, saved),
            (0, false) => self.salvage_perhaps(name, saved),
            _ => self.salvage_lost(name, saved, lost),
        }
    }
}
