//! Previewing and taking cards in the window.

use crate::people::{Patient, at, card, clinic, example, issue};
use actions::patient::{plans, taking};
use exercises::id::ItemId;
use exercises::plan::{Days, Pattern, Schedule};
use wire::Failure;
use wire::app::Role;
use wire::patient::{CardSource, TakeCardRequest};

fn times(minutes: u16, from: u16, to: u16) -> Schedule {
    Schedule { days: Days::ALL, pattern: Pattern::Every { minutes, from, to } }
}

#[test]
fn a_preview_changes_nothing() {
    let patient = Patient::without_card();
    let before = patient.bytes();
    let preview = taking::preview(&patient.folder, &card()).expect("a valid card");
    assert_eq!((preview.plan.prescription.items.len(), preview.known_clinic, preview.replaces), (3, false, None));
    assert!(patient.bytes() == before);
}

#[test]
fn times_that_were_agreed_are_followed() {
    let mut patient = Patient::without_card();
    let later = times(60, 600, 1080);
    let request =
        TakeCardRequest { source: card(), agreed: vec![(ItemId(1), times(30, 540, 600)), (ItemId(1), later.clone())] };
    let page = taking::take(&mut patient.folder, &at("11-25T08:40"), &request).expect("a valid card");
    let minutes: Vec<u16> = page.string.iter().filter(|knot| knot.slot.item == ItemId(1)).map(|knot| knot.minute).collect();
    assert_eq!(minutes, [600, 660, 720, 780, 840, 900, 960, 1020, 1080], "the last word counts");
    let patient = patient.restarted();
    let one = plans::one(&patient.folder, None).expect("taken");
    assert_eq!(one.plan().item(ItemId(1)).expect("there").schedule, later);
    assert_ne!(one.revisions[&1].item(ItemId(1)).expect("there").schedule, later, "the card itself says what it says");
}

#[test]
fn times_out_of_range_are_refused_and_nothing_is_taken() {
    let mut patient = Patient::without_card();
    let before = patient.bytes();
    let request = TakeCardRequest { source: card(), agreed: vec![(ItemId(1), times(1, 540, 600))] };
    let refused = taking::take(&mut patient.folder, &at("11-25T08:40"), &request);
    assert!(matches!(refused, Err(Failure::CardRefused(_))), "{refused:?}");
    assert!(patient.bytes() == before);
}

#[test]
fn anything_the_window_sends_as_a_card_gets_an_answer() {
    let mut patient = Patient::without_card();
    let before = patient.bytes();
    for source in [
        CardSource::Text(String::new()),
        CardSource::Text("CARRYOVER".into()),
        CardSource::Text("\u{0}\u{FEFF}…".repeat(1000)),
        CardSource::File("not Base64 at all!".into()),
        CardSource::File(String::new()),
        CardSource::File("iVBORw0KGgo=".into()),
        CardSource::File("/9j/4AAQ".into()),
    ] {
        assert!(taking::preview(&patient.folder, &source).is_err(), "{source:?}");
        assert!(
            taking::take(&mut patient.folder, &at("11-25T08:40"), &TakeCardRequest { source, agreed: Vec::new() }).is_err()
        );
    }
    assert!(patient.bytes() == before);
}

#[test]
fn a_later_card_replaces_the_plan_and_keeps_the_history() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let mut practice = clinic(dir.path());
    let first = issue(&mut practice, &at("11-25T08:00"), example(), &dir.path().join("one"));
    let mut plan = example();
    plan.items.truncate(2);
    let second = issue(&mut practice, &at("12-02T08:00"), plan, &dir.path().join("two"));
    let mut patient = Patient::without_card();
    let take = |patient: &mut Patient, text: &str, moment: &str| {
        let source = CardSource::Text(text.into());
        let preview = taking::preview(&patient.folder, &source)?;
        taking::take(&mut patient.folder, &at(moment), &TakeCardRequest { source, agreed: Vec::new() })?;
        Ok::<_, Failure>(preview)
    };
    take(&mut patient, &first, "11-25T08:40").expect("the first");
    patient.folder.app_state(&at("11-26T08:00")).expect("opened");
    let preview = take(&mut patient, &second, "12-02T08:40").expect("the second");
    assert_eq!((preview.known_clinic, preview.replaces), (true, Some(1)));
    assert_eq!(take(&mut patient, &first, "12-02T08:41"), Err(Failure::CardOld { revision: 1, have: 2 }));
    let one = plans::one(&patient.folder, None).expect("one plan");
    assert_eq!((one.plan().header.revision, one.plan().prescription.items.len(), one.revisions.len()), (2, 2, 2));
    assert_eq!(one.plan().header.start, at("11-25T08:00").now.date(), "it began with the first card");
    assert!(one.followed.history.seen.contains(&at("11-26T08:00").now.date()), "the history continues");
}

#[test]
fn a_side_is_chosen_once() {
    let mut patient = Patient::without_card();
    patient.folder.choose_role(Role::Patient).expect("the same again");
    assert_eq!(patient.folder.choose_role(Role::Clinic), Err(Failure::OtherRole));
    assert_eq!(patient.restarted().folder.role(), Some(Role::Patient));
}
