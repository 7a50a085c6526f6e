//! The papers of the demo's plans and of every exercise.

use crate::read;
use crate::support::{catalogue, of_item, plan_of, plans};
use chrono::NaiveDate;
use exercises::alarm::Trouble;
use exercises::plan::MAX_ITEMS;
use paper::{Diary, HandOut, Paper, diary, hand_out};
use pictures::qr::Code;
use std::collections::BTreeSet;
use words::{Key, Locale, Words};

fn today() -> NaiveDate {
    NaiveDate::from_ymd_opt(2027, 3, 1).expect("a date")
}

/// Without white space, since lines end where the paper does.
fn squeezed(text: &str) -> String {
    text.split_whitespace().collect()
}

#[test]
fn every_exercise_prints_with_all_its_steps_and_warnings_in_every_language() {
    let catalogue = catalogue();
    for chunk in catalogue.exercises.chunks(MAX_ITEMS) {
        let plan = plan_of(chunk.iter().map(of_item).collect());
        for (locale, paper) in [(Locale::En, Paper::Letter), (Locale::Es, Paper::A4)] {
            let words = Words::new(locale);
            let given = HandOut { plan: &plan, catalogue: &catalogue, patient: Some("K17"), codes: &[] };
            let text = squeezed(&read::text(&hand_out(&given, paper, words).expect("a hand-out")));
            for (exercise, item) in chunk.iter().zip(&plan.prescription.items) {
                let level = exercise.level(item.rung.as_ref());
                let texts = level.texts(words.lang()).expect("texts");
                let told = [vec![texts.name, texts.set_up, words.due(item)], texts.steps, texts.cautions, texts.stop_signs];
                for one in told.concat().iter().chain(words.needs(level.equipment()).iter()) {
                    assert!(text.contains(&squeezed(&words.at_line_start(one))) || text.contains(&squeezed(one)), "{one}");
                }
                assert!(text.contains(&squeezed(&words.at_line_start(&words.dose_of(item)))), "{}", exercise.id);
            }
        }
    }
}

#[test]
fn a_hand_out_is_tagged_and_says_what_it_is() {
    let catalogue = catalogue();
    for plan in plans() {
        let codes = [Code::of("HELLO 1").expect("a code"), Code::of("HELLO 2").expect("a code")];
        for (locale, paper) in [(Locale::En, Paper::A4), (Locale::EsMx, Paper::Letter)] {
            let words = Words::new(locale);
            let given = HandOut { plan: &plan, catalogue: &catalogue, patient: Some("K17"), codes: &codes };
            let bytes = hand_out(&given, paper, words).expect("a hand-out");
            read::as_pdf_ua(&bytes, &words.paper_title_for("K17"), locale.tag(), paper);
            let structure = read::structure(&bytes);
            let headings = read::headings(&structure);
            assert_eq!(headings[0], (1, words.text(Key::PaperTitle).to_owned()), "the first heading is the title");
            let names = plan
                .prescription
                .items
                .iter()
                .map(|item| words.exercise_name(catalogue.get(&item.exercise).expect("known")));
            let chapters: Vec<String> =
                headings.iter().filter(|(level, _)| *level == 2).map(|(_, text)| text.clone()).collect();
            let found = names.enumerate().map(|(place, name)| {
                let wanted = squeezed(&format!("{}{name}", place + 1));
                chapters
                    .iter()
                    .position(|chapter| squeezed(chapter) == wanted)
                    .expect("a chapter for each exercise, with its number")
            });
            assert!(found.collect::<Vec<_>>().is_sorted(), "in the plan's order: {chapters:?}");
            assert!(headings.windows(2).all(|pair| pair[1].0 <= pair[0].0 + 1), "no level is left out: {headings:?}");
            let drawings = read::drawings(&bytes);
            assert!(
                drawings.len() >= plan.prescription.items.len() + codes.len()
                    && drawings.iter().all(|said| !said.is_empty())
            );
            assert!(drawings.contains(&words.paper_code_drawing(2, 2)), "{drawings:?}");
        }
    }
}

#[test]
fn a_hand_out_says_when_to_get_help_and_numbers_its_pages() {
    let catalogue = catalogue();
    for plan in plans() {
        for (locale, paper) in [(Locale::EnUs, Paper::Letter), (Locale::Es, Paper::A4)] {
            let words = Words::new(locale);
            let given = HandOut { plan: &plan, catalogue: &catalogue, patient: None, codes: &[] };
            let bytes = hand_out(&given, paper, words).expect("a hand-out");
            let text = squeezed(&read::text(&bytes));
            for trouble in Trouble::ALL.into_iter().filter(|trouble| trouble.is_urgent()) {
                let advice = words.what_to_do(trouble, &BTreeSet::new());
                let said = advice.iter().chain([&words.trouble(trouble)]).all(|line| text.contains(&squeezed(line)));
                assert!(said, "{trouble:?}");
            }
            let pages = read::nothing_is_cut(&bytes);
            assert!(
                (1..=pages).all(|page| text.contains(&squeezed(&words.part_of(page, pages)))),
                "each page has its number"
            );
        }
    }
}

#[test]
fn a_diary_is_a_table_with_headings_for_rows_and_columns() {
    let catalogue = catalogue();
    for plan in plans() {
        for (first, paper) in [(Some(today()), Paper::Letter), (None, Paper::A4)] {
            let words = Words::new(Locale::En);
            let given = Diary { plan: &plan, catalogue: &catalogue, patient: None, first };
            let bytes = diary(&given, paper, words).expect("a diary");
            read::as_pdf_ua(&bytes, words.text(Key::DiaryTitle), "en", paper);
            let structure = read::structure(&bytes);
            let columns = 2 + plan.prescription.items.len() + plan.prescription.complaints.len();
            assert_eq!(read::count(&structure, "Table"), 2, "two weeks on each of two pages");
            assert_eq!(read::count(&structure, "TR"), 2 * (1 + 14));
            assert_eq!(read::count(&structure, "TH"), 2 * columns + 28, "of each column and of each day");
            assert_eq!(read::count(&structure, "TD"), 28 * (columns - 1), "no cell is missing");
            let text = read::text(&bytes);
            let chosen = plan.prescription.items.iter().map(|item| item.schedule.days);
            for days in chosen.filter(|days| matches!(days, exercises::plan::Days::TimesAWeek { .. })) {
                assert!(squeezed(&text).contains(&squeezed(&words.days(days))), "boxes do not say how often");
            }
            let days = if first.is_some() { words.weekday_date(today()) } else { words.weekday(today()) };
            assert!(text.contains(&days), "{text}");
            let drawings = read::drawings(&bytes);
            let of_item = |item: &exercises::plan::Item| item.schedule.pattern.minutes().len();
            let has_two_a_day = plan.prescription.items.iter().any(|item| of_item(item) == 2);
            assert_eq!(drawings.contains(&words.diary_boxes(2)), has_two_a_day, "{drawings:?}");
            let has_free_days = plan.prescription.items.iter().any(|item| item.schedule.days != exercises::plan::Days::ALL);
            assert_eq!(text.contains(words.text(Key::DiaryNotPlanned)), has_free_days, "a cell of a day without it says so");
        }
    }
}

#[test]
fn codes_are_read_from_the_printed_page() {
    let catalogue = catalogue();
    let plan = &plan_of(catalogue.exercises.iter().take(1).map(of_item).collect());
    let long = "CARD ".to_owned() + &"0123456789ABCDEFGHIJ".repeat(60);
    let texts: Vec<String> = (1..=4).map(|n| format!("{long}{n}")).collect();
    for paper in Paper::ALL {
        for many in [1, 2, 4] {
            let codes: Vec<Code> = texts[..many].iter().map(|text| Code::of(text).expect("a code")).collect();
            let given = HandOut { plan, catalogue: &catalogue, patient: None, codes: &codes };
            let bytes = hand_out(&given, paper, Words::new(Locale::En)).expect("a hand-out");
            let mut found = read::codes(&bytes);
            found.sort();
            assert_eq!(found, texts[..many], "at 300 dots per inch");
        }
    }
}

#[test]
fn the_same_values_give_the_same_bytes() {
    let (catalogue, plan) = (catalogue(), &plans()[0]);
    let code = [Code::of("HELLO").expect("a code")];
    let print = || {
        let given = HandOut { plan, catalogue: &catalogue, patient: Some("K17"), codes: &code };
        hand_out(&given, Paper::A4, Words::new(Locale::Es)).expect("a hand-out")
    };
    let fill =
        || diary(&Diary { plan, catalogue: &catalogue, patient: None, first: None }, Paper::A4, Words::new(Locale::Es));
    assert_eq!(print(), print());
    assert_eq!(fill(), fill());
}
