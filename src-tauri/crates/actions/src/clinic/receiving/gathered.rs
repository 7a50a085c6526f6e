//! Summaries that were gathered before any of them is taken in: they are decrypted, and sorted so that a patient's are together.

use super::opening;
use super::sorting::IncomingSummary;
use crate::ActionResult;
use crate::clinic::threads;
use exercises::id::PlanId;
use std::collections::{BTreeMap, VecDeque};
use vault::summary::{Opener, Unsealed};

/// How many are decrypted in one job: to hand a job to another thread costs about as much as to decrypt one.
const AT_ONCE: usize = 16;

/// Summaries that were found in files: sealed until the first batch of them is taken in.
#[derive(Default)]
pub struct Incoming {
    sealed: Vec<IncomingSummary>,
    /// In the order in which they are taken in.
    opened: VecDeque<Opened>,
}

/// A summary that was decrypted, or why it is refused.
pub(super) struct Opened {
    pub(super) file: String,
    pub(super) unsealed: ActionResult<Unsealed>,
    /// Its place among all that were gathered.
    place: usize,
    /// The place of the first one of the same plan.
    first: usize,
}

impl Incoming {
    pub(super) fn of(sealed: Vec<IncomingSummary>) -> Incoming {
        Incoming { sealed, opened: VecDeque::new() }
    }

    /// How many summaries were not taken in yet.
    pub fn len(&self) -> usize {
        self.sealed.len() + self.opened.len()
    }

    /// Whether all were taken in.
    pub fn is_empty(&self) -> bool {
        self.len() == 0
    }

    /// Decrypts what is still sealed, on as many threads as the computer has processors, and sorts by plan, in the order of
    /// each plan's first summary.
    pub(super) fn unseal(&mut self, opener: &Opener) {
        let number = self.sealed.len().div_ceil(AT_ONCE);
        let mut sealed = std::mem::take(&mut self.sealed).into_iter().enumerate();
        let jobs = (0..number).map(|_| sealed.by_ref().take(AT_ONCE).collect::<Vec<_>>());
        let one = |(place, IncomingSummary { file, sealed })| {
            let unseal = |sealed: Vec<u8>| opener.unseal(&sealed).map_err(|fault| opening::refusal(&file, fault));
            Opened { unsealed: sealed.and_then(unseal), file, place, first: place }
        };
        let opened = threads::each(jobs, |job| job.into_iter().map(one).collect::<Vec<_>>());
        let mut opened: Vec<Opened> = opened.into_iter().flatten().collect();
        let mut firsts: BTreeMap<PlanId, usize> = BTreeMap::new();
        opened.sort_unstable_by_key(|one| one.place);
        for one in &mut opened {
            if let Ok(unsealed) = &one.unsealed {
                one.first = *firsts.entry(unsealed.plan()).or_insert(one.place);
            }
        }
        opened.sort_unstable_by_key(|one| (one.first, one.place));
        self.opened.extend(opened);
    }

    /// Takes out the next batch: at most `most` summaries, in the files' order. Those of one plan are never divided between batches, so a
    /// plan with more than that is a batch by itself.
    pub(super) fn next_batch(&mut self, most: usize) -> Vec<Opened> {
        let mut number = 0;
        for of_plan in self.opened.make_contiguous().chunk_by(|one, next| one.first == next.first) {
            if number > 0 && number + of_plan.len() > most {
                break;
            }
            number += of_plan.len();
        }
        let mut batch: Vec<Opened> = self.opened.drain(..number).collect();
        batch.sort_unstable_by_key(|one| one.place);
        batch
    }
}
