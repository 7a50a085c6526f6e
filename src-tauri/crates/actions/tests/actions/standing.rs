//! Plans are put together anew when an entry or a card has come, and only then.

use crate::people::{Patient, at};
use actions::patient::{deeds, plans, recording, today};
use exercises::id::ItemId;
use exercises::log::Barrier;
use format::runs_file::{Deed, Did};
use std::sync::Arc;

#[test]
fn plans_stand_until_something_happens() {
    let mut patient = Patient::new();
    let one = |patient: &Patient| plans::one(&patient.house, None).expect("taken");
    let before = one(&patient);
    assert!(Arc::ptr_eq(&before, &one(&patient)), "nothing happened");
    today::opened(&mut patient.house, &at("11-26T08:00")).expect("a day begins");
    let after = one(&patient);
    assert_eq!(after.followed.history.seen.len(), before.followed.history.seen.len() + 1);
    assert!(Arc::ptr_eq(&after, &one(&patient)), "nothing more happened");
}

#[test]
fn what_was_undone_is_not_in_them_and_what_takes_its_place_is() {
    let mut patient = Patient::new();
    let deed = |text: &str, line, what| Deed { at: at(text).now, line, what };
    let left_out = |item, reason| Did::LeftOut { item: ItemId(item), reason };
    let known = |patient: &Patient| plans::one(&patient.house, None).expect("taken").followed.history.left_out.clone();
    let place = at("11-25T09:00").zone;
    let bad = [deed("11-25T09:05", 1, left_out(1, Barrier::Unwell)), deed("11-25T09:06", 2, left_out(9, Barrier::Unwell))];
    deeds::record(&mut patient.house, None, &place, "days", &bad).expect_err("there is no item 9");
    assert!(known(&patient).is_empty());
    // The same number in the log, but another entry.
    let good = [deed("11-25T09:05", 1, left_out(1, Barrier::NoTime))];
    deeds::record(&mut patient.house, None, &place, "days", &good).expect("an open slot");
    assert_eq!(known(&patient).into_values().collect::<Vec<_>>(), [Barrier::NoTime]);
}

#[test]
fn a_record_says_when_the_clock_is_a_day_behind_it() {
    let mut patient = Patient::new();
    let later = |patient: &Patient, moment: &str| {
        let pages = recording::pages(&patient.house, &at(moment)).expect("pages");
        pages.into_iter().map(|page| page.later).collect::<Vec<_>>()
    };
    today::opened(&mut patient.house, &at("11-26T08:00")).expect("a day begins");
    assert_eq!(later(&patient, "11-26T07:00"), [None], "the same day");
    assert_eq!(later(&patient, "11-25T20:00"), [Some(at("11-26T08:00").now)]);
}
