//! The head of the first page and the end of the last.

use super::{ABOVE, Making};
use crate::block::Para;
use crate::mark::line;
use crate::style::{self, SOFT, mm};
use krilla::tagging::Tag;
use words::Key;

/// Room for a signature, and the length of its line.
const SIGNATURE: (f32, f32) = (mm(12.0), mm(75.0));
/// The least length of a line for a name and a date.
const WRITTEN: f32 = mm(60.0);

impl Making<'_> {
    /// The clinic, the day, the title, and about whom it is.
    pub(super) fn head(&mut self, title: Key) {
        let (words, page_of) = (self.words, self.given.page);
        let sender = self.given.sender;
        let (frame, width) = (self.flow.frame, self.flow.frame.width());
        let fonts = &self.flow.fonts;
        let date = Para::new(fonts, style::CAPTION, &words.date_in_full(page_of.today), width / 2.0);
        let beside = width - date.width() - mm(8.0);
        let clinic = Para::new(fonts, style::CLINIC, sender.clinic, beside);
        let phone = sender.phone.map(|phone| Para::new(fonts, style::CAPTION, &words.paper_phone(phone), beside));
        let heading = Para::new(fonts, style::REPORT_TITLE, words.text(title), width);
        let who = Para::new(fonts, style::STRONG, &words.report_about(&page_of.code), width);
        let (page, top) = (self.flow.page, self.flow.y);
        for para in [Some(clinic), phone].into_iter().flatten().filter(|para| !para.is_empty()) {
            self.flow.para(Tag::P, &para, frame.left);
        }
        self.flow.sheet.element(Tag::P, page, date.right(frame.right, top), date.written.clone());
        self.flow.y = self.flow.y.max(top + date.height()) + ABOVE.0;
        self.flow.heading(1, words.text(title), (&[], &heading), frame.left);
        self.flow.para(Tag::P, &who, frame.left);
        self.identity(frame.left + who.width() + mm(8.0));
    }

    /// A line for name and date of birth, beside the code from `x` on if it has room there: what is sent away says by itself whose it is.
    fn identity(&mut self, x: f32) {
        let frame = self.flow.frame;
        let label = Para::new(&self.flow.fonts, style::CAPTION, self.words.text(Key::ReportIdentity), frame.width() / 2.0);
        let beside = x + label.width() + WRITTEN <= frame.right;
        let x = if beside { x } else { frame.left };
        if !beside {
            self.flow.y += label.height() + mm(2.0);
        }
        let (page, y) = (self.flow.page, self.flow.y);
        self.flow.sheet.element(Tag::P, page, label.left(x, y - label.height() - mm(0.4)), label.written.clone());
        let rule = line((x + label.width() + mm(2.0), y - mm(1.0)), (frame.right, y - mm(1.0)), SOFT, 0.7);
        self.flow.sheet.decorate(page, vec![rule]);
    }

    /// Which plan, which days the record covers, and what is missing in it.
    pub(super) fn covers(&mut self) {
        let (words, page) = (self.words, self.given.page);
        let plan = self.given.plan.map(|plan| &plan.header);
        let plan = plan.map(|header| words.report_plan(header.revision, &words.date_in_full(header.start)));
        let head = [words.at_line_start(&words.review_head(page))];
        let lines = head.into_iter().chain(plan).chain(words.review_covers(page)).chain(words.review_notices(page));
        let lines: Vec<String> = lines.collect();
        let para = Para::new(&self.flow.fonts, style::REPORT, &words.as_sentences(&lines), self.flow.frame.width());
        self.flow.para(Tag::P, &para, self.flow.frame.left);
    }

    /// That there is no plan, how many visits there were, and what is missing.
    pub(super) fn without_plan(&mut self) {
        let (words, given) = (self.words, self.given);
        let head = [words.text(Key::ReportNoPlan).to_owned(), words.letter_visits(given.visits.visits.len())];
        let lines: Vec<String> = head.into_iter().chain(words.review_notices(given.page)).collect();
        let para = Para::new(&self.flow.fonts, style::REPORT, &words.as_sentences(&lines), self.flow.frame.width());
        self.flow.para(Tag::P, &para, self.flow.frame.left);
    }

    /// What the report rests on, and a line to sign on.
    pub(super) fn signature(&mut self) {
        let (words, frame) = (self.words, self.flow.frame);
        let rests = if self.given.plan.is_some() { Key::ReportRestsOn } else { Key::ReportRestsOnVisits };
        let rests = Para::new(&self.flow.fonts, style::CAPTION, words.text(rests), frame.width());
        let sign = Para::new(&self.flow.fonts, style::CAPTION, words.text(Key::ReportSignature), frame.width());
        self.flow.space(ABOVE.0);
        self.flow.need(rests.height() + SIGNATURE.0 + sign.height());
        self.flow.para(Tag::P, &rests, frame.left);
        self.flow.y += SIGNATURE.0;
        let (page, y) = (self.flow.page, self.flow.y - mm(0.8));
        self.flow.sheet.decorate(page, vec![line((frame.left, y), (frame.left + SIGNATURE.1, y), SOFT, 0.7)]);
        self.flow.para(Tag::P, &sign, frame.left);
    }
}
