//! A plan file that the program writes is read as what it was written from.

mod support;

use chrono::NaiveDate;
use exercises::alarm::ClearedAlarm;
use exercises::plan::{Item, Prescription, StanceBaseline};
use format::{plan_file, plan_set};
use proptest::prelude::*;

/// A prescription as a file can have it.
fn in_a_file(mut prescription: Prescription) -> Prescription {
    prescription.clean_texts();
    prescription.items.iter_mut().for_each(|item| item.content = 0);
    prescription.cleared.iter_mut().for_each(|alarm| *alarm = ClearedAlarm { seen: None, ..*alarm });
    for StanceBaseline { tenths, .. } in &mut prescription.baselines {
        *tenths %= 6001;
    }
    prescription
}

fn last_day() -> NaiveDate {
    NaiveDate::from_ymd_opt(2199, 12, 31).expect("a date")
}

fn written(prescription: &Prescription) -> String {
    plan_file::write(prescription, |item| item.exercise.to_string())
}

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, ..ProptestConfig::with_cases(64) })]

    #[test]
    fn any_prescription_comes_back(plan in support::any::plan()) {
        let prescription = in_a_file(plan.prescription);
        prop_assert_eq!(plan_file::read(&written(&prescription), last_day()), Ok(prescription));
    }

    #[test]
    fn a_set_has_the_items_and_nothing_of_a_patient(plan in support::any::plan()) {
        let today = plan.header.issued;
        let set = in_a_file(plan_set::of_prescription(&plan.prescription, today));
        let text = plan_file::write_set(&set, plan_set::start(), |item| item.exercise.to_string());
        prop_assert_eq!(plan_file::read(&text, plan_set::start()), Ok(set.clone()));
        let Prescription { items, .. } = &plan.prescription;
        let left = items.iter().filter(|item| item.phase.last.is_none_or(|last| today <= last));
        for (item, kept) in left.zip(&set.items) {
            let Item { dose, schedule, rung, serves, .. } = kept;
            prop_assert_eq!((dose, &schedule.pattern, rung), (&item.dose, &item.schedule.pattern, &item.rung));
            prop_assert_eq!(schedule.days.counted_from(today), item.schedule.days.counted_from(today));
            prop_assert_eq!(kept.phase.last.map(|last| last - plan_set::start()), item.phase.last.map(|last| last - today));
            prop_assert_eq!(serves, &None);
        }
        prop_assert!(set.complaints.is_empty() && set.activities.is_empty() && set.baselines.is_empty());
        prop_assert!(set.age.is_none() && set.absent.is_empty() && set.cleared.is_empty());
    }
}

#[test]
fn the_example_is_written_as_a_file_that_says_the_same() {
    let review = NaiveDate::from_ymd_opt(2027, 1, 6).expect("a date");
    let read = |text: &str| plan_file::read(text, last_day()).expect("a plan");
    let example = read(&plan_file::example(review));
    let text = written(&example);
    assert_eq!(read(&text), example);
    let line = "every = { minutes = 60, from = \"09:00\", to = \"17:00\" }\ndays = \"every-day\"\n";
    assert!(text.contains(line), "as a person would write it:\n{text}");
    assert!(text.contains("reps = { sets = 2, repetitions = 10, rest = 45, tempo = [2, 1, 3] }"), "{text}");
}
