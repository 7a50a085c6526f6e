//! The amounts of graded activity in a diary: what the plan asks for on each day, read back from the page.

use crate::read;
use crate::support::{catalogue, of_item, plan_of, plans};
use chrono::{Datelike, Days, NaiveDate, Weekday};
use exercises::catalogue::{Dose, Quantity};
use exercises::plan::{Days as PlanDays, Item, MAX_ITEMS, Pattern, Phase, Plan, Schedule};
use paper::{DIARY_DAYS, Diary, Paper, diary};
use words::{Key, Locale, Words};

const SITTING: Dose = Dose::Quota { minutes: 10, step: 2, every_days: 3, goal: 27 };
const LIFTING: Dose = Dose::QuotaTimes { times: 5, step: 1, every_days: 2, goal: 12 };

fn issued() -> NaiveDate {
    plans()[0].header.issued
}

fn item(exercise: &str, dose: Dose, days: PlanDays, pattern: Pattern) -> Item {
    let catalogue = catalogue();
    let exercise = catalogue.exercises.iter().find(|one| one.id.as_str() == exercise).expect("an exercise");
    Item { dose, schedule: Schedule { days, pattern }, ..of_item(exercise) }
}

fn once() -> Pattern {
    Pattern::At { times: vec![1_170] }
}

/// Sitting every day; lifting on three weekdays and from the second week on; sitting as needed; lifting by the hour; and what has no amount.
fn graded() -> Plan {
    let on = PlanDays::On([Weekday::Mon, Weekday::Wed, Weekday::Sat].into_iter().collect());
    let late = Phase { first: Some(issued() + Days::new(7)), ..Phase::WHOLE };
    let hourly = Pattern::Every { minutes: 60, from: 540, to: 960 };
    plan_of(vec![
        item("sitting-time", SITTING, PlanDays::ALL, once()),
        Item { phase: late, ..item("bag-lift", LIFTING, on, once()) },
        item("sitting-time", SITTING, PlanDays::ALL, Pattern::AsNeeded),
        item("bag-lift", LIFTING, PlanDays::ALL, hourly),
        item("walk", Dose::Go { minutes: 15, effort: 3 }, PlanDays::ALL, once()),
    ])
}

/// The first number of a cell.
fn number(cell: &str) -> Option<i64> {
    cell.split_whitespace().next().and_then(|word| word.parse().ok())
}

/// What the plan asks for of an item on a day, as the patient's device works it out; `None` where it is not due or has no amount.
fn planned(plan: &Plan, item: &Item, day: NaiveDate) -> Option<i64> {
    let due = item.phase.contains(day)
        && match item.schedule.days {
            PlanDays::On(days) => days.contains(day.weekday()),
            _ => true,
        };
    let dose = plan.item_on(item.id, day).expect("it is of the plan").dose;
    let amount = [Quantity::QuotaMinutes, Quantity::Repetitions].into_iter().find_map(|quantity| dose.value(quantity));
    amount.filter(|_| due && matches!(dose, Dose::Quota { .. } | Dose::QuotaTimes { .. }))
}

/// The rows of days, without the heads of both tables.
fn days(bytes: &[u8]) -> Vec<Vec<String>> {
    let rows: Vec<Vec<String>> = read::rows(&read::structure(bytes));
    let of_page = usize::from(DIARY_DAYS) / 2 + 1;
    assert_eq!(rows.len(), 2 * of_page);
    rows.into_iter().enumerate().filter(|(n, _)| n % of_page > 0).map(|(_, row)| row).collect()
}

#[test]
fn each_day_has_the_amount_that_the_plan_gives_for_it() {
    let (catalogue, plan) = (catalogue(), graded());
    // A diary may begin before the plan or long after; an amount does not fall below the first one, nor rise above the goal.
    for first in [issued(), issued() - Days::new(4), issued() + Days::new(20)] {
        for (locale, paper) in [(Locale::En, Paper::A4), (Locale::Es, Paper::Letter)] {
            let words = Words::new(locale);
            let given = Diary { plan: &plan, catalogue: &catalogue, patient: None, first: Some(first) };
            let bytes = diary(&given, paper, words).expect("a diary");
            read::as_pdf_ua(&bytes, words.text(Key::DiaryTitle), locale.tag(), paper);
            assert_eq!(read::nothing_is_cut(&bytes), 2);
            for (row, day) in days(&bytes).iter().zip(first.iter_days()) {
                for (item, cell) in plan.prescription.items.iter().zip(&row[1..]) {
                    assert_eq!(number(cell), planned(&plan, item, day), "{} on {day}: {row:?}", item.exercise);
                }
                let minutes = u8::try_from(number(&row[1]).expect("minutes")).expect("few");
                assert!(row[1].contains(&words.diary_minutes(minutes)), "{row:?}");
            }
            let text: String = read::text(&bytes).split_whitespace().collect();
            for key in [Key::DiaryAmountWhat, Key::DiaryAmountMinutes, Key::DiaryAmountTimes] {
                let said: String = words.text(key).split_whitespace().collect();
                assert!(text.contains(&said), "{key:?} in {text}");
            }
        }
    }
}

#[test]
fn where_columns_are_narrow_the_number_stands_alone() {
    let (catalogue, words) = (catalogue(), Words::new(Locale::Es));
    let hourly = Pattern::Every { minutes: 60, from: 540, to: 960 };
    let mut items = vec![item("sitting-time", SITTING, PlanDays::ALL, once()); MAX_ITEMS - 1];
    items.push(item("bag-lift", LIFTING, PlanDays::ALL, hourly));
    let plan = plan_of(items);
    let given = Diary { plan: &plan, catalogue: &catalogue, patient: None, first: Some(issued()) };
    for paper in Paper::ALL {
        let bytes = diary(&given, paper, words).expect("a diary");
        assert_eq!(read::nothing_is_cut(&bytes), 2);
        for (row, day) in days(&bytes).iter().zip(issued().iter_days()) {
            for (item, cell) in plan.prescription.items.iter().zip(&row[1..]) {
                assert_eq!((number(cell), cell.contains("min")), (planned(&plan, item, day), false), "{row:?}");
            }
            let last = &row[MAX_ITEMS];
            assert!(last.contains(&words.diary_of(8)), "beside a line to write on there is no room for boxes: {last}");
        }
    }
}

#[test]
fn no_amount_stands_where_there_are_no_dates_or_the_calendar_raises_nothing() {
    let (catalogue, words) = (catalogue(), Words::new(Locale::En));
    let walk = plan_of(vec![item("walk", Dose::Go { minutes: 15, effort: 3 }, PlanDays::ALL, once())]);
    for (plan, first) in [(&graded(), None), (&walk, Some(issued()))] {
        let given = Diary { plan, catalogue: &catalogue, patient: None, first };
        let bytes = diary(&given, Paper::A4, words).expect("a diary");
        assert!(days(&bytes).iter().all(|row| row[1..].iter().all(|cell| number(cell).is_none())));
        let text: String = read::text(&bytes).split_whitespace().collect();
        assert!(!text.contains(&words.text(Key::DiaryAmountWhat).split_whitespace().collect::<String>()));
    }
}
