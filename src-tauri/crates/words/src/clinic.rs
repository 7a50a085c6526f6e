//! Sentences of the clinic's side, made from domain values.

use crate::date::names_of;
use crate::{Key, Words};
use chrono::Weekday;
use exercises::catalogue::{Exercise, Region};
use exercises::draft::{DaysKind, TypedField};
use exercises::id::ItemId;
use exercises::plan::check::Problem;
use exercises::plan::{AgeBand, DueSession, Pattern, Prescription, full_day};
use std::cmp::Ordering;
use wire::clinic::PassphraseStrength;

impl Words {
    /// "Neck and upper back".
    pub fn region(self, region: Region) -> &'static str {
        self.text(match region {
            Region::NeckUpperBack => Key::RegionNeckUpperBack,
            Region::Shoulder => Key::RegionShoulder,
            Region::Elbow => Key::RegionElbow,
            Region::WristHand => Key::RegionWristHand,
            Region::LowBack => Key::RegionLowBack,
            Region::Hip => Key::RegionHip,
            Region::Knee => Key::RegionKnee,
            Region::Ankle => Key::RegionAnkle,
            Region::General => Key::RegionGeneral,
        })
    }

    /// "Easy to guess".
    pub fn passphrase_strength(self, strength: PassphraseStrength) -> &'static str {
        self.text(match strength {
            PassphraseStrength::TooShort => Key::StrengthTooShort,
            PassphraseStrength::Guessable => Key::StrengthGuessable,
            PassphraseStrength::Good => Key::StrengthGood,
            PassphraseStrength::Strong => Key::StrengthStrong,
        })
    }

    /// "40 to 49".
    pub fn age(self, band: AgeBand) -> String {
        match band.ages() {
            (0, _) => self.text(Key::AgeUnder18).to_owned(),
            (_, None) => self.text(Key::AgeFrom80).to_owned(),
            (from, Some(to)) => self.age_between(from, to),
        }
    }

    /// "Every so many days", as one of the choices.
    pub fn days_kind(self, kind: DaysKind) -> &'static str {
        self.text(match kind {
            DaysKind::OnWeekdays => Key::DaysOnWeekdays,
            DaysKind::EveryNth => Key::DaysEveryNth,
            DaysKind::TimesAWeek => Key::DaysTimesAWeek,
        })
    }

    /// "Mon".
    pub fn weekday_short(self, day: Weekday) -> String {
        self.text(names_of(day).1).to_owned()
    }

    /// "A full day: 11 sessions, about 14 minutes." `None` for an empty plan.
    pub fn full_day(self, prescription: &Prescription, exercises: &[Exercise]) -> Option<String> {
        self.full_day_of(&full_day(&prescription.items, exercises))
    }

    /// The same for the sessions of a day; `None` if there are none.
    pub fn full_day_of(self, day: &[DueSession]) -> Option<String> {
        let seconds = day.iter().map(|session| session.seconds).sum();
        (!day.is_empty()).then(|| self.full_day_line(day.len(), &self.takes_inline(seconds)))
    }
}

/// The item that a problem concerns; `None` for a problem of the whole plan.
pub fn item_of(problem: &Problem) -> Option<ItemId> {
    match problem {
        Problem::UnknownExercise(item, _)
        | Problem::OtherContent(item, _)
        | Problem::UnknownRung(item, _)
        | Problem::Dose(item)
        | Problem::TooMuchWork(item, _)
        | Problem::Side(item)
        | Problem::Schedule(item)
        | Problem::OnceADay(item)
        | Problem::Load(item)
        | Problem::Phase(item)
        | Problem::Overlap(item, _)
        | Problem::Serves(item)
        | Problem::NoStanceBaseline(item)
        | Problem::StanceTooShort(item)
        | Problem::GateClosed(item)
        | Problem::SoftAndClosed(item) => Some(*item),
        Problem::NoItem
        | Problem::TooMany
        | Problem::Text { .. }
        | Problem::SameNumber
        | Problem::ReviewDate
        | Problem::AgeMissing
        | Problem::NotTicked(_)
        | Problem::NotConfirmed(_) => None,
    }
}

/// The part of the plan editor in which a problem is corrected.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum PlanSection {
    /// The item.
    Item(ItemId),
    /// "Balance at home".
    Balance,
    /// The complaints and activities.
    Named,
    /// The aftercare.
    Aftercare,
    /// The next visit's date.
    Visit,
    /// The button that issues the plan.
    Whole,
}

/// The part of the plan editor in which `problem` is corrected.
pub fn section_of(problem: &Problem) -> PlanSection {
    use exercises::plan::check::TextPlace;
    match problem {
        Problem::AgeMissing
        | Problem::NotTicked(_)
        | Problem::NotConfirmed(_)
        | Problem::NoStanceBaseline(_)
        | Problem::StanceTooShort(_) => PlanSection::Balance,
        Problem::Text { what: TextPlace::Complaint | TextPlace::Activity, .. } => PlanSection::Named,
        Problem::Text { what: TextPlace::Aftercare, .. } => PlanSection::Aftercare,
        Problem::ReviewDate => PlanSection::Visit,
        other => item_of(other).map_or(PlanSection::Whole, PlanSection::Item),
    }
}

impl Words {
    /// Why a plan cannot be issued, for a place where the item is already named.
    pub fn problem_here(self, problem: &Problem) -> String {
        let key = match problem {
            Problem::UnknownExercise(..) | Problem::OtherContent(..) => Key::ProblemUnknown,
            Problem::UnknownRung(..) => Key::ProblemLevel,
            Problem::Dose(_) => Key::ProblemDose,
            Problem::Side(_) => Key::ProblemSide,
            Problem::Schedule(_) => Key::ProblemSchedule,
            Problem::OnceADay(_) => Key::ProblemOnceADay,
            Problem::Load(_) => Key::ProblemLoad,
            Problem::Phase(_) => Key::ProblemPhase,
            Problem::Overlap(..) => Key::ProblemOverlap,
            Problem::Serves(_) => Key::ProblemComplaintGone,
            Problem::NoStanceBaseline(_) => Key::ProblemStance,
            Problem::StanceTooShort(_) => Key::ProblemStanceShort,
            Problem::GateClosed(_) => Key::ProblemGate,
            Problem::SoftAndClosed(_) => Key::ProblemSoftClosed,
            Problem::TooMuchWork(_, seconds) => return self.problem_too_much_work(seconds / 60),
            Problem::NotTicked(risks) => return self.problem_ticks(risks.len()),
            whole => return self.problem(whole),
        };
        self.text(key).to_owned()
    }

    /// The same preceded by the item's name, for a list of all problems.
    pub fn problem_named(self, problem: &Problem, name: impl Fn(ItemId) -> String) -> String {
        let here = self.problem_here(problem);
        item_of(problem).map_or_else(|| here.clone(), |item| self.named_text(&name(item), &here))
    }
}

impl Words {
    /// Why a field's input cannot be used and what to write instead, for a place where the field is already named.
    pub fn unread(self, field: TypedField, typed: &str) -> String {
        let typed = typed.trim();
        match field {
            TypedField::Times(_) if typed.is_empty() => self.text(Key::UnreadTimesNone).to_owned(),
            TypedField::Times(_) => self.unread_times(typed),
            TypedField::Stance(_) => self.unread_stance(typed),
            TypedField::Visit => self.text(Key::UnreadVisit).to_owned(),
        }
    }

    /// The same preceded by the item or leg, for a list of all problems.
    pub fn unread_named(self, field: TypedField, typed: &str, name: impl Fn(ItemId) -> String) -> String {
        let place = match field {
            TypedField::Times(item) => name(item),
            TypedField::Stance(leg) => crate::upper(self.leg(leg)),
            TypedField::Visit => return self.unread(field, typed),
        };
        self.unread_here(&place, &self.unread(field, typed))
    }

    /// A hint at a possible mistake: a window that ends before it begins goes through the night. `None` if it does not.
    pub fn through_the_night(self, pattern: &Pattern) -> Option<String> {
        let Pattern::Every { from, to, .. } = pattern else { return None };
        let (begins, ends) = (self.minute(*from), self.minute(*to));
        match to.cmp(from) {
            Ordering::Greater => None,
            Ordering::Equal => Some(self.round_the_clock(&begins)),
            Ordering::Less => Some(self.over_midnight(&begins, &ends)),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::Locale;
    use exercises::plan::{BodySide, Risk};

    #[test]
    fn input_that_cannot_be_read_is_quoted_and_its_field_named() {
        let words = Words::new(Locale::En);
        let name = |_| "Wall sit".to_owned();
        assert_eq!(
            words.unread_named(TypedField::Times(ItemId(7)), " 8am 7pn ", name),
            "Wall sit: The times “8am 7pn” cannot be read. Write them like 8:00, 13:00, 18:00."
        );
        assert_eq!(words.unread(TypedField::Times(ItemId(7)), "  "), words.text(Key::UnreadTimesNone));
        for locale in Locale::ALL {
            let said = Words::new(*locale).unread_named(TypedField::Stance(BodySide::Left), "900", name);
            assert!(said.contains("900") && said.contains("600") && !said.contains("Wall sit"), "{said}");
        }
    }

    #[test]
    fn a_window_through_the_night_gives_a_hint_and_one_within_a_day_does_not() {
        let words = Words::new(Locale::En);
        let said =
            |from: u16, to: u16| words.through_the_night(&Pattern::Every { minutes: 60, from: from * 60, to: to * 60 });
        assert_eq!(said(9, 17), None);
        assert_eq!(said(17, 9).as_deref(), Some("This goes through the night: from 17:00 to 09:00 on the next day."));
        assert_eq!(said(8, 8).as_deref(), Some("This goes round the clock, day and night, from 08:00."));
        assert_eq!(words.through_the_night(&Pattern::At { times: vec![1300, 60] }), None);
    }

    #[test]
    fn a_problem_of_an_item_is_described_without_its_number() {
        let item = ItemId(7);
        let of_item = [
            Problem::UnknownExercise(item, "x".into()),
            Problem::UnknownRung(item, String::new()),
            Problem::Dose(item),
            Problem::TooMuchWork(item, 300),
            Problem::Side(item),
            Problem::Schedule(item),
            Problem::OnceADay(item),
            Problem::Load(item),
            Problem::Phase(item),
            Problem::Overlap(item, ItemId(3)),
            Problem::Serves(item),
            Problem::NoStanceBaseline(item),
            Problem::StanceTooShort(item),
            Problem::GateClosed(item),
            Problem::SoftAndClosed(item),
        ];
        for locale in Locale::ALL {
            for problem in &of_item {
                let text = Words::new(*locale).problem_here(problem);
                assert!(!text.contains('7'), "{text}");
                assert!(Words::new(*locale).problem_named(problem, |_| "Wall sit".into()).starts_with("Wall sit: "));
                assert_eq!(item_of(problem), Some(item));
            }
        }
    }

    #[test]
    fn a_problem_is_corrected_where_its_field_is() {
        assert_eq!(section_of(&Problem::NotTicked(vec![Risk::NumbFeet])), PlanSection::Balance);
        assert_eq!(section_of(&Problem::NoStanceBaseline(ItemId(1))), PlanSection::Balance);
        assert_eq!(section_of(&Problem::GateClosed(ItemId(1))), PlanSection::Item(ItemId(1)));
        assert_eq!(section_of(&Problem::ReviewDate), PlanSection::Visit);
        assert_eq!(section_of(&Problem::NoItem), PlanSection::Whole);
    }

    #[test]
    fn all_age_groups_have_different_texts() {
        let told: std::collections::BTreeSet<String> =
            AgeBand::ALL.into_iter().map(|band| Words::new(Locale::En).age(band)).collect();
        assert_eq!(told.len(), AgeBand::ALL.len());
    }
}
