//! Inputs that are created once, for computations that are timed.

use crate::{Finding, Loading, Years, minute};
use exercises::sway::{Marks, Sample, Source, analyse, printed};
use wasm_bindgen::prelude::wasm_bindgen;

/// The inputs. Every method repeats its computation as often as requested and returns a part of the result, so that no compiler
/// removes the computation.
#[wasm_bindgen]
pub struct Prepared {
    samples: Vec<Sample>,
    years: Years,
    finding: Finding,
    loading: Loading,
}

#[wasm_bindgen]
impl Prepared {
    /// Creates the inputs.
    #[expect(clippy::new_without_default, reason = "it takes its time, which a default should not")]
    #[wasm_bindgen(constructor)]
    pub fn new() -> Prepared {
        Prepared { samples: minute(), years: Years::new(), finding: Finding::new(), loading: Loading::new() }
    }

    /// Sway of a minute at 100 samples per second: analyses the samples, and writes the result in its stored form.
    pub fn sway(&self, times: u32) -> usize {
        let marks = Marks::between(0.0, 60.0);
        (0..times).map(|_| printed(&analyse(&self.samples, &marks, &Source::file())).to_string().len()).sum()
    }

    /// Two years: reduces the log's history to a summary for each visit, and builds the review of all of them.
    pub fn review(&self, times: u32) -> usize {
        (0..times).map(|_| self.years.review().days.len()).sum()
    }

    /// Two years: builds the review from the summaries that the clinic's copy has.
    pub fn page(&self, times: u32) -> usize {
        (0..times).map(|_| self.years.page().days.len()).sum()
    }

    /// Lays out the slots of a year of the hourly plan.
    pub fn slots(&self, times: u32) -> usize {
        (0..times).map(|_| self.years.slots_of_a_year()).sum()
    }

    /// A thousand exercises: answers every letter of some words that are typed.
    pub fn find(&self, times: u32) -> usize {
        (0..times).map(|_| self.finding.find()).sum()
    }

    /// The same by looking through all texts for every letter.
    pub fn scan(&self, times: u32) -> usize {
        (0..times).map(|_| self.finding.scan()).sum()
    }

    /// Makes the index of a thousand exercises.
    pub fn index(&self, times: u32) -> usize {
        (0..times).map(|_| self.finding.index().find("heel", |_| true).len()).sum()
    }

    /// Reads a thousand exercises from their authors' files.
    pub fn read(&self, times: u32) -> usize {
        (0..times).map(|_| self.loading.read()).sum()
    }

    /// Reads a thousand exercises as the window receives them.
    pub fn arrive(&self, times: u32) -> usize {
        (0..times).map(|_| self.loading.arrive()).sum()
    }

    /// Draws a moment of the figures on one screen.
    pub fn figures(&self, times: u32) -> usize {
        (0..times).map(|_| self.loading.figures()).sum()
    }

    /// The number of letters that [`Prepared::find`] answers.
    pub fn letters(&self) -> usize {
        self.finding.letters()
    }

    /// Computes the history from the log of two years.
    pub fn fold(&self, times: u32) -> usize {
        (0..times).map(|_| self.years.fold().runs.len()).sum()
    }
}
