//! What was measured at the first visit and at the last one, side by side.

use super::{ABOVE, Making};
use crate::block::Para;
use crate::mark::line;
use crate::style::{self, INK, RULE};
use chrono::NaiveDate;
use exercises::visit::{Finding, Measure, Moment, Visit, compare};
use krilla::tagging::{TableHeaderScope, Tag};
use words::Key;
use words::review::upper;

/// Shares of the width that the columns have: what, first, last, difference.
const COLUMNS: [f32; 4] = [0.32, 0.2, 0.2, 0.28];
/// Room between two columns, and within a row.
const BETWEEN: (f32, f32) = (6.0, 2.0);

/// The same measure at two visits.
pub(super) struct Pair<'a> {
    pub first: (NaiveDate, &'a Measure),
    pub last: (NaiveDate, &'a Measure),
}

/// Every measure of two visits or more, in the order in which each was first taken. Of one visit the value before treatment counts: what
/// treatment changes for an hour is no course.
pub(super) fn pairs(visits: &[Visit]) -> Vec<Pair<'_>> {
    let oldest_first = || visits.iter().rev();
    let mut kinds: Vec<&Measure> = Vec::new();
    for measure in oldest_first().flat_map(of) {
        if !kinds.iter().any(|known| known.is_like(measure)) {
            kinds.push(measure);
        }
    }
    let pair = |kind: &Measure| {
        let mut taken = oldest_first().filter_map(|visit| {
            let like = of(visit).filter(|one| one.is_like(kind));
            like.min_by_key(|one| one.moment == Moment::After).map(|one| (visit.day, one))
        });
        let first = taken.next()?;
        Some(Pair { first, last: taken.next_back()? })
    };
    kinds.into_iter().filter_map(pair).collect()
}

fn of(visit: &Visit) -> impl Iterator<Item = &Measure> {
    visit.found.iter().filter_map(|found| match &found.finding {
        Finding::Measure(measure) => Some(measure),
        _ => None,
    })
}

impl Making<'_> {
    /// The table, if anything was measured at two visits.
    pub(super) fn first_and_last(&mut self) {
        let given = self.given;
        let pairs = pairs(&given.visits.visits);
        if pairs.is_empty() {
            return;
        }
        let words = self.words;
        let head = [Key::LetterMeasure, Key::LetterFirst, Key::LetterLast, Key::LetterDifference];
        let mut rows = vec![head.map(|key| words.text(key).to_owned())];
        rows.extend(pairs.iter().map(|pair| self.cells(pair)));
        let title = words.text(Key::LetterMeasures);
        let heading = Para::new(&self.flow.fonts, style::CHAPTER, title, self.flow.frame.width());
        self.flow.space(ABOVE.0);
        self.flow.need(heading.height() + 4.0 * style::FINE.line);
        self.flow.heading(2, title, (&[], &heading), self.flow.frame.left);
        self.flow.y += ABOVE.1;
        self.flow.sheet.open(Tag::Table);
        for (n, row) in rows.iter().enumerate() {
            self.cells_in_a_row(row, n == 0);
        }
        self.flow.sheet.close();
    }

    fn cells(&self, pair: &Pair<'_>) -> [String; 4] {
        let words = self.words;
        let (Pair { first: (on, before), last: (until, after) }, once) = (pair, Moment::Once);
        let name = upper(&words.measure_name(&Measure { moment: once, ..(*before).clone() }));
        let told =
            |day: NaiveDate, measure: &Measure| words.name_with_note(&words.measure_result(measure), &words.date(day));
        let difference = match compare(before, after) {
            Some(compared) => words.difference(&before.what, compared),
            None => words.text(Key::LetterNotComparable).to_owned(),
        };
        [name, told(*on, before), told(*until, after), difference]
    }

    fn cells_in_a_row(&mut self, cells: &[String; 4], is_head: bool) {
        let frame = self.flow.frame;
        let style = if is_head { style::COLUMN } else { style::FINE };
        let width = |n: usize| frame.width() * COLUMNS[n] - BETWEEN.0;
        let paras: Vec<Para> =
            cells.iter().enumerate().map(|(n, text)| Para::new(&self.flow.fonts, style, text, width(n))).collect();
        let height = paras.iter().map(Para::height).fold(0.0, f32::max) + 2.0 * BETWEEN.1;
        self.flow.need(height);
        let (page, top) = (self.flow.page, self.flow.y + BETWEEN.1);
        self.flow.sheet.open(Tag::TR);
        let mut x = frame.left;
        for (n, para) in paras.iter().enumerate() {
            let marks = para.left(x, top);
            match (is_head, n) {
                (true, _) => {
                    self.flow.sheet.element(Tag::TH(TableHeaderScope::Column), page, marks, para.written.clone());
                }
                (false, 0) => self.flow.sheet.element(Tag::TH(TableHeaderScope::Row), page, marks, para.written.clone()),
                _ => self.flow.sheet.element(Tag::TD, page, marks, para.written.clone()),
            }
            x += frame.width() * COLUMNS[n];
        }
        self.flow.sheet.close();
        self.flow.y += height;
        let (y, colour) = (self.flow.y, if is_head { INK } else { RULE });
        self.flow.sheet.decorate(page, vec![line((frame.left, y), (frame.right, y), colour, 0.7)]);
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use exercises::visit::{Found, Measured};

    fn visit(day: u32, measures: &[(Moment, i32)]) -> Visit {
        let found = |(n, (moment, degrees)): (usize, &(Moment, i32))| {
            let what = Measured::Motion { movement: "turning".into() };
            let finding = Finding::Measure(Measure { what, moment: *moment, side: None, tenths: vec![degrees * 10] });
            Found { n: n as u32, first: n as u32, finding, corrected: false, by: None, corrected_by: None }
        };
        let day = NaiveDate::from_ymd_opt(2027, 3, day).expect("a date");
        Visit { day, found: measures.iter().enumerate().map(found).collect() }
    }

    #[test]
    fn values_before_treatment_of_the_first_and_the_last_visit_are_compared() {
        let visits = [
            visit(15, &[(Moment::After, 70), (Moment::Before, 55)]),
            visit(8, &[(Moment::Once, 99)]),
            visit(1, &[(Moment::Before, 40), (Moment::After, 60)]),
        ];
        let pairs = pairs(&visits);
        let told: Vec<(i32, i32)> = pairs.iter().map(|pair| (pair.first.1.result(), pair.last.1.result())).collect();
        assert_eq!(told, [(400, 550)]);
        assert_eq!((pairs[0].first.0, pairs[0].last.0), (visits[2].day, visits[0].day));
        assert!(super::pairs(&visits[..1]).is_empty(), "one visit is no course");
    }
}
