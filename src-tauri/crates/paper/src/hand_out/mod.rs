//! The hand-out of a plan: each exercise with its figure, its steps and its signs to stop, when to get help, and the plan as a code.

mod ends;
mod head;
mod item;

use crate::PaperError;
use crate::flow::{Flow, Frame};
use crate::font::Fonts;
use crate::sheet::Paper;
use crate::style::mm;
use crate::{foot, motif, write};
use exercises::catalogue::Catalogue;
use exercises::plan::Plan;
use krilla::tagging::Tag;
use pictures::qr::Code;
use words::{Key, Words};

/// Where the string hangs, from the left edge of the page.
const STRING_X: f32 = mm(14.0);
/// Where the string begins on every page but the first, and where it goes on to the next.
const STRING_ENDS: f32 = mm(9.0);
/// From the left edge to the text, from the text to the right edge, from the upper edge, and to the lower edge.
const MARGINS: (f32, f32, f32, f32) = (mm(24.0), mm(15.0), mm(14.0), mm(18.0));

/// What a hand-out says.
pub struct HandOut<'a> {
    /// The plan, with the clinic's name and telephone number, the day of issue and the next visit.
    pub plan: &'a Plan,
    /// Where its exercises are.
    pub catalogue: &'a Catalogue,
    /// The patient's code or name, as the clinic writes it; `None` for a paper without one.
    pub patient: Option<&'a str>,
    /// The plan's card as codes; none if it is too large for codes, or for a patient without a device.
    pub codes: &'a [Code],
}

/// What all parts of the hand-out use.
struct Making<'a> {
    given: &'a HandOut<'a>,
    words: Words,
    flow: Flow,
}

/// The hand-out as a PDF file.
///
/// # Errors
/// [`PaperError::UnknownExercise`] if the catalogue lacks one of the plan's exercises, [`PaperError::CodeTooLarge`] for a code that could
/// not be read from paper.
pub fn hand_out(given: &HandOut<'_>, paper: Paper, words: Words) -> Result<Vec<u8>, PaperError> {
    let making = laid_out(given, paper, words)?;
    let title = given.patient.map_or_else(|| words.text(Key::PaperTitle).to_owned(), |who| words.paper_title_for(who));
    let about = write::About {
        title: &title,
        language: words.locale.tag(),
        author: &given.plan.header.clinic,
        program: words.text(Key::AppName),
    };
    write::pdf(&making.flow.sheet, &making.flow.fonts, &about)
}

/// All pages.
fn laid_out<'a>(given: &'a HandOut<'a>, paper: Paper, words: Words) -> Result<Making<'a>, PaperError> {
    let size = paper.upright();
    let (left, right, top, bottom) = MARGINS;
    let frame = Frame { left, right: size.0 - right, top, bottom: size.1 - bottom };
    let mut making = Making { given, words, flow: Flow::new(Fonts::new()?, size, frame) };
    making.flow.sheet.open(Tag::Part);
    making.head();
    making.aftercare();
    for (place, item) in given.plan.prescription.items.iter().enumerate() {
        making.item(place + 1, item)?;
    }
    making.urgent();
    making.codes()?;
    making.flow.sheet.close();
    making.string();
    foot::feet(&mut making.flow, words, ((&given.plan.header).into(), given.patient), given.plan.header.issued);
    Ok(making)
}

impl Making<'_> {
    /// The string on every page, behind everything else, from the title to the bob.
    fn string(&mut self) {
        let bob = (self.flow.y + mm(3.0)).min(self.flow.sheet.size.1 - STRING_ENDS - motif::BOB_HEIGHT);
        let last = self.flow.page;
        for page in 0..=last {
            let from = if page == 0 { self.flow.frame.top + head::STRING_FROM } else { STRING_ENDS };
            let to = if page == last { bob } else { self.flow.sheet.size.1 - STRING_ENDS };
            let mut marks = vec![motif::string(STRING_X, from, to)];
            marks.extend((page == last).then(|| motif::bob(STRING_X, bob)));
            self.flow.sheet.behind.push((page, marks));
        }
    }
}

#[cfg(test)]
mod tests;
