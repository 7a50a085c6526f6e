//! The columns of a diary: the day, each exercise, the pain of each complaint, and room for notes.

use super::{DIARY_DAYS, Diary};
use crate::PaperError;
use crate::block::Para;
use crate::font::Fonts;
use crate::style::{self, mm};
use chrono::NaiveDate;
use exercises::plan::{Complaint, Days, Item, Pattern};
use words::review::Names;
use words::{Key, Words};

/// Width of the column of days.
const DAY: f32 = mm(32.0);
/// Greatest width of an exercise's column, and of a complaint's.
const ITEM: f32 = mm(34.0);
const PAIN: f32 = mm(22.0);
/// Least width of the column for notes.
const NOTES: f32 = mm(26.0);
/// Room on each side of a heading within its column.
pub(super) const WITHIN: f32 = 3.0;
/// Greatest height of a heading that runs across its column.
const ACROSS: f32 = mm(22.0);
/// Heights that are tried, in this order, for headings that run upwards.
const UPWARDS: [f32; 4] = [mm(26.0), mm(36.0), mm(46.0), mm(62.0)];

/// What is written in a column.
pub(super) enum What<'a> {
    /// An exercise is ticked; with what is planned of it for each day where the calendar raises that.
    Item(&'a Item, Vec<Amount>),
    /// Pain, as a number.
    Pain,
    /// Anything.
    Notes,
}

/// What is planned for a day: with its unit, and as a number alone.
pub(super) struct Amount(pub [Para; 2]);

/// A column.
pub(super) struct Column<'a> {
    pub what: What<'a>,
    pub width: f32,
    pub heading: Para,
}

/// All columns.
pub(super) struct Columns<'a> {
    /// The width of the column of days, and its heading.
    pub day: (f32, Para),
    /// The others.
    pub rest: Vec<Column<'a>>,
    /// Whether headings run upwards.
    pub upwards: bool,
    /// The height of the headings.
    pub head: f32,
}

impl<'a> Columns<'a> {
    /// The columns of a diary, together so wide.
    pub(super) fn of(given: &Diary<'a>, words: Words, fonts: &Fonts, width: f32) -> Result<Columns<'a>, PaperError> {
        let prescription = &given.plan.prescription;
        let names = Names::of_prescription(words, prescription, &given.catalogue.exercises);
        let unknown = |item: &&Item| given.catalogue.get(&item.exercise).is_none();
        if let Some(item) = prescription.items.iter().find(unknown) {
            return Err(PaperError::UnknownExercise(item.exercise.clone()));
        }
        let mut titles: Vec<(What<'a>, String)> = prescription
            .items
            .iter()
            .map(|item| (What::Item(item, amounts(given, words, fonts, item)), title(words, names, (given, item))))
            .collect();
        let pain = |complaint: &Complaint| (What::Pain, words.diary_pain(&names.complaint(complaint.id)));
        titles.extend(prescription.complaints.iter().map(pain));
        let (items, pains) = (prescription.items.len() as f32, prescription.complaints.len() as f32);
        // Of what is left, an exercise gets as much as a complaint.
        let each = (width - DAY - NOTES) / (items + pains).max(1.0);
        let wide = |what: &What<'_>| each.min(if matches!(what, What::Item(..)) { ITEM } else { PAIN });
        let mut sized: Vec<(What<'a>, String, f32)> = titles
            .into_iter()
            .map(|(what, title)| (wide(&what), what, title))
            .map(|(wide, what, title)| (what, title, wide))
            .collect();
        let taken: f32 = sized.iter().map(|(_, _, wide)| wide).sum();
        sized.push((What::Notes, words.text(Key::DiaryNotes).to_owned(), width - DAY - taken));
        let (upwards, head) = direction(fonts, &sized);
        let room = |wide: f32| if upwards { head } else { wide } - 2.0 * WITHIN;
        let rest = sized.into_iter().map(|(what, title, width)| {
            let heading = Para::new(fonts, style::COLUMN, &title, room(width));
            Column { what, width, heading }
        });
        let day = (DAY, Para::new(fonts, style::COLUMN, words.text(Key::DiaryDay), DAY - 2.0 * WITHIN));
        Ok(Columns { day, rest: rest.collect(), upwards, head })
    }
}

/// What an exercise is called at the head of its column: where boxes alone do not show when it is due, with that.
fn title(words: Words, names: Names<'_>, (given, item): (&Diary<'_>, &Item)) -> String {
    let name = names.item(item.id);
    let when = match (&item.schedule.pattern, item.schedule.days) {
        (Pattern::AsNeeded, _) => Some(words.pattern(&item.schedule.pattern)),
        (_, days @ Days::TimesAWeek { .. }) => Some(words.days(days)),
        _ => None,
    };
    let unit = given.first.and(words.amount_of_day(item.dose)).map(|amount| amount.unit.to_owned());
    let said: Vec<String> = when.into_iter().chain(unit).collect();
    if said.is_empty() { name } else { words.named_text(&name, &words.commas(&said)) }
}

/// What is planned of an item for each day, as the patient's device would say it; empty for what the calendar does not raise, and for a diary
/// without dates.
fn amounts(given: &Diary<'_>, words: Words, fonts: &Fonts, item: &Item) -> Vec<Amount> {
    let set = |text: &str| Para::new(fonts, style::DAY, text, f32::INFINITY);
    let of = |day: NaiveDate| {
        let amount = words.amount_of_day(item.on(day, given.plan.header.issued).dose)?;
        Some(Amount([set(&amount.whole), set(&amount.number)]))
    };
    let days = given.first.into_iter().flat_map(|first| first.iter_days().take(usize::from(DIARY_DAYS)));
    days.filter_map(of).collect()
}

/// Whether headings have to run upwards, and how high they are then.
fn direction(fonts: &Fonts, sized: &[(What<'_>, String, f32)]) -> (bool, f32) {
    let set = |title: &str, room: f32| Para::new(fonts, style::COLUMN, title, room - 2.0 * WITHIN);
    let longest = |title: &str| {
        let words = title.split([' ', '-', '/']);
        words.map(|word| fonts.width(style::COLUMN.face, style::COLUMN.size, word)).fold(0.0, f32::max)
    };
    let high = sized.iter().map(|(_, title, wide)| set(title, *wide).height()).fold(0.0, f32::max);
    let whole = sized.iter().all(|(_, title, wide)| longest(title) <= wide - 2.0 * WITHIN);
    if whole && high <= ACROSS {
        return (false, high + 2.0 * WITHIN);
    }
    let fits = |room: &f32| sized.iter().all(|(_, title, wide)| set(title, *room).height() <= wide - WITHIN);
    (true, UPWARDS.into_iter().find(fits).unwrap_or(UPWARDS[UPWARDS.len() - 1]))
}
