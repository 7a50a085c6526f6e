//! Which files are received when files and folders are named.

use crate::{ActionResult, platform, refuse};
use exercises::plain_text::shown;
use std::borrow::Cow;
use std::path::{Path, PathBuf};
use store::files::{self, InsideKind};
use wire::Failure;
use wire::receiving::is_received;

/// The most files of one go, from folders and named together.
pub const MAX_LISTED: usize = 20_000;
/// How deep below a named folder files are received.
pub const MAX_DEPTH: usize = 4;

/// The files that are received, one after the other.
#[derive(Debug, Default)]
pub struct Listing {
    files: Vec<Listed>,
    /// How many other files the folders hold.
    pub passed_over: u32,
}

/// One file, or a folder that cannot be read.
#[derive(Debug)]
struct Listed {
    path: PathBuf,
    /// How it is called when it is spoken of.
    name: String,
    fault: Option<Failure>,
}

impl Listing {
    /// The files that are named, and those of named folders that look like summaries or pictures: in the folder and down to
    /// [`MAX_DEPTH`] folders below it. Links to folders are not followed, so that none is listed twice.
    ///
    /// `name` says how a file is called when it is spoken of, by its path and the path that was named.
    ///
    /// # Errors
    /// [`Failure::TooManyFiles`] for more than [`MAX_LISTED`].
    pub fn of<'p>(named: impl IntoIterator<Item = &'p Path>, name: fn(&Path, &Path) -> String) -> ActionResult<Listing> {
        let mut listing = Listing::default();
        for path in named {
            if files::is_folder(path) {
                listing.folder(path, MAX_DEPTH, &|inside| name(inside, path))?;
            } else {
                listing.push(path.to_owned(), name(path, path), None)?;
            }
        }
        Ok(listing)
    }

    /// How many files there are.
    pub fn len(&self) -> usize {
        self.files.len()
    }

    /// Whether there are none.
    pub fn is_empty(&self) -> bool {
        self.files.is_empty()
    }

    /// Reads the files, each when its turn comes.
    pub fn read(self) -> impl Iterator<Item = (String, ActionResult<Vec<u8>>)> + Send {
        self.files.into_iter().map(|Listed { path, name, fault }| {
            let read = fault.map_or_else(|| platform::read_received(&path).map_err(|failure| called(failure, &name)), Err);
            (name, read)
        })
    }

    fn push(&mut self, path: PathBuf, name: String, fault: Option<Failure>) -> ActionResult<()> {
        if self.files.len() >= MAX_LISTED {
            return Err(Failure::TooManyFiles { most: MAX_LISTED as u32 });
        }
        self.files.push(Listed { path, name: shown(&name).into_owned(), fault });
        Ok(())
    }

    fn folder(&mut self, dir: &Path, depth: usize, name: &dyn Fn(&Path) -> String) -> ActionResult<()> {
        let found = match files::inside(dir) {
            Ok(found) => found,
            Err(error) => return self.push(dir.to_owned(), name(dir), Some(called(refuse::reading(error), &name(dir)))),
        };
        let (mut received, mut folders) = (Vec::new(), Vec::new());
        for one in found {
            match one.kind {
                InsideKind::Folder if depth > 0 => folders.push(one.path),
                InsideKind::Other if is_received(&file_name(&one.path)) => received.push(one.path),
                InsideKind::Folder | InsideKind::Other => self.passed_over = self.passed_over.saturating_add(1),
            }
            if received.len() + self.files.len() > MAX_LISTED {
                return Err(Failure::TooManyFiles { most: MAX_LISTED as u32 });
            }
        }
        received.sort();
        folders.sort();
        received.into_iter().try_for_each(|path| {
            let name = name(&path);
            self.push(path, name, None)
        })?;
        folders.iter().try_for_each(|folder| self.folder(folder, depth - 1, name))
    }
}

fn file_name(path: &Path) -> Cow<'_, str> {
    path.file_name().unwrap_or_default().to_string_lossy()
}

/// The whole path, as a terminal names files.
pub fn by_path(path: &Path, _named: &Path) -> String {
    path.display().to_string()
}

/// The path from the named file or folder on, as a window names files.
pub fn by_name(path: &Path, named: &Path) -> String {
    let within = named.parent().and_then(|above| path.strip_prefix(above).ok()).unwrap_or(path);
    within.display().to_string()
}

/// The failure of reading a file, with the file as it is called.
fn called(failure: Failure, name: &str) -> Failure {
    let file = name.to_owned();
    match failure {
        Failure::FileMissing { .. } => Failure::FileMissing { file },
        Failure::FileTooBig { most, .. } => Failure::FileTooBig { file, most },
        Failure::FileUnreadable { .. } => Failure::FileUnreadable { file },
        other => other,
    }
}
