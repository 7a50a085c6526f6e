//! Receiving sealed summaries: any number of files, which are read one after the other and taken in by batches.
//!
//! What a receipt says was taken is written when the receipt is given. Whoever stops in between keeps what was taken; the other files were
//! not touched. Receiving the same files again changes nothing.

mod batch;
mod listing;
mod of_patient;
mod opening;
mod sorting;

use super::lock;
use crate::{ActionResult, DataFolder, Moment, platform};
use exercises::plain_text::shown;
use sorting::{IncomingSummary, Sorter};
use wire::Failure;
use wire::receiving::{MAX_FILES, Receipt};

pub use listing::{Listing, MAX_DEPTH, MAX_LISTED, by_name, by_path};

/// The most files of one batch: enough that what each transaction costs does not count, and few enough that somebody who stops does not
/// wait.
pub const MAX_BATCH: usize = 1000;
/// The most bytes of one batch, but for its last file.
const MAX_BATCH_BYTES: usize = 8_388_608;

/// Sealed summaries as they were found in the files that came, still sealed.
pub struct Incoming(Vec<IncomingSummary>);

/// Files on their way in: they are added one after the other, and taken in by batches. Needs no data folder: decoding pictures takes its
/// time, in which other actions need the folder.
#[derive(Default)]
pub struct Intake {
    sorter: Sorter,
    bytes: usize,
    has_picture: bool,
}

impl Intake {
    /// Adds a file that was read, or why it was not.
    pub fn add(&mut self, file: String, bytes: ActionResult<Vec<u8>>) {
        let bytes = bytes.inspect(|bytes| self.bytes += bytes.len());
        self.has_picture |= self.sorter.take(file, bytes);
    }

    /// Whether what was added is to be taken in before the next file is read: a whole batch, or a picture, which took its time.
    pub fn is_full(&self) -> bool {
        self.has_picture || self.sorter.ready.len() >= MAX_BATCH || self.bytes >= MAX_BATCH_BYTES
    }

    /// The summaries of the files that were added since. Codes in pictures wait for [`Intake::finish`], since the others may come later.
    pub fn ready(&mut self) -> Incoming {
        (self.bytes, self.has_picture) = (0, false);
        Incoming(std::mem::take(&mut self.sorter.ready))
    }

    /// All other summaries, when the last file was added.
    pub fn finish(self) -> Incoming {
        Incoming(self.sorter.finish())
    }
}

/// Receives sealed files and pictures of frames in any order, and tells the receipts of each batch when it is written. `told` returns
/// whether to go on.
///
/// # Errors
/// As for [`take_in`].
pub fn receive_each(
    folder: &mut DataFolder,
    moment: &Moment,
    files: impl IntoIterator<Item = (String, ActionResult<Vec<u8>>)>,
    mut told: impl FnMut(Vec<Receipt>) -> bool,
) -> ActionResult<()> {
    lock::unlocked_keys(folder)?;
    let mut intake = Intake::default();
    for (file, bytes) in files {
        intake.add(file, bytes);
        if intake.is_full() && !told(take_in(folder, moment, intake.ready())?) {
            return Ok(());
        }
    }
    told(take_in(folder, moment, intake.finish())?);
    Ok(())
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

/// Takes summaries in and returns one receipt for each. A summary that is refused changes nothing and does not affect the others. A
/// summary with a missing frame is not stored at all. If the clinic's own store cannot be written, all that was new is refused for it.
///
/// # Errors
/// Only if the store is locked.
pub fn take_in(folder: &mut DataFolder, moment: &Moment, incoming: Incoming) -> ActionResult<Vec<Receipt>> {
    batch::take_in(folder, moment, &incoming.0)
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
