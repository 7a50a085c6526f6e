//! Receiving sealed summaries: any number of files, which are read one after the other, gathered, and taken in by batches of whole patients.
//!
//! What a receipt says was taken is written when the receipt is given. Whoever stops in between keeps what was taken; the other files were
//! not touched. Receiving the same files again changes nothing.

mod batch;
mod gathered;
mod listing;
mod of_patient;
mod opening;
mod sorting;

use super::lock;
use crate::{ActionResult, DataFolder, Moment, platform};
use exercises::plain_text::shown;
use sorting::Sorter;
use vault::summary::Opener;
use wire::Failure;
use wire::receiving::{MAX_FILES, Receipt};

pub use gathered::Incoming;
pub use listing::{Listing, MAX_DEPTH, MAX_LISTED, by_name, by_path};

/// The most summaries of one batch, unless one patient's alone are more: enough that what each transaction costs does not count, and few
/// enough that somebody who stops does not wait.
pub const MAX_BATCH: usize = 1000;
/// The most bytes of files that are gathered before any of them is taken in, but for the last file. What comes from a patient at once is
/// looked at once, wherever in a folder it lies; all of it is in memory until it is taken in.
pub const MAX_GATHERED: usize = 33_554_432;

/// Files on their way in: they are added one after the other, gathered, and then taken in by batches. Needs no data folder: decoding
/// pictures takes its time, in which other actions need the folder.
#[derive(Default)]
pub struct Intake {
    sorter: Sorter,
    bytes: usize,
}

impl Intake {
    /// Adds a file that was read, or why it was not. Returns whether it was a picture, which took its time.
    pub fn add(&mut self, file: String, bytes: ActionResult<Vec<u8>>) -> bool {
        let bytes = bytes.inspect(|bytes| self.bytes += bytes.len());
        self.sorter.take(file, bytes)
    }

    /// Whether what was gathered is to be taken in before the next file is read.
    pub fn is_full(&self) -> bool {
        self.bytes >= MAX_GATHERED
    }

    /// How many summaries were gathered. Codes in pictures do not count.
    pub fn gathered(&self) -> usize {
        self.sorter.ready.len()
    }

    /// The summaries of the files that were added since. Codes in pictures wait for [`Intake::finish`], since the others may come later.
    pub fn ready(&mut self) -> Incoming {
        self.bytes = 0;
        Incoming::of(std::mem::take(&mut self.sorter.ready))
    }

    /// All other summaries, when the last file was added.
    pub fn finish(self) -> Incoming {
        Incoming::of(self.sorter.finish())
    }
}

/// Receives sealed files and pictures of frames in any order, and tells the receipts of each batch when it is written. `told` returns
/// whether to go on. Within a batch the receipts are in the files' order; the batches are in the order of each patient's first file.
///
/// Returns how many summaries were gathered and not taken in, since `told` has ended it.
///
/// # Errors
/// As for [`take_in`].
pub fn receive_each(
    folder: &mut DataFolder,
    moment: &Moment,
    files: impl IntoIterator<Item = (String, ActionResult<Vec<u8>>)>,
    mut told: impl FnMut(Vec<Receipt>) -> bool,
) -> ActionResult<usize> {
    lock::unlocked_keys(folder)?;
    let mut all = |mut incoming: Incoming| {
        let mut goes_on = true;
        while goes_on && !incoming.is_empty() {
            goes_on = told(take_in(folder, moment, &mut incoming)?);
        }
        Ok((goes_on, incoming.len()))
    };
    let mut intake = Intake::default();
    for (file, bytes) in files {
        intake.add(file, bytes);
        if intake.is_full()
            && let (false, left) = all(intake.ready())?
        {
            return Ok(left);
        }
    }
    all(intake.finish()).map(|(_, left)| left)
}

/// Receives sealed files and pictures of frames, and returns a receipt for each summary.
///
/// # Errors
/// As for [`take_in`].
pub fn receive(
    folder: &mut DataFolder,
    moment: &Moment,
    files: impl IntoIterator<Item = (String, ActionResult<Vec<u8>>)>,
) -> ActionResult<Vec<Receipt>> {
    let mut receipts = Vec::new();
    receive_each(folder, moment, files, |batch| {
        receipts.extend(batch);
        true
    })?;
    Ok(receipts)
}

/// Takes the next batch of summaries in and returns one receipt for each. All that were gathered from a patient are in the same batch. A
/// summary that is refused changes nothing and does not affect the others. A summary with a missing frame is not stored at all. If the
/// clinic's own store cannot be written, all that was new is refused for it.
///
/// # Errors
/// Only if the store is locked.
pub fn take_in(folder: &mut DataFolder, moment: &Moment, incoming: &mut Incoming) -> ActionResult<Vec<Receipt>> {
    incoming.unseal(&Opener::of(lock::unlocked_keys(folder)?));
    batch::take_in(folder, moment, &incoming.next_batch(MAX_BATCH))
}

/// Decodes files as the window sends them, one after the other; of more than [`MAX_FILES`] those beyond are refused undecoded.
pub fn from_window(
    files: impl IntoIterator<Item = (String, String)>,
) -> impl Iterator<Item = (String, ActionResult<Vec<u8>>)> {
    files.into_iter().enumerate().map(|(place, (name, base64))| {
        let too_many = Failure::TooManyFiles { most: MAX_FILES as u32 };
        let bytes = if place < MAX_FILES { platform::from_base64(&base64) } else { Err(too_many) };
        (shown(&name).into_owned(), bytes)
    })
}
