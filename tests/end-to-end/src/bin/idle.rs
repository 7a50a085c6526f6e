//! Measures what the program costs while nothing happens, compared with an empty window of the same framework in the same run:
//! processor time and memory of the process and all its child processes. `idle SECONDS`.

use end_to_end::scenes::HOLD;
use end_to_end::{Desktop, beside};
use std::collections::BTreeMap;
use std::fs;
use std::path::Path;
use std::process::{Child, Command, Stdio};
use std::time::Duration;

/// Time for both windows to open and settle.
const SETTLE: Duration = Duration::from_secs(20);

fn main() {
    let seconds: u64 = std::env::args().nth(1).and_then(|text| text.parse().ok()).unwrap_or(60);
    let desktop = Desktop::new();
    desktop.prescribe(HOLD, "2027-03-01T08:00:00Z");
    let home = desktop.path("patient");
    let program = beside("carryover-shell");
    let empty = beside("examples/empty");
    let home = home.to_string_lossy().into_owned();
    println!("{:<14} {:>22} {:>12}", "", "processor, ms a minute", "memory, MiB");
    for (name, program, arguments) in [
        ("empty window", &empty, vec![]),
        ("carryover", &program, vec!["--home", home.as_str(), "--at", "2027-03-01T07:00:00Z"]),
    ] {
        let mut child = start(&desktop, program, &arguments);
        std::thread::sleep(SETTLE);
        let before = ticks(child.id());
        std::thread::sleep(Duration::from_secs(seconds));
        let spent = ticks(child.id()).saturating_sub(before);
        println!(
            "{name:<14} {:>22.0} {:>12.0}",
            spent as f64 * 10.0 * 60.0 / seconds as f64,
            memory_kib(child.id()) as f64 / 1024.0
        );
        let _ = child.kill();
        let _ = child.wait();
    }
}

fn start(desktop: &Desktop, program: &Path, arguments: &[&str]) -> Child {
    let child = Command::new(program).args(arguments).envs(desktop.environment()).stderr(Stdio::null()).spawn();
    child.unwrap_or_else(|error| panic!("{}: {error}", program.display()))
}

/// Processor time of a process and all its descendants, in hundredths of a second.
fn ticks(of: u32) -> u64 {
    let fields = |id: u32| fs::read_to_string(format!("/proc/{id}/stat")).unwrap_or_default();
    let spent = |id: u32| -> u64 {
        let stat = fields(id);
        let after_name = stat.rsplit_once(')').map_or("", |(_, rest)| rest);
        after_name.split_whitespace().skip(11).take(2).filter_map(|field| field.parse::<u64>().ok()).sum()
    };
    family(of).into_iter().map(spent).sum()
}

/// Memory of a process and all its descendants, in KiB; shared memory is counted once (proportional set size).
fn memory_kib(of: u32) -> u64 {
    let pss = |id: u32| {
        let rollup = fs::read_to_string(format!("/proc/{id}/smaps_rollup")).unwrap_or_default();
        let line = rollup.lines().find_map(|line| line.strip_prefix("Pss:")).unwrap_or_default().to_owned();
        line.split_whitespace().next().and_then(|kib| kib.parse::<u64>().ok()).unwrap_or(0)
    };
    family(of).into_iter().map(pss).sum()
}

fn family(of: u32) -> Vec<u32> {
    let mut parents = BTreeMap::new();
    for entry in fs::read_dir("/proc").into_iter().flatten().flatten() {
        let Some(id) = entry.file_name().to_str().and_then(|name| name.parse::<u32>().ok()) else { continue };
        let stat = fs::read_to_string(format!("/proc/{id}/stat")).unwrap_or_default();
        let parent = stat.rsplit_once(')').and_then(|(_, rest)| rest.split_whitespace().nth(1)?.parse::<u32>().ok());
        parents.insert(id, parent.unwrap_or(0));
    }
    let mut family = vec![of];
    let mut at = 0;
    while at < family.len() {
        let parent = family[at];
        family.extend(parents.iter().filter(|(_, of)| **of == parent).map(|(id, _)| *id));
        at += 1;
    }
    family
}
