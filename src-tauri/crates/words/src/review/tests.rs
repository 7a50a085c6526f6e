use super::samples::{page, plan};
use super::*;
use crate::Locale;
use exercises::alarm::Trouble;
use exercises::catalogue::Quantity;
use exercises::id::ItemId;
use exercises::review::StanceSeries;
use exercises::score::Score;
use exercises::statistics::{DayValue, TrendContext, Verdict, trend};
use exercises::suggest::{Advice, Hindrance, Reason, Step, Suggestion};
use exercises::time::DayNumber;
use std::collections::BTreeSet;

const EN: Words = Words::new(Locale::En);
const ES: Words = Words::new(Locale::Es);

#[test]
fn the_whole_review_fills_every_place_and_keeps_its_width() {
    for words in [EN, ES] {
        let text = words.review_text(&page());
        assert!(!text.contains('{') && !text.contains('}'), "an open place in\n{text}");
        let widest = text.lines().map(|line| line.chars().count()).max();
        assert!(widest <= Some(90), "{widest:?} columns in\n{text}");
    }
}

#[test]
fn the_answers_are_in_the_order_of_the_questions() {
    let text = EN.review_text(&page());
    let at =
        |question| text.find(&EN.question(question).to_uppercase()).unwrap_or_else(|| panic!("{question:?} in\n{text}"));
    use ReviewQuestion::*;
    let places = [Alarms, Done, Pain, Balance, Activities, Barriers, Next, Notes].map(at);
    assert!(places.is_sorted(), "{places:?}");
}

#[track_caller]
fn says(text: &str, part: &str) {
    let flat = text.split_whitespace().collect::<Vec<_>>().join(" ");
    assert!(flat.contains(part), "no “{part}” in\n{text}");
}

#[test]
fn four_weeks_of_an_invented_patient_are_described_correctly() {
    let text = EN.review_text(&page());
    says(&text, "28 days since 26 October; 2 exercises; visit today");
    says(
        &text,
        "Nearly fell, on 13 November, during Stand on one leg. All balance exercises have been paused for safety since.",
    );
    says(&text, "Much less from 9 November on");
    says(&text, "Better, 6 to 3: 3 points lower, 50%.");
    says(&text, "At the visit: 7 (26 October).");
    says(&text, "Left: rising,");
    says(&text, "Better, 3 to 7. Minimum change: 3 points.");
    says(&text, "it hurt, or I was afraid it would hurt");
    says(&text, "The <chair> at work was changed.");
    says(&text, "26 October, firm floor, eyes open: left 12.4 s, right 45 s or more.");
    says(&text, "half of the sessions started 2 to 12 minutes after the reminder");
}

#[test]
fn an_unclear_change_says_what_is_missing() {
    let review = page().review.expect("a review");
    let to_and_fro = [10.0, 14.0, 9.0, 15.0, 10.0, 16.0, 9.0, 15.0];
    let days: Vec<DayValue> = (0..).zip(to_and_fro).map(|(day, value)| DayValue { day, value }).collect();
    let said = |least| {
        let context = TrendContext { given_difference: Some(least), ..TrendContext::default() };
        let change = trend(&days, &context).expect("a series");
        assert_eq!(change.verdict, Verdict::NoClearChange);
        EN.stance(&StanceSeries { change, ..review.balance[0].clone() }).figures
    };
    assert!(said(8.0).contains("minimum change 8 s"), "{}", said(8.0));
    assert!(said(0.5).contains("too variable to tell"), "{}", said(0.5));
}

#[test]
fn the_strings_show_the_hour_and_the_day_of_breaking_off() {
    let text = EN.review_text(&page());
    let row = |time: &str| {
        let line =
            text.lines().find(|line| line.trim_start().starts_with(time)).unwrap_or_else(|| panic!("{time} in\n{text}"));
        line.trim_start().to_owned()
    };
    assert_eq!(row("09:00"), "09:00 ●●●●●   ●●●●●   ●●●●●   ●●●●●");
    assert_eq!(row("13:00"), "13:00 ∝∝∝∝∝   ∝∝∝∝∝   .....   .....");
    assert_eq!(row("14:00"), "14:00 ●●●●●   ●●●●●   ○○○○○   ○○○○○");
    assert_eq!(row("18:00"), "18:00 ●●●●.●● ●●.●●●● .●●●●:: ●●●.●●●");
}

#[test]
fn without_a_summary_only_that_is_said() {
    let empty = wire::clinic::ReviewPage { review: None, ..page() };
    let text = EN.review_text(&empty);
    says(&text, "No summary has been received yet.");
    assert_eq!(text.lines().count(), 3, "{text}");
    let none = wire::clinic::ReviewPage { plan: None, review: None, ..page() };
    says(&EN.review_text(&none), "There is no plan yet.");
}

#[test]
fn an_item_of_an_earlier_plan_keeps_its_name() {
    let mut page = page();
    let old = page.plan.clone().expect("a plan");
    page.plan.as_mut().expect("a plan").prescription.items.clear();
    assert_eq!(Names::of(EN, &page).item(ItemId(1)), "exercise 1", "it is no longer known");
    page.earlier = vec![old];
    assert_eq!(Names::of(EN, &page).item(ItemId(1)), "Sit tall, chin back");
    assert_eq!(Names::of(ES, &page).item(ItemId(1)), "Siéntese alto, barbilla atrás");
}

fn suggestion(advice: Advice, reason: Reason) -> Suggestion {
    let item = plan().prescription.items[0].clone();
    Suggestion { item: item.id, rung: item.rung, dose: item.dose, advice, reason, based_on: Vec::new() }
}

#[test]
fn a_change_is_described_by_its_result() {
    let page = page();
    let line = |advice| {
        let words = EN.suggestion(&suggestion(advice, Reason::MetTwice), Names::of(EN, &page), plan().header.start);
        assert!(words.reason.starts_with("The target was met in two sessions"));
        words.line(EN)
    };
    assert_eq!(
        line(Advice::Advance(Step::Change { quantity: Quantity::HoldSeconds, by: 5 })),
        "Progress to 15 seconds per hold"
    );
    assert_eq!(line(Advice::StepBack(Step::Change { quantity: Quantity::Repetitions, by: -1 })), "Ease to 2 holds");
    let chair = exercises::catalogue::RungId::new("chair").expect("an id");
    let same = plan().prescription.items[0].dose;
    assert_eq!(line(Advice::Advance(Step::Rung { to: chair.clone(), dose: same })), "Progress to “Back free”");
    let less = same.with(Quantity::HoldSeconds, 5);
    let to_less = line(Advice::Advance(Step::Rung { to: chair, dose: less }));
    assert_eq!(to_less, "Progress to “Back free”, 3 holds of 5 seconds", "a dose that changes is part of it");
    assert_eq!(line(Advice::Keep), "Keep");
    assert_eq!(line(Advice::StopAndTalk), "Stop and talk");
}

#[test]
fn every_reason_has_a_sentence_of_its_own() {
    let rise = exercises::suggest::Rise { base: 2.0, week_before: 4.5, last_week: 5.0 };
    let entry = exercises::id::EntryRef { log: exercises::id::LogId([1; 8]), n: 1 };
    use Hindrance::{AtTheTop, EyesApart, GateClosed, SoftAndClosed, Test, Unknown};
    let hindrances = [AtTheTop, GateClosed, SoftAndClosed, EyesApart, Test, Unknown];
    let mut reasons = vec![
        Reason::Alarm { entry, trouble: Trouble::Fell },
        Reason::PainTooHigh { score: Score::at_most_ten(7), limit: Score::at_most_ten(5) },
        Reason::NotSettled,
        Reason::PainRising(rise),
        Reason::MissedTwice,
        Reason::MetTwice,
        Reason::MetOnce,
        Reason::NotMet,
        Reason::PainBetween { score: Score::at_most_ten(4) },
        Reason::PainUnanswered,
        Reason::MorningUnanswered,
        Reason::TooFewSessions { sessions: 1 },
        Reason::StepThisWeek { stepped: DayNumber(3) },
    ];
    reasons.extend(hindrances.map(Reason::Hindered));
    for words in [EN, ES] {
        let told: BTreeSet<String> = reasons.iter().map(|reason| words.reason(reason, plan().header.start)).collect();
        assert_eq!(told.len(), reasons.len());
        assert!(told.iter().all(|sentence| sentence.ends_with('.') && !sentence.contains('{')), "{told:?}");
    }
    assert_eq!(EN.reason(&reasons[3], plan().header.start), "Pain rose two weeks in a row: 2, then 4.5, then 5.");
}
