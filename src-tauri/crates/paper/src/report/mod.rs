//! What a clinic writes about a patient, for a colleague or the patient's doctor: a report of one or two pages at any time, and a letter
//! when the treatment ends. Both say what the review says, in its words, and what was found at visits. Of somebody who was treated and has no
//! plan they say what was found at each visit.

mod done;
mod head;
mod letter;
mod measures;
mod sections;
mod strip;

use crate::PaperError;
use crate::block::Block;
use crate::flow::{Flow, Frame};
use crate::font::Fonts;
use crate::sheet::Paper;
use crate::style::{self, mm};
use crate::{Sender, foot, write};
use exercises::plan::Plan;
use krilla::tagging::Tag;
use wire::clinic::ReviewPage;
use wire::visiting::VisitPage;
use words::review::Names;
use words::{Key, Words};

pub use letter::{Letter, letter};

/// From the left edge to the text, from the text to the right edge, from the upper edge, and to the lower edge.
const MARGINS: (f32, f32, f32, f32) = (mm(18.0), mm(16.0), mm(13.0), mm(18.0));
/// Room above a chapter, and between its heading and its text.
const ABOVE: (f32, f32) = (mm(3.6), mm(0.7));

/// What a report says.
pub struct Report<'a> {
    /// Who writes it.
    pub sender: Sender<'a>,
    /// The plan in force, which is the newest of the review, once there is one.
    pub plan: Option<&'a Plan>,
    /// The review, with earlier plans and their exercises.
    pub page: &'a ReviewPage,
    /// What was found at visits, and what to think of with the patient.
    pub visits: &'a VisitPage,
}

/// What all parts use.
struct Making<'a> {
    given: &'a Report<'a>,
    words: Words,
    names: Names<'a>,
    flow: Flow,
}

/// The report as a PDF file. The patient is named by the clinic's code alone.
///
/// # Errors
/// [`PaperError::Internal`].
pub fn report(given: &Report<'_>, paper: Paper, words: Words) -> Result<Vec<u8>, PaperError> {
    let mut making = Making::new(given, paper, words)?;
    let code = &given.page.code;
    let title = if given.plan.is_some() {
        making.of_home();
        words.report_title_for(code)
    } else {
        making.of_visits();
        words.report_visits_title_for(code)
    };
    making.cautions();
    making.signature();
    making.finish(&title)
}

impl<'a> Making<'a> {
    fn new(given: &'a Report<'a>, paper: Paper, words: Words) -> Result<Making<'a>, PaperError> {
        let size = paper.upright();
        let (left, right, top, bottom) = MARGINS;
        let frame = Frame { left, right: size.0 - right, top, bottom: size.1 - bottom };
        let names = Names::of(words, given.page);
        let mut flow = Flow::new(Fonts::new()?, size, frame);
        flow.sheet.open(Tag::Part);
        Ok(Making { given, words, names, flow })
    }

    /// What the review says of a plan, and the last visit.
    fn of_home(&mut self) {
        self.head(Key::ReportTitle);
        self.covers();
        self.alarms();
        self.in_short();
        self.done();
        self.pain();
        self.working();
        self.barriers();
        self.last_visit();
        self.decided();
        self.next();
    }

    /// What was found at all visits of somebody without a plan.
    fn of_visits(&mut self) {
        self.head(Key::ReportVisitsTitle);
        self.without_plan();
        self.first_and_last();
        self.all_visits();
    }

    fn finish(mut self, title: &str) -> Result<Vec<u8>, PaperError> {
        self.flow.sheet.close();
        let page = self.given.page;
        foot::feet(&mut self.flow, self.words, (self.given.sender, Some(&page.code)), page.today);
        let (language, program) = (self.words.locale.tag(), self.words.text(Key::AppName));
        let about = write::About { title, language, author: self.given.sender.clinic, program };
        write::pdf(&self.flow.sheet, &self.flow.fonts, &about)
    }

    /// A chapter with a line for each of these, as a list if there are several.
    fn chapter(&mut self, title: &str, lines: &[String]) {
        self.styled_chapter(style::CHAPTER, title, lines);
    }

    fn styled_chapter(&mut self, heading: style::Style, title: &str, lines: &[String]) {
        let lines: Vec<&str> = lines.iter().map(String::as_str).filter(|line| !line.trim().is_empty()).collect();
        if lines.is_empty() {
            return;
        }
        let (fonts, width) = (&self.flow.fonts, self.flow.frame.width());
        let text = match lines.as_slice() {
            [only] => Block::paragraph(fonts, style::REPORT, only, width, ABOVE.1),
            several => {
                let several: Vec<_> = several.iter().map(|line| vec![(style::REPORT, *line)]).collect();
                Block::list(fonts, false, &several, width, ABOVE.1)
            }
        };
        let blocks = [Block::heading(fonts, (2, heading), title, width, 0.0), text];
        self.flow.space(ABOVE.0);
        self.flow.column(&blocks, self.flow.frame.left);
    }
}
