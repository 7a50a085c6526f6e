//! Reports and letters: their structure, what they say, and texts that nobody expects. With what patients recorded at home they are tested in
//! `demo/simulator/tests/reports.rs`.

use crate::hostile::HOSTILE;
use crate::read;
use crate::support::{catalogue, plans};
use chrono::{Days, NaiveDate};
use exercises::catalogue::{Eyes, PrescriberFlag, Region, Surface};
use exercises::id::ItemId;
use exercises::plan::{BodySide, Plan, Side};
use exercises::score::Score;
use exercises::visit::{
    Advice, Complained, Finding, Found, Measure, Measured, Moment, OverallChange, Overridden, Screening, Visit,
};
use paper::{Letter, Paper, Report, Sender, letter, report};
use wire::clinic::ReviewPage;
use wire::visiting::VisitPage;
use words::{Key, Locale, Words};

fn day(n: u64) -> NaiveDate {
    NaiveDate::from_ymd_opt(2027, 3, 1).expect("a date") + Days::new(n)
}

fn motion(moment: Moment, degrees: i32, movement: &str) -> Finding {
    let what = Measured::Motion { movement: movement.to_owned() };
    Finding::Measure(Measure { what, moment, side: Some(BodySide::Left), tenths: vec![degrees * 10] })
}

fn stance(tenths: &[i32]) -> Finding {
    let what = Measured::Stance { surface: Surface::Firm, eyes: Eyes::Closed };
    Finding::Measure(Measure { what, moment: Moment::Once, side: Some(BodySide::Right), tenths: tenths.to_vec() })
}

/// Two visits at which everything was found that there is, with this text wherever one can be written.
fn visits(text: &str) -> Vec<Visit> {
    let score = Score::new(6).expect("a score");
    let line = text.to_owned();
    let first = vec![
        Finding::Screening(Screening { flags: [PrescriberFlag::Osteoporosis].into(), fell: true }),
        Finding::Complaint(Complained { region: Region::LowBack, side: Side::Left, line: line.clone(), score }),
        motion(Moment::Before, 40, text),
        motion(Moment::After, 60, text),
        stance(&[84, 121]),
    ];
    let second = vec![
        Finding::Change(OverallChange { score: 3, words: line.clone() }),
        motion(Moment::Before, 55, text),
        stance(&[600]),
        Finding::Note(line.clone()),
        Finding::Overridden(Overridden { item: ItemId(1), proposed: Advice::Progress, reason: line }),
    ];
    let visit = |on: u64, found: Vec<Finding>| {
        let found = found.into_iter().zip(1..).map(|(finding, n)| Found {
            n,
            first: n,
            finding,
            corrected: n == 2,
            by: None,
            corrected_by: None,
        });
        Visit { day: day(on), found: found.collect() }
    };
    vec![visit(28, second), visit(0, first)]
}

/// A patient with two plans, of which the second asks for more of the first item.
fn patient(text: &str, clinic: &str) -> (Plan, ReviewPage, VisitPage) {
    let mut first = plans().swap_remove(0);
    first.header.clinic = clinic.to_owned();
    let mut newest = Plan { header: first.header.next(clinic, day(14)), ..first.clone() };
    let item = &mut newest.prescription.items[0];
    item.schedule = exercises::plan::Schedule::AS_NEEDED;
    item.with_helper = true;
    item.note = text.chars().take(40).collect();
    let flags = [PrescriberFlag::Osteoporosis, PrescriberFlag::BloodPressure].into();
    let visits = VisitPage { code: text.to_owned(), name: None, today: day(28), visits: visits(text), flags, unreadable: 0 };
    let page = ReviewPage {
        code: text.to_owned(),
        name: Some("never printed".to_owned()),
        today: day(28),
        plan: Some(newest.clone()),
        earlier: vec![first],
        exercises: catalogue().exercises,
        review: None,
        devices: Vec::new(),
        notices: Vec::new(),
    };
    (newest, page, visits)
}

fn facts<'a>(plan: &'a Plan, page: &'a ReviewPage, visits: &'a VisitPage) -> Report<'a> {
    Report { sender: Sender::from(&plan.header), plan: Some(plan), page, visits }
}

/// The same patient treated at both visits and given no plan.
fn treated(text: &str) -> (ReviewPage, VisitPage) {
    let (_, page, mut visits) = patient(text, text);
    let of_plan = |found: &Found| matches!(found.finding, Finding::Overridden(_));
    visits.visits.iter_mut().for_each(|visit| visit.found.retain(|found| !of_plan(found)));
    (ReviewPage { plan: None, earlier: Vec::new(), exercises: Vec::new(), ..page }, visits)
}

fn squeezed(text: &str) -> String {
    text.split_whitespace().collect()
}

#[test]
fn both_are_tagged_and_say_the_plan_since_when_and_what_was_found() {
    let (plan, page, visits) = patient("K17", "Practice by the Mill");
    let lines = ["Thank you for sending the patient.".to_owned(), String::new(), "See again in spring?".to_owned()];
    for (locale, paper) in [(Locale::En, Paper::A4), (Locale::Es, Paper::Letter)] {
        let words = Words::new(locale);
        let given = facts(&plan, &page, &visits);
        let of_report = report(&given, paper, words).expect("a report");
        let of_letter = letter(&Letter { report: given, lines: &lines }, paper, words).expect("a letter");
        for (bytes, title, head) in [
            (&of_report, words.report_title_for("K17"), Key::ReportTitle),
            (&of_letter, words.letter_title_for("K17"), Key::LetterTitle),
        ] {
            read::as_pdf_ua(bytes, &title, locale.tag(), paper);
            assert!(read::nothing_is_cut(bytes) <= 2);
            let structure = read::structure(bytes);
            let headings = read::headings(&structure);
            assert_eq!(headings[0], (1, words.text(head).to_owned()));
            assert!(headings[1..].iter().all(|(level, _)| *level == 2), "{headings:?}");
            let text = squeezed(&read::text(bytes));
            let newest = &visits.visits[0];
            let found = newest.found.iter().filter(|one| !matches!(one.finding, Finding::Overridden(_)));
            let mut told: Vec<String> = found.map(|one| words.found(&visits, newest, one)).collect();
            let (since, until) = (words.date(plan.header.issued), words.date(page.earlier[0].header.issued));
            told.extend([words.report_since(&since, ""), words.report_since(&until, "")]);
            told.push(words.flag(PrescriberFlag::BloodPressure).to_owned());
            if head == Key::ReportTitle {
                let changes = words.plan_changes(&page.earlier[0], &plan, &page.exercises);
                assert!(!changes.is_empty());
                told.extend(changes);
                told.push(words.report_decided_on(&since));
            }
            for one in &told {
                assert!(text.to_lowercase().contains(&squeezed(one).to_lowercase()), "{one} is missing in {text}");
            }
            assert!(!text.contains("neverprinted"), "the name stays in the clinic");
            let rows = plan.prescription.items.len();
            assert!(read::count(&structure, "TR") > rows, "a row for each item and the heads");
        }
        let text = squeezed(&read::text(&of_letter));
        assert!(text.contains(&squeezed(&lines[0])) && text.contains(&squeezed(&lines[2])));
        assert!(text.contains(&squeezed(words.text(Key::LetterNotComparable))), "a capped time has no difference");
        let structure = read::structure(&of_letter);
        assert_eq!(read::count(&structure, "Table"), 2, "measures of two visits, and the plan");
        assert_eq!(read::count(&structure, "TD"), 2 * 3 + plan.prescription.items.len());
    }
}

#[test]
fn who_was_treated_and_has_no_plan_is_told_of_with_every_visit() {
    let (page, visits) = treated("K18");
    let sender = Sender { clinic: "Practice by the Mill", phone: Some("+00 123 456 78") };
    let given = || Report { sender, plan: None, page: &page, visits: &visits };
    for (locale, paper) in [(Locale::En, Paper::A4), (Locale::Es, Paper::Letter)] {
        let words = Words::new(locale);
        let of_report = report(&given(), paper, words).expect("a report");
        let lines = ["Thank you.".to_owned()];
        let of_letter = letter(&Letter { report: given(), lines: &lines }, paper, words).expect("a letter");
        for (bytes, title) in
            [(&of_report, words.report_visits_title_for("K18")), (&of_letter, words.letter_title_for("K18"))]
        {
            read::as_pdf_ua(bytes, &title, locale.tag(), paper);
            assert_eq!(read::nothing_is_cut(bytes), 1);
            let structure = read::structure(bytes);
            let headings: Vec<String> = read::headings(&structure).into_iter().map(|(_, heading)| heading).collect();
            let of_visits = visits.visits.iter().map(|visit| words.report_found_on(&words.date(visit.day)));
            let caution = words.text(Key::ReportCautions).to_owned();
            let last: Vec<String> = of_visits.chain([caution]).collect();
            assert!(headings.ends_with(&last), "{headings:?}");
            for key in [Key::ReportPlanAndDone, Key::ReviewQuestionAlarms, Key::LetterGoesOn] {
                assert!(!headings.contains(&words.text(key).to_owned()), "{key:?} without a plan");
            }
            assert_eq!(read::count(&structure, "Table"), 1, "measures of both visits");
            let text = squeezed(&read::text(bytes));
            let found = visits.visits.iter().flat_map(|visit| visit.found.iter().map(move |found| (visit, found)));
            let mut told: Vec<String> = found.map(|(visit, found)| words.found(&visits, visit, found)).collect();
            assert_eq!(told.len(), 9);
            let keys = [Key::ReportIdentity, Key::ReportNoPlan, Key::ReportRestsOnVisits];
            told.extend(keys.map(|key| words.text(key).to_owned()));
            told.extend([words.letter_visits(2), sender.clinic.to_owned(), words.paper_phone("+00 123 456 78")]);
            for one in &told {
                assert!(text.to_lowercase().contains(&squeezed(one).to_lowercase()), "{one} is missing in {text}");
            }
            assert!(!text.contains("neverprinted"), "the name stays in the clinic");
        }
    }
}

fn note(n: u32) -> Found {
    let finding = Finding::Note(format!("Note number {n}."));
    Found { n, first: n, finding, corrected: false, by: None, corrected_by: None }
}

#[test]
fn a_report_on_a_plan_says_how_many_findings_of_the_last_visit_it_leaves_out() {
    let (plan, page, mut visits) = patient("K17", "Practice by the Mill");
    for (findings, more) in [(12, None), (13, Some("1 more finding is in")), (30, Some("18 more findings are in"))] {
        visits.visits[0].found = (1..=findings).map(note).collect();
        let printed = report(&facts(&plan, &page, &visits), Paper::A4, Words::new(Locale::En)).expect("a report");
        let text = squeezed(&read::text(&printed));
        assert!((1..=12).all(|n| text.contains(&format!("Notenumber{n}."))), "{text}");
        assert!(!text.contains("Notenumber13."), "{text}");
        match more {
            None => assert!(!text.contains("morefinding"), "{text}"),
            Some(more) => assert!(text.contains(&squeezed(more)), "{more} is missing in {text}"),
        }
    }
}

#[test]
fn a_long_course_of_visits_goes_on_to_more_pages_and_loses_none() {
    let (page, mut visits) = treated("K18");
    visits.visits =
        (0..10).map(|n| Visit { day: day(u64::from(30 - n)), found: (n * 20..n * 20 + 20).map(note).collect() }).collect();
    let sender = Sender { clinic: "Practice by the Mill", phone: None };
    let printed = report(&Report { sender, plan: None, page: &page, visits: &visits }, Paper::A4, Words::new(Locale::En));
    let printed = printed.expect("a report");
    assert!(read::nothing_is_cut(&printed) > 1);
    let text = squeezed(&read::text(&printed));
    assert!((0..200).all(|n| text.contains(&format!("Notenumber{n}."))), "{text}");
}

#[test]
fn any_text_is_printed_or_stood_for_and_long_ones_go_on() {
    for text in HOSTILE {
        let (plan, page, visits) = patient(text, text);
        let lines = vec![text.to_owned(); 40];
        for (locale, paper) in [(Locale::En, Paper::Letter), (Locale::Es, Paper::A4)] {
            let given = Letter { report: facts(&plan, &page, &visits), lines: &lines };
            let printed = letter(&given, paper, Words::new(locale)).unwrap_or_else(|error| panic!("{text:?}: {error}"));
            read::nothing_is_cut(&printed);
            let printed = report(&given.report, paper, Words::new(locale).in_pseudo(true));
            read::nothing_is_cut(&printed.unwrap_or_else(|error| panic!("{text:?}: {error}")));
            let (page, visits) = treated(text);
            let sender = Sender { clinic: text, phone: Some(text) };
            let printed = report(&Report { sender, plan: None, page: &page, visits: &visits }, paper, Words::new(locale));
            read::nothing_is_cut(&printed.unwrap_or_else(|error| panic!("{text:?}: {error}")));
        }
    }
}

#[test]
fn the_same_values_give_the_same_bytes() {
    let (plan, page, visits) = patient("K17", "Practice by the Mill");
    let print = || report(&facts(&plan, &page, &visits), Paper::A4, Words::new(Locale::En));
    assert_eq!(print(), print());
}
