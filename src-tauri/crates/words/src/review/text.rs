//! The whole review as plain text.

use super::grid::letter;
use super::{Finding, Names, Question, upper};
use crate::Words;
use exercises::chart::{Sign, groups, signs};
use exercises::review::Review;
use wire::clinic::ReviewPage;

/// A line is at most this long, in characters.
const COLUMNS: usize = 84;

impl Words {
    /// The complete review, its answers in the order of their questions.
    pub fn review_text(self, page: &ReviewPage) -> String {
        let names = Names::of(self, page);
        let mut sheet = Sheet::default();
        sheet.plain(&match &page.name {
            Some(name) => format!("{} ({name})", page.code),
            None => page.code.clone(),
        });
        sheet.plain(&self.review_head(page));
        self.review_covers(page).iter().for_each(|line| sheet.plain(line));
        if let Some(review) = &page.review {
            self.write_alarms(&mut sheet, review, names);
            self.write_done(&mut sheet, review, names);
            self.write_pain(&mut sheet, review, names);
            self.write_balance(&mut sheet, review, names);
            self.write_activities(&mut sheet, review, names);
            self.write_barriers(&mut sheet, review);
            self.write_next(&mut sheet, review, names);
            self.write_notes(&mut sheet, review);
        }
        sheet.text
    }

    fn heading(self, sheet: &mut Sheet, question: Question, empty: bool) {
        sheet.heading(self.question(question));
        if empty {
            sheet.line(1, self.unanswered(question));
        }
    }

    fn write_alarms(self, sheet: &mut Sheet, review: &Review, names: Names<'_>) {
        self.heading(sheet, Question::Alarms, review.alarms.is_empty());
        for alarm in &review.alarms {
            sheet.line(1, &self.review_alarm(alarm, names).to_string());
        }
    }

    fn write_done(self, sheet: &mut Sheet, review: &Review, names: Names<'_>) {
        self.heading(sheet, Question::Done, review.adherence.is_empty());
        for item in &review.adherence {
            let name = names.item(item.item);
            sheet.line(1, &if item.in_force { name } else { format!("{name} ({})", self.no_longer()) });
            sheet.line(2, &self.adherence(item).to_string());
            self.half_days(item).iter().for_each(|line| sheet.line(2, line));
            self.broke_off(item, review.start).iter().for_each(|line| sheet.line(2, line));
            self.string_rows(&review.days, item.item).iter().for_each(|row| sheet.row(2, row));
            self.adherence_details(item, review.start).iter().for_each(|line| sheet.line(2, line));
        }
        self.delay(&review.delays, review.start).iter().for_each(|line| sheet.line(1, line));
        sheet.line(1, &self.signs(review));
    }

    /// What the signs of [`Words::string_rows`] mean, those that occur.
    fn signs(self, review: &Review) -> String {
        let said = |sign: Sign| format!("{} {}", letter(sign), self.sign(sign));
        signs(&review.days).into_iter().map(said).collect::<Vec<_>>().join("   ")
    }

    fn write_pain(self, sheet: &mut Sheet, review: &Review, names: Names<'_>) {
        self.heading(sheet, Question::Pain, review.pain.is_empty());
        for series in &review.pain {
            sheet.line(1, &upper(&names.complaint(series.complaint)));
            sheet.line(2, &self.pain(series).to_string());
            self.at_visits(&series.at_visits, review.start).iter().for_each(|line| sheet.line(2, line));
        }
    }

    fn write_balance(self, sheet: &mut Sheet, review: &Review, names: Names<'_>) {
        self.heading(sheet, Question::Balance, review.balance.is_empty() && review.baselines.is_empty());
        for group in groups(&review.balance) {
            sheet.line(1, &self.stance_conditions(&group, names));
            for series in &group.legs {
                let Finding { word, figures } = self.stance(series);
                sheet.line(2, &format!("{}: {}, {figures}", upper(self.leg_short(series.leg)), word.to_lowercase()));
                series.sway.iter().flat_map(|sway| self.sway_series(sway)).for_each(|line| sheet.line(3, &line));
            }
            self.against_norms_by_leg(&group.legs, review.start).iter().for_each(|line| sheet.line(2, line));
            let sides =
                review.sides.iter().filter(|sides| group.legs.iter().any(|leg| leg.conditions() == sides.conditions));
            sides.for_each(|sides| sheet.line(2, &self.side_to_side(&sides.sides)));
        }
        self.visit_stances(&review.baselines, review.start).iter().for_each(|line| sheet.line(1, line));
    }

    fn write_activities(self, sheet: &mut Sheet, review: &Review, names: Names<'_>) {
        self.heading(sheet, Question::Activities, review.activities.is_empty());
        for series in &review.activities {
            sheet.line(1, &upper(&names.activity(series.activity)));
            sheet.line(2, &self.activity_change(&series.change).to_string());
        }
        let together = review.activities_together.as_ref().map(|all| self.activities_together(all).to_string());
        together.iter().for_each(|line| sheet.line(1, line));
    }

    fn write_barriers(self, sheet: &mut Sheet, review: &Review) {
        self.heading(sheet, Question::Barriers, review.barriers.is_empty());
        for (barrier, times) in &review.barriers {
            sheet.row(1, &format!("{times:>3}  {}", self.barrier(*barrier)));
        }
    }

    fn write_next(self, sheet: &mut Sheet, review: &Review, names: Names<'_>) {
        self.heading(sheet, Question::Next, review.items.is_empty());
        for suggestion in &review.items {
            let words = self.suggestion(suggestion, names, review.start);
            sheet.line(1, &format!("{}: {}", names.item(suggestion.item), words.line()));
            sheet.line(2, &words.reason);
        }
        if !review.items.is_empty() {
            sheet.line(1, self.proposals_only());
        }
    }

    fn write_notes(self, sheet: &mut Sheet, review: &Review) {
        if !review.notes.is_empty() {
            self.heading(sheet, Question::Notes, false);
            review.notes.iter().for_each(|note| sheet.line(1, note));
        }
    }
}

#[derive(Default)]
struct Sheet {
    text: String,
}

impl Sheet {
    fn heading(&mut self, text: &str) {
        self.text.push('\n');
        self.plain(&text.to_uppercase());
    }

    fn plain(&mut self, text: &str) {
        self.line(0, text);
    }

    /// A paragraph, two blanks in for each level, wrapped between words.
    fn line(&mut self, level: usize, text: &str) {
        let margin = " ".repeat(level * 2);
        let mut line = String::new();
        for word in text.split_whitespace() {
            if !line.is_empty() && margin.len() + line.chars().count() + 1 + word.chars().count() > COLUMNS {
                self.row(level, &line);
                line = String::from("  ");
            } else if !line.trim().is_empty() {
                line.push(' ');
            }
            line.push_str(word);
        }
        self.row(level, &line);
    }

    /// A row as it is.
    fn row(&mut self, level: usize, text: &str) {
        self.text.push_str(&" ".repeat(level * 2));
        self.text.push_str(text.trim_end());
        self.text.push('\n');
    }
}
