//! Is the plan working: published times for comparison with a person's own, or the reason why there are none.

use crate::{Key, Words};
use chrono::NaiveDate;
use exercises::catalogue::Arms;
use exercises::catalogue::Feet;
use exercises::norms::{
    Ages, Cap, Caveat, ClinicRow, ClinicTable, Comparison, Condition, Conditions, NormComparison, Published, Statistic,
    WhyNot,
};
use exercises::review::{AgainstNorms, StanceSeries};

impl Words {
    /// Both figures with source and caveats, or one short sentence why there is no comparison.
    pub fn against_norms(self, norms: &AgainstNorms, start: NaiveDate) -> String {
        match &norms.comparison {
            Comparison::Beside(beside) => self.beside(beside, norms, start),
            Comparison::Not(reasons) => self.review_norm_none(&self.why_not(reasons)),
        }
    }

    /// One line for each leg; a single line if no norm applies to either leg for the same reason.
    pub fn against_norms_by_leg(self, legs: &[StanceSeries], start: NaiveDate) -> Vec<String> {
        let said: Vec<String> = legs.iter().map(|leg| self.against_norms(&leg.norms, start)).collect();
        match said.split_first() {
            Some((first, others)) if others.iter().all(|other| other == first) && !first.is_empty() => vec![first.clone()],
            _ => legs.iter().zip(said).map(|(leg, said)| self.named_text(&self.leg_or_both(leg.leg), &said)).collect(),
        }
    }

    /// The clinic's table: its source, then one line per row; or that there is none.
    pub fn norms_kept(self, table: Option<&ClinicTable>) -> Vec<String> {
        let Some(table) = table else { return vec![self.text(Key::ReviewNormsNone).to_owned()] };
        let head = self.review_norms_source(table.rows.len(), &table.source);
        std::iter::once(head).chain(table.rows.iter().map(|row| self.norm_row(row))).collect()
    }

    /// The result of removing the clinic's table.
    pub fn norms_removed(self, was: bool) -> &'static str {
        self.text(if was { Key::ReviewNormsRemoved } else { Key::ReviewNormsNone })
    }

    fn beside(self, beside: &NormComparison, norms: &AgainstNorms, start: NaiveDate) -> String {
        let row = &beside.row;
        let ages = row.conditions.ages.map(|ages| self.ages(ages)).unwrap_or_default();
        let people = row.people.map(|n| self.list_comma("", &self.review_norm_people(n))).unwrap_or_default();
        let head = self.review_norm_comparison(
            &self.date(norms.day.date(start)),
            &self.statistic(norms.own.statistic),
            self.number(beside.own_s),
            &self.published(row.published),
            &ages,
            &people,
            row.source.trim_end_matches('.'),
        );
        let caveats = beside.caveats.iter().map(|caveat| match caveat {
            Caveat::SkewLiftsTheMean => Key::ReviewNormSkew,
            Caveat::PublishedNearCap => Key::ReviewNormNearCap,
            Caveat::OwnAtCap => Key::ReviewNormOwnAtCap,
        });
        let said = std::iter::once(Key::ReviewNormNoVerdict).chain(caveats).map(|key| self.text(key).to_owned());
        self.sentences(&std::iter::once(head).chain(said).collect::<Vec<_>>())
    }

    /// Combines reasons of one kind: "not known of these attempts: feet, arms".
    fn why_not(self, reasons: &[WhyNot]) -> String {
        let of = |line: fn(Words, &str) -> String, pick: fn(&WhyNot) -> Option<Condition>| {
            let what: Vec<&str> = reasons.iter().filter_map(pick).map(|condition| self.condition(condition)).collect();
            (!what.is_empty()).then(|| line(self, &self.commas(&what)))
        };
        let whole = reasons.iter().find_map(|reason| match reason {
            WhyNot::NotATime => Some(Key::ReviewNormNotATime),
            WhyNot::OtherStand => Some(Key::ReviewNormOther),
            WhyNot::SoftSurface => Some(Key::ReviewNormSoft),
            WhyNot::OnlyUnchecked => Some(Key::ReviewNormUnchecked),
            WhyNot::NoRow => Some(Key::ReviewNormNoRow),
            WhyNot::NotKnown(_) | WhyNot::NotStated(_) | WhyNot::Differs(_) => None,
        });
        let differs =
            of(Words::review_norm_differs, |one| if let WhyNot::Differs(condition) = one { Some(*condition) } else { None });
        let unknown =
            of(
                Words::review_norm_not_known,
                |one| if let WhyNot::NotKnown(condition) = one { Some(*condition) } else { None },
            );
        let unsaid =
            of(
                Words::review_norm_not_stated,
                |one| if let WhyNot::NotStated(condition) = one { Some(*condition) } else { None },
            );
        let whole = whole.map(|say| self.text(say).to_owned());
        self.semicolons(&[whole, differs, unknown, unsaid].into_iter().flatten().collect::<Vec<_>>())
    }

    fn condition(self, condition: Condition) -> &'static str {
        self.text(match condition {
            Condition::Age => Key::ReviewNormAge,
            Condition::Eyes => Key::ReviewNormEyes,
            Condition::Surface => Key::ReviewNormSurface,
            Condition::Feet => Key::ReviewNormFeet,
            Condition::Arms => Key::ReviewNormArms,
            Condition::Statistic => Key::ReviewNormStatistic,
            Condition::Cap => Key::ReviewNormWhenAttemptEnds,
        })
    }

    fn published(self, published: Published) -> String {
        match published {
            Published::Mean { mean_s, sd_s: None } => self.review_norm_mean(self.number(mean_s)),
            Published::Mean { mean_s, sd_s: Some(sd_s) } => self.review_norm_mean_sd(self.number(mean_s), self.number(sd_s)),
            Published::Median { median_s } => self.review_norm_median(self.number(median_s)),
        }
    }

    fn statistic(self, statistic: Statistic) -> String {
        match statistic {
            Statistic::BestOf(n) => self.review_norm_best_of(n),
            Statistic::MeanOf(n) => self.review_norm_mean_of(n),
            Statistic::MedianOf(n) => self.review_norm_median_of(n),
        }
    }

    fn ages(self, ages: Ages) -> String {
        match ages.to {
            Some(to) => self.review_norm_ages(ages.from, to),
            None => self.review_norm_ages_from(ages.from),
        }
    }

    /// "a mean of 21.5 s: 40 to 49 years, eyes open, firm floor, ..."; conditions that are not stated are left out.
    fn norm_row(self, row: &ClinicRow) -> String {
        let Conditions { ages, eyes, surface, feet, arms, statistic, cap } = row.conditions;
        let feet = feet.map(|feet| match feet {
            Feet::Bare => Key::ReviewNormBare,
            Feet::Covered => Key::ReviewNormCovered,
        });
        let arms = arms.map(|arms| match arms {
            Arms::Crossed => Key::ReviewNormCrossed,
            Arms::OnHips => Key::ReviewNormOnHips,
            Arms::Free => Key::ReviewNormFree,
            Arms::HandInUse => Key::ReviewNormHandInUse,
        });
        let cap = cap.map(|cap| match cap {
            Cap::Seconds(s) => self.review_norm_cap(s),
            Cap::None => self.text(Key::ReviewNormNoCap).to_owned(),
        });
        let said = [
            ages.map(|ages| self.ages(ages)),
            eyes.map(|eyes| self.eyes(eyes).to_owned()),
            surface.map(|surface| self.surface(surface).to_owned()),
            feet.map(|say| self.text(say).to_owned()),
            arms.map(|say| self.text(say).to_owned()),
            statistic.map(|statistic| self.statistic(statistic)),
            cap,
            row.people.map(|n| self.review_norm_people(n)),
        ];
        let conditions = self.commas(&said.into_iter().flatten().collect::<Vec<_>>());
        if conditions.is_empty() {
            return self.published(row.published);
        }
        self.review_norm_row_line(&self.published(row.published), &conditions)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::Locale;
    use exercises::catalogue::{Eyes, Surface};
    use exercises::norms::{Evidence, Measured, NormRow};
    use exercises::time::DayNumber;

    const EN: Words = Words::new(Locale::En);
    const ES: Words = Words::new(Locale::Es);

    fn start() -> NaiveDate {
        NaiveDate::from_ymd_opt(2026, 11, 25).expect("a date")
    }

    fn conditions() -> Conditions {
        Conditions {
            ages: Some(Ages { from: 40, to: Some(49) }),
            eyes: Some(Eyes::Open),
            surface: Some(Surface::Firm),
            feet: Some(Feet::Bare),
            arms: Some(Arms::Crossed),
            statistic: Some(Statistic::BestOf(3)),
            cap: Some(Cap::Seconds(30)),
        }
    }

    fn against(comparison: Comparison) -> AgainstNorms {
        let own = Measured {
            seconds: 30.0,
            age: None,
            eyes: Eyes::Open,
            surface: Surface::Firm,
            feet: None,
            arms: None,
            statistic: Statistic::BestOf(3),
            cap: Cap::Seconds(30),
        };
        AgainstNorms { day: DayNumber(1), own, comparison }
    }

    fn beside() -> AgainstNorms {
        let row = NormRow {
            source: "Invented list".into(),
            evidence: Evidence::Seen,
            conditions: conditions(),
            people: Some(12),
            published: Published::Mean { mean_s: 27.5, sd_s: Some(4.0) },
        };
        let caveats = vec![Caveat::SkewLiftsTheMean, Caveat::PublishedNearCap, Caveat::OwnAtCap];
        against(Comparison::Beside(Box::new(NormComparison { own_s: 30.0, row, caveats })))
    }

    #[test]
    fn both_figures_are_shown_with_source_and_caveats() {
        assert_eq!(
            EN.against_norms(&beside(), start()),
            "On 26 November, best of 3 attempts: 30 s. For comparison: a mean of 27.5 s, standard deviation 4 s (40 to 49 years, \
             12 people). Source: Invented list. Measured in the same way. This gives no rank and no risk. Such times are skewed: \
             more than half of a healthy group are usually below the mean. The published figure is close to the time at which \
             attempts end, which cuts longer times. The patient's own time ended with the attempt and may be longer."
        );
        let said = ES.against_norms(&beside(), start());
        assert!(said.contains("el mejor de 3 intentos: 30 s. Para comparar: una media de 27,5 s"), "{said}");
        for (words, judged) in [(EN, ["percentile", "normal", "below average"]), (ES, ["percentil", "normal", "inferior"])] {
            let said = words.against_norms(&beside(), start()).to_lowercase();
            assert!(judged.iter().all(|word| !said.contains(word)), "{said}");
        }
    }

    #[test]
    fn if_no_norm_applies_one_sentence_says_why() {
        let reasons = vec![
            WhyNot::NotKnown(Condition::Feet),
            WhyNot::NotStated(Condition::Cap),
            WhyNot::Differs(Condition::Arms),
            WhyNot::NotKnown(Condition::Age),
        ];
        assert_eq!(
            EN.against_norms(&against(Comparison::Not(reasons)), start()),
            "No published times for comparison: different in the closest source: arms; not known of these attempts: feet, age; \
             not stated by the closest source: when an attempt ends."
        );
        for reason in [WhyNot::NotATime, WhyNot::OtherStand, WhyNot::SoftSurface, WhyNot::OnlyUnchecked, WhyNot::NoRow] {
            for words in [EN, ES] {
                let said = words.against_norms(&against(Comparison::Not(vec![reason])), start());
                assert!(said.ends_with('.') && !said.contains(": .") && !said.contains('{'), "{said}");
            }
        }
    }

    #[test]
    fn the_stored_table_is_shown_row_by_row() {
        let open = Conditions { ages: Some(Ages { from: 80, to: None }), eyes: None, surface: None, ..conditions() };
        let table = ClinicTable {
            source: "Invented list".into(),
            rows: vec![
                ClinicRow { conditions: conditions(), people: None, published: Published::Median { median_s: 21.5 } },
                ClinicRow { conditions: open, people: Some(1), published: Published::Mean { mean_s: 4.0, sd_s: None } },
            ],
        };
        assert_eq!(
            EN.norms_kept(Some(&table)),
            [
                "2 rows. Source: Invented list",
                "a median of 21.5 s: 40 to 49 years, eyes open, firm floor, bare feet, arms crossed on the chest, best of 3 \
                 attempts, attempts end at 30 s",
                "a mean of 4 s: 80 years and over, bare feet, arms crossed on the chest, best of 3 attempts, attempts end at \
                 30 s, 1 person",
            ]
        );
        assert_eq!(EN.norms_kept(None), [EN.norms_removed(false)]);
    }
}
