//! The table of a diary.

use super::Diary;
use super::columns::{Amount, Columns, WITHIN, What};
use crate::block::Para;
use crate::flow::Flow;
use crate::mark::{Mark, filled, line, outlined, rectangle, text_up};
use crate::style::{self, INK, RULE, SHADE, SOFT, mm};
use chrono::{Datelike, Days as Ahead, NaiveDate, Weekday};
use exercises::plan::{Days, Item};
use krilla::geom::Rect;
use krilla::tagging::{BBox, Placement, TableHeaderScope, Tag};
use std::ops::Range;
use words::{Key, Words};

/// Side of a box to tick and the room between two: usually, and where there are many.
const BOXES: [(f32, f32); 2] = [(mm(4.2), mm(1.5)), (mm(3.5), mm(1.2))];
/// Greatest height of a row.
const ROW: f32 = mm(11.0);
/// Room between the amount of a day and its boxes.
const BESIDE: f32 = mm(1.5);
/// From a line to write on to the lower edge of its cell.
const WRITE: f32 = mm(2.0);
/// A shorter line would be too short to write on.
const LEAST_LINE: f32 = mm(9.0);
/// Width of lines within the table, and of those between weeks.
const LINES: (f32, f32) = (0.7, 1.5);

/// A cell: where it is on the page.
#[derive(Clone, Copy)]
struct Cell {
    x: f32,
    y: f32,
    width: f32,
    height: f32,
}

/// What is in a cell: what is drawn, and what a screen reader says.
type Filled = (Vec<Mark>, Option<String>);

/// The table of some days, down to the foot of the page.
pub(super) fn table(flow: &mut Flow, words: Words, (given, columns): (&Diary<'_>, &Columns<'_>), days: Range<u8>) {
    let (page, left, top) = (flow.page, flow.frame.left, flow.y);
    let high = ((flow.room() - columns.head) / f32::from(days.end - days.start)).min(ROW);
    let body = top + columns.head;
    ground(flow, (given, columns), &days, high);
    flow.sheet.open(Tag::Table);
    flow.sheet.open(Tag::THead);
    flow.sheet.open(Tag::TR);
    headings(flow, columns);
    flow.sheet.close();
    flow.sheet.close();
    flow.sheet.open(Tag::TBody);
    for day in days.clone() {
        let y = body + f32::from(day - days.start) * high;
        flow.sheet.open(Tag::TR);
        let cell = Cell { x: left, y, width: columns.day.0, height: high };
        let (marks, written) = day_cell(flow, words, given.first, day, cell);
        flow.sheet.element(Tag::TH(TableHeaderScope::Row), page, marks, written);
        let mut x = left + columns.day.0;
        for column in &columns.rest {
            let cell = Cell { x, y, width: column.width, height: high };
            flow.sheet.open(Tag::TD);
            contents(flow, words, (given, &column.what), day, cell);
            flow.sheet.close();
            x += column.width;
        }
        flow.sheet.close();
    }
    flow.sheet.close();
    flow.sheet.close();
    flow.y = body + f32::from(days.end - days.start) * high;
}

/// The lines of the table, and the shade of cells in which nothing is asked for: both mean nothing by themselves.
fn ground(flow: &mut Flow, (given, columns): (&Diary<'_>, &Columns<'_>), days: &Range<u8>, high: f32) {
    let (left, right, top) = (flow.frame.left, flow.frame.right, flow.y);
    let body = top + columns.head;
    let bottom = body + f32::from(days.end - days.start) * high;
    let mut marks = Vec::new();
    let mut x = left + columns.day.0;
    for column in &columns.rest {
        for day in days.clone() {
            if matches!(&column.what, What::Item(item, _) if !is_due(item, given.first, day)) {
                let y = body + f32::from(day - days.start) * high;
                marks.push(filled(rectangle(x, y, column.width, high), SHADE));
            }
        }
        x += column.width;
    }
    let mut x = left + columns.day.0;
    for column in &columns.rest {
        marks.push(line((x, top), (x, bottom), RULE, LINES.0));
        x += column.width;
    }
    for day in days.clone() {
        let y = body + f32::from(day - days.start) * high;
        let (colour, width) = if day % 7 == 0 { (INK, LINES.1) } else { (RULE, LINES.0) };
        marks.push(line((left, y), (right, y), colour, width));
    }
    marks.push(line((left, bottom), (right, bottom), INK, LINES.1));
    flow.sheet.decorate(flow.page, marks);
}

fn headings(flow: &mut Flow, columns: &Columns<'_>) {
    let (page, left, top) = (flow.page, flow.frame.left, flow.y);
    let bottom = top + columns.head;
    let (day, heading) = &columns.day;
    let marks = heading.left(left, bottom - WITHIN - heading.height());
    flow.sheet.element(Tag::TH(TableHeaderScope::Column), page, marks, heading.written.clone());
    let mut x = left + day;
    for column in &columns.rest {
        let heading = &column.heading;
        let marks = if columns.upwards {
            upwards(heading, x + column.width / 2.0, bottom - WITHIN)
        } else {
            heading.left(x + WITHIN, bottom - WITHIN - heading.height())
        };
        flow.sheet.element(Tag::TH(TableHeaderScope::Column), page, marks, heading.written.clone());
        x += column.width;
    }
}

/// The lines of a heading from below upwards, beside each other around `x`.
fn upwards(heading: &Para, x: f32, from: f32) -> Vec<Mark> {
    let first = x - heading.height() / 2.0 + style::COLUMN.size * 0.9;
    let line = |(n, run): (usize, &crate::font::Run)| {
        text_up(style::COLUMN, run.clone(), (first + n as f32 * style::COLUMN.line, from))
    };
    heading.runs().enumerate().map(line).collect()
}

/// The date of a day, or its weekday with a line for the date.
fn day_cell(flow: &Flow, words: Words, first: Option<NaiveDate>, day: u8, cell: Cell) -> Filled {
    let date = date(first, day);
    let said = if first.is_some() { words.weekday_date(date) } else { words.weekday(date) };
    let para = Para::new(&flow.fonts, style::DAY, &said, cell.width - WITHIN);
    let mut marks = para.left(cell.x, cell.y + (cell.height - para.height()) / 2.0);
    if first.is_none() {
        let y = cell.y + cell.height - WRITE;
        marks.push(line((cell.x + para.width() + mm(2.0), y), (cell.x + cell.width - mm(2.0), y), SOFT, LINES.0));
    }
    (marks, para.written)
}

fn contents(flow: &mut Flow, words: Words, (given, what): (&Diary<'_>, &What<'_>), day: u8, cell: Cell) {
    let (times, amounts) = match what {
        What::Item(item, _) if !is_due(item, given.first, day) => {
            return sign(flow, "–", Some(words.text(Key::DiaryNotPlanned)), cell);
        }
        What::Item(item, amounts) => (item.schedule.pattern.minutes().len(), amounts.as_slice()),
        What::Pain | What::Notes => (0, &[][..]),
    };
    if let Some(amount) = amounts.get(usize::from(day)) {
        return with_amount(flow, words, times, (amount, amounts), cell);
    }
    if times == 0 {
        // An element with nothing in it would be left out, and the row would have a cell too few.
        return sign(flow, "\u{a0}", None, cell);
    }
    let Some(marks) = BOXES.into_iter().find_map(|size| boxes(times, cell, size)) else {
        return count(flow, words, times, cell);
    };
    figure(flow, words.diary_boxes(times), marks, cell);
}

fn figure(flow: &mut Flow, said: String, marks: Vec<Mark>, cell: Cell) {
    let bbox = Rect::from_xywh(cell.x, cell.y, cell.width, cell.height).map(|rect| BBox::new(flow.page, rect));
    let tag = Tag::Figure(Some(said)).with_bbox(bbox).with_placement(Some(Placement::Block));
    flow.sheet.element(tag, flow.page, marks, None);
}

/// A day's planned amount with the day's boxes at its right, or with a line to write on if there are too many boxes. All amounts of a
/// column are as wide as the widest, so that the boxes are aligned. The unit is printed only if there is room for it on every day.
fn with_amount(flow: &mut Flow, words: Words, times: usize, (amount, all): (&Amount, &[Amount]), cell: Cell) {
    let beside = |form: usize| {
        let widest = all.iter().map(|amount| amount.0[form].width()).fold(0.0, f32::max);
        let taken = WITHIN + widest + BESIDE;
        Cell { x: cell.x + taken, width: cell.width - taken, ..cell }
    };
    let fitting = |form: usize| match times {
        0 => (beside(form).width > 0.0).then(Vec::new),
        _ => BOXES.into_iter().find_map(|size| boxes(times, beside(form), size)),
    };
    let (form, marks) = [0, 1].into_iter().find_map(|form| Some((form, Some(fitting(form)?)))).unwrap_or((1, None));
    let para = &amount.0[form];
    let top = match &marks {
        Some(_) => cell.y + (cell.height - para.height()) / 2.0,
        None => cell.y + cell.height - WRITE - para.height() + 2.0,
    };
    flow.sheet.element(Tag::P, flow.page, para.left(cell.x + WITHIN, top), para.written.clone());
    match marks {
        Some(marks) if marks.is_empty() => {}
        Some(marks) => figure(flow, words.diary_boxes(times), marks, cell),
        None => count(flow, words, times, beside(form)),
    }
}

/// A sign in the middle of a cell, and what a screen reader says instead of it.
fn sign(flow: &mut Flow, sign: &str, said: Option<&str>, cell: Cell) {
    let para = Para::new(&flow.fonts, style::CAPTION, sign, cell.width);
    let marks = para.centred(cell.x + cell.width / 2.0, cell.y + (cell.height - para.height()) / 2.0);
    flow.sheet.put(flow.page, marks, said.map(str::to_owned));
}

/// Boxes to tick, in the middle of the cell; `None` if there is no room for so many.
fn boxes(times: usize, cell: Cell, (side, between): (f32, f32)) -> Option<Vec<Mark>> {
    let each = side + between;
    let fit = |length: f32| ((length - between) / each).floor().max(0.0) as usize;
    let (across, rows) = (fit(cell.width), fit(cell.height));
    if across * rows < times {
        return None;
    }
    let lines = times.div_ceil(across);
    let top = cell.y + (cell.height - lines as f32 * each + between) / 2.0;
    let mut marks = Vec::new();
    for row in 0..lines {
        let of_row = across.min(times - row * across);
        let left = cell.x + (cell.width - of_row as f32 * each + between) / 2.0;
        let at = |n: usize| rectangle(left + n as f32 * each, top + row as f32 * each, side, side);
        marks.extend((0..of_row).map(|n| outlined(at(n), INK, 0.8)));
    }
    Some(marks)
}

/// A line to write a count on, and of how many.
fn count(flow: &mut Flow, words: Words, times: usize, cell: Cell) {
    let para = Para::new(&flow.fonts, style::DAY, &words.diary_of(times), cell.width);
    let x = cell.x + cell.width - WITHIN - para.width();
    let y = cell.y + cell.height - WRITE;
    // In a narrow column the number is written above.
    if x - cell.x > LEAST_LINE {
        flow.sheet.decorate(flow.page, vec![line((cell.x + WITHIN, y), (x - WITHIN, y), SOFT, LINES.0)]);
    }
    flow.sheet.put(flow.page, para.left(x, y - para.height() + 2.0), None);
}

/// The date of a day of the diary; without a first one, of a week that begins on a Monday.
fn date(first: Option<NaiveDate>, day: u8) -> NaiveDate {
    let monday = NaiveDate::from_isoywd_opt(2024, 1, Weekday::Mon).unwrap_or_default();
    first.unwrap_or(monday).checked_add_days(Ahead::new(u64::from(day))).unwrap_or(NaiveDate::MAX)
}

/// Whether an exercise may be done on a day. Where the patient chooses the days it may be any; a rhythm of days without dates, too.
fn is_due(item: &Item, first: Option<NaiveDate>, day: u8) -> bool {
    let date = date(first, day);
    match (item.schedule.days, first) {
        (_, Some(_)) if !item.phase.contains(date) => false,
        (Days::On(days), _) => days.contains(date.weekday()),
        (Days::TimesAWeek { .. }, _) | (_, None) => true,
        (days, Some(_)) => days.contain(date, None),
    }
}
