//! A summary shown as codes: each showing takes one number; a summary that is too long takes none.

use crate::people::{Patient, at};
use actions::patient::{import_runs, plans, sealing};
use format::frames::MAX_WHOLE;
use wire::Failure;
use wire::patient::SealRequest;

fn request(patient: &Patient, until: &str) -> SealRequest {
    SealRequest { plan: patient.plan, from: None, until: at(until).now.date(), note: None }
}

fn counter(patient: &Patient) -> u32 {
    plans::one(&patient.folder, None).expect("taken").followed.history.counter
}

#[test]
fn each_showing_takes_one_number_and_draws_black_on_white() {
    let mut patient = Patient::new();
    let asked = request(&patient, "11-25T20:00");
    for shown in 1..=2 {
        let frames = sealing::frames(&mut patient.folder, &at("11-25T20:00"), &asked).expect("short");
        assert_eq!((frames.len(), counter(&patient)), (1, shown));
        assert!(frames[0].starts_with("<svg ") && frames[0].contains("#fff"), "an element for the page");
    }
    let long = SealRequest { note: Some("x".repeat(281)), ..asked };
    let before = patient.bytes();
    let refused = sealing::frames(&mut patient.folder, &at("11-25T20:00"), &long);
    assert_eq!(refused, Err(Failure::TextUnfit { most: 280 }));
    assert!(patient.bytes() == before, "not a byte");
}

/// A line of the imported file for a stance with as many trials as a run can have, all of different lengths.
fn stance(place: u32) -> String {
    let trial = |trial: u32| {
        let ms = 5000 + (place * 64 + trial).wrapping_mul(2_654_435_761) % 24_000;
        format!(r#"{{"leg":"left","seconds":{}.{:03},"end":"touch"}}"#, ms / 1000, ms % 1000)
    };
    let trials: Vec<String> = (0..64).map(trial).collect();
    let (hour, minute) = (10 + place / 12, place % 12 * 5);
    let at = format!("2026-11-25T{hour:02}:{minute:02}:00+01:00");
    format!(r#"{{"do":"run","at":"{at}","item":2,"trials":[{}]}}"#, trials.join(","))
}

#[test]
fn a_summary_too_long_for_codes_is_refused_and_takes_no_number() {
    let mut patient = Patient::new();
    let lines: Vec<String> = (0..90).map(stance).collect();
    let all = format::runs_file::read(&lines.join("\n")).expect("runs");
    import_runs::record(&mut patient.folder, None, &at("11-25T10:00").zone, "runs", &all).expect("nothing pauses them");
    let asked = request(&patient, "11-25T20:00");
    let refused = sealing::frames(&mut patient.folder, &at("11-25T20:00"), &asked);
    assert_eq!(refused, Err(Failure::FramesTooMany { most: MAX_WHOLE as u32 }));
    assert_eq!(counter(&patient), 0);
    let dir = patient.dir.path().join("frames");
    let refused = sealing::seal_to_frames(&mut patient.folder, &at("11-25T20:00"), &asked, &dir, None);
    assert!(refused.is_err() && !dir.exists() && counter(&patient) == 0);
    let file = patient.dir.path().join("x.age");
    let saved = sealing::seal(&mut patient.folder, &at("11-25T20:00"), &asked, Some(&file)).expect("a file takes it");
    assert!(saved.bytes > MAX_WHOLE as u64 && counter(&patient) == 1, "{saved:?}");
}
