//! What is typed into the diary until it is saved.

use chrono::NaiveDate;
use exercises::id::{ComplaintId, ItemId};
use exercises::score::Score;
use exercises::summary::{MAX_SESSIONS, PaperDay};
use leptos::prelude::*;
use std::collections::BTreeMap;
use wire::visiting::{DiaryLine, DiaryPage};

/// A column of the table.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Column {
    /// The sessions of an exercise.
    Sessions(ItemId),
    /// The pain of a complaint in the morning.
    Morning(ComplaintId),
}

impl Column {
    /// The largest number.
    pub fn most(self) -> u8 {
        match self {
            Column::Sessions(_) => MAX_SESSIONS,
            Column::Morning(_) => 10,
        }
    }

    fn read(self, text: &str) -> Option<u8> {
        text.trim().parse().ok().filter(|number| *number <= self.most())
    }
}

/// The page from the shell, and what was typed since.
#[derive(Clone, Copy)]
pub struct Typed {
    /// The page.
    pub page: RwSignal<DiaryPage>,
    fields: RwSignal<BTreeMap<(NaiveDate, Column), String>>,
}

impl Typed {
    /// Nothing is typed yet.
    pub fn new(page: DiaryPage) -> Typed {
        Typed { page: RwSignal::new(page), fields: RwSignal::new(BTreeMap::new()) }
    }

    /// Shows the page after it was saved.
    pub fn saved(self, page: DiaryPage) {
        self.fields.set(BTreeMap::new());
        self.page.set(page);
    }

    /// What a field shows: what was typed, or else what was entered before.
    pub fn shown(self, day: NaiveDate, column: Column) -> String {
        self.fields
            .with(|fields| fields.get(&(day, column)).cloned())
            .unwrap_or_else(|| self.page.with(|page| before(page, day, column)))
    }

    /// The number in a field; `None` if it is empty or no number that its column can have.
    pub fn number(self, day: NaiveDate, column: Column) -> Option<u8> {
        column.read(&self.shown(day, column))
    }

    /// Takes what was typed into a field.
    pub fn put(self, day: NaiveDate, column: Column, text: String) {
        self.fields.update(|fields| drop(fields.insert((day, column), text)));
    }

    /// The days in which something was typed, as they are then.
    ///
    /// # Errors
    /// The first field that is neither empty nor a number that its column can have.
    pub fn days(self) -> Result<Vec<PaperDay>, (NaiveDate, Column)> {
        let columns = self.page.with_untracked(columns);
        let mut changed: Vec<NaiveDate> = self.fields.with_untracked(|fields| fields.keys().map(|(day, _)| *day).collect());
        changed.dedup();
        let day = |day: NaiveDate| {
            let mut of = PaperDay { day, done: Vec::new(), mornings: Vec::new() };
            for column in &columns {
                let text = untrack(|| self.shown(day, *column));
                if text.trim().is_empty() {
                    continue;
                }
                let number = column.read(&text).ok_or((day, *column))?;
                match column {
                    Column::Sessions(item) => of.done.push((*item, number)),
                    Column::Morning(complaint) => of.mornings.push((*complaint, Score::at_most_ten(number))),
                }
            }
            Ok(of)
        };
        changed.into_iter().map(day).collect()
    }
}

/// The columns in the plan's order: its exercises, then its complaints.
pub fn columns(page: &DiaryPage) -> Vec<Column> {
    let items = page.plan.prescription.items.iter().map(|item| Column::Sessions(item.id));
    items.chain(page.plan.prescription.complaints.iter().map(|complaint| Column::Morning(complaint.id))).collect()
}

/// What was entered before; an exercise that was due on a day that was entered has a 0 if it was not done.
fn before(page: &DiaryPage, day: NaiveDate, column: Column) -> String {
    let line = page.days.iter().find(|line| line.day == day);
    let Some((line, entered)) = line.and_then(|line| Some((line, line.entered.as_ref()?))) else { return String::new() };
    match column {
        Column::Sessions(item) => {
            let done = entered.done.iter().find(|(other, _)| *other == item).map(|(_, n)| *n);
            done.or_else(|| due(line, item).map(|_| 0)).map(|n| n.to_string()).unwrap_or_default()
        }
        Column::Morning(complaint) => {
            let score = entered.mornings.iter().find(|(other, _)| *other == complaint);
            score.map(|(_, score)| score.points().to_string()).unwrap_or_default()
        }
    }
}

/// How many sessions of an item were due at set times; `None` if none was.
pub fn due(line: &DiaryLine, item: ItemId) -> Option<u8> {
    line.due.iter().find(|(other, _)| *other == item).map(|(_, n)| *n).filter(|n| *n > 0)
}
