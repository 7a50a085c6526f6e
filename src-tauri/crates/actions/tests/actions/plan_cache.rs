//! Plans are computed again when an entry or a card was added, and only then.

use crate::people::{Patient, at};
use actions::patient::{import_runs, plans, record, today};
use exercises::id::ItemId;
use exercises::log::Barrier;
use format::runs_file::{RunsFileEntry, RunsFileEvent};
use std::sync::Arc;

#[test]
fn plans_are_reused_until_something_is_logged() {
    let mut patient = Patient::new();
    let one = |patient: &Patient| plans::one(&patient.folder, None).expect("taken");
    let before = one(&patient);
    assert!(Arc::ptr_eq(&before, &one(&patient)), "nothing happened");
    today::opened(&mut patient.folder, &at("11-26T08:00")).expect("a day begins");
    let after = one(&patient);
    assert_eq!(after.followed.history.seen.len(), before.followed.history.seen.len() + 1);
    assert!(Arc::ptr_eq(&after, &one(&patient)), "nothing more happened");
}

/// Entries are added to what is known; a start of the program puts everything together anew, and comes to the same.
#[test]
fn what_was_added_entry_by_entry_equals_what_is_read_at_a_start() {
    let mut patient = Patient::new();
    let text = |date: &str| format::runs_file::example(date.parse().expect("a date"), "+01:00");
    let entries = format::runs_file::read(&text("2026-11-25")).expect("the example");
    let looked_at = plans::one(&patient.folder, None).expect("taken");
    for entry in &entries {
        let one = std::slice::from_ref(entry);
        import_runs::record(&mut patient.folder, None, &at("11-25T09:00").zone, "days", one).expect("it fits");
    }
    assert!(looked_at.followed.history.runs.is_empty(), "who looks at a plan sees it as it was");
    let followed = |patient: &Patient| plans::one(&patient.folder, None).expect("taken").followed.clone();
    let before = followed(&patient);
    assert!(before.history.runs.len() > 1 && !before.history.mornings.is_empty());
    let patient = patient.restarted();
    assert_eq!(before, followed(&patient));
}

#[test]
fn an_entry_rolled_back_is_dropped_and_its_replacement_is_used() {
    let mut patient = Patient::new();
    let entry = |text: &str, line, what| RunsFileEntry { at: at(text).now, line, event: what };
    let skipped = |item, reason| RunsFileEvent::Skipped { item: ItemId(item), reason };
    let known = |patient: &Patient| plans::one(&patient.folder, None).expect("taken").followed.history.skipped.clone();
    let place = at("11-25T09:00").zone;
    let bad = [entry("11-25T09:05", 1, skipped(1, Barrier::Unwell)), entry("11-25T09:06", 2, skipped(9, Barrier::Unwell))];
    import_runs::record(&mut patient.folder, None, &place, "days", &bad).expect_err("there is no item 9");
    assert!(known(&patient).is_empty());
    // The same number in the log, but a different entry.
    let good = [entry("11-25T09:05", 1, skipped(1, Barrier::NoTime))];
    import_runs::record(&mut patient.folder, None, &place, "days", &good).expect("an open slot");
    assert_eq!(known(&patient).into_values().collect::<Vec<_>>(), [Barrier::NoTime]);
}

#[test]
fn a_record_shows_when_the_clock_is_a_day_behind() {
    let mut patient = Patient::new();
    let later = |patient: &Patient, moment: &str| {
        let pages = record::pages(&patient.folder, &at(moment)).expect("pages");
        pages.into_iter().map(|page| page.later).collect::<Vec<_>>()
    };
    today::opened(&mut patient.folder, &at("11-26T08:00")).expect("a day begins");
    assert_eq!(later(&patient, "11-26T07:00"), [None], "the same day");
    assert_eq!(later(&patient, "11-25T20:00"), [Some(at("11-26T08:00").now)]);
}
