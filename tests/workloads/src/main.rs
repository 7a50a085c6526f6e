//! `workloads minute` prints the trial of a minute as CSV; `workloads size` the size of two years; `workloads letters` how
//! many letters are answered where exercises are found; `workloads texts` all results;
//! `workloads repeat SUM TIMES` repeats a computation, for a profiler.

use std::process::ExitCode;

fn main() -> ExitCode {
    let asked: Vec<String> = std::env::args().skip(1).collect();
    match asked.iter().map(String::as_str).collect::<Vec<_>>().as_slice() {
        ["minute"] => print!("{}", workloads::minute_csv()),
        ["size"] => println!("{}", workloads::Years::new().size()),
        ["letters"] => println!("{}", workloads::Prepared::new().letters()),
        ["texts"] => print!("{}", workloads::texts()),
        ["repeat", sum, times] => return repeat(sum, times),
        _ => return usage(),
    }
    ExitCode::SUCCESS
}

fn repeat(sum: &str, times: &str) -> ExitCode {
    let prepared = workloads::Prepared::new();
    match (sum, times.parse()) {
        ("sway", Ok(times)) => println!("{}", prepared.sway(times)),
        ("slots", Ok(times)) => println!("{}", prepared.slots(times)),
        ("review", Ok(times)) => println!("{}", prepared.review(times)),
        ("page", Ok(times)) => println!("{}", prepared.page(times)),
        ("find", Ok(times)) => println!("{}", prepared.find(times)),
        ("index", Ok(times)) => println!("{}", prepared.index(times)),
        ("scan", Ok(times)) => println!("{}", prepared.scan(times)),
        ("read", Ok(times)) => println!("{}", prepared.read(times)),
        ("arrive", Ok(times)) => println!("{}", prepared.arrive(times)),
        ("figures", Ok(times)) => println!("{}", prepared.figures(times)),
        ("fold", Ok(times)) => println!("{}", prepared.fold(times)),
        _ => return usage(),
    }
    ExitCode::SUCCESS
}

fn usage() -> ExitCode {
    eprintln!(
        "usage: workloads minute|size|letters|texts|repeat sway|slots|review|page|fold|find|index|scan|read|arrive|figures TIMES"
    );
    ExitCode::from(2)
}
