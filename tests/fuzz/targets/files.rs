//! Any file that a person writes is either read or refused: a plan, runs, a clinic's table of times, and a draft from the store. The first
//! byte chooses which.
#![no_main]

use chrono::NaiveDate;
use exercises::plan::check;
use exercises::plan::Plan;
use fuzz::{CATALOGUE, PLAN};
use libfuzzer_sys::fuzz_target;

fuzz_target!(|input: &[u8]| {
    let Some((kind, file)) = input.split_first() else { return };
    if kind % 4 == 3 {
        let _ = format::draft::read(file);
        return;
    }
    let Ok(text) = format::text(file) else { return };
    let today = NaiveDate::from_ymd_opt(2026, 11, 25).expect("a date");
    match kind % 4 {
        0 => {
            let Ok(prescription) = format::plan_file::read(text, today) else { return };
            let _ = check::problems(&Plan { header: PLAN.header.clone(), prescription }, &CATALOGUE);
        }
        1 => drop(format::runs_file::read(text)),
        _ => drop(format::norms_file::read(text)),
    }
});
