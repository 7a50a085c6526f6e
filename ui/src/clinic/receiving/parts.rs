//! The parts in which the page sends files that were chosen in it: each is small, since it is in memory as a whole.

use std::vec::IntoIter;

use wire::Failure;
use wire::receiving::{MAX_FILES, Outcome, Receipt, is_received};

use crate::shared::file;

/// The size from which on a part is sent, in bytes.
const PART: f64 = 8.0 * 1024.0 * 1024.0;

/// Files that were chosen in the page.
pub struct Chosen {
    /// Those that are received.
    pub files: Vec<web_sys::File>,
    /// How many others a folder holds.
    pub passed_over: u32,
}

impl Chosen {
    /// Files that were chosen one by one.
    pub fn files(files: Vec<web_sys::File>) -> Chosen {
        Chosen { files, passed_over: 0 }
    }

    /// What a chosen folder holds.
    pub fn folder(all: Vec<web_sys::File>) -> Chosen {
        let (files, others): (Vec<_>, Vec<_>) = all.into_iter().partition(|file| is_received(&file.name()));
        Chosen { files, passed_over: count(others.len()) }
    }

    /// How many files are received.
    pub fn of(&self) -> u32 {
        count(self.files.len())
    }
}

/// The files that were not sent yet.
pub struct Parts {
    left: IntoIter<web_sys::File>,
    /// How many were read.
    pub read: u32,
}

impl Parts {
    /// All of these files.
    pub fn of(files: Vec<web_sys::File>) -> Parts {
        Parts { left: files.into_iter(), read: 0 }
    }

    /// Whether all were read.
    pub fn is_over(&self) -> bool {
        self.left.len() == 0
    }

    /// Reads the next part: the files that could be read, with their bytes in Base64, and receipts for the others.
    pub async fn next(&mut self) -> (Vec<(String, String)>, Vec<Receipt>) {
        let (mut sent, mut refused, mut bytes) = (Vec::new(), Vec::new(), 0.0);
        while sent.len() < MAX_FILES && bytes < PART {
            let Some(one) = self.left.next() else { break };
            self.read += 1;
            bytes += one.size();
            match file::base64(&one).await {
                Ok(base64) => sent.push((one.name(), base64)),
                Err(failure) => refused.push(receipt(&one, failure)),
            }
        }
        (sent, refused)
    }
}

fn receipt(file: &web_sys::File, failure: Failure) -> Receipt {
    Receipt { file: file.name(), outcome: Outcome::Refused(failure), notices: Vec::new() }
}

fn count(number: usize) -> u32 {
    u32::try_from(number).unwrap_or(u32::MAX)
}
