//! What was prescribed, plan after plan, and what was done of it: a table with a row for each item.

use super::strip::{self, Day};
use super::{ABOVE, Making};
use crate::block::Para;
use crate::mark::line;
use crate::style::{self, INK, RULE, mm};
use chrono::NaiveDate;
use exercises::adherence::ItemAdherence;
use exercises::id::ItemId;
use exercises::plan::{Item, Plan};
use krilla::geom::Rect;
use krilla::tagging::{BBox, Placement, TableHeaderScope, Tag};
use words::Key;

/// Share of the width that the first column has, and room between both.
const FIRST: (f32, f32) = (0.44, mm(5.0));
/// Room within a row, above and below.
const WITHIN: f32 = 2.6;

/// A sign of the charts: whether a day has it, how it is drawn, and what it means.
type Sign = (fn(&Day) -> bool, Day, Key);

/// A row, measured.
struct Row {
    /// The item and its doses.
    what: Vec<Para>,
    /// What was done.
    done: Vec<Para>,
    days: Option<(Vec<Day>, String, Para)>,
}

impl Row {
    fn height(&self) -> f32 {
        let of = |paras: &[Para]| paras.iter().map(Para::height).sum::<f32>();
        let chart = self.days.as_ref().map_or(0.0, |(.., dates)| strip::HEIGHT + dates.height());
        of(&self.what).max(of(&self.done) + chart) + 2.0 * WITHIN
    }
}

impl Making<'_> {
    /// The table. Without a review it has the plan alone; without a plan there is none.
    pub(super) fn done(&mut self) {
        if self.given.plan.is_none() {
            return;
        }
        let rows: Vec<Row> = self.items().into_iter().map(|item| self.row(item)).collect();
        let (words, frame) = (self.words, self.flow.frame);
        let title = words.text(Key::ReportPlanAndDone);
        let heading = Para::new(&self.flow.fonts, style::CHAPTER, title, frame.width());
        let (first, second) = self.columns();
        let head = [Key::ReportPrescribed, Key::ReportDone].map(|key| words.text(key));
        let head = [(head[0], first.1), (head[1], second.1)]
            .map(|(text, width)| Para::new(&self.flow.fonts, style::COLUMN, text, width));
        let lead = heading.height() + ABOVE.1 + head[0].height().max(head[1].height());
        self.flow.space(ABOVE.0);
        self.flow.need(lead + rows.first().map_or(0.0, Row::height));
        self.flow.heading(2, title, (&[], &heading), frame.left);
        self.flow.y += ABOVE.1;
        self.flow.sheet.open(Tag::Table);
        self.flow.sheet.open(Tag::TR);
        let (page, y) = (self.flow.page, self.flow.y);
        for (para, x) in head.iter().zip([first.0, second.0]) {
            self.flow.sheet.element(Tag::TH(TableHeaderScope::Column), page, para.left(x, y), para.written.clone());
        }
        self.flow.sheet.close();
        self.flow.y += head[0].height().max(head[1].height()) + WITHIN;
        self.rule(INK);
        rows.iter().for_each(|row| self.put(row));
        self.flow.sheet.close();
        self.legend(&rows);
    }

    /// The left edge and the width of each column.
    fn columns(&self) -> ((f32, f32), (f32, f32)) {
        let (left, width) = (self.flow.frame.left, self.flow.frame.width());
        let first = width * FIRST.0;
        ((left, first - FIRST.1), (left + first, width - first))
    }

    fn rule(&mut self, colour: style::Colour) {
        let (page, y, frame) = (self.flow.page, self.flow.y, self.flow.frame);
        self.flow.sheet.decorate(page, vec![line((frame.left, y), (frame.right, y), colour, 0.7)]);
    }

    /// Items in the order of the newest plan, then those that it no longer has.
    fn items(&self) -> Vec<ItemId> {
        let mut all: Vec<ItemId> = Vec::new();
        let plans = self.given.plan.into_iter().chain(&self.given.page.earlier);
        for id in plans.flat_map(|plan| &plan.prescription.items).map(|item| item.id) {
            if !all.contains(&id) {
                all.push(id);
            }
        }
        all
    }

    /// The plans, the oldest first.
    fn plans(&self) -> impl Iterator<Item = &Plan> {
        self.given.page.earlier.iter().rev().chain(self.given.plan)
    }

    /// What was prescribed of an item since when, the newest first. A plan that changes nothing of it is not told.
    fn doses(&self, id: ItemId) -> Vec<(NaiveDate, String)> {
        let mut all: Vec<(NaiveDate, String)> = Vec::new();
        for plan in self.plans() {
            let said = match plan.item(id) {
                Some(item) => self.prescribed(item),
                None if all.is_empty() => continue,
                None => self.words.text(Key::ReportNotPrescribed).to_owned(),
            };
            if all.last().is_none_or(|(_, last)| *last != said) {
                all.push((plan.header.issued, said));
            }
        }
        all.reverse();
        all
    }

    fn prescribed(&self, item: &Item) -> String {
        let words = self.words;
        let exercise = self.names.known(&item.exercise);
        let level = exercise.and_then(|exercise| words.rung_of(item, exercise));
        let dose = level.map_or_else(|| words.dose_of(item), |level| words.commas(&[level, words.dose_of(item)]));
        words.named_text(&dose, &words.due(item))
    }

    fn row(&self, id: ItemId) -> Row {
        let (words, fonts) = (self.words, &self.flow.fonts);
        let (first, second) = self.columns();
        let mut what = vec![Para::new(fonts, style::REPORT_STRONG, &self.names.item(id), first.1)];
        for (place, (since, said)) in self.doses(id).iter().enumerate() {
            let style = if place == 0 { style::FINE } else { style::FINE_SOFT };
            what.push(Para::new(fonts, style, &words.report_since(&words.date(*since), said), first.1));
        }
        let review = self.given.page.review.as_ref();
        let kept = review.and_then(|review| review.adherence.iter().find(|one| one.item == id));
        let lines = kept.map_or_else(Vec::new, |kept| self.kept(kept));
        let done = lines.iter().map(|said| Para::new(fonts, style::FINE, said, second.1)).collect();
        let days = review.and_then(|review| strip::days(&review.days, id)).map(|(days, from, to)| {
            let [from, to] = [from, to].map(|day| words.date(day));
            let count = |of: fn(&Day) -> bool| days.iter().filter(|day| of(day)).count();
            let full = count(|day| *day == Day::Full);
            let part = count(|day| matches!(day, Day::Part(_)));
            let none = count(|day| matches!(day, Day::Nothing | Day::Unseen));
            let said = words.report_days(&from, &to, full, part, none);
            let dates = Para::new(fonts, style::TINY, &words.report_from_to(&from, &to), second.1);
            (days, said, dates)
        });
        Row { what, done, days }
    }

    fn kept(&self, kept: &ItemAdherence) -> Vec<String> {
        let (words, start) = (self.words, self.given.page.review.as_ref().map(|review| review.start));
        let Some(start) = start else { return Vec::new() };
        let said = words.adherence(kept, start).line(words);
        let paused = (kept.slots.paused > 0).then(|| words.review_sessions_paused(kept.slots.paused));
        [said].into_iter().chain(words.broke_off(kept, start)).chain(paused).collect()
    }

    fn put(&mut self, row: &Row) {
        self.flow.need(row.height());
        let (first, second) = self.columns();
        let (page, top) = (self.flow.page, self.flow.y + WITHIN);
        self.flow.sheet.open(Tag::TR);
        self.flow.sheet.open(Tag::TH(TableHeaderScope::Row));
        let mut y = top;
        for para in &row.what {
            self.flow.sheet.element(Tag::P, page, para.left(first.0, y), para.written.clone());
            y += para.height();
        }
        self.flow.sheet.close();
        self.flow.sheet.open(Tag::TD);
        let mut y = top;
        for para in &row.done {
            self.flow.sheet.element(Tag::P, page, para.left(second.0, y), para.written.clone());
            y += para.height();
        }
        if let Some((days, said, dates)) = &row.days {
            let (wide, at) = (strip::width(days.len(), second.1), (second.0, y + 2.0));
            let bbox = Rect::from_xywh(at.0, at.1, wide, strip::HEIGHT).map(|rect| BBox::new(page, rect));
            let tag = Tag::Figure(Some(said.clone())).with_bbox(bbox).with_placement(Some(Placement::Block));
            self.flow.sheet.element(tag, page, strip::marks(days, at, second.1), None);
            self.flow.sheet.element(Tag::P, page, dates.left(second.0, y + strip::HEIGHT), dates.written.clone());
        } else if row.done.is_empty() {
            // An element with nothing in it would be left out, and the row would have a cell too few.
            let para = Para::new(&self.flow.fonts, style::FINE, "\u{a0}", second.1);
            self.flow.sheet.put(page, para.left(second.0, top), None);
        }
        self.flow.sheet.close();
        self.flow.sheet.close();
        self.flow.y += row.height();
        self.rule(RULE);
    }

    /// What the signs of the charts mean, as far as they occur.
    fn legend(&mut self, rows: &[Row]) {
        let signs: [Sign; 6] = [
            (|day| *day == Day::Full, Day::Full, Key::ReviewLegendDone),
            (|day| matches!(day, Day::Part(_)), Day::Part(0.5), Key::ReviewLegendPartly),
            (|day| *day == Day::Nothing, Day::Nothing, Key::ReviewLegendNotDone),
            (|day| *day == Day::Unseen, Day::Unseen, Key::ReportNoRecord),
            (|day| *day == Day::Off, Day::Off, Key::ReviewLegendDayOff),
            (|day| *day == Day::Paused, Day::Paused, Key::ReviewLegendPaused),
        ];
        let all = || rows.iter().filter_map(|row| row.days.as_ref()).flat_map(|(days, ..)| days);
        let (page, mut x, y) = (self.flow.page, self.flow.frame.left, self.flow.y + WITHIN);
        let mut marks = Vec::new();
        let mut height = 0.0_f32;
        for (occurs, sign, said) in signs {
            if !all().any(occurs) {
                continue;
            }
            let para = Para::new(&self.flow.fonts, style::TINY, self.words.text(said), self.flow.frame.width());
            marks.extend(strip::marks(&[sign], (x, y), 5.0));
            marks.extend(para.left(x + 8.0, y));
            height = height.max(para.height());
            x += para.width() + 20.0;
        }
        if !marks.is_empty() {
            self.flow.sheet.element(Tag::P, page, marks, None);
            self.flow.y += WITHIN + height + 2.0;
        }
    }
}
