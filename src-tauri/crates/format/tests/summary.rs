//! The summary: writing and reading it, its size and its limits.

mod support;

use exercises::summary::Summary;
use exercises::time::DayNumber;
use format::summary::{self, Body, Letter, SummaryFault};
use miniz_oxide::deflate::compress_to_vec;
use proptest::prelude::*;

fn body(packed: Vec<u8>) -> Body {
    let Summary { plan, log, counter, .. } = support::six_weeks();
    Body { plan, log, counter, packed, version: summary::VERSION }
}

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, ..ProptestConfig::with_cases(64) })]

    #[test]
    fn any_summary_comes_back(whole in support::any::summary()) {
        let letter = Letter { body: summary::write(&whole).expect("a summary"), tag: [7; 32] };
        let parsed = Letter::parse(&letter.to_bytes()).expect("a letter");
        prop_assert_eq!(&parsed, &letter);
        prop_assert_eq!(summary::read(&parsed.body), Ok(whole));
    }

    #[test]
    fn any_bytes_give_a_value_or_a_fault(bytes: Vec<u8>) {
        prop_assert!(Letter::parse(&bytes).is_err());
        prop_assert!(summary::read(&body(bytes.clone())).is_err());
        prop_assert!(summary::read(&body(compress_to_vec(&bytes, 1))).is_err());
    }
}

#[test]
fn six_hourly_weeks_take_a_few_kilobytes() {
    let whole = support::six_weeks();
    let packed = summary::write(&whole).expect("a summary").packed;
    println!("{} runs in {} bytes", whole.runs.len(), packed.len());
    assert!(whole.runs.len() > 250, "a diligent person: {}", whole.runs.len());
    assert!(packed.len() < 4096, "{} bytes", packed.len());
}

#[test]
fn contents_that_unpack_to_more_than_allowed_are_refused() {
    let bomb = compress_to_vec(&vec![0; 60_000_000], 9);
    assert_eq!(summary::read(&body(bomb)), Err(SummaryFault::TooBig { most: summary::MAX_CONTENTS }));
}

#[test]
fn lists_longer_than_a_summary_may_have_are_refused() {
    let longer = |change: fn(&mut Summary)| {
        let mut whole = support::frozen_summary_2();
        change(&mut whole);
        summary::write(&whole).err()
    };
    let refused = |field| Some(SummaryFault::Malformed { field });
    assert_eq!(longer(|whole| whole.taken = vec![whole.taken[0].clone(); 401]), refused("taken"));
    assert_eq!(longer(|whole| whole.delays = vec![whole.delays[0]; 65]), refused("delays"));
    assert_eq!(longer(|whole| whole.days = vec![whole.days[0].clone(); 9_601]), refused("days"));
    assert_eq!(longer(|whole| whole.runs = vec![whole.runs[0].clone(); 40_001]), refused("runs"));
    assert_eq!(longer(|whole| whole.mornings = vec![whole.mornings[0]; 20_001]), refused("mornings"));
}

#[test]
fn contents_about_another_plan_than_the_letter_are_refused() {
    let good = summary::write(&support::six_weeks()).expect("a summary");
    let changes: [fn(&mut Body); 3] = [|body| body.counter += 1, |body| body.plan.0[0] ^= 1, |body| body.log.0[7] ^= 1];
    for change in changes {
        let mut other = good.clone();
        change(&mut other);
        assert_eq!(summary::read(&other), Err(SummaryFault::Malformed { field: "letter" }));
    }
}

#[test]
fn rows_that_no_log_could_give_are_refused() {
    fn check(field: &'static str, change: fn(&mut Summary)) {
        let mut wrong = support::frozen_summary_2();
        change(&mut wrong);
        assert_eq!(summary::write(&wrong), Err(SummaryFault::Malformed { field }));
    }
    check("period", |summary| summary.from = DayNumber(9));
    check("period", |summary| summary.until = DayNumber(500));
    check("note", |summary| summary.note = Some("x".repeat(281)));
    check("seen", |summary| summary.seen.extend([DayNumber(9)]));
    check("taken", |summary| summary.taken[1].day = DayNumber(9));
    check("days", |summary| summary.days[0].day = DayNumber(6));
    check("days", |summary| summary.days[0].slots.swap(0, 1));
    check("runs", |summary| summary.runs[0].hour = 24);
    check("runs", |summary| summary.runs[0].dose.done = 30_001);
    check("mornings", |summary| summary.mornings[0].day = DayNumber(9));
    check("during", |summary| summary.during[0].day = DayNumber(0));
    check("settled", |summary| summary.settled[0].day = DayNumber(0));
    check("delays", |summary| summary.delays[0].median_s = 302);
}
