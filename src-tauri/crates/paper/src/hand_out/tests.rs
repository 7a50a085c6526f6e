//! Where pages break.

use super::*;
use crate::mark::Mark;
use crate::sheet::{Child, Sheet};
use chrono::{Days, NaiveDate};
use exercises::catalogue::Lang;
use exercises::id::{ItemId, PlanId};
use exercises::plan::{Header, Item, Pattern, Prescription, Schedule, Side};
use krilla::tagging::TagKind;
use words::Locale;

fn catalogue() -> Catalogue {
    format::catalogue::embedded().expect("the shipped exercises")
}

/// A plan of exercises of the catalogue, beginning with the given one, and with this number of lines of aftercare.
fn plan(catalogue: &Catalogue, from: usize, lines: usize) -> Plan {
    let today = NaiveDate::from_ymd_opt(2027, 3, 1).expect("a date");
    let schedule = Schedule { days: exercises::plan::Days::ALL, pattern: Pattern::At { times: vec![480] } };
    let exercises = catalogue.exercises.iter().cycle().skip(from).take(12).zip(1..);
    let item = |(exercise, n): (&exercises::catalogue::Exercise, u8)| {
        Item::new(ItemId(n), exercise.id.clone(), exercise.dose, schedule.clone())
    };
    let text = format::plan_file::example(today + Days::new(42));
    let example = format::plan_file::read(&text, today).expect("the example");
    let aftercare = vec![exercises::plan::Aftercare::GoEasy; lines];
    let prescription = Prescription { items: exercises.map(item).collect(), aftercare, ..example };
    Plan { header: Header::first(PlanId([1; 8]), "Practice by the Mill", today), prescription }
}

/// The pages on which an element and all within it stand.
fn pages(sheet: &Sheet, element: usize) -> Vec<usize> {
    let of_child = |child: &Child| match *child {
        Child::Element(place) => pages(sheet, place),
        Child::Content(page, _) => vec![page],
    };
    sheet.elements[element].children.iter().flat_map(of_child).collect()
}

/// Of each exercise: the pages of its heading and of its figures.
fn of_sections(sheet: &Sheet) -> Vec<Vec<usize>> {
    let sections = sheet.elements.iter().filter(|element| matches!(element.tag, TagKind::Section(_)));
    let leads = |child: &Child| match *child {
        Child::Element(place) if matches!(sheet.elements[place].tag, TagKind::Hn(_) | TagKind::Figure(_)) => Some(place),
        _ => None,
    };
    // Precautions and signs to stop have headings of the third level, which may be on another page.
    let is_third = |place: &usize| matches!(&sheet.elements[*place].tag, TagKind::Hn(tag) if tag.level().get() == 3);
    let lead = sections.map(|section| section.children.iter().filter_map(leads).filter(|place| !is_third(place)));
    lead.map(|lead| lead.flat_map(|place| pages(sheet, place)).collect()).collect()
}

#[test]
fn no_exercise_is_parted_from_its_figures() {
    let mut catalogue = catalogue();
    for (from, lines) in [(0, 0), (5, 3), (40, 8), (90, 1), (130, 5)] {
        let plan = plan(&catalogue, from, lines);
        for paper in Paper::ALL {
            let given = HandOut { plan: &plan, catalogue: &catalogue, patient: None, codes: &[] };
            let made = laid_out(&given, paper, Words::new(Locale::Es).in_pseudo(true)).expect("pages");
            let sections = of_sections(&made.flow.sheet);
            assert_eq!(sections.len(), 12);
            let parted = |lead: &&Vec<usize>| lead.len() < 3 || lead.iter().any(|page| *page != lead[0]);
            assert_eq!(sections.iter().find(parted), None, "heading, number and figures of each");
        }
        long(&mut catalogue);
    }
}

/// Makes all steps as long as they may be.
fn long(catalogue: &mut Catalogue) {
    let text = "Lengthen the neck and breathe out slowly. ".repeat(7).chars().take(280).collect::<String>();
    for texts in catalogue.exercises.iter_mut().filter_map(|exercise| exercise.texts.get_mut(&Lang::Es)) {
        texts.steps.fill(text.clone());
    }
}

#[test]
fn nothing_is_outside_the_room_of_a_page() {
    let mut catalogue = catalogue();
    long(&mut catalogue);
    let plan = plan(&catalogue, 20, 8);
    let code = [pictures::qr::Code::of(&"A".repeat(900)).expect("a code")];
    for paper in Paper::ALL {
        let given = HandOut { plan: &plan, catalogue: &catalogue, patient: None, codes: &code };
        let made = laid_out(&given, paper, Words::new(Locale::Es)).expect("pages");
        let (frame, sheet) = (made.flow.frame, &made.flow.sheet);
        let read = |content: &&crate::sheet::Content| matches!(content.role, crate::sheet::Role::Part(_));
        // The signs of danger have a frame, and the codes their quiet zones.
        let within = |x: f32, y: f32| {
            (frame.left - 0.1..=frame.right + 0.1).contains(&x) && (frame.top..=frame.bottom + 0.1).contains(&y)
        };
        let mut drawn = 0;
        for mark in sheet.pages.iter().flatten().filter(read).flat_map(|content| &content.marks) {
            match mark {
                // The number of an exercise is on its knot, beside the text.
                Mark::Text { from: (x, _), .. } if *x < frame.left => {}
                Mark::Text { from: (x, y), run, .. } => assert!(within(x + run.width, *y), "{}", run.text),
                Mark::Shape { outline, .. } => {
                    drawn += 1;
                    let outside = |point: &exercises::figure::Point| !within(point.x as f32, point.y as f32);
                    assert_eq!(outline.iter().flat_map(|piece| piece.points()).find(outside), None);
                }
            }
        }
        assert!(drawn > 12 * 10, "figures are made of many parts: {drawn}");
    }
}

#[test]
fn of_a_left_side_the_figures_are_seen_in_a_mirror() {
    let catalogue = catalogue();
    let mut plan = plan(&catalogue, 0, 0);
    plan.prescription.items.truncate(1);
    let mut outlines = |side| {
        plan.prescription.items[0].side = side;
        let given = HandOut { plan: &plan, catalogue: &catalogue, patient: None, codes: &[] };
        let made = laid_out(&given, Paper::A4, Words::new(Locale::En)).expect("pages");
        let shapes = made.flow.sheet.pages[0].iter().flat_map(|content| &content.marks);
        let outline = |mark: &Mark| if let Mark::Shape { outline, .. } = mark { Some(outline.clone()) } else { None };
        shapes.filter_map(outline).collect::<Vec<_>>()
    };
    assert_ne!(outlines(Side::Left), outlines(Side::Right));
}
