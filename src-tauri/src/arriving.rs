//! Files that are on their way into the clinic: what was dropped on the window or chosen as a folder, and how far it was received.
//!
//! The page never names a file. It says that it wants the next part of what the person dropped or chose, and only that is read.

use std::collections::VecDeque;
use std::path::{Path, PathBuf};
use std::sync::{Mutex, PoisonError};

use actions::clinic::receiving::{self, Incoming, Intake, Listing, by_name};
use actions::{ActionResult, DataFolder, Moment};
use wire::Failure;
use wire::receiving::{Receipt, Received};

/// The most files that are read before the page hears how far it is.
const READ_AT_ONCE: usize = 250;

/// The most drops and chosen folders that are kept until the page asks for them. A page that receives nothing never asks.
const MAX_NAMED: usize = 32;

/// A file's name, and its bytes or why it cannot be read.
type Read = (String, ActionResult<Vec<u8>>);

/// What is on its way.
#[derive(Default)]
pub struct Arriving {
    named: Mutex<Named>,
    going: Mutex<Option<Going>>,
}

/// What was dropped or chosen, until the page asks for it.
#[derive(Default)]
struct Named {
    /// By number, oldest first.
    waiting: VecDeque<(u32, Vec<PathBuf>)>,
    /// The number of the last one.
    last: u32,
}

/// Files that are being received: they are read until enough are gathered, which are then taken in batch by batch.
#[derive(Default)]
pub struct Going {
    intake: Intake,
    /// What was gathered and not taken in yet.
    gathered: Incoming,
    /// The files that were not read yet; `None` if the page holds them.
    files: Option<Box<dyn Iterator<Item = Read> + Send>>,
    /// Whether the page has files that it did not send yet.
    more: bool,
    /// Whether all files were gathered.
    complete: bool,
    /// Files that were read.
    read: u32,
    /// Files that were done with.
    done: u32,
    /// All files.
    of: u32,
    /// Other files in the folders.
    passed_over: u32,
}

impl Arriving {
    /// Notes what was dropped or chosen, and returns its number. Of more than [`MAX_NAMED`] the oldest is forgotten.
    pub fn name(&self, paths: &[PathBuf]) -> u32 {
        let mut named = self.named.lock().unwrap_or_else(PoisonError::into_inner);
        named.last = named.last.wrapping_add(1);
        let number = named.last;
        named.waiting.push_back((number, paths.to_vec()));
        if named.waiting.len() > MAX_NAMED {
            named.waiting.pop_front();
        }
        number
    }

    /// What was dropped or chosen under this number. It is given out once.
    fn named(&self, number: u32) -> Option<Vec<PathBuf>> {
        let mut named = self.named.lock().unwrap_or_else(PoisonError::into_inner);
        let at = named.waiting.iter().position(|(of, _)| *of == number)?;
        named.waiting.remove(at).map(|(_, paths)| paths)
    }

    /// What is to be read next: what was dropped or chosen under the number `begin`, or without one what is being received. Folders are only
    /// listed by the function that is returned, since that takes its time.
    ///
    /// # Errors
    /// [`Failure::Internal`] if there is no such thing; from the function as for [`Going::of`].
    pub fn next(&self, begin: Option<u32>) -> ActionResult<impl FnOnce() -> ActionResult<Going> + Send + use<>> {
        let begun = self.going();
        let named = match begin {
            Some(number) => Some(self.named(number).ok_or_else(nothing_begun)?),
            None => None,
        };
        Ok(move || named.map_or_else(|| begun.ok_or_else(nothing_begun), |named| Going::of(&named)))
    }

    /// What is being received. Whoever takes it puts it back with [`Arriving::go_on`].
    pub fn going(&self) -> Option<Going> {
        self.going.lock().unwrap_or_else(PoisonError::into_inner).take()
    }

    /// Goes on with this the next time; with `None`, the files that were not taken in yet are left as they are, and what was decrypted of
    /// them is forgotten.
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

    /// Reads files, a picture or some others, unless enough are gathered to be taken in.
    pub fn read_on(mut self) -> Going {
        if !self.gathered.is_empty() {
            return self;
        }
        for _ in 0..READ_AT_ONCE {
            let Some((file, bytes)) = self.files.as_mut().and_then(Iterator::next) else {
                self.gather();
                break;
            };
            self.read += 1;
            let takes_time = self.intake.add(file, bytes);
            if self.intake.is_full() {
                self.gathered = self.intake.ready();
            }
            if takes_time || !self.gathered.is_empty() {
                break;
            }
        }
        self
    }

    /// Adds a part of the files that the page sends, of which this is the `last` or not, and reads on.
    pub fn add(mut self, files: impl IntoIterator<Item = Read>, last: bool) -> Going {
        for (file, bytes) in files {
            self.read += 1;
            self.intake.add(file, bytes);
        }
        self.more = !last;
        self.read_on()
    }

    /// Takes a batch in, if enough was gathered.
    ///
    /// # Errors
    /// As for [`receiving::take_in`].
    pub fn take_in(&mut self, folder: &mut DataFolder, moment: &Moment) -> ActionResult<Received> {
        let receipts = receiving::take_in(folder, moment, &mut self.gathered)?;
        let waiting = count(self.intake.gathered() + self.gathered.len());
        // A picture may show several summaries.
        self.done = self.done.max(self.read.saturating_sub(waiting));
        let last = (self.complete && self.gathered.is_empty()) || receipts.iter().any(Receipt::ends_receiving);
        let Going { read, done, of, passed_over, .. } = *self;
        Ok(Received { receipts, read, done, of, passed_over, last })
    }

    /// Gathers what is to be taken in: all of it once no more files come, otherwise as soon as it is enough.
    fn gather(&mut self) {
        if !self.more {
            self.complete = true;
            self.gathered = std::mem::take(&mut self.intake).finish();
        } else if self.intake.is_full() {
            self.gathered = self.intake.ready();
        }
    }
}

/// The failure of a page that asks for the next part of nothing.
pub fn nothing_begun() -> Failure {
    Failure::Internal { detail: "nothing is being received".into() }
}

fn count(number: usize) -> u32 {
    u32::try_from(number).unwrap_or(u32::MAX)
}

#[cfg(test)]
mod tests {
    use super::*;
    use actions::Clock;
    use actions::clinic::{lock, receiving::MAX_BATCH};

    /// More files than one batch holds, none of which is a summary.
    const FILES: u32 = MAX_BATCH as u32 + 300;

    fn begun(dir: &Path) -> (DataFolder, Moment, Going) {
        let mut folder = DataFolder::open(&dir.join("clinic"), true).expect("a new folder");
        lock::start(&mut folder, "Linden Lane Practice", None, "marsh kestrel 41 lantern".into()).expect("new keys");
        let from = dir.join("from");
        std::fs::create_dir(&from).expect("a new folder");
        (0..FILES).for_each(|file| std::fs::write(from.join(format!("{file}.age")), "no summary").expect("written"));
        let moment = Clock::set_to("2027-03-08T09:00:00+01:00").expect("an instant").moment();
        (folder, moment, Going::of(&[from]).expect("not too many"))
    }

    #[test]
    fn each_drop_and_each_chosen_folder_is_given_out_once_in_whatever_order() {
        let (one, other) = ([PathBuf::from("one.age"), PathBuf::from("two.age")], [PathBuf::from("folder")]);
        for later_first in [false, true] {
            let arriving = Arriving::default();
            let mut asked = [(arriving.name(&one), one.to_vec()), (arriving.name(&other), other.to_vec())];
            if later_first {
                asked.reverse();
            }
            for (number, paths) in &asked {
                assert_eq!(arriving.named(*number).as_ref(), Some(paths));
                assert_eq!(arriving.named(*number), None, "given out twice");
            }
        }
    }

    #[test]
    fn of_more_drops_than_are_kept_the_oldest_is_forgotten() {
        let arriving = Arriving::default();
        let path = |number: usize| [PathBuf::from(format!("{number}.age"))];
        let numbers: Vec<u32> = (0..=MAX_NAMED).map(|number| arriving.name(&path(number))).collect();
        assert_eq!(arriving.named(numbers[0]), None);
        for (number, told) in numbers.into_iter().enumerate().skip(1) {
            assert_eq!(arriving.named(told), Some(path(number).to_vec()));
        }
    }

    #[test]
    fn how_far_it_is_rises_with_each_part_until_all_is_done() {
        let dir = tempfile::tempdir().expect("a temporary folder");
        let (mut folder, moment, mut going) = begun(dir.path());
        let (mut before, mut receipts) = (0, 0);
        loop {
            going = going.read_on();
            let part = going.take_in(&mut folder, &moment).expect("unlocked");
            receipts += part.receipts.len();
            assert_eq!(part.done as usize, receipts, "each file is done with when its receipt is given");
            assert!(part.read + part.done > before || part.last, "it stands still at {}", part.read);
            before = part.read + part.done;
            if part.last {
                break assert_eq!((part.read, part.done, part.of), (FILES, FILES, FILES));
            }
        }
    }

    #[test]
    fn files_that_the_page_sends_in_parts_are_gathered_and_taken_in_by_batches() {
        let dir = tempfile::tempdir().expect("a temporary folder");
        let (mut folder, moment, _) = begun(dir.path());
        let mut going = Going::default();
        for part in 1..=10 {
            let file = |number: u32| (format!("{part}-{number}.age"), Ok(b"no summary".to_vec()));
            going = going.add((0..FILES / 10).map(file), part == 10);
            let told = going.take_in(&mut folder, &moment).expect("unlocked");
            let receipts = if part == 10 { MAX_BATCH } else { 0 };
            assert_eq!((told.read, told.receipts.len(), told.last), (part * FILES / 10, receipts, false));
            assert_eq!(told.done as usize, receipts, "of part {part}");
        }
        let rest = going.read_on().take_in(&mut folder, &moment).expect("unlocked");
        assert_eq!((rest.receipts.len(), rest.done, rest.last), (FILES as usize - MAX_BATCH, FILES, true));
    }

    #[test]
    fn a_clinic_that_was_locked_meanwhile_takes_in_nothing() {
        let dir = tempfile::tempdir().expect("a temporary folder");
        let (mut folder, moment, going) = begun(dir.path());
        let mut going = going.read_on();
        going.take_in(&mut folder, &moment).expect("unlocked");
        lock::lock(&mut folder);
        assert_eq!(going.read_on().take_in(&mut folder, &moment), Err(Failure::ClinicLocked));
    }
}
