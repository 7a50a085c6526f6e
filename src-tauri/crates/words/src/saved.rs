//! Where a file was saved, in words.

use crate::{Key, Words};
use wire::saved::{KnownFolder, Place, SavedFile};

impl Words {
    /// What files that were saved together are called, and where they lie; empty for none.
    pub fn saved_as(self, files: &[SavedFile]) -> String {
        match files {
            [] => String::new(),
            [file] => self.saved_file(&file.name, &self.saved_place(&file.place)),
            [first, ..] => {
                let names: Vec<String> = files.iter().map(|file| file.name.clone()).collect();
                self.saved_files(&self.saved_place(&first.place), &self.list(&names))
            }
        }
    }

    /// The folder in which files were saved together, without their names; empty for none.
    pub fn saved_folder_of(self, files: &[SavedFile]) -> String {
        files.first().map(|file| self.saved_folder(&self.saved_place(&file.place))).unwrap_or_default()
    }

    /// What a file is called and where it lies, as part of a sentence.
    pub fn name_and_place(self, file: &SavedFile) -> String {
        self.saved_name_and_place(&file.name, &self.saved_place(&file.place))
    }

    /// Where a file lies, as part of a sentence: "in your Downloads folder".
    pub fn saved_place(self, place: &Place) -> String {
        let inner = place.within.iter().cloned().reduce(|outer, inner| self.place_inner(&outer, &inner));
        let Some(folder) = inner else {
            return self.text(known(place.known)).to_owned();
        };
        match place.known {
            KnownFolder::Documents => self.place_documents_within(&folder),
            KnownFolder::Downloads => self.place_downloads_within(&folder),
            KnownFolder::Desktop => self.place_desktop_within(&folder),
            KnownFolder::Home => self.place_home_within(&folder),
            KnownFolder::Data => self.place_data_within(&folder),
            KnownFolder::Other => self.place_other(&folder),
        }
    }
}

fn known(folder: KnownFolder) -> Key {
    match folder {
        KnownFolder::Documents => Key::PlaceDocuments,
        KnownFolder::Downloads => Key::PlaceDownloads,
        KnownFolder::Desktop => Key::PlaceDesktop,
        KnownFolder::Data => Key::PlaceData,
        // A folder that nobody knows always has a name.
        KnownFolder::Home | KnownFolder::Other => Key::PlaceHome,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::Locale;

    fn file(name: &str, known: KnownFolder, within: &[&str]) -> SavedFile {
        let within = within.iter().map(|name| (*name).to_owned()).collect();
        SavedFile { number: Some(0), name: name.into(), place: Place { known, within } }
    }

    #[test]
    fn a_saved_file_is_told_by_its_name_and_a_place_that_the_person_knows() {
        let (en, es) = (Words::new(Locale::En), Words::new(Locale::Es));
        let report = [file("report.pdf", KnownFolder::Downloads, &[])];
        assert_eq!(en.saved_as(&report), "Saved as report.pdf in your Downloads folder.");
        assert_eq!(es.saved_as(&report), "Guardado como report.pdf en su carpeta Descargas.");
        let card = ["card.png", "card.txt"].map(|name| file(name, KnownFolder::Documents, &["Clinic", "card"]));
        assert_eq!(en.saved_as(&card), "Saved in the folder Clinic / card in Documents: card.png and card.txt.");
        assert_eq!(en.saved_folder_of(&card), "Saved in the folder Clinic / card in Documents.");
        let kept = file("old.db", KnownFolder::Other, &["usb"]);
        assert_eq!(en.name_and_place(&kept), "old.db in the folder usb");
        assert_eq!(en.saved_as(&[]), "");
    }
}
