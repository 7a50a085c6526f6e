//! Files that are on their way into the clinic: what was dropped on the window or chosen as a folder, and how far it was received.
//!
//! The page never names a file. It says that it wants the next part of what the person dropped or chose, and only that is read.

use std::path::{Path, PathBuf};
use std::sync::{Mutex, PoisonError};

use actions::ActionResult;
use actions::clinic::receiving::{Incoming, Intake, Listing, by_name};
use wire::Failure;

/// A file's name, and its bytes or why it cannot be read.
type Read = (String, ActionResult<Vec<u8>>);

/// What is on its way.
#[derive(Default)]
pub struct Arriving {
    /// What was dropped or chosen last, until the page asks for it.
    named: Mutex<Vec<PathBuf>>,
    going: Mutex<Option<Going>>,
}

/// Files that are being received.
#[derive(Default)]
pub struct Going {
    intake: Intake,
    files: Option<Box<dyn Iterator<Item = Read> + Send>>,
    /// Files that were read.
    done: u32,
    /// All files.
    of: u32,
    /// Other files in the folders.
    passed_over: u32,
}

impl Arriving {
    /// Notes what was dropped or chosen, in place of what was there before.
    pub fn name(&self, paths: &[PathBuf]) {
        *self.named.lock().unwrap_or_else(PoisonError::into_inner) = paths.to_vec();
    }

    /// What was dropped or chosen last. It is given out once.
    pub fn named(&self) -> Vec<PathBuf> {
        std::mem::take(&mut self.named.lock().unwrap_or_else(PoisonError::into_inner))
    }

    /// What is being received. Whoever takes it puts it back with [`Arriving::go_on`].
    pub fn going(&self) -> Option<Going> {
        self.going.lock().unwrap_or_else(PoisonError::into_inner).take()
    }

    /// Goes on with this the next time; with `None`, the files that were not read yet are left as they are.
    pub fn go_on(&self, going: Option<Going>) {
        *self.going.lock().unwrap_or_else(PoisonError::into_inner) = going;
    }
}

impl Going {
    /// Begins with the files and folders that were dropped or chosen.
    ///
    /// # Errors
    /// [`Failure::TooManyFiles`].
    pub fn of(named: &[PathBuf]) -> ActionResult<Going> {
        let listing = Listing::of(named.iter().map(PathBuf::as_path), by_name as fn(&Path, &Path) -> String)?;
        let (of, passed_over) = (count(listing.len()), listing.passed_over);
        Ok(Going { files: Some(Box::new(listing.read())), of, passed_over, ..Going::default() })
    }

    /// Reads files until there is a part of them to be taken in.
    pub fn next(mut self) -> Part {
        while !self.intake.is_full() {
            let Some((file, bytes)) = self.files.as_mut().and_then(Iterator::next) else { return self.finish() };
            self.done += 1;
            self.intake.add(file, bytes);
        }
        self.part()
    }

    /// Adds a part of the files that the window sends.
    pub fn add(mut self, files: impl IntoIterator<Item = Read>, last: bool) -> Part {
        files.into_iter().for_each(|(file, bytes)| self.intake.add(file, bytes));
        if last { self.finish() } else { self.part() }
    }

    fn part(mut self) -> Part {
        let (incoming, Going { done, of, passed_over, .. }) = (self.intake.ready(), &self);
        Part { incoming, done: *done, of: *of, passed_over: *passed_over, rest: Some(self) }
    }

    fn finish(self) -> Part {
        let Going { intake, done, of, passed_over, .. } = self;
        Part { incoming: intake.finish(), done, of, passed_over, rest: None }
    }
}

/// A part of the files that was read, to be taken in.
pub struct Part {
    /// The summaries in it.
    pub incoming: Incoming,
    /// How many files were read by now.
    pub done: u32,
    /// How many files there are.
    pub of: u32,
    /// Other files in the folders.
    pub passed_over: u32,
    /// What comes after it; `None` if it is the last part.
    pub rest: Option<Going>,
}

/// The failure of a page that asks for the next part of nothing.
pub fn nothing_begun() -> Failure {
    Failure::Internal { detail: "nothing is being received".into() }
}

fn count(number: usize) -> u32 {
    u32::try_from(number).unwrap_or(u32::MAX)
}
