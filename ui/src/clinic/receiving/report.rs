//! What was done with the files that were received.

use wire::receiving::{Counts, Outcome, Receipt};

/// What was done with the files.
#[derive(Debug, Clone, Default, PartialEq)]
pub struct Report {
    /// How many there were of each.
    pub counts: Counts,
    /// What was refused.
    refused: Vec<Receipt>,
    /// What told something new.
    new: Vec<Receipt>,
    /// What was known already.
    known: Vec<Receipt>,
    /// Files that were not touched, because the person stopped or the data folder could not be written.
    pub untouched: u32,
    /// Other files in the folders.
    pub passed_over: u32,
    /// Whether a folder held nothing to receive.
    pub nothing: bool,
    /// Whether it is complete.
    pub finished: bool,
}

impl Report {
    /// Adds the receipts of a part.
    pub fn add(&mut self, receipts: Vec<Receipt>) {
        for receipt in receipts {
            self.counts.add(&receipt.outcome);
            let list = match receipt.outcome {
                Outcome::Refused(_) => &mut self.refused,
                Outcome::New { .. } | Outcome::Filled { .. } => &mut self.new,
                Outcome::Known { .. } => &mut self.known,
            };
            list.push(receipt);
        }
    }

    /// How many receipts there are.
    pub fn told(&self) -> u32 {
        self.counts.all()
    }

    /// Whether anything was received, new or known.
    pub fn has_received(&self) -> bool {
        self.counts.new + self.counts.known > 0
    }

    /// The first receipts in the order in which they are shown: first what was refused, then what is new, then what was known.
    pub fn first(&self, most: usize) -> Vec<Receipt> {
        self.refused.iter().chain(&self.new).chain(&self.known).take(most).cloned().collect()
    }
}
