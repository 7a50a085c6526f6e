//! A diary of four weeks on paper: a table with the days below each other and the exercises beside each other.

mod columns;
mod table;

use crate::PaperError;
use crate::block::{Block, Para};
use crate::flow::{Flow, Frame};
use crate::font::Fonts;
use crate::sheet::Paper;
use crate::style::{self, mm};
use crate::{foot, motif, write};
use chrono::NaiveDate;
use columns::Columns;
use exercises::catalogue::Catalogue;
use exercises::plan::Plan;
use krilla::tagging::Tag;
use words::{Key, Words};

/// The days of a diary.
pub const DIARY_DAYS: u8 = 28;
/// The days on a page.
const PAGE_DAYS: u8 = 14;
/// Where the string hangs, from the left edge of the page.
const STRING_X: f32 = mm(9.5);
/// Where the string begins and ends on a page.
const STRING_ENDS: f32 = mm(9.0);
/// From the left edge to the text, from the text to the right edge, from the upper edge, and to the lower edge.
const MARGINS: (f32, f32, f32, f32) = (mm(17.0), mm(12.0), mm(11.0), mm(17.0));

/// What a diary is for.
pub struct Diary<'a> {
    /// The plan.
    pub plan: &'a Plan,
    /// Where its exercises are.
    pub catalogue: &'a Catalogue,
    /// The patient's code or name; `None` for a paper without one.
    pub patient: Option<&'a str>,
    /// The first day; `None` for weeks from Monday to Sunday without dates.
    pub first: Option<NaiveDate>,
}

/// The diary as a PDF file: two pages lying on their sides, two weeks on each.
///
/// # Errors
/// [`PaperError::UnknownExercise`] if the catalogue lacks one of the plan's exercises.
pub fn diary(given: &Diary<'_>, paper: Paper, words: Words) -> Result<Vec<u8>, PaperError> {
    let (height, width) = paper.upright();
    let (left, right, top, bottom) = MARGINS;
    let frame = Frame { left, right: width - right, top, bottom: height - bottom };
    let mut flow = Flow::new(Fonts::new()?, (width, height), frame);
    let columns = Columns::of(given, words, &flow.fonts, frame.width())?;
    let title = given.patient.map_or_else(|| words.text(Key::DiaryTitle).to_owned(), |who| words.diary_title_for(who));
    flow.sheet.open(Tag::Part);
    for first in (0..DIARY_DAYS).step_by(usize::from(PAGE_DAYS)) {
        if first == 0 {
            head(&mut flow, words, &title, given);
        } else {
            flow.next_page();
        }
        weeks(&mut flow, words, first);
        table::table(&mut flow, words, (given, &columns), first..first + PAGE_DAYS);
    }
    flow.sheet.close();
    string(&mut flow);
    foot::feet(&mut flow, words, ((&given.plan.header).into(), given.patient), given.plan.header.issued);
    let (language, program) = (words.locale.tag(), words.text(Key::AppName));
    let about = write::About { title: &title, language, author: &given.plan.header.clinic, program };
    write::pdf(&flow.sheet, &flow.fonts, &about)
}

/// The title, and how the diary is kept.
fn head(flow: &mut Flow, words: Words, title: &str, given: &Diary<'_>) {
    let (left, width) = (flow.frame.left, flow.frame.width());
    let para = Para::new(&flow.fonts, style::HEADING, title, width);
    flow.heading(1, title, (&[], &para), left);
    let prescription = &given.plan.prescription;
    let with_amounts =
        given.first.is_some() && prescription.items.iter().any(|item| words.amount_of_day(item.dose).is_some());
    let with_pain = !prescription.complaints.is_empty();
    let keys = [
        Some(Key::DiaryWhat),
        with_amounts.then_some(Key::DiaryAmountWhat),
        with_pain.then_some(Key::DiaryPainWhat),
        Some(Key::DiaryBring),
    ];
    let told: Vec<&str> = keys.into_iter().flatten().map(|key| words.text(key)).collect();
    let told = Block::paragraph(&flow.fonts, style::SMALL, &words.sentences(&told), width, 0.0);
    flow.column(&[told], left);
    flow.space(mm(2.0));
}

/// Which weeks are on the page.
fn weeks(flow: &mut Flow, words: Words, first: u8) {
    let week = first / 7 + 1;
    let said = words.diary_weeks(week, week + PAGE_DAYS / 7 - 1);
    let para = Para::new(&flow.fonts, style::MINOR, &said, flow.frame.width());
    flow.heading(2, &said, (&[], &para), flow.frame.left);
    flow.space(mm(1.0));
}

fn string(flow: &mut Flow) {
    let (last, bottom) = (flow.page, flow.sheet.size.1 - STRING_ENDS);
    for page in 0..=last {
        let ends = if page == last { bottom - motif::BOB_HEIGHT } else { bottom };
        let mut marks = vec![motif::string(STRING_X, STRING_ENDS, ends)];
        marks.extend((page == last).then(|| motif::bob(STRING_X, ends)));
        flow.sheet.behind.push((page, marks));
    }
}
