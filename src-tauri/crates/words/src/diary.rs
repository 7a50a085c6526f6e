//! A diary that a patient kept on paper.

use crate::review::Names;
use crate::{Key, Words};
use exercises::id::ItemId;
use exercises::summary::PaperDay;
use wire::visiting::{DiaryLine, DiaryPage};

impl Words {
    /// What was entered, a line for each day, for the terminal.
    pub fn diary_text(self, page: &DiaryPage) -> String {
        let names = Names::of_prescription(self, &page.plan.prescription, &page.exercises);
        let line = |line: &DiaryLine| Some(self.diary_day(line, line.entered.as_ref()?, names));
        let lines: Vec<String> = page.days.iter().filter_map(line).collect();
        if lines.is_empty() { self.text(Key::PaperDiaryNone).to_owned() } else { lines.join("\n") }
    }

    fn diary_day(self, line: &DiaryLine, entered: &PaperDay, names: Names<'_>) -> String {
        let due = |item: ItemId| line.due.iter().find(|(other, _)| *other == item).map_or(0, |(_, n)| *n);
        let done = entered.done.iter().map(|(item, n)| match due(*item) {
            0 => self.paper_diary_done_free(&names.item(*item), *n),
            due => self.paper_diary_done(&names.item(*item), *n, due),
        });
        let done: Vec<String> = done.collect();
        let done = if done.is_empty() { vec![self.text(Key::PaperDiaryNothingDone).to_owned()] } else { done };
        let mornings = entered.mornings.iter().map(|(id, score)| self.paper_diary_morning(&names.complaint(*id), *score));
        self.paper_diary_line(&self.date(line.day), &self.commas(&done.into_iter().chain(mornings).collect::<Vec<_>>()))
    }
}
