//! Both sides' files when the disk fails, the process ends or the power is cut: at every call of the real program that changes a file.
//!
//! `tests/disk` is loaded into the program for that. What takes long is done by `tests/long`, through these variables:
//!
//! | variable | what it sets | default |
//! | --- | --- | --- |
//! | `DISK_ALL` | `1`: each call of every command fails once; part of a name: of these commands | every 7th call of four |
//! | `DISK_STEP` | only each call with this distance to the one before fails | 1 with `DISK_ALL`, 7 without |
//! | `DISK_KILL_ROUNDS` | how often a process ends at one of its calls | 50 |
//! | `DISK_IMAGES` | how many different disks after a power cut are opened | 300, on the patient's side alone |
#![cfg(all(target_os = "linux", target_arch = "x86_64"))]

mod calls;
mod cases;
mod errors;
mod held;
mod images;
mod kills;
mod migrations;
mod power;
mod replay;

/// The number that a variable of the environment sets, or the default.
fn number(name: &str, default: usize) -> usize {
    std::env::var(name).map_or(default, |number| number.parse().expect("a number"))
}
