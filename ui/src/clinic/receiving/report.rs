//! What was done with the files that were received.

use wire::Failure;
use wire::receiving::{Counts, Outcome, Receipt};

/// What was done with the files.
#[derive(Debug, Clone, Default, PartialEq)]
pub struct Report {
    /// How many there were of each.
    pub counts: Counts,
    /// Those of new days.
    new: Vec<Receipt>,
    /// Those that completed days.
    filled: Vec<Receipt>,
    /// What was known already.
    known: Vec<Receipt>,
    /// What was refused, by the reason.
    refused: Vec<Refused>,
    /// Files that were not touched, because the person stopped or the data folder could not be written.
    pub untouched: u32,
    /// Other files in the folders.
    pub passed_over: u32,
    /// Whether a folder held nothing to receive.
    pub nothing: bool,
    /// Whether it is complete.
    pub finished: bool,
}

/// Files that were refused for the same reason.
#[derive(Debug, Clone, PartialEq)]
pub struct Refused {
    /// The reason.
    pub failure: Failure,
    /// Their names.
    pub files: Vec<String>,
}

impl Report {
    /// Adds the receipts of a part.
    pub fn add(&mut self, receipts: Vec<Receipt>) {
        for receipt in receipts {
            self.counts.add(&receipt.outcome);
            match receipt.outcome {
                Outcome::New { .. } => self.new.push(receipt),
                Outcome::Filled { .. } => self.filled.push(receipt),
                Outcome::Known { .. } => self.known.push(receipt),
                Outcome::Refused(failure) => self.refuse(receipt.file, failure),
            }
        }
    }

    fn refuse(&mut self, file: String, failure: Failure) {
        match self.refused.iter_mut().find(|refused| refused.failure == failure) {
            Some(refused) => refused.files.push(file),
            None => self.refused.push(Refused { failure, files: vec![file] }),
        }
    }

    /// How many receipts there are.
    pub fn told(&self) -> u32 {
        self.counts.all()
    }

    /// Whether anything was received, new or known.
    pub fn has_received(&self) -> bool {
        self.received() > 0
    }

    /// How many summaries were received, new or known.
    pub fn received(&self) -> usize {
        self.new.len() + self.filled.len() + self.known.len()
    }

    /// The first receipts of summaries in the order in which they are shown: what is new, what completed days, what was known.
    pub fn first(&self, most: usize) -> Vec<Receipt> {
        self.new.iter().chain(&self.filled).chain(&self.known).take(most).cloned().collect()
    }

    /// What was refused, by the reason.
    pub fn refused(&self) -> &[Refused] {
        &self.refused
    }
}
