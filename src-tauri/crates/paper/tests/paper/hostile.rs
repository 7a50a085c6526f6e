//! Texts that nobody expects, and plans of every size: something is printed for each, and nothing is cut off.

use crate::read;
use crate::support::{catalogue, of_item, plan_of};
use exercises::catalogue::{Catalogue, ExerciseId, Texts};
use exercises::plan::{Aftercare, Complaint, MAX_AFTERCARE_LINES, MAX_ITEMS, MAX_NAME, MAX_NAMED, Pattern, Plan, Side};
use paper::{Diary, HandOut, Paper, PaperError, diary, hand_out};
use pictures::qr::Code;
use words::{Locale, Words};

pub const HOSTILE: [&str; 9] = [
    "",
    " \t\n ",
    "\u{0}\u{1b}[31mred\u{7}\u{202e}back\u{2066}",
    "רגל שמאל על הרצפה",
    "ساق واحدة 3 × 10",
    "🏃🏽‍♀️👩‍👩‍👧 \u{1f1ea}\u{1f1f8} jump",
    "足を上げる",
    "a\u{300}\u{301}\u{302}\u{303} \u{feff}\u{fffe}\u{ffff}\u{e000}\u{10ffff}",
    "WWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWW",
];

/// A plan of twelve items of which every text is `text`.
fn plan_of_text(catalogue: &mut Catalogue, text: &str, steps: usize) -> Plan {
    catalogue.exercises.truncate(MAX_ITEMS);
    for exercise in &mut catalogue.exercises {
        for texts in exercise.texts.values_mut() {
            let one = || text.to_owned();
            let many = || vec![one(); steps];
            let (name, purpose) = (text.chars().take(40).collect(), one());
            let (set_up, should_feel, should_not_feel) = (one(), one(), one());
            let (steps, mistakes, cautions, stop_signs) = (many(), many(), many(), many());
            *texts = Texts { name, purpose, set_up, steps, should_feel, should_not_feel, mistakes, cautions, stop_signs };
        }
    }
    let mut plan = plan_of(catalogue.exercises.iter().map(of_item).collect());
    for item in &mut plan.prescription.items {
        // A level has a set-up and steps of its own.
        item.rung = None;
        item.note = text.chars().take(40).collect();
    }
    let name = text.chars().take(MAX_NAME).collect::<String>();
    let complaint =
        |id| Complaint { id: exercises::id::ComplaintId(id), name: name.clone(), side: Side::Neither, pain: None };
    plan.prescription.complaints = (1..=MAX_NAMED as u8).map(complaint).collect();
    plan.prescription.aftercare = vec![Aftercare::Own(text.to_owned()); MAX_AFTERCARE_LINES];
    plan.header.clinic = text.to_owned();
    plan.header.phone = None;
    plan
}

#[test]
fn any_text_is_printed_or_stood_for() {
    for text in HOSTILE {
        let mut catalogue = catalogue();
        let plan = plan_of_text(&mut catalogue, text, 2);
        for (locale, paper) in [(Locale::En, Paper::A4), (Locale::Es, Paper::Letter)] {
            let (words, patient) = (Words::new(locale), Some(text));
            let printed = hand_out(&HandOut { plan: &plan, catalogue: &catalogue, patient, codes: &[] }, paper, words);
            read::nothing_is_cut(&printed.unwrap_or_else(|error| panic!("{text:?}: {error}")));
            let printed = diary(&Diary { plan: &plan, catalogue: &catalogue, patient, first: None }, paper, words);
            read::nothing_is_cut(&printed.unwrap_or_else(|error| panic!("{text:?}: {error}")));
        }
    }
}

#[test]
fn what_the_font_lacks_is_seen_as_a_sign_and_read_as_it_was_written() {
    let mut catalogue = catalogue();
    let plan = plan_of_text(&mut catalogue, "jump 🏃🏽‍♀️ high", 1);
    let given = HandOut { plan: &plan, catalogue: &catalogue, patient: None, codes: &[] };
    let bytes = hand_out(&given, Paper::A4, Words::new(Locale::En)).expect("a hand-out");
    let text = read::text(&bytes);
    assert!(text.contains("jump 🏃🏽‍♀️ high"), "{text}");
}

#[test]
fn long_texts_go_on_over_as_many_pages_as_they_need() {
    let long = "Lengthen the neck and breathe out slowly, then let the shoulders sink and stay there. ".repeat(4);
    for (steps, least) in [(3, 12), (40, 60)] {
        let mut catalogue = catalogue();
        let mut plan = plan_of_text(&mut catalogue, long[..280].trim(), steps);
        // It is at the foot of each page.
        plan.header.clinic = "Practice by the Mill".to_owned();
        let words = Words::new(Locale::Es).in_pseudo(true);
        let code = [Code::of("HELLO").expect("a code")];
        let given = HandOut { plan: &plan, catalogue: &catalogue, patient: Some("K17"), codes: &code };
        let bytes = hand_out(&given, Paper::Letter, words).expect("a hand-out");
        let pages = read::nothing_is_cut(&bytes);
        assert!(pages >= least, "{pages} pages");
        assert_eq!(read::text(&bytes).matches("sink").count(), 3 * (8 + 12 * (1 + 3 * steps)), "no line is lost");
    }
}

#[test]
fn many_times_a_day_are_counted_instead_of_ticked() {
    let catalogue = catalogue();
    let mut plan = plan_of(catalogue.exercises.iter().take(MAX_ITEMS).map(of_item).collect());
    for (n, item) in plan.prescription.items.iter_mut().enumerate() {
        item.schedule.pattern = match n {
            0 => Pattern::AsNeeded,
            1 => Pattern::Every { minutes: 15, from: 360, to: 1_320 },
            _ => Pattern::At { times: (0..n as u16).map(|hour| 480 + 60 * hour).collect() },
        };
    }
    let words = Words::new(Locale::En);
    let given = Diary { plan: &plan, catalogue: &catalogue, patient: None, first: None };
    let bytes = diary(&given, Paper::Letter, words).expect("a diary");
    assert_eq!(read::text(&bytes).matches(&words.diary_of(65)).count(), 28);
    assert!(read::drawings(&bytes).contains(&words.diary_boxes(2)));
    read::nothing_is_cut(&bytes);
}

#[test]
fn what_cannot_be_printed_is_said() {
    let mut catalogue = catalogue();
    let plan = plan_of(catalogue.exercises.iter().take(1).map(of_item).collect());
    let known = catalogue.exercises.remove(0).id;
    let words = Words::new(Locale::En);
    let refused = Err(PaperError::UnknownExercise(ExerciseId::clone(&known)));
    assert_eq!(
        hand_out(&HandOut { plan: &plan, catalogue: &catalogue, patient: None, codes: &[] }, Paper::A4, words),
        refused
    );
    assert_eq!(diary(&Diary { plan: &plan, catalogue: &catalogue, patient: None, first: None }, Paper::A4, words), refused);
}
