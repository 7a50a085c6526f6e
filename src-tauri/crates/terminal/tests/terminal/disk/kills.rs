//! The process ends at one of its calls: what is there is what was there before or what should be.

use super::calls::How;
use super::cases;
use super::errors::{Undisturbed, disturb};
use super::number;

#[test]
fn a_process_that_ends_at_any_call_leaves_what_was_there_or_what_should_be() {
    let rounds = number("DISK_KILL_ROUNDS", 50);
    let foremost = rounds <= 50;
    let mut cases: Vec<_> = if foremost { cases::foremost() } else { cases::all() };
    // The clinic's take a second each.
    cases.sort_by_key(cases::Case::is_of_clinic);
    let of_patient = cases.iter().filter(|case| !case.is_of_clinic()).count();
    let undisturbed: Vec<_> = cases.iter().map(|case| Undisturbed::of(case, foremost)).collect();
    for round in 0..rounds {
        let clinics = if foremost { round % 8 == 7 } else { round % 2 == 1 };
        let at = if clinics { of_patient + round / 2 % (cases.len() - of_patient) } else { round / 2 % of_patient };
        let calls = undisturbed[at].calls.len();
        let call = 1 + ((round as u32).wrapping_mul(2_654_435_761) >> 8) as usize % calls.max(1);
        let how = if round % 3 == 0 { How::Before } else { How::Half };
        disturb(&cases[at], &undisturbed[at], foremost, call, how);
    }
    println!("{rounds} processes ended");
}
