//! Sentences of the clinic's side, made of domain values.

use crate::date::WEEKDAYS;
use crate::{Key, Words};
use exercises::catalogue::{Dose, Exercise, Quantity, Region};
use exercises::id::ItemId;
use exercises::plan::check::Problem;
use exercises::plan::{AgeBand, Plan};

impl Words {
    /// "Neck and upper back".
    pub fn region(self, region: Region) -> &'static str {
        self.text(match region {
            Region::NeckUpperBack => Key::RegionNeckUpperBack,
            Region::Shoulder => Key::RegionShoulder,
            Region::WristHand => Key::RegionWristHand,
            Region::LowBack => Key::RegionLowBack,
            Region::Hip => Key::RegionHip,
            Region::Knee => Key::RegionKnee,
            Region::Ankle => Key::RegionAnkle,
        })
    }

    /// "40 to 49".
    pub fn age(self, band: AgeBand) -> String {
        let (from, to) = match band {
            AgeBand::Under18 => return self.text(Key::AgeUnder18).to_owned(),
            AgeBand::From80 => return self.text(Key::AgeFrom80).to_owned(),
            AgeBand::From18 => (18, 39),
            AgeBand::From40 => (40, 49),
            AgeBand::From50 => (50, 59),
            AgeBand::From60 => (60, 64),
            AgeBand::From65 => (65, 69),
            AgeBand::From70 => (70, 79),
        };
        self.age_between(from, to)
    }

    /// What a quantity of a dose is called beside its number.
    pub fn quantity(self, quantity: Quantity, dose: Dose) -> &'static str {
        self.text(match quantity {
            Quantity::Repetitions if matches!(dose, Dose::Hold { .. }) => Key::DoseHolds,
            Quantity::HoldSeconds => Key::DoseHoldSeconds,
            Quantity::RestSeconds => Key::DoseRest,
            Quantity::Trials => Key::DoseTrials,
            Quantity::TargetSeconds => Key::DoseTarget,
            Quantity::Sets => Key::DoseSets,
            Quantity::TempoUpSeconds => Key::DoseTempoConcentric,
            Quantity::TempoHoldSeconds => Key::DoseTempoHold,
            Quantity::TempoDownSeconds => Key::DoseTempoEccentric,
            _ => Key::DoseRepetitions,
        })
    }

    /// "Mon"; bit 0 is Monday.
    pub fn weekday_short(self, bit: u8) -> String {
        self.text(WEEKDAYS[usize::from(bit % 7)].1).to_owned()
    }

    /// "A full day: 11 times, about 14 minutes." Nothing for an empty plan.
    pub fn full_day(self, plan: &Plan, exercises: &[Exercise]) -> Option<String> {
        let whole = |item: &exercises::plan::Item| {
            let exercise = exercises.iter().find(|exercise| exercise.id == item.exercise)?;
            let times = item.schedule.pattern.minutes().len() as u32;
            Some((times, times * item.dose.total_s(exercise.side)))
        };
        let (times, seconds) = plan.items.iter().filter_map(whole).fold((0, 0), |sum, one| (sum.0 + one.0, sum.1 + one.1));
        (times > 0).then(|| self.full_day_line(times, &self.takes_inline(seconds)))
    }
}

/// The item that a problem lies with; `None` for one of the whole plan.
pub fn item_of(problem: &Problem) -> Option<ItemId> {
    match problem {
        Problem::UnknownExercise(item, _)
        | Problem::OtherContent(item, _)
        | Problem::UnknownRung(item, _)
        | Problem::Dose(item)
        | Problem::Side(item)
        | Problem::Schedule(item)
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
        | Problem::Score
        | Problem::AgeMissing
        | Problem::NotTicked(_) => None,
    }
}

/// Where on the composing page a problem is put right.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum PlanSection {
    /// At its item.
    Item(ItemId),
    /// At "Balance at home".
    Balance,
    /// At the complaints and activities.
    Named,
    /// At the aftercare.
    Aftercare,
    /// At the next visit's date.
    Visit,
    /// Beside the button that issues.
    Whole,
}

/// Where on the composing page `problem` is put right.
pub fn section_of(problem: &Problem) -> PlanSection {
    use exercises::plan::check::TextPlace;
    match problem {
        Problem::AgeMissing | Problem::NotTicked(_) | Problem::NoStanceBaseline(_) | Problem::StanceTooShort(_) => {
            PlanSection::Balance
        }
        Problem::Text { what: TextPlace::Complaint | TextPlace::Activity, .. } | Problem::Score => PlanSection::Named,
        Problem::Text { what: TextPlace::Aftercare, .. } => PlanSection::Aftercare,
        Problem::ReviewDate => PlanSection::Visit,
        other => item_of(other).map_or(PlanSection::Whole, PlanSection::Item),
    }
}

impl Words {
    /// What keeps a plan from being issued, for a place where the item is named beside it.
    pub fn problem_here(self, problem: &Problem) -> String {
        let key = match problem {
            Problem::UnknownExercise(..) | Problem::OtherContent(..) => Key::ProblemUnknown,
            Problem::UnknownRung(..) => Key::ProblemLevel,
            Problem::Dose(_) => Key::ProblemDose,
            Problem::Side(_) => Key::ProblemSide,
            Problem::Schedule(_) => Key::ProblemSchedule,
            Problem::Serves(_) => Key::ProblemComplaintGone,
            Problem::NoStanceBaseline(_) => Key::ProblemStance,
            Problem::StanceTooShort(_) => Key::ProblemStanceShort,
            Problem::GateClosed(_) => Key::ProblemGate,
            Problem::SoftAndClosed(_) => Key::ProblemSoftClosed,
            Problem::NotTicked(risks) => return self.problem_ticks(risks.len()),
            whole => return self.problem(whole),
        };
        self.text(key).to_owned()
    }

    /// The same with its item's name before it, for a list of all that is missing.
    pub fn problem_named(self, problem: &Problem, name: impl Fn(ItemId) -> String) -> String {
        let here = self.problem_here(problem);
        item_of(problem).map_or_else(|| here.clone(), |item| self.named_text(&name(item), &here))
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::Locale;
    use exercises::plan::Risk;

    #[test]
    fn a_problem_of_an_item_is_told_without_its_number() {
        let item = ItemId(7);
        let of_item = [
            Problem::UnknownExercise(item, "x".into()),
            Problem::UnknownRung(item, String::new()),
            Problem::Dose(item),
            Problem::Side(item),
            Problem::Schedule(item),
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
    fn a_problem_is_put_right_where_its_field_is() {
        assert_eq!(section_of(&Problem::NotTicked(vec![Risk::NumbFeet])), PlanSection::Balance);
        assert_eq!(section_of(&Problem::NoStanceBaseline(ItemId(1))), PlanSection::Balance);
        assert_eq!(section_of(&Problem::GateClosed(ItemId(1))), PlanSection::Item(ItemId(1)));
        assert_eq!(section_of(&Problem::ReviewDate), PlanSection::Visit);
        assert_eq!(section_of(&Problem::NoItem), PlanSection::Whole);
    }

    #[test]
    fn all_ages_read_apart() {
        let told: std::collections::BTreeSet<String> =
            AgeBand::ALL.into_iter().map(|band| Words::new(Locale::En).age(band)).collect();
        assert_eq!(told.len(), AgeBand::ALL.len());
    }
}
