//! The process ends at one of its calls: what is there is what was there before or what should be.

use super::calls::How;
use super::cases;
use super::errors::{FOREMOST, disturb, each, none};
use super::number;

#[test]
fn a_process_that_ends_at_any_call_leaves_what_was_there_or_what_should_be() {
    let rounds = number("DISK_KILL_ROUNDS", 50);
    let foremost = rounds <= 50;
    let all = if foremost { Vec::new() } else { each(cases::all(), false) };
    let cases = if foremost { &*FOREMOST } else { &all };
    let (of_clinic, of_patient): (Vec<_>, Vec<_>) = cases.iter().partition(|(case, _)| case.is_of_clinic());
    let mut faults = Vec::new();
    for round in 0..rounds {
        // The clinic's take a second each.
        let is_clinics = if foremost { round % 8 == 7 } else { round % 2 == 1 };
        let side = if is_clinics { &of_clinic } else { &of_patient };
        let (case, undisturbed) = side[round / 2 % side.len()];
        let calls = undisturbed.calls.len();
        let call = 1 + ((round as u32).wrapping_mul(2_654_435_761) >> 8) as usize % calls.max(1);
        let how = if round % 3 == 0 { How::Before } else { How::Half };
        faults.extend(disturb(case, undisturbed, foremost, call, how).err());
    }
    println!("{rounds} processes ended");
    none(&faults);
}
