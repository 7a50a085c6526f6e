//! All results as text.

use crate::{Years, minute, statistics, trials};
use exercises::sway::{Analysis, printed};
use std::fmt::Write;

/// The results: sway of the reference's trials and of the minute, the statistics, the review of two years. Rust prints a number with
/// the fewest digits that read back as the same bits, so equal texts mean equal bits.
pub fn texts() -> String {
    let mut text = String::new();
    for (name, samples, taps_s) in trials::reference() {
        trial(&mut text, name, &trials::analysed(&samples, &taps_s));
    }
    trial(&mut text, "minute", &trials::analysed(&minute(), &[]));
    text.push_str(&statistics::text());
    writeln!(text, "{:#?}", Years::new().review()).expect("a string takes any text");
    text
}

fn trial(text: &mut String, name: &str, analysis: &Analysis) {
    writeln!(text, "{name}\n{}\n{analysis:?}", printed(analysis)).expect("a string takes any text");
}
