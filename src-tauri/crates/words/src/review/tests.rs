use super::samples::{page, plan};
use super::*;
use crate::Locale;
use exercises::adherence::{Gap, Stops};
use exercises::alarm::Trouble;
use exercises::catalogue::Quantity;
use exercises::id::ItemId;
use exercises::log::Barrier;
use exercises::review::StanceSeries;
use exercises::run::Share;
use exercises::score::Score;
use exercises::statistics::{DayValue, DifferenceBasis, TrendContext, Verdict, trend};
use exercises::suggest::{Ask, HalfOfDay, Hindrance, Proposal, Reason, Reduction, Step, Suggestion};
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
        "Nearly fell, on 13 November, during Stand on one leg. Nothing is paused; since then it has been one level easier at home, or with a hand on the support.",
    );
    says(&text, "Much less from 9 November on");
    says(&text, "Better, 6 to 3 (22 November): 3 points lower, 50%.");
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
fn a_change_is_compared_with_the_patients_own_variation_where_that_is_the_measure() {
    let review = page().review.expect("a review");
    let said = |words: Words, values: &[f64]| {
        let days: Vec<DayValue> = (0..).zip(values).map(|(day, value)| DayValue { day, value: *value }).collect();
        let change = trend(&days, &TrendContext::default()).expect("a series");
        assert!(matches!(change.figures.expect("figures").important.basis, DifferenceBasis::OwnSpread { .. }));
        words.stance(&StanceSeries { change, ..review.balance[0].clone() })
    };
    let (rising, level) =
        ([10.0, 11.1, 12.0, 13.2, 14.0, 15.1, 16.0, 17.2, 18.0, 19.1], [10.0, 14.0, 9.0, 15.0, 10.0, 16.0, 9.0, 15.0]);
    for (words, beyond, within) in [
        (
            EN,
            "; more than the patient's own day-to-day variation explains (",
            "; within the patient's own day-to-day variation (",
        ),
        (ES, "; más de lo que explica su propia variación diaria (", "; dentro de su propia variación diaria ("),
    ] {
        let (rose, unclear) = (said(words, &rising), said(words, &level));
        assert_eq!(
            (rose.word.as_str(), unclear.word.as_str()),
            (words.text(Key::ReviewRising), words.text(Key::ReviewNoClearChange))
        );
        assert!(rose.figures.contains(beyond), "{}", rose.figures);
        assert!(unclear.figures.contains(within), "{}", unclear.figures);
    }
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

fn suggestion(proposal: Proposal, ask: Vec<Ask>) -> Suggestion {
    let item = plan().prescription.items[0].clone();
    let reasons = vec![Reason::TargetMet { days: [DayNumber(2), DayNumber(3)] }];
    Suggestion { item: item.id, rung: item.rung, dose: item.dose, proposal, reasons, ask }
}

#[test]
fn a_change_is_described_by_its_result() {
    let page = page();
    let line = |proposal| {
        let words = EN.suggestion(&suggestion(proposal, Vec::new()), Names::of(EN, &page), plan().header.start);
        assert_eq!(words.reason(), "The last session on 28 October and on 29 October met its target in full.");
        words.line
    };
    let holds = Step::Change { quantity: Quantity::Repetitions, by: -1 };
    assert_eq!(
        line(Proposal::Progress(Step::Change { quantity: Quantity::HoldSeconds, by: 5 })),
        "Progress to 15 seconds per hold"
    );
    assert_eq!(line(Proposal::Ease(holds.clone())), "Ease to 2 holds");
    let chair = exercises::catalogue::RungId::new("chair").expect("an id");
    let same = plan().prescription.items[0].dose;
    assert_eq!(line(Proposal::Progress(Step::Rung { to: chair.clone(), dose: same })), "Progress to “Back free”");
    let less = same.with(Quantity::HoldSeconds, 5);
    let to_less = line(Proposal::Progress(Step::Rung { to: chair, dose: less }));
    assert_eq!(to_less, "Progress to “Back free”, 3 holds of 5 seconds", "a dose that changes is part of it");
    assert_eq!(line(Proposal::Reduce(Reduction::ShorterDose(holds))), "Reduce to 2 holds");
    assert_eq!(line(Proposal::Reduce(Reduction::FewerTimes { from: 3, to: 2 })), "Do less: 2 times a week instead of 3");
    assert_eq!(line(Proposal::Reduce(Reduction::FewerSlots { from: 9, to: 4 })), "Do less: 4 sessions a day instead of 9");
    let before_noon = Proposal::Reduce(Reduction::Half(HalfOfDay::BeforeNoon));
    assert_eq!(line(before_noon), "Do less: only the sessions before noon");
    assert_eq!(line(Proposal::Keep), "Keep");
    assert_eq!(line(Proposal::Talk), "Stop and talk");
}

#[test]
fn another_level_than_that_of_the_card_is_named_beside_it() {
    let (page, plan) = (page(), plan());
    let item = &plan.prescription.items[0];
    let exercise = page.exercises.iter().find(|exercise| exercise.id == item.exercise);
    let lately = |rung| Suggestion { rung, ..suggestion(Proposal::Keep, Vec::new()) };
    let as_on_the_card = EN.in_force(item, exercise, Some(&lately(item.rung.clone())));
    assert_eq!(as_on_the_card, EN.in_force(item, exercise, None));
    assert!(as_on_the_card.starts_with("Now: ") && !as_on_the_card.contains("At home"), "{as_on_the_card}");
    let chair = exercises::catalogue::RungId::new("chair").expect("an id");
    let other = EN.in_force(item, exercise, Some(&lately(Some(chair))));
    assert!(other.ends_with(". At home lately: Back free."), "{other}");
}

#[test]
fn two_steps_forward_for_one_complaint_are_named() {
    let mut page = page();
    let said =
        |page: &wire::clinic::ReviewPage| EN.steps_at_once(page.review.as_ref().expect("a review"), Names::of(EN, page));
    let forward = Proposal::Progress(Step::Change { quantity: Quantity::HoldSeconds, by: 5 });
    let review = page.review.as_mut().expect("a review");
    review.items.iter_mut().for_each(|one| one.proposal = forward.clone());
    assert_eq!(review.items.len(), 2);
    assert_eq!(said(&page), [""; 0], "one of them serves no complaint");
    let complaint = page.plan.as_ref().expect("a plan").prescription.complaints[0].id;
    page.plan.as_mut().expect("a plan").prescription.items.iter_mut().for_each(|item| item.serves = Some(complaint));
    let at_once = "2 exercises for it go a step forward at once. Should it get worse, nobody can tell by which.";
    assert_eq!(said(&page), [format!("Upper back, left: {at_once}")]);
    page.review.as_mut().expect("a review").items[0].proposal = Proposal::Keep;
    assert_eq!(said(&page), [""; 0]);
}

#[test]
fn what_is_to_be_asked_follows_the_reasons() {
    let page = page();
    let step = Step::Change { quantity: Quantity::HoldSeconds, by: 5 };
    let open = suggestion(Proposal::Progress(step), vec![Ask::Pain]);
    let words = EN.suggestion(&open, Names::of(EN, &page), plan().header.start);
    assert!(
        words.reason().ends_with("met its target in full. Ask: how much does it hurt while doing it?"),
        "{}",
        words.reason()
    );
}

#[test]
fn every_reason_has_a_sentence_of_its_own() {
    let score = Score::at_most_ten;
    let day = DayNumber(3);
    use Hindrance::{
        AsNeeded, AtTheTop, ByCalendar, EyesApart, GateClosed, GoalReached, NotStepped, Over, SoftAndClosed, Test, ToCome,
        Unknown,
    };
    let hindrances = [
        AtTheTop,
        GateClosed,
        SoftAndClosed,
        EyesApart,
        Test,
        NotStepped,
        ByCalendar,
        GoalReached,
        AsNeeded,
        ToCome,
        Over,
        Unknown,
    ];
    let mut reasons = vec![
        Reason::Alarm { id: exercises::id::AlarmId([1; 8]), trouble: Trouble::Fell },
        Reason::NothingDone { owed: 12 },
        Reason::AboveLimit { score: score(7), limit: score(5), day },
        Reason::Unsettled { days: vec![DayNumber(3), DayNumber(5)] },
        Reason::TargetMissed { missed: 2, of: 4 },
        Reason::NearFall { day },
        Reason::BalanceFalling,
        Reason::LittleDone { thousandths: 3500, owed: 12 },
        Reason::Given { barrier: Barrier::NoTime, times: 5 },
        Reason::NoneGiven,
        Reason::TargetMet { days: [DayNumber(3), DayNumber(4)] },
        Reason::LowPain { most: score(2), known: 4 },
        Reason::PainUnknown { known: 0 },
        Reason::PainUnknown { known: 1 },
        Reason::ChangedLately { day },
        Reason::FewSessions { days: 2 },
        Reason::NotMet,
        Reason::PainTooHighToProgress { score: score(4) },
        Reason::PainWorse,
        Reason::AlarmLately { trouble: Trouble::Fell, day },
        Reason::FlareLately { to: day },
    ];
    reasons.extend(hindrances.map(Reason::Hindered));
    for words in [EN, ES] {
        let told: BTreeSet<String> = reasons.iter().map(|reason| words.reason(reason, plan().header.start)).collect();
        assert_eq!(told.len(), reasons.len());
        assert!(told.iter().all(|sentence| sentence.ends_with('.') && !sentence.contains('{')), "{told:?}");
    }
    assert_eq!(EN.reason(&reasons[7], plan().header.start), "3.5 of 12 sessions done; those done in part count as parts.");
}

/// Title, word, figure, and whether it needs attention.
fn cells(words: Words, page: &wire::clinic::ReviewPage) -> Vec<(&'static str, String, String, bool)> {
    let review = page.review.as_ref().expect("a summary was received");
    let strip = words.review_strip(review, Names::of(words, page)).into_iter();
    strip.map(|cell| (cell.title, cell.word, cell.figure, cell.attention)).collect()
}

#[test]
fn the_line_at_the_top_answers_six_questions_about_the_invented_patient() {
    let said = cells(EN, &page());
    let said: Vec<_> =
        said.iter().map(|(title, word, figure, look)| (*title, word.as_str(), figure.as_str(), *look)).collect();
    assert_eq!(
        said,
        [
            ("Done", "Little", "Sit tall, chin back: 20 of 90 in the last 14 days, at least in part", true),
            ("Pain", "Better", "Upper back, left: 6 to 3", false),
            ("Activities", "Better", "Carry the shopping: 3 to 7", false),
            ("Balance", "Rising", "Left: 7.5 to 21 s", false),
            ("Alarms", "1 not cleared", "Nearly fell", true),
            ("Proposals", "Stop and talk 1", "Ease 1", true),
        ]
    );
}

#[test]
fn the_line_at_the_top_names_what_most_needs_attention() {
    let mut page = page();
    let review = page.review.as_mut().expect("a summary was received");
    review.pain[0].change.verdict = exercises::statistics::PainVerdict::Worse;
    review.activities[0].change.verdict = exercises::change::ActivityVerdict::Worse;
    let left = review.balance.iter_mut().find(|series| series.leg == Some(exercises::plan::BodySide::Right));
    left.expect("both legs").change.verdict = Verdict::Falling;
    review.alarms[0].cleared = true;
    review.items[0].proposal = Proposal::Talk;
    review.items[1].proposal = Proposal::Talk;
    let said = cells(EN, &page);
    let words: Vec<_> = said.iter().map(|(_, word, _, look)| (word.as_str(), *look)).collect();
    assert_eq!(
        words[1..],
        [("Worse", true), ("Worse", true), ("Falling", true), ("All cleared", false), ("Stop and talk 2", true)]
    );
    assert!(said[3].2.starts_with("Right: "), "the leg that falls: {}", said[3].2);
    let review = page.review.as_mut().expect("a summary was received");
    review.pain[0].change.verdict = exercises::statistics::PainVerdict::Better;
    let peak = Score::at_most_ten(8);
    review.pain[0].flares =
        vec![exercises::change::Flare { from: DayNumber(3), to: DayNumber(6), least: Score::at_most_ten(6), peak }];
    review.alarms.clear();
    let said = cells(EN, &page);
    assert_eq!((said[1].1.as_str(), said[1].3), ("Better", true), "a flare is looked at although the pain is better");
    assert_eq!((said[4].1.as_str(), said[4].2.as_str(), said[4].3), ("None", "", false));
}

#[test]
fn a_last_morning_that_was_clearly_higher_is_told_wherever_the_pain_is_called_better() {
    let mut page = page();
    let (start, day) = (page.review.as_ref().expect("a review").start, DayNumber(27));
    let review = page.review.as_mut().expect("a review");
    review.pain[0].flares.clear();
    review.pain[0].points.push((day, Score::at_most_ten(9)));
    let said = cells(EN, &page);
    assert_eq!((said[1].1.as_str(), said[1].2.as_str(), said[1].3), ("Better", "Upper back, left: 6 to 3, last 9", true));
    let (review, names) = (page.review.as_ref().expect("a review"), Names::of(EN, &page));
    let told = format!("The last morning, {}, was higher: 9.", EN.date(day.date(start)));
    assert!(EN.pain_details(&review.pain[0], names, start).contains(&told));
    assert!(EN.together(review, names).sentences[1].ends_with(&format!("That is clearly better. {told}")));
    let review = page.review.as_mut().expect("a review");
    // 3 is the median of the last three, and a point more is no clear difference.
    review.pain[0].points.push((DayNumber(28), Score::at_most_ten(4)));
    assert!(!cells(EN, &page)[1].3);
}

#[test]
fn a_pause_tells_what_is_not_known_and_a_stop_within_the_only_part_names_no_part() {
    let page = page();
    let mut item = page.review.expect("a review").adherence[0].clone();
    let mut told = |unrecorded: u16, of: u32| {
        item.longest_gap = Some(Gap { days: 5, unrecorded, from: DayNumber(4), until: DayNumber(10) });
        item.stops = Stops { stopped: 2, after: vec![(Share { done: 0, of }, 2)], ..Stops::default() };
        EN.adherence_details(&item, plan().header.start)
    };
    let pause = "Longest pause: 5 planned days in a row, 30 October to 5 November.";
    let all = told(0, 3);
    assert!(
        all.contains(&pause.to_owned()) && all.contains(&"Stopped early 2 times, most often after 0 of 3.".to_owned()),
        "{all:?}"
    );
    let all = told(2, 1);
    assert!(all.contains(&format!("{pause} No record on 2 of these days.")), "{all:?}");
    assert!(all.contains(&"Stopped early 2 times.".to_owned()), "{all:?}");
}

#[test]
fn where_nothing_was_done_there_is_nothing_to_stop() {
    let mut page = page();
    let review = page.review.as_mut().expect("a review");
    let undone = &mut review.items[1];
    undone.proposal = Proposal::Talk;
    undone.reasons = vec![Reason::NothingDone { owed: 12 }];
    let undone = undone.clone();
    assert_eq!(EN.suggestion(&undone, Names::of(EN, &page), plan().header.start).line, "Talk about it first");
    let of_next = |page: &wire::clinic::ReviewPage| cells(EN, page)[5].1.clone();
    assert_eq!(of_next(&page), "Stop and talk 2", "a stop is named before it");
    page.review.as_mut().expect("a review").items.remove(0);
    assert_eq!(of_next(&page), "Talk about it first 1");
}

#[test]
fn the_line_at_the_top_fills_every_cell_in_each_language_also_without_anything_known() {
    let mut empty = page();
    let review = empty.review.as_mut().expect("a summary was received");
    (review.pain, review.activities, review.balance, review.alarms) = Default::default();
    review.adherence.clear();
    review.items.clear();
    for words in [EN, ES] {
        for of in [&page(), &empty] {
            let said = cells(words, of);
            assert_eq!(said.len(), 6);
            for (title, word, figure, _) in &said {
                assert!(!title.is_empty() && !word.is_empty(), "{said:?}");
                assert!(![word, figure].iter().any(|text| text.contains('{')), "{said:?}");
            }
        }
        assert!(cells(words, &empty).iter().all(|(_, _, figure, look)| figure.is_empty() && !look));
    }
}

#[test]
fn in_a_few_sentences_the_patient_is_told_what_was_done_and_what_came_of_it() {
    let page = page();
    let review = page.review.as_ref().expect("a review");
    let said = EN.together(review, Names::of(EN, &page));
    assert_eq!(said.sentences.len(), 3, "{said:?}");
    assert!(said.alarms[0].starts_with("Talk about this first: Nearly fell, on 13 November"), "{said:?}");
    assert!(said.sentences[0].starts_with("In the last 14 days you did "), "{said:?}");
    assert!(said.sentences[0].ends_with("It became much less on 9 November."), "{said:?}");
    assert!(said.sentences[1].ends_with("6 of 10 in the morning at first, 3 lately. That is clearly better."), "{said:?}");
    assert!(
        said.sentences[2].ends_with("3 of 10 at first, 7 now, where 10 is as before. That is clearly better."),
        "{said:?}"
    );
    assert!(said.barriers[0].starts_with("“it hurt, or I was afraid it would hurt”, "), "{said:?}");
    let said = ES.together(review, Names::of(ES, &page));
    assert!(said.sentences[1].ends_with("Está claramente mejor."), "{said:?}");
}
