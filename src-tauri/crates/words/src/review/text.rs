//! The whole review as plain text.

use super::grid::letter;
use super::{Names, ReviewQuestion, upper};
use crate::{Key, Words};
use exercises::adherence::ItemAdherence;
use exercises::chart::{LegendEntry, groups, legend_entries};
use exercises::review::Review;
use wire::clinic::ReviewPage;

/// Largest length of a line, in characters.
const COLUMNS: usize = 84;

impl Words {
    /// The complete review, with its answers in the order of the questions.
    pub fn review_text(self, page: &ReviewPage) -> String {
        let names = Names::of(self, page);
        let mut page_text = PageText::default();
        page_text.plain(&match &page.name {
            Some(name) => self.code_with_name(&page.code, name),
            None => page.code.clone(),
        });
        page_text.plain(&self.review_head(page));
        self.review_covers(page).iter().for_each(|line| page_text.plain(line));
        self.review_notices(page).iter().for_each(|line| page_text.plain(line));
        for line in page.devices_to_name() {
            page_text.plain(&self.review_device(line));
            self.review_device_which(line).iter().for_each(|which| page_text.line(1, which));
        }
        if let Some(review) = &page.review {
            self.write_alarms(&mut page_text, review, names);
            self.write_done(&mut page_text, review, names);
            self.write_pain(&mut page_text, review, names);
            self.write_balance(&mut page_text, review, names);
            self.write_counts(&mut page_text, review, names);
            self.write_activities(&mut page_text, review, names);
            self.write_barriers(&mut page_text, review);
            self.write_next(&mut page_text, review, names);
            self.write_notes(&mut page_text, review);
        }
        page_text.text
    }

    fn heading(self, page_text: &mut PageText, question: ReviewQuestion, empty: bool) {
        page_text.heading(self.question(question));
        if empty {
            page_text.line(1, self.unanswered(question));
        }
    }

    fn write_alarms(self, page_text: &mut PageText, review: &Review, names: Names<'_>) {
        self.heading(page_text, ReviewQuestion::Alarms, review.alarms.is_empty());
        for alarm in &review.alarms {
            page_text.line(1, &self.review_alarm(alarm, names).line(self));
        }
        self.flares(review, names).iter().for_each(|line| page_text.line(1, line));
    }

    fn write_done(self, page_text: &mut PageText, review: &Review, names: Names<'_>) {
        self.heading(page_text, ReviewQuestion::Done, review.adherence.is_empty());
        let (exercise, care) = names.exercise_and_care(&review.adherence);
        self.write_items(page_text, review, &exercise, names);
        if !care.is_empty() {
            page_text.line(1, self.text(Key::ReviewCare));
            self.write_items(page_text, review, &care, names);
        }
        self.delay(&review.delays, review.start).iter().for_each(|line| page_text.line(1, line));
        page_text.line(1, &self.legend_entries(review));
    }

    fn write_items(self, page_text: &mut PageText, review: &Review, items: &[ItemAdherence], names: Names<'_>) {
        for item in items {
            let name = names.item(item.item);
            page_text.line(1, &if item.in_force { name } else { self.name_with_note(&name, self.no_longer()) });
            page_text.line(2, &self.adherence(item, review.start).line(self));
            self.half_days(item).iter().for_each(|line| page_text.line(2, line));
            self.broke_off(item, review.start).iter().for_each(|line| page_text.line(2, line));
            self.string_rows(&review.days, item.item).iter().for_each(|row| page_text.row(2, row));
            self.adherence_details(item, review.start).iter().for_each(|line| page_text.line(2, line));
        }
    }

    /// The meaning of those signs of [`Words::string_rows`] that occur.
    fn legend_entries(self, review: &Review) -> String {
        let said = |sign: LegendEntry| format!("{} {}", letter(sign), self.sign(sign));
        legend_entries(&review.days).into_iter().map(said).collect::<Vec<_>>().join("   ")
    }

    fn write_pain(self, page_text: &mut PageText, review: &Review, names: Names<'_>) {
        self.heading(page_text, ReviewQuestion::Pain, review.pain.is_empty());
        for series in &review.pain {
            page_text.line(1, &upper(&names.complaint(series.complaint)));
            page_text.line(2, &self.pain(series, review.start).line(self));
            self.pain_details(series, names, review.start).iter().for_each(|line| page_text.line(2, line));
            self.at_visits(&series.at_visits, review.start).iter().for_each(|line| page_text.line(2, line));
        }
        for series in review.during.iter().filter(|series| self.is_asked(series, names)) {
            page_text.line(1, &self.during(series, names, review.start));
        }
    }

    fn write_balance(self, page_text: &mut PageText, review: &Review, names: Names<'_>) {
        self.heading(page_text, ReviewQuestion::Balance, review.balance.is_empty() && review.baselines.is_empty());
        for group in groups(&review.balance) {
            page_text.line(1, &self.stance_conditions(&group, names));
            for series in &group.legs {
                page_text.line(2, &self.stance_of_leg(series));
                series.sway.iter().flat_map(|sway| self.sway_series(sway)).for_each(|line| page_text.line(3, &line));
            }
            self.against_norms_by_leg(&group.legs, review.start).iter().for_each(|line| page_text.line(2, line));
            let sides =
                review.sides.iter().filter(|sides| group.legs.iter().any(|leg| leg.conditions() == sides.conditions));
            sides.for_each(|sides| page_text.line(2, &self.side_to_side(&sides.sides)));
        }
        self.visit_stances(&review.baselines, review.start).iter().for_each(|line| page_text.line(1, line));
    }

    fn write_counts(self, page_text: &mut PageText, review: &Review, names: Names<'_>) {
        if review.counts.is_empty() {
            return;
        }
        self.heading(page_text, ReviewQuestion::Counts, false);
        for series in &review.counts {
            page_text.line(1, &self.count_conditions(series, names));
            page_text.line(2, &self.count_change(series).line(self));
            page_text.line(2, &self.count_days(series, review.start));
        }
    }

    fn write_activities(self, page_text: &mut PageText, review: &Review, names: Names<'_>) {
        self.heading(page_text, ReviewQuestion::Activities, review.activities.is_empty());
        for series in &review.activities {
            page_text.line(1, &upper(&names.activity(series.activity)));
            page_text.line(2, &self.activity_change(&series.change).line(self));
        }
        let together = review.activities_together.as_ref().map(|all| self.activities_together(all).line(self));
        together.iter().for_each(|line| page_text.line(1, line));
    }

    fn write_barriers(self, page_text: &mut PageText, review: &Review) {
        self.heading(page_text, ReviewQuestion::Barriers, review.barriers.is_empty());
        for (barrier, times) in &review.barriers {
            page_text.row(1, &format!("{times:>3}  {}", self.barrier(*barrier)));
        }
    }

    fn write_next(self, page_text: &mut PageText, review: &Review, names: Names<'_>) {
        self.heading(page_text, ReviewQuestion::Next, review.items.is_empty());
        for suggestion in &review.items {
            let words = self.suggestion(suggestion, names, review.start);
            page_text.line(1, &self.named_text(&names.item(suggestion.item), &words.line));
            page_text.line(2, &words.reason());
        }
        if !review.items.is_empty() {
            self.steps_at_once(review, names).iter().for_each(|line| page_text.line(1, line));
            page_text.line(1, self.proposals_only());
        }
    }

    fn write_notes(self, page_text: &mut PageText, review: &Review) {
        if !review.notes.is_empty() {
            self.heading(page_text, ReviewQuestion::Notes, false);
            review.notes.iter().for_each(|note| page_text.line(1, note));
        }
    }
}

#[derive(Default)]
struct PageText {
    text: String,
}

impl PageText {
    fn heading(&mut self, text: &str) {
        self.text.push('\n');
        self.plain(&text.to_uppercase());
    }

    fn plain(&mut self, text: &str) {
        self.line(0, text);
    }

    /// Appends a paragraph, indented by two spaces per level and wrapped between words.
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

    /// Appends a row unchanged.
    fn row(&mut self, level: usize, text: &str) {
        self.text.push_str(&" ".repeat(level * 2));
        self.text.push_str(text.trim_end());
        self.text.push('\n');
    }
}
