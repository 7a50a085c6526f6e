//! The files that were saved in this run of the program, so that the page can ask for one to be shown without naming a path.

use std::path::{Path, PathBuf};
use std::sync::{Mutex, PoisonError};

use actions::platform;
use wire::saved::SavedFile;

/// The files by their numbers.
#[derive(Default)]
pub struct SavedFiles(Mutex<Vec<PathBuf>>);

impl SavedFiles {
    /// Remembers a file, and tells of it as the window may know it. `data` is the data folder.
    pub fn tell(&self, file: impl Into<PathBuf>, data: &Path) -> SavedFile {
        let file = file.into();
        let name = file.file_name().unwrap_or(file.as_os_str()).to_string_lossy().into_owned();
        let place = platform::place_of(&file, data);
        SavedFile { number: cfg!(desktop).then(|| self.number(file)).flatten(), name, place }
    }

    /// The file with this number.
    pub fn file(&self, number: u32) -> Option<PathBuf> {
        self.known(|files| files.get(usize::try_from(number).ok()?).cloned())
    }

    /// A file that is saved again keeps its number.
    fn number(&self, file: PathBuf) -> Option<u32> {
        self.known(|files| {
            let place = files.iter().position(|known| *known == file).unwrap_or(files.len());
            if place == files.len() {
                files.push(file);
            }
            u32::try_from(place).ok()
        })
    }

    fn known<T>(&self, act: impl FnOnce(&mut Vec<PathBuf>) -> T) -> T {
        act(&mut self.0.lock().unwrap_or_else(PoisonError::into_inner))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn only_what_was_saved_in_this_run_has_a_number() {
        let saved = SavedFiles::default();
        assert_eq!(saved.file(0), None);
        let data = Path::new("/data");
        let [one, two, again] = ["/x/one.pdf", "/x/two.pdf", "/x/one.pdf"].map(|path| saved.tell(path, data));
        assert_eq!((one.name.as_str(), one.number, two.number), ("one.pdf", Some(0), Some(1)));
        assert_eq!(one, again, "it was saved again");
        assert_eq!(saved.file(1), Some(PathBuf::from("/x/two.pdf")));
        assert_eq!(saved.file(2), None);
    }
}
