//! Inputs that are made once, for sums that are timed.

use crate::{Years, minute};
use exercises::sway::{Marks, Sample, Source, analyse, printed};
use wasm_bindgen::prelude::wasm_bindgen;

/// The inputs. Every method does its sum as often as asked and answers with something of its result, so that no compiler
/// leaves the sum out.
#[wasm_bindgen]
pub struct Prepared {
    samples: Vec<Sample>,
    years: Years,
}

#[wasm_bindgen]
impl Prepared {
    /// Makes the inputs.
    #[expect(clippy::new_without_default, reason = "it takes its time, which a default should not")]
    #[wasm_bindgen(constructor)]
    pub fn new() -> Prepared {
        Prepared { samples: minute(), years: Years::new() }
    }

    /// Sway of a minute at 100 per second: the samples analysed, and the result in its stored form.
    pub fn sway(&self, times: u32) -> usize {
        let marks = Marks::between(0.0, 60.0);
        (0..times).map(|_| printed(&analyse(&self.samples, &marks, &Source::file())).to_string().len()).sum()
    }

    /// Two years: the log's history reduced to a summary for each visit, and the review of all of them.
    pub fn review(&self, times: u32) -> usize {
        (0..times).map(|_| self.years.review().days.len()).sum()
    }

    /// Two years: the review of the summaries that the clinic's copy has.
    pub fn page(&self, times: u32) -> usize {
        (0..times).map(|_| self.years.page().days.len()).sum()
    }

    /// The slots of a year of the hourly plan.
    pub fn slots(&self, times: u32) -> usize {
        (0..times).map(|_| self.years.slots_of_a_year()).sum()
    }

    /// The log of two years folded to its history.
    pub fn fold(&self, times: u32) -> usize {
        (0..times).map(|_| self.years.fold().runs.len()).sum()
    }
}
