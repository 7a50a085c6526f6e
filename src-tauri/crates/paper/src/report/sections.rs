//! The chapters that are lines of text.

use super::Making;
use crate::style;
use exercises::chart::groups;
use exercises::id::ItemId;
use exercises::visit::{Finding, Visit, last_screening};
use words::Key;
use words::review::{ReviewQuestion, upper};

/// Most findings of one visit in a report of one or two pages. How many more there are is said.
const MOST_LINES: usize = 12;

impl Making<'_> {
    /// Alarms and stretches of clearly more pain: they come first.
    pub(super) fn alarms(&mut self) {
        let (words, names) = (self.words, self.names);
        let mut lines = Vec::new();
        if let Some(review) = &self.given.page.review {
            lines.extend(review.alarms.iter().map(|alarm| words.review_alarm(alarm, names).line(words)));
            lines.extend(words.flares(review, names));
        }
        let heading = if lines.is_empty() { style::CHAPTER } else { style::CHAPTER_ALARM };
        if lines.is_empty() {
            lines.push(words.unanswered(ReviewQuestion::Alarms).to_owned());
        }
        self.styled_chapter(heading, words.question(ReviewQuestion::Alarms), &lines);
    }

    /// Each answer in a word and a figure.
    pub(super) fn in_short(&mut self) {
        let (words, names) = (self.words, self.names);
        let Some(review) = &self.given.page.review else { return };
        let strip = words.review_strip(review, names).into_iter();
        let cell = |cell: words::review::StripCell| {
            let said = [cell.word, cell.figure];
            words.named_text(cell.title, &words.as_sentences(&said.iter().filter(|one| !one.is_empty()).collect::<Vec<_>>()))
        };
        // The alarms stand above in full, and what was not measured is no answer.
        let told = |cell: &words::review::StripCell| {
            let title = |key| cell.title == words.text(key);
            !title(Key::ReviewStripAlarms) && (!title(Key::ReviewStripBalance) || !review.balance.is_empty())
        };
        let lines: Vec<String> = strip.filter(told).map(cell).collect();
        self.chapter(words.text(Key::ReportInShort), &lines);
    }

    /// Pain of each complaint with the smallest change that counts, and while exercising.
    pub(super) fn pain(&mut self) {
        let (words, names) = (self.words, self.names);
        let Some(review) = &self.given.page.review else { return };
        let mut lines = Vec::new();
        for series in &review.pain {
            let said = [words.pain(series, review.start).line(words)];
            let all = said.into_iter().chain(words.pain_details(series, names, review.start));
            let all: Vec<String> = all.chain(words.at_visits(&series.at_visits, review.start)).collect();
            lines.push(words.named_text(&upper(&names.complaint(series.complaint)), &words.as_sentences(&all)));
        }
        let asked = review.during.iter().filter(|series| !series.points.is_empty());
        lines.extend(asked.map(|series| words.during(series, names, review.start)));
        for series in &review.activities {
            let said = words.activity_change(&series.change).line(words);
            lines.push(words.named_text(&upper(&names.activity(series.activity)), &said));
        }
        lines.extend(review.activities_together.as_ref().map(|all| words.activities_together(all).line(words)));
        if lines.is_empty() {
            lines.push(words.unanswered(ReviewQuestion::Pain).to_owned());
        }
        self.chapter(words.text(Key::ReportPain), &lines);
    }

    /// Balance, sway and tests by repetitions, as they were measured at home.
    pub(super) fn working(&mut self) {
        let (words, names) = (self.words, self.names);
        let Some(review) = &self.given.page.review else { return };
        let mut lines = Vec::new();
        for group in groups(&review.balance) {
            let mut said: Vec<String> = group.legs.iter().map(|series| words.stance_of_leg(series)).collect();
            said.extend(
                group.legs.iter().filter_map(|series| series.sway.as_ref()).flat_map(|sway| words.sway_series(sway)),
            );
            said.extend(words.against_norms_by_leg(&group.legs, review.start));
            let of = |sides: &&exercises::review::Sides| group.legs.iter().any(|leg| leg.conditions() == sides.conditions);
            said.extend(review.sides.iter().filter(of).map(|sides| words.side_to_side(&sides.sides)));
            lines.push(words.named_text(&words.stance_conditions(&group, names), &words.as_sentences(&said)));
        }
        lines.extend(words.visit_stances(&review.baselines, review.start));
        for series in &review.counts {
            let said = [words.count_change(series).line(words), words.count_days(series, review.start)];
            lines.push(words.named_text(&words.count_conditions(series, names), &words.as_sentences(&said)));
        }
        self.chapter(words.text(Key::ReportMeasuredAtHome), &lines);
    }

    /// What got in the way.
    pub(super) fn barriers(&mut self) {
        let words = self.words;
        let Some(review) = self.given.page.review.as_ref().filter(|review| !review.barriers.is_empty()) else { return };
        let one = |(barrier, times): &(exercises::log::Barrier, u16)| words.report_times(words.barrier(*barrier), *times);
        let all: Vec<String> = review.barriers.iter().map(one).collect();
        self.chapter(words.question(ReviewQuestion::Barriers), &[words.commas(&all)]);
    }

    /// What was found at the last visit, compared with before.
    pub(super) fn last_visit(&mut self) {
        let Some(visit) = self.given.visits.visits.first() else { return };
        self.visit(visit, MOST_LINES);
    }

    /// What was found at each visit, the newest first.
    pub(super) fn all_visits(&mut self) {
        self.given.visits.visits.iter().for_each(|visit| self.visit(visit, usize::MAX));
    }

    fn visit(&mut self, visit: &Visit, most: usize) {
        let (words, visits) = (self.words, self.given.visits);
        let found = visit.found.iter().filter(|found| !matches!(found.finding, Finding::Overridden(_)));
        let found = found.map(|found| words.found(visits, visit, found));
        let mut lines: Vec<String> = words.noted_by(visit).into_iter().chain(found).collect();
        let more = lines.len().saturating_sub(most);
        lines.truncate(most);
        lines.extend((more > 0).then(|| words.report_more_found(more)));
        self.chapter(&words.report_found_on(&words.date(visit.day)), &lines);
    }

    /// What the plan in force has that the one before it had not: what was decided when it was issued.
    pub(super) fn decided(&mut self) {
        let (words, given) = (self.words, self.given);
        let Some((before, plan)) = given.page.earlier.first().zip(given.plan) else { return };
        let lines = words.plan_changes(before, plan, &given.page.exercises);
        self.chapter(&words.report_decided_on(&words.date(plan.header.issued)), &lines);
    }

    /// What the rules propose, and what the clinician decided instead.
    pub(super) fn next(&mut self) {
        let (words, names) = (self.words, self.names);
        let Some(review) = self.given.page.review.as_ref().filter(|review| !review.items.is_empty()) else { return };
        let visit = self.given.visits.visits.first();
        let mut lines = Vec::new();
        for suggestion in &review.items {
            let said = words.suggestion(suggestion, names, review.start);
            let mut line = words.named_text(&names.item(suggestion.item), &said.line);
            let decided = visit.and_then(|visit| overridden(visit, suggestion.item));
            if let Some(reason) = decided.map(|(advice, reason)| words.report_decided(words.advice(advice), reason)) {
                line = words.as_sentences(&[line, reason]);
            } else if let Some(reason) = said.reasons.first() {
                line = words.as_sentences(&[line, reason.clone()]);
            }
            lines.push(line);
        }
        self.chapter(words.text(Key::ReportProposed), &lines);
    }

    /// What to think of with the patient.
    pub(super) fn cautions(&mut self) {
        let (words, visits) = (self.words, self.given.visits);
        let flags: Vec<String> = visits.flags.iter().map(|flag| words.flag(*flag).to_owned()).collect();
        let mut lines: Vec<String> =
            (!flags.is_empty()).then(|| words.at_line_start(&words.commas(&flags))).into_iter().collect();
        // Without a plan all visits are told, and with them every screening.
        let told = |day| self.given.plan.is_none() || visits.visits[0].day == day;
        if let Some((day, screening)) = last_screening(&visits.visits).filter(|(day, _)| !told(*day)) {
            let said = words.screened_on(day, screening);
            lines.push(words.named_text(words.text(Key::VisitScreeningTitle), &said));
        }
        let items = || self.given.plan.into_iter().flat_map(|plan| &plan.prescription.items);
        let helped: Vec<String> = items().filter(|item| item.with_helper).map(|item| self.names.item(item.id)).collect();
        lines.extend((!helped.is_empty()).then(|| words.report_with_helper(&words.list(&helped))));
        let limits = items().filter(|item| item.dose.kind().rules().asks_pain()).map(|item| item.pain_limit);
        if let (Some(least), Some(most)) = (limits.clone().min(), limits.max()) {
            let same = least == most;
            lines.push(if same { words.report_pain_limit(most) } else { words.report_pain_limits(least, most) });
        }
        self.chapter(words.text(Key::ReportCautions), &lines);
    }
}

/// The clinician's last word on an item at a visit.
fn overridden(visit: &Visit, item: ItemId) -> Option<(exercises::visit::Advice, &str)> {
    visit.found.iter().rev().find_map(|found| match &found.finding {
        Finding::Overridden(one) if one.item == item => Some((one.proposed, one.reason.as_str())),
        _ => None,
    })
}
