//! What the window knows of a file that the program saved: its name and its folder in words, and a number in place of a path, so that the
//! window can have no other file shown.

use serde::{Deserialize, Serialize};

/// A file that was saved.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct SavedFile {
    /// Its number in this run of the program, by which the file manager can be asked to show it; `None` on a phone, which has none.
    pub number: Option<u32>,
    /// Its name.
    pub name: String,
    /// Where it lies.
    pub place: Place,
}

/// The folder of a saved file.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct Place {
    /// A folder that the person knows.
    pub known: KnownFolder,
    /// The folders within it, from outside to inside; empty for the known folder itself. Of [`KnownFolder::Other`], the name of the folder.
    pub within: Vec<String>,
}

/// A folder that a person knows by a name of their language.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub enum KnownFolder {
    /// The person's documents.
    Documents,
    /// The person's downloads.
    Downloads,
    /// The person's desktop.
    Desktop,
    /// The person's home folder.
    Home,
    /// The data folder of this program.
    Data,
    /// None of these.
    Other,
}

/// A saved file to be shown by the file manager.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub struct SavedNumber {
    /// [`SavedFile::number`].
    pub number: u32,
}

/// What came of showing a saved file.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub enum Shown {
    /// A file manager shows it.
    InFolder,
    /// No file manager answers.
    NoFileManager {
        /// The file's path, to be copied.
        path: String,
    },
    /// The file is not there any more.
    Gone,
}
