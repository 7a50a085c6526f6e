//! The head of the first page, and the advice for the days after the visit.

use super::Making;
use crate::block::{Block, Para};
use crate::style::{self, mm};
use krilla::tagging::Tag;
use words::Key;

/// From the upper edge of the text to where the string begins: the title's middle.
pub(super) const STRING_FROM: f32 = mm(19.0);
/// Room between the clinic's lines and the title.
const ABOVE_TITLE: f32 = mm(8.0);

impl Making<'_> {
    /// The clinic, the day, the title, and for whom it is.
    pub(super) fn head(&mut self) {
        let (plan, words) = (self.given.plan, self.words);
        let (frame, width) = (self.flow.frame, self.flow.frame.width());
        let fonts = &self.flow.fonts;
        let issued =
            Para::new(fonts, style::CAPTION, &words.paper_issued(&words.date_in_full(plan.header.issued)), width / 2.0);
        let beside = width - issued.width() - mm(8.0);
        let clinic = Para::new(fonts, style::CLINIC, &plan.header.clinic, beside);
        let phone =
            plan.header.phone.as_ref().map(|phone| Para::new(fonts, style::ASIDE, &words.paper_phone(phone), beside));
        let title = Para::new(fonts, style::TITLE, words.text(Key::PaperTitle), width);
        let who = self.given.patient.map(|who| words.paper_for(who));
        let visit = words.paper_next_visit(&words.weekday_date_inline(plan.prescription.review));
        let who = who.map(|who| Para::new(fonts, style::STRONG, &who, width));
        let visit = Para::new(fonts, style::TEXT, &visit, width);
        let (page, top) = (self.flow.page, self.flow.y);
        for para in [Some(clinic), phone].into_iter().flatten().filter(|para| !para.is_empty()) {
            self.flow.para(Tag::P, &para, frame.left);
        }
        self.flow.sheet.element(Tag::P, page, issued.right(frame.right, top), None);
        self.flow.y = self.flow.y.max(top + issued.height()) + ABOVE_TITLE;
        self.flow.heading(1, words.text(Key::PaperTitle), (&[], &title), frame.left);
        self.flow.y += mm(1.0);
        for para in [who, Some(visit)].into_iter().flatten().filter(|para| !para.is_empty()) {
            self.flow.para(Tag::P, &para, frame.left);
        }
    }

    /// The advice for the days after the visit, if the plan has any.
    pub(super) fn aftercare(&mut self) {
        let lines: Vec<String> =
            self.given.plan.prescription.aftercare.iter().map(|line| self.words.aftercare(line)).collect();
        let lines: Vec<_> =
            lines.iter().filter(|line| !line.trim().is_empty()).map(|line| vec![(style::TEXT, line.as_str())]).collect();
        if lines.is_empty() {
            return;
        }
        let (fonts, frame) = (&self.flow.fonts, self.flow.frame);
        let title = self.words.text(Key::AfterTheVisit);
        let blocks = [
            Block::heading(fonts, (2, style::HEADING), title, frame.width(), 0.0),
            Block::list(fonts, false, &lines, frame.width(), mm(1.0)),
        ];
        self.flow.space(mm(6.0));
        self.flow.column(&blocks, frame.left);
    }
}
