//! The binary `carryover`: every action from the command line.
//!
//! Exit code 0: done. 1: refused, with one sentence on what is wrong and one on what to do, on stderr. 2: wrong usage.
#![forbid(unsafe_code)]

mod analysis;
mod args;
mod backup;
mod case;
mod catalogue;
mod clinic;
mod clinicians;
mod device;
mod example;
mod facts;
mod handing_over;
mod home;
mod issuing;
mod out;
mod patient;
mod prescribing;
mod printing;
mod receiving;
mod reporting;
mod review;
mod secrets;
mod visiting;

use args::{Area, Args};
use clap::Parser;
use out::Out;
use std::process::ExitCode;

/// The result of a command: whether every part of it was done, or why nothing was.
type Done = Result<bool, wire::Failure>;

fn main() -> ExitCode {
    actions::platform::keep_out_of_core_dumps();
    let args = Args::parse();
    let clock = args.clock();
    let mut out = Out::new(args.json);
    let done = match &args.area {
        Area::Example { what } => example::run(what, &clock, &mut out),
        Area::Catalogue { what } => catalogue::run(what, &mut out),
        Area::Sway(what) => analysis::sway(what, &mut out),
        Area::Trend(what) => analysis::trend(what, &mut out),
        Area::Proportion(what) => analysis::proportion(what, &mut out),
        Area::Backup { to } => backup::save(&args, to.as_deref(), &clock, &mut out),
        Area::Restore { file } => backup::restore(&args, file, &clock, &mut out),
        Area::Salvage => backup::salvage(&args, &clock, &mut out),
        Area::Clinic { what, passphrase_file, clinician } => {
            let door = clinic::Door { passphrase_file: passphrase_file.as_deref(), who: clinician.as_deref() };
            clinic::run(&args, door, what, &clock, &mut out)
        }
        Area::Patient { plan, what } => patient::run(&args, *plan, what, &clock, &mut out),
    };
    match done {
        Ok(true) => {
            if matches!(args.area, Area::Clinic { .. } | Area::Patient { .. }) {
                backup::daily(&args, &clock);
            }
            ExitCode::SUCCESS
        }
        Ok(false) => ExitCode::FAILURE,
        Err(failure) => {
            out.refuse(&failure);
            ExitCode::FAILURE
        }
    }
}
