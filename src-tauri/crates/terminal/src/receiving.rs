//! `carryover clinic receive`.

use crate::Done;
use crate::out::Out;
use actions::clinic::receiving::{self, Listing, by_path};
use actions::{DataFolder, Moment};
use serde_json::json;
use std::cell::{Cell, RefCell};
use std::path::PathBuf;
use wire::receiving::{Counts, Outcome, Receipt};
use words::Words;

/// Receives the files, and those in the folders. What a line says was received is stored when the line is printed. Ends at the first file
/// for which the data folder could not be written; the files after it are not touched.
pub fn run(folder: &mut DataFolder, moment: &Moment, paths: &[PathBuf], out: &mut Out) -> Done {
    let listing = Listing::of(paths.iter().map(PathBuf::as_path), by_path)?;
    let (of, passed_over) = (listing.len(), listing.passed_over);
    let (counts, read, mut ended) = (RefCell::new(Counts::default()), Cell::new(0), false);
    let how_far = || out.progress(|words| how_far(words, counts.borrow().all() as usize, read.get(), of));
    // Many files may be read before the first of them are taken in.
    let files = listing.read().inspect(|_| {
        read.set(read.get() + 1);
        how_far();
    });
    let left = receiving::receive_each(folder, moment, files, |receipts| {
        out.clear_progress();
        for receipt in &receipts {
            counts.borrow_mut().add(&receipt.outcome);
            say(receipt, out);
        }
        how_far();
        ended = receipts.iter().any(Receipt::ends_receiving);
        !ended
    })?;
    out.clear_progress();
    let (counts, read) = (counts.into_inner(), read.get());
    // Codes in pictures that were read wait for the last file.
    let untouched = if ended && (left > 0 || read < of) { of - counts.all() as usize } else { 0 };
    if untouched > 0 {
        out.note(&out.words.receive_stopped(untouched));
    }
    if passed_over > 0 {
        out.note(&out.words.receive_passed_over(passed_over));
    }
    if counts.all() != 1 {
        let object = json!({ "counts": counts, "passed_over": passed_over, "untouched": untouched });
        out.say(|words| words.receive_counts(counts.new, counts.known, counts.refused), || object);
    }
    Ok(counts.refused == 0)
}

/// How many files are done, and how many more were read.
fn how_far(words: Words, done: usize, read: usize, of: usize) -> String {
    if read > done { words.receive_progress_read(done, of, read) } else { words.receive_progress(done, of) }
}

fn say(receipt: &Receipt, out: &Out) {
    let Outcome::Refused(failure) = &receipt.outcome else {
        return out.say(|words| words.receipt(receipt), || json!(receipt));
    };
    if out.json() {
        let refusal = out.words.failure(failure);
        let line = json!({ "file": receipt.file, "refused": failure, "fault": refusal.fault, "advice": refusal.advice });
        out.say_to_stderr(&line.to_string());
    } else {
        out.say_to_stderr(&out.words.receipt(receipt));
    }
}
