//! What was found at visits, in words.

use crate::date::upper;
use crate::{Key, Words};
use chrono::NaiveDate;
use exercises::catalogue::Region;
use exercises::plan::{BodySide, Side};
use exercises::visit::{
    Advice, Compared, Finding, Found, Measure, MeasureError, Measured, Moment, Screening, Visit, VisitFault, compare,
    measured_before,
};
use wire::visiting::VisitPage;

impl Words {
    /// What was found at all visits, the newest first.
    pub fn visits_text(self, page: &VisitPage) -> String {
        let mut lines = Vec::new();
        for visit in &page.visits {
            lines.push(self.date(visit.day));
            lines.extend(self.noted_by(visit).map(|line| format!("  {line}")));
            for found in &visit.found {
                lines.push(format!("  {:>3}  {}", found.n, self.found(page, visit, found)));
            }
        }
        if lines.is_empty() {
            lines.push(self.text(Key::VisitNothing).to_owned());
        }
        lines.extend((page.unreadable > 0).then(|| self.visit_unreadable(page.unreadable)));
        lines.join("\n")
    }

    /// Who noted what was found at a visit; `None` if nobody is known.
    pub fn noted_by(self, visit: &Visit) -> Option<String> {
        let names = visit.by();
        (!names.is_empty()).then(|| self.visit_noted_by(&self.list(&names)))
    }

    /// A finding as one line: "Turning the head, left, before treatment: 45°. +10° since 3 March."
    pub fn found(self, page: &VisitPage, visit: &Visit, found: &Found) -> String {
        let line = match &found.finding {
            Finding::Complaint(one) => {
                let place = self.place_of_body(one.region, one.side);
                let pain = self.visit_pain(one.score);
                if one.line.is_empty() {
                    self.named_text(&place, &pain)
                } else {
                    self.visit_complaint(&place, &one.line, &pain)
                }
            }
            Finding::Change(change) => {
                let score = self.overall_change(change.score);
                if change.words.is_empty() { score } else { self.visit_change_words(&score, &change.words) }
            }
            Finding::Measure(measure) => self.measured(page, visit, measure),
            Finding::Screening(screening) => {
                self.named_text(self.text(Key::VisitScreeningTitle), &self.screening(screening))
            }
            Finding::Note(note) => note.clone(),
            Finding::Overridden(one) => {
                let item = self.review_some_item(one.item.0);
                self.visit_overridden(&item, self.advice(one.proposed), &one.reason)
            }
        };
        // Of a visit with several clinicians, each finding says whose it is.
        let line = match &found.by {
            Some(name) if visit.by().len() > 1 => self.visit_found_by(&line, name),
            _ => line,
        };
        match found.corrected_by.as_ref().filter(|name| found.by.as_ref() != Some(name)) {
            Some(name) => self.visit_corrected_by(&line, name),
            None if found.corrected => self.visit_corrected(&line),
            None => line,
        }
    }

    /// "Lower back, left".
    pub fn place_of_body(self, region: Region, side: Side) -> String {
        let place = self.region(region).to_owned();
        match side {
            Side::Left | Side::Right | Side::Both => self.name_with_side(&place, self.side(side)),
            Side::Neither | Side::Alternating => place,
        }
    }

    fn measured(self, page: &VisitPage, visit: &Visit, measure: &Measure) -> String {
        let mut line = self.named_text(&upper(&self.measure_name(measure)), &self.measure_result(measure));
        let at_visit = before_treatment(visit, measure).filter(|_| measure.moment == Moment::After);
        let compared = match at_visit {
            Some(before) => Some((self.text(Key::VisitSinceBefore).to_owned(), before)),
            None => measured_before(&page.visits, measure, visit.day)
                .map(|(day, before)| (self.visit_since(&self.date(day)), before)),
        };
        if let Some((since, before)) = compared {
            let change = match compare(before, measure) {
                Some(compared) => self.difference(&measure.what, compared),
                None => self.text(Key::VisitNotComparable).to_owned(),
            };
            line = self.visit_measured_since(&line, &change, &since);
        }
        line
    }

    /// "turning the head, left, before treatment".
    pub fn measure_name(self, measure: &Measure) -> String {
        let side = measure.side.map(|side| self.body_side(side).to_owned());
        let moment = match measure.moment {
            Moment::Before => Some(self.text(Key::VisitBefore).to_owned()),
            Moment::After => Some(self.text(Key::VisitAfter).to_owned()),
            Moment::Once => None,
        };
        self.commas(&[Some(self.measured_what(&measure.what)), side, moment].into_iter().flatten().collect::<Vec<_>>())
    }

    /// "left".
    pub fn body_side(self, side: BodySide) -> &'static str {
        self.side(match side {
            BodySide::Left => Side::Left,
            BodySide::Right => Side::Right,
        })
    }

    /// "turning the head".
    pub fn measured_what(self, what: &Measured) -> String {
        match what {
            Measured::Pain { movement } => self.visit_pain_in(movement),
            Measured::Motion { movement } => movement.clone(),
            Measured::Grip => self.text(Key::VisitGrip).to_owned(),
            Measured::ChairRise => self.text(Key::VisitChairRise).to_owned(),
            Measured::Stance { surface, eyes } => self.commas(&[
                self.text(Key::VisitStance).to_owned(),
                self.surface(*surface).to_owned(),
                self.eyes(*eyes).to_owned(),
            ]),
            Measured::Other { name, .. } => name.clone(),
        }
    }

    /// "45°"; of several trials the best and the median.
    pub fn measure_result(self, measure: &Measure) -> String {
        let best = match measure.is_capped() {
            true => self.visit_at_least(&self.amount(&measure.what, measure.result())),
            false => self.amount(&measure.what, measure.result()),
        };
        match measure.tenths.len() {
            1 => best,
            n => self.visit_of_trials(&best, &self.amount(&measure.what, measure.median()), n as u8),
        }
    }

    /// "45°", "32.5 kg".
    pub fn amount(self, what: &Measured, tenths: i32) -> String {
        let number = self.number(f64::from(tenths) / 10.0);
        match what {
            Measured::Pain { .. } => self.visit_of_ten(number),
            Measured::Motion { .. } => self.visit_degrees(number),
            Measured::Grip => self.visit_kilograms(number),
            Measured::ChairRise => self.shown(number),
            Measured::Stance { .. } => self.visit_seconds(number),
            Measured::Other { unit, .. } if unit.is_empty() => self.shown(number),
            Measured::Other { unit, .. } => self.visit_unit(number, unit),
        }
    }

    /// "+10°", "-1, within measurement error (2 points)".
    pub fn difference(self, what: &Measured, compared: Compared) -> String {
        let sign = if compared.difference > 0 { "+" } else { "" };
        // Of pain the difference is in points, not of ten.
        let amount = match what {
            Measured::Pain { .. } => self.shown(self.number(f64::from(compared.difference) / 10.0)),
            what => self.amount(what, compared.difference),
        };
        let signed = format!("{sign}{amount}");
        match compared.error.filter(|_| compared.within_error) {
            Some(MeasureError::Pain) => self.visit_within(&signed, self.text(Key::VisitErrorPain)),
            Some(MeasureError::Stance) => self.visit_within(&signed, self.text(Key::VisitErrorStance)),
            None => signed,
        }
    }

    /// "osteoporosis. No fall in the last twelve months."
    fn screening(self, screening: &Screening) -> String {
        let flags: Vec<String> = screening.flags.iter().map(|flag| self.flag(*flag).to_owned()).collect();
        let flags = if flags.is_empty() { self.text(Key::VisitNoFlag).to_owned() } else { self.commas(&flags) };
        let fell = self.text(if screening.fell { Key::VisitFell } else { Key::VisitDidNotFall });
        self.visit_flags_and_falls(&flags, fell)
    }

    /// "-2: worse".
    pub fn overall_change(self, score: i8) -> String {
        let sign = if score > 0 { "+" } else { "" };
        self.visit_change(&format!("{sign}{}", self.shown(self.number(f64::from(score)))), self.change_word(score))
    }

    fn change_word(self, score: i8) -> &'static str {
        self.text(match score {
            4.. => Key::ChangeMuchBetter,
            2..=3 => Key::ChangeBetter,
            1 => Key::ChangeSlightlyBetter,
            0 => Key::ChangeNone,
            -1 => Key::ChangeSlightlyWorse,
            -3..=-2 => Key::ChangeWorse,
            ..=-4 => Key::ChangeMuchWorse,
        })
    }

    /// "+2, better", as an option.
    pub fn change_option(self, score: i8) -> String {
        let sign = if score > 0 { "+" } else { "" };
        self.commas(&[format!("{sign}{}", self.shown(self.number(f64::from(score)))), self.change_word(score).to_owned()])
    }

    /// The name of a kind of measure, by its name in the terminal.
    pub fn measure_kind(self, kind: &str) -> &'static str {
        self.text(match kind {
            "pain" => Key::VisitKindPain,
            "motion" => Key::VisitKindMotion,
            "grip" => Key::VisitKindGrip,
            "chair-rise" => Key::VisitKindChairRise,
            "stance" => Key::VisitKindStance,
            _ => Key::VisitKindOther,
        })
    }

    /// "3 March: osteoporosis. No fall in the last twelve months."
    pub fn screened_on(self, day: NaiveDate, screening: &Screening) -> String {
        self.named_text(&self.date(day), &self.screening(screening))
    }

    /// "3 findings".
    pub fn findings(self, n: usize) -> String {
        self.visit_findings(n)
    }

    /// "Progress".
    pub fn advice(self, advice: Advice) -> &'static str {
        self.text(match advice {
            Advice::Talk => Key::ReviewStopAndTalk,
            Advice::Ease => Key::ReviewEase,
            Advice::Reduce => Key::ReviewAskLess,
            Advice::Progress => Key::ReviewProgress,
            Advice::Keep => Key::ReviewKeep,
        })
    }

    pub(crate) fn visit_fault(self, fault: VisitFault) -> String {
        match fault {
            VisitFault::Text { most } => self.failure_visit_text(most),
            VisitFault::Value { least, most } => self.failure_visit_value(least, most),
            VisitFault::Trials => self.text(Key::FailureVisitTrials).to_owned(),
            VisitFault::Side => self.text(Key::FailureVisitSide).to_owned(),
        }
    }
}

/// What was measured of the same before treatment, at the same visit.
fn before_treatment<'a>(visit: &'a Visit, measure: &Measure) -> Option<&'a Measure> {
    visit.found.iter().find_map(|found| match &found.finding {
        Finding::Measure(one) if one.moment == Moment::Before && one.is_like(measure) => Some(one),
        _ => None,
    })
}
