//! The letter at the end of a treatment.

use super::{ABOVE, Making, Report};
use crate::PaperError;
use crate::block::Para;
use crate::sheet::Paper;
use crate::style;
use exercises::alarm::Trouble;
use exercises::plan::Plan;
use exercises::review::ReviewAlarm;
use krilla::tagging::Tag;
use words::review::{ReviewQuestion, upper};
use words::{Key, Words};

/// What a closing letter says.
pub struct Letter<'a> {
    /// The contents of the report. The letter has all visits and plans, beginning with the first ones.
    pub report: Report<'a>,
    /// What the clinician adds: a paragraph each, at the beginning of the letter.
    pub lines: &'a [String],
}

/// The letter as a PDF file. The patient is named by the clinic's code alone.
///
/// # Errors
/// [`PaperError::Internal`].
pub fn letter(given: &Letter<'_>, paper: Paper, words: Words) -> Result<Vec<u8>, PaperError> {
    let mut making = Making::new(&given.report, paper, words)?;
    making.head(Key::LetterTitle);
    making.own_lines(given.lines);
    making.course();
    making.first_and_last();
    making.done();
    making.pain();
    making.working();
    making.alarms_and_advice();
    if given.report.plan.is_some() {
        making.last_visit()
    } else {
        making.all_visits()
    }
    making.goes_on_with();
    making.cautions();
    making.signature();
    making.finish(&words.letter_title_for(&given.report.page.code))
}

impl Making<'_> {
    fn own_lines(&mut self, lines: &[String]) {
        let (left, width) = (self.flow.frame.left, self.flow.frame.width());
        for line in lines {
            let para = Para::new(&self.flow.fonts, style::TEXT, line, width);
            if !para.is_empty() {
                self.flow.space(ABOVE.0 / 2.0);
                self.flow.para(Tag::P, &para, left);
            }
        }
    }

    /// From the first plan to the last, and how it went.
    fn course(&mut self) {
        let (words, given) = (self.words, self.given);
        let complaints: Vec<String> =
            all_complaints(given.plan, &given.page.earlier).map(|id| upper(&self.names.complaint(id))).collect();
        let mut said = vec![match given.plan {
            Some(plan) => {
                let first = given.page.earlier.last().unwrap_or(plan);
                let (from, to) = (words.date_in_full(first.header.issued), words.date_in_full(given.page.today));
                words.letter_from_to(plan.header.revision, &from, &to)
            }
            None => words.text(Key::ReportNoPlan).to_owned(),
        }];
        said.extend((!complaints.is_empty()).then(|| words.letter_complaints(&words.list(&complaints))));
        said.extend((!given.visits.visits.is_empty()).then(|| words.letter_visits(given.visits.visits.len())));
        said.extend(given.plan.map(|_| words.review_covers(given.page)).into_iter().flatten());
        self.chapter(words.text(Key::LetterCourse), &[words.as_sentences(&said)]);
    }

    /// The alarms, each with what the program told the patient to do.
    fn alarms_and_advice(&mut self) {
        let (words, names) = (self.words, self.names);
        let Some(review) = &self.given.page.review else { return };
        let one = |alarm: &ReviewAlarm| {
            let said = words.review_alarm(alarm, names).line(words);
            let advised = match alarm.trouble {
                // Whether it paused anything is not known any more, and with it what the patient was told.
                Trouble::NearlyFell if alarm.cleared => return said,
                Trouble::NearlyFell if alarm.suspended.is_empty() => words.after_near_fall(alarm.item),
                trouble => words.what_to_do(trouble, &alarm.circumstances),
            };
            words.as_sentences(&[said, words.letter_advised(&words.as_sentences(&advised))])
        };
        let mut lines: Vec<String> = review.alarms.iter().map(one).collect();
        lines.extend(words.flares(review, names));
        if lines.is_empty() {
            lines.push(words.unanswered(ReviewQuestion::Alarms).to_owned());
        }
        self.chapter(words.question(ReviewQuestion::Alarms), &lines);
    }

    /// The items of the newest plan, as the patient was told them.
    fn goes_on_with(&mut self) {
        let words = self.words;
        let items = self.given.plan.into_iter().flat_map(|plan| &plan.prescription.items);
        let lines: Vec<String> =
            items.map(|item| words.named_text(&self.names.item(item.id), &words.instruction(item))).collect();
        self.chapter(words.text(Key::LetterGoesOn), &lines);
    }
}

/// The complaints of all plans, those of the newest first.
fn all_complaints<'a>(
    plan: Option<&'a Plan>,
    earlier: &'a [Plan],
) -> impl Iterator<Item = exercises::id::ComplaintId> + use<'a> {
    let mut all: Vec<exercises::id::ComplaintId> = Vec::new();
    for complaint in plan.into_iter().chain(earlier).flat_map(|plan| &plan.prescription.complaints) {
        if !all.contains(&complaint.id) {
            all.push(complaint.id);
        }
    }
    all.into_iter()
}
