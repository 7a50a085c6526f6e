//! The data folder of one person: where it is, and what follows from its path.

use std::io;
use std::path::{Path, PathBuf};

use tauri::{AppHandle, Manager};

use crate::args::Args;

/// The home on the command line, otherwise the platform's folder for programs' data.
pub fn of(app: &AppHandle, args: &Args) -> tauri::Result<PathBuf> {
    match &args.home {
        Some(home) => Ok(home.clone()),
        None => usual(app),
    }
}

/// The folder in which the web view stores its data; it is removed when everything is erased.
pub fn web_view_folder(home: &Path) -> PathBuf {
    home.join(actions::platform::WEB_VIEW)
}

/// The folder for the web view's data if the home cannot be opened: in the system's temporary folder.
pub fn passing_folder(home: &Path) -> PathBuf {
    std::env::temp_dir().join(identifier(home))
}

#[cfg(desktop)]
fn usual(app: &AppHandle) -> tauri::Result<PathBuf> {
    Ok(create(&app.path().data_dir()?.join("carryover"))?)
}

/// A phone gives each program its own folder.
#[cfg(mobile)]
fn usual(app: &AppHandle) -> tauri::Result<PathBuf> {
    Ok(create(&app.path().app_data_dir()?)?)
}

/// Creates the folder given on the command line and returns its canonical path, so that two spellings of it are the same home.
#[cfg(desktop)]
pub fn ready(path: &str) -> io::Result<PathBuf> {
    create(Path::new(path))
}

/// Creates the folder, accessible by its owner only, unless it exists.
fn create(path: &Path) -> io::Result<PathBuf> {
    let mut folder = std::fs::DirBuilder::new();
    folder.recursive(true);
    #[cfg(unix)]
    std::os::unix::fs::DirBuilderExt::mode(&mut folder, 0o700);
    folder.create(path)?;
    path.canonicalize()
}

/// The program's identifier for a home of its own: a second start with the same home finds the running program by it, a start with
/// another home does not.
#[cfg(desktop)]
pub fn identifier(home: &Path) -> String {
    // A part of a D-Bus name must not begin with a digit.
    format!("carryover.window.home-{}", short_name(home))
}

/// A short name of a home that differs from that of any other home.
#[cfg(desktop)]
pub fn short_name(home: &Path) -> String {
    use sha2::{Digest, Sha256};

    let digest = Sha256::digest(home.as_os_str().as_encoded_bytes());
    digest[..8].iter().map(|byte| format!("{byte:02x}")).collect()
}

/// A phone has one home, so the identifier does not change.
#[cfg(mobile)]
pub fn identifier(_home: &Path) -> String {
    String::from("carryover.window")
}

/// The folder of a sample within the person's own folder; it is removed when this is dropped.
pub struct SampleFolder(PathBuf);

impl SampleFolder {
    /// The sample folder in this home. It need not exist yet.
    pub fn within(home: &Path) -> SampleFolder {
        SampleFolder(home.join("sample"))
    }

    /// Its path.
    pub fn path(&self) -> &Path {
        &self.0
    }

    /// Removes the folder, if it exists.
    ///
    /// # Errors
    /// The error that prevents it from being removed.
    pub fn remove(&self) -> io::Result<()> {
        match std::fs::remove_dir_all(&self.0) {
            Err(error) if error.kind() != io::ErrorKind::NotFound => Err(error),
            _ => Ok(()),
        }
    }
}

impl Drop for SampleFolder {
    fn drop(&mut self) {
        if let Err(error) = self.remove() {
            eprintln!("the sample's folder stays until the next start: {error}");
        }
    }
}

#[cfg(all(test, desktop))]
mod tests {
    use super::*;

    #[test]
    fn two_spellings_of_a_folder_are_one_home() {
        let folder = tempfile::tempdir().unwrap();
        let plain = folder.path().join("mine");
        let winding = folder.path().join("mine/../mine/.");
        let first = ready(plain.to_str().unwrap()).unwrap();
        let second = ready(winding.to_str().unwrap()).unwrap();
        assert_eq!(identifier(&first), identifier(&second));
    }

    #[test]
    fn two_folders_are_two_homes() {
        assert_ne!(identifier(Path::new("/home/a")), identifier(Path::new("/home/b")));
    }

    #[cfg(unix)]
    #[test]
    fn a_new_home_is_closed_to_others() {
        use std::os::unix::fs::PermissionsExt;
        let folder = tempfile::tempdir().unwrap();
        let home = ready(folder.path().join("mine").to_str().unwrap()).unwrap();
        assert_eq!(home.metadata().unwrap().permissions().mode() & 0o777, 0o700);
    }
}
